package draw

import (
	"testing"

	"ovillo/compile/plan"
)

// side measures a side edge of a part, from one row to another.
func along(w *work, side plan.Side, from, to int) plan.MeasuredOn {
	return plan.MeasuredOn{Kind: plan.Long, Part: w.index, Side: side, Row: plan.Nums{from}, ToRow: plan.Nums{to}}
}

// The length of a side edge, and of a stretch of it, has an upright line on its own side: as long as its rows are high.
func TestSideEdgesHaveLines(t *testing.T) {
	m := make1("back", "garment")
	back := m.part("back", false, plan.StartChain).dc(60).even(19).slope(40, 4).even(15)
	m.measure("right", plan.MeasuredOn{Kind: plan.Long, Part: back.index, Side: plan.RightEdge})
	m.measure("side", along(back, plan.LeftEdge, 1, 20))
	m.measure("armhole", along(back, plan.LeftEdge, 21, 39))
	sheets := placed(t, m.p)
	for _, d := range sheets[0].dims {
		want := map[string]float64{"A": 39, "B": 20, "C": 19}[d.letter]
		about(t, d.letter, d.to.sub(d.from).length()/sheets[0].scale, want)
		if left := d.from.x < sheets[0].on(sheets[0].gr.bounds().min).x; left != (d.letter != "A") || d.from.x != d.to.x {
			t.Errorf("%s runs from %v to %v", d.letter, d.from, d.to)
		}
	}
	if n := len(sheets[0].dims); n != 3 {
		t.Errorf("%d lines", n)
	}
	keepClear(t, "back", sheets)
}

// With short rows both sides have their own lengths.
func TestSidesOfAWedge(t *testing.T) {
	p := sources(t)["short-rows"]
	for i, side := range []plan.Side{plan.LeftEdge, plan.RightEdge} {
		p.Measures = append(p.Measures, plan.Measure{Name: "side", Letter: string(rune('A' + i)), Values: plan.Lengths{0},
			Of: []plan.MeasuredOn{{Kind: plan.Long, Part: 0, Side: side}}})
	}
	drawn := lines(t, p)
	const row = 10.0 / 18
	about(t, "the left side", drawn["A"], 8*row)
	about(t, "the right side", drawn["B"], 2*row)
	keepClear(t, "short rows", placed(t, p))
}
