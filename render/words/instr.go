package words

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// item is an instruction in words.
type item struct {
	text  rich.Text
	heavy bool     // it holds so much that a comma would not part it from its neighbours
	loose bool     // what follows belongs to it: a chain, a beginning chain
	lists bool     // it is a list itself: a comma would not end it
	tight bool     // it belongs to what stands before: a marker
	only  []string // the sizes it is for, if others do not have it and its words do not show it
}

// items writes the instructions of a row; those with nothing to do are left out.
func (c *context) items(work []plan.Instr) []item {
	work = runOn(c.drawnTogether(c.gather(work)))
	var out []item
	for i := 0; i < len(work); i++ {
		in := &work[i]
		if c.idle(in) {
			continue
		}
		if i+1 < len(work) && c.pair(in, &work[i+1]) {
			out = append(out, item{text: c.sideAndBase(in), heavy: true})
			i++
			c.worked = true
			continue
		}
		if in.Op == plan.Chains && i+1 < len(work) && c.sameName(in, &work[i+1]) {
			bare := *in
			bare.Called = nil
			in = &bare
		}
		it := c.item(c.inContext(work, i, in))
		if len(it.text) > 0 {
			out = append(out, it)
		}
		c.note(in)
	}
	return c.inSizes(out)
}

// sameName reports whether chains and the places skipped behind them are for the same thing, which is then said once.
func (c *context) sameName(a, b *plan.Instr) bool {
	name := c.l.theName(a.Called)
	return name != "" && b.Op == plan.SkipOver && c.l.theName(b.Called) == name
}

// note remembers that something was worked, so that "each st around" is not said of what is left of a round.
func (c *context) note(in *plan.Instr) {
	switch in.Op {
	case plan.PlaceMark, plan.MoveMark, plan.RemoveMark, plan.ChangeTo:
	default:
		c.worked = true
	}
}

// idle reports whether an instruction has nothing to do in any size.
func (c *context) idle(in *plan.Instr) bool {
	switch in.Op {
	case plan.TurnWork, plan.PlaceMark, plan.MoveMark, plan.RemoveMark, plan.ChangeTo:
		return in.N != nil && !c.present(in.N)
	case plan.SpreadOut:
		return in.Spread == nil
	}
	if in.Per != nil && !c.num(in.Per).some() {
		return true
	}
	return in.N != nil && !c.num(in.N).some()
}

// present reports whether the instruction is there in any size of the step, if only with nothing to do.
func (c *context) present(n plan.Nums) bool {
	for i, v := range n {
		if v != plan.Absent && c.sizes.Has(i) {
			return true
		}
	}
	return false
}

// bounded reports whether an instruction says where it ends rather than how far it goes.
func (c *context) bounded(in *plan.Instr) bool {
	switch in.Reach {
	case plan.ToEnd, plan.ToMark, plan.ToLast, plan.ToLabel, plan.ToSpace:
		return true
	}
	return false
}

// item writes one instruction.
func (c *context) item(in *plan.Instr) item {
	it := c.deed(in)
	if in.Yarn >= 0 && in.Op != plan.ChangeTo {
		if y := c.yarn(in.Yarn); y != "" {
			it.text, it.heavy = c.l.voice.withYarn(it.text, y), true
		}
	}
	if in.Cross != plan.NoCross {
		it.text, it.heavy = c.l.voice.crossing(it.text, in.Cross), true
	}
	switch name := c.l.theName(in.Called); {
	case name == "" || in.Op == plan.SkipOver || in.Op == plan.LeaveRest:
	case in.Op == plan.Chains && !c.said.once(name):
	case in.Op == plan.Chains:
		it.text, it.heavy = c.l.voice.made(it.text, name), true
	default:
		it.text, it.heavy = c.l.voice.called(it.text, name), true
	}
	if names, ok := c.onlyIn(in); ok {
		it.only, it.heavy = names, true
	}
	return it
}

// sized is the text of an instruction that stands alone, with the sizes it is for.
func (c *context) sized(it item) rich.Text {
	if it.only == nil {
		return it.text
	}
	return c.l.voice.inSizes(it.text, it.only)
}

// inSizes says for which sizes instructions are, once for all that follow each other and are for the same.
func (c *context) inSizes(items []item) []item {
	var out []item
	for i := 0; i < len(items); {
		end := i + 1
		if items[i].only == nil {
			out, i = append(out, items[i]), end
			continue
		}
		texts := []rich.Text{items[i].text}
		for end < len(items) && slices.Equal(items[end].only, items[i].only) && !items[end].tight && !items[end].lists {
			texts = append(texts, items[end].text)
			end++
		}
		it := items[end-1]
		it.text = c.l.voice.inSizes(c.l.voice.and(texts), it.only)
		it.heavy, it.tight = true, items[i].tight
		out, i = append(out, it), end
	}
	return out
}

// onlyIn names the sizes of an instruction that other sizes do not have, where its words do not show it with a dash.
func (c *context) onlyIn(in *plan.Instr) ([]string, bool) {
	if in.N == nil || in.Op == plan.SpreadOut || c.showsSizes(in) {
		return nil, false
	}
	// Where something ends rather than how far it goes, no places left is nothing to tell; the same holds for what has
	// no number.
	per := c.per(in.Per)
	has := func(i int) bool {
		switch {
		case in.N[i] == plan.Absent:
			return false
		case in.N[i] == 0:
			return c.bounded(in) && in.Op != plan.Repeat || numberless(in.Op)
		}
		return !per.one() || per.at[i] != plan.Absent
	}
	names := c.sizeNames(has)
	return names, len(names) < len(c.sizeNames(func(int) bool { return true }))
}

// numberless reports whether an instruction is done or not, rather than a number of times.
func numberless(op plan.Op) bool {
	switch op {
	case plan.TurnWork, plan.PlaceMark, plan.MoveMark, plan.RemoveMark, plan.ChangeTo:
		return true
	}
	return false
}

// showsSizes reports whether the words of an instruction hold a list of sizes, in which a dash says who has nothing to do.
func (c *context) showsSizes(in *plan.Instr) bool {
	n := c.num(in.N)
	switch in.Op {
	case plan.Chains:
		return n.list
	case plan.Repeat:
		return n.list && !n.one()
	case plan.Work, plan.InOne:
		return n.list && !n.one() && (in.Reach == plan.ThroughBoth || in.Reach == plan.NextOf || in.Ref == nil && (in.Reach == plan.Next || in.Reach == plan.Last || in.Reach == plan.First))
	case plan.Decrease, plan.CrossOver, plan.LeaveRest, plan.SlipOver:
		return n.list && !n.one()
	case plan.Lengthen:
		return n.list
	case plan.SkipOver:
		return n.list && (in.Reach != plan.Next && in.Reach != plan.ToEnd || !n.one())
	}
	return false
}

// deed writes an instruction without what may be said beside it.
func (c *context) deed(in *plan.Instr) item {
	v := c.l.voice
	s := c.spot(in)
	switch in.Op {
	case plan.Work:
		return item{text: c.work(in, s), heavy: s.heavy() || in.Over == plan.ChainFromBack}
	case plan.Decrease:
		if in.Body != nil {
			return c.drawn(in, s)
		}
		return item{text: v.decrease(c.form(in.Form), in.Form.Together, s.n, s)}
	case plan.CrossOver:
		return item{text: v.decrease(c.form(in.Form), in.Form.Of, s.n, s)}
	case plan.Lengthen:
		return item{text: v.lengthen(c.form(in.Form), s.n), heavy: true}
	case plan.RideOn:
		return item{text: v.work(working{form: c.form(in.Form), per: exactly(1), at: spot{reach: nowhere}})}
	case plan.Chains:
		return item{text: v.chains(s.n), loose: true}
	case plan.SkipOver:
		name := c.l.theName(in.Called)
		return item{text: v.skip(s.n, s, name), heavy: name != "" || s.heavy()}
	case plan.AsMade:
		return item{text: v.asMade(s, in.Posts), heavy: true}
	case plan.LeaveRest:
		return item{text: v.leave(s.n, c.l.theName(in.Called)), heavy: true}
	case plan.TurnWork:
		return item{text: v.turn()}
	case plan.Repeat:
		return c.repeat(in, s)
	case plan.InOne:
		return item{text: c.inOne(in, s), heavy: s.heavy()}
	case plan.SpreadOut:
		return c.spread(in)
	case plan.PlaceMark, plan.MoveMark, plan.RemoveMark:
		return item{text: v.marker(in.Op, c.marker(in.Marker), in.Where), tight: true}
	case plan.ChangeTo:
		return item{text: v.change(c.yarn(in.Yarn))}
	case plan.SlipOver:
		if s.into = c.slidInto(in, s); len(s.into) > 0 {
			s.n = c.num(c.minus(in.N, 1))
		}
		return item{text: v.slideOver(s.n, s), heavy: true}
	case plan.JoinTo:
		return item{text: c.joinTo(in), loose: true}
	case plan.AlongRun:
		return item{text: v.alongRun(s.ref), heavy: true, loose: true}
	}
	return item{}
}

// slidInto is the space into which the last of the slip stitches goes that carry the yarn to the start of a round. The round
// before was joined in its first stitch, so that one of the places passed needs no slip stitch.
func (c *context) slidInto(in *plan.Instr, s spot) rich.Text {
	joined := c.part != nil && (c.part.Style == plan.JoinedRounds || c.part.Style == plan.TurnedRounds)
	switch {
	case !s.first || !joined || c.flat || in.N == nil || c.num(in.N).gaps():
		return nil
	case in.Reach == plan.ToLabel && in.Ref.Kind == plan.RefSpace:
		return c.l.voice.nextOne(s.ref)
	case in.Reach == plan.ToSpace && in.Chains != nil:
		return c.l.voice.nextOne(named{place: s.space})
	}
	return nil
}

// heavy reports whether the words for a spot are long.
func (s spot) heavy() bool {
	switch s.reach {
	case plan.ToMark, plan.ToLabel, plan.At, plan.BelowOf, plan.BesideOf, plan.NextOf, plan.ThroughBoth:
		return true
	}
	return s.after || s.n.list
}

func (c *context) work(in *plan.Instr, s spot) rich.Text {
	form := c.form(in.Form)
	if c.legs {
		form = c.l.voice.unfinished(form)
	}
	if spikes(in) {
		form = c.l.voice.spike(form)
	}
	return c.l.voice.work(working{form: form, post: in.Form.Post, loop: in.Form.Loop, per: c.per(in.Per), at: s})
}

// spot says where an instruction goes.
func (c *context) spot(in *plan.Instr) spot {
	s := spot{
		reach: in.Reach, over: in.Over, n: c.num(in.N), after: in.AfterBegin, first: !c.worked,
		round: c.round(), marker: c.marker(in.Marker), marked: in.Marked, deep: in.Deep, ref: c.named(in.Ref),
	}
	if in.Before != nil {
		s.before = c.num(in.Before)
	}
	if in.Last != nil {
		s.last = c.num(in.Last)
	}
	s.place = c.l.voice.places(in.Over)
	switch in.Over {
	case plan.Space:
		s.place = c.space(in.Chains)
	case plan.RowEnd:
		s.place = c.l.voice.rowEnd(c.said != nil && c.said.ends)
		if c.said != nil {
			c.said.ends = true
		}
	}
	if in.Reach == plan.ToSpace {
		s.space = c.space(in.Chains)
	}
	if in.Deep > 0 {
		s.place = c.l.voice.rowsBelow(s.place, in.Deep, s.round)
	}
	if in.Reach == plan.Same && in.Over == plan.Space {
		s.place = c.l.read.short("sp")
	}
	s.ref.here = s.ref.here || in.Cross != plan.NoCross && s.ref.Own && s.ref.Kind == plan.RefSkipped // just skipped
	if s.after && in.Reach == plan.At && in.Ref != nil && in.Ref.Pick == plan.Whole {
		// The beginning chain stands in the very place.
		s.reach, s.after = plan.Same, false
		s.place = s.ref.place
		if in.Ref.Kind == plan.RefSpace {
			s.place = c.l.read.short("sp")
		}
	}
	return s
}

// pair reports whether two instructions work into the side and the base of the same stitch, which is said in one.
func (c *context) pair(a, b *plan.Instr) bool {
	sides := a.Reach == plan.BesideOf && b.Reach == plan.BelowOf || a.Reach == plan.BelowOf && b.Reach == plan.BesideOf
	if !sides || a.Op != plan.Work || b.Op != plan.Work || a.Form != b.Form || a.Ref == nil || b.Ref == nil {
		return false
	}
	plainOne := func(in *plan.Instr) bool {
		n := c.num(in.N)
		v, ok := n.same()
		return ok && v == 1 && in.Per == nil && in.Called == nil && in.Yarn < 0 && in.Cross == plan.NoCross && in.Form.Post == stitch.NoPost && in.Form.Loop == stitch.BothLoops
	}
	x, y := a.Ref, b.Ref
	same := x.Part == y.Part && x.Label == y.Label && x.Pick == y.Pick && x.Nth == y.Nth && x.Pick != plan.EachOf
	return same && plainOne(a) && plainOne(b)
}

func (c *context) sideAndBase(in *plan.Instr) rich.Text {
	return c.l.voice.sideAndBase(c.form(in.Form), c.named(in.Ref), in.Reach == plan.BesideOf)
}

// repeat writes a repeat. Where every size works it once the brackets go.
func (c *context) repeat(in *plan.Instr, s spot) item {
	if in.Cells != nil {
		return c.cells(in)
	}
	body := c.within(in.N).body(in.Body)
	if len(body) == 0 {
		return item{}
	}
	if s.n.one() && !s.n.gaps() {
		return item{text: body, heavy: true}
	}
	if len(in.Body) == 1 {
		if it := c.oneDeed(in, &in.Body[0], s); it.text != nil {
			return it
		}
	}
	if in.Reach == plan.ToLast && intoChain(in.Body) {
		s.over, s.place = plan.FoundationCh, c.l.voice.places(plan.FoundationCh)
	}
	return item{text: c.l.voice.repeat(body, s.n, s), heavy: true}
}

// oneDeed is brackets that hold one instruction alone: that one so many times, which needs no brackets. It is empty if the
// instruction cannot be said so.
func (c *context) oneDeed(in, one *plan.Instr, s spot) item {
	n := c.num(one.N)
	alone := n.one() && !c.within(in.N).num(one.N).gaps() && one.Reach == plan.Next && one.Ref == nil && one.Called == nil && one.Label == "" && one.Body == nil &&
		one.Yarn < 0 && one.Cross == plan.NoCross && in.Ref == nil && !one.AfterBegin
	switch {
	case !alone:
		return item{}
	case one.Op == plan.Decrease:
		s.over, s.place = one.Over, c.spot(one).place
		return item{text: c.l.voice.decrease(c.form(one.Form), one.Form.Together, s.n, s)}
	case one.Op == plan.Work:
		all := *one
		all.N, all.Reach, all.Marker, all.Before, all.Last, all.Marked = in.N, in.Reach, in.Marker, in.Before, in.Last, in.Marked
		if in.Reach == plan.Times {
			all.Reach = plan.Next
		}
		return c.item(&all)
	}
	return item{}
}

// intoChain reports whether brackets are worked into a new chain.
func intoChain(body []plan.Instr) bool {
	return slices.ContainsFunc(body, func(in plan.Instr) bool { return in.Over == plan.FoundationCh })
}

// spikes reports whether stitches go down into an older row than the one they are worked along. One row below is that row.
func spikes(in *plan.Instr) bool {
	return in.Op == plan.Work && in.Deep > 1 && in.Form.Post == stitch.NoPost
}

// drawn is a stitch that draws together what stands in places of several kinds: each of its legs.
func (c *context) drawn(in *plan.Instr, s spot) item {
	inner := *c
	inner.worked, inner.legs = true, true
	var legs []rich.Text
	for _, it := range inner.items(in.Body) {
		legs = append(legs, it.text)
	}
	return item{text: c.l.voice.drawn(c.form(in.Form), join(", ", legs...), s.n), heavy: true, lists: true}
}

// within is the context of brackets that are worked so often: a size that does not work them has nothing to read there.
func (c *context) within(times plan.Nums) *context {
	if times == nil {
		return c
	}
	inner := *c
	inner.sizes = make(plan.Sizes, len(times))
	for i, n := range times {
		inner.sizes[i] = c.sizes.Has(i) && n > 0
	}
	return &inner
}

// body writes what stands in the brackets of a repeat, where commas alone part the instructions, unless one is a list itself. What is said to go on
// to the end of a round does not start there.
func (c *context) body(work []plan.Instr) rich.Text {
	inner := *c
	inner.worked = true
	var texts []rich.Text
	sign := ", "
	for _, it := range inner.items(work) {
		texts = append(texts, it.text)
		if it.lists {
			sign = "; "
		}
	}
	return join(sign, texts...)
}

// nowhere is the reach of stitches whose place is said outside of their brackets.
const nowhere plan.Reach = 255

// product is how many stitches an instruction makes.
func (c *context) product(n, per plan.Nums) plan.Nums {
	if n == nil {
		return per
	}
	if per == nil {
		return n
	}
	out := make(plan.Nums, len(n))
	for i := range n {
		out[i] = plan.Absent
		if n[i] != plan.Absent && per[i] != plan.Absent {
			out[i] = n[i] * per[i]
		}
	}
	return out
}

// run parts instructions: by commas, or by semicolons if one of them is so long that a comma would not part it.
func run(items []item) rich.Text {
	heavy := false
	for _, it := range items {
		heavy = heavy || it.heavy
	}
	var out rich.Text
	for i, it := range items {
		if i > 0 {
			sep := ", "
			if heavy && !items[i-1].loose && !it.tight {
				sep = "; "
			}
			out = append(out, rich.Run{Text: sep})
		}
		out = append(out, it.text...)
	}
	return out
}
