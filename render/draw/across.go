package draw

import (
	"math"

	"ovillo/render/scene"
)

// sheet is a group on paper at a scale, in millimetres, its own origin at (0, 0): what measures are drawn on.
type sheet struct {
	g     *graph
	gr    *group
	scale float64
	board board

	dims   []dimension
	arrows []workArrow
	count  *scene.Label // how many of the group are made; nil if it is one
}

func (s *sheet) on(v vec) vec { return v.times(s.scale) }

// letters are where along its line a letter may stand, the best place first.
var letters = []float64{0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82}

// across are the ways to draw a measure once around or across a patch after so many of its rows.
func (s *sheet) across(pt *patch, k int) []dimension {
	ways := s.atEnds(pt, k)
	base := pt.edgesAt(pt.depths()[pt.turn(k)])
	wide := s.on(base[1]).sub(s.on(base[0])).length()
	deep := pt.depths()
	all := deep[len(deep)-1]
	for shift := -6.0; shift <= 6; shift++ {
		at := deep[pt.turn(k)] + shift/s.scale
		if at < 0 || at > all {
			continue
		}
		ends := pt.edgesAt(at)
		d := dimension{from: s.on(ends[0]), to: s.on(ends[1])}
		l := d.to.sub(d.from).length()
		off := math.Abs(l-wide) / max(wide, 1e-6)
		if off > 0.06 {
			continue
		}
		cost := 8 + 2*math.Abs(shift) + 200*off
		for _, t := range letters {
			w := d.inLine(t)
			w.cost = cost + 10*math.Abs(t-0.5)
			ways = append(ways, w)
			if w.beside {
				break
			}
		}
		for more := range 3 {
			for _, after := range [2]bool{true, false} {
				w := d.farBeyond(after, more)
				w.cost = cost + 30 + 20*float64(more)
				ways = append(ways, w)
			}
		}
	}
	return ways
}

// atEnds are the ways to draw a width outside the piece, where it is as wide from there to a free edge.
func (s *sheet) atEnds(pt *patch, k int) []dimension {
	wide := pt.pc.widths()[k]
	var ways []dimension
	for edge := range 2 {
		end, ok := s.reach(pt, k, edge, wide)
		if !ok {
			continue
		}
		a, b, out := s.on(end.from), s.on(end.to), end.out
		for level := range 4 {
			off := dimOff + dimPitch*float64(level)
			d := dimension{from: a.add(out.times(off)), to: b.add(out.times(off))}
			for _, p := range [2]vec{a, b} {
				d.ext = append(d.ext, [2]vec{p.add(out.times(extGap)), p.add(out.times(off + extPast))})
			}
			for _, t := range letters[:5] {
				w := d.inLine(t)
				w.cost = 5*float64(level) + 10*math.Abs(t-0.5)
				// Above or below makes no difference, but two widths of one piece read best at its two ends.
				w.cost += 0.5 * min(math.Abs(end.away), 4)
				ways = append(ways, w)
			}
		}
	}
	return ways
}

// rim is a free edge of a group: its corners and the direction away from the fabric.
type rim struct {
	from, to, out vec
	away          float64 // from where it was looked for
}

// reach follows a patch from one of its lines to an edge, and on over pieces as wide, to a free edge.
func (s *sheet) reach(pt *patch, k, edge int, wide float64) (rim, bool) {
	const same = 0.015
	away := 0.0
	for range len(s.gr.patches) {
		if pt.rings || pt.tips[pt.turnEdge(edge)] != nil {
			return rim{}, false
		}
		widths := pt.pc.widths()
		step, stop := 1, len(pt.lines)-1
		if edge == startEdge {
			step, stop = -1, 0
		}
		for ; k != stop; k += step {
			if math.Abs(widths[k]-wide) > same*wide {
				return rim{}, false
			}
			away += pt.pc.rows[min(k, k+step)].high
		}
		if math.Abs(widths[k]-wide) > same*wide {
			return rim{}, false
		}
		if pt.free[edge] {
			c := pt.lines[stop]
			return rim{c.first(), c.last(), pt.outOf(edge), away}, true
		}
		next, at := s.gr.next(pt, edge)
		if next == nil {
			return rim{}, false
		}
		pt, edge, k = next, 1-at, 0
		if at == endEdge {
			k = len(pt.lines) - 1
		}
	}
	return rim{}, false
}

// turnEdge changes an edge in the order of work to 0 for near and 1 for far, and back.
func (pt *patch) turnEdge(edge int) int {
	if pt.outward {
		return edge
	}
	return 1 - edge
}

// outOf is the direction out of the fabric at an edge.
func (pt *patch) outOf(edge int) vec {
	if pt.turnEdge(edge) == 0 {
		return pt.f.along.times(-1)
	}
	return pt.f.along
}

// next finds the patch that hangs straight on an edge of another, and its edge there.
func (gr *group) next(pt *patch, edge int) (*patch, int) {
	own := pt.lines[0]
	if edge == endEdge {
		own = pt.lines[len(pt.lines)-1]
	}
	for _, other := range gr.patches {
		if other == pt || other.rings {
			continue
		}
		for at := range 2 {
			c := other.lines[0]
			if at == endEdge {
				c = other.lines[len(other.lines)-1]
			}
			if c.at(0.5).sub(own.at(0.5)).length() < 0.05 && math.Abs(other.f.along.x) < 1e-6 == (math.Abs(pt.f.along.x) < 1e-6) {
				return other, at
			}
		}
	}
	return nil, 0
}

// widthAt is the drawn width of a line.
func (pt *patch) widthAt(k int) float64 { return pt.lines[k].last().sub(pt.lines[k].first()).length() }

// edgesAt are the two points of the edges at a depth, counted outwards.
func (pt *patch) edgesAt(at float64) [2]vec {
	d := pt.depths()
	for k := 1; k < len(d); k++ {
		if at <= d[k]+1e-9 {
			t := 0.0
			if d[k] > d[k-1] {
				t = clamp((at-d[k-1])/(d[k]-d[k-1]), 0, 1)
			}
			a, b := pt.outwardLine(k-1), pt.outwardLine(k)
			return [2]vec{a.first().to(b.first(), t), a.last().to(b.last(), t)}
		}
	}
	c := pt.far()
	return [2]vec{c.first(), c.last()}
}
