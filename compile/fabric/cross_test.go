package fabric

import (
	"slices"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// feet are the places in which the stitches of a row stand, as places of an edge.
func feet(f *Fabric, edge []ID, made []ID) []int {
	var out []int
	for _, id := range made {
		out = append(out, slices.Index(edge, f.Elems[id].Into.ID))
	}
	return out
}

// Stitches that cross stand in the later half of their places first, then in the earlier one.
func TestCrossedStitchesStandAcross(t *testing.T) {
	f, p := edged("ssssssss", true)
	edge := slices.Clone(p.Edge())
	o := op(Cross, 2)
	o.Form = stitch.Form{ID: stitch.DC, Together: 1, Group: stitch.CrossFront, Of: 4}
	res, fault := p.Work(rowOf(plan.JoinedRounds, o))
	if fault != nil {
		t.Fatal(fault)
	}
	if got, want := feet(f, edge, res.Made), []int{2, 3, 0, 1, 6, 7, 4, 5}; !slices.Equal(got, want) {
		t.Errorf("they stand in %v, want %v", got, want)
	}
}

// A stitch that goes so many rows down stands in the same column, however the work is turned.
func TestSpikesStayInTheirColumn(t *testing.T) {
	const n = 7
	for _, style := range []plan.Style{plan.Rows, plan.JoinedRounds, plan.TurnedRounds, plan.SpiralRounds} {
		for deep := 2; deep <= 4; deep++ {
			_, p := edged("sssssss", style != plan.Rows)
			edges := [][]ID{} // each row's places, as the next one meets them
			f := p.f
			for range 4 {
				edges = append(edges, slices.Clone(p.Edge()))
				if _, fault := p.Work(rowOf(style, next(n))); fault != nil {
					t.Fatal(fault)
				}
			}
			edges = append(edges, slices.Clone(p.Edge()))
			spike := next(n)
			spike.Target.Deep = deep
			res, fault := p.Work(rowOf(style, spike))
			if fault != nil {
				t.Fatal(fault)
			}
			// The column of a place is that of what it stands on, down to the first edge.
			column := func(id ID) int {
				for f.Elems[id].Into.ID >= 0 {
					id = f.Elems[id].Into.ID
				}
				return slices.Index(edges[0], id)
			}
			below := edges[len(edges)-deep]
			for i, id := range res.Made {
				foot := f.Elems[id].Into.ID
				if !slices.Contains(below, foot) || column(foot) != column(edges[len(edges)-1][i]) {
					t.Errorf("style %d, %d below: stitch %d stands in column %d of another row or column", style, deep, i, column(foot))
				}
			}
		}
	}
}

// A row that goes the other way meets the places from where the hook is: in a round of one way from the join backwards, in rows
// as a turned row would. The row after it goes the usual way again.
func TestTheOtherWay(t *testing.T) {
	back := func(style plan.Style, n int) *Row {
		r := rowOf(style, next(n))
		r.Back = true
		return r
	}
	for style, want := range map[plan.Style][2][]int{
		plan.JoinedRounds: {{0, 4, 3, 2, 1}, {0, 1, 2, 3, 4}},
		plan.TurnedRounds: {{0, 4, 3, 2, 1}, {0, 1, 2, 3, 4}},
		plan.Rows:         {{4, 3, 2, 1, 0}, {0, 1, 2, 3, 4}},
	} {
		f, p := edged("sssss", style != plan.Rows)
		if _, fault := p.Work(rowOf(style, next(5))); fault != nil {
			t.Fatal(fault)
		}
		first := slices.Clone(p.Edge())
		if style != plan.JoinedRounds { // in the order of making
			slices.SortFunc(first, func(a, b ID) int { return int(a - b) })
		}
		res, fault := p.Work(back(style, 5))
		if fault != nil {
			t.Fatal(fault)
		}
		if got := feet(f, first, res.Made); !slices.Equal(got, want[0]) {
			t.Errorf("style %d: the other way stands in %v, want %v", style, got, want[0])
		}
		made := res.Made
		if res, fault = p.Work(rowOf(style, next(5))); fault != nil {
			t.Fatal(fault)
		}
		var got []int
		for _, id := range res.Made {
			at := slices.Index(made, f.Elems[id].Into.ID)
			got = append(got, feet(f, first, made)[at])
		}
		if !slices.Equal(got, want[1]) {
			t.Errorf("style %d: the row after it stands over %v, want %v", style, got, want[1])
		}
	}
}

// What is drawn together from several places knows its first and its last foot, and takes what lies between.
func TestLegs(t *testing.T) {
	f, p := edged("ss2ss", false)
	edge := slices.Clone(p.Edge())
	o := op(Draw, 1)
	o.Form = stitch.Form{ID: stitch.SC, Together: 3}
	o.Body = []*Op{next(1), nextOf(Spaces, 1), skip(1), next(1)}
	res, fault := p.Work(rowOf(plan.Rows, o))
	if fault != nil {
		t.Fatal(fault)
	}
	el := f.Elems[res.Made[0]]
	if len(res.Made) != 1 || el.Into.ID != edge[0] || el.Into2.ID != edge[4] || res.Taken != 3 || res.Skipped != 1 || res.Passed != 1 {
		t.Errorf("made %d, feet %v and %v of %v, taken %d, skipped %d, passed %d", len(res.Made), el.Into.ID, el.Into2.ID, edge, res.Taken, res.Skipped, res.Passed)
	}
}
