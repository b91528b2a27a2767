package words

import (
	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// This file says how motifs are joined to one another while they are worked.

// laid is motifs laid beside one another.
type laid struct {
	n, across, down               num
	shared, atSides, atCorners    num
	joins                         num  // of sides and corners together
	sides, corners, crossed, many bool // joins at sides, at corners, where corners meet already; more than one motif
}

// grid says how motifs are laid out, and in which order they are worked.
func (c *context) grid(g *plan.Grid) StepText {
	st := c.step(rich.T(c.l.voice.line(motifLayout)), c.l.voice.layMotifs(c.laid(g)))
	return st
}

func (c *context) laid(g *plan.Grid) laid {
	some := func(ns ...plan.Nums) bool {
		for _, n := range ns {
			for _, v := range n {
				if v > 0 {
					return true
				}
			}
		}
		return false
	}
	return laid{n: c.tally(motifsIn(g)), across: c.num(g.Across), down: c.num(g.Down), shared: c.tally(g.Shared),
		atSides: c.tally(g.AtSides), atCorners: c.tally(g.AtCorners), joins: c.tally(added(g.AtSides, g.AtCorners)), sides: some(g.AtSides), corners: some(g.AtCorners),
		crossed: some(g.Kinds[2]), many: some(g.Kinds[1], g.Kinds[2])}
}

// motifSizes says how large the motifs of the pattern are.
func (c *context) motifSizes() []rich.Text {
	var out []rich.Text
	for _, part := range c.p.Parts {
		if part.Grid != nil && part.Grid.Each != nil {
			out = append(out, c.l.voice.motifSize(c.both(part.Grid.Each)))
		}
	}
	return out
}

func added(a, b plan.Nums) plan.Nums {
	out := make(plan.Nums, len(a))
	for i := range out {
		out[i] = a[i] + b[i]
	}
	return out
}

// motifsIn is how many motifs there are.
func motifsIn(g *plan.Grid) plan.Nums {
	out := make(plan.Nums, len(g.Across))
	for i := range out {
		out[i] = g.Across[i] * g.Down[i]
	}
	return out
}

// joinRound is the joining round of motifs that meet so many others.
func (c *context) joinRound(j *plan.JoinRound) StepText {
	v := c.l.voice
	key := []line{motifFree, motifOneSide, motifTwoSides}[j.Sides]
	st := StepText{Only: c.only(), Label: rich.T(v.line(key))}
	body := []rich.Text{sentence(v.whichMotifs(c.num(j.Motifs), j.Sides, j.Rest))}
	if j.Row == nil {
		body = append(body, rich.T(v.line(motifAsItStands)))
	} else {
		first, _ := c.num(j.Row.First).same()
		head := v.bareLabel(true, false)
		if first > 0 {
			head = v.label(true, first, first)
		}
		body = append(body, c.sentences(j.Row, fill("{}: ", head), nil)...)
		st.Count = c.count(j.Row.Counts)
	}
	if j.Off {
		body = append(body, rich.T(upper(c.l.voice.line(fastenOff))+"."))
	}
	st.Body = paragraph(join(" ", body...))
	return st
}

// joinTo is the slip stitch of a join: said in full the first time in a row.
func (c *context) joinTo(in *plan.Instr) rich.Text {
	again := c.said != nil && c.said.joins
	if c.said != nil {
		c.said.joins = true
	}
	return c.l.voice.joinTo(c.space(in.Chains), again)
}

// role is the name of a place that the form names.
func (l *Language) role(r plan.Role) string {
	switch r {
	case plan.OuterCorner:
		return l.voice.line(outerCorner)
	case plan.Corner:
		return l.voice.line(pieceCorner)
	case plan.Joint:
		return l.voice.line(joinedCorner)
	}
	return ""
}
