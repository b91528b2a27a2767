package compile

import (
	"slices"

	"ovillo/compile/plan"
)

// This file says what the rows of a repeat change each time they are worked. The total at the end alone would leave a maker
// who has done half of the passes without a number to check against.

// change is what each pass of a block changes, nil where it changes nothing or not always the same.
func (r *repeated) change(b *plan.Block, skipped int) []plan.Count {
	ends := make([][]int, r.p.c.z)
	for z, on := range r.mask {
		if !on || r.times[z] <= skipped {
			continue
		}
		for _, pass := range r.passes[skipped:min(len(r.passes), r.times[z])] {
			ends[z] = append(ends[z], pass.before[z])
		}
		ends[z] = append(ends[z], r.p.number[z])
	}
	return r.p.changeBetween(b.Counts, ends)
}

// rowChange is what each row of a run changes.
func (p *partState) rowChange(r *plan.Row, w *working) []plan.Count {
	run := false
	for z, on := range w.mask {
		run = run || on && w.first[z] != nil && w.to[z] > w.from[z]
	}
	if !run {
		return nil
	}
	ends := make([][]int, p.c.z)
	for z, on := range w.mask {
		if !on || w.first[z] == nil {
			continue
		}
		ends[z] = make([]int, 0, w.to[z]-w.from[z]+2)
		for n := w.from[z] - 1; n <= w.to[z]; n++ {
			ends[z] = append(ends[z], n)
		}
	}
	return p.changeBetween(r.Counts, ends)
}

// changeBetween compares the rows with the given numbers, one after the other in each size, by what is counted at the last of
// them. A foundation counts as the row before the first.
func (p *partState) changeBetween(counts []plan.Count, ends [][]int) []plan.Count {
	spaces := 0
	for _, k := range counts {
		if k.Kind == plan.CountSpaces {
			spaces++
		}
	}
	if spaces > 1 {
		return nil // a row keeps how many spaces it has, not of which chains
	}
	var out []plan.Count
	for _, k := range counts {
		k.N = p.c.nums(plan.Absent)
		for z, numbers := range ends {
			for i := 1; i < len(numbers); i++ {
				before, ok := p.countAt(k, len(counts) == 1, z, numbers[i-1])
				after, too := p.countAt(k, len(counts) == 1, z, numbers[i])
				d := after - before
				if !ok || !too || i > 1 && d != k.N[z] {
					return nil
				}
				k.N[z] = d
			}
		}
		if slices.ContainsFunc(k.N, func(v int) bool { return v != 0 && v != plan.Absent }) {
			out = append(out, k)
		}
	}
	return out
}

// countAt is a count of a row by its number. Of a count that stands alone the row before the first may be of another stitch: all
// its stitches count.
func (p *partState) countAt(k plan.Count, alone bool, z, number int) (int, bool) {
	f := plan.FactOf(p.plan.Worked[z], number)
	if f == nil {
		return 0, false
	}
	switch k.Kind {
	case plan.CountSts:
		return f.Stitches, true
	case plan.CountForm:
		if alone {
			return f.Stitches, true
		}
		return f.CountedAs(k.Form), true
	case plan.CountSpaces:
		return f.Spaces, true
	}
	return 0, false
}
