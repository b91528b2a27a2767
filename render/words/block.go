package words

import (
	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// block writes rows that are worked over and over: how often in all, then each row by its place in the group.
func (c *context) block(b *plan.Block) StepText {
	st := StepText{Only: c.only(), Count: c.count(b.Counts)}
	st.Label, st.Slots = c.label(b.First, b.Last, nil)
	st.Label = merge(st.Label)
	total, sure := c.groupSize(b)
	body := []rich.Text{sentence(c.opened(c.l.voice.blockHead(total, c.round(), c.num(b.Times))))}
	at := 1
	for _, r := range b.Rows {
		if !sure {
			body = append(body, c.sentences(r, nil, c.l.voice.times(c.per(r.Times), c.round()))...)
			continue
		}
		n, _ := c.rowTimes(r)
		body = append(body, c.sentences(r, c.l.voice.blockRow(c.round(), at, at+n-1, c.rowName(r)), nil)...)
		at += n
	}
	if t := c.tall(b.Tall); t != nil {
		body = append(body, t)
	}
	st.Body = paragraph(join(" ", body...))
	return st
}

// rowName is the printed name of a row inside a sentence, without its article.
func (c *context) rowName(r *plan.Row) string {
	name := c.l.read.of(r.Called)
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
