package spelling

import (
	"encoding/csv"
	"os"
	"os/exec"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"ovillo/cmd/ovillo/whole"
)

// Every text is spelled by hunspell, whose dictionaries know nothing of the trade. What they miss stands in cmd/ovillo/testdata/spelling.csv,
// one word a line with its reason; what only one spelling of English has must not stand in the other.

// dictionaries are those for the languages of the texts. All that is Spanish goes by one: those of the countries are the same in
// most distributions. Messages and documents are in UK spelling.
var dictionaries = map[string]string{
	"en-US": "en_US", "en-GB": "en_GB", "en": "en_GB",
	"es": "es_ES", "es-ES": "es_ES", "es-MX": "es_ES", "es-AR": "es_ES", "es-CL": "es_ES", "es-EC": "es_ES",
}

// noWords are what is no word: whatever has a figure in it, with the letters behind the figures of an ordinal, and addresses.
var noWords = regexp.MustCompile(`[\pL_]*\d[\pL\d_]*(?:\.?(?:ª|º|er\b))?|\b[\w-]+\.(?:com|org)\b`)

// hunspell makes sure that it is installed: where it is not, the texts are not spelled, which is a failure in CI.
func hunspell(t *testing.T) {
	t.Helper()
	if _, err := exec.LookPath("hunspell"); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("hunspell is not installed, and nothing was spelled")
		}
		t.Skip("hunspell is not installed: nothing was spelled")
	}
}

// unknown asks hunspell for the words of texts that a dictionary does not hold, each once; single letters are no words.
func unknown(t *testing.T, dictionary string, texts []string) []string {
	t.Helper()
	cmd := exec.Command("hunspell", "-i", "utf-8", "-d", dictionary, "-l")
	cmd.Stdin = strings.NewReader(noWords.ReplaceAllString(strings.Join(texts, "\n"), " "))
	cmd.Env = append(cmd.Environ(), "LC_ALL=C.UTF-8")
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("hunspell with %s: %v", dictionary, err)
	}
	list := strings.Fields(string(out))
	slices.Sort(list)
	return slices.DeleteFunc(slices.Compact(list), func(w string) bool { return len([]rune(w)) == 1 })
}

// allowedWord is a line of the list: in which texts a word may stand ("es": in all that are Spanish), and why.
type allowedWord struct{ lang, word, kind, source string }

// kinds of words that the dictionaries do not hold.
var wordKinds = []string{"trade word", "proper name", "abbreviation", "code", "form"}

func allowedWords(t *testing.T) []allowedWord {
	t.Helper()
	f, err := os.Open(whole.Path(t, "cmd", "ovillo", "testdata", "spelling.csv"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var out []allowedWord
	for _, r := range rows[1:] {
		out = append(out, allowedWord{r[0], r[1], r[2], r[3]})
	}
	return out
}

// in reports whether the word is allowed in a language.
func (a allowedWord) in(lang string) bool {
	return a.lang == lang || strings.HasPrefix(lang, a.lang+"-")
}

// is reports whether a word is this one, at the head of a sentence too.
func (a allowedWord) is(word string) bool {
	if a.word == word {
		return true
	}
	r := []rune(word)
	return a.kind != "proper name" && string(unicode.ToLower(r[0]))+string(r[1:]) == a.word
}

// textsIn are the texts in a language.
func textsIn(t *testing.T, lang string) []spelled {
	t.Helper()
	var out []spelled
	for _, s := range spelledTexts(t) {
		if s.lang == lang {
			out = append(out, s)
		}
	}
	if len(out) < 500 {
		t.Fatalf("only %d texts in %s", len(out), lang)
	}
	return out
}

func justTexts(list []spelled) []string {
	var out []string
	for _, s := range list {
		out = append(out, s.text)
	}
	return out
}

// holdsWord reports whether a text holds a word as a word of its own.
func holdsWord(text, word string) bool {
	for _, w := range strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '\'' }) {
		if w == word {
			return true
		}
	}
	return false
}

func TestSpelling(t *testing.T) {
	hunspell(t)
	list := allowedWords(t)
	for lang, dictionary := range dictionaries {
		t.Run(lang, func(t *testing.T) {
			texts := textsIn(t, lang)
			for _, w := range unknown(t, dictionary, justTexts(texts)) {
				if slices.ContainsFunc(list, func(a allowedWord) bool { return a.in(lang) && a.is(w) }) {
					continue
				}
				i := slices.IndexFunc(texts, func(s spelled) bool { return holdsWord(s.text, w) })
				if i < 0 {
					t.Errorf("%s is in no dictionary", w)
					continue
				}
				t.Errorf("%s: %s is in no dictionary: %s", texts[i].where, w, texts[i].text)
			}
		})
	}
}

// TestSpellingFails: a slip is found, and the spelling of one English in the pages of the other.
func TestSpellingFails(t *testing.T) {
	hunspell(t)
	slip := func(lang, old, new string) []string {
		var out []string
		for _, s := range textsIn(t, lang) {
			out = append(out, strings.Replace(s.text, old, new, 1))
		}
		return out
	}
	for _, c := range []struct {
		lang, dictionary, old, new string
		want                       []string
	}{
		{"es", "es_ES", "siguiente", "siguente", []string{"siguente"}},
		{"es-MX", "es_ES", "hilera", "hilrea", []string{"hilrea"}},
		{"en-US", "en_US", "round", "ruond", []string{"ruond"}},
		{"en", "en_GB", "stitches", "stiches", []string{"stiches"}},
		{"en-US", "en_GB", "", "", []string{"colors"}},
		{"en-GB", "en_US", "", "", []string{"colours", "metres"}},
	} {
		got := unknown(t, c.dictionary, slip(c.lang, c.old, c.new))
		for _, w := range c.want {
			if !slices.Contains(got, w) {
				t.Errorf("%s by %s: %s was not found", c.lang, c.dictionary, w)
			}
		}
	}
}

// TestAllowedWords: the list is sorted, says of each word why it is there, and holds none that no text has.
func TestAllowedWords(t *testing.T) {
	list := allowedWords(t)
	if !slices.IsSortedFunc(list, func(a, b allowedWord) int {
		return strings.Compare(a.lang+" "+strings.ToLower(a.word), b.lang+" "+strings.ToLower(b.word))
	}) {
		t.Error("the list is not sorted by language and word")
	}
	for i, a := range list {
		if !slices.Contains(wordKinds, a.kind) || a.source == "" || a.word == "" {
			t.Errorf("%v: no kind of word, or no source", a)
		}
		if i > 0 && list[i-1].lang == a.lang && list[i-1].word == a.word {
			t.Errorf("%v stands twice", a)
		}
		used := false
		for lang := range dictionaries {
			if !a.in(lang) {
				continue
			}
			used = used || slices.ContainsFunc(textsIn(t, lang), func(s spelled) bool {
				return holdsWord(s.text, a.word) || holdsWord(strings.ToLower(s.text), a.word)
			})
		}
		if !used {
			t.Errorf("%v: no text holds it", a)
		}
	}
}

// TestAllowedWordsNeeded: no word is allowed that the dictionaries hold.
func TestAllowedWordsNeeded(t *testing.T) {
	hunspell(t)
	for _, a := range allowedWords(t) {
		needed := false
		for lang, dictionary := range dictionaries {
			needed = needed || a.in(lang) && len(unknown(t, dictionary, []string{a.word})) > 0
		}
		if !needed {
			t.Errorf("%v: the dictionaries hold it", a)
		}
	}
}
