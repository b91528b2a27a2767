package whole

import (
	"flag"
	"os"
	"path/filepath"
	"runtime/debug"
	"strings"
	"sync"
	"testing"

	"ovillo/cmd/ovillo/desk"
	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/lang/source"
	"ovillo/render/book"
	"ovillo/render/page"
	"ovillo/render/pdf"
	"ovillo/render/words"
)

// Source is a source with what came of it. It is the same for all tests of a run, so a test that changes the pattern puts back what was there.
type Source struct {
	Name  string // of its file
	Path  string
	Text  *source.File
	check func() desk.Checked
}

// NewSource is a source that lies in no folder.
func NewSource(name, text string) *Source {
	return newSource(name, text, nil)
}

func newSource(path, text string, open func(name string) ([]byte, error)) *Source {
	s := &Source{Name: filepath.Base(path), Path: path, Text: source.NewFile(filepath.Base(path), text)}
	s.check = sync.OnceValue(func() desk.Checked { return desk.Check(desk.Source{File: s.Text, Open: open}) })
	return s
}

// shelf holds the sources that were read in this run, by their paths.
var shelf = struct {
	sync.Mutex
	all map[string]*Source
}{all: map[string]*Source{}}

// Sources are all sources of a folder, which is named from the top of the repository. That there are none is a failure.
func Sources(tb testing.TB, folder ...string) []*Source {
	tb.Helper()
	paths, err := filepath.Glob(filepath.Join(Path(tb, folder...), "*.ovillo"))
	if err != nil || len(paths) == 0 {
		tb.Fatalf("no sources in %v (%v)", folder, err)
	}
	var out []*Source
	for _, path := range paths {
		out = append(out, read(tb, path))
	}
	return out
}

// Examples are the examples; those of a set with a book are not among them.
func Examples(tb testing.TB) []*Source { tb.Helper(); return Sources(tb, "examples") }

// Cases are the worked constructions.
func Cases(tb testing.TB) []*Source { tb.Helper(); return Sources(tb, "testdata", "cases") }

// Example is an example by the name of its file.
func Example(tb testing.TB, name string) *Source {
	tb.Helper()
	return read(tb, Path(tb, "examples", name))
}

func read(tb testing.TB, path string) *Source {
	tb.Helper()
	shelf.Lock()
	defer shelf.Unlock()
	if shelf.all[path] == nil {
		text, err := os.ReadFile(path)
		if err != nil {
			tb.Fatal(err)
		}
		shelf.all[path] = newSource(path, string(text), desk.Folder(filepath.Dir(path)))
	}
	return shelf.all[path]
}

// Path is a path that is named from the top of the repository.
func Path(tb testing.TB, elem ...string) string {
	tb.Helper()
	dir, err := os.Getwd()
	if err != nil {
		tb.Fatal(err)
	}
	for {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return filepath.Join(append([]string{dir}, elem...)...)
		}
		up := filepath.Dir(dir)
		if up == dir {
			tb.Fatal("the tests run outside of the repository")
		}
		dir = up
	}
}

// Plan is the checked pattern. That the source has errors is a failure.
func (s *Source) Plan(tb testing.TB) *plan.Pattern {
	tb.Helper()
	c := s.check()
	if c.Found.HasErrors() || c.Pattern == nil {
		tb.Fatalf("%s does not come out:\n%s", s.Name, s.Printed(tb, c.Found))
	}
	return c.Pattern
}

// Printed is what was found, as it is printed.
func (s *Source) Printed(tb testing.TB, found diag.List) string {
	tb.Helper()
	var b strings.Builder
	if err := diag.Text(&b, s.Text, found, "en", false); err != nil {
		tb.Fatal(err)
	}
	return b.String()
}

// Look is a way to set a pattern. Without languages it is set in its own.
func (s *Source) Look(tb testing.TB, l desk.Look) desk.Look {
	tb.Helper()
	if l.Langs == nil {
		langs := s.Plan(tb).Languages
		l.Langs = langs[:min(2, len(langs))]
	}
	return l
}

// Pages sets the pattern.
func (s *Source) Pages(tb testing.TB, l desk.Look) *page.Document {
	tb.Helper()
	doc, err := desk.Pages(s.Plan(tb), s.Look(tb, l))
	if err != nil {
		tb.Fatalf("%s: %v", s.Name, err)
	}
	return doc
}

// File sets the pattern and writes it as it is built.
func (s *Source) File(tb testing.TB, l desk.Look) []byte {
	tb.Helper()
	file, _, err := desk.PDF(s.Plan(tb), s.Look(tb, l), s.Name, pdf.Normal)
	if err != nil {
		tb.Fatalf("%s: %v", s.Name, err)
	}
	return file
}

// Compose sets a pattern in some languages on A4.
func Compose(tb testing.TB, p *plan.Pattern, langs ...*words.Language) *page.Document {
	tb.Helper()
	doc, err := book.Compose(p, book.Options{Langs: langs})
	if err != nil {
		tb.Fatal(err)
	}
	return doc
}

// Language is a language by its tag.
func Language(tb testing.TB, tag string) *words.Language {
	tb.Helper()
	l, err := words.For(tag)
	if err != nil {
		tb.Fatal(err)
	}
	return l
}

// What tests set is thrown away at once, and there is room: to collect it less often takes a fifth off their time.
func init() { debug.SetGCPercent(400) }

// Update is the flag with which tests write what they expect anew.
var Update = flag.Bool("update", false, "write the expected texts of the scripts and golden files anew")
