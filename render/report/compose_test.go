package report

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/render/layout"
	"ovillo/render/proof"
	"ovillo/render/sample"
	"ovillo/render/words"
)

// madeOn is a report on the sample pattern, its tables for so many sizes.
func madeOn(t *testing.T, lang string, sizes int, change func(r *Report)) (*Report, *words.Language) {
	t.Helper()
	l, err := words.For(lang)
	require.NoError(t, err)
	p := sample.Leggings()
	r := Make(Input{Lang: lang, File: "leggings.ovillo", Text: "part", Source: Source{Lines: 90, Stated: 7}, Pattern: p, Words: l, Findings: []Finding{
		{Code: "OV607", Severity: Warning, Line: 12, Column: 3, Message: "two sizes come out alike", Help: "ask for more\nor for less", Sizes: []string{"1 y"}},
	}})
	for _, list := range [][]Table{r.Tables, r.Counts} {
		for i := range list {
			rows := append([][]string{list[i].Head}, list[i].Rows...)
			for k, row := range rows {
				wide := row[:list[i].First:list[i].First]
				for z := range sizes {
					wide = append(wide, row[list[i].First+z%4])
				}
				rows[k] = wide
			}
			list[i].Head, list[i].Rows = rows[0], rows[1:]
		}
	}
	if change != nil {
		change(r)
	}
	return r, l
}

// lengthened gives a report the longest names somebody will choose, and signs that the faces do not have.
func lengthened(r *Report) {
	r.Title = "Leggings for the long winter afternoons of children who would rather be in the garden"
	r.File = strings.Repeat("patterns/", 20) + "leggings.ovillo"
	for _, x := range r.Results {
		for i := range x.Findings {
			x.Findings[i].Message = strings.Repeat("a message as long as it may be, with a sign that the faces do not have: \u4e2d. ", 6)
		}
	}
	for i := range r.Counts {
		r.Counts[i].Title = "Upper and lower waistband with drawstring, worked in rounds from the outside to the inside"
		for z := range r.Counts[i].Head[2:] {
			r.Counts[i].Head[2+z] = "12–18 months, extra long"
		}
	}
}

// TestComposeKeepsTheLaws: the pages of a report keep the laws that it holds the pattern's own pages to.
func TestComposeKeepsTheLaws(t *testing.T) {
	for _, x := range []struct {
		name   string
		lang   string
		sizes  int
		paper  layout.Paper
		change func(r *Report)
	}{
		{"four sizes", "en", 4, layout.A4, nil},
		{"four sizes in Spanish, on Letter", "es", 4, layout.Letter, nil},
		{"one size", "en", 1, layout.A4, nil},
		{"twelve sizes", "es", 12, layout.A4, nil},
		{"thirty sizes", "en", 30, layout.Letter, nil},
		{"long words", "en", 6, layout.A4, lengthened},
	} {
		t.Run(x.name, func(t *testing.T) {
			r, l := madeOn(t, x.lang, x.sizes, x.change)
			doc := Compose(r, Options{Paper: x.paper, Words: l})
			require.Greater(t, len(doc.Pages), 3)
			require.Equal(t, l.Tag(), doc.Lang)
			for _, f := range proof.Look(doc, proof.Promise{Block: blockOf(doc)}) {
				if f.Rule != proof.LongLine { // a report is gone through point by point, over the whole sheet
					t.Error(f)
				}
			}
			require.NotEmpty(t, doc.Outline)
			all := squeezed(wholeText(doc))
			for _, res := range r.Results {
				require.Contains(t, all, squeezed(res.Name(x.lang)), res.ID)
				require.Contains(t, all, squeezed(clean(res.Ask)), res.ID)
				for _, f := range res.Findings {
					require.Contains(t, all, squeezed(clean(f.Message)))
				}
			}
			for _, table := range append(r.Tables, r.Counts...) {
				for _, row := range table.Rows {
					for _, cell := range row {
						require.Contains(t, all, squeezed(clean(cell)), table.Title)
					}
				}
			}
		})
	}
}

// TestComposeIsTheSameEachTime: the same report gives the same pages.
func TestComposeIsTheSameEachTime(t *testing.T) {
	r, l := madeOn(t, "es", 4, nil)
	dump := func() string { return layout.Dump(Compose(r, Options{Words: l})) }
	require.Equal(t, dump(), dump())
}
