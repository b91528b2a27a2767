package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/whole"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/page"
	"ovillo/render/report"
)

// Much of what a report looks for no source can bring about, since patterns are worked out and pages are set. So that these
// checks are seen to fire, what was worked out is tampered with here, one thing at a time.

// tampering is one thing that is done to what a report is made from, and what the report must then say of which check.
type tampering struct {
	name, check, says string
	change            func(in *report.Input)
}

// onPages tampers with the pages in the first layout.
func onPages(f func(d *page.Document)) func(in *report.Input) {
	return func(in *report.Input) { f(in.Editions[0].Doc) }
}

// onGlyphs tampers with the first text that is wanted.
func onGlyphs(is func(g page.Glyphs) bool, f func(g page.Glyphs) page.Glyphs) func(in *report.Input) {
	return onPages(func(d *page.Document) {
		for i := range d.Pages {
			for k, it := range d.Pages[i].Items {
				if g, ok := it.(page.Glyphs); ok && is(g) {
					d.Pages[i].Items[k] = f(g)
					return
				}
			}
		}
	})
}

// within reports whether a text belongs to an element of a kind.
func within(tag string) func(g page.Glyphs) bool {
	return func(g page.Glyphs) bool { return g.Elem != nil && g.Elem.Tag == tag && len(g.Text) > 8 }
}

var tamperings = []tampering{
	{"text in the margin", "T66", "text stands in the margin", onGlyphs(within("P"), func(g page.Glyphs) page.Glyphs { g.X = 3; return g })},
	{"text on text", "T66", "texts run into each other", onPages(func(d *page.Document) {
		items := d.Pages[1].Items
		for _, it := range items {
			if g, ok := it.(page.Glyphs); ok && within("P")(g) {
				g.X += 2
				d.Pages[1].Items = append(items, g)
				return
			}
		}
	})},
	{"a head at the foot", "T66", "a head stands last", onPages(func(d *page.Document) {
		h := whole.Elems(d, "H2")[0]
		d.Pages[0].Items = append(d.Pages[0].Items, page.Glyphs{X: 20, Base: 262, Size: 11, Face: page.Serif, Text: "Alone", Elem: h})
	})},
	{"a line of a table on two pages", "T66", "a row, or a line of a table, is torn apart", onPages(func(d *page.Document) {
		for i := range d.Pages {
			for k, it := range d.Pages[i].Items {
				if g, ok := it.(page.Glyphs); ok && g.Elem != nil && g.Elem.Tag == "TD" {
					d.Pages[i].Items = append(d.Pages[i].Items[:k:k], d.Pages[i].Items[k+1:]...)
					last := &d.Pages[len(d.Pages)-1]
					last.Items = append(last.Items, g)
					return
				}
			}
		}
	})},
	{"a step that is not printed", "T66", "this step is not on the pages", onPages(func(d *page.Document) {
		for i := range d.Pages {
			for k, it := range d.Pages[i].Items {
				if g, ok := it.(page.Glyphs); ok && strings.Contains(g.Text, "hdc") && g.Elem.Tag == "P" {
					g.Text = strings.ReplaceAll(g.Text, "hdc", "dc")
					d.Pages[i].Items[k] = g
				}
			}
		}
	})},
	{"a count that is not printed", "T66", "this count is not on the pages", onPages(func(d *page.Document) {
		for i := range d.Pages {
			for k, it := range d.Pages[i].Items {
				if g, ok := it.(page.Glyphs); ok && g.Text == "44" {
					g.Text = "43"
					d.Pages[i].Items[k] = g
				}
			}
		}
	})},
	{"pages that cannot be set", "T66", "the pages could not be set: no room", func(in *report.Input) { in.Editions[0].Doc, in.Editions[0].Why = nil, "no room" }},
	{"a sign without a glyph", "T67", "the fonts have no such letter", onGlyphs(within("P"), func(g page.Glyphs) page.Glyphs { g.Text = "\u4e2d"; return g })},
	{"a picture without a description", "T67", "a picture has no description", onPages(func(d *page.Document) { whole.Elems(d, "Figure")[0].Alt = "" })},
	{"text outside the tree", "T67", "text is missing from the reading order", onGlyphs(within("P"), func(g page.Glyphs) page.Glyphs { g.Elem = &page.Elem{Tag: "P"}; return g })},
	{"text in no language", "T67", "the language of a text is not said", onPages(func(d *page.Document) {
		d.Lang, d.Root.Lang = "", ""
		for _, e := range whole.Elems(d, "P") {
			e.Lang = ""
		}
	})},
	{"a link to nowhere", "T67", "a link leads nowhere", onPages(func(d *page.Document) {
		d.Pages[0].Items = append(d.Pages[0].Items, page.Anchor{X: 20, Y: 20, W: 5, H: 5, Page: 99, Label: "Abbreviations"})
	})},
	{"no tree", "T67", "the file has no reading order", onPages(func(d *page.Document) { d.Root = nil })},
	{"a page without its title", "T01", "page 2: the title is missing", onPages(func(d *page.Document) { withoutRunning(&d.Pages[1], 1) })},
	{"a page without its terms", "T01", "page 2: edition and terms are missing", onPages(func(d *page.Document) { withoutRunning(&d.Pages[1], -1) })},
	{"terms that are not said", "T05", "do not say which stitch names they use", onPages(func(d *page.Document) { replaceText(d, "US terms", "Terms") })},
	{"terms that the header does not say", "T05", "terms us, or terms uk", func(in *report.Input) { in.Source.Terms = false }},
	{"a hook that the pages do not name", "T13", "the hook of 3.25 mm is not on the pages", onPages(func(d *page.Document) { replaceText(d, "3.25", "3") })},
	{"inches that are not given", "T06", "is not on the pages", onPages(func(d *page.Document) { replaceText(d, "22", "2") })},
	{"an abbreviation that no table explains", "T50", "the abbreviation FPhdc is in no table", onPages(func(d *page.Document) { replaceText(d, "FPhdc", "front post hdc") })},
	{"an abbreviation that is not used", "T50", "the abbreviation FPhdc is explained and not used", onPages(func(d *page.Document) {
		for i := range d.Pages {
			for k, it := range d.Pages[i].Items {
				if g, ok := it.(page.Glyphs); ok && (g.Elem == nil || g.Elem.Tag != "TD" && g.Elem.Tag != "TH") {
					g.Text = strings.ReplaceAll(g.Text, "FPhdc", "hdc")
					d.Pages[i].Items[k] = g
				}
			}
		}
	})},

	{"fewer balls than needed", "T09", "balls are given, and", func(in *report.Input) { in.Pattern.Yarns[0].Amount[1].Balls = 1 }},
	{"a hook that is not listed", "T12", "is not listed", func(in *report.Input) { in.Pattern.Parts[0].Hook = 5 * plan.Millimetre }},
	{"too few markers", "T12", "markers, and", func(in *report.Input) { in.Pattern.Notions.Markers = 1 }},
	{"markers for nothing", "T12", "none is placed", func(in *report.Input) {
		for _, p := range in.Pattern.Parts {
			p.Markers = nil
		}
	}},
	{"no needle", "T12", "no needle is listed", func(in *report.Input) { in.Pattern.Notions.Needle = false }},
	{"more buttons than are listed", "T14", "buttons are sewn on", func(in *report.Input) {
		in.Pattern.Finish = append(in.Pattern.Finish, plan.Finishing{Kind: plan.SewButtons, Buttons: plan.Buttons{N: plan.Nums{2, 2, 2, 2}}})
	}},
	{"a gauge that may be blocked or not", "T16", "not said whether before or after blocking", func(in *report.Input) { in.Pattern.Gauges[0].Blocked = plan.BlockingUnsaid }},
	{"a measure that the rows do not make", "T21", "counts and gauge make", func(in *report.Input) { in.Pattern.Measures[0].Values[2] += plan.Centimetre }},
	{"a measure that one size lacks", "T20", "no value for", func(in *report.Input) { in.Pattern.Measures[0].Values[2] = plan.NoLength }},
	{"a count that no step prints", "T34", "no count says so", func(in *report.Input) {
		for _, step := range in.Pattern.Parts[1].Steps {
			if r, ok := step.(*plan.Row); ok {
				r.Counts = nil
			}
		}
	}},
	{"a chain that is not worked to its end", "T30", "chains", func(in *report.Input) { in.Pattern.Parts[0].Worked[1][0].Taken -= 2 }},
	{"a row that loses a place", "T32", "places of the row below are accounted for", func(in *report.Input) { in.Pattern.Parts[1].Worked[0][4].Taken-- }},
	{"a row number that is left out", "T36", "follows row", func(in *report.Input) { in.Pattern.Parts[0].Worked[0][2].Number = 7 }},
	{"a row of nothing", "T27", "has no stitches", func(in *report.Input) { in.Pattern.Parts[0].Worked[0][2].Stitches = 0 }},
	{"one letter for two measures", "T64", "stands for", func(in *report.Input) { in.Pattern.Measures[1].Letter = in.Pattern.Measures[0].Letter }},
	{"a size that is smaller", "T25", "is no larger than", func(in *report.Input) { in.Pattern.Measures[1].Values[3] = plan.Centimetre }},
}

// withoutRunning takes the running lines at the head (1) or the foot (-1) off a page.
func withoutRunning(p *page.Page, which int) {
	var kept []page.Item
	for _, it := range p.Items {
		g, ok := it.(page.Glyphs)
		if !ok || g.Elem != nil || (g.Base < p.H/2) != (which > 0) {
			kept = append(kept, it)
		}
	}
	p.Items = kept
}

func replaceText(d *page.Document, old, new string) {
	for i := range d.Pages {
		for k, it := range d.Pages[i].Items {
			if g, ok := it.(page.Glyphs); ok {
				g.Text = strings.ReplaceAll(g.Text, old, new)
				d.Pages[i].Items[k] = g
			}
		}
	}
}

func TestReportSeesTampering(t *testing.T) {
	data, err := os.ReadFile(filepath.Join("..", "..", "examples", "marisma-leggings.ovillo"))
	require.NoError(t, err)
	whole, _ := reportOf(t, string(data), nil)
	for _, x := range tamperings {
		t.Run(x.name, func(t *testing.T) {
			require.NotEqual(t, report.Found, resultOf(t, whole, x.check).Status, "found without tampering")
			r, _ := reportOf(t, string(data), x.change)
			got := resultOf(t, r, x.check)
			require.Equal(t, report.Found, got.Status)
			said := ""
			for _, f := range got.Findings {
				said += f.Message + "\n"
			}
			require.Contains(t, said, x.says)
		})
	}
}

// TestNumbersMark: the mark of the numbers changes with every number and with nothing else.
func TestNumbersMark(t *testing.T) {
	data, err := os.ReadFile(filepath.Join("..", "..", "examples", "marisma-leggings.ovillo"))
	require.NoError(t, err)
	text := string(data)
	markOf := func(change func(in *report.Input)) string {
		r, _ := reportOf(t, text, change)
		return r.Numbers
	}
	was := markOf(nil)
	require.Regexp(t, `^[0-9a-f]{4} [0-9a-f]{4} [0-9a-f]{4}$`, was)
	other, _ := reportOf(t, strings.Replace(text, "Mallas Marisma", "Mallas de la marisma", 1), nil)
	require.Equal(t, was, other.Numbers, "a title is no number")
	whole, _ := reportOf(t, text, nil)
	require.NotEqual(t, whole.Source, other.Source)
	for name, change := range map[string]func(in *report.Input){
		"a count":   func(in *report.Input) { in.Pattern.Parts[1].Worked[2][4].Stitches++ },
		"a measure": func(in *report.Input) { in.Pattern.Measures[4].Values[0]++ },
		"yarn":      func(in *report.Input) { in.Pattern.Yarns[1].Amount[0].Balls++ },
		"a gauge":   func(in *report.Input) { in.Pattern.Gauges[0].Rows++ },
		"a hook":    func(in *report.Input) { in.Pattern.Hooks[1]++ },
	} {
		require.NotEqual(t, was, markOf(change), name)
	}
}

// TestReportSeesChartAlone: a row of which the pages would say no more than which row of the chart it is.
func TestReportSeesChartAlone(t *testing.T) {
	archive, err := txtar.ParseFile(filepath.Join("testdata", "report", "T68.txtar"))
	require.NoError(t, err)
	r, _ := reportOf(t, file(t, archive, "pass.ovillo"), func(in *report.Input) {
		for _, step := range in.Pattern.Parts[0].Steps {
			if row, ok := step.(*plan.Row); ok && row.Chart != nil {
				row.Work = nil
			}
		}
	})
	got := resultOf(t, r, "T68")
	require.Equal(t, report.Found, got.Status)
	require.Contains(t, got.Findings[0].Message, "stands in the chart alone")
}

// TestReportSeesColours: a chart in a colour that is no yarn.
func TestReportSeesColours(t *testing.T) {
	archive, err := txtar.ParseFile(filepath.Join("testdata", "report", "T68.txtar"))
	require.NoError(t, err)
	r, _ := reportOf(t, file(t, archive, "pass.ovillo"), func(in *report.Input) { in.Pattern.Charts[0].Rows[1][2] = 9 })
	require.Contains(t, resultOf(t, r, "T63").Findings[0].Message, "a colour that is no yarn")
}

// TestReportSeesDrawnOtherwise: a chart in symbols with another stitch than was worked.
func TestReportSeesDrawnOtherwise(t *testing.T) {
	source, err := os.ReadFile(filepath.Join("..", "..", "examples", "bajamar-blanket.ovillo"))
	require.NoError(t, err)
	r, _ := reportOf(t, string(source), func(*report.Input) {})
	held := resultOf(t, r, "T61")
	require.Equal(t, report.Held, held.Status)
	require.Greater(t, held.N, 4)
	r, _ = reportOf(t, string(source), func(in *report.Input) {
		in.Pattern.Drawn[0].Sizes[0].Lines[2].Stitches[1].Form = stitch.Plain(stitch.SC)
	})
	require.Contains(t, resultOf(t, r, "T61").Findings[0].Message, "row 2 of size small is drawn otherwise")
}
