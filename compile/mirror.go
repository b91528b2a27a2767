package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file mirrors a part: every row is read from its other end. Sides and row numbers stay; slip stitches at the start
// of a row become stitches that are left at its end, and the reverse; stitches of a cable cross the other way. The rows are
// written out in full, since "reverse the shaping" is what makers ask not to be told.

// mirrored returns the statements of a part as its mirror works them.
func (p *partState) mirrored(stmts []*lang.Statement) []*lang.Statement {
	var out []*lang.Statement
	for _, s := range stmts {
		c := *s
		switch n := s.Node.(type) {
		case *lang.Row:
			r := *n
			r.List = p.mirrorList(n.List)
			c.Node = &r
		case *lang.ShapeRow:
			r := *n
			r.List = p.mirrorList(n.List)
			c.Node = &r
		case *lang.ShapeAt:
			r := *n
			r.List = p.mirrorList(n.List)
			c.Node = &r
		case *lang.Edges:
			c.Node = &lang.Edges{At: n.At, First: n.Last, Last: n.First}
		case *lang.CountOff:
			r := *n
			r.Items = slices.Clone(n.Items)
			slices.Reverse(r.Items)
			c.Node = &r
		}
		c.Body = p.mirrored(s.Body)
		out = append(out, &c)
	}
	return out
}

// mirrorList reads a list from its other end.
func (p *partState) mirrorList(l *lang.List) *lang.List {
	if l == nil {
		return nil
	}
	out := &lang.List{At: l.At}
	for i := len(l.Items) - 1; i >= 0; i-- {
		out.Items = append(out.Items, p.mirrorItem(l.Items[i], i == 0, i == len(l.Items)-1))
	}
	p.rebound(out)
	return out
}

func (p *partState) mirrorItem(it lang.Item, first, last bool) lang.Item {
	switch n := it.(type) {
	case *lang.Bracket:
		c := *n
		c.List = p.mirrorInner(n.List)
		return &c
	case *lang.Together:
		c := *n
		c.List = p.mirrorInner(n.List)
		return &c
	case *lang.Leave:
		if last && !n.Rest {
			next := &lang.Target{At: n.At, In: &lang.In{At: n.At, Next: &lang.InNext{At: n.At, N: n.N}}}
			return &lang.Work{At: n.At, Slip: true, Target: next, Label: n.Label}
		}
	case *lang.Work:
		if first && n.Slip && n.Target != nil && n.Target.In != nil && n.Target.In.Next != nil {
			return &lang.Leave{At: n.At, N: n.Target.In.Next.N, Label: n.Label}
		}
		c := *n
		c.Cross = map[string]string{"front": "back", "back": "front"}[n.Cross]
		if t := n.Target; t != nil && t.In != nil && (t.In.First || t.In.Last) {
			in := *t.In
			in.First, in.Last = t.In.Last, t.In.First
			c.Target = &lang.Target{At: t.At, In: &in}
		}
		return &c
	}
	return it
}

// mirrorInner reads what stands in brackets from its other end; its bounds stay.
func (p *partState) mirrorInner(l *lang.List) *lang.List {
	out := &lang.List{At: l.At}
	for i := len(l.Items) - 1; i >= 0; i-- {
		out.Items = append(out.Items, p.mirrorItem(l.Items[i], false, false))
	}
	return out
}

// rebound lets what goes as far as it can stop before what now follows it.
func (p *partState) rebound(l *lang.List) {
	for i, it := range l.Items {
		rest := &lang.List{At: l.At, Items: l.Items[i+1:]}
		switch n := it.(type) {
		case *lang.Work:
			switch {
			case n.End != nil && n.End.N == nil && farEnd(n.End.Bound):
				n.End = &lang.RepEnd{At: n.End.At, Bound: p.before(rest)}
			case n.Target != nil && n.Target.In != nil && n.Target.In.Each != nil && n.Target.In.Each.Ref == nil &&
				n.Target.In.Each.OfNext == nil && farEnd(n.Target.In.Each.Bound):
				each := *n.Target.In.Each
				each.Bound = p.before(rest)
				in := *n.Target.In
				in.Each = &each
				t := *n.Target
				t.In = &in
				n.Target = &t
			}
		case *lang.Bracket:
			if n.End != nil && n.End.N == nil && farEnd(n.End.Bound) {
				n.End = &lang.RepEnd{At: n.End.At, Bound: p.before(rest), Stated: n.End.Stated}
			}
		}
	}
}

// farEnd reports whether a bound is the end of the row, or so many before it.
func farEnd(b *lang.Bound) bool { return b == nil || b.End || b.Last }

// before is the bound that leaves room for what follows.
func (p *partState) before(rest *lang.List) *lang.Bound {
	b := &lang.Bound{At: rest.At, End: true}
	if len(rest.Items) == 0 {
		return b
	}
	low := p.c.lower(p, rest, nil)
	if !low.ok {
		return b
	}
	e := &lang.Expr{At: rest.At, Op: lang.OpNumber}
	zero := true
	for z := 0; z < p.c.z; z++ {
		n := itoa(takes(low.ops, z))
		zero = zero && n == "0"
		if z == 0 {
			e.Text = n
			continue
		}
		e.Sizes = append(e.Sizes, n)
	}
	if zero {
		return b
	}
	return &lang.Bound{At: rest.At, Last: true, LastN: &lang.Cnt{At: rest.At, E: e}}
}

// takes is how many places a list takes, in one size; what goes as far as it can counts none.
func takes(ops []*fabric.Op, z int) int {
	at := func(n plan.Nums, def int) int {
		if n == nil || n[z] == plan.Absent {
			return def
		}
		return n[z]
	}
	sum := 0
	for _, o := range ops {
		switch o.Kind {
		case fabric.Draw:
			sum += o.Form.Together * at(o.N, 1)
		case fabric.Work, fabric.InOne:
			if o.Target.Kind == fabric.Next || o.Target.Kind == fabric.Last {
				sum += at(o.N, 1)
			}
		case fabric.SkipOver, fabric.Leave:
			sum += at(o.N, 0)
		case fabric.Repeat:
			sum += takes(o.Body, z) * at(o.N, 0)
		}
	}
	return sum
}

// mirrorOf returns the statements of the mirror of a part, with the part's own in place of those that say the same thing.
func (c *checker) mirrorOf(p *partState, s *lang.Statement, name *lang.Name) []*lang.Statement {
	other := c.parts[name.Text]
	if other == nil {
		c.say(codeNoPart, name.Span(), diag.Args{"word": name.Text, "near": lang.Near(name.Text, keys(c.parts))})
		return s.Body
	}
	p.base, p.names = other.base, other.names
	return c.merge(s, p.mirrored(other.stmts), name.Text)
}
