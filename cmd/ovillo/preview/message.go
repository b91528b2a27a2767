package preview

import (
	"path/filepath"
	"strings"

	"ovillo/cmd/ovillo/desk"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// message is one finding, with the lines of the source that it is about.
type message struct {
	diag.Record
	Where  string // the file that it is about, "" for the source itself
	Quotes []quote
}

// quote is a line of the source with a place marked in it.
type quote struct {
	Where                 string // the file that it is in, if it is another than that of the message
	Line                  int
	Before, Marked, After string
	Label                 string // what is said of the place
	Main                  bool   // the fault itself, not what explains it
}

// widest is how many letters of a line are quoted before and behind the mark; a line of a pattern is seldom longer.
const widest = 120

// wordsOf puts what was found into words.
func wordsOf(c *desk.Checked, lang string) *found {
	out := &found{summary: diag.Summary(c.Found, lang)}
	for _, r := range c.Printer(lang, false).Records(c.File, c.Found) {
		switch r.Severity {
		case "error":
			out.errors++
		case "warning":
			out.warns++
		}
		m := message{Record: r}
		if r.File != c.File.Name {
			m.Where = filepath.Base(r.File)
		}
		if r.Line > 0 {
			m.Quotes = append(m.Quotes, quoted(fileOf(c, r.File), r.Line, r.Column, r.End, r.Mark, true)...)
		}
		for _, rel := range r.Related {
			file := r.File
			if rel.File != "" {
				file = rel.File
			}
			quotes := quoted(fileOf(c, file), rel.Line, rel.Column, rel.End, rel.Message, false)
			if rel.File != "" {
				quotes[0].Where = filepath.Base(rel.File)
			}
			m.Quotes = append(m.Quotes, quotes...)
		}
		out.list = append(out.list, m)
	}
	out.list, out.more = mostImportant(out.list)
	return out
}

// fileOf is the file of that name: the source, or one that it takes in.
func fileOf(c *desk.Checked, name string) *source.File {
	for _, f := range c.File.Used() {
		if f.Name == name {
			return f
		}
	}
	return c.File
}

// mostImportant keeps as many as a person reads, errors before warnings before notes, in the order of the source.
func mostImportant(all []message) (kept []message, more int) {
	if len(all) <= diag.Most {
		return all, 0
	}
	room := diag.Most
	keep := make([]bool, len(all))
	for _, severity := range []string{"error", "warning", "note"} {
		for i, m := range all {
			if m.Severity == severity && room > 0 {
				keep[i] = true
				room--
			}
		}
	}
	for i, m := range all {
		if keep[i] {
			kept = append(kept, m)
		}
	}
	return kept, len(all) - len(kept)
}

// quoted is the line of a place; of one that runs over several lines the first and the last, with what is said of it there.
func quoted(f *source.File, line, column int, end diag.RecordPlace, label string, main bool) []quote {
	one := func(line, from, to int, label string) quote {
		text := f.LineText(line)
		a, b := byteAt(text, from), len(text)
		if to > 0 {
			b = max(byteAt(text, to), a)
		}
		return quote{"", line, lastOf(text[:a]), text[a:b], firstOf(text[b:]), label, main}
	}
	if end.Line <= line {
		return []quote{one(line, column, max(end.Column, column), label)}
	}
	last := f.LineText(end.Line)
	indent := source.Cells(last[:len(last)-len(strings.TrimLeft(last, " \t"))]) + 1
	return []quote{one(line, column, 0, ""), one(end.Line, indent, end.Column, label)}
}

// byteAt is where in a line a column begins. A sign that takes no column stays with the letter before it.
func byteAt(line string, column int) int {
	cells := 0
	for i, r := range line {
		wide := source.Cells(string(r))
		if r == '\t' {
			wide -= cells % 8
		}
		if cells >= column-1 && wide > 0 {
			return i
		}
		cells += wide
	}
	return len(line)
}

func lastOf(s string) string {
	if r := []rune(s); len(r) > widest {
		return "…" + string(r[len(r)-widest:])
	}
	return s
}

func firstOf(s string) string {
	if r := []rune(s); len(r) > widest {
		return string(r[:widest]) + "…"
	}
	return s
}
