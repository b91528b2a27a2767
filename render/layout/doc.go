// Package layout turns styled text and drawings into finished pages. It knows nothing of patterns, and nothing of PDF.
//
// In: rich text, scenes and measures in millimetres. Out: the page model of package page.
//
//	lines := layout.Break(text, layout.Style{Size: 11, Leading: 5}, 84, 0)
//	box := layout.Set(lines, style, 0, elem)
//	sheets := layout.Paginate([]layout.Strip{{Box: box}}, 240, 230)
//
// Three steps, each of which can be tested by itself: text to lines ([Break]), lines and drawings to boxes and strips
// ([Box], [Strip], [Facing]), strips to sheets ([Paginate]).
//
// Words are divided only where a soft hyphen says so, and where the style asks for it.
//
// What it deliberately does not do: justification, floats, footnotes. Lines are ragged, sheets may end short, and nothing is
// ever stretched to fill.
package layout
