package words

import (
	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// This file says what goes into one place: a group in brackets, or several stitches of one kind.

// alikeRun is instructions of a group, side by side, that make the same stitch.
type alikeRun struct {
	in    *plan.Instr
	per   plan.Nums // how many stitches
	plain bool      // nothing but their number is to be said of them
	named string    // the name of one of them, with article; "" if none has any
	nth   int       // and which of them it is
}

// alike puts the stitches of a group together that are alike.
func (c *context) alike(work []plan.Instr) []alikeRun {
	var out []alikeRun
	for i := range work {
		in := &work[i]
		if c.idle(in) {
			continue
		}
		r := alikeRun{in: in, per: c.product(in.N, in.Per), plain: in.Op == plan.Work && in.Yarn < 0}
		n, same := c.per(r.per).same()
		if name := c.l.theName(in.Called); name != "" && same && n == 1 {
			r.named, r.nth = name, 1
		}
		if k := len(out) - 1; k >= 0 && r.plain && out[k].plain && out[k].in.Form == in.Form && same && (r.named == "" || out[k].named == "") {
			if before, ok := c.per(out[k].per).same(); ok {
				if r.named != "" {
					out[k].named, out[k].nth = r.named, before+1
				}
				out[k].per = c.same(before + n)
				continue
			}
		}
		out = append(out, r)
	}
	return out
}

// inside writes what goes into one place: stitches and chains, without saying where.
func (c *context) inside(work []plan.Instr) rich.Text {
	var texts []rich.Text
	for _, r := range c.alike(work) {
		if r.in.Op == plan.Work {
			texts = append(texts, c.l.voice.work(working{form: c.form(r.in.Form), per: c.per(r.per), at: spot{reach: nowhere}}))
			continue
		}
		texts = append(texts, c.sized(c.item(r.in)))
	}
	return join(", ", texts...)
}

// inOne writes a group in one place. Stitches of one kind alone need no brackets, but it is said which of them has a name.
func (c *context) inOne(in *plan.Instr, s spot) rich.Text {
	runs := c.alike(in.Body)
	if len(runs) != 1 || !runs[0].plain {
		return c.l.voice.inOne(c.inside(in.Body), s.n, s)
	}
	r := runs[0]
	f := c.form(r.in.Form)
	text := c.l.voice.work(working{form: f, post: r.in.Form.Post, loop: r.in.Form.Loop, per: c.per(r.per), at: s})
	if n, _ := c.per(r.per).same(); r.named != "" && n > 1 && c.said.once("one of "+r.named) {
		text = c.l.voice.called(text, c.l.voice.whichOne(r.nth, n, f, r.named))
	}
	return text
}
