package figure_test

import (
	"strings"
	"testing"

	"ovillo/compile/figure"
	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

func cms(xs ...float64) plan.Lengths {
	var out plan.Lengths
	for _, x := range xs {
		out = append(out, plan.Length(x*float64(plan.Centimetre)))
	}
	return out
}

func same(p any, names, values string) bool {
	t, ok := p.(diag.PerSize)
	return ok && strings.Join(t.Names, " ") == names && strings.Join(t.Values, ", ") == values
}

func TestFits(t *testing.T) {
	m := figure.Measured{Name: "hips", Values: cms(56, 57, 60, 70), Sizes: []string{"1", "2", "3", "4"}}
	lo, hi := cms(0, 0, 0, 0), cms(6, 6, 6, 6)

	f, found := figure.Fits(m, "hips", cms(53, 57, 54, 64), lo, hi)
	if len(found) > 0 || f.Ease[0] != 3*plan.Centimetre || f.Ease[1] != 0 || f.Lo != 0 || f.Hi != 6*plan.Centimetre {
		t.Errorf("at the limits: %+v, %v", f, found)
	}

	f, found = figure.Fits(m, "hips", cms(53, 57.1, 53.9, 60), lo, hi)
	if len(found) != 1 || f == nil {
		t.Fatalf("beyond the limits: %+v, %v", f, found)
	}
	d := found[0]
	if d.Code != "OV755" || !same(d.Args["have"], "2 3 4", "-0.1 cm, 6.1 cm, 10 cm") || strings.Join(d.Sizes, " ") != "2 3 4" {
		t.Errorf("got %+v", d)
	}
	if gaps := diag.Incomplete(d); len(gaps) > 0 {
		t.Error(gaps)
	}

	m.Values = cms(56, 57, 60, 70)
	m.Values[1] = plan.NoLength
	f, found = figure.Fits(m, "hips", cms(53, 30, 54, 64), lo, hi)
	if len(found) > 0 || f.Ease[1] != plan.NoLength {
		t.Errorf("a size without the measure: %+v, %v", f, found)
	}
	if f, found := figure.Fits(m, "hips", nil, lo, hi); f != nil || found != nil {
		t.Errorf("an unknown wearer: %+v, %v", f, found)
	}
}

// TestWanted takes its figures from the flat panel of the worked constructions: back widths of 45.625, 49.375, 53.125, 60.625
// and 64.375 cm where 44, 49, 54, 59 and 64 were wanted.
func TestWanted(t *testing.T) {
	m := figure.Measured{Name: "width", Values: cms(45.625, 49.375, 53.125, 60.625, 64.375), Sizes: []string{"S", "M", "L", "XL", "2XL"}}
	wanted := cms(44, 49, 54, 59, 64)
	if found := figure.Wanted(m, wanted, cms(2, 2, 2, 2, 2)); len(found) > 0 {
		t.Errorf("within 2 cm: %v", found)
	}
	found := figure.Wanted(m, wanted, nil)
	if len(found) != 1 || found[0].Code != "OV756" || !same(found[0].Args["have"], "S XL", "45.63 cm, 60.63 cm") ||
		!same(found[0].Args["need"], "S XL", "44 cm, 59 cm") || found[0].Args["within"] != diag.Length(plan.Centimetre) {
		t.Fatalf("within the usual 1 cm: %+v", found)
	}
	if gaps := diag.Incomplete(found[0]); len(gaps) > 0 {
		t.Error(gaps)
	}
	if found := figure.Wanted(m, cms(1, 1, 1, 1, 1), nil); len(found) != 1 || found[0].Sizes != nil {
		t.Errorf("all sizes off: %+v", found)
	}
	if found := figure.Wanted(m, nil, nil); found != nil {
		t.Errorf("nothing known to be wanted: %v", found)
	}
}

// TestInches compares with a table printed by a large yarn publisher (28, 34 and 36 in as 71, 86.5 and 91.5 cm) and with
// the exact inch.
func TestInches(t *testing.T) {
	for l, want := range map[plan.Length]string{
		71 * plan.Centimetre: "28", 865 * plan.Millimetre: "34", 915 * plan.Millimetre: "36",
		0: "0", plan.Inch / 8: "1/4", plan.Inch/8 - 1: "0", plan.Inch / 2: "1/2", 10*plan.Inch + 3*plan.Inch/4: "10 3/4",
		-plan.Inch - plan.Inch/4: "-1 1/4", -plan.Inch / 16: "0",
	} {
		if got := figure.Inches(l); got != want {
			t.Errorf("%d: got %s, want %s", l, got, want)
		}
	}
	if got := figure.QuarterInches(-plan.Inch); got != -4 {
		t.Errorf("minus an inch is %d quarters", got)
	}
}

func TestLetter(t *testing.T) {
	for i, want := range map[int]string{0: "A", 25: "Z", 26: "AA", 51: "AZ", 52: "BA", 701: "ZZ", 702: "AAA", -1: ""} {
		if got := figure.Letter(i); got != want {
			t.Errorf("measure %d has the letter %q, want %q", i, got, want)
		}
	}
}
