package book

import (
	"ovillo/render/layout"
)

// arrangement is how languages and counts stand beside each other.
type arrangement uint8

const (
	facing arrangement = iota // two languages, an axis between them
	apart                     // one language on a wide sheet: counts have a column of their own at its right
	single                    // one language on a narrow sheet, or in large print: counts stand under their rows
)

// figuresIn is where the figures of the sizes stand.
type figuresIn uint8

const (
	columns figuresIn = iota // a column for each size at the right edge of the text
	across                   // a strip over the whole block, with letters in the sentences
	named                    // each figure behind the name of its size
)

// look is what an edition changes about the pages: measures in millimetres from the corner of the text block, and type.
type look struct {
	roles
	paper       Paper
	arrangement arrangement
	figures     figuresIn

	left, top      float64 // of the text block on the sheet
	blockW, blockH float64
	bodyTop, bodyH float64 // of a page
	frontH         float64 // of the title page, which has no header
	footTop        float64
	header         bool // a line at the top of every page but the first

	columnW, spineL, spineR, spine float64 // facing: a column, and the edges and the middle of the axis
	boxW                           float64 // one language: the column of the boxes to tick
	proseR, textR                  float64 // one language: where prose ends, and the text of rows
	slotW                          float64 // a size, where figures stand in columns
	tickW, tickLine, tickPitch     float64 // the boxes
	rowSpace, countGap             float64 // white above a row, and between its text and the rule over its count
	drawingW, drawingH             float64 // the most that the drawing of the title page takes
	hang, bulletW                  float64 // room for the number of a step, and for that of an item of a list
}

// lookOf chooses the look of an edition for so many languages and sizes.
func lookOf(paper Paper, large bool, langs, sizes int) look {
	_, _, left, top := paper.Sheet()
	w, h := paper.Block()
	k := look{
		roles: standardType, paper: paper, left: left, top: top, blockW: w, blockH: h, header: true, slotW: 12.5,
		tickW: 3.6, tickLine: 0.22, tickPitch: 4.5, hang: 5, bulletW: 6,
		drawingW: 72, drawingH: 95, rowSpace: 2.5, countGap: layout.Module,
	}
	switch {
	case large:
		k.enlarge(paper)
	case w >= layout.BlockW:
		k.bodyTop, k.bodyH, k.frontH, k.footTop = 10, 230, 240, 245
	case paper == Phone:
		k.roles, k.header = phoneType, false
		k.bodyH, k.frontH, k.footTop = 165, 165, 170
		k.slotW = 13
		k.drawingH = 75
	default:
		k.roles = halfType
		k.bodyTop, k.bodyH, k.frontH, k.footTop = 8.75, 170, 177.5, 182
	}
	k.arrange(langs, sizes, large)
	k.figures = k.figuresFor(sizes, large)
	k.textR = min(k.proseR, k.slotsLeft(sizes))
	return k
}

// enlarge makes the look that of large print: margins of an inch, no header, everything in 18 points and more.
func (k *look) enlarge(paper Paper) {
	const inch = 25.4
	w, h, _, _ := paper.Sheet()
	k.roles = largeType
	k.left, k.top, k.header = inch, inch, false
	k.blockW, k.blockH = 159.2, h-2*inch
	k.left = (w - k.blockW) / 2
	k.footTop = k.blockH - runningLarge.Leading
	k.bodyH = layout.Module * float64(int((k.footTop-5)/layout.Module))
	k.frontH = k.bodyH
	k.tickW, k.tickLine, k.tickPitch = 6, 0.5, 7.5
	k.hang, k.bulletW = 9, 9
	k.drawingW, k.drawingH = 110, 110
	k.rowSpace, k.countGap = 5, 2.5
}

// arrange places the columns.
func (k *look) arrange(langs, sizes int, large bool) {
	k.boxW, k.proseR = 8, k.blockW
	k.columnW, k.spineL, k.spineR, k.spine = 84, 84, 96, 90
	switch {
	case langs > 1:
		k.arrangement = facing
	case large:
		k.arrangement, k.boxW = single, 11
	case k.blockW < layout.BlockW, sizes > sizesMost:
		k.arrangement = single
		if k.paper == Phone {
			k.boxW = 6.5
		}
	default:
		k.arrangement, k.proseR = apart, 112
	}
}

// sizesMost is how many sizes have room for their figures beside each other. With more, each figure stands behind the name
// of its size, one language after the other.
const sizesMost = 12

// labelLeast is what stands left of the columns of figures at least: the word of a label or the unit of a count.
const labelLeast = 21.0

// figuresFor says where figures stand: in columns while they leave room for a label, else in a strip if that has room, else
// each with its size.
func (k *look) figuresFor(sizes int, large bool) figuresIn {
	room := k.blockW - k.boxW
	if k.arrangement == facing {
		room = k.columnW
	}
	switch {
	case large && sizes > 1, sizes > sizesMost:
		return named
	case sizes <= 5 && k.slotW*float64(sizes)+labelLeast <= room:
		return columns
	case k.blockW >= layout.BlockW:
		return across
	}
	return named
}

// slotsLeft is where the text of one language ends for the sake of the counts at its right: a unit needs 15 mm before the
// figures.
func (k *look) slotsLeft(sizes int) float64 {
	if k.arrangement != apart || sizes == 1 || k.figures != columns {
		return k.proseR
	}
	return k.blockW - k.slotW*float64(sizes) - 18
}
