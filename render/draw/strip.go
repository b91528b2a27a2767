package draw

import "slices"

// shape is what a strip is made from: its rows counted outwards from what it hangs on.
type shape struct {
	widths []float64 // flat, one more than rows
	lean   []float64 // of the middle of each line, to the right when it grows upwards; nil if the strip is straight
	high   []float64
	step   [][2]bool // of each row, whether the left and the right edge steps there, when it grows upwards; nil: none does
	exact  []bool    // the width must stay
	stitch []float64
}

// outwards reads a piece from one of its edges.
func (pc *piece) outwards(from int) shape {
	n := len(pc.rows)
	s := shape{widths: pc.widths(), high: make([]float64, n), exact: make([]bool, n+1), stitch: make([]float64, n+1)}
	for k, r := range pc.rows {
		s.high[k], s.exact[k+1], s.stitch[k+1] = r.high, r.exact, r.stitch
	}
	s.exact[0], s.exact[n] = true, true
	s.stitch[0] = pc.rows[0].stitch
	if pc.lean != nil {
		s.lean = append([]float64(nil), pc.lean...)
	}
	s.step = slices.Clone(pc.steps)
	for k, at := range s.step {
		if at[0] || at[1] {
			s.exact[k], s.exact[k+1] = true, true
		}
	}
	if from == endEdge {
		s = s.reversed()
		for k := len(s.lean) - 1; k >= 0; k-- {
			s.lean[k] -= s.lean[0]
		}
	}
	return s
}

func flip[T any](list []T) {
	for i, j := 0, len(list)-1; i < j; i, j = i+1, j-1 {
		list[i], list[j] = list[j], list[i]
	}
}

// depths are the distances of the edges of the rows from the near edge.
func (s shape) depths() []float64 {
	d := make([]float64, len(s.widths))
	for k, h := range s.high {
		d[k+1] = d[k] + h
	}
	return d
}

// eased are values of the lines, such as widths, with the stairs taken out that single stitches make: a shaped edge is a
// line, not a stair. No value moves by more than about a stitch; where the width is exact it does not move at all.
func (s shape) eased(values []float64) []float64 {
	d, n := s.depths(), len(values)
	out := append([]float64(nil), values...)
	for from := 0; from < n-1; {
		to := from + 1
		for !s.exact[to] {
			to++
		}
		s.ease(out, d, from, to)
		from = to
	}
	return out
}

func (s shape) ease(out, d []float64, from, to int) {
	tolerance, pts := 0.0, make([]vec, 0, to-from+1)
	for k := from; k <= to; k++ {
		tolerance = max(tolerance, s.stitch[k])
		pts = append(pts, vec{out[k], d[k]})
	}
	keep := make([]bool, len(pts))
	keep[0], keep[len(pts)-1] = true, true
	slimBetween(pts, keep, 0, len(pts)-1, 1.2*tolerance)
	for a := 0; a < len(pts)-1; {
		b := a + 1
		for !keep[b] {
			b++
		}
		for k := a + 1; k < b; k++ {
			if run := pts[b].y - pts[a].y; run > 0 {
				out[from+k] = pts[a].to(pts[b], (pts[k].y-pts[a].y)/run).x
			}
		}
		a = b
	}
}

// edges are how far the two edges lie to the left and right of the frame, with its lines running down or up the page.
func (s shape) edges(up bool) (left, right []float64) {
	n := len(s.widths)
	left, right = make([]float64, n), make([]float64, n)
	if s.lean == nil {
		for k, w := range s.eased(s.widths) {
			left[k], right[k] = -w/2, w/2
		}
		return left, right
	}
	for k, w := range s.widths {
		x := s.lean[k]
		if !up {
			x = -x
		}
		left[k], right[k] = x-w/2, x+w/2
	}
	return s.eased(left), s.eased(right)
}

// strip lays a shape down along a frame.
func (pt *patch) strip(f frame, s shape) {
	if pt.pc.wedge != nil {
		pt.pc.wedge.lay(pt, f)
		return
	}
	up := f.along.y < 0 == pt.outward
	left, right := s.edges(up)
	pt.steps = slices.Clone(s.step)
	for k := range pt.steps {
		if !up {
			pt.steps[k][0], pt.steps[k][1] = pt.steps[k][1], pt.steps[k][0]
		}
	}
	d := s.depths()
	lines := make([]curve, len(d))
	for k := range lines {
		lines[k] = straight(f.at(left[k], d[k]), f.at(right[k], d[k]))
	}
	pt.tips = [2]*tip{}
	n := len(lines) - 1
	if m := s.tip(); pt.pc.closed && m > 0 {
		pt.tips[0] = &tip{f: f, rows: m, deep: d[m], wide: right[m] - left[m], start: right[0] - left[0]}
		pt.tips[0].bend(lines, d)
	}
	back := s.reversed()
	if m := back.tip(); pt.pc.closed && m > 0 && m < n {
		d := back.depths()
		g := frame{o: f.at(0, d[n]), across: f.across, along: f.along.times(-1)}
		pt.tips[1] = &tip{f: g, rows: m, deep: d[m], wide: right[n-m] - left[n-m], start: right[n] - left[n]}
		flip(lines)
		pt.tips[1].bend(lines, d)
		flip(lines)
	}
	if !pt.outward {
		flip(lines)
	}
	pt.lines = lines
}

func (s shape) reversed() shape {
	r := shape{
		widths: append([]float64(nil), s.widths...), high: append([]float64(nil), s.high...),
		exact: append([]bool(nil), s.exact...), stitch: append([]float64(nil), s.stitch...),
		lean: append([]float64(nil), s.lean...), step: slices.Clone(s.step),
	}
	flip(r.step)
	flip(r.lean)
	flip(r.widths)
	flip(r.high)
	flip(r.exact)
	flip(r.stitch)
	return r
}

// tip is the number of rows at the near end that close it to a point so fast that the cloth rounds over: a cone lies
// flat, a crown does not. 0 if there are none.
func (s shape) tip() int {
	const (
		even  = 0.25 // growth to each side, in widths a height, from which rows count as even
		round = 0.6  // mean growth above which the end is a dome
		ahead = 3
	)
	d, widest := s.depths(), 0.0
	for _, w := range s.widths {
		widest = max(widest, w)
	}
	if widest == 0 || s.widths[0] > 0.25*widest {
		return 0
	}
	m := len(s.widths) - 1
	for k := 1; k < len(s.widths)-1; k++ {
		to := min(k+ahead, len(s.widths)-1)
		if run := d[to] - d[k]; run <= 0 || (s.widths[to]-s.widths[k])/2/run < even {
			m = k
			break
		}
	}
	for m < len(s.widths)-1 && s.high[m] > 0 && (s.widths[m+1]-s.widths[m])/2/s.high[m] >= even {
		m++
	}
	if d[m] <= 0 || (s.widths[m]-s.widths[0])/2/d[m] < round {
		return 0
	}
	return m
}
