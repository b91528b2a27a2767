package lang

import (
	"cmp"
	"slices"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"
)

// maxNear is how many names a message offers.
const maxNear = 4

// maxNearRunes bounds the words that are compared: nobody mistypes a word of more letters.
const maxNearRunes = 64

// Near returns the known words that one may have meant by a word, the nearest first, at most four. Near is a word that
// differs in one letter out of three; a letter left out, put in, changed or swapped with its neighbour counts as one. A word
// that differs only in capitals or accents, or by one swap, is near however short it is.
func Near(word string, known []string) []string {
	type candidate struct {
		word string
		far  int
	}
	plain := []rune(plainLetters(word))
	if len(plain) == 0 || len(plain) > maxNearRunes {
		return nil
	}
	var found []candidate
	for _, k := range known {
		if k == word {
			continue
		}
		other := []rune(plainLetters(k))
		limit := len(plain) / 3
		if swapped(plain, other) {
			limit = max(limit, 1)
		}
		if d := distance(plain, other, limit); d <= limit {
			found = append(found, candidate{k, d})
		}
	}
	slices.SortFunc(found, func(a, b candidate) int {
		return cmp.Or(cmp.Compare(a.far, b.far), strings.Compare(a.word, b.word))
	})
	found = slices.Compact(found)
	var words []string
	for _, c := range found[:min(len(found), maxNear)] {
		words = append(words, c.word)
	}
	return words
}

// plainLetters takes capitals and accents off a word.
func plainLetters(word string) string {
	return strings.Map(func(r rune) rune {
		if unicode.Is(unicode.Mn, r) {
			return -1
		}
		return unicode.ToLower(r)
	}, norm.NFD.String(word))
}

// swapped reports whether two words are the same but for one pair of neighbours.
func swapped(a, b []rune) bool {
	if len(a) != len(b) {
		return false
	}
	i := 0
	for i < len(a) && a[i] == b[i] {
		i++
	}
	return i+1 < len(a) && a[i] == b[i+1] && a[i+1] == b[i] && slices.Equal(a[i+2:], b[i+2:])
}

// distance counts the letters left out, put in, changed or swapped between two words. Beyond the limit it only says that
// it is beyond.
func distance(a, b []rune, limit int) int {
	if len(a)-len(b) > limit || len(b)-len(a) > limit {
		return limit + 1
	}
	before, above, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range above {
		above[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			change := 1
			if a[i-1] == b[j-1] {
				change = 0
			}
			row[j] = min(above[j]+1, row[j-1]+1, above[j-1]+change)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, above, row = above, row, before
	}
	return above[len(b)]
}
