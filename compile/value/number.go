package value

import (
	"math/big"
	"strconv"

	"ovillo/lang"
	"ovillo/lang/diag"
)

// Bound is the largest number, and the largest denominator, that is worked with. It is far beyond any fabric and keeps
// a source from growing numbers without end.
const Bound = 1_000_000_000

var bound = big.NewInt(Bound)

// within reports whether a number keeps to the bound.
func within(x *big.Rat) bool {
	if n := x.Num(); n.IsInt64() && x.IsInt() {
		return n.Int64() <= Bound && n.Int64() >= -Bound
	}
	return x.Denom().CmpAbs(bound) <= 0 &&
		new(big.Int).Mul(bound, x.Denom()).CmpAbs(x.Num()) >= 0
}

// number reads a number, or a list of numbers with one for each size.
func (ev *evaluator) number(e *lang.Expr) Vector {
	unit, ok := units[e.Unit]
	if !ok {
		ev.report(diag.Internal, e, diag.Args{"what": e.Unit})
		return Unknown
	}
	first, ok := ev.measured(e, e.Text, unit.one)
	if !ok {
		return Unknown
	}
	if len(e.Sizes) == 0 {
		return ev.bounded(e, Same(first, unit.dim, len(ev.sizes)))
	}
	if found := 1 + len(e.Sizes); found != len(ev.sizes) {
		ev.report("OV301", e, diag.Args{"needed": len(ev.sizes), "found": found, "sizes": ev.sizes})
		return Unknown
	}
	v := Vector{Dim: unit.dim, N: make([]*big.Rat, len(ev.sizes))}
	v.N[0] = first
	for i, text := range e.Sizes {
		x, ok := ev.measured(e, text, unit.one)
		if !ok {
			return Unknown
		}
		v.N[i+1] = x
	}
	return ev.bounded(e, v)
}

// measured reads one number of a unit, in the canonical unit of its dimension.
func (ev *evaluator) measured(e *lang.Expr, text string, one *big.Rat) (*big.Rat, bool) {
	if n, tenths, ok := decimal(text); ok {
		if unit, ok := small(one); ok && n*unit%tenths == 0 { // 25.4 cm are whole millimetres
			return whole(n * unit / tenths), true
		}
	}
	x, ok := ev.digits(e, text)
	if !ok {
		return nil, false
	}
	return product(x, one), true
}

// decimal is a number of a few figures, without its point, and by what that is to be divided: 10 for one figure behind the point.
func decimal(text string) (n, by int64, ok bool) {
	const most = 7 // figures: what is larger, or finer, takes the long way
	by = 1
	point := false
	for i := 0; i < len(text); i++ {
		switch c := text[i]; {
		case c == '.' && !point && i > 0 && i < len(text)-1:
			point = true
		case '0' <= c && c <= '9' && i <= most:
			n = 10*n + int64(c-'0')
			if point {
				by *= 10
			}
		default:
			return 0, 0, false
		}
	}
	return n, by, text != ""
}

// digits reads one number as it is written: 96, 3.75, -2.
func (ev *evaluator) digits(e *lang.Expr, text string) (*big.Rat, bool) {
	const most = 24 // no number within the bound needs more digits; a longer one is not even converted
	if n, err := strconv.ParseInt(text, 10, 32); err == nil && isDecimal(text) {
		if x := whole(n); within(x) {
			return x, true
		}
	}
	if len(text) <= most && isDecimal(text) {
		if x, ok := new(big.Rat).SetString(text); ok && within(x) {
			return x, true
		}
	}
	if len(text) > most {
		text = text[:most] + "…"
	}
	ev.env.Report(diag.Diagnostic{Code: "OV306", Span: e.Span(), Args: diag.Args{"found": text}})
	return nil, false
}

func isDecimal(s string) bool {
	if s != "" && s[0] == '-' {
		s = s[1:]
	}
	points, figures := 0, 0
	for i := 0; i < len(s); i++ {
		switch {
		case '0' <= s[i] && s[i] <= '9':
			figures++
		case s[i] == '.':
			points++
		default:
			return false
		}
	}
	return figures > 0 && points <= 1
}

// bounded refuses a value that has outgrown the bound in some size.
func (ev *evaluator) bounded(n lang.Node, v Vector) Vector {
	over := func(i int) bool { return v.N[i] != nil && !within(v.N[i]) }
	for i := range v.N {
		if over(i) {
			ev.reportSizes("OV306", n, v, over, nil)
			return Unknown
		}
	}
	return v
}
