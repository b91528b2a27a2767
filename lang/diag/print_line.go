package diag

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/width"
)

// This file lays one line of the source out in the cells of a terminal, so that a mark can stand right under a place.

const (
	tabStop    = 8    // as source.Column counts
	widest     = 100  // cells of a line that is shown
	before     = 30   // cells shown before the mark where a line is cut
	manyBytes  = 4096 // a line longer than this is cut before it is laid out
	aroundMark = 1024 // bytes kept on either side of the mark then
)

// glyph is what takes cells: a rune with the marks that combine with it, at bytes of the line.
type glyph struct {
	text       string
	start, end int
	cell       int
	width      int
}

// laid is a line in cells.
type laid struct {
	glyphs     []glyph
	width      int
	head, tail bool // something of a very long line is cut off already
}

// layOut lays a line out. around is a byte that must be seen.
func layOut(line string, around int) laid {
	var l laid
	from := 0
	if len(line) > manyBytes {
		from = runeStart(line, around-aroundMark)
		to := runeStart(line, around+aroundMark)
		l.head, l.tail = from > 0, to < len(line)
		line = line[:to]
	}
	for i := from; i < len(line); {
		r, size := utf8.DecodeRuneInString(line[i:])
		if combines(r) && len(l.glyphs) > 0 {
			last := &l.glyphs[len(l.glyphs)-1]
			last.text += line[i : i+size]
			i += size
			last.end = i
			continue
		}
		g := glyph{start: i, end: i + size, cell: l.width}
		switch {
		case r == '\t':
			g.width = tabStop - l.width%tabStop
			g.text = strings.Repeat(" ", g.width)
		case combines(r):
			g.text, g.width = "◌"+string(r), 1 // a mark with nothing to stand on
		default:
			r = tame(r)
			g.text, g.width = string(r), runeCells(r)
		}
		l.glyphs = append(l.glyphs, g)
		l.width += g.width
		i += size
	}
	return l
}

// runeStart returns the beginning of the rune that holds a byte, within the line.
func runeStart(line string, at int) int {
	at = min(max(at, 0), len(line))
	for at > 0 && at < len(line) && !utf8.RuneStart(line[at]) {
		at--
	}
	return at
}

// combines reports whether a rune takes no cell of its own.
func combines(r rune) bool {
	return tame(r) == r && unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf)
}

func runeCells(r rune) int {
	switch width.LookupRune(r).Kind() {
	case width.EastAsianWide, width.EastAsianFullwidth:
		return 2
	}
	return 1
}

// cells returns the cells that the bytes from a to b of the line take: the first, and how many (1 at least).
func (l laid) cells(a, b int) (first, n int) {
	first, found := l.width, false
	end := 0
	for _, g := range l.glyphs {
		if !found && g.end > a {
			first, found = g.cell, true
		}
		if g.start < b {
			end = g.cell + g.width
		}
	}
	return first, max(end-first, 1)
}

// window returns the part of the line to show for a mark of n cells at first, and where the mark stands in it.
func (l laid) window(first, n int) (text string, at, shown int) {
	lo, hi := 0, l.width
	if l.width > widest {
		lo = max(first-before, 0)
		hi = min(lo+widest, l.width)
		lo = max(hi-widest, 0)
	}
	var b strings.Builder
	if lo > 0 || l.head {
		b.WriteRune('…')
		at = 1
	}
	base := -1
	for _, g := range l.glyphs {
		if g.cell < lo || g.cell+g.width > hi {
			continue
		}
		if base < 0 {
			base = g.cell
		}
		b.WriteString(g.text)
	}
	if hi < l.width || l.tail {
		b.WriteRune('…')
	}
	return b.String(), at + first - max(base, 0), max(min(n, hi-first), 1)
}
