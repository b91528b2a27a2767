package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
)

// This file prints what is worked by a chart, from the cells as they were worked in every size.

// worked gathers what the operation came to in every size.
func (pr *printer) worked(o *fabric.Op) []*fabric.Worked {
	got := make([]*fabric.Worked, len(pr.w.first))
	for z, res := range pr.w.first {
		if res != nil && res.Traces[o.Index].Runs > 0 {
			got[z] = &res.Traces[o.Index].Worked
		}
	}
	return got
}

// byCell prints a stretch of a row that is worked by a chart.
func (pr *printer) byCell(in plan.Instr, o *fabric.Op) []plan.Instr {
	got := pr.worked(o)
	if !slices.ContainsFunc(got, func(g *fabric.Worked) bool { return g != nil }) {
		return nil
	}
	l := pr.lay(got)
	pr.overTook(&in, o)
	if o.Cells.Behind > 0 {
		return pr.mesh(&l, o, in.Over, got)
	}
	if in.N = l.all; o.N == nil {
		pr.bound(&in, o, &o.Bound)
	}
	if len(l.unit) == 1 {
		in.Op, in.Yarn = plan.Work, l.unit[0]
		return []plan.Instr{in}
	}
	in.Op, in.Body, in.Cells = plan.Repeat, pr.colours(&l, o, in.Over), l.all
	in.N = l.over(func(z int) int { return min(l.all[z], 1) })
	return []plan.Instr{in}
}

// colours prints the cells of a stretch: run by run, or over the repeats of the chart if that is shorter.
func (pr *printer) colours(l *laid, o *fabric.Op, over plan.PlaceKind) []plan.Instr {
	runs := func(codes []int, n func(s span) plan.Nums) []plan.Instr {
		var out []plan.Instr
		for _, s := range spansOf(codes) {
			if k := n(s); !k.Is(0) {
				out = append(out, plan.Instr{Op: plan.Work, Form: o.Form, N: k, Over: over, Marker: -1, Yarn: s.code})
			}
		}
		return out
	}
	unit := runs(l.unit, func(s span) plan.Nums { return l.over(func(int) int { return s.to - s.from }) })
	out := runs(l.unit, func(s span) plan.Nums {
		return l.over(func(z int) int {
			if l.lead[z] == 0 {
				return 0
			}
			return overlap(s, l.first[z], l.first[z]+l.lead[z])
		})
	})
	switch {
	case l.times.Is(0):
	case l.times.Is(1):
		out = append(out, unit...)
	default:
		out = append(out, plan.Instr{Op: plan.Repeat, Reach: plan.Times, N: l.times, Body: unit, Marker: -1, Yarn: -1})
	}
	out = append(out, runs(l.unit, func(s span) plan.Nums { return l.over(func(z int) int { return overlap(s, 0, l.last[z]) }) })...)
	if l.flat {
		flat := runs(l.same, func(s span) plan.Nums { return l.over(func(int) int { return s.to - s.from }) })
		if len(flat) <= size(out) {
			return flat
		}
	}
	return out
}

// size is how many instructions are said.
func size(work []plan.Instr) int {
	n := 0
	for _, in := range work {
		n += 1 + size(in.Body)
	}
	return n
}

// beside lets what stands beside a stretch of a colour chart read with it: every stitch there says its yarn.
func (pr *printer) beside(r *plan.Row) {
	if cells := pr.w.low.cells; len(cells) > 0 && cells[0].Cells.Behind == 0 && len(pr.p.c.pat.Yarns) > 1 {
		saysYarn(r.Work, r.Yarn)
	}
}

// saysYarn lets stitches that say no yarn say the one of the row.
func saysYarn(work []plan.Instr, yarn int) {
	for i := range work {
		switch in := &work[i]; {
		case in.Yarn >= 0 || in.Cells != nil:
		case in.Op == plan.Repeat:
			saysYarn(in.Body, yarn)
		case in.Op == plan.Work:
			in.Yarn = yarn
		}
	}
}

// chart says from which row of which chart the row is worked, how it is read, and in which yarn it begins.
func (pr *printer) chart(r *plan.Row) {
	for i, o := range pr.w.low.cells {
		at := plan.ChartRow{Chart: o.Cells.Chart, First: o.Cells.Row, Last: o.Cells.Row}
		begun := false
		for z := range pr.w.first {
			for _, res := range []*fabric.Result{pr.w.first[z], pr.w.last[z]} {
				if res == nil {
					continue
				}
				read := plan.FromRight
				if res.Traces[o.Index].Worked.Left {
					read = plan.FromLeft
				}
				at.Seam = res.Traces[o.Index].Worked.Seam
				if begun && read != at.Read {
					read = plan.EitherWay
				}
				at.Read, begun = read, true
			}
		}
		if i > 0 && (r.Chart == nil || *r.Chart != at) {
			r.Chart = nil // from several charts, or from several rows
			return
		}
		r.Chart = &at
	}
	if first := pr.w.kick.first; r.Begin.Counts && first != nil && first.Kind == fabric.ByCell && first.Cells.Behind == 0 {
		for _, g := range pr.worked(first) {
			if g != nil && len(g.Codes) > 0 && g.Codes[0] != r.Yarn {
				r.Begin.OtherYarn, r.Begin.Yarn = true, g.Codes[0]
			}
		}
	}
}
