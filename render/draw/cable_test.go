package draw

import (
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// A cable skips stitches and works them later in the same row: it takes and makes the same, and the piece stands straight.
func TestCableDoesNotLean(t *testing.T) {
	n := func(v int) plan.Nums { return plan.Nums{v} }
	work := func(v int, cross plan.Cross) plan.Instr {
		return plan.Instr{Op: plan.Work, Form: stitch.Form{ID: stitch.TR, Post: stitch.FrontPost, Together: 1}, N: n(v), Cross: cross, Marker: -1, Yarn: -1}
	}
	skip := plan.Instr{Op: plan.SkipOver, N: n(2), Marker: -1, Yarn: -1}
	cable := []plan.Instr{skip, work(2, plan.NoCross), work(2, plan.CrossFront)}
	plain := work(10, plan.NoCross)
	for name, row := range map[string][]plan.Instr{
		"at the beginning": append(cable, plain),
		"at the end":       append([]plan.Instr{plain}, cable...),
		"in brackets":      {{Op: plan.Repeat, N: n(2), Body: cable, Marker: -1, Yarn: -1}, plain},
	} {
		list, taken := changes(row, 0, 0)
		want := 14.0
		if name == "in brackets" {
			want = 18
		}
		if taken != want {
			t.Errorf("%s: %v places are taken, not %v", name, taken, want)
		}
		for _, c := range list {
			if c.net != 0 {
				t.Errorf("%s: %+v", name, c)
			}
		}
		if left, right := ends(&plan.Row{Work: row}, course{stitch: 1}, 0, 0, 0); left != 0 || right != 0 {
			t.Errorf("%s: the row changes by %v and %v at its ends", name, left, right)
		}
	}
	// What stays skipped still narrows the row at that end.
	if left, right := ends(&plan.Row{Work: []plan.Instr{skip, plain}}, course{stitch: 1}, 0, -2, 0); left != 0 || right >= 0 {
		t.Errorf("two stitches passed over at the beginning change the ends by %v and %v", left, right)
	}
}
