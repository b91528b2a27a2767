package lang

import "ovillo/lang/source"

// TokenKind tells the kinds of token apart.
type TokenKind uint8

// The kinds of token. Every byte of a source belongs to exactly one token.
const (
	LineEnd TokenKind = iota + 1 // a line feed, with the carriage return before it
	Blank                        // spaces, tabs, no-break spaces, the byte-order mark
	Comment                      // # up to the end of the line
	Word                         // dc, right_gap, año
	Number                       // 96, 3.75
	Quoted                       // "sand", with its quotes
	Prosaic                      // what stands behind a bar, up to the last letter of the line
	Sign                         // ( ) [ ] , : = + - * / . | %
	Stray                        // anything else; the statement that meets one reports it
)

// Token is a piece of a source.
type Token struct {
	Kind TokenKind
	Span source.Span
}

// Text returns the token's text in the source it was cut from.
func (t Token) Text(text string) string { return text[t.Span.Start:t.Span.End] }

// silent reports whether a token says nothing in a statement.
func (k TokenKind) silent() bool { return k == LineEnd || k == Blank || k == Comment }
