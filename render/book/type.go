package book

import (
	"ovillo/render/layout"
)

// roles are the roles of type in a document.
type roles struct {
	displays []layout.Style // of titles, the largest first

	mastheadType, introType, editionType, captionType, factType layout.Style

	headType      layout.Style // parts and sections: the number plain, the name strong
	minorType     layout.Style
	continuedType layout.Style
	innerType     layout.Style // heads inside notes, special stitches, cautions
	noteType      layout.Style // what stands under the head of a part, and beside the schematic
	noteHeadType  layout.Style
	stepType      layout.Style // numbers of finishing steps
	letterType    layout.Style // letters of the schematic

	textType   layout.Style // instructions
	labelType  layout.Style
	onlyType   layout.Style
	sizeType   layout.Style // names of sizes at the head of their columns
	figureType layout.Style
	unitType   layout.Style

	tableType, tableSmallType, tableHeadType, abbrevType layout.Style

	tapeType               layout.Style
	runningTop, runningEnd layout.Style
}

// standardType is that of A4 and Letter. Leadings are millimetres; 5 mm is the line.
var standardType = roles{
	displays: []layout.Style{display(38, 14), display(32, 12), display(28, 11), display(22, 8.75), display(17, 7.5)},

	mastheadType: layout.Serif(11, 5),
	introType:    capped(layout.Serif(11, 5)),
	editionType:  capped(layout.Sans(9, 5)),
	captionType:  capped(layout.Sans(8.5, 5)),
	factType:     capped(layout.Sans(10, 5)),

	headType:      layout.Serif(17, 7.5),
	minorType:     layout.Heavy(layout.Serif(13, 7.5)),
	continuedType: layout.Heavy(layout.Serif(11, 5)),
	innerType:     layout.Heavy(layout.Sans(11, 5)),
	noteType:      capped(layout.Sans(10, 5)),
	noteHeadType:  layout.Heavy(layout.Sans(10, 5)),
	stepType:      layout.Serif(11, 5),
	letterType:    layout.Heavy(layout.Serif(11, 5.5)),

	textType:   capped(layout.Sans(11, 5)),
	labelType:  layout.Heavy(layout.Sans(11, 5)),
	onlyType:   layout.Heavy(layout.Sans(9.5, 5)),
	sizeType:   layout.Sans(9, 5),
	figureType: layout.Sans(11, 5),
	unitType:   layout.Sans(9.5, 5),

	tableType:      layout.Sans(10.5, 5.5),
	tableSmallType: layout.Sans(9, 5.5),
	tableHeadType:  layout.Heavy(layout.Sans(9.5, 5)),
	abbrevType:     layout.Sans(9, 5),

	tapeType:   layout.Sans(8.5, 5),
	runningTop: layout.Sans(8.5, 5),
	runningEnd: layout.Sans(8.5, 4),
}

// halfType is that of A5 and half Letter: the text as on A4, heads a step smaller.
var halfType = func() roles {
	t := standardType
	t.displays = t.displays[2:]
	t.headType = layout.Serif(15, 7.5)
	t.minorType = layout.Heavy(layout.Serif(12, 6.25))
	return t
}()

// phoneType is that of a page as wide as a phone. What is read at arm's length on glass is a point larger than on paper.
var phoneType = func() roles {
	t := halfType
	t.introType = capped(layout.Serif(12, 5.625))
	t.noteType = capped(layout.Sans(11, 5))
	t.noteHeadType = layout.Heavy(layout.Sans(11, 5))
	t.factType = capped(layout.Sans(11, 5))
	t.textType = capped(layout.Sans(12, 5.625))
	t.labelType = layout.Heavy(layout.Sans(12, 5.625))
	t.innerType = layout.Heavy(layout.Sans(12, 5.625))
	t.figureType = layout.Sans(11, 5)
	for _, style := range []*layout.Style{&t.introType, &t.noteType, &t.factType, &t.textType} {
		style.Hyphens = true
	}
	return t
}()

// largeType is that of large print: nothing under 18 points, heads 20 and 24, one face without serifs. The figures are
// those of the American Council of the Blind, Large Print Guidelines, 2022.
var largeType = func() roles {
	text := capped(layout.Sans(18, 8.75))
	strong := layout.Heavy(text)
	head := layout.Heavy(layout.Sans(24, 11.25))
	sub := layout.Heavy(layout.Sans(20, 10))
	return roles{
		displays:     []layout.Style{layout.Heavy(layout.Sans(38, 16.25)), layout.Heavy(layout.Sans(28, 12.5)), head},
		mastheadType: text, introType: text, editionType: text, captionType: text, factType: text,
		headType: head, minorType: sub, continuedType: sub, innerType: sub,
		noteType: text, noteHeadType: sub, stepType: text, letterType: strong,
		textType: text, labelType: sub, onlyType: strong, sizeType: text, figureType: text, unitType: strong,
		tableType: text, tableSmallType: text, tableHeadType: sub, abbrevType: text,
		tapeType: text, runningTop: text, runningEnd: runningLarge,
	}
}()

// runningLarge is the type of page numbers in large print.
var runningLarge = layout.Sans(18, 8.75)

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
