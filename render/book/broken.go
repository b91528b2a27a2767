package book

import (
	"ovillo/render/hyphen"
	"ovillo/render/layout"
	"ovillo/render/rich"
)

// broken breaks a text of a side into lines. The places where its words may be divided are looked for only where the style
// divides words, which is on the narrowest of pages: on a sheet, lines are long enough without.
func (sd side) broken(t rich.Text, style layout.Style, measure, indent float64) []layout.Line {
	if style.Hyphens {
		t = hyphen.Soften(t, sd.l.Tag())
	}
	return layout.Break(t, style, measure, indent)
}

// fitted breaks the text of a cell, whose words are divided only where one is wider than the cell.
func (sd side) fitted(t rich.Text, style layout.Style, measure float64) []layout.Line {
	return layout.Break(hyphen.Soften(t, sd.l.Tag()), style, measure, 0)
}
