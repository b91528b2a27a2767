package compile

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// finishing reads the finishing.
func (c *checker) finishing() {
	for _, s := range blocks[*lang.Finish](c.file.Body) {
		first := len(c.pat.Finish)
		for _, b := range s.Body {
			c.finishLine(b)
		}
		for i := first; i < len(c.pat.Finish); i++ {
			c.pat.Finish[i].Before = c.partBehind(s)
		}
	}
}

// partBehind is the number of the first part that stands behind a block of the source, 0 if none does.
func (c *checker) partBehind(s *lang.Statement) int {
	for i, p := range c.pat.Parts {
		if c.parts[p.Name].head.Start > s.Head.Start {
			return i + 1
		}
	}
	return 0
}

func (c *checker) finishLine(s *lang.Statement) {
	f := plan.Finishing{Yarn: -1, Span: s.Head}
	switch n := s.Node.(type) {
	case *lang.Sew:
		f.Kind = plan.SewRuns
		if !c.sew(n, &f) {
			return
		}
	case *lang.Cord:
		f.Kind = plan.MakeCord
		if !c.cord(n, &f) {
			return
		}
	case *lang.Elastic:
		f.Kind = plan.ThreadElastic
		if !c.elastic(n, &f) {
			return
		}
	case *lang.Fringe:
		f.Kind = plan.MakeFringe
		if !c.fringe(n, &f) {
			return
		}
	case *lang.Pompom:
		f.Kind, f.Yarn = plan.MakePompom, c.yarn(n.Yarn)
		f.Length = c.value(n.Size, nil).Lengths()
		if v, ok := plainNumber(n.Wraps); ok {
			f.Wraps = v
		}
	case *lang.Button:
		f.Kind = plan.SewButtons
		if !c.button(n, &f) {
			return
		}
	case *lang.PlainFinish:
		f.Kind = plan.WeaveEnds
		if n.Word == "block" {
			f.Kind = plan.BlockPiece
		}
	case *lang.Prose:
		f.Kind, f.Prose = plan.FreeStep, c.prose(s)
	default:
		return
	}
	c.pat.Finish = append(c.pat.Finish, f)
}

// elastic reads elastic: its width and length, and what it runs through. It draws the row in, so it is not longer than the row.
func (c *checker) elastic(n *lang.Elastic, f *plan.Finishing) bool {
	c.zones[len(c.pat.Finish)] = c.elasticPlace(n.Zone)
	if !c.cutLength(n.Length, f) {
		return false
	}
	width := c.value(n.Width, nil)
	ls := width.Lengths()
	if ls == nil || ls[0] == plan.NoLength {
		if !width.Unknown {
			c.say(codeMeasured, n.Width.Span(), nil)
		}
		return false
	}
	f.Width = ls[0]
	p := c.through(n.Through, n.Row, f)
	if p == nil {
		return false
	}
	bad := newSpread(c)
	var have, need []string
	for z, around := range c.rowAround(p, f.Row) {
		if around > 0 && f.Length[z] > around {
			bad.add(z, 0, 0)
			have, need = append(have, cmText(f.Length[z])), append(need, cmText(around))
		}
	}
	if bad.any() {
		h, w := bad.per(bad.need), bad.per(bad.need)
		h.Values, w.Values = have, need
		c.report(diag.Diagnostic{Code: codeElasticLong, Span: n.Length.Span(), Sizes: bad.sizes(), Args: diag.Args{"have": h, "need": w, "part": p.plan.Name}})
	}
	return true
}

// cutLength reads how long a cord or elastic is; it may be told by measures of the piece.
func (c *checker) cutLength(n *lang.Val, f *plan.Finishing) bool {
	v := c.eval(n.E, nil, func(e *lang.Expr) (value.Vector, bool) { w, _ := c.measured(e); return w, true })
	if f.Length = v.Lengths(); f.Length == nil {
		if !v.Unknown {
			c.say(codeMeasured, n.Span(), nil)
		}
		return false
	}
	return true
}

// through reads the part and the row that a cord or elastic runs through; nil if there is no such part, which was said.
func (c *checker) through(ref *lang.Ref, row *lang.Cnt, f *plan.Finishing) *partState {
	p := c.parts[ref.Path[0]]
	if p == nil {
		c.say(codeNoPart, ref.Span(), diag.Args{"word": ref.Path[0], "near": lang.Near(ref.Path[0], keys(c.parts))})
		return nil
	}
	f.Through = &plan.Ref{Kind: plan.RefRow, Part: p.index, Called: p.plan.Called} // without a row: all of it is a casing
	if row != nil {
		f.Row = c.cnt(row, nil)
		f.Through.Row = f.Row
	}
	return p
}

// chainsFor is how many chains make a length, where the gauge gives chains.
func (c *checker) chainsFor(ls plan.Lengths, at source.Span) plan.Nums {
	g := c.gaugeFor(stitch.Chain, manner{})
	if g == nil {
		return nil
	}
	per, _ := g.sts.Float64()
	out, got := c.nums(0), make(plan.Lengths, len(ls))
	for z, l := range ls {
		out[z] = int(float64(l)/1000*per + 0.5)
		got[z] = micro(float64(out[z]) * 1000 / per)
	}
	c.rounded(plan.Rounded{Span: at, Stitch: stitch.Chain, Unit: plan.UnitChains, Counts: out, Wanted: ls, Got: got,
		Multiple: c.nums(1), Plus: c.nums(0), Way: "nearest"})
	return out
}

// freeEnds is how long each end of a cord hangs out, with the piece laid open: half of what is longer than the row it runs
// through.
func (c *checker) freeEnds(p *partState, f *plan.Finishing) plan.Lengths {
	if f.Length == nil {
		return nil
	}
	out := c.rowAround(p, f.Row)
	for z, around := range out {
		if around <= 0 {
			return nil
		}
		out[z] = (f.Length[z] - around) / 2
	}
	return out
}

// rowAround is how long a row of a part is, or the longest of its rows; not above zero where that is not known.
func (c *checker) rowAround(p *partState, row plan.Nums) plan.Lengths {
	out := make(plan.Lengths, c.z)
	for z := range out {
		for _, r := range p.plan.Worked[z] {
			if row == nil || r.Number == row[z] {
				out[z] = max(out[z], r.Width)
			}
		}
	}
	return out
}
