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
	case plan.NextOf:
		if s.n.one() || s.n.unknown() {
			return fill(in+"next {} of {}", s.ref.place.one, e.run(s.ref))
		}
		return fill(in+"each of next {}~{} of {}", s.n, s.ref.place.many, e.run(s.ref))
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
	r, n, the := s.ref, s.ref.count, "each of the"
	if s.after {
		n, the = s.n, "each of the other"
	}
	var text rich.Text
	switch {
	case n.unknown():
		text = e.belongs(r, fill("each {}", e.kind(r, false)))
	case n.one():
		text = e.belongs(r, fill("the {}", e.kind(r, false)))
	default:
		text = e.belongs(r, fill(the+" {}~{}", n, e.kind(r, true)))
	}
	if r.Below {
		return fill("{}, along their other side", text)
	}
	return text
}

// kind adds to a noun what kind of run it belongs to: skipped sts.
func (e *english) kind(r named, plural bool) rich.Text {
	what := r.place.one
	if plural {
		what = r.place.many
	}
	if r.Kind == plan.RefSkipped {
		return fill("{} {}", e.word("skipped"), what)
	}
	return what
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
		return fill("each of the {}~{} of {}, along their other side", s.n, e.short("ch").many, e.whole(r))
	case r.several():
		return fill("the base of {}", e.eachIn(s))
	}
	return fill("base of {}", e.one(r))
}

// one is a single place of a run, or the run itself if it is one place: "last dc of the right back".
func (e *english) one(r named) rich.Text {
	what := e.kind(r, false)
	if r.Kind == plan.RefCorner {
		return fill("the corner of {}", e.whole(r))
	}
	switch r.pick() {
	case plan.FirstOf:
		return e.belongs(r, fill("first {}", what))
	case plan.LastOf:
		return e.belongs(r, fill("last {}", what))
	case plan.NthOf:
		return e.belongs(r, fill("{}~{}", e.ordinal(r.Nth), what))
	}
	return e.belongs(r, what)
}

// belongs says what some places belong to: "2 skipped sts of round 4". What was passed over in the row at hand needs no
// such word.
func (e *english) belongs(r named, what rich.Text) rich.Text {
	if r.here {
		return what
	}
	return fill("{} of {}", what, e.whole(r))
}

// whole is what a place belongs to: the run by its name, else the row in which it was made.
func (e *english) whole(r named) rich.Text {
	switch r.Kind {
	case plan.RefRowEnds:
		return e.sideEdge(r)
	case plan.RefEdge:
		return fill("the last "+e.rowWord(r.round).One+" of {}", e.owner(r))
	case plan.RefFoundation:
		return fill("the foundation edge of {}", e.owner(r))
	}
	if r.called != "" && r.Kind != plan.RefRow {
		return rich.T(r.called)
	}
	row := fill(e.rowWord(r.round).One+"~{}", r.row)
	if r.row.unknown() {
		if r.Label == "" {
			return e.owner(r) // all of the part
		}
		row = rich.T(e.spelled(r.Label))
	}
	if o := e.owner(r); o != nil {
		return fill("{} of {}", row, o)
	}
	return row
}

// sideEdge is the ends of rows at a side of a part, or of some of its rows.
func (e *english) sideEdge(r named) rich.Text {
	side := "right"
	if r.Side == plan.LeftEdge {
		side = "left"
	}
	out := fill("the "+e.sided(side)+" edge of {}", e.owner(r))
	if r.called != "" {
		out = fill("{} of {}", r.called, e.owner(r))
	}
	switch {
	case r.Row == nil:
	case r.row.text.String() == r.toRow.text.String():
		out = fill("{} ("+e.rowWord(r.round).One+"~{})", out, r.row)
	case r.neighbours():
		out = fill("{} ("+e.rowWord(r.round).Many+"~{} and~{})", out, r.row, r.toRow)
	default:
		out = fill("{} ("+e.rowWord(r.round).Many+"~{} to~{})", out, r.row, r.toRow)
	}
	return out
}

// owner is the part a run belongs to.
func (e *english) owner(r named) rich.Text {
	switch {
	case r.whose != "":
		return rich.T(r.whose)
	case r.called != "" && (r.Kind == plan.RefEdge || r.Kind == plan.RefFoundation):
		return rich.T(r.called)
	case r.Kind == plan.RefEdge || r.Kind == plan.RefFoundation || r.Kind == plan.RefRowEnds:
		return rich.T("this piece")
	}
	return nil
}

// run is a run as a whole: what a seam or a bound names.
func (e *english) run(r named) rich.Text {
	switch {
	case r.Kind == plan.RefEdge, r.Kind == plan.RefFoundation, r.Kind == plan.RefRow, r.Kind == plan.RefRowEnds, r.called != "":
		return e.whole(r)
	case r.Kind == plan.RefSpace:
		return e.belongs(r, fill("the {}", r.place.one))
	}
	n := r.count
	if n.unknown() {
		return e.whole(r)
	}
	return e.belongs(r, fill("the {}~{}", n, e.kind(r, !n.one())))
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
