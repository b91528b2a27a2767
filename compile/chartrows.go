package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file works the rows of a chart one after the other, from row 1 up, the number of times that is said.

// chartRows works the rows of a chart.
func (p *partState) chartRows(n *lang.Row, mask []bool) {
	if mask = p.live(mask); !p.started || !some(mask) {
		p.rowTimes(n, mask, nil) // it says what is missing
		return
	}
	c, f := p.c, n.Head.From
	ch := c.chartNamed(f.Chart)
	if ch == nil {
		p.halt(mask)
		return
	}
	seq, times, list := p.chartSlice(f, ch, mask), p.chartTimes(f), c.chartList(n, ch)
	if seq == nil || times == nil || list == nil {
		p.halt(mask)
		return
	}
	defer func() { p.chart, p.final = nil, nil }()
	for _, group := range p.bySide(ch, seq, mask) {
		p.chartPasses(n, ch, seq, times, list, group)
	}
}

// bySide parts the sizes of a mask by the side that the first row shows: they read the chart the other way, and print apart. A
// chart whose rows read the same from both ends parts nobody.
func (p *partState) bySide(ch *chart, seq [][]int, mask []bool) [][]bool {
	right, wrong := make([]bool, p.c.z), make([]bool, p.c.z)
	for z, on := range mask {
		right[z], wrong[z] = on && !p.wrong[z], on && p.wrong[z]
	}
	alike := true
	for z, on := range mask {
		for i := 0; on && i < len(seq[z]); i++ {
			alike = alike && slices.Equal(ch.Rows[seq[z][i]], ch.fromRight(seq[z][i]))
		}
	}
	switch {
	case alike || !some(right) || !some(wrong):
		return [][]bool{mask}
	case firstOf(wrong) < firstOf(right):
		return [][]bool{wrong, right}
	}
	return [][]bool{right, wrong}
}

// chartPasses works the rows of a chart as often as is said, in sizes that print together.
func (p *partState) chartPasses(n *lang.Row, ch *chart, seq [][]int, times plan.Nums, list *lang.List, mask []bool) {
	c, pass := p.c, 0
	p.block(times, mask, &lang.Statement{Head: n.Head.Span()}, func(now []bool) {
		from := len(p.plan.Steps)
		for i := range maxLen(seq, now) {
			for _, group := range sameRowOf(seq, now, i) {
				row := *n
				row.List, row.Claims = list, nil
				p.chart, p.final = &fromChart{ch, seq[firstOf(group)][i]}, make([]bool, c.z)
				for z, on := range group {
					if p.final[z] = on && i == len(seq[z])-1 && pass == times[z]-1; p.final[z] {
						row.Claims = n.Claims
					}
				}
				p.rowTimes(&row, group, nil)
			}
		}
		p.gatherRows(from)
		pass++
	})
}

// maxLen is the length of the longest list of the sizes of a mask.
func maxLen(seq [][]int, mask []bool) int {
	m := 0
	for z, on := range mask {
		if on {
			m = max(m, len(seq[z]))
		}
	}
	return m
}

func firstOf(mask []bool) int {
	for z, on := range mask {
		if on {
			return z
		}
	}
	return 0
}

// sameRowOf parts the sizes of a mask by the row of the chart that comes at number i in each.
func sameRowOf(seq [][]int, mask []bool, i int) [][]bool {
	at := map[int][]bool{}
	var out [][]bool
	for z, on := range mask {
		if !on || i >= len(seq[z]) {
			continue
		}
		group := at[seq[z][i]]
		if group == nil {
			group = make([]bool, len(mask))
			at[seq[z][i]] = group
			out = append(out, group)
		}
		group[z] = true
	}
	return out
}

// chartSlice lists, for each size, the rows of the chart that are worked, from 0 and in their order. Rows from 7 to 1 are read
// downwards.
func (p *partState) chartSlice(f *lang.FromChart, ch *chart, mask []bool) [][]int {
	c := p.c
	first, last := c.nums(1), c.nums(max(len(ch.Rows), 1))
	if f.First != nil {
		if first = c.cnt(f.First, p.lex); first == nil {
			return nil
		}
		last = first
	}
	if f.Last != nil {
		if last = c.cnt(f.Last, p.lex); last == nil {
			return nil
		}
	}
	out := make([][]int, c.z)
	for z, on := range mask {
		if !on {
			continue
		}
		for _, k := range []int{first[z], last[z]} {
			if k < 1 || k > len(ch.Rows) {
				c.say(codeChartRow, f.Span(), diag.Args{"have": len(ch.Rows), "need": k})
				return nil
			}
		}
		step := 1
		if first[z] > last[z] {
			step = -1
		}
		for k := first[z]; ; k += step {
			if out[z] = append(out[z], k-1); k == last[z] {
				break
			}
		}
	}
	return out
}

// chartTimes is how often the rows are worked.
func (p *partState) chartTimes(f *lang.FromChart) plan.Nums {
	if f.Times == nil {
		return p.c.nums(1)
	}
	t := p.c.cnt(f.Times, p.lex)
	for _, v := range t {
		if v > maxRows {
			p.c.tooManyRows(f.Times, v, "repeat")
			return nil
		}
	}
	return t
}

// chartList is what a row from a chart works: what it says, or the squares of a mesh across the whole row. It is nil, and that is
// reported, if the row does not say which stitch is worked by the chart.
func (c *checker) chartList(n *lang.Row, ch *chart) *lang.List {
	at := n.Head.At
	switch {
	case n.List == nil && ch.Mesh.Behind > 0:
		return &lang.List{At: at, Items: []lang.Item{&lang.Work{At: at, Stitch: &lang.Name{At: at, Text: ch.word},
			Chart: &lang.ByChart{At: at}, End: &lang.RepEnd{At: at, Full: "across"}}}}
	case n.List != nil && usesChart(n.List):
		return n.List
	}
	c.say(codeChartList, n.Head.Span(), diag.Args{"chart": ch.Name})
	return nil
}

// usesChart reports whether something of a row is worked by the chart of its header.
func usesChart(l *lang.List) bool {
	found := false
	lang.Inspect(l, func(n lang.Node) bool {
		_, is := n.(*lang.ByChart)
		found = found || is
		return true
	})
	return found
}

// chartHeight is the height of the rows of a chart by their gauge, in micrometres: part of what a repeat for a length divides by.
// ok is false for rows of no known height; that is reported.
func (p *partState) chartHeight(n *lang.Row, mask []bool) (height float64, ok bool) {
	ch := p.c.chartNamed(n.Head.From.Chart)
	if ch == nil {
		return 0, false
	}
	seq, times, list := p.chartSlice(n.Head.From, ch, mask), p.chartTimes(n.Head.From), p.c.chartList(n, ch)
	if seq == nil || times == nil || list == nil {
		return 0, false
	}
	p.chart = &fromChart{ch, 0}
	low := p.c.lower(p, list, mask)
	p.chart = nil
	op, _ := firstStitch(low.ops)
	if op == nil {
		return 0, false
	}
	h, ok := p.rowHeight(op.Form.ID, n.Head, n.Head)
	if !ok {
		return 0, false
	}
	return h * float64(maxLen(seq, mask)*maxOf(times, mask)), true
}

// chainCell refuses a row into the chain of the start whose skipped chains are its first stitch, and the chart's first cell, if
// the chain is of another yarn: no maker can work that cell.
func (p *partState) chainCell(w *working) {
	first := w.kick.first
	if first == nil || first.Kind != fabric.ByCell || first.Cells.Behind > 0 || !w.kick.begin.Counts || !p.alongChain() {
		return
	}
	bad := newSpread(p.c)
	want := -1
	for z, begins := range w.begin() {
		if !begins || p.fab[z].Halted() {
			continue
		}
		if codes := w.first[z].Traces[first.Index].Worked.Codes; len(codes) > 0 && codes[0] != p.plan.Start.Yarn {
			want = codes[0]
			bad.add(z, 0, 0)
			p.fab[z].Halt()
		}
	}
	if bad.any() {
		p.c.report(diag.Diagnostic{Code: codeChartStart, Span: first.Span, Sizes: bad.sizes(), Args: diag.Args{
			"yarn": p.c.yarnName(p.plan.Start.Yarn), "want": p.c.yarnName(want), "n": w.kick.begin.Chains, "stitch": p.c.word(first.Form.ID)}})
	}
}

// yarnName is the name of a yarn in the source, "" for none.
func (c *checker) yarnName(i int) string {
	if i < 0 || i >= len(c.pat.Yarns) {
		return ""
	}
	return c.pat.Yarns[i].Name
}

// gatherRows makes one printed step of neighbours, from a step on, that are worked from a chart and read the same.
func (p *partState) gatherRows(from int) {
	out := p.plan.Steps[:from] // in place: a chart may be worked very often
	for _, s := range p.plan.Steps[from:] {
		b, ok := s.(*plan.Row)
		if ok && len(out) > from {
			if a, isRow := out[len(out)-1].(*plan.Row); isRow && gathers(a, b) {
				continue
			}
		}
		out = append(out, s)
	}
	p.plan.Steps = out
}

// gathers puts a row into the one before it, if they read the same and follow each other in every size.
func gathers(a, b *plan.Row) bool {
	if a.Chart == nil || b.Chart == nil || a.Chart.Chart != b.Chart.Chart || a.Chart.Seam != b.Chart.Seam || len(a.For) != len(b.For) {
		return false
	}
	as := *b
	as.Chart, as.Times = a.Chart, a.Times
	if !sameRow(a, &as) || !sameCounts(a.Counts, b.Counts) {
		return false
	}
	for z := range a.First {
		if (a.First[z] == plan.Absent) != (b.First[z] == plan.Absent) || b.First[z] != plan.Absent && b.First[z] != a.Last[z]+1 {
			return false
		}
	}
	a.Last, a.Tall, a.Sided = b.Last, b.Tall, false
	times, one := append(plan.Nums(nil), a.Times...), *a.Chart
	for z := range times {
		if times[z] != plan.Absent {
			times[z] += b.Times[z]
		}
	}
	one.Last = b.Chart.Last
	if one.Read != b.Chart.Read {
		one.Read = plan.EitherWay
	}
	a.Times, a.Chart = times, &one
	return true
}
