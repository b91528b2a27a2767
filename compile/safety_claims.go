package compile

import (
	"slices"
	"strings"
	"sync"

	"ovillo/compile/caution"
	"ovillo/lang"
	"ovillo/lang/lazy"
)

// This file reads the designer's texts for what they offer and claim: that a thing is for sleep, that it is safe, that it is no toy.
// It goes sentence by sentence, since a “not” belongs to its sentence.

// sayings are all texts of the source: titles, blocks of prose and the texts of notions, in every language.
func (c *checker) sayings() []*written {
	var out []*written
	var look func(body []*lang.Statement)
	quoted := func(list []*lang.Bi) {
		for _, b := range list {
			out = append(out, inQuotes(&b.Text))
		}
	}
	look = func(body []*lang.Statement) {
		for _, s := range body {
			switch n := s.Node.(type) {
			case *lang.Title:
				quoted(n.Text)
			case *lang.Notion:
				quoted(n.Text)
			case *lang.Prose:
				out = append(out, proseOf(s.Lines)...)
			}
			look(s.Body)
		}
	}
	look(c.file.Body)
	return out
}

// proseOf are the lines of a block of prose, language by language.
func proseOf(lines []lang.RawLine) []*written {
	var out []*written
	of := map[string]int{}
	last := ""
	for _, l := range lines {
		if l.Head != "" {
			last = l.Head
		}
		i, known := of[last]
		if !known {
			i = len(out)
			of[last], out = i, append(out, &written{})
		}
		out[i].add(l)
	}
	return out
}

// claimWords are the words of the claims, with those that are set aside and those that turn a claim round.
var claimWords = sync.OnceValue(func() map[string][]wordRow {
	out := map[string][]wordRow{}
	for _, r := range wordList("claims.csv") {
		out[r.is["claim"]] = append(out[r.is["claim"]], r)
	}
	return out
})

var (
	sentenceEnd = lazy.Regexp(`[.!?…]+(?:[\s*_"”»)]|$)|\n\s*\n|\n\s*(?:[-*#]|\d+\.)\s|[;:]`)
	// A “not” holds to the end of its sentence, or to a word that begins another thought.
	otherThought = lazy.Regexp(`(?i)[,(]?` + noLetter + `(?:but|so|yet|however|pero|sino|así que|por eso)` + noLetter +
		`|,\s*(?:(?:and|y|e)\s+)?(?:it|this|they|these|es|son|está|están|esta|este)` + noLetter)
	// In a list a “not” goes on behind a comma: not for naps, cots or prams.
	listed = lazy.Regexp(`(?i)` + noLetter + `(?:or|nor|ni|o|u)` + noLetter)
)

// claimed looks for a claim in the texts: true with its place, or false, since the texts are known.
func (c *checker) claimed(claim string) caution.Said {
	for _, s := range c.sayings() {
		if from, to, ok := c.room.claim(claim, s.text); ok {
			return caution.Said{Is: caution.True, At: s.at(from, to)}
		}
	}
	return caution.Said{Is: caution.False}
}

// claimsIn finds a claim in a text, from and to.
func claimsIn(claim, text string) (from, to int, ok bool) {
	if t := folded(text); !mayFind(claimWords()[claim], t) && !mayFind(claimWords()[claim+"+"], t) {
		return 0, 0, false
	}
	ends := append(sentenceEnd().FindAllStringIndex(text, -1), []int{len(text), len(text)})
	begin := 0
	for _, e := range ends {
		if at, to, ok := claimIn(claim, text[begin:e[0]]); ok {
			return begin + at, begin + to, true
		}
		begin = e[1]
	}
	return 0, 0, false
}

// claimIn finds a claim in a sentence, from and to.
func claimIn(claim, sentence string) (from, to int, ok bool) {
	said := func(r wordRow) bool { _, _, ok := r.find(sentence); return ok }
	if !slices.ContainsFunc(claimWords()[claim], said) && !slices.ContainsFunc(claimWords()[claim+"+"], said) {
		return 0, 0, false // of most sentences nothing more need be asked
	}
	for _, r := range claimWords()["aside"] {
		sentence = blanked(sentence, r)
	}
	for _, r := range claimWords()[claim+"+"] { // these have their “not” in them
		if from, to, ok := r.find(sentence); ok && !denied(claim, sentence[:from]) {
			return from, to, true
		}
		sentence = blanked(sentence, r)
	}
	for _, r := range claimWords()[claim] {
		for rest, done := sentence, 0; ; {
			from, to, found := r.find(rest)
			if !found {
				break
			}
			if claim == "adult" || !denied(claim, sentence[:done+from]) && !(claim == "sleep" && turned(rest[to:])) {
				return done + from, done + to, true
			}
			rest, done = rest[to:], done+to
		}
	}
	return 0, 0, false
}

// blanked puts blanks in place of words, so that places stay.
func blanked(text string, r wordRow) string {
	for {
		from, to, ok := r.find(text)
		if !ok {
			return text
		}
		text = text[:from] + strings.Repeat(" ", to-from) + text[to:]
	}
}

// denied reports whether what stands before a claim in its sentence turns it round.
func denied(claim, before string) bool {
	if m := otherThought().FindAllStringIndex(before+" ", -1); m != nil {
		before = before[min(m[len(m)-1][1], len(before)):]
	}
	if i := strings.LastIndex(before, ","); claim == "safety" && i >= 0 && !listed().MatchString(before[i:]+" ") {
		before = before[i:] // no small parts, safe for babies
	}
	return slices.ContainsFunc(claimWords()["not"], func(r wordRow) bool { _, _, ok := r.find(before); return ok })
}

// nextThought is where what is said of a claim ends.
var nextThought = lazy.Regexp(`(?i)[,(]|` + noLetter + `(?:and|but|so|y|e|pero|sino)` + noLetter)

// turned reports whether what stands behind words such as “in the cot” turns them round: in the cot it must never lie.
func turned(behind string) bool {
	if m := nextThought().FindStringIndex(behind); m != nil {
		behind = behind[:m[0]]
	}
	_, _, ok := claimWords()["not"][0].find(behind)
	return ok
}
