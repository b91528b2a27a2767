package compile

import (
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file lowers what is worked by a chart.

// fromChart is the row of a chart from which a row of the part is worked.
type fromChart struct {
	*chart
	row int // from 0
}

// chartRow lowers a row of a chart that an instruction names: its cells are worked in the base stitch, or in its squares.
func (w *lowerer) chartRow(n *lang.ChartRow) *fabric.Op {
	ch := w.c.chartNamed(n.Chart)
	if ch == nil {
		w.bad = true
		return nil
	}
	if ch.Mesh.Behind == 0 && w.p.base == "" {
		w.say(codeNoBase, n.Span(), diag.Args{"word": n.Chart.Text})
		return nil
	}
	k, same := w.cnt(n.Row, 1).Same()
	if !same || k < 1 || k > len(ch.Rows) {
		w.say(codeChartRow, n.Span(), diag.Args{"have": len(ch.Rows), "need": k})
		return nil
	}
	o := w.byCell(n, fromChart{ch, k - 1})
	o.Form = ch.Mesh.Form
	if ch.Mesh.Behind == 0 {
		o.Form = stitch.Form{ID: w.p.base, Together: 1}
	}
	w.cellsTo(o, ch, n.End)
	return o
}

// byCell makes the operation that works a row of a chart.
func (w *lowerer) byCell(at lang.Node, from fromChart) *fabric.Op {
	o := w.op(fabric.ByCell, at)
	o.Cells = &fabric.Cells{Chart: w.c.useChart(from.chart), Row: from.row + 1, Of: from.fromRight(from.row),
		Behind: from.Mesh.Behind, Turned: w.turned}
	return o
}

// cellsTo reads how far the cells go: once over the chart if nothing is said.
func (w *lowerer) cellsTo(o *fabric.Op, ch *chart, e *lang.RepEnd) {
	if e == nil {
		o.N = w.c.nums(ch.width())
		return
	}
	w.repEnd(o, e)
	if e.N == nil {
		return
	}
	times := o.N
	o.N = w.c.nums(plan.Absent)
	for z, t := range times {
		if t != plan.Absent {
			o.N[z] = min(t, maxInstructions) * ch.width()
		}
	}
}

// byChart lowers a stitch that is worked by the chart the row is from.
func (w *lowerer) byChart(n *lang.Work) *fabric.Op {
	if w.p.chart == nil {
		w.say(codeChartNone, n.Chart.Span(), nil)
		return nil
	}
	ch := w.p.chart.chart
	form, ok := stitch.Form{}, false
	if n.Stitch != nil && n.Stitch.Text != "inc" && n.Stitch.Text != "dec" {
		if form, ok = w.c.form(n.Stitch.Text); !ok {
			w.bad = true
			w.c.unknownStitch(n.Stitch)
			return nil
		}
	}
	own, isOwn := w.c.own[form.ID]
	if !ok || n.N != nil || n.Tog || n.Spread != nil || n.Cross != "" || n.With != nil || form.Together > 1 || isOwn && own.Makes != 1 {
		w.say(codeChartStitch, n.Span(), diag.Args{"stitch": w.c.file.Source.Slice(n.Span())})
		return nil
	}
	form.Loop = loopOf(n)
	if mesh := ch.Mesh; mesh.Behind > 0 && (form != mesh.Form || n.Chart.Centred || n.Chart.Column != nil || n.Target != nil) {
		w.say(codeMeshStitch, n.Span(), diag.Args{"stitch": ch.word})
		return nil
	}
	o := w.byCell(n, *w.p.chart)
	o.Form, o.Label = form, labelOf(n.Label)
	o.Cells.Centred = n.Chart.Centred
	w.column(o, n.Chart, ch)
	if n.Target != nil {
		w.cellsIn(o, n)
	} else {
		w.cellsTo(o, ch, n.End)
	}
	return o
}

// column reads from which column of the chart the stretch starts.
func (w *lowerer) column(o *fabric.Op, n *lang.ByChart, ch *chart) {
	if n.Column == nil {
		return
	}
	at := w.cnt(n.Column, 1)
	bad := newSpread(w.c)
	o.Cells.From = w.c.nums(0)
	for z, k := range at {
		switch {
		case k == plan.Absent || w.bad:
		case k < 1 || k > ch.width():
			bad.add(z, k, ch.width())
		default:
			o.Cells.From[z] = k - 1
		}
	}
	if bad.any() {
		w.bad = true
		w.c.report(diag.Diagnostic{Code: codeChartColumn, Span: n.Column.Span(), Sizes: bad.sizes(),
			Args: diag.Args{"need": bad.per(bad.need), "have": ch.width()}})
	}
}

// cellsIn reads the place of a stitch by chart: so many of the next stitches, or each of them.
func (w *lowerer) cellsIn(o *fabric.Op, n *lang.Work) {
	t := &fabric.Op{}
	w.target(t, n.Target)
	switch {
	case w.bad:
	case t.Target.Takes != fabric.Stitches || t.Target.Deep > 0:
		w.say(codeChartStitch, n.Span(), diag.Args{"stitch": w.c.file.Source.Slice(n.Span())})
	case t.Target.Kind == fabric.Next:
		o.N = t.N
	case t.Target.Kind == fabric.Each:
		o.Bound = t.Target.Bound
	default:
		w.say(codeChartStitch, n.Span(), diag.Args{"stitch": w.c.file.Source.Slice(n.Span())})
	}
}

// byCells lists the operations of a row that are worked by a chart.
func byCells(ops []*fabric.Op, to []*fabric.Op) []*fabric.Op {
	for _, o := range ops {
		if o.Kind == fabric.ByCell {
			to = append(to, o)
		}
		to = byCells(o.Body, to)
	}
	return to
}
