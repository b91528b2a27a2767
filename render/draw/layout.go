package draw

import (
	"slices"

	"ovillo/compile/plan"
)

// layout is the pattern on the table: the patches of each group, the group hanging from (0, 0).
type layout struct {
	g      *graph
	groups []*group
	times  map[*group]int // how many of a group are made, where alike ones are drawn once; nil: as the parts say
}

// group is pieces that hang together.
type group struct {
	patches []*patch
	down    bool // its first piece grows down
}

func (gr *group) bounds() box {
	var b box
	for _, pt := range gr.patches {
		b.join(pt.bounds())
	}
	return b
}

// lie lays a pattern out in the size that is shown.
func lie(p *plan.Pattern, read rowsOf) (*layout, error) {
	g, err := connect(p, read)
	if err != nil {
		return nil, err
	}
	return g.lie(), nil
}

// lie lays the pieces out.
func (g *graph) lie() *layout {
	l := &layout{g: g}
	bands := g.sideBands()
	drawn := make([]bool, len(g.pieces))
	late := false
	for i := range len(g.pieces) * 2 {
		if i == len(g.pieces) {
			// Bands along sides come when everything else lies on the table. One whose side is not there is drawn by itself.
			for _, b := range bands {
				drawn[b.piece] = l.join(b)
			}
			for k := range g.pieces {
				if !drawn[k] && g.turned(k) >= 0 {
					drawn[k] = l.turn(k)
				}
			}
			late = true
		}
		i %= len(g.pieces)
		if drawn[i] || !late && (isBand(bands, i) || g.turned(i) >= 0) {
			continue
		}
		root := g.root(g.group[i], drawn)
		gr := &group{down: g.down(root)}
		along := vec{0, -1}
		if gr.down {
			along.y = 1
		}
		t := &table{g: g, gr: gr, drawn: drawn, seen: map[*joint]bool{}}
		t.first(root, frame{across: vec{1, 0}, along: along})
		l.groups = append(l.groups, gr)
	}
	slices.SortStableFunc(l.groups, func(a, b *group) int { return g.order(a) - g.order(b) })
	return l
}

// order is where a group stands among others: in the order of work, but a sole below what stands on it.
func (g *graph) order(gr *group) int {
	for _, on := range g.soles {
		if gr.first() == on[0] {
			return 2*on[1] + 1
		}
	}
	return 2 * gr.first()
}

// first is the number of the first piece of a group.
func (gr *group) first() int {
	least := gr.patches[0].index
	for _, pt := range gr.patches {
		least = min(least, pt.index)
	}
	return least
}

// root is the piece a group is laid from: the one that most branches hang on, or else the first that hangs on none.
func (g *graph) root(id int, drawn []bool) int {
	root, most := -1, 1
	for _, j := range g.joints {
		if i := j.trunk.piece; g.group[i] == id && !drawn[i] && len(j.branches) > most {
			root, most = i, len(j.branches)
		}
	}
	if root >= 0 {
		return root
	}
	for i := range g.pieces {
		if g.group[i] != id || drawn[i] {
			continue
		}
		if !g.isBranch(i) {
			return i
		}
		if root < 0 {
			root = i
		}
	}
	return root
}

// table lays the pieces of one group.
type table struct {
	g     *graph
	gr    *group
	drawn []bool
	seen  map[*joint]bool
	side  int   // of the branch that is being laid
	hold  *hold // what keeps the pieces of a leg off the other one; nil if nothing does
}

// first lays the root: its rows run along the frame, and what hangs on its start goes the other way.
func (t *table) first(i int, f frame) {
	pt := t.patch(i, startEdge, f)
	if pt.rings {
		t.edging(pt)
		return
	}
	t.beyond(pt, endEdge, f.moved(pt.aside(), pt.pc.tall()))
	t.beyond(pt, startEdge, frame{o: f.o, across: f.across, along: f.along.times(-1)})
}

// patch lays one piece outwards from one of its edges.
func (t *table) patch(i, from int, f frame) *patch {
	pc := t.g.pieces[i]
	pt := &patch{pc: pc, index: i, f: f, outward: from == startEdge, side: t.side}
	pt.free = [2]bool{!t.g.attached(ending{i, startEdge}), !t.g.attached(ending{i, endEdge})}
	t.gr.patches = append(t.gr.patches, pt)
	t.drawn[i] = true
	if t.g.ringed(i) {
		pt.rings, pt.outward = true, true
		pt.lines = rings(f.o, pc)
		return pt
	}
	s := pc.outwards(from)
	if t.hold != nil {
		t.hold.on(&s, f.along.y < 0 == pt.outward)
	}
	pt.strip(f, s)
	return pt
}

// beyond lays what hangs on an edge of a piece, and what the piece itself hangs on there. The frame stands on that edge
// and points away from the piece.
func (t *table) beyond(pt *patch, edge int, f frame) {
	for _, j := range t.g.joints {
		if t.seen[j] {
			continue
		}
		if j.trunk == (ending{pt.index, edge}) {
			t.seen[j] = true
			t.fan(pt, j, f)
			continue
		}
		for _, b := range j.branches {
			if b.ending != (ending{pt.index, edge}) || t.drawn[j.trunk.piece] {
				continue
			}
			t.seen[j] = true
			t.lay(j.trunk, f)
			break
		}
	}
}

// lay lays a piece and all beyond it outwards from one of its edges.
func (t *table) lay(e ending, f frame) *patch {
	pt := t.patch(e.piece, e.edge, f)
	if !pt.rings {
		t.beyond(pt, 1-e.edge, f.moved(pt.aside(), pt.pc.tall()))
	}
	return pt
}

// aside is how far the middle of the far edge of a strip lies to the right of the frame: what leans, or is shaped at one side.
func (pt *patch) aside() float64 {
	if pt.pc.lean == nil || pt.pc.wedge != nil {
		return 0
	}
	c := pt.far()
	return c.first().to(c.last(), 0.5).sub(pt.f.o).dot(pt.f.across)
}

// limb lays a branch and all beyond it at the side it belongs to.
func (t *table) limb(m limb, f frame) *patch {
	outer := t.side
	if m.side != 0 {
		t.side = m.side
	}
	pt := t.lay(m.ending, f)
	t.side = outer
	pt.mirrored = m.mirrored
	return pt
}

// attached reports whether anything that is shown is joined at an edge.
func (g *graph) attached(e ending) bool {
	for _, j := range g.joints {
		for _, b := range j.branches {
			if j.trunk == e && g.shown(b.piece) || b.ending == e && g.shown(j.trunk.piece) {
				return true
			}
		}
	}
	return false
}

// shown reports whether a piece is drawn.
func (g *graph) shown(piece int) bool { return g.show.Shows(g.pieces[piece].part) }

// isBranch reports whether a piece hangs on another.
func (g *graph) isBranch(i int) bool {
	for _, j := range g.joints {
		for _, b := range j.branches {
			if b.piece == i {
				return true
			}
		}
	}
	return false
}

// joint is the joint at an edge, nil if nothing hangs there.
func (g *graph) joint(e ending) *joint {
	for _, j := range g.joints {
		if j.trunk == e {
			return j
		}
	}
	return nil
}
