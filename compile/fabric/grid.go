package fabric

import (
	"slices"

	"ovillo/compile/plan"
)

// This file works a stretch of a row by the cells of a chart's row.

// Cells is a row of a chart as an instruction works it.
//
// A chart is drawn as the right side looks, so a row that shows the right side meets its cells from the right, and a row that
// shows the wrong side from the left; an unturned round always shows the same side. Every size has its own side.
type Cells struct {
	Chart, Row int       // the row it is, for print: the chart's index, and the row counted from 1
	Of         []int     // from the right: the yarn of each cell; in a mesh 1 for a filled square, 0 for an open one
	Behind     int       // mesh: the places behind the stitch of a square; 0: a chart of colours
	Turned     bool      // the part is a mirror image: it reads the chart from the other end
	From       plan.Nums // the cell that stands at the right end of the stretch, from 0; nil: the first
	Centred    bool      // the chart's middle stands in the middle of the stretch
}

// whole reports whether the cells must come out even.
func (c *Cells) whole() bool { return c.From == nil && !c.Centred }

// Worked is what a stretch by a chart came to: one entry a cell, in the order of working.
type Worked struct {
	Codes []int // the yarn; in a mesh what it is and stands on, see [Over]
	First int   // which cell of the row, in the order of working, the first of them is
	Wide  int   // the cells of the chart's row
	Left  bool  // the row was read from the left to the right
	Seam  bool  // it began with the cell over the join, which a row read so would meet last
	Ends  bool  // mesh: a stitch closes the last square
}

// What a square of a mesh is, and what it stands on.
const (
	OpenFilled   = iota // open over filled: chains over stitches
	OpenOpen            // open over open: chains over a space
	FilledFilled        // stitches on stitches
	FilledOpen          // stitches in a space
)

// byCell works N cells of the chart's row, or as many as there are up to the bound. Its number is how often that is the
// whole row of the chart.
func (r *row) byCell(op *Op) (int, *Fault) {
	if r.group != nil {
		return 0, fault(Nested, 0, 0, "")
	}
	c := op.Cells
	n := r.num(op.N, 0)
	stop := len(r.places)
	if op.N == nil {
		var f *Fault
		if stop, f = r.bound(&op.Bound); f != nil {
			return 0, f
		}
	}
	// A round of squares is closed by the stitch it began with.
	closing := !r.p.edge.closed || r.c > 0 || stop < len(r.places)
	if op.N == nil {
		var f *Fault
		if n, f = r.cellsTo(stop, c, closing); f != nil {
			return 0, f
		}
	} else if all, f := r.cellsTo(stop, c, false); !closing {
		closing = f != nil || all != n
	}
	w := len(c.Of)
	start := 0
	switch {
	case c.whole() && n%w != 0:
		return 0, fault(unevenKind(c), w, n, "")
	case c.Centred && (n-w)%2 != 0:
		return 0, fault(NoCentre, w, n, "")
	case c.Centred:
		start = (w - n) / 2
	case c.From != nil:
		start = r.num(c.From, 0)
	}
	left := r.in.Wrong != c.Turned != r.in.Back
	order := make([]int, n)
	for i := range order {
		at := i
		if left {
			at = n - 1 - i
		}
		order[i] = ((start+at)%w + w) % w
	}
	got := Worked{Codes: make([]int, n), Wide: w, Left: left, Ends: closing}
	if got.Seam = r.overSeam(n, c); got.Seam {
		order = append(order[n-1:n:n], order[:n-1]...)
	}
	if n > 0 {
		if got.First = order[0]; left {
			got.First = w - 1 - order[0]
		}
	}
	f := r.workCells(op, order, got.Codes, closing)
	if f != nil {
		return 0, f
	}
	if r.cur.Runs > 0 && !slices.Equal(r.cur.Worked.Codes, got.Codes) {
		return 0, fault(Nested, 0, 0, "")
	}
	r.cur.Worked = got
	return n / w, nil
}

// overSeam reports whether n cells are a whole round that came back from the other side. A turned round keeps the place of the
// join first: the cell over it is met first, and only then the others the other way round.
func (r *row) overSeam(n int, c *Cells) bool {
	return r.in.Style == plan.TurnedRounds && r.in.Wrong && c.Behind == 0 && r.p.edge.closed && r.c == 0 && n == len(r.places) && n > 1
}

func unevenKind(c *Cells) FaultKind {
	if c.Behind > 0 {
		return UnevenSquares
	}
	return UnevenCells
}

// cellsTo is how many cells there are from the cursor up to a place of the edge.
func (r *row) cellsTo(stop int, c *Cells, closing bool) (int, *Fault) {
	if c.Behind == 0 {
		return stop - r.c, nil
	}
	places := 0
	for i := r.c; i < stop; i++ {
		if el := r.el(i); el.Kind == Space {
			places += int(el.N)
		} else {
			places++
		}
	}
	n := places
	if closing {
		n--
	}
	if n < 0 || n%(c.Behind+1) != 0 {
		over := 0 // the stitch that closes the last square
		if closing {
			over = 1
		}
		return 0, &Fault{Kind: NoSquares, Need: c.Behind + 1, Have: places, Total: over}
	}
	return n / (c.Behind + 1), nil
}

func (r *row) workCells(op *Op, order, codes []int, closing bool) *Fault {
	defer func(hand int) { r.yarn = hand }(r.yarn) // the yarns are carried: the row goes on with its own
	one := func(takes Takes) *Fault {
		p, f := r.take(takes, 1, true)
		if f != nil {
			return f
		}
		return r.inCell(op, p, 1)
	}
	c := op.Cells
	for i, at := range order {
		if c.Behind == 0 {
			r.yarn = c.Of[at]
			codes[i] = r.yarn
		}
		if f := one(Stitches); f != nil {
			return short(f, len(order), i, c)
		}
		if c.Behind == 0 {
			continue
		}
		code, f := r.behind(op, c.Of[at] == 1, one)
		if f != nil {
			return short(f, len(order), i, c)
		}
		codes[i] = code
	}
	if c.Behind > 0 && closing && len(order) > 0 {
		return one(Stitches)
	}
	return nil
}

// short says how far the cells went before the places ran out.
func short(f *Fault, need, have int, c *Cells) *Fault {
	if f.Kind == TooFew {
		if c.Behind > 0 {
			need, have = need*(c.Behind+1)+1, have*(c.Behind+1)
		}
		f.Need, f.Have = need, have
	}
	return f
}

// behind works what stands behind the stitch of a square, and says what it was and stood on.
func (r *row) behind(op *Op, filled bool, one func(Takes) *Fault) (int, *Fault) {
	k := op.Cells.Behind
	if r.c < len(r.places) && r.el(r.c).Kind == Space {
		if n := int(r.el(r.c).N); n != k {
			return 0, fault(OtherSpace, k, n, "")
		}
		if !filled {
			r.move(1, skipped)
			return OpenOpen, r.openSquare(k)
		}
		p, f := r.take(Spaces, k, false)
		if f != nil {
			return 0, f
		}
		return FilledOpen, r.inCell(op, p, k)
	}
	if filled {
		for range k {
			if f := one(Stitches); f != nil {
				return 0, f
			}
		}
		return FilledFilled, nil
	}
	for i := range k {
		switch {
		case r.c+i >= len(r.places):
			return 0, fault(TooFew, k, i, "")
		case r.el(r.c+i).Kind == Space:
			return 0, fault(SpaceInWay, 0, int(r.el(r.c+i).N), "")
		}
	}
	r.took(r.c, r.c+k)
	r.move(k, skipped)
	return OpenFilled, r.openSquare(k)
}

func (r *row) openSquare(k int) *Fault {
	return r.make(&Elem{Kind: Space, N: int32(k), Into: nowhere, Into2: nowhere})
}

// inCell makes stitches in one place.
func (r *row) inCell(op *Op, p Place, n int) *Fault {
	r.last, r.worked, r.from = p, true, len(r.made)
	for range n {
		if f := r.stitch(op, p); f != nil {
			return f
		}
	}
	r.settle()
	return nil
}
