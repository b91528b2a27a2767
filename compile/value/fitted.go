package value

import (
	"math/big"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// Fitted tells how counts were rounded, so that a report can show what became of the lengths asked for, and so that a
// count set by hand can be checked. Where a count was rounded and no length was asked for, only Step and First are set.
type Fitted struct {
	Stitch string     // as the source names it
	Rows   bool       // rows were fitted, not stitches
	PerMM  *big.Rat   // stitches or rows in a millimetre
	Wanted []*big.Rat // millimetres asked for, one a size
	Got    []*big.Rat // millimetres that the counts measure
	How    Rounding
	ByHand []bool // sizes set by hand; nil if there are none
	// A count is First plus any number of times Step.
	Step, First []int64
}

// Errors returns how much longer than asked for each size comes out, in micrometres; nil if no length was asked for.
func (f *Fitted) Errors() plan.Lengths {
	if f.Wanted == nil {
		return nil
	}
	v := Vector{Dim: Length, N: make([]*big.Rat, len(f.Got))}
	for i := range f.Got {
		if f.Got[i] != nil {
			v.N[i] = new(big.Rat).Sub(f.Got[i], f.Wanted[i])
		}
	}
	return v.Lengths()
}

// allows reports whether a count may stand in size i, and if not, which next to it may.
func (f *Fitted) allows(i int, x *big.Rat) (near []string, ok bool) {
	l := lattice{f.Step[i], f.First[i]}
	if l == (lattice{step: 1}) || l.has(x) { // a count that is not whole is reported where it is used
		return nil, true
	}
	return l.near(x), false
}

// rule is how a source asks for these counts.
func (l lattice) rule() string {
	s := "multiple of " + strconv.FormatInt(l.step, 10)
	if l.first != 0 {
		s += " plus " + strconv.FormatInt(l.first, 10)
	}
	return s
}

// near lists the allowed counts next to a number for a message.
func (l lattice) near(x *big.Rat) []string {
	below, above := l.around(x)
	if below < 0 {
		return []string{strconv.FormatInt(above, 10)}
	}
	return []string{strconv.FormatInt(below, 10), strconv.FormatInt(above, 10)}
}

// with is the record after the count of size i was set by hand.
func (f *Fitted) with(i int, count *big.Rat) *Fitted {
	if f.Wanted == nil {
		return f
	}
	g := *f
	g.Got = append([]*big.Rat(nil), f.Got...)
	g.Got[i] = new(big.Rat).Quo(count, f.PerMM)
	g.ByHand = make([]bool, len(f.Got))
	copy(g.ByHand, f.ByHand)
	g.ByHand[i] = true
	return &g
}

// multiple is what `multiple of M plus N` asks for; nil stands for any whole number.
type multiple struct {
	at       *lang.Expr
	of, plus plan.Nums
}

// Stitches returns how many stitches measure a length. What is wrong is reported at node n.
func Stitches(length Vector, stitch string, r Rounding, env Env, n lang.Node) Vector {
	ev := evaluator{env: env, sizes: env.Sizes()}
	return ev.fit(n, n, length, stitch, AnyWay, false, r, nil)
}

// Rows returns how many rows measure a length, as [Stitches] does for stitches.
func Rows(length Vector, stitch string, r Rounding, env Env, n lang.Node) Vector {
	ev := evaluator{env: env, sizes: env.Sizes()}
	return ev.fit(n, n, length, stitch, AnyWay, true, r, nil)
}

// perMM finds the gauge of a stitch, or reports that there is none.
func (ev *evaluator) perMM(n lang.Node, stitch string, by WorkedIn, rows bool) (*big.Rat, bool) {
	sts, perRow, found := ev.env.Gauge(stitch, by)
	if found == TwoGauges {
		ev.report("OV326", n, diag.Args{"stitch": stitch})
		return nil, false
	}
	if found == NoGauge || sts == nil || sts.Sign() <= 0 {
		ev.report("OV701", n, diag.Args{"stitch": stitch})
		return nil, false
	}
	if !rows {
		return sts, true
	}
	if perRow == nil || perRow.Sign() <= 0 {
		ev.report("OV702", n, diag.Args{"stitch": stitch})
		return nil, false
	}
	return perRow, true
}

// fit turns lengths into counts. at is where the stitch is named, n the whole.
func (ev *evaluator) fit(n, at lang.Node, length Vector, stitch string, by WorkedIn, rows bool, r Rounding, m *multiple) Vector {
	if length.Unknown {
		return Unknown
	}
	if length.Dim != Length {
		ev.wrongDim(n, Length, length.Dim)
		return Unknown
	}
	perMM, ok := ev.perMM(at, stitch, by, rows)
	if !ok {
		return Unknown
	}
	raw := ev.each(n, Count, length, Same(perMM, Count, len(ev.sizes)),
		func(a, b *big.Rat) *big.Rat { return new(big.Rat).Mul(a, b) })
	v := ev.round(n, raw, length, r, m)
	if v.Unknown {
		return v
	}
	v.Fitted.Stitch, v.Fitted.Rows, v.Fitted.PerMM, v.Fitted.Wanted = stitch, rows, perMM, length.N
	v.Fitted.How = r
	v.Fitted.Got = make([]*big.Rat, len(v.N))
	for i, x := range v.N {
		if x != nil {
			v.Fitted.Got[i] = new(big.Rat).Quo(x, perMM)
		}
	}
	return v
}

// round makes allowed counts of raw numbers. shown is what a message about a negative number shows: the length that was
// asked for. The record in the result holds the allowed counts and nothing else yet.
func (ev *evaluator) round(n lang.Node, raw, shown Vector, r Rounding, m *multiple) Vector {
	if raw.Unknown {
		return Unknown
	}
	negative := func(i int) bool { return raw.N[i] != nil && raw.N[i].Sign() < 0 }
	if some(raw.N, negative) {
		ev.reportSizes("OV317", n, shown, negative, nil)
		return Unknown
	}
	grid, ok := ev.lattices(n, r, m)
	if !ok {
		return Unknown
	}
	v := Vector{N: make([]*big.Rat, len(raw.N)),
		Fitted: &Fitted{Step: make([]int64, len(raw.N)), First: make([]int64, len(raw.N))}}
	missing := map[int]bool{}
	for i, x := range raw.N {
		v.Fitted.Step[i], v.Fitted.First[i] = grid[i].step, grid[i].first
		if x == nil {
			continue
		}
		c, ok := grid[i].round(x, r)
		missing[i] = !ok
		v.N[i] = whole(c)
	}
	if none := func(i int) bool { return missing[i] }; some(raw.N, none) {
		first := Vector{N: make([]*big.Rat, len(raw.N))}
		for i := range grid {
			first.N[i] = big.NewRat(grid[i].first, 1)
		}
		ev.reportSizes("OV318", n, raw, none, diag.Args{"least": perSize(ev.sizes, first, none)})
		return Unknown
	}
	return ev.bounded(n, v)
}

// lattices gives the allowed counts of each size, or reports a multiple that can never be even or odd.
func (ev *evaluator) lattices(n lang.Node, r Rounding, m *multiple) ([]lattice, bool) {
	grid := make([]lattice, len(ev.sizes))
	for i := range grid {
		of, plus := 1, 0
		if m != nil && m.of[i] != plan.Absent && m.plus[i] != plan.Absent {
			of, plus = m.of[i], m.plus[i]
		}
		l, ok := latticeOf(int64(of), int64(plus), r.Parity)
		if !ok {
			word := "even"
			if r.Parity == Odd {
				word = "odd"
			}
			ev.report("OV316", n, diag.Args{"rule": lattice{int64(of), int64(plus)}.rule(), "word": word})
			return nil, false
		}
		grid[i] = l
	}
	return grid, true
}

// some reports whether f holds for some index of xs.
func some(xs []*big.Rat, f func(i int) bool) bool {
	for i := range xs {
		if f(i) {
			return true
		}
	}
	return false
}
