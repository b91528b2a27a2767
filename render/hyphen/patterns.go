package hyphen

import (
	"strings"
	"unicode/utf8"
)

// rules are the patterns of a language, by the method of F. M. Liang, Word Hy-phen-a-tion by Com-put-er (1983): each pattern is
// some letters with a figure between them, or none for 0, and the highest figure at a place counts. An odd one allows a
// division there, an even one forbids it. Of the libraries for it that were looked at, the one that is kept up overlooks
// patterns about one letter, which are the half of Spanish.
type rules struct {
	figures map[string][]byte // by the letters; a dot is an end of the word
	longest int
}

func readRules(patterns string) *rules {
	r := &rules{figures: map[string][]byte{}}
	for _, p := range strings.Fields(patterns) {
		var letters strings.Builder
		figures := []byte{0}
		n := 0
		for _, c := range p {
			if c >= '0' && c <= '9' {
				figures[n] = byte(c - '0')
				continue
			}
			letters.WriteRune(c)
			figures = append(figures, 0)
			n++
		}
		r.figures[letters.String()] = figures
		r.longest = max(r.longest, n)
	}
	return r
}

// places lists before which letters of a word it may be divided.
func (r *rules) places(word string) []int {
	dotted := "." + word + "."
	starts := make([]int, 0, len(dotted)+1) // of each letter, and the end
	for i := range dotted {
		starts = append(starts, i)
	}
	n := len(starts)
	starts = append(starts, len(dotted))
	highest := make([]byte, n+1)
	for from := range n {
		for to := from + 1; to <= min(n, from+r.longest); to++ {
			for i, f := range r.figures[dotted[starts[from]:starts[to]]] {
				highest[from+i] = max(highest[from+i], f)
			}
		}
	}
	var out []int
	for i := 1; i < utf8.RuneCountInString(word); i++ {
		if highest[i+1]%2 == 1 {
			out = append(out, i)
		}
	}
	return out
}
