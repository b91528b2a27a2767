package draw

import (
	"ovillo/compile/plan"
)

// piece is a stretch of the rows of a part that lies on the table as one shape.
type piece struct {
	part   int
	first  int // index of its first row among the rows of the part
	rows   []course
	start  float64 // width laid flat where the rows begin: 0 for a ring
	closed bool
	shaped bool // its first row is shaped against what it stands on
	side   bool // it is seen from the side on which its rounds do not begin: they begin at the reader's right
	folded bool // it is worked flat but lies folded round the wearer, open at the front
	point  bool // the rows begin in one place
	oval   bool // the rows begin on both sides of a chain
	goesOn bool // it is the rest of a part after a dividing row
	corner int  // corners of a motif, 0 if it is round
	lean   []float64
	steps  [][2]bool // of each row, whether it begins or ends at a step of the left and right edge; nil in rounds
	wedge  *wedge    // where short rows make its edges of different heights; else nil
}

// edge numbers of a piece.
const (
	startEdge = 0
	endEdge   = 1
)

// height is the length of the rows from one to another, together.
func (pc *piece) height(from, to int) float64 {
	sum := 0.0
	for _, r := range pc.rows[from:to] {
		sum += r.high
	}
	return sum
}

func (pc *piece) tall() float64 { return pc.height(0, len(pc.rows)) }

// widths are the flat widths of the start and after every row.
func (pc *piece) widths() []float64 {
	w := make([]float64, 1, len(pc.rows)+1)
	w[0] = pc.start
	for _, r := range pc.rows {
		w = append(w, r.flat)
	}
	return w
}

// widest is the greatest flat width.
func (pc *piece) widest() float64 {
	m := pc.start
	for _, r := range pc.rows {
		m = max(m, r.flat)
	}
	return m
}

func (pc *piece) area() float64 {
	sum := 0.0
	for _, r := range pc.rows {
		sum += r.flat * r.high
	}
	return sum
}

// boundary is the number of rows of the piece up to and with a row of the part, and whether that row is in the piece.
func (pc *piece) boundary(number int) (int, bool) {
	for i, r := range pc.rows {
		if r.number == number {
			return i + 1, true
		}
	}
	return 0, false
}

// cut makes the pieces of a part: one, or more where places were left aside that other parts work. cuts holds the
// numbers of rows before which it is cut, rising.
func cut(p *plan.Pattern, part int, rows []course, cuts []int) []*piece {
	if len(rows) == 0 {
		return nil
	}
	var pieces []*piece
	from := 0
	for _, to := range append(cuts, len(rows)) {
		if to <= from || to > len(rows) {
			continue
		}
		pieces = append(pieces, whole(part, from, rows[from:to]))
		from = to
	}
	begin(p, part, pieces[0])
	for i, pc := range pieces[1:] {
		pc.goesOn = true
		pc.start = resumed(pc.rows)
		pieces[i].rows[len(pieces[i].rows)-1].exact = true
	}
	leans(p.Parts[part], pieces, p.Shown)
	wedges(p.Parts[part], pieces, p.Shown)
	return pieces
}

func whole(part, first int, rows []course) *piece {
	pc := &piece{part: part, first: first, rows: rows, start: rows[0].flat}
	closed := 0.0
	for _, r := range rows {
		if r.closed {
			closed += r.high
		}
	}
	pc.closed = closed*2 >= pc.tall()
	pc.folded = rows[0].folded
	return pc
}

// begin says how the first piece of a part begins.
func begin(p *plan.Pattern, part int, pc *piece) {
	switch s := p.Parts[part].Start; s.Kind {
	case plan.StartRing, plan.StartChainRing:
		pc.point, pc.start = true, 0
		pc.corner = corners(p.Parts[part], p.Shown)
	case plan.StartIn:
		if length(p, p.Parts[part].From) < 4 {
			pc.point, pc.start = true, 0
		}
	case plan.StartBothSides:
		pc.oval = true
		if n := inSize(s.N, p.Shown); n > 0 {
			pc.start = min(float64(n)*pc.rows[0].stitch, pc.rows[0].flat)
		}
	}
}

// resumed is the width of a piece that goes on after a dividing row. The dividing row itself may be made of other
// stitches and chains; if the next row is a little wider, that is how wide the piece lies.
func resumed(rows []course) float64 {
	w := rows[0].flat
	if len(rows) > 1 && rows[1].flat > w*1.03 {
		return rows[1].flat
	}
	return w
}

// inSize is the number of a size, 0 where there is none.
func inSize(n plan.Nums, i int) int {
	if i < 0 || i >= len(n) || n[i] == plan.Absent {
		return 0
	}
	return n[i]
}

// length is how many places the runs have together.
func length(p *plan.Pattern, runs []plan.Origin) int {
	sum := 0
	for _, o := range runs {
		sum += run{o, p.Shown}.length()
	}
	return sum
}

// run is the place of an origin in a size.
type run struct {
	plan.Origin
	size int
}

// known reports whether the run exists in the size.
func (r run) known() bool {
	for _, n := range []plan.Nums{r.From, r.To, r.Of} {
		if r.size < 0 || r.size >= len(n) || n[r.size] == plan.Absent {
			return false
		}
	}
	return inSize(r.Of, r.size) > 0
}

// length is how many places it has.
func (r run) length() int {
	if !r.known() {
		return 0
	}
	from, to := inSize(r.From, r.size), inSize(r.To, r.size)
	return max(to-from, from-to) + 1
}

// share is its part of the edge it lies on, and at is its middle on that edge, both from 0 to 1.
func (r run) share() float64 {
	if of := inSize(r.Of, r.size); of > 0 {
		return clamp(float64(r.length())/float64(of), 0, 1)
	}
	return 0
}

func (r run) at() float64 {
	if !r.known() {
		return 0.5
	}
	return clamp(float64(inSize(r.From, r.size)+inSize(r.To, r.size)-1)/(2*float64(inSize(r.Of, r.size))), 0, 1)
}
