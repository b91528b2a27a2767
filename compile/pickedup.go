package compile

import (
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file compares what is picked up along ends of rows with the edge it goes on, and prints the row that does it.

// alongStitch is the stitch that the first row of the part works, and its width; not ok if that is not known.
func (p *partState) alongStitch() (word string, width float64, ok bool) {
	id := p.base
	if w := firstWork(p.stmts); w != nil && w.Stitch != nil {
		if f, found := p.c.form(w.Stitch.Text); found {
			id = f.ID
		}
	}
	if id == "" {
		return "", 0, false
	}
	m := p.manner(p.style)
	if p.c.gaugeFor(id, m) == nil {
		return p.c.word(id), 0, false
	}
	w, _, _ := p.c.stitchSize(id, m)
	return p.c.word(id), w, true
}

// firstWork is the first stitch of the first row among some statements.
func firstWork(stmts []*lang.Statement) *lang.Work {
	for _, s := range stmts {
		var list *lang.List
		switch n := s.Node.(type) {
		case *lang.Row:
			list = n.List
		case *lang.ShapeRow:
			list = n.List
		}
		var found *lang.Work
		if list != nil {
			lang.Inspect(list, func(n lang.Node) bool {
				if w, ok := n.(*lang.Work); ok && found == nil && !w.Slip {
					found = w
				}
				return found == nil
			})
		}
		if found == nil {
			found = firstWork(s.Body)
		}
		if found != nil {
			return found
		}
	}
	return nil
}

// How far picked-up stitches may miss the length of their edge before it is said: more than both of these. (Common practice, no
// source: a band that is a fiftieth off lies flat.)
const (
	pickSlack      = plan.Centimetre
	pickSlackShare = 0.03
)

// compare warns where the stitches along an edge measure another length than the edge.
func (a *along) compare(r *alongRun) {
	p := a.p
	_, w, ok := p.alongStitch()
	if !ok {
		return
	}
	off := newSpread(p.c)
	var have, need []string
	for z, on := range a.mask {
		if !on || r.runs[z].Halted {
			continue
		}
		edge, _ := r.ends.length(z, r.runs[z])
		if edge <= 0 {
			return
		}
		p.asked = true
		band := micro(w * float64(r.count[z]))
		if d := max(band-edge, edge-band); d > pickSlack && float64(d) > pickSlackShare*float64(edge) {
			off.add(z, 0, 0)
			have, need = append(have, cmText(band)), append(need, cmText(edge))
		}
	}
	if off.any() {
		h, n := off.per(off.need), off.per(off.need)
		h.Values, n.Values = have, need
		p.c.report(diag.Diagnostic{Code: codePickLength, Span: r.at.Span(), Sizes: off.sizes(), Args: diag.Args{"have": h, "need": n}})
	}
}

// picked prints an instruction that works along the edge the part started on, run by run: what is picked up in the ends of rows is
// spelt out. It is nil where the instruction says it as well itself.
func (pr *printer) picked(in plan.Instr, o *fabric.Op) []plan.Instr {
	p := pr.p
	if len(p.along) == 0 || pr.within > 0 || o.Kind != fabric.Work || o.Target.Kind > fabric.Each || o.Per != nil {
		return nil
	}
	took := make([][]int, len(p.along)) // by run and size
	runs, ends := 0, false
	for i, r := range p.along {
		took[i] = make([]int, p.c.z)
		some := false
		for z, res := range pr.w.first {
			if res == nil || r.from == nil {
				continue
			}
			edge := p.begun[z]
			for _, id := range res.Traces[o.Index].Begun {
				if k := int(id - edge); k >= r.from[z] && k < r.from[z]+r.count[z] {
					took[i][z]++
				}
			}
			some = some || took[i][z] > 0
		}
		if some {
			runs++
			ends = ends || r.ends != nil
		}
	}
	if runs == 0 || runs == 1 && !ends {
		return nil
	}
	p.plan.Start.Spelt = true
	var out []plan.Instr
	for i, r := range p.along {
		part := pr.segment(in, r, took[i], runs > 1)
		for _, m := range r.marks {
			part = append([]plan.Instr{{Op: plan.PlaceMark, Marker: p.marker(m), Where: plan.GapHere, Yarn: -1}}, part...)
		}
		if k := len(out) - 1; k >= 0 && r.plain && len(part) == 1 {
			continue
		}
		out = append(out, part...)
	}
	for _, m := range p.lastMarks {
		out = append(out, plan.Instr{Op: plan.PlaceMark, Marker: p.marker(m), Where: plan.GapHere, Yarn: -1})
	}
	return out
}

// segment prints what an instruction works along one run.
func (pr *printer) segment(in plan.Instr, r *alongRun, took []int, several bool) []plan.Instr {
	c := pr.p.c
	n := c.nums(plan.Absent)
	whole, any := true, false
	for z, res := range pr.w.first {
		if res == nil {
			continue
		}
		n[z] = took[z]
		whole, any = whole && took[z] == r.count[z], any || took[z] > 0
	}
	if !any {
		return nil
	}
	one := in
	one.Label, one.Called = "", nil
	var out []plan.Instr
	switch {
	case r.ends != nil && whole:
		sizes := make([][]group, c.z)
		for z, res := range pr.w.first {
			if res != nil {
				sizes[z] = r.groups[z]
			}
		}
		out = pr.instrs(one, sizes)
	case r.ends != nil:
		one.N, one.Reach, one.Over = n, plan.Next, plan.RowEnd
		out = []plan.Instr{one}
	default:
		ref := r.ref
		ref.Count = r.count
		one.Reach, one.Ref, one.N, one.Over = plan.At, &ref, n, plan.Stitch
		if ref.Kind == plan.RefSpace && ref.Below {
			one.Reach = plan.BelowOf
		}
		if ref.Kind == plan.RefFoundation {
			one.Over = plan.ChainFromBack
		}
		if ref.Kind == plan.RefSpace && ref.Own && !ref.Below && ref.Row == nil {
			one.Reach, one.Ref, one.Over = plan.Next, nil, plan.FoundationCh // chains that are made at the start
		}
		if !whole {
			one.Reach, one.Ref = plan.Next, nil
		}
		return []plan.Instr{one}
	}
	if several {
		ref := r.ref
		out = append([]plan.Instr{{Op: plan.AlongRun, Ref: &ref, Marker: -1, Yarn: -1, N: n}}, out...)
	}
	return out
}
