package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/book"
	"ovillo/render/draw"
	"ovillo/render/page"
	"ovillo/render/pdf"
	"ovillo/render/words"
)

// longSource is a source of some three hundred pages: one blanket strip after the other, each with rows of its own. It is made
// for measuring, and nobody would crochet it.
func longSource() string {
	var b strings.Builder
	b.WriteString("pattern endless_throw\n  title en \"Endless throw\" es \"Manta sin fin\"\n  by \"Estudio Marisma\"\n  kind blanket\n  terms us\nend\n\n" +
		"sizes \"S\", \"M\", \"L\"\n  names es \"pequeña\", \"mediana\", \"grande\"\nend\n\ngauge 10 cm\n  sc 16 sts, 18 rows\n  hdc 15 sts, 12 rows\n  dc 14 sts, 8 rows\nend\nhook 5 mm\n")
	const parts, rows = 64, 30
	for i := range parts {
		fmt.Fprintf(&b, "\npart strip_%d\n  title en \"Strip %d\" es \"Tira %d\"\n  base hdc\n  in rows\n  chain 60 (80, 100)\n", i, i+1, i+1)
		for k := range rows {
			first := []string{"sc", "hdc", "dc"}[k%3]
			fmt.Fprintf(&b, "  row: [%s in next %d, hdc in next %d] 2 times, %s in each\n", first, k%7+1, k%5+2, first)
		}
		b.WriteString("  fasten off\nend\n")
	}
	return b.String()
}

// stages are the steps from a source to its PDF, each ready to be taken by itself.
type stages struct {
	file  *source.File
	plan  *plan.Pattern
	langs []*words.Language
	doc   *page.Document
}

func newStages(tb testing.TB, name, text string) *stages {
	tb.Helper()
	s := &stages{file: source.NewFile(name, text)}
	p, found := (&loaded{file: s.file}).compile()
	if found.HasErrors() {
		tb.Fatal(found)
	}
	s.plan = p
	for _, tag := range []string{"en", "es"} {
		l, err := words.For(tag)
		if err != nil {
			tb.Fatal(err)
		}
		s.langs = append(s.langs, l)
	}
	s.compose(tb)
	return s
}

func (s *stages) parse(testing.TB) { lang.Parse(s.file) }

func (s *stages) check(tb testing.TB) {
	tree, _ := lang.Parse(s.file)
	if p, _ := compile.Compile(tree); p == nil {
		tb.Fatal("no pattern")
	}
}

func (s *stages) words(testing.TB) {
	for _, l := range s.langs {
		l = l.Keeping(s.plan)
		for _, part := range s.plan.Parts {
			for _, step := range part.Steps {
				l.Step(s.plan, part, step)
			}
		}
	}
}

func (s *stages) draw(tb testing.TB) {
	if _, err := draw.Title(s.plan, 72, 95, s.langs...); err != nil {
		tb.Fatal(err)
	}
	if _, err := draw.Schematic(s.plan, 80, 100, s.langs...); err != nil {
		tb.Fatal(err)
	}
	draw.Map(s.plan, 180, 60, s.langs...)
}

func (s *stages) compose(tb testing.TB) {
	doc, err := book.Compose(s.plan, book.Options{Langs: s.langs})
	if err != nil {
		tb.Fatal(err)
	}
	s.doc = doc
}

func (s *stages) write(tb testing.TB) {
	if err := pdf.Write(&bytes.Buffer{}, s.doc, pdf.Options{}); err != nil {
		tb.Fatal(err)
	}
}

func (s *stages) whole(tb testing.TB) {
	l := &loaded{file: s.file}
	p, _ := l.compile()
	if _, _, err := setPages(p, edition{}.of(p), "x.ovillo"); err != nil {
		tb.Fatal(err)
	}
}

// BenchmarkStages shows where the time goes: reading, checking (with reading), the sentences of the rows, the drawings, pages
// (with both), the file, and all of it, for the leggings and for a source of three hundred pages.
func BenchmarkStages(b *testing.B) {
	leggings, err := os.ReadFile(filepath.Join("..", "..", "examples", "marisma-leggings.ovillo"))
	if err != nil {
		b.Fatal(err)
	}
	for _, c := range []struct{ name, text string }{{"leggings", string(leggings)}, {"long", longSource()}} {
		s := newStages(b, c.name+".ovillo", c.text)
		b.Logf("%s: %d pages", c.name, len(s.doc.Pages))
		for _, stage := range []struct {
			name string
			take func(testing.TB)
		}{{"read", s.parse}, {"check", s.check}, {"words", s.words}, {"draw", s.draw}, {"pages", s.compose}, {"file", s.write}, {"whole", s.whole}} {
			b.Run(c.name+"/"+stage.name, func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					stage.take(b)
				}
			})
		}
	}
}

// TestFilesAreSmall: the file of an example in two languages, tagged and with its faces, its photograph and its source, is one
// that is easily sent.
func TestFilesAreSmall(t *testing.T) {
	for _, s := range sourcesIn(t, "examples") {
		t.Run(s.file.Name, func(t *testing.T) {
			t.Parallel()
			most := 250_000
			if s.file.Name == "marisma-leggings.ovillo" {
				most = 150_000
			}
			s.open = beside(s.path)
			p, found := s.compile()
			if found.HasErrors() {
				t.Fatal(printed(t, s, found))
			}
			file, _, err := setPages(p, edition{}.of(p), s.file.Name)
			if err != nil || len(file) >= most {
				t.Errorf("%d bytes, want less than %d (%v)", len(file), most, err)
			}
		})
	}
}

// TestLongSource: a source of three hundred pages is set, and every page of it is there.
func TestLongSource(t *testing.T) {
	s := newStages(t, "long.ovillo", longSource())
	if n := len(s.doc.Pages); n < 300 {
		t.Errorf("%d pages: too few to be the measure of a long source", n)
	}
}
