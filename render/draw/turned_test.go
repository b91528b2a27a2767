package draw

import (
	"math"
	"testing"

	"ovillo/compile/plan"
)

// A brim that was worked sideways and joined to a ring lies across below the crown that stands on it: half as long as it was
// worked, as deep as its rows are wide, its rows upright.
func TestBrimWorkedSideways(t *testing.T) {
	p := sources(t)["sideways-brim"]
	l := laid(t, p)
	if len(l.groups) != 1 {
		t.Fatalf("%d groups", len(l.groups))
	}
	brim, crown := only(t, l, "brim"), only(t, l, "crown")
	b := brim.bounds()
	about(t, "the brim is as deep as its rows are wide", b.height(), 8*10.0/14)
	about(t, "the brim is half as long as it was worked", b.width(), 60*10.0/12/2)
	about(t, "where it begins", b.min.y, crown.bounds().max.y)
	about(t, "its middle", b.middle().x, crown.near().at(0.5).x)
	for _, line := range brim.lines {
		if math.Abs(line.first().x-line.last().x) > 1e-9 {
			t.Fatal("its rows do not stand upright")
		}
	}
}

// Two parts on it, or one on a stretch of its side alone, leave a flat part as it was worked.
func TestSidesThatAreNoRing(t *testing.T) {
	for name, change := range map[string]func(m *maker, band, crown *work){
		"whole":     func(*maker, *work, *work) {},
		"a stretch": func(_ *maker, _, crown *work) { crown.From[0].To = plan.Nums{20} },
		"two": func(m *maker, band, _ *work) {
			m.part("more", true, plan.StartFrom).dc(60).on(plan.RefRowEnds, band, 0, 1, 30, 30)
		},
	} {
		m := make1("ring", "hat")
		band := m.part("band", false, plan.StartChain).dc(10).even(29)
		crown := m.part("crown", true, plan.StartFrom).dc(60).even(9)
		crown.on(plan.RefRowEnds, band, 0, 1, 30, 30)
		change(m, band, crown)
		if got := m.p.Turned(band.index) >= 0; got != (name == "whole") {
			t.Errorf("%s: turned %v", name, got)
		}
		all(t, name, m.p)
	}
}
