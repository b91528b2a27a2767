package lang

import (
	"slices"

	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// Rows and the counts behind them are nine lines of ten in a pattern, so they are read by hand.

// Parse reads a row.
func (n *Row) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	n.Head, n.List = &RowHead{}, &List{}
	if err := r.must(n.Head); err != nil {
		return err
	}
	switch {
	case n.Head.Of != nil:
		n.List = nil // the stitch pattern says what is worked
	case r.take(":"):
		if err := r.must(n.List); err != nil {
			return err
		}
	case n.Head.From == nil:
		return r.want(":")
	default:
		n.List = nil // a mesh: the chart says all that is worked
	}
	if r.take("=") {
		n.Claims = &Claims{}
		if err := r.must(n.Claims); err != nil {
			return err
		}
	}
	r.close(&n.At, start)
	return nil
}

// Parse reads what stands before the colon of a row.
func (h *RowHead) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	if err := h.which(r); err != nil {
		return err
	}
	for r.take(",") {
		if ok, err := h.From.option(r); ok || err != nil {
			if err != nil {
				return err
			}
			continue
		}
		if words := missingWords["RowOpt"]; !slices.Contains(words, r.Peek().Value) {
			return r.want(words...)
		}
		o, err := rowOptPart.read(lx)
		if err != nil {
			return err
		}
		h.Opts = append(h.Opts, o)
	}
	r.close(&h.At, start)
	return nil
}

// which reads which rows they are and how many.
func (h *RowHead) which(r reader) error {
	if err := readIf(r, &h.N); err != nil {
		return err
	}
	if h.N != nil {
		if h.Many = r.oneOf("rounds", "rows"); h.Many == "" {
			return r.want("rounds", "rows")
		}
		if err := readIf(r, &h.NLabel); err != nil {
			return err
		}
		return h.of(r)
	}
	if h.One = r.oneOf("round", "row"); h.One != "" {
		if err := readIf(r, &h.Label); err != nil {
			return err
		}
		return h.of(r)
	}
	if h.For = r.oneOf("rounds", "rows"); h.For == "" {
		return participle.NextMatch
	}
	if err := readIf(r, &h.FLabel); err != nil {
		return err
	}
	if err := h.of(r); err != nil {
		return err
	}
	if r.word("from") {
		h.From = &FromChart{}
		return r.must(h.From)
	}
	if h.To = r.take("to"); !h.To && !r.take("for") {
		return r.want("to", "for", "from")
	}
	h.Length = &Val{}
	return r.must(h.Length)
}

// of reads the stitch pattern that is worked, if one is named.
func (h *RowHead) of(r reader) error {
	if !r.take("of") {
		return nil
	}
	h.Of = &Name{}
	return r.must(h.Of)
}

// Parse reads counts parted by commas.
func (c *Claims) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	for {
		one := &Claim{}
		if err := r.must(one); err != nil {
			return err
		}
		c.Items = append(c.Items, one)
		if !r.take(",") {
			break
		}
	}
	r.close(&c.At, start)
	return nil
}

// Parse reads one count.
func (c *Claim) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	if err := c.read(r); err != nil {
		return err
	}
	r.close(&c.At, start)
	return nil
}

func (c *Claim) read(r reader) error {
	switch {
	case r.take("multiple"):
		if !r.take("of") {
			return r.want("of")
		}
		c.Mult = &Cnt{}
		if err := r.must(c.Mult); err != nil {
			return err
		}
		if !r.take("plus") {
			return nil
		}
		c.Plus = &Cnt{}
		return r.must(c.Plus)
	case r.sign("+"), r.sign("-"):
		return c.each(r)
	}
	c.N = &Cnt{}
	if err := r.must(c.N); err != nil {
		return err
	}
	if err := c.what(r); err != nil {
		return err
	}
	if !r.take("in") {
		return nil
	}
	c.In = &Ref{}
	return r.must(c.In)
}

// each reads how many more or fewer there are each time.
func (c *Claim) each(r reader) error {
	c.Less = r.Next().Value == "-"
	c.More = &Cnt{}
	if err := r.must(c.More); err != nil {
		return err
	}
	if !r.take("each") {
		return r.want("each")
	}
	if !r.take("time") {
		return r.want("time")
	}
	return nil
}

// what reads what is counted, if it is said.
func (c *Claim) what(r reader) error {
	if r.take("sl") {
		if c.Slip = r.take("st"); !c.Slip {
			return r.want("st")
		}
		return nil
	}
	if err := readIf(r, &c.Kind); err != nil || c.Kind != nil {
		return err
	}
	return readIf(r, &c.Name)
}

// Parse reads a step of a counting off.
func (o *OffItem) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	if r.take("mark") {
		o.Mark = &Name{}
		if err := r.must(o.Mark); err != nil {
			return err
		}
		if r.take("in") {
			if o.Next = r.take("next"); !o.Next {
				return r.want("next")
			}
		}
	} else {
		o.N = &Cnt{}
		if err := r.must(o.N); err != nil {
			return err
		}
	}
	if err := readIf(r, &o.Label); err != nil {
		return err
	}
	r.close(&o.At, start)
	return nil
}

// Parse reads a label: as NAME.
func (a *As) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	if !r.take("as") {
		return participle.NextMatch
	}
	a.Name = &Name{}
	if err := r.must(a.Name); err != nil {
		return err
	}
	r.close(&a.At, start)
	return nil
}
