package compile

import (
	"ovillo/compile/fabric"
	"ovillo/compile/stitch"
	"ovillo/lang/diag"
)

// posts refuses stitches round a post where there is none: in the ring of a start and in its chains. It is said once a row.
func (p *partState) posts(w *working) {
	var first *fabric.Op
	hit := make([]bool, p.c.z)
	for z, on := range w.mask {
		if !on || w.first[z] == nil {
			continue
		}
		if o := postless(w.low.ops, w.first[z].Traces, 0); o != nil {
			hit[z] = true
			if first == nil || o.Span.Start < first.Span.Start {
				first = o
			}
		}
	}
	if first == nil {
		return
	}
	bad := newSpread(p.c)
	for _, z := range sizesIn(hit) {
		bad.add(z, 1, 0)
	}
	p.c.report(diag.Diagnostic{Code: codeNoPost, Span: first.Span, Sizes: bad.sizes(), Args: diag.Args{"plain": p.c.word(first.Form.ID)}})
}

// postless finds the first instruction that went round a post in a ring or in chains of a start, by itself or in a group.
func postless(ops []*fabric.Op, traces []fabric.Trace, within fabric.Took) *fabric.Op {
	for _, o := range ops {
		took := within | traces[o.Index].Took
		if o.Form.Post != stitch.NoPost && took&(fabric.TookRing|fabric.TookFoundation) != 0 {
			return o
		}
		if o.Kind != fabric.InOne {
			took = within
		}
		if found := postless(o.Body, traces, took); found != nil {
			return found
		}
	}
	return nil
}
