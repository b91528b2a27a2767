package format

import (
	"ovillo/lang"
)

// page is a source that is being set.
type page struct {
	tree       *lang.File
	text       string
	lines      []*line
	statements map[int32]*placed // by the offset of their first token
	calls      map[int32]bool    // names before the bracket of a call
	values     map[int32]bool    // what begins a value
	minuses    map[int32]bool    // minus signs that belong to one value
	steps      map[int32]bool    // signs of a count that says how it changes: + 8 each time
	counts     map[int32]bool    // equals signs before the count of a row or a block
}

// placed is a statement and its place in the blocks.
type placed struct {
	*lang.Statement
	depth  int
	parent *lang.Statement // nil in the file
	root   *lang.Statement // the outermost block it stands in, or itself
}

// lineKind tells what is done with a line.
type lineKind uint8

const (
	blankLine   lineKind = iota
	keptLine             // stays as it is
	commentLine          // a comment alone
	barLine              // a text behind a bar
	codeLine
)

// line is one line of the source.
type line struct {
	kind   lineKind
	after  lineKind     // the kind of the line above
	tokens []lang.Token // without blanks and the line end
	start  int32        // of the line in the text
	end    int32
	goesOn bool    // with the statement of the line above
	of     *placed // the statement; nil if it is none, as `end`
	closes bool    // is the end of a block
	depth  int
	para   int // which paragraph of the source: blank lines part them

	indent int
	hangs  int // the column of the word behind the colon, where the next lines of the statement begin; 0: nowhere
	cells  []cell
	out    string // what is set so far
}

// newPage finds out what of a tree says how to set the text.
func newPage(text string, tree *lang.File) *page {
	p := &page{tree: tree, text: text, statements: map[int32]*placed{}, calls: map[int32]bool{}, values: map[int32]bool{},
		minuses: map[int32]bool{}, steps: map[int32]bool{}, counts: map[int32]bool{}}
	p.place(tree.Body, placed{})
	claims := map[int32]bool{}
	lang.Walk(tree, func(n lang.Node) bool {
		switch n := n.(type) {
		case *lang.Expr:
			p.values[n.Span().Start] = true
			p.calls[n.Span().Start] = p.calls[n.Span().Start] || n.Op == lang.OpCall
			p.minuses[n.Span().Start] = p.minuses[n.Span().Start] || n.Op == lang.OpNeg
		case *lang.Claims:
			claims[n.Span().Start] = true
		case *lang.Claim:
			p.steps[n.Span().Start] = n.More != nil
		}
		return true
	})
	tokens := lang.Tokens(text)
	p.findCounts(tokens, claims)
	p.cut(tokens)
	return p
}

func (p *page) place(body []*lang.Statement, above placed) {
	for _, s := range body {
		at := placed{s, above.depth, above.Statement, above.root}
		if at.root == nil {
			at.root = s
		}
		p.statements[s.Head.Start] = &at
		inner := at
		inner.depth++
		p.place(s.Body, inner)
	}
}

// findCounts finds the equals signs before the counts of rows.
func (p *page) findCounts(tokens []lang.Token, claims map[int32]bool) {
	var last lang.Token
	for _, t := range tokens {
		if t.Kind == lang.Blank || t.Kind == lang.LineEnd || t.Kind == lang.Comment {
			continue
		}
		if claims[t.Span.Start] && p.is(last, "=") {
			p.counts[last.Span.Start] = true
		}
		last = t
	}
}

// is reports whether a token is a sign.
func (p *page) is(t lang.Token, sign string) bool {
	return t.Kind == lang.Sign && t.Text(p.text) == sign
}

// cut makes lines of the tokens.
func (p *page) cut(tokens []lang.Token) {
	l := &line{}
	for _, t := range tokens {
		l.end = t.Span.End
		switch t.Kind {
		case lang.LineEnd:
			l.end = t.Span.Start
			p.lines = append(p.lines, l)
			l = &line{start: t.Span.End, end: t.Span.End}
		case lang.Blank:
		default:
			if len(l.tokens) > longest { // the line stays as it is: how it begins and ends is all that is asked
				l.tokens = l.tokens[:longest]
			}
			l.tokens = append(l.tokens, t)
		}
	}
	if len(l.tokens) > 0 {
		p.lines = append(p.lines, l)
	}
}
