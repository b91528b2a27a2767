package main

import (
	"bytes"
	"io"
	"path/filepath"

	"ovillo/cmd/ovillo/desk"
	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/render/report"
)

// This file is the pipeline: source, checked pattern, pages, PDF.

// compile checks a source. The pattern may be used only if the list has no error.
func (s *loaded) compile() (*plan.Pattern, diag.List) {
	p, found, _ := s.compileTallied()
	return p, found
}

// compileTallied is compile, and counts what the source holds.
func (s *loaded) compileTallied() (*plan.Pattern, diag.List, report.Source) {
	c := desk.Check(desk.Source{File: s.file, Open: s.open, Gauges: s.gauges})
	s.coder, s.coderAt, s.gauges, s.fault, s.sound = c.Tree.Coder(), c.Tree.CoderAt(), c.Gauges, c.Fault, c.Sound
	s.book, s.bound, s.shared = c.Book, c.Bound, c.Shared
	for _, u := range c.Tree.UsedFiles() {
		s.used = append(s.used, plan.UsedFile{Name: u.Name, Text: []byte(u.Text)})
	}
	return c.Pattern, c.Found, tally(c.Tree)
}

// checked loads and checks a source and prints what was found. Only with the code clean is there a pattern to go on with.
func (c *call) checked(path string) (*loaded, *plan.Pattern, int) {
	s, p, code := c.checkedAny(path)
	if code == clean && p == nil {
		c.say(s.noPattern())
		return s, nil, faulty
	}
	return s, p, code
}

// noPattern says what a source is that is no pattern: a book, or what patterns share.
func (s *loaded) noPattern() said {
	if s.shared {
		return msgIsShared.with("path", s.file.Name)
	}
	return msgIsBook.with("path", s.file.Name)
}

// checkedAny is checked for what can be done with a book, or with a file that patterns share, as well: then there is no pattern, and s says which it is.
func (c *call) checkedAny(path string) (*loaded, *plan.Pattern, int) {
	s, ok := c.load(path)
	if !ok {
		return nil, nil, failed
	}
	p, found := s.compile()
	if s.fault != nil {
		c.say(s.misfit())
		return nil, nil, failed
	}
	if !c.has(jsonFlag.name) {
		c.sayRegraded(s, p, found)
		if err := c.sayBound(s); err != nil {
			return nil, nil, failed
		}
		if err := c.printer(s).Text(c.err, s.file, found); err != nil {
			return nil, nil, failed
		}
		return s, p, c.verdict(s, p, found)
	}
	if err := c.sayBound(s); err != nil {
		return nil, nil, failed
	}
	if found.HasErrors() {
		c.sayRegraded(s, p, found)
	}
	var b bytes.Buffer
	if err := c.printer(s).JSON(&b, s.file, found); err != nil {
		return nil, nil, failed
	}
	return s, p, max(c.print(b.Bytes()), c.verdict(s, p, found))
}

// jsonFlag makes the messages about a source records for other tools, an object a line on the standard output. What is written
// is then reported on the error stream (see tell).
var jsonFlag = flagDef{name: "--json", help: text{"messages for other tools", "mensajes para otras herramientas"}}

// twoOnOutput refuses records and a file on the standard output at once.
func (c *call) twoOnOutput() *said {
	if !c.has(jsonFlag.name) || c.flags["-o"] != "-" {
		return nil
	}
	s := msgFlagsClash.with("one", jsonFlag.name, "other", "-o -")
	return &s
}

// printer words what was found in a source.
func (c *call) printer(s *loaded) diag.Printer {
	return diag.Printer{Lang: c.lang, Color: c.color, Code: s.code(), CodeAt: s.coderAt}
}

// code puts code of the language into the words that the source is written in. It is nil for a source in English, whose
// words are those of the language itself.
func (s *loaded) code() func(string) string { return s.coder }

// sayRegraded says, of a source at a maker's gauge, what that changes, or that errors are not those of the source.
func (c *call) sayRegraded(s *loaded, p *plan.Pattern, found diag.List) {
	switch {
	case len(s.gauges) == 0:
	case found.HasErrors() && s.sound:
		c.say(msgGaugeSound.with("path", s.file.Name))
	case p != nil && p.Regraded != nil && !found.HasErrors():
		io.WriteString(c.err, c.changes(s, p)+"\n")
	}
}

// verdict is the exit code that a source deserves.
func (c *call) verdict(s *loaded, p *plan.Pattern, found diag.List) int {
	switch {
	case found.HasErrors():
		return faulty
	case s.book != nil, s.shared:
		return clean
	case p == nil:
		c.say(msgNothing.with("path", s.file.Name))
		return faulty
	}
	return clean
}

// attachedName is what the source is called inside the PDF it is attached to.
func (s *loaded) attachedName(p *plan.Pattern) string {
	if s.path == "-" {
		return p.Name + ".ovillo"
	}
	return filepath.Base(s.path)
}

// setPages sets a checked pattern and returns the PDF and its number of pages.
func setPages(p *plan.Pattern, e edition, sourceName string) ([]byte, int, error) {
	return desk.PDF(p, desk.Look{Paper: e.paper, Edition: e.kind, Langs: e.langs}, sourceName, e.profile)
}
