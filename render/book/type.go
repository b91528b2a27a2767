package book

import (
	"ovillo/render/layout"
	"ovillo/render/page"
)

// sans and serif make the styles of the two families.
func sans(size, leading float64) layout.Style {
	return layout.Style{Face: page.Sans, Strong: page.SansBold, Size: size, Leading: leading}
}

func serif(size, leading float64) layout.Style {
	return layout.Style{Face: page.Serif, Strong: page.SerifBold, Size: size, Leading: leading}
}

// bold makes a style whose plain face is the strong one: heads.
func bold(s layout.Style) layout.Style {
	s.Face = s.Strong
	return s
}

// The roles of type in a document. Leadings are millimetres; 5 mm is the line.
var (
	displays = []layout.Style{display(38, 14), display(32, 12), display(28, 11), display(22, 8.75), display(17, 7.5)}

	mastheadType = serif(11, 5)
	introType    = serif(11, 5)
	editionType  = sans(9, 5)
	captionType  = sans(8.5, 5)
	factType     = sans(10, 5)

	headType      = serif(17, 7.5) // parts and sections: the number plain, the name strong
	minorType     = bold(serif(13, 7.5))
	continuedType = bold(serif(11, 5))
	innerType     = bold(sans(11, 5)) // heads inside notes, special stitches, cautions
	noteType      = sans(10, 5)       // what stands under the head of a part, and beside the schematic
	noteHeadType  = bold(sans(10, 5))
	stepType      = serif(11, 5) // numbers of finishing steps
	letterType    = bold(serif(11, 5.5))

	textType   = capped(sans(11, 5)) // instructions
	labelType  = bold(sans(11, 5))
	onlyType   = bold(sans(9.5, 5))
	sizeType   = sans(9, 5) // names of sizes at the head of their columns
	figureType = sans(11, 5)
	unitType   = sans(9.5, 5)

	tableType      = sans(10.5, 5.5)
	tableSmallType = sans(9, 5.5)
	tableHeadType  = bold(sans(9.5, 5))
	abbrevType     = sans(9, 5)

	tapeType   = sans(8.5, 5)
	runningTop = sans(8.5, 5)
	runningEnd = sans(8.5, 4)
)

func display(size, leading float64) layout.Style {
	s := serif(size, leading)
	s.Track = -0.012
	return s
}

// capped keeps lines short enough to find the next one.
func capped(s layout.Style) layout.Style {
	s.MaxRunes = 70
	return s
}
