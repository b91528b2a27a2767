package layout

import "ovillo/render/page"

// Paper is a size of sheet. The text block is the same on all, so breaks are too.
type Paper uint8

// The papers.
const (
	A4 Paper = iota
	Letter
)

// The text block in millimetres: it prints unscaled on both papers.
const BlockW, BlockH = 180.0, 249.0

// Sheet returns the size of a paper and the corner of the text block. On A4 the block stands at the optical centre, and
// high enough for a printer that puts A4 on Letter from the top.
func (p Paper) Sheet() (w, h, left, top float64) {
	if p == Letter {
		return 215.9, 279.4, 17.95, 15.2
	}
	return 210, 297, 15, 21
}

// Blank makes an empty sheet.
func (p Paper) Blank() page.Page {
	w, h, _, _ := p.Sheet()
	return page.Page{W: w, H: h}
}
