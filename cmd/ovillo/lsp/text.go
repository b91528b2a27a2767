package lsp

import (
	"sort"
	"strings"
	"unicode/utf8"

	"ovillo/lang"
	"ovillo/lang/source"
)

// The encodings in which a client may count the characters of a line.
const (
	utf8Encoding  = "utf-8"
	utf16Encoding = "utf-16"
)

// text is a document with its lines, as the protocol counts them: a line ends with a line feed, a carriage return, or both.
type text struct {
	body     string
	encoding string
	starts   []int
}

func newText(body, encoding string) *text {
	t := &text{body: body, encoding: encoding, starts: make([]int, 1, strings.Count(body, "\n")+1)}
	for i := 0; i < len(body); i++ {
		if body[i] == '\n' || body[i] == '\r' && (i+1 == len(body) || body[i+1] != '\n') {
			t.starts = append(t.starts, i+1)
		}
	}
	return t
}

// read is what of a document is read: all, or of one that is too large for a source as much as says so.
func (t *text) read() string { return t.body[:min(len(t.body), lang.MostBytes+1)] }

// line is where a line begins and where its text ends, before the line end.
func (t *text) line(n int) (from, to int) {
	from, to = t.starts[n], len(t.body)
	if n+1 < len(t.starts) {
		to = t.starts[n+1]
	}
	for to > from && (t.body[to-1] == '\n' || t.body[to-1] == '\r') {
		to--
	}
	return from, to
}

// offset is the byte at a position. One behind the end of its line is at that end, one behind the last line at the end of the text.
func (t *text) offset(p Position) int {
	if p.Line < 0 {
		return 0
	}
	if p.Line >= len(t.starts) {
		return len(t.body)
	}
	from, to := t.line(p.Line)
	for left := p.Character; left > 0 && from < to; {
		r, n := utf8.DecodeRuneInString(t.body[from:to])
		w := t.units(r, n)
		if w > left {
			break // inside a character
		}
		left -= w
		from += n
	}
	return from
}

// units is how many units of the encoding a character of n bytes takes.
func (t *text) units(r rune, n int) int {
	switch {
	case t.encoding == utf8Encoding:
		return n
	case r >= 0x10000:
		return 2
	}
	return 1
}

// position is the position of a byte.
func (t *text) position(at int) Position {
	at = min(max(at, 0), len(t.body))
	line := sort.Search(len(t.starts), func(i int) bool { return t.starts[i] > at }) - 1
	p := Position{Line: line}
	for i := t.starts[line]; i < at; {
		r, n := utf8.DecodeRuneInString(t.body[i:])
		p.Character += t.units(r, n)
		i += n
	}
	return p
}

func (t *text) span(r Range) source.Span {
	from, to := t.offset(r.Start), t.offset(r.End)
	return source.Span{Start: int32(min(from, to)), End: int32(max(from, to))}
}

func (t *text) rangeOf(s source.Span) Range {
	return Range{t.position(int(s.Start)), t.position(int(s.End))}
}

// with is the text with another one in the place of a range.
func (t *text) with(r Range, in string) *text {
	s := t.span(r)
	return newText(t.body[:s.Start]+in+t.body[s.End:], t.encoding)
}
