package proof

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/render/page"
)

// sound is a document of two pages without a fault: heads, text, a list of rows with counts, a table, a figure, a caution.
type sound struct {
	doc *page.Document

	head, text, label, body, count, caution, note, th, td, figure, link *page.Elem
}

func soundDocument() *sound {
	s := &sound{}
	root := &page.Elem{Tag: "Document", Lang: "en-US"}
	sect := root.New("Sect")
	s.head, s.text = sect.New("H1"), sect.New("P")
	list := sect.New("L")
	item := list.New("LI")
	s.label = item.New("Lbl")
	body := item.New("LBody")
	s.body, s.count = body.New("P"), body.New("P")
	s.caution = sect.New("Div")
	s.note = s.caution.New("P")
	tr := sect.New("Table").New("TR")
	s.th, s.td = tr.New("TH"), tr.New("TD")
	s.th.Scope = "Row"
	s.figure = sect.New("Figure")
	s.figure.Alt = "A circle."
	s.link = s.text.New("Link")
	black := page.Black
	s.doc = &page.Document{Root: root, Lang: "en-US", Pages: []page.Page{
		{W: 210, H: 297, Label: "1", Items: []page.Item{
			at(s.head, 20, 40, "Head"), at(s.text, 20, 50, "Some text that goes on"), at(s.text, 20, 55, "in another line, see"),
			at(s.link, 60, 55, "here"), page.Anchor{X: 60, Y: 51, W: 8, H: 5, URI: "https://studio.example", Label: "here", Elem: s.link},
			at(s.label, 20, 70, "Row 1"), at(s.body, 20, 75, "Work as before."), at(s.count, 150, 75, "12 sts"),
			at(s.note, 25, 90, "Cords are a danger."),
			page.Path{Cmds: straight(20, 92, 100, 92), Stroke: &black, Width: 0.2},
		}},
		{W: 210, H: 297, Label: "2", Items: []page.Item{
			at(s.th, 20, 40, "Width"), at(s.td, 60, 40, "30"),
			page.Path{Cmds: straight(20, 60, 60, 100), Stroke: &black, Width: 0.3, Elem: s.figure}, at(s.figure, 39, 80, "A"),
			at(nil, 20, 260, "2 / 2"),
		}},
	}}
	return s
}

// at is a text in 11 points.
func at(e *page.Elem, x, y float64, text string) page.Glyphs {
	return page.Glyphs{X: x, Base: y, Size: 11, Text: text, Elem: e}
}

func straight(x1, y1, x2, y2 float64) []page.Cmd {
	return []page.Cmd{{Op: 'M', P: [3]page.Point{{X: x1, Y: y1}}}, {Op: 'L', P: [3]page.Point{{X: x2, Y: y2}}}}
}

func rectangle(x, y, w, h float64) []page.Cmd {
	p := func(x, y float64) [3]page.Point { return [3]page.Point{{X: x, Y: y}} }
	return []page.Cmd{{Op: 'M', P: p(x, y)}, {Op: 'L', P: p(x+w, y)}, {Op: 'L', P: p(x+w, y+h)}, {Op: 'L', P: p(x, y+h)}, {Op: 'Z'}}
}

func circle(x, y, r float64) []page.Cmd {
	const k = 0.5522847498
	c := func(a, b, c, d, e, f float64) page.Cmd {
		return page.Cmd{Op: 'C', P: [3]page.Point{{X: x + r*a, Y: y + r*b}, {X: x + r*c, Y: y + r*d}, {X: x + r*e, Y: y + r*f}}}
	}
	return []page.Cmd{{Op: 'M', P: [3]page.Point{{X: x + r, Y: y}}},
		c(1, k, k, 1, 0, 1), c(-k, 1, -1, k, -1, 0), c(-1, -k, -k, -1, 0, -1), c(k, -1, 1, -k, 1, 0), {Op: 'Z'}}
}

// first changes the first text of an element.
func (s *sound) first(e *page.Elem, change func(g *page.Glyphs)) {
	for n := range s.doc.Pages {
		for i, it := range s.doc.Pages[n].Items {
			if g, ok := it.(page.Glyphs); ok && g.Elem == e {
				change(&g)
				s.doc.Pages[n].Items[i] = g
				return
			}
		}
	}
}

// move puts the first text of an element on another page.
func (s *sound) move(e *page.Elem, to int, y float64) {
	for n := range s.doc.Pages {
		for i, it := range s.doc.Pages[n].Items {
			if g, ok := it.(page.Glyphs); ok && g.Elem == e {
				s.doc.Pages[n].Items = slices.Delete(s.doc.Pages[n].Items, i, i+1)
				g.Base = y
				s.add(to, g)
				return
			}
		}
	}
}

func (s *sound) add(n int, items ...page.Item) {
	s.doc.Pages[n].Items = append(s.doc.Pages[n].Items, items...)
}

// under draws something before all else.
func (s *sound) under(n int, it page.Item) {
	s.doc.Pages[n].Items = append([]page.Item{it}, s.doc.Pages[n].Items...)
}

var (
	black   = page.Color{0, 0, 0}
	white   = page.Color{1, 1, 1}
	grey    = page.Color{0.7, 0.7, 0.7}
	paper   = Rect{15, 21, 180, 249}
	usual   = Promise{Block: paper}
	large   = Promise{Large: true}
	lowInk  = Promise{Block: paper, LowInk: true}
	pale    = page.Color{0.47, 0.47, 0.47} // 4.3 to 1 on white
	paler   = page.Color{0.6, 0.6, 0.6}    // 2.8 to 1
	hidden  = page.Path{Cmds: rectangle(20, 46, 60, 6), Fill: &white}
	ground  = page.Path{Cmds: rectangle(18, 46, 60, 6), Fill: &black}
	picture = page.Picture{X: 20, Y: 45, W: 50, H: 20}
)

// enlarged makes all type of the sound document large enough for large print.
func (s *sound) enlarged() {
	y := 0.0
	for n := range s.doc.Pages {
		for i, it := range s.doc.Pages[n].Items {
			switch it := it.(type) {
			case page.Glyphs:
				it.Size = 20
				if it.X < 30 {
					y += 9
				}
				if it.X == 60 {
					it.X = 110
				}
				it.X, it.Base = it.X+10, 40+y
				s.doc.Pages[n].Items[i] = it
			case page.Path:
				s.doc.Pages[n].Items[i] = page.Path{Cmds: straight(60, 200, 100, 210), Stroke: it.Stroke, Width: it.Width, Elem: it.Elem}
			}
		}
		y = 0
	}
}

// tamperings break one law each; several may break one law in different ways.
var tamperings = []struct {
	rule    Rule
	name    string
	promise Promise
	change  func(s *sound)
}{
	{Outside, "text in the left margin", usual, func(s *sound) { s.first(s.text, func(g *page.Glyphs) { g.X = 14 }) }},
	{Outside, "text over the right edge", usual, func(s *sound) { s.first(s.count, func(g *page.Glyphs) { g.X = 190 }) }},
	{Outside, "text below the block", usual, func(s *sound) { s.first(nil, func(g *page.Glyphs) { g.Base = 271 }) }},
	{Outside, "a line into the margin", usual, func(s *sound) {
		s.add(0, page.Path{Cmds: straight(20, 120, 200, 120), Stroke: &black})
	}},
	{Outside, "a curve into the margin", usual, func(s *sound) { s.add(0, page.Path{Cmds: circle(20, 150, 8), Stroke: &black}) }},
	{Outside, "a picture", usual, func(s *sound) { s.add(0, page.Picture{X: 150, Y: 150, W: 50, H: 50, Elem: s.figure}) }},
	{Meeting, "text on text", usual, func(s *sound) { s.add(0, at(s.note, 40, 48, "on it")) }},
	{Meeting, "two figures that look like one", usual, func(s *sound) {
		a, b := at(s.td, 60, 50, "12"), at(s.td, 63.9, 50, "14")
		a.Actual, b.Actual = "S 12", "M 14"
		s.add(1, a, b)
	}},
	{Missing, "a letter that is not there", usual, func(s *sound) { s.first(s.text, func(g *page.Glyphs) { g.Text = "中" }) }},
	{LastHead, "a head at the foot", usual, func(s *sound) { s.move(s.head, 0, 250) }},
	{LastHead, "a head on the page before", usual, func(s *sound) { s.move(s.text, 1, 50); s.move(s.text, 1, 55) }},
	{CountAway, "a count on the next page", Promise{Block: paper, LongRow: 1}, func(s *sound) { s.move(s.count, 1, 50) }},
	{TornRow, "a row over two pages", usual, func(s *sound) { s.add(1, at(s.count, 150, 50, "and more")) }},
	{TornRow, "a line of a table", usual, func(s *sound) { s.move(s.td, 0, 100) }},
	{DeadLink, "a page that is not there", usual, func(s *sound) { s.add(0, page.Anchor{Page: 2, Label: "page 3"}) }},
	{DeadLink, "a place that is not there", usual, func(s *sound) { s.add(0, page.Anchor{URI: "#part", Label: "the part"}) }},
	{Empty, "a page with its number alone", usual, func(s *sound) {
		s.doc.Pages = append(s.doc.Pages, page.Page{W: 210, H: 297, Items: []page.Item{at(nil, 20, 260, "3")}})
	}},
	{Struck, "a line through a text", usual, func(s *sound) { s.add(0, page.Path{Cmds: straight(15, 49, 100, 49), Stroke: &black}) }},
	{Struck, "a text that is covered", usual, func(s *sound) { s.add(0, hidden) }},
	{Tinted, "a grey area", lowInk, func(s *sound) { s.add(0, page.Path{Cmds: rectangle(20, 200, 9, 9), Fill: &grey}) }},
	{SmallBody, "letters of less than 1.2 mm", Promise{Block: paper, Least: 6}, func(s *sound) {
		s.first(s.note, func(g *page.Glyphs) { g.Size = 6.5 })
	}},
	{Small, "7.9 points", usual, func(s *sound) { s.first(s.note, func(g *page.Glyphs) { g.Size = 7.9 }) }},
	{LongLine, "71 characters", usual, func(s *sound) {
		s.first(s.text, func(g *page.Glyphs) { g.Text = strings.Repeat("l", 71) })
	}},
	{Tight, "4.8 mm for 11 points", usual, func(s *sound) { s.first(s.text, func(g *page.Glyphs) { g.Base = 50.2 }) }},
	{OverPicture, "a photograph under text", usual, func(s *sound) { s.under(0, picture) }},
	{Rotated, "text on its side", usual, func(s *sound) { s.first(s.count, func(g *page.Glyphs) { g.Angle = 90 }) }},
	{LargeSmall, "17 points", large, func(s *sound) { s.enlarged(); s.first(s.note, func(g *page.Glyphs) { g.Size = 17 }) }},
	{LargeHead, "a head of 19 points", large, func(s *sound) { s.enlarged(); s.first(s.head, func(g *page.Glyphs) { g.Size = 19 }) }},
	{LargeTight, "8 mm for 20 points", large, func(s *sound) { s.enlarged(); s.first(s.text, func(g *page.Glyphs) { g.Base += 1 }) }},
	{LargeMargin, "a margin of 25 mm", large, func(s *sound) { s.enlarged(); s.first(s.text, func(g *page.Glyphs) { g.X = 25 }) }},
	{LargeFacing, "Spanish beside English", large, func(s *sound) { s.enlarged(); s.count.Lang = "es" }},
	{Pale, "grey text", usual, func(s *sound) { s.first(s.text, func(g *page.Glyphs) { g.Color = pale }) }},
	{Pale, "black on black", usual, func(s *sound) { s.under(0, ground) }},
	{PaleLarge, "large grey text", usual, func(s *sound) {
		s.first(s.head, func(g *page.Glyphs) { g.Color, g.Size = paler, 24 })
	}},
	{PaleLine, "a grey line in a drawing", usual, func(s *sound) {
		s.add(1, page.Path{Cmds: straight(100, 60, 120, 60), Stroke: &grey, Elem: s.figure})
	}},
	{LargePale, "grey large print", large, func(s *sound) {
		s.enlarged()
		s.first(s.text, func(g *page.Glyphs) { g.Color = pale })
	}},
	{TornCaution, "a caution over two pages", usual, func(s *sound) { s.add(1, at(s.note, 20, 50, "Keep them short.")) }},
	{TornCaution, "a caution of a list over two pages", usual, func(s *sound) {
		one := s.caution.New("L").New("LI").New("LBody").New("P")
		s.add(0, at(one, 25, 97, "Keep them"))
		s.add(1, at(one, 20, 150, "short."))
	}},
	{Untagged, "text of no element of the tree", usual, func(s *sound) { s.add(0, at(&page.Elem{Tag: "P"}, 20, 120, "lost")) }},
	{Untagged, "a drawing of no element of the tree", usual, func(s *sound) {
		s.add(0, page.Path{Cmds: straight(20, 120, 40, 120), Stroke: &black, Elem: &page.Elem{Tag: "Figure"}})
	}},
	{Untagged, "no tree at all", usual, func(s *sound) {
		s.doc.Root = nil
		for n := range s.doc.Pages {
			for i, it := range s.doc.Pages[n].Items {
				if g, ok := it.(page.Glyphs); ok {
					g.Elem = nil
					s.doc.Pages[n].Items[i] = g
				}
			}
		}
		s.doc.Pages = s.doc.Pages[:1]
		s.add(0, page.Picture{X: 100, Y: 200, W: 10, H: 10, Elem: s.figure})
	}},
	{NoLanguage, "a language that nobody says", usual, func(s *sound) { s.doc.Lang, s.doc.Root.Lang, s.doc.Root.Kids[0].Lang = "", "", "" }},
	{SkippedLevel, "level 3 behind level 1", usual, func(s *sound) {
		h := s.doc.Root.Kids[0].New("H3")
		s.add(1, at(h, 20, 120, "Deep"), at(s.td, 20, 130, "31"))
	}},
	{NoDescription, "a figure that says nothing", usual, func(s *sound) { s.figure.Alt = " " }},
	{NoHeaderCell, "a table of cells", usual, func(s *sound) { s.th.Tag = "TD" }},
	{NoHeaderCell, "a head that does not say of what", usual, func(s *sound) { s.th.Scope = "" }},
	{BrokenList, "a paragraph in a list", usual, func(s *sound) { s.doc.Root.Kids[0].Kids[2].New("P") }},
	{MuteLink, "a link that says nothing", usual, func(s *sound) { s.add(0, page.Anchor{Page: 1}) }},
}

// TestSoundPagesHaveNoFault: what is tampered with below is right before.
func TestSoundPagesHaveNoFault(t *testing.T) {
	require.Empty(t, Look(soundDocument().doc, usual))
	require.Empty(t, Look(soundDocument().doc, lowInk))
	s := soundDocument()
	s.enlarged()
	require.Empty(t, Look(s.doc, large))
}

// TestEveryLawCanFail: each thing that is done to the pages breaks the law that it should, and no other.
func TestEveryLawCanFail(t *testing.T) {
	broken := map[Rule]bool{}
	for _, c := range tamperings {
		t.Run(string(c.rule)+" "+c.name, func(t *testing.T) {
			s := soundDocument()
			c.change(s)
			faults := Look(s.doc, c.promise)
			require.NotEmpty(t, faults)
			for _, f := range faults {
				require.Equal(t, c.rule, f.Rule, "%v", f)
				require.Contains(t, f.String(), string(c.rule))
			}
			broken[c.rule] = true
		})
	}
	for rule, name := range names {
		require.True(t, broken[rule], "nothing breaks %s, %s", rule, name)
	}
}

// TestPermitted: what looks like a fault and is none.
func TestPermitted(t *testing.T) {
	for name, change := range map[string]func(s *sound){
		"runs that kerning draws together": func(s *sound) {
			s.add(0, at(s.note, 25, 95, "AV"), page.Glyphs{X: 30.6, Base: 95, Size: 11, Face: page.SansBold, Text: "A", Elem: s.note})
		},
		"a letter in a ring, a little below its line": func(s *sound) {
			s.add(0, page.Glyphs{X: 100, Base: 50.2, Size: 8.8, Face: page.SerifBold, Text: "a", Elem: s.text},
				page.Path{Cmds: circle(100.8, 49.2, 2.1), Stroke: &black, Width: 0.2})
		},
		"white text on black": func(s *sound) {
			s.under(0, ground)
			s.first(s.text, func(g *page.Glyphs) { g.Color = white })
		},
		"a long row over two pages": func(s *sound) {
			for i := range 12 {
				s.add(0, at(s.body, 20, 100+5*float64(i), "and so on"))
			}
			s.add(1, at(s.body, 20, 50, "to the end"), at(s.count, 150, 50, "12 sts"))
			s.move(s.count, 1, 55)
		},
		"a link to a place by name": func(s *sound) {
			s.doc.Places = map[string]page.Place{"part": {Page: 1, Y: 30}}
			s.add(0, page.Anchor{URI: "#part", Label: "the part"})
		},
		"heads of two languages, one over the other": func(s *sound) {
			h := &page.Elem{Tag: "H1", Lang: "es"}
			sect := s.doc.Root.Kids[0]
			sect.Kids = slices.Insert(sect.Kids, 1, h)
			s.add(0, at(h, 20, 45, "Cabeza"))
		},
		"lines to write on below a head": func(s *sound) {
			h := s.doc.Root.New("Sect").New("H2")
			s.add(1, at(h, 20, 150, "My notes"), page.Path{Cmds: straight(20, 160, 100, 160), Stroke: &black})
		},
	} {
		t.Run(name, func(t *testing.T) {
			s := soundDocument()
			change(s)
			require.Empty(t, Look(s.doc, usual))
		})
	}
}

// TestContrast compares with the values of WCAG 2.2: black on white is 21 to 1, and #767676 the lightest grey that passes 4.5
// (Understanding SC 1.4.3, its note on rounding).
func TestContrast(t *testing.T) {
	require.InDelta(t, 21, Contrast(black, white), 1e-9)
	require.InDelta(t, 1, Contrast(grey, grey), 1e-9)
	g := float64(0x76) / 255
	require.InDelta(t, 4.54, Contrast(page.Color{g, g, g}, white), 0.005)
	g = float64(0x77) / 255
	require.Less(t, Contrast(white, page.Color{g, g, g}), 4.5)
}
