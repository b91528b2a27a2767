package words

import (
	"fmt"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// block writes rows that are worked over and over: how often in all, then each row by its place in the group.
func (c *context) block(b *plan.Block) StepText {
	st := StepText{Only: c.only(), Count: c.count(b.Counts)}
	st.Label, st.Slots = c.label(b.First, b.Last, nil)
	st.Label = merge(st.Label)
	total, sure := c.groupSize(b)
	head := c.l.voice.blockHead(total, c.round(), c.num(b.Times))
	if sure && total == 1 {
		st.Body = paragraph(join(" ", append(c.sentences(b.Rows[0], fill("{}: ", head), nil), c.takenOut(b.Drop, true), c.stripes(b.Stripes), c.change(b.Change), c.tall(b.Tall))...))
		return st
	}
	body := []rich.Text{sentence(head)}
	c.before = map[string]int{}
	at := 1
	for i, r := range b.Rows {
		c.flat = r.Flat
		if !sure {
			c.nth = 0
			body = append(body, join(" ", c.sentences(r, c.l.voice.blockTimes(i == 0, c.per(r.Times), c.round()), nil)...))
			continue
		}
		n, _ := c.rowTimes(r)
		c.nth = at
		body = append(body, join(" ", c.sentences(r, c.l.voice.blockRow(c.round(), at, at+n-1, c.rowName(r)), nil)...))
		at += n
	}
	if t := c.takenOut(b.Drop, true); t != nil {
		body = append(body, t)
	}
	if t := c.stripes(b.Stripes); t != nil {
		body = append(body, t)
	}
	if t := c.change(b.Change); t != nil {
		body = append(body, t)
	}
	if t := c.tall(b.Tall); t != nil {
		body = append(body, t)
	}
	st.Body = paragraph(join(between(b), body...))
	return st
}

// between is what parts the rows of a block from one another. Three and more each begin a line of their own, so that a
// maker finds the one at hand.
func between(b *plan.Block) string {
	if len(b.Rows) > 2 {
		return "\n"
	}
	return " "
}

// longRow is the length from which a row of a block that reads like one before is only compared with it.
const longRow = 100

// likeBefore returns the place in the block of an earlier row that is worked in the same way, if that saves words; else
// it is 0, and the row is remembered. Where nothing is abbreviated every row is written out.
func (c *context) likeBefore(r *plan.Row) int {
	if c.nth == 0 || r.Begin.FromHook > 0 || c.l.read.manner.Full {
		return 0
	}
	c.worked, c.said = false, &said{}
	b := r.Begin
	key := fmt.Sprint(b.Chains, b.And, b.Counts, b.As, b.OtherYarn, b.Yarn, r.Join, r.Turn, r.MarksUp, r.Drop, run(c.items(r.Work)).String())
	if nth, ok := c.before[key]; ok && len(key) > longRow {
		return nth
	}
	if _, ok := c.before[key]; !ok {
		c.before[key] = c.nth
	}
	return 0
}

// rowName is the printed name of a row inside a sentence, without its article.
func (c *context) rowName(r *plan.Row) string {
	name := c.l.theName(r.Called)
	if name == "" {
		return ""
	}
	return lower(c.l.voice.bare(name))
}

func (c *context) rowTimes(r *plan.Row) (int, bool) {
	if r.Times == nil {
		return 1, true
	}
	return c.num(r.Times).same()
}

// groupSize is how many rows one pass of a block has, if it is the same in every size.
func (c *context) groupSize(b *plan.Block) (int, bool) {
	total := 0
	for _, r := range b.Rows {
		n, ok := c.rowTimes(r)
		if !ok {
			return 0, false
		}
		total += n
	}
	return total, true
}
