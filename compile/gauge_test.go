package compile_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

// onGauge is a source of one size with a gauge and some lines; the stitch pattern fans is over a multiple of 4.
func onGauge(gauge, lines string) string {
	return `sizes "S"
end
` + gauge + `
stitch pattern fans
  multiple of 4
  row 1: sc in each
  row 2: dc in each
end
` + lines
}

// measured gives the measures of a clean source in millimetres.
func measured(t *testing.T, source string) map[string]int {
	t.Helper()
	out := map[string]int{}
	for _, m := range clean(t, source).Measures {
		out[m.Name] = int(float64(m.Values[0])/float64(plan.Millimetre) + 0.5)
	}
	return out
}

// TestGaugeByWay measures each row by the gauge that was counted as it is worked. The figures are by hand: 20 stitches to 10 cm are
// 5 mm each, 25 are 4 mm; 10 rows to 10 cm are 10 mm, 8 are 12.5 mm.
func TestGaugeByWay(t *testing.T) {
	part := func(name, settings string) string {
		return "part " + name + "\n  title en \"P\" es \"P\"\n" + settings + "\nend\n"
	}
	flat := part("flat", "  in rows\n  chain 40\n  8 rows: dc in each = 40")
	tube := part("tube", "  in joined rounds\n  chain 40, join\n  8 rounds: dc in each = 40")
	turned := part("turned", "  in joined rounds, turned\n  chain 40, join\n  8 rounds: dc in each = 40")
	mixed := part("mixed", "  in joined rounds\n  chain 40, join\n  4 rounds: dc in each = 40\n  4 rows: dc in each = 40")
	cuff := part("cuff", "  hook 3 mm\n  in joined rounds\n  chain 40, join\n  8 rounds: dc in each = 40\n  hook 4 mm\n  8 rounds: dc in each = 40")
	measure := func(lines ...string) string { return "measure\n  " + strings.Join(lines, "\n  ") + "\nend\n" }
	both := "gauge 10 cm\n  dc 20 sts, 10 rows\n  dc 25 sts, 8 rounds\nend\nhook 4 mm"
	for _, c := range []struct {
		name, source string
		want         map[string]int
	}{
		{"rows by rows, rounds by rounds", onGauge(both, flat+tube+measure("wide = width of flat", "tall = height of flat", "girth = around tube", "depth = height of tube")),
			map[string]int{"wide": 200, "tall": 80, "girth": 160, "depth": 100}},
		{"turned rounds are rounds", onGauge(both, turned+measure("girth = around turned", "depth = height of turned")),
			map[string]int{"girth": 160, "depth": 100}},
		{"turned rounds by rows where there is no other", onGauge("gauge 10 cm\n  dc 20 sts, 10 rows\nend", turned+measure("girth = around turned", "depth = height of turned")),
			map[string]int{"girth": 200, "depth": 80}},
		{"by the row, not by the part", onGauge(both, mixed+measure("depth = height of mixed", "top = width of mixed at row 8", "low = around mixed at round 1")),
			map[string]int{"depth": 90, "top": 200, "low": 160}},
		{"by the hook", onGauge(both[:len(both)-len("end\nhook 4 mm")]+"  dc 40 sts, 20 rounds, hook 3 mm\nend\nhook 4 mm",
			cuff+measure("depth = height of cuff", "low = around cuff at round 1", "top = around cuff at round 9")),
			map[string]int{"depth": 140, "low": 100, "top": 160}},
		{"in each place of a line of a part", onGauge(both, part("tube", "  in joined rounds\n  chain stitches(16 cm, dc), join\n  rounds for 10 cm: dc in each = 40")+
			part("flat", "  in rows\n  chain stitches(20 cm, dc)\n  rows for 8 cm: dc in each = 40\n  repeat rows for 8 cm\n    row: dc in each\n  end\n")+
			measure("girth = around tube", "depth = height of tube", "wide = width of flat", "tall = height of flat")),
			map[string]int{"girth": 160, "depth": 100, "wide": 200, "tall": 160}},
		{"as a value says", onGauge(both, "let a = stitches(20 cm, dc, rows)\nlet b = stitches(16 cm, dc, rounds)\nlet c = rows(10 cm, dc, rounds)\nlet d = length(40, dc, rounds)\n"+
			part("tube", "  in joined rounds\n  chain b, join\n  c rounds: dc in each = a")+measure("girth = around tube", "depth = height of tube", "long = d")),
			map[string]int{"girth": 160, "depth": 100, "long": 160}},
		{"by repeats", onGauge("gauge 10 cm\n  fans 5 repeats, 10 rows\nend", "let wide = stitches(20 cm, fans)\n"+
			part("flat", "  in rows\n  chain wide\n  row: sc in each = 40\n  rows of fans for 8 cm")+measure("wide = width of flat at row 3")),
			map[string]int{"wide": 200}},
		{"widths need no rows", onGauge("gauge 10 cm\n  dc 20 sts\nend", flat+measure("wide = width of flat")), map[string]int{"wide": 200}},
		{"an own stitch by its own line", onGauge("gauge 10 cm\n  dc 20 sts, 10 rows\n  pebble 10 sts, 5 rows\nend",
			"stitch pebble\n  takes 1, makes 1, tall as dc\n  name en \"pebble\" es \"guijarro\"\n  abbr en \"peb\" es \"guij\"\n  en | As it is.\n  es | Tal cual.\nend\n"+
				part("flat", "  in rows\n  chain 10\n  4 rows: pebble in each = 10")+measure("wide = width of flat", "tall = height of flat")),
			map[string]int{"wide": 100, "tall": 80}},
	} {
		t.Run(c.name, func(t *testing.T) { require.Equal(t, c.want, measured(t, c.source)) })
	}
}

// TestGaugeNotes notes a gauge that was counted on another fabric only where a length of several rows rests on it.
func TestGaugeNotes(t *testing.T) {
	rows, chains := "gauge 10 cm\n  dc 20 sts, 10 rows\nend\nhook 4 mm", "gauge 10 cm\n  dc 20 sts, 10 rows\n  ch %s sts\nend"
	tube := func(settings string, rounds int) string {
		return fmt.Sprintf("part tube\n  title en \"P\" es \"P\"\n%s\n  chain 40, join\n  %d rounds: dc in each = 40\nend\n", settings, rounds)
	}
	flat := "part flat\n  title en \"P\" es \"P\"\n  in rows\n  chain 40\n  8 rows: dc in each = 40\nend\n"
	height := "measure\n  depth = height of tube\nend\n"
	for _, c := range []struct {
		name, source string
		want         []diag.Code
	}{
		{"several rounds that are measured", onGauge(rows, tube("  in joined rounds", 4)+height), []diag.Code{"OV328"}},
		{"in a spiral", onGauge(rows, tube("  in spiral rounds", 8)+height), []diag.Code{"OV328"}},
		{"an edging", onGauge(rows, tube("  in joined rounds", 3)+height), nil},
		{"nothing is measured", onGauge(rows, tube("  in joined rounds", 8)), nil},
		{"turned rounds are the fabric of rows", onGauge(rows, tube("  in joined rounds, turned", 8)+height), nil},
		{"rows by a gauge of rounds", onGauge(strings.Replace(rows, "rows", "rounds", 1), flat+"measure\n  tall = height of flat\nend\n"), []diag.Code{"OV328"}},
		{"another hook", onGauge(strings.Replace(rows, "rows", "rounds", 1), tube("  hook 3 mm\n  in joined rounds", 8)+height), []diag.Code{"OV329"}},
		{"another hook, and nothing measured", onGauge(strings.Replace(rows, "rows", "rounds", 1), tube("  hook 3 mm\n  in joined rounds", 8)), nil},
		{"the hook is named", onGauge(strings.Replace(rows, "rows", "rounds, hook 3 mm", 1), tube("  hook 3 mm\n  in joined rounds", 8)+height), nil},
		{"the main hook by a gauge of another", onGauge(strings.Replace(rows, "rows", "rounds, hook 3 mm", 1), tube("  in joined rounds", 8)+height), []diag.Code{"OV329"}},
		{"chains 5 % narrower", onGauge(fmt.Sprintf(chains, "21"), flat), nil},
		{"chains 20 % narrower", onGauge(fmt.Sprintf(chains, "25"), flat), nil},
		{"chains 23 % narrower", onGauge(fmt.Sprintf(chains, "26"), flat), []diag.Code{"OV333"}},
		{"chains 11 % wider", onGauge(fmt.Sprintf(chains, "18"), flat), []diag.Code{"OV333"}},
		{"4 in are enough", onGauge("gauge 4 in\n  dc 20 sts, 10 rows\nend", flat), nil},
		{"99 mm are not", onGauge("gauge 99 mm\n  dc 20 sts, 10 rows\nend", flat), []diag.Code{"OV330"}},
		{"one warning for each block", onGauge("gauge 5 cm\n  dc 10 sts, 5 rows\n  sc 10 sts, 12 rows\nend", flat), []diag.Code{"OV330"}},
		{"sc as tall as it is wide", onGauge("gauge 10 cm\n  sc 18 sts, 18 rows\nend", flat), nil},
		{"sc of rows and stitches over two lengths", onGauge("gauge 10 cm\n  sc 20 sts, 10 rows\nend", flat), []diag.Code{"OV332"}},
		{"hdc at half of what is usual", onGauge("gauge 10 cm\n  hdc 18 sts, 25 rows\nend", flat), nil},
		{"tr by memory", onGauge("gauge 10 cm\n  tr 10 sts, 10 rows\nend", flat), []diag.Code{"OV332"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []diag.Code
			for _, d := range found(c.source) {
				if strings.HasPrefix(string(d.Code), "OV32") || strings.HasPrefix(string(d.Code), "OV33") {
					got = append(got, d.Code)
				}
			}
			require.Equal(t, c.want, got)
		})
	}
}

// TestGaugeLacks asks for a length in every place where a source can, of a stitch that has no gauge, or none of rows.
func TestGaugeLacks(t *testing.T) {
	const none = "gauge 10 cm\n  sc 20 sts, 20 rows\nend\nyarn sand\n  name en \"sand\" es \"arena\"\nend"
	const noRows = "gauge 10 cm\n  sc 20 sts, 20 rows\n  dc 20 sts\nend\nyarn sand\n  name en \"sand\" es \"arena\"\nend"
	part := func(lines string) string {
		return "part p\n  title en \"P\" es \"P\"\n  in rows\n" + lines + "\n  fasten off\nend\n"
	}
	flat := part("  chain 20\n  8 rows: dc in each = 20 as top")
	flat = strings.Replace(flat, "dc in each = 20 as top", "dc in next 20 as top", 1)
	for _, c := range []struct {
		name, gauge, lines string
		want               diag.Code
	}{
		{"stitches", none, "let n = stitches(10 cm, dc)\n" + part("  chain n\n  row: dc in each"), "OV701"},
		{"rows", none, "let n = rows(10 cm, dc)\n" + part("  chain 20\n  n rows: dc in each"), "OV701"},
		{"rows without rows", noRows, "let n = rows(10 cm, dc)\n" + part("  chain 20\n  n rows: dc in each"), "OV702"},
		{"length", none, "let n = length(20, dc)\n" + flat, "OV701"},
		{"repeats", none, "let n = repeats(10 cm, fans)\n" + part("  chain 4 * n\n  row: dc in each"), "OV701"},
		{"a start", none, part("  chain stitches(10 cm, dc)\n  row: dc in each"), "OV701"},
		{"rows for", none, part("  chain 20\n  rows for 10 cm: dc in each"), "OV752"},
		{"rows for, without rows", noRows, part("  chain 20\n  rows for 10 cm: dc in each"), "OV752"},
		{"rows to", none, part("  chain 20\n  rows to 10 cm: dc in each"), "OV752"},
		{"repeat rows for", none, part("  chain 20\n  repeat rows for 10 cm\n    row: dc in each\n  end"), "OV752"},
		{"rows of a stitch pattern", none, part("  chain 20\n  row: sc in each\n  rows of fans for 10 cm"), "OV752"},
		{"a schedule", none, part("  chain 20\n  shape s: rows(10 cm, dc) rows\n    plain: dc in each\n    shaping: dec, dc in each\n    on rows 3\n  end"), "OV701"},
		{"height of", none, flat + "measure\n  m = height of p\nend\n", "OV752"},
		{"height of, without rows", noRows, flat + "measure\n  m = height of p\nend\n", "OV752"},
		{"width of", none, flat + "measure\n  m = width of p at row 2\nend\n", "OV752"},
		{"along a side edge", none, flat + "measure\n  m = along right edge of p\nend\n", "OV752"},
		{"along a side edge, without rows", noRows, flat + "measure\n  m = along right edge of p\nend\n", "OV752"},
		{"along a label", none, flat + "measure\n  m = along p.top\nend\n", "OV752"},
		{"a seam with its tolerance", none, flat + "finish\n  sew p.top to right edge of p within 1 cm\nend\n", "OV752"},
		{"a seam", none, flat + "finish\n  sew p.top to right edge of p\nend\n", "OV334"},
		{"a seam of row ends, without rows", noRows, flat + "finish\n  sew p.top to right edge of p\nend\n", "OV334"},
		{"a cord by the piece", none, flat + "finish\n  cord with sand, length width of p + 20 cm\nend\n", "OV752"},
		{"row ends by gauge", none, flat + "part q\n  title en \"Q\" es \"Q\"\n  base sc\n  in rows\n  from right edge of p by gauge\n  row: sc in each\nend\n", "OV533"},
		{"row ends by gauge, of the stitch along them", none, strings.ReplaceAll(flat, "dc in", "sc in") + "part q\n  title en \"Q\" es \"Q\"\n  base dc\n  in rows\n  from right edge of p by gauge\n  row: dc in each\nend\n", "OV533"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []diag.Code
			for _, d := range found(onGauge(c.gauge, c.lines)) {
				if diag.Lookup(d.Code).Severity == diag.Error || d.Code == "OV334" {
					got = append(got, d.Code)
				}
			}
			require.Equal(t, []diag.Code{c.want}, got, "once, and no other")
		})
	}
}

// TestBlocked keeps whether a swatch was blocked, and what was counted on it.
func TestBlocked(t *testing.T) {
	p := clean(t, onGauge("gauge 10 cm, blocked\n  dc 19 sts, 10 rows\n  fans 3 repeats, 11 rounds, hook 3.25 mm\nend\ngauge 12 cm, not blocked\n  sc 20 sts\nend\ngauge 4 in\n  ch 20 sts\nend",
		"part flat\n  title en \"P\" es \"P\"\n  in rows\n  chain 40\n  8 rows: dc in each = 40\nend\n"))
	require.Equal(t, []plan.Gauge{
		{Stitch: "dc", Over: 10 * plan.Centimetre, Sts: 19000, Rows: 10000, Blocked: plan.AfterBlocking},
		{Stitch: "fans", Pattern: "fans", Over: 10 * plan.Centimetre, Sts: 12000, Repeats: 3000, Rows: 11000, Rounds: true, Hook: 3250, Blocked: plan.AfterBlocking},
		{Stitch: "sc", Over: 12 * plan.Centimetre, Sts: 20000, Blocked: plan.BeforeBlocking},
		{Stitch: "ch", Over: 4 * plan.Inch, Sts: 20000},
	}, p.Gauges)
}
