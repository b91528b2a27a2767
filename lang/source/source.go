// Package source holds the text of a pattern and the arithmetic of places in it.
//
// Everything in the compiler points at the source with a [Span], two byte offsets. Lines, columns and the text of a
// line are worked out here and only here, when somebody has to read them.
package source

import (
	"sort"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Span is a half-open range of byte offsets into a file. The zero Span means "nowhere in particular".
type Span struct{ Start, End int32 }

// IsZero reports whether the span points nowhere.
func (s Span) IsZero() bool { return s == Span{} }

// To returns the span from the start of s to the end of t.
func (s Span) To(t Span) Span { return Span{s.Start, t.End} }

// Contains reports whether t lies inside s.
func (s Span) Contains(t Span) bool { return s.Start <= t.Start && t.End <= s.End }

// File is one source text with its table of line starts.
type File struct {
	Name  string // as the user named it, for messages
	Text  string
	lines []int32 // offset of the first byte of each line
	used  []taken // the files that it takes in
}

// NewFile makes a file of a text. A carriage return before a line feed belongs to the line end.
func NewFile(name, text string) *File {
	f := &File{Name: name, Text: text, lines: make([]int32, 1, strings.Count(text, "\n")+1)}
	for i := 0; i < len(text); i++ {
		if text[i] == '\n' {
			f.lines = append(f.lines, int32(i+1))
		}
	}
	return f
}

// Line returns the number of the line that holds an offset, from 1.
func (f *File) Line(offset int32) int {
	return sort.Search(len(f.lines), func(i int) bool { return f.lines[i] > offset })
}

// Lines is the number of lines in the file.
func (f *File) Lines() int { return len(f.lines) }

// LineText returns a line, counted from 1, without its line end.
func (f *File) LineText(n int) string {
	if n < 1 || n > len(f.lines) {
		return ""
	}
	end := len(f.Text)
	if n < len(f.lines) {
		end = int(f.lines[n]) - 1
	}
	return strings.TrimSuffix(f.Text[f.lines[n-1]:end], "\r")
}

// LineStart returns the offset of the first byte of a line, counted from 1.
func (f *File) LineStart(n int) int32 {
	if n < 1 {
		return 0
	}
	if n > len(f.lines) {
		return int32(len(f.Text))
	}
	return f.lines[n-1]
}

// Column returns the display column of an offset, from 1: combining marks take no cell, a tab goes to the next
// multiple of eight.
func (f *File) Column(offset int32) int {
	start := f.LineStart(f.Line(offset))
	return Cells(f.Text[start:min(int(offset), len(f.Text))]) + 1
}

// Slice returns the text of a span, cut to the file in which it begins.
func (f *File) Slice(s Span) string {
	f, s = f.Within(s)
	n := int32(len(f.Text))
	a, b := min(max(s.Start, 0), n), min(max(s.End, 0), n)
	if a >= b {
		return ""
	}
	return f.Text[a:b]
}

// Cells counts the display cells of a text on one line.
func Cells(text string) int {
	n := 0
	for len(text) > 0 {
		r, w := utf8.DecodeRuneInString(text)
		text = text[w:]
		switch {
		case r == '\t':
			n += 8 - n%8
		case unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf):
		default:
			n++
		}
	}
	return n
}
