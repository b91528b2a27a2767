package fabric

import "slices"

// This file finds the edges of an opening: what a row passed over, and the chain that it made instead.

// OpeningRuns are the edges of an opening as they are met with the right side facing: the places that were passed over under a
// name, the side of the stitch behind them, the other side of the chain over them from its last chain to its first, and the side of
// the stitch before. Not ok if the row made no chain there, so that nothing closes the opening.
func (p *Part) OpeningRuns(name string) (four [4]Run, ok bool) {
	l := p.labels[name]
	if l == nil || !l.skipped || len(l.ids) == 0 {
		return four, false
	}
	over := p.over(l)
	if len(over) == 0 {
		return four, false
	}
	o := over[0]
	under, f := p.f.below([]ID{o.space})
	if f != nil {
		return four, false
	}
	four[0] = Run{Places: tops(l.ids)}
	four[1] = Run{Places: []Place{{ID: o.behind, Asp: Before}}}
	four[2] = Run{Places: under}
	four[3] = Run{Places: []Place{{ID: o.before, Asp: After}}}
	return four, true
}

// ChainsOver are the chain spaces that hang over places that were passed over under a name.
func (p *Part) ChainsOver(name string) []ID {
	var out []ID
	if l := p.labels[name]; l != nil && l.skipped && len(l.ids) > 0 {
		for _, o := range p.over(l) {
			out = append(out, o.space)
		}
	}
	return out
}

// bridge is a chain space over an opening, between the stitch made before it and the one behind it.
type bridge struct{ space, before, behind ID }

// over finds the chain spaces that the row which passed places over made next to them: the stitch before or behind such a space
// was worked into their neighbour. Places of a row are numbered in the order of making, so neighbours differ by one.
func (p *Part) over(l *label) []bridge {
	lo, hi := slices.Min(l.ids), slices.Max(l.ids)
	var made []ID
	for id := hi + 1; int(id) < len(p.f.Elems) && p.f.Elems[id].Row <= l.row; id++ {
		if el := &p.f.Elems[id]; el.Row == l.row && el.Kind != Slip {
			made = append(made, id)
		}
	}
	var out []bridge
	next := func(id ID) bool { return id == lo-1 || id == hi+1 }
	for i, id := range made {
		n := len(made)
		b := bridge{id, made[(i-1+n)%n], made[(i+1)%n]}
		if el := &p.f.Elems[id]; el.Kind == Space && (next(p.f.Elems[b.before].Into2.ID) || next(p.f.Elems[b.behind].Into.ID)) {
			out = append(out, b)
		}
	}
	return out
}

// Begun is the number of the first place of the edge the part started along.
func (p *Part) Begun() ID {
	if p.begun == 0 || len(p.edge.p) == 0 {
		return -1
	}
	return p.edge.p[0]
}
