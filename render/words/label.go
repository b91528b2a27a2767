package words

import (
	"strconv"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// label heads a row or a run of rows. Where the numbers are the same in every size they stand in the label; else the
// label is the bare word, and each size has its number in a slot.
func (c *context) label(first, last plan.Nums, called plan.Text) (rich.Text, []string) {
	name := c.l.theName(called)
	if name != "" {
		name = upper(c.l.voice.bare(name))
	}
	a, oneFirst := first.Same()
	b, oneLast := last.Same()
	if oneFirst && oneLast && c.all(first) && c.all(last) {
		l := c.l.voice.label(c.round(), a, b)
		if name != "" {
			l = c.l.voice.namedLabel(name, l)
		}
		return l, nil
	}
	slots := make([]string, len(first))
	several := false
	for i := range first {
		slots[i] = slot(first[i], last[i])
		several = several || first[i] != last[i]
	}
	if name != "" {
		return rich.T(name), slots
	}
	return c.l.voice.bareLabel(c.round(), several), slots
}

// all reports whether every size has the number. Where sizes are named, those that the step is not for need none: it says so.
func (c *context) all(n plan.Nums) bool {
	if !c.l.read.manner.Named {
		return n.Everywhere()
	}
	for i, v := range n {
		if v == plan.Absent && c.sizes.Has(i) {
			return false
		}
	}
	return len(n) > 0
}

// slot is the number or the range of one size; slots are narrow, so every language writes a range with a dash.
func slot(a, b int) string {
	switch {
	case a == plan.Absent:
		return dash
	case a == b:
		return strconv.Itoa(a)
	}
	return strconv.Itoa(a) + dash + strconv.Itoa(b)
}
