package fabric

import (
	"maps"
	"slices"
	"strings"
)

// This file finds how far an instruction goes.

// bound is the place of the edge up to which an instruction goes.
func (r *row) bound(b *Bound) (int, *Fault) {
	n := len(r.places)
	switch b.Kind {
	case ToEnd:
		return n, nil
	case ToLast:
		want := r.num(b.N, 1)
		if i := n - want; i >= r.c {
			return i, nil
		}
		return 0, fault(TooFew, want, n-r.c, "")
	case ToSpace:
		for i := r.c; i < n; i++ {
			if r.el(i).Kind == Space {
				return i, nil
			}
		}
		return 0, fault(NoSpace, 0, 0, "")
	}
	i, f := r.find(b)
	if f != nil {
		return 0, f
	}
	if i -= r.num(b.N, 0); i < r.c {
		return 0, fault(Behind, 0, r.c-i, b.Name)
	}
	return i, nil
}

// find is where a marker, or the next place of a label, stands on the edge that is worked along.
func (r *row) find(b *Bound) (int, *Fault) {
	e := &r.p.edge
	if b.Kind == ToMarker {
		var best *marker
		for _, name := range slices.Sorted(maps.Keys(r.p.marks)) {
			m := r.p.marks[name]
			if m.edge == e.serial && m.at >= r.c && (best == nil || m.at < best.at) && !strings.HasPrefix(name, hidden) {
				best, r.met = m, name
			}
		}
		if best == nil {
			return 0, fault(NoMarker, 0, 0, "")
		}
		return r.meet(best), nil
	}
	if m := r.p.marks[b.Name]; m != nil {
		if m.edge != e.serial {
			return 0, fault(Lost, 0, 0, b.Name)
		}
		return r.meet(m), nil
	}
	ids, f := r.p.ids(b.Name)
	if f != nil {
		return 0, f
	}
	in := map[ID]bool{}
	for _, id := range ids {
		in[id] = true
	}
	behind := false
	for i, id := range r.places {
		if in[id] {
			if i >= r.c {
				return i, nil
			}
			behind = true
		}
	}
	if behind {
		return 0, fault(Behind, 0, 0, b.Name)
	}
	return 0, fault(NotHere, 0, 0, b.Name)
}

// meet notes how a marker stands and returns where.
func (r *row) meet(m *marker) int {
	if m.gap {
		r.cur.Met |= MetGap
	} else {
		r.cur.Met |= MetStitch
	}
	return m.at
}
