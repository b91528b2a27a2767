package fabric

import (
	"maps"
	"slices"

	"ovillo/compile/stitch"
)

// This file joins motifs to one another while they are worked: the last round of a motif with its joins, and the
// rectangle that many of them make.

// Copy is the part as it stands, to work a row on it that the part itself does not get.
func (p *Part) Copy() *Part {
	p.forget()
	c := *p
	c.edge.p = slices.Clone(p.edge.p)
	c.labels, c.marks, c.spans = maps.Clone(p.labels), maps.Clone(p.marks), maps.Clone(p.spans)
	return &c
}

// joinSpace makes a chain space in which a slip stitch stands in place of some of the chains. It stays one place, and counts
// as many chains as it would have without the join.
func (r *row) joinSpace(op *Op) (int, *Fault) {
	n, k := r.num(op.N, 0), r.num(op.Per, 1)
	if n < k {
		return 0, fault(ShortSpace, k, n, op.Label)
	}
	if f := r.make(&Elem{Kind: Space, N: int32(n), Into: nowhere, Into2: nowhere}); f != nil {
		return 0, f
	}
	r.joins = append(r.joins, r.made[len(r.made)-1])
	return n, nil
}

// JoinedSpaces are the spaces of the last row that are joined to motifs beside it, in the order of making.
func (p *Part) JoinedSpaces() []ID { return p.joins }

// The corners of a motif as it lies with the right side facing, and the side behind each of them, in the order in which a
// round meets them.
const (
	topRight = iota // behind it the top side
	topLeft
	bottomLeft
	bottomRight
)

// MotifRound is the last round of a motif as it was worked, with joins on some sides.
type MotifRound struct {
	Made    []ID
	Corners [4]int // indices of the corners in Made
	Joined  []ID   // the spaces that are joined
}

// Grid is what came of joining motifs.
type Grid struct {
	Kinds     [3]int // motifs that met no other when they were worked, one, two
	Shared    int    // sides that two motifs share
	AtSides   int    // joins in spaces of sides
	AtCorners int    // joins at corners
}

// placed is a motif in its place: its corners, and the places of the side behind each.
type placed struct {
	corner [4]ID
	side   [4][]ID
	joined map[ID]bool // spaces worked with a join
}

// The names that the outer edge of joined motifs has from the start.
const (
	OuterCorner = "outer_corner"
	JointName   = "joint"
)

// JoinMotifs lays motifs beside one another, down rows of across each, worked row by row and each row from the left. The
// rounds are the last round of a motif that meets none, one and two others: with joins on its first side, and on its first
// two. The part stands for the whole: its edge is the outer edge, from the right end of the top side on, and has the labels
// of the places that from gives it.
func (p *Part) JoinMotifs(across, down int, rounds [3]*MotifRound, names map[string][]ID) (*Grid, *Fault) {
	if f := p.room(across * down * len(rounds[0].Made)); f != nil {
		return nil, f
	}
	g, all := &Grid{}, make([]*placed, across*down)
	at := func(r, c int) *placed {
		if r < 0 || c < 0 || c >= across || r >= down {
			return nil
		}
		return all[r*across+c]
	}
	origin := map[ID]ID{} // what a place of the whole was copied from
	row := p.nextRow()
	for r := range down {
		for c := range across {
			kind, first := 0, topRight
			if r > 0 {
				kind++
			}
			if c > 0 {
				kind++
			}
			if r == 0 && c > 0 {
				first = topLeft // its left side is the one that is joined
			}
			m := p.place(rounds[kind], first, row, origin)
			all[r*across+c] = m
			g.Kinds[kind]++
			g.Shared += kind
			if f := p.join(g, m, at, r, c); f != nil {
				return nil, f
			}
		}
	}
	p.edge = edge{closed: true, serial: row}
	p.outer(at, across, down, origin, names)
	return g, nil
}

// place makes the elements of one motif, first being the corner that its round meets first.
func (p *Part) place(rd *MotifRound, first int, row int32, origin map[ID]ID) *placed {
	m := &placed{joined: map[ID]bool{}}
	n := len(rd.Made)
	for k := range 4 {
		from, to := rd.Corners[k], rd.Corners[(k+1)%4]
		if to <= from {
			to += n
		}
		for i := from; i < to; i++ {
			old := rd.Made[i%n]
			el := p.f.Elems[old]
			el.Row, el.Used = row, 0
			id := p.f.add(&el)
			origin[id] = old
			if slices.Contains(rd.Joined, old) {
				m.joined[id] = true
			}
			q := (first + k) % 4
			if i == from {
				m.corner[q] = id
			} else {
				m.side[q] = append(m.side[q], id)
			}
		}
	}
	return m
}

// join works the joins of a motif into the motifs beside it. In a corner where motifs meet already it goes into the one
// across that corner.
func (p *Part) join(g *Grid, m *placed, at func(r, c int) *placed, r, c int) *Fault {
	above, left := at(r-1, c), at(r, c-1)
	for q, id := range m.corner {
		if !m.joined[id] {
			continue
		}
		var to ID = -1
		for _, o := range []struct {
			m      *placed
			corner int
			here   int
		}{
			{at(r-1, c+1), bottomLeft, topRight}, {above, bottomRight, topRight},
			{at(r-1, c-1), bottomRight, topLeft}, {above, bottomLeft, topLeft}, {left, topRight, topLeft},
			{left, bottomRight, bottomLeft},
		} {
			if o.m != nil && o.here == q && to < 0 {
				to = o.m.corner[o.corner]
			}
		}
		if to < 0 {
			return fault(Mismatch, 1, 0, "")
		}
		p.slipInto(to)
		g.AtCorners++
	}
	for q, o := range [2]*placed{topRight: above, topLeft: left} {
		if o == nil {
			continue
		}
		own, other := p.f.spaces(m.side[q]), p.f.spaces(o.side[(q+2)%4])
		for i, id := range own {
			switch {
			case !m.joined[id]:
			case len(own) != len(other):
				return fault(Mismatch, len(own), len(other), "")
			default:
				p.slipInto(other[len(other)-1-i]) // the other motif was worked past this side the other way
				g.AtSides++
			}
		}
	}
	return nil
}

// slipInto makes the slip stitch of a join.
func (p *Part) slipInto(to ID) {
	at := Place{ID: to}
	p.f.add(&Elem{Kind: Slip, Form: p.f.intern(stitch.Form{ID: slip, Together: 1}), Into: at, Into2: at, Row: p.f.rows})
	p.f.use(to)
}

func (f *Fabric) spaces(ids []ID) []ID {
	return slices.DeleteFunc(slices.Clone(ids), func(id ID) bool { return f.Elems[id].Kind != Space })
}

// walkAround calls side with each outer side of the whole, in the order in which a round meets them from the right end of
// the top side, and corner with each corner space behind one, joint or not.
func walkAround(at func(r, c int) *placed, across, down int, side func([]ID), corner func(id ID, joint bool)) {
	type step struct{ r, c int }
	walk := func(q int, steps []step) {
		for i, s := range steps {
			m, end := at(s.r, s.c), (q+1)%4
			side(m.side[q])
			last := i == len(steps)-1
			corner(m.corner[end], !last)
			if !last {
				corner(at(steps[i+1].r, steps[i+1].c).corner[q], true)
			}
		}
	}
	var top, left, bottom, right []step
	for c := range across {
		top, bottom = append(top, step{0, across - 1 - c}), append(bottom, step{down - 1, c})
	}
	for r := range down {
		left, right = append(left, step{r, 0}), append(right, step{down - 1 - r, across - 1})
	}
	walk(topRight, top)
	walk(topLeft, left)
	walk(bottomLeft, bottom)
	walk(bottomRight, right)
}

// outer makes the outer edge of the whole, with its names.
func (p *Part) outer(at func(r, c int) *placed, across, down int, origin map[ID]ID, names map[string][]ID) {
	e := &p.edge
	add := func(name string, id ID) {
		l := p.labels[name]
		if l == nil {
			l = &label{row: e.serial}
			p.labels[name] = l
		}
		l.ids = append(l.ids, id)
	}
	of := map[ID][]string{}
	for name, ids := range names {
		for _, id := range ids {
			of[id] = append(of[id], name)
		}
	}
	put := func(id ID) {
		e.p = append(e.p, id)
		for _, name := range of[origin[id]] {
			add(name, id)
		}
	}
	walkAround(at, across, down, func(ids []ID) {
		for _, id := range ids {
			put(id)
		}
	}, func(id ID, joint bool) {
		put(id)
		if joint {
			add(JointName, id)
		} else {
			add(OuterCorner, id)
		}
	})
}

// AroundRun is the outer edge of joined motifs, as another part meets it, with its names.
func (p *Part) AroundRun() Run {
	r := p.EdgeRun()
	at := map[ID]int{}
	for i, id := range p.edge.p {
		at[id] = i
	}
	r.Names = map[string][]int{}
	for name, l := range p.labels {
		for _, id := range l.ids {
			r.Names[name] = append(r.Names[name], at[id])
		}
	}
	return r
}
