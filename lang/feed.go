package lang

import (
	"io"

	"github.com/alecthomas/participle/v2/lexer"
)

// The tokens of a statement as participle wants them: blanks, comments and line ends inside a statement become one elided
// token, so that a node ends where its last token ends and not where the next one begins.

// The token types of participle, one for each kind of token that says something.
const (
	tEOF    = lexer.EOF
	tSilent = lexer.TokenType(-2 - iota)
	tWord
	tNumber
	tQuoted
	tProsaic
	tSign
	tStray
)

var feedTypes = [...]lexer.TokenType{LineEnd: tSilent, Blank: tSilent, Comment: tSilent, Word: tWord, Number: tNumber,
	Quoted: tQuoted, Prosaic: tProsaic, Sign: tSign, Stray: tStray}

// Definition is the lexer of the language for participle.
type Definition struct{}

// Symbols names the token types for use in tags.
func (Definition) Symbols() map[string]lexer.TokenType {
	return map[string]lexer.TokenType{"EOF": tEOF, "Silent": tSilent, "Word": tWord, "Number": tNumber, "Quoted": tQuoted,
		"Prosaic": tProsaic, "Sign": tSign, "Stray": tStray}
}

// Lex reads a text to its end and cuts it into tokens.
func (d Definition) Lex(name string, r io.Reader) (lexer.Lexer, error) {
	b, err := io.ReadAll(r)
	if err != nil {
		return nil, err
	}
	return d.LexString(name, string(b))
}

// LexString cuts a text into tokens.
func (Definition) LexString(_ string, text string) (lexer.Lexer, error) {
	return &feed{text: text, tokens: Tokens(text), spelt: &spelt{}, end: len(text)}, nil
}

// feed hands tokens to participle, one at a time.
type feed struct {
	text   string
	tokens []Token
	spelt  *spelt
	end    int // offset of the end, for the last token
}

// Next returns the next token; it never fails.
func (f *feed) Next() (lexer.Token, error) {
	if len(f.tokens) == 0 {
		return lexer.Token{Type: tEOF, Pos: lexer.Position{Offset: f.end}}, nil
	}
	t := f.tokens[0]
	f.tokens = f.tokens[1:]
	at := lexer.Position{Offset: int(t.Span.Start)}
	if f.spelt != nil && f.spelt.single[t.Span] {
		at.Filename = t.Text(f.text)
	}
	return lexer.Token{Type: feedTypes[t.Kind], Value: f.spelt.text(t, f.text), Pos: at}, nil
}

// written is a token as the source has it, which is what counts if it is a name. In a source that is not in English a word
// may be read as another one; the field for the name of a file, of which a parser reads but one, then holds its spelling.
func written(t *lexer.Token) string {
	if t.Pos.Filename != "" {
		return t.Pos.Filename
	}
	return t.Value
}

// upgrade makes the lexer that a statement's parser reads from.
func (f *feed) upgrade() *lexer.PeekingLexer {
	lx, err := lexer.Upgrade(f, tSilent)
	if err != nil {
		panic(err) // Next never fails
	}
	return lx
}
