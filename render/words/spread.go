package words

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// spread writes shaping that is spread over a row as the repeats that are worked: longer groups first, or the order in
// which groups of two lengths take turns.
func (c *context) spread(in *plan.Instr) item {
	sp := in.Spread
	if !sp.Alternating {
		items := c.plainFew(in, sp.Before, plan.Next)
		items = append(items, c.items([]plan.Instr{c.group(in, sp.Long, sp.LongPlain), c.group(in, sp.Short, sp.ShortPlain)})...)
		items = append(items, c.plainFew(in, sp.After, c.endOf(in))...)
		return item{text: run(items), heavy: true}
	}
	return item{text: c.alternate(in), heavy: true}
}

// alternate writes groups of two lengths that take turns: the turn that comes again and again, and how often. Sizes
// whose turns differ are written one by one.
func (c *context) alternate(in *plan.Instr) rich.Text {
	sp := in.Spread
	turns := make([]string, len(c.p.Sizes))
	times := c.same(plan.Absent)
	for i := range turns {
		if c.sizes.Has(i) && (sp.Long[i] != plan.Absent || sp.Short[i] != plan.Absent) {
			turns[i], times[i] = unit(turnsOf(max(sp.Long[i], 0), max(sp.Short[i], 0)))
		}
	}
	var done []string
	var texts []rich.Text
	for _, turn := range turns {
		if turn == "" || slices.Contains(done, turn) {
			continue
		}
		done = append(done, turn)
		inner := *c
		inner.sizes = make(plan.Sizes, len(turns))
		for k := range turns {
			inner.sizes[k] = turns[k] == turn
		}
		text := inner.turns(in, turn, times)
		if !sameSizes(inner.sizes, c.sizes) {
			text = c.l.voice.inSizes(text, c.sizeNames(inner.sizes.Has))
		}
		texts = append(texts, text)
	}
	return join("; ", texts...)
}

func sameSizes(a, b plan.Sizes) bool {
	for i := range a {
		if a[i] != b.Has(i) {
			return false
		}
	}
	return true
}

// unit is the shortest text of which another is made, and how many times it stands there.
func unit(s string) (string, int) {
	for n := 1; n < len(s); n++ {
		if len(s)%n == 0 && strings.Repeat(s[:n], len(s)/n) == s {
			return s[:n], len(s) / n
		}
	}
	return s, 1
}

// turnsOf is the order in which long and short groups take turns, as letters: the longer ones are dealt out as evenly as
// they go, as the row was worked.
func turnsOf(long, short int) string {
	order := make([]byte, 0, long+short)
	for l, s := long, short; l+s > 0; {
		if l > 0 && (s == 0 || l*(short+1) >= s*(long+1)-1) {
			order = append(order, 'l')
			l--
			continue
		}
		order = append(order, 's')
		s--
	}
	return string(order)
}

// turns writes a turn of groups, neighbours that are alike as one, and how often it comes.
func (c *context) turns(in *plan.Instr, order string, times plan.Nums) rich.Text {
	sp := in.Spread
	var body []plan.Instr
	for len(order) > 0 {
		n := 1
		for n < len(order) && order[n] == order[0] {
			n++
		}
		plainSts := sp.LongPlain
		if order[0] == 's' {
			plainSts = sp.ShortPlain
		}
		body = append(body, c.group(in, c.same(n), plainSts))
		order = order[n:]
	}
	again := plan.Instr{Op: plan.Repeat, N: times, Reach: plan.Times, Body: body, Marker: -1, Yarn: -1}
	items := c.plainFew(in, sp.Before, plan.Next)
	items = append(items, c.items([]plan.Instr{again})...)
	return run(append(items, c.plainFew(in, sp.After, c.endOf(in))...))
}

// group is so many plain stitches and then the shaping, a number of times.
func (c *context) group(in *plan.Instr, times, plainSts plan.Nums) plan.Instr {
	body := c.plainInstr(in, plainSts)
	shaped := plan.Instr{Op: plan.Work, Form: in.Form, N: c.same(1), Per: c.same(2), Over: in.Over, Marker: -1, Yarn: -1}
	if !in.Spread.Increase {
		f := in.Form
		f.Together = max(f.Together, 2)
		shaped = plan.Instr{Op: plan.Decrease, Form: f, N: c.same(1), Over: in.Over, Marker: -1, Yarn: -1}
	}
	return plan.Instr{Op: plan.Repeat, N: times, Reach: plan.Times, Body: []plan.Instr{body, shaped}, Marker: -1, Yarn: -1}
}

func (c *context) plainFew(in *plan.Instr, n plan.Nums, reach plan.Reach) []item {
	if n == nil {
		return nil
	}
	p := c.plainInstr(in, n)
	p.Reach = reach
	return c.items([]plan.Instr{p})
}

// endOf is how the plain stitches behind the last shaping are pointed at: as the last ones, if the shaping is spread over
// the whole row.
func (c *context) endOf(in *plan.Instr) plan.Reach {
	if in.Reach == plan.ToEnd {
		return plan.Last
	}
	return plan.Next
}

func (c *context) plainInstr(in *plan.Instr, n plan.Nums) plan.Instr {
	f := in.Form
	f.Together = 1
	return plan.Instr{Op: plan.Work, Form: f, N: n, Over: in.Over, Marker: -1, Yarn: -1}
}
