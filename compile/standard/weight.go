package standard

import (
	"math/big"
	"strings"
	"sync"

	"ovillo/compile/plan"
)

// Weight is one class of yarn.
type Weight struct {
	Number  int
	Name    string // as a source and a page write it: lace, super fine …
	StsMin  int    // single crochet over 4 inches (lace: double crochet); 0: no limit
	StsMax  int
	HookMin plan.Length
	HookMax plan.Length // 0: no limit
}

// Weights is the table of classes, thinnest first.
var Weights = sync.OnceValue(func() []Weight {
	var out []Weight
	for _, r := range table("weights.csv") {
		out = append(out, Weight{Number: r.whole("number"), Name: r["name"],
			StsMin: r.whole("sts_min"), StsMax: r.whole("sts_max"),
			HookMin: r.length("hook_min", plan.Millimetre), HookMax: r.length("hook_max", plan.Millimetre)})
	}
	return out
})

// WeightOf finds a class by its name, whatever its capitals and the blanks between its words.
func WeightOf(name string) (Weight, bool) {
	name = strings.ToLower(strings.Join(strings.FieldsFunc(name, func(r rune) bool {
		return r == ' ' || r == '_' || r == '-'
	}), " "))
	for _, w := range Weights() {
		if w.Name == name {
			return w, true
		}
	}
	return Weight{}, false
}

// WeightNames lists the names of the classes, thinnest first.
func WeightNames() []string {
	var out []string
	for _, w := range Weights() {
		out = append(out, w.Name)
	}
	return out
}

// How far a hook or a gauge may lie from what is usual for a class before it is worth a warning. The ranges of the table
// are a first guess for firm cloth; fine garments and firm toys leave them by far. Lace is often worked with much larger
// hooks, so it has no upper limit. Common practice, no source.
const (
	hookBelow = 0.5
	hookAbove = 1.75
	stsBelow  = 0.6
	stsAbove  = 1.6
	lace      = 0
)

// HookFits reports whether a hook is near what is usual for the class.
func (w Weight) HookFits(hook plan.Length) bool {
	h := float64(hook)
	if w.HookMin > 0 && h < hookBelow*float64(w.HookMin) {
		return false
	}
	return w.HookMax == 0 || w.Number == lace || h <= hookAbove*float64(w.HookMax)
}

// GaugeFits reports whether a gauge, in stitches to a millimetre, is near what is usual for the class. It holds for
// single to double crochet, whose stitches are of about the same width.
func (w Weight) GaugeFits(stsPerMM *big.Rat) bool {
	const fourInches = 101.6
	x, _ := stsPerMM.Float64()
	x *= fourInches
	if w.StsMin > 0 && w.Number != lace && x < stsBelow*float64(w.StsMin) {
		return false
	}
	return w.StsMax == 0 || x <= stsAbove*float64(w.StsMax)
}
