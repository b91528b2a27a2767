package desk

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/lang/source"
	"ovillo/render/book"
	"ovillo/render/page"
	"ovillo/render/pdf"
	"ovillo/render/proof"
	"ovillo/render/words"
)

// bound checks the book of the examples.
func bound(t *testing.T) Checked {
	t.Helper()
	const path = "../../../examples/bahia/bahia-set.ovillo"
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	c := Check(Source{File: source.NewFile(path, string(text)), Open: Folder(filepath.Dir(path))})
	if !c.Bindable() || len(c.Bound) != 2 || len(c.Book.Patterns) != 2 {
		t.Fatalf("the book is not sound: %v", c.Found)
	}
	return c
}

// bookLooks are the ways in which the book is set.
var bookLooks = []Look{
	{Langs: []string{"en", "es"}},
	{Langs: []string{"es-MX"}},
	{Langs: []string{"en", "es"}, Edition: book.After},
	{Langs: []string{"en"}, Edition: book.Large},
	{Langs: []string{"en", "es"}, Paper: book.A5, Edition: book.LowInk | book.LeftHanded},
	{Langs: []string{"es"}, Edition: book.Tester},
}

// Every page of a book passes the proof that the pages of single patterns pass; its pages are numbered through, and every link
// leads to a page.
func TestBookPages(t *testing.T) {
	c := bound(t)
	for _, l := range bookLooks {
		t.Run(strings.Join(l.Langs, "+")+" "+l.Edition.String()+" "+l.Paper.String(), func(t *testing.T) {
			doc, err := BookPages(c.Book, l)
			if err != nil {
				t.Fatal(err)
			}
			for i, f := range proof.Look(doc, promiseOf(l)) {
				if i < 8 {
					t.Error(f)
				}
			}
			for i, p := range doc.Pages {
				if p.Label != strconv.Itoa(i+1) {
					t.Errorf("page %d is called %s", i+1, p.Label)
				}
				for _, it := range p.Items {
					if a, ok := it.(page.Anchor); ok && strings.HasPrefix(a.URI, "#") {
						if _, known := doc.Places[strings.TrimPrefix(a.URI, "#")]; !known {
							t.Errorf("page %d: a link leads to %s", i+1, a.URI)
						}
					}
				}
			}
			var b bytes.Buffer
			if err := pdf.Write(&b, doc, pdf.Options{}); err != nil {
				t.Error(err)
			}
		})
	}
}

// promiseOf is what pages must keep: the block of the paper, the margin for the numbers of a test edition, an inch all round in
// large print.
func promiseOf(l Look) proof.Promise {
	w, h, left, top := l.Paper.Sheet()
	blockW, blockH := l.Paper.Block()
	p := proof.Promise{Block: proof.Rect{X: left, Y: top, W: blockW, H: blockH}, LowInk: l.Edition.Has(book.LowInk)}
	if l.Edition.Has(book.Tester) {
		p.Block.X -= 7
		p.Block.W += 7
	}
	if l.Edition.Has(book.Large) {
		const inch = 25.4
		p.Large, p.Block = true, proof.Rect{X: inch, Y: inch, W: w - 2*inch, H: h - 2*inch}
	}
	return p
}

// A book says of each pattern what its own pages say: every caution, on the pages of that pattern, and every row. What stands
// in front stands once.
func TestBookLosesNothing(t *testing.T) {
	c := bound(t)
	doc, err := BookPages(c.Book, Look{Langs: []string{"en", "es"}})
	if err != nil {
		t.Fatal(err)
	}
	starts := map[string]int{} // the first page of each pattern
	for _, o := range doc.Outline {
		for _, p := range c.Book.Patterns {
			if o.Title == p.Title["en"]+" · "+p.Title["es"] {
				if o.Level != 1 {
					t.Errorf("%s is a bookmark of level %d", o.Title, o.Level)
				}
				starts[p.Name] = o.Page
			}
		}
	}
	if len(starts) != 2 {
		t.Fatalf("the bookmarks are %v", doc.Outline)
	}
	for i, p := range c.Book.Patterns {
		end := len(doc.Pages)
		if i+1 < len(c.Book.Patterns) {
			end = starts[c.Book.Patterns[i+1].Name]
		}
		said := wordsOf(doc.Pages[starts[p.Name]:end])
		alone, err := Pages(p, Look{Langs: []string{"en", "es"}})
		if err != nil {
			t.Fatal(err)
		}
		if len(p.Cautions) < 2 {
			t.Errorf("%s has %d cautions", p.Name, len(p.Cautions))
		}
		for _, k := range p.Cautions {
			for _, l := range []string{"en", "es"} {
				if text := strings.TrimSuffix(squeeze(k.Text[l]), "."); !strings.Contains(said, text) {
					t.Errorf("%s: the book does not say %q", p.Name, k.Text[l])
				} else if !strings.Contains(wordsOf(alone.Pages), text) {
					t.Errorf("%s does not say %q by itself", p.Name, k.Text[l])
				}
			}
		}
		for _, e := range steps(alone.Root) {
			if !slices.Contains(steps(doc.Root), e) {
				t.Errorf("%s: the book has no %s", p.Name, e)
			}
		}
		if n := strings.Count(wordsOf(doc.Pages), squeeze(p.Licence.Text["en"])); n != 1 {
			t.Errorf("the licence stands %d times", n)
		}
	}
	if n := strings.Count(wordsOf(doc.Pages), squeeze("Lay the yarn in a ring with the tail behind")); n != 1 {
		t.Errorf("the adjustable ring is explained %d times", n)
	}
}

// squeeze leaves out blanks and hyphens, since lines break anywhere.
func squeeze(text string) string {
	return strings.NewReplacer(" ", "", "\u00a0", "", "\n", "", "-", "", "\u00ad", "", "\u202f", "", "*", "").Replace(text)
}

// wordsOf is what pages say in the order of the elements that hold it.
func wordsOf(pages []page.Page) string {
	said := map[*page.Elem]*strings.Builder{}
	var order []*page.Elem
	for _, p := range pages {
		for _, it := range p.Items {
			g, ok := it.(page.Glyphs)
			if !ok || g.Elem == nil {
				continue
			}
			if said[g.Elem] == nil {
				said[g.Elem] = &strings.Builder{}
				order = append(order, g.Elem)
			}
			said[g.Elem].WriteString(squeeze(g.Text))
		}
	}
	var b strings.Builder
	for _, e := range order {
		b.WriteString(said[e].String() + "\n")
	}
	return b.String()
}

// steps are the shapes of the lists of rows in a document: how many rows each has.
func steps(root *page.Elem) []string {
	var out []string
	var walk func(e *page.Elem)
	walk = func(e *page.Elem) {
		if e.Tag == "L" {
			out = append(out, "list of "+strconv.Itoa(len(e.Kids)))
		}
		for _, k := range e.Kids {
			walk(k)
		}
	}
	walk(root)
	return out
}

// The same book is the same bytes, and has its sources attached.
func TestBookIsTheSameAgain(t *testing.T) {
	var files [2]bytes.Buffer
	for i := range files {
		doc, err := BookPages(bound(t).Book, Look{Langs: []string{"en", "es"}})
		if err != nil {
			t.Fatal(err)
		}
		var names []string
		for _, a := range doc.Used {
			names = append(names, a.Name)
		}
		if want := []string{"hat.ovillo", "common.ovillo", "mitones.ovillo"}; !slices.Equal(names, want) {
			t.Errorf("attached are %v, want %v", names, want)
		}
		if err := pdf.Write(&files[i], doc, pdf.Options{}); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(files[0].Bytes(), files[1].Bytes()) {
		t.Error("the two differ")
	}
}

// What patterns say in other words stays with each, and nothing of it gets lost.
func TestBookOfUnlikePatterns(t *testing.T) {
	pattern := func(name, title, sizes, abbr string) string {
		return "pattern " + name + "\n  title en \"" + title + "\" es \"" + title + "\"\n  terms us\n  kind blanket\nend\nsizes " + sizes +
			"\nend\nstitch own_" + name + "\n  takes 1, makes 1, tall as sc\n  name en \"" + abbr + " stitch\" es \"punto " + abbr + "\"\n  abbr en \"xs\" es \"xp\"\n" +
			"  en | Work " + abbr + ".\n  es | Tejer " + abbr + ".\nend\npart p\n  title en \"P\" es \"P\"\n  in rows\n  chain 10\n  row: own_" + name + " in each = 10\nend\n"
	}
	folder := map[string]string{"a.ovillo": pattern("a", "First", `"S", "M"`, "alpha"), "b.ovillo": pattern("b", "Second", `"S", "M", "L"`, "beta")}
	open := func(name string) ([]byte, error) {
		if text, ok := folder[name]; ok {
			return []byte(text), nil
		}
		return nil, os.ErrNotExist
	}
	c := Check(Source{File: source.NewFile("set.ovillo", "book s\n  title en \"Both\" es \"Los dos\"\n  pattern \"a.ovillo\"\n  pattern \"b.ovillo\"\nend\n"), Open: open})
	if !c.Bindable() {
		var b strings.Builder
		for _, p := range c.Bound {
			diag.Printer{Lang: "en"}.Text(&b, p.Tree.Source, p.Found)
		}
		t.Fatal(b.String())
	}
	doc, err := BookPages(c.Book, Look{Langs: []string{"en"}})
	if err != nil {
		t.Fatal(err)
	}
	said := wordsOf(doc.Pages)
	for _, want := range []string{"Workalpha.", "Workbeta.", "alphastitch", "betastitch"} {
		if !strings.Contains(said, want) {
			t.Errorf("the book does not say %s", want)
		}
	}
	front := wordsOf(doc.Pages[:doc.Places["1 title"].Page])
	if strings.Contains(front, "alpha") || strings.Contains(front, "beta") {
		t.Error("the front explains an abbreviation that two patterns use in unlike senses")
	}
	l, err := words.For("en")
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range c.Book.Patterns {
		for _, f := range l.HowToRead(p) {
			if !strings.Contains(said, squeeze(f.Text.String())) {
				t.Errorf("the book does not say how to read %s: %s", f.Head, f.Text.String())
			}
		}
	}
}

// A book with a faulty pattern is not set, and says which it is.
func TestBookOfFaultyPattern(t *testing.T) {
	open := func(string) ([]byte, error) { return []byte("sizes \"S\"\nend\npart p\n  chain\nend\n"), nil }
	c := Check(Source{File: source.NewFile("set.ovillo", "book s\n  title en \"B\" es \"B\"\n  pattern \"a.ovillo\"\nend\n"), Open: open})
	if c.Bindable() || !c.Found.HasErrors() || len(c.Bound) != 1 || !c.Bound[0].Found.HasErrors() {
		t.Errorf("found %v", c.Found)
	}
	if _, err := BookPages(&plan.Book{Head: &plan.Pattern{}}, Look{Langs: []string{"en"}}); err == nil {
		t.Error("a book without patterns is set")
	}
}
