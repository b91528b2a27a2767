package draw

import (
	"math"

	"ovillo/compile/plan"
)

// sideBand is a part that is worked flat along the ends of the rows of others, as a front band is.
type sideBand struct {
	piece int
	along []plan.Origin // the sides it is worked along, in the order of its own first row
}

// sideBands are the parts that are worked along sides alone, and in one piece.
func (g *graph) sideBands() []sideBand {
	var bands []sideBand
	for i, part := range g.p.Parts {
		if len(g.of[i]) != 1 || g.pieces[g.of[i][0]].closed || len(part.From) == 0 || g.isBranch(g.of[i][0]) {
			continue
		}
		b := sideBand{piece: g.of[i][0], along: part.From}
		for _, o := range part.From {
			if o.Kind != plan.RefRowEnds || o.Part < 0 || o.Part >= len(g.p.Parts) || o.Part == i {
				b.along = nil
				break
			}
		}
		if b.along != nil {
			bands = append(bands, b)
		}
	}
	return bands
}

func isBand(bands []sideBand, piece int) bool {
	for _, b := range bands {
		if b.piece == piece {
			return true
		}
	}
	return false
}

// join lays a band along the sides it is worked on. It reports whether these are there, hang together and are about as long as
// the band.
func (l *layout) join(b sideBand) bool {
	const most = 0.12 // of its length that a band may be longer or shorter: what it is eased in
	pc := l.g.pieces[b.piece]
	gr, base := l.sideOf(b.along)
	long := 0.0
	for i := 1; i < len(base); i++ {
		long += base[i].sub(base[i-1]).length()
	}
	if gr == nil || math.Abs(long-pc.start) > most*pc.start {
		return false
	}
	pt := &patch{pc: pc, index: b.piece, outward: true, band: true}
	pt.free = [2]bool{false, !l.g.attached(ending{b.piece, endEdge})}
	from, to := base[0], base[len(base)-1]
	pt.f = frame{o: from.to(to, 0.5), across: to.sub(from).unit(), along: to.sub(from).unit().normal().times(-1)}
	if folded := l.g.p.Folded(b.along[0].Part); folded {
		// The bands of two fronts lie on each other, half on each front.
		if l.onFront(gr) {
			pt.f.across, pt.f.along = pt.f.across.times(-1), pt.f.along.times(-1)
			base = straight(base...).turned().pts
		}
		pt.f.o = pt.f.o.sub(pt.f.along.times(pc.tall() / 2))
		for i := range base {
			base[i] = base[i].sub(pt.f.along.times(pc.tall() / 2))
		}
		pt.over = true
	}
	away := 0.0
	pt.lines = append(pt.lines, straight(base...))
	for _, r := range pc.rows {
		away += r.high
		pt.lines = append(pt.lines, straight(beside(base, away)...))
	}
	gr.patches = append(gr.patches, pt)
	return true
}

// onFront reports whether a band lies on the opening of a group already.
func (l *layout) onFront(gr *group) bool {
	for _, pt := range gr.patches {
		if pt.over {
			return true
		}
	}
	return false
}

// beside is a line so far to the left of another, seen along it.
func beside(base []vec, away float64) []vec {
	out := make([]vec, len(base))
	for i := range base {
		var sum vec
		var first vec
		for k := max(1, i); k <= min(i+1, len(base)-1); k++ {
			n := base[k].sub(base[k-1]).unit().normal().times(-1)
			if sum = sum.add(n); k == max(1, i) {
				first = n
			}
		}
		dir := sum.unit()
		// At a corner the line is as far from both of its sides.
		out[i] = base[i].add(dir.times(away / max(dir.dot(first), 0.5)))
	}
	return out
}

// sideOf is the line of the sides that some runs of row ends make together, and the group they are on. The fabric lies to the
// right of the line, seen along it.
func (l *layout) sideOf(runs []plan.Origin) (*group, []vec) {
	var on *group
	var base []vec
	for _, o := range runs {
		gr, pts, toRight := l.ends(o)
		if gr == nil || on != nil && gr != on {
			return nil, nil
		}
		on = gr
		if !toRight {
			pts = straight(pts...).turned().pts
		}
		switch {
		case base == nil:
			base = pts
		case base[len(base)-1].sub(pts[0]).length() < pts[len(pts)-1].sub(base[0]).length():
			base = append(base, pts...)
		default:
			base = append(pts, base...)
		}
	}
	if len(base) < 2 {
		return nil, nil
	}
	return on, slim(base, 0.05)
}

// ends is the side of a run of row ends as it lies on paper, in the order of work, and whether the fabric is then on its right.
func (l *layout) ends(o plan.Origin) (*group, []vec, bool) {
	from, to := inSize(o.From, l.g.size), inSize(o.To, l.g.size)
	for _, gr := range l.groups {
		var pts []vec
		toRight := false
		for _, pt := range gr.patches {
			if pt.pc.part != o.Part || pt.rings || pt.band {
				continue
			}
			up := pt.worked().y < 0
			rightSide := (o.Side == plan.RightEdge) == up // of the paper
			for k, line := range pt.lines {
				row := pt.pc.first + k // rows below the line
				if row < min(from, to)-1 || row > max(from, to) {
					continue
				}
				switch {
				case pt.pc.folded:
					pts = append(pts, pt.middle(k))
				case rightSide:
					pts = append(pts, line.last())
				default:
					pts = append(pts, line.first())
				}
			}
			// Going up along its right side one has the fabric on the left.
			toRight = up != rightSide
			if pt.pc.folded {
				toRight = !up // the opening is followed downwards
			}
		}
		if len(pts) > 1 {
			return gr, pts, toRight
		}
	}
	return nil, nil, false
}

// middle is where a line of a patch crosses the middle of the piece.
func (pt *patch) middle(k int) vec {
	d := pt.depths()
	return pt.f.at(0, d[pt.turn(k)])
}

// opening is the line at which the two fronts of a folded piece meet.
func (pt *patch) opening() curve { return straight(pt.middle(0), pt.middle(len(pt.lines)-1)) }
