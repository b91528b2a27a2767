package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// This file turns the operations of a row into printed instructions, from what each did in every size.

// printer turns operations and their traces into printed instructions.
type printer struct {
	p      *partState
	w      *working
	within int // how many brackets are open
}

// carried are the slip stitches that take the yarn to the first place of a round, where that is not the next one.
func (pr *printer) carried(k *kick) []plan.Instr {
	if k.style != plan.JoinedRounds || k.newYarn || pr.p.plan.Start.Kind == plan.StartIn {
		return nil
	}
	n, to := pr.p.c.nums(plan.Absent), pr.p.c.nums(plan.Absent)
	some, space := false, true
	for z := range n {
		if res := pr.w.first[z]; res != nil {
			n[z], to[z] = res.Walked, res.WalkedTo
			some = some || res.Walked > 0
			space = space && (res.WalkedTo > 0 || res.Walked == 0)
		}
	}
	if !some {
		return nil
	}
	pr.p.c.useForm(stitch.Form{ID: stitch.Slip, Together: 1})
	in := plan.Instr{Op: plan.SlipOver, N: n, Marker: -1, Yarn: -1}
	if space {
		in.Reach, in.Chains = plan.ToSpace, to
	}
	return []plan.Instr{in}
}

func (pr *printer) list(ops []*fabric.Op) []plan.Instr {
	if len(ops) == 0 {
		return nil
	}
	out := make([]plan.Instr, 0, len(ops))
	for _, o := range ops {
		out = append(out, pr.instr(o)...)
	}
	return slices.Clip(out)
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
		if o.Form.Derived() {
			pr.p.c.useForm(o.Form.Base())
		}
		if o.Form.Group != stitch.Single {
			pr.p.c.useForm(stitch.Form{ID: o.Form.ID, Post: o.Form.Post, Together: 1})
		}
		if o.Form.Group == stitch.Vee || o.Form.Group == stitch.Picot {
			pr.p.c.useForm(stitch.Plain(stitch.Chain))
		}
		if o.Form.Group == stitch.Picot {
			pr.p.c.useForm(stitch.Plain(stitch.Slip))
		}
	}
	switch o.Kind {
	case fabric.Work:
		in.Op, in.Per = plan.Work, o.Per
		pr.target(&in, o)
		if out := pr.picked(in, o); out != nil {
			return out
		}
	case fabric.Ride:
		in.Op = plan.RideOn
	case fabric.Found:
		in.Op = plan.Lengthen
	case fabric.Cross:
		in.Op = plan.CrossOver
		pr.over(&in, o)
	case fabric.Draw:
		in.Op = plan.Decrease
		if o.Body != nil {
			pr.legs(&in, o)
			break
		}
		pr.over(&in, o)
	case fabric.Chains:
		in.Op = plan.Chains
		pr.p.c.useForm(stitch.Form{ID: stitch.Chain, Together: 1})
	case fabric.SkipOver, fabric.SkipSpaces:
		in.Op = plan.SkipOver
		if o.Kind == fabric.SkipSpaces {
			in.Over = plan.Space
		} else if o.N == nil {
			pr.bound(&in, o, &o.Bound)
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
		if in.Where = o.Where; o.Marker != "" {
			in.Marker = pr.p.marker(o.Marker)
		}
	case fabric.Change:
		in.Op = plan.ChangeTo
	case fabric.SlideTo:
		in.Op = plan.SlipOver
		pr.bound(&in, o, &o.Bound)
		pr.p.c.useForm(stitch.Form{ID: stitch.Slip, Together: 1})
	case fabric.Spread:
		return pr.spread(o)
	case fabric.Spaced:
		return pr.spaced(o)
	case fabric.AsMade:
		return pr.established(in, o)
	case fabric.JoinSpace:
		return pr.joinSpace(in, o)
	case fabric.ByCell:
		return pr.byCell(in, o)
	}
	return []plan.Instr{in}
}

// repeat prints a bracket; one that is worked once in every size, or holds no more than one stitch, needs none.
func (pr *printer) repeat(in plan.Instr, o *fabric.Op) []plan.Instr {
	pr.within++
	in.Op, in.Body, in.Form = plan.Repeat, pr.list(o.Body), stitch.Form{}
	pr.within--
	if in.N.Is(1) && in.Label == "" && o.N != nil {
		return in.Body
	}
	switch {
	case o.N != nil:
		in.Reach = plan.Times
	default:
		pr.bound(&in, o, &o.Bound)
	}
	if len(in.Body) == 1 && (in.Body[0].Op == plan.Decrease || in.Body[0].Op == plan.CrossOver) && in.Body[0].N.Is(1) && in.Reach != plan.ToMark {
		d := in.Body[0]
		d.N, d.Reach, d.Last = in.N, in.Reach, in.Last
		return []plan.Instr{d}
	}
	return []plan.Instr{in}
}

// besideLike has sizes in which all groups are of one length stand beside the groups of the same length of the other sizes, long or
// short, so that a maker meets one number and not another bracket.
func besideLike(long, longPlain, short, shortPlain plan.Nums) {
	count := func(times, other, plain plan.Nums) func(int) int {
		return func(n int) int {
			k := 0
			for z := range times {
				if times[z] > 0 && other[z] > 0 && plain[z] == n {
					k++
				}
			}
			return k
		}
	}
	likeLong, likeShort := count(long, short, longPlain), count(short, long, shortPlain)
	usual := func(times, plain plan.Nums) int {
		for z := range times {
			if times[z] > 0 {
				return plain[z]
			}
		}
		return plan.Absent
	}
	for z := range long {
		switch {
		case long[z] != 0 || short[z] <= 0:
		case likeLong(shortPlain[z]) > likeShort(shortPlain[z]):
			long[z], longPlain[z] = short[z], shortPlain[z]
			short[z], shortPlain[z] = 0, usual(short, shortPlain)
		case longPlain[z] != plan.Absent && likeShort(shortPlain[z]) > 0:
			longPlain[z] = usual(long, longPlain)
		}
	}
}

// spread prints spread shaping as the repeats it is worked as.
func (pr *printer) spread(o *fabric.Op) []plan.Instr {
	c := pr.p.c
	long, longPlain, short, shortPlain := c.nums(plan.Absent), c.nums(plan.Absent), c.nums(plan.Absent), c.nums(plan.Absent)
	before, after, lead := c.nums(plan.Absent), c.nums(plan.Absent), c.nums(plan.Absent)
	for z := range long {
		if res := pr.w.first[z]; res != nil {
			g := res.Traces[o.Index].Group
			long[z], longPlain[z], short[z], shortPlain[z] = g.Long, g.LongPlain, g.Short, g.ShortPlain
			before[z], after[z], lead[z] = g.Before, g.After, g.Lead
		}
	}
	plain := o.Form
	plain.Together = 1
	c.useForm(plain)
	if o.How != fabric.Alternating {
		besideLike(long, longPlain, short, shortPlain)
	}
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
	if !lead.Is(0) {
		one := shaped
		one.N = lead
		out = append(out, one)
	}
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

func (pr *printer) bound(in *plan.Instr, o *fabric.Op, b *fabric.Bound) {
	switch b.Kind {
	case fabric.ToEnd:
		in.Reach = plan.ToEnd
	case fabric.ToLast:
		in.Reach, in.Last = plan.ToLast, b.N
	case fabric.ToSpace:
		in.Reach = plan.ToSpace
	default:
		in.Reach, in.Before, in.Marked = plan.ToMark, b.N, pr.marked(o)
		if b.Kind == fabric.ToMarker {
			return
		}
		if i, ok := pr.p.markers[b.Name]; ok {
			in.Marker = i
			return
		}
		in.Reach, in.Marked = plan.ToLabel, false
		ref := pr.p.refer(fabric.Ref{Name: b.Name}, pr.w.mask, fabric.NamedEach)
		in.Ref = &ref
	}
}

// marked reports whether the markers up to which an instruction goes stand in stitches, all of them.
func (pr *printer) marked(o *fabric.Op) bool {
	var met fabric.Met
	for _, res := range pr.w.first {
		if res != nil {
			met |= res.Traces[o.Index].Met
		}
	}
	return met == fabric.MetStitch
}

// target says where an instruction works.
func (pr *printer) target(in *plan.Instr, o *fabric.Op) {
	t := &o.Target
	pr.over(in, o)
	switch t.Kind {
	case fabric.Each:
		pr.bound(in, o, &t.Bound)
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
	case fabric.Named, fabric.NamedEach, fabric.NextNamed, fabric.NextOf, fabric.Below, fabric.Beside, fabric.Through:
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
	how := t.Kind
	if how == fabric.Named && ref.Own && ref.Pick == plan.Whole && !ref.Count.Is(1) {
		how = fabric.NextNamed // in corner, of several: the one that comes next
	}
	switch how {
	case fabric.NextNamed:
		in.Reach = plan.Next
	case fabric.NextOf:
		in.Reach = plan.NextOf
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
	case t == fabric.TookRowEnd:
		in.Over = plan.RowEnd
	case t == fabric.TookOther:
		in.Over = plan.ChainFromBack
	case t == fabric.TookSpace && in.Over == plan.Stitch:
		in.Over = plan.Space
	}
	if t&fabric.TookSpace != 0 && chains != nil {
		in.Chains = chains
	}
}
