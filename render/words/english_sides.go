package words

import (
	"strings"

	"ovillo/lang/lazy"
	"ovillo/render/rich"
)

func (e *english) sides(text string, k sideKind, of sideNouns) []sideWord {
	return englishSides(text, k, of)
}

// sided changes the sides in a text of the voice, for who works mirrored.
func (e *english) sided(text string) string {
	if !e.manner.Left {
		return text
	}
	return swapped(text, englishSides(text, sideLine, nil))
}

var (
	englishSide  = lazy.Regexp(`(?i)\b(?:left|right)\b`)
	englishFace  = lazy.Regexp(`(?i)^(?: sides?\b|-side)`)
	englishFaces = lazy.Regexp(`(?i)^(?:-side| sides? (?:rows?|rounds?|facing|out)\b)`)
	englishHand  = lazy.Regexp(`(?i)^-hand(?:ed|er)`)
	englishVerb  = lazy.Regexp(`(?i)\b(?:is|are|was|were|be|been|being|have|has|had|nothing|rest)\s+$`)
	englishPair  = lazy.Regexp(`(?i)^ (?:and|or) (?:left|right)\b`)
	englishOther = lazy.Regexp(`(?i)\b(?:left|right) (?:and|or) $`)
	englishLead  = lazy.Regexp(`(?i)\b(?:the|to|from|on|at|your|its|towards?|top|bottom|upper|lower)\s+$`)
	englishNext  = lazy.Regexp(`(?i)^(?:-hand)?[ \x{00a0}]([a-z]+)(?:[ \x{00a0}]([a-z]+))?`)

	englishBetween = nounList("front back lower upper inner outer other small large first second")
)

// englishSides finds left and right in a text, but for the right side of the fabric and for what is left over.
func englishSides(text string, k sideKind, of sideNouns) []sideWord {
	var out []sideWord
	for _, at := range englishSide().FindAllStringIndex(text, -1) {
		word, before, after := text[at[0]:at[1]], text[:at[0]], text[at[1]:]
		right := strings.EqualFold(word, "right")
		switch {
		case englishHand().MatchString(after):
			continue // of a person
		case right && k == sideName && englishFaces().MatchString(after), right && k != sideName && englishFace().MatchString(after):
			continue // the face of the fabric
		}
		other := "right"
		if right {
			other = "left"
		}
		w := sideWord{from: at[0], to: at[1], other: likeIt(other, word), sure: true}
		rest := after
		if pair := englishPair().FindString(after); pair != "" {
			rest = after[len(pair):]
		}
		next := englishNext().FindStringSubmatch(rest)
		if next != nil {
			w.noun = next[1]
		}
		if k == sideProse {
			has := func(word string) bool { return sided("en").has(word) || of.has(word) }
			w.sure = next != nil && !(englishVerb().MatchString(before) && !right) && (has(next[1]) || englishBetween.has(next[1]) && has(next[2]))
			switch {
			case w.sure:
			case englishPair().MatchString(after) || englishOther().MatchString(before):
				continue // both of them
			case !englishLead().MatchString(before):
				continue // what is left; right through
			}
		}
		out = append(out, w)
	}
	return out
}

func (e *english) quoted(text string) rich.Text { return fill("“{}”", text) }
