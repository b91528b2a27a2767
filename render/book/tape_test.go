package book

import (
	"fmt"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/page"
)

func TestTapeIsForLongRuns(t *testing.T) {
	for _, c := range []struct {
		first, last plan.Nums
		want        string
	}{
		{plan.Nums{2, 2}, plan.Nums{5, 5}, "none"},             // four rounds have four boxes
		{plan.Nums{2, 2}, plan.Nums{5, 6}, "2 to 6, ends 5 6"}, // one size is enough
		{plan.Nums{2, plan.Absent}, plan.Nums{9, plan.Absent}, "2 to 9, ends 9"},
		{plan.Nums{plan.Absent, 12}, plan.Nums{plan.Absent, 20}, "12 to 20, ends 20"},
		{plan.Nums{16, 23}, plan.Nums{19, 31}, "16 to 31, ends 19 31"},
		{plan.Nums{1}, plan.Nums{400}, "none"},
		{plan.Nums{plan.Absent}, plan.Nums{plan.Absent}, "none"},
	} {
		got := "none"
		if tp := tapeOf(c.first, c.last); tp != nil {
			got = fmt.Sprintf("%d to %d, ends", tp.first, tp.last)
			for n := tp.first; n <= tp.last; n++ {
				if tp.ends[n] {
					got += fmt.Sprint(" ", n)
				}
			}
		}
		if got != c.want {
			t.Errorf("%v to %v: %s, want %s", c.first, c.last, got, c.want)
		}
	}
}

// worked makes the facts of rounds with so many stitches, numbered from 1.
func worked(sts ...int) []plan.RowFact {
	var rows []plan.RowFact
	for i, n := range sts {
		rows = append(rows, plan.RowFact{Number: i + 1, Stitches: n})
	}
	return rows
}

func TestWedgesStandOverShapingRounds(t *testing.T) {
	for _, c := range []struct {
		name   string
		first  plan.Nums
		last   plan.Nums
		worked [][]plan.RowFact
		want   []int
	}{
		{"every second", plan.Nums{2}, plan.Nums{7}, [][]plan.RowFact{worked(60, 60, 58, 58, 56, 56, 54)}, []int{3, 5, 7}},
		{"sizes agree", plan.Nums{2, 2}, plan.Nums{6, 7}, [][]plan.RowFact{worked(60, 60, 58, 58, 56, 56), worked(64, 64, 62, 62, 60, 60, 58)}, []int{3, 5, 7}},
		{"sizes differ", plan.Nums{2, 2}, plan.Nums{6, 6}, [][]plan.RowFact{worked(60, 60, 58, 58, 56, 56), worked(60, 60, 60, 58, 58, 58)}, nil},
		{"a size is left out", plan.Nums{2, plan.Absent}, plan.Nums{6, plan.Absent}, [][]plan.RowFact{worked(60, 60, 58, 58, 56, 56), worked(60, 62, 64)}, []int{3, 5}},
		{"no shaping", plan.Nums{2}, plan.Nums{6}, [][]plan.RowFact{worked(60, 60, 60, 60, 60, 60)}, nil},
		{"nothing but shaping", plan.Nums{2}, plan.Nums{6}, [][]plan.RowFact{worked(8, 16, 24, 32, 40, 48)}, nil},
	} {
		tp := tapeOf(c.first, c.last)
		tp.shape(c.first, c.last, c.worked)
		var got []int
		for n := tp.first; n <= tp.last; n++ {
			if tp.wedges[n] {
				got = append(got, n)
			}
		}
		if fmt.Sprint(got) != fmt.Sprint(c.want) {
			t.Errorf("%s: wedges %v, want %v", c.name, got, c.want)
		}
	}
}

// TestTapeLines: every round has its cell once, lines end before the edge and are of one length.
func TestTapeLines(t *testing.T) {
	for _, last := range []int{6, 33, 34, 100, 999, 1200} {
		tp := &tape{first: 2, last: last, ends: map[int]bool{last: true}, wedges: map[int]bool{3: true}}
		next := 2
		perLine := map[float64]int{}
		for _, it := range tp.box(8, usual.blockW, usual.tapeType).Items {
			g, ok := it.(page.Glyphs)
			if !ok {
				continue
			}
			if g.Text != fmt.Sprint(next) {
				t.Fatalf("to %d: %s follows %d", last, g.Text, next-1)
			}
			next++
			perLine[g.Base]++
			if k := inkOf(g); k.left < 8 || k.right > usual.blockW {
				t.Errorf("to %d: %s stands from %.2f to %.2f", last, g.Text, k.left, k.right)
			}
		}
		if next != last+1 {
			t.Errorf("to %d: the tape ends at %d", last, next-1)
		}
		least, most := 1000, 0
		for _, n := range perLine {
			least, most = min(least, n), max(most, n)
		}
		if most-least > len(perLine) {
			t.Errorf("to %d: lines of %d and %d cells", last, least, most)
		}
	}
}

func TestTicks(t *testing.T) {
	for n, want := range map[int]float64{0: 0, 1: 5, 2: 10, 4: 18.75} {
		b := usual.ticks(usual.spine, n)
		if b.H != want || len(b.Items) != n {
			t.Errorf("%d boxes are %d and %v high, want %v", n, len(b.Items), b.H, want)
		}
	}
	box := usual.ticks(usual.spine, 1).Items[0].(page.Path)
	left, right := box.Cmds[0].P[0].X-box.Width/2, box.Cmds[1].P[0].X+box.Width/2
	if right-left < usual.tickW-1e-9 || right-left > usual.tickW+1e-9 || (left+right)/2 != usual.spine {
		t.Errorf("a box from %v to %v, want %v round %v", left, right, usual.tickW, usual.spine)
	}
}

func TestRoundsGiveBoxesOrTape(t *testing.T) {
	part := &plan.Part{}
	for _, c := range []struct {
		first, last plan.Nums
		ticks       int
		tape        bool
	}{
		{plan.Nums{1, 1}, plan.Nums{1, 1}, 1, false},
		{plan.Nums{2, 2}, plan.Nums{4, 4}, 3, false},
		{plan.Nums{2, 2}, plan.Nums{4, 5}, 4, false},
		{plan.Nums{2, 2}, plan.Nums{4, 6}, 1, true},
		{plan.Nums{2, plan.Absent}, plan.Nums{3, plan.Absent}, 2, false},
		{plan.Nums{1}, plan.Nums{500}, 1, false},
	} {
		r := (&setter{}).rounds(part, c.first, c.last)
		if r.ticks != c.ticks || (r.tape != nil) != c.tape {
			t.Errorf("%v to %v: %d boxes, tape %v", c.first, c.last, r.ticks, r.tape != nil)
		}
	}
}
