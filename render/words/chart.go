package words

import (
	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// cells writes a stretch of a row from a chart: where its stitches go, and then how many of them are in which yarn.
func (c *context) cells(in *plan.Instr) item {
	at := *in
	at.N = in.Cells
	head := c.l.voice.work(working{form: c.form(in.Form), post: in.Form.Post, loop: in.Form.Loop, per: c.per(nil), at: c.spot(&at)})
	return item{text: fill("{}: {}", head, c.inYarns(in.Body)), heavy: true, lists: true}
}

// inYarns writes runs of stitches by their yarns: 3 in sand, 1 in kelp.
func (c *context) inYarns(work []plan.Instr) rich.Text {
	var texts []rich.Text
	for i := range work {
		in := &work[i]
		switch {
		case c.idle(in):
		case in.Op == plan.Repeat && c.num(in.N).one() && !c.num(in.N).gaps():
			texts = append(texts, c.inYarns(in.Body))
		case in.Op == plan.Repeat:
			texts = append(texts, c.l.voice.repeat(c.inYarns(in.Body), c.num(in.N), spot{reach: plan.Times}))
		default:
			texts = append(texts, c.l.voice.inYarn(c.num(in.N), c.yarn(in.Yarn)))
		}
	}
	return join(", ", texts...)
}

// readsChart says which row of a chart the row is worked from, and how that is read.
func (c *context) readsChart(r *plan.Row) rich.Text {
	if r.Chart == nil || r.Chart.Chart >= len(c.p.Charts) {
		return nil
	}
	name := ""
	if len(c.p.Charts) > 1 {
		name = c.l.ChartTitle(c.p, r.Chart.Chart)
	}
	return c.l.voice.readsChart(name, *r.Chart)
}

// ChartTitle is the printed title of a chart. A pattern with one chart needs none.
func (l *Language) ChartTitle(p *plan.Pattern, i int) string {
	t := l.theName(p.Charts[i].Title)
	switch {
	case t != "":
		return t
	case len(p.Charts) == 1:
		return l.Say(ChartHead)
	}
	return upper(l.theLabel(p.Charts[i].Name))
}
