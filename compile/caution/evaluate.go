package caution

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// Evaluate goes through the rules. It returns the cautions that print, in the order of the table, and what was found: the
// limits that are crossed, what asks for care, and what must be known before a rule can be decided.
func Evaluate(f Facts) ([]plan.Caution, diag.List) {
	ev := evaluation{facts: &f, class: kinds().class[f.Kind], settled: make([]Truth, len(f.SizeNames))}
	ev.gather()
	for _, r := range rules() {
		if r.heldIn(f.Markets) {
			ev.rule(r)
		}
	}
	found := ev.findings()
	found = append(found, ev.questions()...)
	if ev.silent() {
		ev.cautions = append(ev.cautions, unchecked)
	}
	return ev.cautions, found
}

// unchecked says that the source was too silent for any rule.
var unchecked = plan.Caution{ID: "NONE", Severity: "caution", Step: -1, Text: plan.Text{
	"en": "No safety rule was checked, because the source says neither what is made nor for what age.",
	"es": "No se comprobó ninguna norma de seguridad, porque el texto fuente no dice qué se hace ni para qué edad."}}

// evaluation is the state of one run through the rules.
type evaluation struct {
	facts    *Facts
	class    string // "" if the kind is not known
	things   []thing
	view     view    // of what is looked at
	settled  []Truth // room for what holds in each size
	cautions []plan.Caution
	crossed  []crossing
	lacking  []missing
}

// crossing is a rule that is crossed by a thing for one cause, in some sizes.
type crossing struct {
	rule  *Rule
	cause cause
	thing thing
	at    source.Span
	sizes []int
}

// missing is what must be known of a thing in a size before a rule can be decided.
type missing struct {
	lacks attributes
	thing thing
	size  int
}

// thing is one cord, one part, one elastic, or the piece.
type thing struct {
	element element
	index   int
	step    int
	at      source.Span
	sizes   plan.Sizes
}

// has reports whether size i has the thing.
func (t thing) has(i int) bool { return t.sizes == nil || i < len(t.sizes) && t.sizes[i] }

// gather lists the things that rules look at beside the piece.
func (ev *evaluation) gather() {
	for i, c := range ev.facts.Cords {
		ev.things = append(ev.things, thing{cord, i, c.Step, c.At, c.For})
	}
	for i, p := range ev.facts.Parts {
		ev.things = append(ev.things, thing{part, i, p.Step, p.At, p.For})
	}
	for i, b := range ev.facts.Elastics {
		ev.things = append(ev.things, thing{elastic, i, b.Step, b.At, nil})
	}
}

// place is where the source says what a rule about the piece rests on: the first of its attributes that has a place, else
// where it says what is made.
func (ev *evaluation) place(r *Rule) source.Span {
	for _, a := range r.asks {
		if a.at != nil {
			if at := a.at(ev.facts); at != (source.Span{}) {
				return at
			}
		}
	}
	return ev.facts.KindAt
}

// rule applies one rule to the piece, and to each thing that the trigger asks about, size by size.
func (ev *evaluation) rule(r *Rule) {
	n := len(ev.facts.SizeNames)
	e := &ev.view
	*e = view{facts: ev.facts, class: ev.class, rule: r, open: true}
	settled := ev.settled[:n] // what holds of the piece, whatever its cords and parts are; False: no thing could change that
	never := true
	for i := range n {
		e.size = i
		settled[i] = r.when.evaluate(e).holds
		never = never && settled[i] == False
	}
	if never {
		return
	}
	e.open = false
	possible := slices.Clone(settled)
	ev.look(r, thing{piece, 0, -1, ev.place(r), nil}, possible, settled)
	for _, t := range ev.things {
		if r.element[t.element] {
			ev.look(r, t, possible, settled)
		}
	}
}

// look applies a rule to one thing in the sizes in which it may be crossed. What holds of the piece is noted, and is not found again
// of its things.
func (ev *evaluation) look(r *Rule, t thing, possible, settled []Truth) {
	n := len(possible)
	var prints plan.Sizes
	var hits []crossing
	e := &ev.view
	e.thing = t
	for i := range n {
		if possible[i] == False || !t.has(i) || t.element != piece && settled[i] == True {
			continue
		}
		e.size, e.without = i, 0
		v := r.when.evaluate(e)
		if t.element == piece {
			settled[i] = v.holds
		}
		if ev.printed(r, e, v) {
			if prints == nil {
				prints = make(plan.Sizes, n)
			}
			prints[i] = true
		}
		switch {
		case v.holds == True && len(r.causes) > 0:
			if hits == nil {
				hits = make([]crossing, len(r.causes))
			}
			for j, c := range r.causes {
				e.without = r.others(c)
				if e.without == 0 || r.when.evaluate(e).holds == True {
					hits[j].sizes = append(hits[j].sizes, i)
				}
			}
		case v.holds == Unknown && len(r.causes) > 0 && (t.element == piece || settled[i] == False):
			ev.lacking = append(ev.lacking, missing{v.lacks, t, i})
		}
	}
	if prints != nil {
		ev.print(r, t, prints)
	}
	for j := range hits {
		if len(hits[j].sizes) > 0 {
			ev.crossed = append(ev.crossed, crossing{r, r.causes[j], t, t.at, hits[j].sizes})
		}
	}
}

// printed tells whether the caution of a rule prints for a thing in a size, of which the trigger says v. A limit of a cord
// prints wherever there is such a cord, so that makers keep to it; what is undecided prints unless it waits for the kind,
// which is asked for first.
func (ev *evaluation) printed(r *Rule, e *view, v verdict) bool {
	undecided := func(v verdict) bool { return v.holds == Unknown && !v.lacks.has(known().kind) }
	switch {
	case ev.class == "" && v.holds == True && r.Seller:
		return false // nobody sells what is not said
	case v.holds == True:
		return true
	case r.Severity == "caution":
		return undecided(v)
	case e.thing.element == cord && r.limits != 0:
		if !slices.ContainsFunc(r.upper, func(a *attribute) bool { return a.number(e).most > 0 }) { // no end hangs free, no loop
			return false
		}
		e.beyond = true
		defer func() { e.beyond = false }()
		v = r.when.evaluate(e)
		return v.holds == True || undecided(v)
	case e.thing.element == piece && r.limits != 0:
		return undecided(v)
	}
	return false
}

// print enters the caution of a rule for the sizes that need it.
func (ev *evaluation) print(r *Rule, t thing, sizes plan.Sizes) {
	c := plan.Caution{ID: r.ID, Severity: r.Severity, Text: r.Text, Source: r.Standard, Basis: r.Basis, Read: r.Read, Seller: r.Seller,
		Step: t.step, For: sizes, At: t.at}
	if sizes.All() {
		c.For = nil
	}
	reasoned := r.Severity != "caution" // a reason for one thing is none for another
	same := func(o plan.Caution) bool {
		return o.ID == c.ID && o.Step == c.Step && slices.Equal(o.For, c.For) && (o.At == c.At || !reasoned)
	}
	if !slices.ContainsFunc(ev.cautions, same) {
		ev.cautions = append(ev.cautions, c)
	}
}

// silent reports whether the source says so little that nothing was asked and nothing checked.
func (ev *evaluation) silent() bool {
	if ev.facts.Kind != "" || len(ev.facts.Cords)+len(ev.facts.Parts)+len(ev.facts.Elastics) > 0 {
		return false
	}
	return !ev.aged()
}
