package web

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"ovillo/compile/plan"
	"ovillo/render/report"
	"ovillo/render/words"
)

var (
	whole    = regexp.MustCompile(`\d+`)
	ofSpaces = regexp.MustCompile(`\bch-\d+|\d+-ch|sps? of \d+ ch|esp de \d+ cad`)
)

func ints(s string) []int {
	var out []int
	for _, w := range whole.FindAllString(ofSpaces.ReplaceAllString(strings.ReplaceAll(s, "\u00a0", " "), ""), -1) {
		n, _ := strconv.Atoi(w)
		out = append(out, n)
	}
	return out
}

// figuresOf reads a line of figures as one list for each size: figures with the names of sizes, lists that are heard with them, and what
// holds for all.
func figuresOf(n *html.Node, l *words.Language, sizes []plan.Size) [][]int {
	texts := make([]string, len(sizes))
	put := func(z int, text string) { texts[z] += text }
	var walk func(n *html.Node)
	walk = func(n *html.Node) {
		switch {
		case n.Type == html.TextNode:
			for z := range sizes {
				put(z, n.Data)
			}
		case hasClass(n, "figures"):
			for z, cell := range find(n, "", tagged("span")) {
				text := strings.TrimPrefix(seen(cell), l.SizeName(sizes[z]))
				put(z, " "+text+" ")
			}
		case hasClass(n, "heard"):
			text := seen(&html.Node{Type: html.ElementNode, FirstChild: n.FirstChild})
			for z := len(sizes) - 1; z >= 0; z-- {
				at := strings.LastIndex(" "+plain(text), " "+plain(l.SizeName(sizes[z]))+" ")
				if at < 0 {
					return
				}
				put(z, plain(text)[at+len(plain(l.SizeName(sizes[z]))):])
				text = plain(text)[:at]
			}
		case hasClass(n, "only"):
		default:
			if v, _ := attr(n, "aria-hidden"); v == "true" {
				return
			}
			for k := n.FirstChild; k != nil; k = k.NextSibling {
				walk(k)
			}
		}
	}
	walk(n)
	out := make([][]int, len(sizes))
	for z, text := range texts {
		out[z] = ints(text)
	}
	return out
}

func plain(s string) string { return strings.ReplaceAll(s, "\u00a0", " ") }

// compared holds the rows of one view in one language against the plan, and returns how many figures were compared.
func compared(t *testing.T, article *html.Node, view string, p *plan.Pattern, steps [][]int, l *words.Language) int {
	n := 0
	rows := map[string]*html.Node{}
	for _, li := range find(article, view, func(n *html.Node) bool { return hasClass(n, "row") }) {
		k, _ := attr(li, "data-k")
		if k != "" {
			if rows[k] != nil {
				t.Errorf("%s: two rows %s", view, k)
			}
			rows[k] = li
		}
	}
	for i, part := range p.Parts {
		for k, step := range part.Steps {
			var first, last plan.Nums
			var counts []plan.Count
			switch st := step.(type) {
			case *plan.Row:
				first, last, counts = st.First, st.Last, st.Counts
			case *plan.Block:
				first, last, counts = st.First, st.Last, st.Counts
			default:
				continue
			}
			key := part.Name + " " + strconv.Itoa(steps[i][k])
			li := rows[key]
			if li == nil {
				t.Errorf("%s: no row %s", view, key)
				continue
			}
			label := figuresOf(find(li, view, classed("head"))[0], l, p.Sizes)
			foot := find(li, view, classed("count"))
			spaces := slices.ContainsFunc(counts, func(k plan.Count) bool { return k.Kind == plan.CountSpaces })
			var sums [][]int
			if len(counts) > 0 {
				if len(foot) != 1 {
					t.Errorf("%s: %s has no count", view, key)
					continue
				}
				sums = figuresOf(foot[0], l, p.Sizes)
			}
			for z := range p.Sizes {
				if first[z] == plan.Absent {
					continue
				}
				want := []int{first[z]}
				if last[z] != first[z] {
					want = append(want, last[z])
				}
				if got := label[z]; len(got) < len(want) || !slices.Equal(got[len(got)-len(want):], want) {
					t.Errorf("%s: %s in %s says rows %v, worked are %v", view, key, p.Sizes[z].Name, got, want)
				}
				n++
				if sums == nil {
					continue
				}
				fact, ok := report.FactOf(part, z, last[z])
				require.True(t, ok)
				sum, is := 0, fact.Stitches
				for _, x := range sums[z] {
					sum += x
				}
				if spaces {
					is += fact.Spaces
				}
				n++
				if sum != is {
					t.Errorf("%s: %s in %s counts %v, worked are %d", view, key, p.Sizes[z].Name, sums[z], is)
				}
			}
		}
	}
	return n + comparedTable(t, article, view, p, l)
}

// comparedTable holds the table of sizes against the plan.
func comparedTable(t *testing.T, article *html.Node, view string, p *plan.Pattern, l *words.Language) int {
	lines := map[string][]string{}
	for _, table := range find(article, view, classed("sizes")) {
		for _, tr := range find(table, view, tagged("tr")) {
			var cells []string
			for _, td := range find(tr, view, classed("n")) {
				if td.Data == "td" {
					cells = append(cells, seen(td.FirstChild))
				}
			}
			if th := find(tr, view, tagged("th")); len(th) == 1 && len(cells) == len(p.Sizes) && lines[seen(th[0])] == nil {
				lines[seen(th[0])] = cells
			}
		}
	}
	n := 0
	for _, m := range p.Measures {
		got := lines[l.MeasureName(m)]
		if len(got) != len(p.Sizes) {
			t.Errorf("%s: no line %s", view, l.MeasureName(m))
			continue
		}
		for z, v := range m.Values {
			n++
			if v == plan.NoLength {
				continue
			}
			cm, err := strconv.ParseFloat(strings.ReplaceAll(got[z], ",", "."), 64)
			if err != nil || cm-v.Cm() > 0.0501 || v.Cm()-cm > 0.0501 {
				t.Errorf("%s: %s in %s is %s, worked out %v", view, m.Name, p.Sizes[z].Name, got[z], v.Cm())
			}
		}
	}
	for _, y := range p.Yarns {
		if len(y.Amount) != len(p.Sizes) {
			continue
		}
		for z, cell := range lines[upperFirst(l.YarnName(y))] {
			want := y.Amount[z].Balls
			if n++; want > 0 && cell != strconv.Itoa(want) {
				t.Errorf("%s: %s in %s is %s balls, worked out %d", view, y.Name, p.Sizes[z].Name, cell, want)
			}
		}
	}
	return n
}

// TestASizeReadsAsItsOwnPage: what a reader of the whole page sees of a size is the page of the pattern in that size, but for the picture
// at its head, which is that of the size that the pattern shows.
func TestASizeReadsAsItsOwnPage(t *testing.T) {
	for _, name := range examples(t) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			p := example(t, name)
			all := find(read(t, written(t, p, Options{})), "", tagged("article"))
			for z := range p.Sizes {
				if len(p.Sizes) == 1 {
					break
				}
				alone := find(read(t, written(t, p.In(z), Options{})), "", tagged("article"))
				require.Len(t, all, len(alone))
				for k := range alone {
					want, got := outline(alone[k], "va"), outline(all[k], fmt.Sprint("v", z))
					require.Equal(t, want, got, p.Sizes[z].Name)
				}
			}
		})
	}
}

// outline is what a reader of a view sees: texts and drawings, one a line, without the picture at the head.
func outline(n *html.Node, view string) []string {
	var out []string
	for _, e := range find(n, view, func(e *html.Node) bool {
		return slices.Contains([]string{"h1", "h2", "h3", "h4", "p", "td", "th", "li", "svg", "dd", "dt"}, e.Data)
	}) {
		switch {
		case hasClass(e.Parent, "title"):
		case e.Data == "svg":
			label, _ := attr(e, "aria-label")
			out = append(out, "drawing: "+label)
		case e.Data != "li":
			out = append(out, e.Data+": "+textOf(e))
		default:
			k, _ := attr(e, "data-n")
			out = append(out, "row of "+k)
		}
	}
	return out
}

// TestFiguresAreThePlans: every view of the page of every example has the row numbers, counts, measures and balls that were worked out: all
// sizes together those of the pattern, a size alone those of the pattern in that size.
func TestFiguresAreThePlans(t *testing.T) {
	for _, name := range examples(t) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			p := example(t, name)
			doc := read(t, written(t, p, Options{}))
			pg := &page{all: p}
			for _, l := range speakers(t, "en", "es") {
				articles := find(doc, "", func(n *html.Node) bool { lang, _ := attr(n, "lang"); return n.Data == "article" && lang == l.Tag() })
				require.Len(t, articles, 1)
				patterns, names := pg.patterns()
				for i, view := range names {
					n := compared(t, articles[0], view, patterns[i], pg.stepNumbers(i-1), l)
					assert.GreaterOrEqual(t, n, 5, fmt.Sprint(view, " ", l.Tag()))
				}
			}
		})
	}
}
