package draw

import "math"

// ringed reports whether a piece lies on the table as rings seen from above: rounds that grow all the way from a point
// or a chain, about as fast as a flat disc does, with nothing beyond.
func (g *graph) ringed(i int) bool {
	pc := g.pieces[i]
	if !pc.closed || !(pc.point || pc.oval) || pc.tall() <= 0 {
		return false
	}
	if j := g.joint(ending{i, endEdge}); g.isBranch(i) || g.attached(ending{i, startEdge}) || j != nil && !g.grow(j) {
		return false
	}
	return pc.flatRound()
}

// How fast rounds grow for each unit of height: by 2 pi in a disc, by 8 in a square.
const (
	flatGrowth = 4.7 // from which they are seen from above
	flatLeast  = 3.0 // from which an edging round them is
)

// flatRound reports whether rounds grow all the way, about as fast as a flat disc does.
func (pc *piece) flatRound() bool {
	last := pc.rows[len(pc.rows)-1]
	return pc.tall() > 0 && last.flat >= pc.widest()*0.98 && 2*(last.flat-pc.start)/pc.tall() >= flatGrowth
}

// grow reports whether what hangs on the outer round of a disc goes on growing as flat as the disc, as an edging does. A
// side of a hat or a bag does not.
func (g *graph) grow(j *joint) bool {
	for _, b := range j.branches {
		pc := g.pieces[b.piece]
		if !pc.closed || b.edge != startEdge || pc.tall() <= 0 {
			return false
		}
		if last := pc.rows[len(pc.rows)-1]; 2*(last.flat-pc.start)/pc.tall() < flatLeast {
			return false
		}
	}
	return true
}

// rings are the rounds of a disc, an oval or a motif round a point.
func rings(o vec, pc *piece) []curve {
	lines := make([]curve, 0, len(pc.rows)+1)
	s := 0.0
	for k := range len(pc.rows) + 1 {
		lines = append(lines, pc.ring(o, s))
		if k < len(pc.rows) {
			s += pc.rows[k].high
		}
	}
	return lines
}

// ring is the outline of rounds that are so high together.
func (pc *piece) ring(o vec, high float64) curve {
	switch {
	case pc.corner > 2:
		return polygon(o, high, pc.corner)
	case pc.oval:
		return stadium(o, pc.start/2, high)
	}
	return stadium(o, 0, high)
}

// stadium is a circle of a radius drawn out to both sides.
func stadium(o vec, half, radius float64) curve {
	const steps = 48
	c := curve{smooth: half == 0, closed: true} // straight sides must stay straight
	for i := range steps {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / steps)
		at := vec{radius * cos, radius * sin}
		side := vec{half, 0}
		switch {
		case half > 0 && i == steps/4:
			c.pts = append(c.pts, o.add(at).add(side), o.add(at).sub(side))
		case half > 0 && i == steps*3/4:
			c.pts = append(c.pts, o.add(at).sub(side), o.add(at).add(side))
		case cos < 0:
			c.pts = append(c.pts, o.add(at).sub(side))
		default:
			c.pts = append(c.pts, o.add(at).add(side))
		}
	}
	return c
}

// polygon has its sides as far from the middle as the rounds are high, and lies on one of them.
func polygon(o vec, high float64, corners int) curve {
	c := curve{closed: true}
	reach := high / math.Cos(math.Pi/float64(corners))
	for i := range corners {
		sin, cos := math.Sincos(math.Pi/2 + math.Pi/float64(corners) + 2*math.Pi*float64(i)/float64(corners))
		c.pts = append(c.pts, o.add(vec{reach * cos, reach * sin}))
	}
	return c
}

// edge lays rounds that go round a piece: they keep the shape of rings, and make a frame round a flat piece.
func (t *table) edge(pt *patch, i int) {
	t.drawn[i] = true
	pc := t.g.pieces[i]
	e := &patch{pc: pc, index: i, f: pt.f, outward: true, rings: true}
	e.free[endEdge] = !t.g.attached(ending{i, endEdge})
	inner, s := pt.beyondEdge, 0.0
	switch {
	case inner != nil:
	case pt.rings:
		inner = func(s float64) curve { return pt.pc.ring(pt.f.o, pt.pc.tall()+s) }
	default:
		b := pt.bounds()
		inner = func(s float64) curve { return b.grown(s).frame() }
	}
	for k := range len(pc.rows) + 1 {
		e.lines = append(e.lines, inner(s))
		if k < len(pc.rows) {
			s += pc.rows[k].high
		}
	}
	e.beyondEdge = func(more float64) curve { return inner(s + more) }
	t.gr.patches = append(t.gr.patches, e)
	t.edging(e)
}

// frame is the outline of a box.
func (b box) frame() curve {
	return curve{closed: true, pts: []vec{b.min, {b.max.x, b.min.y}, b.max, {b.min.x, b.max.y}}}
}

// edging lays the rounds that go on from rings round them.
func (t *table) edging(pt *patch) {
	for _, j := range t.g.joints {
		if t.seen[j] || j.trunk != (ending{pt.index, endEdge}) {
			continue
		}
		t.seen[j] = true
		for _, b := range j.branches {
			if t.g.pieces[b.piece].closed && !t.drawn[b.piece] {
				t.edge(pt, b.piece)
			}
		}
	}
}
