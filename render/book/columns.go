package book

import (
	"ovillo/render/page"
	"ovillo/render/words"
)

// The columns of two languages, and the spine between them.
const (
	columnW = 84.0
	spineL  = 84.0
	spineR  = 96.0
	spine   = 90.0 // its middle
)

// The columns of one language.
const (
	boxW  = 8.0
	textR = 112.0
)

// slotW is the width of one size where round numbers and counts stand in columns.
const slotW = 12.5

// side is the column of one language.
type side struct {
	l        *words.Language
	x, right float64 // its text
	edge     float64 // where slots and counts end
	head     float64 // where the number of a part stands
}

// margin is the left edge of what needs no box beside it: the block's own edge on the title page and in header and
// footer, where one language has no box column.
func (s side) margin() float64 { return s.head }

func (s side) w() float64 { return s.right - s.x }

// elem adds an element in the language of the side.
func (s side) elem(parent *page.Elem, tag string) *page.Elem {
	e := parent.New(tag)
	e.Lang = s.l.Tag()
	return e
}

// facing makes the columns of a document: two languages face each other, one has the box column at its left.
func facing(langs []*words.Language, sizes int) []side {
	if len(langs) == 2 {
		return []side{
			{l: langs[0], x: 0, right: columnW, edge: columnW, head: 0},
			{l: langs[1], x: spineR, right: blockW, edge: blockW, head: spineR},
		}
	}
	// The unit of a count needs 15 mm between text and slots.
	right := textR
	if sizes > 1 && !wide(sizes) {
		right = min(right, blockW-slotW*float64(sizes)-18)
	}
	return []side{{l: langs[0], x: boxW, right: right, edge: blockW, head: 0}}
}

// wide reports whether there are so many sizes that their numbers leave the columns for a strip over the whole block.
func wide(sizes int) bool { return sizes > 5 }
