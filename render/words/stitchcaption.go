package words

import (
	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// StitchCaption says below chart i of p.Drawn what it is, how it is read, and what of the work it does not show: repeats that are
// left out, and sizes that look otherwise.
func (l *Language) StitchCaption(p *plan.Pattern, i int) rich.Text {
	c := p.Drawn[i]
	z := c.Drawn(p.Shown)
	if z < 0 {
		return nil
	}
	s := c.Sizes[z]
	key := StitchRowsCaption
	switch {
	case s.Outward:
		key = StitchRoundsCaption
	case len(s.Lines) > 1 && s.Lines[1].Closed:
		key = StitchLevelsCaption
	}
	out := l.SayWith(key, l.StitchChartTitle(p, i))
	if s.Left > 0 {
		out += " " + l.Say(FewerRepeats)
	}
	if !c.Same && len(p.Sizes) > 1 {
		out += " " + l.SayWith(DrawnForSize, l.InSize(p.Sizes[z]))
	}
	return rich.T(out)
}
