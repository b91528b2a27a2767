package caution

import (
	"math"
	"strings"
	"sync"

	"ovillo/compile/plan"
	"ovillo/lang/source"
)

// element is what a condition looks at.
type element string

const (
	piece   element = "" // the piece itself
	cord    element = "cord"
	part    element = "part"
	elastic element = "elastic"
)

// attribute is something that a trigger may ask of a piece, a cord, a part or elastic. It is a truth, a word or a number.
type attribute struct {
	name     string
	of       element
	index    int
	unit     int64 // what one is: months, or micrometres to a centimetre or a millimetre
	measured bool  // its comparisons are limits, and no conditions
	assumed  Truth // what is taken for it where nothing is said
	truth    func(*view) Truth
	word     func(*view) string // "" if it is not known
	number   func(*view) reach
	at       func(*Facts) source.Span // where it is said; nil: nowhere of its own
}

// attributes is a set of attributes.
type attributes uint64

func (a *attribute) bit() attributes         { return 1 << a.index }
func (s attributes) has(a *attribute) bool   { return s&a.bit() != 0 }
func (s attributes) meets(o attributes) bool { return s&o != 0 }
func (s attributes) list() (out []*attribute) {
	for _, a := range vocabulary() {
		if s.has(a) {
			out = append(out, a)
		}
	}
	return out
}

// lookUp finds an attribute of an element by its name, nil if there is none.
func lookUp(e element, name string) *attribute { return byName()[elementName{e, name}] }

type elementName struct {
	of   element
	name string
}

var byName = sync.OnceValue(func() map[elementName]*attribute {
	m := map[elementName]*attribute{}
	for _, a := range vocabulary() {
		m[elementName{a.of, a.name}] = a
	}
	return m
})

// wellKnown are attributes that the evaluation itself goes by.
type wellKnown struct {
	kind, stuffed, weighted, wholeFits, zone, role, free, belowCrotch *attribute
	endOrRole                                                         attributes // what the free length of a cord follows from
	byZone                                                            attributes // what is worked out of a cord by its zone
	byRole                                                            attributes // what a cord is asked only if it is for something
}

var known = sync.OnceValue(func() wellKnown {
	return wellKnown{lookUp(piece, "kind"), lookUp(piece, "soft_filled"), lookUp(piece, "weighted"), lookUp(piece, "whole_fits_cylinder"), lookUp(cord, "zone"), lookUp(cord, "role"), lookUp(cord, "free_cm"), lookUp(piece, "ends_below_crotch"),
		setOf(cord, "end", "role"),
		setOf(cord, "tight_cm", "loop_tight_cm", "tied_behind_neck", "limb", "hangs_below_hem"),
		setOf(cord, "tight_cm", "loop_tight_cm", "tied_behind_neck", "limb", "hangs_below_hem", "width_cm")}
})

// setOf is the set of some attributes of an element.
func setOf(e element, names ...string) attributes {
	var s attributes
	for _, n := range names {
		s |= lookUp(e, n).bit()
	}
	return s
}

// allOf is the set of the attributes of an element.
func allOf(e element) (s attributes) {
	for _, a := range vocabulary() {
		if a.of == e {
			s |= a.bit()
		}
	}
	return s
}

// reach is what a number can be, as far as it is known.
type reach struct{ least, most int64 }

var anyNumber = reach{0, math.MaxInt64}

func exactly(n int64) reach { return reach{n, n} }

// below tells whether the number is less than another.
func (r reach) below(n int64) Truth {
	switch {
	case r.most < n:
		return True
	case r.least >= n:
		return False
	}
	return Unknown
}

// view is what a trigger is evaluated of: a thing in a size.
type view struct {
	facts   *Facts
	rule    *Rule
	size    int
	thing   thing
	class   string     // of what is made
	open    bool       // any(…) is left open: could the rule be crossed?
	beyond  bool       // limits count as crossed: does the rule apply?
	without attributes // conditions on these count as false
	put     *attribute // this number is taken to be put
	as      int64
}

func (e *view) number(a *attribute) reach {
	if e.put == a {
		return exactly(e.as)
	}
	return a.number(e)
}

func (e *view) cord() *Cord { return &e.facts.Cords[e.thing.index] }
func (e *view) part() *Part { return &e.facts.Parts[e.thing.index] }

// length reads an entry of a list by size.
func (e *view) length(l plan.Lengths) reach { return measure(at(l, e.size)) }

func measure(l plan.Length) reach {
	if l == plan.NoLength {
		return anyNumber
	}
	return exactly(int64(l))
}

// at reads an entry of a list by size.
func at(l plan.Lengths, i int) plan.Length {
	if i >= len(l) {
		return plan.NoLength
	}
	return l[i]
}

func months(l []int, i int) int {
	if i >= len(l) {
		return -1
	}
	return l[i]
}

// vocabulary lists all attributes. What they mean, and what is taken for them if they are not known, stands in
// data/vocabulary.csv.
var vocabulary = sync.OnceValue(func() []*attribute {
	var out []*attribute
	assumed := map[string]Truth{"true": True, "false": False}
	for _, row := range table("vocabulary.csv") {
		of, name := split(row["name"])
		a := &attribute{name: name, of: of, index: len(out), unit: unitOf(name), measured: row["limit"] == "yes", assumed: assumed[row["if_unknown"]]}
		switch of {
		case piece:
			a.truth, a.word, a.number, a.at = truthsOfPiece[name], wordsOfPiece[name], numbersOfPiece[name], said[name]
		case cord:
			a.truth, a.word, a.number = truthsOfCord[name], wordsOfCord[name], numbersOfCord[name]
		case part:
			a.truth, a.word = truthsOfPart[name], wordsOfPart[name]
		case elastic:
			a.truth = truthsOfElastic[name]
		}
		out = append(out, a)
	}
	return out
})

// sayings are the words of a source that say what an attribute asks, by its key.
var sayings = sync.OnceValue(func() map[string][]string {
	m := map[string][]string{}
	for _, row := range table("vocabulary.csv") {
		if row["say"] != "" {
			m[row["name"]] = strings.Split(row["say"], "|")
		}
	}
	return m
})
