package lang

import (
	"strings"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// Lines behind a bar: prose in a language, and the rows of a chart.

// holdsRaw tells the blocks in which lines behind a bar stand.
var holdsRaw = map[Block]bool{InProse: true, InStitch: true, InChart: true}

// raw reads a line behind a bar.
func (b *blocks) raw() {
	var l RawLine
	first := b.tokens[b.i]
	for ; b.i < len(b.tokens) && b.tokens[b.i].Kind != LineEnd; b.i++ {
		switch t := b.tokens[b.i]; t.Kind {
		case Word, Number:
			l.Head = b.text(t)
		case Sign:
			l.Span = source.Span{Start: t.Span.End, End: t.Span.End}
		case Prosaic:
			l.Span, l.Text = trimmed(t.Span, b.text(t))
		}
	}
	if top := b.top(); holdsRaw[top.Block] {
		top.Lines = append(top.Lines, l)
		b.count(l)
		top.astray = ""
	} else if top.astray != InProse {
		top.astray = InProse
		b.faults.add(diag.Diagnostic{Code: codeRawAstray, Span: first.Span.To(l.Span)})
	}
}

// trimmed takes one blank off the front of a text.
func trimmed(s source.Span, text string) (source.Span, string) {
	short := strings.TrimPrefix(text, " ")
	s.Start += int32(len(text) - len(short))
	return s, short
}
