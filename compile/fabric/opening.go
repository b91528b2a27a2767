package fabric

// This file finds the edges of an opening: what a row passed over, and the chain that it made instead.

// OpeningRuns are the edges of an opening as they are met with the right side facing: the places that were passed over under a
// name, the side of the stitch behind them, the other side of the chain over them from its last chain to its first, and the side of
// the stitch before. Not ok if the row made no chain there, so that nothing closes the opening.
func (p *Part) OpeningRuns(name string) (four [4]Run, ok bool) {
	l := p.labels[name]
	if l == nil || !l.skipped || len(l.ids) == 0 {
		return four, false
	}
	var made []ID
	for id := l.ids[len(l.ids)-1] + 1; int(id) < len(p.f.Elems) && p.f.Elems[id].Row <= l.row; id++ {
		if el := &p.f.Elems[id]; el.Row == l.row && el.Kind != Slip {
			made = append(made, id)
		}
	}
	for i, id := range made {
		if p.f.Elems[id].Kind != Space || !p.f.overs(made, i, l.ids) {
			continue
		}
		n := len(made)
		before, behind := made[(i-1+n)%n], made[(i+1)%n]
		four[0] = Run{Places: tops(l.ids)}
		four[1] = Run{Places: []Place{{ID: behind, Asp: Before}}}
		under, f := p.f.below([]ID{id})
		if f != nil {
			return four, false
		}
		four[2] = Run{Places: under}
		four[3] = Run{Places: []Place{{ID: before, Asp: After}}}
		return four, true
	}
	return four, false
}

// overs reports whether the space at i of a row hangs over places: the stitches before and behind it stand next to them.
func (f *Fabric) overs(made []ID, i int, ids []ID) bool {
	n := len(made)
	lo, hi := min(ids[0], ids[len(ids)-1]), max(ids[0], ids[len(ids)-1])
	before, behind := f.Elems[made[(i-1+n)%n]].Into2.ID, f.Elems[made[(i+1)%n]].Into.ID
	return before == lo-1 || behind == hi+1 || before == hi+1 || behind == lo-1
}

// NameAt gives places of the live edge a name, by where they stand.
func (p *Part) NameAt(name string, at []int) {
	l := &label{row: p.edge.serial}
	for _, i := range at {
		if i >= 0 && i < len(p.edge.p) {
			l.ids = append(l.ids, p.edge.p[i])
		}
	}
	p.labels[name] = l
}

// Begun is the number of the first place of the edge the part started along.
func (p *Part) Begun() ID {
	if p.begun == 0 || len(p.edge.p) == 0 {
		return -1
	}
	return p.edge.p[0]
}
