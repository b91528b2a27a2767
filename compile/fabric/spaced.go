package fabric

import "ovillo/compile/plan"

// This file sets something among plain stitches, several times, as far apart as it goes: holes along a band, bobbles, eyelets.

// spaced works Body N times at even distances; the stitches between are single ones.
func (r *row) spaced(op *Op) (int, *Fault) {
	if r.group != nil {
		return 0, fault(Nested, 0, 0, "")
	}
	stop, f := r.bound(&op.Bound)
	if f != nil {
		return 0, f
	}
	n, have := r.num(op.N, 0), stop-r.c
	width, _ := Width(op.Body, r.f.Size)
	edge := -1
	if op.Edge != nil {
		edge = r.num(op.Edge, 0)
	}
	g, need := SpacedGroups(have, n, width, edge, op.How == FromEnd)
	if need > have {
		return 0, fault(Crowded, need, have, "")
	}
	r.cur.Group = g
	plain := &Op{Kind: Work, Form: op.Form, Extra: op.Extra, Index: op.Index, Yarn: -1, Span: op.Span}
	single := func(k int) *Fault {
		if k == 0 {
			return nil
		}
		plain.N = many(k, r.f.Size)
		plain.Target.Takes = Stitches
		_, f := r.work(plain)
		return f
	}
	if f := single(g.Before); f != nil {
		return 0, f
	}
	for i := range n {
		if i > 0 {
			if f := single(g.ShortPlain); f != nil {
				return 0, f
			}
		}
		if f := r.list(op.Body); f != nil {
			return 0, f
		}
	}
	return n, single(g.After)
}

// many is a number of one size.
func many(n, size int) plan.Nums {
	out := make(plan.Nums, size+1)
	out[size] = n
	return out
}

// SpacedGroups sets n things of a width among have places, the same number of plain stitches between any two. edge is how
// many stand before the first, or at the other end; below 0 the two ends share what is left. What cannot be shared out
// between the things, fewer stitches than there are gaps, goes to the end that is not counted off. It returns how many
// places are needed too: at least one plain stitch between two things and at either end, and at the end that is not counted
// off no fewer than at the other.
func SpacedGroups(have, n, width, edge int, fromEnd bool) (g Groups, need int) {
	if n <= 0 {
		return Groups{Before: max(have, 0)}, 0
	}
	free := have - n*width
	if edge < 0 {
		if need = n*width + n + 1; need > have {
			return g, need
		}
		inner := free / n
		ends := free - inner*(n-1)
		g = Groups{Short: n - 1, ShortPlain: inner, Before: ends / 2, After: ends - ends/2}
	} else {
		need = n*width + n - 1 + edge
		if n > 1 {
			need += edge
		}
		if need > have {
			return g, need
		}
		g = Groups{Short: n - 1, Before: edge}
		if n > 1 {
			g.ShortPlain = (free - 2*edge) / (n - 1)
		}
		g.After = free - edge - g.Short*g.ShortPlain
	}
	if fromEnd {
		g.Before, g.After = g.After, g.Before
	}
	return g, need
}

// Width is how many places a list takes in one size; false if that depends on the row it is worked over.
func Width(ops []*Op, size int) (int, bool) {
	at := func(n plan.Nums, def int) int {
		if n == nil || n[size] == plan.Absent {
			return def
		}
		return n[size]
	}
	sum := 0
	for _, o := range ops {
		switch o.Kind {
		case Cross:
			sum += o.Form.Of * at(o.N, 1)
		case Draw:
			n, ok := o.Form.Together, true
			if o.Body != nil {
				n, ok = Width(o.Body, size)
			}
			if !ok {
				return 0, false
			}
			sum += n * at(o.N, 1)
		case Work, InOne:
			switch o.Target.Kind {
			case Next:
				sum += at(o.N, 1)
			case Same:
			default:
				return 0, false
			}
		case SkipOver:
			if o.N == nil {
				return 0, false
			}
			sum += at(o.N, 0)
		case Repeat:
			n, ok := Width(o.Body, size)
			if !ok || o.N == nil {
				return 0, false
			}
			sum += n * at(o.N, 0)
		case Chains, Found, Ride, Mark, Move, Unmark, Change:
		default:
			return 0, false
		}
	}
	return sum, true
}
