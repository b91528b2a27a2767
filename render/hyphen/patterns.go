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

// readRules reads patterns that stand one on a line. There are thousands: their letters and their figures each share one stretch of memory.
func readRules(patterns string) *rules {
	n := strings.Count(patterns, "\n") + 1
	r := &rules{figures: make(map[string][]byte, n)}
	var text strings.Builder // the letters of all patterns
	text.Grow(len(patterns))
	all := make([]byte, 0, len(patterns)+n) // the figures
	for p := range strings.Lines(patterns) {
		from, at := text.Len(), len(all)
		all = append(all, 0)
		for _, c := range strings.TrimSpace(p) {
			if c >= '0' && c <= '9' {
				all[len(all)-1] = byte(c - '0')
				continue
			}
			text.WriteRune(c)
			all = append(all, 0)
		}
		if letters := text.String()[from:]; letters != "" {
			r.figures[letters] = all[at:len(all):len(all)]
			r.longest = max(r.longest, len(all)-at-1)
		}
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
