package compile

import (
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// This file prints the squares of a mesh, from what each of them was and stood on.

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
		return append([]plan.Instr{m.work(1)}, m.squares(codes, m.parted)...)
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
			return out
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
	return out
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
