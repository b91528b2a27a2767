package font

import (
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"ovillo/render/page"
)

// Letter is a glyph of a line of text, and how far from the start of the line it stands, in thousandths of an em.
type Letter struct {
	Rune rune
	X    int
}

// Letters sets a text on a line, with pair kerning. The width of the line is in thousandths of an em.
func (f *Face) Letters(s string) (letters []Letter, width int) {
	prev := rune(-1)
	for _, r := range Compose(s) {
		if prev >= 0 {
			width += f.Kern(prev, r)
		}
		letters = append(letters, Letter{r, width})
		width += f.Advance(r)
		prev = r
	}
	return letters, width
}

// Outline is the outline of a rune's glyph in thousandths of an em, x from where the glyph stands, y downwards from the
// baseline, to be filled by the rule of winding; that of the missing glyph for a rune that the face lacks. Its steps are M, L and Z
// as in every path, C, and Q with a control point and an end.
func (f *Face) Outline(r rune) []page.Cmd {
	g, _ := f.glyph(r)
	f.mu.Lock()
	defer f.mu.Unlock()
	segments, err := f.sfnt.LoadGlyph(&f.buf, g, f.em, nil)
	if err != nil {
		return nil // a test reads the glyphs of all faces
	}
	point := func(p fixed.Point26_6) page.Point { return page.Point{X: f.thousandths(p.X), Y: f.thousandths(p.Y)} }
	var out []page.Cmd
	for _, s := range segments {
		if s.Op == sfnt.SegmentOpMoveTo && len(out) > 0 {
			out = append(out, page.Cmd{Op: 'Z'})
		}
		out = append(out, page.Cmd{Op: steps[s.Op], P: [3]page.Point{point(s.Args[0]), point(s.Args[1]), point(s.Args[2])}})
	}
	if len(out) > 0 {
		out = append(out, page.Cmd{Op: 'Z'})
	}
	return out
}

var steps = map[sfnt.SegmentOp]byte{sfnt.SegmentOpMoveTo: 'M', sfnt.SegmentOpLineTo: 'L', sfnt.SegmentOpQuadTo: 'Q', sfnt.SegmentOpCubeTo: 'C'}
