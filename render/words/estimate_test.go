package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// How the amounts of yarn were worked out, in whole sentences of both languages.
func TestEstimate(t *testing.T) {
	both := func(en, es string) plan.Text { return plan.Text{"en": en, "es": es} }
	amount := []plan.YarnAmount{{Milligrams: 1}, {Milligrams: 2}, {Milligrams: 3}}
	dc := &plan.Swatch{Sts: 20, Rows: 10, Stitch: stitch.DC}
	for _, c := range []struct {
		name   string
		with   func(p *plan.Pattern, sand, kelp *plan.Yarn)
		en, es string
	}{
		{"one swatch for all, and nothing besides", func(p *plan.Pattern, sand, kelp *plan.Yarn) {
			sand.Amount, kelp.Amount, sand.Swatch, kelp.Swatch = amount, amount, dc, dc
		}, "Amounts are based on a weighed swatch of 20 dc by 10 rows.",
			"Cantidades según una muestra pesada de 20 pa por 10 hileras."},
		{"a swatch in rounds", func(p *plan.Pattern, sand, kelp *plan.Yarn) {
			s := &plan.Swatch{Sts: 20, Rows: 10, Rounds: true, Stitch: stitch.DC}
			sand.Amount, kelp.Amount, sand.Swatch, kelp.Swatch = amount, amount, s, s
		}, "Amounts are based on a weighed swatch of 20 dc by 10 rounds.",
			"Cantidades según una muestra pesada de 20 pa por 10 vueltas."},
		{"a swatch of a stitch pattern in repeats, a seam and an allowance", func(p *plan.Pattern, sand, kelp *plan.Yarn) {
			s := &plan.Swatch{Sts: 3, Repeats: true, Rows: 8, Stitch: "fans", Pattern: "fans", Called: both("fan stitch", "punto abanico")}
			sand.Amount, kelp.Amount, sand.Swatch, kelp.Swatch, p.Allowance = amount, amount, s, s, 75
			p.Finish = []plan.Finishing{{Kind: plan.SewRuns, Yarn: 0, Length: plan.Lengths{100, 100, 100}}, {Kind: plan.WeaveEnds, Yarn: -1}}
		}, "Amounts are based on a weighed swatch of 3 repeats of fan stitch by 8 rows. They include the seam and 7.5% for ends and swatch.",
			"Cantidades según una muestra pesada de 3 repeticiones de punto abanico por 8 hileras. Incluyen la costura y un 7,5 % para cabos y muestra."},
		{"a sample weighed by yarn, with all there is", func(p *plan.Pattern, sand, kelp *plan.Yarn) {
			sand.Amount, kelp.Amount, sand.BySample, kelp.BySample, p.Allowance = amount, amount, true, true, 100
			p.Sample = &plan.Sample{Size: 1, Made: p.Sizes[1], Milligrams: []int64{180_000, 34_500}}
			cord := plan.Finishing{Kind: plan.MakeCord, Yarn: 1, Length: plan.Lengths{100, 100, 100}}
			pompom := plan.Finishing{Kind: plan.MakePompom, Yarn: 1, Length: plan.Lengths{100, 100, 100}}
			p.Finish = []plan.Finishing{cord, pompom, pompom, {Kind: plan.SewRuns, Yarn: 0, Length: plan.Lengths{plan.NoLength, 100, 100}}}
		}, "Amounts are based on the piece made in size M, which weighs 180 g of sand and 34.5 g of kelp. They include the seam, the cord, the pompoms and 10% for ends and swatch.",
			"Cantidades según la pieza tejida en talla M, que pesa 180 g de arena y 34,5 g de alga. Incluyen la costura, el cordón, los pompones y un 10 % para cabos y muestra."},
		{"a sample weighed in one", func(p *plan.Pattern, sand, kelp *plan.Yarn) {
			sand.Amount, kelp.Amount, sand.BySample, kelp.BySample = amount, amount, true, true
			p.Sample = &plan.Sample{Size: 1, Made: p.Sizes[1], Milligrams: []int64{0, 0}, All: 214_000}
		}, "Amounts are based on the piece made in size M, which weighs 214 g.",
			"Cantidades según la pieza tejida en talla M, que pesa 214 g."},
		{"one yarn without", func(p *plan.Pattern, sand, kelp *plan.Yarn) {
			sand.Amount, sand.Swatch, kelp.WhyNoAmount = amount, dc, "swatch"
		}, "The amount of sand is based on a weighed swatch of 20 dc by 10 rows. No amount of kelp: no swatch and no finished piece was weighed.",
			"Cantidad de arena: según una muestra pesada de 20 pa por 10 hileras. Sin cantidad de alga: no se pesó ninguna muestra ni pieza."},
		{"no ball", func(p *plan.Pattern, sand, kelp *plan.Yarn) { sand.WhyNoAmount, kelp.WhyNoAmount = "ball", "ball" },
			"No amounts: how long a ball is has not been given.", "Sin cantidades: no consta cuánto mide un ovillo."},
		{"no gauge", func(p *plan.Pattern, sand, kelp *plan.Yarn) { sand.WhyNoAmount, kelp.WhyNoAmount = "gauge", "gauge" },
			"No amounts: the gauge of the weighed swatch is missing.", "Sin cantidades: falta la muestra de tensión del punto pesado."},
		{"nothing used", func(*plan.Pattern, *plan.Yarn, *plan.Yarn) {}, "", ""},
	} {
		p := tablePattern()
		p.Finish, p.Sample, p.Allowance = nil, nil, 0
		c.with(p, &p.Yarns[0], &p.Yarns[1])
		for lang, want := range map[string]string{"en-US": c.en, "es": c.es} {
			l := language(t, lang)
			require.Equal(t, want, strings.ReplaceAll(l.context(p, nil, nil).estimate().String(), tie, " "), "%s, in %s", c.name, lang)
		}
	}
}
