package preview

import (
	"bytes"
	"hash/maphash"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"

	"ovillo/cmd/ovillo/desk"
	"ovillo/compile/plan"
	"ovillo/lang/atonce"
	"ovillo/render/book"
	"ovillo/render/draw"
	"ovillo/render/page"
	"ovillo/render/pdf"
	"ovillo/render/report"
	"ovillo/render/scene"
	"ovillo/render/svg"
	"ovillo/render/words"
)

// set is a source set as pages, and what else is shown of it. It never changes; what is seldom asked for is made when it is.
type set struct {
	number   int             // of this source, counted up: whoever knows the number knows the rest
	patterns []*plan.Pattern // one, or those of the book
	look     desk.Look
	doc      *page.Document
	sheets   []sheet
	pictures map[string]page.Picture // by the name under which the pages have them
	source   string                  // the name of the source

	drawing  sync.Once
	drawings []drawing
	counting sync.Once
	counts   []report.Table
}

// sheet is a page as SVG. Its name says what is on it: two pages of one name are the same.
type sheet struct {
	name string
	svg  []byte
	w, h float64 // millimetres
}

// drawing is one sheet of a drawing, with what it shows in words.
type drawing struct {
	title, desc string
	scene       *scene.Scene
}

// seed makes names of contents. They mean nothing to another run.
var seed = maphash.MakeSeed()

func nameOf(content []byte) string { return strconv.FormatUint(maphash.Bytes(seed, content), 36) }

// makeSet sets a checked pattern. at is the address below which its pictures are.
func makeSet(p *plan.Pattern, l desk.Look, source, at string) (*set, error) {
	doc, err := desk.Pages(p, l)
	if err != nil {
		return nil, err
	}
	doc.Source = p.Source
	return newSet(doc, []*plan.Pattern{p}, l, source, at), nil
}

// makeBookSet sets a checked book.
func makeBookSet(b *plan.Book, l desk.Look, source, at string) (*set, error) {
	doc, err := desk.BookPages(b, l)
	if err != nil {
		return nil, err
	}
	return newSet(doc, b.Patterns, l, source, at), nil
}

// newSet draws the pages of a document.
func newSet(doc *page.Document, patterns []*plan.Pattern, l desk.Look, source, at string) *set {
	s := &set{patterns: patterns, look: l, doc: doc, pictures: map[string]page.Picture{}, source: source}
	names := map[*byte]string{} // a photograph may be on several pages, and is large
	var naming sync.Mutex
	pages := svg.PagesOf(doc, func(p page.Picture) string {
		naming.Lock()
		defer naming.Unlock()
		name, known := names[&p.Data[0]]
		if !known {
			name = nameOf(p.Data)
			names[&p.Data[0]] = name
			s.pictures[name] = p
		}
		return at + "picture/" + name
	})
	s.sheets = make([]sheet, len(doc.Pages))
	var room atomic.Int64 // what a page may need: about as much as the one before
	room.Store(1 << 16)
	atonce.Do(len(doc.Pages), func(i int) {
		b := pages.Append(make([]byte, 0, room.Load()), i)
		room.Store(int64(len(b) + len(b)/4))
		s.sheets[i] = sheet{nameOf(b), b, doc.Pages[i].W, doc.Pages[i].H}
	})
	return s
}

// sheetNamed finds a page by its name.
func (s *set) sheetNamed(name string) (sheet, bool) {
	for _, h := range s.sheets {
		if h.name == name {
			return h, true
		}
	}
	return sheet{}, false
}

// countTables are the counts of every row of every part, in the words of a language if the pattern is written in it.
func (s *set) countTables(lang string) []report.Table {
	s.counting.Do(func() {
		for _, p := range s.patterns {
			s.counts = append(s.counts, countsOf(p, lang)...)
		}
	})
	return s.counts
}

// countsOf are the counts of one pattern.
func countsOf(p *plan.Pattern, lang string) []report.Table {
	tables := report.CountTables(p, lang)
	if !slices.Contains(p.Languages, lang) {
		return tables
	}
	l, err := words.For(lang)
	if err != nil {
		return tables
	}
	for i := range tables {
		t := &tables[i]
		t.Title = l.PartTitle(p, i)
		for z, size := range p.Sizes {
			t.Head[t.First+z] = l.SizeName(size)
		}
	}
	return tables
}

// sheetsDrawn are all drawings of the pattern.
func (s *set) sheetsDrawn(lang string) []drawing {
	s.drawing.Do(func() {
		o := draw.FileOptions{Left: s.look.Edition.Has(book.LeftHanded), LowInk: s.look.Edition.Has(book.LowInk)}
		for _, tag := range s.look.Langs {
			if l, err := words.For(tag); err == nil { // the pages are set in them
				o.Langs = append(o.Langs, l)
			}
		}
		for _, p := range s.patterns {
			for _, d := range draw.Drawings(p) {
				for _, sheet := range d.Sheets(o) {
					s.drawings = append(s.drawings, drawing{inLanguage(sheet.Title, lang), inLanguage(sheet.Desc, lang), sheet})
				}
			}
		}
	})
	return s.drawings
}

// inLanguage is a text in a language, in any reading of it, or in the first there is.
func inLanguage(texts map[string]string, lang string) string {
	first := ""
	for tag := range texts {
		if first == "" || tag < first {
			first = tag
		}
	}
	for tag, t := range texts {
		if len(tag) >= 2 && tag[:2] == lang {
			return t
		}
	}
	return texts[first]
}

// pdf is the file as it is built.
func (s *set) pdf() ([]byte, error) {
	doc := *s.doc
	doc.SourceName = s.source
	var b bytes.Buffer
	if err := pdf.Write(&b, &doc, pdf.Options{}); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}

// fileName is what the PDF is called.
func (s *set) fileName() string { return strings.TrimSuffix(s.source, filepath.Ext(s.source)) + ".pdf" }
