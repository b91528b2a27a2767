package compile

import (
	"maps"
	"slices"
	"strings"

	"ovillo/compile/fabric"
	"ovillo/lang/diag"
)

// walkKey is how a run that is worked along bit by bit is known: by its part and its name.
func walkKey(r fabric.Ref) string { return r.Part + "." + r.Name }

// attached looks whether every run that the part was joined to bit by bit was worked along to its end.
func (p *partState) attached() {
	for _, key := range slices.Sorted(maps.Keys(p.walks)) {
		part, name, _ := strings.Cut(key, ".")
		left := newSpread(p.c)
		for z := range p.fab {
			q := p.fab[z]
			if part != "" {
				q = p.c.parts[part].fab[z]
			}
			if p.fab[z].Halted() || q.Halted() {
				continue
			}
			if have, f := q.CountIn(name); f == nil {
				if done := p.fab[z].Walked(part, name); done < have {
					left.add(z, have, done)
				}
			}
		}
		if left.any() {
			p.c.report(diag.Diagnostic{Code: codeWalkedShort, Span: p.walks[key], Sizes: left.sizes(),
				Args: diag.Args{"need": left.per(left.need), "have": left.per(left.have)}})
		}
	}
}
