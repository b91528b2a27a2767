package lang

import (
	"regexp"
	"slices"
	"strings"
	"sync"

	"ovillo/lang/terms"
)

// The words for stitches of a source that is not written in English are the abbreviations of its reading in the table of
// terms: pb, pma, pa. What is made of them is written as the pages print it, as far as one word can: pa2jun or 2pajun for
// dc2tog, pa3rac for dc3cl, pa rel del for fpdc.

// stitchConcepts are the rows of the table of terms that name stitches, but for slip stitches, which English writes in two
// words.
var stitchConcepts = []string{"ch", "sc", "rsc", "esc", "hdc", "ehdc", "dc", "edc", "tr", "etr", "dtr", "trtr"}

// stitchWords are the words for stitches in one reading, beside those of English under US or UK terms.
type stitchWords struct {
	bases []stitchBase // longest first
	*groupWords
}

// stitchBase is a plain stitch.
type stitchBase struct {
	other   []string // its words
	english string
}

// groupWords is what is put behind a stitch for several of it.
type groupWords struct {
	english, other []string // as in the vocabulary of suffixes: longest first
	behind         *regexp.Regexp
	before         *regexp.Regexp // 2pajun
	toOther        map[string]string
	toEnglish      map[string]string
}

type stitchKey struct {
	tag string
	uk  bool
}

var stitchesKnown sync.Map // stitchKey to *stitchWords

func stitchesOf(r *terms.Reading, uk bool) *stitchWords {
	key := stitchKey{r.Tag(), uk}
	if known, ok := stitchesKnown.Load(key); ok {
		return known.(*stitchWords)
	}
	english, _ := terms.Standard().Reading(map[bool]string{false: "en-US", true: "en-GB"}[uk])
	w := &stitchWords{groupWords: groupsOf(standardWords()[r.Code()].named[suffixes])}
	for _, c := range stitchConcepts {
		en := strings.ReplaceAll(english.Term(c).Short, " ", "")
		for _, short := range []string{r.Term(c).Short, r.Term(c).Shorts} {
			w.bases = append(w.bases, stitchBase{other: strings.Fields(short), english: en})
		}
	}
	for _, short := range []string{r.Term("slst").Short, r.Term("slst").Shorts} {
		w.bases = append(w.bases, stitchBase{other: strings.Fields(short), english: "sl st"})
	}
	slices.SortStableFunc(w.bases, func(a, b stitchBase) int { return len(b.other) - len(a.other) })
	stitchesKnown.Store(key, w)
	return w
}

func groupsOf(d dictionary) *groupWords {
	g := &groupWords{toOther: d.other, toEnglish: d.english}
	for en, other := range d.other {
		g.english, g.other = append(g.english, en), append(g.other, plain(other))
	}
	longer := func(a, b string) int { return len(b) - len(a) }
	slices.SortFunc(g.english, longer)
	slices.SortFunc(g.other, longer)
	g.behind = regexp.MustCompile(`^(\pL*?)([0-9]*)(` + strings.Join(g.other, "|") + `)$`)
	g.before = regexp.MustCompile(`^([0-9]+)(\pL+?)(` + strings.Join(g.other, "|") + `)$`)
	return g
}

// posts are the words behind a stitch that goes round a post.
var posts = []struct{ other, english string }{{"rel del", "fp"}, {"rel det", "bp"}}

// stitch reads a stitch from the words of a line, of which word gives the nth and "" behind the last. It returns the
// English word, "sl st" for a slip stitch, and how many words it took; 0 if no stitch begins there.
func (w *stitchWords) stitch(word func(n int) string) (english string, n int) {
	first := plain(word(0))
	head, many := first, ""
	if m := w.behind.FindStringSubmatch(first); m != nil {
		head, many = m[1], m[2]+w.toEnglish[m[3]]
	} else if m := w.before.FindStringSubmatch(first); m != nil {
		head, many = m[2], m[1]+w.toEnglish[m[3]]
	}
	if head == "" && many != "" {
		return many, 1 // picot
	}
	for _, b := range w.bases {
		if plain(b.other[0]) != head || !matches(b.other[1:], word) {
			continue
		}
		english, n = b.english+many, len(b.other)
		if b.english == "sl st" && many != "" {
			return "", 0
		}
		for _, p := range posts {
			if words := strings.Fields(p.other); matchesFrom(words, n, word) {
				return p.english + english, n + len(words)
			}
		}
		return english, n
	}
	return "", 0
}

func matches(words []string, word func(n int) string) bool { return matchesFrom(words, 1, word) }

func matchesFrom(words []string, from int, word func(n int) string) bool {
	for i, w := range words {
		if plain(word(from+i)) != plain(w) {
			return false
		}
	}
	return true
}

// write is the word for a stitch that English has; ok is false for what is no stitch of the table.
func (w *stitchWords) write(english string) (other string, ok bool) {
	post, rest := "", english
	for _, p := range posts {
		if s, cut := strings.CutPrefix(english, p.english); cut {
			post, rest = " "+p.other, s
		}
	}
	many := ""
	if _, plain := w.base(rest); !plain {
		for _, suffix := range w.english {
			if s, cut := strings.CutSuffix(rest, suffix); cut {
				rest = strings.TrimRight(s, "0123456789")
				many = s[len(rest):] + w.toOther[suffix]
				break
			}
		}
	}
	if rest == "" && many != "" {
		return many, true
	}
	b, ok := w.base(rest)
	if !ok {
		return "", false
	}
	words := slices.Clone(b.other)
	words[0] += many
	return strings.Join(words, " ") + post, true
}

// base is a plain stitch by its English word.
func (w *stitchWords) base(english string) (stitchBase, bool) {
	i := slices.IndexFunc(w.bases, func(b stitchBase) bool { return b.english == english })
	if i < 0 {
		return stitchBase{}, false
	}
	return w.bases[i], true
}
