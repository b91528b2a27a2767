package book

import (
	"strings"

	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/words"
)

// slots sets one text a size in the columns that end at edge, each at the right of its column. Every second size is
// heavier: place first, weight second, never colour. A row with a text too wide for its column is set smaller as a
// whole. spoken, if given, is what a screen reader says for each.
func (k *look) slots(texts []string, s layout.Style, edge float64, elem *page.Elem, spoken func(i int, text string) string) layout.Box {
	base := s.Baseline()
	s = fitting(texts, s, k.slotW-1.2)
	b := layout.Box{H: s.Leading}
	for i, text := range texts {
		x := edge - k.slotW*float64(len(texts)-1-i)
		box := layout.TextRight(text, s, i%2 == 1, x, elem)
		g := box.Items[0].(page.Glyphs)
		g.Base = base
		if spoken != nil {
			g.Actual = spoken(i, text)
		}
		b.Add(g)
	}
	return b
}

// fitting shrinks a style until every text fits into a width, but not below what can be read.
func fitting(texts []string, s layout.Style, w float64) layout.Style {
	for _, size := range []float64{s.Size, 9.5, 9, 8.5, 8} {
		if size > s.Size {
			continue
		}
		s.Size = size
		if fits(texts, s, w) {
			break
		}
	}
	return s
}

func fits(texts []string, s layout.Style, w float64) bool {
	for i, text := range texts {
		if s.Width(text, i%2 == 1) > w {
			return false
		}
	}
	return true
}

// nameType is the largest type in which the names of the sizes fit into columns of a width on one line each; if there is
// none, that in which no word of them has to be torn.
func (s *setter) nameType(sd side, style layout.Style, w float64) layout.Style {
	var names, words []string
	for i, size := range s.p.Sizes {
		name := breakable(sd.l.SizeName(size))
		names = append(names, name)
		for k, word := range strings.Fields(name) {
			if k == 0 || style.Width(word, true) > style.Width(words[i], true) {
				words = append(words[:i], word)
			}
		}
		if len(words) == i {
			words = append(words, "")
		}
	}
	if small := fitting(names, style, w); fits(names, small, w) {
		return small
	}
	return fitting(words, style, w)
}

// headsSizes reports whether figures have places that a head names.
func (s *setter) headsSizes() bool { return s.sizes > 1 && s.figures != named }

// sizeHead is the head of the size columns: a rule over the block and the name of each size in each language.
func (s *setter) sizeHead() layout.Strip {
	var b layout.Box
	b.Add(layout.Rule(0, 0, s.blockW, 0, 0.25))
	if s.figures == across {
		b.Put(0, 0, s.wideSizeHead())
		b.H = layout.Snap(b.H) + layout.Module
		return layout.Strip{Box: b, Heading: true, Keep: true}
	}
	for _, sd := range s.sides {
		if s.two() {
			b.Put(0, 0, layout.Text(sd.l.Say(words.SizeHead), s.sizeType, false, sd.x, nil))
		}
		b.Put(0, 0, s.sizeNames(sd))
	}
	b.H += layout.Module
	return layout.Strip{Box: b, Heading: true, Keep: true}
}

// sizeNames sets the names of the sizes over their columns. A name too wide for its column goes on in a second line.
func (s *setter) sizeNames(sd side) layout.Box {
	var b layout.Box
	var cells [][]layout.Line
	lines := 1
	style := s.nameType(sd, s.sizeType, s.slotW-1)
	for i := range s.p.Sizes {
		name := breakable(sd.l.SizeName(s.p.Sizes[i]))
		cell := layout.Break(weigh(name, i), style, s.slotW-1, 0)
		cells = append(cells, cell)
		lines = max(lines, len(cell))
	}
	for i, cell := range cells {
		x := sd.edge - s.slotW*float64(s.sizes-1-i)
		drop := style.Leading * float64(lines-len(cell))
		b.Put(0, drop, layout.SetRight(cell, style, x, nil))
	}
	return b
}
