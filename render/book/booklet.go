package book

import (
	"ovillo/render/layout"
	"ovillo/render/page"
)

// A booklet is printed two pages on each side of a sheet, in the order in which they come to follow each other once the pile
// of sheets is folded in the middle: the last and the first outside, and so on inwards. That is how saddle-stitched booklets
// are made everywhere; the number of pages is a multiple of four, and the last of them may stay white.

// halves are the papers whose pages a booklet of a paper has.
var halves = map[Paper]Paper{A4: A5, Letter: HalfLetter}

// impose turns pages of half a sheet into the sides of a booklet, on the paper that they are halves of.
func impose(doc *page.Document, paper Paper) {
	h, w, _, _ := paper.Sheet() // the sheet lies on its long side
	n := (len(doc.Pages) + 3) / 4 * 4
	pages := doc.Pages
	moved := map[*page.Elem]bool{}
	side := make([]int, n)
	doc.Pages = nil
	for i := range n / 2 {
		left, right := n-1-i, i
		if i%2 == 1 {
			left, right = right, left
		}
		sheet := page.Page{W: w, H: h}
		for k, number := range []int{left, right} {
			side[number] = i
			if number >= len(pages) {
				continue
			}
			if sheet.Label != "" {
				sheet.Label += ", "
			}
			sheet.Label += pages[number].Label
			x := float64(k)*w/2 + (w/2-pages[number].W)/2
			sheet.Items = append(sheet.Items, page.Folio{Order: number + 1})
			for _, it := range pages[number].Items {
				sheet.Items = append(sheet.Items, layout.Shift(it, x, 0))
				moveFigure(it, x, moved)
			}
		}
		doc.Pages = append(doc.Pages, sheet)
	}
	for i := range doc.Outline {
		doc.Outline[i].Page = side[doc.Outline[i].Page]
	}
	for name, p := range doc.Places {
		p.Page = side[p.Page]
		doc.Places[name] = p
	}
	for i := range doc.Pages {
		for k, it := range doc.Pages[i].Items {
			if a, ok := it.(page.Anchor); ok && a.URI == "" {
				a.Page = side[a.Page]
				doc.Pages[i].Items[k] = a
			}
		}
	}
}

// moveFigure moves the box of the figure that an item belongs to, once.
func moveFigure(it page.Item, x float64, moved map[*page.Elem]bool) {
	var e *page.Elem
	switch it := it.(type) {
	case page.Path:
		e = it.Elem
	case page.Glyphs:
		e = it.Elem
	case page.Picture:
		e = it.Elem
	}
	if e == nil || e.Box == nil || moved[e] {
		return
	}
	moved[e] = true
	e.Box[0] += x
}
