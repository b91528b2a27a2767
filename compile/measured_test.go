package compile_test

import (
	"fmt"
	"math"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

// TestMeasuresAreCountsOverGauge works out pieces of each shape by hand: stitches over the stitches in a centimetre, rows over the
// rows in one. The gauge is 16 sc and 18 rows, or 15 dc and 8 rows, to 10 cm.
func TestMeasuresAreCountsOverGauge(t *testing.T) {
	const (
		sc, scRow = 10 / 16.0, 10 / 18.0
		dc, dcRow = 10 / 15.0, 10 / 8.0
	)
	for _, c := range []struct {
		name, parts, measure string
		want                 []float64 // cm, size by size
	}{
		{"a tube", "part p\n  in joined rounds\n  chain 80 (88), join\n  12 rounds: sc in each\n  3 rounds: dc in each\nend",
			"around p at round 3", []float64{80 * sc, 88 * sc}},
		{"a tube in another stitch", "part p\n  in joined rounds\n  chain 80 (88), join\n  12 rounds: sc in each\n  3 rounds: dc in each\nend",
			"around p at round 14", []float64{80 * dc, 88 * dc}},
		{"the height of both", "part p\n  in joined rounds\n  chain 80 (88), join\n  12 (14) rounds: sc in each\n  3 rounds: dc in each\nend",
			"height of p", []float64{12*scRow + 3*dcRow, 14*scRow + 3*dcRow}},
		{"a flat piece", "part p\n  in rows\n  chain 41 (45)\n  20 rows: sc in each\n  row: sc to last 2, dec\nend",
			"width of p at row 21", []float64{40 * sc, 44 * sc}},
		{"the widest row of a taper", "part p\n  in rows\n  chain 30 (34)\n  repeat 5 times\n    row: dec, sc in each\n    row: sc in each\n  end\nend",
			"width of p", []float64{29 * sc, 33 * sc}},
		{"chains between stitches", "part p\n  in rows\n  chain 40\n  row: sc in next 10, ch 4 as gap, skip 4, sc in each\nend",
			"width of p at row 1", []float64{40 * sc, 40 * sc}}, // a chain within a row is as wide as its stitches
		{"a flat disc", "part p\n  in joined rounds\n  ring\n  round: 6 sc in ring\n  round: inc around\n  round: [sc in next, inc] around\n  only \"L\"\n    round: [sc in next 2, inc] around\n  end\nend",
			"across p", []float64{2 * 3 * scRow, 2 * 4 * scRow}},
		{"a disc up to a round", "part p\n  in joined rounds\n  ring\n  round: 6 sc in ring\n  round: inc around\n  10 rounds: sc in each\nend",
			"across p at round 2", []float64{2 * 2 * scRow, 2 * 2 * scRow}},
		{"a cone", "part p\n  in joined rounds\n  ring\n  round: 4 sc in ring\n  repeat 6 (7) times\n    round: sc in each\n    round: inc 4 evenly\n  end\nend",
			"around p", []float64{28 * sc, 32 * sc}},
		{"up a cone", "part p\n  in joined rounds\n  ring\n  round: 4 sc in ring\n  repeat 6 (7) times\n    round: sc in each\n    round: inc 4 evenly\n  end\nend",
			"height of p", []float64{13 * scRow, 15 * scRow}},
		{"a yoke", "part p\n  in joined rounds\n  chain 60 (64), join\n  repeat 4 times\n    round: inc 15 (16) evenly\n    2 rounds: sc in each\n  end\n" +
			"  count off: 10, mark a, 20 (21), mark b, 40 (43), mark c, 20 (21), mark d, 30 (33)\n  round: sc to a, ch 6 as under_1, skip to b as arm_1, sc to c, ch 6 as under_2, skip to d as arm_2, sc in each\nend\n" +
			"part body\n  in joined rounds\n  from p.edge\n  round: sc in each st and chain\nend\npart sleeve\n  in joined rounds\n  from below p.under_1, p.arm_1\n  round: sc in each\nend\npart other\n  in joined rounds\n  from below p.under_2, p.arm_2\n  round: sc in each\nend",
			"around body at round 1", []float64{(80 + 12) * sc, (86 + 12) * sc}},
		{"a side edge", "part p\n  in rows\n  chain 20\n  18 (20) rows: sc in each\nend", "along right edge of p", []float64{18 * scRow, 20 * scRow}},
		{"a label", "part p\n  in rows\n  chain 20\n  row: sc in next 7 as edge_of, sc in each\nend", "along p.edge_of", []float64{7 * sc, 7 * sc}},
		{"motifs", "part m\n  in joined rounds\n  ring\n  round: [3 sc in ring, ch 2 as corner] 4 times\nend\nmotifs all of m\n  3 (4) across, 2 down\n  each 9 cm\n  joined in round 1: at each corner, sl st in place of 1 ch\nend",
			"width of all", []float64{27, 36}},
	} {
		p := worn(t, "pattern p\n  terms us\n  base sc\nend\nsizes \"S\", \"L\"\nend\ngauge 10 cm\n  sc 16 sts, 18 rows\n  dc 15 sts, 8 rows\n  ch 20 sts\nend\n"+
			c.parts+"\nmeasure\n  m en \"M\" es \"M\" = "+c.measure+"\nend\n")
		require.Len(t, p.Measures, 1, c.name)
		for z, want := range c.want {
			require.InDelta(t, want, p.Measures[0].Values[z].Cm(), 0.001, "%s: %s in size %d", c.name, c.measure, z)
		}
	}
}

// TestMeasuresOfExamples goes over the examples: each measure taken around a part or across it, at a row, is the stitches that row
// has over their gauge.
func TestMeasuresOfExamples(t *testing.T) {
	seen := 0
	for _, path := range sources(t, "../examples/*.ovillo") {
		p := checked(t, path)
		for _, m := range p.Measures {
			if len(m.Of) != 1 || m.Of[0].Row == nil || m.Of[0].Kind != plan.Around && m.Of[0].Kind != plan.Width || p.Parts[m.Of[0].Part].Grid != nil {
				continue
			}
			on := m.Of[0]
			for z, v := range m.Values {
				row, ok := rowOf(p.Parts[on.Part].Worked[z], on.Row[z])
				if !ok || row.Spaces > 0 {
					continue
				}
				want, ok := 0.0, true
				for form, n := range row.ByForm.All() {
					per := stitchesPerCm(p, string(form.ID))
					ok = ok && per > 0
					want += float64(n) / per
				}
				if !ok {
					continue
				}
				seen++
				require.InDelta(t, want, v.Cm(), 0.005, "%s: %s in %s", filepath.Base(path), m.Name, p.Sizes[z].Name)
			}
		}
	}
	require.Greater(t, seen, 25)
}

func rowOf(facts []plan.RowFact, number int) (plan.RowFact, bool) {
	for _, f := range facts {
		if f.Number == number {
			return f, true
		}
	}
	return plan.RowFact{}, false
}

// stitchesPerCm is the gauge of a stitch as the page prints it; 0 if it has none.
func stitchesPerCm(p *plan.Pattern, id string) float64 {
	for _, g := range p.Gauges {
		if string(g.Stitch) == id && g.Pattern == "" {
			return float64(g.Sts) / 1000 / g.Over.Cm()
		}
	}
	return 0
}

// TestPrintedSums holds that nothing needs to be done about rounding: where two lengths add up exactly to a third, their figures
// to a tenth of a centimetre add up within one in the last place, whatever they are.
func TestPrintedSums(t *testing.T) {
	tenths := func(l int) int { return int(math.Round(float64(l) / 1000)) }
	for a := 0; a < 3000; a += 37 {
		for b := 0; b < 3000; b += 41 {
			if d := tenths(a) + tenths(b) - tenths(a+b); d < -1 || d > 1 {
				t.Fatalf("%d and %d µm are off by %d tenths", a, b, d)
			}
		}
	}
}

// TestSampleAgainstCounts holds when a measured sample is warned of: further off than 1 cm or 3 %, whichever is more, or than it says
// itself. The strip is 40 (200) stitches of 16 to 10 cm wide, 25 (125) cm, and the tube is as much around.
func TestSampleAgainstCounts(t *testing.T) {
	for _, c := range []struct {
		size, line string
		off        bool
	}{
		{"S", "width 26 cm", false},
		{"S", "width 26.1 cm", true},
		{"S", "width 23.9 cm", true},
		{"S", "width 28 cm within 3 cm", false},
		{"S", "width 25.6 cm within 0.5 cm", true},
		{"L", "width 128.7 cm", false},
		{"L", "width 128.8 cm", true},
		{"S", "girth 12.5 cm flat", false},
		{"S", "girth 13.1 cm flat", true},
		{"S", "both 25 cm flat", false}, // two strips on each other
	} {
		list := codesOf(t, `pattern p
  terms us
end
sizes "S", "L"
end
gauge 10 cm
  sc 16 sts, 18 rows
end
part strip
  chain 40 (200)
  row: sc in each
end
part back like strip
end
part tube
  in joined rounds
  chain 40 (200), join
  round: sc in each
end
sample "`+c.size+`"
  `+c.line+`
end
measure
  width = width of strip
  both  = width of strip + width of back
  girth = around tube
end
`)
		require.Equal(t, c.off, list["OV785"], "%s in %s: %v", c.line, c.size, list)
		require.False(t, list["OV784"], c.line)
	}
}

// TestOver holds when an opening goes over the head: its way round and as much more as it stretches. A neck of 68 (76) stitches at
// 16 to 10 cm is 42.5 (47.5) cm around.
func TestOver(t *testing.T) {
	for _, c := range []struct {
		fit, over string
		codes     []diag.Code
	}{
		{"fit head 50 (52) cm", "goes over fit.head stretch 20 %", nil},
		{"fit head 51 (57) cm", "goes over fit.head stretch 20 %", nil},
		{"fit head 51.1 (57) cm", "goes over fit.head stretch 20 %", []diag.Code{"OV777"}},
		{"fit head 42.5 (47.5) cm", "goes over fit.head", nil},
		{"fit head 42.5 (47.6) cm", "goes over fit.head", []diag.Code{"OV777"}},
		{"body heads by age", "goes over fit.head stretch 20 %", nil}, // the medians, 47.7 (49.75) cm
		{"", "goes over fit.head stretch 20 %", []diag.Code{"OV780"}}, // the largest heads, 50.8 (53) cm, against 51 (57)
		{"", "goes over fit.head stretch 19 %", []diag.Code{"OV777", "OV780"}},
		{"fit ankle 60 (62) cm", "goes over fit.ankle stretch 45 %", []diag.Code{"OV779"}},
	} {
		list := codesOf(t, fmt.Sprintf(`pattern p
  terms us
end
sizes "2 y", "4 y"
  age 24 (48) months
  %s
end
gauge 10 cm
  sc 16 sts, 18 rows
end
part band
  in joined rounds
  chain 68 (76), join
  round: sc in next 30 as front, sc in each
end
part more
  in rows
  chain 8
  row: sc in each
end
measure
  neck  = around band at round 1 %s
  whole = along band.front + width of more * 2
end
`, c.fit, c.over))
		for _, code := range []diag.Code{"OV777", "OV779", "OV780"} {
			require.Equal(t, slices.Contains(c.codes, code), list[code], "%s, %s: %s in %v", c.fit, c.over, code, list)
		}
	}
}

// TestOverOfSums sees that what goes over the head may be any measure: places side by side, and sums.
func TestOverOfSums(t *testing.T) {
	text := `pattern p
  terms us
end
sizes "one"
  fit head 40 cm
end
gauge 10 cm
  sc 16 sts, 18 rows
end
part back
  in rows
  chain 48
  row: sc in next 16, sc in next 32 as neck
end
part front like back
end
measure
  neck = along back.neck + along front.neck goes over fit.head stretch %s
end
`
	require.False(t, codesOf(t, fmt.Sprintf(text, "0 %"))["OV777"], "64 stitches are 40 cm")
	p := worn(t, fmt.Sprintf(text, "25 %"))
	require.Equal(t, plan.Lengths{50 * plan.Centimetre}, p.Measures[0].Over.Stretched)
	require.True(t, codesOf(t, strings.Replace(fmt.Sprintf(text, "0 %"), "head 40 cm", "head 40.1 cm", 1))["OV777"])
}

// TestEasing holds how much of a seam's longer edge a maker is told to ease in: to the half centimetre, and nothing where the edges
// agree to that. A sleeve top of 56 (64) stitches at 16 to 10 cm is 35 (40) cm long, 63 (75) row ends at 18 are 35 (41.7).
func TestEasing(t *testing.T) {
	const text = `pattern p
  terms us
end
sizes "S", "M"
end
gauge 10 cm
  sc 16 sts, 18 rows
end
part back
  in rows
  chain 20
  %s rows: sc in each
end
part sleeve
  in rows
  chain 56 (64)
  row: sc in each
end
finish
  sew sleeve.edge to left edge of back within 2 cm
end
`
	p := worn(t, fmt.Sprintf(text, "63 (75)"))
	require.Equal(t, plan.Lengths{0, 15 * plan.Millimetre}, p.Finish[0].Ease)
	require.Nil(t, worn(t, fmt.Sprintf(text, "63 (72)")).Finish[0].Ease)
}
