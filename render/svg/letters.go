package svg

import (
	"fmt"
	"maps"
	"slices"
	"strconv"

	"ovillo/render/font"
	"ovillo/render/page"
	"ovillo/render/scene"
)

// em is the size of the type in which the outlines of letters are written: their numbers are then whole, and a label scales them.
const em = 1000.0

type glyph struct {
	face page.Face
	r    rune
}

// id is the same for the same glyph in every file, so that drawings in one page can hold it twice.
func (g glyph) id() string {
	return [...]string{"s", "sb", "r", "rb"}[g.face&3] + strconv.FormatInt(int64(g.r), 16)
}

// glyphs writes the outline of each glyph that the labels of drawings need.
func (f *file) glyphs(drawings ...*scene.Scene) {
	need := map[glyph]bool{}
	for _, s := range drawings {
		for _, it := range s.Items {
			if l, ok := it.(scene.Label); ok {
				letters, _ := font.Of(l.Face).Letters(l.Text)
				for _, r := range letters {
					need[glyph{l.Face, r.Rune}] = true
				}
			}
		}
	}
	if len(need) == 0 {
		return
	}
	f.WriteString("<defs>\n")
	for _, g := range slices.SortedFunc(maps.Keys(need), func(a, b glyph) int {
		if a.face != b.face {
			return int(a.face) - int(b.face)
		}
		return int(a.r - b.r)
	}) {
		var t trace
		fmt.Fprintf(f, "<path id=\"%s\" d=\"", g.id())
		t.cmds(f.Writer, font.Of(g.face).Outline(g.r))
		f.WriteString("\"/>\n")
	}
	f.WriteString("</defs>\n")
}

// label draws a label from the outlines of its letters. What it says stands with it as text, for who searches in the file.
func (f *file) label(l scene.Label) {
	face := font.Of(l.Face)
	letters, width := face.Letters(l.Text)
	x := l.X
	switch l.Anchor {
	case scene.Middle:
		x -= float64(width) / em * l.Height / 2
	case scene.End:
		x -= float64(width) / em * l.Height
	}
	_, _, capital, _ := face.Vertical()
	base := l.Y + float64(capital)/em*l.Height/2
	fmt.Fprintf(f, "<g aria-label=\"%s\" transform=\"translate(%s %s) scale(%s)\">", escape(l.Text), num(x), num(base),
		strconv.FormatFloat(l.Height/em, 'g', 4, 64))
	for _, r := range letters {
		f.WriteString("<use href=\"#" + glyph{l.Face, r.Rune}.id() + "\"")
		if r.X != 0 {
			fmt.Fprintf(f, " x=\"%d\"", r.X)
		}
		f.WriteString("/>")
	}
	f.WriteString("</g>\n")
}
