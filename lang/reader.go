package lang

import (
	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// reader is what the parts of the grammar that are read by hand read from. Each of them is a Parse method, called by
// participle: participle.NextMatch says "this does not stand here", any other error ends the statement.
type reader struct{ *lexer.PeekingLexer }

// sign reports whether the next token is a certain sign.
func (r reader) sign(s string) bool { t := r.Peek(); return t.Type == tSign && t.Value == s }

// word reports whether the next token is a certain word.
func (r reader) word(w string) bool { t := r.Peek(); return t.Type == tWord && t.Value == w }

// take moves on if the next token is a certain word or sign.
func (r reader) take(s string) bool {
	if t := r.Peek(); t.Value == s && (t.Type == tWord || t.Type == tSign) {
		r.Next()
		return true
	}
	return false
}

// oneOf takes the next token if it is one of some words, and returns it.
func (r reader) oneOf(words ...string) string {
	for _, w := range words {
		if r.take(w) {
			return w
		}
	}
	return ""
}

// name reports whether the next token may be a name.
func (r reader) name() bool { t := r.Peek(); return t.Type == tWord && !Reserved(t.Value) }

// after returns the token behind the next one.
func (r reader) after() *lexer.Token {
	back := r.MakeCheckpoint()
	r.Next()
	t := r.Peek()
	r.LoadCheckpoint(back)
	return t
}

// start is where a node that begins with the next token begins.
func (r reader) start() lexer.Position { return r.Peek().Pos }

// close gives a node its place, from its start to the last token read.
func (r reader) close(at *At, start lexer.Position) { at.Pos, at.EndPos = start, r.RawPeek().Pos }

// want is the error of a statement that can only go on with one of some words.
func (r reader) want(words ...string) error {
	return &slip{kind: slipWords, token: *r.Peek(), words: words}
}

// must reads a part that has to stand here.
func (r reader) must(p participle.Parseable) error {
	err := p.Parse(r.PeekingLexer)
	if err == participle.NextMatch {
		return r.slip(missing(p))
	}
	return err
}

// missing is what is missing where a part does not stand.
func missing(p participle.Parseable) slipKind {
	switch p.(type) {
	case *Name:
		return slipName
	case *Ref, *In, *Target:
		return slipPlace
	case *Cnt, *PreCnt, *BefCnt, *Claim, *Claims, *OffItem:
		return slipNumber
	case *List:
		return slipList
	}
	return slipValue
}

// readIf reads a part that can stand here into its field.
func readIf[T any, P interface {
	*T
	participle.Parseable
}](r reader, out **T) error {
	n := new(T)
	ok, err := r.may(P(n))
	if ok {
		*out = n
	}
	return err
}

// may reads a part that can stand here, and reports whether it does.
func (r reader) may(p participle.Parseable) (bool, error) {
	err := p.Parse(r.PeekingLexer)
	if err == participle.NextMatch {
		return false, nil
	}
	return err == nil, err
}
