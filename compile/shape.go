package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file works schedules. A schedule is turned into what a maker would do: so many plain rows, then a shaped one, so
// many times; then the next interval; then the rows that are left over. So it is worked, checked and printed like a
// repeat that was written out.

// interval is a stretch of a schedule: plain rows and a shaped one, some times. Its numbers are one a size.
type interval struct {
	plain, times plan.Nums
}

// schedule is a shape block as it is read.
type schedule struct {
	p             *partState
	s             *lang.Statement
	n             *lang.Shape
	total         plan.Nums
	plain, shaped *lang.ShapeRow
	at            []*lang.ShapeAt
	astray        plan.Nums // the shaped row that shows the wrong side though the right one is asked for; Absent: none
}

// shape works the rows of a schedule.
func (p *partState) shape(s *lang.Statement, n *lang.Shape, mask []bool) {
	mask = p.live(mask)
	if !some(mask) {
		return
	}
	sc := &schedule{p: p, s: s, n: n, total: p.c.cnt(n.N, p.lex)}
	body, claims := splitEnd(s.Body)
	if !sc.read(body) || sc.total == nil {
		p.halt(mask)
		return
	}
	if len(sc.at) > 0 {
		sc.merged(mask)
	} else if steps := sc.intervals(body, mask); steps != nil {
		sc.work(steps, mask)
	} else {
		p.halt(mask)
	}
	p.endClaims(claims, mask, nil, nil)
}

// splitEnd parts the count behind the end of a block from the statements in it.
func splitEnd(body []*lang.Statement) ([]*lang.Statement, *lang.Claims) {
	if k := len(body); k > 0 {
		if e, ok := body[k-1].Node.(*lang.EndClaims); ok {
			return body[:k-1], e.Claims
		}
	}
	return body, nil
}

// read gathers the rows of the schedule.
func (sc *schedule) read(body []*lang.Statement) bool {
	for _, b := range body {
		switch n := b.Node.(type) {
		case *lang.ShapeRow:
			if n.Word == "plain" {
				sc.plain = n
			} else {
				sc.shaped = n
			}
		case *lang.ShapeAt:
			sc.at = append(sc.at, n)
		case nil:
			return false
		}
	}
	if sc.plain == nil || sc.shaped == nil && len(sc.at) == 0 {
		sc.p.c.say(codeShapeRows, sc.n.Span(), nil)
		return false
	}
	return true
}

// intervals reads when the shaped rows come: given, listed, or solved from the numbers of stitches.
func (sc *schedule) intervals(body []*lang.Statement, mask []bool) []interval {
	c, lex := sc.p.c, sc.p.lex
	var out []interval
	for _, b := range body {
		switch n := b.Node.(type) {
		case *lang.Every:
			for _, e := range n.Steps {
				every, times := c.every(e.N, lex), c.cnt(e.Times, lex)
				if every == nil || times == nil {
					return nil
				}
				out = append(out, interval{less(every, 1), times})
			}
		case *lang.FirstOn:
			first, every, times := c.cnt(n.Row, lex), c.every(n.Every, lex), c.cnt(n.Times, lex)
			if first == nil || every == nil || times == nil {
				return nil
			}
			if slices.Equal(first, every) {
				out = append(out, interval{less(every, 1), times})
				continue
			}
			out = append(out, interval{less(first, 1), c.nums(1)}, interval{less(every, 1), less(times, 1)})
		case *lang.OnRows:
			listed := sc.listed(n)
			if listed == nil {
				return nil
			}
			out = append(out, listed...)
		}
	}
	for _, o := range sc.n.Opts {
		if o.From != nil {
			solved := sc.solve(o, mask)
			if solved == nil {
				return nil
			}
			out = append(out, solved...)
		}
	}
	if len(out) == 0 {
		c.say(codeShapeWhen, sc.n.Span(), nil)
		return nil
	}
	if !sc.fits(out, mask) {
		return nil
	}
	return out
}

// every is how far apart the shaped rows are: without a number they come in every row.
func (c *checker) every(n *lang.Cnt, lex []bool) plan.Nums {
	if n == nil {
		return c.nums(1)
	}
	return c.cnt(n, lex)
}

// listed turns a list of rows into intervals; neighbours of the same length become one.
func (sc *schedule) listed(n *lang.OnRows) []interval {
	c := sc.p.c
	before := c.nums(0)
	var out []interval
	for _, r := range n.Rows {
		at := c.cnt(r, sc.p.lex)
		if at == nil {
			return nil
		}
		gap := c.nums(plan.Absent)
		for z := range gap {
			if at[z] == plan.Absent {
				continue
			}
			if gap[z] = at[z] - before[z] - 1; gap[z] < 0 {
				c.say(codeShapeOrder, r.Span(), nil)
				return nil
			}
		}
		before = at
		if k := len(out); k > 0 && slices.Equal(out[k-1].plain, gap) {
			out[k-1].times = less(out[k-1].times, -1)
			continue
		}
		out = append(out, interval{gap, c.nums(1)})
	}
	return out
}

// solve works out two neighbouring intervals, the longer one first, from the stitches at the start and at the end, the rows
// there are, and what a shaped row takes away or adds. On right-side rows the intervals are even.
func (sc *schedule) solve(o *lang.ShapeOpt, mask []bool) []interval {
	c := sc.p.c
	from, to := c.cnt(o.From, sc.p.lex), c.cnt(o.To, sc.p.lex)
	low := c.lower(sc.p, sc.shaped.List, mask)
	if from == nil || to == nil || !low.ok {
		return nil
	}
	step := 1
	for _, p := range sc.n.Opts {
		if p.Right {
			step = 2
		}
	}
	long, short := interval{c.nums(plan.Absent), c.nums(plan.Absent)}, interval{c.nums(plan.Absent), c.nums(plan.Absent)}
	odd, crowded := newSpread(c), newSpread(c)
	for z, on := range mask {
		if !on {
			continue
		}
		change := change(low.ops, z)
		diff := to[z] - from[z]
		if change == 0 || diff%change != 0 || diff/change < 0 {
			odd.add(z, change, diff)
			continue
		}
		k := diff / change
		if k == 0 {
			long.plain[z], long.times[z], short.plain[z], short.times[z] = 0, 0, 0, 0
			continue
		}
		q := sc.total[z] / k / step * step
		if q == 0 {
			crowded.add(z, k*step, sc.total[z])
			continue
		}
		x := min(k, (sc.total[z]-q*k)/step)
		long.plain[z], long.times[z] = q+step-1, x
		short.plain[z], short.times[z] = q-1, k-x
	}
	if odd.any() {
		c.report(diag.Diagnostic{Code: codeShapeUneven, Span: o.Span(), Sizes: odd.sizes(),
			Args: diag.Args{"need": odd.per(odd.need), "have": odd.per(odd.have)}})
	}
	if crowded.any() {
		c.report(diag.Diagnostic{Code: codeShapeCrowded, Span: o.Span(), Sizes: crowded.sizes(),
			Args: diag.Args{"need": crowded.per(crowded.need), "have": crowded.per(crowded.have)}})
	}
	if odd.any() || crowded.any() {
		return nil
	}
	return []interval{long, short}
}

// change is by how many stitches a list makes more than it takes, in one size.
func change(ops []*fabric.Op, z int) int {
	at := func(n plan.Nums, def int) int {
		if n == nil || n[z] == plan.Absent {
			return def
		}
		return n[z]
	}
	sum := 0
	for _, o := range ops {
		switch o.Kind {
		case fabric.Draw:
			n := o.Form.Together
			if o.Body != nil {
				n, _ = fabric.Width(o.Body, z)
			}
			sum -= (n - 1) * at(o.N, 1)
		case fabric.Work:
			if o.Target.Kind != fabric.Each {
				sum += (at(o.Per, 1) - 1) * at(o.N, 1)
			}
		case fabric.Found:
			sum += at(o.N, 0)
		case fabric.Spread:
			if o.Form.Together > 1 {
				sum -= at(o.N, 0)
			} else {
				sum += at(o.N, 0)
			}
		case fabric.Repeat:
			if o.N != nil {
				sum += change(o.Body, z) * at(o.N, 1)
			}
		case fabric.SkipOver:
			sum -= at(o.N, 0)
		}
	}
	return sum
}

// fits sees to it that a schedule is not longer than its rows.
func (sc *schedule) fits(steps []interval, mask []bool) bool {
	bad := newSpread(sc.p.c)
	for z, on := range mask {
		if !on {
			continue
		}
		sum := 0
		for _, st := range steps {
			if st.times[z] > 0 {
				sum += (st.plain[z] + 1) * st.times[z]
			}
		}
		if sum > sc.total[z] {
			bad.add(z, sum, sc.total[z])
		}
	}
	if bad.any() {
		sc.p.c.report(diag.Diagnostic{Code: codeShapeLong, Span: sc.n.Span(), Sizes: bad.sizes(),
			Args: diag.Args{"need": bad.per(bad.need), "have": bad.per(bad.have)}})
	}
	return !bad.any()
}

// row makes a row of the tree out of a line of the schedule, so that it is worked like any other.
func (sc *schedule) row(r *lang.ShapeRow) *lang.Row {
	head := &lang.RowHead{At: r.At, One: "row"}
	if sc.n.Word == "rounds" {
		head.One = "round"
	}
	return &lang.Row{At: r.At, Head: head, List: r.List, Claims: r.Claims}
}

// work works intervals, then the rows that are left over.
func (sc *schedule) work(steps []interval, mask []bool) {
	p := sc.p
	done := p.c.nums(0)
	sc.astray = p.c.nums(plan.Absent)
	defer sc.tellAstray()
	for _, st := range steps {
		if st.times.Is(0) {
			continue
		}
		plain, shaped := sc.row(sc.plain), sc.row(sc.shaped)
		p.block(st.times, mask, sc.s, func(now []bool) {
			p.rowTimes(plain, now, st.plain)
			p.rowTimes(shaped, now, nil)
			sc.onRight(now)
		})
		for z := range done {
			if st.times[z] > 0 {
				done[z] += (st.plain[z] + 1) * st.times[z]
			}
		}
	}
	rest := p.c.nums(plan.Absent)
	for z, on := range mask {
		if on {
			rest[z] = sc.total[z] - done[z]
		}
	}
	if !rest.Is(0) {
		p.rowTimes(sc.row(sc.plain), mask, rest)
	}
}

// onRight stops where a shaped row shows the wrong side and the schedule asks for the right one.
func (sc *schedule) onRight(mask []bool) {
	asked := false
	for _, o := range sc.n.Opts {
		asked = asked || o.Right
	}
	if !asked {
		return
	}
	for z, on := range mask {
		facts := sc.p.plan.Worked[z]
		if on && len(facts) > 0 && facts[len(facts)-1].Wrong && !sc.p.fab[z].Halted() {
			sc.astray[z] = facts[len(facts)-1].Number
			sc.p.fab[z].Halt()
		}
	}
}

// tellAstray reports the shaped rows that show the wrong side, of all sizes at once.
func (sc *schedule) tellAstray() {
	bad := newSpread(sc.p.c)
	for z, row := range sc.astray {
		if row != plan.Absent {
			bad.add(z, 0, row)
		}
	}
	if bad.any() {
		sc.p.c.report(diag.Diagnostic{Code: codeShapeSide, Span: sc.n.Span(), Sizes: bad.sizes(), Args: diag.Args{"row": bad.alike(bad.have)}})
	}
}
