package errata

import (
	"fmt"
	"strings"

	"ovillo/render/font"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// The roles of type: those of the pattern's own pages.
var (
	kindType  = layout.Sans(9, 5)
	titleType = layout.Serif(28, 11)
	spanType  = layout.Serif(11, 5)
	groupType = layout.Heavy(layout.Serif(15, 7.5))
	whereType = layout.Heavy(layout.Sans(11, 5))
	pageType  = capped(layout.Sans(9.5, 5))
	sizesType = layout.Heavy(layout.Sans(9.5, 5))
	textType  = capped(layout.Sans(10.5, 5))
	running   = layout.Sans(8.5, 4)
)

// capped keeps lines to a length that is read with ease.
func capped(s layout.Style) layout.Style {
	s.MaxRunes = 70
	return s
}

// Measures in millimetres from the corner of the text block. Two languages face each other as in the pattern.
const (
	columnW = 84.0
	secondX = 96.0
	aloneW  = 112.0 // of one language: a line of it is not too long to read
	bodyTop = 10.0
	bodyH   = 230.0
	frontH  = 240.0
	footTop = 245.0
	roomH   = 7.5 // a line to write on
	roomOf  = 5   // so many of them
)

// side is one language on the sheet.
type side struct {
	*Sheet
	x, w float64
	sect *page.Elem
}

// setter makes the flow of a sheet.
type setter struct {
	sides  []side
	flow   []layout.Strip
	titles []string // of the bookmarks
}

// Compose sets a list in one language, or in two that face each other.
func Compose(sheets []*Sheet, paper layout.Paper, date string) *page.Document {
	root := &page.Elem{Tag: "Document", Lang: sheets[0].Lang.Tag()}
	s := &setter{}
	for i, sh := range sheets {
		sd := side{Sheet: sh, w: aloneW, sect: root.New("Sect")}
		sd.sect.Lang = sh.Lang.Tag()
		if len(sheets) > 1 {
			sd.x, sd.w = float64(i)*secondX, columnW
		}
		s.sides = append(s.sides, sd)
	}
	s.front()
	for g := range sheets[0].Groups {
		s.group(g)
	}
	s.room()
	doc := &page.Document{Root: root, Author: sheets[0].By, Lang: sheets[0].Lang.Tag(), Created: created(date)}
	for _, sh := range sheets {
		title := sh.Title + ": " + lowered(sh.Lang.Say(words.ErrataHead))
		doc.Langs = append(doc.Langs, sh.Lang.Tag())
		doc.Titles = append(doc.Titles, page.InLang{Lang: sh.Lang.Tag(), Text: title})
		if doc.Title != "" {
			title = " · " + title
		}
		doc.Title += title
	}
	made := layout.Paginate(s.flow, frontH, bodyH)
	_, _, _, top := paper.Sheet()
	for n, sheet := range made {
		doc.Pages = append(doc.Pages, s.sheet(sheet, paper, n, len(made)))
		for _, m := range sheet.Marks {
			y := top + m.Y
			if n > 0 {
				y += bodyTop
			}
			var at int
			fmt.Sscan(m.Name, &at)
			doc.Outline = append(doc.Outline, page.Outline{Title: s.titles[at], Level: 1, Page: n, Y: y})
		}
	}
	return doc
}

// created is the first day of the month of an edition, which fixes the dates of the file.
func created(date string) string {
	if len(date) == len("2026-03") {
		return date + "-01"
	}
	return date
}

// sheet puts the running lines round the body of a sheet.
func (s *setter) sheet(sheet layout.Sheet, paper layout.Paper, n, of int) page.Page {
	_, _, left, top := paper.Sheet()
	var b layout.Box
	at := top
	if n > 0 {
		for _, sd := range s.sides {
			head := sd.Title + " · " + lowered(sd.Lang.Say(words.ErrataHead))
			b.Put(left+sd.x, top, layout.Text(cut(head, sd.w), running, false, 0, nil))
		}
		at += bodyTop
	}
	b.Put(left, at, sheet.Box)
	for _, sd := range s.sides {
		foot := sd.Edition
		if sd.x == 0 && sd.By != "" {
			foot = strings.Trim(sd.By+" · "+lowered(foot), " ·")
		}
		b.Put(left+sd.x, top+footTop, layout.Text(cut(foot, sd.w-1), running, false, 0, nil))
	}
	number := fmt.Sprintf("%d / %d", n+1, of)
	if len(s.sides) > 1 {
		b.Put(left, top+footTop, layout.TextCentred(number, running, true, (columnW+secondX)/2, nil))
	} else {
		b.Put(left, top+footTop, layout.TextRight(number, running, true, layout.BlockW, nil))
	}
	p := paper.Blank()
	p.Items, p.Label = b.Items, fmt.Sprint(n+1)
	return p
}

// cut shortens a running line to its room.
func cut(text string, room float64) string {
	text = font.Named(text)
	for r := []rune(text); running.Width(text, false) > room && len(r) > 1; {
		r = r[:len(r)-1]
		text = string(r) + "…"
	}
	return text
}

// set sets a text in the column of a side.
func (sd side) set(text rich.Text, style layout.Style, tag string) layout.Box {
	if len(text) == 0 {
		return layout.Box{}
	}
	of := make(rich.Text, len(text))
	for i, r := range text {
		r.Text, r.Link = font.Named(r.Text), ""
		of[i] = r
	}
	return layout.Set(layout.Break(of, style, sd.w, 0), style, sd.x, sd.sect.New(tag))
}

// each makes a strip of what stands in each column.
func (s *setter) each(space float64, f func(sd side) layout.Box) layout.Strip {
	var b layout.Box
	for _, sd := range s.sides {
		b.Put(0, 0, f(sd))
	}
	b.H = layout.Snap(b.H)
	return layout.Strip{Box: b, Space: space}
}

func (s *setter) add(strips ...layout.Strip) { s.flow = append(s.flow, strips...) }

// heading is a strip that names what follows.
func heading(strip layout.Strip) layout.Strip {
	strip.Keep, strip.Heading = true, true
	return strip
}

func (s *setter) front() {
	s.add(heading(s.each(0, func(sd side) layout.Box { return sd.set(rich.T(sd.Lang.Say(words.ErrataHead)), kindType, "P") })))
	s.add(heading(s.each(0, func(sd side) layout.Box { return sd.set(rich.T(sd.Title), titleType, "H1") })))
	s.add(s.each(layout.Module, func(sd side) layout.Box { return sd.set(rich.T(sd.Span), spanType, "P") }))
	s.add(s.each(2*layout.Module, func(sd side) layout.Box {
		if sd.Empty() {
			return sd.set(rich.T(sd.Lang.Say(words.ErrataNone)), textType, "P")
		}
		return sd.set(rich.T(sd.Pages), pageType, "P")
	}))
}

// group sets the entries under one head.
func (s *setter) group(g int) {
	head := heading(s.each(8*layout.Module, func(sd side) layout.Box { return sd.set(rich.T(sd.Groups[g].Head), groupType, "H2") }))
	head.Mark = fmt.Sprint(len(s.titles))
	var titles []string
	for _, sd := range s.sides {
		titles = append(titles, font.Named(sd.Groups[g].Head))
	}
	s.titles = append(s.titles, strings.Join(titles, " · "))
	s.add(head)
	for e := range s.sides[0].Groups[g].Entries {
		if s.sides[0].Groups[g].Plain {
			s.add(s.each(2*layout.Module, func(sd side) layout.Box { return sd.plain(sd.Groups[g].Entries[e]) }))
			continue
		}
		s.entry(g, e)
	}
}

// plain sets an entry that is a line for each group of sizes.
func (sd side) plain(e Entry) layout.Box {
	var b layout.Box
	for _, it := range e.Items {
		text := rich.Text{{Text: e.Where + bracketed(it.Sizes) + ": ", Strong: true}}
		b.Below(0, sd.set(append(text, it.New...), textType, "P"))
	}
	return b
}

// entry sets one place of the pattern: what it is and its page, then what stood there and what should.
func (s *setter) entry(g, e int) {
	head := heading(s.each(4*layout.Module, func(sd side) layout.Box {
		b := sd.set(rich.T(sd.Groups[g].Entries[e].Where), whereType, "H3")
		b.Below(0, sd.set(rich.T(sentence(sd.Groups[g].Entries[e].Page)), pageType, "P"))
		return b
	}))
	s.add(head)
	most := 0
	for _, sd := range s.sides {
		most = max(most, len(sd.Groups[g].Entries[e].Items))
	}
	for i := range most {
		item := func(sd side) (Item, bool) {
			items := sd.Groups[g].Entries[e].Items
			if i >= len(items) {
				return Item{}, false
			}
			return items[i], true
		}
		sizes := s.each(layout.Module, func(sd side) layout.Box {
			it, _ := item(sd)
			return sd.set(rich.T(it.Sizes), sizesType, "P")
		})
		if sizes.H > 0 {
			s.add(heading(sizes))
		}
		for nth := range 2 {
			line := s.each(layout.Module, func(sd side) layout.Box {
				it, ok := item(sd)
				if lines := sd.lines(it); ok && nth < len(lines) {
					text := rich.Text{{Text: lines[nth].head + " ", Strong: true}}
					return sd.set(append(text, lines[nth].text...), textType, "P")
				}
				return layout.Box{}
			})
			if line.H > 0 {
				line.Keep = nth == 0 && line.H < bodyH/4
				s.add(line)
			}
		}
	}
	s.flow[len(s.flow)-1].Keep = false
}

// room leaves room for what only the designer can say: what to do if one is past a correction already.
func (s *setter) room() {
	if s.sides[0].Empty() {
		return
	}
	s.add(heading(s.each(10*layout.Module, func(sd side) layout.Box { return sd.set(rich.T(sd.Lang.Say(words.ErrataPast)), groupType, "H2") })))
	s.add(s.each(0, func(sd side) layout.Box {
		var b layout.Box
		for range roomOf {
			b.H += roomH
			b.Add(layout.Rule(sd.x, b.H-1, sd.x+sd.w, b.H-1, 0.1))
		}
		return b
	}))
}
