package lang

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"ovillo/lang/source"
)

// A source that is not in English is read as English: its tokens are given the English words they stand for, each with its
// own place in the source. Nothing behind this file knows of other languages, but for names: a name is what the source
// says, whatever it would be as a word of the language (see names.go).

// spelt is the tokens of a source as the parser reads them.
type spelt struct {
	tongue *tongue // nil: English
	tokens []Token
	// english is what tokens are read as, where that is not what they say. The last word of a turn of phrase that is longer
	// in English is shared out letter by letter, since no two tokens may stand at one place.
	english map[source.Span]string
	// single holds the tokens that are one word in both languages, which may be names.
	single map[source.Span]bool
	// ends is where a turn of phrase ends, by where it begins.
	ends map[int32]int32
	// foreign are English words of the language in a source that is not English.
	foreign []Token
}

// text is what a token is read as.
func (s *spelt) text(t Token, source string) string {
	if s != nil && s.english != nil {
		if w, ok := s.english[t.Span]; ok {
			return w
		}
	}
	return t.Text(source)
}

// shown is a token as the source has it, for messages; of a turn of phrase, the English word that it stands for.
func (s *spelt) shown(t Token, source string) string {
	if s.single[t.Span] {
		return t.Text(source)
	}
	return s.text(t, source)
}

// near returns which of some English words may have been meant by a word of the source. See [Near].
func (s *spelt) near(word string, known []string) []string {
	if s == nil || s.tongue == nil {
		return Near(word, known)
	}
	english := map[string]string{}
	var here []string
	for _, k := range known {
		w := s.tongue.code(k)
		here = append(here, w)
		english[w] = k
	}
	near := Near(word, here)
	for i, w := range near {
		near[i] = english[w]
	}
	return near
}

// respeller walks over the tokens of a source.
type respeller struct {
	*tongue
	source string
	tokens []Token
	i      int
	first  bool   // nothing was read on the line yet
	codes  bool   // the line lists codes of languages
	behind string // what the token before this one on the line is, as plain spells it; "^" at its beginning
	out    spelt
}

// respell reads the tokens of a source in another language as English.
func (t *tongue) respell(text string, tokens []Token) *spelt {
	r := &respeller{tongue: t, source: text, tokens: tokens, behind: "^", first: true,
		out: spelt{tongue: t, tokens: make([]Token, 0, len(tokens)), english: map[source.Span]string{}, single: map[source.Span]bool{}, ends: map[int32]int32{}}}
	for r.i < len(tokens) {
		r.next()
	}
	return &r.out
}

// next reads what begins with the next token.
func (r *respeller) next() {
	t := r.tokens[r.i]
	switch {
	case t.Kind == LineEnd:
		r.keep(1)
		r.behind, r.first, r.codes = "^", true, false
		return
	case t.Kind.silent():
		r.keep(1)
		return
	case t.Kind == Word && (r.codes || r.verbatim()), t.Kind != Word && t.Kind != Stray:
		r.read(1)
		return
	}
	if english, n := r.phrase(); n > 0 {
		r.codes = r.first && english[0] == "languages"
		r.say(english, n)
		return
	}
	if english, n := r.stitches.stitch(r.word); n > 0 {
		r.say(strings.Fields(english), n)
		return
	}
	if t.Kind == Word && !r.first && slices.Contains(r.also, plain(t.Text(r.source))) && r.wordAhead() {
		t.Kind = Blank
		r.out.tokens = append(r.out.tokens, t)
		r.i++
		return
	}
	if w := t.Text(r.source); t.Kind == Word && r.behind != "." && (Reserved(w) || r.first && classes[w]&(lineWord|proseWord) != 0) {
		r.out.foreign = append(r.out.foreign, t)
	}
	r.read(1)
}

// keep hands tokens on as they are.
func (r *respeller) keep(n int) {
	r.out.tokens = append(r.out.tokens, r.tokens[r.i:r.i+n]...)
	r.i += n
}

// read hands a token on that says something.
func (r *respeller) read(n int) {
	r.first, r.behind = false, plain(r.tokens[r.i+n-1].Text(r.source))
	r.keep(n)
}

// verbatim reports whether a word is no word of the language where it stands: the code of a language before a text or a bar,
// and a name inside something else.
func (r *respeller) verbatim() bool {
	j := r.saying(1)
	if j < 0 {
		return false
	}
	switch next := r.tokens[j]; {
	case next.Kind == Quoted:
		return len(r.tokens[r.i].Text(r.source)) == 2 && !r.first
	case next.Kind == Sign && next.Text(r.source) == "|":
		return true
	}
	return false
}

// saying is the index of the nth token behind the current one, on its line, that says something; -1 if there is none.
func (r *respeller) saying(n int) int {
	for j := r.i + 1; j < len(r.tokens) && r.tokens[j].Kind != LineEnd; j++ {
		if r.tokens[j].Kind.silent() {
			continue
		}
		if n--; n == 0 {
			return j
		}
	}
	return -1
}

// word is the nth token of the line from the current one on, "" behind the last.
func (r *respeller) word(n int) string {
	if n == 0 {
		return r.tokens[r.i].Text(r.source)
	}
	if j := r.saying(n); j >= 0 {
		return r.tokens[j].Text(r.source)
	}
	return ""
}

// wordAhead reports whether a word or a number follows on the line.
func (r *respeller) wordAhead() bool {
	j := r.saying(1)
	return j >= 0 && (r.tokens[j].Kind == Word || r.tokens[j].Kind == Number)
}

// phrase finds the longest turn of phrase that begins here: its English words, and how many words of the source it is.
func (r *respeller) phrase() ([]string, int) {
	first := plain(r.word(0))
	if r.word(1) == "(" {
		if f, ok := r.named[functions].english[first]; ok {
			return []string{f}, 1
		}
	}
	for _, w := range r.wordTable.read[first] {
		if w.behind != nil && !r.isBehind(w.behind) {
			continue
		}
		if matches(w.other[1:], r.word) {
			return w.english, len(w.other)
		}
	}
	if u, ok := r.named[units].english[first]; ok && r.afterNumber() {
		return []string{u}, 1
	}
	return nil, 0
}

// isBehind reports whether the token before this one is one of those that a translation must stand behind: a word or a sign, 0
// for a number, a quotation mark for a text.
func (r *respeller) isBehind(what []string) bool {
	return slices.Contains(what, r.behind) || slices.Contains(what, "0") && r.afterNumber() ||
		slices.Contains(what, `"`) && strings.HasPrefix(r.behind, `"`)
}

// afterNumber reports whether the last token that says something is a number or closes a list of them.
func (r *respeller) afterNumber() bool {
	return r.behind == ")" || r.behind != "" && r.behind[0] >= '0' && r.behind[0] <= '9'
}

// say gives n words of the source the English words they stand for.
func (r *respeller) say(english []string, n int) {
	var spans []source.Span
	var between [][]Token // what stands before each word but the first
	for k := range n {
		j := r.i
		if k > 0 {
			j = r.saying(k)
			from := r.i + 1
			if k > 1 {
				from = r.saying(k-1) + 1
			}
			between = append(between, r.tokens[from:j])
		}
		spans = append(spans, r.tokens[j].Span)
	}
	last := spans[n-1]
	r.out.ends[spans[0].Start] = last.End
	more := int32(max(len(english)-n, 0)) // words that share the last one
	for k, w := range english {
		at := last
		switch {
		case k >= n:
			at.Start = last.End - more + int32(k-n)
			at.End = at.Start + 1
		case k == n-1:
			at.End -= more
		case k == len(english)-1:
			at = source.Span{Start: spans[k].Start, End: last.End}
		default:
			at = spans[k]
		}
		if k > 0 && k < n {
			r.out.tokens = append(r.out.tokens, between[k-1]...)
		}
		kind := Word
		if c, _ := utf8.DecodeRuneInString(w); !unicode.IsLetter(c) {
			kind = Sign
		}
		r.out.tokens = append(r.out.tokens, Token{kind, at})
		r.out.english[at] = w
	}
	if n == 1 && len(english) == 1 {
		r.out.single[last] = true
	}
	j := r.i
	if n > 1 {
		j = r.saying(n - 1)
	}
	r.first, r.behind = false, plain(r.tokens[j].Text(r.source))
	r.i = j + 1
}
