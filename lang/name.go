package lang

import (
	"strings"

	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
	"golang.org/x/text/unicode/norm"
)

// Names, references and texts in quotes.

// Parse reads a name: any word that is not reserved.
func (n *Name) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	if !r.name() {
		return participle.NextMatch
	}
	start := r.start()
	n.Text = spelling(written(r.Next()))
	r.close(&n.At, start)
	return nil
}

// spelling brings a name into the one form in which names are compared: ñ may be typed as one letter or as n with a tilde.
func spelling(word string) string { return norm.NFC.String(word) }

// Parse reads a reference: NAME { . ( NAME | NUMBER ) }.
func (n *Ref) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	if !r.name() {
		return participle.NextMatch
	}
	start := r.start()
	path, err := r.path()
	if err != nil {
		return err
	}
	n.Path = path
	r.close(&n.At, start)
	return nil
}

// path reads the words of a reference; the next token is its first.
func (r reader) path() ([]string, error) {
	path := []string{spelling(written(r.Next()))}
	for r.take(".") {
		t := r.Peek()
		if t.Type != tNumber && !r.name() {
			return nil, r.slip(slipPoint)
		}
		path = append(path, spelling(written(t)))
		r.Next()
	}
	return path, nil
}

// Parse reads a text in quotes. Only a quote and a backslash are written with a backslash before them.
func (s *Str) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	t := r.Peek()
	if t.Type != tQuoted {
		return participle.NextMatch
	}
	r.Next()
	s.Text = unquote(t.Value)
	r.close(&s.At, t.Pos)
	return nil
}

// Evened makes spaces of tabulators and of line ends of the kind that ends no line here: they part words, no face draws them, and
// a space is as long, so that places stay.
func Evened(text string) string {
	if !strings.ContainsAny(text, "\t\r") {
		return text
	}
	return strings.NewReplacer("\t", " ", "\r", " ").Replace(text)
}

func unquote(quoted string) string {
	text := Evened(quoted[1 : len(quoted)-1])
	if !strings.Contains(text, `\`) {
		return text
	}
	var b strings.Builder
	for i := 0; i < len(text); i++ {
		if text[i] == '\\' && i+1 < len(text) && (text[i+1] == '"' || text[i+1] == '\\') {
			i++
		}
		b.WriteByte(text[i])
	}
	return b.String()
}
