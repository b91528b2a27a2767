package book

import (
	"ovillo/render/layout"
)

// The roles of type in a document. Leadings are millimetres; 5 mm is the line.
var (
	displays = []layout.Style{display(38, 14), display(32, 12), display(28, 11), display(22, 8.75), display(17, 7.5)}

	mastheadType = layout.Serif(11, 5)
	introType    = layout.Serif(11, 5)
	editionType  = layout.Sans(9, 5)
	captionType  = layout.Sans(8.5, 5)
	factType     = layout.Sans(10, 5)

	headType      = layout.Serif(17, 7.5) // parts and sections: the number plain, the name strong
	minorType     = layout.Heavy(layout.Serif(13, 7.5))
	continuedType = layout.Heavy(layout.Serif(11, 5))
	innerType     = layout.Heavy(layout.Sans(11, 5)) // heads inside notes, special stitches, cautions
	noteType      = layout.Sans(10, 5)               // what stands under the head of a part, and beside the schematic
	noteHeadType  = layout.Heavy(layout.Sans(10, 5))
	stepType      = layout.Serif(11, 5) // numbers of finishing steps
	letterType    = layout.Heavy(layout.Serif(11, 5.5))

	textType   = capped(layout.Sans(11, 5)) // instructions
	labelType  = layout.Heavy(layout.Sans(11, 5))
	onlyType   = layout.Heavy(layout.Sans(9.5, 5))
	sizeType   = layout.Sans(9, 5) // names of sizes at the head of their columns
	figureType = layout.Sans(11, 5)
	unitType   = layout.Sans(9.5, 5)

	tableType      = layout.Sans(10.5, 5.5)
	tableSmallType = layout.Sans(9, 5.5)
	tableHeadType  = layout.Heavy(layout.Sans(9.5, 5))
	abbrevType     = layout.Sans(9, 5)

	tapeType   = layout.Sans(8.5, 5)
	runningTop = layout.Sans(8.5, 5)
	runningEnd = layout.Sans(8.5, 4)
)

func display(size, leading float64) layout.Style {
	s := layout.Serif(size, leading)
	s.Track = -0.012
	return s
}

// capped keeps lines short enough to find the next one.
func capped(s layout.Style) layout.Style {
	s.MaxRunes = 70
	return s
}
