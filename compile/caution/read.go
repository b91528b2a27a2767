package caution

import (
	"fmt"
	"slices"
	"strings"
	"sync"
)

// This file reads the triggers of the rules:
//
//	condition = all { "or" all }
//	all       = one { "and" one }
//	one       = [ "not" ] ( "(" condition ")" | "any" "(" element ":" condition ")" | NAME | test )
//	test      = ATTRIBUTE [ "in" "{" WORD { "," WORD } "}" | SIGN ( WORD | NUMBER ) ]
//
// The attributes are those of data/vocabulary.csv; a NAME is a condition of data/names.csv. The library that reads the language
// took eight milliseconds for the table, which is longer than many a pattern is checked.

var comparisons = map[string]op{"<": below, "<=": belowOr, ">": above, ">=": aboveOr, "==": isNumber, "!=": notNumber}

// tokens are the words, the numbers and the signs of a trigger.
func tokens(text string) []string {
	var out []string
	for i := 0; i < len(text); {
		n := 1
		switch c := text[i]; {
		case c == ' ':
			i++
			continue
		case inWord(c):
			for i+n < len(text) && inWord(text[i+n]) {
				n++
			}
		case strings.IndexByte("=!<>", c) >= 0 && strings.HasPrefix(text[i+1:], "="):
			n = 2
		}
		out = append(out, text[i:i+n])
		i += n
	}
	return out
}

// inWord reports whether a letter is one of a name or of a number.
func inWord(c byte) bool {
	return c == '_' || c == '.' || '0' <= c && c <= '9' || 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z'
}

// conditions are the named conditions that were read, by the element they are on.
type conditions map[elementName]*predicate

// read reads a condition on an element, or on the piece.
func (c conditions) read(text string, e element) (*predicate, error) {
	r := triggerReader{rest: tokens(text), of: e, seen: c}
	p := r.condition()
	if r.err == nil && len(r.rest) > 0 {
		r.fail("%q is not expected", r.rest[0])
	}
	return p, r.err
}

type triggerReader struct {
	rest []string
	of   element
	seen conditions
	err  error
}

func (r *triggerReader) fail(format string, args ...any) {
	if r.err == nil {
		r.err = fmt.Errorf(format, args...)
	}
}

// take takes a token if it comes next.
func (r *triggerReader) take(token string) bool {
	if len(r.rest) == 0 || r.rest[0] != token {
		return false
	}
	r.rest = r.rest[1:]
	return true
}

// want takes a token that must come next.
func (r *triggerReader) want(token string) {
	if !r.take(token) {
		r.fail("%q is missing", token)
	}
}

// next takes whatever comes next.
func (r *triggerReader) next() string {
	if len(r.rest) == 0 {
		r.fail("it ends too early")
		return ""
	}
	t := r.rest[0]
	r.rest = r.rest[1:]
	return t
}

func (r *triggerReader) condition() *predicate { return r.joined(or, "or", r.all) }
func (r *triggerReader) all() *predicate       { return r.joined(and, "and", r.one) }

// joined reads conditions with a word between them.
func (r *triggerReader) joined(o op, word string, item func() *predicate) *predicate {
	p := &predicate{op: o, of: []*predicate{item()}}
	for r.err == nil && r.take(word) {
		p.of = append(p.of, item())
	}
	if len(p.of) == 1 {
		return p.of[0]
	}
	return p
}

func (r *triggerReader) one() (p *predicate) {
	switch {
	case r.take("not"):
		return &predicate{op: not, of: []*predicate{r.one()}}
	case r.take("("):
		p = r.condition()
		r.want(")")
		return p
	case r.take("any"):
		return r.anyOf()
	}
	name := r.next()
	if p, err := r.named(name); p != nil || err != nil {
		if err != nil {
			r.fail("%s: %w", name, err)
		}
		return p
	}
	a := lookUp(r.of, name)
	if a == nil {
		r.fail("no attribute %s of %q", name, r.of)
		return &predicate{}
	}
	return r.test(a)
}

// named is the condition that goes by a name, nil if there is none. It is read once for all triggers of a table.
func (r *triggerReader) named(name string) (*predicate, error) {
	means, ok := names()[name]
	if !ok {
		return nil, nil
	}
	key := elementName{r.of, name}
	if p, ok := r.seen[key]; ok {
		return p, nil
	}
	p, err := r.seen.read(means, r.of)
	r.seen[key] = p
	return p, err
}

func (r *triggerReader) anyOf() *predicate {
	outer := r.of
	r.want("(")
	if r.of = element(r.next()); outer != piece || !slices.Contains([]element{cord, part, elastic}, r.of) {
		r.fail("any(%s) does not stand here", r.of)
	}
	r.want(":")
	p := &predicate{op: anyOf, element: r.of, of: []*predicate{r.condition()}}
	r.want(")")
	r.of = outer
	return p
}

// test reads what is asked of an attribute.
func (r *triggerReader) test(a *attribute) *predicate {
	if r.take("in") {
		p := &predicate{op: isOneOf, attr: a}
		r.want("{")
		for p.words = []string{r.next()}; r.take(","); {
			p.words = append(p.words, r.next())
		}
		r.want("}")
		if a.word == nil {
			r.fail("%s is no word", a.name)
		}
		return p
	}
	var o op
	sign := ""
	if len(r.rest) > 0 {
		if o = comparisons[r.rest[0]]; o != 0 {
			sign = r.next()
		}
	}
	switch {
	case sign == "" && a.truth != nil:
		return &predicate{op: isTrue, attr: a}
	case a.word != nil && (sign == "==" || sign == "!="):
		p := &predicate{op: isOneOf, attr: a, words: []string{r.next()}}
		if sign == "!=" {
			p = &predicate{op: not, of: []*predicate{p}}
		}
		return p
	case sign != "" && a.number != nil:
		n, err := a.scaled(r.next())
		if err != nil {
			r.fail("%w", err)
		}
		return &predicate{op: o, attr: a, number: n}
	}
	r.fail("%s is compared in a way it cannot be", a.name)
	return &predicate{}
}

// names are the conditions that several rules share.
var names = sync.OnceValue(func() map[string]string {
	m := map[string]string{}
	for _, row := range table("names.csv") {
		m[row["name"]] = row["means"]
	}
	return m
})
