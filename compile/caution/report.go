package caution

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// What stands where a rule has no standard behind it.
var (
	ownRule  = diag.Said{"en": "a rule of this tool", "es": "una regla de esta herramienta"}
	practice = diag.Said{"en": "common practice", "es": "la práctica común"}
)

// group is what one thing crosses for one cause: one finding, whichever rules are behind it.
type group struct {
	code  diag.Code
	attr  *attribute
	thing thing
	at    source.Span
	hits  []crossing
	sizes []int
}

// findings reports the rules that are crossed, one diagnostic for each cause and thing. A cord that may not be there at all is
// not measured as well, and where a thing is refused it need not be asked for care.
func (ev *evaluation) findings() diag.List {
	var groups []*group
	for _, c := range ev.crossed {
		same := func(g *group) bool {
			return g.code == c.cause.code && g.attr == c.cause.attr && g.thing.element == c.thing.element && g.thing.index == c.thing.index && g.at == c.at
		}
		i := slices.IndexFunc(groups, same)
		if i < 0 {
			i = len(groups)
			groups = append(groups, &group{code: c.cause.code, attr: c.cause.attr, thing: c.thing, at: c.at})
		}
		g := groups[i]
		g.hits = append(g.hits, c)
		g.sizes = append(g.sizes, c.sizes...)
	}
	for _, g := range groups {
		slices.Sort(g.sizes)
		g.sizes = slices.Compact(g.sizes)
	}
	var out diag.List
	for _, g := range groups {
		if !slices.ContainsFunc(groups, func(o *group) bool { return o.settles(g) }) {
			out.Add(ev.finding(g))
		}
	}
	return out
}

// banned is the finding that a cord may not be where it is, whatever it is like.
const banned = diag.Code("OV911")

// settles reports whether a finding says enough for another to be left out.
func (g *group) settles(o *group) bool {
	if g == o || g.thing.element == piece || g.thing.element != o.thing.element || g.thing.index != o.thing.index {
		return false
	}
	if slices.ContainsFunc(o.sizes, func(i int) bool { return !slices.Contains(g.sizes, i) }) {
		return false
	}
	if g.code == banned {
		return o.code != banned
	}
	return g.attr == o.attr && diag.Lookup(g.code).Severity == diag.Error && diag.Lookup(o.code).Severity == diag.Warning
}

// finding gives the facts of what one thing crosses for one cause.
func (ev *evaluation) finding(g *group) diag.Diagnostic {
	var standards, ids []string
	add := func(to *[]string, s string) {
		if s != "" && !slices.Contains(*to, s) {
			*to = append(*to, s)
		}
	}
	for _, h := range g.hits {
		add(&standards, h.rule.Standard)
		add(&ids, h.rule.ID)
	}
	d := diag.Diagnostic{Code: g.code, Span: g.at, Sizes: ev.names(g.sizes),
		Args: diag.Args{"source": ownRule, "rules": ids, "rule": ids[0], "name": ev.facts.Kind}}
	switch {
	case len(standards) > 0:
		d.Args["source"] = standards
	case g.hits[0].rule.Read != plan.OwnRule:
		d.Args["source"] = practice
	}
	switch {
	case g.thing.element == part:
		kind := ev.facts.Parts[g.thing.index].Kind
		if kind == "" {
			kind = "other"
		}
		d.Args["part"] = diag.Term{Key: "part " + kind, N: 2}
	case slices.ContainsFunc(g.hits, func(h crossing) bool { return h.rule.uses.has(known().weighted) }):
		d.Args["part"] = diag.Term{Key: "part weight", N: 2}
	}
	if g.attr != nil && g.attr.number != nil {
		d.Args["what"] = diag.Term{Key: "measure " + g.attr.key(), N: 1}
		ev.figures(g, d.Args)
	}
	if g.attr == known().wholeFits {
		d.Args["what"] = diag.Term{Key: "measure " + g.attr.key(), N: 1}
		d.Args["found"] = ev.perSize(g.sizes, func(i int) string {
			return millimetres(max(at(ev.facts.Length, i), at(ev.facts.Diameter, i)))
		})
		d.Args["limit"] = ev.perSize(g.sizes, func(int) string { return millimetres(cylinderWidth) })
		d.Args["largest"] = d.Args["limit"]
	}
	return d
}

// key names the attribute among those of all elements.
func (a *attribute) key() string {
	if a.of == piece {
		return a.name
	}
	return string(a.of) + "." + a.name
}

// figures gives what was found in each size, the strictest limit that it crosses, whose limit that is, and the longest cord that keeps
// to all.
func (ev *evaluation) figures(g *group, args diag.Args) {
	found, limit := map[int]int64{}, map[int]int64{}
	whose, published := map[int][]string{}, map[int]int64{}
	for _, h := range g.hits {
		for _, i := range h.sizes {
			e := view{facts: ev.facts, class: ev.class, rule: h.rule, size: i, thing: g.thing}
			r := g.attr.number(&e)
			found[i] = r.least
			n, ok := e.passing(h.rule, h.cause, r.least)
			if !ok {
				continue
			}
			if n > r.least {
				found[i] = r.most
			}
			old, ok := limit[i]
			switch far, was := abs(found[i]-n), abs(found[i]-old); {
			case !ok, far > was:
				limit[i], published[i], whose[i] = n, h.rule.published(g.attr, n), []string{h.rule.Standard}
			case far == was:
				whose[i] = append(whose[i], h.rule.Standard)
			}
		}
	}
	var standards []string
	for _, i := range g.sizes {
		for _, s := range whose[i] {
			if s != "" && !slices.Contains(standards, s) {
				standards = append(standards, s)
			}
		}
	}
	if len(standards) > 0 {
		args["source"] = standards
	}
	args["found"] = ev.perSize(g.sizes, func(i int) string { return g.attr.written(found[i]) })
	args["limit"] = ev.perSize(g.sizes, func(i int) string { return g.attr.written(published[i]) })
	args["largest"] = ev.perSize(g.sizes, func(i int) string { return g.attr.written(limit[i]) })
	if g.thing.element == cord {
		args["largest"] = ev.perSize(g.sizes, func(i int) string {
			if l, ok := ev.longest(g.thing, i); ok {
				return cm(l)
			}
			return g.attr.written(limit[i])
		})
	}
}

// names are the names of some sizes, nil if they are all.
func (ev *evaluation) names(sizes []int) []string {
	if len(sizes) == len(ev.facts.SizeNames) {
		return nil
	}
	var out []string
	for _, i := range sizes {
		out = append(out, ev.facts.SizeNames[i])
	}
	return out
}

func (ev *evaluation) perSize(sizes []int, value func(i int) string) diag.PerSize {
	p := diag.PerSize{All: len(sizes) == len(ev.facts.SizeNames)}
	for _, i := range sizes {
		p.Names, p.Values = append(p.Names, ev.facts.SizeNames[i]), append(p.Values, value(i))
	}
	return p
}
