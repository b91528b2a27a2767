package compile

import (
	"reflect"
	"slices"

	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file mirrors a part: every row is read from its other end. Sides and row numbers stay; slip stitches at the start
// of a row become stitches that are left at its end, and the reverse. The rows are written out in full, since "reverse the
// shaping" is what makers ask not to be told. A row with something in it that goes one way only is refused: its mirror
// image is the designer's to write.

// mirrorOf returns the statements of the mirror of a part, with the part's own in place of those that say the same thing.
func (c *checker) mirrorOf(p *partState, s *lang.Statement, name *lang.Name) []*lang.Statement {
	other := c.parts[name.Text]
	if other == nil {
		c.say(codeNoPart, name.Span(), diag.Args{"word": name.Text, "near": lang.Near(name.Text, keys(c.parts))})
		return s.Body
	}
	lang.WalkStatements(other.stmts, func(*lang.Statement) bool { c.mirrored++; return true })
	if c.mirrored > maxMirrored {
		c.say(codeManyRows, name.Span(), diag.Args{"have": c.mirrored, "max": maxMirrored, "what": diag.Term{Key: "mirrored line", N: 2}})
		p.started = true
		p.halt(all(c.z))
		return s.Body
	}
	p.base, p.names = other.base, other.names
	m := &mirror{c: c, p: p, of: other.plan.Name, own: map[string]bool{}, gaps: map[string]bool{}, ins: map[string]bool{}}
	for _, b := range s.Body {
		m.own[likeKey(b)] = true
	}
	return c.merge(s, m.statements(other.stmts), name.Text)
}

// maxMirrored is the most lines of all parts that are mirrored, each as often as it is: their images are written out.
const maxMirrored = 50_000

// mirror is a part while it is mirrored.
type mirror struct {
	c         *checker
	p         *partState
	of        string          // the part that is mirrored
	own       map[string]bool // what the mirror says itself
	gaps, ins map[string]bool // markers between stitches, and in stitches
	insides   map[*lang.List]inside
	deepest   int  // how many brackets and groups stand in each other in what is being looked at
	many      int  // to how many instructions it comes
	beyond    bool // what goes one way only was that because too many stand in each other
}

// inside is what is known of a list in brackets, or of a group.
type inside struct {
	oneWay, beyond bool
	deep           int // brackets and groups inside one another, with its own
	many           int // instructions, groups written out
}

// maxGroups is how deep groups and brackets may stand in each other to be mirrored.
const maxGroups = 20

// marker notes where a marker stands from here on.
func (m *mirror) marker(name string, in bool) { m.ins[name], m.gaps[name] = in, !in }

// statements are the statements of the part as its mirror works them.
func (m *mirror) statements(stmts []*lang.Statement) []*lang.Statement {
	var out []*lang.Statement
	for _, s := range stmts {
		c := *s
		outer := m.p.lex
		switch n := s.Node.(type) {
		case *lang.Row:
			if k := likeKey(s); k != "" && m.own[k] {
				break // the mirror has this row itself
			}
			r := *n
			if n.Head.Of != nil {
				m.refuse(n)
				c.Node = nil
				break
			}
			if r.List, c.Node = m.row(n), nil; r.List != nil {
				c.Node = &r
			}
		case *lang.ShapeRow:
			r := *n
			if r.List, c.Node = m.list(n.List), nil; r.List != nil {
				c.Node = &r
			}
		case *lang.ShapeAt:
			r := *n
			if r.List, c.Node = m.list(n.List), nil; r.List != nil {
				c.Node = &r
			}
		case *lang.Edges:
			c.Node = &lang.Edges{At: n.At, First: n.Last, Last: n.First}
		case *lang.CountOff:
			r := *n
			r.Items = slices.Clone(n.Items)
			slices.Reverse(r.Items)
			c.Node = &r
			for _, it := range n.Items {
				if it.Mark != nil {
					m.marker(it.Mark.Text, it.Next)
				}
			}
		case *lang.Only:
			m.quiet(func() { m.p.lex = m.c.pick(n.Sizes) })
		}
		c.Body = m.statements(s.Body)
		m.p.lex = outer
		out = append(out, &c)
	}
	return out
}

// quiet does something whose messages come again when the row is worked.
func (m *mirror) quiet(do func()) {
	before := len(m.c.out)
	do()
	m.c.out = m.c.out[:before]
}

// row reads a row from its other end, and its chart too. It is nil if it cannot be.
func (m *mirror) row(n *lang.Row) *lang.List {
	l := n.List
	if n.Head.From != nil {
		var ch *chart
		m.quiet(func() {
			if ch = m.c.chartNamed(n.Head.From.Chart); ch != nil && len(ch.Rows) > 0 {
				l = m.c.chartList(n, ch)
			}
		})
		if ch == nil || l == nil || len(ch.Rows) == 0 {
			return nil // that is said of the row of the other part
		}
		m.p.chart = &fromChart{ch, 0}
		defer func() { m.p.chart = nil }()
	}
	return m.list(l)
}

// list reads the list of a row from its other end; nil if it cannot be, which is reported: what follows is then unknown.
func (m *mirror) list(l *lang.List) *lang.List {
	if l == nil {
		return nil
	}
	items, ends := splitTail(l.Items)
	m.insides, m.beyond, m.many = map[*lang.List]inside{}, false, 0 // what names mean may have changed since the row before
	if one := m.oneWay(items); one != nil {
		m.refuse(one)
		return nil
	}
	if m.many > maxInstructions {
		return nil // that is said of the row of the other part
	}
	spans, one := m.measure(items)
	if one != nil {
		m.refuse(one)
		return nil
	}
	for _, it := range items {
		if n, ok := it.(*lang.Mark); ok && n.Gap {
			m.marker(n.Name.Text, false)
		}
	}
	out := &lang.List{At: l.At}
	for i := len(items) - 1; i >= 0; i-- {
		it := m.item(items[i], i == 0, i == len(items)-1)
		if sp := spans[i]; sp != nil {
			if it = sp.apply(m, it); it == nil {
				m.refuse(items[i])
				return nil
			}
		}
		out.Items = append(out.Items, it)
	}
	out.Items = append(keepOpenings(out.Items), ends...)
	m.c.turned[out] = !m.c.turned[l]
	return out
}

// keepOpenings lets chains and the stitches that are skipped under them stand in the order in which they were said: from
// the other end it is the same opening.
func keepOpenings(items []lang.Item) []lang.Item {
	half := func(i int) bool {
		if i < 0 || i >= len(items) {
			return false
		}
		switch items[i].(type) {
		case *lang.ChainItem, *lang.Skip:
			return true
		}
		return false
	}
	for i := range items {
		if half(i) && half(i+1) && !half(i-1) && !half(i+2) && reflect.TypeOf(items[i]) != reflect.TypeOf(items[i+1]) {
			items[i], items[i+1] = items[i+1], items[i]
		}
	}
	return items
}

func (m *mirror) refuse(n lang.Node) {
	d := diag.Diagnostic{Code: codeMirror, Span: n.Span(), Args: diag.Args{"part": m.of}}
	if m.beyond {
		d.Help, d.Args["max"] = "deep", maxGroups
	}
	m.c.report(d)
}

// splitTail parts a turn and a join, which end a row from either end, from what is worked in it.
func splitTail(items []lang.Item) (row, tail []lang.Item) {
	n := len(items)
	for n > 0 {
		switch items[n-1].(type) {
		case *lang.Turn, *lang.Join:
			n--
			continue
		}
		break
	}
	return items[:n], items[n:]
}

// item reads one item from its other end.
func (m *mirror) item(it lang.Item, first, last bool) lang.Item {
	switch n := it.(type) {
	case *lang.Bracket:
		c := *n
		c.List = m.inner(n.List)
		return &c
	case *lang.Together:
		c := *n
		c.List = m.inner(n.List)
		return &c
	case *lang.Leave:
		if last {
			next := &lang.Target{At: n.At, In: &lang.In{At: n.At, Next: &lang.InNext{At: n.At, N: n.N}}}
			return &lang.Work{At: n.At, Slip: true, Target: next, Label: n.Label}
		}
	case *lang.Work:
		return m.work(n, first)
	}
	return it
}

// countOf is how many places are next: a lone name behind `next` is the number too.
func countOf(n *lang.InNext) *lang.Cnt {
	if r := n.Ref; n.N == nil && r != nil {
		return &lang.Cnt{At: r.At, E: &lang.Expr{At: r.At, Op: lang.OpName, Text: r.Path[0], Path: r.Path}}
	}
	return n.N
}

func (m *mirror) work(n *lang.Work, first bool) lang.Item {
	if first && n.Slip && n.Target != nil && n.Target.In != nil && n.Target.In.Next != nil {
		return &lang.Leave{At: n.At, N: countOf(n.Target.In.Next), Label: n.Label}
	}
	if g := m.group(n); g != nil {
		return m.item(g, false, false)
	}
	c := *n
	if n.Spaced != nil {
		s := *n.Spaced
		s.List, s.Last = m.inner(s.List), !s.Last
		c.Spaced = &s
	}
	if t := n.Target; t != nil && t.In != nil && (t.In.First || t.In.Last) {
		in := *t.In
		in.First, in.Last = t.In.Last, t.In.First
		if in.Last && in.LastN == nil && n.Target.In.LastN != nil {
			in.LastN = n.Target.In.LastN
		}
		c.Target = &lang.Target{At: t.At, In: &in}
	}
	return &c
}

// group writes out a named group, so that it can be read from its other end; nil for a stitch.
func (m *mirror) group(n *lang.Work) *lang.Bracket {
	if n.Stitch == nil {
		return nil
	}
	g := m.c.groups[n.Stitch.Text]
	if g == nil {
		return nil
	}
	end := n.End
	if end == nil {
		end = &lang.RepEnd{At: n.At, N: &lang.Cnt{At: n.At, E: &lang.Expr{At: n.At, Op: lang.OpNumber, Text: "1"}}}
		if n.N != nil {
			end.N.E = n.N.E
		}
	}
	return &lang.Bracket{At: n.At, List: g.List, End: end, With: n.With, Label: n.Label}
}

// inner reads what stands in brackets from its other end.
func (m *mirror) inner(l *lang.List) *lang.List {
	out := &lang.List{At: l.At}
	for i := len(l.Items) - 1; i >= 0; i-- {
		out.Items = append(out.Items, m.item(l.Items[i], false, false))
	}
	out.Items = keepOpenings(out.Items)
	return out
}
