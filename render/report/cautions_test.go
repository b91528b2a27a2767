package report

import (
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/lang/source"
	"ovillo/render/sample"
	"ovillo/render/words"
)

// TestCautionsOfTheReport: each with its rule, its source and how well that was read, its sizes, its line and its reason.
func TestCautionsOfTheReport(t *testing.T) {
	for lang, want := range map[string][]string{
		"en": {
			"CORD-10, limit: At the chest and waist of children's clothes, keep each free… (EN 14682:2014, from a summary); Size 1 y only; line 2",
			"CORD-25, advice: Stitch a drawstring to the garment midway between its exits … (EN 14682:2014, from a summary); The designer's reason: the cord is sewn down at the back seam.",
			"LABL-03, advice, for those who sell: To label the finished piece, a seller needs what each yarn i… (EU 1007/2011)",
		},
		"es": {
			"CORD-10, límite: En el pecho y la cintura de prendas infantiles, dejar cada e… (EN 14682:2014, según un resumen); Solo talla 1 año; línea 2",
			"CORD-25, consejo: Coser el cordón ajustable a la prenda a mitad de camino entr… (EN 14682:2014, según un resumen); Razón de quien diseña: el cordón queda cosido en la costura trasera.",
			"LABL-03, consejo, para quien vende: Para etiquetar la pieza terminada, quien vende necesita los … (UE 1007/2011)",
		},
	} {
		l, err := words.For(lang)
		require.NoError(t, err)
		p := sample.Leggings()
		p.Cautions[0].For = plan.Sizes{true, false, false, false}
		p.Cautions[0].At = source.Span{Start: 8, End: 12}
		r := Make(Input{Lang: lang, Text: "pattern\nx y z\nend\n", Pattern: p, Words: l})
		found := false
		for _, x := range r.Results {
			if x.ID != "S02" {
				continue
			}
			found = true
			var got []string
			for _, n := range x.Notes {
				got = append(got, unbound(n))
			}
			require.Equal(t, want, got)
		}
		require.True(t, found, lang)
	}
}
