package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// start starts a part in every size.
func (p *partState) start(n lang.StatementNode, mask []bool) {
	if p.started {
		p.c.say(codeStartTwice, n.Span(), diag.Args{"part": p.plan.Name})
		return
	}
	p.started = true
	for z := range p.below {
		p.below[z] = n.Span()
	}
	p.plan.Start.Fresh, p.plan.Start.Yarn = true, p.yarn
	chain := stitch.Form{ID: stitch.Chain, Together: 1}
	st := &p.plan.Start
	switch n := n.(type) {
	case *lang.Chain:
		st.N = p.startCount(n.N, mask, n)
		switch {
		case st.N == nil:
		case n.Ring:
			st.Kind = plan.StartChainRing
			p.each(mask, n, func(z int) *fabric.Fault { p.fab[z].Ring(); p.addChains(z, st.N[z]); return nil })
		case n.Both:
			st.Kind = plan.StartBothSides
			p.each(mask, n, func(z int) *fabric.Fault { p.addChains(z, st.N[z]); return p.fab[z].BothSides(st.N[z]) })
		default:
			st.Kind = plan.StartChain
			if n.Join {
				st.Kind = plan.StartJoined
			}
			p.each(mask, n, func(z int) *fabric.Fault {
				p.addChains(z, st.N[z])
				return p.fab[z].Foundation(chain, st.N[z], n.Join)
			})
		}
		p.c.useForm(chain)
	case *lang.Foundation:
		p.foundation(n, mask)
	case *lang.Ring:
		st.Kind = plan.StartRing
		p.each(mask, n, func(z int) *fabric.Fault { p.fab[z].Ring(); return nil })
	case *lang.Start:
		st.Kind = plan.StartIn
		w := &lowerer{c: p.c, p: p, mask: mask}
		r := w.ref(n.In)
		if w.bad {
			p.halt(mask)
			return
		}
		p.each(mask, n, func(z int) *fabric.Fault { p.fab[z].Free(); return nil })
		st.Runs = []plan.Ref{p.refer(r, mask, fabric.Named)}
	case *lang.From:
		p.from(n, mask)
	}
}

// startCount reads the number a part starts with: at least one.
func (p *partState) startCount(n *lang.Cnt, mask []bool, at lang.Node) plan.Nums {
	k := p.c.cnt(n, nil)
	if k == nil {
		p.halt(mask)
		return nil
	}
	bad := newSpread(p.c)
	for z, v := range k {
		if v < 1 || v > 100_000 {
			bad.add(z, 1, v)
		}
	}
	if bad.any() {
		p.c.report(diag.Diagnostic{Code: codeStartNumber, Span: at.Span(), Args: diag.Args{"have": bad.per(bad.have)}, Sizes: bad.sizes()})
		p.halt(mask)
		return nil
	}
	return k
}

func (p *partState) foundation(n *lang.Foundation, mask []bool) {
	st := &p.plan.Start
	f, ok := p.c.form(n.Stitch.Text)
	if !ok {
		p.c.unknownStitch(n.Stitch)
		p.halt(mask)
		return
	}
	st.Kind, st.Form = plan.StartFoundation, f
	if n.Join {
		st.Kind = plan.StartFoundationJoined
	}
	if st.N = p.startCount(n.N, mask, n); st.N == nil {
		return
	}
	p.c.useForm(f)
	p.each(mask, n, func(z int) *fabric.Fault {
		if fl := p.fab[z].Foundation(f, st.N[z], n.Join); fl != nil {
			return fl
		}
		p.number[z]++ // a chainless foundation is row 1
		if p.c.keeps[p.plan.Name] {
			end := fabric.ID(len(p.c.fabrics[z].Elems))
			p.kept[z] = append(p.kept[z], keptRow{number: 1, from: end - fabric.ID(st.N[z]), to: end, closed: n.Join, joined: n.Join})
		}
		w, h, _ := p.c.stitchSize(f.ID, p.manner(p.style))
		fact := plan.RowFact{Number: 1, Stitches: st.N[z], Closed: n.Join, Yarn: p.yarn, Tall: f.ID,
			Width: micro(w * float64(st.N[z])), Height: micro(h), ByForm: plan.Tally[stitch.Form]{{Of: f, N: st.N[z]}}, ByYarn: plan.Tally[int]{{Of: p.yarn, N: st.N[z]}}}
		if w == 0 {
			fact.Width, fact.Height = plan.NoLength, plan.NoLength
		}
		p.plan.Worked[z] = append(p.plan.Worked[z], fact)
		p.measured(z, content{kinds: []made{{form: f, yarn: p.yarn}}}, p.manner(p.style), nil)
		p.tall[z] += h
		p.addArea(p.yarn, z, w*h*f.Yarn()*float64(st.N[z]))
		p.addChains(z, st.N[z]) // each stitch makes the chain it stands on
		if p.style == plan.Rows || p.style == plan.TurnedRounds {
			p.wrong[z] = !p.wrong[z]
		}
		return nil
	})
}

// each carries out a step of the fabric in the sizes of a mask and gathers what fails.
func (p *partState) each(mask []bool, at lang.Node, do func(z int) *fabric.Fault) {
	for z, on := range mask {
		if !on || p.fab[z].Halted() {
			continue
		}
		if f := do(z); f != nil {
			if f.Span.IsZero() {
				f.Span = at.Span()
			}
			p.c.gather(f, z, p)
			p.fab[z].Halt()
		}
	}
}

// continues finds out whether the yarn hangs already where the part starts: at the live edge of a part that was not
// fastened off, with the same yarn, or at a section of it with which the next row would begin.
func (p *partState) continues(first *alongRun) {
	st := &p.plan.Start
	if len(st.Runs) == 0 || st.Round || st.Runs[0].Own {
		return
	}
	q := p.c.parts[p.c.pat.Parts[st.Runs[0].Part].Name]
	if st.Runs[0].Called == nil && st.Runs[0].Kind != plan.RefEdge {
		st.Skip = p.passed(first, q)
	}
	if q.fastened() || q.inHand != p.yarn || st.Runs[0].Kind != plan.RefEdge && !p.atHook(first, q) {
		return
	}
	st.Fresh = false
	p.inHand = q.inHand
}

// before is how many places of the live edge of another part lie before a run; nil if the run is not on that edge in every size.
func (p *partState) before(r *alongRun, q *partState) plan.Nums {
	if r.ends != nil || r.chain || r.ref.Below {
		return nil
	}
	out := p.c.nums(plan.Absent)
	for z, run := range r.runs {
		if q.fab[z].Halted() || p.fab[z].Halted() || len(run.Places) == 0 {
			continue
		}
		if out[z] = slices.Index(q.fab[z].Edge(), run.Places[0].ID); out[z] < 0 {
			return nil
		}
	}
	return out
}

// passed is how many places of the live edge of another part whoever starts on a run has to count off first. The live edge of a flat part
// lies as its next row would meet it; where the side that faces now is the one that the last row showed, the run is met from the other end.
// It is nil where there are none in any size, or the run is not on that edge in every size.
func (p *partState) passed(r *alongRun, q *partState) plan.Nums {
	out := p.before(r, q)
	if q.plan.Style == plan.Rows {
		for z := range out {
			rows := q.plan.Worked[z]
			if out[z] == plan.Absent || len(rows) == 0 {
				continue
			}
			edge, places := q.fab[z].Edge(), r.runs[z].Places
			near, far := out[z], slices.Index(edge, places[len(places)-1].ID)
			if near > far {
				near, far = far, near
			}
			if far < 0 || near < 0 {
				return nil
			}
			if out[z] = near; rows[len(rows)-1].Wrong == p.plan.FirstWrong {
				out[z] = len(edge) - 1 - far
			}
		}
	}
	if !slices.ContainsFunc(out, func(n int) bool { return n > 0 }) {
		return nil
	}
	return out
}

// atHook reports whether a run begins with the place that the next row of another part would begin with, in every size.
func (p *partState) atHook(r *alongRun, q *partState) bool {
	before := p.before(r, q)
	return before != nil && !slices.ContainsFunc(before, func(n int) bool { return n > 0 })
}

// origin notes that the part grows on a run of another part.
func (p *partState) origin(r fabric.Ref, q *partState) {
	o := plan.Origin{Kind: plan.RefStitches, Part: q.index, Label: r.Name,
		Row: p.c.nums(plan.Absent), From: p.c.nums(plan.Absent), To: p.c.nums(plan.Absent), Of: p.c.nums(plan.Absent)}
	for z := range p.fab {
		ids, skipped, _, ok := q.fab[z].Label(r.Name)
		if !ok || len(ids) == 0 || q.fab[z].Halted() {
			continue
		}
		el := p.c.fabrics[z].Elems[ids[0]]
		switch {
		case el.Kind == fabric.Space:
			o.Kind = plan.RefSpace
		case skipped:
			o.Kind = plan.RefSkipped
		}
		at := q.serials[z].of(el.Row)
		if at == nil {
			o.Row[z], o.From[z], o.To[z], o.Of[z] = 0, 1, len(ids), len(ids)
			continue
		}
		from := indexOf(at.made, ids[0])
		to := indexOf(at.made, ids[len(ids)-1])
		o.Row[z], o.From[z], o.To[z], o.Of[z] = at.number, min(from, to)+1, max(from, to)+1, len(at.made)
	}
	for _, e := range p.plan.From {
		if e.Part == o.Part && e.Label == o.Label {
			return
		}
	}
	p.plan.From = append(p.plan.From, o)
}

// indexOf finds an element in a row: ids of a row grow.
func indexOf(ids []fabric.ID, id fabric.ID) int {
	lo, hi := 0, len(ids)
	for lo < hi {
		if mid := (lo + hi) / 2; ids[mid] < id {
			lo = mid + 1
		} else {
			hi = mid
		}
	}
	return min(lo, max(len(ids)-1, 0))
}

// referEdge describes the start or the live edge of a part, for print.
func (p *partState) referEdge(out plan.Ref, q *partState, mask []bool) plan.Ref {
	out.Kind, out.Called = plan.RefEdge, q.plan.Called
	if out.Label == fabric.FoundationName {
		out.Kind = plan.RefFoundation
	}
	for z, on := range mask {
		if on && !q.fab[z].Halted() {
			out.Count[z], _ = q.fab[z].CountIn(out.Label)
		}
	}
	out.Label = q.plan.Name
	return out
}

// apart reports whether the places of a run stand apart from each other. Places of a row are numbered in the order of making.
func apart(ids []fabric.ID) bool {
	for i := 1; i < len(ids); i++ {
		if d := ids[i] - ids[i-1]; d != 1 && d != -1 {
			return true
		}
	}
	return false
}

// refer describes a run that is reached by name, for print.
func (p *partState) refer(r fabric.Ref, mask []bool, how fabric.TargetKind) plan.Ref {
	q := p
	if r.Part != "" {
		q = p.c.parts[r.Part]
	}
	out := plan.Ref{Kind: plan.RefStitches, Part: q.index, Own: q == p, Label: r.Name, Called: q.calls[r.Name], Role: q.roles[r.Name], Pick: r.Pick, Nth: r.Nth,
		Row: p.c.nums(plan.Absent), Count: p.c.nums(plan.Absent), Below: how == fabric.Below}
	if r.Name == fabric.FoundationName || r.Name == fabric.EdgeName {
		if !q.names[r.Name] {
			return p.referEdge(out, q, mask)
		}
	}
	same := true
	for z, on := range mask {
		if !on || q.fab[z].Halted() {
			continue
		}
		ids, skipped, row, ok := q.fab[z].Label(r.Name)
		if !ok || len(ids) == 0 {
			continue
		}
		out.Count[z] = len(ids)
		if at := q.serials[z].of(row); at != nil {
			out.Row[z] = at.number
		} else {
			out.Row[z] = q.number[z] + 1 // it is being worked
		}
		out.Apart = out.Apart || apart(ids)
		el := p.c.fabrics[z].Elems[ids[0]]
		switch {
		case el.Kind == fabric.Space:
			out.Kind = plan.RefSpace
			if out.Chains == nil {
				out.Chains = p.c.nums(plan.Absent)
			}
			out.Chains[z] = int(el.N)
		case skipped:
			out.Kind = plan.RefSkipped
		}
		for _, id := range ids {
			f := p.c.fabrics[z].FormOf(id)
			if out.Form == (stitch.Form{}) {
				out.Form = f
			}
			same = same && out.Form == f
		}
	}
	if !same {
		out.Form = stitch.Form{}
	}
	return out
}
