package compile

import (
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
)

// This file reads and prints rows that go on as established.

func (w *lowerer) established(n *lang.Established) *fabric.Op {
	o := w.op(fabric.AsMade, n)
	o.Form = stitch.Form{ID: stitch.SC, Together: 1}
	if n.Bound != nil {
		w.bound(&o.Bound, n.Bound)
	}
	for z := range w.c.z {
		if w.mask != nil && !w.mask[z] || w.p.fab[z].Halted() {
			continue
		}
		// Of the stitches that are there the first says how the row begins.
		if ids := w.p.fab[z].Edge(); len(ids) > 0 && w.c.fabrics[z].Elems[ids[0]].Kind == fabric.Stitch {
			if f := w.c.fabrics[z].FormOf(ids[0]); f.ID != stitch.Chain {
				o.Form = stitch.Form{ID: f.ID, Post: f.Post, Together: 1}
			}
			break
		}
	}
	return o
}

// established prints a row that goes on as established.
func (pr *printer) established(in plan.Instr, o *fabric.Op) []plan.Instr {
	c, seen := pr.p.c, map[stitch.Form]bool{}
	for z, res := range pr.w.first {
		if res == nil {
			continue
		}
		for _, id := range res.Made {
			if f := c.fabrics[z].FormOf(id); c.fabrics[z].Elems[id].Kind == fabric.Stitch && !seen[f] {
				seen[f] = true
				c.useForm(f)
				in.Posts = in.Posts || f.Post != stitch.NoPost
			}
		}
	}
	in.Op, in.Form = plan.AsMade, stitch.Form{}
	pr.bound(&in, o, &o.Bound)
	return []plan.Instr{in}
}
