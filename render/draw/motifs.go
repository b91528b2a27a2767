package draw

import (
	"fmt"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// The plan of joined motifs, in millimetres.
const (
	motifMost  = 9.0 // side of a motif
	motifLine  = 0.28
	motifEm    = 3.2 // type of the numbers, in the largest motifs
	motifDigit = 0.62
)

// Motifs is the plan of joined motifs in the size that is shown: squares with the numbers in which they are worked. It is
// no wider than w and no taller than h, and nil if the part is no such thing.
func Motifs(p *plan.Pattern, part int, w, h float64, langs ...*words.Language) *scene.Scene {
	if part < 0 || part >= len(p.Parts) || p.Parts[part].Grid == nil || p.Shown < 0 || p.Shown >= len(p.Sizes) {
		return nil
	}
	g := p.Parts[part].Grid
	across, down := g.Across[p.Shown], g.Down[p.Shown]
	if across < 1 || down < 1 {
		return nil
	}
	side := min(motifMost, (w-motifLine)/float64(across), (h-motifLine)/float64(down))
	pen := &pen{scale: side, shift: vec{motifLine / 2, motifLine / 2}}
	var lines []curve
	for c := range across + 1 {
		lines = append(lines, curve{pts: []vec{{float64(c), 0}, {float64(c), float64(down)}}})
	}
	for r := range down + 1 {
		lines = append(lines, curve{pts: []vec{{0, float64(r)}, {float64(across), float64(r)}}})
	}
	pen.lines(lines, motifLine)
	// All numbers are as large as the longest of them allows.
	em := min(motifEm*side/motifMost, 0.8*side/(motifDigit*float64(len(strconv.Itoa(across*down)))))
	for i := range across * down {
		at := pen.on(vec{float64(i%across) + 0.5, float64(i/across) + 0.5})
		pen.items = append(pen.items, scene.Label{X: at.x, Y: at.y, Text: strconv.Itoa(i + 1), Height: em, Face: page.Sans})
	}
	s := &scene.Scene{W: side*float64(across) + motifLine, H: side*float64(down) + motifLine, Items: pen.items,
		Title: map[string]string{}, Desc: map[string]string{}}
	for lang, v := range speak(langs) {
		s.Title[lang] = fmt.Sprintf(v.Motifs, v.PartTitle(p, part))
		s.Desc[lang] = fmt.Sprintf(v.MotifRows, v.sizeOf(p), across, down)
	}
	return s
}
