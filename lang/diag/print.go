package diag

import (
	"cmp"
	"slices"
	"strings"
	"unicode"

	"ovillo/lang/source"
)

// Printer puts diagnostics into words for a reader. Its methods print a list as text or as JSON, and the page behind a code.
type Printer struct {
	Lang  string // the language of the messages: every language but "es" is answered in English
	Color bool   // on a terminal that shows colours

	// Code puts code of the language into the words that the source is written in; nil leaves it as it stands. It is handed
	// one word, a form, or some lines of a source, and never prose or what the source itself says.
	Code func(code string) string
	// CodeAt is Code for a message about a place, where a source uses files in other languages; nil: Code is for all.
	CodeAt func(at source.Span) func(code string) string
}

// at is the printer of a message about a place.
func (p Printer) at(place source.Span) Printer {
	if p.CodeAt != nil {
		p.Code = p.CodeAt(place)
	}
	return p
}

// coded is a stretch of code as it is printed.
func (p Printer) coded(code string) string {
	if p.Code == nil {
		return code
	}
	return p.Code(code)
}

// Most is how many diagnostics a printer shows before it only counts the rest.
const Most = 50

// finding is a diagnostic with its words in one language.
type finding struct {
	Diagnostic
	severity Severity
	meant    string // why it is so on purpose
	message  string
	mark     string
	help     string
	notes    []string  // related places that are nowhere in particular
	related  []related // in file order
}

type related struct {
	span  source.Span
	label string
}

// findings words a list for a printer: in the order of the source, each once.
func (p Printer) findings(l List) []finding {
	type key struct {
		code    Code
		span    source.Span
		message string
	}
	seen := map[key]bool{}
	var all []finding
	for _, d := range l {
		f := p.word(d)
		k := key{d.Code, d.Span, f.message}
		if !seen[k] {
			seen[k] = true
			all = append(all, f)
		}
	}
	slices.SortStableFunc(all, func(a, b finding) int {
		return cmp.Or(cmp.Compare(a.Span.Start, b.Span.Start), cmp.Compare(a.Span.End, b.Span.End),
			cmp.Compare(a.Code, b.Code))
	})
	return all
}

// capped keeps at most [Most], errors before warnings before notes, in the order they stand in. The second result is
// how many are left out.
func capped(all []finding) ([]finding, int) {
	if len(all) <= Most {
		return all, 0
	}
	room := Most
	keep := make([]bool, len(all))
	for s := Error; s <= Note; s++ {
		for i := range all {
			if all[i].severity == s && room > 0 {
				keep[i] = true
				room--
			}
		}
	}
	var out []finding
	for i, k := range keep {
		if k {
			out = append(out, all[i])
		}
	}
	return out, len(all) - len(out)
}

// word puts one diagnostic into words.
func (p Printer) word(d Diagnostic) finding {
	p = p.at(d.Span)
	e := Lookup(d.Code)
	w := e.in(p.Lang)
	f := finding{
		Diagnostic: d,
		severity:   d.Severity(),
		message:    p.fill(w.Message, d.Args),
	}
	within := d.within()
	f.mark = p.fill(w.Mark, within)
	if d.Meant != nil {
		f.meant = d.Meant.in(p.Lang)
	} else if text, ok := w.remedy(d.Help, d.Args); ok {
		f.help = p.fill(text, within)
	}
	for _, r := range d.Related {
		label := p.fill(w.Related[r.Key], r.args(within))
		switch {
		case !r.Span.IsZero():
			f.related = append(f.related, related{r.Span, label})
		case label != "":
			f.notes = append(f.notes, label)
		}
	}
	slices.SortStableFunc(f.related, func(a, b related) int { return cmp.Compare(a.span.Start, b.span.Start) })
	return f
}

// within are the facts as they are said below the first sentence, where a line of its own names the sizes: a value that
// is the same in just these sizes need not name them again.
func (d Diagnostic) within() Args {
	out := Args{}
	for name, v := range d.Args {
		if p, ok := v.(PerSize); ok && len(d.Sizes) > 0 && slices.Equal(p.Names, d.Sizes) {
			p.All = true
			if _, same := p.same(); same {
				v = p
			}
		}
		out[name] = v
	}
	return out
}

// in returns the wording for a language; every language but Spanish is answered in English.
func (e *Entry) in(lang string) Wording {
	if lang == "es" {
		return e.Es
	}
	return e.En
}

// remedy finds the help that a diagnostic asks for: by its key, else the usual one. The usual remedy is left out where it
// would list nothing (no name is near); a row may have a remedy "none" for that case.
func (w Wording) remedy(key string, a Args) (string, bool) {
	if key == "-" || len(w.Help) == 0 {
		return "", false
	}
	if key != "" {
		text, ok := w.Help[key]
		return text, ok
	}
	text, ok := w.Help[""]
	if !ok {
		keys := make([]string, 0, len(w.Help))
		for k := range w.Help {
			keys = append(keys, k)
		}
		text = w.Help[slices.Min(keys)]
	}
	for _, hole := range Holes(text) {
		if l, isList := a[hole].([]string); isList && len(l) == 0 {
			text, ok := w.Help["none"]
			return text, ok
		}
	}
	return text, true
}

// args are the facts a related place is worded with: its own, then those of the diagnostic.
func (r Related) args(of Args) Args {
	all := Args{}
	for k, v := range of {
		all[k] = v
	}
	for k, v := range r.Args {
		all[k] = v
	}
	return all
}

// Message returns the first sentence of a diagnostic in a language.
func Message(d Diagnostic, lang string) string { return Printer{Lang: lang}.word(d).message }

// Incomplete lists what a diagnostic leaves open in the wording of its code: holes without an argument, keys without a
// row, terms without a word. Tests of the checks use it; for a diagnostic that prints well it is empty.
func Incomplete(d Diagnostic) []string {
	e := Lookup(d.Code)
	if catalogue().byCode[d.Code] == nil {
		return []string{"no row for code " + string(d.Code)}
	}
	var out []string
	need := func(where, template string, a Args) {
		for _, hole := range Holes(template) {
			if _, ok := a[hole]; !ok {
				out = append(out, where+" asks for {"+hole+"}")
			}
		}
		for _, v := range a {
			list, _ := v.([]Term)
			if t, ok := v.(Term); ok {
				list = []Term{t}
			}
			for _, t := range list {
				if _, ok := wordOf(t.Key); !ok {
					out = append(out, "no word for term "+t.Key)
				}
			}
		}
	}
	w := e.En
	need("message", w.Message, d.Args)
	need("mark", w.Mark, d.Args)
	if text, ok := w.remedy(d.Help, d.Args); ok {
		need("help", text, d.Args)
	} else if d.Help != "" && d.Help != "-" {
		out = append(out, "no help under "+d.Help)
	}
	for _, r := range d.Related {
		if _, ok := w.Related[r.Key]; !ok {
			out = append(out, "no related place under "+r.Key)
		}
		need("related place "+r.Key, w.Related[r.Key], r.args(d.Args))
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// longestQuote is how many runes of a text from the source a message repeats.
const longestQuote = 120

// quotable makes a text from the source fit to stand inside a sentence: on one line, without anything that could steer
// a terminal, and not longer than a sentence can bear.
func quotable(s string) string {
	var b strings.Builder
	n := 0
	for _, r := range s {
		if n++; n > longestQuote {
			b.WriteRune('…')
			break
		}
		b.WriteRune(tame(r))
	}
	return b.String()
}

// tame replaces a rune that would move the cursor, colour the terminal or turn the direction of the text.
func tame(r rune) rune {
	switch {
	case r == '\n' || r == '\t' || r == '\r':
		return ' '
	case unicode.IsControl(r), r >= 0x202A && r <= 0x202E, r >= 0x2066 && r <= 0x2069, r == 0x2028, r == 0x2029:
		return unicode.ReplacementChar
	}
	return r
}
