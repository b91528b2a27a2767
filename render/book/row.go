package book

import (
	"slices"
	"strings"

	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// row is one step of a part, ready to be set: its text in each language and what belongs to both.
type row struct {
	texts  []words.StepText // one a side
	ticks  int
	tickAt float64 // how far down the first box stands
	tape   *tape
	below  layout.Box // figures of many sizes, under the text
}

// Measures inside a row.
const (
	sumLine    = 0.2
	unitGap    = 3.0
	runInGap   = 2.5
	longRow    = 12 // lines of text from which a row may be split
	splitLines = 2  // the least that stands on either side of a split
	countRoom  = 5.0
)

// cell is one language of a row while it is laid out.
type cell struct {
	side  side
	text  words.StepText
	only  []layout.Line
	label []layout.Line
	lines []layout.Line
	foot  layout.Box

	name, body, sum *page.Elem // label, text and count
}

// row makes the strips of a step: one, or several if it is so long that it may be split.
func (s *setter) row(r row) []layout.Strip {
	item := s.list.New("LI")
	var named lettering
	if s.figures == across {
		named = letterLists(r.texts)
	}
	cells := make([]cell, len(s.sides))
	for i, sd := range s.sides {
		cells[i] = s.cell(sd, r.texts[i], item, i)
	}
	longest := 0
	for i := range cells {
		longest = max(longest, len(cells[i].lines))
	}
	var heads []layout.Box
	if s.figures == across {
		heads, r.tickAt = s.wideHeads(cells)
		r.below = s.wideFoot(cells, named)
	} else {
		heads = s.rowHeads(cells)
		for i, c := range cells {
			cells[i].foot = s.count(c.side, c.text.Count, c.sum)
		}
	}
	atEnd := s.countsAtEnd(cells)
	if longest > longRow {
		return s.longRow(r, cells, heads, longest, atEnd)
	}
	box := s.closed(cells, heads, 0, atEnd)
	s.furnish(&box, r)
	s.refer(&box)
	return []layout.Strip{{Box: box, Space: s.rowSpace}}
}

// cell breaks the texts of one language into lines.
func (s *setter) cell(sd side, t words.StepText, item *page.Elem, nth int) cell {
	if one, ok := s.oneNumber(sd, t); ok {
		t.Label = append(slices.Clone(t.Label), rich.Run{Text: "\u00A0" + one})
		t.Slots = nil
	}
	c := cell{side: sd, text: t}
	if nth == 0 {
		c.name = sd.elem(item, "Lbl")
		body := sd.elem(item, "LBody")
		c.body, c.sum = sd.elem(body, "P"), sd.elem(body, "P")
	} else {
		body := item.Kids[1]
		c.name, c.body, c.sum = sd.elem(body, "P"), sd.elem(body, "P"), sd.elem(body, "P")
	}
	c.only = layout.Break(t.Only, s.onlyType, sd.w(), 0)
	label, indent := t.Label, 0.0
	if s.sizes == 1 && len(label) > 0 {
		c.label = layout.Break(label, s.labelType, sd.w(), 0)
		if len(c.label) == 1 {
			indent = c.label[0].Width + runInGap
		}
	} else if len(label) > 0 && s.figures == across {
		c.label = layout.Break(label, s.labelType, sd.w(), 0)
	} else if len(label) > 0 {
		c.label = layout.Break(label, s.labelType, s.labelRoom(sd, t), 0)
	}
	c.lines = sd.broken(s.linked(sd, t.Body), s.textType, sd.w(), indent)
	return c
}

// oneNumber is the number of a row that needs no columns: there is one size, or figures have none and all sizes of the row,
// which stand above it, agree.
func (s *setter) oneNumber(sd side, t words.StepText) (number string, ok bool) {
	switch {
	case t.Slots == nil:
		return "", false
	case s.sizes == 1:
		return t.Slots[0], true
	case s.figures == named:
		return alike(s.sizedOf(sd, t.Slots))
	}
	return "", false
}

// labelRoom is how wide a label may be beside its slots.
func (s *setter) labelRoom(sd side, t words.StepText) float64 {
	if t.Slots == nil || s.figures == named {
		return sd.w()
	}
	return min(sd.w(), sd.edge-sd.x-s.slotW*float64(s.sizes)-1)
}

// rowHeads sets what stands above the texts, and makes it equally high on all sides so that the texts begin together.
func (s *setter) rowHeads(cells []cell) []layout.Box {
	only, label := 0.0, 0.0
	for _, c := range cells {
		only = max(only, float64(len(c.only))*s.onlyType.Leading)
		if s.runsIn(c) {
			continue
		}
		label = max(label, s.labelBox(c).H)
	}
	boxes := make([]layout.Box, len(cells))
	for i, c := range cells {
		b := &boxes[i]
		b.Put(0, 0, layout.Set(c.only, s.onlyType, c.side.x, c.name))
		b.Put(0, only, s.labelBox(c))
		b.H = only + label
	}
	return boxes
}

// labelBox sets the label of a row, with the numbers of each size.
func (s *setter) labelBox(c cell) layout.Box {
	b := layout.Set(c.label, s.labelType, c.side.x, c.name)
	switch {
	case c.text.Slots == nil:
	case s.figures == named:
		b.Below(0, s.namedFigures(s.sizedOf(c.side, c.text.Slots), s.figureType, c.side.x, c.side.w(), c.name))
	default:
		b.Put(0, 0, s.slots(c.text.Slots, s.figureType, c.side.edge, c.name, s.speak(c.side)))
	}
	return b
}

// runsIn reports whether the label stands on the first line of the text, as it does where there is only one size.
func (s *setter) runsIn(c cell) bool { return s.sizes == 1 && len(c.label) <= 1 }

// closed sets a whole row, or the last lines of a split one, from line number from: text on top, counts at the foot.
func (s *setter) closed(cells []cell, heads []layout.Box, from int, atEnd bool) layout.Box {
	sides := make([]layout.Side, len(cells))
	for i, c := range cells {
		var top layout.Box
		if heads != nil {
			top = heads[i]
		}
		if from < len(c.lines) {
			top.Below(0, s.lines(c, from, len(c.lines)))
		}
		sides[i] = layout.Side{Top: top, Foot: c.foot}
		if atEnd && len(c.foot.Items) > 0 {
			top.H = max(top.H, c.foot.H)
			top.Put(0, top.H-c.foot.H, c.foot)
			sides[i] = layout.Side{Top: top}
		}
	}
	return layout.Facing(s.countGap, sides...)
}

// lines sets some lines of the text of a row.
func (s *setter) lines(c cell, from, to int) layout.Box {
	b := layout.Set(c.lines[from:to], s.textType, c.side.x, c.body)
	if s.figures == across {
		s.circleLetters(&b)
	}
	return b
}

// countsAtEnd reports whether the counts stand on the last line of the text: always with one language, where they have
// a column of their own; with two languages only for one size, if both sides have room and equally many lines.
func (s *setter) countsAtEnd(cells []cell) bool {
	if s.arrangement == apart {
		return true
	}
	if s.sizes > 1 {
		return false
	}
	for _, c := range cells {
		if c.text.Count == nil || len(c.lines) == 0 || len(c.lines) != len(cells[0].lines) {
			return false
		}
		count := s.oneCount(c.side, c.text.Count)
		if len(count) != 1 || c.lines[len(c.lines)-1].End()+countRoom+count[0].Width > c.side.w() {
			return false
		}
	}
	return true
}

// furnish adds what both languages share: the boxes to tick and the tape.
func (s *setter) furnish(b *layout.Box, r row) {
	b.Put(0, r.tickAt, s.ticks(s.axis, r.ticks))
	if r.below.H > 0 {
		b.Below(s.countGap, r.below)
	}
	if r.tape == nil {
		return
	}
	gap := 2 * layout.Module
	if len(r.tape.wedges) > 0 {
		gap = layout.Module // the wedges bring white of their own
	}
	b.Below(gap, r.tape.box(s.sides[0].x, s.blockW, s.tapeType))
	b.H += layout.Module // so that the tape stays nearer to its own row than to the next
}

// longRow makes the strips of a row that may be split between its lines, at least two of every language on either side and
// the count with the last.
func (s *setter) longRow(r row, cells []cell, heads []layout.Box, longest int, atEnd bool) []layout.Strip {
	var strips []layout.Strip
	shortest := longest
	for _, c := range cells {
		if n := len(c.lines); n > 0 {
			shortest = min(shortest, n)
		}
	}
	for k := range longest - 1 {
		var b layout.Box
		if k == 0 {
			for _, head := range heads {
				b.Put(0, 0, head)
			}
		}
		y := b.H
		for _, c := range cells {
			if k < len(c.lines) {
				b.Put(0, y, s.lines(c, k, k+1))
			}
		}
		b.H = y + s.textType.Leading
		strip := layout.Strip{Box: b, Keep: shortest-(k+1) < splitLines}
		if k == 0 {
			strip.Space = s.rowSpace
			strip.Put(0, r.tickAt, s.ticks(s.axis, r.ticks))
			strip.H = b.H
		}
		strips = append(strips, strip)
	}
	last := s.closed(cells, nil, longest-1, atEnd)
	s.furnish(&last, row{tape: r.tape, below: r.below})
	s.refer(&last)
	strips = append(strips, layout.Strip{Box: last})
	return layout.Loosely(strips, splitLines)
}

// weigh makes the text of size number i: every second one is strong.
func weigh(text string, i int) rich.Text { return rich.Text{{Text: text, Strong: i%2 == 1}} }

// breakable lets the name of a size go on in a second line, which its no-break spaces would forbid.
func breakable(name string) string { return strings.ReplaceAll(name, "\u00A0", " ") }
