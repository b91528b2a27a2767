package caution

import (
	"slices"

	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// childBelow is the age in months from which no rule for children holds: a wearer of 17 is beyond the last of them.
const childBelow = 204

// childItem is the age in months below which a thing is one for children, so that its kind and its ages must be said.
const childItem = 168

// questions asks for what is missing: each thing once, with all that is missing for it, and nothing that only matters once
// something else is known.
func (ev *evaluation) questions() diag.List {
	var out diag.List
	if d, ok := ev.kindQuestion(); ok {
		return append(out, d)
	}
	ages := ev.ages()
	if len(ages) > 0 && !ev.facts.AgeUnread {
		code := diag.Code("OV902")
		if ForChildren(ev.facts.Kind) || ev.facts.Child == True || ev.youngerThan(childItem) {
			code = "OV907"
		}
		out.Add(diag.Diagnostic{Code: code, Span: ev.facts.SizesAt, Sizes: ev.names(ages)})
	}
	type asked struct {
		thing thing
		lacks attributes
		sizes []int
	}
	var all []*asked
	add := func(t thing, lacks attributes, size int) {
		if lacks == 0 {
			return
		}
		i := slices.IndexFunc(all, func(a *asked) bool { return a.thing.element == t.element && a.thing.index == t.index })
		if i < 0 {
			i = len(all)
			all = append(all, &asked{thing: t})
		}
		a := all[i]
		if a.lacks |= lacks; !slices.Contains(a.sizes, size) {
			a.sizes = append(a.sizes, size)
		}
	}
	for _, m := range ev.lacking {
		if ev.class == "" || slices.Contains(ages, m.size) {
			continue
		}
		// What is not known of the piece is asked once, whatever waits for it.
		ofPiece := thing{step: -1, at: ev.facts.KindAt}
		if m.thing.element == piece {
			ofPiece = m.thing
		}
		add(m.thing, m.lacks&^allOf(piece), m.size)
		add(ofPiece, m.lacks&allOf(piece), m.size)
	}
	for _, a := range all {
		var sizes []int
		for _, i := range a.sizes {
			if !ev.refused(a.thing, i) {
				sizes = append(sizes, i)
			}
		}
		if slices.Sort(sizes); len(sizes) > 0 {
			out.Add(ev.question(a.thing, a.lacks, ev.names(sizes)))
		}
	}
	return out
}

// ages are the sizes whose age is not known though a rule waits for it, or though what is made is for children.
func (ev *evaluation) ages() []int {
	var out []int
	wanted := setOf(piece, "age_min_months", "age_declared_months", "age_max_months", "us_size")
	required := ev.class != "" && ev.class != "decor" && (ForChildren(ev.facts.Kind) || ev.facts.Child == True)
	for i := range ev.facts.SizeNames {
		if months(ev.facts.AgeMonths, i) >= 0 {
			continue
		}
		waits := slices.ContainsFunc(ev.lacking, func(m missing) bool { return m.size == i && m.lacks.meets(wanted) })
		if required || waits && ev.class != "" {
			out = append(out, i)
		}
	}
	return out
}

// youngerThan reports whether some size is for a wearer below an age.
func (ev *evaluation) youngerThan(age int) bool {
	return slices.ContainsFunc(ev.facts.AgeMonths, func(a int) bool { return a >= 0 && a < age })
}

// aged reports whether some size has an age; names of sizes tell nothing then.
func (ev *evaluation) aged() bool {
	return slices.ContainsFunc(ev.facts.AgeMonths, func(a int) bool { return a >= 0 })
}

// refused reports whether a cord or a part may not be there at all, so that nothing more need be known of it.
func (ev *evaluation) refused(t thing, i int) bool {
	return t.element != piece && slices.ContainsFunc(ev.crossed, func(c crossing) bool {
		return (c.cause.code == banned || c.thing.element == part && c.rule.Severity == "error") && c.thing.element == t.element && c.thing.index == t.index && slices.Contains(c.sizes, i)
	})
}

// question asks for all that is missing of a thing, with the words that would say it.
func (ev *evaluation) question(t thing, lacks attributes, sizes []string) diag.Diagnostic {
	d := diag.Diagnostic{Code: "OV908", Span: t.at, Sizes: sizes}
	switch {
	case t.element == cord && lacks.has(known().zone):
		d.Code = "OV903"
	case t.element == cord:
		d.Code = "OV904"
	case t.element == elastic:
		d.Code = "OV903"
	case t.at == source.Span{}:
		d.Span = ev.facts.SizesAt
	}
	if lacks.has(known().zone) { // what hangs on the place is asked once that is known
		lacks &^= known().byZone
	}
	if lacks.has(known().role) { // a belt is asked for other things than a bow
		lacks &^= known().byRole
	}
	if t.element == cord && ev.facts.Cords[t.index].long() && lacks.meets(known().endOrRole) { // how far a cord hangs follows from these
		lacks &^= known().free.bit()
	}
	var what []diag.Term
	var ways [][]string // the words for each thing that is missing: any of them serves
	for _, a := range lacks.list() {
		if a.name == "age_min_months" { // the age is said: what counts is whether a toy is stuffed
			a = known().stuffed
		}
		w := diag.Term{Key: "fact " + a.key(), N: 1}
		if !slices.Contains(what, w) {
			what = append(what, w)
		}
		way := ev.sayings(t, a)
		if len(way) > 0 && !slices.ContainsFunc(ways, func(w []string) bool { return w[0] == way[0] }) {
			ways = append(ways, way)
		}
	}
	says := []string{}
	switch len(ways) {
	case 0:
	case 1:
		says = ways[0]
	default: // each must be said: one way of each is enough to show
		d.Help = "all"
		for _, way := range ways {
			says = append(says, way[0])
		}
	}
	d.Args = diag.Args{"what": what, "says": says}
	return d
}

// sayings are the words of a source that say an attribute of a thing. How far the ends of a cord hang whose length is given follows from
// what it goes round or through; whether a hem hangs below the crotch, from the length of the piece and then of the wearer.
func (ev *evaluation) sayings(t thing, a *attribute) []string {
	if a == known().free && ev.facts.Cords[t.index].long() {
		switch c := &ev.facts.Cords[t.index]; {
		case c.girdles():
			return []string{"fit waist 50 cm"}
		case c.Role == "drawstring":
			return []string{"through waistband round 2"}
		}
	}
	if a.key() == "cord.limb" && ev.facts.Cords[t.index].Zone != UnknownZone { // where it is was said
		return []string{"as tie"}
	}
	if a == known().belowCrotch && ev.facts.Length != nil {
		return []string{"fit back_waist_length 26 cm, crotch_depth 20 cm"}
	}
	return sayings()[a.key()]
}

// kindQuestion asks what is made, if a rule waits for it and there is something that can do harm or a child it is for; or
// says that the word for it is not known.
func (ev *evaluation) kindQuestion() (diag.Diagnostic, bool) {
	if ev.class != "" {
		return diag.Diagnostic{}, false
	}
	if ev.facts.Kind != "" {
		words := ev.facts.Words
		if words == nil {
			words = Kinds()
		}
		d := diag.Diagnostic{Code: "OV905", Span: ev.facts.KindAt, Help: "none",
			Args: diag.Args{"name": ev.facts.Kind, "names": words}}
		if near := lang.Near(ev.facts.Kind, words); len(near) > 0 {
			d.Help, d.Args["near"] = "near", near
		}
		return d, true
	}
	if ev.youngerThan(childItem) || ev.facts.Child == True && !ev.aged() {
		return diag.Diagnostic{Code: "OV906", Span: ev.facts.KindAt}, true
	}
	child := ev.youngerThan(childBelow)
	kind := lookUp(piece, "kind")
	waits := slices.ContainsFunc(ev.lacking, func(m missing) bool {
		grown := months(ev.facts.AgeMonths, m.size) >= childBelow
		return m.lacks.has(kind) && (m.thing.element != piece && !grown || child)
	})
	return diag.Diagnostic{Code: "OV901", Span: ev.facts.KindAt}, waits
}
