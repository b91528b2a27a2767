package draw

import (
	"math"
	"testing"
)

// A bootee: the sole is an oval seen from above, and the upper stands by itself, its heel straight and its toe shaped, with the
// cuff at the heel.
func TestBooteeStandsBesideItsSole(t *testing.T) {
	const st, round = 10.0 / 24, 10.0 / 28 // the gauge of the source: 24 stitches and 28 rounds on 10 cm
	l := laid(t, sources(t)["marea-bootees"])
	if len(l.groups) != 2 {
		t.Fatalf("%d groups", len(l.groups))
	}
	sole := only(t, l, "sole")
	if !sole.rings || l.groups[1].patches[0] != sole {
		t.Fatal("the sole is not drawn from above, below the upper")
	}
	// Chains of which the last is turned at; six rounds on both sides of them.
	b := sole.bounds()
	about(t, "the sole is as wide as its rounds", b.height(), 12*round)
	about(t, "the sole is as long as its chain and rounds", b.width(), sole.pc.start+12*round)
	foot, cuff := only(t, l, "foot"), only(t, l, "cuff")
	left, right := foot.sides()
	if d := math.Abs(right[0].x - right[len(right)-1].x); d > 0.05 {
		t.Errorf("the heel leans by %.2f cm", d)
	}
	about(t, "the toe is drawn in", left[len(left)-1].x-left[0].x, 30*st/2)
	about(t, "the cuff begins at the heel", cuff.near().last().x, right[len(right)-1].x)
	about(t, "and ends at the instep", cuff.near().first().x, left[len(left)-1].x)
}
