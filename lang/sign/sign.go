// Package sign knows which letters and signs the pages can print: those that all of their faces have. It is data, so that a
// source can be judged without a font; a test of the command compares it with the faces and writes it anew.
package sign

import (
	_ "embed"
	"slices"
	"strconv"
	"strings"
	"sync"

	"golang.org/x/text/unicode/norm"
)

//go:embed signs.txt
var table string

// span is a range of code points, both ends part of it.
type span struct{ from, to rune }

var spans = sync.OnceValue(func() []span {
	var out []span
	for line := range strings.Lines(table) {
		line, _, _ = strings.Cut(strings.TrimSpace(line), "#")
		if line == "" {
			continue
		}
		from, to, several := strings.Cut(line, "-")
		if !several {
			to = from
		}
		a, err := strconv.ParseUint(from, 16, 16)
		b, err2 := strconv.ParseUint(to, 16, 16)
		if err != nil || err2 != nil {
			panic("signs.txt: " + line)
		}
		out = append(out, span{rune(a), rune(b)})
	}
	return out
})

// Has reports whether the pages can print a letter or sign. Ends of lines and tabulators, which part words, are none to print.
func Has(r rune) bool {
	if r == '\n' || r == '\r' || r == '\t' {
		return true
	}
	_, found := slices.BinarySearchFunc(spans(), r, func(s span, r rune) int {
		switch {
		case s.to < r:
			return -1
		case s.from > r:
			return 1
		}
		return 0
	})
	return found
}

// Missing lists the signs of a text that the pages cannot print, each once, in their order. An accent that makes one letter
// with the letter before it is no sign of its own.
func Missing(text string) []rune {
	var out []rune
	for _, r := range norm.NFC.String(text) {
		if !Has(r) && !slices.Contains(out, r) {
			out = append(out, r)
		}
	}
	return out
}

// Instead is how a sign can be written with signs that there are: ff for the ligature of two letters, for instance. It is
// empty if Unicode knows no such spelling (NFKC, Unicode Standard Annex 15).
func Instead(r rune) string {
	s := norm.NFKC.String(string(r))
	if s == string(r) || strings.TrimSpace(s) == "" || Missing(s) != nil {
		return ""
	}
	return s
}
