package book

import (
	"unicode"
	"unicode/utf8"
)

// upperFirst makes the first letter a capital, where a name heads a line.
func upperFirst(text string) string { return changeFirst(text, unicode.ToUpper) }

// lowerFirst makes it small, where a name goes on inside a line.
func lowerFirst(text string) string { return changeFirst(text, unicode.ToLower) }

func changeFirst(text string, change func(rune) rune) string {
	r, n := utf8.DecodeRuneInString(text)
	if n == 0 {
		return text
	}
	return string(change(r)) + text[n:]
}
