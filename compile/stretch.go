package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
)

// This file cuts a run of rows into stretches that read alike. "58 rows: sc in each" is another row over a new chain than
// over the stitches of the row before, and "5 rounds: inc 6 evenly" is five different rounds.

// stretches returns the run in pieces, each of which is true of all its rows.
func (w *working) stretches() []*working {
	top := maxOf(w.times, w.mask)
	if top < 2 {
		return []*working{w}
	}
	if len(w.low.spreads)+len(w.low.cells) > 0 {
		return w.byGroups(top)
	}
	for z := range w.each {
		if e := w.each[z]; len(e) > 1 && !takeAlike(w.low.ops, e[0], e[1]) {
			return []*working{w.piece(0, 1), w.piece(1, top)}
		}
	}
	return []*working{w}
}

// byStart parts the sizes in which a run begins the part along a chain from those in which it does not: into the chain is
// another row than into stitches.
func (w *working) byStart() []*working {
	begin := w.begin()
	one, other := -1, -1
	for z := range w.mask {
		switch {
		case w.first[z] == nil:
		case begin[z]:
			one = z
		default:
			other = z
		}
	}
	if one < 0 || other < 0 || takeAlike(w.low.ops, w.first[one], w.first[other]) {
		return []*working{w}
	}
	return []*working{w.only(begin, true), w.only(begin, false)}
}

// begin tells in which sizes the first row of the run is the first of the part, along a chain.
func (w *working) begin() []bool {
	out := make([]bool, len(w.mask))
	switch w.p.plan.Start.Kind {
	case plan.StartChain, plan.StartBothSides, plan.StartJoined:
		for z := range out {
			out[z] = w.first[z] != nil && w.from[z] == 1
		}
	}
	return out
}

// only is the run in some of its sizes.
func (w *working) only(sizes []bool, in bool) *working {
	one := *w
	one.mask, one.first, one.last = slices.Clone(w.mask), slices.Clone(w.first), slices.Clone(w.last)
	one.times, one.from, one.to, one.each = slices.Clone(w.times), slices.Clone(w.from), slices.Clone(w.to), slices.Clone(w.each)
	for z := range one.mask {
		if sizes[z] != in {
			one.mask[z], one.first[z], one.last[z], one.each[z] = false, nil, nil, nil
			one.times[z], one.from[z], one.to[z] = plan.Absent, plan.Absent, plan.Absent
		}
	}
	return &one
}

// takeAlike reports whether two rows took the same kinds of place, instruction by instruction.
func takeAlike(ops []*fabric.Op, a, b *fabric.Result) bool {
	for _, o := range ops {
		if a.Traces[o.Index].Took != b.Traces[o.Index].Took || !takeAlike(o.Body, a, b) {
			return false
		}
	}
	return true
}

// byGroups cuts a run with spread shaping wherever the shaping comes out in other groups, and one by a chart wherever the
// cells are met in another order.
func (w *working) byGroups(top int) []*working {
	var out []*working
	from := 0
	for i := 1; i <= top; i++ {
		if i == top || !w.groupsAlike(i-1, i) {
			out = append(out, w.piece(from, i))
			from = i
		}
	}
	return out
}

func (w *working) groupsAlike(i, j int) bool {
	for _, e := range w.each {
		if j >= len(e) {
			continue
		}
		if !takeAlike(w.low.ops, e[i], e[j]) || slices.ContainsFunc(w.low.spreads, func(t int) bool {
			return e[i].Traces[t].Group != e[j].Traces[t].Group
		}) || slices.ContainsFunc(w.low.cells, func(o *fabric.Op) bool {
			return !slices.Equal(e[i].Traces[o.Index].Worked.Codes, e[j].Traces[o.Index].Worked.Codes)
		}) {
			return false
		}
	}
	return true
}

// piece is the rows of a run from number i up to number j, counted from 0.
func (w *working) piece(i, j int) *working {
	c := w.p.c
	one := *w
	one.times, one.from, one.to = c.nums(plan.Absent), c.nums(plan.Absent), c.nums(plan.Absent)
	one.first, one.last = make([]*fabric.Result, c.z), make([]*fabric.Result, c.z)
	for z, e := range w.each {
		n := min(j, w.times[z]) - i
		if n < 1 || i >= len(e) || w.first[z] == nil {
			continue
		}
		one.times[z], one.from[z], one.to[z] = n, w.from[z]+i, w.from[z]+i+n-1
		one.first[z] = e[i]
		if one.last[z] = w.last[z]; i+n-1 < len(e) {
			one.last[z] = e[i+n-1]
		}
	}
	return &one
}

// spreadOps lists the traces of spread shaping in a list.
func spreadOps(ops []*fabric.Op, to []int) []int {
	for _, o := range ops {
		if o.Kind == fabric.Spread || o.Kind == fabric.Spaced {
			to = append(to, o.Index)
		}
		to = spreadOps(o.Body, to)
	}
	return to
}
