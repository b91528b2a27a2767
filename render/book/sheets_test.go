package book

import (
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/words"
)

// pageText is all text of a page in the order of drawing.
func pageText(p page.Page) string {
	var b strings.Builder
	for _, it := range p.Items {
		if g, ok := it.(page.Glyphs); ok {
			b.WriteString(g.Text)
		}
	}
	return b.String()
}

// TestCautionsAreOnTheFirstPage and again at their step, with the drawing made smaller for them.
func TestCautionsAreOnTheFirstPage(t *testing.T) {
	for _, langs := range [][]string{{"en", "es"}, {"en"}, {"es"}} {
		e := edition{sizes: 4, langs: langs}
		doc := e.compose(t, A4)
		for _, l := range languages(t, langs...) {
			head, body := l.CautionsHead(2), l.Caution(e.pattern().Cautions[0])
			if first := squeezed(pageText(doc.Pages[0])); !strings.Contains(first, squeezed(head)) || !strings.Contains(first, squeezed(body.String())) {
				t.Errorf("%v: the first page lacks %q", langs, body)
			}
			again := false
			for _, p := range doc.Pages[1:] {
				again = again || strings.Contains(squeezed(pageText(p)), squeezed(body.String()))
			}
			if !again {
				t.Errorf("%v: the caution is not at its step", langs)
			}
		}
	}
}

// TestContinuedHeads: every page that goes on with a part says which.
func TestContinuedHeads(t *testing.T) {
	doc := editions[0].compose(t, A4)
	mark := languages(t, "en")[0].Say(words.ContinuedMark)
	starts := map[int]bool{}
	for _, o := range doc.Outline {
		starts[o.Page] = starts[o.Page] || o.Y < 21+usual.bodyTop+1
	}
	found := 0
	for i, p := range doc.Pages {
		has := strings.Contains(pageText(p), ", "+mark)
		if has {
			found++
		}
		if has && starts[i] {
			t.Errorf("page %d starts with a part and has a repeated head", i+1)
		}
	}
	if found == 0 {
		t.Error("no page has a repeated head")
	}
}

func TestOutlineNamesEverySectionAndPart(t *testing.T) {
	e := editions[0]
	doc := e.compose(t, A4)
	var titles []string
	for i, o := range doc.Outline {
		titles = append(titles, o.Title)
		if i > 0 && (o.Page < doc.Outline[i-1].Page || o.Page == doc.Outline[i-1].Page && o.Y <= doc.Outline[i-1].Y) {
			t.Errorf("%q stands before %q", o.Title, titles[i-1])
		}
	}
	all := strings.Join(titles, "\n")
	for _, l := range languages(t, e.langs...) {
		p := e.pattern()
		for _, key := range []words.Key{words.BeforeYouStart, words.HowToReadHead, words.AbbreviationsHead, words.SpecialsHead, words.FinishingHead} {
			if !strings.Contains(all, l.Say(key)) {
				t.Errorf("no bookmark %q", l.Say(key))
			}
		}
		for i := range p.Parts {
			if !strings.Contains(all, l.PartTitle(p, i)) {
				t.Errorf("no bookmark %q", l.PartTitle(p, i))
			}
		}
	}
}

// TestTree: the structure has the elements of each kind, heads and rows in their language, figures with words.
func TestTree(t *testing.T) {
	doc := editions[0].compose(t, A4)
	count := map[string]int{}
	walk(doc.Root, func(e *page.Elem) {
		count[e.Tag]++
		switch {
		case e.Tag == "Figure" && (e.Alt == "" || e.Box == nil || e.Lang == ""):
			t.Errorf("a figure has no words or no place: %+v", e)
		case (e.Tag == "H1" || e.Tag == "H2" || e.Tag == "H3") && e.Lang == "":
			t.Errorf("a head has no language")
		case e.Tag == "Lbl" && len(e.Kids) > 0:
			t.Error("a label has parts")
		}
	})
	if count["H1"] != 2 || count["Figure"] < 6 || count["LI"] < 20 || count["Table"] < 3 || count["TH"] < 20 || count["TD"] < 40 {
		t.Errorf("elements %v", count)
	}
	// Each row: label, then the body with text and count of the one language and label, text and count of the other.
	rows := 0
	for _, item := range stepItems(doc) {
		if len(item.Kids) != 2 || item.Kids[0].Tag != "Lbl" || item.Kids[1].Tag != "LBody" {
			continue
		}
		var langs []string
		for _, p := range item.Kids[1].Kids {
			langs = append(langs, p.Lang)
		}
		if strings.Join(langs, " ") == "en-US en-US es es es" {
			rows++
		}
	}
	if rows < 10 {
		t.Errorf("%d rows have all their parts in order", rows)
	}
}

// TestEveryTextBelongsSomewhere: what is no header, footer or ornament has an element of the tree.
func TestEveryTextBelongsSomewhere(t *testing.T) {
	eachEdition(t, func(t *testing.T, e edition, doc *page.Document) {
		in := map[*page.Elem]bool{}
		walk(doc.Root, func(e *page.Elem) { in[e] = true })
		for i, p := range doc.Pages {
			for _, it := range p.Items {
				if g, ok := it.(page.Glyphs); ok && g.Elem != nil && !in[g.Elem] {
					t.Errorf("page %d: %q belongs to an element that is not in the tree", i+1, g.Text)
				}
			}
		}
	})
}

func TestOneSizeIsSaidAtTheTop(t *testing.T) {
	doc := edition{sizes: 1, langs: []string{"en", "es"}}.compose(t, A4)
	for i, p := range doc.Pages[1:] {
		if text := pageText(p); !strings.Contains(text, "size 1\u00A0y") || !strings.Contains(text, "talla 1\u00A0año") {
			t.Errorf("page %d does not say which size it is for", i+2)
		}
	}
	for i, p := range doc.Pages {
		for _, it := range p.Items {
			if g, ok := it.(page.Glyphs); ok && strings.Contains(g.Text, "(–") {
				t.Errorf("page %d has a list of sizes: %q", i+1, g.Text)
			}
		}
	}
}

// TestMetadata comes from the pattern and from nowhere else.
func TestMetadata(t *testing.T) {
	p := editions[0].pattern()
	doc, err := Compose(p, Options{Langs: languages(t, "en", "es")})
	if err != nil {
		t.Fatal(err)
	}
	if doc.Title != "Vega leggings · Mallas Vega" || doc.Author != "Marta Lucena" || doc.Lang != "en-US" || doc.Created != "2026-03-01" {
		t.Errorf("title %q, author %q, language %q, date %q", doc.Title, doc.Author, doc.Lang, doc.Created)
	}
	if string(doc.Source) != string(p.Source) || doc.SourceName != "vega_leggings.ovillo" {
		t.Errorf("source %q", doc.SourceName)
	}
	p.Title, p.Date = plan.Text{}, ""
	if doc, err = Compose(p, Options{Langs: languages(t, "es")}); err != nil || doc.Created != "" || doc.Lang != "es" {
		t.Errorf("without title and date: %q, %q, %v", doc.Created, doc.Lang, err)
	}
}

func TestShortened(t *testing.T) {
	if got := shortened("Mallas Vega", usual.runningTop, 80); got != "Mallas Vega" {
		t.Errorf("%q", got)
	}
	got := shortened("Mallas calentitas para las largas tardes", usual.runningTop, 30)
	if !strings.HasSuffix(got, "…") || usual.runningTop.Width(got, false) > 30 || strings.Contains(got, " …") {
		t.Errorf("%q", got)
	}
	if got := shortened("Schnellstrickanleitungsheftchen", usual.runningTop, 10); usual.runningTop.Width(got, false) > 10 {
		t.Errorf("one long word stays %q", got)
	}
}

// TestSchematicStaysWithItsTable: it is made smaller where that keeps all on one sheet, and keeps its size where not.
func TestSchematicStaysWithItsTable(t *testing.T) {
	n := func(heights ...float64) notes {
		var n notes
		for _, h := range heights {
			n.narrow = append(n.narrow, box(h))
			n.wide = append(n.wide, box(h/2))
		}
		return n
	}
	for _, c := range []struct {
		name string
		n    notes
		room float64
		want float64
	}{
		{"room enough", n(40, 20, 10), 230, 100},
		{"a little smaller", n(30, 30, 20), 95, 92.5},
		{"the rest goes on", n(60, 40, 40), 78, 77.5},
		{"no room at all", n(60, 40, 40), 50, 100},
	} {
		if got := c.n.height(100, c.room); got != c.want {
			t.Errorf("%s: %v high, want %v", c.name, got, c.want)
		}
	}
}

func box(h float64) layout.Box { return layout.Box{H: h} }
