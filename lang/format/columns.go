package format

import (
	"strings"

	"ovillo/lang/source"
)

// widest is the last place where a column may begin. A line that reaches further is not lined up with the others.
const widest = 80

// mostHang is how far the lines that continue a statement may stand in from its first one.
const mostHang = 16

// alignWords sets the beginnings of lines and the columns behind their first words.
func (p *page) alignWords() {
	for _, l := range p.lines {
		if l.kind == codeLine && !l.goesOn {
			p.begin(l)
		}
	}
	p.align(wordStop)
}

// begin writes the first cell of a line.
func (p *page) begin(l *line) {
	l.out = strings.Repeat(" ", l.indent)
	p.put(l, 0)
}

// put writes the next cell of a line behind so many spaces.
func (p *page) put(l *line, spaces int) {
	l.out += strings.Repeat(" ", max(spaces, 0))
	c := l.cells[0]
	if c.hangs != 0 {
		l.hangs = source.Cells(l.out) + max(c.hangs, 0)
	}
	l.out += c.text
	l.cells = l.cells[1:]
}

// hang sets the beginnings of lines that continue a statement, and the lines that are comments: they stand where the next
// line stands, and before the end of a block where its statements stand.
func (p *page) hang() {
	in := 0
	for _, l := range p.lines {
		if l.kind != codeLine {
			continue
		}
		if !l.goesOn {
			in = l.indent + indentStep
			if l.hangs > 0 && l.hangs-l.indent <= mostHang {
				in = l.hangs
			}
			continue
		}
		if l.indent = in; l.cells[0].text == "" {
			l.indent = (l.depth + 1) * indentStep // a count alone: its column is not that of the work
		}
		p.begin(l)
	}
	in = 0
	for i := len(p.lines) - 1; i >= 0; i-- {
		switch l := p.lines[i]; {
		case l.kind == commentLine:
			l.out = strings.Repeat(" ", in) + l.tokens[0].Text(p.text)
		case l.closes:
			in = (l.depth + 1) * indentStep
		case l.kind != blankLine:
			in = l.indent
		}
	}
}

// alignRest sets all other columns, from left to right.
func (p *page) alignRest() {
	for s := firstText; s < endOfStops; s++ {
		if s == equalsStop || s == countStop {
			p.alignLists(s)
		}
		p.align(s)
	}
}

// align sets one column in all runs of lines that have it in common.
func (p *page) align(s stop) {
	var run []*line
	var key any
	for _, l := range p.lines {
		k := p.runOf(l, s)
		if k == (skip{}) {
			continue
		}
		if k == nil || k != key {
			p.alignRun(run, s)
			run, key = nil, k
		}
		if k == nil {
			continue
		}
		if len(l.cells) > 0 && l.cells[0].stop == s {
			run = append(run, l)
		}
	}
	p.alignRun(run, s)
}

// alignRun sets a column in some lines.
func (p *page) alignRun(run []*line, s stop) {
	gap := 1
	if s == commentStop {
		gap = 2
	}
	column := 0
	for _, l := range run {
		if at := behind(l, gap); at <= widest {
			column = max(column, at)
		}
	}
	for _, l := range run {
		p.put(l, max(column, behind(l, gap))-source.Cells(l.out))
	}
}

// behind is the first column at which a cell can follow what is set of a line.
func behind(l *line, gap int) int {
	if strings.TrimLeft(l.out, " ") == "" {
		return l.indent
	}
	return source.Cells(l.out) + gap
}
