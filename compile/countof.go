package compile

import (
	"ovillo/compile/fabric"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// countOf is how many places a section, a label, or an edge has at this point of the work, in every size: those of the part at
// hand by their name alone, those of a part that was worked before by its name and theirs.
func (c *checker) countOf(e *lang.Expr) value.Vector {
	path, p := e.Path, c.at
	if q := c.parts[path[0]]; q != nil && len(path) > 1 {
		p, path = q, path[1:]
	}
	text := c.file.Source.Slice(e.Span())
	if p == nil || len(path) > 1 || !p.names[path[0]] && path[0] != fabric.EdgeName && path[0] != fabric.FoundationName {
		var known []string
		if p != nil {
			known = keys(p.names)
		}
		c.say(codeCountOf, e.Span(), diag.Args{"word": text, "near": lang.Near(path[0], known)})
		return value.Unknown
	}
	out, some := c.nums(0), false
	for z := range out {
		if p.fab[z].Halted() {
			return value.Unknown // said where it failed
		}
		if n, f := p.fab[z].CountIn(path[0]); f == nil {
			out[z], some = n, true
		}
	}
	if !some {
		c.say(codeCountOf, e.Span(), diag.Args{"word": text, "near": []string(nil)})
		return value.Unknown
	}
	return value.Of(out)
}
