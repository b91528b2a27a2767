package lang

// Op says what an expression node does.
type Op byte

// The kinds of expression.
const (
	OpNumber   Op = iota + 1 // 96 (104, 112) cm: Text, Sizes, Unit
	OpName                   // leg, fit.waist: Path
	OpCall                   // stitches(52 cm, dc, multiple of 2): Path[0], Args, Words
	OpParen                  // ( … ): L
	OpNeg                    // -x: L
	OpAdd                    // L + R
	OpSub                    // L - R
	OpMul                    // L * R
	OpDiv                    // L / R
	OpBut                    // L but "XL" R: Text is the size
	OpMultiple               // multiple of L plus R; only as an argument of a call. R may be nil
	OpMeasure                // around NAME at row R, across NAME at round R, height of NAME, width of NAME, length of NAME: Text, Path, R if there; along SIDE edge of NAME: Side, or along NAME; count of NAME
)

// Expr is a node of an expression. Numbers are kept as they were written.
type Expr struct {
	At
	Op    Op
	Text  string   // OpNumber: the digits; OpBut: the size; OpMeasure: around, across, height, width, length, along or count
	Sizes []string // OpNumber: the numbers of the other sizes, in order, with their sign
	Unit  string   // OpNumber: cm mm in g kg oz m yd % months years, or ""
	Path  []string // OpName, OpCall, OpMeasure
	L, R  *Expr
	Args  []*Expr   // OpCall
	Side  *SideEdge // OpMeasure: along which ends of rows
	Words []string  // OpCall: rounding words (nearest up down even odd; "ties up" is one word here)
}

// Val is an expression where units may stand (a value); Cnt is one where they may not (a count), so that `in` after a
// count is always the preposition. PreCnt is the count before a stitch, BefCnt the count in `to 2 before m1`.
type (
	Val struct {
		At
		E *Expr
	}
	Cnt struct {
		At
		E *Expr
	}
	PreCnt struct {
		At
		E *Expr
	}
	BefCnt struct {
		At
		E *Expr
	}
)

// Name is a word that is not reserved.
type Name struct {
	At
	Text string
}

// Ref is a name with what is looked for in it: body.right, corner.2, front.last.
type Ref struct {
	At
	Path []string
}

// Str is a text in quotes, with its quotes and escapes resolved.
type Str struct {
	At
	Text string
}
