package fabric

import (
	"slices"

	"ovillo/compile/plan"
)

// This file works into places that are reached by name: on the edge at hand, on other rows and parts, and below or beside
// what stands there.

// named works into places by name.
func (r *row) named(op *Op, at func(Place) *Fault, next func(Takes) *Fault) *Fault {
	t := &op.Target
	p := r.p
	if t.Ref.Part != "" {
		if p = r.f.Parts[t.Ref.Part]; p == nil {
			return fault(Unknown, 0, 0, t.Ref.Part)
		}
	}
	if p.halted && p != r.p {
		r.p.halted = true
		return nil
	}
	if m := p.marks[t.Ref.Name]; m != nil && t.Kind == Named && p == r.p {
		return r.inMarker(m, t.Ref.Name, at, next)
	}
	ids, f := p.ids(t.Ref.Name)
	if f != nil {
		return f
	}
	switch {
	case t.Kind == NextOf:
		return r.nextOf(op, ids, at)
	case t.Kind == NextNamed:
		return r.nextNamed(op, ids, next)
	}
	if t.Kind == Named && t.Ref.Pick == plan.Whole && len(ids) > 1 && r.alone(ids) {
		return next(Stitches | Spaces) // in corner: the one that comes next
	}
	if ids, f = pick(ids, t.Ref); f != nil {
		return f
	}
	if r.cur.Ref == nil {
		r.cur.Ref = ids
	}
	switch t.Kind {
	case Below:
		return r.belowOf(ids, op, at)
	case Beside:
		asp := After
		if t.Ref.Pick == plan.FirstOf || t.Ref.Pick == plan.NthOf && t.Ref.Nth == 1 {
			asp = Before
		}
		if len(ids) != 1 {
			return fault(ManyPlaces, 1, len(ids), t.Ref.Name)
		}
		r.f.use(ids[0])
		r.res.Named++
		return at(Place{ID: ids[0], Asp: asp})
	case Through:
		return r.through(op, ids, at)
	case Named:
		if len(ids) != 1 {
			return fault(ManyPlaces, 1, len(ids), t.Ref.Name)
		}
		return r.run(ids, t, at, next, true)
	}
	return r.run(ids, t, at, next, false)
}

// alone reports whether the next place is one of several that stand apart, such as corners: not part of a run.
func (r *row) alone(ids []ID) bool {
	has := func(i int) bool { return i >= 0 && i < len(r.places) && slices.Contains(ids, r.places[i]) }
	return has(r.c) && !has(r.c-1) && !has(r.c+1)
}

func pick(ids []ID, ref Ref) ([]ID, *Fault) {
	n := len(ids)
	switch {
	case n == 0:
		return nil, fault(Unknown, 0, 0, ref.Name)
	case ref.Pick == plan.FirstOf:
		return ids[:1], nil
	case ref.Pick == plan.LastOf:
		return ids[n-1:], nil
	case ref.Pick == plan.NthOf && (ref.Nth > n || ref.Nth < 1):
		return nil, fault(TooFew, ref.Nth, n, ref.Name)
	case ref.Pick == plan.NthOf:
		return ids[ref.Nth-1 : ref.Nth], nil
	}
	return ids, nil
}

func (r *row) inMarker(m *marker, name string, at func(Place) *Fault, next func(Takes) *Fault) *Fault {
	switch {
	case m.edge != r.p.edge.serial || m.gap:
		return fault(Lost, 0, 0, name)
	case m.at > r.c:
		return fault(Ahead, 0, m.at-r.c, name)
	case m.at < r.c:
		r.f.use(r.places[m.at])
		return at(Place{ID: r.places[m.at]})
	}
	return next(Stitches | Spaces)
}

// nextNamed takes the next N places of a run, passing stitches but never another space.
func (r *row) nextNamed(op *Op, ids []ID, next func(Takes) *Fault) *Fault {
	in := map[ID]bool{}
	for _, id := range ids {
		in[id] = true
	}
	for k := r.num(op.N, 1); k > 0; k-- {
		from := r.c
		for r.c < len(r.places) && !in[r.places[r.c]] {
			if el := r.el(r.c); el.Kind == Space {
				return fault(OtherSpace, 0, int(el.N), op.Target.Ref.Name)
			}
			r.move(1, passed)
		}
		r.walked(r.c - from)
		if r.c >= len(r.places) {
			return fault(NotHere, 0, 0, op.Target.Ref.Name)
		}
		if f := next(Stitches | Spaces); f != nil {
			return f
		}
	}
	return nil
}

// run works into places by name: those that come next on this edge are taken, those elsewhere are free.
func (r *row) run(ids []ID, t *Target, at func(Place) *Fault, next func(Takes) *Fault, whole bool) *Fault {
	here := map[ID]int{}
	for i, id := range r.places {
		here[id] = i
	}
	if i, ok := here[ids[0]]; ok && !whole {
		if j := here[ids[len(ids)-1]]; j < i {
			ids = reversed(ids) // a run is walked the way the row goes
		}
	}
	for _, id := range ids {
		i, ok := here[id]
		var f *Fault
		switch {
		case !ok:
			f = r.elsewhere(id, whole, at)
		case i > r.c:
			f = fault(Ahead, 0, i-r.c, t.Ref.Name)
		case i < r.c:
			r.f.use(id)
			r.note(&r.f.Elems[id], Place{ID: id})
			f = at(Place{ID: id})
		case whole:
			f = next(Stitches | Spaces)
		default:
			f = next(Stitches | InChains)
			for f == nil && r.sub > 0 {
				f = next(Stitches | InChains)
			}
		}
		if f != nil {
			return f
		}
	}
	return nil
}

// elsewhere works into a place that is not on this edge: one left unworked here, or one of another row or part.
func (r *row) elsewhere(id ID, whole bool, at func(Place) *Fault) *Fault {
	e := &r.p.edge
	if slices.Contains(e.post, id) || slices.Contains(e.pre, id) {
		r.p.regained[id] = true
	}
	if i := slices.Index(e.post, id); i >= r.un {
		e.post = slices.Delete(slices.Clone(e.post), i, i+1)
	} else if i := slices.Index(e.pre, id); i >= 0 {
		e.pre = slices.Delete(slices.Clone(e.pre), i, i+1)
	}
	r.f.use(id)
	r.res.Named++
	el := &r.f.Elems[id]
	if el.Kind == Space && !whole {
		for k := int32(0); k < el.N; k++ {
			p := Place{ID: id, Asp: OneChain, Sub: k}
			r.note(el, p)
			if f := at(p); f != nil {
				return f
			}
		}
		return nil
	}
	r.note(el, Place{ID: id})
	return at(Place{ID: id})
}

// belowOf works into what lies under the stitches of a run.
func (r *row) belowOf(ids []ID, op *Op, at func(Place) *Fault) *Fault {
	places, f := r.f.below(ids)
	if f != nil {
		f.Name = op.Target.Ref.Name
		return f
	}
	for _, p := range places {
		r.f.use(p.ID)
		r.res.Named++
		r.note(&r.f.Elems[p.ID], p)
		if f := at(p); f != nil {
			return f
		}
	}
	return nil
}

// through works each next place together with the matching place of another run.
func (r *row) through(op *Op, ids []ID, at func(Place) *Fault) *Fault {
	if have := len(r.places) - r.c; have != len(ids) {
		return fault(Mismatch, have, len(ids), op.Target.Ref.Name)
	}
	for _, id := range ids {
		p, f := r.take(Stitches|Spaces, 1, true)
		if f != nil {
			return f
		}
		r.f.use(id)
		if f := at(p); f != nil {
			return f
		}
	}
	return nil
}
