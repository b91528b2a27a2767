package chart

import (
	"math"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/page"
)

// chart gives the points of what is laid out.
func (l *layout) chart() *Chart {
	c := &Chart{Lines: make([]Line, len(l.rows)), Outward: l.s.Outward}
	for i := range l.rows {
		c.Lines[i] = l.points(i)
	}
	l.arrow(c)
	c.Repeat = l.repeat()
	c.bound()
	return c
}

func (l *layout) at(i int, s, v float64) (p, up page.Point) {
	r := &l.rows[i]
	if o, ok := l.frame.(oval); ok && i == 0 {
		_, k, t := o.stretch(s, r.v)
		switch k { // a chain lies on the segment itself
		case 0, 4:
			return page.Point{X: o.half}, page.Point{Y: -1}
		case 1:
			return page.Point{X: o.half - t}, page.Point{Y: -1}
		case 2:
			return page.Point{X: -o.half}, page.Point{Y: -1}
		}
		return page.Point{X: t - o.half}, page.Point{Y: -1}
	}
	return l.frame.at(s, r.v, v)
}

// ahead is the direction in which a row is worked, where up leads away from the row below.
func (r *row) ahead(up page.Point) page.Point {
	return times(page.Point{X: up.Y, Y: -up.X}, r.way)
}

func (l *layout) points(i int) Line {
	line, r := &l.s.Lines[i], &l.rows[i]
	out := Line{Stitches: make([]Stitch, len(r.nodes))}
	for k := range r.nodes {
		l.point(i, k, &out.Stitches[k])
	}
	l.rooms(i, out.Stitches)
	l.shared(i, out.Stitches)
	l.broken(i, out.Stitches)
	if len(r.nodes) == 0 {
		return out
	}
	l.ends(i, &out)
	if line.Joined && r.closed && !l.joins(i) {
		first := &r.nodes[0]
		p, _ := l.at(i, first.s-r.way*(l.width(i, 0)/2+0.06), first.v)
		out.Join = &p
	} else if line.Joined && line.Closed && !l.joins(i) {
		last, s := &r.nodes[len(r.nodes)-1], 0.0
		if s = last.s + r.way*0.75; l.turned[i] != nil {
			last = &r.nodes[0]
			s = last.s - r.way*0.75
			out.Begin = minus(out.Begin, times(out.Way, 0.6))
		}
		p, _ := l.at(i, s, last.v)
		out.Join = &p
	}
	return out
}

// joins reports whether the slip stitch that closes a round is among its stitches.
func (l *layout) joins(i int) bool {
	list := l.s.Lines[i].Stitches
	last := &list[len(list)-1]
	return last.Kind == plan.WorkedSlip && len(last.Feet) > 0 && last.Feet[0].Line == i
}

// point finds the points of one thing.
func (l *layout) point(i, k int, out *Stitch) {
	w, n, r := &l.s.Lines[i].Stitches[k], &l.rows[i].nodes[k], &l.rows[i]
	if r.hub {
		*out = Stitch{Up: page.Point{Y: -1}, Room: 2 * r.v}
		if len(r.nodes) > 1 {
			out.Head.X = chainLong * (float64(len(r.nodes)-1)/2 - float64(k))
		}
		out.Ovals = []Oval{{out.Head, page.Point{X: 1}, chainLong}}
		if w.Kind == plan.WorkedRing {
			out.Ovals = ringOf(w.Chains, r.v)
		}
		return
	}
	out.Head, out.Up = l.at(i, n.s, n.v)
	switch {
	case w.Kind == plan.WorkedSpace:
		l.arc(i, k, out)
		return
	case w.Kind == plan.WorkedStitch && w.Form.ID == stitch.Chain:
		if i == 0 {
			if _, below := l.again(k); below {
				return // it is drawn where it was made
			}
		}
		middle := out.Head
		if _, isOval := l.frame.(oval); !isOval || i > 0 {
			middle = minus(out.Head, times(out.Up, chainHigh/2))
		}
		out.Ovals = []Oval{{middle, page.Point{X: -out.Up.Y, Y: out.Up.X}, chainLong}}
		return
	case w.Kind == plan.WorkedSlip || w.Kind == plan.WorkedEnd || w.Kind == plan.WorkedRing:
		return
	}
	clear := clearance(w.Form)
	standing := w.Kind == plan.WorkedBegin || w.Begin
	for _, f := range n.feet {
		p, up := page.Point{}, page.Point{}
		if f.hub {
			up = unit(out.Head, page.Point{Y: -1})
			p = times(up, f.v)
		} else {
			p, up = l.at(f.line, f.s, f.v)
			if _, isOval := l.frame.(oval); isOval && f.line == 0 {
				p, up = l.frame.at(f.s, f.nominal, f.v)
			}
		}
		if standing && l.besides(i, k) {
			p = minus(p, times(r.ahead(up), 0.27))
		}
		out.Feet = append(out.Feet, plus(p, times(up, clear+f.clear)))
	}
	if len(out.Feet) == 0 {
		s := n.s
		p, up := l.at(i, s, n.under)
		if standing {
			clear := footClear
			if _, isOval := l.frame.(oval); isOval && i == 1 {
				clear += chainLong / 2
				aside := times(r.ahead(up), ovalBegin)
				p, out.Head = minus(p, aside), minus(out.Head, aside)
			}
			out.Feet = append(out.Feet, plus(p, times(up, clear)))
		} else {
			// A stitch that makes its own chain stands on it.
			base := plus(p, times(up, footClear+chainHigh/2))
			out.Ovals = []Oval{{base, page.Point{X: -up.Y, Y: up.X}, chainLong}}
			out.Feet = append(out.Feet, plus(base, times(up, chainHigh/2+clear)))
		}
	}
	if standing {
		out.Ovals = stack(out.Head, out.Feet[0], out.Up, max(w.Chains, 1))
	} else if w.Kind == plan.WorkedStitch {
		middle := page.Point{}
		for _, f := range out.Feet {
			middle = plus(middle, times(f, 1/float64(len(out.Feet))))
		}
		out.Up = unit(minus(out.Head, middle), out.Up)
	}
}

// besides reports whether the stitch after one goes into the same place: chains are wider than a stem, and stand beside it.
func (l *layout) besides(i, k int) bool {
	nodes := l.rows[i].nodes
	if k+1 >= len(nodes) || len(nodes[k].feet) == 0 || len(nodes[k+1].feet) == 0 {
		return false
	}
	a, b := nodes[k].feet[0], nodes[k+1].feet[0]
	return !a.hub && a.line == b.line && a.at == b.at && a.s == b.s
}

// clearance is how far a foot stays off what it stands on.
func clearance(f stitch.Form) float64 {
	switch {
	case f.Post != stitch.NoPost:
		return postClear
	case f.Loop != stitch.BothLoops:
		return loopClear
	}
	return footClear
}

// stack is chains that stand upright, one over the other.
func stack(head, foot, way page.Point, n int) []Oval {
	up := minus(head, foot)
	if least := 0.45 * float64(n); long(up) < least {
		up = times(way, least)
	}
	along := unit(up, page.Point{Y: -1})
	each := min(long(up)/float64(n), chainLong*1.2)
	var out []Oval
	for k := range n {
		out = append(out, Oval{plus(foot, times(along, each*(float64(k)+0.5))), along, each * 0.95})
	}
	return out
}

// ringOf is a ring of chains, or a plain circle if there are none.
func ringOf(n int, radius float64) []Oval {
	if n < 3 || n > 12 {
		return nil
	}
	var out []Oval
	away := radius - chainHigh/2
	for k := range n {
		sin, cos := math.Sincos(2 * math.Pi * float64(k) / float64(n))
		out = append(out, Oval{page.Point{X: -away * sin, Y: -away * cos}, page.Point{X: -cos, Y: sin}, min(chainLong, 2*math.Pi*away/float64(n)*0.9)})
	}
	return out
}

// arc is the chains of a space.
func (l *layout) arc(i, k int, out *Stitch) {
	w, r := &l.s.Lines[i].Stitches[k], &l.rows[i]
	n := &r.nodes[k]
	chains := max(w.Chains, 1)
	on := func(t float64) page.Point { // t from -1 to 1 in the order of making
		p, _ := l.at(i, n.s+r.way*t*n.across/2, n.v-n.bulge*t*t)
		return p
	}
	length := n.across + 8*n.bulge*n.bulge/(3*max(n.across, 0.1))
	each := min(length/float64(chains)*0.94, chainLong*1.3)
	if n.corner {
		each = min(each, cornerLong)
	}
	if each < 0.36 || chains > 12 {
		out.Many = chains
		for _, t := range [3]float64{-1, 0, 1} {
			out.Ovals = append(out.Ovals, Oval{on(t), page.Point{X: 1}, 0})
		}
		return
	}
	for c := range chains {
		t := (2*float64(c) + 1 - float64(chains)) / float64(chains)
		out.Ovals = append(out.Ovals, Oval{on(t), unit(minus(on(t+0.01), on(t-0.01)), page.Point{X: 1}), each})
	}
}

// rooms finds how near the neighbours of each stitch are.
func (l *layout) rooms(i int, list []Stitch) {
	r := &l.rows[i]
	n := len(list)
	for k := range list {
		room := math.Inf(1)
		for _, j := range [2]int{k - 1, k + 1} {
			if j < 0 || j >= n {
				if !r.closed || n < 3 {
					continue
				}
				j = (j + n) % n
			}
			room = min(room, long(minus(list[j].Head, list[k].Head)))
		}
		if list[k].Room == 0 {
			list[k].Room = min(room, 2*l.pitch)
		}
	}
}

// shared marks stitches whose feet or head are not theirs alone.
func (l *layout) shared(i int, list []Stitch) {
	mark := func(a, b int) {
		for _, p := range list[a].Feet {
			for _, q := range list[b].Feet {
				if long(minus(p, q)) < 0.6 {
					list[a].Shared, list[b].Shared = true, true
				}
			}
		}
	}
	for k := range list {
		list[k].Shared = list[k].Shared || len(list[k].Feet) > 1
		for j := k + 1; j < len(list) && j < k+4; j++ {
			mark(k, j)
		}
	}
	if n := len(list); l.rows[i].closed && n > 2 {
		mark(n-1, 0)
	}
}

// broken finds where the stems of stitches cross, and which of the two lies behind: the one made first, unless the later one was worked
// behind it.
func (l *layout) broken(i int, list []Stitch) {
	const reach = 12
	line := &l.s.Lines[i]
	for k := range list {
		if line.Stitches[k].Kind != plan.WorkedStitch || len(list[k].Feet) != 1 {
			continue
		}
		for j := k + 1; j < len(list) && j <= k+reach; j++ {
			if line.Stitches[j].Kind != plan.WorkedStitch || len(list[j].Feet) != 1 {
				continue
			}
			behind, over := k, j
			if line.Stitches[j].Behind {
				behind, over = j, k
			}
			t, ok := crossing(list[behind].Head, list[behind].Feet[0], list[over].Head, list[over].Feet[0])
			if ok && t < 0.97 {
				list[behind].Broken = append(list[behind].Broken, t)
			}
		}
	}
}

// ends finds where the number of a row and its count stand.
func (l *layout) ends(i int, out *Line) {
	r := &l.rows[i]
	n := len(r.nodes)
	first, last := &r.nodes[0], &r.nodes[n-1]
	low := func(nd *node) float64 {
		under := nd.under
		if under == 0 || under >= nd.v {
			under = max(nd.v-1, 0)
		}
		return under + 0.6*(nd.v-under)
	}
	if r.hub {
		return
	}
	_, up := l.at(i, first.s, first.v)
	out.Way = r.ahead(up)
	v := low(first)
	if !l.s.Outward {
		off := func(k int) float64 { // clear of the stitch, and of the feet of those worked together
			spread := 0.0
			for _, f := range r.nodes[k].feet {
				spread = max(spread, math.Abs(f.s-r.nodes[k].s))
			}
			return max(l.width(i, k)/2, spread) + max(0.3, 0.42*l.em)
		}
		if n > 1 && l.s.Lines[i].Stitches[0].Kind == plan.WorkedBegin {
			v = low(&r.nodes[1])
		}
		out.Begin, _ = l.at(i, first.s-r.way*off(0), v)
		end := off(n - 1)
		if out.Join != nil || l.s.Lines[i].Joined {
			end += 0.6
		}
		out.End, _ = l.at(i, last.s+r.way*end, low(last)-0.1)
		return
	}
	for k := range r.nodes { // slip stitches at the beginning lie lower than the row
		if l.s.Lines[i].Stitches[k].Kind != plan.WorkedSlip {
			v = max(v, low(&r.nodes[k]))
			break
		}
	}
	if !r.closed {
		out.Begin, _ = l.at(i, first.s-r.way*(l.width(i, 0)/2+besideText+l.numberWide(i)/2), v)
		out.End, _ = l.at(i, last.s+r.way*1.1, low(last))
		return
	}
	off := l.width(i, 0)/2 + l.joinWide(i) + besideText/2 + l.numberWide(i)/2
	if gap := r.way*first.s + l.frame.length(r.v) - r.way*last.s; !l.s.Lines[i].Joined && l.s.Lines[i].Stitches[0].Kind == plan.WorkedStitch {
		off = max(off, gap/2)
	}
	out.Begin, _ = l.at(i, first.s-r.way*off, v)
	out.End, _ = l.at(i, last.s, last.v+0.6)
}

// arrow finds where the arrow stands.
func (l *layout) arrow(c *Chart) {
	top := 0.0
	for i := range l.rows {
		for _, n := range l.rows[i].nodes {
			top = max(top, n.v)
		}
	}
	for k := range l.rows {
		i := k
		if l.s.Outward {
			i = len(l.rows) - 1 - k
		}
		r := &l.rows[i]
		if l.s.Lines[i].Number == 0 || l.s.Lines[i].Base || len(r.nodes) == 0 || r.hub {
			continue
		}
		first := &r.nodes[0]
		if !l.s.Outward {
			c.Arrow, c.Way = plus(c.Lines[i].Begin, times(c.Lines[i].Way, -0.35)), c.Lines[i].Way
			return
		}
		p, up := l.frame.at(first.s-r.way*0.4, r.v, top+1)
		c.Arrow, c.Way = p, r.ahead(up)
		return
	}
}

// repeat finds the marks of the repeat.
func (l *layout) repeat() *Repeat {
	rep := l.s.Repeat
	n := len(l.rows[0].nodes)
	if rep.N < 1 || rep.From < 0 || rep.From+rep.N > n || l.rows[0].hub || n < 2 {
		return nil
	}
	r := &l.rows[0]
	if _, ok := l.frame.(oval); ok {
		return nil
	}
	edge := func(k int) float64 {
		switch {
		case k == 0:
			return r.nodes[0].s - r.way*l.pitch/2
		case k == n:
			return r.nodes[n-1].s + r.way*l.pitch/2
		}
		return (r.nodes[k-1].s + r.nodes[k].s) / 2
	}
	top := 0.0
	for i := range l.rows {
		for _, nd := range l.rows[i].nodes {
			top = max(top, nd.v)
		}
	}
	a, b := edge(rep.From), edge(rep.From+rep.N)
	out := &Repeat{N: rep.N, Times: rep.Times}
	bottom, bracket := -0.75, -1.05
	at := func(s, v float64) page.Point { p, _ := l.at(0, s, v); return p }
	if l.s.Outward {
		bottom, top = r.v+0.1, top+0.7
		bracket = top + 0.2
	} else {
		top += 0.5 + l.frame.(flat).bend.most()
		at = func(s, v float64) page.Point { p, _ := flat{}.at(s, 0, v); return p } // straight, below and above all waves
	}
	for k, s := range [2]float64{a, b} {
		out.Sides[k] = [2]page.Point{at(s, bottom), at(s, top)}
	}
	const steps = 24
	for k := range steps + 1 {
		out.Bracket = append(out.Bracket, at(a+(b-a)*float64(k)/steps, bracket))
	}
	beyond := bracket - 0.75
	if l.s.Outward {
		beyond = bracket + 0.75
	}
	out.Label = at((a+b)/2, beyond)
	return out
}

// bound finds the box of all points.
func (c *Chart) bound() {
	c.Min, c.Max = page.Point{X: math.Inf(1), Y: math.Inf(1)}, page.Point{X: math.Inf(-1), Y: math.Inf(-1)}
	add := func(p page.Point) {
		c.Min = page.Point{X: min(c.Min.X, p.X), Y: min(c.Min.Y, p.Y)}
		c.Max = page.Point{X: max(c.Max.X, p.X), Y: max(c.Max.Y, p.Y)}
	}
	for i := range c.Lines {
		for k := range c.Lines[i].Stitches {
			st := &c.Lines[i].Stitches[k]
			add(st.Head)
			for _, f := range st.Feet {
				add(f)
			}
			for _, o := range st.Ovals {
				add(o.At)
			}
		}
	}
	if math.IsInf(c.Min.X, 1) {
		c.Min, c.Max = page.Point{}, page.Point{}
	}
}
