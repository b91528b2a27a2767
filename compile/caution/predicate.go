package caution

import (
	"fmt"
	"math/big"
	"slices"
)

// predicate is a condition that can be evaluated.
type predicate struct {
	op      op
	of      []*predicate
	element element    // of any
	attr    *attribute // of what looks at an attribute
	words   []string   // of isOneOf
	number  int64      // of a comparison, in the unit the attribute is kept in
}

type op uint8

const (
	and op = iota
	or
	not
	anyOf
	isTrue
	isOneOf
	below     // <
	belowOr   // <=
	above     // >
	aboveOr   // >=
	isNumber  // ==
	notNumber // !=
)

// scaled reads a number in the unit of an attribute: lengths are kept in micrometres.
func (a *attribute) scaled(text string) (int64, error) {
	r, ok := new(big.Rat).SetString(text)
	if !ok {
		return 0, fmt.Errorf("%s is no number", text)
	}
	if r.Mul(r, big.NewRat(a.unit, 1)); !r.IsInt() {
		return 0, fmt.Errorf("%s is too fine for %s", text, a.name)
	}
	return r.Num().Int64(), nil
}

// evaluate tells whether the condition holds of a thing in a size.
func (p *predicate) evaluate(e *view) verdict {
	switch p.op {
	case and:
		v := verdict{holds: True}
		for _, k := range p.of {
			if v = v.and(k.evaluate(e)); v.holds == False {
				break
			}
		}
		return v
	case or:
		v := verdict{holds: False}
		for _, k := range p.of {
			if v = v.or(k.evaluate(e)); v.holds == True {
				break
			}
		}
		return v
	case not:
		v := p.of[0].evaluate(e)
		v.holds = v.holds.not()
		return v
	case anyOf:
		if e.open {
			return verdict{holds: Unknown}
		}
		if e.thing.element != p.element {
			return verdict{holds: False}
		}
		return p.of[0].evaluate(e)
	}
	switch {
	case e.without.has(p.attr):
		return verdict{holds: False}
	case e.beyond && p.attr.measured:
		return verdict{holds: True}
	}
	t := p.holds(e)
	if t == Unknown {
		return verdict{Unknown, p.attr.bit()}
	}
	return verdict{holds: t}
}

// holds tells whether a single condition holds.
func (p *predicate) holds(e *view) Truth {
	switch p.op {
	case isTrue:
		if t := p.attr.truth(e); t != Unknown {
			return t
		}
		return p.attr.assumed
	case isOneOf:
		w := p.attr.word(e)
		if w == "" {
			return Unknown
		}
		return truth(slices.Contains(p.words, w))
	}
	r := e.number(p.attr)
	switch p.op {
	case below:
		return r.below(p.number)
	case belowOr:
		return r.below(p.number + 1)
	case above:
		return r.below(p.number + 1).not()
	case aboveOr:
		return r.below(p.number).not()
	}
	t := Unknown
	switch {
	case r.least == r.most:
		t = truth(r.least == p.number)
	case p.number < r.least || p.number > r.most:
		t = False
	}
	if p.op == notNumber {
		return t.not()
	}
	return t
}

// walk calls f for each condition in a predicate.
func (p *predicate) walk(f func(*predicate)) {
	f(p)
	for _, k := range p.of {
		k.walk(f)
	}
}

// beyondLimit is by how much a length passes a limit that it must not keep to but go beyond: a tenth of a millimetre.
const beyondLimit = 100

// numbers are the limits that an attribute is compared with.
func (p *predicate) numbers(a *attribute) []int64 {
	var out []int64
	p.walk(func(c *predicate) {
		if c.attr != a || c.op < below {
			return
		}
		n := c.number
		if c.op == belowOr { // at the number it is crossed
			n += beyondLimit
		}
		out = append(out, n)
	})
	return out
}
