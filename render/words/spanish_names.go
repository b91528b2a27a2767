package words

import (
	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// whereNamed says which places of a named run are meant.
func (s *spanish) whereNamed(at spot) rich.Text {
	r := at.ref
	switch at.reach {
	case plan.BesideOf:
		if r.several() {
			return fill("el costado {}", of(s.eachIn(at)))
		}
		return fill("el costado {}", of(s.one(r)))
	case plan.BelowOf:
		return s.below(at)
	case plan.NextOf:
		if at.n.one() || at.n.unknown() {
			return fill("{} {}", r.place.next(), of(s.run(r)))
		}
		return fill("{} {}", r.place.eachNext(at.n), of(s.run(r)))
	case plan.ThroughBoth:
		match := fill(r.place.the(false)+" {} correspondiente {}", r.place.one, of(s.run(r)))
		switch {
		case at.n.unknown():
			return fill("cada {}, tomando las dos capas, junto con {}", at.place.one, match)
		case at.n.one():
			return fill("{}, tomando las dos capas, junto con {}", at.place.next(), match)
		}
		return fill("{}, tomando las dos capas, cada "+at.place.agree("uno", "una")+" junto con {}", at.place.eachNext(at.n), match)
	}
	if r.several() {
		return s.eachIn(at)
	}
	return s.one(r)
}

// skippedWord is saltado, saltadas …, agreeing with the noun.
func skippedWord(n noun, plural bool) string {
	if plural {
		return n.agree("saltados", "saltadas")
	}
	return n.agree("saltado", "saltada")
}

// kind adds to a noun what kind of run it belongs to: p saltados.
func (s *spanish) kind(r named, plural bool) rich.Text {
	what := r.place.one
	if plural {
		what = r.place.many
	}
	if r.Kind == plan.RefSkipped {
		return fill("{}~"+skippedWord(r.place, plural), what)
	}
	return what
}

// eachIn is every place of a run: "cada uno de los 52 p saltados de la pierna derecha".
func (s *spanish) eachIn(at spot) rich.Text {
	r, n := at.ref, at.ref.count
	others := ""
	if at.after {
		n, others = at.n, r.place.agree("otros ", "otras ")
	}
	var text rich.Text
	switch {
	case n.unknown():
		text = s.belongs(r, fill("cada {}", s.kind(r, false)))
	case n.one():
		text = s.belongs(r, fill(r.place.the(false)+" {}", s.kind(r, false)))
	case !n.plain():
		text = fill("{}, {} en total", s.belongs(r, fill("cada {}", s.kind(r, false))), n)
	default:
		text = s.belongs(r, fill("cada "+r.place.agree("uno de los ", "una de las ")+others+"{}~{}", n, s.kind(r, true)))
	}
	if r.Below {
		return fill("{}, por el otro lado", text)
	}
	return text
}

// below is what the stitches of a run were worked into; of chains it is their other side.
func (s *spanish) below(at spot) rich.Text {
	r, ch := at.ref, s.short("ch")
	switch {
	case r.Kind == plan.RefSpace && at.n.one():
		return fill(ch.the(false)+" {} {}, por el otro lado", ch.one, of(s.whole(r)))
	case r.Kind == plan.RefSpace && (at.n.unknown() || !at.n.plain()):
		return fill("cada {} {}, por el otro lado", ch.one, of(s.whole(r)))
	case r.Kind == plan.RefSpace:
		return fill("{} {}, por el otro lado", ch.eachOf(at.n, "", ""), of(s.whole(r)))
	case r.several():
		return fill("la base {}", of(s.eachIn(at)))
	}
	return fill("la base {}", of(s.one(r)))
}

// one is a single place of a run, or the run itself if it is one place: "el último pa de la espalda".
func (s *spanish) one(r named) rich.Text {
	if r.Kind == plan.RefCorner {
		return fill("la esquina {}", of(s.whole(r)))
	}
	p := r.place
	what := s.kind(r, false)
	switch r.pick() {
	case plan.FirstOf:
		return s.belongs(r, fill(p.agree("el primer", "la primera")+" {}", what))
	case plan.LastOf:
		return s.belongs(r, fill(p.agree("el último", "la última")+" {}", what))
	case plan.NthOf:
		return s.belongs(r, fill(p.the(false)+" {}~{}", ordinalES(r.Nth, p.feminine), what))
	}
	return s.belongs(r, fill(p.the(false)+" {}", what))
}

// belongs says what some places belong to: "2 p saltados de la vuelta 4". What was passed over in the row at hand needs
// no such word.
func (s *spanish) belongs(r named, what rich.Text) rich.Text {
	if r.here {
		return what
	}
	return fill("{} {}", what, of(s.whole(r)))
}

// whole is what a place belongs to: the run by its name, else the row in which it was made.
func (s *spanish) whole(r named) rich.Text {
	row := s.rowWord(r.round)
	n := noun{feminine: row.Feminine}
	switch r.Kind {
	case plan.RefRowEnds:
		return s.sideEdge(r)
	case plan.RefEdge:
		return fill(n.agree("el último ", "la última ")+row.One+" {}", of(s.owner(r)))
	case plan.RefFoundation:
		return fill("el borde inicial {}", of(s.owner(r)))
	}
	if r.called != "" && r.Kind != plan.RefRow {
		return rich.T(r.called)
	}
	text := fill(n.the(false)+" "+row.One+"~{}", r.row)
	if r.row.unknown() {
		if r.Label == "" {
			return s.owner(r) // all of the part
		}
		text = rich.T(s.spelled(r.Label))
	}
	if o := s.owner(r); o != nil {
		return fill("{} {}", text, of(o))
	}
	return text
}

// sideEdge is the ends of rows at a side of a part, or of some of its rows.
func (s *spanish) sideEdge(r named) rich.Text {
	side := "derecho"
	if r.Side == plan.LeftEdge {
		side = "izquierdo"
	}
	out := fill(s.sided("el borde "+side)+" {}", of(s.owner(r)))
	if r.called != "" {
		out = fill("{} {}", r.called, of(s.owner(r)))
	}
	w := s.rowWord(r.round)
	switch {
	case r.Row == nil:
	case r.row.text.String() == r.toRow.text.String():
		out = fill("{} ("+w.One+"~{})", out, r.row)
	case r.neighbours():
		out = fill("{} ("+w.Many+"~{} y~{})", out, r.row, r.toRow)
	default:
		out = fill("{} ("+w.Many+"~{} a~{})", out, r.row, r.toRow)
	}
	return out
}

// owner is the part a run belongs to.
func (s *spanish) owner(r named) rich.Text {
	edge := r.Kind == plan.RefEdge || r.Kind == plan.RefFoundation
	switch {
	case r.Kind == plan.RefRowEnds && r.whose == "":
		return rich.T("esta pieza")
	case r.whose != "":
		return rich.T(r.whose)
	case r.called != "" && edge:
		return rich.T(r.called)
	case edge:
		return rich.T("esta pieza")
	}
	return nil
}

// run is a run as a whole: what a seam or a bound names.
func (s *spanish) run(r named) rich.Text {
	switch {
	case r.Kind == plan.RefEdge, r.Kind == plan.RefFoundation, r.Kind == plan.RefRow, r.Kind == plan.RefRowEnds, r.called != "":
		return s.whole(r)
	case r.Kind == plan.RefSpace || r.count.one():
		return s.belongs(r, fill(r.place.the(false)+" {}", s.kind(r, false)))
	case r.count.unknown():
		return s.whole(r)
	}
	text := s.belongs(r, fill("{}~{}", r.count, s.kind(r, true)))
	if !r.count.plain() {
		return text // the article would not agree with every size
	}
	return fill(r.place.the(true)+" {}", text)
}

// kindOf is a place that is met again and again: "la siguiente esquina".
func (s *spanish) kindOf(r named) rich.Text {
	if r.called == "" {
		return r.place.next()
	}
	feminine, _ := withArticle(r.called)
	return fill(noun{feminine: feminine}.the(false)+" siguiente {}", s.bare(r.called))
}

// sideAndBase works into a stitch of another row from its side and into what it was worked into.
func (s *spanish) sideAndBase(f noun, r named, sideFirst bool) rich.Text {
	if sideFirst {
		return fill("1~{} en el costado {} y 1~{} en su base", f.one, of(s.one(r)), f.one)
	}
	return fill("1~{} en la base {} y 1~{} en su costado", f.one, of(s.one(r)), f.one)
}
