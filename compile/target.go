package compile

import (
	"ovillo/compile/fabric"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// target lowers where an instruction works.
func (w *lowerer) target(o *fabric.Op, n *lang.Target) {
	o.Target.Takes = fabric.Stitches
	switch {
	case n == nil:
		w.bad = true
	case n.In != nil:
		w.in(o, n.In)
	case n.Between != nil:
		o.Target.Kind, o.Target.Takes = fabric.Each, fabric.Gaps
		if n.Between.Bound != nil {
			w.bound(&o.Target.Bound, n.Between.Bound)
		}
	case n.Through != nil:
		o.Target.Kind, o.Target.Ref = fabric.Through, w.ref(n.Through)
	case n.Prep == "below":
		o.Target.Kind, o.Target.Ref = fabric.Below, w.ref(n.Run)
	default:
		o.Target.Kind, o.Target.Ref = fabric.Beside, w.ref(n.Run)
	}
}

func (w *lowerer) in(o *fabric.Op, n *lang.In) {
	t := &o.Target
	switch {
	case n.Next != nil:
		w.inNext(o, n.Next)
	case n.Each != nil:
		w.inEach(o, n.Each)
	case n.First:
		t.Kind = fabric.First
	case n.Last:
		t.Kind, o.N = fabric.Last, w.cnt(n.LastN, 1)
	case n.Same:
		t.Kind = fabric.Same
	case n.Ring:
		t.Kind = fabric.InRing
	case n.Marker:
		t.Kind = fabric.InMarked
	case n.Gap:
		t.Kind = fabric.GapHere
	default:
		t.Kind, t.Ref = fabric.Named, w.ref(n.Run)
	}
}

// inNext lowers in next …; a lone name is a count if it has a value, else a kind of place.
func (w *lowerer) inNext(o *fabric.Op, n *lang.InNext) {
	t := &o.Target
	o.N = w.cnt(n.N, 1)
	if n.Of != nil {
		t.Kind, t.Ref = fabric.NextOf, w.ref(n.Of)
		w.p.walks[walkKey(t.Ref)] = n.Of.Span()
		return
	}
	if n.Ref != nil {
		if name := n.Ref.Path[0]; n.N == nil && len(n.Ref.Path) == 1 && w.isValue(name) && !w.p.names[name] {
			o.N = w.count(&lang.Expr{At: n.Ref.At, Op: lang.OpName, Text: name, Path: n.Ref.Path}, 1)
		} else {
			t.Kind, t.Ref = fabric.NextNamed, w.ref(n.Ref)
		}
	}
	if n.Kinds != nil {
		if n.Kinds.A == "left" {
			t.Kind = fabric.UnworkedNext
			return
		}
		t.Takes = w.takes(n.Kinds)
		if n.Kinds.Of != nil {
			t.Of = w.cnt(n.Kinds.Of, 1)
		}
	}
	if n.Depth != nil {
		if d := w.cnt(n.Depth, 1); len(d) > 0 {
			t.Deep = d[0]
		}
	}
}

func (w *lowerer) isValue(name string) bool {
	_, ok := w.c.lets[name]
	return ok
}

func (w *lowerer) inEach(o *fabric.Op, n *lang.InEach) {
	t := &o.Target
	switch {
	case n.OfNext != nil:
		o.N = w.cnt(n.OfNext, 1)
		return
	case n.Ref != nil:
		t.Kind, t.Ref = fabric.NamedEach, w.ref(n.Ref)
		if n.Bound != nil {
			w.say(codeBoundOfRun, n.Bound.Span(), diag.Args{"name": t.Ref.Name})
		}
		return
	}
	t.Kind = fabric.Each
	if n.Kinds != nil {
		if n.Kinds.A == "left" {
			t.Kind = fabric.UnworkedEach
			return
		}
		t.Takes = w.takes(n.Kinds)
	}
	if n.Bound != nil {
		w.bound(&t.Bound, n.Bound)
	}
}

// takes says what counts as a place.
func (w *lowerer) takes(k *lang.Kinds) fabric.Takes {
	t := takesOf(k.A)
	if k.B != "" {
		t |= takesOf(k.B)
	}
	if t == fabric.InChains {
		t |= fabric.Stitches // the chains of a foundation are plain places
	}
	return t
}

func takesOf(word string) fabric.Takes {
	switch word {
	case "space", "spaces":
		return fabric.Spaces
	case "chain", "chains":
		return fabric.InChains
	case "gap", "gaps":
		return fabric.Gaps
	}
	return fabric.Stitches
}
