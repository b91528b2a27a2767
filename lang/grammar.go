package lang

import (
	"sync"

	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// part is the parser of a struct of the tree, made from its tags when it is first needed: a source uses few of them.
//
// One word decides everywhere: a branch that has taken a token is not left again. So an error stands at the word that does
// not fit, and no line can make the parser try many ways.
type part[G any] struct {
	once   sync.Once
	parser *participle.Parser[G]
}

var (
	toTheEnd = participle.AllowTrailing(false)
	partOnly = participle.AllowTrailing(true)
)

// read reads a node that other things may follow.
func (p *part[G]) read(lx *lexer.PeekingLexer) (*G, error) { return p.parse(lx, partOnly) }

// whole reads a node that must be all there is.
func (p *part[G]) whole(lx *lexer.PeekingLexer) (*G, error) { return p.parse(lx, toTheEnd) }

func (p *part[G]) parse(lx *lexer.PeekingLexer, option participle.ParseOption) (*G, error) {
	p.once.Do(func() {
		p.parser = participle.MustBuild[G](participle.Lexer(Definition{}), participle.Elide("Silent"),
			participle.UseLookahead(0))
	})
	return p.parser.ParseFromLexer(lx, option)
}
