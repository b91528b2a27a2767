package compile

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
)

// This file says of each item of a row how far it goes, whether it can be read from either end, and changes how far it
// goes.

// atOf is where an open item stands in the source.
func atOf(it lang.Item) lang.At {
	switch n := it.(type) {
	case *lang.Work:
		return n.At
	case *lang.Together:
		return n.At
	case *lang.Bracket:
		return n.At
	case *lang.Skip:
		return n.At
	case *lang.ChartRow:
		return n.At
	}
	return lang.At{}
}

// openEnd is the bound of an item that goes as far as it can; nil is the end of the row.
func openEnd(it lang.Item) (b *lang.Bound, open bool) {
	switch n := it.(type) {
	case *lang.Work:
		switch {
		case n.Spread != nil:
			return n.Spread.Bound, true
		case n.End != nil && n.End.N == nil:
			return n.End.Bound, true
		case n.Target == nil:
		case n.Target.Between != nil:
			return n.Target.Between.Bound, true
		case n.Target.In != nil && n.Target.In.Each != nil && n.Target.In.Each.OfNext == nil:
			return n.Target.In.Each.Bound, true
		}
	case *lang.Together:
		if in := n.Target.In; in != nil && in.Each != nil && in.Each.OfNext == nil {
			return in.Each.Bound, true
		}
	case *lang.Bracket:
		if n.End != nil && n.End.N == nil {
			return n.End.Bound, true
		}
	case *lang.ChartRow:
		if n.End != nil && n.End.N == nil {
			return n.End.Bound, true
		}
	case *lang.Skip:
		return n.Bound, n.Rest || n.Bound != nil
	}
	return nil, false
}

// withBound is an open item with another bound.
func withBound(it lang.Item, b *lang.Bound) lang.Item {
	each := func(e *lang.InEach) *lang.InEach { c := *e; c.Bound = b; return &c }
	in := func(t *lang.Target) *lang.Target {
		c := *t
		if t.Between != nil {
			c.Between = each(t.Between)
			return &c
		}
		i := *t.In
		i.Each = each(t.In.Each)
		c.In = &i
		return &c
	}
	switch n := it.(type) {
	case *lang.Work:
		c := *n
		switch {
		case n.Spread != nil:
			s := *n.Spread
			s.Bound = b
			c.Spread = &s
		case n.End != nil:
			c.End = &lang.RepEnd{At: n.End.At, Bound: b, Stated: n.End.Stated}
		default:
			c.Target = in(n.Target)
		}
		return &c
	case *lang.Together:
		c := *n
		c.Target = in(n.Target)
		return &c
	case *lang.Bracket:
		c := *n
		c.End = &lang.RepEnd{At: n.End.At, Bound: b, Stated: n.End.Stated}
		return &c
	case *lang.ChartRow:
		c := *n
		c.End = &lang.RepEnd{At: n.End.At, Bound: b, Stated: n.End.Stated}
		return &c
	case *lang.Skip:
		c := *n
		c.Rest, c.Bound = false, b
		return &c
	}
	return nil
}

// withCount is an open item that goes over so many places; nil if that cannot be said of it.
func (m *mirror) withCount(it lang.Item, n *lang.Cnt, places plan.Nums) lang.Item {
	next := func(at lang.At, k *lang.Kinds) *lang.Target {
		return &lang.Target{At: at, In: &lang.In{At: at, Next: &lang.InNext{At: at, N: n, Kinds: k}}}
	}
	switch w := it.(type) {
	case *lang.Work:
		if w.Chart != nil && m.p.chart != nil && m.p.chart.Mesh.Behind > 0 {
			return nil // squares are not counted in places
		}
		if w.Spread != nil || w.Spaced != nil || w.Tog || w.Target != nil && w.Target.In == nil || w.Stitch != nil && !m.plainStitch(w.Stitch.Text) {
			return nil
		}
		var kinds *lang.Kinds
		if w.Target != nil {
			kinds = w.Target.In.Each.Kinds
		}
		c := *w
		c.End, c.Target = nil, next(w.At, kinds)
		return &c
	case *lang.Bracket:
		one, ok := m.takes(&lang.Bracket{At: w.At, List: w.List, End: &lang.RepEnd{At: w.At, N: m.number(w.At, m.c.nums(1))}})
		if !ok {
			return nil
		}
		times := m.c.nums(0)
		for z := range times {
			if one[z] == 0 || places[z] == plan.Absent || places[z]%one[z] != 0 {
				return nil
			}
			times[z] = places[z] / one[z]
		}
		c := *w
		c.End = &lang.RepEnd{At: w.End.At, N: m.number(w.At, times)}
		return &c
	case *lang.Skip:
		c := *w
		c.Rest, c.Bound, c.N = false, nil, n
		return &c
	}
	return nil
}

// plainStitch reports whether a word is a stitch that takes one place.
func (m *mirror) plainStitch(word string) bool {
	f, ok := m.c.form(word)
	return ok && f.Together == 1
}

// fixed reports whether a stitch goes one way: a picot sits on the stitch before it, a reverse stitch has its own way, and
// stitches that cross lean to one side.
func (m *mirror) fixed(n *lang.Work) bool {
	if n.Stitch == nil {
		return false
	}
	f, _ := m.c.form(n.Stitch.Text)
	k, _ := stitch.Of(f.ID)
	return f.Group == stitch.Picot || f.Group.Crossed() || k.Back
}

// oneWay finds an item that cannot be read from its other end: what speaks of the stitch before it, of a name, of a yarn
// from here on, or of the way stitches cross.
func (m *mirror) oneWay(items []lang.Item) lang.Item {
	for i, it := range items {
		bad := false
		m.many = min(m.many+1, maxInstructions+1)
		switch n := it.(type) {
		case *lang.Work:
			if g := m.group(n); g != nil {
				bad = m.oneWayInside(g.List)
				break
			}
			bad = m.fixed(n) || n.Cross != "" || n.Slip && n.End != nil || !bothWays(n.Target, m) || n.Spaced != nil && m.oneWayInside(n.Spaced.List)
		case *lang.Lengthen:
			bad = true // it stands at the end of its row, and a row cannot begin with it
		case *lang.Together:
			bad = !bothWays(n.Target, m)
		case *lang.Bracket:
			bad = m.oneWayInside(n.List)
		case *lang.Mark:
			bad = n.Verb != "unmark" && !n.Gap
		case *lang.Leave:
			bad = n.Rest || i != len(items)-1
		case *lang.ChainItem, *lang.Skip, *lang.ChartRow:
		default:
			bad = true // a change of yarn, a turn before the end
		}
		if bad {
			return it
		}
	}
	return nil
}

// oneWayInside reports whether something in brackets goes one way only, or as far as it can. Each list is looked at once, since groups
// in groups grow fast.
func (m *mirror) oneWayInside(l *lang.List) bool {
	if l == nil {
		return true
	}
	in, known := m.insides[l]
	if !known {
		m.insides[l] = inside{deep: maxGroups} // if it holds itself, which is said of the row it stands in
		deepest, many := m.deepest, m.many
		m.deepest, m.many = 0, 0
		in.oneWay = m.oneWay(l.Items) != nil || slices.ContainsFunc(l.Items, func(it lang.Item) bool { _, open := openEnd(it); return open })
		in.deep, in.many = m.deepest+1, m.many
		if in.beyond = m.beyond || in.deep > maxGroups; in.beyond {
			in.oneWay = true
		}
		m.deepest, m.many = deepest, many
		m.insides[l] = in
	}
	m.deepest, m.many, m.beyond = max(m.deepest, in.deep), min(m.many+in.many, maxInstructions+1), in.beyond
	return in.oneWay
}

// bothWays reports whether a place means the same from either end.
func bothWays(t *lang.Target, m *mirror) bool {
	if t == nil || t.Between != nil {
		return true
	}
	if t.In == nil {
		return false
	}
	in := t.In
	switch {
	case in.Next != nil:
		if in.Next.Ref != nil {
			return len(in.Next.Ref.Path) == 1 && !m.p.names[in.Next.Ref.Path[0]]
		}
		return in.Next.Kinds == nil || in.Next.Kinds.A == "st" || in.Next.Kinds.A == "sts" || in.Next.Kinds.A == "chain" || in.Next.Kinds.A == "chains"
	case in.Each != nil:
		return in.Each.Ref == nil && (in.Each.Kinds == nil || in.Each.Kinds.A != "left")
	}
	return in.First || in.Last
}
