// Package font holds the embedded faces and measures text in them. It knows nothing of PDF.
//
// In: a face and a text. Out: widths and heights in millimetres, kerning, and the runes that the face cannot draw.
//
//	f := font.Of(page.Sans)
//	w := f.Width("12 puntos", 11)
//	base := top + f.Baseline(11, 5)
//
// The faces are unmodified files under the SIL Open Font License; the licences lie beside them in files/.
//
// What it deliberately does not do: ligatures (copied text and screen readers suffer from them), hyphenation, scripts
// that need shaping. A text is one glyph a rune, after composing accents (see [Compose]).
package font
