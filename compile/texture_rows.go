package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// This file works the rows of a stitch pattern. In a part a stitch pattern goes on where it stopped.

// inPattern is how far a part is in a stitch pattern, in each size: how many set-up rows it has worked, and the row it is to
// work next, from 0.
type inPattern struct {
	begun       []bool
	setup, next []int
}

// patternRun is a run of rows of a stitch pattern while it is worked.
type patternRun struct {
	p     *partState
	sp    *stitchPattern
	n     *lang.Row
	mask  []bool
	at    *inPattern
	setup []*lang.Row
	rows  []*lang.Row
}

// patternOf is the stitch pattern that a row names; nil if there is none of that name, which is said, or if something is wrong
// with it, which was.
func (p *partState) patternOf(n *lang.Row) *stitchPattern {
	sp := p.c.patterns[n.Head.Of.Text]
	switch {
	case sp == nil:
		p.c.say(codeNoName, n.Head.Of.Span(), diag.Args{"word": n.Head.Of.Text, "near": lang.Near(n.Head.Of.Text, keys(p.c.patterns))})
	case sp.bad:
		return nil
	}
	return sp
}

// patternRows works rows of a stitch pattern in the sizes of a mask.
func (p *partState) patternRows(n *lang.Row, mask []bool) {
	sp := p.patternOf(n)
	if mask = p.live(mask); !some(mask) {
		return
	}
	if sp == nil {
		p.halt(mask)
		return
	}
	if p.textures[sp] == nil {
		p.textures[sp] = &inPattern{make([]bool, p.c.z), make([]int, p.c.z), make([]int, p.c.z)}
	}
	r := &patternRun{p: p, sp: sp, n: n, mask: mask, at: p.textures[sp]}
	if !r.start() || !r.suits() {
		p.halt(mask)
		return
	}
	for _, row := range sp.setup {
		r.setup = append(r.setup, r.row(row))
	}
	for _, row := range sp.rows {
		r.rows = append(r.rows, r.row(row))
	}
	times := r.times()
	if times == nil {
		p.halt(mask)
		return
	}
	from := len(p.plan.Steps)
	r.work(times)
	p.claimsAfter(n.Claims, mask)
	if n.Head.Length != nil {
		r.tall(from)
	}
}

// start takes up the yarn and the row that the header asks for, if it asks for them.
func (r *patternRun) start() bool {
	for _, o := range r.n.Head.Opts {
		if o.Yarn != nil {
			i := r.p.c.yarn(o.Yarn)
			if i < 0 {
				return false
			}
			r.p.yarn = i
		}
		if o.From == nil {
			continue
		}
		k, ok := plainNumber(o.From)
		if !ok || k < 1 || k > len(r.sp.rows) {
			r.p.c.say(codePatternEnd, o.From.Span(), diag.Args{"have": len(r.sp.rows), "name": r.sp.name})
			return false
		}
		for z, on := range r.mask {
			if on {
				r.at.setup[z], r.at.next[z], r.at.begun[z] = len(r.sp.setup), k-1, false
			}
		}
	}
	return true
}

// suits sees to it that the stitches there are suit the pattern, where it is begun.
func (r *patternRun) suits() bool {
	c, of, plus, ok := r.p.c, plan.Nums(nil), plan.Nums(nil), true
	if r.sp.of == nil {
		return true
	}
	if of, plus, ok = c.multipleOf(r.sp, r.p.lex); !ok {
		return false
	}
	bad := newSpread(c)
	var below, above []int
	for z, on := range r.mask {
		if !on || r.at.begun[z] || r.at.next[z] > 0 {
			continue
		}
		r.at.begun[z] = true
		have, _, _ := r.p.fab[z].Count()
		if over := ((have-plus[z])%of[z] + of[z]) % of[z]; over != 0 || have < plus[z] {
			bad.add(z, of[z], have)
			lower := have - over
			if lower < max(plus[z], 1) {
				lower += of[z]
			}
			below, above = append(below, lower), append(above, have-over+of[z])
		}
	}
	if !bad.any() {
		return true
	}
	c.report(diag.Diagnostic{Code: codePatternMultiple, Span: r.n.Head.Of.Span(), Sizes: bad.sizes(), Args: diag.Args{"name": r.sp.name,
		"rule": c.file.Source.Slice(r.sp.rule), "have": bad.per(bad.have), "below": bad.per(below), "above": bad.per(above)}})
	return false
}

// row makes a row of the tree out of a row of the pattern, so that it is worked like any other.
func (r *patternRun) row(n *lang.PatternRow) *lang.Row {
	h := r.n.Head
	head := &lang.RowHead{At: n.At, One: "row", Opts: n.Opts}
	begins := func(o *lang.RowOpt) bool { return o.None || o.Chains != nil }
	for _, o := range h.Opts {
		if begins(o) && !slices.ContainsFunc(n.Opts, begins) {
			head.Opts = append(slices.Clone(head.Opts), o)
		}
	}
	if h.One == "round" || h.Many == "rounds" || h.For == "rounds" {
		head.One = "round"
	}
	for _, l := range []*lang.Name{h.Label, h.FLabel, h.NLabel} {
		if l != nil {
			head.Label = l
		}
	}
	return &lang.Row{At: n.At, Head: head, List: n.List, Claims: n.Claims}
}

// nth is the row of the pattern that a size works as its i-th from here, and its number, 0 for a set-up row.
func (r *patternRun) nth(z, i int) (row *lang.Row, number int) {
	if left := len(r.setup) - r.at.setup[z]; i < left {
		return r.setup[r.at.setup[z]+i], 0
	} else if left > 0 {
		i -= left
	}
	k := (r.at.next[z] + i) % len(r.rows)
	return r.rows[k], k + 1
}

// mayEnd reports whether the pattern may end after the i rows that a size works from here. Behind a set-up row none of its
// repeats is begun.
func (r *patternRun) mayEnd(z, i int) bool {
	if r.sp.ends == nil || i == 0 {
		return true
	}
	_, number := r.nth(z, i-1)
	return number == 0 || r.sp.ends[number]
}

// times is how many rows of the pattern are worked in each size; nil if that cannot be, which was said.
func (r *patternRun) times() plan.Nums {
	h, c := r.n.Head, r.p.c
	var out plan.Nums
	switch {
	case h.Length != nil:
		return r.long()
	case h.N != nil:
		if out = c.cnt(h.N, r.p.lex); out == nil {
			return nil
		}
	default:
		out = c.nums(1)
	}
	bad := newSpread(c)
	var after, less, more []int
	for z, on := range r.mask {
		switch {
		case !on:
			out[z] = plan.Absent
		case out[z] > maxRows:
			c.tooManyRows(h.N, out[z], "row")
			return nil
		case !r.mayEnd(z, out[z]):
			_, number := r.nth(z, out[z]-1)
			bad.add(z, 0, out[z])
			l, m := out[z], out[z]
			for !r.mayEnd(z, l) {
				l--
			}
			for !r.mayEnd(z, m) {
				m++
			}
			if l == 0 {
				l = m
			}
			after, less, more = append(after, number), append(less, l), append(more, m)
		}
	}
	if bad.any() {
		c.report(diag.Diagnostic{Code: codePatternEnds, Span: h.Span(), Sizes: bad.sizes(), Args: diag.Args{"name": r.sp.name,
			"have": bad.per(bad.have), "row": bad.per(after), "ends": r.endsAfter(), "less": bad.per(less), "more": bad.per(more)}})
		return nil
	}
	return out
}

// endsAfter lists the rows after which the pattern may end.
func (r *patternRun) endsAfter() []string {
	var out []string
	for i := range r.rows {
		if r.sp.ends == nil || r.sp.ends[i+1] {
			out = append(out, itoa(i+1))
		}
	}
	return out
}

// work works the rows: those of the set-up, the rest of the repeat that is begun, whole repeats, and what is left over.
func (r *patternRun) work(times plan.Nums) {
	p := r.p
	p.texture = r.sp
	defer func() { p.texture = nil }()
	one := func(row *lang.Row, on func(z int) bool, then func(z int)) {
		now := make([]bool, p.c.z)
		for z := range now {
			now[z] = r.mask[z] && times[z] > 0 && on(z)
		}
		if now = p.live(now); some(now) {
			p.rowTimes(row, now, nil)
			for z := range now {
				if now[z] {
					times[z]--
					then(z)
				}
			}
		}
	}
	for i, row := range r.setup {
		one(row, func(z int) bool { return r.at.setup[z] == i }, func(z int) { r.at.setup[z]++ })
	}
	go1 := func(z int) { r.at.next[z] = (r.at.next[z] + 1) % len(r.rows) }
	for j := 1; j < len(r.rows); j++ {
		one(r.rows[j], func(z int) bool { return r.at.next[z] == j }, go1)
	}
	whole := p.c.nums(plan.Absent)
	for z, on := range r.mask {
		if on {
			whole[z] = times[z] / len(r.rows)
			times[z] %= len(r.rows)
		}
	}
	if len(r.rows) == 1 {
		if maxOf(whole, r.mask) > 0 {
			p.rowTimes(r.rows[0], r.mask, whole)
		}
		return
	}
	p.block(whole, r.mask, &lang.Statement{Head: r.n.Span()}, func(now []bool) {
		for _, row := range r.rows {
			p.rowTimes(row, now, nil)
		}
	})
	for j := range r.rows {
		one(r.rows[j], func(z int) bool { return r.at.next[z] == j }, go1)
	}
}

// tall says how tall the part is behind the last of the steps that were printed.
func (r *patternRun) tall(from int) {
	steps := r.p.plan.Steps
	if len(steps) == from {
		return
	}
	all := sizesOf(r.mask)
	switch s := steps[len(steps)-1].(type) {
	case *plan.Row:
		if slices.Equal(s.For, all) {
			s.Tall = r.p.tallNow(r.mask)
		}
	case *plan.Block:
		if slices.Equal(s.For, all) {
			s.Tall = r.p.tallNow(r.mask)
		}
	}
}

// claimsAfter checks the counts behind rows of a stitch pattern: true after the last of them.
func (p *partState) claimsAfter(cl *lang.Claims, mask []bool) {
	if cl == nil {
		return
	}
	mask = p.live(mask)
	for _, it := range cl.Items {
		if it.More != nil {
			p.c.say(codeEachTime, it.Span(), nil)
			continue
		}
		p.check(it, mask, p.liveCounter(it), source.Span{})
	}
}

// textured is how wide and how tall a row of a stitch pattern is by the gauge of the pattern: as wide as the stitches over
// which it was begun. g is nil without such a gauge.
func (w *working) textured(z int, res *fabric.Result, m manner) (width, height float64, g *gaugeOf) {
	sp := w.p.texture
	if sp == nil {
		return 0, 0, nil
	}
	if g = w.p.c.gaugeFor(stitch.ID(sp.name), m); g == nil {
		return 0, 0, nil
	}
	if g.rows != nil {
		r, _ := g.rows.Float64()
		height = 1000 / r
	}
	if w.p.over[sp] == nil {
		w.p.over[sp] = make([]int, w.p.c.z)
	}
	if n := w.p.over[sp]; n[z] == 0 {
		n[z] = res.Places
	}
	s, _ := g.sts.Float64()
	return float64(w.p.over[sp][z]) * 1000 / s, height, g
}
