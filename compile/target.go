package compile

import (
	"ovillo/compile/fabric"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// target lowers where an instruction works.
func (w *lowerer) target(o *fabric.Op, n *lang.Target) {
	o.Target.Takes = fabric.Stitches
	switch {
	case n == nil:
		w.bad = true
	case n.In != nil:
		w.in(o, n.In)
	case n.Between != nil:
		o.Target.Kind, o.Target.Takes = fabric.Each, fabric.Gaps
		if n.Between.Bound != nil {
			w.bound(&o.Target.Bound, n.Between.Bound)
		}
	case n.Through != nil:
		o.Target.Kind, o.Target.Ref = fabric.Through, w.ref(n.Through)
	case n.Prep == "below":
		o.Target.Kind, o.Target.Ref = fabric.Below, w.ref(n.Run)
	default:
		o.Target.Kind, o.Target.Ref = fabric.Beside, w.ref(n.Run)
	}
}

func (w *lowerer) in(o *fabric.Op, n *lang.In) {
	t := &o.Target
	switch {
	case n.Next != nil:
		w.inNext(o, n.Next)
	case n.Each != nil:
		w.inEach(o, n.Each)
	case n.First:
		t.Kind = fabric.First
	case n.Last:
		t.Kind, o.N = fabric.Last, w.cnt(n.LastN, 1)
	case n.Same:
		t.Kind = fabric.Same
	case n.Ring:
		t.Kind = fabric.InRing
	case n.Marker:
		t.Kind = fabric.InMarked
	case n.Gap:
		t.Kind = fabric.GapHere
	default:
		t.Kind, t.Ref = fabric.Named, w.ref(n.Run)
	}
}

// inNext lowers in next …; a lone name is a count if it has a value, else a kind of place.
func (w *lowerer) inNext(o *fabric.Op, n *lang.InNext) {
	t := &o.Target
	o.N = w.cnt(n.N, 1)
	if n.Ref != nil {
		if name := n.Ref.Path[0]; n.N == nil && len(n.Ref.Path) == 1 && w.isValue(name) && !w.p.names[name] {
			o.N = w.count(&lang.Expr{At: n.Ref.At, Op: lang.OpName, Text: name, Path: n.Ref.Path}, 1)
		} else {
			t.Kind, t.Ref = fabric.NextNamed, w.ref(n.Ref)
		}
	}
	if n.Kinds != nil {
		if n.Kinds.A == "left" {
			t.Kind = fabric.UnworkedNext
			return
		}
		t.Takes = w.takes(n.Kinds)
		if n.Kinds.Of != nil {
			t.Of = w.cnt(n.Kinds.Of, 1)
		}
	}
	if n.Depth != nil {
		if d := w.cnt(n.Depth, 1); len(d) > 0 {
			t.Deep = d[0]
		}
	}
}

func (w *lowerer) isValue(name string) bool {
	_, ok := w.c.lets[name]
	return ok
}

func (w *lowerer) inEach(o *fabric.Op, n *lang.InEach) {
	t := &o.Target
	switch {
	case n.OfNext != nil:
		o.N = w.cnt(n.OfNext, 1)
		return
	case n.Ref != nil:
		t.Kind, t.Ref = fabric.NamedEach, w.ref(n.Ref)
		if n.Bound != nil {
			w.say(codeBoundOfRun, n.Bound.Span(), diag.Args{"name": t.Ref.Name})
		}
		return
	}
	t.Kind = fabric.Each
	if n.Kinds != nil {
		if n.Kinds.A == "left" {
			t.Kind = fabric.UnworkedEach
			return
		}
		t.Takes = w.takes(n.Kinds)
	}
	if n.Bound != nil {
		w.bound(&t.Bound, n.Bound)
	}
}

// takes says what counts as a place.
func (w *lowerer) takes(k *lang.Kinds) fabric.Takes {
	t := takesOf(k.A)
	if k.B != "" {
		t |= takesOf(k.B)
	}
	if t == fabric.InChains {
		t |= fabric.Stitches // the chains of a foundation are plain places
	}
	return t
}

func takesOf(word string) fabric.Takes {
	switch word {
	case "space", "spaces":
		return fabric.Spaces
	case "chain", "chains":
		return fabric.InChains
	case "gap", "gaps":
		return fabric.Gaps
	}
	return fabric.Stitches
}

// chartRow works one line of a chart: stitches of the base stitch in the yarns of its cells.
func (w *lowerer) chartRow(n *lang.ChartRow) *fabric.Op {
	ch := w.c.charts[n.Chart.Text]
	if ch == nil {
		w.say(codeNoName, n.Chart.Span(), diag.Args{"word": n.Chart.Text, "near": lang.Near(n.Chart.Text, w.c.chartNames())})
		return nil
	}
	if ch.bad {
		w.bad = true // said where the chart stands
		return nil
	}
	if w.p.base == "" {
		w.say(codeNoBase, n.Span(), diag.Args{"word": n.Chart.Text})
		return nil
	}
	row := w.cnt(n.Row, 1)
	k, same := row.Same()
	if !same || k < 1 || k > len(ch.rows) {
		w.say(codeChartRow, n.Span(), diag.Args{"have": len(ch.rows), "need": k})
		return nil
	}
	o := w.op(fabric.Repeat, n)
	o.N = w.c.nums(1)
	for _, run := range ch.runs(k-1, w.p.facesWrong()) {
		b := w.op(fabric.Work, n)
		b.Form.ID, b.Form.Together = w.p.base, 1
		b.N, b.Yarn, b.Target.Takes = w.c.nums(run.n), run.yarn, fabric.Stitches
		o.Body = append(o.Body, b)
	}
	if n.End != nil {
		w.repEnd(o, n.End)
	}
	return o
}

// chart is a grid of cells, row 1 at the bottom, as the right side looks.
type chart struct {
	rows [][]int // yarns, from the left
	bad  bool
}

type run struct{ n, yarn int }

// runs are the cells of a row in the order they are worked: from the right on a row that shows the right side, from the
// left on one that shows the wrong side.
func (ch *chart) runs(row int, wrong bool) []run {
	var out []run
	cells := ch.rows[row]
	for i := range cells {
		y := cells[i]
		if !wrong {
			y = cells[len(cells)-1-i]
		}
		if k := len(out); k > 0 && out[k-1].yarn == y {
			out[k-1].n++
			continue
		}
		out = append(out, run{1, y})
	}
	return out
}

func (c *checker) chartNames() []string {
	var out []string
	for n := range c.charts {
		out = append(out, n)
	}
	return out
}

// readChart reads the grid of a chart.
func (c *checker) readChart(s *lang.Statement, n *lang.Chart) *chart {
	ch := &chart{}
	legend := map[rune]int{}
	for _, b := range s.Body {
		if l, ok := b.Node.(*lang.Legend); ok {
			for _, it := range l.Items {
				for _, r := range it.Mark.Text {
					legend[r] = c.yarn(it.Yarn)
				}
			}
		}
	}
	for i := len(s.Lines) - 1; i >= 0; i-- {
		var cells []int
		for _, r := range s.Lines[i].Text {
			if r == ' ' || r == '\t' {
				continue
			}
			y, ok := legend[r]
			if !ok {
				c.say(codeChartMark, s.Lines[i].Span, diag.Args{"mark": string(r)})
				ch.bad = true
				return ch
			}
			cells = append(cells, y)
		}
		ch.rows = append(ch.rows, cells)
		if len(cells) != len(ch.rows[0]) {
			ch.bad = true
			c.say(codeChartWidth, s.Lines[i].Span, diag.Args{"need": len(ch.rows[0]), "have": len(cells)})
		}
	}
	return ch
}
