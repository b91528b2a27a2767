package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
)

// Elastic and pompoms, as steps of the finishing and among what is needed.
func TestElasticAndPompom(t *testing.T) {
	p := tablePattern()
	elastic := plan.Finishing{Kind: plan.ThreadElastic, Yarn: -1, Width: 20_000, Length: plan.Lengths{460_000, 480_000, 500_000},
		Through: &plan.Ref{Kind: plan.RefRow, Part: 0, Row: plan.Nums{2, 2, 2}}, Row: plan.Nums{2, 2, 2}}
	casing := plan.Finishing{Kind: plan.ThreadElastic, Yarn: -1, Width: 5_000, Length: plan.Lengths{120_000, 120_000, 120_000},
		Through: &plan.Ref{Kind: plan.RefRow, Part: 0}}
	pompom := plan.Finishing{Kind: plan.MakePompom, Yarn: 1, Length: plan.Lengths{70_000, 70_000, 70_000}, Wraps: 120, Winds: plan.Lengths{17_200_000, 17_200_000, 17_200_000}}
	plain := pompom
	plain.Yarn = -1
	p.Notions = plan.Notions{Pin: true, Elastic: []plan.Elastic{{Width: 20_000, Length: elastic.Length}, {Width: 5_000, Length: casing.Length}}, Formers: []plan.Length{70_000}}
	for tag, want := range map[string][]string{
		"en-US": {
			"Cut 46 (48, 50) cm or 18 (19, 19¾) in of elastic 2 cm (¾ in) wide. Thread it through round 2 of the tube, without twisting it, and sew one end over the other.",
			"Cut 12 cm (4¾ in) of elastic 5 mm (¼ in) wide. Thread it through the tube, without twisting it, and sew one end over the other.",
			"With about 17.2 m (18.8 yd) of kelp, make a pompom of 7 cm (2¾ in): wrap 120 times round a card of that width, tie, cut and trim. Sew it on.",
			"With about 17.2 m (18.8 yd) of yarn, make a pompom of 7 cm (2¾ in): wrap 120 times round a card of that width, tie, cut and trim. Sew it on.",
			"Safety pin, 46 (48, 50) cm or 18 (19, 19¾) in of elastic 2 cm (¾ in) wide, 12 cm (4¾ in) of elastic 5 mm (¼ in) wide, card or pompom maker of 7 cm (2¾ in).",
		},
		"es": {
			"Cortar 46 (48; 50) cm de goma elástica de 2 cm de ancho. Pasarla por la vuelta 2 del tubo sin torcerla y coser un extremo sobre el otro.",
			"Cortar 12 cm de goma elástica de 5 mm de ancho. Pasarla por el tubo sin torcerla y coser un extremo sobre el otro.",
			"Con unos 17,2 m del hilo alga, hacer un pompón de 7 cm: enrollar 120 veces en un cartón de ese ancho, atar, cortar y emparejar. Coserlo.",
			"Con unos 17,2 m de hilo, hacer un pompón de 7 cm: enrollar 120 veces en un cartón de ese ancho, atar, cortar y emparejar. Coserlo.",
			"Imperdible, 46 (48; 50) cm de goma elástica de 2 cm de ancho, 12 cm de goma elástica de 5 mm de ancho, cartón o molde de 7 cm para el pompón.",
		},
	} {
		l := language(t, tag)
		var got []string
		for _, f := range []plan.Finishing{elastic, casing, pompom, plain} {
			got = append(got, strings.ReplaceAll(l.Finishing(p, f).String(), tie, " "))
		}
		got = append(got, strings.ReplaceAll(l.context(p, nil, nil).notions().String(), tie, " "))
		require.Equal(t, want, got, tag)
	}
}
