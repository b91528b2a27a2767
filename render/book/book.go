package book

import (
	"errors"
	"fmt"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/words"
)

// Options say how a pattern is set.
type Options struct {
	Paper Paper
	Langs []*words.Language // one, or two that face each other
}

// runOn is how much of a sheet must be filled for what starts a new sheet to do so. A sheet with a few lines on it and
// nothing else looks like a mistake.
const runOn = 0.4

// startsSheet reports whether a section that should start a sheet does. It does behind the title page at any rate.
func (s *setter) startsSheet() bool {
	n, filled := layout.Fill(s.flow, frontH, bodyH)
	return n <= 1 || filled > runOn*bodyH
}

// Compose sets a pattern as a document.
func Compose(p *plan.Pattern, o Options) (*page.Document, error) {
	if n := len(o.Langs); n < 1 || n > 2 {
		return nil, fmt.Errorf("a document has one language or two, not %d", n)
	}
	if len(p.Sizes) == 0 {
		return nil, errors.New("the pattern has no sizes")
	}
	s := newSetter(p, o)
	s.front()
	s.beforeYouStart(s.startsSheet())
	s.howToRead()
	s.abbreviations()
	s.specials()
	s.parts(s.startsSheet())
	s.finishing()
	s.colophon()
	sheets := layout.Paginate(s.flow, frontH, bodyH)
	if n := len(sheets); n > 1 {
		s.ruledNotes(&sheets[n-1], bodyH)
	}
	doc := &page.Document{Pages: s.bind(sheets, o.Paper), Outline: s.outline(sheets, o.Paper), Root: s.root}
	prune(s.root, doc.Pages)
	s.describe(doc)
	return doc, nil
}

// outline makes the bookmarks from where the marked strips came to stand.
func (s *setter) outline(sheets []layout.Sheet, paper Paper) []page.Outline {
	_, _, _, top := paper.Sheet()
	var list []page.Outline
	for _, sheet := range sheets {
		for _, m := range sheet.Marks {
			y := top + m.Y
			if m.Sheet > 0 {
				y += bodyTop
			}
			h := s.marks[m.Name]
			list = append(list, page.Outline{Title: h.title, Level: h.level, Page: m.Sheet, Y: y})
		}
	}
	return list
}

// describe fills in what a file says about itself.
func (s *setter) describe(doc *page.Document) {
	first := s.sides[0]
	var titles []string
	for _, sd := range s.sides {
		title := sd.l.Title(s.p)
		if own := sd.l.SetFor(s.p); own != "" {
			title += ", " + own
		}
		titles = append(titles, title)
	}
	doc.Title = strings.Join(titles, " · ")
	doc.Author = s.p.By
	doc.Lang = first.l.Tag()
	if s.p.Date != "" {
		doc.Created = s.p.Date
		if len(doc.Created) == len("2026-03") {
			doc.Created += "-01"
		}
	}
	if len(s.p.Source) > 0 {
		doc.Source, doc.SourceName = s.p.Source, s.p.Name+".ovillo"
	}
}
