package compile

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file says what a maker's own gauge changes, and what should have changed and does not.

// changed compares a pattern at a maker's gauge with the same at the source's.
func (c *checker) changed() {
	r := &plan.Regraded{}
	for i, line := range c.gaugeLines() {
		if c.pat.Gauges[i].Was == nil {
			r.Stays = append(r.Stays, line)
		}
	}
	c.pat.Regraded = r
	for _, name := range c.letOrder {
		old, now := valueOf(c.origin.lets[name]), valueOf(c.lets[name])
		if !sameValue(old, now) {
			r.Changes = append(r.Changes, plan.Change{Of: plan.ChangedLet, Name: name, Old: old, New: now})
		}
	}
	for _, m := range c.pat.Measures {
		was := c.origin.measureNamed(m.Name)
		if was == nil {
			continue
		}
		if !slices.EqualFunc(was.Values, m.Values, sameLength) {
			r.Changes = append(r.Changes, plan.Change{Of: plan.ChangedMeasure, Name: m.Name,
				Old: plan.Value{Lengths: was.Values}, New: plan.Value{Lengths: m.Values}})
		}
		c.stuck(was, &m)
	}
	for _, part := range c.pat.Parts {
		if g := part.Grid; g != nil && g.Each != nil && c.regraded(c.parts[c.pat.Parts[g.Motif].Name]) {
			c.report(diag.Diagnostic{Code: codeStuckMotif, Span: part.Span, Args: diag.Args{"part": part.Name, "have": diag.Length(g.Each[c.pat.Shown])}})
		}
	}
	for i, y := range c.pat.Yarns {
		old, now := c.origin.gramsOf(i), c.gramsOf(i)
		if old != nil && now != nil && !slices.Equal(old, now) {
			r.Changes = append(r.Changes, plan.Change{Of: plan.ChangedYarn, Name: y.Name, OldGrams: old, NewGrams: now})
		}
	}
}

// regraded reports whether rows of a part go by a gauge that a maker's own stands in place of.
func (c *checker) regraded(p *partState) bool {
	return p != nil && slices.ContainsFunc(p.leans, func(l lean) bool {
		g := c.pat.Gauges[slices.Index(c.lines, l.g)]
		return g.Was != nil && (g.Was.Sts != g.Sts || g.Was.Rows != g.Rows)
	})
}

// isOwn reports whether a maker's own gauge stands in place of a line of the source's.
func (c *checker) isOwn(g *gaugeOf) bool { return c.pat.Gauges[slices.Index(c.lines, g)].Was != nil }

// valueOf is a value as it is shown: whole counts or lengths; nothing for any other.
func valueOf(v value.Vector) (out plan.Value) {
	if v.Unknown {
		return out
	}
	if out.Lengths = v.Lengths(); out.Lengths != nil || v.Dim != value.Count {
		return out
	}
	for _, x := range v.N {
		n := plan.Absent
		if x != nil {
			if !x.IsInt() {
				return plan.Value{}
			}
			n = int(x.Num().Int64())
		}
		out.Counts = append(out.Counts, n)
	}
	return out
}

func sameValue(a, b plan.Value) bool {
	return slices.Equal(a.Counts, b.Counts) && slices.EqualFunc(a.Lengths, b.Lengths, sameLength)
}

// sameLength reports whether two lengths differ by less than is printed: half a millimetre.
func sameLength(a, b plan.Length) bool {
	return a == b || a != plan.NoLength && b != plan.NoLength && max(a-b, b-a) < plan.Millimetre/2
}

func (c *checker) measureNamed(name string) *plan.Measure {
	for i := range c.pat.Measures {
		if c.pat.Measures[i].Name == name {
			return &c.pat.Measures[i]
		}
	}
	return nil
}

// gramsOf is how much of a yarn each size takes, in whole grams; nil if that is not known.
func (c *checker) gramsOf(yarn int) plan.Nums {
	if c.pat.Yarns[yarn].Amount == nil {
		return nil
	}
	out := make(plan.Nums, 0, c.z)
	for _, a := range c.pat.Yarns[yarn].Amount {
		out = append(out, int((a.Milligrams+500)/1000))
	}
	return out
}

// stuck warns of a measure that is no longer the source's, since counts of the fabric do not follow the gauge.
func (c *checker) stuck(was, now *plan.Measure) {
	off := newSpread(c)
	var have, need, parts []string
	follows := false
	for z := range now.Values {
		if d := now.Values[z] - was.Values[z]; was.Values[z] == plan.NoLength || now.Values[z] == plan.NoLength || max(d, -d) <= plan.Centimetre {
			continue
		}
		off.add(z, 0, 0)
		have, need = append(have, cmText(now.Values[z])), append(need, cmText(was.Values[z]))
		for _, m := range c.takenOf[now.Name] {
			moved := c.follows(m, z)
			follows = follows || moved || c.rounds(m, z)
			if !moved && !slices.Contains(parts, m.part) {
				parts = append(parts, m.part)
			}
		}
	}
	if !off.any() {
		return
	}
	code := codeStuck
	if len(parts) == 0 || follows {
		code, parts = codeStuckPartly, nil
	}
	h, n := off.per(off.need), off.per(off.need)
	h.Values, n.Values = have, need
	args := diag.Args{"measure": now.Name, "have": h, "need": n}
	if code == codeStuck {
		args["parts"] = parts
	}
	c.report(diag.Diagnostic{Code: code, Span: c.measureAt[now.Name], Sizes: off.sizes(), Args: args})
}

// lengthTaken is a length that a measure is made of: of a part, along its rows or across them, at a row or anywhere.
type lengthTaken struct {
	part string
	tall bool
	row  plan.Nums // nil: any
}

// takenIn lists the lengths of the fabric that an expression measures.
func takenIn(e *lang.Expr, of map[*lang.Expr]plan.MeasuredOn) (out []lengthTaken) {
	lang.Inspect(e, func(n lang.Node) bool {
		m, ok := n.(*lang.Expr)
		if !ok || m.Op != lang.OpMeasure {
			return true
		}
		t := lengthTaken{tall: m.Side != nil || m.Text == "height" || m.Text == "length", row: of[m].Row}
		if m.Side != nil {
			t.part = m.Side.Part.Text
		} else if len(m.Path) > 0 {
			t.part = m.Path[0]
		}
		out = append(out, t)
		return true
	})
	return out
}

// follows reports whether the counts that a length rests on are others at the maker's gauge than at the source's.
func (c *checker) follows(t lengthTaken, z int) bool {
	a, b := c.origin.parts[t.part], c.parts[t.part]
	if a == nil || b == nil {
		return false
	}
	old, now := a.plan.Worked[z], b.plan.Worked[z]
	if t.tall {
		return len(old) != len(now)
	}
	at := func(facts []plan.RowFact) (out []int) {
		for _, f := range facts {
			if t.row == nil || f.Number == t.row[z] {
				out = append(out, f.Stitches+f.Chains)
			}
		}
		return out
	}
	if t.row == nil { // the widest
		return slices.Max(append(at(old), 0)) != slices.Max(append(at(now), 0))
	}
	return !slices.Equal(at(old), at(now))
}

// rounds reports whether counts that were made from lengths for such a length of a part are others than at the source's gauge, though
// what the part makes of them may be the same.
func (c *checker) rounds(t lengthTaken, z int) bool {
	p := c.parts[t.part]
	if p == nil {
		return false
	}
	lets := c.letsOf(p.stmts)
	for i := range c.pat.Rounded {
		r := &c.pat.Rounded[i]
		if r.Part != p.index && !lets[r.Let] || (r.Unit == plan.UnitStitches) == t.tall {
			continue
		}
		for k := range c.origin.pat.Rounded {
			if o := &c.origin.pat.Rounded[k]; o.Span == r.Span && o.Part == r.Part && o.Counts[z] != r.Counts[z] {
				return true
			}
		}
	}
	return false
}

// letsOf are the values that some statements name, and those that these are made of.
func (c *checker) letsOf(stmts []*lang.Statement) map[string]bool {
	out := map[string]bool{}
	var note func(n lang.Node) bool
	note = func(n lang.Node) bool {
		e, ok := n.(*lang.Expr)
		if !ok || e.Op != lang.OpName || len(e.Path) != 1 || out[e.Path[0]] {
			return true
		}
		out[e.Path[0]] = true
		for _, s := range blocks[*lang.Let](c.file.Body) {
			if l := s.Node.(*lang.Let); l.Name != nil && l.Name.Text == e.Path[0] && l.Value != nil {
				lang.Inspect(l.Value, note)
			}
		}
		return true
	}
	lang.WalkStatements(stmts, func(s *lang.Statement) bool {
		if s.Node != nil {
			s.Inspect(note)
		}
		return true
	})
	return out
}
