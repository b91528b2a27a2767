package words

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// This file says single things of a pattern as its pages say them, so that what stood there can be put beside what stands there
// now.

// ErrataSpan says from which edition to which a list of corrections leads; "" if neither pattern has one.
func (l *Language) ErrataSpan(old, new *plan.Pattern) string {
	was, is := lower(l.Edition(old)), lower(l.Edition(new))
	switch {
	case was == "" || is == "":
		return upper(was + is)
	case was == is:
		return fill(l.voice.line(errataWithin), is).String()
	}
	if strings.Contains(was, ",") {
		was += ","
	}
	return fill(l.voice.line(errataSpan), was, is).String()
}

// SizesNamed names some sizes of a pattern: "Size 2 y", "Sizes 2 y and 3 y".
func (l *Language) SizesNamed(p *plan.Pattern, sizes []int) string {
	var names []string
	for _, z := range sizes {
		names = append(names, l.SizeName(p.Sizes[z]))
	}
	if len(names) == 1 {
		return upper(l.InSize(p.Sizes[sizes[0]]))
	}
	return upper(fill(l.voice.line(subjectSizes), l.voice.sizeList(names)).String())
}

// StepLabel is the label of a step in one line, with the numbers of all sizes: "Round 12 (12, 14)".
func (l *Language) StepLabel(p *plan.Pattern, st StepText) rich.Text {
	if st.Slots == nil {
		return st.Label
	}
	return merge(join(tie, st.Label, l.BySize(p, st.Slots)))
}

// CountLine is a count in one line: 64 (66, 68) dc; nil where there is none.
func (l *Language) CountLine(p *plan.Pattern, c *CountText) rich.Text {
	switch {
	case c == nil:
		return nil
	case c.Slots != nil:
		return merge(join(tie, l.BySize(p, c.Slots), c.Unit))
	}
	return c.Line
}

// Numbered is the label of some rows of a part: "Rounds 13–30".
func (l *Language) Numbered(part *plan.Part, first, last int) string {
	return l.voice.label(part.Style != plan.Rows, first, last).String()
}

// GaugeOf writes a gauge of a pattern: 20 dc and 10 rounds = 10 cm (4 in).
func (l *Language) GaugeOf(p *plan.Pattern, g plan.Gauge) rich.Text {
	return paragraph(l.context(p, nil, nil).gauge(g))
}

// HooksOf lists the hooks of a pattern.
func (l *Language) HooksOf(p *plan.Pattern) rich.Text { return l.context(p, nil, nil).hooksFact() }

// NotionsOf says what is needed besides yarn and hook.
func (l *Language) NotionsOf(p *plan.Pattern) rich.Text {
	return paragraph(l.context(p, nil, nil).notions())
}

// GaugeHead, HookHead and NotionsHead are what these are headed by.
func (l *Language) GaugeHead() string { return upper(l.voice.line(factGauge)) }

// HookHead heads the hooks.
func (l *Language) HookHead(p *plan.Pattern) string { return upper(l.voice.line(hooksHead(p))) }

// NotionsHead heads what is needed besides.
func (l *Language) NotionsHead() string { return upper(l.voice.line(sideNotions)) }

// YarnKind says what a yarn is: its class, its fibres and what a ball holds.
func (l *Language) YarnKind(p *plan.Pattern, y plan.Yarn) rich.Text {
	c := l.context(p, nil, nil)
	var out []rich.Text
	if y.Weight != "" {
		out = append(out, rich.T(l.WeightName(y.Weight)))
	}
	if len(y.Fibre) > 0 {
		out = append(out, c.shares(y.Fibre))
	}
	if y.BallWeight > 0 || y.BallLength > 0 {
		out = append(out, l.ball(y))
	}
	return merge(join(", ", out...))
}

// AmountOf says how much of a yarn is needed, as the pages do: 3 balls, 350 m (385 yd); in grams if one of these is not known.
func (l *Language) AmountOf(a plan.YarnAmount) rich.Text {
	var out []rich.Text
	if a.Balls > 0 {
		out = append(out, l.voice.balls(a.Balls, a.Balls, 1))
	}
	if a.Balls == 0 || a.Length <= 0 {
		out = append(out, rich.T(l.Number(float64(a.Milligrams)/1000, 0)+tie+"g"))
	}
	if a.Length > 0 {
		m := l.Number(metres(a.Length), 0) + tie + "m"
		if l.voice.inches() {
			m += " (" + l.Number(float64(a.Yards), 0) + tie + l.yardSign() + ")"
		}
		out = append(out, rich.T(m))
	}
	return merge(join(", ", out...))
}

// AmountsOf says how much of a yarn all sizes need: 2 to 3 balls, 235 (275, 315) m.
func (l *Language) AmountsOf(p *plan.Pattern, list []plan.YarnAmount) rich.Text {
	var out []rich.Text
	lo, hi := list[0].Balls, 0
	var grams, length []string
	for _, a := range list {
		lo, hi = min(lo, a.Balls), max(hi, a.Balls)
		grams = append(grams, l.Number(float64(a.Milligrams)/1000, 0))
		if a.Length > 0 {
			length = append(length, l.Number(metres(a.Length), 0))
		}
	}
	if lo > 0 {
		out = append(out, l.voice.balls(lo, hi, 1))
	}
	if lo <= 0 || len(length) < len(list) {
		out = append(out, join(tie, l.BySize(p, grams), rich.T("g")))
	}
	if len(length) == len(list) {
		out = append(out, join(tie, l.BySize(p, length), rich.T("m")))
	}
	return merge(join(", ", out...))
}

// LengthsOf writes a length of all sizes in the units of the language.
func (l *Language) LengthsOf(p *plan.Pattern, list plan.Lengths) rich.Text {
	return l.context(p, nil, nil).both(list)
}

// LengthOf writes a length in the units of the language: 57 cm (22½ in).
func (l *Language) LengthOf(p *plan.Pattern, v plan.Length) rich.Text {
	return l.context(p, nil, nil).both(plan.Lengths{v})
}

// AgeOf writes the age of the wearer in months, "" if it is not said.
func (l *Language) AgeOf(s plan.Size) rich.Text {
	if s.Age < 0 {
		return nil
	}
	figures := l.integer(s.Age)
	if s.AgeTo > s.Age {
		figures = l.voice.span(figures, l.integer(s.AgeTo), "")
	}
	return l.voice.inUnit(rich.T(strings.TrimRight(figures, tie+" ")), plan.InMonths, s.Age == 1 && s.AgeTo <= 1)
}

// SpecialOf explains a stitch of the designer's own.
func (l *Language) SpecialOf(p *plan.Pattern, id stitch.ID) rich.Text {
	for _, s := range l.Specials(p) {
		if s.Form.ID == id {
			return s.Text
		}
	}
	return nil
}

// List writes texts as one: a, b and c.
func (l *Language) List(texts []string) string {
	out := make([]rich.Text, len(texts))
	for i, t := range texts {
		out[i] = rich.T(t)
	}
	return l.voice.and(slices.Clip(out)).String()
}
