// Package hyphen says where the ordinary words of a text may be divided at the end of a line.
//
// In: a text and the tag of its language. Out: the same text with soft hyphens in it.
//
//	text = hyphen.Soften(text, "es-MX")
//
// The rules are the patterns that TeX has used for decades, and the words that its authors except from them; see the folder
// patterns for who made them and on what terms. A narrow column is what they are for: the pages of a sheet have lines that are
// long enough without.
//
// What it deliberately does not divide: abbreviations, numbers, whatever stands with a number or is kept together by a no-break
// space, names, words in capitals, compounds, links, and short words.
package hyphen

import (
	"embed"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"ovillo/render/rich"
)

// Words shorter than least letters stay whole, and so do the first and the last letters of longer ones.
const (
	least  = 7
	around = 3
)

// soft is the sign of a place where a word may be divided: U+00AD.
const soft = "\u00AD"

//go:embed patterns/*.txt
var files embed.FS

// Licences are those of the patterns. Whoever hands the patterns on hands them on as well.
func Licences() string {
	data, err := files.ReadFile("patterns/LICENCES.txt")
	if err != nil {
		panic(err) // it is embedded
	}
	return string(data)
}

// language is the patterns of a language and the words that follow none.
type language struct {
	once   sync.Once
	name   string
	rules  *rules
	except map[string][]int
}

// languages by what their tags begin with, the longer ones first.
var languages = []struct {
	tag string
	*language
}{
	{"en-GB", &language{name: "en-gb"}}, {"en", &language{name: "en-us"}}, {"es", &language{name: "es"}},
}

// of returns the language of a tag, nil if its words are not known. Its patterns are read the first time that it is asked for.
func of(tag string) *language {
	for _, l := range languages {
		if tag == l.tag || strings.HasPrefix(tag, l.tag+"-") {
			l.once.Do(l.read)
			return l.language
		}
	}
	return nil
}

// Prepare reads the patterns of the language of a tag, if it is known, before they are asked for.
func Prepare(tag string) { of(tag) }

// read reads the files of the language. They are part of the program: that they can be read is for the tests to see.
func (l *language) read() {
	data, err := files.ReadFile("patterns/hyph-" + l.name + ".pat.txt")
	if err != nil {
		panic(err)
	}
	l.rules = readRules(string(data))
	l.except = map[string][]int{}
	words, _ := files.ReadFile("patterns/hyph-" + l.name + ".hyp.txt") // a language without exceptions has no file
	for _, word := range strings.Fields(string(words)) {
		var places []int
		for i, r := range []rune(word) {
			if r == '-' {
				places = append(places, i-len(places))
			}
		}
		l.except[strings.ReplaceAll(word, "-", "")] = places
	}
}

// Places lists before which letters, counted from 0, a word of small letters may be divided in the language of a tag.
func Places(word, tag string) []int {
	l := of(tag)
	n := utf8.RuneCountInString(word)
	if l == nil || n < least {
		return nil
	}
	places, excepted := l.except[word]
	if !excepted {
		places = l.rules.places(word)
	}
	var out []int
	for _, p := range places {
		if p >= around && p <= n-around {
			out = append(out, p)
		}
	}
	return out
}

// Soften puts soft hyphens into the ordinary words of a text. A language that is not known leaves it as it is.
func Soften(t rich.Text, tag string) rich.Text {
	if of(tag) == nil {
		return t
	}
	out := make(rich.Text, len(t))
	for i, run := range t {
		out[i] = run
		if run.Expand != "" || run.Spoken != "" || run.Link != "" {
			continue
		}
		opens := i == 0 || ends(t[i-1].Text)
		closes := i == len(t)-1 || begins(t[i+1].Text)
		out[i].Text = soften(run.Text, tag, opens, closes)
	}
	return out
}

// ends and begins report whether a text ends, or begins, at an ordinary space.
func ends(text string) bool {
	return text == "" || strings.ContainsRune(" \n", rune(text[len(text)-1]))
}
func begins(text string) bool { return text == "" || strings.ContainsRune(" \n", rune(text[0])) }

// soften divides the words of a run. Its first word is whole only if the run opens one, its last only if it closes one.
func soften(text, tag string, opens, closes bool) string {
	tokens := strings.SplitAfter(text, " ")
	for i, token := range tokens {
		if i == 0 && !opens || i == len(tokens)-1 && !closes {
			continue
		}
		start, end, ok := ordinary(token)
		if !ok {
			continue
		}
		var b strings.Builder
		places := Places(token[start:end], tag)
		n := 0
		for _, r := range token[start:end] {
			if len(places) > 0 && places[0] == n {
				b.WriteString(soft)
				places = places[1:]
			}
			b.WriteRune(r)
			n++
		}
		tokens[i] = token[:start] + b.String() + token[end:]
	}
	return strings.Join(tokens, "")
}

// ordinary finds the word of a token: small letters, with nothing but marks and the space around them.
func ordinary(token string) (start, end int, ok bool) {
	start = strings.IndexFunc(token, unicode.IsLetter)
	if start < 0 {
		return 0, 0, false
	}
	end = start
	for _, r := range token[start:] {
		if !unicode.IsLower(r) {
			break
		}
		end += utf8.RuneLen(r)
	}
	for _, r := range token[:start] + token[end:] {
		if !strings.ContainsRune(" \n.,;:!?¡¿()[]«»“”‘’\"…", r) {
			return 0, 0, false
		}
	}
	return start, end, end > start
}
