package fabric

import (
	"testing"

	"ovillo/compile/plan"
)

// left says which places of a run stand unworked beyond the end of the edge and before its start.
func leftOver(p *Part) (post, pre int) { return len(p.edge.post), len(p.edge.pre) }

// A slope: three steps are left, then one row works over them all, the nearest first.
func TestSlope(t *testing.T) {
	f, p := edged("ssssssss", false)
	worked(t, p, flat(next(6), leave(2)), flat(each()), flat(next(4), leave(2)), flat(each()))
	if post, pre := leftOver(p); post != 4 || pre != 0 {
		t.Fatalf("%d beyond the end and %d before the start, want 4 and 0", post, pre)
	}
	nearest := p.edge.post[0]
	if f.Elems[nearest].Row == 1 {
		t.Errorf("the nearest is of the first row: the steps are told from the wrong end")
	}
	res := worked(t, p, flat(each(), at(UnworkedEach)))
	if len(res.Made) != 8 {
		t.Errorf("made %d, want 8", len(res.Made))
	}
	if post, pre := leftOver(p); post+pre != 0 {
		t.Errorf("%d places are left", post+pre)
	}
}

// A heel in rows: each turn takes one from the nearer end, the two ends in turn.
func TestBothEnds(t *testing.T) {
	_, p := edged("ssssss", false)
	worked(t, p, flat(next(5), leave(1)), flat(next(4), leave(1)))
	for i, want := range []int{5, 6} {
		one := at(UnworkedNext)
		if res := worked(t, p, flat(each(), one)); len(res.Made) != want {
			t.Errorf("row %d made %d, want %d", i+3, len(res.Made), want)
		}
	}
	if post, pre := leftOver(p); post+pre != 0 {
		t.Errorf("%d places are left", post+pre)
	}
	refused(t, p, flat(each(), at(UnworkedNext)), Fault{Kind: TooFew, Need: 1})
}

// A round that is opened: both ends look at the same unworked run, and it cannot be closed before that is worked.
func TestOpenedRound(t *testing.T) {
	_, p := edged("ssssss", true)
	turn := op(Turn, 0)
	worked(t, p, round(next(4), leave(2), turn))
	if p.Closed() {
		t.Fatal("a round that was turned before its end is still a round")
	}
	refused(t, p, round(each()), Fault{Kind: Between, Have: 2})
	worked(t, p, flat(each()), round(each(), at(UnworkedEach)))
	if !p.Closed() || len(p.Edge()) != 6 {
		t.Errorf("the round is closed: %v, of %d", p.Closed(), len(p.Edge()))
	}
}

// What was left is out of reach until the row has gone over its own edge.
func TestUnworkedAhead(t *testing.T) {
	_, p := edged("ssssss", false)
	worked(t, p, flat(next(4), leave(2)), flat(each()))
	refused(t, p, flat(next(2), at(UnworkedEach), next(2)), Fault{Kind: Ahead, Have: 2})
}

// What was left under a name is reached by it, from either end, and is then no longer left.
func TestLeftByName(t *testing.T) {
	_, p := edged("ssssss", false)
	worked(t, p, flat(next(4), as(leave(2), "step")), flat(each()), flat(each(), named(NamedEach, "step")))
	if post, pre := leftOver(p); post+pre != 0 {
		t.Errorf("%d places are left", post+pre)
	}
	if len(p.Edge()) != 6 {
		t.Errorf("the row has %d, want 6", len(p.Edge()))
	}
}

// Turned rounds keep the place of the join first, so that the seam stands still.
func TestTurnedRound(t *testing.T) {
	f, p := edged("ssss", true)
	before := p.Edge()
	res := worked(t, p, rowOf(plan.TurnedRounds, each()))
	if got := into(f, before, p.Edge()); got != "0 3 2 1" {
		t.Errorf("the next round meets %q", got)
	}
	if got := into(f, before, res.Made); got != "0 1 2 3" {
		t.Errorf("made in %q", got)
	}
}
