package draw

import (
	"math"

	"ovillo/compile/plan"
)

// heights are the ways to draw a length along the rows: of one part, or of several that hang together.
func (s *sheet) heights(terms []plan.MeasuredOn) []dimension {
	var ways []dimension
	for _, side := range [2]int{-1, 1} {
		set, own := s.chosen(terms, side)
		if len(set) == 0 {
			continue
		}
		var some []dimension
		switch {
		case set[0].rings:
			some = s.radius(set[0])
		case slanting(set):
			some = s.leaning(set, side)
		default:
			some = s.upright(set, side, s.net(terms))
		}
		for i := range some {
			for _, pt := range set {
				if pt.brake != nil {
					some[i].cut = pt.brake.cut
				}
			}
		}
		if !own {
			for i := range some {
				some[i].cost += 3 // the other of two pieces that are alike
			}
		}
		ways = append(ways, some...)
	}
	if len(ways) == 0 && len(terms) > 1 {
		// The terms do not hang in one line: the first stands for all.
		return s.heights(terms[:1])
	}
	return ways
}

// chosen are the patches that a sum of heights runs along on one side of the piece, and whether they are the very parts
// that were named: of two limbs that are alike either may show it.
func (s *sheet) chosen(terms []plan.MeasuredOn, side int) (set []*patch, own bool) {
	own = true
	for _, t := range terms {
		if t.Minus || !s.shows(t.Part) {
			continue
		}
		found := s.patches(t.Part, side)
		if len(found) == 0 {
			if twin := s.g.twin(t.Part, s.gr, side); twin >= 0 {
				found, own = s.patches(twin, side), false
			}
		}
		if len(found) == 0 {
			return nil, false
		}
		set = append(set, found...)
	}
	return set, own
}

// shows reports whether a part is in the group at all.
func (s *sheet) shows(part int) bool {
	for _, pt := range s.gr.patches {
		if pt.pc.part == part {
			return true
		}
	}
	return false
}

// patches are those of a part on a side or in the middle.
func (s *sheet) patches(part, side int) []*patch {
	var found []*patch
	for _, pt := range s.gr.patches {
		if pt.pc.part == part && (pt.side == 0 || pt.side == side) {
			found = append(found, pt)
		}
	}
	return found
}

// twin is a part of the group on a side whose rows are those of another, -1 if there is none.
func (g *graph) twin(part int, gr *group, side int) int {
	for _, pt := range gr.patches {
		if other := pt.pc.part; pt.side == side && other != part && sameRows(g.rows[part], g.rows[other]) {
			return other
		}
	}
	return -1
}

func sameRows(a, b []course) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if math.Abs(a[i].flat-b[i].flat) > 1e-6 || math.Abs(a[i].high-b[i].high) > 1e-6 {
			return false
		}
	}
	return true
}

// net is a sum of heights in centimetres where something is taken away, else 0.
func (s *sheet) net(terms []plan.MeasuredOn) float64 {
	sum, minus := 0.0, false
	for _, t := range terms {
		tall := 0.0
		for _, r := range s.g.rows[t.Part] {
			tall += r.high
		}
		if t.Minus {
			minus, tall = true, -tall
		}
		sum += tall
	}
	if !minus {
		return 0
	}
	return max(sum, 0)
}

// slanting reports whether patches hang all in one slanting line.
func slanting(set []*patch) bool {
	for _, pt := range set {
		if math.Abs(pt.f.along.x) < 1e-6 || pt.f.along.sub(set[0].f.along).length() > 1e-6 {
			return false
		}
	}
	return true
}

// leaning are the ways along the inner and outer edge of a slanting limb.
func (s *sheet) leaning(set []*patch, side int) []dimension {
	along := set[0].f.along
	ways := make([]dimension, 0, 2*5*2*len(letters))
	for _, inner := range [2]bool{true, false} {
		out := set[0].f.across.times(float64(side))
		if inner {
			out = out.times(-1)
		}
		near, far, most := edgeOf(set, along, out)
		a, b := s.on(near), s.on(far)
		touch := a.dot(out)
		offs := []float64{most*s.scale + dimOff}
		for level := 1; level < 4; level++ {
			offs = append(offs, offs[0]+dimPitch*float64(level))
		}
		if inner {
			// A limb that narrows leaves room for a line from its inner corner on.
			offs = append([]float64{touch}, offs...)
		}
		for i, off := range offs {
			if off < most*s.scale-0.3 {
				continue
			}
			ways = s.beside(ways, a, b, along, out, off, float64(4*i)+s.gr.price(inner))
		}
	}
	return ways
}

// price is what it costs to measure a limb along its inner or its outer edge: legs are measured inside, sleeves outside.
func (gr *group) price(inner bool) float64 {
	legs := false
	for _, pt := range gr.patches {
		legs = legs || pt.drop > 0
	}
	if legs == inner {
		return 0
	}
	return 18
}

// beside adds the ways to draw a line along a direction from the foot of one point to that of another, so far out.
func (s *sheet) beside(ways []dimension, a, b, along, out vec, off, cost float64) []dimension {
	foot := func(p vec) vec { return along.times(p.dot(along)).add(out.times(off)) }
	d := dimension{from: foot(a), to: foot(b), ext: make([][2]vec, 0, 2)}
	for _, p := range [2]vec{a, b} {
		if gap := off - p.dot(out); gap > extGap+0.2 {
			d.ext = append(d.ext, [2]vec{p.add(out.times(extGap)), p.add(out.times(gap + extPast))})
		}
	}
	for _, t := range letters {
		w := d.inLine(t)
		w.cost = cost + 6*math.Abs(t-0.5)
		if ways = append(ways, w); w.beside {
			continue
		}
		w = d.asideAt(t, out)
		w.cost = cost + 4 + 6*math.Abs(t-0.5)
		ways = append(ways, w)
	}
	return ways
}

// edgeOf gives the corners of an edge of patches in one line, nearest and farthest along it, and how far the edge reaches
// in the direction out of the fabric.
func edgeOf(set []*patch, along, out vec) (near, far vec, most float64) {
	most = math.Inf(-1)
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, pt := range set {
		left, right := pt.sides()
		pts := right
		if pt.f.across.dot(out) < 0 {
			pts = left
		}
		for _, p := range pts {
			most = max(most, p.dot(out))
		}
		if v := pt.f.o.dot(along); v < lo {
			lo, near = v, pts[0]
		}
		if v := pt.f.o.dot(along) + pt.pc.tall(); v > hi {
			hi, far = v, pts[len(pts)-1]
		}
	}
	// The line is as long as the rows are high, even where the corner itself lies a little askew.
	return near.add(along.times(lo - near.dot(along))), far.add(along.times(hi - far.dot(along))), most
}

// upright are the ways beside pieces that hang straight down or whose sum does.
func (s *sheet) upright(set []*patch, side int, net float64) []dimension {
	var top, foot vec
	for i, pt := range set {
		for _, far := range [2]bool{false, true} {
			c := pt.corner(far, side)
			if i == 0 && !far || c.y < top.y {
				top = c
			}
			if i == 0 && !far || c.y > foot.y {
				foot = c
			}
		}
	}
	if net > 0 {
		foot.y = min(foot.y, top.y+net)
	}
	a, b := s.on(top), s.on(foot)
	x := math.Inf(-1)
	for _, w := range s.board.walls {
		for _, p := range clipped(w, a.y, b.y) {
			x = max(x, p.x*float64(side))
		}
	}
	const levels = 5
	ways := make([]dimension, 0, 2*(levels+1)*len(letters))
	for level := range levels {
		off := x + dimOff + dimPitch*float64(level)
		out := vec{float64(side), 0}
		ways = s.beside(ways, a, b, vec{0, 1}, out, off, 4*float64(level))
	}
	for i := range ways {
		ways[i].upright = side
	}
	return append(ways, s.within(set, top, foot, side)...)
}

// within are the ways through the middle of pieces that hang straight, from one drawn edge to another: for where the
// way outside is barred.
func (s *sheet) within(set []*patch, top, foot vec, side int) []dimension {
	for _, pt := range set {
		if pt.pc.goesOn || s.g.goesOn(pt) || pt.forks[1] && pt.drop == 0 && !pt.yoke[1] && len(pt.far().pts) > 2 || pt.tips[0] != nil || pt.tips[1] != nil {
			return nil
		}
	}
	var ways []dimension
	ends := set[0].edgesAt(set[0].pc.tall() / 2)
	for _, share := range []float64{0.7, 0.55, 0.8, 0.4} {
		x := ends[0].to(ends[1], (1+float64(side)*share)/2).x
		d := dimension{from: s.on(vec{x, top.y}), to: s.on(vec{x, foot.y})}
		for _, t := range letters {
			w := d.inLine(t)
			w.cost = 3 + 6*math.Abs(t-0.5)
			ways = append(ways, w)
		}
	}
	return ways
}

// clipped are the ends of what lies of a line between two heights.
func clipped(w [2]vec, top, foot float64) []vec {
	a, b := w[0], w[1]
	if a.y > b.y {
		a, b = b, a
	}
	if b.y < top || a.y > foot {
		return nil
	}
	at := func(y float64) vec {
		if b.y-a.y < 1e-9 {
			return a
		}
		return a.to(b, (y-a.y)/(b.y-a.y))
	}
	pts := []vec{a, b}
	if a.y < top {
		pts[0] = at(top)
	}
	if b.y > foot {
		pts[1] = at(foot)
	}
	return pts
}

// corner is where a height is taken at an edge of a patch: its end, but the underarm of a yoke.
func (pt *patch) corner(far bool, side int) vec {
	c := pt.near()
	if far {
		c = pt.far()
	}
	i := 0
	edge := 0
	if far {
		edge = 1
	}
	if len(c.pts) == 5 && pt.yoke[edge] {
		i = 1
	}
	if side > 0 {
		i = len(c.pts) - 1 - i
	}
	return c.pts[i]
}

// radius are the ways to draw the height of the rounds of a disc, from where they begin to the outer one.
func (s *sheet) radius(pt *patch) []dimension {
	inner, outer := pt.lines[0], pt.lines[len(pt.lines)-1]
	var ways []dimension
	for i, angle := range []float64{0, 180, 45, 135, -45, -135} {
		sin, cos := math.Sincos(degrees(angle))
		d := dimension{from: s.on(inner.toward(pt.f.o, vec{cos, sin})), to: s.on(outer.toward(pt.f.o, vec{cos, sin}))}
		for _, w := range [2]dimension{d.inLine(0.5), d.beyond(true)} {
			w.cost = 3 * float64(i)
			ways = append(ways, w)
		}
	}
	return ways
}

// toward is where a ray from a point meets a closed curve.
func (c curve) toward(o, dir vec) vec {
	best, at := 0.0, o
	for i := range c.pts {
		a, b := c.pts[i], c.pts[(i+1)%len(c.pts)]
		e := b.sub(a)
		det := dir.normal().dot(e)
		if math.Abs(det) < 1e-12 {
			continue
		}
		off := a.sub(o)
		t := -dir.normal().dot(off) / det
		if r := off.add(e.times(t)).dot(dir); t >= -1e-9 && t <= 1+1e-9 && r > best {
			best, at = r, o.add(dir.times(r))
		}
	}
	return at
}
