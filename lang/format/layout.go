package format

import (
	"strings"

	"ovillo/lang"
)

// indentStep is how much further in a block stands.
const indentStep = 2

// layOut finds the kind and the place of every line.
func (p *page) layOut() {
	var open *placed // the last statement that began
	var last lang.Token
	inner, para := 0, 0
	above := codeLine
	for _, l := range p.lines {
		l.after, l.kind = above, p.kindOf(l)
		above = l.kind
		if l.kind == blankLine {
			para++
		}
		l.para = para
		if l.kind == blankLine || l.kind == commentLine {
			continue
		}
		at := l.tokens[0].Span.Start
		switch {
		case open != nil && at > open.Head.Start && at < open.Head.End:
			l.goesOn, l.of, l.depth = true, open, open.depth
			if l.kind == barLine {
				l.kind = keptLine // a bar inside an open bracket: what was meant nobody knows
			}
		case l.kind != barLine && p.tree.Says(l.tokens[0]) == "end":
			inner = max(inner-1, 0)
			l.of, l.closes, l.depth = p.statements[at], true, inner
			open = l.of
		case p.statements[at] != nil && l.kind != barLine:
			open = p.statements[at]
			l.of, l.depth, inner = open, open.depth, open.depth
			if open.Block != "" {
				inner++
			}
		default:
			l.depth = inner
		}
		l.indent = l.depth * indentStep
		p.write(l, last)
		last = lastWord(l.tokens, last)
	}
}

// longest is how many words and signs a line may have to be set; a statement may have no more in all.
const longest = 10_000

// kindOf looks at a line alone.
func (p *page) kindOf(l *line) lineKind {
	n := len(l.tokens)
	switch {
	case n == 0:
		return blankLine
	case n == 1 && l.tokens[0].Kind == lang.Comment:
		return commentLine
	case n > longest:
		return keptLine
	case !p.tree.Idiom().IsZero() && l.tokens[0].Span.Start == p.tree.Idiom().Start:
		return keptLine // which language the source is in: no statement
	case p.is(l.tokens[0], "|"), n > 1 && p.is(l.tokens[1], "|") && mayHead(l.tokens[0]):
		return barLine
	}
	for _, t := range l.tokens {
		if t.Kind == lang.Stray {
			return keptLine
		}
	}
	return codeLine
}

// mayHead reports whether a token can stand before a bar.
func mayHead(t lang.Token) bool { return t.Kind == lang.Word || t.Kind == lang.Number }

// write sets what of a line needs no other line.
func (p *page) write(l *line, last lang.Token) {
	if l.kind == codeLine {
		if l.cells = p.cells(l, last); p.same(l) {
			return
		}
		l.kind, l.cells = keptLine, nil // two tokens would become another one, as in 1 . 5
	}
	if l.kind == keptLine {
		l.out = p.text[l.start:l.end]
	}
}

// same reports whether a line as it will be set has the tokens it had.
func (p *page) same(l *line) bool {
	var b strings.Builder
	for _, c := range l.cells {
		b.WriteString(c.text + " ")
	}
	text, i := b.String(), 0
	for _, t := range lang.Tokens(text) {
		if t.Kind == lang.Blank {
			continue
		}
		if i >= len(l.tokens) || t.Kind != l.tokens[i].Kind || t.Text(text) != l.tokens[i].Text(p.text) &&
			t.Kind != lang.Comment {
			return false
		}
		i++
	}
	return i == len(l.tokens)
}

// lastWord is the last token of a line that says something.
func lastWord(tokens []lang.Token, last lang.Token) lang.Token {
	for _, t := range tokens {
		if t.Kind != lang.Comment {
			last = t
		}
	}
	return last
}
