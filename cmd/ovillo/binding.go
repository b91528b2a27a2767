package main

import (
	"bytes"
	"slices"
	"strings"

	"ovillo/cmd/ovillo/desk"
	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/render/pdf"
)

// This file checks and builds books.

// sayBound prints what was found in each pattern of a book, for people or as records.
func (c *call) sayBound(s *loaded) error {
	for _, b := range s.bound {
		p := diag.Printer{Lang: c.lang, Color: c.color, Code: b.Tree.Coder(), CodeAt: b.Tree.CoderAt()}
		var out bytes.Buffer
		if !c.has(jsonFlag.name) {
			if err := p.Text(c.err, b.Tree.Source, b.Found); err != nil {
				return err
			}
			continue
		}
		if err := p.JSON(&out, b.Tree.Source, b.Found); err != nil {
			return err
		}
		c.print(out.Bytes())
	}
	return nil
}

// bookWell says what was checked of a book.
func (c *call) bookWell(b *plan.Book) string {
	return msgBookWell.with("patterns", nounPattern.count(len(b.Patterns), c.lang)).in(c.lang)
}

// buildBook sets a book that was checked.
func (c *call) buildBook(s *loaded, output string, e edition, f product) int {
	refuse := func(flag string) int {
		c.say(msgBookFlag.with("path", s.file.Name, "flag", flag))
		return failed
	}
	switch {
	case f.publish != nil:
		return refuse(formatFlag.name + " " + f.name)
	case len(s.gauges) > 0:
		return refuse(gaugeFlag.name)
	}
	e = e.of(s.book.Head)
	if tag := e.lacks(s.book.Head); tag != "" {
		c.say(msgLacksLanguage.with("path", s.file.Name, "lang", tag, "has", strings.Join(s.book.Head.Languages, ", ")))
		return failed
	}
	one := *s.book
	one.Patterns = slices.Clone(one.Patterns)
	for i, p := range one.Patterns {
		small, ok := e.only(p)
		if !ok {
			c.say(msgNoSize.with("path", one.Files[i], "size", e.size, "has", strings.Join(sizeNames(p), ", ")))
			return failed
		}
		one.Patterns[i] = small
	}
	doc, err := desk.BookPages(&one, desk.Look{Paper: e.paper, Edition: e.kind, Langs: e.langs})
	var b bytes.Buffer
	if err == nil {
		doc.SourceName = s.attachedName(one.Head)
		err = pdf.Write(&b, doc, pdf.Options{Profile: e.profile})
	}
	if err != nil {
		c.say(c.whyNotSet(s, err))
		return failed
	}
	return c.deliver(output, b.Bytes(), len(doc.Pages))
}
