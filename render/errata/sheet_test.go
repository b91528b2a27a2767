package errata_test

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
	"github.com/stretchr/testify/require"
	"github.com/yuin/goldmark"

	"ovillo/cmd/ovillo/desk"
	"ovillo/compile/compare"
	"ovillo/compile/plan"
	"ovillo/lang/source"
	"ovillo/render/book"
	"ovillo/render/errata"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/pdf"
	"ovillo/render/proof"
	"ovillo/render/words"
)

var update = flag.Bool("update", false, "write the expected texts anew")

const examples = "../../examples"

func pattern(t *testing.T, name, text string) *plan.Pattern {
	t.Helper()
	c := desk.Check(desk.Source{File: source.NewFile(name, text), Open: desk.Folder(examples)})
	require.True(t, c.Printable(), "%s: %v", name, c.Found)
	return c.Pattern
}

func language(t *testing.T, tag string) *words.Language {
	t.Helper()
	l, err := words.For(tag)
	require.NoError(t, err)
	return l
}

func index(t *testing.T, p *plan.Pattern) *book.Index {
	t.Helper()
	x, err := book.IndexOf(p, book.Options{Langs: []*words.Language{language(t, "en"), language(t, "es")}})
	require.NoError(t, err)
	return x
}

// sheets are the lists in both languages, with pages.
func sheets(t *testing.T, old, new *plan.Pattern) []*errata.Sheet {
	t.Helper()
	r := compare.Patterns(old, new)
	o := errata.Options{Paper: "A4", Old: index(t, old), New: index(t, new)}
	return []*errata.Sheet{errata.Make(r, language(t, "en"), o), errata.Make(r, language(t, "es"), o)}
}

// edited is an example with edits, a line each: what stands there => what stands there then. \n is a line end.
func edited(t *testing.T, text, edits string) string {
	t.Helper()
	for line := range strings.Lines(edits) {
		from, to, ok := strings.Cut(strings.TrimSuffix(line, "\n"), " => ")
		require.True(t, ok, line)
		from, to = strings.ReplaceAll(from, `\n`, "\n"), strings.ReplaceAll(to, `\n`, "\n")
		require.Contains(t, text, from)
		text = strings.ReplaceAll(text, from, to)
	}
	return text
}

// TestSheets reads pairs: an example, edits that make the new edition of it, and the list in both languages.
func TestSheets(t *testing.T) {
	files, err := filepath.Glob("testdata/*.txtar")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txtar"), func(t *testing.T) {
			a, err := txtar.ParseFile(file)
			require.NoError(t, err)
			require.Equal(t, "edits", a.Files[0].Name)
			base := regexp.MustCompile(`[a-z-]+\.ovillo`).FindString(string(a.Comment))
			data, err := os.ReadFile(filepath.Join(examples, base))
			require.NoError(t, err)
			was := pattern(t, base, string(data))
			is := pattern(t, base, edited(t, string(data), string(a.Files[0].Data)))
			var b bytes.Buffer
			made := sheets(t, was, is)
			require.NoError(t, errata.Text(&b, made))
			for _, s := range made {
				b.WriteString("\n" + strings.Join(s.Notes(), "\n") + "\n")
			}
			if *update {
				a.Files = append(a.Files[:1], txtar.File{Name: "list", Data: b.Bytes()})
				require.NoError(t, os.WriteFile(file, txtar.Format(a), 0o666))
				return
			}
			require.Len(t, a.Files, 2)
			require.Equal(t, string(a.Files[1].Data), b.String())
			both(t, made)
		})
	}
}

// both sees that the two languages say as much of the same.
func both(t *testing.T, made []*errata.Sheet) {
	t.Helper()
	require.Len(t, made[1].Groups, len(made[0].Groups))
	for g := range made[0].Groups {
		a, b := made[0].Groups[g].Entries, made[1].Groups[g].Entries
		require.Len(t, b, len(a))
		for i := range a {
			require.NotEmpty(t, a[i].Where)
			require.NotEmpty(t, b[i].Where)
			require.Len(t, b[i].Items, len(a[i].Items))
			for _, it := range append(a[i].Items, b[i].Items...) {
				require.NotEqual(t, it.Old.String(), it.New.String(), "%s: nothing is another", a[i].Where)
			}
		}
	}
}

// last is an example of many changes.
func last(t *testing.T) (was, is *plan.Pattern) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(examples, "marisma-leggings.ovillo"))
	require.NoError(t, err)
	return pattern(t, "old", string(data)), pattern(t, "new", edited(t, string(data), `edition 2, "2026-03" => edition 3, "2026-09"
  4 rounds: [fphdc, bphdc] around => `+"  5 rounds: [fphdc, bphdc] around"+`
shaping: dc in next, dec, dc to last 3, dec, dc in last => shaping: dc in next 2, dec, dc to last 4, dec, dc in last 2
inseam 25 (30, 34, 38) => inseam 25 (31, 34, 38)
`))
}

// TestPages looks at the sheets as a reader would: in two languages and in one, on both papers.
func TestPages(t *testing.T) {
	was, is := last(t)
	lists := sheets(t, was, is)
	none := sheets(t, was, was)
	for _, paper := range []layout.Paper{layout.A4, layout.Letter} {
		for _, list := range [][]*errata.Sheet{lists, lists[:1], lists[1:], none} {
			doc := errata.Compose(list, paper, is.Date)
			w, h := paper.Block()
			_, _, left, top := paper.Sheet()
			for _, f := range proof.Look(doc, proof.Promise{Block: proof.Rect{X: left, Y: top, W: w, H: h}}) {
				t.Errorf("%s, %d languages, page %d: %v: %s", paper, len(list), f.Page+1, f.Rule, f.Words)
			}
			require.Equal(t, "2026-09-01", doc.Created)
			var one, two bytes.Buffer
			require.NoError(t, pdf.Write(&one, doc, pdf.Options{}))
			require.NoError(t, pdf.Write(&two, errata.Compose(list, paper, is.Date), pdf.Options{}))
			require.True(t, bytes.Equal(one.Bytes(), two.Bytes()), "the same list gives other bytes")
			require.NotZero(t, len(doc.Langs))
			if len(list) > 1 && list[0] != none[0] {
				require.NotEmpty(t, doc.Outline)
			}
		}
	}
}

// TestPagesHoldAll: every text of the list stands on the sheet.
func TestPagesHoldAll(t *testing.T) {
	was, is := last(t)
	lists := sheets(t, was, is)
	doc := errata.Compose(lists, layout.A4, "2026-09")
	var b strings.Builder
	texts := map[*page.Elem]*strings.Builder{}
	var order []*page.Elem
	for _, p := range doc.Pages {
		for _, it := range p.Items {
			if g, ok := it.(page.Glyphs); ok {
				if texts[g.Elem] == nil {
					texts[g.Elem] = &strings.Builder{}
					order = append(order, g.Elem)
				}
				texts[g.Elem].WriteString(g.Text)
			}
		}
	}
	for _, e := range order {
		b.WriteString(texts[e].String() + "\n")
	}
	bare := func(s string) string {
		return strings.NewReplacer(" ", "", "\u00a0", "", "\u202f", "", "\n", "", "-", "").Replace(s)
	}
	all := bare(b.String())
	n := 0
	for _, s := range lists {
		for _, g := range s.Groups {
			for _, e := range g.Entries {
				for _, it := range e.Items {
					for _, text := range []string{e.Where, it.Sizes, it.Old.String(), it.New.String()} {
						n++
						require.Contains(t, all, bare(text))
					}
				}
			}
		}
	}
	require.Greater(t, n, 50)
}

// TestMarkdown: what a reader of Markdown makes of the list (goldmark, CommonMark) has the texts as they are, and a head for each entry.
func TestMarkdown(t *testing.T) {
	was, is := last(t)
	lists := sheets(t, was, is)
	var b, html bytes.Buffer
	require.NoError(t, errata.Markdown(&b, lists))
	require.NoError(t, goldmark.Convert(b.Bytes(), &html))
	entries := 0
	for _, s := range lists {
		for _, g := range s.Groups {
			if g.Plain {
				continue
			}
			for _, e := range g.Entries {
				entries++
				for _, it := range e.Items {
					text := strings.NewReplacer("\u00a0", " ", "\u202f", " ", "\n", " ").Replace(it.New.String())
					require.Contains(t, html.String(), text)
				}
			}
		}
	}
	require.Equal(t, entries, strings.Count(html.String(), "<h3>"))
}
