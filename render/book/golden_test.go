package book

import (
	"flag"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ovillo/render/layout"
	"ovillo/render/page"
)

var update = flag.Bool("update", false, "write the golden files anew")

// TestGolden compares the pages of the sample with what they were when somebody last looked at them: all pages in two
// languages and in one, and the first pages of instructions where there is one size and where there are many.
func TestGolden(t *testing.T) {
	for _, e := range []edition{
		{name: "en-es", sizes: 4, langs: []string{"en", "es"}},
		{name: "en", sizes: 4, langs: []string{"en"}},
		{name: "es", sizes: 4, langs: []string{"es"}},
		{name: "en-es-one-size", sizes: 1, langs: []string{"en", "es"}},
		{name: "en-es-ten-sizes", sizes: 10, langs: []string{"en", "es"}},
	} {
		t.Run(e.name, func(t *testing.T) {
			doc := e.compose(t, A4)
			if e.sizes != 4 {
				first := firstPart(doc)
				doc = &page.Document{Pages: doc.Pages[first : first+2]}
			}
			compareGolden(t, filepath.Join("testdata", "leggings."+e.name+".txt"), layout.Dump(doc))
		})
	}
}

// firstPart is the page on which the instructions start.
func firstPart(doc *page.Document) int {
	for _, o := range doc.Outline {
		if strings.HasPrefix(o.Title, "1  ") {
			return o.Page
		}
	}
	return 0
}

// TestEditionGolden compares the first pages of instructions of each edition and of each narrow sheet.
func TestEditionGolden(t *testing.T) {
	for _, c := range []struct {
		name  string
		paper Paper
		kind  Edition
		langs []string
	}{
		{"phone", Phone, 0, []string{"en"}},
		{"a5", A5, 0, []string{"es"}},
		{"large", Letter, Large, []string{"en", "es"}},
		{"left", A4, LeftHanded, []string{"en", "es"}},
		{"tester", A4, Tester, []string{"en", "es"}},
		{"booklet", A4, Booklet, []string{"es", "en"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			doc := edition{sizes: 4, langs: c.langs, kind: c.kind}.compose(t, c.paper)
			first := firstPart(doc)
			compareGolden(t, filepath.Join("testdata", "edition."+c.name+".txt"), layout.Dump(&page.Document{Pages: doc.Pages[first : first+2]}))
		})
	}
}

func compareGolden(t *testing.T, name, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(name, []byte(got), 0o666); err != nil {
			t.Fatal(err)
		}
		return
	}
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	want := string(data)
	if got == want {
		return
	}
	t.Fatalf("%s: %s\n(go test -update writes it anew)", name, firstDifference(got, want))
}

func firstDifference(got, want string) string {
	a, b := strings.Split(got, "\n"), strings.Split(want, "\n")
	for i := range max(len(a), len(b)) {
		if x, y := at(a, i), at(b, i); x != y {
			return fmt.Sprintf("line %d: have\n%s\nwant\n%s", i+1, x, y)
		}
	}
	return "nothing"
}

func at(lines []string, i int) string {
	if i < len(lines) {
		return lines[i]
	}
	return "(nothing)"
}

// TestPapersBreakAlike: on Letter every page holds the same as on A4, moved as a whole.
func TestPapersBreakAlike(t *testing.T) {
	for _, e := range editions {
		t.Run(e.name, func(t *testing.T) {
			a, b := e.compose(t, A4), e.compose(t, Letter)
			if len(a.Pages) != len(b.Pages) {
				t.Fatalf("%d pages on A4, %d on Letter", len(a.Pages), len(b.Pages))
			}
			for i := range a.Pages {
				x, y := a.Pages[i].Items, b.Pages[i].Items
				if len(x) != len(y) {
					t.Fatalf("page %d: %d items on A4, %d on Letter", i+1, len(x), len(y))
				}
				for k := range x {
					if moved := layout.Shift(x[k], 2.95, -5.8); !sameLook(moved, y[k]) {
						t.Fatalf("page %d: on A4, moved, %+v, on Letter %+v", i+1, moved, y[k])
					}
				}
			}
		})
	}
}

// sameLook reports whether two items look the same at the same place.
func sameLook(a, b page.Item) bool {
	near := func(x, y float64) bool { return math.Abs(x-y) < 1e-6 }
	switch a := a.(type) {
	case page.Glyphs:
		b, ok := b.(page.Glyphs)
		return ok && near(a.X, b.X) && near(a.Base, b.Base) && a.Text == b.Text && a.Face == b.Face && a.Size == b.Size
	case page.Path:
		b, ok := b.(page.Path)
		if !ok || len(a.Cmds) != len(b.Cmds) || a.Width != b.Width {
			return false
		}
		for i, c := range a.Cmds {
			for k, p := range c.P {
				if q := b.Cmds[i].P[k]; !near(p.X, q.X) || !near(p.Y, q.Y) {
					return false
				}
			}
		}
		return true
	case page.Anchor:
		b, ok := b.(page.Anchor)
		return ok && near(a.X, b.X) && near(a.Y, b.Y) && a.URI == b.URI
	}
	return false
}

// TestSameInputSamePages guards against anything that comes out in the order of a map.
func TestSameInputSamePages(t *testing.T) {
	e := editions[0]
	first := layout.Dump(e.compose(t, A4))
	for range 3 {
		if layout.Dump(e.compose(t, A4)) != first {
			t.Fatal("two runs differ")
		}
	}
}

func TestLanguagesAreOneOrTwo(t *testing.T) {
	p := editions[0].pattern()
	for _, n := range []int{0, 3} {
		langs := languages(t, []string{"en", "es", "es-MX"}[:n]...)
		if _, err := Compose(p, Options{Langs: langs}); err == nil || !strings.Contains(err.Error(), fmt.Sprint(n)) {
			t.Errorf("%d languages: error %v", n, err)
		}
	}
	p.Sizes = nil
	if _, err := Compose(p, Options{Langs: languages(t, "en")}); err == nil {
		t.Error("a pattern without sizes is set")
	}
}

func BenchmarkCompose(b *testing.B) {
	p := editions[0].pattern()
	langs := languages(b, "en", "es")
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Compose(p, Options{Langs: langs}); err != nil {
			b.Fatal(err)
		}
	}
}
