package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// This file follows the yarn of a part to its end: what is worked when it was cut already, what cuts it twice, and a part that leaves
// it hanging where nothing goes on with it.

// yarnCut is where the yarn of a part was cut, in one size.
type yarnCut struct {
	at     source.Span // zero: it hangs from the hook
	closed bool        // by closing the last round
	told   bool        // a note stands behind it, which may say how yarn is joined
}

func (k yarnCut) is() bool { return !k.at.IsZero() }

// fastened reports whether the yarn of the part is cut, in some size.
func (p *partState) fastened() bool { return slices.ContainsFunc(p.cuts, yarnCut.is) }

// cutYarn cuts the yarn in the sizes of a mask.
func (p *partState) cutYarn(n lang.Node, mask []bool, closed bool) {
	twice, was := newSpread(p.c), source.Span{}
	for z, on := range mask {
		if !on {
			continue
		}
		if k := p.cuts[z]; k.is() && !k.closed && !closed && !p.fab[z].Halted() {
			twice.add(z, 1, 2)
			was = k.at
		}
		p.cuts[z] = yarnCut{at: n.Span(), closed: closed}
	}
	p.yarnNamed = false
	if twice.any() {
		p.c.report(diag.Diagnostic{Code: codeCutTwice, Span: n.Span(), Sizes: twice.sizes(), Args: diag.Args{"part": p.plan.Name},
			Related: []diag.Related{{Span: was, Key: "first"}}})
	}
}

// noted remembers that a note was said behind the end of the yarn.
func (p *partState) noted() {
	for z := range p.cuts {
		p.cuts[z].told = true
	}
}

// joinsAnew reports whether a row is begun with a yarn that was cut and is named again since, by itself or before it.
func (p *partState) joinsAnew(named bool, mask []bool) bool {
	if !named && !p.yarnNamed {
		return false
	}
	return slices.ContainsFunc(sizesIn(mask), func(z int) bool { return p.cuts[z].is() })
}

// sizesIn are the sizes of a mask, by their number.
func sizesIn(mask []bool) []int {
	var out []int
	for z, on := range mask {
		if on {
			out = append(out, z)
		}
	}
	return out
}

// worksIn is a mask without the sizes in which a row is worked no time.
func worksIn(mask []bool, times plan.Nums) []bool {
	out := slices.Clone(mask)
	for z := range out {
		out[z] = out[z] && times[z] > 0
	}
	return out
}

// withoutYarn reports what is worked where the yarn was cut, unless another is joined. It is said once: from there on the part has yarn.
func (p *partState) withoutYarn(at source.Span, joined bool, mask []bool) {
	bad, was := newSpread(p.c), source.Span{}
	for _, z := range sizesIn(mask) {
		k := p.cuts[z]
		if !k.is() || p.fab[z].Halted() {
			continue
		}
		p.cuts[z] = yarnCut{}
		if joined || k.told {
			continue
		}
		p.cutSaid = true
		bad.add(z, 1, 0)
		was = k.at
	}
	if bad.any() {
		p.c.report(diag.Diagnostic{Code: codeNoYarnLeft, Span: at, Sizes: bad.sizes(), Args: diag.Args{"part": p.plan.Name},
			Related: []diag.Related{{Span: was, Key: "cut"}}})
	}
}

// begunWith reports whether a row is begun with another yarn than the one that was cut last, or may be: a chart says it square by square,
// and stripes size by size.
func (p *partState) begunWith(k *kick, ops []*fabric.Op) (other bool) {
	if k.newYarn || k.stripes != nil && len(k.stripes.yarns) > 1 {
		return true
	}
	yarn, known := firstYarn(ops)
	return !known || yarn >= 0 && yarn != p.inHand
}

// firstYarn is the yarn that instructions name for the first stitch they make; -1 if they name none. A chart is not looked at.
func firstYarn(ops []*fabric.Op) (yarn int, known bool) {
	for _, o := range ops {
		switch {
		case o.Kind == fabric.ByCell:
			return -1, false
		case o.Yarn >= 0:
			return o.Yarn, true
		case o.Kind == fabric.Repeat, o.Kind == fabric.InOne:
			if yarn, known := firstYarn(o.Body); !known || yarn >= 0 {
				return yarn, known
			}
		}
		if f, _ := firstStitch([]*fabric.Op{o}); f != nil {
			return -1, true
		}
	}
	return -1, true
}

// takesUp remembers of which parts a start takes up the last row, or goes round them: there the hook is not left behind, whatever yarn
// the new part is worked with.
func (p *partState) takesUp(runs []*alongRun) {
	for _, r := range runs {
		if r.chain || r.ref.Own {
			continue
		}
		q := p.c.parts[p.c.pat.Parts[r.ref.Part].Name]
		q.goneOn = q.goneOn || p.plan.Start.Round || r.ref.Kind == plan.RefEdge || p.before(r, q) != nil
	}
}

// looseEnds notes a part that ends with its yarn on the hook where other parts are fastened off and none goes on from there: the
// pages would leave the maker with an open loop.
func (c *checker) looseEnds() {
	if c.anyFailed() || !slices.ContainsFunc(c.pat.Parts, func(p *plan.Part) bool { return c.parts[p.Name].fastened() }) {
		return
	}
	for _, part := range c.pat.Parts {
		p := c.parts[part.Name]
		if part.Grid != nil || p.goneOn || p.cutSaid || len(part.Steps) == 0 {
			continue
		}
		open := newSpread(c)
		for z, k := range p.cuts {
			if !k.is() && len(part.Worked[z]) > 0 {
				open.add(z, 1, 0)
			}
		}
		if open.any() {
			c.report(diag.Diagnostic{Code: codeLooseEnd, Span: p.head, Sizes: open.sizes(), Args: diag.Args{"part": part.Name}})
		}
	}
}
