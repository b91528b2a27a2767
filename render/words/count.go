package words

import (
	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// count writes the count at the foot of a step.
func (c *context) count(counts []plan.Count) *CountText {
	if len(counts) == 1 {
		n := counts[0].N
		if _, ok := n.Same(); !ok || !n.Everywhere() {
			return c.countSlots(counts[0])
		}
	}
	texts := c.counts(counts)
	if len(texts) == 0 {
		return nil
	}
	return &CountText{Line: merge(join(", ", texts...))}
}

func (c *context) countSlots(k plan.Count) *CountText {
	return &CountText{Unit: merge(c.unit(k)), Slots: c.l.figures(k.N)}
}

// unit is what is counted, for a column of figures.
func (c *context) unit(k plan.Count) rich.Text {
	if k.Kind == plan.CountIn {
		return rich.T(c.l.voice.bare(c.printed(k.Called, k.Label)))
	}
	return expandOnce(c.countNoun(k).many)
}

func (c *context) countNoun(k plan.Count) noun {
	switch k.Kind {
	case plan.CountForm:
		return c.form(k.Form)
	case plan.CountSpaces:
		if k.Chains > 0 {
			return c.space(c.same(k.Chains))
		}
		return c.l.voice.spaces(num{}, true)
	case plan.CountYarn:
		return c.l.voice.stitchesIn(c.l.voice.places(plan.Stitch), c.yarn(k.Yarn))
	case plan.CountChains:
		return c.l.voice.places(plan.FoundationCh)
	}
	return c.l.voice.places(plan.Stitch)
}

// counts writes counts with their figures: "8 dc", "2 ch-4 sps", "52 sts in the right leg". Sizes that have none of a
// kind show a dash; a count that no size has is left out.
func (c *context) counts(counts []plan.Count) []rich.Text {
	var out []rich.Text
	for _, k := range counts {
		n := c.tally(k.N)
		if !n.some() || n.at.Is(0) && len(counts) > 1 {
			continue
		}
		if k.Kind == plan.CountIn {
			out = append(out, c.l.voice.inSection(n, c.printed(k.Called, k.Label)))
			continue
		}
		out = append(out, amount(n, c.countNoun(k)))
	}
	return out
}

// change says what each pass of a repeat adds or takes away: "Each time: −2 dc." It is nil where nothing is to be said.
func (c *context) change(change []plan.Count) rich.Text {
	var texts []rich.Text
	for _, k := range change {
		n := c.tally(k.N)
		if !n.some() || n.at.Is(0) {
			continue
		}
		n.text = c.l.list(c.l.signed(n.at), c.names())
		if v, ok := n.same(); ok {
			n.text = rich.T(c.l.signedFigure(v))
		}
		texts = append(texts, fill("{}~{}", n, c.countNoun(k).by(c.sizeOf(n))))
	}
	if len(texts) == 0 {
		return nil
	}
	return sentence(fill(c.l.voice.line(eachTime), join(", ", texts...)))
}

// sizeOf is a number without its sign, by which a noun is chosen.
func (c *context) sizeOf(n num) num {
	at := make(plan.Nums, len(n.at))
	for i, v := range n.at {
		if at[i] = v; v != plan.Absent {
			at[i] = max(v, -v)
		}
	}
	n.at = at
	return n
}

// Counted names what is counted, as the pages do: "hdc", "ch-2 sps".
func (l *Language) Counted(p *plan.Pattern, k plan.Count) rich.Text {
	return merge(l.context(p, nil, nil).unit(k))
}
