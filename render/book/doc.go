// Package book sets a checked pattern as a printed document: it decides what stands where on the pages.
//
// In: a pattern, one or two languages, a paper. Out: the page model, ready for the PDF writer.
//
//	doc, err := book.Compose(p, book.Options{Langs: []*words.Language{words.For("en"), words.For("es")}})
//
// With two languages every page has two columns and an axis between them. What belongs to both, such as tick boxes, the
// drawing of the piece or the numbers to cross off, stands on the axis or symmetrically about it; the same row stands at
// the same height on both sides. With one language the axis moves to the left edge.
//
// What it deliberately does not do: it makes no sentences (package words does), draws no pieces (package draw does) and
// counts no stitches (the compiler did).
package book
