package lang

import (
	"slices"
	"strings"
	"sync"

	"ovillo/lang/source"
)

// This file tells how a source could go on at a place, for those who write: the parsers of the statements are asked, so that what they
// read and what is offered are the same.

// WordsIn lists the words of the language in another one that sources may be written in, such as "es", one by one and as they are spelt there.
func WordsIn(code string) []string {
	seen := map[string]bool{}
	t := standardWords()[code]
	if t == nil {
		return nil
	}
	for _, list := range t.read {
		for _, w := range list {
			for _, word := range w.other {
				if wordEnd(word, 0) == len(word) {
					seen[word] = true
				}
			}
		}
	}
	for _, i := range idioms {
		if i.code == code {
			seen[i.head] = true
		}
	}
	var out []string
	for w := range seen {
		out = append(out, w)
	}
	slices.Sort(out)
	return out
}

// Beginning is a way to begin a statement.
type Beginning struct {
	Words string // what it begins with, in English: "stitch pattern"
	Right string // a right one
}

// Beginnings lists how statements of a block can begin with words of the language, in the order of the alphabet.
func Beginnings(in Block) []Beginning {
	var out []Beginning
	for words, f := range forms[in] {
		if words == anyName || words == anyNumber || strings.HasSuffix(words, anyNumber) {
			continue
		}
		out = append(out, Beginning{words, f.right})
	}
	slices.SortFunc(out, func(a, b Beginning) int { return strings.Compare(a.Words, b.Words) })
	return out
}

// Vocabulary lists the names that ovillo knows of a kind, in English: "kind", "fibre", "measure"; see words.csv for the kinds.
func Vocabulary(of string) []string {
	var out []string
	for english := range standardWords()[idioms[0].code].named[vocabulary(of)].other {
		out = append(out, english)
	}
	slices.Sort(out)
	return out
}

// Words lists the words of the language, in English, one by one.
var Words = sync.OnceValue(func() []string {
	seen := map[string]bool{}
	for w := range classes {
		seen[w] = true
	}
	for _, list := range standardWords()[idioms[0].code].write {
		for _, w := range list {
			for _, word := range w.english {
				if wordEnd(word, 0) == len(word) {
					seen[word] = true
				}
			}
		}
	}
	var out []string
	for w := range seen {
		out = append(out, w)
	}
	slices.Sort(out)
	return out
})

// Turns lists the turns of phrase that stand, in the language of the source, for some that begin with an English word: "vueltas cerradas"
// for joined rounds.
func (f *File) Turns(word string) []string {
	if f.tongue == nil {
		return nil
	}
	var out []string
	for _, w := range f.tongue.wordTable.write[word] {
		if len(w.english) > 1 {
			out = append(out, strings.Join(w.other, " "))
		}
	}
	return out
}

// Opening is a place at which something is being written: what stands before it in its statement.
type Opening struct {
	Block Block    // in which the statement stands
	Said  []string // the tokens of the statement before the place, in English; none: a statement begins here
	form  *form
	named *bool // see TakesName, once it was asked
}

// probe is a name that no source has.
const probe = "qzq"

// OpeningAt is the opening at a place of a text; a word that is half written there does not count.
func OpeningAt(text string, at int) Opening {
	f := source.NewFile("", text[:at]+probe)
	b := &blocks{file: f, spelt: &spelt{}, faults: faults{file: f, spelt: &spelt{}}}
	b.cut()
	b.stack = []*opened{{Statement: &Statement{Block: InFile}}}
	first, stack := 0, []Block(nil)
	for b.skipSilent(); b.i < len(b.tokens); b.skipSilent() {
		first, stack = b.i, nil
		for _, o := range b.stack {
			stack = append(stack, o.Block)
		}
		b.line()
	}
	out := Opening{Block: InFile}
	if len(stack) == 0 {
		return out
	}
	out.Block = stack[len(stack)-1]
	b.i, b.stack = first, nil
	for _, block := range slices.Backward(stack) {
		if out.form = b.find(block, first); out.form != nil {
			break
		}
	}
	if out.form == nil && out.Block == InPart {
		out.form = forms[InPart][anyNumber] // it may become so many rows
	}
	for _, t := range b.gather().tokens {
		if !t.Kind.silent() {
			out.Said = append(out.Said, b.text(t))
		}
	}
	out.Said = out.Said[:max(len(out.Said)-1, 0)] // without the probe
	if len(out.Said) > 0 && out.Said[0] == "end" {
		out.form = endForm
	}
	return out
}

// GoesOn reports whether the statement can go on with a text, whatever comes behind it.
func (o *Opening) GoesOn(with string) bool {
	// A word may be known only by what stands behind it: right edge of …, rows( … ).
	return slices.ContainsFunc([]string{"", " of " + probe, "("}, func(behind string) bool { return o.reads(with + behind) })
}

func (o *Opening) reads(with string) bool {
	if o.form == nil || len(o.Said) == 0 {
		return false
	}
	text := strings.Join(o.Said, " ") + " " + with
	_, err := o.form.read((&feed{text: text, tokens: Tokens(text), spelt: &spelt{}, end: len(text)}).upgrade())
	return err == nil || slipOf(err).token.Pos.Offset >= len(text)
}

// TakesName reports whether the statement can go on with a name.
func (o *Opening) TakesName() bool {
	if o.named == nil {
		takes := o.reads(probe)
		o.named = &takes
	}
	return *o.named
}

// besideNames are words that are not reserved and stand where names stand as well, by the word before them.
var besideNames = map[string][]string{
	"in": {"first", "last"}, "each": {"left", "gap"}, "next": {"gap", "gaps", "left"}, "to": {"first", "middle", "last"},
	"along": {"right", "left"}, "from": {"right", "left"}, "sew": {"right", "left"},
}

// Offers reports whether a word of the language can stand next, as that word and not as a name.
func (o *Opening) Offers(word string) bool {
	if !o.GoesOn(word) {
		return false
	}
	if Reserved(word) || !o.TakesName() || slices.Contains(besideNames[o.Before(1)], word) {
		return true
	}
	return slices.ContainsFunc([]string{" of " + probe, " " + probe + " edge of " + probe}, func(behind string) bool {
		return o.reads(word+behind) && !o.reads(probe+behind) // height of body, along left edge of body
	})
}

// Before is the n-th token before the opening, from 1; "" if there are not so many.
func (o *Opening) Before(n int) string {
	if n > len(o.Said) {
		return ""
	}
	return o.Said[len(o.Said)-n]
}
