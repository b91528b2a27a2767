package format

import (
	"strings"

	"ovillo/lang"
	"ovillo/lang/source"
)

// setBars sets the lines behind bars, with the bars of neighbouring lines in one column. The text behind a bar stays as it
// is: in a chart, and in a list in prose, blanks count.
func (p *page) setBars() {
	var run []*line
	depth := 0
	for _, l := range p.lines {
		switch {
		case l.kind == barLine && (len(run) == 0 || l.depth == depth):
			run, depth = append(run, l), l.depth
		case l.kind == barLine:
			p.setRun(run)
			run, depth = []*line{l}, l.depth
		case l.kind != commentLine:
			p.setRun(run)
			run = nil
		}
	}
	p.setRun(run)
}

// setRun sets lines that stand together: languages to the left, the numbers of rows to the right.
func (p *page) setRun(run []*line) {
	width := 0
	for _, l := range run {
		width = max(width, source.Cells(p.barHead(l)))
	}
	for _, l := range run {
		head := p.barHead(l)
		pad := strings.Repeat(" ", width-source.Cells(head))
		if l.tokens[0].Kind == lang.Number {
			head = pad + head
		} else {
			head += pad
		}
		if width > 0 {
			head += " "
		}
		l.out = strings.Repeat(" ", l.indent) + head + "|" + p.behindBar(l)
	}
}

// barHead is what stands before a bar.
func (p *page) barHead(l *line) string {
	if p.is(l.tokens[0], "|") {
		return ""
	}
	return l.tokens[0].Text(p.text)
}

// behindBar is the text behind a bar, with the space that parts them.
func (p *page) behindBar(l *line) string {
	last := l.tokens[len(l.tokens)-1]
	if last.Kind != lang.Prosaic {
		return ""
	}
	text := strings.TrimRight(last.Text(p.text), blanks)
	if text == "" || strings.HasPrefix(text, " ") {
		return text
	}
	return " " + text
}
