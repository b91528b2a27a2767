package words

import (
	"ovillo/compile/plan"
	"ovillo/render/rich"
)

func (e *english) meet(before, name rich.Text) (rich.Text, rich.Text) { return before, name }

func (e *english) inUnit(figures rich.Text, u plan.AmountUnit, one bool) rich.Text {
	switch {
	case u == plan.InPercent:
		return fill("{}%", figures)
	case u == plan.InGrams:
		return fill("{}"+tie+"g", figures)
	case u == plan.InMonths && one:
		return fill("{}"+tie+"month", figures)
	case u == plan.InMonths:
		return fill("{}"+tie+"months", figures)
	}
	return figures
}
