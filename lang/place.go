package lang

import (
	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// Which places: what counts as a place, the next ones, and each of some.

// Parse reads what counts as a place. `left` is one unless something is looked for in it (left.1).
func (k *Kinds) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	if !r.kindAhead() {
		return participle.NextMatch
	}
	start := r.start()
	k.A = r.Next().Value
	if r.take("and") {
		if k.B = r.oneOf("space", "spaces", "chain", "chains"); k.B == "" {
			return r.want("space", "chain")
		}
	}
	if r.take("of") {
		k.Of = &Cnt{}
		if err := r.must(k.Of); err != nil {
			return err
		}
	}
	r.close(&k.At, start)
	return nil
}

// kindAhead reports whether the next token says what counts as a place.
func (r reader) kindAhead() bool { return isKind(r.Peek()) && r.after().Value != "." }

func isKind(t *lexer.Token) bool {
	if t.Type != tWord {
		return false
	}
	switch t.Value {
	case "st", "sts", "space", "spaces", "chain", "chains", "gap", "gaps", "left":
		return true
	}
	return false
}

// targetAhead reports whether a target begins with the next token.
func (r reader) targetAhead() bool {
	if r.Peek().Type != tWord {
		return false
	}
	switch r.Peek().Value {
	case "in", "between", "below", "beside", "through":
		return true
	}
	return false
}

// Parse reads where to work.
func (t *Target) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	if !r.targetAhead() {
		return participle.NextMatch
	}
	start := r.start()
	if err := t.read(r); err != nil {
		return err
	}
	r.close(&t.At, start)
	return nil
}

func (t *Target) read(r reader) error {
	switch word := r.Next().Value; word {
	case "in":
		t.In = &In{}
		return r.must(t.In)
	case "between":
		if r.word("next") {
			return r.slip(slipBetween)
		}
		if !r.take("each") {
			return r.want("each")
		}
		t.Between = &InEach{}
		return r.must(t.Between)
	case "through":
		if !r.take("each") {
			return r.want("each")
		}
		if !r.take("and") {
			return r.want("and")
		}
		t.Through = &Ref{}
		return r.must(t.Through)
	default:
		t.Prep = word
		t.Each = r.take("each")
		r.take("of")
		t.Run = &Ref{}
		return r.must(t.Run)
	}
}

// Parse reads what stands behind `in`. The words that are free as names come first only where no point follows them.
func (n *In) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	if err := n.read(r); err != nil {
		return err
	}
	r.close(&n.At, start)
	return nil
}

func (n *In) read(r reader) error {
	switch {
	case r.take("next"):
		n.Next = &InNext{}
		return r.must(n.Next)
	case r.take("each"):
		n.Each = &InEach{}
		return r.must(n.Each)
	case r.word("last") && r.after().Value != ".":
		n.Last = r.take("last")
		return r.lastOnes(&n.LastN)
	case r.word("first") && r.after().Value != ".":
		n.First = r.take("first")
		r.take("st")
	case r.take("same"):
		n.Same = true
		r.take("st")
	case r.take("ring"):
		n.Ring = true
	case r.take("marker"):
		n.Marker = true
	case r.take("this"):
		if n.Gap = r.take("gap"); !n.Gap {
			return r.want("gap")
		}
	case r.Peek().Type == tNumber:
		return r.slip(slipInNumber)
	default:
		n.Run = &Ref{}
		return r.must(n.Run)
	}
	return nil
}

// Parse reads what stands behind `in next`; that may be nothing.
func (n *InNext) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	if err := n.read(r); err != nil {
		return err
	}
	r.close(&n.At, start)
	if n.N == nil && n.Of == nil && n.Kinds == nil && n.Ref == nil && n.Depth == nil {
		n.Pos = n.EndPos // nothing was read: the node stands right behind `next`
	}
	return nil
}

func (n *InNext) read(r reader) error {
	if !r.kindAhead() && !r.loneName() {
		if err := readIf(r, &n.N); err != nil {
			return err
		}
	}
	if r.take("of") {
		n.Of = &Ref{}
		return r.must(n.Of)
	}
	if err := readIf(r, &n.Kinds); err != nil {
		return err
	}
	if n.Kinds == nil {
		if err := readIf(r, &n.Ref); err != nil {
			return err
		}
	}
	return n.depth(r)
}

// loneName reports whether a name follows that is not the beginning of a count, nor a count before a kind or a name.
func (r reader) loneName() bool {
	if !r.name() {
		return false
	}
	defer r.LoadCheckpoint(r.MakeCheckpoint())
	if _, err := r.path(); err != nil {
		return true
	}
	t := r.Peek()
	return !isArithmetic(t) && !isKind(t) && !r.name()
}

// depth reads `2 rows below`.
func (n *InNext) depth(r reader) error {
	if n.N != nil && n.Kinds == nil && n.Ref == nil && r.rowWord() {
		return r.slip(slipBelow)
	}
	if err := readIf(r, &n.Depth); err != nil || n.Depth == nil {
		return err
	}
	if !r.rowWord() {
		return r.want("rows", "rounds")
	}
	r.Next()
	if !r.take("below") {
		return r.want("below")
	}
	return nil
}

func (r reader) rowWord() bool {
	return r.word("row") || r.word("rows") || r.word("round") || r.word("rounds")
}

// Parse reads what stands behind `in each` and `between each`; that may be nothing.
func (e *InEach) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	if err := e.places(r); err != nil {
		return err
	}
	if err := readIf(r, &e.Bound); err != nil {
		return err
	}
	r.close(&e.At, start)
	if e.OfNext == nil && e.Kinds == nil && e.Ref == nil && e.Bound == nil {
		e.Pos = e.EndPos
	}
	return nil
}

func (e *InEach) places(r reader) error {
	if r.word("of") && r.after().Value == "next" {
		r.Next()
		r.Next()
		e.OfNext = &Cnt{}
		if err := r.must(e.OfNext); err != nil {
			return err
		}
		r.oneOf("st", "sts", "chain", "chains")
		return nil
	}
	if err := readIf(r, &e.Kinds); err != nil || e.Kinds != nil {
		return err
	}
	of := r.take("of")
	if err := readIf(r, &e.Ref); err != nil {
		return err
	}
	if of && e.Ref == nil {
		return r.slip(slipPlace)
	}
	return nil
}
