package parallel

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"ovillo/lang/lazy"
)

// word is a word for a stitch, or for what stitches are worked into.
type word struct {
	text string
	at   int // the stitch, among those of its reading
}

// What stitches are worked into comes first among the words of a reading.
const (
	chain = iota
	place
	space
)

// ofSpace is what stands between the two words for a chain space: ch-2 sp, 2-ch sp, sp of 2 ch, esp de 2 cad.
var ofSpace = lazy.Regexp(`^(?:| |-\d+ | (?:of|de) (?:\d+ )?)$`)

// withoutChain stands before a chain that is none: a foundation stitch is "sin cadena base".
const withoutChain = "sin "

// stitchesOf lists the stitches that a text names, in its order, with the chains and the chain spaces. What is called just a
// stitch is left out: languages differ on where it goes without saying.
func (r Reading) stitchesOf(text string) []int {
	text = strings.ToLower(text)
	var out []int
	was, end := -1, 0 // the word before and where it ends
	for i := 0; i < len(text); {
		w, ok := r.wordAt(text, i)
		if !ok {
			_, size := utf8.DecodeRuneInString(text[i:])
			i += size
			continue
		}
		one := was >= 0 && was != w.at && was+w.at == chain+space && ofSpace().MatchString(text[end:i])
		switch {
		case one:
			out[len(out)-1] = space
		case w.at == place, w.at == chain && strings.HasSuffix(text[:i], withoutChain):
		default:
			out = append(out, w.at)
		}
		i += len(w.text)
		was, end = w.at, i
	}
	return out
}

// wordAt finds the longest word of the reading that stands at a place of a text, and is a word there.
func (r Reading) wordAt(text string, i int) (word, bool) {
	if before, _ := utf8.DecodeLastRuneInString(text[:i]); inWord(before) {
		return word{}, false
	}
	for _, w := range r.words {
		if !strings.HasPrefix(text[i:], w.text) {
			continue
		}
		if after, _ := utf8.DecodeRuneInString(text[i+len(w.text):]); !inWord(after) {
			return w, true
		}
	}
	return word{}, false
}

func inWord(r rune) bool {
	return unicode.IsLetter(r) || unicode.IsDigit(r) || r == 'ª' || r == 'º'
}

// named gives stitches by their abbreviation.
func (r Reading) named(stitches []int) []string {
	var out []string
	for _, s := range stitches {
		out = append(out, r.names[s])
	}
	return out
}
