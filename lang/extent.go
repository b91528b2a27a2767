package lang

import (
	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// How far and how often: the parts that tell two readings apart only behind a count, and so are read by hand.
//
//	bound  = "to" ( "end" | [ "next" ] "space" | "last" [ cnt ] [ "sts" ] | [ cnt "before" ] ( "marker" | ref ) )
//	spread = cnt "evenly" [ "alternating" | "centred" ] [ bound ]
//	repend = ( bound | "around" | "across" | cnt "times" ) [ "=" cnt "times" ]

// Parse reads a bound.
func (b *Bound) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	if !r.take("to") {
		return participle.NextMatch
	}
	if err := b.read(r); err != nil {
		return err
	}
	r.close(&b.At, start)
	return nil
}

// read reads what stands behind `to`.
func (b *Bound) read(r reader) error {
	switch {
	case r.take("end"):
		b.End = true
		return nil
	case r.word("space"), r.word("next") && r.after().Value == "space":
		r.take("next")
		b.Space = r.take("space")
		return nil
	case r.word("last") && r.after().Value != ".":
		b.Last = r.take("last")
		return r.lastOnes(&b.LastN)
	}
	if err := readIf(r, &b.Before); err != nil {
		return err
	}
	if r.take("marker") {
		b.Marker = true
		return nil
	}
	b.Ref = &Ref{}
	return r.must(b.Ref)
}

// lastOnes reads what stands behind `last`: how many, and a harmless `sts`.
func (r reader) lastOnes(n **Cnt) error {
	if err := readIf(r, n); err != nil {
		return err
	}
	r.oneOf("st", "sts")
	return nil
}

// Parse reads how increases are spread. A count that is not followed by `evenly` is left to others.
func (s *Spread) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	back, start := r.MakeCheckpoint(), r.start()
	if err := readTally(r, &s.N); err != nil {
		return err
	}
	if s.N == nil || !r.take("evenly") {
		r.LoadCheckpoint(back)
		return participle.NextMatch
	}
	s.How = r.oneOf("alternating", "centred")
	if err := readIf(r, &s.Bound); err != nil {
		return err
	}
	r.close(&s.At, start)
	return nil
}

// readTally reads how many, or how often, behind a stitch or a group: there a bracket opens no group, since a comma would stand
// before it.
func readTally(r reader, n **Cnt) error {
	if r.Peek().Value != "(" {
		return readIf(r, n)
	}
	back := r.MakeCheckpoint()
	c := &Cnt{}
	if err := r.count(&c.At, &c.E); err != nil || !r.word("evenly") && !r.word("times") {
		r.LoadCheckpoint(back)
		return nil
	}
	*n = c
	return nil
}

// Parse reads how often something is repeated.
func (e *RepEnd) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	if err := e.read(r); err != nil {
		return err
	}
	if err := r.statedTimes(&e.Stated); err != nil {
		return err
	}
	r.close(&e.At, start)
	return nil
}

func (e *RepEnd) read(r reader) error {
	if err := readIf(r, &e.Bound); err != nil || e.Bound != nil {
		return err
	}
	if e.Full = r.oneOf("around", "across"); e.Full != "" {
		return nil
	}
	if err := readTally(r, &e.N); err != nil {
		return err
	}
	switch {
	case e.N == nil:
		return participle.NextMatch
	case !r.take("times"):
		return r.want("times")
	}
	return nil
}

// statedTimes reads `= 10 times`. A count without `times` is the row's.
func (r reader) statedTimes(out **Stated) error {
	back, start := r.MakeCheckpoint(), r.start()
	if !r.take("=") {
		return nil
	}
	var n Cnt
	if ok, err := r.may(&n); err != nil || !ok || !r.take("times") {
		r.LoadCheckpoint(back)
		return nil
	}
	s := &Stated{N: &n}
	r.close(&s.At, start)
	*out = s
	return nil
}

// Parse reads the number stated behind a skip. Behind the last instruction of a row an equals sign begins the counts of the
// row; so it belongs to the skip only if another one follows, or if what follows cannot be read as counts.
func (s *Stated) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	if !r.sign("=") || !r.equalsAgain() && r.countsToEnd() {
		return participle.NextMatch
	}
	start := r.start()
	r.Next()
	var n Cnt
	if err := r.must(&n); err != nil {
		return err
	}
	r.oneOf("st", "sts")
	s.N = &n
	r.close(&s.At, start)
	return nil
}

// equalsAgain reports whether another equals sign follows: then this one cannot begin the counts of the row.
func (r reader) equalsAgain() bool {
	defer r.LoadCheckpoint(r.MakeCheckpoint())
	r.Next()
	for t := r.Next(); t.Type != tEOF; t = r.Next() {
		if t.Type == tSign && t.Value == "=" {
			return true
		}
	}
	return false
}

// countsToEnd reports whether what stands behind the equals sign reads as counts up to the end of the statement.
func (r reader) countsToEnd() bool {
	defer r.LoadCheckpoint(r.MakeCheckpoint())
	r.Next()
	return r.must(&Claims{}) == nil && r.Peek().Type == tEOF
}
