package draw

import (
	"testing"

	"ovillo/compile/plan"
)

// Short rows in a tube raise one face of it: the tube is as wide as before and as tall as that face, and each row is drawn in the
// middle of it, as long as it is, but never beyond the sides.
func TestShortRowsInATube(t *testing.T) {
	m := make1("raised", "trousers")
	body := m.part("body", true, plan.StartJoined).dc(96).even(5)
	for _, n := range []int{20, 40, 60} {
		body.closed = false
		body.dc(n)
	}
	body.closed = true
	body.dc(96).even(5)
	m.measure("width", around(body, 1))
	m.measure("height", high(body))
	pt := only(t, laid(t, m.p), "body")
	for k := range pt.lines {
		about(t, "a line", pt.widthAt(k), 96*stWide/2)
	}
	about(t, "the height", pt.bounds().height(), 15*dcHigh)
	short := pt.shortRows()
	if len(short) != 2 { // the third goes from side to side
		t.Fatalf("%d short rows are drawn", len(short))
	}
	for i, n := range []float64{20, 40} {
		about(t, "a short row", lengthOf(short[i]), n*stWide)
		about(t, "its middle", short[i].at(0.5).x, pt.f.o.x)
	}
	about(t, "how the height is drawn", lines(t, m.p)["B"], 15)
	all(t, "raised", m.p)
}

// A flat part is no tube because a row of it is joined, and rows in a ring that is seldom closed are rows.
func TestRowsAreNoTube(t *testing.T) {
	m := make1("rows", "")
	flat := m.part("flat", false, plan.StartChain).dc(30).even(9)
	flat.closed = true
	flat.dc(30)
	for k, r := range laid(t, m.p).g.rows[0] {
		if r.short > 0 {
			t.Errorf("row %d is short", k+1)
		}
	}
}
