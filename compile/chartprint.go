package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// This file prints what is worked by a chart, from the cells as they were worked in every size. Sizes read the same as far as
// they go: so many cells of the chart before the first whole time, so many whole times, so many cells behind the last.

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

// beside lets what stands beside a stretch of a chart read with it: in a mesh its first stitch belongs to those before it; beside
// colours every stitch says its yarn.
func (pr *printer) beside(r *plan.Row) {
	cells := pr.w.low.cells
	switch {
	case len(cells) == 0:
	case cells[0].Cells.Behind > 0:
		r.Work = joinWork(r.Work)
	case len(pr.p.c.pat.Yarns) > 1:
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

// mesh prints squares. In a row each square is said up to the stitch that closes it, behind the stitch the row begins with; in a
// round each begins with its stitch.
func (pr *printer) mesh(l *laid, o *fabric.Op, over plan.PlaceKind, got []*fabric.Worked) []plan.Instr {
	pr.p.c.useForm(stitch.Form{ID: stitch.Chain, Together: 1})
	m := meshPrinter{l: l, o: o, over: over}
	for z, g := range got {
		m.ends = m.ends || g != nil && pr.w.first[z] != nil && g.Ends
	}
	// An open square that the row begins with is said by itself: its chains go with the beginning chain.
	open := l.unit[0] == fabric.OpenOpen || l.unit[0] == fabric.OpenFilled
	m.parted = open && pr.w.kick.first == o && pr.w.kick.begin.Counts
	out := m.repeated()
	if l.flat {
		if flat := m.row(l.same); size(flat) <= size(out) {
			out = flat
		}
	}
	if len(out) == 1 && out[0].Op == plan.Work && o.N == nil {
		pr.bound(&out[0], o, &o.Bound)
	}
	return out
}

// meshPrinter prints the squares of a mesh.
type meshPrinter struct {
	l      *laid
	o      *fabric.Op
	over   plan.PlaceKind
	ends   bool // a stitch closes the last square
	parted bool
}

func (m *meshPrinter) n(v int) plan.Nums { return m.l.over(func(int) int { return v }) }

func (m *meshPrinter) work(n int) plan.Instr {
	return plan.Instr{Op: plan.Work, Form: m.o.Form, N: m.n(n), Over: m.over, Marker: -1, Yarn: -1}
}

// row prints a row of squares.
func (m *meshPrinter) row(codes []int) []plan.Instr {
	if m.ends {
		return joinWork(append([]plan.Instr{m.work(1)}, m.squares(codes, m.parted)...))
	}
	return m.squares(codes, m.parted)
}

// repeated prints a row of squares over the repeats of the chart.
func (m *meshPrinter) repeated() []plan.Instr {
	var out []plan.Instr
	if m.ends {
		out = append(out, m.work(1))
	}
	times := m.l.times
	if m.parted {
		out = append(out, m.squares(m.l.unit, true)...)
		if times = less(times, 1); times.Is(0) {
			return joinWork(out)
		}
	}
	return append(out, plan.Instr{Op: plan.Repeat, Reach: plan.Times, N: times, Body: m.squares(m.l.unit, false), Marker: -1, Yarn: -1})
}

// squares prints squares run by run. parted: the first of them stands apart.
func (m *meshPrinter) squares(codes []int, parted bool) []plan.Instr {
	var out []plan.Instr
	for i, s := range spansOf(codes) {
		k := s.to - s.from
		if i == 0 && parted && k > 1 {
			out = append(out, m.square(s.code)...)
			k--
		}
		switch {
		case s.code == fabric.FilledFilled:
			out = append(out, m.work((m.o.Cells.Behind+1)*k))
		case k == 1:
			out = append(out, m.square(s.code)...)
		default:
			out = append(out, plan.Instr{Op: plan.Repeat, Reach: plan.Times, N: m.n(k), Body: m.square(s.code), Marker: -1, Yarn: -1})
		}
	}
	return joinWork(out)
}

// square prints one square that is not filled over a filled one.
func (m *meshPrinter) square(code int) []plan.Instr {
	k := m.o.Cells.Behind
	chains := plan.Instr{Op: plan.Chains, N: m.n(k), Marker: -1, Yarn: -1}
	var out []plan.Instr
	switch code {
	case fabric.OpenFilled:
		out = []plan.Instr{chains, {Op: plan.SkipOver, N: m.n(k), Over: m.over, Marker: -1, Yarn: -1}}
	case fabric.OpenOpen:
		out = []plan.Instr{chains, {Op: plan.SkipOver, N: m.n(1), Over: plan.Space, Chains: m.n(k), Marker: -1, Yarn: -1}}
	case fabric.FilledOpen:
		in := m.work(1)
		in.Per, in.Over, in.Chains = m.n(k), plan.Space, m.n(k)
		out = []plan.Instr{in}
	}
	if m.ends {
		return append(out, m.work(1))
	}
	return append([]plan.Instr{m.work(1)}, out...)
}

// joinWork says neighbours that work one stitch in each of the next places as one.
func joinWork(work []plan.Instr) []plan.Instr {
	var out []plan.Instr
	for _, in := range work {
		if k := len(out) - 1; k >= 0 && plainWork(in) && plainWork(out[k]) && in.Form == out[k].Form && in.Over == out[k].Over {
			n := slices.Clone(out[k].N)
			for z := range n {
				if n[z] != plan.Absent {
					n[z] += in.N[z]
				}
			}
			out[k].N = n
			continue
		}
		out = append(out, in)
	}
	return out
}

func plainWork(in plan.Instr) bool {
	return in.Op == plan.Work && in.Per == nil && in.N != nil && in.Reach == plan.Next && in.Over <= plan.FoundationCh &&
		in.Deep == 0 && in.Ref == nil && in.Label == "" && in.Yarn < 0 && in.Cross == plan.NoCross
}
