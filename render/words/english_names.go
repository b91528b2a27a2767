package words

import (
	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// whereNamed says which places of a named run are meant.
func (e *english) whereNamed(in string, s spot) rich.Text {
	switch s.reach {
	case plan.BesideOf:
		if s.ref.several() {
			return fill(in+"the side of {}", e.eachIn(s))
		}
		return fill(in+"side of {}", e.one(s.ref))
	case plan.BelowOf:
		return fill(in+"{}", e.below(s))
	case plan.ThroughBoth:
		match := fill("{} of {}", s.ref.place.one, e.run(s.ref))
		switch {
		case s.n.unknown():
			return fill(in+"each {}, through both layers, together with the matching {}", s.place.one, match)
		case s.n.one():
			return fill(in+"next {}, through both layers, together with the matching {}", s.place.one, match)
		}
		return fill(in+"each of next {}~{}, through both layers, each together with the matching {}", s.n, s.place.many, match)
	}
	if s.ref.several() {
		return fill(in+"{}", e.eachIn(s))
	}
	return fill(in+"{}", e.one(s.ref))
}

// eachIn is every place of a run: "each of the 52 skipped sts of the right leg".
func (e *english) eachIn(s spot) rich.Text {
	r := s.ref
	n := r.count
	the := "each of the"
	if s.after {
		n, the = s.n, "each of the other"
	}
	what := r.place.by(n)
	if r.Kind == plan.RefSkipped {
		what = fill("skipped {}", what)
	}
	if r.Below {
		what = fill("{}, from their other side,", what)
	}
	if n.one() {
		return fill("the {} of {}", what, e.whole(r))
	}
	if n.unknown() {
		return fill("each {} of {}", r.place.one, e.whole(r))
	}
	return fill(the+" {}~{} of {}", n, what, e.whole(r))
}

// below is what the stitches of a run were worked into; of chains it is their other side.
func (e *english) below(s spot) rich.Text {
	r, ch := s.ref, e.short("ch").one
	switch {
	case r.Kind == plan.RefSpace && s.n.one():
		return fill("{} of {}, from its other side", ch, e.whole(r))
	case r.Kind == plan.RefSpace && s.n.unknown():
		return fill("each {} of {}, along their other side", ch, e.whole(r))
	case r.Kind == plan.RefSpace:
		return fill("each of the {}~{} of {}, along their other side", s.n, ch, e.whole(r))
	case r.several():
		return fill("the base of {}", e.eachIn(s))
	}
	return fill("base of {}", e.one(r))
}

// one is a single place of a run, or the run itself if it is one place: "last dc of the right back".
func (e *english) one(r named) rich.Text {
	what := r.place.one
	if r.Kind == plan.RefSkipped {
		what = fill("skipped {}", what)
	}
	switch r.pick() {
	case plan.FirstOf:
		return fill("first {} of {}", what, e.whole(r))
	case plan.LastOf:
		return fill("last {} of {}", what, e.whole(r))
	case plan.NthOf:
		return fill("{}~{} of {}", e.ordinal(r.Nth), what, e.whole(r))
	}
	return fill("{} of {}", what, e.whole(r))
}

// whole is what a place belongs to: the run by its name, else the row in which it was made.
func (e *english) whole(r named) rich.Text {
	switch r.Kind {
	case plan.RefEdge:
		return fill("the last "+e.rowWord(r.round).one+" of {}", e.owner(r))
	case plan.RefFoundation:
		return fill("the foundation edge of {}", e.owner(r))
	}
	if r.called != "" && r.Kind != plan.RefRow {
		return rich.T(r.called)
	}
	row := fill(e.rowWord(r.round).one+"~{}", r.row)
	if r.row.unknown() {
		row = rich.T(spaced(r.Label))
	}
	if o := e.owner(r); o != nil {
		return fill("{} of {}", row, o)
	}
	return row
}

// owner is the part a run belongs to.
func (e *english) owner(r named) rich.Text {
	switch {
	case r.whose != "":
		return rich.T(r.whose)
	case r.called != "" && (r.Kind == plan.RefEdge || r.Kind == plan.RefFoundation):
		return rich.T(r.called)
	case r.Kind == plan.RefEdge || r.Kind == plan.RefFoundation:
		return rich.T("this part")
	}
	return nil
}

// run is a run as a whole: what a seam or a bound names.
func (e *english) run(r named) rich.Text {
	switch {
	case r.Kind == plan.RefEdge, r.Kind == plan.RefFoundation, r.Kind == plan.RefRow, r.called != "":
		return e.whole(r)
	case r.Kind == plan.RefSpace:
		return fill("the {} of {}", r.place.one, e.whole(r))
	}
	n := r.count
	if n.unknown() {
		return e.whole(r)
	}
	what := r.place.by(n)
	if r.Kind == plan.RefSkipped {
		what = fill("skipped {}", what)
	}
	return fill("the {}~{} of {}", n, what, e.whole(r))
}

// kindOf is a place that is met again and again, behind "next": "corner", or "ch-2 sp" for want of a name.
func (e *english) kindOf(r named) rich.Text {
	if r.called != "" {
		return rich.T(e.bare(r.called))
	}
	return r.place.one
}

// sideAndBase works into a stitch of another row from its side and into what it was worked into.
func (e *english) sideAndBase(f noun, r named, sideFirst bool) rich.Text {
	if sideFirst {
		return fill("{} in side of {} and {} in its base", f.one, e.one(r), f.one)
	}
	return fill("{} in base of {} and {} in its side", f.one, e.one(r), f.one)
}
