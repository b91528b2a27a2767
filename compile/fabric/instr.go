package fabric

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/source"
)

const slip = stitch.Slip

// work makes Per stitches in each place of the target.
func (r *row) work(op *Op) (int, *Fault) {
	per := r.num(op.Per, 1)
	if r.group != nil {
		if op.Target.Kind != Next && op.Target.Kind != Same {
			return 0, fault(Nested, 0, 0, "")
		}
		n := r.num(op.N, 1)
		for i := 0; i < n*per; i++ {
			if f := r.stitch(op, *r.group); f != nil {
				return 0, f
			}
		}
		return n, nil
	}
	if op.Label != "" && op.Form.ID == slip {
		r.name(op.Label, nil, true)
		r.p.labels[op.Label].slipped = true
	}
	return r.each(op, per == 1 && op.Extra == 0 && !op.Form.Group.Open() && r.legs == nil, func(p Place) *Fault {
		r.from = len(r.made)
		for i := 0; i < per; i++ {
			if f := r.stitch(op, p); f != nil {
				return f
			}
		}
		if op.Label != "" && op.Form.ID == slip {
			r.name(op.Label, []ID{p.ID}, true)
		}
		return nil
	})
}

// stitch makes one stitch in a place.
func (r *row) stitch(op *Op, p Place) *Fault {
	if r.legs != nil {
		*r.legs = append(*r.legs, p)
		return nil
	}
	k := Stitch
	if op.Form.ID == slip {
		k = Slip
	}
	if op.Cross == plan.CrossBack {
		r.f.passesBehind(ID(len(r.f.Elems)))
	}
	if r.forms.of != op {
		r.forms.of, r.forms.id = op, r.f.intern(op.Form)
	}
	return r.makeAll(op, &Elem{Kind: k, Form: r.forms.id, Into: p, Into2: p})
}

// makeAll adds what one stitch of an instruction makes.
func (r *row) makeAll(op *Op, e *Elem) *Fault {
	switch op.Form.Group {
	case stitch.Shell:
		for range op.Form.Of {
			if f := r.make(e); f != nil {
				return f
			}
		}
		return nil
	case stitch.Vee:
		for _, e := range []Elem{*e, {Kind: Space, N: 1, Into: nowhere, Into2: nowhere}, *e} {
			if f := r.make(&e); f != nil {
				return f
			}
		}
		return nil
	}
	for range 1 + op.Extra {
		if f := r.make(e); f != nil {
			return f
		}
	}
	return nil
}

// found makes stitches that stand on no place, from the foot of the stitch just made on.
func (r *row) found(op *Op) (int, *Fault) {
	k := len(r.made) - 1
	n := r.num(op.N, 0)
	switch {
	case n == 0:
		return 0, nil
	case r.group != nil:
		return 0, fault(Nested, 0, 0, "")
	case k < 0 || r.f.Elems[r.made[k]].Kind != Stitch:
		return 0, fault(NothingDone, 0, 0, "")
	}
	for range n {
		if f := r.make(&Elem{Kind: Stitch, Form: r.f.intern(op.Form), Into: nowhere, Into2: nowhere}); f != nil {
			return 0, f
		}
	}
	return n, nil
}

// ride sets a picot on what was just made.
func (r *row) ride(op *Op) (int, *Fault) {
	if len(r.made) == 0 {
		return 0, fault(NothingDone, 0, 0, "")
	}
	if r.f.rides == nil {
		r.f.rides = map[ID][]stitch.Form{}
	}
	id := r.made[len(r.made)-1]
	r.f.rides[id] = append(r.f.rides[id], op.Form)
	return 1, nil
}

// inOne works a list into each place of the target.
func (r *row) inOne(op *Op) (int, *Fault) {
	if r.group != nil {
		return 0, fault(Nested, 0, 0, "")
	}
	return r.each(op, false, func(p Place) *Fault {
		r.from = len(r.made)
		r.apart = true
		r.group = &p
		f := r.list(op.Body)
		r.group = nil
		return f
	})
}

// draw makes N stitches, each of which draws several places into one.
func (r *row) draw(op *Op) (int, *Fault) {
	if r.group != nil {
		return 0, fault(Nested, 0, 0, "")
	}
	n := r.num(op.N, 1)
	for k := 0; k < n; k++ {
		if f := r.drawOne(op); f != nil {
			return 0, f
		}
	}
	return n, nil
}

func (r *row) drawOne(op *Op) *Fault {
	legs, f := r.feet(op)
	if f != nil {
		return f
	}
	first, last := nowhere, nowhere
	if len(legs) > 0 {
		first, last = legs[0], legs[len(legs)-1]
	}
	r.f.standsOn(ID(len(r.f.Elems)), legs)
	r.feetRoom = legs
	r.from = len(r.made)
	if f := r.makeAll(op, &Elem{Kind: Stitch, Form: r.f.intern(op.Form), Into: first, Into2: last}); f != nil {
		return f
	}
	r.last, r.worked = last, true
	r.settle()
	return nil
}

// feet takes the places that are drawn together. A marker between them has no place of its own any more.
func (r *row) feet(op *Op) ([]Place, *Fault) {
	legs := r.feetRoom[:0]
	if op.Body != nil {
		r.legs, r.drawing = &legs, true
		f := r.list(op.Body)
		r.legs, r.drawing = nil, false
		return legs, f
	}
	takes := op.Target.Takes
	if takes == 0 {
		takes = Stitches
	}
	for j := 0; j < op.Form.Together; j++ {
		if r.drawing = j > 0; r.drawing {
			r.settle()
		}
		p, f := r.take(takes, -1, false)
		if f != nil {
			r.drawing = false
			if f.Kind == TooFew {
				f.Need, f.Have = op.Form.Together, j
			}
			return nil, f
		}
		legs = append(legs, p)
	}
	r.drawing = false
	return legs, nil
}

// repeat carries out its body N times, or until the bound is met exactly, and notes an outermost repeat.
func (r *row) repeat(op *Op) (int, *Fault) {
	from := r.c
	r.deep++
	n, f := r.passes(op)
	r.deep--
	if took := r.c - from; f == nil && r.deep == 0 && n > 1 && took > 0 && took%n == 0 {
		r.res.Repeats = append(r.res.Repeats, Repeated{from, took / n, n})
	}
	return n, f
}

func (r *row) passes(op *Op) (int, *Fault) {
	if op.N != nil {
		n := r.num(op.N, 0)
		for i := 0; i < n; i++ {
			if f := r.list(op.Body); f != nil {
				f.Total = max(f.Total, 0)
				return 0, f
			}
		}
		return n, nil
	}
	stop, f := r.bound(&op.Bound)
	if f != nil {
		return 0, f
	}
	start, n, width := r.c, 0, 0
	for r.c < stop {
		c, s := r.c, r.sub
		if f := r.list(op.Body); f != nil {
			if f.Kind == TooFew && f.Name == "" {
				// One pass took width places; this one ran out. What is said is the repeat as a whole.
				return 0, &Fault{Kind: NotEven, Span: op.Span, Need: max(width, f.from-c+f.Need), Have: stop - start, Total: n}
			}
			return 0, f
		}
		if r.c == c && r.sub == s {
			return 0, &Fault{Kind: TakesNothing, Span: op.Span}
		}
		n++
		if n == 1 {
			width = r.c - c
		}
	}
	if r.c > stop {
		return 0, &Fault{Kind: NotEven, Span: op.Span, Need: width, Have: stop - start, Total: n}
	}
	return n, nil
}

// skip passes places over; they are still there for later.
func (r *row) skip(op *Op) (int, *Fault) {
	from := r.c
	switch {
	case op.Kind == SkipSpaces:
		for i := r.num(op.N, 1); i > 0; i-- {
			if r.c >= len(r.places) || r.el(r.c).Kind != Space {
				return 0, fault(NoSpace, 0, 0, "")
			}
			r.move(1, skipped)
		}
	case op.N == nil:
		stop, f := r.bound(&op.Bound)
		if f != nil {
			return 0, f
		}
		r.took(from, stop)
		r.move(stop-r.c, skipped)
	default:
		n := r.num(op.N, 0)
		for i := 0; i < n; i++ {
			switch {
			case r.c+i >= len(r.places):
				return 0, fault(TooFew, n, i, "")
			case r.el(r.c+i).Kind == Space:
				return 0, fault(SpaceInWay, 0, int(r.el(r.c+i).N), "")
			}
		}
		r.took(from, r.c+n)
		r.move(n, skipped)
	}
	if op.Label != "" {
		r.name(op.Label, r.places[from:r.c], true)
		r.p.labels[op.Label].hole = true
	}
	return r.c - from, nil
}

// took notes in the trace what lies between two places of the edge.
func (r *row) took(a, b int) {
	for i := a; i < b; i++ {
		r.note(r.el(i), Place{ID: r.places[i]})
	}
}

// slide carries the yarn on with slip stitches to a bound; the places passed are not worked.
func (r *row) slide(op *Op) (int, *Fault) {
	stop, f := r.bound(&op.Bound)
	if f != nil {
		return 0, f
	}
	n := stop - r.c
	for _, id := range r.places[r.c:stop] {
		r.res.Slid = append(r.res.Slid, Slid{len(r.made), id})
	}
	r.move(n, passed)
	return n, nil
}

// spread spreads N increases or decreases over the places up to the bound.
func (r *row) spread(op *Op) (int, *Fault) {
	stop, f := r.bound(&op.Bound)
	if f != nil {
		return 0, f
	}
	have, k := stop-r.c, r.num(op.N, 0)
	size := op.Form.Together
	if k*size > have || k < 0 {
		return 0, fault(NoRoom, k*size, have, "")
	}
	plain := op.Form
	plain.Together = 1
	one := func(f stitch.Form, per, n int) *Fault {
		if n <= 0 {
			return nil
		}
		sub := &Op{Kind: Work, Form: f, Extra: op.Extra, Index: op.Index, Yarn: -1, Span: op.Span}
		for i := 0; i < n; i++ {
			p, fl := r.take(Stitches, per, per == 1)
			if fl != nil {
				return fl
			}
			r.from = len(r.made)
			for j := 0; j < per; j++ {
				if fl := r.stitch(sub, p); fl != nil {
					return fl
				}
			}
			r.last, r.worked = p, true
			r.settle()
		}
		return nil
	}
	g := SpreadGroups(have, k, size, op.How)
	r.cur.Group = g
	plains := g.order(op.How)
	if g.Lead > 0 {
		plains = append([]int{g.Before}, plains...)
	} else if f := one(plain, 1, g.Before); f != nil {
		return 0, f
	}
	for _, n := range plains {
		if f := one(plain, 1, n); f != nil {
			return 0, f
		}
		var f *Fault
		if size > 1 {
			f = r.drawOne(op)
		} else {
			f = one(op.Form, 2, 1)
		}
		if f != nil {
			return 0, f
		}
	}
	return k, one(plain, 1, g.After)
}

// SpreadGroups spreads k shapings that take size places each over have places: the longer groups first, the shaping last
// in its group. Centred begins and ends with half a group.
func SpreadGroups(have, k, size int, how Spreading) Groups {
	if k == 0 {
		return Groups{After: have}
	}
	q, rest := have/k, have%k
	g := Groups{Long: rest, LongPlain: q + 1 - size, Short: k - rest, ShortPlain: q - size}
	if how == Centred {
		// Between two shapings stand as many plain stitches as between any other two; what is left is halved, one half
		// before the first shaping, the other behind the last.
		free := have - k*size
		inner := free / k
		ends := free - inner*(k-1)
		if ends > 3*(inner+1) {
			return g.halved(free%k, inner, k) // so much at the ends would no longer be spread
		}
		g = Groups{Long: 1, LongPlain: ends / 2, Short: k - 1, ShortPlain: inner, After: ends - ends/2}
	}
	return g
}

// halved spreads k shapings with inner plain stitches between them, and one more between the first of them so that rest more are
// used up; the first stretch is halved, one half before the first shaping and the other behind the last.
func (g Groups) halved(rest, inner, k int) Groups {
	first := inner
	if rest > 0 {
		first, rest = inner+1, rest-1
	}
	return Groups{Lead: 1, Before: first - first/2, Long: rest, LongPlain: inner + 1, Short: k - 1 - rest, ShortPlain: inner, After: first / 2}
}

// order lists the plain stitches before each shaping.
func (g Groups) order(how Spreading) []int {
	out := make([]int, 0, g.Long+g.Short)
	l, s := g.Long, g.Short
	for l+s > 0 {
		// Alternating deals long groups out as evenly as they go.
		if l > 0 && (how != Alternating || l*(g.Short+1) >= s*(g.Long+1)-1 || s == 0) {
			out = append(out, g.LongPlain)
			l--
			continue
		}
		out = append(out, g.ShortPlain)
		s--
	}
	return out
}

// mark places, moves or removes a marker.
func (r *row) mark(op *Op) *Fault {
	name := op.Marker
	if name == "" {
		if name = r.met; name == "" {
			return fault(NoneMet, 0, 0, "")
		}
	}
	_, carried := r.carry[name]
	m := r.p.marks[name]
	switch op.Kind {
	case Unmark:
		if m == nil && !carried {
			return fault(Unknown, 0, 0, name)
		}
		delete(r.carry, name)
		delete(r.p.marks, name)
		r.touch(name)
		return nil
	case Move:
		if m == nil && !carried {
			return fault(Unknown, 0, 0, name)
		}
	case Mark:
		if m != nil && m.edge == r.p.edge.serial {
			return fault(Placed, 0, 0, name)
		}
	}
	r.touch(name)
	at := len(r.made) - 1
	switch op.Where {
	case plan.GapHere:
		r.carries(standing{name, len(r.made), true})
		return nil
	case plan.FirstOne:
		at = r.from
	case plan.MiddleOne:
		n := len(r.made) - r.from
		if n%2 == 0 {
			return fault(NoMiddle, 0, n, name)
		}
		at = r.from + n/2
	case plan.NextOne:
		at = len(r.made)
		if r.ahead == nil {
			r.ahead = map[string]source.Span{}
		}
		r.ahead[name] = op.Span
	default:
		if op.Kind == Move && m != nil && m.gap {
			r.carries(standing{name, len(r.made), true})
			return nil
		}
		for at >= 0 && r.f.Elems[r.made[at]].Kind != Stitch {
			at--
		}
	}
	if at < 0 || at >= len(r.made) && op.Where != plan.NextOne {
		return fault(NothingDone, 0, 0, name)
	}
	r.carries(standing{name, at, false})
	if m == nil {
		r.p.marks[name] = &marker{edge: -1}
	}
	return nil
}
