package compile_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

// trousers is a waistband with a piece below it, with the finishing to be tried.
const trousers = `pattern trousers
  terms us
  kind  trousers
  yarn  kelp
  hook  4 mm
end
sizes "S", "M"
  age 48 (60) months
  fit waist 48 (52) cm
end
gauge 10 cm
  sc 20 sts, 20 rounds
end
yarn sand
  name en "sand" es "arena"
  ball 50 g, 120 m
  swatch 20 sts by 20 rows of sc, 10 g
end
yarn kelp like sand
  name en "kelp" es "alga"
end
part waistband
  title en "Waistband" es "Pretina"
  in joined rounds
  chain 100 (110), join
  4 rounds: sc in each
end
part band
  title en "Band" es "Banda"
  yarn sand
  hook 3.5 mm
  in rows
  chain 20 (24)
  row: sc in each
  row: sc in each with [ch 2 as buttonhole, skip 2] 3 (4) times evenly after 2
  row: sc in each st and chain
end
finish
  %
end
`

// finished checks a source whose finishing is given, and returns what was made of it.
func finished(t *testing.T, finish string) *plan.Pattern {
	return clean(t, strings.Replace(trousers, "%", finish, 1))
}

// The hook and the yarn of the header are those of every part that says no other.
func TestHeaderSettings(t *testing.T) {
	p := finished(t, "weave in ends")
	require.Equal(t, []plan.Length{4000, 3500}, p.Hooks)
	require.EqualValues(t, 4000, p.Parts[0].Hook)
	require.Equal(t, 1, p.Parts[0].Yarn)
	require.EqualValues(t, 3500, p.Parts[1].Hook)
	require.Equal(t, 0, p.Parts[1].Yarn)
	for _, d := range found(strings.Replace(trousers, "%", "weave in ends", 1)) {
		require.NotContains(t, []diag.Code{"OV705", "OV722"}, d.Code, "both yarns and both hooks are used")
	}
}

// What is needed follows from what is done: tools by the steps that need them, amounts by size.
func TestNotions(t *testing.T) {
	n := finished(t, "block").Notions
	require.Equal(t, plan.Notions{}, n, "nothing is sewn, threaded or marked")

	p := finished(t, "elastic 2 cm, length fit.waist - 2 cm, through waistband round 2\n  pompom with kelp, 7 cm, 120 wraps\n  button 12 mm for band.buttonhole")
	n = p.Notions
	require.True(t, n.Needle)
	require.True(t, n.Pin)
	require.Equal(t, []plan.Elastic{{Width: 20_000, Length: plan.Lengths{460_000, 500_000}}}, n.Elastic)
	require.Equal(t, []plan.Length{70_000}, n.Formers)
	require.Equal(t, []plan.Buttons{{Size: 12_000, N: plan.Nums{3, 4}}}, n.Buttons)
	require.Equal(t, plan.Lengths{17_200_000, 17_200_000}, p.Finish[1].Winds)
	require.Equal(t, plan.Nums{2, 2}, p.Finish[0].Row)
}

// Buttons are as many as the places they are for, in every size; said with a number, the two are compared.
func TestButtonsAndHoles(t *testing.T) {
	require.Equal(t, plan.Nums{3, 4}, finished(t, "button 12 mm, 3 (4) for band.buttonhole").Notions.Buttons[0].N)
	for finish, want := range map[string]string{
		"button 12 mm, 4 for band.buttonhole":                        "OV724 the number of buttons is 4 in S, and that of the places of band.buttonhole is 3 in S",
		"button 12 mm for band.hole":                                 "OV202",
		"button 12 mm, 3 (4)":                                        "OV725 these buttons are for no places, though no button is for band.buttonhole",
		"button 12 mm, 1\n  button 12 mm for band.buttonhole":        "",
		"elastic 2 cm, length 60 (54) cm, through waistband round 2": "OV726 the elastic measures 60.0 cm in S, and what it runs through in waistband measures 50.0 cm in S",
		"elastic 2 cm, length 48 cm, through belt":                   "OV205",
		"elastic 20 g, length 48 cm, through waistband":              "OV753 a measure must be a length",
	} {
		var said []string
		for _, d := range found(strings.Replace(trousers, "%", finish, 1)) {
			if d.Code != "OV606" && d.Code != "OV721" && d.Code != "OV802" && diag.Lookup(d.Code).Severity != diag.Note {
				said = append(said, string(d.Code)+" "+diag.Fill(diag.Lookup(d.Code).En.Message, d.Args, "en"))
			}
		}
		got := strings.Join(said, "\n")
		require.True(t, strings.HasPrefix(got, want) && (want != "" || got == ""), "%s: %s", finish, got)
		require.LessOrEqual(t, len(said), 1, "%s: %s", finish, got)
	}
}
