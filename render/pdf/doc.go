// Package pdf writes finished pages as a PDF: tagged, in one or several languages, with the fonts inside.
//
// In: a [page.Document]. Out: the bytes of the file, the same for the same document on every machine.
//
//	var b bytes.Buffer
//	err := pdf.Write(&b, document, pdf.Options{})
//
// The package fpdf is the shell: it makes the objects of the pages. What is drawn, the content streams, is ours, because
// fpdf knows neither kerning nor marked content, and so are the fonts, which it would take longer to cut than all the rest.
// A second pass over the objects adds the fonts, pictures, structure tree, links, outline, labels, metadata, output intent and attachment.
//
// What it deliberately does not do: lay anything out. It moves nothing and breaks no line; a text it cannot draw is an
// error, never an empty box on paper.
package pdf
