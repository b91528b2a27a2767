package pdf

import (
	"io"
	"strings"
	"testing"

	"ovillo/render/page"
)

// A paragraph goes on from page 2 to page 3. The pages are drawn in the order of a booklet of four: the outer side of the
// sheet with pages 4 and 1, the inner with 2 and 3.
func TestPagesAreReadByTheirOrder(t *testing.T) {
	for name, booklet := range map[string]func(on func(n int) []page.Item) []page.Page{
		"two pages a sheet": func(on func(n int) []page.Item) []page.Page {
			side := func(left, right int) page.Page {
				items := append([]page.Item{page.Folio{Order: left}}, on(left)...)
				items = append(append(items, page.Folio{Order: right}), on(right)...)
				return page.Page{W: 297, H: 210, Items: items}
			}
			return []page.Page{side(4, 1), side(2, 3)}
		},
		"sheets in another order": func(on func(n int) []page.Item) []page.Page {
			var pages []page.Page
			for _, n := range []int{4, 1, 3, 2} {
				pages = append(pages, page.Page{W: 148, H: 210, Order: n, Items: on(n)})
			}
			return pages
		},
	} {
		t.Run(name, func(t *testing.T) {
			root := &page.Elem{Tag: "Document"}
			p := root.New("P")
			at := 20.0
			text := map[int]string{1: "Join the yarn", 2: "and work one round", 3: "of single crochet", 4: "to the end."}
			d := &page.Document{Root: root, Pages: booklet(func(n int) []page.Item {
				at += 5
				return []page.Item{page.Glyphs{X: 20, Base: at, Size: 11, Text: text[n], Elem: p}}
			})}
			got := strings.Join(readAloud(t, written(t, d, Options{})), "")
			if want := "Join the yarn and work one round of single crochet to the end."; got != want {
				t.Errorf("it reads %q, want %q", got, want)
			}
		})
	}
}

func TestLinksToPlacesByName(t *testing.T) {
	root := &page.Elem{Tag: "Document"}
	link := root.New("P").New("Link")
	d := &page.Document{
		Root: root, Places: map[string]page.Place{"abbreviation-dc": {Page: 1, Y: 40}},
		Pages: []page.Page{{W: 210, H: 297, Items: []page.Item{
			page.Glyphs{X: 20, Base: 30, Size: 11, Text: "dc", Elem: link},
			page.Anchor{X: 20, Y: 26, W: 10, H: 5, URI: "#abbreviation-dc", Label: "double crochet", Elem: link},
		}}, {W: 210, H: 297}},
	}
	if got := open(t, written(t, d, Options{})).linkAt(0, 22, 28); got != "1" {
		t.Errorf("the link leads to %s, want page 1", got)
	}
	for _, c := range []struct {
		places map[string]page.Place
		want   string
	}{
		{nil, `leads to "abbreviation-dc", which is no place of the document`},
		{map[string]page.Place{"abbreviation-dc": {Page: 2}}, `the place "abbreviation-dc": there is no page 3`},
	} {
		d.Places = c.places
		if err := Write(io.Discard, d, Options{}); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("error %v, want %q", err, c.want)
		}
	}
}
