package format

import (
	"strings"

	"ovillo/lang"
	"ovillo/lang/source"
)

// stop names a column that pieces of neighbouring lines begin in, from left to right.
type stop uint8

const (
	noStop      stop = iota
	wordStop         // what stands behind the first word of a line of a header: title   en "Hat"
	firstText        // the text in the first language: call hat en "the hat"
	secondText       // and in the second
	equalsStop       // the equals sign of a name: let leg = 4
	countStop        // the equals sign of a count: round: dc in each = 96
	commentStop      // a comment behind something
	endOfStops       // no stop
)

// cell is a piece of a line.
type cell struct {
	text  string
	stop  stop
	hangs int // where in it the word behind the colon begins; 0: nowhere
}

// cells writes a line with one space between its words and cuts it where columns begin. The first cell may be empty. The
// last token of the lines above tells a minus sign from a difference.
func (p *page) cells(l *line, last lang.Token) []cell {
	out := []cell{{}}
	depth, colons, texts := 0, 0, 0
	group := p.group(l)
	for i, t := range l.tokens {
		c := &out[len(out)-1]
		if i > 0 {
			last = l.tokens[i-1]
		}
		isText := i > 0 && i+1 < len(l.tokens) && t.Kind == lang.Word && l.tokens[i+1].Kind == lang.Quoted
		if isText {
			texts++
		}
		s := p.stopAt(l, group, i, depth, texts, isText)
		if s <= c.stop {
			s = noStop // columns go from left to right: but "L" 91 behind an equals sign is no text of a name
		}
		if s != noStop {
			out = append(out, cell{stop: s})
			c = &out[len(out)-1]
		} else if i > 0 && p.spaced(last, t, l, i) {
			c.text += " "
		}
		if colons == 1 && depth == 0 && !l.goesOn && p.is(last, ":") && t.Kind != lang.Comment {
			if c.hangs = source.Cells(c.text); s != noStop {
				c.hangs = -1 // at its very beginning
			}
		}
		c.text += t.Text(p.text)
		if p.is(t, ":") && depth == 0 {
			colons++
		}
		depth += p.nesting(t)
	}
	return out
}

// nesting is how a token changes the depth of brackets.
func (p *page) nesting(t lang.Token) int {
	switch {
	case p.is(t, "("), p.is(t, "["):
		return 1
	case p.is(t, ")"), p.is(t, "]"):
		return -1
	}
	return 0
}

// stopAt is the column that token i of a line begins in. isText: it is the language of a text, the texts-th of the line.
func (p *page) stopAt(l *line, group string, i, depth, texts int, isText bool) stop {
	t := l.tokens[i]
	switch {
	case p.counts[t.Span.Start]:
		return countStop
	case i == 0:
		return noStop
	case t.Kind == lang.Comment:
		return commentStop
	case (group == "header" || group == "measure") && p.behindFirst(l, i), group == "shape" && i == 2 && p.is(l.tokens[1], ":"):
		return wordStop
	case group == "" || group == "shape":
		return noStop
	case isText && texts == 1:
		return firstText
	case isText && texts == 2:
		return secondText
	case p.is(t, "=") && depth == 0:
		return equalsStop
	}
	return noStop
}

// behindFirst reports whether token i of a line is the first behind the word, or the turn of phrase, that the line begins
// with.
func (p *page) behindFirst(l *line, i int) bool {
	end := p.tree.WordEnd(l.tokens[0])
	return i > 0 && l.tokens[i].Span.Start >= end && l.tokens[i-1].Span.Start < end
}

// group names what a line has columns in common with; "" for lines that have none but counts and comments.
func (p *page) group(l *line) string {
	if l.goesOn || l.of == nil || l.closes {
		return ""
	}
	word := p.tree.Says(l.tokens[0])
	if word == "let" || word == "group" || word == "call" {
		return word
	}
	if l.of.parent == nil {
		return ""
	}
	switch l.of.parent.Block {
	case lang.InPattern, lang.InSizes, lang.InGauge, lang.InYarn, lang.InSample, lang.InStitch:
		if word == "in" {
			return "" // in joined rounds: reads as one phrase
		}
		return "header"
	case lang.InMeasure:
		if word == "check" || word == "meant" {
			return "" // no measure: there is no equals sign to stand in line
		}
		return "measure"
	case lang.InShape:
		return "shape"
	}
	return ""
}

// spaced reports whether a space stands between two tokens of a line, the second of them its i-th.
func (p *page) spaced(a, b lang.Token, l *line, i int) bool {
	apart := a.Span.End < b.Span.Start
	switch {
	case b.Kind == lang.Comment:
		return true
	case b.Kind == lang.Sign && strings.Contains(",:)].", b.Text(p.text)):
		return false
	case p.is(a, "("), p.is(a, "["), p.is(a, "."):
		return false
	case p.is(b, "(") && a.Kind == lang.Word:
		if p.read(l) {
			return !p.calls[a.Span.Start]
		}
		return apart
	case p.sided(l, i-1), p.sided(l, i-2):
		return false
	case p.decimalComma(l, i):
		return false
	case p.is(a, "-"):
		return !p.unary(a, l, i-1)
	}
	return true
}

// decimalComma reports whether token i of a line is what stands behind the comma of 3,5 where that could not be read: it stays
// as it was written, so that the message can say that a point is needed.
func (p *page) decimalComma(l *line, i int) bool {
	if i < 2 || p.read(l) || !p.is(l.tokens[i-1], ",") {
		return false
	}
	whole, comma, rest := l.tokens[i-2], l.tokens[i-1], l.tokens[i]
	return whole.Kind == lang.Number && rest.Kind == lang.Number && whole.Span.End == comma.Span.Start && comma.Span.End == rest.Span.Start
}

// sided reports whether token i of a line begins right-side or wrong-side, which are words of the trade and no difference.
func (p *page) sided(l *line, i int) bool {
	if i < 0 || i+2 >= len(l.tokens) || !p.is(l.tokens[i+1], "-") || p.values[l.tokens[i].Span.Start] {
		return false
	}
	word := p.tree.Says(l.tokens[i])
	return (word == "right" || word == "wrong") && p.tree.Says(l.tokens[i+2]) == "side"
}

// read reports whether the statement of a line could be read.
func (p *page) read(l *line) bool { return l.of != nil && l.of.Node != nil }

// unary reports whether the minus sign that is token i of a line belongs to one value.
func (p *page) unary(t lang.Token, l *line, i int) bool {
	at := t.Span.Start
	switch {
	case p.steps[at]:
		return false
	case p.minuses[at]:
		return true
	case i == 0:
		return false
	}
	before := l.tokens[i-1]
	if !p.read(l) && before.Kind != lang.Sign {
		return t.Span.End == l.tokens[i+1].Span.Start // as the author saw it
	}
	return before.Kind == lang.Sign && !p.is(before, ")") && !p.is(before, "]") && !p.is(before, "%")
}
