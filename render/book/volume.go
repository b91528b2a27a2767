package book

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/words"
)

// A volume is a document from its title page to its end. Two languages face each other in one, or have one each, one after
// the other.

// mannered lets the languages write as the edition asks.
func (o Options) mannered() []*words.Language {
	m := words.Manner{Full: o.Has(Large), Left: o.Has(LeftHanded)}
	langs := make([]*words.Language, len(o.Langs))
	for i, l := range o.Langs {
		langs[i] = l.With(m)
	}
	return langs
}

// volumes begins the volumes of a document.
func (o Options) volumes(p *plan.Pattern, root *page.Elem) []*setter {
	if len(o.Langs) == 1 || !o.turns(len(p.Sizes)) {
		return []*setter{newSetter(p, o, o.Langs, root)}
	}
	var list []*setter
	for _, l := range o.Langs {
		part := root.New("Part")
		part.Lang = l.Tag()
		s := newSetter(p, o, []*words.Language{l}, part)
		s.level, s.prefix = 1, l.Tag()+" "
		list = append(list, s)
	}
	return list
}

// turns reports whether two languages take turns: where it is asked for, in large print, which has one column, on sheets too
// narrow for two, and for more sizes than fit beside each other.
func (o Options) turns(sizes int) bool {
	w, _ := o.Paper.Block()
	return o.Has(After) || o.Has(Large) || w < layout.BlockW || sizes > sizesMost
}

// draft makes the flow of a volume without a list of contents: how long it is, and so whether it needs one, shows when all is
// set.
func (s *setter) draft() {
	s.begin(nil)
	s.begun = extent{len(s.flow), len(s.root.Kids), len(s.order)}
	s.rest()
	s.settle()
}

// extent is how much of a volume is made: strips, sections and bookmarks.
type extent struct{ strips, sections, marks int }

// listed puts a list of contents behind the title page: what stands up to the parts is set anew, the rest, which is most of it,
// stays.
func (s *setter) listed() {
	list, at := s.contents(), s.begun
	flow, kids, order := s.flow[at.strips:], s.root.Kids[at.sections:], s.order[at.marks:]
	s.flow, s.order = s.flow[:at.strips:at.strips], nil
	s.begin(list)
	for i := range s.openings {
		s.openings[i] += len(s.flow) - at.strips
	}
	s.flow, s.root.Kids, s.order = append(s.flow, flow...), append(s.root.Kids, kids...), append(s.order, order...)
	s.settle()
}

// complete makes the sheets of a volume.
func (s *setter) complete() {
	s.sheets = layout.Paginate(s.flow, s.frontH, s.bodyH)
	if n := len(s.sheets); n > 1 {
		s.ruledNotes(&s.sheets[n-1], s.bodyH)
	}
}

// begin makes the flow of a volume from its title page to what must be known before the first stitch, with a list of contents
// behind the title page.
func (s *setter) begin(list []content) {
	s.front()
	s.addContents(list)
	s.beforeYouStart(s.startsSheet() && (list == nil || s.filledTo(mostOfContents)))
}

// rest makes all that follows.
func (s *setter) rest() {
	s.construction()
	s.howToRead()
	s.abbreviations()
	s.specials()
	s.parts()
	s.finishing()
	s.colophon()
	s.form()
}

// mayOpen says that the strip that is added next starts a sheet, if the one before it is filled far enough. That is known only
// when all before it is set.
func (s *setter) mayOpen() { s.openings = append(s.openings, len(s.flow)) }

// settle decides which strips start a sheet.
func (s *setter) settle() {
	for _, at := range s.openings {
		n, filled := layout.Fill(s.flow[:at], s.frontH, s.bodyH)
		s.flow[at].Fresh = n <= 1 || filled > runOn*s.bodyH
	}
}

// runOn is how much of a sheet must be filled for what starts a new sheet to do so. A sheet with a few lines on it and
// nothing else looks like a mistake.
const runOn = 0.4

// mostOfContents is how much of a sheet is filled at least if what follows the list of contents starts a new one.
const mostOfContents = 0.6

// filledTo reports whether the sheet at hand is the first, or filled so far.
func (s *setter) filledTo(part float64) bool {
	n, filled := layout.Fill(s.flow, s.frontH, s.bodyH)
	return n <= 1 || filled > part*s.bodyH
}

// startsSheet reports whether a section that should start a sheet does. It does behind the title page at any rate.
func (s *setter) startsSheet() bool {
	return s.filledTo(runOn)
}

// bind makes pages of the sheets of all volumes, with header and footer, and bookmarks from where the marked strips came to
// stand.
func bind(doc *page.Document, volumes []*setter) {
	total := 0
	for _, s := range volumes {
		total += len(s.sheets)
	}
	doc.Places = map[string]page.Place{}
	targets := map[*page.Elem]string{}
	for _, s := range volumes {
		maps.Copy(targets, s.targets)
		before := len(doc.Pages)
		for i, sheet := range s.sheets {
			for _, m := range sheet.Marks {
				h, at := s.marks[m.Name], page.Place{Page: before + m.Sheet, Y: s.topOf(m.Sheet) + m.Y}
				doc.Outline = append(doc.Outline, page.Outline{Title: h.title, Level: h.level, Page: at.Page, Y: at.Y})
				doc.Places[s.place(m.Name)] = at
			}
			p := s.paper.Blank()
			p.Items = s.dressed(i, before+i+1, total).Items
			p.Label = fmt.Sprint(before + i + 1)
			doc.Pages = append(doc.Pages, p)
		}
	}
	addPlaces(doc, targets)
}

// topOf is where the body of a sheet starts on its page.
func (s *setter) topOf(sheet int) float64 {
	if sheet == 0 || !s.header {
		return s.top
	}
	return s.top + s.bodyTop
}

// dressed is a sheet at its place on the page, with header and footer.
func (s *setter) dressed(sheet, number, total int) layout.Box {
	var b layout.Box
	if sheet > 0 && s.header {
		b.Put(s.left, s.top, s.headline())
	}
	b.Put(s.left, s.topOf(sheet), s.sheets[sheet].Box)
	b.Put(s.left, s.top+s.footTop, s.footer(number, total))
	return b
}

// describe fills in what a file says about itself.
func describe(doc *page.Document, p *plan.Pattern, volumes []*setter) {
	var titles, subjects []string
	for _, s := range volumes {
		for _, sd := range s.sides {
			doc.Langs = append(doc.Langs, sd.l.Tag())
			title := sd.l.Title(p)
			for _, kind := range s.editionKinds() {
				title += ", " + sd.l.EditionName(kind)
			}
			if own := sd.l.SetFor(p); own != "" {
				title += ", " + own
			}
			titles = append(titles, title)
			doc.Titles = append(doc.Titles, page.InLang{Lang: sd.l.Tag(), Text: title})
			subject := sd.l.Subject(p)
			subjects = append(subjects, subject)
			doc.Subjects = append(doc.Subjects, page.InLang{Lang: sd.l.Tag(), Text: subject})
			for _, word := range sd.l.Keywords(p) {
				if !slices.Contains(doc.Keywords, word) {
					doc.Keywords = append(doc.Keywords, word)
				}
			}
		}
	}
	doc.Title = strings.Join(titles, " · ")
	doc.Subject = strings.Join(subjects, " · ")
	doc.Author = p.By
	if p.Date != "" {
		doc.Created = p.Date
		if len(doc.Created) == len("2026-03") {
			doc.Created += "-01"
		}
	}
	if len(p.Source) > 0 {
		doc.Source, doc.SourceName = p.Source, p.Name+".ovillo"
		for _, u := range p.Used {
			doc.Used = append(doc.Used, page.Attachment{Name: u.Name, Text: u.Text})
		}
	}
}
