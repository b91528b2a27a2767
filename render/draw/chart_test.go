package draw

import (
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/scene"
)

// charted is a pattern whose part works the rows of a chart, the second of them from the left.
func charted(c plan.Chart) *plan.Pattern {
	one := plan.Nums{1}
	row := func(n int, read plan.Reading) *plan.Row {
		return &plan.Row{First: one, Last: one, Times: one, Chart: &plan.ChartRow{First: n, Last: n, Read: read}}
	}
	return &plan.Pattern{
		Sizes: []plan.Size{{Name: "one"}}, Yarns: []plan.Yarn{{Name: "sand"}, {Name: "kelp"}, {Name: "foam"}}, Charts: []plan.Chart{c},
		Parts: []*plan.Part{{Name: "band", Steps: []plan.Step{row(1, plan.FromRight), &plan.Block{Rows: []*plan.Row{row(2, plan.FromLeft)}}}}},
	}
}

// areasOf counts the filled outlines of a drawing, and its labels by their text and side.
func areasOf(s *scene.Scene) (areas int, labels map[string]scene.Anchor) {
	labels = map[string]scene.Anchor{}
	for _, it := range s.Items {
		switch it := it.(type) {
		case scene.Path:
			if it.Fill != nil {
				areas++
			}
		case scene.Label:
			labels[it.Text] = it.Anchor
		}
	}
	return areas, labels
}

func TestChart(t *testing.T) {
	p := charted(plan.Chart{Name: "wave", Rows: [][]int{{0, 2, 2, 0}, {2, 0, 0, 2}, {0, 0, 0, 2}}})
	s := Chart(p, 0, 80, 110, both...)
	areas, labels := areasOf(s)
	if areas != 5+1 { // and the one of the legend
		t.Errorf("%d cells are full, want 5", areas-1)
	}
	want := map[string]scene.Anchor{"1": scene.Start, "2": scene.End, "3": scene.Start, "A": scene.Start, "C": scene.Start}
	for text, side := range want {
		if got, ok := labels[text]; !ok || got != side {
			t.Errorf("%q stands at side %d (%v), want %d", text, got, ok, side)
		}
	}
	if len(labels) != len(want) {
		t.Errorf("labels %v", labels)
	}
	if s.Title["en-US"] == "" || s.Desc["es"] == "" {
		t.Error("it is not described")
	}
}

func TestChartOfSquares(t *testing.T) {
	p := charted(plan.Chart{Name: "leaf", Mesh: plan.Mesh{Form: stitch.Form{ID: stitch.DC, Together: 1}, Behind: 2}, Rows: [][]int{{0, 1, 1}, {0, 0, 1}}})
	areas, labels := areasOf(Chart(p, 0, 80, 110, both...))
	if areas != 3 || len(labels) != 2 {
		t.Errorf("%d squares are full and %v is said, want 3 and two rows", areas, labels)
	}
}

// A chart of any size keeps within its room, and one that is not there is no drawing.
func TestChartFits(t *testing.T) {
	for _, wide := range []int{1, 3, 40, 200} {
		for _, high := range []int{1, 7, 90} {
			rows := make([][]int, high)
			for r := range rows {
				rows[r] = make([]int, wide)
			}
			s := Chart(charted(plan.Chart{Name: "field", Rows: rows}), 0, 80, 110)
			if s == nil || s.W > 80.001 || s.H > 110.001 {
				t.Errorf("%d by %d cells: %+v", wide, high, s)
			}
		}
	}
	for _, p := range []*plan.Pattern{{}, charted(plan.Chart{}), charted(plan.Chart{Rows: [][]int{{}}})} {
		if s := Chart(p, 0, 80, 110, both...); s != nil {
			t.Errorf("a drawing of nothing: %+v", s)
		}
	}
}
