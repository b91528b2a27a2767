package diag

import (
	"errors"
	"fmt"
	"sort"
	"strconv"
	"strings"
)

// This file fills the templates of the catalogue:
//
//	{name}             the argument as it is said in the language
//	{name|one|other}   chosen by the number in name: an int, the length of a list, or a figure that holds in all sizes
//	{name|or}          a list joined by "or" in place of "and"
//	{{ and }}          a brace
//
// The forms may hold holes themselves. A hole without an argument stays visible, since a message with a gap in it would
// read as if it were whole; [Incomplete] finds such faults in tests.

// piece is a stretch of plain text, or a hole with its forms.
type piece struct {
	text  string
	hole  string
	forms [][]piece
	raw   string // the hole as it is written in the catalogue
}

var (
	errOpen  = errors.New("a { is not closed")
	errClose = errors.New("a } closes nothing")
	errHole  = errors.New("a hole is {name}, {name|one|other} or {name|or}")
)

// Fill puts the arguments into a template in a language.
func Fill(template string, a Args, lang string) string {
	pieces, _ := readTemplate(template)
	var b strings.Builder
	fill(&b, pieces, a, lang)
	return b.String()
}

func fill(b *strings.Builder, pieces []piece, a Args, lang string) {
	for _, p := range pieces {
		v, ok := a[p.hole]
		switch {
		case p.hole == "":
			b.WriteString(p.text)
		case !ok:
			b.WriteString(p.raw)
		case len(p.forms) == 2:
			form := p.forms[1]
			if isOne(v) {
				form = p.forms[0]
			}
			fill(b, form, a, lang)
		case len(p.forms) == 1:
			b.WriteString(say(v, lang, true))
		default:
			b.WriteString(say(v, lang, false))
		}
	}
}

// Holes returns the names that a template asks for, each once, in alphabetical order.
func Holes(template string) []string {
	pieces, _ := readTemplate(template)
	seen := map[string]bool{}
	var walk func([]piece)
	walk = func(ps []piece) {
		for _, p := range ps {
			if p.hole != "" {
				seen[p.hole] = true
			}
			for _, f := range p.forms {
				walk(f)
			}
		}
	}
	walk(pieces)
	out := make([]string, 0, len(seen))
	for name := range seen {
		out = append(out, name)
	}
	sort.Strings(out)
	return out
}

// readTemplate cuts a template into pieces. What cannot be read as a hole stays as text, with an error for the tests.
func readTemplate(t string) ([]piece, error) {
	r := templateReader{rest: t}
	pieces := r.pieces(0)
	return pieces, r.err
}

type templateReader struct {
	rest string
	err  error
}

// fail keeps the first error: what follows it is its consequence.
func (r *templateReader) fail(err error) {
	if r.err == nil {
		r.err = err
	}
}

// pieces reads up to the end, or inside a hole up to the | or } that ends a form.
func (r *templateReader) pieces(depth int) []piece {
	var out []piece
	var text strings.Builder
	flush := func() {
		if text.Len() > 0 {
			out = append(out, piece{text: text.String()})
			text.Reset()
		}
	}
	for r.rest != "" {
		c := r.rest[0]
		switch {
		case strings.HasPrefix(r.rest, "{{"), depth == 0 && strings.HasPrefix(r.rest, "}}"):
			text.WriteByte(c)
			r.rest = r.rest[2:]
		case c == '{':
			flush()
			out = append(out, r.hole(depth))
		case depth > 0 && (c == '|' || c == '}'):
			flush()
			return out
		default:
			if c == '}' {
				r.fail(errClose)
			}
			text.WriteByte(c)
			r.rest = r.rest[1:]
		}
	}
	flush()
	return out
}

// hole reads a hole; the brace that opens it comes next.
func (r *templateReader) hole(depth int) piece {
	start := r.rest
	end := strings.IndexAny(start[1:], "{|}") + 1
	if end == 0 || !isHoleName(start[1:end]) {
		r.fail(errHole)
		r.rest = start[1:]
		return piece{text: "{"}
	}
	p := piece{hole: start[1:end]}
	r.rest = start[end:]
	for strings.HasPrefix(r.rest, "|") {
		r.rest = r.rest[1:]
		p.forms = append(p.forms, r.pieces(depth+1))
	}
	if !strings.HasPrefix(r.rest, "}") {
		r.fail(errOpen)
		r.rest = ""
		return piece{text: start}
	}
	r.rest = r.rest[1:]
	p.raw = start[:len(start)-len(r.rest)]
	if len(p.forms) > 2 || len(p.forms) == 1 && !strings.HasSuffix(p.raw, "|or}") {
		r.fail(errHole)
	}
	return p
}

func isHoleName(s string) bool {
	for i := 0; i < len(s); i++ {
		c := s[i]
		if c != '_' && (c < 'a' || c > 'z') && (c < 'A' || c > 'Z') && (c < '0' || c > '9') {
			return false
		}
	}
	return s != ""
}

// isOne reports whether a value asks for the singular.
func isOne(v any) bool {
	switch v := v.(type) {
	case []string:
		return len(v) == 1
	case PerSize:
		one, ok := v.same()
		return ok && one == "1"
	case Term:
		return v.N == 1
	default:
		n, err := strconv.Atoi(fmt.Sprint(v))
		return err == nil && (n == 1 || n == -1)
	}
}

// say puts one value into words; or asks for a list of alternatives.
func say(v any, lang string, or bool) string {
	switch v := v.(type) {
	case string:
		return quotable(v)
	case []string:
		return joinList(v, lang, or)
	case PerSize:
		return v.say(lang)
	case Term:
		return v.say(lang)
	case Length:
		return v.say(lang)
	case Said:
		return v.in(lang)
	default:
		return quotable(fmt.Sprint(v))
	}
}

// in is the text in a language; English stands in for one that has none.
func (s Said) in(lang string) string {
	if text, ok := s[lang]; ok {
		return quotable(text)
	}
	return quotable(s["en"])
}

// say lists the values by size, "88 in 1 y, 100 in 2 y", or gives the one that holds for all. The value comes first, so
// that it stands where a sentence expects a number.
func (p PerSize) say(lang string) string {
	if one, ok := p.same(); ok {
		return decimals(one, lang)
	}
	in := " in "
	if lang == "es" {
		in = " en "
	}
	parts := make([]string, 0, len(p.Values))
	for i, v := range p.Values {
		name := "?"
		if i < len(p.Names) {
			name = quotable(p.Names[i])
		}
		parts = append(parts, decimals(v, lang)+in+name)
	}
	return strings.Join(parts, ", ")
}

// same returns the value that holds in all sizes of the pattern, if there is one.
func (p PerSize) same() (string, bool) {
	if !p.All || len(p.Values) == 0 {
		return "", false
	}
	for _, v := range p.Values[1:] {
		if v != p.Values[0] {
			return "", false
		}
	}
	return p.Values[0], true
}

// decimals puts the decimal sign of the language into figures such as "12.5 cm".
func decimals(v, lang string) string {
	v = quotable(v)
	if lang != "es" {
		return v
	}
	b := []byte(v)
	for i := 1; i+1 < len(b); i++ {
		if b[i] == '.' && isDigit(b[i-1]) && isDigit(b[i+1]) {
			b[i] = ','
		}
	}
	return string(b)
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

// say gives the length in centimetres, to a tenth of a millimetre.
func (l Length) say(lang string) string {
	sign := ""
	if l < 0 {
		sign, l = "-", -l
	}
	hundredths := (int64(l) + 50) / 100
	text := fmt.Sprintf("%d.%02d", hundredths/100, hundredths%100)
	text = strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
	if text == "0" {
		sign = ""
	}
	return decimals(sign+text, lang) + " cm"
}

// joinList joins a list the way a sentence does: "a, b and c".
func joinList(items []string, lang string, or bool) string {
	clean := make([]string, len(items))
	for i, s := range items {
		clean[i] = quotable(s)
	}
	last := len(clean) - 1
	if last < 1 {
		return strings.Join(clean, "")
	}
	return strings.Join(clean[:last], ", ") + " " + conjunction(clean[last], lang, or) + " " + clean[last]
}

// conjunction is the word before the last item. In Spanish it changes before a word that begins with its own sound.
func conjunction(next, lang string, or bool) string {
	if lang != "es" {
		if or {
			return "or"
		}
		return "and"
	}
	sound := strings.TrimPrefix(strings.ToLower(strings.TrimLeft(next, `"«“'`)), "h")
	starts := func(s string) bool { return strings.HasPrefix(sound, s) }
	switch {
	case or && (starts("o") || starts("ó") || starts("8")):
		return "u"
	case or:
		return "o"
	case (starts("i") || starts("í")) && !starts("ie") && !starts("ia"):
		return "e"
	}
	return "y"
}
