package caution

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
)

// passing is the limit of a cause: the number nearest to what was found that does not cross the rule.
func (e *view) passing(r *Rule, c cause, found int64) (int64, bool) {
	e.rule, e.without, e.put = r, r.others(c), c.attr
	defer func() { e.without, e.put = 0, nil }()
	var pass []int64
	for _, n := range r.when.numbers(c.attr) {
		if e.as = n; r.when.evaluate(e).holds != True {
			pass = append(pass, n)
		}
	}
	if len(pass) == 0 {
		return 0, false
	}
	return slices.MinFunc(pass, func(a, b int64) int {
		return cmp.Compare(abs(a-found), abs(b-found))
	}), true
}

// published is the limit of a rule as its source gives it, behind a value that passes: that of a ball that must not pass a hole of
// 44.4 mm is 44.4 mm, and 44.5 mm passes.
func (r *Rule) published(a *attribute, passes int64) int64 {
	out := passes
	r.when.walk(func(c *predicate) {
		if c.attr == a && c.op == belowOr && c.number+beyondLimit == passes {
			out = c.number
		}
	})
	return out
}

func abs(n int64) int64 { return max(n, -n) }

// bounds reports whether a cause of a rule sets a limit to a cord: far beyond all limits the rule is crossed.
func (e *view) bounds(r *Rule, c cause) bool {
	e.rule, e.without, e.put, e.as = r, r.others(c), c.attr, math.MaxInt64
	defer func() { e.without, e.put = 0, nil }()
	return r.when.evaluate(e).holds == True
}

// longest is the longest that a cord may be in a size by all rules that hold, in whole millimetres: a drawstring may be longer
// than its opening by twice the limit of an end, and longer than the wearer where it is drawn up by the limit of what then
// sticks out.
func (ev *evaluation) longest(t thing, i int) (plan.Length, bool) {
	c := &ev.facts.Cords[t.index]
	e := view{facts: ev.facts, class: ev.class, size: i, thing: t}
	most, found := plan.Length(math.MaxInt64), false
	for _, r := range rules() {
		if !r.heldIn(ev.facts.Markets) || !r.element[cord] {
			continue
		}
		for _, cause := range r.causes {
			if cause.attr == nil || cause.attr.of != cord || cause.attr.name != "free_cm" && cause.attr.name != "tight_cm" || !e.bounds(r, cause) {
				continue
			}
			limit, ok := e.passing(r, cause, math.MaxInt64/2)
			if !ok {
				continue
			}
			l := plan.Length(limit)
			opening, drawn := at(c.Opening, i), at(c.Drawn, i)
			switch {
			case cause.attr.name == "tight_cm" && drawn == plan.NoLength:
				continue
			case cause.attr.name == "tight_cm":
				l += drawn
			case c.girdles() && drawn != plan.NoLength:
				l = drawn + 2*l
			case opening != plan.NoLength:
				l = opening + 2*l
			}
			most, found = min(most, l), true
		}
	}
	return most / plan.Millimetre * plan.Millimetre, found
}

// written puts a measure into words, in the unit of its attribute; the printer puts in the decimal sign of the language.
func (a *attribute) written(n int64) string {
	if a.unit == int64(plan.Millimetre) {
		return millimetres(plan.Length(n))
	}
	return cm(plan.Length(n))
}

// cm writes a length in centimetres to a tenth of a millimetre.
func cm(l plan.Length) string { return figure(l.Cm(), 2) + " cm" }

func millimetres(l plan.Length) string { return figure(10*l.Cm(), 1) + " mm" }

func figure(x float64, decimals int) string {
	text := strconv.FormatFloat(x, 'f', decimals, 64)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
}
