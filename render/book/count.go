package book

import (
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// count sets the foot of a row: what the row counts to under a short rule, as a total stands in a sum.
func (s *setter) count(sd side, c *words.CountText, elem *page.Elem) layout.Box {
	switch {
	case c == nil:
		return layout.Box{}
	case s.sizes == 1:
		return layout.SetRight(s.oneCount(sd, c), s.labelType, sd.edge, elem)
	case s.figures == named:
		return s.namedCount(sd, c, elem)
	case c.Slots == nil:
		return s.sumText(sd, c, elem)
	default:
		return s.sumSlots(sd, c, elem)
	}
}

// countRoom is how wide a count may be: the column, or with one language what is right of the text.
func (s *setter) countRoom(sd side) float64 {
	if s.arrangement == apart {
		return sd.edge - sd.right - unitGap
	}
	return sd.w()
}

// oneCount is the count of a pattern in one size: strong and without a rule.
func (s *setter) oneCount(sd side, c *words.CountText) []layout.Line {
	text := c.Line
	if c.Slots != nil {
		text = append(rich.T(c.Slots[0]+"\u00A0"), c.Unit...)
	}
	return layout.Break(text, s.labelType, s.countRoom(sd), 0)
}

// sumText sets a count that is the same in all sizes, or made of several kinds.
func (s *setter) sumText(sd side, c *words.CountText, elem *page.Elem) layout.Box {
	lines := layout.Break(c.Line, s.figureType, s.countRoom(sd), 0)
	w := 0.0
	for _, l := range lines {
		w = max(w, l.Width)
	}
	b := layout.SetRight(lines, s.figureType, sd.edge, elem)
	b.Add(layout.Rule(sd.edge-w, 0, sd.edge, 0, sumLine))
	return b
}

// sumSlots sets a count that differs between sizes: the unit, then a figure for each size in its column.
func (s *setter) sumSlots(sd side, c *words.CountText, elem *page.Elem) layout.Box {
	left := sd.edge - s.slotW*float64(len(c.Slots))
	from := sd.x
	if s.arrangement == apart {
		from = sd.right
	}
	unit := layout.Break(c.Unit, s.unitType, left-unitGap-from, 0)
	over := s.unitType.Leading * float64(max(len(unit)-1, 0))
	// The figures' baseline holds for the unit too, which is smaller.
	drop := s.figureType.Baseline() - s.unitType.Baseline()
	var b layout.Box
	b.Put(0, drop, layout.SetRight(unit, s.unitType, left-unitGap, elem))
	b.Put(0, over, s.slots(c.Slots, s.figureType, sd.edge, elem, s.speak(sd)))
	b.Add(layout.Rule(left, over, sd.edge, over, sumLine))
	b.H = over + s.figureType.Leading
	return b
}

// speak makes what a screen reader says for a slot: the size with its figure.
func (s *setter) speak(sd side) func(i int, text string) string {
	return func(i int, text string) string {
		spoken := sd.l.SizeName(s.p.Sizes[i]) + " " + text
		if i < s.sizes-1 {
			spoken += ", "
		}
		return spoken
	}
}
