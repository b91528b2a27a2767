package format

import "strings"

// blanks is what may stand at the end of a line and says nothing there. A carriage return that ends a line is part of the
// line end.
const blanks = " \t\u00a0\r"

// tidy takes away byte-order marks at the start, blanks at the ends of lines, and blank lines at both ends of the text.
func tidy(text string) string {
	lines := strings.Split(text, "\n")
	for i, l := range lines {
		lines[i] = strings.TrimRight(l, blanks)
	}
	text = strings.Trim(strings.Join(lines, "\n"), "\n")
	// A mark behind a blank first line would come to stand at the start, where the lexer takes it for a blank.
	for trimmed := ""; ; text = trimmed {
		if trimmed = strings.TrimLeft(text, blanks+"\ufeff\n"); trimmed == text {
			return text
		}
	}
}
