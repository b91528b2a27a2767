package book

import (
	"strconv"

	"ovillo/compile/plan"
	"ovillo/render/layout"
)

// tape is a strip of numbered cells to cross off, one a round. It serves all sizes: the last round of each has a heavy
// edge and a heavy figure.
type tape struct {
	first, last int
	ends        map[int]bool
	wedges      map[int]bool // shaping rounds
}

// A range of rounds gets a tape if it is long enough to lose count in, and short enough to be overlooked as a whole.
const (
	tapeLeast = 5
	tapeMost  = 320
)

const (
	cellW  = 5.6
	cellH  = 5.0
	wedgeW = 2.2
	wedgeH = 1.6
)

// tapeOf makes the tape of a run of rows, or nil if it needs none.
func tapeOf(first, last plan.Nums) *tape {
	t := &tape{ends: map[int]bool{}, wedges: map[int]bool{}}
	longest := 0
	for i := range first {
		a, b := first[i], last[i]
		if a == plan.Absent || b == plan.Absent {
			continue
		}
		longest = max(longest, b-a+1)
		if len(t.ends) == 0 || a < t.first {
			t.first = a
		}
		if len(t.ends) == 0 || b > t.last {
			t.last = b
		}
		t.ends[b] = true
	}
	if longest < tapeLeast || t.last-t.first >= tapeMost {
		return nil
	}
	return t
}

// shape marks the rounds that change the number of stitches. All sizes that work a round must agree, or no wedge is
// drawn at all: a mark that is true for one size only would mislead the others.
func (t *tape) shape(first, last plan.Nums, worked [][]plan.RowFact) {
	wedges := map[int]bool{}
	seen := map[int]bool{}
	for i := range first {
		if first[i] == plan.Absent || i >= len(worked) {
			continue
		}
		before := -1
		for _, f := range worked[i] {
			if f.Number >= first[i] && f.Number <= last[i] {
				shaped := before >= 0 && f.Stitches != before
				if seen[f.Number] && wedges[f.Number] != shaped {
					return
				}
				seen[f.Number], wedges[f.Number] = true, shaped
			}
			before = f.Stitches
		}
	}
	for n, shaped := range wedges {
		if shaped {
			t.wedges[n] = true
		}
	}
	if len(t.wedges) == len(wedges) {
		clear(t.wedges) // every round is shaped: the marks would tell nothing
	}
}

// box draws the tape with its left edge at x, in lines that end before right.
func (t *tape) box(x, right float64, style layout.Style) layout.Box {
	w := cellW
	if need := style.Width(strconv.Itoa(t.last), true) + 1; need > w {
		w = need
	}
	cells := t.last - t.first + 1
	lines := (cells-1)/int((right-x+1e-9)/w) + 1
	perLine := (cells-1)/lines + 1 // lines of one length, lest a last cell stand alone
	var b layout.Box
	for from := t.first; from <= t.last; from += perLine {
		line := t.line(from, min(from+perLine-1, t.last), x, w, style)
		if b.H > 0 {
			b.H += layout.Module
		}
		b.Below(0, line)
	}
	return b
}

func (t *tape) line(from, to int, x, w float64, style layout.Style) layout.Box {
	var b layout.Box
	top := 0.0
	if len(t.wedges) > 0 {
		top = 2 * layout.Module
	}
	right := x + w*float64(to-from+1)
	b.Add(layout.Frame(x, top, right-x, cellH, 0.2))
	for n := from; n <= to; n++ {
		l := x + w*float64(n-from)
		if t.wedges[n] {
			b.Add(layout.Wedge(l+w/2, top-0.7-wedgeH, wedgeW, wedgeH))
		}
		b.Put(0, top, layout.TextCentred(strconv.Itoa(n), style, t.ends[n], l+w/2, nil))
		switch {
		case t.ends[n]:
			b.Add(layout.Rule(l+w, top-0.1, l+w, top+cellH+0.1, 0.55))
		case n < to:
			b.Add(layout.Rule(l+w, top, l+w, top+cellH, 0.2))
		}
	}
	b.H = top + cellH
	return b
}
