package compile

import (
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file finds the side edges of flat parts: which one is meant, and the ends of which rows.

// sideEdge is a side edge of a part, or the part of it that some rows make.
type sideEdge struct {
	part *partState
	side fabric.Side
	name string // the name that edges gives it; "" for right and left
	rows []rowSpan
}

// rowSpan is the numbers of the first and the last row; none if the first is 0.
type rowSpan struct{ from, to int }

// sideEdge reads which side edge is meant. It is nil if that cannot be told, which was reported.
func (c *checker) sideEdge(n *lang.SideEdge, lex []bool) *sideEdge {
	q := c.parts[n.Part.Text]
	if q == nil {
		c.say(codeNoPart, n.Part.Span(), diag.Args{"word": n.Part.Text, "near": lang.Near(n.Part.Text, keys(c.parts))})
		return nil
	}
	e := &sideEdge{part: q}
	switch at := n.Side.Text; {
	case q.edges != nil && at == q.edges.First.Text:
		e.side, e.name = fabric.RightEdge, at
	case q.edges != nil && at == q.edges.Last.Text:
		e.side, e.name = fabric.LeftEdge, at
	case at == "right":
		e.side = fabric.RightEdge
	case at == "left":
		e.side = fabric.LeftEdge
	default:
		known := []string{"right", "left"}
		if q.edges != nil {
			known = append(known, q.edges.First.Text, q.edges.Last.Text)
		}
		c.say(codeNoSide, n.Side.Span(), diag.Args{"word": at, "part": q.plan.Name, "names": known})
		return nil
	}
	if !e.choose(n, lex) {
		return nil
	}
	return e
}

// choose reads the rows whose ends are meant: from one number to another, or those of a label.
func (e *sideEdge) choose(n *lang.SideEdge, lex []bool) bool {
	c, q := e.part.c, e.part
	switch {
	case n.Label != nil:
		e.rows = make([]rowSpan, c.z)
		found := false
		for z := range e.rows {
			for _, f := range q.plan.Worked[z] {
				if f.Label != n.Label.Text {
					continue
				}
				if found = true; e.rows[z].from == 0 {
					e.rows[z].from = f.Number
				}
				e.rows[z].to = f.Number
			}
		}
		if !found && q.failed() {
			return false // said where its row stands
		}
		if !found {
			c.say(codeNoName, n.Label.Span(), diag.Args{"word": n.Label.Text, "near": lang.Near(n.Label.Text, keys(q.rows))})
			return false
		}
	case n.From != nil:
		from, to := c.cnt(n.From, lex), c.cnt(n.To, lex)
		if from == nil || to == nil {
			return false
		}
		e.rows = make([]rowSpan, c.z)
		for z := range e.rows {
			e.rows[z] = rowSpan{from[z], to[z]}
		}
	}
	return true
}

// failed reports whether the part is unknown in some size.
func (p *partState) failed() bool {
	for _, f := range p.fab {
		if f.Halted() {
			return true
		}
	}
	return false
}

// has reports whether a row, by its number, is one of those meant.
func (e *sideEdge) has(z, number int) bool {
	return e.rows == nil || number >= e.rows[z].from && number <= e.rows[z].to && e.rows[z].from > 0
}

// run is the row ends in a size, from the start of the part upwards.
func (e *sideEdge) run(z int) fabric.Run {
	return e.part.fab[z].SideRun(e.side, func(row int32) bool { return e.has(z, e.part.numberOf(z, row)) })
}

// numberOf is the printed number of a row of the fabric; a foundation of stitches is row 1.
func (p *partState) numberOf(z int, serial int32) int {
	if at := p.serials[z].of(serial); at != nil {
		return at.number
	}
	return 1
}

// length is how long the edge is in a size: the heights of its rows. NoLength if some gauge is missing, with the stitch that has
// none, or none for its rows.
func (e *sideEdge) length(z int, run fabric.Run) (plan.Length, stitch.ID) {
	height := map[int]plan.Length{}
	for i, f := range e.part.plan.Worked[z] {
		if lacks := e.part.basis[z][i].noHeight; lacks != "" && e.has(z, f.Number) {
			return plan.NoLength, lacks
		}
		height[f.Number] = f.Height
	}
	e.part.asked = true
	var sum plan.Length
	for _, pl := range run.Places {
		h := height[e.part.numberOf(z, e.part.c.fabrics[z].RowOf(pl))]
		if h <= 0 {
			return plan.NoLength, ""
		}
		sum += h
	}
	return sum, ""
}

// ref describes the edge, for print.
func (e *sideEdge) ref(mask []bool) plan.Ref {
	q, c := e.part, e.part.c
	out := plan.Ref{Kind: plan.RefRowEnds, Part: q.index, Called: q.calls[e.name], Pick: plan.EachOf, Count: c.nums(plan.Absent), Ends: c.nums(plan.Absent)}
	if e.side == fabric.LeftEdge {
		out.Side = plan.LeftEdge
	}
	for z, on := range mask {
		if on && !q.fab[z].Halted() {
			out.Ends[z] = len(e.run(z).Places)
			out.Count[z] = out.Ends[z]
		}
	}
	if e.rows != nil {
		out.Row, out.ToRow = c.nums(plan.Absent), c.nums(plan.Absent)
		for z, on := range mask {
			if on {
				out.Row[z], out.ToRow[z] = e.rows[z].from, e.rows[z].to
			}
		}
	}
	return out
}
