package report

import (
	"strings"

	"ovillo/render/page"
)

// This file reads finished pages.

// eachGlyphs calls f for every run of text with the number of its page, from 0.
func eachGlyphs(d *page.Document, f func(n int, g page.Glyphs)) {
	for i := range d.Pages {
		for _, it := range d.Pages[i].Items {
			if g, ok := it.(page.Glyphs); ok {
				f(i, g)
			}
		}
	}
}

// walk calls f for an element and all below it.
func walk(e *page.Elem, f func(*page.Elem)) {
	if e == nil {
		return
	}
	f(e)
	for _, k := range e.Kids {
		walk(k, f)
	}
}

// artifacts is the text of a page that belongs to no element: its running lines.
func artifacts(p page.Page) string {
	return textWhere(p, func(g page.Glyphs) bool { return g.Elem == nil })
}

// tagged is the text of a page that belongs to elements.
func tagged(p page.Page) string {
	return textWhere(p, func(g page.Glyphs) bool { return g.Elem != nil })
}

func textWhere(p page.Page, is func(page.Glyphs) bool) string {
	var b strings.Builder
	for _, it := range p.Items {
		if g, ok := it.(page.Glyphs); ok && is(g) {
			b.WriteString(g.Text + " ")
		}
	}
	return b.String()
}

// wholeText is all text of a document, page by page in the order of drawing.
func wholeText(d *page.Document) string {
	var b strings.Builder
	eachGlyphs(d, func(_ int, g page.Glyphs) { b.WriteString(g.Text + " ") })
	return b.String()
}

// squeezed drops what the breaking of lines may drop or add.
func squeezed(s string) string {
	return strings.NewReplacer(" ", "", "\u00A0", "", "\u202F", "", "\n", "", "…", "").Replace(s)
}

// picturesOf counts the pictures of a document. One that is described in two languages has an element for each, at one place of
// one page.
func picturesOf(d *page.Document) int {
	pageOf := map[*page.Elem]int{}
	for n := range d.Pages {
		for _, it := range d.Pages[n].Items {
			switch x := it.(type) {
			case page.Path:
				pageOf[x.Elem] = n
			case page.Picture:
				pageOf[x.Elem] = n
			}
		}
	}
	type place struct {
		page int
		box  [4]float64
	}
	places := map[place]bool{}
	pictures := 0
	walk(d.Root, func(e *page.Elem) {
		if e.Tag != "Figure" {
			return
		}
		at := place{page: pageOf[e]}
		if e.Box != nil {
			at.box = *e.Box
		}
		if e.Box == nil || !places[at] {
			pictures++
		}
		places[at] = true
	})
	return pictures
}
