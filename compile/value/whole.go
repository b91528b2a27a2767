package value

import (
	"math/big"

	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// Counts returns the whole, non-negative numbers that a row needs, [plan.Absent] in a size in which there is none. It
// says false if the value is unknown, which is silent, or after it has reported a diagnostic at node n: the value is no
// count, or it is not whole or below zero in some sizes.
func (v Vector) Counts(env Env, n lang.Node) (plan.Nums, bool) {
	if v.Unknown {
		return nil, false
	}
	ev := evaluator{env: env, sizes: env.Sizes()}
	if v.Dim != Count {
		ev.wrongDim(n, Count, v.Dim)
		return nil, false
	}
	if len(v.N) != len(ev.sizes) {
		ev.report(diag.Internal, n, diag.Args{"what": "counts"})
		return nil, false
	}
	broken := func(i int) bool { return v.N[i] != nil && !v.N[i].IsInt() }
	if some(v.N, broken) {
		below, above := v.neighbours(broken)
		ev.reportSizes("OV320", n, v, broken, diag.Args{
			"below": perSize(ev.sizes, below, broken), "above": perSize(ev.sizes, above, broken)})
		return nil, false
	}
	negative := func(i int) bool { return v.N[i] != nil && v.N[i].Sign() < 0 }
	if some(v.N, negative) {
		ev.reportSizes("OV321", n, v, negative, nil)
		return nil, false
	}
	out := make(plan.Nums, len(v.N))
	for i, x := range v.N {
		if out[i] = plan.Absent; x != nil {
			out[i] = int(x.Num().Int64())
		}
	}
	return out, true
}

// neighbours are the whole numbers next to those that are not whole.
func (v Vector) neighbours(broken func(i int) bool) (below, above Vector) {
	below.N, above.N = make([]*big.Rat, len(v.N)), make([]*big.Rat, len(v.N))
	for i, x := range v.N {
		if broken(i) {
			f := floor(x)
			below.N[i], above.N[i] = whole(f), whole(f+1)
		}
	}
	return below, above
}

// As reports at node n if a value is not of the dimension that is needed there. An unknown value passes and is silent;
// the caller looks at Unknown.
func (v Vector) As(d Dim, env Env, n lang.Node) Vector {
	if v.Unknown || v.Dim == d {
		return v
	}
	ev := evaluator{env: env, sizes: env.Sizes()}
	ev.wrongDim(n, d, v.Dim)
	return Unknown
}

// Range works out two values that share a unit written once, as in `ease 0 to 6 cm`: a bare number on the left has the
// unit of the number on the right.
func Range(lo, hi *lang.Expr, env Env) (Vector, Vector) {
	if lo != nil && hi != nil {
		lo = withUnit(lo, hi.Unit)
	}
	return Eval(lo, env), Eval(hi, env)
}

// withUnit is a copy of a bare number, or of a bare number below zero, with a unit. Anything else stays as it is.
func withUnit(e *lang.Expr, unit string) *lang.Expr {
	switch {
	case unit == "":
	case e.Op == lang.OpNumber && e.Unit == "":
		c := *e
		c.Unit = unit
		return &c
	case e.Op == lang.OpNeg && e.L != nil:
		c := *e
		c.L = withUnit(e.L, unit)
		return &c
	}
	return e
}
