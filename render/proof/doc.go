// Package proof holds finished pages against the laws of pages: what a reader would call a fault, whatever the pattern and
// whatever the edition.
//
// In: a document, and what was promised of it. Out: the faults, each with its page, its place, its words and its law.
//
//	faults := proof.Look(doc, proof.Promise{Block: proof.Rect{X: 15, Y: 21, W: 180, H: 249}})
//
// It looks at the page model alone, and shares no code with what made it but the measures of the faces. What only the
// written file can show, such as embedded faces, is for those who write files.
//
// What it deliberately does not do: it does not judge words, and it never mends.
package proof
