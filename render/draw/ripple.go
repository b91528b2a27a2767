package draw

import "math"

// ripple bends the rows of a ripple into waves: as many valleys as places are drawn together in a row, as steep as a
// stitch that leans by one stitch in a row.
func (pt *patch) ripple() {
	if pt.rings {
		return
	}
	for i := range pt.lines {
		pt.rippled(i)
	}
}

// rippleEdges bends the start and the end of a ripple alone: the outline of the schematic.
func (pt *patch) rippleEdges() {
	if pt.rings || pt.pc.closed || pt.band || pt.inner != nil {
		return
	}
	pt.rippled(0)
	pt.rippled(len(pt.lines) - 1)
}

// rippled bends one line.
func (pt *patch) rippled(i int) {
	r := pt.pc.rows[max(0, i-1)]
	if r.waves == 0 || r.stitch <= 0 {
		return
	}
	c := pt.lines[i]
	wide := c.last().sub(c.first()).length() / float64(r.waves)
	// A slope of one stitch a row, and never more than twice the height of a row or a third of a wave.
	high := min(min(wide/2*r.stitch/max(r.high, 1e-3), 2*r.high), wide/3)
	pt.lines[i] = c.waved(pt.f.along, r.waves, high)
}

// waved is a straight curve in waves that begin and end with a crest.
func (c curve) waved(along vec, waves int, high float64) curve {
	const steps = 4
	out := curve{smooth: true}
	n := waves * steps
	for i := range n + 1 {
		t := float64(i) / float64(n)
		off := high / 2 * math.Cos(2*math.Pi*t*float64(waves))
		out.pts = append(out.pts, c.first().to(c.last(), t).add(along.times(off)))
	}
	return out
}
