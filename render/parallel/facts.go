package parallel

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang/lazy"
	"ovillo/render/words"
)

// Reading is how a language writes what is compared.
type Reading struct {
	lang  string // the tag of its passages
	words []word // the longest first
	names []string
}

// ReadingOf is the reading of the pages of a pattern in a language.
func ReadingOf(l *words.Language, p *plan.Pattern) Reading {
	r := Reading{lang: l.Tag()}
	add := func(list []string) {
		for _, text := range list {
			r.words = append(r.words, word{strings.ToLower(plain(text)), len(r.names)})
		}
		r.names = append(r.names, list[0])
	}
	for _, list := range l.PlaceWords() {
		add(list)
	}
	for _, list := range l.StitchWords(p) {
		add(list)
	}
	slices.SortStableFunc(r.words, func(a, b word) int { return len(b.text) - len(a.text) })
	return r
}

// facts are what a passage must say alike in every language.
type facts struct {
	numbers  []string
	stitches []int
}

// of reads the facts of a passage; what is said of a picture stands in place of what is written in it. Lists of sizes are put between marks meanwhile.
func (r Reading) of(p Passage) facts {
	var b strings.Builder
	for _, run := range p.Runs {
		if run.List {
			b.WriteString("‹" + run.Text + "|" + run.Seen + "›")
			continue
		}
		b.WriteString(run.Text)
	}
	text := plain(b.String())
	if p.Alt != "" {
		text = plain(p.Alt)
	}
	return facts{numbers: numbersOf(text), stitches: r.stitchesOf(text)}
}

var (
	listMark = lazy.Regexp("‹[^›]*›")
	number   = lazy.Regexp(`\d+(?:[.,]\d+)?[½¼¾]?|[½¼¾]`)
	// What only one reading says: a length in inches or yards behind the metric one, the letter or number of a hook behind its
	// millimetres, what a weight of yarn is called.
	// And the numbers of pages are those of each document.
	besides = lazy.Regexp(`\b(?:page|página) \d+|\(\d+ ply\)|\([^()]*\b(?:in|yd|pulg)\.?\)|(\bc?m) (?:or|o) (?:‹[^›]*›|[\d½¼¾]+) ?(?:in|yd|pulg)\b|(\bmm) \([^()]*\)`)
)

// numberWords are the words for numbers that a sentence may hold in place of figures. One is left out: languages differ on when
// it is said.
var numberWords = map[string]string{
	"two": "2", "both": "2", "second": "2", "three": "3", "third": "3", "four": "4", "fourth": "4",
	"dos": "2", "ambos": "2", "ambas": "2", "segundo": "2", "segunda": "2", "tres": "3", "tercer": "3", "tercera": "3",
	"cuatro": "4", "cuarto": "4", "cuarta": "4",
}

// numbersOf lists the numbers of a text in order of their figures, a list of sizes as one: what is said and what is printed. A single 1 is left out: "sc in next st" is
// "1 pb en el siguiente p".
func numbersOf(text string) []string {
	var out []string
	rest := besides().ReplaceAllString(text, "$1$2")
	rest = listMark().ReplaceAllStringFunc(rest, func(list string) string {
		said, seen, _ := strings.Cut(list, "|")
		out = append(out, strings.Join(figures(said), " ")+" ("+strings.Join(figures(seen), " ")+")")
		return " "
	})
	for _, n := range figures(rest) {
		if n != "1" {
			out = append(out, n)
		}
	}
	for _, w := range strings.FieldsFunc(strings.ToLower(rest), func(r rune) bool { return !inWord(r) }) {
		if n := numberWords[w]; n != "" {
			out = append(out, n)
		}
	}
	slices.Sort(out)
	return out
}

// figures are the numbers in figures of a text, each with a decimal point.
func figures(text string) []string {
	var out []string
	for _, n := range number().FindAllString(text, -1) {
		out = append(out, strings.ReplaceAll(n, ",", "."))
	}
	return out
}
