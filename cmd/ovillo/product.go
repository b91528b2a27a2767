package main

import (
	"bytes"
	"slices"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/render/book"
	"ovillo/render/web"
	"ovillo/render/words"
)

// This file is what a pattern can be published as.

// product is one of the kinds of files that build makes.
type product struct {
	name, ending string
	editions     book.Edition // those that it can be made in
	without      []string     // flags that have no meaning for it
	publish      func(c *call, s *loaded, p *plan.Pattern, e edition, output string) int
}

// products in the order of the help. The first is made where none is asked for.
func products() []product {
	return []product{
		{name: "pdf", ending: ".pdf", editions: allEditions},
		{name: "html", ending: ".html", editions: book.LeftHanded, without: []string{paperFlag.name, "--archive"}, publish: (*call).publishWeb},
	}
}

var formatFlag = flagDef{name: "--format", value: "pdf|html", allowed: []string{"pdf", "html"}, help: text{
	"what is made; without it, a PDF", "qué se hace; si no se indica, un PDF"}}

// product reads which kind of file is asked for, and says what does not go with it.
func (c *call) product(e edition) (product, *said) {
	all := products()
	f := all[0]
	if name := c.flags[formatFlag.name]; name != "" {
		f = all[slices.IndexFunc(all, func(f product) bool { return f.name == name })]
	}
	for _, flag := range f.without {
		if c.has(flag) {
			s := msgFlagsClash.with("one", formatFlag.name+" "+f.name, "other", flag)
			return f, &s
		}
	}
	if wrong := e.kind &^ f.editions; wrong != 0 {
		s := msgFlagsClash.with("one", formatFlag.name+" "+f.name, "other", editionFlag.name+" "+wrong.String())
		return f, &s
	}
	return f, nil
}

// publishWeb makes a web page.
func (c *call) publishWeb(s *loaded, p *plan.Pattern, e edition, output string) int {
	var b bytes.Buffer
	if err := web.Write(&b, p, web.Options{Langs: e.languages(), Left: e.kind.Has(book.LeftHanded)}); err != nil {
		c.say(msgInternal.with("path", s.file.Name, "fault", err.Error()))
		return failed
	}
	return c.deliverAs(output, b.Bytes(), refuseWeb, sizeWritten(output, b.Len()))
}

// sizeWritten says of a file without pages how large it is.
func sizeWritten(path string, bytes int) said {
	return msgWrittenSize.with("path", path, "n", strconv.Itoa((bytes+999)/1000))
}

// languages are those of the tags, which are known.
func (e edition) languages() []*words.Language {
	var out []*words.Language
	for _, tag := range e.langs {
		if l, err := words.For(tag); err == nil {
			out = append(out, l)
		}
	}
	return out
}
