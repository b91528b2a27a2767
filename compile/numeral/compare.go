package numeral

import (
	"math"
	"slices"
	"strings"
	"unicode"
)

// Compare returns the numbers that stand in one text alone. Two and three in words are missed only if the other text has a number
// that is missed here too: two may be both, a pair or not said at all, but two is not tres. A number that is said again is not
// missed.
func Compare(a, b []Number) (onlyA, onlyB []Number) {
	p, q := newSide(a), newSide(b)
	p.pair(q, func(x, y Number) bool { return x.kind != loose && y.kind != loose && alike(x, y) })
	p.pair(q, func(x, y Number) bool { return alike(x, y) })
	p.halves(q)
	q.halves(p)
	p.converted()
	q.converted()
	missA, missB := p.missing(), q.missing()
	if len(missB) == 0 {
		missA = slices.DeleteFunc(missA, func(n Number) bool { return n.idle() || q.says(n) })
	}
	if len(missA) == 0 {
		missB = slices.DeleteFunc(missB, func(n Number) bool { return n.idle() || p.says(n) })
	}
	return missA, missB
}

// idle reports whether a number may be left out where the sentence is put in another way.
func (n Number) idle() bool { return n.kind == word && n.values[0].N <= 3 }

// side is the numbers of one text, and which of them have found their like.
type side struct {
	n    []Number
	done []bool
}

func newSide(n []Number) *side { return &side{n, make([]bool, len(n))} }

// pair lets each number find one of the other text that is still alone.
func (s *side) pair(o *side, same func(x, y Number) bool) {
	for i, x := range s.n {
		if s.done[i] {
			continue
		}
		for k, y := range o.n {
			if !o.done[k] && same(x, y) {
				s.done[i], o.done[k] = true, true
				break
			}
		}
	}
}

// alike reports whether two numbers may be one.
func alike(x, y Number) bool {
	if x.size > 0 || y.size > 0 {
		return x.size == y.size
	}
	return slices.ContainsFunc(x.values, func(v Rat) bool { return slices.Contains(y.values, v) })
}

// halves finds 2½ in 2 horas y media: the whole and the part each by itself.
func (s *side) halves(o *side) {
	for i, x := range s.n {
		if s.done[i] || x.kind != figure || len(x.values) == 0 || x.values[0].D == 1 || x.values[0].N < x.values[0].D {
			continue
		}
		v := x.values[0]
		big := o.alone(whole(v.N / v.D))
		part := o.alone(rat(v.N%v.D, v.D))
		if big >= 0 && part >= 0 {
			s.done[i], o.done[big], o.done[part] = true, true, true
		}
	}
}

// alone is the first number of a value that has not found its like, -1 for none.
func (s *side) alone(v Rat) int {
	return slices.IndexFunc(s.n, func(n Number) bool {
		return slices.Contains(n.values, v) && !s.done[slices.IndexFunc(s.n, func(m Number) bool { return m.From == n.From })]
	})
}

// conversions are units of the inch, the pound and Fahrenheit, with what they are in the unit that the other text gives.
var conversions = map[string]struct {
	to         []string
	times, add float64
	near       float64 // how far a rounded figure may be off, in the unit it is converted to
}{
	"in": {[]string{"cm"}, 2.54, 0, 0.33}, // to the quarter
	"yd": {[]string{"m"}, 0.9144, 0, 2.5},
	"oz": {[]string{"g"}, 28.3495, 0, 3},
	"ft": {[]string{"m", "cm"}, 0.3048, 0, 0.1},
	"°F": {[]string{"°C"}, 5.0 / 9, -32 * 5.0 / 9, 1},
}

var unitNames = map[string]string{"inch": "in", "inches": "in", "pulg": "in", "pulgada": "in", "pulgadas": "in", "″": "in", `"`: "in",
	"yds": "yd", "yard": "yd", "yards": "yd", "feet": "ft"}

// converted finds lengths, weights and temperatures that the same text gives in another unit, so that the other need not have them.
func (s *side) converted() {
	for i, x := range s.n {
		if s.done[i] || len(x.values) == 0 {
			continue
		}
		unit := x.unit
		if u := unitNames[unit]; u != "" {
			unit = u
		}
		c, ok := conversions[unit]
		if !ok {
			continue
		}
		v := x.values[0].float()*c.times + c.add
		s.done[i] = slices.ContainsFunc(s.n, func(n Number) bool {
			if !slices.Contains(c.to, n.unit) || len(n.values) == 0 {
				return false
			}
			have, near := n.values[0].float(), c.near
			if n.unit == "cm" && unit == "ft" {
				have /= 100
			}
			return math.Abs(have-v) <= max(near, 0.02*math.Abs(v))
		})
	}
}

// missing lists what has found no like.
func (s *side) missing() []Number {
	var out []Number
	for i, n := range s.n {
		if !s.done[i] && n.kind != loose {
			out = append(out, n)
		}
	}
	return out
}

// says reports whether a number stands in the text at all, though its like was found for another.
func (s *side) says(n Number) bool {
	return slices.ContainsFunc(s.n, func(m Number) bool { return alike(n, m) })
}

// Same reports whether two texts of one language give the same figures: the same numbers with the same units, in the same order
// or, where they stand in another order, each before the word it stood before. Two and three in words may come and go with the
// wording.
func Same(textA string, a []Number, textB string, b []Number) bool {
	if onlyA, onlyB := Compare(a, b); len(onlyA)+len(onlyB) > 0 {
		return false
	}
	firm := func(list []Number) []Number {
		return slices.DeleteFunc(slices.Clone(list), func(n Number) bool { return n.kind == loose || n.idle() || n.size > 0 || len(n.values) == 0 })
	}
	a, b = firm(a), firm(b)
	if len(a) != len(b) {
		return true // one is said again
	}
	if slices.EqualFunc(a, b, func(x, y Number) bool { return alike(x, y) && x.unit == y.unit }) {
		return true
	}
	before := func(text string, list []Number) []string {
		out := make([]string, len(list))
		for i, n := range list {
			out[i] = n.unit + " " + followed(text[n.To:])
		}
		return out
	}
	wordsA, wordsB := before(textA, a), before(textB, b)
	left := make([]bool, len(b))
	for i, x := range a {
		found := false
		for k, y := range b {
			if !left[k] && alike(x, y) && wordsA[i] == wordsB[k] {
				left[k], found = true, true
				break
			}
		}
		if !found {
			return false
		}
	}
	return true
}

// followed is the first word of a text.
func followed(text string) string {
	word := strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) })
	if len(word) == 0 {
		return ""
	}
	return strings.ToLower(word[0])
}
