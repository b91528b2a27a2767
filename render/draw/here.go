package draw

import (
	"fmt"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// hereLine is the line of the small piece.
const hereLine = 0.28

// Here is the small piece that shows where the maker is: the part in hand solid, the rest white. Part -1 is the whole
// piece, solid. Without a gauge the piece is drawn from nominal stitches.
func Here(p *plan.Pattern, part int, w, h float64, langs ...*words.Language) *scene.Scene {
	return SmallPieceOf(p, w, h).Here(part, langs...)
}

// SmallPiece is the small piece laid out, ready to show each of its parts.
type SmallPiece struct {
	p      *plan.Pattern
	w, h   float64
	mosaic *mosaic
	lying  *layout // nil if nothing is known of its shape
	at     shelves
}

// SmallPieceOf lays the small piece of a pattern out.
func SmallPieceOf(p *plan.Pattern, w, h float64) *SmallPiece {
	small := &SmallPiece{p: p, w: w, h: h, mosaic: mosaicOf(p)}
	if small.mosaic != nil {
		return small
	}
	l, err := lie(p, courses)
	if err != nil {
		l, err = lie(p, func(p *plan.Pattern, part, size int) ([]course, error) { return guessed(p, part, size), nil })
	}
	if err != nil || len(l.groups) == 0 {
		return small
	}
	small.lying, small.at = l, l.shelve(w-hereLine, h-hereLine, func(*group) margins { return margins{gap: 0.8} })
	return small
}

// Here is the drawing of the small piece with a part solid, as [Here] says.
func (m *SmallPiece) Here(part int, langs ...*words.Language) *scene.Scene {
	s := &scene.Scene{W: m.w, H: m.h, Title: map[string]string{}, Desc: map[string]string{}}
	hereWords(m.p, part, s, langs)
	if m.mosaic != nil {
		s.Items = m.mosaic.here(part, m.w, m.h)
		return s
	}
	if m.lying == nil {
		return s
	}
	l, sh := m.lying, m.at
	pen := &pen{}
	// The part in hand goes on top, so that its edges are not drawn over.
	for pass := range 2 {
		for i, gr := range l.groups {
			pen.scale, pen.shift = sh.scale, sh.at[i].add(vec{hereLine / 2, hereLine / 2})
			for _, pt := range gr.patches {
				solid := part < 0 || pt.pc.part == part
				if solid == (pass == 1) {
					pen.small(pt, solid)
				}
			}
		}
	}
	s.Items = pen.items
	return s
}

// small draws one patch of the small piece.
func (p *pen) small(pt *patch, solid bool) {
	fill := white
	if solid {
		fill = page.Black
	}
	outline := curve{pts: pt.outline(), closed: true, smooth: pt.rings && pt.lines[len(pt.lines)-1].smooth}
	if pt.rings && solid && pt.pc.start > 0 && !pt.pc.oval {
		inner := pt.lines[0].turned()
		p.outlined(fill, hereLine, outline, inner)
		return
	}
	p.outlined(fill, hereLine, outline)
}

func hereWords(p *plan.Pattern, part int, s *scene.Scene, langs []*words.Language) {
	for lang, w := range speak(langs) {
		s.Title[lang] = fmt.Sprintf(w.Here, w.Title(p))
		if part < 0 || part >= len(p.Parts) {
			s.Desc[lang] = w.HereAll
			continue
		}
		s.Desc[lang] = fmt.Sprintf(w.HereOne, w.PartTitle(p, part))
	}
}
