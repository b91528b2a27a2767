package book

import "ovillo/render/page"

// prune takes out of the structure tree what was made for a text that turned out empty. Cells stay, since a row of a
// table needs all of them.
func prune(root *page.Elem, pages []page.Page) {
	used := map[*page.Elem]bool{}
	for _, p := range pages {
		for _, it := range p.Items {
			switch it := it.(type) {
			case page.Glyphs:
				used[it.Elem] = true
			case page.Path:
				used[it.Elem] = true
			case page.Picture:
				used[it.Elem] = true
			case page.Anchor:
				used[it.Elem] = true
			}
		}
	}
	keep(root, used)
}

// keep drops the children that hold nothing, and reports whether the element itself holds something.
func keep(e *page.Elem, used map[*page.Elem]bool) bool {
	var kids []*page.Elem
	holds := used[e]
	for _, k := range e.Kids {
		if full := keep(k, used); full || k.Tag == "TD" || k.Tag == "TH" {
			kids = append(kids, k)
			holds = holds || full
		}
	}
	e.Kids = kids
	return holds
}
