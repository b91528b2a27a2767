package lang

import (
	_ "embed"
	"encoding/csv"
	"slices"
	"strings"
	"sync"

	"golang.org/x/text/unicode/norm"

	"ovillo/lang/terms"
)

// A source is written in English, or in another language that it names on its first line: `idioma es`, or `idioma es-MX`
// for the stitch names of Mexico. The other language has a word or a turn of phrase for each of the English words, in the
// same order; the grammar, the tree and all that is worked out from it are the same. The words stand in words.csv, those
// for stitches in the table of terms. A further language is a further column there and a row in [idioms].

//go:embed words.csv
var wordsCSV string

// tongue is a language other than English that a source can be written in, with one reading of its stitch names.
type tongue struct {
	head     string // what the first line begins with
	reading  *terms.Reading
	stitches *stitchWords
	*wordTable
}

// wordTable is the words of one language, by their first word, both ways. The longest turn of phrase comes first.
type wordTable struct {
	lang  string
	read  map[string][]wording // by the first word, as plain spells it
	write map[string][]wording // by the first English word
	named map[vocabulary]dictionary
	also  []string // words that say nothing: articles
}

// wording is one row of the table of words.
type wording struct {
	english, other []string
	where          string   // the kind of node in which the English is said so; "" elsewhere
	behind         []string // what it must stand behind to be meant: "^" the beginning of the line, a sign or a word; nil: anything
}

// vocabulary is a list of names that stand in a certain place and are no names of the designer's own.
type vocabulary string

// The vocabularies.
const (
	ownNames      vocabulary = ""         // names of the designer's own: never turned
	stitchNames   vocabulary = "stitch"   // dc, fpdc, inc
	measureNames  vocabulary = "measure"  // waist: of the wearer, of the piece
	fitNames      vocabulary = "fit"      // what the wearer's measures are found by: fit.waist
	memberNames   vocabulary = "member"   // foundation: what is found in every part
	sideNames     vocabulary = "side"     // right edge of
	meshNames     vocabulary = "mesh"     // legend: open, filled
	functions     vocabulary = "function" // stitches( … )
	units         vocabulary = "unit"     // months
	levels        vocabulary = "level"
	kinds         vocabulary = "kind"
	weights       vocabulary = "weight"
	fibres        vocabulary = "fibre"
	bodyTables    vocabulary = "table"
	markets       vocabulary = "market"   // where a pattern is offered
	zones         vocabulary = "zone"     // waist: where a cord is
	roles         vocabulary = "role"     // bow: what a cord is for
	endings       vocabulary = "ending"   // plain: how the ends of a cord are finished
	trims         vocabulary = "trim"     // beads: what is put on them
	surfaces      vocabulary = "surface"  // smooth: what a yarn is like
	things        vocabulary = "thing"    // button: what a notion is
	materials     vocabulary = "material" // plastic: what it is made of
	languageCodes vocabulary = "code"     // of languages and of terms: never turned
	suffixes      vocabulary = "suffix"   // dc2tog
)

// dictionary holds a vocabulary both ways.
type dictionary struct{ english, other map[string]string }

// idioms are the languages: what heads a source in them, their column, and their articles, which say nothing.
var idioms = []struct{ head, code, articles string }{
	{"idioma", "es", "el la los las"},
}

// standardWords reads the table for each language once.
var standardWords = sync.OnceValue(func() map[string]*wordTable {
	tables := map[string]*wordTable{}
	for _, i := range idioms {
		t, err := readWords(wordsCSV, i.code)
		if err != nil {
			panic("words.csv: " + err.Error())
		}
		t.lang, t.also = i.code, strings.Fields(i.articles)
		tables[i.code] = t
	}
	return tables
})

// readWords reads the column of a language.
func readWords(text, code string) (*wordTable, error) {
	r := csv.NewReader(strings.NewReader(text))
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		return nil, err
	}
	col := slices.Index(rows[0], code)
	t := &wordTable{read: map[string][]wording{}, write: map[string][]wording{}, named: map[vocabulary]dictionary{}}
	for _, row := range rows[1:] {
		kind, english, where, other, also := vocabulary(row[0]), row[1], row[2], row[col], row[col+1]
		if kind != "word" {
			t.name(kind, english, other, also)
			continue
		}
		w := wording{english: strings.Fields(english), where: where}
		w.behind, w.other = behindOf(other)
		t.write[w.english[0]] = append(t.write[w.english[0]], w)
		t.reads(w)
		if also == "" {
			continue
		}
		for _, spelling := range strings.Split(also, "|") {
			v := w
			v.other = strings.Fields(spelling)
			t.reads(v)
		}
	}
	for _, list := range t.read {
		slices.SortStableFunc(list, func(a, b wording) int { return b.rank(len(b.other)) - a.rank(len(a.other)) })
	}
	for _, list := range t.write {
		slices.SortStableFunc(list, func(a, b wording) int { return len(b.english) - len(a.english) })
	}
	return t, nil
}

// rank puts longer turns of phrase first, and of those of one length what is meant behind certain words alone.
func (w wording) rank(words int) int {
	if w.behind != nil {
		return 2*words + 1
	}
	return 2 * words
}

// behindOf parts a translation from what it must stand behind: "(^ ,) cada".
func behindOf(text string) (behind, words []string) {
	if rest, ok := strings.CutPrefix(text, "("); ok {
		before, after, _ := strings.Cut(rest, ")")
		return strings.Fields(plain(before)), strings.Fields(after)
	}
	return nil, strings.Fields(text)
}

func (t *wordTable) reads(w wording) {
	first := plain(w.other[0])
	t.read[first] = append(t.read[first], w)
}

// name adds a name to its vocabulary.
func (t *wordTable) name(v vocabulary, english, other, also string) {
	d, ok := t.named[v]
	if !ok {
		d = dictionary{english: map[string]string{}, other: map[string]string{}}
		t.named[v] = d
	}
	d.other[english] = other
	for _, spelling := range append([]string{other}, strings.FieldsFunc(also, func(r rune) bool { return r == '|' })...) {
		d.english[plain(spelling)] = english
	}
}

// plain is a word without the accents that are forgotten in haste; the tilde of ñ makes another letter and stays.
func plain(word string) string {
	if isASCII(word) {
		return word
	}
	return norm.NFC.String(strings.Map(func(r rune) rune {
		if r == '\u0301' || r == '\u0308' {
			return -1
		}
		return r
	}, norm.NFD.String(word)))
}

func isASCII(s string) bool {
	for i := range len(s) {
		if s[i] >= 0x80 {
			return false
		}
	}
	return true
}

// tongueOf returns the language that the first statement of a text names: nil for English. ok is false if it names one
// that is not known; the first token of the tag is then at.
func tongueOf(text string, tokens []Token) (t *tongue, line []Token, ok bool) {
	i := slices.IndexFunc(tokens, func(t Token) bool { return !t.Kind.silent() })
	if i < 0 || tokens[i].Kind != Word {
		return nil, nil, true
	}
	for _, idiom := range idioms {
		if tokens[i].Text(text) != idiom.head {
			continue
		}
		for end := i; ; end++ {
			if end == len(tokens) || tokens[end].Kind == LineEnd || tokens[end].Kind == Comment {
				line = tokens[i:end]
				break
			}
		}
		tag := strings.TrimSpace(text[tokens[i].Span.End:line[len(line)-1].Span.End])
		t, ok = tongueNamed(tag)
		if t == nil || t.lang != idiom.code {
			return standardTongue(idiom.code), line, false
		}
		t.stitches = stitchesOf(t.reading, ukTerms(text, tokens, t.wordTable))
		return t, line, ok
	}
	return nil, nil, true
}

// tongueNamed returns the language of a tag, with the US names of stitches.
func tongueNamed(tag string) (*tongue, bool) {
	r, ok := terms.Standard().Reading(tag)
	if !ok || standardWords()[r.Code()] == nil {
		return nil, false
	}
	t := standardTongue(r.Code())
	t.reading, t.stitches = r, stitchesOf(r, false)
	return t, true
}

// standardTongue is a language in its usual reading.
func standardTongue(code string) *tongue {
	r, _ := terms.Standard().Reading(code)
	for _, i := range idioms {
		if i.code == code {
			return &tongue{head: i.head, reading: r, stitches: stitchesOf(r, false), wordTable: standardWords()[code]}
		}
	}
	return nil
}

// ukTerms reports whether the header of a source says that its stitch names are the British ones. The tree of a source in
// another language names the stitches as one in English under the same header would.
func ukTerms(text string, tokens []Token, t *wordTable) bool {
	word := ""
	for _, tok := range tokens {
		switch {
		case tok.Kind == Blank || tok.Kind == Comment:
			continue
		case tok.Kind == Word && word == "terms" && tok.Text(text) == "uk":
			return true
		}
		word = tok.Text(text)
		if list := t.read[plain(word)]; list != nil && len(list[0].other) == 1 && list[0].english[0] == "terms" {
			word = "terms"
		}
	}
	return false
}

// Tongues lists the tags of the languages, besides English, that a source may be written in.
func Tongues() []string {
	var tags []string
	for _, tag := range terms.Standard().Tags() {
		if r, ok := terms.Standard().Reading(tag); ok && standardWords()[r.Code()] != nil {
			tags = append(tags, tag)
		}
	}
	return tags
}
