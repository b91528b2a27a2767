package value_test

import (
	"math"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/value"
)

// TestPrintedUnits compares conversions with figures in two units as publishers print them: body and ease in inches with whole or
// half centimetres (28, 34 and 36 in as 71, 86.5 and 91.5 cm, patterns of a large yarn publisher, Yarnspirations; 2, 4 and 6 in as 5,
// 10 and 15 cm, a fit chart, from memory), balls in ounces with whole grams (8 and 6 oz as 227 and 170 g, from memory of the same
// labels), and the exact inch, yard, pound of 16 ounces and foot. within is half of what the print was rounded to.
func TestPrintedUnits(t *testing.T) {
	for _, c := range []struct {
		text   string
		want   float64 // millimetres or grams
		within float64
	}{
		{"28 in", 710, 2.5}, {"34 in", 865, 2.5}, {"36 in", 915, 2.5},
		{"2 in", 50, 2.5}, {"4 in", 100, 2.5}, {"6 in", 150, 2.5},
		{"8 oz", 227, 0.5}, {"6 oz", 170, 0.5}, {"16 oz", 453.59237, 1e-9},
		{"1 in", 25.4, 0}, {"12 in", 304.8, 0}, {"1 yd", 914.4, 0}, {"36 in", 914.4, 0}, {"1 m", 1000, 0}, {"10 cm", 100, 0}, {"1 kg", 1000, 0},
	} {
		b := newBench("S")
		v := value.Eval(parse(t, c.text), b)
		if len(b.found) > 0 || v.N[0] == nil {
			t.Fatalf("%s: %v", c.text, b.found)
		}
		got, _ := v.N[0].Float64()
		if math.Abs(got-c.want) > c.within {
			t.Errorf("%s is %g, in print %g", c.text, got, c.want)
		}
	}
	// 4 in count as 10 cm in print, and a gauge over either is over enough; the figures they give differ by 1.6 %.
	if l := plan.Lengths(value.Eval(parse(t, "4 in"), newBench("S")).Lengths()); l[0] != 101_600 {
		t.Errorf("4 in are %d micrometres", l[0])
	}
}
