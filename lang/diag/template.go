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
//	{=ch {n}}          code of the language, with holes in it
//	{{ and }}          a brace
//
// A passage of code is what a designer would type: it is handed to [Printer.Code] once its holes are filled, the items of a
// list one by one. A word that is said in the language of the message (a [Term], a [Said]) or that names sizes stays out of it.
// Inside a passage | is a sign like any other.
//
// The forms may hold holes themselves. A hole without an argument stays visible, since a message with a gap in it would
// read as if it were whole; [Incomplete] finds such faults in tests.

// piece is a stretch of plain text, a hole with its forms, or a passage of code.
type piece struct {
	text  string
	hole  string
	forms [][]piece
	raw   string // the hole as it is written in the catalogue
	code  []piece
}

var (
	errOpen  = errors.New("a { is not closed")
	errClose = errors.New("a } closes nothing")
	errHole  = errors.New("a hole is {name}, {name|one|other} or {name|or}")
	errCode  = errors.New("a passage of code is empty, or stands in another one")
)

// Fill puts the arguments into a template in a language; code stays as it stands.
func Fill(template string, a Args, lang string) string {
	return Printer{Lang: lang}.fill(template, a)
}

// fill puts the arguments into a template.
func (p Printer) fill(template string, a Args) string {
	pieces, _ := readTemplate(template)
	f := filler{Printer: p, args: a, open: func(p piece) string { return p.raw }}
	f.pieces(pieces)
	return f.out.String()
}

// outline gives a template as it reads with its facts left open: "row … needs … stitches".
func (p Printer) outline(template string) string {
	pieces, _ := readTemplate(template)
	f := filler{Printer: p, open: func(piece) string { return "…" }, plural: true}
	f.pieces(pieces)
	return f.out.String()
}

// filler writes the pieces of a template.
type filler struct {
	Printer
	args   Args
	open   func(piece) string // what stands for a hole without an argument
	plural bool               // of two forms without an argument the second is taken
	out    strings.Builder
	inCode bool
	code   strings.Builder // the passage of code that is being written
}

func (f *filler) pieces(ps []piece) {
	for _, p := range ps {
		v, ok := f.args[p.hole]
		switch {
		case p.code != nil:
			f.inCode = true
			f.pieces(p.code)
			f.endCode()
			f.inCode = false
		case p.hole == "":
			f.text(p.text)
		case !ok && f.plural && len(p.forms) == 2:
			f.pieces(p.forms[1])
		case !ok:
			f.text(f.open(p))
		case len(p.forms) == 2:
			form := p.forms[1]
			if isOne(v) {
				form = p.forms[0]
			}
			f.pieces(form)
		default:
			f.value(v, len(p.forms) == 1)
		}
	}
}

// text writes what needs no words of its own.
func (f *filler) text(s string) {
	if f.inCode {
		f.code.WriteString(s)
	} else {
		f.out.WriteString(s)
	}
}

// value puts an argument into words. In a passage of code a text or a number becomes part of it; of a list each item is
// code, but not what joins them; all else is prose and ends the stretch of code before it.
func (f *filler) value(v any, or bool) {
	switch v := v.(type) {
	case PerSize, Term, []Term, Length, Said:
		f.endCode()
		f.out.WriteString(say(v, f.Lang, or))
	case []string:
		f.endCode()
		items := make([]string, len(v))
		for i, item := range v {
			if items[i] = quotable(item); f.inCode {
				items[i] = f.coded(items[i])
			}
		}
		f.out.WriteString(conjoined(items, f.Lang, or))
	default:
		f.text(say(v, f.Lang, or))
	}
}

// endCode hands over the stretch of code that has been written, without the blanks at its ends.
func (f *filler) endCode() {
	text := f.code.String()
	f.code.Reset()
	bare := strings.TrimSpace(text)
	head, tail, _ := strings.Cut(text, bare)
	if bare == "" {
		f.out.WriteString(text)
		return
	}
	f.out.WriteString(head + f.coded(bare) + tail)
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
			walk(p.code)
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
	pieces := r.pieces(alone)
	return pieces, r.err
}

type templateReader struct {
	rest   string
	inCode bool
	err    error
}

// within is what pieces stand in: it says which signs end them.
type within uint8

const (
	alone    within = iota
	aForm           // of a hole: | or } ends it
	aPassage        // of code: } ends it
)

// fail keeps the first error: what follows it is its consequence.
func (r *templateReader) fail(err error) {
	if r.err == nil {
		r.err = err
	}
}

// pieces reads up to the end, or up to the sign that ends what the pieces stand in.
func (r *templateReader) pieces(in within) []piece {
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
		case strings.HasPrefix(r.rest, "{{"), in == alone && strings.HasPrefix(r.rest, "}}"):
			text.WriteByte(c)
			r.rest = r.rest[2:]
		case strings.HasPrefix(r.rest, "{="):
			flush()
			out = append(out, r.code())
		case c == '{':
			flush()
			out = append(out, r.hole())
		case in != alone && c == '}', in == aForm && c == '|':
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

// code reads a passage of code; the {= that opens it comes next.
func (r *templateReader) code() piece {
	start, nested := r.rest, r.inCode
	r.rest = r.rest[len("{="):]
	r.inCode = true
	p := piece{code: r.pieces(aPassage)}
	r.inCode = nested
	if !strings.HasPrefix(r.rest, "}") {
		r.fail(errOpen)
		r.rest = ""
		return piece{text: start}
	}
	r.rest = r.rest[1:]
	if len(p.code) == 0 || nested {
		r.fail(errCode)
	}
	return p
}

// hole reads a hole; the brace that opens it comes next. The forms of a hole in a passage of code are code as well.
func (r *templateReader) hole() piece {
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
		p.forms = append(p.forms, r.pieces(aForm))
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
	case []Term:
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
	case []Term:
		words := make([]string, len(v))
		for i, t := range v {
			words[i] = t.say(lang)
		}
		return conjoined(words, lang, or)
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
	return conjoined(clean, lang, or)
}

// conjoined is joinList of items that are fit to be shown.
func conjoined(items []string, lang string, or bool) string {
	last := len(items) - 1
	if last < 1 {
		return strings.Join(items, "")
	}
	return strings.Join(items[:last], ", ") + " " + conjunction(items[last], lang, or) + " " + items[last]
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
