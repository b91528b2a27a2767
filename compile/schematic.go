package compile

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// schematic reads which parts the schematic shows.
func (c *checker) schematic() {
	for _, s := range blocks[*lang.Schematic](c.file.Body) {
		n := s.Node.(*lang.Schematic)
		if c.pat.Schematic != nil {
			c.say(codeSchematicTwice, n.Span(), nil)
			return
		}
		out := &plan.Schematic{Without: n.Without}
		for _, name := range n.Parts {
			p := c.parts[name.Text]
			switch {
			case p == nil:
				c.say(codeNoName, name.Span(), diag.Args{"word": name.Text, "near": lang.Near(name.Text, keys(c.parts))})
			case slices.Contains(out.Parts, p.index):
				c.say(codeSchematicPart, name.Span(), diag.Args{"part": name.Text})
			default:
				out.Parts = append(out.Parts, p.index)
			}
		}
		if out.Without && len(out.Parts) == len(c.pat.Parts) {
			c.say(codeSchematicNone, n.Span(), nil)
			continue
		}
		c.pat.Schematic = out
	}
}
