package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file notes the names that the statements of a part set, so that a name can be told from a value, and a misspelt one from one
// that is set later.

// collect notes the names that the statements of the part set, so that a name can be told from a value, and a misspelt
// one from one that is set later.
func (p *partState) collect(stmts []*lang.Statement) {
	for _, s := range stmts {
		if s.Node != nil {
			row, _ := s.Node.(*lang.Row)
			p.collectNames(s.Inspect, row, map[*lang.Group]bool{})
			if c, ok := s.Node.(*lang.Call); ok && c.Name != nil {
				p.calls[c.Name.Text] = p.c.text(c.Text, c)
			}
			if row != nil {
				if l := rowLabel(row.Head); l != "" {
					p.rows[l] = row
				}
				if row.Head.Of != nil {
					p.collectPattern(p.c.patterns[row.Head.Of.Text])
				}
			}
		}
		p.collect(s.Body)
	}
}

// collectPattern notes the names in the rows of a stitch pattern.
func (p *partState) collectPattern(sp *stitchPattern) {
	if sp == nil {
		return
	}
	for _, row := range append(slices.Clone(sp.setup), sp.rows...) {
		p.collectNames(inspects(row), nil, map[*lang.Group]bool{})
	}
}

// inspects goes through a node.
func inspects(n lang.Node) func(func(lang.Node) bool) bool {
	return func(fn func(lang.Node) bool) bool { return lang.Inspect(n, fn) }
}

// collectNames notes the names in one statement, and in the groups it uses, each of which is looked at once.
func (p *partState) collectNames(inspect func(func(lang.Node) bool) bool, row *lang.Row, seen map[*lang.Group]bool) {
	inspect(func(n lang.Node) bool {
		switch m := n.(type) {
		case *lang.As:
			if m.Name != nil {
				p.names[m.Name.Text] = true
			}
		case *lang.Mark:
			if m.Name != nil && m.Verb == "mark" {
				p.names[m.Name.Text] = true
			}
			if row != nil && m.Name != nil {
				p.lastUse[m.Name.Text] = row
			}
			if m.Name != nil && m.Verb == "mark" {
				p.marked = append(p.marked, m.Name.Text)
			}
		case *lang.FromRun:
			if m.Mark != nil {
				p.names[m.Mark.Text] = true
				p.marked = append(p.marked, m.Mark.Text)
			}
		case *lang.OffItem:
			if m.Mark != nil {
				p.names[m.Mark.Text] = true
				p.marked = append(p.marked, m.Mark.Text)
			}
		case *lang.RoundsBegin:
			delete(p.lastUse, m.Ref.Path[0]) // no row before it may take the marker out
		case *lang.Bound:
			p.meets(m.Marker, row)
		case *lang.In:
			p.meets(m.Marker, row)
		case *lang.Claims:
			p.stated = true
		case *lang.Ref:
			if row != nil {
				p.lastUse[m.Path[0]] = row
			}
		case *lang.Work:
			if m.Stitch == nil {
				break
			}
			if g := p.c.groups[m.Stitch.Text]; g != nil && g.List != nil && !seen[g] {
				seen[g] = true
				p.collectNames(inspects(g.List), row, seen)
			}
		}
		return true
	})
}

// meets notes that a row meets markers by no name: it may be any of those that were set before.
func (p *partState) meets(any bool, row *lang.Row) {
	if any && row != nil {
		for _, name := range p.marked {
			p.lastUse[name] = row
		}
	}
}

// known reports a name that nothing sets.
func (p *partState) known(w *lowerer, n *lang.Ref) {
	path, q := n.Path, p
	if other, ok := p.c.parts[path[0]]; ok && len(path) > 1 {
		q, path = other, path[1:]
	}
	if q.names[path[0]] || len(path) < len(n.Path) && (path[0] == fabric.FoundationName || path[0] == fabric.EdgeName) {
		return
	}
	var names []string
	for k := range q.names {
		names = append(names, k)
	}
	if q == p && len(path) > 1 {
		for k := range p.c.parts {
			names = append(names, k)
		}
	}
	w.say(codeNoName, n.Span(), diag.Args{"word": p.c.file.Source.Slice(n.Span()), "near": lang.Near(path[0], names)})
}

// marker enters a marker of the part and returns its index.
func (p *partState) marker(name string) int {
	if i, ok := p.markers[name]; ok {
		return i
	}
	i := len(p.plan.Markers)
	p.markers[name] = i
	p.plan.Markers = append(p.plan.Markers, plan.Marker{Name: name, Called: p.calls[name], Number: i + 1})
	return i
}
