package book

import (
	"fmt"
	"strings"

	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// Links inside a document lead to places by their names: those of the marks of strips, and those given to elements. The number
// of a page is not known before all pages are set; a hole stands for it, as wide as the numbers are at most as a rule.
const (
	hole     = "00"
	wideHole = "000"   // in large print, which has over a hundred pages
	asPage   = "?page" // behind a name: the link shows the number of the page
)

// hole is what stands for a number of a page in the edition at hand.
func (s *setter) hole() string {
	if s.edition.Has(Large) {
		return wideHole
	}
	return hole
}

// holeIn returns the hole of a text, "" if it has none.
func holeIn(text string) string {
	for _, h := range [...]string{wideHole, hole} {
		if strings.Contains(text, h) {
			return h
		}
	}
	return ""
}

// place is the name of a place in the whole document.
func (s *setter) place(mark string) string { return s.prefix + mark }

// onPage points at the page of a mark: "page 3".
func (s *setter) onPage(sd side, mark string) rich.Run { return s.onPageOf(sd, s.place(mark)) }

// onPageOf points at the page of a place of the document.
func (s *setter) onPageOf(sd side, place string) rich.Run {
	text := strings.Replace(sd.l.OnPage(0), "0", s.hole(), 1)
	return rich.Run{Text: text, Link: "#" + place + asPage}
}

// addPlaces finds where the elements stand that something leads to, and fills in the numbers of pages.
func addPlaces(doc *page.Document, targets map[*page.Elem]string) {
	for n := range doc.Pages {
		for _, it := range doc.Pages[n].Items {
			g, ok := it.(page.Glyphs)
			if !ok || targets[g.Elem] == "" {
				continue
			}
			name := targets[g.Elem]
			if _, known := doc.Places[name]; !known {
				doc.Places[name] = page.Place{Page: n, Y: g.Base - g.Size/2} // above the letters
			}
		}
	}
	for n := range doc.Pages {
		fillIn(doc, doc.Pages[n].Items)
	}
}

// fillIn writes the numbers of pages into their holes. A hole that stands alone ends where its link ends, and so does the
// number; figures are all of one width.
func fillIn(doc *page.Document, items []page.Item) {
	numbers, right := map[*page.Elem]string{}, map[*page.Elem]float64{}
	for i, it := range items {
		a, ok := it.(page.Anchor)
		name, numbered := strings.CutSuffix(a.URI, asPage)
		if !ok || !numbered {
			continue
		}
		number := doc.Pages[doc.Places[strings.TrimPrefix(name, "#")].Page].Label
		a.URI = name
		if h := holeIn(a.Label); h != "" {
			a.Label = strings.Replace(a.Label, h, number, 1)
		}
		items[i], numbers[a.Elem], right[a.Elem] = a, number, a.X+a.W
	}
	for i, it := range items {
		g, ok := it.(page.Glyphs)
		number := numbers[g.Elem]
		h := holeIn(g.Text)
		if !ok || g.Elem == nil || number == "" || h == "" {
			continue
		}
		if g.Text == h {
			end := right[g.Elem]
			g.X = end - (end-g.X)/float64(len(h))*float64(len(number))
		}
		g.Text = strings.Replace(g.Text, h, number, 1)
		items[i] = g
	}
}

// abbreviationPlace is the name of the row of an abbreviation.
func (s *setter) abbreviationPlace(sd side, short string) string {
	return s.place(fmt.Sprintf("%s abbreviation %s", sd.l.Tag(), plainShort(short)))
}

func plainShort(short string) string {
	return strings.ToLower(strings.ReplaceAll(short, "\u00a0", " "))
}

// explain names the row of an abbreviation, so that links lead to it from each of its forms: "st, sts".
func (s *setter) explain(sd side, a words.Abbreviation, row *page.Elem) {
	name := s.abbreviationPlace(sd, a.Short)
	s.targets[row] = name
	for short := range strings.SplitSeq(a.Short, ", ") {
		s.explained[s.abbreviationPlace(sd, short)] = name
	}
}

// linked leads from the first use of an abbreviation in a part to its row in the table. Nothing is seen of it.
func (s *setter) linked(sd side, text rich.Text) rich.Text {
	out := make(rich.Text, len(text))
	for i, r := range text {
		key := s.abbreviationPlace(sd, r.Text)
		if name := s.explained[key]; r.Expand != "" && r.Link == "" && name != "" && !s.used[key] {
			s.used[key] = true
			r.Link = "#" + name
		}
		out[i] = r
	}
	return out
}

// A list of contents is worth its room in a pattern of more pages or chapters than these: fewer are found by leafing.
const (
	contentsPages    = 8
	contentsChapters = 5
	contentsWhole    = 24   // lines of a list that is not split
	contentsEms      = 6.0  // millimetres a point: wider where the type is large
	contentsW        = 66.0 // numbers stand near enough to their titles to need no dots between
	contentsNumberW  = 12.0
)

// content is a line of the list of contents.
type content struct {
	mark   string
	titles []string // one a side
	whole  bool     // the mark is a place of the whole document
}

// long reports whether the volume is long enough for a list of contents.
func (s *setter) long() bool {
	sheets, _ := layout.Fill(s.flow, s.frontH, s.bodyH)
	return sheets > contentsPages || s.chapter > contentsChapters
}

// contents lists what there is in the volume.
func (s *setter) contents() []content {
	var list []content
	for _, mark := range s.order {
		if h := s.marks[mark]; mark != titleMark && h.level == s.level+1 {
			list = append(list, content{mark: mark, titles: h.titles})
		}
	}
	return list
}

// addContents sets the list of contents, which is a part of the section of the title page: titles at the left, numbers of pages at the right of a narrow column.
func (s *setter) addContents(list []content) {
	if len(list) == 0 {
		return
	}
	tocs := make([]*page.Elem, len(s.sides))
	head := s.each(func(sd side) layout.Box {
		h := sd.elem(s.sect, "H2")
		return layout.Set(layout.Break(strong(sd.l.Say(words.ContentsHead)), s.minorType, s.headRoom(sd), 0), s.minorType, sd.margin(), h)
	})
	for i, sd := range s.sides {
		tocs[i] = sd.elem(s.sect, "TOC")
	}
	s.add(layout.Strip{Box: head, Space: sectionGap, Keep: true, Heading: true})
	var strips []layout.Strip
	for _, c := range list {
		var b layout.Box
		for i, sd := range s.sides {
			link := tocs[i].New("TOCI").New("Reference").New("Link")
			place := c.mark
			if !c.whole {
				place = s.place(c.mark)
			}
			b.Put(0, 0, s.contentsLine(sd, c.titles[i], place, link))
		}
		b.H = layout.Snap(b.H)
		strips = append(strips, layout.Strip{Box: b})
	}
	if len(strips) <= contentsWhole {
		s.add(layout.Bind(strips)...)
		return
	}
	s.add(layout.Loosely(strips, 2)...)
}

func (s *setter) contentsLine(sd side, title, place string, link *page.Elem) layout.Box {
	x := sd.margin()
	right := min(sd.right, x+max(contentsW, contentsEms*s.factType.Size))
	b := layout.Set(layout.Break(rich.T(title), s.factType, right-x-contentsNumberW, 0), s.factType, x, link)
	b.Put(0, b.H-s.factType.Leading, layout.TextRight(s.hole(), s.factType, false, right, link))
	b.Add(page.Anchor{X: x, W: right - x, H: b.H, URI: "#" + place + asPage, Label: title, Elem: link})
	return b
}
