package fabric

import (
	"slices"
)

// each carries out do for every place of an instruction's target, and returns how many there were. single says that
// exactly one stitch goes into each.
func (r *row) each(op *Op, single bool, do func(Place) *Fault) (int, *Fault) {
	n := 0
	per := 1
	if !single {
		per = 2
	}
	at := func(p Place) *Fault {
		r.last, r.worked = p, true
		n++
		if f := do(p); f != nil {
			return f
		}
		r.settle()
		return nil
	}
	next := func(t Takes) *Fault {
		if op.Target.Of != nil {
			t |= Spaces
		}
		p, f := r.takeOf(t, op, per, single)
		if f != nil {
			return f
		}
		return at(p)
	}
	t := &op.Target
	takes := t.Takes
	if takes == 0 {
		takes = Stitches
	}
	var f *Fault
	switch t.Kind {
	case Next:
		want := r.num(op.N, 1)
		n, f = r.stretch(op, single, want)
		for i := n; i < want && f == nil; i++ {
			if f = next(takes); f != nil && f.Kind == TooFew {
				f.Need, f.Have = want, i
			}
		}
	case Each:
		f = r.eachTo(t, takes, func(stop int) *Fault {
			k, f := r.stretch(op, single, stop-r.c)
			if n += k; f == nil && r.c < stop {
				f = next(takes)
			}
			return f
		})
	case First:
		switch {
		case len(r.places) == 0:
			f = fault(TooFew, 1, 0, "")
		case r.c == 0 && r.sub == 0:
			f = next(Stitches | Spaces)
		default:
			r.f.use(r.places[0])
			r.note(r.el(0), Place{ID: r.places[0]})
			f = at(Place{ID: r.places[0]})
		}
	case Last:
		want := r.num(op.N, 1)
		if have := len(r.places) - r.c; have != want {
			return 0, fault(LastNotLast, want, have, "")
		}
		for i := 0; i < want && f == nil; i++ {
			f = next(takes)
		}
	case Same:
		if !r.worked {
			return 0, fault(NothingDone, 0, 0, "")
		}
		f = at(r.last)
	case InRing:
		if len(r.places) != 1 || r.el(0).Kind != Ring {
			return 0, fault(NotRing, 0, 0, "")
		}
		if r.c == 0 {
			r.move(1, taken)
		}
		r.cur.Took |= TookRing
		f = at(Place{ID: r.places[0]})
	case GapHere:
		f = r.gapHere(at)
	case InMarked:
		i := slices.IndexFunc(r.marked, func(s standing) bool { return s.at == r.c })
		if i < 0 {
			return 0, fault(NotMarked, 0, 0, "")
		}
		r.met = r.marked[i].name
		f = next(Stitches)
	case UnworkedNext, UnworkedEach:
		f = r.unworked(op, at)
	default:
		f = r.named(op, at, next)
	}
	return n, f
}

// eachTo takes every place up to the bound; some takes one or several of them, and none behind where it must stop.
func (r *row) eachTo(t *Target, takes Takes, some func(stop int) *Fault) *Fault {
	stop, f := r.bound(&t.Bound)
	if f != nil {
		return f
	}
	for r.c < stop {
		if takes == Spaces {
			i := r.c
			for i < stop && r.el(i).Kind != Space {
				i++
			}
			for r.c < i {
				r.move(1, passed)
			}
			if i == stop {
				break
			}
		}
		if takes == Gaps && !r.p.edge.closed && r.c == len(r.places)-1 {
			r.move(1, passed) // an open row has one gap less than stitches
			break
		}
		if f := some(stop); f != nil {
			return f
		}
	}
	return nil
}

func (r *row) gapHere(at func(Place) *Fault) *Fault {
	n := len(r.places)
	if n == 0 || !r.p.edge.closed && (r.c == 0 || r.c == n) {
		return fault(NoGap, 0, 0, "")
	}
	i := (r.c - 1 + n) % n
	r.cur.Took |= TookGap
	return at(Place{ID: r.places[i], Asp: GapAfter})
}

// unworked takes what earlier short rows left at this end, nearest first.
func (r *row) unworked(op *Op, at func(Place) *Fault) *Fault {
	if k := len(r.places) - r.c; k > 0 {
		return fault(Ahead, 0, k, "")
	}
	post := r.p.edge.post
	n := len(post) - r.un
	if op.Target.Kind == UnworkedNext {
		if want := r.num(op.N, 1); want > n {
			return fault(TooFew, want, n, "")
		} else {
			n = want
		}
	}
	for i := 0; i < n; i++ {
		id := post[r.un]
		r.un++
		r.p.regained[id] = true
		r.f.use(id)
		r.note(&r.f.Elems[id], Place{ID: id})
		if f := at(Place{ID: id}); f != nil {
			return f
		}
	}
	return nil
}

// takeOf takes the next place, of spaces only those of the wanted number of chains.
func (r *row) takeOf(takes Takes, op *Op, per int, single bool) (Place, *Fault) {
	p, f := r.take(takes, per, single)
	if f == nil && op.Target.Of != nil {
		if el := r.f.Elems[p.ID]; el.Kind == Space && int(el.N) != op.Target.Of[r.f.Size] {
			return p, fault(OtherSpace, op.Target.Of[r.f.Size], int(el.N), "")
		}
	}
	for i := 1; f == nil && i < op.Target.Deep; i++ {
		if p = r.f.Elems[p.ID].Into; p.ID < 0 {
			return p, fault(NotHere, op.Target.Deep, i, "")
		}
	}
	return p, f
}

// take takes the next place that counts as one, and passes what that kind passes.
func (r *row) take(takes Takes, per int, single bool) (Place, *Fault) {
	switch takes {
	case Spaces:
		from := r.c
		for r.c < len(r.places) && r.el(r.c).Kind != Space {
			r.move(1, passed)
		}
		r.walked(r.c - from)
		if r.c >= len(r.places) {
			return Place{}, fault(NoSpace, 0, 0, "")
		}
	case Gaps:
		return r.takeGap()
	}
	if r.c >= len(r.places) {
		return Place{}, fault(TooFew, 1, 0, "")
	}
	el, p := r.el(r.c), Place{ID: r.places[r.c]}
	if el.Kind == Ring {
		return Place{}, fault(TooFew, 1, 0, "")
	}
	if el.Kind == Space {
		switch {
		case takes&Spaces != 0:
		case takes&InChains != 0:
			return r.takeChain(el, p, per, single), nil
		default:
			return Place{}, fault(SpaceInWay, 0, int(el.N), "")
		}
	}
	r.note(el, p)
	r.rise(per, single)
	r.f.use(p.ID)
	r.move(1, taken)
	return p, nil
}

// takeChain takes the next chain of a space; with the last one the space is taken.
func (r *row) takeChain(el *Elem, p Place, per int, single bool) Place {
	p.Asp, p.Sub = OneChain, r.sub
	r.note(el, p)
	if r.sub++; r.sub == el.N {
		r.sub = 0
		r.rise(per, single)
		r.f.use(p.ID)
		r.move(1, taken)
	}
	return p
}

// walked notes that places were passed before anything was made: at the start of a round the yarn is carried over them.
func (r *row) walked(n int) {
	if len(r.made) == 0 {
		r.res.Walked += n
		if n > 0 && r.c < len(r.places) && r.el(r.c).Kind == Space {
			r.res.WalkedTo = int(r.el(r.c).N)
		}
	}
}

func (r *row) takeGap() (Place, *Fault) {
	if r.c >= len(r.places) {
		return Place{}, fault(TooFew, 1, 0, "")
	}
	j := r.c + 1
	if j >= len(r.places) {
		if !r.p.edge.closed {
			return Place{}, fault(NoGap, 0, 0, "")
		}
		j = 0
	}
	if r.el(r.c).Kind != Stitch || r.el(j).Kind != Stitch {
		return Place{}, fault(NoGap, 0, 0, "")
	}
	p := Place{ID: r.places[r.c], Asp: GapAfter}
	r.cur.Took |= TookGap
	r.move(1, taken)
	r.settle()
	return p, nil
}

// rise carries up a marker in the stitch at the cursor, if exactly one stitch goes into it.
func (r *row) rise(per int, single bool) {
	for len(r.marked) > 0 && r.marked[0].at < r.c {
		r.marked = r.marked[1:]
	}
	if !single || per != 1 {
		return
	}
	for _, s := range r.marked {
		if s.at != r.c {
			break
		}
		if !r.touched[s.name] {
			r.carries(standing{s.name, len(r.made), false})
		}
	}
}

// note adds what was taken to the trace of the instruction.
func (r *row) note(el *Elem, p Place) {
	r.cur.note(el, p)
	if r.p.begun > 0 && el.Row == r.p.begun && p.Asp == Top {
		r.cur.Begun = append(r.cur.Begun, p.ID)
	}
}

// note adds what was taken to the trace.
func (t *Trace) note(el *Elem, p Place) {
	chains := 0
	switch {
	case p.Asp == GapAfter:
		t.Took |= TookGap
	case p.Asp == OtherSide:
		t.Took |= TookOther
	case el.Kind == Space && p.Asp == OneChain:
		t.Took |= TookChain
	case el.Kind == Space:
		t.Took |= TookSpace
		chains = int(el.N)
	case el.Kind == Ring:
		t.Took |= TookRing
	case el.Kind == End:
		t.Took |= TookRowEnd
	case el.Form == chainForm && el.Into.Asp == OneChain && el.Into.ID >= 0:
		t.Took |= TookChain
	case el.Form == chainForm && el.Into.Asp == OtherSide && el.Into.ID >= 0:
		t.Took |= TookOther
	case el.Form == chainForm:
		t.Took |= TookFoundation
	default:
		t.Took |= TookStitch
	}
	if chains > 0 {
		switch t.Chains {
		case 0, chains:
			t.Chains = chains
		default:
			t.Chains = -1
		}
	}
}
