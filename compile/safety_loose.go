package compile

import (
	"slices"

	"ovillo/compile/caution"
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// loose is what hangs from the fabric, by what it is called: loops at an edge, and chains that hang free.
type loose struct {
	name   string // the part, or the part and the label of the chains
	part   *partState
	loop   bool
	length plan.Lengths // of the longest; NoLength in a size without any, or without a gauge
	around plan.Lengths // of the largest loop
	sizes  plan.Sizes
	at     source.Span
}

// looseChains finds loops and free chains: one of each kind for each part or label, the largest. Those of motifs are joined to others, and
// those of an edge that is sewn are in the seam.
func (c *checker) looseChains() []*loose {
	if c.loose == nil {
		c.loose = c.looseIn()
	}
	return c.loose
}

func (c *checker) looseIn() []*loose {
	out := []*loose{}
	note := func(name string, p *partState, loop bool, z int, length, around float64, at source.Span) {
		i := slices.IndexFunc(out, func(l *loose) bool { return l.name == name && l.loop == loop })
		if i < 0 {
			l := &loose{name: name, part: p, loop: loop, sizes: make(plan.Sizes, c.z), at: at}
			for range c.z {
				l.length, l.around = append(l.length, plan.NoLength), append(l.around, plan.NoLength)
			}
			i, out = len(out), append(out, l)
		}
		l := out[i]
		l.sizes[z] = true
		l.length[z], l.around[z] = max(l.length[z], known(length)), max(l.around[z], known(around))
	}
	for z := range c.z {
		for _, g := range c.gapsIn(z) {
			if g.n == 0 || g.used || g.part.plan.Motifs != nil || c.sewnEdge(g.part) {
				continue
			}
			switch {
			case g.sticksOut():
				note(c.gapName(g, z), g.part, true, z, g.arch(), g.arch()+max(g.clear, 0)*g.stitch+g.stitch, g.at)
			case g.free:
				note(c.gapName(g, z), g.part, false, z, g.arch(), 0, g.at)
			}
		}
		for _, pl := range c.pat.Parts {
			p := c.parts[pl.Name]
			if n := c.looseStart(p, z); n > 0 {
				w, _, _ := c.stitchSize(stitch.Chain, manner{})
				note(p.plan.Name, p, false, z, float64(n)*w, 0, p.head)
			}
		}
	}
	return out
}

// known is a length of the gauge; NoLength if no gauge tells.
func known(l float64) plan.Length {
	if l <= 0 {
		return plan.NoLength
	}
	return micro(l)
}

// leastLoose is how many chains hang free at a start; fewer are those that a first stitch stands on. Common practice, no source.
const leastLoose = 5

// looseStart is how many chains of a start hang free at one of its ends, since nothing was ever worked into them.
func (c *checker) looseStart(p *partState, z int) int {
	if p.fab[z].Halted() || p.plan.Start.Kind != plan.StartChain {
		return 0
	}
	run := p.fab[z].FoundationRun()
	if run.Closed {
		return 0
	}
	free := func(pl fabric.Place) bool {
		return c.fabrics[z].FormOf(pl.ID).ID == stitch.Chain && c.fabrics[z].Used(pl.ID) == 0
	}
	first := slices.IndexFunc(run.Places, func(pl fabric.Place) bool { return !free(pl) })
	if first < 0 {
		return len(run.Places)
	}
	last := 0
	for i := len(run.Places) - 1; free(run.Places[i]); i-- {
		last++
	}
	if n := max(first, last); n >= leastLoose {
		return n
	}
	return 0
}

// sewnEdge reports whether the last row of a part is sewn to something.
func (c *checker) sewnEdge(p *partState) bool {
	return slices.ContainsFunc(c.pat.Finish, func(f plan.Finishing) bool {
		return slices.ContainsFunc(append(slices.Clone(f.Sewn), f.To...), func(r plan.Ref) bool {
			return r.Part == p.index && r.Kind == plan.RefEdge
		})
	})
}

// looseFact is what is known of a loop or a free chain that the finishing does not speak of.
func (c *checker) looseFact(l *loose) caution.Cord {
	f := caution.Cord{Name: l.name, Zone: caution.ZoneOf(c.pat.Kind, l.part.plan.Name), Length: l.length, Thick: plan.NoLength, Step: -1, At: l.at,
		For: l.sizes, Elastic: caution.False, Fray: c.frays()}
	if l.sizes.All() {
		f.For = nil
	}
	if l.loop {
		f.Role, f.End, f.Loop, f.BehindNeck = "loop", "none", l.around, caution.False
		return f
	}
	f.Loop = make(plan.Lengths, c.z)
	return f
}

// suchAsChains is an example of what may be said of chains that hang from the fabric: of ties that begin on a hat, of others, and of loops
// such as those for buttons.
func (c *checker) suchAsChains(l *loose) string {
	switch {
	case l.loop:
		return "at chest"
	case caution.ZoneOf(c.pat.Kind, "") == caution.Head:
		return "at head, as chin_tie, ends plain"
	}
	return "at waist, as tie, ends plain"
}

// askedOfChains turns a question about a cord into one about the chains that hang from the fabric, if it is they that are asked about:
// what is missing is said in the finishing, and not where they are worked.
func (c *checker) askedOfChains(d *diag.Diagnostic) {
	if d.Code != "OV903" && d.Code != "OV904" {
		return
	}
	for _, l := range c.looseChains() {
		if l.at == d.Span {
			d.Code, d.Args["name"], d.Args["as"] = codeLooseChains, l.name, c.suchAsChains(l)
		}
	}
}
