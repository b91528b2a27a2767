package standard_test

import (
	"math/big"
	"slices"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/standard"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// TestWeights compares with the chart of classes as printed in Crochet World, October 2018, page 64 (S32), and for the two
// thickest, which were revised since, with sconch.com/pages/conversion-charts (S34).
func TestWeights(t *testing.T) {
	for _, want := range []standard.Weight{
		{0, "lace", 32, 42, mm(1.5), mm(2.25)}, {1, "super fine", 21, 32, mm(2.25), mm(3.5)},
		{2, "fine", 16, 20, mm(3.5), mm(4.5)}, {3, "light", 12, 17, mm(4.5), mm(5.5)},
		{4, "medium", 11, 14, mm(5.5), mm(6.5)}, {5, "bulky", 8, 11, mm(6.5), mm(9)},
		{6, "super bulky", 7, 9, mm(9), mm(15)}, {7, "jumbo", 0, 6, mm(15), 0},
	} {
		if got, ok := standard.WeightOf(want.Name); !ok || got != want {
			t.Errorf("%s: %+v, %v", want.Name, got, ok)
		}
	}
	for _, name := range []string{"Super Bulky", "super_bulky", "super-bulky"} {
		if w, ok := standard.WeightOf(name); !ok || w.Number != 6 {
			t.Errorf("%s: %+v, %v", name, w, ok)
		}
	}
	if _, ok := standard.WeightOf("sport"); ok || len(standard.WeightNames()) != 8 {
		t.Errorf("sport is a class, or the names are %v", standard.WeightNames())
	}
}

// TestUsual checks that whatever the table itself calls usual passes, and that the checks are wide open for lace.
func TestUsual(t *testing.T) {
	for _, w := range standard.Weights() {
		for _, h := range []plan.Length{w.HookMin, w.HookMax} {
			if h > 0 && !w.HookFits(h) {
				t.Errorf("%s: a hook of %d does not fit", w.Name, h)
			}
		}
		for _, sts := range []int{w.StsMin, w.StsMax} {
			if sts > 0 && !w.GaugeFits(big.NewRat(int64(sts)*10, 1016)) {
				t.Errorf("%s: %d stitches do not fit", w.Name, sts)
			}
		}
	}
	lace := standard.Weights()[0]
	if !lace.HookFits(mm(5)) || lace.HookFits(mm(0.7)) || !lace.GaugeFits(big.NewRat(10, 100)) {
		t.Error("lace with a large hook, or in a loose gauge, is refused; or with a hook of 0.7 mm it is not")
	}
}

func codes(l diag.List) []string {
	var out []string
	for _, d := range l {
		out = append(out, string(d.Code))
	}
	return out
}

// TestChecks goes to the limits of each check and just beyond.
func TestChecks(t *testing.T) {
	light, _ := standard.WeightOf("light")
	at, other := source.Span{Start: 1, End: 4}, source.Span{Start: 8, End: 9}
	share := func(name string, p int) plan.Share { return plan.Share{Fibre: name, Percent: p} }
	_, unknown := standard.CheckWeight("sport", at)
	_, known := standard.CheckWeight("fine", at)
	for _, c := range []struct {
		name string
		got  diag.List
		want []string
	}{
		{"a usual hook", standard.CheckHook(mm(4), at), nil},
		{"no hook at all", standard.CheckHook(0, at), nil},
		{"an odd hook", standard.CheckHook(mm(4.1), at), []string{"OV706"}},
		{"a class", known, nil},
		{"no class", unknown, []string{"OV713"}},
		{"light with half the smallest hook", standard.CheckWeightHook(light, mm(2.25), at, other), nil},
		{"light with less", standard.CheckWeightHook(light, mm(2.2), at, other), []string{"OV707"}},
		{"light with 1.75 times the largest", standard.CheckWeightHook(light, mm(9.625), at, other), nil},
		{"light with more", standard.CheckWeightHook(light, mm(10), at, other), []string{"OV707"}},
		{"an unknown class with any hook", standard.CheckWeightHook(standard.Weight{}, mm(40), at, other), nil},
		{"light at 19 to 10 cm", standard.CheckWeightGauge(light, big.NewRat(19, 100), at, other), nil},
		{"light at 30 to 10 cm", standard.CheckWeightGauge(light, big.NewRat(30, 100), at, other), []string{"OV708"}},
		{"light at 6 to 10 cm", standard.CheckWeightGauge(light, big.NewRat(6, 100), at, other), []string{"OV708"}},
		{"light without gauge", standard.CheckWeightGauge(light, nil, at, other), nil},
		{"fibres", standard.CheckFibres([]plan.Share{share("cotton", 60), share("wool", 40)}, nil, at), nil},
		{"a fibre misspelt", standard.CheckFibres([]plan.Share{share("coton", 100)}, []source.Span{other}, at), []string{"OV709"}},
		{"a fibre unknown", standard.CheckFibres([]plan.Share{share("spidersilk", 100)}, nil, at), []string{"OV709"}},
		{"shares of 99", standard.CheckFibres([]plan.Share{share("cotton", 60), share("wool", 39)}, nil, at), []string{"OV712"}},
		{"no fibres()", standard.CheckFibres(nil, nil, at), nil},
	} {
		if !slices.Equal(codes(c.got), c.want) {
			t.Errorf("%s: %v, want %v", c.name, codes(c.got), c.want)
		}
		for _, d := range c.got {
			if gaps := diag.Incomplete(d); len(gaps) > 0 {
				t.Errorf("%s: %v", c.name, gaps)
			}
		}
	}
	l := standard.CheckFibres([]plan.Share{share("coton", 100)}, []source.Span{other}, at)
	if l[0].Span != other || l[0].Help != "near" || !slices.Contains(l[0].Args["near"].([]string), "cotton") {
		t.Errorf("a fibre misspelt: %+v", l[0])
	}
}

func TestFibres(t *testing.T) {
	for word, want := range map[string][2]string{"cotton": {"cotton", "algodón"}, "flax": {"linen", "lino"}, "vicuna": {"vicuña", "vicuña"}} {
		en, ok := standard.FibreName(word, "en")
		es, _ := standard.FibreName(word, "es")
		if !ok || en != want[0] || es != want[1] {
			t.Errorf("%s: %s, %s", word, en, es)
		}
	}
	seen := map[string]bool{}
	for _, w := range standard.FibreWords() {
		en, _ := standard.FibreName(w, "en")
		es, _ := standard.FibreName(w, "es")
		if seen[w] || en == "" || es == "" {
			t.Errorf("%s stands twice or lacks a name: %q, %q", w, en, es)
		}
		seen[w] = true
	}
}
