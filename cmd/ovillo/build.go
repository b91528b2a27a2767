package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/book"
	"ovillo/render/pdf"
	"ovillo/render/words"
)

var buildCommand = command{
	name: "build",
	args: text{"FILE…", "ARCHIVO…"},
	line: text{"set patterns as PDF", "componer patrones en PDF"},
	long: text{
		"The PDF stands beside its source, or where -o says: a file, or a folder that exists. A source with errors gets no\n" +
			"PDF, and an older one stays as it is.",
		"El PDF queda junto a su patrón, o donde diga -o: un archivo o una carpeta que exista. De un patrón con errores no\n" +
			"sale ningún PDF, y el que hubiera queda como estaba."},
	flags: []flagDef{
		{name: "-o", value: "PATH", help: text{"where the PDF goes", "dónde queda el PDF"}},
		{name: "--lang", value: "en,es", help: text{
			"one language, or two side by side; without it, those of the pattern",
			"un idioma, o dos en columnas; si no se indica, los del patrón"}},
		{name: "--paper", value: "a4|letter", allowed: []string{"a4", "letter"}, help: text{"size of the sheet", "tamaño de la hoja"}},
	},
	run: runBuild,
}

func runBuild(c *call) int {
	paths, ok := c.sources(0)
	if !ok {
		return failed
	}
	langs, ok := c.languages()
	if !ok {
		return failed
	}
	outputs, ok := c.outputs(paths)
	if !ok {
		return failed
	}
	return c.each(paths, func(path string) int { return c.build(path, outputs[path], langs) })
}

// build sets one source.
func (c *call) build(path, output string, langs []string) int {
	s, ok := c.load(path)
	if !ok {
		return failed
	}
	p, found := s.compile()
	if code := c.report(s, found); code != clean {
		return code
	}
	if langs == nil {
		langs = p.Languages[:min(2, len(p.Languages))]
	}
	voices, ok := c.voices(p, path, langs)
	if !ok {
		return failed
	}
	data, pages, err := setPages(p, voices, c.paper(), filepath.Base(path))
	if err != nil {
		c.say(msgCannotSet.with("path", path, "why", err.Error()))
		return failed
	}
	if err = refusePages(output); err == nil {
		err = replaceFile(output, data)
	}
	if err != nil {
		c.say(msgCannotWrite.with("path", output, "why", reason(err, output).in(c.lang)))
		return failed
	}
	fmt.Fprintln(c.out, msgWritten.with("path", output, "pages", nounPage.count(pages, c.lang)).in(c.lang))
	return clean
}

// languages reads --lang; nil means those of the pattern.
func (c *call) languages() ([]string, bool) {
	if !c.has("--lang") {
		return nil, true
	}
	tags := strings.Split(c.flags["--lang"], ",")
	for i, tag := range tags {
		if _, err := words.For(tag); err != nil {
			c.misuse(msgNoLanguage.with("lang", tag))
			return nil, false
		}
		if slices.Contains(tags[:i], tag) {
			c.misuse(msgLangTwice.with("lang", tag))
			return nil, false
		}
	}
	if len(tags) > 2 {
		c.misuse(msgTooMany.with("what", tags[2]))
		return nil, false
	}
	return tags, true
}

// voices finds the languages to set a pattern in; it must be written in each of them.
func (c *call) voices(p *plan.Pattern, path string, tags []string) ([]*words.Language, bool) {
	var out []*words.Language
	for _, tag := range tags {
		code, _, _ := strings.Cut(tag, "-")
		l, err := words.For(tag)
		if err != nil {
			c.say(msgNoLanguage.with("lang", tag))
			return nil, false
		}
		if !slices.Contains(p.Languages, code) {
			c.say(msgLacksLanguage.with("path", path, "lang", tag, "has", strings.Join(p.Languages, ", ")))
			return nil, false
		}
		out = append(out, l)
	}
	return out, true
}

func (c *call) paper() book.Paper {
	if c.flags["--paper"] == "letter" {
		return book.Letter
	}
	return book.A4
}

// outputs says where the PDF of each source goes. No two may go into one file.
func (c *call) outputs(paths []string) (map[string]string, bool) {
	out := map[string]string{}
	from := map[string]string{}
	o, given := c.flags["-o"]
	folder := given && isFolder(o)
	for _, path := range paths {
		var to string
		switch {
		case given && !folder && len(paths) > 1:
			c.misuse(msgOneOutput.with("path", o))
			return nil, false
		case given && !folder:
			to = o
		case path == "-":
			c.misuse(msgStdinNeedsOutput.with())
			return nil, false
		case folder:
			to = filepath.Join(o, stem(path)+".pdf")
		default:
			to = filepath.Join(filepath.Dir(path), stem(path)+".pdf")
		}
		if other, taken := from[to]; taken && other != path {
			c.misuse(msgSameOutput.with("one", other, "other", path, "path", to))
			return nil, false
		}
		from[to], out[path] = path, to
	}
	return out, true
}

func isFolder(path string) bool {
	info, err := os.Stat(path)
	return err == nil && info.IsDir()
}

// setPages sets a pattern and returns the PDF and its number of pages.
func setPages(p *plan.Pattern, langs []*words.Language, paper book.Paper, name string) ([]byte, int, error) {
	doc, err := book.Compose(p, book.Options{Paper: paper, Langs: langs})
	if err != nil {
		return nil, 0, err
	}
	doc.Source, doc.SourceName = p.Source, name
	var b bytes.Buffer
	if err := pdf.Write(&b, doc, pdf.Options{}); err != nil {
		return nil, 0, err
	}
	return b.Bytes(), len(doc.Pages), nil
}
