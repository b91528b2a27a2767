package compile

import (
	"fmt"
	"testing"

	"ovillo/compile/fabric"
	"ovillo/lang"
)

// LimitStitches lowers, for a test, how many stitches a pattern may have, so that a number of four figures is refused soon.
func LimitStitches(t testing.TB, n int) {
	before, least := maxStitches, leastStitches
	maxStitches, leastStitches = n, n
	t.Cleanup(func() { maxStitches, leastStitches = before, least })
}

// Made lists, for each row of a part worked back and forth, what it made in one size and into which place of the edge,
// counted in the order in which the row meets them: "sc 3", "sc 3-4" for a stitch that draws two together, "ch 2 -".
func Made(f *lang.File, part string, z int) (rows [][]string, edges []int) {
	rowByRow = true // so that every row is there
	defer func() { rowByRow = false }()
	c := newChecker(f)
	c.check()
	p := c.parts[part]
	fab := c.fabrics[z]
	at := map[fabric.ID]int{}
	run, _ := p.fab[z].NamedRun(fabric.FoundationName, false)
	for k, pl := range run.Places {
		at[pl.ID] = k // a chain is worked back along in the order in which it was made
	}
	edge := len(run.Places)
	for _, r := range p.serials[z] {
		made := r.made
		var row []string
		for _, id := range made {
			el := fab.Elems[id]
			if el.Kind == fabric.Space {
				row = append(row, fmt.Sprintf("ch %d", el.N))
				continue
			}
			row = append(row, fmt.Sprintf("%v %d-%d", fab.FormOf(id).ID, at[el.Into.ID], at[el.Into2.ID]))
		}
		rows, edges = append(rows, row), append(edges, edge)
		for k, id := range made {
			at[id] = len(made) - 1 - k // the next row comes from the other side
		}
		edge = len(made)
	}
	return rows, edges
}

// How says how much is worked at once.
type How int

// The ways of working.
const (
	AsUsual        How = iota
	RowByRow           // every row by itself
	StitchByStitch     // every stitch of every row by itself
)

// Worked checks a source and returns the elements of all fabrics as well.
func Worked(f *lang.File, o Options, how How) (Outcome, [][]fabric.Elem) {
	stitchByStitch, rowByRow = how == StitchByStitch, how != AsUsual
	defer func() { stitchByStitch, rowByRow = false, false }()
	c := newChecker(f)
	c.reads(o)
	c.check()
	var elems [][]fabric.Elem
	for _, fab := range c.fabrics {
		elems = append(elems, fab.Elems)
	}
	return c.outcome(), elems
}
