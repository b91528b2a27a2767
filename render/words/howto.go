package words

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// HowToRead explains the signs of the pages, as far as this pattern uses them.
func (l *Language) HowToRead(p *plan.Pattern) []Fact {
	c := l.context(p, nil, nil)
	u := usedBy(p)
	u.repeats = u.repeats || c.gathers()
	var facts []Fact
	add := func(head rich.Text, texts ...rich.Text) {
		if t := join(" ", texts...); len(t) > 0 {
			facts = append(facts, Fact{Head: upper(head.String()), Text: paragraph(t)})
		}
	}
	say := func(ok bool, k line, args ...any) rich.Text {
		if !ok {
			return nil
		}
		return fill(l.voice.line(k), args...)
	}
	several := len(p.Sizes) > 1
	named := l.read.manner.Named
	add(rich.T(l.voice.line(factSizes)), say(several && !named, howSizes, c.sizesInOrder()), say(several && named, howNamed, c.sizesByName()),
		say(several && u.absent, howDash), say(len(p.Sizes) > 6 && !named, howSizeGroups))
	screen := l.read.manner.Screen
	add(say(several && !named && !screen, howColumnsHead), say(several && !named && !screen, howColumns))
	add(rich.T(l.voice.line(howCountsHead)), say(u.counts, howCounts), say(u.eachTime, howChange), say(u.counts && u.spaces, howCountSpaces))
	add(rich.T(l.voice.line(howChainsHead)), c.beginChains()...)
	add(rich.T(l.voice.line(howRepeatsHead)), say(u.repeats, howRepeats), say(u.blocks, howBlocks))
	add(rich.T(l.voice.line(howSameHead)), say(u.together, howSamePlace))
	add(rich.T(l.voice.line(howPlacesHead)), say(u.gaps, howGaps), say(u.base, howBase), say(u.rowEnds, howRowEnds))
	add(rich.T(l.voice.line(howYarnHead)), say(u.change, howChangeYarn), say(u.carry, howCarryYarn))
	add(rich.T(l.voice.line(howChartHead)), say(u.chart, howChartUp), say(u.chartRounds && !u.chartTurned, howChartRounds),
		say(u.chartRows && !u.chartTurned, howChartRows))
	if screen {
		add(rich.T(l.voice.line(howBoxesHead)), say(true, howTicks), say(u.tape || u.several, howCounter))
		return facts
	}
	add(rich.T(l.voice.line(howBoxesHead)), say(true, howBoxes), say(u.tape, howTape), say(u.tape && u.shaping, howWedge))
	return facts
}

// gathers reports whether brackets are printed that the source did not write.
func (c *context) gathers() bool {
	found := false
	for _, part := range c.p.Parts {
		inner := c.l.context(c.p, part, nil)
		eachRow(&plan.Pattern{Parts: []*plan.Part{part}}, func(r *plan.Row) {
			found = found || len(inner.gather(r.Work)) < len(r.Work)
		})
	}
	return found
}

// sizesInOrder writes the names of the sizes as their numbers are written.
func (c *context) sizesInOrder() rich.Text { return c.l.list(c.names(), nil) }

// sizesByName shows how a number stands behind the name of its size, at the first two of them.
func (c *context) sizesByName() rich.Text {
	some := make([]string, len(c.p.Sizes))
	names := c.names()
	for i := range some {
		some[i] = c.l.integer(10 + 2*i)
	}
	if len(names) > 2 {
		names = append(names[:2:2], make([]string, len(names)-2)...)
	}
	return c.l.list(some, names)
}

// beginChains says once for the whole pattern which beginning chains count. Chains that do in one row and do not in
// another are left to their rows.
func (c *context) beginChains() []rich.Text {
	var out []rich.Text
	type key struct {
		chains int
		as     stitch.ID
		counts bool
	}
	seen := map[key]bool{}
	eachRow(c.p, func(r *plan.Row) {
		b := r.Begin
		if b.Chains == 0 || b.FromHook > 0 || b.And > 0 || c.disputed(b) {
			return
		}
		k := key{b.Chains, b.As, b.Counts}
		if !b.Counts {
			k.as = ""
		}
		if seen[k] {
			return
		}
		seen[k] = true
		out = append(out, sentence(c.l.voice.beginCounts(b.Chains, c.as(b.As), b.Counts)))
	})
	return out
}

// usage is what a pattern uses that a reader may have to be told about.
type usage struct {
	absent, counts, spaces, repeats, blocks, together, gaps, base, rowEnds, change, tape, shaping, eachTime bool

	several bool // a step is more than one row

	chart, chartRounds, chartRows, chartTurned, carry bool // chartTurned: a mirrored part reads it from the other end
}

// tapeFrom is the number of rounds from which a strip of numbers takes the place of single boxes.
const tapeFrom = 5

func usedBy(p *plan.Pattern) usage {
	var u usage
	missing := func(n plan.Nums) { u.absent = u.absent || n != nil && !n.Everywhere() }
	for _, part := range p.Parts {
		for _, s := range part.Steps {
			switch s := s.(type) {
			case *plan.Row:
				missing(s.Times)
				missing(s.First)
				u.tape, u.eachTime = u.tape || long(s.Times), u.eachTime || len(s.Change) > 0
				u.several = u.several || s.Times != nil && !s.Times.Is(1)
			case *plan.Block:
				missing(s.Times)
				u.blocks, u.tape, u.eachTime = true, true, u.eachTime || len(s.Change) > 0
			}
		}
	}
	eachRow(p, func(r *plan.Row) {
		u.counts = u.counts || len(r.Counts) > 0
		for _, k := range r.Counts {
			u.spaces = u.spaces || k.Kind == plan.CountSpaces
		}
	})
	for _, part := range p.Parts {
		eachRow(&plan.Pattern{Parts: []*plan.Part{part}}, func(r *plan.Row) { u.charted(part, r) })
	}
	eachInstr(p, func(in *plan.Instr) { u.instr(in, missing) })
	return u
}

// charted notes how the charts of a part are read.
func (u *usage) charted(part *plan.Part, r *plan.Row) {
	if r.Chart == nil {
		return
	}
	u.chart = true
	turned := part.Style == plan.Rows || part.Style == plan.TurnedRounds || r.Flat
	u.chartRows, u.chartRounds = u.chartRows || turned, u.chartRounds || !turned
	wrong := r.Chart.Read == plan.FromLeft
	u.chartTurned = u.chartTurned || r.Chart.Read != plan.EitherWay && (!turned && wrong || r.Sided && wrong != r.Wrong)
}

func long(n plan.Nums) bool {
	for _, v := range n {
		if v >= tapeFrom {
			return true
		}
	}
	return false
}

func (u *usage) instr(in *plan.Instr, missing func(plan.Nums)) {
	missing(in.N)
	for _, v := range in.N {
		u.absent = u.absent || v == 0 && in.Reach == plan.Next
	}
	switch in.Op {
	case plan.Repeat:
		u.repeats = u.repeats || !in.N.Is(1)
	case plan.SpreadOut:
		u.repeats, u.shaping = true, true
	case plan.InOne:
		u.together = true
	case plan.Decrease:
		u.shaping = true
	case plan.ChangeTo:
		u.change = true
	}
	u.carry = u.carry || in.Cells != nil
	u.change = u.change || in.Op == plan.Work && in.Yarn >= 0
	u.gaps = u.gaps || in.Over == plan.Gap || in.Reach == plan.InGapHere
	u.base = u.base || in.Reach == plan.BelowOf || in.Reach == plan.BesideOf
	u.rowEnds = u.rowEnds || in.Over == plan.RowEnd
}
