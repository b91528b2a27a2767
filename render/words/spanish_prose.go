package words

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// meet contracts de el and a el.
func (s *spanish) meet(before, name rich.Text) (rich.Text, rich.Text) {
	rest, article := strings.CutPrefix(name.String(), "el ")
	n := len(before)
	if !article || n == 0 {
		return before, name
	}
	text, open := strings.CutSuffix(before[n-1].Text, " ")
	last := strings.ToLower(text[strings.LastIndexAny(text, " \n(")+1:])
	if !open || last != "de" && last != "a" {
		return before, name
	}
	before = slices.Clone(before)
	before[n-1].Text = text + "l "
	return before, rich.T(rest)
}

func (s *spanish) inUnit(figures rich.Text, u plan.AmountUnit, one bool) rich.Text {
	switch {
	case u == plan.InPercent:
		return fill("{}"+tie+"%", figures)
	case u == plan.InGrams:
		return fill("{}"+tie+"g", figures)
	case u == plan.InMonths && one:
		return fill("{}"+tie+"mes", figures)
	case u == plan.InMonths:
		return fill("{}"+tie+"meses", figures)
	}
	return figures
}
