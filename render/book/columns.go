package book

import (
	"ovillo/render/page"
	"ovillo/render/words"
)

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

// lists opens a list in each language.
func (s *setter) lists() []*page.Elem {
	list := make([]*page.Elem, len(s.sides))
	for i, sd := range s.sides {
		list[i] = sd.elem(s.sect, "L")
	}
	return list
}

// sidesOf makes the columns of a document: two languages face each other, one has the box column at its left.
func (k *look) sidesOf(langs []*words.Language) []side {
	if k.arrangement == facing {
		return []side{
			{l: langs[0], x: 0, right: k.columnW, edge: k.columnW, head: 0},
			{l: langs[1], x: k.spineR, right: k.blockW, edge: k.blockW, head: k.spineR},
		}
	}
	return []side{{l: langs[0], x: k.boxW, right: k.textR, edge: k.blockW, head: 0}}
}
