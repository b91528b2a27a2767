package compile

import (
	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

// This file spreads stitches over the runs a part starts along, and brings them all together to a multiple.

// spread spreads the stitches over the ends of rows of every run, brings them to the multiple that is asked for, and notes where
// each run begins.
func (a *along) spread() bool {
	p := a.p
	for _, r := range a.runs {
		if r.ends == nil {
			continue
		}
		r.groups = make([][]group, p.c.z)
		for z := range r.groups {
			switch n := len(r.runs[z].Places); {
			case n == 0:
			case r.rate.rows == 0:
				r.groups[z] = []group{{1, []cell{{n, 1}}}}
			default:
				r.groups[z] = spreadAt(n, r.rate.stitches, r.rate.rows)
			}
		}
	}
	if a.mult != nil && !a.force() {
		return false
	}
	at := p.c.nums(0)
	for _, r := range a.runs {
		r.from, r.count = append(plan.Nums(nil), at...), p.c.nums(plan.Absent)
		for z := range at {
			r.count[z] = r.places(z)
			at[z] += r.count[z]
		}
		if r.ends != nil {
			r.ref.Rate, r.ref.RateRows = r.rate.stitches, r.rate.rows
			if r.forced {
				r.ref.Rate, r.ref.RateRows = 0, 0
			}
			if r.rate.rows > 0 {
				a.compare(r)
			}
		}
	}
	return true
}

// places is how many places a run has in a size.
func (r *alongRun) places(z int) int {
	if r.ends == nil {
		return len(r.runs[z].Places)
	}
	_, n := countsOf(r.groups[z])
	return n
}

// unknown reports whether some run rests on a part that is unknown in a size.
func (a *along) unknown(z int) bool {
	for _, r := range a.runs {
		if r.runs[z].Halted {
			return true
		}
	}
	return false
}

// force brings all the runs together to a multiple, by those that are named: each takes its share of what is missing or too much.
func (a *along) force() bool {
	p, n := a.p, a.mult
	m, e := p.c.cnt(n.Mult, p.lex), p.c.nums(0)
	if n.Plus != nil {
		e = p.c.cnt(n.Plus, p.lex)
	}
	if m == nil || e == nil {
		return false
	}
	var by []*alongRun
	for _, name := range n.By {
		found := false
		for _, r := range a.runs {
			if r.label == name.Text && (r.ends != nil || r.chain) {
				by, found = append(by, r), true
			}
		}
		if !found {
			p.c.say(codeMultipleBy, name.Span(), diag.Args{"name": name.Text})
			return false
		}
	}
	bad := newSpread(p.c)
	for z, on := range a.mask {
		if !on || m[z] < 1 || a.unknown(z) {
			continue
		}
		total := 0
		for _, r := range a.runs {
			total += r.places(z)
		}
		diff := toMultiple(total, m[z], e[z]) - total
		for i, r := range by {
			share := diff*(i+1)/len(by) - diff*i/len(by)
			k := r.places(z) + share
			if share == 0 {
				continue
			}
			if r.forced = true; k < 1 {
				bad.add(z, total+diff, total)
				break
			}
			if r.chain {
				run, f := p.fab[z].ChainRun(k)
				if f != nil {
					f.Span = n.Span()
					p.c.gather(f, z, p)
					return false
				}
				r.runs[z] = run
				continue
			}
			r.groups[z] = spreadOver(len(r.runs[z].Places), k)
		}
	}
	if bad.any() {
		p.c.report(diag.Diagnostic{Code: codeMultipleFar, Span: n.Span(), Sizes: bad.sizes(),
			Args: diag.Args{"need": bad.per(bad.need), "have": bad.per(bad.have)}})
		return false
	}
	for _, r := range by {
		for z := range r.groups {
			if r.forced && len(r.groups[z]) > 0 {
				r.groups[z] = spreadOver(len(r.runs[z].Places), r.places(z)) // alike in every size
			}
		}
	}
	return true
}
