package font

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"

	"ovillo/render/page"
)

// Compose joins letters and the accents that follow them ("e" + U+0301) into the one glyph that draws both. Width,
// Missing and the writer compose for themselves; compose first where the places of single runes matter.
func Compose(s string) string {
	if norm.NFC.IsNormalString(s) {
		return s
	}
	return norm.NFC.String(s)
}

// Missing lists the runes of a text that the face cannot draw, each once, in order of appearance; nil is the usual
// answer. Bytes that are not UTF-8 are listed as U+FFFD. Accents that do not compose with their letter are missing,
// for want of a glyph that places them, and so is all beyond U+FFFF, which the writer cannot embed.
func (f *Face) Missing(s string) []rune {
	var missing []rune
	s = Compose(s)
	for i, r := range s {
		if f.draws(r, s[i:]) || slices.Contains(missing, r) {
			continue
		}
		missing = append(missing, r)
	}
	return missing
}

// Named makes a text fit to be set: signs that one of the faces of a document does not have are named by their numbers,
// [U+2603]. Line ends stay. It is for what comes from outside and is only told of, such as the names of files.
func Named(text string) string {
	missing := map[rune]bool{}
	for _, f := range []page.Face{page.Sans, page.SansBold, page.Serif, page.SerifBold} {
		for _, r := range Of(f).Missing(strings.ReplaceAll(text, "\n", "")) {
			missing[r] = true
		}
	}
	if len(missing) == 0 {
		return text
	}
	var b strings.Builder
	for _, r := range Compose(text) {
		if missing[r] {
			fmt.Fprintf(&b, "[U+%04X]", r)
			continue
		}
		b.WriteRune(r)
	}
	return b.String()
}

// draws says whether the rune at the start of rest has a glyph of its own.
func (f *Face) draws(r rune, rest string) bool {
	if r == utf8.RuneError {
		if _, size := utf8.DecodeRuneInString(rest); size <= 1 {
			return false
		}
	}
	if r > 0xFFFF || unicode.Is(unicode.Mn, r) {
		return false
	}
	g, _ := f.glyph(r)
	return g != 0
}
