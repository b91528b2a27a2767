package words

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// SideNotes are the notes beside the drawing: gauge, hooks, notions, how the yarn was estimated, how the drawing is to
// be read.
func (l *Language) SideNotes(p *plan.Pattern) []Fact { return l.notesOf(p, true) }

// MaterialNotes are those of the notes that need no drawing beside them.
func (l *Language) MaterialNotes(p *plan.Pattern) []Fact { return l.notesOf(p, false) }

func (l *Language) notesOf(p *plan.Pattern, drawn bool) []Fact {
	c := l.context(p, nil, nil)
	var facts []Fact
	add := func(head line, text rich.Text) {
		if len(text) > 0 {
			facts = append(facts, Fact{Head: upper(l.voice.line(head)), Text: paragraph(text)})
		}
	}
	add(factGauge, c.gaugeNote())
	add(hooksHead(p), c.hooksNote())
	add(sideNotions, c.notions())
	add(factYarn, join(" ", c.fibres(), c.estimate(), c.ownYarn()))
	if drawn {
		add(sideDrawing, c.drawing())
	}
	return facts
}

func (c *context) gaugeNote() rich.Text {
	if len(c.p.Gauges) == 0 {
		return nil
	}
	out := c.gauges(c.p.Gauges)
	for _, m := range c.motifSizes() {
		out = join(" ", out, sentence(m))
	}
	for _, g := range c.p.OwnGauges() {
		out = join(" ", out, fill(c.l.voice.line(ownGaugeWas), c.gauge(*g.Was)))
	}
	check := gaugeCheck
	if c.p.Gauges[0].Blocked == plan.BeforeBlocking {
		check = gaugeCheckRaw
	}
	return join(" ", out, fill(c.l.voice.line(check), wide(c.p.Gauges[0])))
}

// ownYarn says what amounts are worth at a maker's own gauge; nil at the designer's.
func (c *context) ownYarn() rich.Text {
	weighed := func(y plan.Yarn) bool { return y.Amount != nil }
	if len(c.p.OwnGauges()) == 0 || !slices.ContainsFunc(c.p.Yarns, weighed) {
		return nil
	}
	return rich.T(c.l.voice.line(ownGaugeYarn))
}

// hooksNote says which hook is for which parts.
func (c *context) hooksNote() rich.Text {
	if len(c.p.Hooks) == 0 {
		return nil
	}
	if len(c.p.Hooks) == 1 {
		return sentence(rich.T(c.l.hook(c.p.Hooks[0])))
	}
	var texts []rich.Text
	for _, h := range c.p.Hooks {
		var parts []int
		for i, part := range c.p.Parts {
			if part.Hook == h || part.Hook == 0 && h == c.p.Hooks[0] || changesTo(part.Steps, h) {
				parts = append(parts, i)
			}
		}
		texts = append(texts, c.l.voice.hooksFor(c.l.hook(h), c.partNames(parts)))
	}
	return sentence(join("; ", texts...))
}

// changesTo reports whether a part goes on with a hook in the middle.
func changesTo(steps []plan.Step, hook plan.Length) bool {
	for _, s := range steps {
		switch s := s.(type) {
		case *plan.Row:
			if s.Hook == hook {
				return true
			}
		case *plan.Block:
			for _, r := range s.Rows {
				if r.Hook == hook {
					return true
				}
			}
		}
	}
	return false
}

// notions lists what is needed besides yarn and hook.
func (c *context) notions() rich.Text {
	n := c.p.Notions
	var items []rich.Text
	if n.Markers > 0 {
		items = append(items, c.l.voice.markers(n.Markers))
	}
	if n.Needle {
		items = append(items, rich.T(c.l.read.word("needle")))
	}
	if n.Pin {
		items = append(items, rich.T(c.l.voice.line(notionPin)))
	}
	for _, e := range n.Elastic {
		items = append(items, c.l.voice.elasticNeeded(c.width(e.Width), c.both(e.Length)))
	}
	for _, d := range n.Formers {
		items = append(items, fill(c.l.voice.line(notionFormer), c.width(d)))
	}
	for _, b := range n.Buttons {
		items = append(items, c.l.voice.buttonsNeeded(c.tally(b.N), c.l.millimetres(b.Size), b.Material))
	}
	for _, o := range n.Others {
		items = append(items, c.notion(o))
	}
	return sentence(join(", ", items...))
}

// notion writes something else that is needed, with how much of it is needed.
func (c *context) notion(n plan.Notion) rich.Text {
	name := c.l.read.of(n.Text)
	switch {
	case n.N != nil:
		return fill("{}~{}", c.tally(n.N), name)
	case n.Grams != nil:
		return fill(c.l.voice.line(notionAmount), fill("{}~g", c.tally(n.Grams)), name)
	case n.Length != nil:
		return fill(c.l.voice.line(notionAmount), c.both(n.Length), name)
	}
	return rich.T(name)
}

// drawing says which size the drawing shows, and which of its measures are drawn at half: the laid-flat width of what
// is measured all around.
func (c *context) drawing() rich.Text {
	if len(c.p.Sizes) == 0 || len(c.p.Measures) == 0 {
		return nil
	}
	var halves []string
	for _, m := range c.p.Measures {
		if m.Letter != "" && m.Half {
			halves = append(halves, m.Letter)
		}
	}
	size := upper(c.l.InSize(c.p.Sizes[c.p.Shown]))
	if len(halves) == 0 && slices.ContainsFunc(c.p.Parts, func(p *plan.Part) bool { return p.Grid != nil }) {
		return fill(c.l.voice.line(drawingMotifs), size)
	}
	said := fill(c.l.voice.line(drawingText), size)
	if len(halves) > 0 {
		key := drawingHalves
		if len(halves) == 1 {
			key = drawingHalf
		}
		said = fill(c.l.voice.line(key), size, c.list(halves))
	}
	if c.waits() {
		said = join(" ", said, fill(c.l.voice.line(drawingWait)))
	}
	if c.marks() {
		said = join(" ", said, fill(c.l.voice.line(drawingMarkers)))
	}
	return said
}

// marks reports whether markers are counted off along an edge that is drawn.
func (c *context) marks() bool {
	for i := range c.p.Parts {
		if len(c.p.MarkersAt(i)) > 0 {
			return true
		}
	}
	return false
}

// waits reports whether a part that is drawn grows on stitches that another had left waiting, which the drawing marks.
func (c *context) waits() bool {
	for i := range c.p.Parts {
		if c.p.Waited(i) {
			return true
		}
	}
	return false
}

// isAround reports whether a measure goes once around, in one piece or in two of one width.
func isAround(m plan.Measure) bool {
	if m.Half {
		return true
	}
	for _, o := range m.Of {
		if o.Kind == plan.Around {
			return true
		}
	}
	return false
}
