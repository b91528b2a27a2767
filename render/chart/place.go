package chart

import (
	"math"

	"ovillo/compile/plan"
)

// How much it matters where things stand, beside 1 for a stitch over its foot.
const (
	cornerWeight = 1000
	roundStiff   = 4.0 // even distances in rounds about a point
	ovalStiff    = 2.0 // in rounds about a chain
	flatStiff    = 4.0 // in rows
	sideStiff    = 1.0 // along straight sides, where stitches stand upright
)

// pins are the stitches of a round that stand at its corners, and the place of the corner when the round is at the distance v.
func (l *layout) pins(i int, v float64) map[int]float64 {
	f, ok := l.frame.(sides)
	if !ok {
		return nil
	}
	r := &l.rows[i]
	out := map[int]float64{}
	for at, n := range l.feeds[i] {
		if at < len(r.nodes) {
			c := n
			if r.way < 0 {
				c = -1 - n
			}
			out[at] = f.corner(c, v)
		}
	}
	for _, c := range l.corners[i] {
		below := &l.rows[c.foot.Line]
		n := f.nearest(below.nodes[c.foot.At].s, below.v)
		for _, k := range c.middle {
			out[k] = f.corner(n, v)
		}
	}
	return out
}

// place sets the nodes of a line along it.
func (l *layout) place(i int) {
	line, r := &l.s.Lines[i], &l.rows[i]
	n := len(r.nodes)
	if n == 0 {
		return
	}
	w := wish{at: make([]float64, n), weight: make([]float64, n), least: make([]float64, n), ideal: make([]float64, n), stiff: sideStiff}
	if !l.s.Outward {
		w.stiff = flatStiff
	}
	around := math.Inf(1)
	switch {
	case l.s.Outward:
		around = l.frame.length(r.v)
	case line.Closed && i > 0: // laid flat, it goes on at the other end of the round below
		lo, hi := l.rows[i-1].ends()
		around = hi - lo + l.pitch
	}
	total, wide := 0.0, l.widened(i)
	for k := range r.nodes {
		w.least[k] = r.nodes[k].least * wide
		total += w.least[k]
	}
	near := func(x, want float64) float64 { // the same place of a round, on the turn on which the row goes on to it
		if math.IsInf(around, 1) {
			return x
		}
		const back = 0.25 // a row goes back a little at most
		return x + around*math.Ceil((want-x)/around-back)
	}
	pins := l.pins(i, r.v)
	last, anchors := 0.0, 0
	if !l.s.Outward && line.Closed && i > 0 && n > 0 {
		last = l.edge(i)
	}
	for k := range r.nodes {
		want := last
		if k > 0 {
			want += w.least[k-1] * 0.5
		}
		sum, m := 0.0, 0.0
		for j := range r.nodes[k].feet {
			f := &r.nodes[k].feet[j]
			if f.hub {
				continue
			}
			at := r.way * l.frame.carry(f.s, f.nominal, r.v)
			x := near(at, want)
			if !l.s.Outward {
				f.s += r.way * (x - at) // the place behind the seam of a round that is laid flat
			}
			sum, m, want = sum+x, m+1, x
		}
		w.at[k] = want
		if m > 0 {
			w.at[k], w.weight[k] = sum/m, 1
		}
		switch line.Stitches[k].Kind {
		case plan.WorkedSlip, plan.WorkedBegin:
			w.weight[k] *= 0.2
		}
		if r.nodes[k].spike {
			w.weight[k] *= 0.3
		}
		if s, ok := pins[k]; ok {
			w.at[k], w.weight[k] = near(r.way*s, want), cornerWeight
		}
		if w.weight[k] > 0 {
			last = w.at[k]
			anchors++
		} else {
			last = want
		}
	}
	if r.closed {
		w.length = around
	}
	l.ideals(i, &w, total)
	if anchors == 0 {
		l.free(i, &w, r.closed, total)
	}
	for k, x := range w.settle() {
		r.nodes[k].s = r.way * x
	}
}

// widened is how much farther apart the places of a line are than they must be. Of rounds that are laid flat the first lies as wide as
// the widest needs, since they grow all along, so that stems do not lean more and more towards the ends.
func (l *layout) widened(i int) float64 {
	if i > 0 || l.s.Outward || len(l.s.Lines) < 2 || !l.s.Lines[1].Closed {
		return 1
	}
	first, most := 0.0, 0.0
	for j := range l.s.Lines {
		need := 0.0
		for k := range l.s.Lines[j].Stitches {
			need += l.gap(j, k)
		}
		if most = max(most, need); j == 0 {
			first = need
		}
	}
	return min(most/max(first, 1e-9), 3)
}

// ends are the least and the greatest place of a row.
func (r *row) ends() (lo, hi float64) {
	if len(r.nodes) == 0 {
		return 0, 0
	}
	lo, hi = math.Inf(1), math.Inf(-1)
	for k := range r.nodes {
		lo, hi = min(lo, r.nodes[k].s), max(hi, r.nodes[k].s)
	}
	return lo, hi
}

// edge is where a round that is laid flat begins: at the end of the one below that its direction comes from.
func (l *layout) edge(i int) float64 {
	lo, hi := l.rows[i-1].ends()
	if l.rows[i].way < 0 {
		return -hi
	}
	return lo
}

// ideals finds the distances that would be best. In rounds about a point all are the same share of the round; elsewhere those of the feet
// are kept, so that stitches stand upright, unless they are too narrow or so wide that the row would fall apart.
func (l *layout) ideals(i int, w *wish, total float64) {
	n := len(w.at)
	if stiff := evenness(l.frame, i); stiff > 0 && w.length > 0 {
		w.stiff = stiff
		share := max(w.length/total, 1)
		fixed := 0.0
		for k := range w.ideal {
			if l.starts(i, k) {
				fixed += w.least[k]
			}
		}
		if total > fixed {
			share = max((w.length-fixed)/(total-fixed), 1)
		}
		for k := range w.ideal {
			if w.ideal[k] = w.least[k] * share; l.starts(i, k) { // the seam does not widen with the round
				w.ideal[k] = w.least[k]
			}
		}
		return
	}
	copy(w.ideal, w.least)
	before, sum := -1, 0.0
	for k := range n {
		if w.weight[k] > 0 {
			if before >= 0 && sum > 0 {
				most := 2.0
				switch {
				case l.s.Lines[i].Closed:
					most = 3
				case k == before+1: // what is skipped without chains draws the row together
					most = 1.28
				}
				share := min(max((w.at[k]-w.at[before])/sum, 1), most)
				for j := before; j < k; j++ {
					w.ideal[j] *= share
				}
			}
			before, sum = k, 0
		}
		sum += w.least[k]
	}
}

// evenness is how much even distances matter in a round that has no corners; 0 in other frames, and next to a chain, where stitches
// stand on their own chains.
func evenness(f frame, round int) float64 {
	switch _, isOval := f.(oval); {
	case f == disc{}:
		return roundStiff
	case isOval && round > 1:
		return ovalStiff
	}
	return 0
}

// starts reports whether what follows a stitch begins a round.
func (l *layout) starts(i, k int) bool {
	list := l.s.Lines[i].Stitches
	if k == len(list)-1 {
		return i > 0
	}
	return list[k].Kind == plan.WorkedBegin || list[k].Kind == plan.WorkedSlip || list[k+1].Kind == plan.WorkedBegin
}

// free sets a row that stands on nothing that is drawn: evenly round, or side by side.
func (l *layout) free(i int, w *wish, closed bool, total float64) {
	n := len(w.at)
	if closed {
		l.ideals(i, w, total)
		if _, ok := l.frame.(disc); !ok {
			for k := range n {
				w.ideal[k] = w.least[k] * w.length / total
			}
		}
		at := w.ideal[n-1] / 2
		for k := range n {
			w.at[k], w.weight[k] = at, 1
			at += w.ideal[k]
		}
		return
	}
	at := 0.0
	if l.s.Outward {
		at = -(total - w.least[n-1]) / 2
	}
	for k := range n {
		w.at[k], w.weight[k] = at, 1
		at += w.least[k]
	}
}

// spaces finds the arcs of chains between the heads beside them.
func (l *layout) spaces(i int) {
	line, r := &l.s.Lines[i], &l.rows[i]
	n := len(r.nodes)
	solid := func(k int) bool {
		switch line.Stitches[k].Kind {
		case plan.WorkedSpace, plan.WorkedSlip:
			return false
		}
		return true
	}
	around := 0.0
	if r.closed {
		around = l.frame.length(r.v)
	}
	pins := l.pins(i, r.v)
	for k := range r.nodes {
		if line.Stitches[k].Kind != plan.WorkedSpace {
			continue
		}
		nd := &r.nodes[k]
		a, aOK := l.beside(i, k, -1, solid)
		b, bOK := l.beside(i, k, 1, solid)
		x := r.way * nd.s
		from, to, base := x-nd.least/2, x+nd.least/2, nd.v
		if aOK {
			from, base = r.way*r.nodes[a].s, r.nodes[a].v
			if a > k {
				from -= around
			}
		}
		if bOK {
			to, base = r.way*r.nodes[b].s, r.nodes[b].v
			if b < k {
				to += around
			}
		}
		if aOK && bOK {
			base = (r.nodes[a].v + r.nodes[b].v) / 2
		}
		one := func(k int) float64 { // how far a head reaches towards the space
			if k >= 0 && k < n && l.height(line.Stitches[k].Form) > 1.2 && line.Stitches[k].Kind == plan.WorkedStitch {
				return 0.4
			}
			return 0.26
		}
		if aOK {
			from += one(a)
		}
		if bOK {
			to -= one(b)
		}
		// Two spaces side by side share the stretch.
		chains := float64(max(line.Stitches[k].Chains, 1))
		if _, corner := pins[k]; corner { // its middle stays where it is
			from, to = max(from, 2*x-to), min(to, 2*x-from)
		}
		nd.across = max(to-from, 0.3)
		if share := l.spacesBeside(i, k); share > 1 {
			nd.across /= share
		} else {
			nd.s = r.way * (from + to) / 2
		}
		// Chains lie end to end, in the middle of a stretch that is longer than they are.
		longest := chains * chainLong * 1.1
		if _, nd.corner = pins[k]; nd.corner {
			longest = chains * cornerLong * 1.55
		}
		if l.single[i][k] {
			longest = chains * l.pitch
		}
		nd.across = min(nd.across, longest)
		if over := chains*chainLong*0.96 - nd.across; over > 0 {
			nd.bulge = min(math.Sqrt(over*3*nd.across/8), 1.1)
		}
		if _, corner := pins[k]; corner {
			nd.bulge = 0
		} else if chains > 2 {
			nd.bulge = max(nd.bulge, 0.11*nd.across)
		}
		nd.v = base + nd.bulge
	}
}

// spacesBeside is how many spaces follow each other where one of them is.
func (l *layout) spacesBeside(i, k int) float64 {
	list := l.s.Lines[i].Stitches
	n := 1.0
	for j := k - 1; j >= 0 && list[j].Kind == plan.WorkedSpace; j-- {
		n++
	}
	for j := k + 1; j < len(list) && list[j].Kind == plan.WorkedSpace; j++ {
		n++
	}
	return n
}

// beside is the next solid thing in a direction, round the seam in a round.
func (l *layout) beside(i, k, step int, solid func(int) bool) (int, bool) {
	r := &l.rows[i]
	n := len(r.nodes)
	for d := 1; d < n; d++ {
		j := k + step*d
		if j < 0 || j >= n {
			if !r.closed {
				return 0, false
			}
			j = (j + n) % n
		}
		if solid(j) {
			return j, true
		}
	}
	return 0, false
}

// fans lets the heads of a shell lie on an arc, as they do in the fabric: those that lean more are lower.
func (l *layout) fans(i int) {
	if _, ok := l.frame.(sides); ok {
		return // the sides of a figure stay straight
	}
	line, r := &l.s.Lines[i], &l.rows[i]
	for k := 0; k < len(r.nodes); {
		n := &r.nodes[k]
		if line.Stitches[k].Kind != plan.WorkedStitch || len(n.feet) != 1 || n.feet[0].hub {
			k++
			continue
		}
		stitches, end := 0, k
		for j := k; j < len(r.nodes); j++ {
			m := &r.nodes[j]
			if line.Stitches[j].Kind == plan.WorkedStitch {
				if len(m.feet) != 1 || m.feet[0].line != n.feet[0].line || m.feet[0].at != n.feet[0].at {
					break
				}
				stitches, end = stitches+1, j
			}
		}
		for j := k; stitches > 3 && stitches < 10 && j <= end; j++ {
			if m := &r.nodes[j]; len(m.feet) == 1 {
				lean := m.s - l.frame.carry(m.feet[0].s, m.feet[0].nominal, r.v)
				m.v -= min(0.6*lean*lean/(2*m.tall), 0.32*m.tall)
			} else if line.Stitches[j].Kind == plan.WorkedSpace && j > k && j < end {
				lean := m.s - l.frame.carry(n.feet[0].s, n.feet[0].nominal, r.v)
				m.v -= min(0.6*lean*lean/(2*1.9), 0.6)
			}
		}
		k = end + 1
	}
}
