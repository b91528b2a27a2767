package chart

import (
	"math"

	"ovillo/compile/plan"
)

// heights finds how high the heads of a line are.
func (l *layout) heights(i int) {
	line, r := &l.s.Lines[i], &l.rows[i]
	tallest, shortest := 0.0, math.Inf(1)
	for k := range r.nodes {
		n, w := &r.nodes[k], &line.Stitches[k]
		n.least = l.gap(i, k)
		if w.Kind != plan.WorkedStitch {
			continue
		}
		n.tall = l.height(w.Form)
		tallest, shortest = max(tallest, n.tall), min(shortest, n.tall)
		if len(n.feet) == 0 {
			continue
		}
		n.under = 0
		for _, f := range n.feet {
			v := f.v
			if sky := l.sky(f, i); sky > v+0.3 {
				n.spike, v = true, sky
			}
			n.under += v / float64(len(n.feet))
		}
		n.v, n.set = n.under+n.tall, !n.spike
	}
	if i == 0 {
		for k := range r.nodes {
			n := &r.nodes[k]
			if n.set = true; n.v == 0 {
				n.v = max(chainHigh/2, n.tall)
			}
		}
		return
	}
	l.level(i, tallest, shortest)
}

// sky is how high the work above a foot reaches before a line.
func (l *layout) sky(f foot, before int) float64 {
	if f.line >= before-1 || f.hub {
		return 0
	}
	c := l.covered[f.line]
	if c[f.at] > 0 {
		return c[f.at]
	}
	side := func(step int) float64 {
		for k := 1; k <= 3; k++ {
			if j := f.at + step*k; j >= 0 && j < len(c) && c[j] > 0 {
				return c[j]
			}
		}
		return 0
	}
	a, b := side(-1), side(1)
	if a == 0 || b == 0 {
		return 0
	}
	return (a + b) / 2
}

// level gives heights to what has no feet of its own, from its neighbours, and keeps a row a row: no head is so far below
// that of its neighbour that the row would break.
func (l *layout) level(i int, tallest, shortest float64) {
	line, r := &l.s.Lines[i], &l.rows[i]
	known := -1
	ground := l.ground(i)
	for k := range r.nodes {
		if r.nodes[k].set {
			known = k
			break
		}
	}
	if known < 0 {
		if tallest == 0 {
			tallest = 1
		}
		for k := range r.nodes {
			n := &r.nodes[k]
			n.under, n.v, n.set = ground, ground+max(n.tall, 0.5), true
			if line.Stitches[k].Kind == plan.WorkedSpace {
				n.v = ground + tallest
			}
		}
		return
	}
	before := known
	for k := range r.nodes {
		n := &r.nodes[k]
		if n.set {
			before = k
			continue
		}
		after := before
		for j := k + 1; j < len(r.nodes); j++ {
			if r.nodes[j].set {
				after = j
				break
			}
		}
		a, b := &r.nodes[before], &r.nodes[after]
		if k < before {
			a = b
		}
		switch w := &line.Stitches[k]; {
		case n.spike:
			n.v = max((a.v+b.v)/2, n.under+0.5)
		case w.Kind == plan.WorkedSlip:
			n.v = min(a.under, b.under) + slipClear
			if len(n.feet) > 0 {
				n.v = n.feet[0].v + slipClear
			} else if len(w.Feet) > 0 && w.Feet[0].Line == i && w.Feet[0].At >= 0 && w.Feet[0].At < len(r.nodes) {
				n.v = r.nodes[w.Feet[0].At].v // it closes the round
			}
		case w.Kind == plan.WorkedBegin:
			n.under = b.under
			n.v = n.under + min(float64(max(w.Chains, 1))*chainLong*0.85, max(b.v-b.under, 0.5))
		case w.Kind == plan.WorkedStitch && (w.Begin || n.tall > 0):
			n.under = b.under
			if k > before {
				n.under = a.under
			}
			n.v = n.under + n.tall
		default:
			n.v = (a.v + b.v) / 2
		}
	}
	for k := range r.nodes {
		r.nodes[k].set = true
	}
	l.even(i)
	drop := max(1, tallest-shortest+0.1)
	up := func(k, from int) {
		if line.Stitches[k].Kind != plan.WorkedStitch || line.Stitches[from].Kind == plan.WorkedSlip {
			return
		}
		r.nodes[k].v = max(r.nodes[k].v, r.nodes[from].v-drop)
	}
	for k := 1; k < len(r.nodes); k++ {
		up(k, k-1)
	}
	for k := len(r.nodes) - 2; k >= 0; k-- {
		up(k, k+1)
	}
}

// even lifts heads towards higher ones close by, so that rows of tall and short stitches do not drift apart column by column.
func (l *layout) even(i int) {
	const reach, share = 3, 0.35
	line, r := &l.s.Lines[i], &l.rows[i]
	n := len(r.nodes)
	was := make([]float64, n)
	for k := range r.nodes {
		if was[k] = r.nodes[k].v; line.Stitches[k].Kind != plan.WorkedStitch {
			was[k] = 0
		}
	}
	for k := range r.nodes {
		if line.Stitches[k].Kind != plan.WorkedStitch {
			continue
		}
		top := was[k]
		for d := -reach; d <= reach; d++ {
			j := k + d
			if r.closed && n > 2*reach {
				j = (j + n) % n
			}
			if j >= 0 && j < n {
				top = max(top, was[j])
			}
		}
		r.nodes[k].v += share * (top - was[k])
	}
}

// ground is how high the work below a line is, where nothing else says what a line stands on.
func (l *layout) ground(i int) float64 {
	top := 0.0
	for _, n := range l.rows[i-1].nodes {
		top = max(top, n.v)
	}
	return top
}

// measure finds the distance at which the places of a round are counted, and lifts the round if its stitches have no room there.
func (l *layout) measure(i int) {
	line, r := &l.s.Lines[i], &l.rows[i]
	if !l.s.Outward {
		return
	}
	r.v = math.Inf(1)
	need := 0.0
	for k := range r.nodes {
		if line.Stitches[k].Kind == plan.WorkedStitch || line.Stitches[k].Kind == plan.WorkedSpace || len(r.nodes) == 1 {
			r.v = min(r.v, r.nodes[k].v)
		}
		need += r.nodes[k].least
	}
	if math.IsInf(r.v, 1) {
		r.v = max(l.ground(max(i, 1)), 1)
	}
	least := l.frame.least(need)
	if f, ok := l.frame.(sides); ok {
		least = max(least, l.longestSide(i)/(2*math.Tan(math.Pi/float64(f.n))))
	}
	if !r.closed {
		least *= 0.6 // rows about a point leave a part of the circle free
	}
	if lift := least - r.v; lift > 0 {
		r.v += lift
		for k := range r.nodes {
			r.nodes[k].v += lift
		}
	}
}

// longestSide is how much the stitches between two corners need at most.
func (l *layout) longestSide(i int) float64 {
	pins := l.pins(i, 1)
	most, sum, first := 0.0, 0.0, -1
	n := len(l.rows[i].nodes)
	if len(pins) == 0 {
		return 0
	}
	for k := range 2 * n {
		if _, pinned := pins[k%n]; pinned {
			if first >= 0 {
				most = max(most, sum)
			}
			first, sum = k, 0
		}
		sum += l.rows[i].nodes[k%n].least
	}
	return most
}
