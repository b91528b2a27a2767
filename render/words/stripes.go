package words

import (
	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// stripes says in which yarns the rows of a step are: "Stripes: 1 row in kelp, [2 rows in sand, 2 rows in kelp] 9 times."
func (c *context) stripes(s *plan.Stripes) rich.Text {
	if s == nil {
		return nil
	}
	out := c.stripeList(s.Lead)
	if n := c.num(s.Times); n.some() {
		cycle := c.stripeList(s.Cycle)
		if !n.one() || n.gaps() {
			cycle = []rich.Text{c.l.voice.repeat(join(", ", cycle...), n, spot{reach: plan.Times})}
		}
		out = append(out, cycle...)
	}
	return sentence(c.l.voice.inStripes(append(out, c.stripeList(s.Tail)...)))
}

func (c *context) stripeList(list []plan.Stripe) []rich.Text {
	var out []rich.Text
	for _, s := range list {
		if n := c.num(s.Rows); n.some() {
			out = append(out, c.l.voice.rowsIn(n, c.yarn(s.Yarn), c.round()))
		}
	}
	return out
}
