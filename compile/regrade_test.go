package compile_test

import (
	"fmt"
	"math/big"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// own reads maker's gauges that are written as they should be.
func own(t testing.TB, texts ...string) compile.Options {
	t.Helper()
	var o compile.Options
	for _, text := range texts {
		g, ok := compile.ReadOwnGauge(text)
		require.True(t, ok, text)
		o.Gauges = append(o.Gauges, g)
	}
	return o
}

// regraded checks a source at maker's gauges.
func regraded(t testing.TB, text string, gauges ...string) compile.Outcome {
	t.Helper()
	f, list := lang.Parse(source.NewFile("own.ovillo", text))
	require.False(t, list.HasErrors(), "%v", list)
	return compile.CompileWith(f, own(t, gauges...))
}

func TestReadOwnGauge(t *testing.T) {
	for text, want := range map[string]string{
		"dc 18 sts 9 rows":                 "dc 18 false 9 rows 0",
		"dc 18 sts, 9.5 rounds":            "dc 18 false 19/2 rounds 0",
		"  dc  18.5 sts ":                  "dc 37/2 false - 0",
		"ch 20 sts":                        "ch 20 false - 0",
		"fans 3 repeats, 11 rows":          "fans 3 true 11 rows 0",
		"hdc 1 st 1 row":                   "hdc 1 false 1 rows 0",
		"hdc 20 sts 13 rounds hook 3.5 mm": "hdc 20 false 13 rounds 3500",
		"hdc 20 sts, hook 3mm":             "hdc 20 false - 3000",
		"piña 4 sts":                       "piña 4 false - 0",
		"":                                 "no", "dc": "no", "18 sts 9 rows": "no", "dc 18": "no", "dc 18 sts 9": "no", "dc -1 sts": "no", "dc 0 sts": "no",
		"dc 18 sts 0 rows": "no", "dc 18 sts 9 rows 4 mm": "no", "dc 18,5 sts": "no", "dc 18 sts 9 rows hook 0 mm": "no", "dc 1e3 sts": "no",
	} {
		got := "no"
		if g, ok := compile.ReadOwnGauge(text); ok {
			rows := "-"
			if g.Rows != nil {
				rows = g.Rows.RatString() + " " + g.Way
			}
			got = fmt.Sprintf("%s %s %v %s %d", g.Stitch, g.Sts.RatString(), g.Repeats, rows, g.Hook)
		}
		require.Equal(t, want, got, text)
	}
}

// regradable is a source whose counts are made from lengths, but for those of the second part.
const regradable = `sizes "S", "M"
end
gauge 10 cm
  sc 20 sts, 20 rows
  dc 20 sts, 10 rows
  dc 18 sts, 9 rounds
  fans 5 repeats
  hdc 16 sts, 12 rows
  hdc 18 sts, 14 rows, hook 3 mm
end
hook 4 mm
yarn sand
  name en "sand" es "arena"
  swatch 20 sts by 10 rows of dc, 5 g
  ball 50 g, 120 m
end
stitch pattern fans
  multiple of 4
  row 1: dc in each
end
let wide = stitches(20 (24) cm, dc, rows)
let long = rows(10 cm, dc, rows)
let fixed = 7
part made
  title en "M" es "M"
  yarn sand
  in rows
  chain wide
  long rows: dc in each = wide
end
part typed
  title en "T" es "T"
  in rows
  chain 40
  10 rows: dc in each = 40
end
measure
  made_width  = width of made
  made_height = height of made
  typed_width = width of typed
  both        = width of made + width of typed
end
`

// TestRegrade works a source at another gauge. By hand: 20 cm of 25 stitches to 10 cm are 50, 24 cm are 60; 10 cm of 8 rows are 8;
// 40 stitches that stay are 16 cm in place of 20. The swatch is of 10 by 10 cm and weighs 5 g, so of 20 by 10 cm 10 g, with the other
// part 20 by 10, at the source's gauge; at the maker's the area of the first is the same, that of the second 16 by 12.5 cm.
func TestRegrade(t *testing.T) {
	out := regraded(t, regradable, "dc 25 sts 8 rows")
	require.Nil(t, out.Fault)
	require.False(t, out.Found.HasErrors())
	require.True(t, out.Sound)
	p := out.Pattern
	require.Equal(t, plan.Gauge{Stitch: "dc", Over: 10 * plan.Centimetre, Sts: 25000, Rows: 8000,
		Was: &plan.Gauge{Stitch: "dc", Over: 10 * plan.Centimetre, Sts: 20000, Rows: 10000}}, p.Gauges[1])
	require.Len(t, p.OwnGauges(), 1)
	require.Equal(t, []plan.Change{
		{Of: plan.ChangedLet, Name: "wide", Old: plan.Value{Counts: plan.Nums{40, 48}}, New: plan.Value{Counts: plan.Nums{50, 60}}},
		{Of: plan.ChangedLet, Name: "long", Old: plan.Value{Counts: plan.Nums{10, 10}}, New: plan.Value{Counts: plan.Nums{8, 8}}},
		{Of: plan.ChangedMeasure, Name: "typed_width", Old: plan.Value{Lengths: plan.Lengths{200000, 200000}}, New: plan.Value{Lengths: plan.Lengths{160000, 160000}}},
		{Of: plan.ChangedMeasure, Name: "both", Old: plan.Value{Lengths: plan.Lengths{400000, 440000}}, New: plan.Value{Lengths: plan.Lengths{360000, 400000}}},
	}, p.Regraded.Changes[:4])
	var stuck []string
	for _, d := range out.Found {
		if strings.HasPrefix(string(d.Code), "OV76") {
			stuck = append(stuck, fmt.Sprint(d.Code, " ", d.Args["measure"], " ", d.Args["parts"]))
		}
	}
	require.Equal(t, []string{"OV760 typed_width [typed]", "OV761 both <nil>"}, stuck)
	require.Nil(t, regraded(t, regradable).Pattern.Regraded)
}

// TestRegradeYarn keeps the weight of the fabric for its area: the swatch was taken at the gauge of the source.
func TestRegradeYarn(t *testing.T) {
	old, now := regraded(t, regradable).Pattern.Yarns[0], regraded(t, regradable, "dc 25 sts 8 rows").Pattern.Yarns[0]
	// 400 and 440 square centimetres of 0.05 g, and a tenth; chains and edges take a little more.
	require.InDelta(t, 22_000, old.Amount[0].Milligrams, 1_500)
	// The first part covers as much; the second 16 by 12.5 cm, which is 200 as well.
	require.InDelta(t, float64(old.Amount[0].Milligrams), float64(now.Amount[0].Milligrams), 500)
	// At 10 stitches to 10 cm the second is 40 by 10 cm, so that there are 600 square centimetres.
	wide := regraded(t, regradable, "dc 10 sts 10 rows").Pattern.Yarns[0]
	require.InDelta(t, 33_000, wide.Amount[0].Milligrams, 2_500)
}

// TestRegradeWhich finds the line that a maker's gauge stands in place of, or says why there is none.
func TestRegradeWhich(t *testing.T) {
	for _, c := range []struct {
		gauges string
		want   compile.GaugeFaultKind
		line   int
	}{
		{"dc 21 sts 11 rows", 0, 1},
		{"dc 21 sts 11 rounds", 0, 2},
		{"dc 21 sts", compile.GaugeSeveral, 0},
		{"sc 21 sts", 0, 0},
		{"sc 21 sts 22 rounds", compile.GaugeNoLine, 0},
		{"tr 21 sts", compile.GaugeNoLine, 0},
		{"ch 21 sts", compile.GaugeNoLine, 0},
		{"nothing 21 sts", compile.GaugeNoLine, 0},
		{"fans 6 repeats", 0, 3},
		{"fans 24 sts", 0, 3},
		{"sc 6 repeats", compile.GaugeRepeats, 0},
		{"hdc 17 sts 13 rows", 0, 4},
		{"hdc 17 sts 13 rows hook 3 mm", 0, 5},
		{"hdc 17 sts 13 rows hook 5 mm", compile.GaugeNoLine, 0},
		{"dc 21 sts 11 rows; dc 22 sts 10 rows", compile.GaugeTwice, 0},
		{"dc 21 sts 11 rows; dc 22 sts 10 rounds", 0, 1},
	} {
		out := regraded(t, regradable, strings.Split(c.gauges, "; ")...)
		if c.want != 0 {
			require.NotNil(t, out.Fault, c.gauges)
			require.Equal(t, c.want, out.Fault.Kind, c.gauges)
			require.Contains(t, out.Fault.Near, "dc 18 sts, 9 rounds")
			require.Nil(t, out.Pattern)
			continue
		}
		require.Nil(t, out.Fault, c.gauges)
		require.NotNil(t, out.Pattern.Gauges[c.line].Was, c.gauges)
	}
}

// TestRegradeFails tells errors of the maker's gauge from those of the source.
func TestRegradeFails(t *testing.T) {
	crown := `sizes "S"
end
gauge 10 cm
  sc 20 sts, 20 rows
end
let wide = stitches(20 cm, sc)
part p
  title en "P" es "P"
  in rows
  chain wide
  row: [sc in next 3, sc2tog] across = 32
end
`
	out := regraded(t, crown, "sc 21 sts 20 rows")
	require.True(t, out.Found.HasErrors())
	require.True(t, out.Sound, "42 stitches do not go into fives, 40 do")
	out = regraded(t, strings.Replace(crown, "= 32", "= 33", 1), "sc 21 sts 20 rows")
	require.True(t, out.Found.HasErrors())
	require.False(t, out.Sound)
	require.Equal(t, "32", fmt.Sprint(out.Found[0].Args["have"].(diag.PerSize).Values[0]), "the source is checked at its own gauge")
}

// TestRegradeToItself regrades every example to its own gauge, line by line and all at once: nothing changes.
func TestRegradeToItself(t *testing.T) {
	for _, path := range append(sources(t, "../examples/*.ovillo"), sources(t, casesAt+"/*.ovillo")...) {
		t.Run(filepath.Base(path), func(t *testing.T) {
			text, err := os.ReadFile(path)
			require.NoError(t, err)
			base := regraded(t, string(text))
			var lines []string
			for _, g := range base.Pattern.Gauges {
				thousandths := func(n int64) string { return big.NewRat(n, 1000).FloatString(3) }
				name := string(g.Stitch)
				if k, ok := stitch.Of(g.Stitch); ok {
					name = k.Word(base.Pattern.UKTerms)
				}
				line := fmt.Sprintf("%s %s sts", name, thousandths(g.Sts))
				if g.Repeats > 0 {
					line = fmt.Sprintf("%s %s repeats", name, thousandths(g.Repeats))
				}
				if g.Rows > 0 {
					line += ", " + thousandths(g.Rows) + map[bool]string{false: " rows", true: " rounds"}[g.Rounds]
				}
				if g.Hook > 0 {
					line += fmt.Sprintf(", hook %g mm", float64(g.Hook)/float64(plan.Millimetre))
				}
				lines = append(lines, line)
			}
			for i := 0; i <= len(lines); i++ {
				chosen := lines
				if i < len(lines) {
					chosen = lines[i : i+1]
				}
				if len(chosen) == 0 {
					continue
				}
				out := regraded(t, string(text), chosen...)
				require.Nil(t, out.Fault, "%v %v", chosen, out.Fault)
				require.Empty(t, out.Pattern.Regraded.Changes)
				require.Len(t, out.Pattern.OwnGauges(), len(chosen))
				out.Pattern.Regraded = nil
				for k := range out.Pattern.Gauges {
					out.Pattern.Gauges[k].Was = nil
				}
				require.Equal(t, base.Pattern, out.Pattern)
				require.Equal(t, said(base.Found), said(out.Found))
			}
		})
	}
}

// TestRegradeAnywhere works every example at gauges of any kind: nothing breaks, what is said has no gaps, and where no error is
// found the fabric goes by the new gauge.
func TestRegradeAnywhere(t *testing.T) {
	paths := sources(t, "../examples/*.ovillo")
	rapid.Check(t, func(t *rapid.T) {
		path := rapid.SampledFrom(paths).Draw(t, "example")
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		f, _ := lang.Parse(source.NewFile("own.ovillo", string(text)))
		base, _ := compile.Compile(f)
		var lines []string
		for _, g := range base.Gauges {
			if !rapid.Bool().Draw(t, "counted") {
				continue
			}
			line := fmt.Sprintf("%s %d sts", g.Stitch, rapid.IntRange(1, 60).Draw(t, "stitches"))
			if g.Rows > 0 {
				line += fmt.Sprintf(" %d.%d %s", rapid.IntRange(1, 60).Draw(t, "rows"), rapid.IntRange(0, 9).Draw(t, "tenths"), map[bool]string{false: "rows", true: "rounds"}[g.Rounds])
			}
			if g.Hook > 0 {
				line += fmt.Sprintf(" hook %g mm", float64(g.Hook)/float64(plan.Millimetre))
			}
			lines = append(lines, line)
		}
		var o compile.Options
		for _, l := range lines {
			g, ok := compile.ReadOwnGauge(l)
			if !ok {
				t.Fatal(l)
			}
			o.Gauges = append(o.Gauges, g)
		}
		out := compile.CompileWith(f, o)
		if out.Fault != nil || !out.Sound {
			t.Fatalf("%v: %v", lines, out.Fault)
		}
		for _, d := range out.Found {
			if gaps := diag.Incomplete(d); d.Code == diag.Internal || len(gaps) > 0 {
				t.Fatalf("%s %v: %v", filepath.Base(path), lines, gaps)
			}
		}
		if !out.Found.HasErrors() && len(out.Pattern.OwnGauges()) != len(lines) {
			t.Fatalf("%d gauges of %v", len(out.Pattern.OwnGauges()), lines)
		}
	})
}
