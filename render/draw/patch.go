package draw

import "math"

// curve is a line of a drawing through points: straight from one to the next, or smooth.
type curve struct {
	pts            []vec
	smooth, closed bool
}

func straight(pts ...vec) curve { return curve{pts: pts} }

func (c curve) first() vec { return c.pts[0] }
func (c curve) last() vec  { return c.pts[len(c.pts)-1] }

// at is the point a part t of the way along the curve's points, which stand apart evenly enough.
func (c curve) at(t float64) vec {
	c = c.fine()
	total := 0.0
	for i := 1; i < len(c.pts); i++ {
		total += c.pts[i].sub(c.pts[i-1]).length()
	}
	left := t * total
	for i := 1; i < len(c.pts); i++ {
		l := c.pts[i].sub(c.pts[i-1]).length()
		if left <= l && l > 0 {
			return c.pts[i-1].to(c.pts[i], clamp(left/l, 0, 1))
		}
		left -= l
	}
	return c.last()
}

// fine is a smooth curve of few points as one of many.
func (c curve) fine() curve {
	if !c.smooth || len(c.pts) > 8 {
		return c
	}
	flat := &pen{scale: 1}
	return curve{pts: flatten(flat.path(c))[0].pts, smooth: true, closed: c.closed}
}

// cut is the curve with its corners cut off three times over, which makes it smooth without ever leaving its own
// corners.
func (c curve) cut() curve {
	pts := c.pts
	for range 3 {
		next := []vec{pts[0]}
		for i := 1; i < len(pts); i++ {
			if i > 1 {
				next = append(next, pts[i-1].to(pts[i], 0.25))
			}
			if i < len(pts)-1 {
				next = append(next, pts[i-1].to(pts[i], 0.75))
			}
		}
		pts = append(next, pts[len(pts)-1])
	}
	return curve{pts: pts, smooth: true, closed: c.closed}
}

// turned is the curve from its other end.
func (c curve) turned() curve {
	r := curve{pts: make([]vec, len(c.pts)), smooth: c.smooth, closed: c.closed}
	for i, p := range c.pts {
		r.pts[len(c.pts)-1-i] = p
	}
	return r
}

// patch is a piece on the table.
type patch struct {
	pc       *piece
	index    int // of the piece
	mirrored bool
	// lines are the start and the upper edge of every row, in the order of work, each from the reader's left to her
	// right as the frame has it; rings are closed.
	lines   []curve
	f       frame // where the piece hangs; its rows follow f.along
	outward bool  // it is worked away from what it hangs on
	free    [2]bool
	rings   bool
	// beyondEdge is the outline so far outside of rings that go round another piece; nil for others.
	beyondEdge func(more float64) curve
	side       int       // -1 and +1 for a branch on that side, 0 else
	band       bool      // it lies along the sides of others
	over       bool      // it lies on top of others
	drop       float64   // how far the middle of its bent edge lies beyond the ends of that edge (a crotch)
	yoke       [2]bool   // its near or far edge runs from sleeve to underarm to underarm to sleeve
	brake      *brake    // where it is drawn shorter than it is; nil: nowhere
	stiff      [2]bool   // its near or far edge lies along a flat piece, and does not hang through
	forks      [2]bool   // its near or far edge is bent to meet several pieces
	seams      []curve   // lines of increases on it
	tips       [2]*tip   // its rounded ends: near and far, nil if straight
	steps      [][2]bool // of each row, counted outwards, whether its left and right edge steps in or out at once; nil: none does
	inner      [][2]bool // of each line, whether its left and right end lie inside the piece, where a short row turned; nil: none does
}

// near and far are the edges of the piece next to what it hangs on and away from it.
func (pt *patch) near() curve { return pt.outwardLine(0) }
func (pt *patch) far() curve  { return pt.outwardLine(len(pt.lines) - 1) }

// outwardLine is a line by its number from what the piece hangs on.
func (pt *patch) outwardLine(k int) curve { return pt.lines[pt.turn(k)] }

// turn changes the number of a line counted outwards to one counted in the order of work, and back.
func (pt *patch) turn(k int) int {
	if pt.outward {
		return k
	}
	return len(pt.lines) - 1 - k
}

// depths are the distances of the lines along the frame, counted outwards.
func (pt *patch) depths() []float64 {
	d := make([]float64, len(pt.lines))
	n := len(pt.pc.rows)
	for k := 1; k <= n; k++ {
		row := k - 1
		if !pt.outward {
			row = n - k
		}
		d[k] = d[k-1] + pt.pc.rows[row].high
	}
	return d
}

// bounds is the box round the patch.
func (pt *patch) bounds() box {
	var b box
	for _, c := range pt.lines {
		for _, p := range c.pts {
			b.add(p)
		}
	}
	return b
}

// sides are the two edges of a strip from its near edge to its far one, without points that a straight line passes.
func (pt *patch) sides() (left, right []vec) {
	d := pt.depths()
	all := d[len(d)-1]
	for k := range pt.lines {
		if t := pt.tips[0]; k > 0 && t != nil && k <= t.rows {
			left = append(left, t.outline(-1, d[k-1], d[k])...)
			right = append(right, t.outline(1, d[k-1], d[k])...)
		}
		if t := pt.tips[1]; k > 0 && t != nil && k > len(pt.lines)-1-t.rows {
			left = append(left, t.outline(-1, all-d[k-1], all-d[k])...)
			right = append(right, t.outline(1, all-d[k-1], all-d[k])...)
		}
		if k > 0 && pt.steps != nil {
			near, far := pt.outwardLine(k-1), pt.outwardLine(k)
			if pt.steps[k-1][0] {
				left = append(left, pt.step(near.first(), far.first()))
			}
			if pt.steps[k-1][1] {
				right = append(right, pt.step(near.last(), far.last()))
			}
		}
		c, inner := pt.outwardLine(k), [2]bool{}
		if pt.inner != nil {
			inner = pt.inner[pt.turn(k)]
		}
		if !inner[0] {
			left = append(left, c.first())
		}
		if !inner[1] {
			right = append(right, c.last())
		}
	}
	return slim(left, 0.01), slim(right, 0.01)
}

// step is the corner where the edge steps in or out from one line to the next, counted outwards: it is as high as the row that
// makes the step begins, and as far out as that row ends.
func (pt *patch) step(near, far vec) vec {
	before, after := near, far
	if !pt.outward {
		before, after = far, near
	}
	return after.add(pt.f.along.times(before.sub(after).dot(pt.f.along)))
}

// outline is the closed outline of the patch.
func (pt *patch) outline() []vec {
	if pt.rings {
		return pt.lines[len(pt.lines)-1].pts
	}
	left, right := pt.sides()
	var pts []vec
	pts = append(pts, pt.near().turned().pts...)
	pts = append(pts, left...)
	pts = append(pts, pt.far().pts...)
	for i := len(right) - 1; i >= 0; i-- {
		pts = append(pts, right[i])
	}
	return pts
}

// slim leaves out the points of a line that lie within a distance of the line without them.
func slim(pts []vec, tolerance float64) []vec {
	if len(pts) < 3 {
		return pts
	}
	keep := make([]bool, len(pts))
	keep[0], keep[len(pts)-1] = true, true
	slimBetween(pts, keep, 0, len(pts)-1, tolerance)
	var kept []vec
	for i, k := range keep {
		if k {
			kept = append(kept, pts[i])
		}
	}
	return kept
}

func slimBetween(pts []vec, keep []bool, from, to int, tolerance float64) {
	for to-from > 1 {
		dir, worst, at := pts[to].sub(pts[from]), tolerance, -1
		for i := from + 1; i < to; i++ {
			off := pts[i].sub(pts[from])
			away := off.length()
			if l := dir.length(); l > 1e-9 {
				away = math.Abs(dir.normal().dot(off)) / l
			}
			if away > worst {
				worst, at = away, i
			}
		}
		if at < 0 {
			return
		}
		keep[at] = true
		slimBetween(pts, keep, from, at, tolerance)
		from = at
	}
}
