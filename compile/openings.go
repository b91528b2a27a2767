package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// openings looks at what was passed over under a name, in every part: it is worked as a whole by somebody, or not at all,
// which leaves an opening and is said; a part of it left over is a hole nobody meant.
func (c *checker) openings() {
	for _, s := range c.file.Body {
		n, ok := s.Node.(*lang.Part)
		if !ok || n.Name == nil {
			continue
		}
		p := c.parts[n.Name.Text]
		if p == nil {
			continue
		}
		for _, name := range sorted(keys(p.names)) {
			c.opening(p, name)
		}
	}
}

func sorted(s []string) []string { slices.Sort(s); return s }

func (c *checker) opening(p *partState, name string) {
	partly, never := newSpread(c), newSpread(c)
	for z, fab := range p.fab {
		if c.anyHalted(z) {
			continue // the part that failed may be the one that works here
		}
		ids, skipped, _, ok := fab.Label(name)
		if !ok || !skipped || !fab.Hole(name) || len(ids) == 0 {
			continue
		}
		worked := 0
		for _, id := range ids {
			if el := c.fabrics[z].Elems[id]; c.fabrics[z].Used(id) > 0 && el.Kind != fabric.Slip {
				worked++
			}
		}
		switch {
		case worked == 0:
			never.add(z, len(ids), 0)
		case worked < len(ids):
			partly.add(z, len(ids), worked)
		}
	}
	if !partly.any() && !never.any() {
		return
	}
	at := c.labelSpan(p, name)
	if partly.any() {
		c.report(diag.Diagnostic{Code: codeOpenRun, Span: at, Sizes: partly.sizes(), Args: diag.Args{"name": name,
			"need": partly.per(partly.need), "have": partly.per(partly.have)}})
	}
	if never.any() {
		c.report(diag.Diagnostic{Code: codeOpenHole, Span: at, Sizes: never.sizes(), Args: diag.Args{"name": name, "need": never.per(never.need)}})
	}
}

// anyHalted reports whether some part is unknown in a size.
func (c *checker) anyHalted(z int) bool {
	for _, p := range c.parts {
		if p.fab[z].Halted() {
			return true
		}
	}
	return false
}

// labelSpan is where a part sets a label.
func (c *checker) labelSpan(p *partState, name string) (at source.Span) {
	at = p.head
	var look func(body []*lang.Statement)
	found := false
	look = func(body []*lang.Statement) {
		for _, s := range body {
			if s.Node != nil && !found {
				s.Inspect(func(n lang.Node) bool {
					if a, ok := n.(*lang.As); ok && !found && a.Name != nil && a.Name.Text == name {
						at, found = a.Span(), true
					}
					return !found
				})
			}
			look(s.Body)
		}
	}
	look(p.stmts)
	return at
}
