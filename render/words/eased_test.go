package words_test

import (
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/words"
)

// TestEasedSeam holds what a seam says whose edges differ in length, and that one whose edges agree says nothing.
func TestEasedSeam(t *testing.T) {
	p := &plan.Pattern{Sizes: []plan.Size{{Name: "S"}, {Name: "M"}}, Parts: []*plan.Part{
		{Name: "sleeve", Called: plan.Text{"en": "the sleeve", "es": "la manga"}},
		{Name: "back", Called: plan.Text{"en": "the back", "es": "la espalda"}}}}
	edge := func(part int) []plan.Ref {
		return []plan.Ref{{Kind: plan.RefEdge, Part: part, Called: p.Parts[part].Called, Count: plan.Nums{40, 44}}}
	}
	for _, c := range []struct {
		ease   plan.Lengths
		en, es string
	}{
		{nil, "Sew the last row of the sleeve to the last row of the back.", ""},
		{plan.Lengths{15 * plan.Millimetre, 15 * plan.Millimetre},
			"ease in about 1.5 cm (½ in) of the longer edge.", "embeber unos 1,5 cm del borde más largo."},
		{plan.Lengths{0, plan.Centimetre}, "ease in about 0 (1) cm", "embeber unos 0 (1) cm del borde más largo."},
	} {
		f := plan.Finishing{Kind: plan.SewRuns, Sewn: edge(0), To: edge(1), Ease: c.ease}
		for tag, want := range map[string]string{"en": c.en, "es": c.es} {
			l, err := words.For(tag)
			if err != nil {
				t.Fatal(err)
			}
			if got := strings.ReplaceAll(l.Finishing(p, f).String(), "\u00a0", " "); !strings.Contains(got, want) {
				t.Errorf("%s: %s\nwant %s", tag, got, want)
			}
		}
	}
}
