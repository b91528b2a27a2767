package book

import "ovillo/render/layout"

// Paper is a size of sheet. The text block is the same on both, so breaks are too.
type Paper = layout.Paper

// The papers.
const (
	A4     = layout.A4
	Letter = layout.Letter
)

// The text block and what stands where in it, in millimetres from its top left corner.
const (
	blockW, blockH = layout.BlockW, layout.BlockH
	bodyTop        = 10.0
	bodyH          = 230.0
	frontH         = 240.0 // the title page has no header
	footTop        = 245.0
)
