package book

import "ovillo/render/layout"

// Paper is a size of sheet.
type Paper = layout.Paper

// The papers.
const (
	A4         = layout.A4
	Letter     = layout.Letter
	A5         = layout.A5
	HalfLetter = layout.HalfLetter
	Phone      = layout.Phone
)
