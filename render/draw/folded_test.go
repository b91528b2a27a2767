package draw

import (
	"math"
	"testing"

	"ovillo/compile/plan"
)

// A cardigan worked flat in one piece lies closed: half as wide as it was worked, its sleeves at both sides as those of a
// pullover, the left one on the reader's right, and its front bands on each other in the middle, from neck to hem.
func TestCardiganLiesClosed(t *testing.T) {
	p := sources(t)["rompiente-cardigan"]
	l := laid(t, p)
	if len(l.groups) != 1 {
		t.Fatalf("%d groups", len(l.groups))
	}
	body := l.named("body")
	if len(body) != 2 {
		t.Fatalf("yoke and body are %d pieces", len(body))
	}
	about(t, "the body", body[1].widthAt(2), 110*10.0/16/2) // 110 stitches, 16 on 10 cm
	right, left := only(t, l, "right_sleeve"), only(t, l, "left_sleeve")
	if !mirrored(right, left) || right.bounds().middle().x > 0 {
		t.Errorf("the right sleeve lies at %.1f", right.bounds().middle().x)
	}
	all := l.groups[0].bounds()
	for _, name := range []string{"right_band", "left_band"} {
		b := only(t, l, name).bounds()
		about(t, name, b.width(), 3*10.0/13) // three rows, 13 on 10 cm
		about(t, "the middle of "+name, b.middle().x, 0)
		neck := only(t, l, "neckband").bounds()
		if math.Abs(b.min.y-neck.min.y) > 1e-6 || math.Abs(b.max.y-body[1].bounds().max.y) > 1e-6 || b.max.y > all.max.y {
			t.Errorf("%s runs from %.1f to %.1f", name, b.min.y, b.max.y)
		}
	}
}

// A front band lies along the edge it is worked on, outside of it: on the reader's right of the right front.
func TestBandsLieAlongTheirEdges(t *testing.T) {
	l := laid(t, sources(t)["bands"])
	if len(l.groups) != 2 {
		t.Fatalf("%d groups", len(l.groups))
	}
	const row = 10.0 / 18
	for name, side := range map[string]float64{"right": 1, "left": -1} {
		front, band := only(t, l, name+"_front").bounds(), only(t, l, name+"_band").bounds()
		about(t, name+" band", band.width(), 5*row)
		if side > 0 {
			about(t, "where the right band begins", band.min.x, front.max.x)
		} else {
			about(t, "where the left band ends", band.max.x, front.min.x)
		}
		about(t, "its upper end", band.min.y, front.min.y)
		about(t, "its lower end", band.max.y, front.max.y)
	}
}

// A band that is much longer or shorter than the edge is no border of it, and is drawn by itself.
func TestBandThatDoesNotFit(t *testing.T) {
	for long, groups := range map[int]int{40: 1, 60: 2} {
		m := make1("band", "garment")
		front := m.part("front", false, plan.StartChain).dc(30).even(19)
		band := m.part("band", false, plan.StartFrom).dc(long).even(1)
		band.on(plan.RefRowEnds, front, 0, 1, 20, 20)
		if got := len(laid(t, m.p).groups); got != groups {
			t.Errorf("a band of %d stitches on 20 rows: %d groups", long, got)
		}
		all(t, "band", m.p)
	}
}

// Along a slanting side a band is as wide everywhere, measured across.
func TestBandOnASlope(t *testing.T) {
	m := make1("slope", "garment")
	front := m.part("front", false, plan.StartChain).dc(60)
	for range 20 {
		front.narrow(1, front.rows()%2 == 0) // at the reader's right
	}
	band := m.part("band", false, plan.StartFrom).dc(44).even(1)
	band.on(plan.RefRowEnds, front, 0, 1, 21, 21)
	pt := only(t, laid(t, m.p), "band")
	inner, outer := pt.lines[0], pt.lines[2]
	for i := range inner.pts {
		if got := distance(outer.pts[i], [2]vec{inner.first(), inner.last()}); math.Abs(got-2) > 0.05 {
			t.Errorf("the band is %.2f cm wide, want 2", got)
		}
	}
	if outer.at(0.5).x < inner.at(0.5).x {
		t.Error("the band lies on the fabric")
	}
}

// A part that goes on as one leg, with the other on the places it held, has two legs side by side.
func TestSplitForLegs(t *testing.T) {
	l := laid(t, sources(t)["trousers"])
	right, left := only(t, l, "right_leg"), only(t, l, "left_leg")
	if right.side != -1 || left.side != 1 {
		t.Errorf("the legs lie at sides %d and %d", right.side, left.side)
	}
	body := l.named("body")
	if len(body) != 2 || !near(body[1].near().last(), left.near().first()) {
		t.Error("the legs do not meet at the crotch")
	}
	for _, pt := range []*patch{right, body[1]} {
		if x := pt.bounds().max.x; x > 1.5 {
			t.Errorf("a leg reaches %.1f cm over the middle", x)
		}
	}
}
