package value

import (
	"math/big"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// Env is what an expression is worked out in.
type Env interface {
	// Sizes returns the names of the sizes, in order. Inside a block for some sizes alone these are that block's.
	Sizes() []string
	// Lookup returns the value of a name, with one number for each of Sizes. It says false for a name without a value;
	// that is reported here. A name whose value could not be worked out is [Unknown].
	Lookup(path []string) (Vector, bool)
	// Names returns the names that Lookup knows, with points between their words, for hints at misspelt ones.
	Names() []string
	// Gauge returns how many stitches and rows of a stitch measure a millimetre, exactly, as it is worked by way. rowsPerMM
	// is nil if the gauge gives no rows. Found is not OneGauge if there is none, or if by says nothing and there are two.
	Gauge(stitch string, by WorkedIn) (stsPerMM, rowsPerMM *big.Rat, found Found)
	// Multiple returns over which numbers of stitches a stitch pattern comes out, one for each of Sizes. ok is false for
	// anything else, and for a stitch pattern that comes out over any.
	Multiple(pattern string) (of, plus plan.Nums, ok bool)
	// Measure returns a measure of the finished piece and reports what is wrong with it. It says false where measures
	// cannot be taken at all; that is reported here.
	Measure(e *lang.Expr) (Vector, bool)
	// Rounded takes note of counts that were made from lengths: those of a call, and once more where sizes of it are set
	// by hand. e is the call, or the name whose sizes are set.
	Rounded(e *lang.Expr, v Vector)
	// Report takes a finding.
	Report(diag.Diagnostic)
}

// WorkedIn is how a stitch is worked.
type WorkedIn uint8

// The ways. The other one serves where a stitch was counted in one way only.
const (
	AnyWay WorkedIn = iota // not said: as the part is worked in which the value stands
	InRows
	InRounds
)

// Found says whether a stitch has a gauge.
type Found uint8

// What can be found.
const (
	NoGauge Found = iota
	OneGauge
	TwoGauges // in rows and in rounds, and nothing says which is meant
)

// Eval works out an expression for all sizes. What is wrong is reported to the env, one diagnostic for each cause, and
// gives [Unknown]. A nil expression, which stands where the source could not be read, is Unknown and silent.
func Eval(e *lang.Expr, env Env) Vector {
	ev := evaluator{env: env, sizes: env.Sizes()}
	return ev.eval(e)
}

type evaluator struct {
	env   Env
	sizes []string
}

// eval walks down the left side of a sum in a loop: a source may hold a sum of any length, and brackets, which do nest,
// are bounded by the parser.
func (ev *evaluator) eval(e *lang.Expr) Vector {
	var spine []*lang.Expr
	for e != nil && isBinary(e.Op) {
		spine = append(spine, e)
		e = e.L
	}
	v := ev.leaf(e)
	for i := len(spine) - 1; i >= 0; i-- {
		n := spine[i]
		if n.Op == lang.OpBut {
			v = ev.except(n, v)
			continue
		}
		v = ev.combine(n, v, ev.eval(n.R))
	}
	return v
}

func isBinary(op lang.Op) bool {
	switch op {
	case lang.OpAdd, lang.OpSub, lang.OpMul, lang.OpDiv, lang.OpBut:
		return true
	}
	return false
}

func (ev *evaluator) leaf(e *lang.Expr) Vector {
	if e == nil || len(ev.sizes) == 0 {
		return Unknown // the source could not be read here, or it has no sizes: both were reported
	}
	switch e.Op {
	case lang.OpNumber:
		return ev.number(e)
	case lang.OpName:
		return ev.name(e)
	case lang.OpCall:
		return ev.call(e)
	case lang.OpParen:
		return ev.eval(e.L)
	case lang.OpNeg:
		return ev.negate(e, ev.eval(e.L))
	case lang.OpMeasure:
		return ev.measure(e)
	}
	ev.report(diag.Internal, e, diag.Args{"what": "expression"})
	return Unknown
}

func (ev *evaluator) name(e *lang.Expr) Vector {
	v, ok := ev.env.Lookup(e.Path)
	name := strings.Join(e.Path, ".")
	if ok {
		return ev.checked(e, v, name)
	}
	d := diag.Diagnostic{Code: "OV302", Span: e.Span(), Args: diag.Args{"name": name}, Help: "none"}
	if near := lang.Near(name, ev.env.Names()); len(near) > 0 {
		d.Help = "near"
		d.Args["near"] = near
		if len(near) == 1 {
			d.Edit = &diag.Edit{Span: e.Span(), Text: near[0]}
		}
	}
	ev.env.Report(d)
	return Unknown
}

func (ev *evaluator) measure(e *lang.Expr) Vector {
	v, ok := ev.env.Measure(e)
	if !ok {
		ev.report("OV325", e, nil)
		return Unknown
	}
	return ev.checked(e, v, e.Text)
}

// checked keeps the promise of an env that a value has one number for each size.
func (ev *evaluator) checked(e *lang.Expr, v Vector, what string) Vector {
	if v.Unknown {
		return Unknown
	}
	if len(v.N) != len(ev.sizes) {
		ev.report(diag.Internal, e, diag.Args{"what": what})
		return Unknown
	}
	return v
}

func (ev *evaluator) report(c diag.Code, n lang.Node, a diag.Args) {
	if a == nil {
		a = diag.Args{}
	}
	ev.env.Report(diag.Diagnostic{Code: c, Span: n.Span(), Args: a})
}

// reportSizes reports what is wrong with a value in some sizes, with the value in each of them as {found}.
func (ev *evaluator) reportSizes(c diag.Code, n lang.Node, v Vector, bad func(i int) bool, a diag.Args) {
	p := perSize(ev.sizes, v, bad)
	if a == nil {
		a = diag.Args{}
	}
	a["found"] = p
	ev.env.Report(diag.Diagnostic{Code: c, Span: n.Span(), Args: a, Sizes: concerned(ev.sizes, p)})
}
