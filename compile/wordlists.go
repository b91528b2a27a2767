package compile

import (
	"embed"
	"encoding/csv"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"sync"
)

// Lists of words by which texts of a source are understood, in English and Spanish at once. They are data, since they grow with what
// designers write.

//go:embed data
var wordData embed.FS

// wordRow is one row of a list: its other columns, and what finds its words in a text.
type wordRow struct {
	is    map[string]string
	words func() *finder // made when a text is first looked at for them: most lists are never gone through
}

// finder finds words in a text.
type finder struct {
	*regexp.Regexp
	needles []string
}

// wordList reads a list. The lists are part of the program, so a broken one is a fault of the program.
func wordList(name string) []wordRow {
	f, err := wordData.Open("data/" + name)
	if err != nil {
		panic("compile: " + err.Error())
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	all, err := r.ReadAll()
	if err != nil || len(all) == 0 {
		panic(fmt.Sprintf("compile: %s: %v", name, err))
	}
	var out []wordRow
	for _, cells := range all[1:] {
		row := wordRow{is: map[string]string{}}
		for i, column := range all[0] {
			if column == "words" {
				row.words = sync.OnceValue(func() *finder { return wholeWords(cells[i]) })
				continue
			}
			row.is[column] = cells[i]
		}
		out = append(out, row)
	}
	return out
}

// letter is a letter of the languages of the lists, noLetter what parts words. The class of all letters takes milliseconds to fold.
const (
	letter   = `(?-i:[a-zA-ZªºÀ-ÖØ-öø-ɏ])`
	noLetter = `(?-i:[^a-zA-ZªºÀ-ÖØ-öø-ɏ])`
)

// wholeWords finds some words or turns of phrase in a text, whole: ~ stands for any ending, ? behind a letter that may be left out. The
// words stand in the first group.
func wholeWords(list string) *finder {
	list = strings.NewReplacer("~", letter+"*", `\p{L}`, letter, " ", `[\s_-]+`).Replace(list)
	return &finder{
		regexp.MustCompile(`(?i)(?:^|` + noLetter + `)(` + list + `)(?:` + noLetter + `|$)`),
		needles(`(?i)(` + list + `)`),
	}
}

// find is the first place of the words in a text, from and to; false if they are not in it.
func (r wordRow) find(text string) (from, to int, ok bool) {
	f := r.words()
	if !mentions(folded(text), f.needles) {
		return 0, 0, false
	}
	m := f.FindStringSubmatchIndex(text)
	if m == nil {
		return 0, 0, false
	}
	return m[2], m[3], true
}

// mayFind reports whether a row of a list might find its words in a folded text.
func mayFind(rows []wordRow, folded string) bool {
	return slices.ContainsFunc(rows, func(r wordRow) bool { return mentions(folded, r.words().needles) })
}
