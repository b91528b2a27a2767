package lang

import (
	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// Along which edges: what a part starts along, the ends of rows, and the edges of a seam.

// Parse reads one run of the edge a part starts along.
func (n *FromRun) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	var err error
	switch {
	case r.take("mark"):
		n.Mark = &Name{}
		err = r.must(n.Mark)
	case r.take("multiple"):
		err = n.multiple(r)
	case r.take("chain"):
		n.Chain = &Cnt{}
		if err = r.must(n.Chain); err == nil {
			err = readIf(r, &n.Label)
		}
	default:
		err = n.places(r)
	}
	if err != nil {
		return err
	}
	r.close(&n.At, start)
	return nil
}

// multiple reads what stands behind the word.
func (n *FromRun) multiple(r reader) error {
	if !r.take("of") {
		return r.want("of")
	}
	n.Mult = &Cnt{}
	if err := r.must(n.Mult); err != nil {
		return err
	}
	if r.take("plus") {
		n.Plus = &Cnt{}
		if err := r.must(n.Plus); err != nil {
			return err
		}
	}
	if !r.take("by") {
		return r.want("by")
	}
	for {
		by := &Name{}
		if err := r.must(by); err != nil {
			return err
		}
		if n.By = append(n.By, by); !r.take("and") {
			return nil
		}
	}
}

// places reads a run of places that are there already.
func (n *FromRun) places(r reader) error {
	ends := false
	switch n.Below, n.Around = r.take("below"), r.take("around"); {
	case !n.Below && !n.Around && r.sideAhead():
		n.Side, ends = &SideEdge{}, true
		if err := r.must(n.Side); err != nil {
			return err
		}
	default:
		n.Ref = &Ref{}
		err := r.orNone(n.Ref, n.Below || n.Around)
		if err != nil {
			return err
		}
		ends = n.Around
	}
	if ends {
		if err := readIf(r, &n.Pick); err != nil {
			return err
		}
	}
	return readIf(r, &n.Label)
}

// orNone reads a part that has to stand here if something was read before it; else it may be that nothing of the kind is here.
func (r reader) orNone(p participle.Parseable, begun bool) error {
	if begun {
		return r.must(p)
	}
	return p.Parse(r.PeekingLexer)
}

// sideAhead reports whether a side edge follows: NAME edge of.
func (r reader) sideAhead() bool {
	if !r.name() || r.after().Value != "edge" {
		return false
	}
	back := r.MakeCheckpoint()
	defer r.LoadCheckpoint(back)
	r.Next()
	r.Next()
	return r.word("of")
}

// Parse reads a side edge.
func (n *SideEdge) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	if !r.sideAhead() {
		return participle.NextMatch
	}
	start := r.start()
	n.Side, n.Part = &Name{}, &Name{}
	if err := r.must(n.Side); err != nil {
		return err
	}
	r.Next() // edge
	r.Next() // of
	if err := r.must(n.Part); err != nil {
		return err
	}
	if r.oneOf("rows", "row") != "" {
		if err := n.rows(r); err != nil {
			return err
		}
	}
	r.close(&n.At, start)
	return nil
}

// rows reads which rows: from one number to another, or those of a label.
func (n *SideEdge) rows(r reader) error {
	if r.name() && r.after().Value != "to" {
		n.Label = &Name{}
		return r.must(n.Label)
	}
	var err error
	if n.From, err = r.rowNumber(); err != nil {
		return err
	}
	if !r.take("to") {
		return r.want("to")
	}
	n.To, err = r.rowNumber()
	return err
}

// rowNumber reads the number of a row: no sum, since what follows may be one of lengths.
func (r reader) rowNumber() (*Cnt, error) {
	if !r.valueAhead() || r.Peek().Type == tSign {
		return nil, r.slip(slipNumber)
	}
	start := r.start()
	e, err := (&climber{reader: r}).term()
	if err != nil {
		return nil, err
	}
	n := &Cnt{E: e}
	r.close(&n.At, start)
	return n, nil
}

// Parse reads how many stitches are picked up along ends of rows.
func (n *PickUp) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	switch {
	case r.take("by"):
		if !r.take("gauge") {
			return r.want("gauge")
		}
		n.Gauge = true
	case r.take("at"):
		n.N, n.Per = &Cnt{}, &Cnt{}
		if err := r.must(n.N); err != nil {
			return err
		}
		if !r.take("per") {
			return r.want("per")
		}
		if err := r.must(n.Per); err != nil {
			return err
		}
		if r.oneOf("rows", "row", "rounds", "round") == "" {
			return r.want("rows")
		}
	default:
		return participle.NextMatch
	}
	r.close(&n.At, start)
	return nil
}

// Parse reads an edge of a seam.
func (n *Edge) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	if !r.name() {
		return participle.NextMatch
	}
	start := r.start()
	var err error
	if r.sideAhead() {
		n.Side = &SideEdge{}
		err = r.must(n.Side)
	} else {
		n.Ref = &Ref{}
		err = r.must(n.Ref)
	}
	if err != nil {
		return err
	}
	r.close(&n.At, start)
	return nil
}
