package book

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/render/page"
)

// The sides of booklets of 4, 8, 12 and 16 pages, left page and right page, as saddle-stitched booklets are imposed
// everywhere: folded and put into each other, the pages follow in order. Common practice, no source.
var bookletSides = map[int][][2]int{
	4:  {{4, 1}, {2, 3}},
	8:  {{8, 1}, {2, 7}, {6, 3}, {4, 5}},
	12: {{12, 1}, {2, 11}, {10, 3}, {4, 9}, {8, 5}, {6, 7}},
	16: {{16, 1}, {2, 15}, {14, 3}, {4, 13}, {12, 5}, {6, 11}, {10, 7}, {8, 9}},
}

// halfPages is a document of so many pages of half a sheet, each with its number, a figure, a bookmark, a named place and a
// link to every other page.
func halfPages(paper Paper, n int) *page.Document {
	w, h, _, _ := halves[paper].Sheet()
	doc := &page.Document{Root: &page.Elem{Tag: "Document"}, Places: map[string]page.Place{}}
	for i := range n {
		figure := doc.Root.New("Figure")
		figure.Box = &[4]float64{10, 50, 5, 5}
		p := page.Page{W: w, H: h, Label: fmt.Sprint(i + 1), Items: []page.Item{
			page.Glyphs{X: 10, Base: 20, Size: 10, Text: fmt.Sprint(i + 1)},
			page.Path{Cmds: []page.Cmd{{Op: 'M', P: [3]page.Point{{X: 10, Y: 50}}}, {Op: 'L', P: [3]page.Point{{X: 15, Y: 55}}}}, Elem: figure},
		}}
		for k := range n {
			p.Items = append(p.Items, page.Anchor{X: w - 12, Y: float64(k), W: 10, H: 1, Page: k})
		}
		doc.Pages = append(doc.Pages, p)
		doc.Outline = append(doc.Outline, page.Outline{Title: fmt.Sprint(i + 1), Page: i})
		doc.Places[fmt.Sprint(i+1)] = page.Place{Page: i}
	}
	return doc
}

// TestImpose: every page is there once, on the half where folding brings it in order, and all that leads to it leads to its
// side of a sheet.
func TestImpose(t *testing.T) {
	for _, paper := range []Paper{A4, Letter} {
		for _, n := range []int{1, 2, 3, 4, 5, 6, 7, 8, 9, 16} {
			t.Run(fmt.Sprint(paper, " ", n), func(t *testing.T) {
				doc := halfPages(paper, n)
				halfW := doc.Pages[0].W
				impose(doc, paper)
				want := bookletSides[(n+3)/4*4]
				require.Len(t, doc.Pages, len(want))
				sideOf := map[int]int{}
				for side, pair := range want {
					for _, number := range pair {
						sideOf[number] = side
					}
				}
				high, wide, _, _ := paper.Sheet()
				seen := map[int]bool{}
				for side, sheet := range doc.Pages {
					require.Equal(t, [2]float64{wide, high}, [2]float64{sheet.W, sheet.H})
					left := 0.0 // of the half at hand
					number := 0
					for _, it := range sheet.Items {
						switch it := it.(type) {
						case page.Folio:
							number = it.Order
							require.Contains(t, want[side][:], number)
							require.False(t, seen[number], "page %d twice", number)
							seen[number] = true
							left = 0
							if want[side][1] == number {
								left = wide / 2
							}
							figure := doc.Root.Kids[number-1].Box
							require.InDelta(t, left+(wide/2-halfW)/2+10, figure[0], 1e-9)
						case page.Glyphs:
							require.Equal(t, fmt.Sprint(number), it.Text)
							require.InDelta(t, left+(wide/2-halfW)/2+10, it.X, 1e-9)
						case page.Anchor:
							require.GreaterOrEqual(t, it.X, left)
							require.LessOrEqual(t, it.X+it.W, left+wide/2)
							require.Equal(t, sideOf[int(it.Y)+1], it.Page)
						}
					}
				}
				require.Len(t, seen, n)
				for i := range n {
					require.Equal(t, sideOf[i+1], doc.Places[fmt.Sprint(i+1)].Page)
					require.Equal(t, sideOf[i+1], doc.Outline[i].Page)
				}
			})
		}
	}
}
