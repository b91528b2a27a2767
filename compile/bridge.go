package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file looks for a second chain over one opening. A row that passes places over and makes chains instead leaves a chain
// with a free other side; the part that goes on from those places works along it. One that makes a chain of its own leaves a
// slit between the two.

// bridges looks at every part that starts along places that were passed over and along a chain of its own.
func (c *checker) bridges() {
	for _, p := range c.pat.Parts {
		q := c.parts[p.Name]
		for _, s := range q.stmts {
			from, ok := s.Node.(*lang.From)
			if !ok {
				continue
			}
			for _, own := range from.Runs {
				if own.Chain != nil {
					c.bridge(from, own)
				}
			}
		}
	}
}

// bridge compares one new chain with the chains over the runs it is joined to.
func (c *checker) bridge(from *lang.From, own *lang.FromRun) {
	for _, run := range from.Runs {
		if run.Ref == nil || run.Below || len(run.Ref.Path) < 2 {
			continue
		}
		p := c.parts[run.Ref.Path[0]]
		if p == nil {
			continue
		}
		for z := range p.fab {
			if space, free := c.freeChain(p, z, run.Ref.Path[1]); free {
				name := p.labelOf(z, space)
				c.report(diag.Diagnostic{Code: codeSecondChain, Span: own.Span(), Args: diag.Args{"part": p.plan.Name, "name": name,
					"run": run.Ref.Path[1]}, Related: []diag.Related{{Span: c.labelSpan(p, name), Key: "chain"}}})
				return
			}
		}
	}
}

// freeChain finds the chain made over a run that was passed over, if nobody worked into its other side.
func (c *checker) freeChain(p *partState, z int, name string) (fabric.ID, bool) {
	if c.anyHalted(z) {
		return 0, false
	}
	for _, id := range p.fab[z].ChainsOver(name) {
		worked := slices.ContainsFunc(c.fabrics[z].Elems, func(e fabric.Elem) bool {
			own := p.serials[z].of(e.Row) != nil // the part itself goes on along the first side
			return e.Into.ID == id && (e.Into.Asp == fabric.OtherSide || !own)
		})
		if !worked {
			return id, true
		}
	}
	return 0, false
}

// labelOf is the label that a part gives an element; "" if it gives none.
func (p *partState) labelOf(z int, id fabric.ID) string {
	for _, name := range sorted(keys(p.names)) {
		if ids, _, _, ok := p.fab[z].Label(name); ok && slices.Contains(ids, id) {
			return name
		}
	}
	return ""
}
