package compile

import (
	"math"
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file turns a length into rows of a stitch pattern.

// long turns a length into rows: as many as come nearest to it among those after which the pattern may end.
func (r *patternRun) long() plan.Nums {
	p, c, h := r.p, r.p.c, r.n.Head
	v := c.value(h.Length, p.lex)
	ls := v.Lengths()
	if ls == nil {
		if !v.Unknown {
			c.say(codeRowsLength, h.Length.Span(), nil)
		}
		return nil
	}
	heights := map[*lang.Row]float64{}
	for _, row := range append(slices.Clone(r.setup), r.rows...) {
		if heights[row] = r.height(row); heights[row] == 0 {
			return nil
		}
	}
	out, got := c.nums(plan.Absent), slices.Clone(ls)
	for z, on := range r.mask {
		if !on {
			continue
		}
		want := float64(ls[z])
		if h.To {
			want -= p.tall[z]
		}
		if want < 0 {
			c.report(diag.Diagnostic{Code: codeRowsBelow, Span: h.Length.Span(), Args: diag.Args{
				"have": plan2diag(plan.Length(p.tall[z])), "need": plan2diag(ls[z])}, Sizes: []string{c.pat.Sizes[z].Name}})
			return nil
		}
		k, ok := r.nearest(z, want, heights)
		if !ok {
			c.report(diag.Diagnostic{Code: codePatternNever, Span: h.Span(), Args: diag.Args{"name": r.sp.name, "ends": r.endsAfter()}})
			return nil
		}
		if k > maxRows {
			all := 0.0
			for _, row := range r.rows {
				all += heights[row]
			}
			c.tooManyRows(h.Length, max(k, int(math.Round(want*float64(len(r.rows))/all))), "row")
			return nil
		}
		out[z] = k
		tall := 0.0
		for i := range k {
			row, _ := r.nth(z, i)
			tall += heights[row]
		}
		if h.To {
			tall += p.tall[z]
		}
		got[z] = micro(tall)
	}
	p.roundedRows(h.Length.Span(), plan.UnitRows, stitch.ID(r.sp.name), out, ls, got, h.Opts)
	return out
}

// nearest is the number of rows that measures nearest to a length, or the next above or below it, as the options say; more than maxRows
// if these do not reach it.
func (r *patternRun) nearest(z int, want float64, heights map[*lang.Row]float64) (int, bool) {
	var up, down, tiesDown bool
	for _, o := range r.n.Head.Opts {
		up, down, tiesDown = up || o.Word == "up", down || o.Word == "down", tiesDown || o.Ties == "down"
	}
	const near = 1e-6 // of a row: lengths that are meant to be equal
	best, found, tall, last := 0, false, 0.0, 0.0
	beyond := 0
	for i := 0; beyond <= 2*len(r.rows)+2; i++ {
		if i > maxRows {
			row, _ := r.nth(z, i-1)
			if slack := heights[row] / 2; up && tall < want-near || tall < want-slack {
				return i, true // the length is out of reach
			}
			break
		}
		if i > 0 {
			row, _ := r.nth(z, i-1)
			tall += heights[row]
		}
		if tall > want+near {
			beyond++
		}
		if !r.mayEnd(z, i) || !r.fits(z, i) {
			continue
		}
		below := tall <= want+near
		switch {
		case up && tall < want-near, down && !below && found:
		case up:
			return i, true
		case !found || below || tall-want < want-last-near || !tiesDown && tall-want <= want-last+near:
			best, found, last = i, true, tall
		}
		if found && !below {
			break
		}
	}
	return best, found
}

// fits reports whether a number of rows suits the options of the header: even or odd, and which side the last one shows.
func (r *patternRun) fits(z, i int) bool {
	for _, o := range r.n.Head.Opts {
		switch {
		case o.Word == "even" && i%2 != 0, o.Word == "odd" && i%2 == 0:
			return false
		case o.Ending != "" && i > 0:
			if wrong := r.p.wrong[z] == (i%2 == 1); wrong != (o.Ending == "ws") {
				return false
			}
		}
	}
	return true
}

// height is how tall a row of the pattern is: by the gauge of the pattern, or by that of the row's first stitch; 0 if there is
// none, which was said.
func (r *patternRun) height(row *lang.Row) float64 {
	c := r.p.c
	m := r.p.manner(r.p.styleOf(row.Head))
	r.p.asked = true
	if g := c.gaugeFor(stitch.ID(r.sp.name), m); g != nil && g.rows != nil {
		v, _ := g.rows.Float64()
		return 1000 / v
	}
	low := c.lower(r.p, row.List, r.mask)
	op, _ := firstStitch(low.ops)
	if op == nil {
		return 0
	}
	_, h, measured := c.stitchSize(op.Form.ID, m)
	if !measured {
		c.noGauge(op.Form.ID, r.n.Head)
		return 0
	}
	return h
}

// blockHeight is how tall the rows of a stitch pattern are that stand in a block which is worked for a length, from row 1 on; 0
// if that cannot be known, which was said.
func (p *partState) blockHeight(n *lang.Row, mask []bool) float64 {
	sp := p.patternOf(n)
	if sp == nil {
		return 0
	}
	k := 1
	if n.Head.N != nil {
		if t := p.c.cnt(n.Head.N, p.lex); t != nil {
			k = maxOf(t, mask)
		}
	}
	r := &patternRun{p: p, sp: sp, n: n, mask: mask}
	sum := 0.0
	for i := range k {
		h := r.height(r.row(sp.rows[i%len(sp.rows)]))
		if h == 0 {
			return 0
		}
		sum += h
	}
	return sum
}
