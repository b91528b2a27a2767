package laws

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	readpdf "github.com/ledongthuc/pdf"

	"ovillo/cmd/ovillo/whole"
	"ovillo/compile/plan"
	"ovillo/render/book"
	"ovillo/render/font"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/pdf"
	"ovillo/render/proof"
	"ovillo/render/words"
)

// Every example is set here on every paper, in every combination of languages and every edition, and so are sources whose
// sizes are more than a page has room for. The pages keep the laws of package proof; the files hold their fonts.

// setting is one way to set a pattern.
type setting struct {
	paper   book.Paper
	edition book.Edition
	langs   []string
}

func (s setting) String() string {
	return fmt.Sprintf("%s, edition %05b, %s", s.paper, s.edition, strings.Join(s.langs, " and "))
}

// proofEditions are the usual one, each that there is, and all of them together that go together. A booklet is missing: its
// pages are those of half a sheet, in another order, which TestBookletsHoldEveryPage proves.
func proofEditions() []book.Edition {
	return []book.Edition{
		0, book.After, book.LowInk, book.LeftHanded, book.Tester, book.LowInk | book.LeftHanded | book.Tester,
		book.Large, book.Large | book.LowInk | book.LeftHanded | book.Tester,
	}
}

// settings lists the ways to set a pattern that has some languages; longest is its longest reading in Spanish. Languages
// that take turns are set like one alone, so that the order of two matters only where they face each other.
func settings(p *plan.Pattern, longest string) []setting {
	both := [][]string{{"en", "es"}, {"es", "en"}, {longest, "en-GB"}}
	alone := [][]string{{"en"}, {"es"}, {longest}}
	var list []setting
	for n := range layout.Papers() {
		for _, e := range proofEditions() {
			for _, langs := range append(slices.Clone(both), alone...) {
				s := setting{book.Paper(n), e, langs}
				large := e.Has(book.Large)
				narrow := s.paper != book.A4 && s.paper != book.Letter
				switch {
				case lacks(p, langs), large && narrow:
				case len(langs) == 1 && e.Has(book.After):
				case large && !s.inLarge(longest):
				case langs[0] == "es" && len(langs) == 2 && (e != 0 || narrow):
				default:
					list = append(list, s)
				}
			}
		}
	}
	return list
}

// inLarge chooses the languages of large print, which has several times as many pages as any other edition: both, one after
// the other, on A4, and on Letter, which is shorter, the one that has most to say.
func (s setting) inLarge(longest string) bool {
	if s.paper == book.A4 {
		return len(s.langs) == 2 && s.langs[0] == "en" && s.edition == book.Large
	}
	return len(s.langs) == 1 && s.langs[0] == longest
}

// compose sets a pattern.
func (s setting) compose(t testing.TB, p *plan.Pattern) *page.Document {
	t.Helper()
	doc, err := book.Compose(p, book.Options{Paper: s.paper, Edition: s.edition, Langs: languagesOf(t, s.langs...)})
	if err != nil {
		t.Fatalf("%s: %v", s, err)
	}
	return doc
}

// lacks reports whether a pattern is not written in one of the languages of some tags.
func lacks(p *plan.Pattern, tags []string) bool {
	return slices.ContainsFunc(tags, func(tag string) bool {
		code, _, _ := strings.Cut(tag, "-")
		return !slices.Contains(p.Languages, code)
	})
}

func languagesOf(t testing.TB, tags ...string) []*words.Language {
	t.Helper()
	var list []*words.Language
	for _, tag := range tags {
		list = append(list, whole.Language(t, tag))
	}
	return list
}

// promise is what the pages of a setting must keep: the block of the paper, and in large print the margins of LARG-04.
func (s setting) promise() proof.Promise {
	w, h, left, top := s.paper.Sheet()
	blockW, blockH := s.paper.Block()
	p := proof.Promise{Block: proof.Rect{X: left, Y: top, W: blockW, H: blockH}, LowInk: s.edition.Has(book.LowInk)}
	if s.edition.Has(book.Tester) { // whose numbers stand in the margin
		const numbers = 7.0
		p.Block.X -= numbers
		p.Block.W += numbers
	}
	if s.edition.Has(book.Large) {
		const inch = 25.4
		p.Large, p.Block = true, proof.Rect{X: inch, Y: inch, W: w - 2*inch, H: h - 2*inch}
	}
	return p
}

// longestSpanish is the reading in which a pattern has most to say.
func longestSpanish(t *testing.T, p *plan.Pattern) string {
	t.Helper()
	longest, most := "es", 0
	for _, l := range words.Readings() {
		if l.Code() != "es" || lacks(p, []string{l.Tag()}) {
			continue
		}
		n := 0
		doc := setting{langs: []string{l.Tag()}}.compose(t, p)
		for _, sheet := range doc.Pages {
			for _, it := range sheet.Items {
				if g, ok := it.(page.Glyphs); ok {
					n += len([]rune(g.Text))
				}
			}
		}
		if n > most {
			longest, most = l.Tag(), n
		}
	}
	return longest
}

// eachSource runs a test on every source that is set in many ways, several at once.
func eachSource(t *testing.T, test func(t *testing.T, s *whole.Source, p *plan.Pattern)) {
	for _, s := range append(whole.Examples(t), whole.Sources(t, "cmd", "ovillo", "whole", "laws", "testdata")...) {
		t.Run(s.Name, func(t *testing.T) {
			t.Parallel()
			test(t, s, s.Plan(t))
		})
	}
}

// setOnce is what came of a setting of a source.
type setOnce struct {
	setting
	pages  int
	faults []proof.Fault
	file   bool  // it was written and read back
	faces  error // what is wrong with the faces in the file
	syntax error // what another program finds wrong with it
}

// ways are the settings of a source and what came of them. They are found and set once a run of the tests: the pages of one take as long
// as the proof of them, and its file as long again.
type ways struct {
	finding, setting sync.Once
	all              []setting
	set              []setOnce
}

// shelf holds the ways of each source.
var shelf sync.Map

// waysOf are the ways of a source, with all settings.
func waysOf(t *testing.T, s *whole.Source, p *plan.Pattern) *ways {
	t.Helper()
	kept, _ := shelf.LoadOrStore(s, &ways{})
	w := kept.(*ways)
	w.finding.Do(func() { w.all = settings(p, longestSpanish(t, p)) })
	return w
}

// lookAt sets a source in every way, looks at the pages and reads the files of some.
func lookAt(t *testing.T, s *whole.Source, p *plan.Pattern) []setOnce {
	t.Helper()
	w := waysOf(t, s, p)
	w.setting.Do(func() {
		var done []setOnce
		path := filepath.Join(t.TempDir(), "file.pdf")
		for _, set := range w.all {
			doc := set.compose(t, p)
			one := setOnce{setting: set, pages: len(doc.Pages), faults: proof.Look(doc, set.promise()), file: written(set)}
			if one.file {
				doc.Source, doc.SourceName = p.Source, s.Name
				var b bytes.Buffer
				if err := pdf.Write(&b, doc, pdf.Options{}); err != nil {
					t.Fatalf("%s: %v", set, err)
				}
				one.faces = facesAreRight(doc, b.Bytes())
				one.syntax = checkByQpdf(t, path, b.Bytes())
			}
			done = append(done, one)
		}
		w.set = done
	})
	if w.set == nil {
		t.Fatal("it was not set in every way")
	}
	return w.set
}

// TestPagesKeepTheLaws proves every page of every setting.
func TestPagesKeepTheLaws(t *testing.T) {
	var mu sync.Mutex
	pages, documents := 0, 0
	t.Run("sources", func(t *testing.T) {
		eachSource(t, func(t *testing.T, s *whole.Source, p *plan.Pattern) {
			for _, set := range lookAt(t, s, p) {
				const most = 4
				for i, f := range set.faults {
					if i == most {
						t.Errorf("%s: and more", set)
						break
					}
					t.Errorf("%s: %s", set, f)
				}
				mu.Lock()
				pages, documents = pages+set.pages, documents+1
				mu.Unlock()
			}
		})
	})
	if documents < 500 || pages < 10*documents/4 {
		t.Errorf("only %d documents of %d pages were proven", documents, pages)
	}
	t.Logf("%d documents, %d pages", documents, pages)
}

// TestFilesHoldTheirFaces reads written files back: the faces that are drawn with are embedded as subsets, and no others. Another
// program goes through their syntax.
func TestFilesHoldTheirFaces(t *testing.T) {
	var mu sync.Mutex
	files := 0
	t.Run("sources", func(t *testing.T) {
		eachSource(t, func(t *testing.T, s *whole.Source, p *plan.Pattern) {
			for _, set := range lookAt(t, s, p) {
				if !set.file {
					continue
				}
				if set.faces != nil {
					t.Errorf("%s: %v", set, set.faces)
				}
				if set.syntax != nil && !errors.Is(set.syntax, errNoQpdf) {
					t.Errorf("%s: %v", set, set.syntax)
				}
				mu.Lock()
				files++
				mu.Unlock()
			}
		})
	})
	if files < 50 {
		t.Fatalf("only %d files", files)
	}
	t.Run("qpdf", func(t *testing.T) {
		if _, err := exec.LookPath("qpdf"); err != nil {
			if os.Getenv("CI") != "" {
				t.Fatal(errNoQpdf)
			}
			t.Skip(errNoQpdf)
		}
	})
}

// written chooses the settings whose files are read back: of each paper and of each edition one. What differs between the
// others is which letters stand where, not how a file is written. With ALL_FILES set in the environment it is all of them, which
// takes minutes.
func written(s setting) bool {
	return os.Getenv("ALL_FILES") != "" || s.edition == 0 && s.langs[0] == "en" || s.paper == book.A4 && len(s.langs) == 2 && s.langs[0] == "en"
}

var errNoQpdf = errors.New("qpdf is not installed")

// checkByQpdf has another program go through the syntax of a file.
func checkByQpdf(t *testing.T, path string, file []byte) error {
	t.Helper()
	if _, err := exec.LookPath("qpdf"); err != nil {
		return errNoQpdf
	}
	if err := os.WriteFile(path, file, 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command("qpdf", "--check", path).CombinedOutput()
	if err == nil && bytes.Contains(out, []byte("WARNING")) {
		err = errors.New("a warning")
	}
	if err != nil {
		return fmt.Errorf("%w\n%s", err, out)
	}
	return nil
}

// facesAreRight compares the faces in a file with those that its pages draw with.
func facesAreRight(doc *page.Document, file []byte) (err error) {
	defer func() { // the library panics at files that are broken
		if r := recover(); r != nil {
			err = fmt.Errorf("the file cannot be read: %v", r)
		}
	}()
	r, err := whole.OpenFile(file)
	if err != nil {
		return err
	}
	if r.NumPage() != len(doc.Pages) {
		return fmt.Errorf("%d pages in the file, %d were set", r.NumPage(), len(doc.Pages))
	}
	drawn := map[string]bool{}
	for _, sheet := range doc.Pages {
		for _, it := range sheet.Items {
			if g, ok := it.(page.Glyphs); ok && g.Text != "" {
				drawn[font.Of(g.Face).Name()] = true
			}
		}
	}
	held := map[string]bool{}
	for n := 1; n <= r.NumPage(); n++ {
		p := r.Page(n)
		for _, key := range p.Fonts() {
			f := p.Font(key).V
			tag, name, subset := strings.Cut(f.Key("BaseFont").Name(), "+")
			if !subset || len(tag) != 6 {
				return fmt.Errorf("%s is no subset", f.Key("BaseFont").Name())
			}
			program := f.Key("DescendantFonts").Index(0).Key("FontDescriptor").Key("FontFile2")
			if program.Kind() != readpdf.Stream {
				return fmt.Errorf("%s is not embedded", name)
			}
			if f.Key("ToUnicode").Kind() != readpdf.Stream {
				return fmt.Errorf("%s has no map to Unicode", name)
			}
			held[name] = true
			if whole := len(programOf(name)); program.Key("Length1").Int64() >= int64(whole)/2 {
				return fmt.Errorf("%s is embedded with %d of its %d bytes", name, program.Key("Length1").Int64(), whole)
			}
		}
	}
	for name := range drawn {
		if !held[name] {
			return fmt.Errorf("%s is drawn with and not embedded", name)
		}
	}
	for name := range held {
		if !drawn[name] {
			return fmt.Errorf("%s is embedded and not drawn with", name)
		}
	}
	return nil
}

// programOf is the whole file of an embedded face.
func programOf(name string) []byte {
	for _, face := range []page.Face{page.Sans, page.SansBold, page.Serif, page.SerifBold} {
		if f := font.Of(face); f.Name() == name {
			return f.Program()
		}
	}
	return nil
}
