package lang

import (
	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// Values and counts, by climbing: but < + - < * / < minus < calls, names, numbers.
//
//	val   = sum { "but" SIZE sum { "," SIZE sum } }
//	cnt   = sum                                       (no units; does not begin with "(" or "-")
//	sum   = term { ( "+" | "-" ) term }
//	term  = unary { ( "*" | "/" ) unary }
//	unary = "-" unary | prim
//	prim  = NUM [ "(" NUM { "," NUM } ")" ] [ UNIT ] | "(" sum ")" | ref | call | measured

// Parse reads a value: an expression in which numbers may have units.
func (v *Val) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	if !r.valueAhead() && !r.word("around") && !r.word("across") {
		return participle.NextMatch
	}
	start := r.start()
	e, err := (&climber{reader: r, units: true}).but()
	if err != nil {
		return err
	}
	v.E = e
	r.close(&v.At, start)
	return nil
}

// Parse reads a count: an expression without units. A count never begins with a bracket, since at the head of an
// instruction a bracket opens a group.
func (c *Cnt) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	if !r.valueAhead() || r.Peek().Type == tSign {
		return participle.NextMatch
	}
	return r.count(&c.At, &c.E)
}

// Parse reads the count before a stitch: a number, or a name that another name, `sl` or an operator follows.
func (c *PreCnt) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	if t := r.Peek(); t.Type != tNumber {
		if !r.valueAhead() || t.Type == tSign {
			return participle.NextMatch
		}
		if r.word("inc") || r.word("dec") || r.countBehind() {
			return participle.NextMatch
		}
		next := r.after()
		if !(next.Type == tWord && (!Reserved(next.Value) || next.Value == "sl")) && !isArithmetic(next) {
			return participle.NextMatch
		}
	}
	return r.count(&c.At, &c.E)
}

// countBehind reports whether two names and then `times` or `evenly` come next: the first is then the stitch, and the second
// how many, for which a sum in brackets may stand; or whether a stitch by chart does.
func (r reader) countBehind() bool {
	back := r.MakeCheckpoint()
	defer r.LoadCheckpoint(back)
	r.Next()
	if r.Peek().Value == "(" {
		open := 0
		for more := true; more && !r.Peek().EOF(); more = open > 0 {
			switch r.Next().Value {
			case "(":
				open++
			case ")":
				open--
			}
		}
		return r.word("times") || r.word("evenly")
	}
	if !r.name() {
		return false
	}
	by := r.word("by")
	r.Next()
	return r.word("times") || r.word("evenly") || by && r.word("chart")
}

// Parse reads the count in `to 2 before m1`, and the word before. A lone name is the place itself.
func (c *BefCnt) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	back := r.MakeCheckpoint()
	t := r.Peek()
	if t.Type == tSign || !r.valueAhead() {
		return participle.NextMatch
	}
	if err := r.count(&c.At, &c.E); err != nil {
		return err
	}
	if !r.take("before") {
		if c.E.Op == OpName {
			r.LoadCheckpoint(back)
			return participle.NextMatch
		}
		return r.want("before")
	}
	return nil
}

func (r reader) count(at *At, e **Expr) error {
	start := r.start()
	x, err := (&climber{reader: r}).sum()
	if err != nil {
		return err
	}
	*e = x
	r.close(at, start)
	return nil
}

// valueAhead reports whether a value can begin with the next token.
func (r reader) valueAhead() bool {
	switch t := r.Peek(); t.Type {
	case tNumber:
		return true
	case tWord:
		return !Reserved(t.Value) || t.Value == "rows" && r.after().Value == "(" || t.Value == "count" && r.after().Value == "of"
	case tSign:
		return t.Value == "-" || t.Value == "("
	}
	return false
}

// isArithmetic reports whether a token makes the name before it part of an expression.
func isArithmetic(t *lexer.Token) bool {
	if t.Type != tSign {
		return false
	}
	switch t.Value {
	case "+", "-", "*", "/", ".", "(":
		return true
	}
	return false
}

// climber reads one expression.
type climber struct {
	reader
	units bool // numbers may have units
	depth int
}

// deeper counts a nesting, the whole expression as the first, and refuses one too many. The caller counts it back.
func (c *climber) deeper() error {
	if c.depth++; c.depth > maxDepth+1 {
		return c.slip(slipDepth)
	}
	return nil
}

// node gives an expression its place, from its start to the last token read.
func (c *climber) node(start lexer.Position, e Expr) *Expr {
	c.close(&e.At, start)
	return &e
}

func (c *climber) but() (*Expr, error) {
	start := c.start()
	e, err := c.sum()
	for err == nil && c.take("but") {
		e, err = c.exceptions(start, e)
	}
	return e, err
}

// exceptions reads what stands behind `but`: sizes with their values. A comma goes on only if a size follows.
func (c *climber) exceptions(start lexer.Position, e *Expr) (*Expr, error) {
	for {
		var size Str
		if ok, _ := c.may(&size); !ok {
			return nil, c.slip(slipBut)
		}
		v, err := c.sum()
		if err != nil {
			return nil, err
		}
		e = c.node(start, Expr{Op: OpBut, Text: size.Text, L: e, R: v})
		if !c.sign(",") || c.after().Type != tQuoted {
			return e, nil
		}
		c.Next()
	}
}

func (c *climber) sum() (*Expr, error) {
	if err := c.deeper(); err != nil {
		return nil, err
	}
	defer func() { c.depth-- }()
	start := c.start()
	l, err := c.term()
	for err == nil && (c.sign("+") || c.sign("-")) {
		op := OpAdd
		if c.Next().Value == "-" {
			op = OpSub
		}
		var r *Expr
		if r, err = c.term(); err == nil {
			l = c.node(start, Expr{Op: op, L: l, R: r})
		}
	}
	return l, err
}

func (c *climber) term() (*Expr, error) {
	start := c.start()
	l, err := c.unary()
	for err == nil && (c.sign("*") || c.sign("/")) {
		op := OpMul
		if c.Next().Value == "/" {
			op = OpDiv
		}
		var r *Expr
		if r, err = c.unary(); err == nil {
			l = c.node(start, Expr{Op: op, L: l, R: r})
		}
	}
	return l, err
}

func (c *climber) unary() (*Expr, error) {
	start := c.start()
	if !c.take("-") {
		return c.prim()
	}
	if err := c.deeper(); err != nil {
		return nil, err
	}
	defer func() { c.depth-- }()
	x, err := c.unary()
	if err != nil {
		return nil, err
	}
	return c.node(start, Expr{Op: OpNeg, L: x}), nil
}

func (c *climber) prim() (*Expr, error) {
	start := c.start()
	switch t := c.Peek(); {
	case t.Type == tNumber:
		return c.number()
	case c.take("("):
		x, err := c.sum()
		if err != nil {
			return nil, err
		}
		if !c.take(")") {
			return nil, c.want(")")
		}
		return c.node(start, Expr{Op: OpParen, L: x}), nil
	case c.measuredAhead():
		return c.measured()
	case c.word("count") && c.after().Value == "of":
		return c.counted()
	case t.Type == tWord && c.valueAhead():
		path, err := c.path()
		if err != nil {
			return nil, err
		}
		if c.sign("(") {
			return c.call(start, path)
		}
		return c.node(start, Expr{Op: OpName, Path: path}), nil
	}
	return nil, c.slip(slipValue)
}

// number reads a number with the numbers of the other sizes, and its unit where units may stand.
func (c *climber) number() (*Expr, error) {
	start := c.start()
	e := Expr{Op: OpNumber, Text: c.Next().Value}
	if c.take("(") {
		for {
			sign := ""
			if c.take("-") {
				sign = "-"
			}
			if c.Peek().Type != tNumber {
				return nil, c.slip(slipSizes)
			}
			e.Sizes = append(e.Sizes, sign+c.Next().Value)
			if !c.take(",") {
				break
			}
		}
		if !c.take(")") {
			return nil, c.slip(slipSizes)
		}
	}
	if t := c.Peek(); c.units && (t.Type == tWord && isUnit(t.Value) || c.sign("%")) {
		e.Unit = unitOf(c.Next().Value)
	}
	return c.node(start, e), nil
}

// unitOf gives the name of a unit: months and years may be written in the singular.
func unitOf(word string) string {
	if word == "month" || word == "year" {
		return word + "s"
	}
	return word
}

// measuredAhead reports whether a measure of the piece follows: around NAME, across NAME, height of NAME, along SIDE edge of NAME, along NAME.
func (c *climber) measuredAhead() bool {
	t := c.Peek()
	if !c.units || t.Type != tWord {
		return false
	}
	switch t.Value {
	case "around", "across":
		return true
	case "height", "width", "length":
		return c.after().Value == "of"
	case "along":
		t := c.after()
		return t.Type == tWord && !Reserved(t.Value)
	}
	return false
}

func (c *climber) measured() (*Expr, error) {
	start := c.start()
	e := Expr{Op: OpMeasure, Text: c.Next().Value}
	if e.Text == "along" && c.sideAhead() {
		e.Side = &SideEdge{}
		if err := c.must(e.Side); err != nil {
			return nil, err
		}
		return c.node(start, e), nil
	}
	c.take("of")
	if !c.name() {
		return nil, c.slip(slipPlace)
	}
	var err error
	if e.Path, err = c.path(); err != nil {
		return nil, err
	}
	if c.take("at") {
		if c.oneOf("row", "round") == "" {
			return nil, c.want("row", "round")
		}
		if e.R, err = c.term(); err != nil {
			return nil, err
		}
	}
	return c.node(start, e), nil
}

// counted reads count of NAME.
func (c *climber) counted() (*Expr, error) {
	start := c.start()
	e := Expr{Op: OpMeasure, Text: c.Next().Value}
	c.Next() // of
	if !c.name() {
		return nil, c.slip(slipPlace)
	}
	var err error
	if e.Path, err = c.path(); err != nil {
		return nil, err
	}
	return c.node(start, e), nil
}

// call reads the brackets of a call.
func (c *climber) call(start lexer.Position, path []string) (*Expr, error) {
	e := Expr{Op: OpCall, Path: path}
	units := c.units
	c.units = true
	defer func() { c.units = units }()
	c.Next()
	for !c.sign(")") {
		if err := c.argument(&e); err != nil {
			return nil, err
		}
		if !c.take(",") {
			break
		}
	}
	if !c.take(")") {
		return nil, c.want(",", ")")
	}
	return c.node(start, e), nil
}

// argument reads one argument of a call: a rounding word, which gauge is meant, `multiple of N plus M`, or a value.
func (c *climber) argument(e *Expr) error {
	t := c.Peek()
	start := t.Pos
	switch {
	case t.Type == tWord && (isRounding(t.Value) || t.Value == "rows" || t.Value == "rounds") && c.alone():
		c.Next()
		e.Words = append(e.Words, t.Value)
		return nil
	case c.word("ties"):
		c.Next()
		way := c.oneOf("up", "down")
		if way == "" {
			return c.want("up", "down")
		}
		e.Words = append(e.Words, "ties "+way)
		return nil
	case c.word("multiple"):
		c.Next()
		if !c.take("of") {
			return c.want("of")
		}
		l, err := c.sum()
		if err != nil {
			return err
		}
		m := Expr{Op: OpMultiple, L: l}
		if c.take("plus") {
			if m.R, err = c.sum(); err != nil {
				return err
			}
		}
		e.Args = append(e.Args, c.node(start, m))
		return nil
	}
	x, err := c.sum()
	if err == nil {
		e.Args = append(e.Args, x)
	}
	return err
}

// alone reports whether the next token is a whole argument: a value may be called up or even.
func (c *climber) alone() bool { t := c.after(); return t.Value == "," || t.Value == ")" }
