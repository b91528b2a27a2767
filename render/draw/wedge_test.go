package draw

import (
	"math"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

func about(t *testing.T, what string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 1e-3 {
		t.Errorf("%s is %.3f, want %.3f", what, got, want)
	}
}

// A shoulder in short rows: eight rows stand at one side, two at the other, and the slope between them falls over the stitches
// that were left, six at a time.
func TestShortRowsMakeASlope(t *testing.T) {
	const row, st = 10.0 / 18, 10.0 / 16 // the gauge of the source: 16 stitches and 18 rows on 10 cm
	pt := only(t, laid(t, sources(t)["short-rows"]), "shoulder")
	left, right := pt.sides()
	about(t, "the left side", left[0].sub(left[len(left)-1]).length(), 8*row)
	about(t, "the right side", right[0].sub(right[len(right)-1]).length(), 2*row)
	about(t, "the start", pt.widthAt(0), 30*st)
	top := pt.lines[8]
	want := []vec{{-15, 8}, {-3, 8}, {3, 6}, {9, 4}, {15, 2}}
	if len(top.pts) != len(want) {
		t.Fatalf("the upper edge has %d points: %v", len(top.pts), top.pts)
	}
	for i, p := range want {
		about(t, "a point across", top.pts[i].x, p.x*st)
		about(t, "a point up", -top.pts[i].y, p.y*row)
	}
	for k, short := range []bool{false, false, true, true, true, true, true, true, false} {
		if pt.short(k) != short {
			t.Errorf("line %d is that of a short row: %v", k, !short)
		}
	}
}

// shortRow adds a row that leaves so many stitches at its end.
func (w *work) shortRow(leave int) *work {
	from := w.last().Stitches
	w.dc(from - leave)
	w.last().Taken, w.last().Passed = from-leave, leave
	w.step(plan.Instr{Op: plan.Work, Form: stitch.Form{ID: stitch.DC, Together: 1}, N: plan.Nums{from - leave}},
		plan.Instr{Op: plan.LeaveRest, N: plan.Nums{leave}})
	return w
}

// back adds a row that works on over so many stitches that were left.
func (w *work) back(left int) *work {
	from := w.last().Stitches
	w.dc(from + left)
	plain := plan.Instr{Op: plan.Work, Form: stitch.Form{ID: stitch.DC, Together: 1}, N: plan.Nums{from}}
	over := plain
	over.N, over.Over = plan.Nums{left}, plan.Unworked
	w.step(plain, over)
	return w
}

func (w *work) step(work ...plan.Instr) {
	row := plan.Nums{w.last().Number}
	w.Steps = append(w.Steps, &plan.Row{First: row, Last: row, Times: plan.Nums{1}, Work: work})
}

// A heel turned in short rows is narrow in the middle of its height, and both its sides are shorter than its middle.
func TestHeel(t *testing.T) {
	m := make1("heel", "socks")
	heel := m.part("heel", false, plan.StartChain).dc(24)
	for range 4 { // two stitches less at each end in turn
		heel.shortRow(2).shortRow(2)
	}
	for n := 2; n <= 8; n += 2 {
		heel.back(n).back(n) // all that was left at that end
	}
	pt := only(t, laid(t, m.p), "heel")
	left, right := pt.sides()
	tall := 0.0
	for _, p := range pt.lines[len(pt.lines)-1].pts {
		tall = max(tall, -p.y)
	}
	about(t, "the middle", tall, 17)
	l, r := left[0].sub(left[len(left)-1]).length(), right[0].sub(right[len(right)-1]).length()
	if l >= tall || r >= tall || math.Abs(l-r) > 2 {
		t.Errorf("the sides are %.1f and %.1f tall, the middle %.1f", l, r, tall)
	}
}

// What a row leaves for good is a step in the edge: as wide as the stitches that were left, and level.
func TestArmholesStep(t *testing.T) {
	const st = 10.0 / 18 // 18 stitches on 10 cm
	back := only(t, laid(t, sources(t)["ria-vest"]), "back")
	left, right := back.sides()
	for name, pts := range map[string][]vec{"left": left, "right": right} {
		level := 0.0
		for i := 1; i < len(pts); i++ {
			if math.Abs(pts[i].y-pts[i-1].y) < 1e-6 {
				level += math.Abs(pts[i].x - pts[i-1].x)
			}
		}
		about(t, "the step on the "+name, level, 4*st)
	}
	if !mirrored(back, back) {
		t.Error("the back is not symmetric")
	}
}

// The halves of a front meet in the middle: the left one is on the reader's right, and its neck slopes from the middle.
func TestHalvesOfAFront(t *testing.T) {
	l := laid(t, sources(t)["ria-vest"])
	left, right := only(t, l, "left_front"), only(t, l, "right_front")
	if !mirrored(left, right) {
		t.Error("the halves are not mirror images")
	}
	if !near(left.near().first(), right.near().last()) {
		t.Errorf("the halves begin %.2f cm apart", left.near().first().sub(right.near().last()).length())
	}
	if left.bounds().middle().x <= right.bounds().middle().x {
		t.Error("the left half is on the reader's left")
	}
	// The shoulders end as far from the middle as the outer edges of the armholes stand in.
	const st = 10.0 / 18
	about(t, "the neck", left.far().first().x-right.far().last().x, 24*st)
}
