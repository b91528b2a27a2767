package book

import "ovillo/render/page"

// Paper is a size of sheet. The text block is the same on both, so breaks are too.
type Paper uint8

// The papers.
const (
	A4 Paper = iota
	Letter
)

// The text block and what stands where in it, in millimetres from its top left corner.
const (
	blockW, blockH = 180.0, 249.0
	bodyTop        = 10.0
	bodyH          = 230.0
	frontH         = 240.0 // the title page has no header
	footTop        = 245.0
)

// sheet returns the size of a paper and the corner of the text block. On A4 the block stands at the optical centre, and
// high enough for a printer that puts A4 on Letter from the top.
func (p Paper) sheet() (w, h, left, top float64) {
	if p == Letter {
		return 215.9, 279.4, 17.95, 15.2
	}
	return 210, 297, 15, 21
}

// blank makes an empty sheet.
func (p Paper) blank() page.Page {
	w, h, _, _ := p.sheet()
	return page.Page{W: w, H: h}
}
