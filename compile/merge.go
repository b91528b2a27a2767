package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file merges two schedules, each bound to a side edge of a flat piece, into one list of rows. A row that shows the
// right side meets the first edge first, one that shows the wrong side the other; what both shape is one row.

// edgeWork is what one side edge does, and on which rows of the schedule in each size.
type edgeWork struct {
	list  *lang.List
	takes int            // places its list takes
	on    []map[int]bool // per size
}

// merged works two schedules row by row.
func (sc *schedule) merged(mask []bool) {
	p := sc.p
	first, last, ok := sc.edgeWorks(mask)
	if !ok {
		p.halt(mask)
		return
	}
	top := maxOf(sc.total, mask)
	for i := 1; i <= top; {
		// rows that do the same in every size go together
		run := 1
		for i+run <= top && sc.same(first, last, mask, i, i+run) && sc.combo(first, last, mask, i) == nil {
			run++
		}
		for _, c := range [][2]bool{{false, false}, {true, false}, {false, true}, {true, true}} {
			now := make([]bool, len(mask))
			for z, on := range mask {
				now[z] = on && i <= sc.total[z] && first.on[z][i] == c[0] && last.on[z][i] == c[1]
			}
			if now = p.live(now); !some(now) {
				continue
			}
			r := sc.mergedRow(first, last, c, p.wrong[slices.Index(now, true)])
			p.rowTimes(r, now, p.c.nums(run))
		}
		i += run
	}
}

// combo returns nil if a row is plain in every size.
func (sc *schedule) combo(a, b *edgeWork, mask []bool, i int) []int {
	var out []int
	for z, on := range mask {
		if on && (a.on[z][i] || b.on[z][i]) {
			out = append(out, z)
		}
	}
	return out
}

// same reports whether two rows of the schedule do the same in every size.
func (sc *schedule) same(a, b *edgeWork, mask []bool, i, j int) bool {
	for z, on := range mask {
		if on && (a.on[z][i] != a.on[z][j] || b.on[z][i] != b.on[z][j] || (i <= sc.total[z]) != (j <= sc.total[z])) {
			return false
		}
	}
	return true
}

// edgeWorks reads the two schedules, in the order in which a right-side row meets their edges.
func (sc *schedule) edgeWorks(mask []bool) (first, last *edgeWork, ok bool) {
	p := sc.p
	if p.edges == nil || p.style != plan.Rows {
		p.c.say(codeShapeEdges, sc.at[0].Span(), nil)
		return nil, nil, false
	}
	empty := func() *edgeWork {
		w := &edgeWork{on: make([]map[int]bool, p.c.z)}
		for z := range w.on {
			w.on[z] = map[int]bool{}
		}
		return w
	}
	first, last = empty(), empty()
	for _, a := range sc.at {
		w := first
		switch a.Edge.Text {
		case p.edges.First.Text:
		case p.edges.Last.Text:
			w = last
		default:
			known := []string{p.edges.First.Text, p.edges.Last.Text}
			p.c.say(codeNoName, a.Edge.Span(), diag.Args{"word": a.Edge.Text, "near": known})
			return nil, nil, false
		}
		if w.list != nil {
			p.c.say(codeShapeTwice, a.Span(), diag.Args{"name": a.Edge.Text})
			return nil, nil, false
		}
		if !sc.edgeWork(w, a, mask) {
			return nil, nil, false
		}
	}
	return first, last, true
}

func (sc *schedule) edgeWork(w *edgeWork, a *lang.ShapeAt, mask []bool) bool {
	p := sc.p
	low := p.c.lower(p, a.List, mask)
	at, every, times := p.c.cnt(a.Row, p.lex), p.c.every(a.Every, p.lex), p.c.cnt(a.Times, p.lex)
	if !low.ok || at == nil || every == nil || times == nil {
		return false
	}
	w.list = a.List
	for _, o := range low.ops {
		n, _ := o.N.Same()
		switch o.Kind {
		case fabric.Cross:
			w.takes += n * o.Form.Of
		case fabric.Draw:
			k := o.Form.Together
			if o.Body != nil {
				k, _ = fabric.Width(o.Body, p.c.pat.Shown)
			}
			w.takes += n * k
		default:
			w.takes += n
		}
	}
	bad := newSpread(p.c)
	for z, on := range mask {
		if !on {
			continue
		}
		end := at[z] + every[z]*(times[z]-1)
		if times[z] > 0 && end > sc.total[z] {
			bad.add(z, end, sc.total[z])
		}
		for k := 0; k < times[z]; k++ {
			w.on[z][at[z]+k*every[z]] = true
		}
	}
	if bad.any() {
		p.c.report(diag.Diagnostic{Code: codeShapeLong, Span: a.Span(), Sizes: bad.sizes(),
			Args: diag.Args{"need": bad.per(bad.need), "have": bad.per(bad.have)}})
	}
	return !bad.any()
}

// mergedRow makes the row of a combination: the work of the edge that is met first, the plain row between, the work of the
// other edge.
func (sc *schedule) mergedRow(first, last *edgeWork, on [2]bool, wrong bool) *lang.Row {
	r := sc.row(sc.plain)
	a, b := first, last
	onA, onB := on[0], on[1]
	if wrong {
		a, b, onA, onB = last, first, on[1], on[0]
	}
	if !onA && !onB {
		return r
	}
	r.Claims = nil
	list := &lang.List{At: sc.plain.List.At}
	sc.p.c.turned[list] = sc.p.c.turned[r.List]
	if onA {
		list.Items = append(list.Items, a.list.Items...)
	}
	for _, it := range sc.plain.List.Items {
		if w, ok := it.(*lang.Work); ok && onB {
			list.Items = append(list.Items, upTo(w, b.takes))
			continue
		}
		list.Items = append(list.Items, it)
	}
	if onB {
		list.Items = append(list.Items, b.list.Items...)
	}
	r.List = list
	return r
}

// upTo lets a stitch that is worked in each stop before the last n.
func upTo(w *lang.Work, n int) *lang.Work {
	c := *w
	num := &lang.Cnt{At: w.At, E: &lang.Expr{At: w.At, Op: lang.OpNumber, Text: itoa(n)}}
	c.Target, c.Spread = nil, nil
	c.End = &lang.RepEnd{At: w.At, Bound: &lang.Bound{At: w.At, Last: true, LastN: num}}
	return &c
}
