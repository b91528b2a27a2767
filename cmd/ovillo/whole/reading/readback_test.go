package reading

import (
	"bytes"
	"fmt"
	"strings"
	"sync"
	"testing"

	readpdf "github.com/ledongthuc/pdf"

	"ovillo/cmd/ovillo/desk"
	"ovillo/cmd/ovillo/whole"
	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/parallel"
	"ovillo/render/pdf"
)

// Finished files are read back here by a library that shares nothing with the writer: objects, compressed streams, fonts and
// their tables of letters. What is ours is only the walk along the structure tree, as a screen reader makes it.

// readBack reads the passages of a PDF.
func readBack(file []byte) (all []parallel.Passage, err error) {
	defer func() { // the library panics at files that are broken
		if r := recover(); r != nil {
			err = fmt.Errorf("the file cannot be read: %v", r)
		}
	}()
	r, err := whole.OpenFile(file)
	if err != nil {
		return nil, err
	}
	w := walk{marked: map[mark]string{}, section: -1}
	for n := 1; n <= r.NumPage(); n++ {
		w.read(r.Page(n))
	}
	w.down(r.Trailer().Key("Root").Key("StructTreeRoot").Key("K"), at{top: true}, nil)
	return w.all, nil
}

// mark is a marked stretch of a page.
type mark struct{ page, id int64 }

// pageKey tells pages apart: each has a number of its own in the tree that leads back from marks to elements.
func pageKey(p readpdf.Value) int64 { return p.Key("StructParents").Int64() }

// walk reads a file: first the text of every mark, then the tree.
type walk struct {
	marked  map[mark]string
	all     []parallel.Passage
	section int
}

// read gathers the text of the marks of a page.
func (w *walk) read(p readpdf.Page) {
	key := pageKey(p.V)
	fonts := map[string]readpdf.TextEncoding{}
	var font readpdf.TextEncoding
	ids := []int64{-1} // the marks that are open; -1: one without a number
	readpdf.Interpret(p.V.Key("Contents"), func(stack *readpdf.Stack, op string) {
		args := make([]readpdf.Value, stack.Len())
		for i := len(args) - 1; i >= 0; i-- {
			args[i] = stack.Pop()
		}
		show := func(v readpdf.Value) {
			if v.Kind() == readpdf.String {
				w.marked[mark{key, ids[len(ids)-1]}] += font.Decode(v.RawString())
			}
		}
		switch op {
		case "BMC":
			ids = append(ids, -1)
		case "BDC":
			id := int64(-1)
			if v := args[1].Key("MCID"); !v.IsNull() {
				id = v.Int64()
			}
			ids = append(ids, id)
		case "EMC":
			ids = ids[:len(ids)-1]
		case "Tf":
			name := args[0].Name()
			if fonts[name] == nil {
				f := p.Font(name)
				fonts[name] = f.Encoder()
			}
			font = fonts[name]
		case "Tj":
			show(args[0])
		case "TJ":
			for i := range args[0].Len() {
				show(args[0].Index(i))
			}
		}
	})
}

// at is what holds for an element: the page of its marks, the language of its text, what is said in place of it.
type at struct {
	top  bool
	page int64
	lang string
	said string
}

// down reads an element and those below it. Text goes to the passage p; a Span or a Link is part of the passage around it, unless it is in
// a language of its own.
func (w *walk) down(v readpdf.Value, a at, p *parallel.Passage) {
	switch {
	case v.Kind() == readpdf.Array:
		for i := range v.Len() {
			w.down(v.Index(i), a, p)
		}
	case v.Kind() == readpdf.Integer:
		p.Add(w.marked[mark{a.page, v.Int64()}], a.said)
	case v.Kind() != readpdf.Dict || v.Key("Type").Name() == "OBJR":
	case v.Key("Type").Name() == "MCR":
		a.page = pageKey(v.Key("Pg"))
		w.down(v.Key("MCID"), a, p)
	default:
		w.element(v, a, p)
	}
}

func (w *walk) element(v readpdf.Value, a at, p *parallel.Passage) {
	if pg := v.Key("Pg"); !pg.IsNull() {
		a.page = pageKey(pg)
	}
	tag := v.Key("S").Name()
	if tag == "Link" && p != nil {
		w.down(v.Key("K"), a, p)
		return
	}
	if tag == "Span" && p != nil && v.Key("Lang").IsNull() {
		a.said = v.Key("ActualText").Text()
		w.down(v.Key("K"), a, p)
		return
	}
	if tag == "Sect" {
		w.section++
	}
	if lang := v.Key("Lang").Text(); lang != "" && !a.top {
		a.lang = lang
	}
	a.top = false
	// The passages below stand behind this one: its own text is put in at its place afterwards.
	i := len(w.all)
	w.all = append(w.all, parallel.Passage{})
	own := parallel.Passage{Section: max(w.section, 0), Tag: tag, Lang: a.lang, Alt: v.Key("Alt").Text()}
	w.down(v.Key("K"), a, &own)
	w.all[i] = own
	if own.Text() == "" && own.Alt == "" {
		w.all = append(w.all[:i], w.all[i+1:]...)
	}
}

// published is a pattern with its pages, composed and read back from the file. Each is made once a run of the tests.
type published struct {
	source  *whole.Source
	plan    *plan.Pattern
	mu      sync.Mutex
	passage map[string][]parallel.Passage
}

var shelf = struct {
	sync.Mutex
	all map[string]*published
}{all: map[string]*published{}}

// publish checks a source.
func publish(t *testing.T, s *whole.Source) *published {
	t.Helper()
	shelf.Lock()
	defer shelf.Unlock()
	if shelf.all[s.Path] == nil {
		shelf.all[s.Path] = &published{source: s, plan: s.Plan(t), passage: map[string][]parallel.Passage{}}
	}
	return shelf.all[s.Path]
}

// read builds the pages in some languages on A4 and reads them back from the bytes of the PDF.
func (b *published) read(t *testing.T, langs ...string) []parallel.Passage {
	t.Helper()
	b.mu.Lock()
	defer b.mu.Unlock()
	key := strings.Join(langs, ",")
	if b.passage[key] == nil {
		var err error
		if b.passage[key], err = readBack(b.source.File(t, desk.Look{Langs: langs})); err != nil {
			t.Fatal(err)
		}
	}
	return b.passage[key]
}

// composed sets the pages without writing them.
func (b *published) composed(t *testing.T, langs ...string) *page.Document {
	t.Helper()
	return b.source.Pages(t, desk.Look{Langs: langs})
}

// reread writes pages, which may have been tampered with, and reads them back.
func reread(t *testing.T, d *page.Document) []parallel.Passage {
	t.Helper()
	var file bytes.Buffer
	if err := pdf.Write(&file, d, pdf.Options{}); err != nil {
		t.Fatal(err)
	}
	all, err := readBack(file.Bytes())
	if err != nil {
		t.Fatal(err)
	}
	return all
}
