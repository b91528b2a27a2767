package compile

import (
	"ovillo/compile/caution"
	"ovillo/compile/figure"
	"ovillo/compile/plan"
	"ovillo/lang"
)

// saidFringe is a fringe of the finishing, as the source speaks of it.
type saidFringe struct {
	node *lang.Fringe
	step int
	zone caution.Zone
}

// fringe reads a fringe: how far it hangs, along which edge, and how many strands that takes.
func (c *checker) fringe(n *lang.Fringe, f *plan.Finishing) bool {
	f.Yarn, f.Bundle = c.yarn(n.Yarn), 1
	if !c.cutLength(n.Length, f) {
		return false
	}
	along, _, _ := c.seamEdge([]*lang.Edge{n.Along})
	if along == nil {
		return false
	}
	f.Sewn = along
	if n.Strands != nil {
		if k := c.cnt(n.Strands, nil); len(k) > 0 && k[0] > 0 {
			f.Bundle = k[0] // a bundle is as thick in every size
		}
	}
	for _, l := range f.Length {
		f.Cut = append(f.Cut, figure.FringeCut(l))
	}
	f.Strands = c.strands(n.Along, along[0], f.Bundle)
	zone, _ := read(c, n.Zone, "zone", cordZones)
	c.fringes = append(c.fringes, saidFringe{n, len(c.pat.Finish), zone})
	return true
}

// strands is how many strands a fringe takes, with so many in each place of an edge; nil if the places are not known.
func (c *checker) strands(n *lang.Edge, ref plan.Ref, bundle int) plan.Nums {
	out := c.nums(0)
	for z := range out {
		places := 0
		if n.Side == nil {
			places = ref.Count[z]
		} else if e := c.sideEdge(n.Side, nil); e != nil {
			places = len(e.run(z).Places)
		}
		if places <= 0 {
			return nil
		}
		out[z] = places * bundle * c.pieces(z, []plan.Ref{ref})
	}
	return out
}

// fringeFacts is what is known of the fringes: rows of cords with cut ends. One along a hem hangs below it.
func (c *checker) fringeFacts() []caution.Cord {
	var out []caution.Cord
	for _, s := range c.fringes {
		step := c.pat.Finish[s.step]
		f := caution.Cord{Name: "fringe", Role: "fringe", Zone: s.zone, Length: step.Length, Loop: make(plan.Lengths, c.z), Thick: plan.NoLength, End: "plain",
			Fray: caution.True, Elastic: caution.False, BehindNeck: caution.False, Step: s.step, At: s.node.Span()}
		if f.Zone == caution.UnknownZone {
			f.Zone = caution.ZoneOf(c.pat.Kind, c.pat.Parts[step.Sewn[0].Part].Name)
		}
		if f.Zone == caution.Hem {
			f.BelowHem = caution.True
		}
		out = append(out, f)
	}
	return out
}
