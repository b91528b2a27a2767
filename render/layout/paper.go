package layout

import "ovillo/render/page"

// Paper is a size of sheet.
type Paper uint8

// The papers. The text block is the same on A4 and Letter, and on their halves, so breaks are too.
const (
	A4 Paper = iota
	Letter
	A5         // half of A4
	HalfLetter // half of Letter
	Phone      // no paper: as wide as a phone that is held upright
)

// The text block of A4 and Letter in millimetres: it prints unscaled on both.
const BlockW, BlockH = 180.0, 249.0

// sheets are the papers in millimetres: the sheet, the corner of the text block, and the block.
var sheets = [...]struct {
	name                            string
	w, h, left, top, blockW, blockH float64
}{
	// On A4 the block stands at the optical centre, and high enough for a printer that puts A4 on Letter from the top.
	A4:         {"a4", 210, 297, 15, 21, BlockW, BlockH},
	Letter:     {"letter", 215.9, 279.4, 17.95, 15.2, BlockW, BlockH},
	A5:         {"a5", 148, 210, 15.5, 11, 117, 186},
	HalfLetter: {"half-letter", 139.7, 215.9, 11.35, 14, 117, 186},
	Phone:      {"phone", 100, 190, 7, 8, 86, 174},
}

// Papers lists the names of the papers, each at its number.
func Papers() []string {
	names := make([]string, len(sheets))
	for i, s := range sheets {
		names[i] = s.name
	}
	return names
}

// PaperNamed returns the paper of a name in lower case.
func PaperNamed(name string) (p Paper, ok bool) {
	for i, s := range sheets {
		if s.name == name {
			return Paper(i), true
		}
	}
	return A4, false
}

// String returns the name of a paper.
func (p Paper) String() string { return sheets[p].name }

// Sheet returns the size of a paper and the corner of the text block.
func (p Paper) Sheet() (w, h, left, top float64) {
	s := sheets[p]
	return s.w, s.h, s.left, s.top
}

// Block returns the size of the text block of a paper.
func (p Paper) Block() (w, h float64) { return sheets[p].blockW, sheets[p].blockH }

// Blank makes an empty sheet.
func (p Paper) Blank() page.Page { return page.Page{W: sheets[p].w, H: sheets[p].h} }
