package chart

import (
	"math"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// layout is a chart in the making.
type layout struct {
	s       *plan.Stitches
	tall    func(stitch.ID) float64
	em      float64
	turned  [][]int // the lines whose order is not that of making
	frame   frame
	pitch   float64
	rows    []row
	corners [][]corner
	feeds   []map[int]int  // which places of a line the first corners stand on, and the number of the corner
	single  []map[int]bool // spaces of a line whose chains are worked into one by one
	covered [][]float64    // how high the work over each place reaches; 0: nothing is worked into it
}

// row is a line in the making.
type row struct {
	nodes  []node
	v      float64 // the distance at which s is measured
	way    float64 // 1 where s grows in the order of making, else -1
	closed bool
	hub    bool // it is the middle of the work
}

// node is something in a row.
type node struct {
	s, v   float64
	feet   []foot
	tall   float64
	under  float64 // the height that it stands on
	spike  bool
	set    bool // v is known
	least  float64
	bulge  float64 // of a space: how far its middle rises over its ends
	across float64 // of a space: from end to end
	corner bool    // it stands at a corner
}

// foot is a place that something is worked into.
type foot struct {
	s, v, nominal float64
	clear         float64 // how much farther than usual a foot stays off
	hub           bool
	line, at      int
}

func newLayout(s *plan.Stitches, tall func(stitch.ID) float64, em float64) *layout {
	l := &layout{s: s, tall: tall, em: em, frame: flat{}, pitch: flatPitch, rows: make([]row, len(s.Lines)), covered: make([][]float64, len(s.Lines))}
	for i := range s.Lines {
		l.covered[i] = make([]float64, len(s.Lines[i].Stitches))
	}
	l.single = make([]map[int]bool, len(s.Lines))
	for i := range s.Lines {
		for _, w := range s.Lines[i].Stitches {
			for _, f := range w.Feet {
				if f.Into == plan.FootChain && f.Line >= 0 && f.Line < i {
					if l.single[f.Line] == nil {
						l.single[f.Line] = map[int]bool{}
					}
					l.single[f.Line][f.At] = true
				}
			}
		}
	}
	if !s.Outward {
		return l
	}
	l.pitch, l.frame = roundPitch, disc{}
	l.feeds = make([]map[int]int, len(s.Lines))
	if n := l.both(); n > 1 {
		l.frame = oval{half: flatPitch * float64(n-1) / 2}
		return l
	}
	k, found := corners(s)
	if k == 0 {
		return l
	}
	l.frame, l.corners = sides{k}, found
	for _, list := range found {
		if len(list) == 0 {
			continue
		}
		feed := map[int]int{}
		for n, c := range list {
			feed[c.foot.At] = n
		}
		l.feeds[list[0].foot.Line] = feed
		break
	}
	return l
}

// both is how many chains the first line has, if the first round goes round both sides of them; else 0. Those that are met again from
// below stand behind the others in the line.
func (l *layout) both() int {
	list := l.s.Lines[0].Stitches
	for k := range list {
		if len(list[k].Feet) > 0 && list[k].Feet[0].Into == plan.FootBelow {
			return k
		}
	}
	return 0
}

// again is the chain that a place of the first line meets from below, and false if it is a chain itself.
func (l *layout) again(k int) (int, bool) {
	w := &l.s.Lines[0].Stitches[k]
	if len(w.Feet) == 0 || w.Feet[0].Into != plan.FootBelow {
		return 0, false
	}
	return w.Feet[0].At, true
}

// line lays out one line, those below it being done.
func (l *layout) line(i int) {
	line, r := &l.s.Lines[i], &l.rows[i]
	n := len(line.Stitches)
	r.way, r.nodes = 1, make([]node, n)
	if line.FromLeft {
		r.way = -1
	}
	r.closed = line.Closed && l.s.Outward
	if l.middle(i) {
		return
	}
	l.feet(i)
	l.heights(i)
	l.measure(i)
	l.place(i)
	l.spaces(i)
	l.fans(i)
	for k := range r.nodes {
		for _, f := range r.nodes[k].feet {
			if f.line < i && !r.nodes[k].spike {
				l.covered[f.line][f.at] = max(l.covered[f.line][f.at], r.nodes[k].v)
			}
		}
	}
}

// middle lays out the first line where it is the middle of rounds.
func (l *layout) middle(i int) bool {
	if i > 0 || !l.s.Outward {
		return false
	}
	line, r := &l.s.Lines[0], &l.rows[0]
	n := len(line.Stitches)
	ring := n > 0 && line.Stitches[0].Kind == plan.WorkedRing
	if o, ok := l.frame.(oval); ok {
		r.v = chainHigh / 2
		for k := range r.nodes {
			chain, below := l.again(k)
			if !below {
				chain = k
			}
			x := o.half - flatPitch*float64(chain) // the first that is worked into lies at the right
			nd := node{s: math.Pi/2*r.v + o.half - x, v: r.v, set: true, least: flatPitch}
			switch {
			case below:
				nd.s = math.Pi*1.5*r.v + 3*o.half + x
			case x > o.half-1e-9:
				nd.s = 0
			case x < 1e-9-o.half:
				nd.s = math.Pi*r.v + 2*o.half
			}
			r.nodes[k] = nd
		}
		return true
	}
	if !ring && n > 2 {
		return false
	}
	r.hub, r.v = true, ringRadius
	if ring {
		r.v = max(r.v, float64(line.Stitches[0].Chains)*chainLong*1.1/(2*math.Pi)+chainHigh/2)
	}
	for k := range r.nodes {
		r.nodes[k] = node{v: r.v, set: true}
	}
	return true
}

// feet gathers where the feet of a line are.
func (l *layout) feet(i int) {
	r := &l.rows[i]
	for k := range r.nodes {
		w := &l.s.Lines[i].Stitches[k]
		for _, f := range w.Feet {
			if f.Line < 0 || f.Line >= i || f.At < 0 || f.At >= len(l.rows[f.Line].nodes) {
				continue // a round is joined to itself; what is not drawn has no place
			}
			r.nodes[k].feet = append(r.nodes[k].feet, l.foot(f))
		}
	}
	// Several stitches in a space stand side by side in it.
	for k := 0; k < len(r.nodes); {
		f, ok := l.spaceUnder(i, k)
		if !ok {
			k++
			continue
		}
		var same []int
		end := k
		for j := k; j < len(r.nodes); j++ {
			g, ok := l.spaceUnder(i, j)
			if ok && g == f {
				same, end = append(same, j), j
			} else if l.s.Lines[i].Stitches[j].Kind == plan.WorkedStitch {
				break
			}
		}
		below := &l.rows[f.Line]
		room := below.nodes[f.At].across * 0.66
		step := min(0.55, room/float64(max(len(same)-1, 1)))
		for n, j := range same {
			off := r.way * step * (float64(n) - float64(len(same)-1)/2)
			g := &r.nodes[j].feet[0]
			g.s += off
			g.v = below.nodes[f.At].over(off)
		}
		k = end + 1
	}
}

// over is how high the arc of a space is so far from its middle.
func (n *node) over(off float64) float64 {
	if n.across < 1e-9 {
		return n.v
	}
	t := min(math.Abs(off)*2/n.across, 1)
	return n.v - n.bulge*t*t
}

// spaceUnder is the foot of a stitch that is worked into a space and nothing else.
func (l *layout) spaceUnder(i, k int) (plan.Foot, bool) {
	w := &l.s.Lines[i].Stitches[k]
	if w.Kind != plan.WorkedStitch || len(w.Feet) != 1 || len(l.rows[i].nodes[k].feet) != 1 {
		return plan.Foot{}, false
	}
	f := w.Feet[0]
	return f, f.Into == plan.FootTop && l.s.Lines[f.Line].Stitches[f.At].Kind == plan.WorkedSpace
}

// foot is where a place lies.
func (l *layout) foot(f plan.Foot) foot {
	r := &l.rows[f.Line]
	n := &r.nodes[f.At]
	out := foot{s: n.s, v: n.v, nominal: r.v, hub: r.hub, line: f.Line, at: f.At}
	if r.hub {
		return out
	}
	if l.s.Lines[f.Line].Stitches[f.At].Kind == plan.WorkedSpace {
		out.clear = chainHigh / 2 // a space is as high as the middle of its chains
	}
	if o, ok := l.frame.(oval); ok && f.Line == 0 && (n.s == 0 || math.Abs(n.s-math.Pi*r.v-2*o.half) < 1e-9) {
		out.clear = (chainLong - chainHigh) / 2 // the end of a chain reaches farther than its side
	}
	switch f.Into {
	case plan.FootChain:
		w := &l.s.Lines[f.Line].Stitches[f.At]
		if many := w.Chains; w.Kind == plan.WorkedSpace && many > 1 {
			off := r.way * n.across * ((float64(min(max(f.Chain, 0), many-1))+0.5)/float64(many) - 0.5)
			out.s += off
			out.v = n.over(off)
		}
	case plan.FootGap:
		if f.At+1 < len(r.nodes) {
			next := &r.nodes[f.At+1]
			out.s, out.v = (n.s+next.s)/2, min(n.v, next.v)
		} else if r.closed && len(r.nodes) > 1 {
			out.s += (r.nodes[0].s + r.way*l.frame.length(r.v) - n.s) / 2
		}
	case plan.FootSide:
		out.v = (n.v + n.under) / 2
		if f.At == 0 {
			out.s -= r.way * l.pitch / 2
		} else {
			out.s += r.way * l.pitch / 2
		}
	case plan.FootBelow:
		out.v = n.under
	}
	return out
}

// width is how much of a row something needs.
func (l *layout) width(i, k int) float64 {
	w := &l.s.Lines[i].Stitches[k]
	switch w.Kind {
	case plan.WorkedSpace:
		if l.single[i][k] { // a stitch will stand on each of its chains
			return l.pitch * float64(max(w.Chains, 1))
		}
		return chainPitch * min(1+0.35*float64(max(w.Chains, 1)-1), 2.2)
	case plan.WorkedSlip:
		return slipPitch
	case plan.WorkedBegin:
		return beginPitch
	}
	if w.Form.ID == stitch.Slip {
		return 0.8 * l.pitch
	}
	return l.pitch
}

// gap is the least distance between a stitch of a line and the next.
func (l *layout) gap(i, k int) float64 {
	list := l.s.Lines[i].Stitches
	next := k + 1
	if next == len(list) {
		next = 0
	}
	g := (l.width(i, k) + l.width(i, next)) / 2
	if !l.single[i][k] && !l.single[i][next] && (list[k].Kind == plan.WorkedSpace || list[next].Kind == plan.WorkedSpace) {
		g *= 0.9
	}
	// The feet of stitches worked together stand out towards the chains at the beginning of the row.
	for _, at := range [2]int{k, next} {
		if list[k+next-at].Kind == plan.WorkedBegin && len(list[at].Feet) > 1 {
			g += l.pitch * 0.4 * float64(len(list[at].Feet)-1)
		}
	}
	if next > 0 && !l.s.Outward && sameFoot(&list[k], &list[next]) {
		g *= fanPitch
	}
	if next == 0 && i > 0 {
		g += l.joinWide(i) + l.numberWide(i) + besideText
	}
	return g
}

// sameFoot reports whether two stitches go into one place, and into no space, in which they stand side by side.
func sameFoot(a, b *plan.Worked) bool {
	return a.Kind == plan.WorkedStitch && b.Kind == plan.WorkedStitch && len(a.Feet) == 1 && len(b.Feet) == 1 && a.Feet[0] == b.Feet[0]
}

// joinWide is the room for the slip stitch that joins a round, numberWide that for its number.
func (l *layout) joinWide(i int) float64 {
	if line := &l.s.Lines[i]; !line.Joined {
		return 0
	}
	return joinRoom
}

func (l *layout) numberWide(i int) float64 {
	if l.s.Lines[i].Number == 0 || !l.s.Outward {
		return 0
	}
	return digitWide * l.em * float64(digits(l.s.Lines[i].Number))
}

func digits(n int) int {
	d := 1
	for ; n > 9; n /= 10 {
		d++
	}
	return d
}
