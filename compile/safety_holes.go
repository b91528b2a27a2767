package compile

import (
	"math"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
)

// holeSizes is the largest opening of the fabric in each size, and the row that makes it: chain spaces and the squares of a mesh, and
// skipped stitches between tall ones. What other parts go on from is an opening of the piece, what buttons are for is closed by them, and
// an arch at an edge is a loop. Without a gauge it is not known.
func (c *checker) holeSizes() (plan.Lengths, source.Span) {
	out := make(plan.Lengths, c.z)
	var at source.Span
	most := plan.Length(0)
	for z := range out {
		closed := c.closedGaps(z)
		for _, g := range c.gapsIn(z) {
			if g.free || closed[g.id] || g.sticksOut() {
				continue
			}
			d := g.opening()
			if d < 0 {
				out[z] = plan.NoLength
				break
			}
			if l := micro(d); l > out[z] {
				if out[z] = l; l > most {
					most, at = l, g.at
				}
			}
		}
	}
	return out, at
}

// opening is how thick a probe may be that passes a gap as the fabric lies, in micrometres; below zero if no gauge tells. Chains that
// lie flat over what was skipped leave a rectangle, as wide as they are long and as high as the stitches beside them, and a probe
// passes the smaller way. A longer arch is pulled open by the probe: what goes around it counts then. Skipped stitches without chains
// leave a triangle between tall stitches, half as wide at half its height. All of it is an estimate; common practice, no source.
func (g gap) opening() float64 {
	switch {
	case g.stitch == 0 || g.height == 0:
		return -1
	case g.n == 0:
		return min(g.clear*g.stitch/2, g.height)
	case g.arch() <= g.span():
		return min(g.arch(), g.height)
	}
	return max(min(g.span(), g.height), (g.arch()+g.span())/math.Pi, min(g.arch(), g.height)/2)
}

// sticksOut reports whether chains stand off an edge as a loop: in the last row, worked by nobody, and longer than what they go over; or
// brought back to the fabric with a slip stitch.
func (g gap) sticksOut() bool {
	return g.n > 0 && !g.free && !g.used && (g.slip || g.last && g.clear >= 0 && g.arch() > g.span())
}

// closedGaps are the chains that are no holes: other parts go on from them, or buttons go through them.
func (c *checker) closedGaps(z int) map[fabric.ID]bool {
	out := map[fabric.ID]bool{}
	f := c.fabrics[z]
	if !f.Spaced() {
		return out
	}
	of := make([]int, f.Rows()+1) // the part of each row, by its number from 1 on
	for _, p := range c.parts {
		for _, r := range p.serials[z] {
			of[r.serial] = p.index + 1
		}
	}
	for i := range f.Elems {
		into := f.Elems[i].Into.ID
		if into >= 0 && f.Elems[into].Kind == fabric.Space && of[f.Elems[into].Row] != of[f.Elems[i].Row] {
			out[into] = true
		}
	}
	buttoned := c.buttoned()
	for _, p := range c.parts {
		for _, n := range p.fab[z].Names() {
			if !holeName().MatchString(n) && !buttoned[p.plan.Name+"."+n] {
				continue
			}
			ids, _, _, _ := p.fab[z].Label(n)
			for _, id := range ids {
				out[id] = true
			}
		}
	}
	return out
}

// buttoned are the labels that buttons are for.
func (c *checker) buttoned() map[string]bool {
	out := map[string]bool{}
	for _, s := range blocks[*lang.Finish](c.file.Body) {
		for _, b := range blocks[*lang.Button](s.Body) {
			if r := b.Node.(*lang.Button).For; r != nil && len(r.Path) == 2 {
				out[r.Path[0]+"."+r.Path[1]] = true
			}
		}
	}
	return out
}
