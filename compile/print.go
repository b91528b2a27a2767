package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// print makes the printed step of a run of rows from what was worked.
func (p *partState) print(w *working, record bool) {
	worked := make([]bool, len(w.mask))
	for z, on := range w.mask {
		worked[z] = on && w.first[z] != nil
	}
	if !some(worked) {
		return
	}
	if !record {
		p.compare(w)
		return
	}
	k := w.kick
	r := &plan.Row{First: w.from, Last: w.to, Times: w.times, Label: rowLabel(w.n.Head), For: sizesOf(worked), Span: w.n.Head.Span(),
		Yarn: k.yarn, NewYarn: k.newYarn, Begin: k.begin, Flat: p.style != plan.Rows && k.style == plan.Rows}
	r.Called = p.calls[r.Label]
	pr := &printer{p: p, w: w}
	r.Work = append(pr.carried(k), pr.list(w.low.ops)...)
	p.sides(r, w)
	p.joins(r, w)
	if k.begin.Chains > 0 {
		pr.begin(r)
	}
	p.firstMention(r)
	r.Counts = p.counts(w)
	if p.pending != nil {
		r.Tall = p.tallNow(w.mask)
		p.pending = nil
	}
	r.Hook, p.hook = p.hook, 0
	p.marks(r, w)
	p.inHand = k.yarn
	for z := range w.mask {
		if res := w.last[z]; res != nil && z == p.c.pat.Shown {
			p.inHand = res.LastYarn
		}
	}
	if w.n.Head.Opts != nil || p.inHand != k.yarn {
		p.yarn = p.inHand
	}
	p.firstDone = true
	p.made[w.n] = r
	p.plan.Steps = append(p.plan.Steps, r)
}

// marks says what becomes of markers that the row does not name: they ride up with the work, or have no place any more.
func (p *partState) marks(r *plan.Row, w *working) {
	for i, m := range p.plan.Markers {
		stays, goes := false, false
		for z, before := range w.marks {
			if before[m.Name] {
				stays = stays || p.fab[z].MarkerAt(m.Name)
				goes = goes || !p.fab[z].MarkerAt(m.Name)
			}
		}
		switch {
		case stays && p.blocks == 0 && p.lastUse[m.Name] == w.n && !places(r.Work, i):
			// Nothing looks for it any more: it is taken out, not carried to the end of the part.
			r.Drop = append(r.Drop, i)
			for z := range w.marks {
				p.fab[z].Unmark(m.Name)
			}
		case goes && !stays && !removes(r.Work, i):
			r.Drop = append(r.Drop, i)
		case stays && !places(r.Work, i):
			r.MarksUp = true
		}
	}
}

func removes(work []plan.Instr, marker int) bool { return handles(work, marker, plan.RemoveMark) }
func places(work []plan.Instr, marker int) bool {
	return handles(work, marker, plan.PlaceMark) || handles(work, marker, plan.MoveMark)
}

// handles reports whether a row does something with a marker.
func handles(work []plan.Instr, marker int, op plan.Op) bool {
	for _, in := range work {
		if in.Op == op && in.Marker == marker || handles(in.Body, marker, op) {
			return true
		}
	}
	return false
}

// compare clears from a printed row what another pass of its block made different.
func (p *partState) compare(w *working) {
	r := p.made[w.n]
	if r == nil {
		return
	}
	if now := p.counts(w); !slices.EqualFunc(r.Counts, now, func(a, b plan.Count) bool {
		return a.Kind == b.Kind && a.Form == b.Form && sameWhere(a.N, b.N)
	}) {
		r.Counts = nil
	}
	pr := &printer{p: p, w: w}
	loosen(r.Work, pr.list(w.low.ops))
}

// sameWhere compares numbers in the sizes that have both.
func sameWhere(a, b plan.Nums) bool {
	for i := range a {
		if a[i] != plan.Absent && b[i] != plan.Absent && a[i] != b[i] {
			return false
		}
	}
	return true
}

// loosen drops the numbers that differ from pass to pass, where the reach says it without them.
func loosen(a, b []plan.Instr) {
	for i := range a {
		if i >= len(b) {
			return
		}
		if a[i].N != nil && !sameWhere(a[i].N, b[i].N) {
			a[i].N = nil
		}
		loosen(a[i].Body, b[i].Body)
	}
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
	if one, ok := w.times.Same(); !ok || one != 1 {
		return
	}
	wrong, first := false, true
	for z, on := range w.mask {
		if !on || w.first[z] == nil {
			continue
		}
		facts := p.plan.Worked[z]
		x := facts[len(facts)-1].Wrong
		if !first && x != wrong {
			return
		}
		wrong, first = x, false
	}
	r.Sided, r.Wrong = !first, wrong
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

// firstMention marks the first beginning chain that counts, and the row worked into a new chain.
func (p *partState) firstMention(r *plan.Row) {
	st := &p.plan.Start
	if !p.firstDone && (st.Kind == plan.StartChain || st.Kind == plan.StartBothSides) && r.Begin.Chains > 0 {
		r.Begin.FromHook = r.Begin.Chains + 1
		r.Begin.Skipped = r.Begin.Chains
		st.Extra = r.Begin.Chains
		if r.Begin.Counts {
			st.Extra--
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

// printer turns operations and their traces into printed instructions.
type printer struct {
	p *partState
	w *working
}

// carried are the slip stitches that take the yarn to the first place of a round, where that is not the next one.
func (pr *printer) carried(k *kick) []plan.Instr {
	if k.style != plan.JoinedRounds || k.newYarn || pr.p.plan.Start.Kind == plan.StartIn {
		return nil
	}
	n := pr.p.c.nums(plan.Absent)
	some := false
	for z := range n {
		if res := pr.w.first[z]; res != nil {
			n[z] = res.Walked
			some = some || res.Walked > 0
		}
	}
	if !some {
		return nil
	}
	pr.p.c.useForm(stitch.Form{ID: stitch.Slip, Together: 1})
	return []plan.Instr{{Op: plan.SlipOver, N: n, Marker: -1, Yarn: -1}}
}

func (pr *printer) list(ops []*fabric.Op) []plan.Instr {
	var out []plan.Instr
	for _, o := range ops {
		out = append(out, pr.instr(o)...)
	}
	return out
}

// numbers gathers the number of an operation in every size; nil if it differs between executions and only the reach can
// say it.
func (pr *printer) numbers(o *fabric.Op) plan.Nums {
	n := pr.p.c.nums(plan.Absent)
	for z := range n {
		res := pr.w.first[z]
		if res == nil {
			continue
		}
		t := res.Traces[o.Index]
		switch {
		case t.Varies:
			return nil
		case t.Runs > 0 && !counts(o.Kind):
			n[z] = 1
			continue
		}
		n[z] = t.N
		if last := pr.w.last[z]; last != nil && last.Traces[o.Index].N != t.N {
			return nil
		}
	}
	return n
}

// counts reports whether an instruction has a number: markers, turns and changes of yarn have none.
func counts(k fabric.OpKind) bool {
	switch k {
	case fabric.Mark, fabric.Move, fabric.Unmark, fabric.Turn, fabric.Change:
		return false
	}
	return true
}

// took gathers what an operation took, over all sizes, and the chains of the spaces it took.
func (pr *printer) took(o *fabric.Op) (fabric.Took, plan.Nums) {
	var t fabric.Took
	chains := pr.p.c.nums(plan.Absent)
	known := true
	for z := range chains {
		res := pr.w.first[z]
		if res == nil {
			continue
		}
		t |= res.Traces[o.Index].Took
		switch c := res.Traces[o.Index].Chains; {
		case c > 0:
			chains[z] = c
		case c < 0:
			known = false
		}
	}
	if !known {
		chains = nil
	}
	return t, chains
}

func (pr *printer) instr(o *fabric.Op) []plan.Instr {
	in := plan.Instr{Form: o.Form, N: pr.numbers(o), Marker: -1, Yarn: o.Yarn, Label: o.Label, Called: pr.p.calls[o.Label], Cross: o.Cross}
	if o.Form.ID != "" {
		pr.p.c.useForm(o.Form)
		if o.Form.Together > 1 || o.Form.Post != stitch.NoPost {
			pr.p.c.useForm(stitch.Form{ID: o.Form.ID, Together: 1})
		}
	}
	switch o.Kind {
	case fabric.Work:
		in.Op, in.Per = plan.Work, o.Per
		pr.target(&in, o)
	case fabric.Draw:
		in.Op = plan.Decrease
		pr.over(&in, o)
	case fabric.Chains:
		in.Op = plan.Chains
		pr.p.c.useForm(stitch.Form{ID: stitch.Chain, Together: 1})
	case fabric.SkipOver, fabric.SkipSpaces:
		in.Op = plan.SkipOver
		if o.Kind == fabric.SkipSpaces {
			in.Over = plan.Space
		} else if o.N == nil {
			pr.bound(&in, &o.Bound)
		}
		pr.overTook(&in, o)
	case fabric.Leave:
		in.Op = plan.LeaveRest
	case fabric.Turn:
		return nil // the row says it turns
	case fabric.Repeat:
		return pr.repeat(in, o)
	case fabric.InOne:
		in.Op, in.Body = plan.InOne, pr.list(o.Body)
		pr.target(&in, o)
	case fabric.Mark, fabric.Move, fabric.Unmark:
		in.Op = map[fabric.OpKind]plan.Op{fabric.Mark: plan.PlaceMark, fabric.Move: plan.MoveMark, fabric.Unmark: plan.RemoveMark}[o.Kind]
		in.Marker, in.Where = pr.p.marker(o.Marker), o.Where
	case fabric.Change:
		in.Op = plan.ChangeTo
	case fabric.SlideTo:
		in.Op = plan.SlipOver
		pr.bound(&in, &o.Bound)
		pr.p.c.useForm(stitch.Form{ID: stitch.Slip, Together: 1})
	case fabric.Spread:
		return pr.spread(o)
	}
	return []plan.Instr{in}
}

// repeat prints a bracket; one that is worked once in every size, or holds no more than one stitch, needs none.
func (pr *printer) repeat(in plan.Instr, o *fabric.Op) []plan.Instr {
	in.Op, in.Body, in.Form = plan.Repeat, pr.list(o.Body), stitch.Form{}
	if in.N.Is(1) && in.Label == "" && o.N != nil {
		return in.Body
	}
	switch {
	case o.N != nil:
		in.Reach = plan.Times
	default:
		pr.bound(&in, &o.Bound)
	}
	if len(in.Body) == 1 && in.Body[0].Op == plan.Decrease && in.Body[0].N.Is(1) && in.Reach != plan.ToMark {
		d := in.Body[0]
		d.N, d.Reach, d.Last = in.N, in.Reach, in.Last
		return []plan.Instr{d}
	}
	return []plan.Instr{in}
}

// spread prints spread shaping as the repeats it is worked as.
func (pr *printer) spread(o *fabric.Op) []plan.Instr {
	c := pr.p.c
	long, longPlain, short, shortPlain := c.nums(plan.Absent), c.nums(plan.Absent), c.nums(plan.Absent), c.nums(plan.Absent)
	before, after := c.nums(plan.Absent), c.nums(plan.Absent)
	for z := range long {
		if res := pr.w.first[z]; res != nil {
			g := res.Traces[o.Index].Group
			long[z], longPlain[z], short[z], shortPlain[z] = g.Long, g.LongPlain, g.Short, g.ShortPlain
			before[z], after[z] = g.Before, g.After
		}
	}
	plain := o.Form
	plain.Together = 1
	c.useForm(plain)
	if o.How == fabric.Alternating {
		n := slices.Clone(long)
		for z := range n {
			if n[z] != plan.Absent {
				n[z] += short[z]
			}
		}
		return []plan.Instr{{Op: plan.SpreadOut, Form: o.Form, N: n, Marker: -1, Yarn: -1, Spread: &plan.Spread{Increase: o.Form.Together == 1,
			Long: long, LongPlain: longPlain, Short: short, ShortPlain: shortPlain, Before: before, After: after, Alternating: true}}}
	}
	work := func(n plan.Nums) []plan.Instr {
		if n.Is(0) {
			return nil
		}
		return []plan.Instr{{Op: plan.Work, Form: plain, N: n, Marker: -1, Yarn: -1}}
	}
	shaped := plan.Instr{Op: plan.Work, Form: o.Form, Per: c.nums(2), N: c.nums(1), Marker: -1, Yarn: -1}
	if o.Form.Together > 1 {
		shaped.Op, shaped.Per = plan.Decrease, nil
	}
	out := work(before)
	for _, g := range []struct{ times, plain plan.Nums }{{long, longPlain}, {short, shortPlain}} {
		if g.times.Is(0) {
			continue
		}
		body := append(work(g.plain), shaped)
		if len(body) == 1 && body[0].Op == plan.Work {
			body[0].N = g.times
			out = append(out, body...)
			continue
		}
		out = append(out, plan.Instr{Op: plan.Repeat, Reach: plan.Times, N: g.times, Body: body, Marker: -1, Yarn: -1})
	}
	return append(out, work(after)...)
}

func (pr *printer) bound(in *plan.Instr, b *fabric.Bound) {
	switch b.Kind {
	case fabric.ToEnd:
		in.Reach = plan.ToEnd
	case fabric.ToLast:
		in.Reach, in.Last = plan.ToLast, b.N
	case fabric.ToSpace:
		in.Reach = plan.ToSpace
	default:
		in.Reach, in.Before = plan.ToMark, b.N
		if b.Kind == fabric.ToMarker {
			return
		}
		if i, ok := pr.p.markers[b.Name]; ok {
			in.Marker = i
			return
		}
		in.Reach = plan.ToLabel
		ref := pr.p.refer(fabric.Ref{Name: b.Name}, pr.w.mask, fabric.NamedEach)
		in.Ref = &ref
	}
}

// target says where an instruction works.
func (pr *printer) target(in *plan.Instr, o *fabric.Op) {
	t := &o.Target
	pr.over(in, o)
	switch t.Kind {
	case fabric.Each:
		pr.bound(in, &t.Bound)
	case fabric.First:
		in.Reach = plan.First
	case fabric.Last:
		in.Reach = plan.Last
	case fabric.Same:
		in.Reach = plan.Same
	case fabric.InRing:
		in.Reach, in.Over = plan.InRing, plan.RingPlace
	case fabric.InMarked:
		in.Reach = plan.InMarked
	case fabric.GapHere:
		in.Reach, in.Over = plan.InGapHere, plan.Gap
	case fabric.UnworkedNext:
		in.Over = plan.Unworked
	case fabric.UnworkedEach:
		in.Reach, in.Over = plan.ToEnd, plan.Unworked
	case fabric.Named, fabric.NamedEach, fabric.NextNamed, fabric.Below, fabric.Beside, fabric.Through:
		pr.named(in, t)
	}
	in.Deep = t.Deep
	if t.Deep > 0 {
		in.Over = plan.PostBelow
	}
}

func (pr *printer) named(in *plan.Instr, t *fabric.Target) {
	if i, ok := pr.p.markers[t.Ref.Name]; ok && t.Ref.Part == "" && t.Kind == fabric.Named {
		in.Reach, in.Marker = plan.InMarked, i
		return
	}
	ref := pr.p.refer(t.Ref, pr.w.mask, t.Kind)
	if (t.Kind == fabric.NamedEach || t.Kind == fabric.Through) && ref.Pick == plan.Whole {
		ref.Pick = plan.EachOf
	}
	if ref.Own && pr.thisRow(ref.Row) {
		ref.Row = nil
	}
	in.Ref = &ref
	switch t.Kind {
	case fabric.NextNamed:
		in.Reach = plan.Next
	case fabric.Below:
		in.Reach = plan.BelowOf
	case fabric.Beside:
		in.Reach = plan.BesideOf
	case fabric.Through:
		in.Reach = plan.ThroughBoth
	default:
		in.Reach = plan.At
	}
	if q := pr.p.c.pat.Parts[ref.Part]; q != pr.p.plan && pr.p.plan.Start.Kind == plan.StartIn {
		pr.p.origin(t.Ref, pr.p.c.parts[q.Name])
	}
}

// thisRow reports whether a row is the one that is printed: what it set itself needs no number.
func (pr *printer) thisRow(row plan.Nums) bool {
	for z, n := range row {
		if n != plan.Absent && pr.w.from[z] != plan.Absent && n < pr.w.from[z] {
			return false
		}
	}
	return true
}

// over says what is worked into, from what was in fact taken.
func (pr *printer) over(in *plan.Instr, o *fabric.Op) {
	switch {
	case o.Target.Takes == fabric.Gaps:
		in.Over = plan.Gap
	case o.Target.Takes == fabric.Spaces:
		in.Over = plan.Space
	case o.Target.Takes&fabric.InChains != 0:
		in.Over = plan.StitchChain
	case o.Target.Takes&fabric.Spaces != 0:
		in.Over = plan.StitchSpace
	}
	pr.overTook(in, o)
}

func (pr *printer) overTook(in *plan.Instr, o *fabric.Op) {
	t, chains := pr.took(o)
	switch {
	case t == fabric.TookFoundation:
		in.Over = plan.FoundationCh
	case t == fabric.TookOther:
		in.Over = plan.ChainFromBack
	case t == fabric.TookSpace && in.Over == plan.Stitch:
		in.Over = plan.Space
	}
	if t&fabric.TookSpace != 0 && chains != nil {
		in.Chains = chains
	}
}

// begin lets a beginning chain that counts stand for the first stitch written: brackets are opened for their first pass,
// and the first instruction has one less to do.
func (pr *printer) begin(r *plan.Row) {
	if !r.Begin.Counts {
		return
	}
	r.Work = pr.unroll(r.Work)
	i := firstWorked(r.Work)
	if i < 0 {
		return
	}
	in := &r.Work[i]
	switch {
	case in.Op == plan.InOne:
		r.Work = append(r.Work[:i:i], append(pr.inOneRest(*in), r.Work[i+1:]...)...)
	case in.Per != nil && !in.Per.Is(1):
		r.Work = append(r.Work[:i:i], append(pr.perRest(*in), r.Work[i+1:]...)...)
	default:
		in.AfterBegin = true
		in.N = less(in.N, 1)
	}
	if i = firstWorked(r.Work); i >= 0 && r.Work[i].AfterBegin && r.Work[i].N.Is(0) {
		r.Work = slices.Delete(r.Work, i, i+1)
		if i < len(r.Work) && r.Work[i].Op == plan.Chains {
			if n, ok := r.Work[i].N.Same(); ok && r.Work[i].Label == "" {
				r.Begin.And = n
				r.Work = slices.Delete(r.Work, i, i+1)
			}
		}
	}
}

func firstWorked(work []plan.Instr) int {
	for i := range work {
		switch work[i].Op {
		case plan.Work, plan.Decrease, plan.InOne, plan.Repeat:
			if work[i].Form.ID != stitch.Slip {
				return i
			}
		}
	}
	return -1
}

// unroll opens the first pass of a bracket that begins the row.
func (pr *printer) unroll(work []plan.Instr) []plan.Instr {
	i := firstWorked(work)
	if i < 0 || work[i].Op != plan.Repeat {
		return work
	}
	in := work[i]
	out := slices.Clone(work[:i])
	out = append(out, cloneAll(in.Body)...)
	in.N = less(in.N, 1)
	if in.N == nil || !in.N.Is(0) {
		out = append(out, in)
	}
	return pr.unroll(append(out, work[i+1:]...))
}

func cloneAll(in []plan.Instr) []plan.Instr {
	out := slices.Clone(in)
	for i := range out {
		out[i].Body = cloneAll(out[i].Body)
	}
	return out
}

// inOneRest splits a group whose first stitch is the beginning chain: the rest of it goes into the same place, and what
// remains of a run of groups follows.
func (pr *printer) inOneRest(in plan.Instr) []plan.Instr {
	head := in
	head.Body = cloneAll(in.Body)
	head.N = pr.p.c.nums(1)
	head.AfterBegin = true
	if f := firstWorked(head.Body); f >= 0 {
		first := &head.Body[f]
		if first.Per != nil && !first.Per.Is(1) {
			first.Per = less(first.Per, 1)
		} else {
			first.N = less(first.N, 1)
		}
		if first.N.Is(0) {
			head.Body = slices.Delete(head.Body, f, f+1)
		}
	}
	if in.Reach != plan.InRing {
		head.Reach = plan.Same
	}
	rest := in
	rest.N = less(in.N, 1)
	if rest.N.Is(0) {
		return []plan.Instr{head}
	}
	return []plan.Instr{head, rest}
}

// perRest splits 2 dc in each: one stitch in the place of the chain, then two in each of the others.
func (pr *printer) perRest(in plan.Instr) []plan.Instr {
	head := in
	head.Per, head.N, head.AfterBegin = less(in.Per, 1), pr.p.c.nums(1), true
	if in.Reach != plan.InRing {
		head.Reach = plan.Same
	} else {
		return []plan.Instr{head}
	}
	rest := in
	rest.N = less(in.N, 1)
	if rest.N.Is(0) {
		return []plan.Instr{head}
	}
	return []plan.Instr{head, rest}
}

// less takes k from every number.
func less(n plan.Nums, k int) plan.Nums {
	if n == nil {
		return nil
	}
	out := slices.Clone(n)
	for i := range out {
		if out[i] != plan.Absent && out[i] > 0 {
			out[i] -= k
		}
	}
	return out
}
