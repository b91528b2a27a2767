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
	ev := evaluation{facts: f, class: classes[f.Kind]}
	for i := range Rules {
		ev.rule(&Rules[i])
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
	"en": "No safety rule was checked, because the source says neither what is made nor for what age; local law and the " +
		"advice of licensed or certified professionals come first.",
	"es": "No se comprobó ninguna norma de seguridad, porque el texto fuente no dice qué se hace ni para qué edad; " +
		"prevalecen la ley local y el consejo de profesionales titulados o acreditados."}}

// evaluation is the state of one run through the rules.
type evaluation struct {
	facts    Facts
	class    string // "" if the kind is not known
	cautions []plan.Caution
	crossed  []crossing
	lacking  []missing
}

// crossing is a rule that is crossed by a thing, in some sizes.
type crossing struct {
	rule  *Rule
	thing thing
	sizes []int
}

// missing is something that must be known before a rule can be decided.
type missing struct {
	lack  lack
	thing thing
	size  int
}

// thing is one cord, one button, one pompom, or the piece.
type thing struct {
	element element
	index   int
	step    int
	at      source.Span
	sizes   plan.Sizes
}

// things lists what a rule looks at.
func (ev *evaluation) things(e element) []thing {
	var out []thing
	switch e {
	case cord:
		for i, c := range ev.facts.Cords {
			out = append(out, thing{e, i, c.Step, c.At, c.For})
		}
	case elastic:
		for i, b := range ev.facts.Elastics {
			out = append(out, thing{e, i, b.Step, b.At, nil})
		}
	case button, pompom:
		for i, p := range ev.facts.Parts {
			if p.Kind == string(e) {
				out = append(out, thing{e, i, p.Step, p.At, p.For})
			}
		}
	default:
		out = append(out, thing{e, 0, -1, ev.facts.KindAt, nil})
	}
	return out
}

// rule applies one rule to each thing it looks at, size by size.
func (ev *evaluation) rule(r *Rule) {
	for _, t := range ev.things(r.element) {
		n := len(ev.facts.SizeNames)
		prints := make(plan.Sizes, n)
		hit := crossing{rule: r, thing: t}
		for i := range n {
			if t.sizes != nil && (i >= len(t.sizes) || !t.sizes[i]) {
				continue
			}
			applies := ev.applies(r, t, i)
			crossed := ev.measured(r, t, i, applies)
			// A rule that is only undecided for want of a kind prints nothing: the kind is asked for.
			prints[i] = applies.holds != False && applies.lack != lackKind && !(r.measure == opening && crossed.holds == False)
			if crossed.holds == True && r.code != "" {
				hit.sizes = append(hit.sizes, i)
			}
			if crossed.holds == Unknown {
				ev.lacking = append(ev.lacking, missing{crossed.lack, t, i})
			}
		}
		ev.print(r, t, prints)
		if len(hit.sizes) > 0 {
			ev.crossed = append(ev.crossed, hit)
		}
	}
}

// applies tells whether a rule is about a thing in size i: the kind, the age and the place of it.
func (ev *evaluation) applies(r *Rule, t thing, i int) verdict {
	v := holds().and(ev.isKind(r), lackKind).and(ev.isAge(r, i), lackAge)
	if t.element == elastic {
		return v.and(r.in(ev.facts.Elastics[t.index].Zone), lackZone)
	}
	if t.element != cord {
		return v
	}
	c := ev.facts.Cords[t.index]
	v = v.and(r.in(c.Zone), lackZone)
	if r.drawn != Unknown {
		v = v.and(truth((c.Role == "drawstring") == (r.drawn == True)), lackFree)
	}
	return v
}

// in tells whether a zone is one of those of the rule.
func (r *Rule) in(z Zone) Truth {
	switch {
	case r.zones == nil:
		return True
	case z == UnknownZone:
		return Unknown
	}
	return truth(slices.Contains(r.zones, z))
}

// measured adds to a verdict whether the limit of the rule is crossed.
func (ev *evaluation) measured(r *Rule, t thing, i int, v verdict) verdict {
	switch r.measure {
	case freeEnd:
		return v.and(ev.facts.Cords[t.index].longer(i, r.Limit), lackFree)
	case opening:
		gap := at(ev.facts.Gap, i)
		if gap == plan.NoLength {
			return v.and(Unknown, lackGap)
		}
		return v.and(truth(gap > r.Limit), lackGap)
	}
	return v
}

func (ev *evaluation) isKind(r *Rule) Truth {
	if r.kinds == nil {
		return True
	}
	if ev.class == "" {
		return Unknown
	}
	return truth(isOf(ev.class, r.kinds))
}

// isAge goes by the youngest wearer of a size: a size for 6 to 8 years is one for children under 7.
func (ev *evaluation) isAge(r *Rule, i int) Truth {
	if r.AgeBelow <= 0 {
		return True
	}
	age := ev.age(i)
	if age < 0 {
		return Unknown
	}
	return truth(age >= r.AgeFrom && age < r.AgeBelow)
}

// age is the youngest wearer of size i in months, -1 if not known. A soft toy is for the youngest whatever its label says
// (scope of EN 71-1: soft-filled toys for cuddling count as toys for under 36 months).
func (ev *evaluation) age(i int) int {
	if ev.class == "toy" {
		return 0
	}
	if i >= len(ev.facts.AgeMonths) {
		return -1
	}
	return ev.facts.AgeMonths[i]
}

// print enters the caution of a rule for the sizes that need it.
func (ev *evaluation) print(r *Rule, t thing, sizes plan.Sizes) {
	if !slices.Contains(sizes, true) {
		return
	}
	c := plan.Caution{ID: r.ID, Severity: r.Severity, Text: r.Text, Source: r.Standard, Basis: r.Basis, Step: t.step, For: sizes}
	if sizes.All() {
		c.For = nil
	}
	same := func(o plan.Caution) bool { return o.ID == c.ID && o.Step == c.Step && slices.Equal(o.For, c.For) }
	if !slices.ContainsFunc(ev.cautions, same) {
		ev.cautions = append(ev.cautions, c)
	}
}

// silent reports whether the source says so little that nothing was asked and nothing checked.
func (ev *evaluation) silent() bool {
	if ev.facts.Kind != "" || ev.hasThings() {
		return false
	}
	return !slices.ContainsFunc(ev.facts.AgeMonths, func(a int) bool { return a >= 0 })
}

func (ev *evaluation) hasThings() bool {
	return len(ev.facts.Cords)+len(ev.facts.Parts)+len(ev.facts.Elastics) > 0
}
