package draw

import "ovillo/compile/plan"

// sideways are the ways to draw the length of a side edge, or of a stretch of it: upright beside it, as long as its rows are high.
func (s *sheet) sideways(on plan.MeasuredOn) []dimension {
	a, b, sides := s.stretch(on)
	if len(sides) == 0 {
		return nil
	}
	top, foot := s.on(a), s.on(b)
	if top.y > foot.y {
		top, foot = foot, top
	}
	var ways []dimension
	for _, side := range sides {
		x := side * top.x
		for _, w := range s.board.walls {
			for _, p := range clipped(w, top.y, foot.y) {
				x = max(x, p.x*side)
			}
		}
		top, foot := vec{s.silhouette(top, side), top.y}, vec{s.silhouette(foot, side), foot.y}
		for level := range 5 {
			off := x + dimOff + dimPitch*float64(level)
			from := len(ways)
			ways = s.beside(ways, top, foot, vec{0, 1}, vec{side, 0}, off, 4*float64(level))
			for i := range ways[from:] {
				ways[from+i].upright = int(side)
			}
		}
	}
	return ways
}

// silhouette is how far the piece reaches on a side of a point, at its height: from there an extension line begins.
func (s *sheet) silhouette(p vec, side float64) float64 {
	const near = 0.05 // millimetres up and down
	x := p.x * side
	for _, w := range s.board.walls {
		for _, q := range clipped(w, p.y-near, p.y+near) {
			x = max(x, q.x*side)
		}
	}
	return x * side
}

// stretch is from where to where a side edge is measured, and on which sides of the paper there is a line for it: on its own, or on
// both for the opening of what is folded.
func (s *sheet) stretch(on plan.MeasuredOn) (from, to vec, sides []float64) {
	first, last := inSize(on.Row, s.g.size), inSize(on.ToRow, s.g.size)
	var ends [2]bool
	for _, pt := range s.gr.patches {
		if pt.pc.part != on.Part || pt.rings || pt.band {
			continue
		}
		up := pt.worked().y < 0
		right := (on.Side == plan.RightEdge) == up
		at := func(k int) vec {
			switch {
			case pt.pc.folded:
				return pt.middle(k)
			case right:
				return pt.lines[k].last()
			}
			return pt.lines[k].first()
		}
		if k, ok := pt.pc.boundary(first); ok || on.Row == nil && pt.pc.first == 0 {
			from, ends[0] = at(max(k-1, 0)), true
		}
		if k, ok := pt.pc.boundary(last); ok || on.ToRow == nil && !s.g.goesOn(pt) {
			if !ok {
				k = len(pt.lines) - 1
			}
			to, ends[1] = at(k), true
		}
		switch {
		case pt.pc.folded:
			sides = []float64{1, -1}
		case right:
			sides = []float64{1}
		default:
			sides = []float64{-1}
		}
	}
	if !ends[0] || !ends[1] {
		return vec{}, vec{}, nil
	}
	return from, to, sides
}
