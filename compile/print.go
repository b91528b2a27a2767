package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/diag"
)

// print makes the printed steps of a run of rows from what was worked: one step, if they read alike.
func (p *partState) print(w *working) {
	tall := p.pending
	var parts []*working
	for _, part := range w.byStart() {
		for _, piece := range part.stretches() {
			parts = append(parts, piece.readAlike()...)
		}
	}
	for i, part := range parts {
		if p.pending = nil; i == len(parts)-1 {
			p.pending = tall // a height is that after the last of them
		}
		p.printRow(part)
	}
}

// printRow makes one printed step.
func (p *partState) printRow(w *working) {
	worked := make([]bool, len(w.mask))
	for z, on := range w.mask {
		worked[z] = on && w.first[z] != nil
	}
	if !some(worked) {
		return
	}
	k := w.kick
	r := &plan.Row{First: w.from, Last: w.to, Times: w.times, Label: rowLabel(w.n.Head), For: sizesOf(worked), Span: w.n.Head.Span(),
		Back: w.low.back, Unturned: w.unturned, Yarn: k.yarn, NewYarn: k.newYarn, Begin: k.begin, Flat: p.style != plan.Rows && k.style == plan.Rows}
	r.Called = p.calls[r.Label]
	pr := &printer{p: p, w: w}
	r.Work = pr.list(w.low.ops)
	if carried := pr.carried(k); len(carried) > 0 {
		r.Work = append(carried, r.Work...)
	}
	pr.beside(r)
	p.sides(r, w)
	p.joins(r, w)
	joinedAt(r)
	if k.begin.Chains > 0 {
		pr.begin(r)
	}
	p.firstMention(r, w)
	p.stripe(r, w)
	pr.chart(r)
	r.Counts = p.counts(w)
	r.Change = p.rowChange(r, w)
	if p.pending != nil {
		r.Tall = p.tallNow(w.mask)
		p.pending = nil
	}
	p.c.hookUsed[p.hook] = true
	r.Hook, p.hook = p.hook, 0
	p.marks(r, w)
	p.inHand = k.yarn
	for z := range w.mask {
		if res := w.last[z]; res != nil && z == p.c.pat.Shown {
			p.inHand = w.inHand(z)
		}
	}
	if w.n.Head.Opts != nil || p.inHand != k.yarn {
		p.yarn = p.inHand
	}
	p.firstDone = true
	p.plan.Steps = append(p.plan.Steps, r)
}

// marks says what becomes of markers that the row does not name: they ride up with the work, or have no place any more.
func (p *partState) marks(r *plan.Row, w *working) {
	for i, m := range p.plan.Markers {
		stays, goes := false, false
		touched := w.touches(m.Name)
		for z, before := range w.marks {
			if before[m.Name] {
				stays = stays || p.fab[z].MarkerAt(m.Name)
				goes = goes || !p.fab[z].MarkerAt(m.Name)
			}
		}
		switch {
		case stays && p.blocks == 0 && p.lastUse[m.Name] == w.n && !touched:
			// Nothing looks for it any more: it is taken out, not carried to the end of the part.
			r.Drop = append(r.Drop, i)
			for z := range w.marks {
				p.fab[z].Unmark(m.Name)
			}
		case goes && !stays && !touched:
			r.Drop = append(r.Drop, i)
		case stays && !touched && (p.firstDone || !p.plan.Start.Spelt):
			// A row that is told run by run places the markers that stand between the runs.
			r.MarksUp = true
			p.riding[r] = append(p.riding[r], i)
		case goes && !stays && touched:
			p.removed[r] = append(p.removed[r], i)
		}
	}
}

// touches reports whether the row itself places, moves or takes away a marker, in any size.
func (w *working) touches(marker string) bool {
	return slices.ContainsFunc(w.last, func(r *fabric.Result) bool { return r != nil && slices.Contains(r.Touched, marker) })
}

// sides says which side faces, where it is worth saying.
func (p *partState) sides(r *plan.Row, w *working) {
	res := w.last[p.c.pat.Shown]
	for z := range w.mask {
		if res == nil {
			res = w.last[z]
		}
	}
	r.Turn = res != nil && res.Turned
	if w.kick.style != plan.Rows && w.kick.style != plan.TurnedRounds {
		return
	}
	p.sameSide(w)
	if one, ok := w.times.Same(); !ok || one != 1 {
		return
	}
	wrong, first := false, true
	for z, on := range w.mask {
		if !on || w.first[z] == nil {
			continue
		}
		x := wrongSide(p.plan.Worked[z], w.to[z])
		if !first && x != wrong {
			return
		}
		wrong, first = x, false
	}
	r.Sided, r.Wrong = !first, wrong
}

// sameSide notes the first row of a part whose stitches look different from behind, and that shows the right side in some
// sizes and the wrong side in others. Plain rows look alike from both sides.
func (p *partState) sameSide(w *working) {
	if p.sidesPart || !w.oneSided() {
		return
	}
	var right, wrong []string
	for z, on := range w.mask {
		switch {
		case !on || w.first[z] == nil:
		case wrongSide(p.plan.Worked[z], w.from[z]):
			wrong = append(wrong, p.c.pat.Sizes[z].Name)
		default:
			right = append(right, p.c.pat.Sizes[z].Name)
		}
	}
	if len(right) > 0 && len(wrong) > 0 {
		p.sidesPart = true
		p.c.say(codeOtherSide, w.n.Head.Span(), diag.Args{"right": right, "wrong": wrong, "part": p.plan.Name})
	}
}

// oneSided reports whether the first of the rows has a stitch that looks different from behind, in any size.
func (w *working) oneSided() bool {
	for z := range w.mask {
		if w.first[z] == nil {
			continue
		}
		if f := plan.FactOf(w.p.plan.Worked[z], w.from[z]); f != nil {
			for form := range f.ByForm.All() {
				_, own := w.p.c.own[form.ID]
				if own || form.Post != stitch.NoPost || form.Loop != stitch.BothLoops || form.Group != stitch.Single {
					return true
				}
			}
		}
	}
	return w.p.chart != nil
}

// wrongSide reports whether a row shows the wrong side.
func wrongSide(facts []plan.RowFact, number int) bool {
	f := plan.FactOf(facts, number)
	return f != nil && f.Wrong
}

// joins says how the round is closed.
func (p *partState) joins(r *plan.Row, w *working) {
	k := w.kick
	if r.Turn && k.style != plan.TurnedRounds || k.style != plan.JoinedRounds && k.style != plan.TurnedRounds {
		return
	}
	if j := w.low.join; j != nil {
		if j.No {
			return
		}
		if j.With != nil {
			r.Join.Kind, r.Join.Form.ID = plan.JoinWith, p.c.stitchID(j.With)
			return
		}
	}
	r.Join.Kind = plan.JoinSlip
	if k.begin.Counts {
		r.Join.Into, r.Join.Nth = plan.IntoChain, k.begin.Chains
		return
	}
	if k.first != nil {
		r.Join.Form = k.first.Form
	}
	p.c.useForm(stitch.Form{ID: stitch.Slip, Together: 1})
}

// alongChain reports whether the part starts with a chain that its first row is worked back along.
func (p *partState) alongChain() bool {
	return p.plan.Start.Kind == plan.StartChain || p.plan.Start.Kind == plan.StartBothSides
}

// firstMention marks the first beginning chain that counts, and the row worked into a new chain.
func (p *partState) firstMention(r *plan.Row, w *working) {
	st := &p.plan.Start
	if r.Begin.Chains > 0 && p.alongChain() {
		for z, on := range w.begin() {
			if !on {
				continue
			}
			r.Begin.FromHook = r.Begin.Chains + 1
			r.Begin.Skipped = r.Begin.Chains
			if st.Extra == nil {
				st.Extra = p.c.nums(0)
			}
			if st.Extra[z] = r.Begin.Chains; r.Begin.Counts {
				st.Extra[z]--
			}
		}
	}
	if r.Begin.Counts && !p.c.saidThroughout {
		r.Begin.Throughout, p.c.saidThroughout = true, true
	}
	if r.Begin.Chains > 0 {
		p.c.useForm(stitch.Form{ID: stitch.Chain, Together: 1})
	}
}

func (p *partState) tallNow(mask []bool) plan.Lengths {
	out := make(plan.Lengths, p.c.z)
	for z := range out {
		if out[z] = plan.NoLength; mask[z] {
			out[z] = micro(p.tall[z])
		}
	}
	return out
}
