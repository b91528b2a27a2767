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
	case *lang.Pompom:
		f.Kind, f.Yarn = plan.MakePompom, c.yarn(n.Yarn)
		f.Length = c.value(n.Size, nil).Lengths()
		if v, ok := plainNumber(n.Wraps); ok {
			f.Wraps = v
		}
	case *lang.Button:
		f.Kind = plan.SewButtons
		c.button(n, &f)
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

// cord reads a cord: its length, the chains that make it, and the free ends it leaves.
func (c *checker) cord(n *lang.Cord, f *plan.Finishing) bool {
	f.Yarn = c.yarn(n.Yarn)
	c.zones[len(c.pat.Finish)] = zoneOf(n)
	if n.Length != nil {
		v := c.eval(n.Length.E, nil, func(e *lang.Expr) (value.Vector, bool) { w, _ := c.measured(e); return w, true })
		if f.Length = v.Lengths(); f.Length == nil {
			if !v.Unknown {
				c.say(codeMeasured, n.Length.Span(), nil)
			}
			return false
		}
		f.Chains = c.chainsFor(f.Length, n.Length.Span())
	}
	c.useForm(stitch.Form{ID: stitch.Chain, Together: 1})
	c.useForm(stitch.Form{ID: stitch.Slip, Together: 1})
	if n.Through == nil {
		return true
	}
	p := c.parts[n.Through.Path[0]]
	if p == nil {
		c.say(codeNoPart, n.Through.Span(), diag.Args{"word": n.Through.Path[0], "near": lang.Near(n.Through.Path[0], keys(c.parts))})
		return false
	}
	f.Through = &plan.Ref{Kind: plan.RefRow, Part: p.index, Label: p.plan.Name, Called: p.plan.Called}
	if n.Row != nil {
		f.Row = c.cnt(n.Row, nil)
		f.Through.Row = f.Row
	}
	f.Free = c.freeEnds(p, f)
	return true
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
	out := make(plan.Lengths, c.z)
	for z := range out {
		var around plan.Length
		for _, r := range p.plan.Worked[z] {
			if f.Row == nil || r.Number == f.Row[z] {
				around = max(around, r.Width)
			}
		}
		if around <= 0 {
			return nil
		}
		out[z] = (f.Length[z] - around) / 2
	}
	return out
}

// button reads buttons: one for each place of a label, or a number.
func (c *checker) button(n *lang.Button, f *plan.Finishing) {
	b := plan.Buttons{N: c.nums(1)}
	if ls := c.value(n.Size, nil).Lengths(); len(ls) > 0 {
		b.Size = ls[0]
	}
	switch {
	case n.N != nil:
		if k := c.cnt(n.N, nil); k != nil {
			b.N = k
		}
	case n.For != nil && len(n.For.Path) == 2 && c.parts[n.For.Path[0]] != nil:
		p := c.parts[n.For.Path[0]]
		for z := range b.N {
			if k, fl := p.fab[z].CountIn(n.For.Path[1]); fl == nil {
				b.N[z] = k
			}
		}
	case n.For != nil:
		c.say(codeNoName, n.For.Span(), diag.Args{"word": c.file.Source.Slice(n.For.Span()), "near": []string(nil)})
	}
	f.Buttons = b
	c.pat.Notions.Buttons = append(c.pat.Notions.Buttons, b)
}

// notions gathers what is needed besides yarn and hook.
func (c *checker) notions() {
	most := 0
	for _, p := range c.parts {
		m := p.maxMarks
		if p.style == plan.SpiralRounds {
			m++ // the first stitch of the round
		}
		most = max(most, m)
	}
	c.pat.Notions.Markers = most
	c.pat.Notions.Needle = true
	for _, f := range c.pat.Finish {
		if f.Kind == plan.MakeCord && f.Through != nil {
			c.pat.Notions.Pin = true
		}
	}
}
