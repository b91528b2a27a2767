package compile

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/source"
)

// This file keeps which lengths became counts, and how far these miss them.

// Rounded keeps the counts of a call, and of one whose sizes are set by hand.
func (s *scope) Rounded(e *lang.Expr, v value.Vector) {
	f := v.Spread(s.mask).Fitted
	if f == nil || f.Wanted == nil {
		return
	}
	lengths := func(v value.Vector) plan.Lengths { v.Dim = value.Length; return v.Lengths() }
	r := plan.Rounded{Span: e.Span(), Stitch: s.c.gaugeID(f.Stitch), Unit: plan.UnitStitches, ByHand: f.ByHand,
		Counts: s.c.nums(plan.Absent), Multiple: s.c.nums(1), Plus: s.c.nums(0),
		Wanted: lengths(value.Vector{N: f.Wanted}), Got: lengths(value.Vector{N: f.Got}),
		Way: [...]string{"nearest", "up", "down"}[f.How.Way], TiesDown: f.How.TiesDown}
	if f.Rows {
		r.Unit = plan.UnitRows
	}
	for z, x := range v.Spread(s.mask).N {
		r.Multiple[z], r.Plus[z] = int(f.Step[z]), int(f.First[z])
		if x != nil && x.IsInt() {
			r.Counts[z] = int(x.Num().Int64())
		}
	}
	s.c.rounded(r)
}

// gaugeID is the stitch, or the stitch pattern, that a gauge is asked of by its name.
func (c *checker) gaugeID(name string) stitch.ID {
	if c.patterns[name] != nil {
		return stitch.ID(name)
	}
	f, _ := c.form(name)
	return f.ID
}

// rounded keeps a length that became a count. Where the same place of the source is worked out again, in a repeat or for
// other sizes, the last holds.
func (c *checker) rounded(r plan.Rounded) {
	r.Part, r.Let = -1, c.letting
	if c.at != nil {
		r.Part, r.Row = c.at.index, c.at.label
	}
	i := slices.IndexFunc(c.pat.Rounded, func(o plan.Rounded) bool { return o.Span == r.Span && o.Part == r.Part })
	if i < 0 {
		c.pat.Rounded = append(c.pat.Rounded, r)
		return
	}
	was := &c.pat.Rounded[i]
	if was.ByHand == nil {
		was.ByHand = r.ByHand
	}
	for z, n := range r.Counts {
		if n == plan.Absent {
			continue
		}
		was.Counts[z], was.Wanted[z], was.Got[z] = n, r.Wanted[z], r.Got[z]
		if r.Multiple != nil {
			was.Multiple[z], was.Plus[z] = r.Multiple[z], r.Plus[z]
		}
		if r.ByHand != nil {
			was.ByHand[z] = r.ByHand[z]
		}
	}
}

// roundedRows keeps rows that were made from a length, as the options of their header say.
func (p *partState) roundedRows(at source.Span, unit plan.Unit, id stitch.ID, counts plan.Nums, wanted, got plan.Lengths, opts []*lang.RowOpt) {
	r := plan.Rounded{Span: at, Stitch: id, Unit: unit, Counts: slices.Clone(counts), Wanted: slices.Clone(wanted), Got: got, Way: "nearest"}
	step, first, open := 1, 0, unit == plan.UnitRows && p.c.patterns[string(id)] != nil
	for _, o := range opts {
		switch {
		case o.Word == "even":
			step = 2
		case o.Word == "odd":
			step, first = 2, 1
		}
		open = open || o.Ending != ""
		r.TiesDown = r.TiesDown || o.Ties == "down"
		if o.Word == "up" || o.Word == "down" {
			r.Way = o.Word
		}
	}
	if !open {
		r.Multiple, r.Plus = p.c.nums(step), p.c.nums(first)
	}
	for z, n := range counts {
		if n == plan.Absent {
			r.Wanted[z], r.Got[z] = plan.NoLength, plan.NoLength
		}
	}
	p.c.rounded(r)
}

// inOrder puts what was kept into the order of the source; of a part that is like another, behind that one.
func (c *checker) inOrder() {
	slices.SortStableFunc(c.pat.Rounded, func(a, b plan.Rounded) int {
		if a.Part != b.Part && a.Part >= 0 && b.Part >= 0 {
			return a.Part - b.Part
		}
		return int(a.Span.Start - b.Span.Start)
	})
}
