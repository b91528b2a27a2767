package draw

import (
	"math"

	"ovillo/compile/plan"
)

// wedge is what a flat piece with short rows looks like as it lies: its edges are of different heights. Points are those of a
// piece that grows upwards, from the middle of its start, with y counted up from there.
type wedge struct {
	tops []curve   // the start and the upper edge of every row, over the width of that row
	open [][2]bool // whether the left and the right end of each of them lies at a side edge of the piece
}

// side is one end of the rows, on the reader's left or right.
type side struct {
	x       float64 // where the last row ended there
	pending float64 // how wide the places are that lie beyond it and are worked later
}

// wedges finds the pieces whose rows turn before the end and come back to what they left. A row that leaves places for good
// makes a step in the edge, which is shaping like any other.
func wedges(part *plan.Part, pieces []*piece, size int) {
	steps := rowSteps(part, size)
	for _, pc := range pieces {
		if pc.closed || !comesBack(pc, steps, size) {
			continue
		}
		pc.wedge = pc.wedged(steps, size)
	}
}

// comesBack reports whether a row of a piece works places that an earlier one left.
func comesBack(pc *piece, steps map[int]*plan.Row, size int) bool {
	for _, r := range pc.rows {
		if row := steps[r.number]; row != nil && regained(row.Work, size) > 0 {
			return true
		}
	}
	return false
}

// regained is how many places that were left in earlier rows the instructions work into.
func regained(work []plan.Instr, size int) float64 {
	n := 0.0
	for _, in := range work {
		switch {
		case in.Over == plan.Unworked || in.Ref != nil && in.Ref.Kind == plan.RefSkipped && in.Ref.Own:
			takes, _, _ := effect(in, size)
			n += takes
		case in.Op == plan.Repeat:
			n += float64(max(inSize(in.N, size), 0)) * regained(in.Body, size)
		}
	}
	return n
}

// leaves is how many places the instructions leave at the end of the row for later.
func leaves(work []plan.Instr, size int) float64 {
	n := 0.0
	for _, in := range work {
		if in.Op == plan.LeaveRest {
			n += float64(max(inSize(in.N, size), 0))
		}
	}
	return n
}

// wedged works out where every row lies: each stands on what is below it, between its own two ends.
func (pc *piece) wedged(steps map[int]*plan.Row, size int) *wedge {
	half := pc.start / 2
	left, right := side{x: -half}, side{x: half}
	top := []vec{{-half, 0}, {half, 0}} // the upper edge of all that is worked so far
	w := &wedge{tops: []curve{straight(top...)}, open: [][2]bool{{true, true}}}
	below := 0
	for _, r := range pc.rows {
		begin, end, sign := &right, &left, -1.0 // a row on the right side runs from the reader's right to her left
		if r.wrong {
			begin, end, sign = &left, &right, 1
		}
		if row := steps[r.number]; row != nil {
			begin.x -= sign * begun(row, size, below) * r.stitch
			end.pending = max(0, end.pending+(leaves(row.Work, size)-regained(row.Work, size))*r.stitch)
		}
		end.x, below = begin.x+sign*r.flat, r.places
		top = raised(top, left, right, r.high)
		w.tops = append(w.tops, straight(between(top, left.x, right.x)...))
		const none = 1e-6
		w.open = append(w.open, [2]bool{left.pending < none, right.pending < none})
	}
	// The last edge is all that lies open, whatever the last row worked of it.
	w.tops[len(w.tops)-1], w.open[len(w.open)-1] = straight(top...), [2]bool{true, true}
	return w
}

// begun is how many stitches more a row makes where it begins than it takes there; of what it makes more in its middle, half.
func begun(row *plan.Row, size, below int) float64 {
	list, taken := changes(row.Work, size, float64(below))
	n := 0.0
	for _, c := range list {
		mid, wide := 0.0, 0.0
		if taken > 0 {
			mid, wide = (c.from+c.to)/2/taken, (c.to-c.from)/taken
		}
		switch {
		case c.leaves || c.net == 0 || wide < 0.45 && mid > 0.7:
		case wide < 0.45 && mid < 0.3:
			n += c.net
		default:
			n += c.net / 2
		}
	}
	return n
}

// raised is an upper edge after another row on it. Beyond the ends of the row lie the places that were left; the step down to
// them is drawn as a slope, as the cloth makes one.
func raised(top []vec, left, right side, high float64) []vec {
	on := between(top, left.x, right.x)
	for i := range on {
		on[i].y += high
	}
	var out []vec
	for _, p := range top {
		if p.x < left.x-1e-6 && p.x > left.x-left.pending-1e-6 {
			out = append(out, p)
		}
	}
	out = append(out, on...)
	for _, p := range top {
		if p.x > right.x+1e-6 && p.x < right.x+right.pending+1e-6 {
			out = append(out, p)
		}
	}
	return out
}

// between is an edge from one x to another; beyond its own ends it goes on level.
func between(top []vec, from, to float64) []vec {
	out := []vec{{from, levelAt(top, from)}}
	for _, p := range top {
		if p.x > from+1e-6 && p.x < to-1e-6 {
			out = append(out, p)
		}
	}
	return append(out, vec{to, levelAt(top, to)})
}

// levelAt is how high an edge is at an x.
func levelAt(top []vec, x float64) float64 {
	if x <= top[0].x {
		return top[0].y
	}
	for i := 1; i < len(top); i++ {
		if a, b := top[i-1], top[i]; x <= b.x {
			if b.x-a.x < 1e-9 {
				return b.y
			}
			return a.y + (b.y-a.y)*(x-a.x)/(b.x-a.x)
		}
	}
	return top[len(top)-1].y
}

// lay draws a wedge along a frame, which stands on its start or on its end.
func (w *wedge) lay(pt *patch, f frame) {
	last := w.tops[len(w.tops)-1]
	foot := 0.0
	if !pt.outward {
		foot = math.Inf(-1) // the frame stands on the end, where it is highest
		for _, p := range last.pts {
			foot = max(foot, p.y)
		}
	}
	up := f.along.y < 0 == pt.outward
	pt.lines, pt.inner = nil, nil
	for k, c := range w.tops {
		var line curve
		for _, p := range c.pts {
			x, y := p.x, p.y
			if !up {
				x = -x
			}
			if !pt.outward {
				y = foot - y
			}
			line.pts = append(line.pts, f.at(x, y))
		}
		inner := [2]bool{!w.open[k][0], !w.open[k][1]}
		if !up {
			line, inner = line.turned(), [2]bool{inner[1], inner[0]}
		}
		pt.lines, pt.inner = append(pt.lines, line), append(pt.inner, inner)
	}
}

// short reports whether a line is the edge of a row that turned before the end.
func (pt *patch) short(k int) bool {
	return pt.inner != nil && (pt.inner[k][0] || pt.inner[k][1])
}
