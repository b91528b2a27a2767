package draw

import "math"

// shape is what a strip is made from: its rows counted outwards from what it hangs on.
type shape struct {
	widths []float64 // flat, one more than rows
	high   []float64
	exact  []bool // the width must stay
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
	if from == endEdge {
		flip(s.widths)
		flip(s.high)
		flip(s.exact)
		flip(s.stitch)
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

// eased are the widths with the stairs taken out that single stitches make: a shaped edge is a line, not a stair. No
// width moves by more than about a stitch; those that are exact do not move at all.
func (s shape) eased() []float64 {
	d, n := s.depths(), len(s.widths)
	out := make([]float64, n)
	copy(out, s.widths)
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
		tolerance = math.Max(tolerance, s.stitch[k])
		pts = append(pts, vec{s.widths[k], d[k]})
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

// strip lays a shape down along a frame.
func strip(f frame, s shape) []curve {
	widths, d := s.eased(), s.depths()
	lines := make([]curve, len(widths))
	for k, w := range widths {
		lines[k] = straight(f.at(-w/2, d[k]), f.at(w/2, d[k]))
	}
	if m := s.tip(); m > 0 {
		dome(f, lines, d[:m+1], widths[m], widths[0])
	}
	back := s.reversed()
	if m := back.tip(); m > 0 && m < len(widths) {
		n, end := len(widths)-1, d[len(d)-1]
		g := frame{o: f.at(0, end), across: f.across, along: f.along.times(-1)}
		tail := make([]curve, m+1)
		dome(g, tail, back.depths()[:m+1], widths[n-m], widths[n])
		for k, c := range tail[:m] {
			lines[n-k] = c
		}
	}
	return lines
}

func (s shape) reversed() shape {
	r := shape{
		widths: append([]float64(nil), s.widths...), high: append([]float64(nil), s.high...),
		exact: append([]bool(nil), s.exact...), stitch: append([]float64(nil), s.stitch...),
	}
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
		widest = math.Max(widest, w)
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
	if d[m] <= 0 || (s.widths[m]-s.widths[0])/2/d[m] < round {
		return 0
	}
	return m
}

// dome replaces the first lines by those of a rounded end: the outline is a quarter of an ellipse from a start as wide
// as first to the width last, and each round runs over it as deep in the middle as its rows are high. d are the depths
// of the lines; the last line is left as it is.
func dome(f frame, lines []curve, d []float64, last, first float64) {
	m := len(d) - 1
	for k := range m {
		turn := d[k] / d[m] * math.Pi / 2
		half := first/2 + (last-first)/2*math.Sin(turn)
		edge := d[m] * (1 - math.Cos(turn))
		if k == 0 {
			lines[k] = straight(f.at(-half, edge), f.at(half, edge))
			continue
		}
		lines[k] = bow(f, half, edge, d[k])
	}
}

// bow is a curve from side to side that hangs through in the middle.
func bow(f frame, half, edge, middle float64) curve {
	const steps = 8
	pts := make([]vec, 0, steps+1)
	for i := range steps + 1 {
		sin, cos := math.Sincos(math.Pi * float64(i) / steps)
		pts = append(pts, f.at(-half*cos, edge+(middle-edge)*sin))
	}
	return curve{pts: pts, smooth: true}
}
