package words_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/book"
	"ovillo/render/page"
	"ovillo/render/words"
)

// international are the words of a page that are the same in every language: units, the edition of a standard, letters of measures
// and yarns, names of people.
var international = []string{"cm", "mm", "m", "g", "EN", "ASTM", "F", "AAP", "CFR", "CPSIA", "EU", "EC", "in", "pt"}

// Every example is set as pages in the toy language: what the pages print and what they say of drawings comes from its voice and
// its column of terms, or from the author. A Latin letter was written by a shared file.
func TestToyPagesOfEveryExample(t *testing.T) {
	l, err := words.Toy()
	if err != nil {
		t.Fatal(err)
	}
	paths, err := filepath.Glob(filepath.Join("..", "..", "examples", "*.ovillo"))
	if err != nil || len(paths) == 0 {
		t.Fatal("no examples", err)
	}
	for _, path := range paths {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		tree, _ := lang.Parse(source.NewFile(path, string(data)))
		p := compile.CompileWith(tree, compile.Options{}).Pattern
		if p == nil {
			t.Fatalf("%s does not come out", path)
		}
		words.InToy(p)
		p.By, p.Name = "Ω", "ω"
		doc, err := book.Compose(p, book.Options{Langs: []*words.Language{l}})
		if err != nil {
			t.Fatal(err)
		}
		signs := 0
		look := func(what, text string) {
			signs += strings.Count(text, "∑") + strings.Count(text, "×") + strings.Count(text, "▤")
			for _, word := range strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) }) {
				if latin(word) && !ours(word, p) {
					t.Errorf("%s, %s: %q was written by a shared file: %s", filepath.Base(path), what, word, text)
				}
			}
		}
		for i, pg := range doc.Pages {
			for _, it := range pg.Items {
				if g, ok := it.(page.Glyphs); ok {
					look("page "+string(rune('1'+i)), g.Text)
					look("spoken", g.Actual)
					look("expanded", g.Expand)
				}
			}
		}
		eachElem(doc.Root, func(e *page.Elem) { look("drawing", e.Alt) })
		for _, o := range doc.Outline {
			look("outline", o.Title)
		}
		look("title", doc.Title+" "+doc.Subject+" "+strings.Join(doc.Keywords, " "))
		if signs < 20 || len(doc.Pages) < 3 {
			t.Errorf("%s: %d signs of the language on %d pages", filepath.Base(path), signs, len(doc.Pages))
		}
	}
}

func eachElem(e *page.Elem, f func(*page.Elem)) {
	f(e)
	for _, k := range e.Kids {
		eachElem(k, f)
	}
}

func latin(word string) bool {
	for _, r := range word {
		if unicode.Is(unicode.Latin, r) {
			return true
		}
	}
	return false
}

// ours reports whether a word is the same in every language, or the letter of a measure, a yarn or a list of figures.
func ours(word string, p *plan.Pattern) bool {
	for _, w := range international {
		if w == word {
			return true
		}
	}
	return len(word) == 1
}
