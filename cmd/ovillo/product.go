package main

import (
	"bytes"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"ovillo/compile/plan"
	"ovillo/render/book"
	"ovillo/render/data"
	"ovillo/render/plain"
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
		{name: "text", ending: ".txt", editions: book.LeftHanded, without: []string{paperFlag.name, "--archive"}, publish: (*call).publishText},
		{name: "json", ending: ".json", editions: book.LeftHanded, without: []string{paperFlag.name, "--archive"}, publish: (*call).publishData},
	}
}

var formatFlag = flagDef{name: "--format", value: "pdf|html|text|json", allowed: []string{"pdf", "html", "text", "json"}, help: text{
	"what is made; without it, a PDF", "qué se hace; si no se indica, un PDF"}}

// product reads which kind of file is asked for, and says what does not go with it.
func (c *call) product(e edition) (product, *said) {
	all := products()
	f := all[0]
	if name := c.flags[formatFlag.name]; name != "" {
		f = all[slices.IndexFunc(all, func(f product) bool { return f.name == name })]
	}
	if c.has(shortFlag.name) && f.name != "text" {
		s := msgFlagsClash.with("one", formatFlag.name+" "+f.name, "other", shortFlag.name)
		return f, &s
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

var shortFlag = flagDef{name: "--short", help: text{
	"with --format=text: no more than 5000 signs, and what is left out is said",
	"con --format=text: no más de 5000 signos, y se dice lo que falta"}}

// publishText makes a text for each language, in a file of its own: hat-en.txt. Where the user names one file, or the standard output, it is
// that of the first language.
func (c *call) publishText(s *loaded, p *plan.Pattern, e edition, output string) int {
	langs := e.languages()
	o, given := c.flags["-o"]
	one := given && !isFolder(o)
	if one {
		langs = langs[:1]
	}
	ending := ".txt"
	if c.has(shortFlag.name) {
		ending = "-short.txt"
	}
	texts := make([]bytes.Buffer, len(langs))
	for i, l := range langs {
		l = l.With(words.Manner{Left: e.kind.Has(book.LeftHanded)})
		if err := plain.Write(&texts[i], p, plain.Options{Lang: l, Short: c.has(shortFlag.name)}); err != nil {
			c.say(msgInternal.with("path", s.file.Name, "fault", err.Error()))
			return failed
		}
	}
	worst := clean
	for i, l := range langs {
		path := output
		if !one {
			path = strings.TrimSuffix(output, ".txt") + "-" + shortTag(l) + ending
		}
		signs := utf8.RuneCount(texts[i].Bytes())
		worst = max(worst, c.deliverAs(path, texts[i].Bytes(), refuseText(texts[i].Bytes()), msgWrittenSigns.with("path", path, "n", strconv.Itoa(signs))))
		if c.has(shortFlag.name) && signs > plain.Most {
			c.say(msgStillLong.with("path", path, "n", strconv.Itoa(signs), "most", strconv.Itoa(plain.Most)))
		}
	}
	return worst
}

// publishData makes data for other programs.
func (c *call) publishData(s *loaded, p *plan.Pattern, e edition, output string) int {
	var langs []*words.Language
	for _, l := range e.languages() {
		langs = append(langs, l.With(words.Manner{Left: e.kind.Has(book.LeftHanded)}))
	}
	var b bytes.Buffer
	if err := data.Write(&b, p, data.Options{Langs: langs, Program: thisBuild().Version}); err != nil {
		c.say(msgInternal.with("path", s.file.Name, "fault", err.Error()))
		return failed
	}
	return c.deliverAs(output, b.Bytes(), refuseData, sizeWritten(output, b.Len()))
}

// shortTag is the tag of a language in the name of a file: en, where its whole name is en-US.
func shortTag(l *words.Language) string {
	if slices.Contains(l.Also(), l.Code()) {
		return l.Code()
	}
	return strings.ToLower(l.Tag())
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
