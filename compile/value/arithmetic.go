package value

import (
	"math/big"

	"ovillo/lang"
	"ovillo/lang/diag"
)

var hundred = big.NewRat(100, 1)

// combine works out a sum, difference, product or quotient.
func (ev *evaluator) combine(e *lang.Expr, l, r Vector) Vector {
	if l.Unknown || r.Unknown {
		return Unknown
	}
	switch e.Op {
	case lang.OpAdd, lang.OpSub:
		return ev.add(e, l, r)
	case lang.OpMul:
		return ev.multiply(e, l, r)
	default:
		return ev.divide(e, l, r)
	}
}

func (ev *evaluator) negate(e *lang.Expr, v Vector) Vector {
	if v.Unknown {
		return Unknown
	}
	return ev.each(e, v.Dim, v, v, func(a, _ *big.Rat) *big.Rat { return new(big.Rat).Neg(a) })
}

// add adds or takes away; both sides must measure the same.
func (ev *evaluator) add(e *lang.Expr, l, r Vector) Vector {
	if l.Dim != r.Dim {
		ev.mismatch("OV303", e, l, r, sumHelp(l.Dim, r.Dim))
		return Unknown
	}
	if e.Op == lang.OpAdd {
		return ev.each(e, l.Dim, l, r, sum)
	}
	return ev.each(e, l.Dim, l, r, difference)
}

// sumHelp chooses the remedy for a sum of two dimensions.
func sumHelp(l, r Dim) string {
	switch {
	case l == Count && r == Length || l == Length && r == Count:
		return "gauge"
	case l == Percent || r == Percent:
		return "percent"
	}
	return "unit"
}

// multiply takes anything times a count or a percentage.
func (ev *evaluator) multiply(e *lang.Expr, l, r Vector) Vector {
	share := func(a, b *big.Rat) *big.Rat { return quotient(product(a, b), hundred) }
	switch {
	case l.Dim == Percent:
		return ev.each(e, r.Dim, l, r, share)
	case r.Dim == Percent:
		return ev.each(e, l.Dim, l, r, share)
	case l.Dim == Count:
		return ev.each(e, r.Dim, l, r, product)
	case r.Dim == Count:
		return ev.each(e, l.Dim, l, r, product)
	}
	ev.mismatch("OV304", e, l, r, "product")
	return Unknown
}

// divide divides by a count, by a percentage, or by the same dimension, which gives a count.
func (ev *evaluator) divide(e *lang.Expr, l, r Vector) Vector {
	dim := l.Dim
	switch {
	case l.Dim == r.Dim:
		dim = Count
	case r.Dim != Count && r.Dim != Percent:
		ev.mismatch("OV304", e, l, r, "quotient")
		return Unknown
	}
	zero := func(i int) bool { return r.N[i] != nil && r.N[i].Sign() == 0 }
	for i := range r.N {
		if zero(i) {
			ev.reportSizes("OV305", e.R, r, zero, nil)
			return Unknown
		}
	}
	return ev.each(e, dim, l, r, func(a, b *big.Rat) *big.Rat {
		q := quotient(a, b)
		if r.Dim == Percent && l.Dim != Percent {
			q = product(q, hundred)
		}
		return q
	})
}

// each works size by size. A size in which one side does not exist has no result.
func (ev *evaluator) each(n lang.Node, d Dim, l, r Vector, f func(a, b *big.Rat) *big.Rat) Vector {
	v := Vector{Dim: d, N: make([]*big.Rat, len(ev.sizes))}
	for i := range v.N {
		if l.N[i] != nil && r.N[i] != nil {
			v.N[i] = f(l.N[i], r.N[i])
		}
	}
	return ev.bounded(n, v)
}

// mismatch reports two dimensions that do not go together.
func (ev *evaluator) mismatch(c diag.Code, e *lang.Expr, l, r Vector, help string) {
	ev.env.Report(diag.Diagnostic{Code: c, Span: e.Span(), Help: help,
		Args: diag.Args{"left": l.Dim.term(), "right": r.Dim.term()}})
}
