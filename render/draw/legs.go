package draw

import "math"

// The angles by which legs are turned out.
const (
	legsLeast = 7.5
	legsMost  = 10
)

// legs lays two tubes that share the edge of a tube. Their outer edges start at its ends and their inner edges at the
// crotch. Where bridging stitches make a leg wider than half the edge, it is turned out until it fits or until the eye
// would mind; both its edges are as long as its rows are high, and its first rows may be a little too narrow.
func (t *table) legs(pt *patch, limbs []limb, f frame) {
	half := lineWidth(pt, f) / 2
	angle := degrees(legsLeast)
	for _, m := range limbs {
		if m.wide > 0 {
			angle = max(angle, math.Acos(clamp(half/m.wide, 0, 1)))
		}
	}
	angle = min(angle, degrees(legsMost))
	gap, drop := half, 0.0
	for _, m := range limbs {
		gap = min(gap, max(0, half-m.wide*math.Cos(angle)))
	}
	drop = (half - gap) * math.Tan(angle)
	for _, m := range limbs {
		side := float64(m.side)
		chord := (half - gap) / math.Cos(angle)
		g := f.swung(side*(half+gap)/2, drop/2, side*angle)
		outer := t.side
		t.side = m.side
		before := t.hold
		t.hold = &hold{chord: chord, slope: 0.8 * math.Tan(angle), side: side}
		child := t.patch(m.piece, m.edge, g)
		child.mirrored = m.mirrored
		child.forks[0] = true
		t.beyond(child, 1-m.edge, g.moved(0, m.pc.tall()))
		t.hold, t.side = before, outer
	}
	pt.fork(gap, drop, f)
}

// hold keeps the pieces of a leg within a width that grows with the distance from the crotch, and puts what is wider to the
// outer side.
type hold struct {
	chord, slope, side float64
	deep               float64 // how far down the leg the next piece begins
}

// on holds a shape, and the next one from where this one ends.
func (h *hold) on(s *shape, up bool) {
	d := s.depths()
	s.narrow(h.chord+h.slope*h.deep, h.slope)
	s.outwards(h.chord, h.side, up)
	h.deep += d[len(d)-1]
}

// narrow holds the near rows within a width that grows with the distance, so that two legs do not run into one another.
func (s shape) narrow(chord, slope float64) {
	for k, d := range s.depths() {
		if most := chord + slope*d; s.widths[k] > most {
			s.widths[k] = most
			s.exact[k] = k == 0 || k == len(s.widths)-1
		}
	}
}

// outwards moves what is wider than the chord to the outer side, so that the inner edges of two legs do not meet.
func (s *shape) outwards(chord, side float64, up bool) {
	s.lean = make([]float64, len(s.widths))
	for k, w := range s.widths {
		s.lean[k] = side * max(0, w-chord) / 2
		if !up {
			s.lean[k] = -s.lean[k]
		}
	}
}

// fork bends the edge of a patch that a frame stands on down to the crotch.
func (pt *patch) fork(gap, drop float64, f frame) {
	k := pt.lineAt(f)
	pts := []vec{pt.lines[k].first(), f.at(-gap, drop), f.at(gap, drop), pt.lines[k].last()}
	if gap < 1e-9 {
		pts = []vec{pts[0], pts[1], pts[3]}
	}
	pt.lines[k], pt.drop = straight(pts...), drop
	pt.forks[pt.end(f)] = true
}

// end is 0 if a frame stands on the near edge of the patch, 1 if on the far one.
func (pt *patch) end(f frame) int {
	if pt.turn(pt.lineAt(f)) == 0 {
		return 0
	}
	return 1
}

// lineAt is the number of the line at the edge of the patch that a frame stands on.
func (pt *patch) lineAt(f frame) int {
	last := len(pt.lines) - 1
	if pt.lines[0].at(0.5).sub(f.o).length() < pt.lines[last].at(0.5).sub(f.o).length() {
		return 0
	}
	return last
}
