package draw

import (
	"math"
	"sort"
)

// limb is a branch with the place it takes on the edge it hangs on.
type limb struct {
	branch
	pc   *piece
	x    float64 // -1 to 1 across the edge
	side int     // -1 or +1 at a side, 0 in the middle
	wide float64 // flat width where it joins
}

// fan lays what hangs on one edge of a piece. The frame stands on the middle of that edge and points away.
func (t *table) fan(pt *patch, j *joint, f frame) {
	limbs := t.limbs(pt, j, f)
	var middle *limb
	var sides, flats []limb
	for i, m := range limbs {
		switch {
		case m.around:
			t.edge(pt, m.piece)
		case m.side == 0 && middle == nil:
			middle = &limbs[i]
		case m.pc.closed:
			sides = append(sides, m)
		default:
			flats = append(flats, m)
		}
	}
	switch {
	case middle != nil && pt.pc.closed && divided(*middle, sides):
		m := *middle
		m.side = -sides[0].side
		t.legs(pt, []limb{m, sides[0]}, f)
	case middle != nil && len(sides) > 0 && pt.pc.closed:
		t.yoke(pt, *middle, sides, f)
	case middle != nil:
		t.lay(middle.ending, f)
		t.hangAll(pt, sides, f)
	case len(sides) == 2 && pt.pc.closed:
		t.legs(pt, sides, f)
	default:
		t.fingers(pt, sides, f)
	}
	t.hangAll(pt, flats, f)
}

// divided reports whether a part that goes on and a tube beside it are two legs: each takes about half of the edge.
func divided(middle limb, sides []limb) bool {
	if !middle.rest || len(sides) != 1 || !middle.pc.closed || middle.wide <= 0 {
		return false
	}
	ratio := sides[0].wide / middle.wide
	return ratio > 0.75 && ratio < 1.33
}

// limbs finds where each branch lies across the edge, from left to right.
func (t *table) limbs(pt *patch, j *joint, f frame) []limb {
	limbs := make([]limb, len(j.branches))
	sign := 1.0
	if f.along.y > 0 {
		sign = -1
	}
	if j.wrong != pt.pc.folded { // what is folded begins in the middle of the front, on the other side of its wearer
		sign = -sign
	}
	for i, b := range j.branches {
		m := limb{branch: b, pc: t.g.pieces[b.piece]}
		m.wide = m.pc.outwards(b.edge).widths[0]
		switch {
		case pt.pc.closed && b.both > 0:
			m.x = sign * (1 - 4*b.both) // the round begins at a side
		case pt.pc.closed:
			m.x = sign * across(b.at)
		default:
			m.x = sign * (1 - 2*b.at)
		}
		limbs[i] = m
	}
	central := centre(limbs)
	pair := 0
	for i := range limbs {
		if i != central && limbs[i].pc.closed {
			pair++
		}
	}
	place(limbs, central, sign, pair == 2 && pt.pc.closed)
	sort.SliceStable(limbs, func(a, b int) bool { return limbs[a].x < limbs[b].x })
	return limbs
}

// place gives every limb its side. Of two tubes on a round the one met first lies on the first side, wherever the round
// begins.
func place(limbs []limb, central int, sign float64, pair bool) {
	var tubes []int
	for i := range limbs {
		m := &limbs[i]
		switch {
		case i == central:
			m.side, m.x = 0, 0
			continue
		case m.x < 0:
			m.side = -1
		default:
			m.side = 1
		}
		if m.pc.closed {
			tubes = append(tubes, i)
		}
	}
	if !pair {
		return
	}
	first, second := tubes[0], tubes[1]
	if limbs[second].at < limbs[first].at {
		first, second = second, first
	}
	limbs[first].x, limbs[second].x = sign*0.5, -sign*0.5
	limbs[first].side, limbs[second].side = int(sign), -int(sign)
}

// centre is the limb that goes on in the middle, -1 if none does: what remains of a part after its dividing row, one
// that takes most of the edge, or the largest of three or more that lie on both sides of it.
func centre(limbs []limb) int {
	largest := 0
	for i, m := range limbs {
		if m.rest {
			return i
		}
		if m.share > limbs[largest].share {
			largest = i
		}
	}
	if len(limbs) == 1 && (limbs[0].share > 0.6 || limbs[0].share == 0) {
		return 0
	}
	if len(limbs) == 2 && limbs[largest].share > 0.6 {
		return largest
	}
	if len(limbs) == 3 && limbs[largest].share > 0.4 {
		return largest
	}
	return -1
}

// across is where a place of a round lies when the tube is flat and its start is in the middle of the back: 0 at the
// start, 1 at the first side met, 0 in the middle of the front, -1 at the other side.
func across(at float64) float64 {
	at -= math.Floor(at)
	switch {
	case at < 0.25:
		return 4 * at
	case at < 0.75:
		return 2 - 4*at
	default:
		return 4*at - 4
	}
}

// hangAll hangs limbs on an edge one beside the other, each below its place.
func (t *table) hangAll(pt *patch, limbs []limb, f frame) {
	for _, m := range limbs {
		room := max(0, (lineWidth(pt, f)-m.wide)/2)
		t.limb(m, f.moved(clamp(m.x*lineWidth(pt, f)/2, -room, room), 0))
	}
}

// lineWidth is the width of the edge of a patch that a frame stands on.
func lineWidth(pt *patch, f frame) float64 {
	c := pt.lines[pt.lineAt(f)]
	return c.last().sub(c.first()).length()
}

// fingers stands tubes side by side on an edge and spreads them a little, corner to corner.
func (t *table) fingers(pt *patch, limbs []limb, f frame) {
	if !pt.pc.closed || len(limbs) < 2 {
		t.hangAll(pt, limbs, f)
		return
	}
	const most = 6
	sum := 0.0
	for _, m := range limbs {
		sum += m.wide
	}
	// Where the tubes are wider than the edge, as with stitches added between fingers, they begin a little narrower.
	squeeze := min(1, lineWidth(pt, f)/max(sum, 1e-6))
	angles := make([]float64, len(limbs))
	base := make([]vec, 1, len(limbs)+1) // the corners, in the frame
	for i, m := range limbs {
		angles[i] = degrees(most) * (2*float64(i)/float64(len(limbs)-1) - 1)
		sin, cos := math.Sincos(angles[i])
		base = append(base, base[i].add(vec{cos, -sin}.times(m.wide*squeeze)))
	}
	first, last := base[0], base[len(base)-1]
	shift := vec{-(first.x + last.x) / 2, -(first.y + last.y) / 2}
	pts := []vec{pt.lines[pt.lineAt(f)].first()}
	for i, p := range base {
		base[i] = p.add(shift)
		if i > 0 && i < len(limbs) {
			pts = append(pts, f.at(base[i].x, base[i].y))
		}
	}
	k := pt.lineAt(f)
	pt.forks[pt.end(f)] = true
	pt.lines[k] = straight(append(pts, pt.lines[k].last())...)
	for i, m := range limbs {
		mid := base[i].to(base[i+1], 0.5)
		child := t.limb(m, f.swung(mid.x, mid.y, angles[i]))
		child.forks[0] = true
		if squeeze < 1 {
			sh := m.pc.outwards(m.edge)
			sh.narrow(m.wide*squeeze, math.Tan(degrees(most)))
			child.strip(child.f, sh)
		}
	}
}
