package draw

import (
	"math"

	"ovillo/compile/plan"
)

// leans works out how far a flat piece leans: for its start and every row, how far its middle lies to the reader's right
// of the middle of its start, when it grows upwards. What a row changes near its beginning or end it changes at that edge;
// changes in between or all along widen both edges alike.
func leans(part *plan.Part, pieces []*piece, size int) {
	steps := rowSteps(part, size)
	at := 0.0
	for _, pc := range pieces {
		if pc.closed {
			if pc.side {
				pc.lean = pc.fromTheSide(steps, size)
			}
			continue
		}
		pc.lean = make([]float64, 1, len(pc.rows)+1)
		pc.steps = make([][2]bool, len(pc.rows))
		first := at
		for k, r := range pc.rows {
			if k+pc.first > 0 || pc.shaped {
				below := 0.0
				if k > 0 {
					below = float64(pc.rows[k-1].places)
				}
				wider := r.flat - pc.start
				if k > 0 {
					wider = r.flat - pc.rows[k-1].flat
				}
				left, right := ends(steps[r.number], r, below, wider, size)
				at += (right - left) / 2 * r.stitch
				pc.steps[k] = [2]bool{math.Abs(left) >= stepped, math.Abs(right) >= stepped}
			}
			pc.lean = append(pc.lean, at-first)
		}
	}
}

// stepped is how many stitches at once make a step in an edge; fewer make a slope.
const stepped = 3

// ends are how many stitches more a row on so many places makes than it takes at the reader's left and right, when it grows
// upwards. What a ripple does at its ends makes half a wave there. Where what the row is said to make does not come out as so
// much wider than the last one, as with meshes, nothing is known of its ends.
func ends(row *plan.Row, r course, below, wider float64, size int) (left, right float64) {
	if row == nil || r.waves > 0 {
		return 0, 0
	}
	list, taken := changes(row.Work, size, below)
	begin, end, sum := 0.0, 0.0, 0.0
	for _, c := range list {
		sum += c.net
	}
	if math.Abs(sum*r.stitch-wider) > 0.6*r.stitch {
		return 0, 0
	}
	for _, c := range list {
		if taken <= 0 || c.net == 0 {
			continue
		}
		mid, wide := (c.from+c.to)/2/taken, (c.to-c.from)/taken
		switch {
		case wide < 0.45 && mid < 0.3:
			begin += c.net
		case wide < 0.45 && mid > 0.7:
			end += c.net
		}
	}
	// A row on the right side begins at the reader's right.
	if r.wrong {
		return begin, end
	}
	return end, begin
}

// fromTheSide is how far a tube leans that is seen from its side, its rounds beginning at the reader's right: what a round
// changes about its middle, as at a toe, it changes at her left.
func (pc *piece) fromTheSide(steps map[int]*plan.Row, size int) []float64 {
	at, lean := 0.0, make([]float64, 1, len(pc.rows)+1)
	for k, r := range pc.rows {
		row, below := steps[r.number], 0.0
		if k > 0 {
			below = float64(pc.rows[k-1].places)
		}
		if row != nil && k > 0 {
			list, taken := changes(row.Work, size, below)
			for _, c := range list {
				if taken <= 0 || c.net == 0 || (c.to-c.from)/taken > 0.8 {
					continue
				}
				moved := c.net * r.stitch / 2 / 2 // half of it on either face, and half of that in the middle
				if mid := (c.from + c.to) / 2 / taken; mid > 0.25 && mid < 0.75 {
					moved = -moved
				}
				at += moved
			}
		}
		lean = append(lean, at)
	}
	return lean
}
