package value_test

import (
	"math"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/plan"
	"ovillo/compile/value"
	"ovillo/lang"
)

// anyExpr draws an expression of any shape, most of them not in order.
func anyExpr(t *rapid.T, depth int) *lang.Expr {
	if depth == 0 || rapid.IntRange(0, 3).Draw(t, "leaf") == 0 {
		if rapid.Bool().Draw(t, "name") {
			return &lang.Expr{Op: lang.OpName, Path: []string{rapid.SampledFrom([]string{"leg", "waist", "sc", "gone"}).Draw(t, "which")}}
		}
		e := &lang.Expr{Op: lang.OpNumber, Text: rapid.SampledFrom([]string{"0", "1", "7", "2.5", "999999999", "99999999999", "x"}).Draw(t, "number"),
			Unit: rapid.SampledFrom([]string{"", "", "cm", "in", "g", "%", "months", "furlong"}).Draw(t, "unit")}
		for range rapid.IntRange(0, 2).Draw(t, "list") {
			e.Sizes = append(e.Sizes, rapid.SampledFrom([]string{"3", "-4", "0"}).Draw(t, "other"))
		}
		return e
	}
	sub := func() *lang.Expr { return anyExpr(t, depth-1) }
	switch op := rapid.SampledFrom([]lang.Op{lang.OpCall, lang.OpParen, lang.OpNeg, lang.OpAdd, lang.OpSub, lang.OpMul, lang.OpDiv,
		lang.OpBut, lang.OpMultiple, lang.OpMeasure, 99}).Draw(t, "op"); op {
	case lang.OpCall:
		e := &lang.Expr{Op: op, Path: []string{rapid.SampledFrom([]string{"stitches", "rows", "length", "whole", "min", "max", "sum"}).Draw(t, "call")}}
		for range rapid.IntRange(0, 3).Draw(t, "args") {
			e.Args = append(e.Args, sub())
		}
		if rapid.Bool().Draw(t, "multiple") {
			m := &lang.Expr{Op: lang.OpMultiple, L: sub()}
			if rapid.Bool().Draw(t, "plus") {
				m.R = sub()
			}
			e.Args = append(e.Args, m)
		}
		e.Words = rapid.SliceOfN(rapid.SampledFrom([]string{"up", "down", "nearest", "even", "odd", "ties up", "ties down"}), 0, 2).Draw(t, "words")
		return e
	default:
		return &lang.Expr{Op: op, Text: rapid.SampledFrom([]string{"M", "XL", "height"}).Draw(t, "text"), L: sub(), R: sub()}
	}
}

// TestAnyExpr works out expressions of any shape: none may fail in another way than by exactly one message for each cause,
// what is known has a number for each size, and it keeps to the bound.
func TestAnyExpr(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := newBench("S", "M")
		b.names["leg"] = value.Of(plan.Nums{3, plan.Absent})
		b.names["waist"] = value.OfLengths(plan.Lengths{500_000, 1})
		v := value.Eval(anyExpr(t, 4), b)
		if v.Unknown != (len(b.found) > 0) {
			t.Fatalf("%s after %v", show(v), b.found)
		}
		if v.Unknown {
			return
		}
		if len(v.N) != 2 {
			t.Fatalf("%s for two sizes", show(v))
		}
		for _, x := range v.N {
			if x == nil {
				continue
			}
			if f, _ := x.Float64(); math.Abs(f) > value.Bound || x.Denom().Int64() > value.Bound {
				t.Fatalf("%s is beyond the bound", show(v))
			}
		}
		if _, ok := v.Counts(b, &lang.Expr{}); ok == (len(b.found) > 0) {
			t.Fatalf("%s as counts: %v, %v", show(v), ok, b.found)
		}
	})
}

// TestSumsAgree compares sums of counts with what floating point makes of them, by another way round: the expression is
// written out and its value is reckoned along with it.
func TestSumsAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var build func(depth int) (*lang.Expr, float64)
		build = func(depth int) (*lang.Expr, float64) {
			if depth == 0 {
				n := rapid.IntRange(1, 99).Draw(t, "n")
				return &lang.Expr{Op: lang.OpNumber, Text: strconv.Itoa(n)}, float64(n)
			}
			l, x := build(depth - 1)
			r, y := build(depth - 1)
			switch op := rapid.SampledFrom([]lang.Op{lang.OpAdd, lang.OpSub, lang.OpMul, lang.OpDiv}).Draw(t, "op"); op {
			case lang.OpAdd:
				return &lang.Expr{Op: op, L: l, R: r}, x + y
			case lang.OpSub:
				return &lang.Expr{Op: op, L: l, R: r}, x - y
			case lang.OpMul:
				return &lang.Expr{Op: op, L: l, R: r}, x * y
			default:
				return &lang.Expr{Op: op, L: l, R: r}, x / y
			}
		}
		e, want := build(2)
		b := newBench("S")
		v := value.Eval(e, b)
		if math.IsInf(want, 0) || math.IsNaN(want) {
			if !v.Unknown {
				t.Fatalf("a division by zero gives %s", show(v))
			}
			return
		}
		if v.Unknown {
			t.Fatalf("reports %v", b.found)
		}
		if got, _ := v.N[0].Float64(); math.Abs(got-want) > 1e-9*math.Max(1, math.Abs(want)) {
			t.Fatalf("got %g, want %g", got, want)
		}
	})
}
