package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
)

// This file finds in what several sizes that work by a chart read the same: so many cells of the chart before the first whole time,
// so many whole times, so many cells behind the last.

// readAlike cuts a printed row into one for each group of sizes that meet the cells of a chart in the same order. Sizes in which
// the row shows different sides do not.
func (w *working) readAlike() []*working {
	if len(w.low.cells) == 0 {
		return []*working{w}
	}
	var groups [][]int
	for z, res := range w.first {
		if res == nil {
			continue
		}
		i := slices.IndexFunc(groups, func(g []int) bool { return w.alike(append(slices.Clone(g), z)) })
		if i < 0 {
			groups = append(groups, []int{z})
		} else {
			groups[i] = append(groups[i], z)
		}
	}
	if len(groups) < 2 {
		return []*working{w}
	}
	var out []*working
	for _, g := range groups {
		sizes := make([]bool, len(w.mask))
		for _, z := range g {
			sizes[z] = true
		}
		out = append(out, w.only(sizes, true))
	}
	return out
}

// alike reports whether some sizes meet the cells in the same order, and begin in the same yarn where a chain is the first cell.
func (w *working) alike(zs []int) bool {
	for _, o := range w.low.cells {
		got := make([]*fabric.Worked, len(w.first))
		first := -1
		for _, z := range zs {
			got[z] = &w.first[z].Traces[o.Index].Worked
			if o != w.kick.first || !w.kick.begin.Counts || len(got[z].Codes) == 0 {
				continue
			}
			if first >= 0 && first != got[z].Codes[0] {
				return false
			}
			first = got[z].Codes[0]
		}
		if repeatOf(got) == nil && !sameCodes(got) {
			return false
		}
	}
	return true
}

// sameCodes reports whether the sizes work the same cells.
func sameCodes(got []*fabric.Worked) bool {
	var first *fabric.Worked
	for _, g := range got {
		switch {
		case g == nil:
		case first == nil:
			first = g
		case !slices.Equal(first.Codes, g.Codes):
			return false
		}
	}
	return true
}

// repeatOf is the row of the chart as the sizes meet it; nil if they meet it differently, or if a round that
// begins over its join is no whole number of charts. A cell that no size works is like the one before it.
func repeatOf(got []*fabric.Worked) []int {
	var unit []int
	var known []bool
	for _, g := range got {
		if g == nil {
			continue
		}
		if unit == nil {
			unit, known = make([]int, g.Wide), make([]bool, g.Wide)
		}
		if g.Seam && len(g.Codes)%g.Wide != 0 {
			return nil
		}
		for i, code := range g.Codes {
			at := (g.First + i) % g.Wide
			if known[at] && unit[at] != code {
				return nil
			}
			unit[at], known[at] = code, true
		}
	}
	for i := range 2 * len(unit) {
		if at := i % len(unit); !known[at] {
			unit[at] = unit[(at+len(unit)-1)%len(unit)]
		}
	}
	return period(unit)
}

// period is the shortest row of cells that gives the whole row when it is repeated.
func period(unit []int) []int {
	for d := 1; d < len(unit); d++ {
		if len(unit)%d == 0 && slices.Equal(unit[d:], unit[:len(unit)-d]) {
			return unit[:d]
		}
	}
	return unit
}

// span is a run of equal cells.
type span struct{ from, to, code int }

func spansOf(codes []int) []span {
	var out []span
	for i, code := range codes {
		if k := len(out) - 1; k >= 0 && out[k].code == code {
			out[k].to = i + 1
			continue
		}
		out = append(out, span{i, i + 1, code})
	}
	return out
}

// laid is how the cells of all sizes lie over the repeats of a unit.
type laid struct {
	unit              []int
	first, lead, last plan.Nums // the cell the lead begins with; the cells before the first whole unit, and behind the last
	times, all        plan.Nums
	same              []int // the cells themselves, where they are the same in every size
	flat              bool
	turned            int // how many cells on the unit begins a cell of the chart
}

// lay lays the cells of an operation over the repeats of the chart.
func (pr *printer) lay(got []*fabric.Worked) laid {
	c := pr.p.c
	l := laid{unit: repeatOf(got), first: c.nums(plan.Absent), lead: c.nums(plan.Absent), last: c.nums(plan.Absent),
		times: c.nums(plan.Absent), all: c.nums(plan.Absent), flat: true}
	whole := l.unit == nil // readAlike has parted the sizes: these work the same cells
	for _, g := range got {
		if g != nil && whole {
			l.unit = period(g.Codes)
		}
	}
	if !whole {
		l.turn(got)
	}
	d := len(l.unit)
	begun := false
	for z, g := range got {
		if g == nil {
			continue
		}
		n, at := len(g.Codes), (g.First+l.turned)%d
		if whole {
			at = 0
		}
		l.all[z], l.first[z], l.lead[z] = n, at, min(n, (d-at)%d)
		l.times[z] = (n - l.lead[z]) / d
		l.last[z] = n - l.lead[z] - l.times[z]*d
		if l.flat = l.flat && (!begun || slices.Equal(l.same, g.Codes)); !begun {
			l.same, begun = g.Codes, true
		}
	}
	return l
}

// turn lets the unit begin where all sizes begin, if it then goes in a whole number of times.
func (l *laid) turn(got []*fabric.Worked) {
	d, at := len(l.unit), -1
	for _, g := range got {
		switch {
		case g == nil || len(g.Codes) == 0:
		case len(g.Codes)%d != 0 || at >= 0 && at != g.First%d:
			return
		default:
			at = g.First % d
		}
	}
	if at > 0 {
		l.unit, l.turned = append(slices.Clone(l.unit[at:]), l.unit[:at]...), d-at
	}
}

// overlap is how many cells of a run lie from a to before b.
func overlap(s span, a, b int) int { return max(0, min(s.to, b)-max(s.from, a)) }

// over gives each size a number, from what it has of the cells.
func (l *laid) over(of func(z int) int) plan.Nums {
	n := slices.Clone(l.all)
	for z := range n {
		if n[z] != plan.Absent {
			n[z] = of(z)
		}
	}
	return n
}
