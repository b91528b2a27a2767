package compile

import (
	"slices"
	"strconv"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

func itoa(n int) string { return strconv.Itoa(n) }

// countOff walks along the edge without working, sets markers and names sections.
func (p *partState) countOff(n *lang.CountOff, mask []bool) {
	mask = p.live(mask)
	if !some(mask) {
		return
	}
	step := &plan.CountOff{For: sizesOf(mask), Span: n.Span()}
	var steps []fabric.OffStep
	for _, it := range n.Items {
		o := fabric.OffStep{Label: labelOf(it.Label)}
		out := plan.OffItem{Marker: -1, Label: o.Label, Called: p.calls[o.Label]}
		if it.Mark != nil {
			o.Marker, o.InNext = it.Mark.Text, it.Next
			out.Marker, out.InNext = p.marker(o.Marker), it.Next
		} else {
			if o.N = p.c.cnt(it.N, p.lex); o.N == nil {
				p.halt(mask)
				return
			}
			if !p.sectionFilled(it, o, mask) {
				return
			}
			out.N = o.N
		}
		steps = append(steps, o)
		step.Items = append(step.Items, out)
	}
	bad := newSpread(p.c)
	p.each(mask, n, func(z int) *fabric.Fault {
		f := p.fab[z].CountOff(steps)
		if f != nil && f.Kind == fabric.StatedOther {
			bad.add(z, f.Need, f.Have)
			p.fab[z].Halt()
			return nil
		}
		p.maxMarks = max(p.maxMarks, p.fab[z].Markers())
		return f
	})
	if bad.any() {
		p.c.report(diag.Diagnostic{Code: codeCountOff, Span: n.Span(), Sizes: bad.sizes(),
			Args: diag.Args{"need": bad.per(bad.need), "have": bad.per(bad.have)}})
	}
	p.add(step)
}

// offTwice reports a counting off that sets again all that the one before it has just set: nothing could meet it in between, so one of
// the two is too many, or rows between them were left out.
func (p *partState) offTwice(n *lang.CountOff, mask []bool) {
	mask = p.live(mask)
	was, in := p.off, p.offIn
	p.off, p.offIn = n, mask
	if was == nil || n.Span().Start < was.Span().End { // a repeat comes round
		return
	}
	old, again := namesOff(was), namesOff(n)
	if len(old) == 0 || slices.ContainsFunc(old, func(name string) bool { return !slices.Contains(again, name) }) || countsPlaces(n) {
		return
	}
	bad := newSpread(p.c)
	for z := range mask {
		if mask[z] && in[z] {
			bad.add(z, 1, 2)
		}
	}
	if bad.any() {
		p.c.report(diag.Diagnostic{Code: codeOffTwice, Span: n.Span(), Sizes: bad.sizes(), Args: diag.Args{"names": old, "n": len(old)},
			Related: []diag.Related{{Span: was.Span(), Key: "first"}}})
	}
}

// countsPlaces reports whether a number in a counting off is a count of what is there already.
func countsPlaces(n *lang.CountOff) (found bool) {
	lang.Inspect(n, func(m lang.Node) bool {
		e, ok := m.(*lang.Expr)
		found = found || ok && e.Op == lang.OpMeasure && e.Text == "count"
		return !found
	})
	return found
}

// namesOff are the markers and sections that a counting off sets.
func namesOff(n *lang.CountOff) []string {
	var out []string
	for _, it := range n.Items {
		if it.Mark != nil {
			out = append(out, it.Mark.Text)
		}
		if l := labelOf(it.Label); l != "" {
			out = append(out, l)
		}
	}
	return out
}

// sectionFilled reports a section that comes to no places in some size: a sleeve of nothing is a slip in the sizes, and what
// is worked along it later would fail without saying why. Places without a name may be none, and so may a section whose
// number is written as it stands: there the nought is meant.
func (p *partState) sectionFilled(it *lang.OffItem, o fabric.OffStep, mask []bool) bool {
	if o.Label == "" || it.N.E.Op == lang.OpNumber {
		return true
	}
	none := newSpread(p.c)
	for z, on := range mask {
		if on && o.N[z] == 0 {
			none.add(z, 1, 0)
		}
	}
	if !none.any() {
		return true
	}
	p.c.report(diag.Diagnostic{Code: codeEmptyPart, Span: it.Span(), Sizes: none.sizes(), Args: diag.Args{"name": o.Label}})
	p.halt(mask)
	return false
}

// moveStart moves the start of the round to a marker.
func (p *partState) moveStart(n *lang.RoundsBegin, mask []bool) {
	mask = p.live(mask)
	step := &plan.MoveStart{For: sizesOf(mask), Moved: p.c.nums(plan.Absent)}
	name := n.Ref.Path[0]
	step.Marker = p.marker(name)
	p.each(mask, n, func(z int) *fabric.Fault {
		k, f := p.fab[z].RotateTo(name)
		step.Moved[z] = k
		return f
	})
	p.add(step)
}

// repeat works the statements of a block several times.
func (p *partState) repeat(s *lang.Statement, n *lang.Repeat, mask []bool) {
	mask = p.live(mask)
	times := p.repeatTimes(s, n, mask)
	if times == nil {
		p.halt(mask)
		return
	}
	starts := make([]int, p.c.z)
	for z := range starts {
		starts[z], _, _ = p.fab[z].Count()
	}
	body, claims := splitEnd(s.Body)
	p.block(times, mask, s, func(now []bool) { p.exec(body, now) })
	p.endClaims(claims, mask, starts, times)
}

// block works something several times, and prints it as it reads best.
func (p *partState) block(times plan.Nums, mask []bool, s *lang.Statement, pass func(now []bool)) {
	r := &repeated{p: p, times: times, mask: mask, at: s.Head, from: len(p.plan.Steps)}
	p.blocks++
	defer func() { p.blocks-- }()
	for i, top := 0, maxOf(times, mask); i < top; i++ {
		now := make([]bool, p.c.z)
		for z := range now {
			now[z] = mask[z] && times[z] > i && !p.fab[z].Halted()
		}
		if !some(now) || !p.step(s, now) {
			break
		}
		r.begins(now)
		pass(now)
	}
	r.print()
}

func maxOf(n plan.Nums, mask []bool) int {
	m := 0
	for z, v := range n {
		if mask[z] {
			m = max(m, v)
		}
	}
	return m
}

// repeatTimes is how often a block is worked; repeat rows for a length divides it by the height of the block's rows.
func (p *partState) repeatTimes(s *lang.Statement, n *lang.Repeat, mask []bool) plan.Nums {
	if n.N != nil {
		t := p.c.cnt(n.N, p.lex)
		for _, v := range t {
			if v > maxRows {
				p.c.tooManyRows(n.N, v, "repeat")
				return nil
			}
		}
		return t
	}
	v := p.c.value(n.For, p.lex)
	ls := v.Lengths()
	if ls == nil {
		if !v.Unknown {
			p.c.say(codeRowsLength, n.For.Span(), nil)
		}
		return nil
	}
	height := 0.0
	for _, b := range s.Body {
		r, ok := b.Node.(*lang.Row)
		if !ok {
			continue
		}
		if r.Head.Of != nil {
			height += p.blockHeight(r, mask)
			continue
		}
		if r.Head.From != nil {
			h, ok := p.chartHeight(r, mask)
			if !ok {
				return nil
			}
			height += h
			continue
		}
		low := p.c.lower(p, r.List, mask)
		op, _ := firstStitch(low.ops)
		if op == nil {
			return nil
		}
		h, ok := p.rowHeight(op.Form.ID, r.Head, n)
		if !ok {
			return nil
		}
		k := 1
		if r.Head.N != nil {
			if t := p.c.cnt(r.Head.N, p.lex); t != nil {
				k = maxOf(t, mask)
			}
		}
		height += h * float64(k)
	}
	if height == 0 {
		return nil
	}
	out, got := p.c.nums(plan.Absent), make(plan.Lengths, p.c.z)
	for z, on := range mask {
		if on {
			if out[z] = max(0, roundRows(float64(ls[z])/height, nil, 0, false)); out[z] > maxRows {
				p.c.tooManyRows(n.For, out[z], "repeat")
				return nil
			}
			got[z] = micro(float64(out[z]) * height)
		}
	}
	p.roundedRows(n.For.Span(), plan.UnitRepeats, "", out, ls, got, nil)
	return out
}

// lastCount counts the last row worked: by its stitch if it is all of one kind in every size.
func (p *partState) lastCount(times plan.Nums, mask []bool) plan.Count {
	count := plan.Count{Kind: plan.CountForm, N: p.c.nums(plan.Absent)}
	for z, on := range mask {
		facts := p.plan.Worked[z]
		if !on || times[z] == 0 || len(facts) == 0 {
			continue
		}
		last := facts[len(facts)-1]
		count.N[z] = last.Stitches
		for f := range last.ByForm.All() {
			f = plan.CountedAs(f)
			if count.Form.ID != "" && count.Form != f {
				count.Kind = plan.CountSts
			}
			count.Form = f
		}
	}
	if count.Kind == plan.CountSts {
		count.Form = stitch.Form{}
	}
	return count
}
