package compile

import (
	"slices"
	"strings"
	"sync"
	"unicode/utf8"

	"ovillo/compile/stitch"
	"ovillo/lang/diag"
	"ovillo/lang/lazy"
	"ovillo/lang/source"
	"ovillo/lang/terms"
)

// This file knows the names that stitches have in each reading of a language, so that a name that a sentence took from another
// country can be told from one of the reading that the source is written in.

// proseName is a name of a stitch in a language: all the readings that use it, and the stitches it means there.
type proseName struct {
	words   []string // in small letters
	short   bool     // it is an abbreviation
	meaning map[string]stitch.ID
}

// proseNames are the names of a language by their first word, those of more words first.
type proseNames map[string][]*proseName

var namesIn = map[string]func() proseNames{
	"en": sync.OnceValue(func() proseNames { return readNames("en") }),
	"es": sync.OnceValue(func() proseNames { return readNames("es") }),
}

// readNames gathers the names of the stitches that are worked one by one. Chains are left out: cadena and cadeneta are taken for one
// another everywhere.
func readNames(code string) proseNames {
	all := map[string]*proseName{}
	table := terms.Standard()
	for _, tag := range table.Tags() {
		r, _ := table.Reading(tag)
		if r.Code() != code {
			continue
		}
		for _, k := range stitch.Table {
			if k.ID == stitch.Chain || !r.Has(string(k.ID)) {
				continue
			}
			t := r.Term(string(k.ID))
			for i, name := range []string{t.One, t.Many, t.Short, t.Shorts} {
				n := all[name]
				if n == nil {
					n = &proseName{words: strings.Fields(strings.ToLower(name)), short: i > 1, meaning: map[string]stitch.ID{}}
					all[name] = n
				}
				if _, ok := n.meaning[tag]; !ok {
					n.meaning[tag] = k.ID
				}
			}
		}
	}
	names := proseNames{}
	for _, n := range all {
		names[n.words[0]] = append(names[n.words[0]], n)
	}
	for _, list := range names {
		slices.SortFunc(list, func(a, b *proseName) int {
			if d := len(b.words) - len(a.words); d != 0 {
				return d
			}
			return strings.Compare(strings.Join(a.words, " "), strings.Join(b.words, " "))
		})
	}
	return names
}

// foundName is a name in a sentence.
type foundName struct {
	*proseName
	from, to int
}

var (
	nameWord = lazy.Regexp(`[\pL\pN]+`)
	drawn    = lazy.Regexp(`^[0-9]+(\pL+)jun$`) // 2pajun
)

// find looks for names in a line. A longer one hides those within it: media vareta is no vareta.
func (names proseNames) find(line string) []foundName {
	var out []foundName
	all := nameWord().FindAllStringIndex(line, -1)
	word := func(i int) string {
		w := line[all[i][0]:all[i][1]]
		if m := drawn().FindStringSubmatch(w); m != nil {
			return m[1]
		}
		return w
	}
	gap := func(k int) string { return line[all[k-1][1]:all[k][0]] } // before a word
	counted := func(i int) bool {                                    // a number stands before it
		return drawn().MatchString(line[all[i][0]:all[i][1]]) || i > 0 && isNumber(word(i-1)) && strings.Trim(gap(i), " \u00a0") == ""
	}
	for i := 0; i < len(all); i++ {
		if insideHole(line, all[i][0]) {
			continue
		}
		n := names.at(i, len(all), word, gap, counted)
		if n == nil {
			continue
		}
		out = append(out, foundName{n, all[i][0], all[i+len(n.words)-1][1]})
		i += len(n.words) - 1
	}
	return out
}

// at is the longest name that begins at word i.
func (names proseNames) at(i, end int, word, gap func(int) string, counted func(int) bool) *proseName {
	for _, n := range names[strings.ToLower(word(i))] {
		if i+len(n.words) > end {
			continue
		}
		same := true
		for k, w := range n.words {
			have := word(i + k)
			same = same && (have == w || !n.short && strings.ToLower(have) == w) && (k == 0 || gap(i+k) == " " || gap(i+k) == "\u00a0")
		}
		// A single letter is an abbreviation behind a number only: 2 v, but not en forma de v.
		if len(n.words) == 1 && utf8.RuneCountInString(n.words[0]) == 1 {
			same = same && counted(i)
		}
		if same {
			return n
		}
	}
	return nil
}

func isNumber(s string) bool { return strings.Trim(s, "0123456789") == "" }

// readingOf is the reading in which the sentences of a language are written.
func (c *checker) readingOf(language string) string {
	if language == "en" && c.pat.UKTerms {
		return "en-GB"
	}
	if idiom := c.file.Idiom(); idiom.End > idiom.Start { // idioma es-MX
		words := strings.Fields(c.file.Source.Text[idiom.Start:idiom.End])
		if r, ok := terms.Standard().Reading(words[len(words)-1]); ok && r.Code() == language {
			return r.Tag()
		}
	}
	r, _ := terms.Standard().Reading(language)
	return r.Tag()
}

// stitchNames looks at the names of stitches in a line: one that is of another reading is taken for another stitch, or for none; an
// abbreviation stays as it is on the pages of all readings.
func (c *checker) stitchNames(language, line string, at func(from, to int) source.Span) {
	names := namesIn[language]
	if names == nil {
		return
	}
	own := c.readingOf(language)
	r, _ := terms.Standard().Reading(own)
	for _, n := range names().find(line) {
		word, span := line[n.from:n.to], at(n.from, n.to)
		id, ours := n.meaning[own]
		switch {
		case ours && n.short && language != "en" && c.variesFrom(r, id):
			c.say(codeShortName, span, diag.Args{"word": word, "stitch": c.wordOf(id)})
		case ours || language == "en" && n.short:
			// English abbreviations are read by the words of the language itself.
		case language == "en":
			id = n.meaning[c.otherEnglish(own)]
			c.say(codeOtherTerms, span, diag.Args{"word": word, "terms": termsWord(!c.pat.UKTerms), "own": c.wordOf(id)})
		default:
			tag, there := n.abroad()
			c.say(codeOtherCountry, span, diag.Args{"word": word, "country": diag.Term{Key: "country " + tag, N: 1},
				"stitch": c.wordOf(there)})
		}
	}
}

func (c *checker) otherEnglish(own string) string {
	if own == "en-GB" {
		return "en-US"
	}
	return "en-GB"
}

// wordOf is a stitch as the source writes it.
func (c *checker) wordOf(id stitch.ID) string {
	k, _ := stitch.Of(id)
	return k.Word(c.pat.UKTerms)
}

// abroad is a reading that has the name, the first of the table, and what it means there.
func (n *proseName) abroad() (string, stitch.ID) {
	for _, tag := range terms.Standard().Tags() {
		if id, ok := n.meaning[tag]; ok {
			return tag, id
		}
	}
	return "", ""
}

// variesFrom reports whether another reading of the language abbreviates a stitch in another way.
func (c *checker) variesFrom(r *terms.Reading, id stitch.ID) bool {
	return slices.ContainsFunc(r.Others(), func(o *terms.Reading) bool {
		return o.Has(string(id)) && o.Term(string(id)).Short != r.Term(string(id)).Short
	})
}
