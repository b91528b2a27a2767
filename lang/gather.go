package lang

import "ovillo/lang/source"

// How lines make a statement. A statement ends with its line unless a bracket is open, or its last token is a comma, a
// colon, an equals sign or an operator, or the next line that says anything begins with an equals sign. A line that begins
// with a line word begins a statement, whatever is open above it: so a bracket that is not closed spoils one statement.

// gathered is the tokens of one statement.
type gathered struct {
	tokens []Token // with the silent ones between its first and its last
	head   source.Span
	says   int      // tokens that say something
	open   []Token  // brackets that are not closed, outermost first; no more than fault needs
	fault  slipKind // why it cannot be read
	at     Token    // where the fault shows
}

// gatherer joins the tokens of a statement.
type gatherer struct {
	*blocks
	g     gathered
	depth int
	last  int // index of the last token that says something
}

// gather joins the statement that begins with the next token, and moves on behind its line end.
func (b *blocks) gather() gathered {
	s := &gatherer{blocks: b, last: b.i}
	first := b.i
	for s.i < len(s.tokens) {
		t := s.tokens[s.i]
		switch {
		case t.Kind == LineEnd:
			next := s.sayingFrom(s.i + 1)
			if !s.goesOn(next) {
				s.i++
				return s.done(first)
			}
			s.i = next
			continue
		case t.Kind.silent():
		case s.harmless():
			s.tokens[s.i].Kind = Blank
		default:
			s.add(t)
		}
		s.i++
	}
	return s.done(first)
}

func (s *gatherer) add(t Token) {
	s.last = s.i
	if s.g.says++; s.g.says > maxTokens && s.g.fault == noSlip {
		s.g.fault, s.g.at = slipLong, t
	}
	if t.Kind != Sign {
		if k := s.oversized(t); k != noSlip && s.g.fault == noSlip {
			s.g.fault, s.g.at = k, t
		}
		return
	}
	switch s.file.Text[t.Span.Start] {
	case '(', '[':
		if s.depth++; s.depth <= maxDepth {
			s.g.open = append(s.g.open, t)
		} else if s.depth == maxDepth+1 {
			s.g.fault, s.g.at = slipDepth, t // wins over every other fault: nothing may read this statement
		}
	case ')', ']':
		s.close(t)
	}
}

// close takes a bracket off. One that closes nothing, or closes another kind, is a fault.
func (s *gatherer) close(t Token) {
	if s.depth > maxDepth {
		s.depth--
		return
	}
	n := len(s.g.open)
	if n == 0 || !pairs(s.file.Text[s.g.open[n-1].Span.Start], s.file.Text[t.Span.Start]) {
		if s.g.fault == noSlip {
			s.g.fault, s.g.at = slipClosing, t
		}
		if n == 0 {
			return
		}
	}
	s.g.open = s.g.open[:n-1]
	s.depth--
}

func pairs(open, closing byte) bool {
	return open == '(' && closing == ')' || open == '[' && closing == ']'
}

// harmless reports whether the current token is `the` before what it belongs to: it says nothing there.
func (s *gatherer) harmless() bool {
	t := s.tokens[s.i]
	if t.Kind != Word || s.g.says == 0 || s.text(t) != "the" {
		return false
	}
	next := s.sayingFrom(s.i + 1)
	return next < len(s.tokens) && (s.tokens[next].Kind == Word || s.tokens[next].Kind == Number)
}

// goesOn reports whether the statement goes on behind a line end, where next is the first token that says something. A
// statement that should go on but cannot, since another begins there, is at fault.
func (s *gatherer) goesOn(next int) bool {
	last := s.tokens[s.last]
	waits := last.Kind == Sign && waitsForMore(s.text(last))
	more := s.depth > 0 || waits
	if next >= len(s.tokens) || s.beginsLine(next) {
		if more && s.g.fault == noSlip {
			s.g.fault, s.g.at = slipUnfinished, last
			if s.depth > 0 {
				s.g.fault, s.g.at = slipOpen, s.g.open[len(s.g.open)-1]
			}
		}
		return false
	}
	return more || s.tokens[next].Kind == Sign && s.text(s.tokens[next]) == "="
}

// waitsForMore reports whether a statement cannot end in a sign.
func waitsForMore(sign string) bool {
	switch sign {
	case ",", ":", "=", "+", "-", "*", "/":
		return true
	}
	return false
}

func (s *gatherer) done(first int) gathered {
	if s.i >= len(s.tokens) {
		s.goesOn(s.i)
	}
	s.g.tokens = s.tokens[first : s.last+1]
	s.g.head = source.Span{Start: s.tokens[first].Span.Start, End: s.tokens[s.last].Span.End}
	return s.g
}

// sayingFrom is the index of the first token from i on that says something; the number of tokens if there is none.
func (b *blocks) sayingFrom(i int) int {
	for i < len(b.tokens) && b.tokens[i].Kind.silent() {
		i++
	}
	return i
}

// beginsLine reports whether the token at i, the first of its line, begins a statement whatever is open above it.
func (b *blocks) beginsLine(i int) bool {
	t := b.tokens[i]
	switch t.Kind {
	case Number:
		return b.rowsAhead(i) && b.colonAhead(i)
	case Word:
		switch c := classes[b.text(t)]; {
		case c&lineWord != 0:
			return b.textAt(b.sayingOnLine(i+1)) != "(" // rows(19 cm, dc) is a value
		case c&proseWord != 0:
			return b.sayingOnLine(i+1) < 0
		}
	}
	return false
}

// rowsAhead reports whether `rows` or `rounds` stands on the line of token i outside brackets, before any comma, colon or
// equals sign: leg - 2 rounds: …
func (b *blocks) rowsAhead(i int) bool { return b.wordAhead(i, "rows", "rounds") }

// acrossAhead reports whether `across` stands there: wide - 1 across, 3 down.
func (b *blocks) acrossAhead(i int) bool { return b.wordAhead(i, "across", "across") }

func (b *blocks) wordAhead(i int, one, other string) bool {
	for depth := 0; i >= 0; i = b.sayingOnLine(i + 1) {
		switch b.textAt(i) {
		case "(":
			depth++
		case ")":
			depth--
		case ",", ":", "=":
			if depth == 0 {
				return false
			}
		case one, other:
			if depth == 0 && b.textAt(b.sayingOnLine(i+1)) != "(" {
				return true
			}
		}
	}
	return false
}

// colonAhead reports whether a colon stands on the rest of the line of token i.
func (b *blocks) colonAhead(i int) bool {
	for i >= 0 && b.textAt(i) != ":" {
		i = b.sayingOnLine(i + 1)
	}
	return i >= 0
}

// sayingOnLine is the index of the first token from i on that says something on the same line, or -1.
func (b *blocks) sayingOnLine(i int) int {
	for ; i < len(b.tokens) && b.tokens[i].Kind != LineEnd; i++ {
		if !b.tokens[i].Kind.silent() {
			return i
		}
	}
	return -1
}

// text is what a token is read as, written what it says.
func (b *blocks) text(t Token) string    { return b.spelt.text(t, b.file.Text) }
func (b *blocks) written(t Token) string { return t.Text(b.file.Text) }

// textAt is the text of the token at i, "" for -1.
func (b *blocks) textAt(i int) string {
	if i < 0 || i >= len(b.tokens) {
		return ""
	}
	return b.text(b.tokens[i])
}
