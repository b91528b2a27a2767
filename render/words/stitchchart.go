package words

import (
	"fmt"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// StitchChartTitle is the printed title of chart i of p.Drawn: its own, or else that of the part it is of.
func (l *Language) StitchChartTitle(p *plan.Pattern, i int) string {
	d := p.Drawn[i]
	if t := l.theName(d.Title); t != "" {
		return t
	}
	if d.Part >= 0 && d.Part < len(p.Parts) {
		return l.PartTitle(p, d.Part)
	}
	return upper(l.theLabel(d.Name))
}

// StitchChartRow says in short what a row of a chart in symbols is: its number, its side where the wrong one faces, its stitches.
func (l *Language) StitchChartRow(p *plan.Pattern, line *plan.Line) string {
	c := l.context(oneSize(p), nil, nil)
	head := l.voice.label(line.Closed, line.Number, line.Number)
	if line.Wrong {
		head = fill("{} ({})", head, l.voice.side(true))
	}
	counts := line.Counts
	if len(counts) == 0 {
		counts = countsOf(line)
	}
	return sentence(fill("{}: {}", head, join(", ", c.counts(counts)...))).String()
}

// oneSize is a pattern for figures of the size that is shown, which stand alone.
func oneSize(p *plan.Pattern) *plan.Pattern {
	one := *p
	if p.Shown >= 0 && p.Shown < len(p.Sizes) {
		one.Sizes, one.Shown = p.Sizes[p.Shown:p.Shown+1], 0
	}
	return &one
}

// countsOf counts what a row has where nothing else does.
func countsOf(line *plan.Line) []plan.Count {
	fact := plan.RowFact{}
	for i := range line.Stitches {
		switch w := &line.Stitches[i]; w.Kind {
		case plan.WorkedStitch:
			fact.ByForm.Add(w.Form, 1)
			fact.Stitches++
		case plan.WorkedSpace:
			fact.BySpace.Add(w.Chains, 1)
			fact.Spaces++
		}
	}
	return plan.CountsAfter([]*plan.RowFact{&fact})
}

// StitchName is a stitch by its name and its abbreviation, as the key of a chart has it: "double crochet (dc)".
func (l *Language) StitchName(p *plan.Pattern, f stitch.Form) string {
	c := l.context(p, nil, nil)
	d := l.Drawing()
	short := c.form(f).one
	name := l.voice.formName(f)
	if own := c.own(f.ID); own != nil {
		if name = short[0].Expand; name == "" {
			name = short.String()
		}
	}
	if s := short.String(); s != name && f.Group == stitch.Single {
		name = fill("{} ({})", name, s).String()
	}
	switch f.Loop {
	case stitch.BackLoop:
		return fmt.Sprintf(d.InBackLoop, name)
	case stitch.FrontLoop:
		return fmt.Sprintf(d.InFrontLoop, name)
	case stitch.ThirdLoop:
		return fmt.Sprintf(d.InThirdLoop, name)
	}
	return name
}

// StitchShort is a stitch by its abbreviation.
func (l *Language) StitchShort(p *plan.Pattern, f stitch.Form) string {
	return l.context(p, nil, nil).form(f).one.String()
}
