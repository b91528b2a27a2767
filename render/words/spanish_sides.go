package words

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"ovillo/lang/lazy"
	"ovillo/render/rich"
)

func (s *spanish) sides(text string, k sideKind, of sideNouns) []sideWord {
	return spanishSides(text, k, of)
}

// sided changes the sides in a text of the voice, for who works mirrored.
func (s *spanish) sided(text string) string {
	if !s.manner.Left {
		return text
	}
	return swapped(text, spanishSides(text, sideLine, nil))
}

var (
	spanishSide    = lazy.Regexp(`(?i)(derech|izquierd)(os|as|o|a)`)
	spanishBefore  = lazy.Regexp(`([^\s\x{00a0}]+)[ \x{00a0}]$`)
	spanishArticle = nounList("el al del los un unos su sus")
	spanishLead    = nounList("la las a hacia lado lados mano")
)

// spanishSides finds derecho and izquierdo in a text in all their forms, but for the derecho of the fabric, which has an article.
func spanishSides(text string, k sideKind, of sideNouns) []sideWord {
	var out []sideWord
	var last *sideWord // the side named before
	for _, at := range spanishSide().FindAllStringSubmatchIndex(text, -1) {
		before, after := text[:at[0]], text[at[1]:]
		if a, _ := utf8.DecodeLastRuneInString(before); unicode.IsLetter(a) {
			continue
		}
		if z, _ := utf8.DecodeRuneInString(after); unicode.IsLetter(z) {
			continue
		}
		word, stem, ending := text[at[0]:at[1]], text[at[2]:at[3]], text[at[4]:at[5]]
		other := "derech"
		if strings.EqualFold(stem, "derech") {
			other = "izquierd"
		}
		w := sideWord{from: at[0], to: at[1], other: likeIt(other+strings.ToLower(ending), word), sure: true}
		if m := spanishBefore().FindStringSubmatch(before); m != nil {
			w.noun = m[1]
		}
		masculine := strings.ToLower(ending)[0] == 'o'
		joined := last != nil && joinsSides(text[last.to:at[0]])
		switch {
		case joined:
			w.sure, w.noun = last.sure, ""
		case masculine && spanishArticle[strings.ToLower(w.noun)]:
			continue // the face of the fabric
		case k == sideProse && (sided("es").has(w.noun) || of.has(w.noun)):
		case k == sideProse && !spanishLead[strings.ToLower(w.noun)]:
			continue // straight on; rights
		case k == sideProse:
			w.sure = false
		}
		if w.sure { // y and e follow the word behind them
			if c := andBefore(text, at[0], other); c != nil {
				out = append(out, *c)
			}
		}
		out = append(out, w)
		last = &w
	}
	return out
}

// joinsSides reports whether what stands between two sides joins them: y, e la.
func joinsSides(between string) bool {
	switch strings.TrimSpace(strings.ReplaceAll(between, tie, " ")) {
	case "y", "e", "o", "u", "y el", "y la", "y los", "y las", "o el", "o la", "y del", "y de la":
		return true
	}
	return false
}

// andBefore is the y or e straight before a side that is changed to another.
func andBefore(text string, at int, other string) *sideWord {
	for _, c := range []struct{ was, is, stem string }{{" e ", "y", "derech"}, {" y ", "e", "izquierd"}} {
		if strings.HasSuffix(text[:at], c.was) && other == c.stem {
			return &sideWord{from: at - 2, to: at - 1, other: c.is, sure: true}
		}
	}
	return nil
}

func (s *spanish) quoted(text string) rich.Text { return fill("«{}»", text) }
