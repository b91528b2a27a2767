package main

import (
	"maps"
	"slices"
	"strings"
	"unicode"

	"ovillo/compile/plan"
	"ovillo/render/book"
	"ovillo/render/layout"
	"ovillo/render/pdf"
)

// This file is what can be chosen about the pages: languages, paper, edition.

var paperFlag = flagDef{name: "--paper", value: strings.Join(layout.Papers(), "|"), allowed: layout.Papers(), help: text{
	"size of the page; without it, a4", "tamaño de la página; si no se indica, a4"}}

var sizeFlag = flagDef{name: "--size", value: "NAME", help: text{
	"one size alone, with plain numbers", "una sola talla, con los números sin paréntesis"}, fill: sizesOf}

var editionFlag = flagDef{name: "--edition", value: "NAME[,NAME]", help: text{
	"how the pages are set; without it, two languages face each other",
	"cómo se componen las páginas; si no se indica, dos idiomas van en columnas enfrentadas"}, fill: offerEditions(allEditions)}

// editionsSay says of each edition what it is.
var editionsSay = map[string]text{
	"facing":  {"two languages side by side, the same row at the same height", "dos idiomas en columnas, cada vuelta a la misma altura"},
	"after":   {"two languages one after the other", "dos idiomas, uno detrás del otro"},
	"large":   {"large print: 18 points and more, every row written out, no abbreviations", "letra grande: 18 puntos o más, todas las vueltas escritas, sin abreviaturas"},
	"low-ink": {"black lines only: no tints, no photograph, nothing filled", "solo líneas negras: sin tonos, sin fotografía, nada relleno"},
	"left":    {"for the left hand: drawings mirrored, left and right changed over", "para tejer con la izquierda: dibujos en espejo, derecha e izquierda cambiadas"},
	"tester":  {"for testers: numbers at the rows, room for queries, a form", "para quienes prueban el patrón: filas numeradas, sitio para consultas y un formulario"},
	"booklet": {"pages of half a sheet, to be folded", "páginas de media hoja, para doblar"},
}

// editionsHelp lists editions, with what each is.
func editionsHelp(lang string, of book.Edition) string {
	var b strings.Builder
	b.WriteString(msgEditions.in(lang) + "\n")
	for _, name := range editionNames(of) {
		b.WriteString("    " + pad(name, 12) + editionsSay[name].in(lang) + "\n")
	}
	return b.String()
}

// edition is what can be chosen about the pages.
type edition struct {
	paper   book.Paper
	kind    book.Edition
	profile pdf.Profile
	size    string   // the one size that is printed; "": all
	langs   []string // tags; nil: those of the pattern
}

// mostLangs is how many languages fit side by side.
const mostLangs = 2

// edition reads the flags that choose the pages.
func (c *call) edition() (e edition, wrong *said) {
	if c.has("--archive") {
		e.profile = pdf.Archive
	}
	e.size = c.flags[sizeFlag.name]
	e.paper, _ = layout.PaperNamed(c.flags[paperFlag.name])
	if e.kind, wrong = c.editionKind(allEditions); wrong != nil {
		return e, wrong
	}
	if wrong := e.clash(); wrong != nil {
		return e, wrong
	}
	if !c.has("--lang") {
		return e, nil
	}
	langs, wrong := readLangs(c.flags["--lang"])
	for _, l := range langs {
		e.langs = append(e.langs, l.Tag())
	}
	return e, wrong
}

// clash says which choices do not go together: large print and booklets need a whole sheet.
func (e edition) clash() *said {
	one := book.Large
	if e.kind.Has(book.Booklet) {
		one = book.Booklet
	}
	other := "--paper " + e.paper.String()
	switch {
	case e.kind.Has(book.Large | book.Booklet):
		other = "--edition " + book.Large.String()
	case !e.kind.Has(one) || fullSheet(e.paper):
		return nil
	}
	s := msgFlagsClash.with("one", "--edition "+one.String(), "other", other)
	return &s
}

// allEditions are those that pages can be set in.
const allEditions = ^book.Edition(0)

// editionKind reads the editions that are put together, of those that there may be: "large,left".
func (c *call) editionKind(of book.Edition) (kind book.Edition, wrong *said) {
	if !c.has(editionFlag.name) {
		return 0, nil
	}
	for name := range strings.SplitSeq(c.flags[editionFlag.name], ",") {
		name = strings.TrimSpace(name)
		one, ok := book.EditionNamed(name)
		if !ok || !of.Has(one) {
			s := msgFlagChoice.with("flag", editionFlag.name, "value", name, "allowed", strings.Join(editionNames(of), ", "))
			return 0, &s
		}
		kind |= one
	}
	return kind, nil
}

// editionNames are the names of editions; the usual one changes nothing, and is named only among all of them.
func editionNames(of book.Edition) []string {
	return slices.DeleteFunc(book.EditionNames(), func(name string) bool {
		one, _ := book.EditionNamed(name)
		return !of.Has(one) || one == 0 && of != allEditions
	})
}

// fullSheet reports whether a paper is a whole sheet, not a half of one or a phone.
func fullSheet(p book.Paper) bool { return p == book.A4 || p == book.Letter }

// suffix is what is put to the name of the pages of an edition, so that they never take the place of the usual ones.
func (e edition) suffix() string {
	s := ""
	if e.kind != 0 {
		s += "-" + e.kind.String()
	}
	if !fullSheet(e.paper) {
		s += "-" + e.paper.String()
	}
	if e.size != "" {
		s += "-" + strings.Map(plainSign, e.size)
	}
	if e.profile == pdf.Archive {
		s += "-archive"
	}
	return s
}

// plainSign keeps of a name what every file system takes: letters, figures and hyphens.
func plainSign(r rune) rune {
	switch {
	case unicode.IsLetter(r) || unicode.IsDigit(r):
		return unicode.ToLower(r)
	case r == '-' || r == '–' || r == '/':
		return '-'
	}
	return -1
}

// only lessens a pattern to the size that is asked for, under its name in any of the pattern's languages.
func (e edition) only(p *plan.Pattern) (*plan.Pattern, bool) {
	if e.size == "" {
		return p, true
	}
	if i, ok := sizeNamed(p, e.size); ok {
		return p.In(i), true
	}
	return nil, false
}

// sizeNamed finds a size by its name in any of the pattern's languages.
func sizeNamed(p *plan.Pattern, size string) (int, bool) {
	is := func(name string) bool { return strings.EqualFold(squeezed(name), squeezed(size)) }
	for i, z := range p.Sizes {
		if is(z.Name) || slices.ContainsFunc(slices.Collect(maps.Values(z.Names)), is) {
			return i, true
		}
	}
	return 0, false
}

// squeezed drops the spaces of a name: nobody knows which of them do not break.
func squeezed(name string) string { return strings.Join(strings.Fields(name), "") }

// of settles the languages for a pattern.
func (e edition) of(p *plan.Pattern) edition {
	if e.langs == nil {
		e.langs = p.Languages[:min(mostLangs, len(p.Languages))]
	}
	return e
}

// lacks returns the first of the languages that the pattern is not written in, "" if it has them all.
func (e edition) lacks(p *plan.Pattern) string {
	for _, tag := range e.langs {
		if code, _, _ := strings.Cut(tag, "-"); !slices.Contains(p.Languages, code) {
			return tag
		}
	}
	return ""
}

// sizeNames lists the sizes of a pattern as its source names them.
func sizeNames(p *plan.Pattern) []string {
	var names []string
	for _, z := range p.Sizes {
		names = append(names, visible(z.Name))
	}
	return names
}
