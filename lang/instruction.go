package lang

import (
	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// Instructions are told apart by their first word, so that each is tried once.

var (
	chainPart       part[ChainItem]
	lengthenPart    part[Lengthen]
	establishedPart part[Established]
	skipPart        part[Skip]
	leavePart       part[Leave]
	turnPart        part[Turn]
	joinPart        part[Join]
	markPart        part[Mark]
	yarnPart        part[ChangeYarn]
	chartPart       part[ChartRow]
	togetherPart    part[Together]
	bracketPart     part[Bracket]
	rowOptPart      part[RowOpt]
)

// itemWords gives the parser of each instruction that begins with a word of its own.
var itemWords map[string]func(*lexer.PeekingLexer) (Item, error)

func init() { // not a literal: the parsers lead back to readItem
	itemWords = map[string]func(*lexer.PeekingLexer) (Item, error){
		"ch":   itemOf(&chainPart),
		"skip": itemOf(&skipPart),
		"as":   itemOf(&establishedPart),

		"foundation": itemOf(&lengthenPart),

		"leave":  itemOf(&leavePart),
		"turn":   itemOf(&turnPart),
		"join":   itemOf(&joinPart),
		"mark":   itemOf(&markPart),
		"move":   itemOf(&markPart),
		"unmark": itemOf(&markPart),
		"with":   itemOf(&yarnPart),
		"from":   itemOf(&chartPart),
	}
}

// itemPointer is a pointer to a struct that is an instruction.
type itemPointer[G any] interface {
	*G
	Item
}

func itemOf[G any, P itemPointer[G]](p *part[G]) func(*lexer.PeekingLexer) (Item, error) {
	return func(lx *lexer.PeekingLexer) (Item, error) {
		n, err := p.read(lx)
		return P(n), err
	}
}

// Parse reads a list of instructions.
func (l *List) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	for {
		item, err := readItem(lx)
		if err != nil {
			if err == participle.NextMatch && len(l.Items) > 0 {
				return r.slip(slipList)
			}
			return err
		}
		l.Items = append(l.Items, item)
		if !r.take(",") {
			r.close(&l.At, start)
			return nil
		}
	}
}

// readItem reads the instruction that the next word begins.
func readItem(lx *lexer.PeekingLexer) (Item, error) {
	r := reader{lx}
	switch t := r.Peek(); t.Type {
	case tWord:
		if read := itemWords[t.Value]; read != nil {
			return read(lx)
		}
		if t.Value == "no" && r.after().Value == "join" {
			return joinPart.read(lx)
		}
		if Reserved(t.Value) && t.Value != "sl" && t.Value != "rows" {
			return nil, participle.NextMatch
		}
		return readWork(reader{lx})
	case tNumber:
		return readWork(reader{lx})
	case tSign:
		switch t.Value {
		case "(":
			return togetherPart.read(lx)
		case "[":
			return bracketPart.read(lx)
		}
	}
	return nil, participle.NextMatch
}
