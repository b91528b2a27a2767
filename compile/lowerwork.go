package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file lowers stitches with all that may stand round them.

// work lowers a stitch with all that may stand round it.
func (w *lowerer) work(n *lang.Work) *fabric.Op {
	if n.Stitch != nil {
		if g := w.c.groups[n.Stitch.Text]; g != nil {
			return w.group(n, g)
		}
	}
	if n.Chart != nil {
		return w.byChart(n)
	}
	o := w.op(fabric.Work, n)
	o.Form.Together = 1
	var before plan.Nums // the number before the stitch
	if n.N != nil {
		before = w.count(n.N.E, 1)
	}
	many := false // the number before says how many, not how many in one place
	switch {
	case n.Slip:
		o.Form.ID = stitch.Slip
	case n.Stitch == nil:
		w.bad = true
		return nil
	case n.Stitch.Text == "inc" || n.Stitch.Text == "dec":
		many = true
		if !w.shaping(o, n) {
			return nil
		}
	default:
		f, ok := w.c.form(n.Stitch.Text)
		if !ok {
			w.bad = true
			w.c.unknownStitch(n.Stitch)
			return nil
		}
		o.Form = f
		if own, ok := w.c.own[f.ID]; ok {
			o.Extra = own.Makes - 1
		}
		switch {
		case f.Group == stitch.Picot:
			return w.picot(o, n)
		case f.Group.Crossed():
			o.Kind, many = fabric.Cross, true
		case f.Together > 1:
			o.Kind, many = fabric.Draw, true
		}
	}
	if n.Tog {
		if !w.together(o, n, before) {
			return nil
		}
		before = nil
	}
	o.Form.Loop = loopOf(n)
	o.Label = labelOf(n.Label)
	w.with(o, n.With)
	o.Cross = map[string]plan.Cross{"front": plan.CrossFront, "back": plan.CrossBack}[n.Cross]
	o = w.extent(o, n, before, many)
	if n.Spaced != nil && o != nil {
		return w.spaced(o, n)
	}
	return o
}

// lengthen reads stitches that stand on no place.
func (w *lowerer) lengthen(n *lang.Lengthen) *fabric.Op {
	o := w.op(fabric.Found, n)
	o.Form = stitch.Plain(w.c.stitchID(n.Stitch))
	o.N, o.Label = w.cnt(n.N, 1), labelOf(n.Label)
	if k, ok := stitch.Of(o.Form.ID); !ok || !k.Body {
		if o.Form.ID != "" {
			w.say(codePlainStitch, n.Stitch.Span(), diag.Args{"word": n.Stitch.Text})
		}
		w.bad = true
		return nil
	}
	return o
}

// picot reads a picot: it has no place but the stitch before it.
func (w *lowerer) picot(o *fabric.Op, n *lang.Work) *fabric.Op {
	bare := lang.Work{At: n.At, Stitch: n.Stitch, With: n.With}
	if *n != bare {
		w.say(codePicot, n.Span(), diag.Args{"word": n.Stitch.Text})
		return nil
	}
	o.Kind = fabric.Ride
	w.with(o, n.With)
	return o
}

func loopOf(n *lang.Work) stitch.Loop {
	switch {
	case n.Third || n.Loop == "tlo":
		return stitch.ThirdLoop
	case n.Loop == "flo":
		return stitch.FrontLoop
	case n.Loop == "blo":
		return stitch.BackLoop
	}
	return stitch.BothLoops
}

// shaping gives inc and dec the base stitch.
func (w *lowerer) shaping(o *fabric.Op, n *lang.Work) bool {
	base := w.p.base
	if base == "" {
		w.say(codeNoBase, n.Stitch.Span(), diag.Args{"word": n.Stitch.Text})
		return false
	}
	o.Form.ID = base
	if n.Stitch.Text == "inc" {
		o.Per = w.c.nums(2)
	} else {
		o.Kind, o.Form.Together = fabric.Draw, 2
	}
	return true
}

// together reads 4 dc together.
func (w *lowerer) together(o *fabric.Op, n *lang.Work, before plan.Nums) bool {
	k, same := before.Same()
	if before == nil || !same || k < 2 {
		w.say(codeTogether, n.Span(), nil)
		return false
	}
	if form, ok := stitch.Of(o.Form.ID); o.Form.Group != stitch.Single || ok && !form.Body {
		w.say(codePlainStitch, n.Stitch.Span(), diag.Args{"word": n.Stitch.Text})
		return false
	}
	o.Kind, o.Form.Together, o.N = fabric.Draw, k, w.c.nums(1)
	return true
}

// extent lowers what follows the stitch: where, how far, how often.
func (w *lowerer) extent(o *fabric.Op, n *lang.Work, before plan.Nums, many bool) *fabric.Op {
	switch {
	case n.Spread != nil:
		o.Kind = fabric.Spread
		o.N = w.cnt(n.Spread.N, 0)
		o.How = map[string]fabric.Spreading{"alternating": fabric.Alternating, "centred": fabric.Centred}[n.Spread.How]
		if n.Spread.Bound != nil {
			w.bound(&o.Bound, n.Spread.Bound)
		}
		if n.Stitch.Text != "inc" && n.Stitch.Text != "dec" || before != nil {
			w.say(codeSpreadWhat, n.Span(), diag.Args{"word": n.Stitch.Text})
		}
		return o
	case o.Form.ID == stitch.Slip && n.End != nil && n.End.Bound != nil:
		o.Kind = fabric.SlideTo
		w.bound(&o.Bound, n.End.Bound)
		return o
	case n.End != nil:
		return w.carried(o, n, before, many)
	case n.Target != nil && (o.Kind == fabric.Draw || o.Kind == fabric.Cross):
		return w.drawTarget(o, n, before)
	case n.Target != nil:
		if before != nil && !many {
			o.Per = before
		}
		w.target(o, n.Target)
		if many && before != nil {
			w.multiply(o, n, before)
		}
		return o
	case before != nil && !many && w.inOne: // (3 dc, ch 2, 3 dc) in next: the place is the group's
		o.Per, o.N = before, w.c.nums(1)
	case before != nil && !many:
		w.say(codeNumberAlone, n.Span(), diag.Args{"number": w.c.file.Source.Slice(n.N.Span()), "stitch": n.Stitch.Text})
		return nil
	case before != nil:
		o.N = before
	case o.N == nil:
		o.N = w.c.nums(1)
	}
	o.Target.Takes = fabric.Stitches
	return o
}

// multiply refuses 3 inc in next 2: six places, or two?
func (w *lowerer) multiply(o *fabric.Op, n *lang.Work, before plan.Nums) {
	if v, ok := o.N.Same(); ok && v == 1 && o.Target.Kind == fabric.Next {
		o.N = before
		return
	}
	w.say(codeTwoNumbers, n.Span(), nil)
}

// drawTarget lets a decrease say where, as long as it says one thing: dec in next space and the like are refused.
func (w *lowerer) drawTarget(o *fabric.Op, n *lang.Work, before plan.Nums) *fabric.Op {
	t := n.Target
	if t.In != nil && t.In.Next != nil && t.In.Next.N == nil && t.In.Next.Ref == nil && t.In.Next.Depth == nil {
		if k := t.In.Next.Kinds; k != nil && w.takes(k) != fabric.Stitches {
			w.say(codeDrawnWhere, n.Span(), diag.Args{"word": n.Stitch.Text, "stitch": w.c.word(o.Form.ID), "number": o.Form.Together})
			return nil
		}
		o.N = before
		if o.N == nil {
			o.N = w.c.nums(1)
		}
		return o
	}
	if t.In != nil && t.In.Last {
		o.N = w.c.nums(1) // dec in last: the row rule sees to it that nothing follows
		return o
	}
	w.say(codeTwoNumbers, n.Span(), nil)
	return nil
}

// carried lowers a stitch with a repeat end: dc to m1, dec around, sc2tog 6 times.
func (w *lowerer) carried(o *fabric.Op, n *lang.Work, before plan.Nums, many bool) *fabric.Op {
	if before != nil {
		if many {
			w.say(codeTwoNumbers, n.Span(), nil)
			return nil
		}
		o.Per = before
	}
	e := n.End
	if e.N != nil { // 6 times
		o.N, o.Target.Takes = w.cnt(e.N, 1), fabric.Stitches
		return o
	}
	if o.Kind == fabric.Draw || o.Kind == fabric.Cross {
		o.N, o.Target.Takes = w.c.nums(1), fabric.Stitches
		r := w.op(fabric.Repeat, n)
		r.Body, r.Label, o.Label = []*fabric.Op{o}, o.Label, ""
		w.repEnd(r, e)
		return r
	}
	o.Target = fabric.Target{Kind: fabric.Each, Takes: fabric.Stitches}
	if e.Bound != nil {
		w.bound(&o.Target.Bound, e.Bound)
	}
	if e.Stated != nil {
		o.Stated = w.cnt(e.Stated.N, 0)
	}
	return o
}

// group lowers the use of a named group of instructions.
func (w *lowerer) group(n *lang.Work, g *lang.Group) *fabric.Op {
	switch {
	case slices.Contains(w.within, g):
		w.say(codeGroupInItself, n.Span(), diag.Args{"name": n.Stitch.Text})
		return nil
	case w.n > maxInstructions:
		w.tooLong(n)
		return nil
	case len(w.within) == 0:
		w.named = n
	}
	w.within = append(w.within, g)
	defer func() { w.within = w.within[:len(w.within)-1] }()
	o := w.op(fabric.Repeat, n)
	o.Body = w.list(g.List)
	o.N = w.c.nums(1)
	o.Label = labelOf(n.Label)
	w.with(o, n.With)
	switch {
	case n.Target != nil || n.Spread != nil:
		w.say(codeGroupTarget, n.Span(), diag.Args{"name": n.Stitch.Text})
	case n.End != nil:
		w.repEnd(o, n.End)
	case n.N != nil:
		o.N = w.count(n.N.E, 1)
	}
	return o
}
