package words

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// Step writes one step of a part.
func (l *Language) Step(p *plan.Pattern, part *plan.Part, s plan.Step) StepText {
	if l.keeps(p) {
		return l.kept.step(part, s, func() StepText { return l.step(p, part, s) })
	}
	return l.step(p, part, s)
}

func (l *Language) step(p *plan.Pattern, part *plan.Part, s plan.Step) StepText {
	switch s := s.(type) {
	case *plan.Row:
		return l.context(p, part, present(s.For, s.First)).row(s)
	case *plan.Block:
		return l.context(p, part, present(s.For, s.First)).block(s)
	case *plan.CountOff:
		return l.context(p, part, s.For).countOff(s)
	case *plan.Fasten:
		return l.context(p, part, s.For).fasten(s)
	case *plan.MoveStart:
		c := l.context(p, part, s.For)
		return c.step(nil, l.voice.moveStart(c.marker(s.Marker), c.num(s.Moved), s.Drop))
	case *plan.Grid:
		return l.context(p, part, nil).grid(s)
	case *plan.JoinRound:
		return l.context(p, part, s.For).joinRound(s)
	case *plan.NoteStep:
		return l.context(p, part, s.For).noteStep(s)
	case *plan.Counted:
		c := l.context(p, part, s.For)
		return c.step(nil, sentence(l.voice.nowHave(c.counts(s.Counts))))
	}
	return StepText{}
}

// present lessens the sizes of a step by those that have no number of it.
func present(sizes plan.Sizes, n plan.Nums) plan.Sizes {
	out := make(plan.Sizes, len(n))
	for i, v := range n {
		out[i] = sizes.Has(i) && v != plan.Absent
	}
	return out
}

// step is a step with a label and a body.
func (c *context) step(label, body rich.Text) StepText {
	return StepText{Only: c.only(), Label: merge(label), Body: paragraph(body)}
}

// only says for which sizes the step is, nil if for all.
func (c *context) only() rich.Text {
	if c.sizes == nil {
		return nil
	}
	return merge(c.l.voice.onlySizes(c.sizeNames(func(int) bool { return true })))
}

// OnlyFor says for which sizes something is: "Sizes 1 y and 2 y only". It is nil if it is for all of them.
func (l *Language) OnlyFor(p *plan.Pattern, sizes plan.Sizes) rich.Text {
	return l.context(p, nil, sizes).only()
}

func (c *context) row(r *plan.Row) StepText {
	c.flat = r.Flat
	st := StepText{Only: c.only(), Count: c.count(r.Counts)}
	st.Label, st.Slots = c.label(r.First, r.Last, r.Called)
	if side := c.sideOf(r); side != "" {
		st.Label = join(" ", st.Label, rich.T(side))
	}
	st.Label = merge(st.Label)
	body := c.sentences(r, nil, c.times(r.Times))
	if t := c.stripes(r.Stripes); t != nil {
		body = append(body, t)
	}
	if t := c.change(r.Change); t != nil {
		body = append(body, t)
	}
	if t := c.tall(r.Tall); t != nil {
		body = append(body, t)
	}
	st.Body = paragraph(join(" ", body...))
	return st
}

// sideOf says which side faces, where that is worth saying.
func (c *context) sideOf(r *plan.Row) string {
	if !r.Sided {
		return ""
	}
	return "(" + c.l.voice.side(r.Wrong) + ")"
}

// sentences writes what is worked in a row and how it ends. A head goes before the first of them.
func (c *context) sentences(r *plan.Row, head rich.Text, times rich.Text) []rich.Text {
	var out []rich.Text
	if y := c.yarn(r.Yarn); r.NewYarn && y != "" {
		text := c.l.voice.joinYarn(y)
		if r.JoinAt != nil {
			text = c.l.voice.joinYarnIn(y, c.l.voice.nextOne(c.named(r.JoinAt)))
		}
		out, head = append(out, sentence(join("", head, text))), nil
	}
	if y := c.yarn(r.Yarn); r.ChangeYarn && y != "" {
		out, head = append(out, sentence(join("", head, c.l.voice.change(y)))), nil
	}
	if r.Hook > 0 {
		out, head = append(out, sentence(join("", head, c.l.voice.changeHook(c.l.hook(r.Hook))))), nil
	}
	if nth := c.likeBefore(r); nth > 0 {
		return append(out, sentence(join("", head, c.l.voice.likeRow(nth, c.round()))))
	}
	if t := c.readsChart(r); t != nil {
		out, head = append(out, sentence(join("", head, t))), nil
	}
	if r.Unturned {
		out, head = append(out, sentence(join("", head, rich.T(c.l.voice.line(doNotTurn))))), nil
	}
	text := c.opened(join("", times, c.instructions(r)), head != nil)
	if r.Back {
		text = fill(c.l.voice.line(otherWay), text)
	}
	out = append(out, sentence(join("", head, text)))
	if j := c.joins(r); j != nil {
		out = append(out, sentence(j))
	}
	if r.Turn {
		out = append(out, sentence(c.l.voice.turn()))
	}
	return append(out, c.markers(r)...)
}

// markers says what becomes of the markers that the row does not name.
func (c *context) markers(r *plan.Row) []rich.Text {
	var out []rich.Text
	several := r.Times != nil && !c.num(r.Times).one()
	if r.MarksUp {
		if n, on, say := c.ridesUp(r); say {
			out = append(out, sentence(c.l.voice.marksUp(n, on, c.round())))
		}
	}
	if t := c.takenOut(r.Drop, several); t != nil {
		out = append(out, t)
	}
	return out
}

// takenOut says which markers are taken out; last: behind the last of several rows.
func (c *context) takenOut(markers []int, last bool) rich.Text {
	if len(markers) == 0 {
		return nil
	}
	var numbers []int
	for _, m := range markers {
		numbers = append(numbers, c.marker(m))
	}
	return sentence(c.l.voice.marksOut(numbers, last, c.round()))
}

// opened gives a sentence that would start with a dash, or with the name of a size, a verb to start with. inside: it is not the
// start of the sentence.
func (c *context) opened(t rich.Text, inside bool) rich.Text {
	bySize := len(t) > 1 && t[0].Text == "(" && t[1].Strong
	if !bySize && (len(t) == 0 || !strings.HasPrefix(t[0].Text, dash)) {
		return t
	}
	verb := c.l.voice.line(workVerb)
	if inside {
		verb = lower(verb)
	}
	return join("", rich.T(verb+" "), t)
}

// times says how many rows in a run read the same: "3 rounds: ".
func (c *context) times(n plan.Nums) rich.Text {
	if n == nil || c.num(n).one() {
		return nil
	}
	return c.l.voice.times(c.num(n), c.round())
}

// instructions writes the beginning chain and the instructions of a row.
func (c *context) instructions(r *plan.Row) rich.Text {
	c.worked, c.said = false, &said{}
	lead := leading(r.Work)
	items, work := c.items(r.Work[:lead]), r.Work[lead:]
	switch {
	case r.Begin.FromHook > 0:
		it, rest := c.hook(r)
		items, work = append(items, it), rest
		c.worked = true
	case r.Begin.Chains > 0:
		text := c.l.voice.begin(c.beginning(r))
		if y := c.yarn(r.Begin.Yarn); r.Begin.OtherYarn && y != "" {
			text = c.l.voice.withYarn(text, y)
		}
		items = append(items, item{text: text, loose: true})
		if len(work) > 0 && r.Begin.OtherYarn && work[0].Op == plan.Work && work[0].Yarn == r.Begin.Yarn {
			work = slices.Clone(work)
			work[0].Yarn = -1 // that yarn was just taken up
		}
	}
	return run(append(items, c.items(work)...))
}

// leading is how many instructions only carry the yarn on, before the row begins: its beginning chain stands behind them.
func leading(work []plan.Instr) int {
	for i, in := range work {
		if in.Op != plan.SlipOver && (in.Op != plan.Work || in.Form.ID != stitch.Slip) {
			return i
		}
	}
	return 0
}

// tall says how tall the part is after the row.
func (c *context) tall(ls plan.Lengths) rich.Text {
	if len(ls) == 0 {
		return nil
	}
	name := c.l.theName(c.part.Called)
	if bare := c.l.voice.bare(name); name != "" && lower(bare) != lower(c.l.theName(c.part.Title)) {
		name = "" // its title tells of more than the name does: yoke and body
	}
	return sentence(c.l.voice.measures(name, c.both(ls)))
}

// joins closes a round.
func (c *context) joins(r *plan.Row) rich.Text {
	j := r.Join
	if j.Kind == plan.NoJoin {
		return nil
	}
	with := c.l.read.short("slst")
	first := c.l.voice.places(plan.Stitch)
	switch {
	case j.Kind == plan.JoinWith:
		with = c.form(j.Form)
	case j.Form.ID != "":
		first = c.form(j.Form)
	}
	chains := r.Begin.Chains + r.Begin.And
	return c.l.voice.joinWith(joining{
		with: with, first: first, intoChain: j.Into == plan.IntoChain,
		nth: j.Nth, chains: chains, top: j.Nth == 0 || j.Nth == chains,
	})
}
