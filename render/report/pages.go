package report

import (
	"math"
	"strings"

	"ovillo/render/font"
	"ovillo/render/page"
)

// This file reads finished pages: what stands on them and where, as the laws of pages ask.

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

// ink is where a run of text stands: from the top of its capitals to a little below its baseline.
type ink struct {
	left, top, right, bottom float64
	g                        page.Glyphs
}

func inkOf(g page.Glyphs) ink {
	f := font.Of(g.Face)
	return ink{g.X, g.Base - f.CapHeight(g.Size), g.X + f.Tracked(g.Text, g.Size, g.Track), g.Base + f.Descent(g.Size)*0.4, g}
}

const (
	margin = 15.0 // millimetres that stay white all round; common practice of home printers
	hair   = 0.02 // tolerance
	kerned = 0.5  // the most that kerning draws neighbours together
)

// fault is something that breaks a law of pages: the page, from 0, and the text at fault.
type fault struct {
	page int
	what string
}

// outside finds texts that stand in the margins.
func outside(d *page.Document) []fault {
	var out []fault
	eachGlyphs(d, func(n int, g page.Glyphs) {
		if g.Angle != 0 {
			return
		}
		k, p := inkOf(g), d.Pages[n]
		if k.left < margin-hair || k.top < margin-hair || k.right > p.W-margin+hair || k.bottom > p.H-margin+hair {
			out = append(out, fault{n, g.Text})
		}
	})
	return out
}

// overlapping finds texts that run into each other.
func overlapping(d *page.Document) []fault {
	var out []fault
	for n := range d.Pages {
		var list []ink
		for _, it := range d.Pages[n].Items {
			if g, ok := it.(page.Glyphs); ok && g.Angle == 0 {
				list = append(list, inkOf(g))
			}
		}
		for a := range list {
			for b := a + 1; b < len(list); b++ {
				if meet(list[a], list[b]) {
					out = append(out, fault{n, list[a].g.Text + " / " + list[b].g.Text})
				}
			}
		}
	}
	return out
}

func meet(x, y ink) bool {
	if x.g.Base == y.g.Base && (math.Abs(x.right-y.left) < kerned || math.Abs(y.right-x.left) < kerned) {
		return false // neighbours on a line
	}
	return x.left < y.right-hair && y.left < x.right-hair && x.top < y.bottom-hair && y.top < x.bottom-hair
}

// lonely finds heads with nothing below them on their page.
func lonely(d *page.Document) []fault {
	heads := map[*page.Elem]bool{}
	walk(d.Root, func(e *page.Elem) {
		if len(e.Tag) == 2 && e.Tag[0] == 'H' {
			heads[e] = true
		}
	})
	last := make([]float64, len(d.Pages))
	eachGlyphs(d, func(n int, g page.Glyphs) {
		if g.Elem != nil && !heads[g.Elem] {
			last[n] = max(last[n], g.Base)
		}
	})
	for n := range d.Pages { // ruled lines to write on follow a head as text does
		for _, it := range d.Pages[n].Items {
			if p, ok := it.(page.Path); ok && len(p.Cmds) == 2 {
				last[n] = max(last[n], p.Cmds[1].P[0].Y)
			}
		}
	}
	var out []fault
	eachGlyphs(d, func(n int, g page.Glyphs) {
		if heads[g.Elem] && g.Base >= last[n] {
			out = append(out, fault{n, g.Text})
		}
	})
	return out
}

// torn finds rows of tables that stand on two pages.
func torn(d *page.Document) []fault {
	on := map[*page.Elem]int{}
	var out []fault
	row := map[*page.Elem]*page.Elem{}
	walk(d.Root, func(e *page.Elem) {
		if e.Tag == "TR" {
			walk(e, func(k *page.Elem) { row[k] = e })
		}
	})
	eachGlyphs(d, func(n int, g page.Glyphs) {
		tr := row[g.Elem]
		if tr == nil {
			return
		}
		if first, seen := on[tr]; seen && first != n {
			out = append(out, fault{n, g.Text})
		}
		on[tr] = n
	})
	return out
}

// unset finds letters that a face does not have.
func unset(d *page.Document) []fault {
	var out []fault
	eachGlyphs(d, func(n int, g page.Glyphs) {
		for _, r := range font.Of(g.Face).Missing(g.Text) {
			out = append(out, fault{n, string(r) + " · " + g.Text})
		}
	})
	return out
}

// untold finds pictures that say nothing to those who do not see them, and counts them. One that is described in two
// languages has an element for each, at one place of one page.
func untold(d *page.Document) (faults []fault, pictures int) {
	page0 := map[*page.Elem]int{}
	for n := range d.Pages {
		for _, it := range d.Pages[n].Items {
			switch x := it.(type) {
			case page.Path:
				page0[x.Elem] = n
			case page.Picture:
				page0[x.Elem] = n
			}
		}
	}
	type place struct {
		page int
		box  [4]float64
	}
	places := map[place]bool{}
	walk(d.Root, func(e *page.Elem) {
		if e.Tag != "Figure" {
			return
		}
		at := place{page: page0[e]}
		if e.Box != nil {
			at.box = *e.Box
		}
		if e.Box == nil || !places[at] {
			pictures++
		}
		places[at] = true
		if strings.TrimSpace(e.Alt) == "" {
			faults = append(faults, fault{page0[e], e.Tag})
		}
	})
	return faults, pictures
}

// strayed finds texts that belong to an element outside the tree, which nobody would hear read.
func strayed(d *page.Document) []fault {
	known := map[*page.Elem]bool{}
	walk(d.Root, func(e *page.Elem) { known[e] = true })
	var out []fault
	eachGlyphs(d, func(n int, g page.Glyphs) {
		if g.Elem != nil && !known[g.Elem] {
			out = append(out, fault{n, g.Text})
		}
	})
	return out
}

// mute finds texts whose language nothing says.
func mute(d *page.Document) []fault {
	if d.Lang != "" {
		return nil
	}
	spoken := map[*page.Elem]bool{}
	var down func(e *page.Elem, told bool)
	down = func(e *page.Elem, told bool) {
		told = told || e.Lang != ""
		spoken[e] = told
		for _, k := range e.Kids {
			down(k, told)
		}
	}
	if d.Root != nil {
		down(d.Root, false)
	}
	var out []fault
	eachGlyphs(d, func(n int, g page.Glyphs) {
		if g.Elem != nil && !spoken[g.Elem] {
			out = append(out, fault{n, g.Text})
		}
	})
	return out
}

// dead finds links that lead nowhere.
func dead(d *page.Document) []fault {
	var out []fault
	for n := range d.Pages {
		for _, it := range d.Pages[n].Items {
			if a, ok := it.(page.Anchor); ok && a.URI == "" && (a.Page < 0 || a.Page >= len(d.Pages)) {
				out = append(out, fault{n, a.Label})
			}
		}
	}
	return out
}
