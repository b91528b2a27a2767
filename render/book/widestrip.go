package book

import (
	"slices"

	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// With six sizes and more the figures leave the columns: one strip over the whole block serves both languages, their
// words at its ends.

// endW is the room for words at an end of the strip.
const endW = 17.0

// stripColumns are the left edge of the first size in the shared strip and the width of a size.
func (s *setter) stripColumns() (left, w float64) {
	left = s.sides[0].x + endW
	right := s.blockW
	if s.two() {
		right -= endW
	}
	return left, (right - left) / float64(s.sizes)
}

// centred sets one text a size in the middle of its column of the strip.
func (s *setter) centred(texts []string, style layout.Style, elem *page.Elem) layout.Box {
	left, w := s.stripColumns()
	base := style.Baseline()
	style = fitting(texts, style, w-1.2)
	b := layout.Box{H: style.Leading}
	say := s.speak(s.sides[0])
	for i, text := range texts {
		g := layout.TextCentred(text, style, i%2 == 1, left+w*(float64(i)+0.5), elem).Items[0].(page.Glyphs)
		g.Base = base
		if elem != nil {
			g.Actual = say(i, text)
		}
		b.Add(g)
	}
	return b
}

// wideSizeHead is the head of the strip: the names of the sizes.
func (s *setter) wideSizeHead() layout.Box {
	left, w := s.stripColumns()
	var b layout.Box
	first := s.sides[0]
	b.Put(0, 0, s.endWords(func(sd side) rich.Text { return rich.T(sd.l.Say(words.SizeHead)) }, s.sizeType, nil))
	lines := 1
	style := s.nameType(first, s.sizeType, w-1)
	for i, size := range s.p.Sizes {
		cell := layout.Break(weigh(breakable(first.l.SizeName(size)), i), style, w-1, 0)
		lines = max(lines, len(cell))
		for k, line := range cell {
			x := left + w*(float64(i)+0.5) - line.Width/2
			b.Put(0, s.sizeType.Leading*float64(k), layout.Set([]layout.Line{line}, style, x, nil))
		}
	}
	b.H = s.sizeType.Leading * float64(lines)
	return b
}

// endWords sets a word of each language at its end of the strip, on the line of the figures.
func (s *setter) endWords(text func(sd side) rich.Text, style layout.Style, elem []*page.Elem) layout.Box {
	var b layout.Box
	drop := s.figureType.Baseline() - style.Baseline()
	for i, sd := range s.sides {
		var e *page.Elem
		if elem != nil {
			e = elem[i]
		}
		lines := layout.Break(text(sd), style, endW-1, 0)
		if i == 0 {
			b.Put(0, drop, layout.Set(lines, style, sd.x, e))
		} else {
			b.Put(0, drop, layout.SetRight(lines, style, s.blockW, e))
		}
	}
	b.H = layout.Snap(max(b.H-drop, 0))
	return b
}

// wideHeads sets what stands above the texts of a row, and says how far down the boxes to tick come, which must not meet
// the figures of the strip.
func (s *setter) wideHeads(cells []cell) (heads []layout.Box, tickAt float64) {
	figures := cells[0].text.Slots
	if figures == nil {
		return s.rowHeads(cells), 0
	}
	short := true
	for _, c := range cells {
		short = short && len(c.label) == 1 && c.label[0].Width <= endW-1 && len(c.only) == 0
	}
	bare := slices.Clone(cells)
	for i := range bare {
		bare[i].text.Slots = nil
		if short {
			bare[i].label = nil
		}
	}
	heads = s.rowHeads(bare)
	strip := s.centred(figures, s.figureType, cells[0].name)
	if short {
		names := []*page.Elem{cells[0].name}
		if s.two() {
			names = append(names, cells[1].name)
		}
		strip.Put(0, 0, s.endWords(func(sd side) rich.Text { return cells[s.nth(sd)].text.Label }, s.labelType, names))
	}
	top := heads[0].H
	for i := range heads {
		heads[i].H = top + strip.H
	}
	heads[0].Put(0, top, strip)
	return heads, heads[0].H
}

// nth is the number of a side.
func (s *setter) nth(sd side) int {
	if sd.x == s.sides[0].x {
		return 0
	}
	return 1
}

// wideFoot sets the figures under the texts of a row: a line for each letter, then the count under its rule. Figures that
// are the count itself are one line with both.
func (s *setter) wideFoot(cells []cell, named lettering) layout.Box {
	var b layout.Box
	left, w := s.stripColumns()
	count := cells[0].text.Count
	counted := count != nil && count.Slots != nil
	for i, figures := range named.figures {
		line := s.centred(figures, s.figureType, nil)
		letter := letters[i : i+1]
		if counted && slices.Equal(figures, count.Slots) {
			continue
		}
		s.letterEnds(&line, letter)
		b.Below(0, line)
	}
	switch {
	case counted:
		line := s.centred(count.Slots, s.figureType, cells[0].sum)
		line.Add(layout.Rule(left, 0, left+w*float64(s.sizes), 0, sumLine))
		s.countEnds(&line, cells, named)
		b.Below(0, line)
	case count != nil:
		line := s.each(func(sd side) layout.Box {
			c := cells[s.nth(sd)]
			if c.text.Count == nil {
				return layout.Box{}
			}
			box := s.sumText(sd, c.text.Count, c.sum)
			s.circleLetters(&box)
			return box
		})
		if b.H > 0 {
			b.H += s.countGap // the sum is of the text, not of the figures above it
		}
		b.Below(0, line)
	}
	return b
}

// letterEnds puts a letter at both ends of a line of figures.
func (s *setter) letterEnds(line *layout.Box, letter string) {
	circled(line, s.sides[0].x+circleD/2, 0, letter, nil, "")
	if s.two() {
		circled(line, s.blockW-circleD/2, 0, letter, nil, "")
	}
}

// countEnds puts what is counted at the ends of the count, behind the letter if a sentence speaks of these figures.
func (s *setter) countEnds(line *layout.Box, cells []cell, named lettering) {
	inset := 0.0
	for i, figures := range named.figures {
		if slices.Equal(figures, cells[0].text.Count.Slots) {
			s.letterEnds(line, letters[i:i+1])
			inset = circleD + 1.2
		}
	}
	drop := s.figureType.Baseline() - s.unitType.Baseline()
	for i, c := range cells {
		if c.text.Count == nil {
			continue
		}
		unit := layout.Break(c.text.Count.Unit, s.unitType, endW-1-inset, 0)
		var box layout.Box
		if i == 0 {
			box = layout.Set(unit, s.unitType, c.side.x+inset, c.sum)
		} else {
			box = layout.SetRight(unit, s.unitType, s.blockW-inset, c.sum)
		}
		line.Put(0, drop, box)
		line.H = layout.Snap(line.H - drop)
	}
}
