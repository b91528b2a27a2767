package value

import (
	"math/big"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// function is one row of the table of functions.
type function struct {
	form   string // how a call is written, for messages
	least  int    // values it takes
	most   int
	rounds bool // rounding words and a multiple may stand in it
	gauge  bool // rows or rounds may stand in it, to say which gauge is meant
	work   func(ev *evaluator, e *lang.Expr, args []*lang.Expr, r Rounding, m *multiple) Vector
}

// many is the most values that a function which takes any number of them takes.
const many = 1000

// functions is the table of functions. It is filled at the start since its rows call back into it.
var functions map[string]function

func init() {
	functions = map[string]function{
		"stitches": {`stitches(52 cm, dc, multiple of 2)`, 2, 2, true, true, callStitches},
		"rows":     {`rows(32 cm, dc, even)`, 2, 2, true, true, callRows},
		"repeats":  {`repeats(78 cm, fans)`, 2, 2, true, true, callRepeats},
		"length":   {`length(96, dc)`, 2, 2, false, true, callLength},
		"whole":    {`whole(leg / 3, up)`, 1, 1, true, false, callWhole},
		"min":      {`min(leg, 40)`, 2, many, false, false, callLeast},
		"max":      {`max(leg, 40)`, 2, many, false, false, callGreatest},
	}
}

// functionNames lists the functions in the order in which messages show them.
var functionNames = []string{"stitches", "rows", "repeats", "length", "whole", "min", "max"}

// call works out a call.
func (ev *evaluator) call(e *lang.Expr) Vector {
	name := strings.Join(e.Path, ".")
	f, ok := functions[name]
	if !ok {
		ev.noFunction(e, name)
		return Unknown
	}
	var args []*lang.Expr
	var multiples []*lang.Expr
	for _, a := range e.Args {
		if a != nil && a.Op == lang.OpMultiple {
			multiples = append(multiples, a)
			continue
		}
		args = append(args, a)
	}
	if len(args) < f.least || len(args) > f.most {
		help := "two"
		switch {
		case f.most == many:
			help = "many"
		case f.most == 1:
			help = "one"
		}
		ev.env.Report(diag.Diagnostic{Code: "OV311", Span: e.Span(), Help: help,
			Args: diag.Args{"name": name, "needed": f.least, "found": len(args), "form": f.form}})
		return Unknown
	}
	if !f.rounds && (len(multiples) > 0 || slices.ContainsFunc(e.Words, func(w string) bool { return !isWay(w) })) || !f.gauge && slices.ContainsFunc(e.Words, isWay) {
		ev.report("OV314", e, diag.Args{"name": name, "form": f.form})
		return Unknown
	}
	r, a, b, ok := ReadRounding(e.Words)
	if !ok {
		ev.report("OV313", e, diag.Args{"left": a, "right": b})
		return Unknown
	}
	if len(multiples) > 1 {
		ev.report("OV313", multiples[1], diag.Args{"left": "multiple of", "right": "multiple of"})
		return Unknown
	}
	var m *multiple
	if len(multiples) == 1 {
		if m, ok = ev.multiple(multiples[0]); !ok {
			return Unknown
		}
	}
	return f.work(ev, e, args, r, m)
}

func (ev *evaluator) noFunction(e *lang.Expr, name string) {
	d := diag.Diagnostic{Code: "OV310", Span: e.Span(), Help: "none",
		Args: diag.Args{"name": name, "names": functionNames}}
	if near := lang.Near(name, functionNames); len(near) > 0 {
		d.Help = "near"
		d.Args["near"] = near
	}
	ev.env.Report(d)
}

// multiple reads `multiple of M plus N`: whole numbers, M at least 1 and N at least 0.
func (ev *evaluator) multiple(e *lang.Expr) (*multiple, bool) {
	of := ev.eval(e.L)
	plus := Same(new(big.Rat), Count, len(ev.sizes))
	if e.R != nil {
		plus = ev.eval(e.R)
	}
	if of.Unknown || plus.Unknown {
		return nil, false
	}
	m := &multiple{at: e, of: make(plan.Nums, len(ev.sizes)), plus: make(plan.Nums, len(ev.sizes))}
	return m, ev.wholeFrom(e.L, of, 1, m.of) && ev.wholeFrom(e.R, plus, 0, m.plus)
}

// wholeFrom writes whole numbers from least on into out, or reports those that are not.
func (ev *evaluator) wholeFrom(n *lang.Expr, v Vector, least int64, out plan.Nums) bool {
	if v.Dim != Count {
		ev.wrongDim(n, Count, v.Dim)
		return false
	}
	bad := func(i int) bool { return v.N[i] != nil && (!v.N[i].IsInt() || v.N[i].Num().Int64() < least) }
	if some(v.N, bad) {
		ev.reportSizes("OV315", n, v, bad, diag.Args{"least": int(least)})
		return false
	}
	for i, x := range v.N {
		if out[i] = plan.Absent; x != nil {
			out[i] = int(x.Num().Int64())
		}
	}
	return true
}

// wrongDim reports a value of another dimension than is needed.
func (ev *evaluator) wrongDim(n lang.Node, needed, found Dim) {
	help := "unit"
	switch {
	case needed == Count && found == Length:
		help = "gauge"
	case needed == Count:
		help = "bare"
	}
	ev.env.Report(diag.Diagnostic{Code: "OV322", Span: n.Span(), Help: help,
		Args: diag.Args{"needed": needed.term(), "found": found.term()}})
}

// isWay reports whether a word of a call says which gauge is meant.
func isWay(word string) bool { return word == "rows" || word == "rounds" }

// wayIn is which gauge a call means.
func wayIn(e *lang.Expr) WorkedIn {
	for _, w := range e.Words {
		switch w {
		case "rows":
			return InRows
		case "rounds":
			return InRounds
		}
	}
	return AnyWay
}

// stitchName reads the argument that names a stitch.
func (ev *evaluator) stitchName(call, arg *lang.Expr) (string, bool) {
	if arg != nil && arg.Op == lang.OpName && len(arg.Path) == 1 {
		return arg.Path[0], true
	}
	if arg != nil {
		name := strings.Join(call.Path, ".")
		ev.report("OV312", arg, diag.Args{"name": name, "form": functions[name].form})
	}
	return "", false
}

func callStitches(ev *evaluator, e *lang.Expr, args []*lang.Expr, r Rounding, m *multiple) Vector {
	return ev.fitCall(e, args, false, r, m)
}

func callRows(ev *evaluator, e *lang.Expr, args []*lang.Expr, r Rounding, m *multiple) Vector {
	return ev.fitCall(e, args, true, r, m)
}

func (ev *evaluator) fitCall(e *lang.Expr, args []*lang.Expr, rows bool, r Rounding, m *multiple) Vector {
	stitch, ok := ev.stitchName(e, args[1])
	if !ok {
		return Unknown
	}
	length := ev.eval(args[0])
	if !length.Unknown && length.Dim != Length {
		ev.wrongDim(args[0], Length, length.Dim)
		return Unknown
	}
	if m == nil && !rows {
		m = ev.ownMultiple(args[1], stitch)
	}
	v := ev.fit(e, args[1], length, stitch, wayIn(e), rows, r, m)
	if !v.Unknown {
		ev.env.Rounded(e, v)
	}
	return v
}

// ownMultiple is the multiple that a stitch pattern asks for; nil for anything else.
func (ev *evaluator) ownMultiple(at *lang.Expr, pattern string) *multiple {
	of, plus, ok := ev.env.Multiple(pattern)
	if !ok {
		return nil
	}
	return &multiple{at, of, plus}
}

// callRepeats is how many repeats of a stitch pattern measure a length: the stitches that come nearest to it and suit the
// pattern, without those beside the repeats.
func callRepeats(ev *evaluator, e *lang.Expr, args []*lang.Expr, r Rounding, m *multiple) Vector {
	name, ok := ev.stitchName(e, args[1])
	if !ok {
		return Unknown
	}
	own := ev.ownMultiple(args[1], name)
	if own == nil {
		ev.report("OV323", args[1], diag.Args{"name": name})
		return Unknown
	}
	if m != nil {
		ev.report("OV313", m.at, diag.Args{"left": name, "right": "multiple of"})
		return Unknown
	}
	v := ev.fitCall(e, args, false, r, own)
	if v.Unknown {
		return Unknown
	}
	out := Vector{Dim: Count, N: make([]*big.Rat, len(v.N))}
	for i, n := range v.N {
		if n != nil {
			left := new(big.Rat).Sub(n, new(big.Rat).SetInt64(int64(own.plus[i])))
			out.N[i] = left.Quo(left, new(big.Rat).SetInt64(int64(own.of[i])))
		}
	}
	return out
}

// callLength turns a count of stitches back into a length.
func callLength(ev *evaluator, e *lang.Expr, args []*lang.Expr, _ Rounding, _ *multiple) Vector {
	stitch, ok := ev.stitchName(e, args[1])
	if !ok {
		return Unknown
	}
	v := ev.eval(args[0])
	if v.Unknown {
		return Unknown
	}
	if v.Dim != Count {
		ev.wrongDim(args[0], Count, v.Dim)
		return Unknown
	}
	perMM, ok := ev.perMM(args[1], stitch, wayIn(e), false)
	if !ok {
		return Unknown
	}
	return ev.each(e, Length, v, Same(perMM, Count, len(ev.sizes)),
		func(a, b *big.Rat) *big.Rat { return new(big.Rat).Quo(a, b) })
}

// callWhole makes a whole number of a count that is not one.
func callWhole(ev *evaluator, e *lang.Expr, args []*lang.Expr, r Rounding, m *multiple) Vector {
	v := ev.eval(args[0])
	if v.Unknown {
		return Unknown
	}
	if v.Dim != Count {
		ev.wrongDim(args[0], Count, v.Dim)
		return Unknown
	}
	return ev.round(e, v, v, r, m)
}

func callLeast(ev *evaluator, e *lang.Expr, args []*lang.Expr, _ Rounding, _ *multiple) Vector {
	return ev.choose(e, args, -1)
}

func callGreatest(ev *evaluator, e *lang.Expr, args []*lang.Expr, _ Rounding, _ *multiple) Vector {
	return ev.choose(e, args, 1)
}

// choose takes in each size the least (sign -1) or greatest (sign 1) of some values of one dimension.
func (ev *evaluator) choose(e *lang.Expr, args []*lang.Expr, sign int) Vector {
	out := ev.eval(args[0])
	out.Fitted = nil
	for _, a := range args[1:] {
		v := ev.eval(a)
		if out.Unknown || v.Unknown {
			out = Unknown
			continue
		}
		if v.Dim != out.Dim {
			ev.wrongDim(a, out.Dim, v.Dim)
			out = Unknown
			continue
		}
		out = ev.each(e, out.Dim, out, v, func(x, y *big.Rat) *big.Rat {
			if y.Cmp(x)*sign > 0 {
				return y
			}
			return x
		})
	}
	return out
}
