package compile

import (
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
)

// This file reads and prints stitches that are drawn together from places of several kinds.

// drawn reads [dc in next, skip 2, dc in next space] together.
func (w *lowerer) drawn(n *lang.Bracket) *fabric.Op {
	o := w.op(fabric.Draw, n)
	o.N, o.Target.Takes, o.Label = w.c.nums(1), fabric.Stitches, labelOf(n.Label)
	before := w.bad
	w.bad = false
	o.Body = w.list(n.List)
	understood := !w.bad
	w.bad = w.bad || before
	w.with(o, n.With)
	if !understood {
		return nil
	}
	for z := range w.c.z {
		legs, id, ok := legsOf(o.Body, z)
		if !ok || legs < 2 || o.Form.Together > 0 && legs != o.Form.Together {
			w.say(codeLegs, n.List.Span(), nil)
			return nil
		}
		o.Form.ID, o.Form.Together = id, legs
	}
	return o
}

// legsOf counts the stitches of a list that are to be drawn together, in one size; they are of one kind, each in a place of
// its own or several in one, with skips between them.
func legsOf(ops []*fabric.Op, z int) (legs int, id stitch.ID, ok bool) {
	at := func(n plan.Nums, def int) int {
		if n == nil {
			return def
		}
		return max(n[z], 0)
	}
	for _, o := range ops {
		switch o.Kind {
		case fabric.SkipOver, fabric.SkipSpaces:
			if o.Label != "" {
				return 0, "", false
			}
			continue
		case fabric.Work:
		default:
			return 0, "", false
		}
		k, standard := stitch.Of(o.Form.ID)
		if !standard || !k.Body || o.Form.Group != stitch.Single || id != "" && id != k.ID || o.Label != "" {
			return 0, "", false
		}
		id = k.ID
		switch o.Target.Kind {
		case fabric.Each, fabric.NamedEach, fabric.Through, fabric.UnworkedEach:
			return 0, "", false // how many they are depends on the edge
		}
		legs += at(o.N, 1) * at(o.Per, 1)
	}
	return legs, id, true
}

// legs prints what is drawn together: places of one kind by their number, others one by one.
func (pr *printer) legs(in *plan.Instr, o *fabric.Op) {
	legs := pr.list(o.Body)
	if len(legs) == 1 && legs[0].Op == plan.Work && legs[0].Reach == plan.Next && legs[0].Per == nil && legs[0].Ref == nil &&
		legs[0].Deep == 0 && !legs[0].Form.Derived() && legs[0].Form.Loop == stitch.BothLoops {
		in.Over, in.Chains = legs[0].Over, legs[0].Chains
		return
	}
	in.Body = legs
}
