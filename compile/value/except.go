package value

import (
	"math/big"

	"ovillo/lang"
	"ovillo/lang/diag"
)

// except sets the value of one size by hand: 73 (79, 85) but "L" 91. Every check on the value stays: one that was fitted
// to a multiple must still be one.
func (ev *evaluator) except(e *lang.Expr, v Vector) Vector {
	by := ev.eval(e.R)
	at := ev.sizeOf(e)
	if at < 0 || v.Unknown || by.Unknown {
		return Unknown
	}
	if v.Dim != by.Dim {
		ev.env.Report(diag.Diagnostic{Code: "OV308", Span: e.R.Span(),
			Args: diag.Args{"needed": v.Dim.term(), "found": by.Dim.term(), "size": e.Text}})
		return Unknown
	}
	if !ev.once(e) {
		return Unknown
	}
	out := Vector{Dim: v.Dim, N: append([]*big.Rat(nil), v.N...)}
	out.N[at] = by.N[at]
	if v.Fitted == nil || by.N[at] == nil {
		return out
	}
	f := v.Fitted
	if near, ok := f.allows(at, by.N[at]); !ok {
		ev.env.Report(diag.Diagnostic{Code: "OV319", Span: e.R.Span(), Sizes: []string{e.Text}, Args: diag.Args{
			"found": Quantity{by.N[at], Count}.String(), "rule": lattice{f.Step[at], f.First[at]}.rule(),
			"size": e.Text, "near": near}})
		return Unknown
	}
	if out.Fitted = f.with(at, by.N[at]); f.Wanted != nil {
		ev.env.Rounded(setByHand(e), out)
	}
	return out
}

// setByHand is what stands before `but`: the call or the name whose sizes are set.
func setByHand(e *lang.Expr) *lang.Expr {
	for e.L != nil && (e.Op == lang.OpBut || e.Op == lang.OpParen) {
		e = e.L
	}
	return e
}

// sizeOf finds the size that is set by hand, -1 if there is none of that name.
func (ev *evaluator) sizeOf(e *lang.Expr) int {
	for i, name := range ev.sizes {
		if name == e.Text {
			return i
		}
	}
	if len(ev.sizes) > 0 {
		ev.report("OV307", e, diag.Args{"name": e.Text, "sizes": ev.sizes})
	}
	return -1
}

// once refuses a size that is set a second time behind the same value.
func (ev *evaluator) once(e *lang.Expr) bool {
	for l := e.L; l != nil && l.Op == lang.OpBut; l = l.L {
		if l.Text == e.Text {
			ev.report("OV309", e.R, diag.Args{"size": e.Text})
			return false
		}
	}
	return true
}
