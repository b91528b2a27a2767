package markdown

import (
	"bytes"

	"github.com/yuin/goldmark/text"

	"ovillo/lang/lazy"
)

// delimiter is the second line of a table, by which tables are known: GitHub Flavored Markdown Spec 0.29, 4.10.
var delimiter = lazy.Regexp(`^ {0,3}\|?[ \t]*:?-+:?[ \t]*(?:\|[ \t]*:?-+:?[ \t]*)*\|?[ \t]*\n?$`)

// isTable reports whether the lines of a paragraph are a table to tools that know tables: below a line with no more cells than it has itself
// stands a delimiter. The reader is not taught tables, which pages have not: they are only told of.
func isTable(lines *text.Segments, source []byte) bool {
	for i := 1; i < lines.Len(); i++ {
		at := lines.At(i)
		line := at.Value(source)
		if bytes.IndexByte(line, '-') < 0 || len(bytes.Trim(line, "-")) == 0 || !delimiter().Match(line) {
			continue
		}
		head := lines.At(i - 1)
		return cells(head.Value(source)) <= cells(line)
	}
	return false
}

// cells counts the cells of a line of a table; an empty one at its end is none.
func cells(line []byte) int {
	line = bytes.TrimSuffix(bytes.TrimPrefix(bytes.TrimSpace(line), []byte("|")), []byte("|"))
	if len(line) == 0 {
		return 0
	}
	n := 1
	for i, c := range line {
		if c == '|' && (i == 0 || line[i-1] != '\\') && i < len(line)-1 {
			n++
		}
	}
	return n
}
