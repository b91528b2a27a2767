package proof

import (
	"math"

	"ovillo/render/font"
	"ovillo/render/page"
)

const (
	millimetres = 25.4 / 72 // a point
	hair        = 0.02      // tolerance
	kerned      = 0.5       // the most that kerning draws neighbours together
)

// box is a rectangle by its edges.
type box struct{ left, top, right, bottom float64 }

func (a box) meets(b box) bool {
	return a.left < b.right-hair && b.left < a.right-hair && a.top < b.bottom-hair && b.top < a.bottom-hair
}

func (a box) holds(b box) bool {
	return b.left >= a.left-hair && b.top >= a.top-hair && b.right <= a.right+hair && b.bottom <= a.bottom+hair
}

func boxOf(r Rect) box { return box{r.X, r.Y, r.X + r.W, r.Y + r.H} }

// grown is the box with d more on every side.
func (a box) grown(d float64) box { return box{a.left - d, a.top - d, a.right + d, a.bottom + d} }

// ink is where a run of text stands: from the top of its capitals to a little below its baseline.
type ink struct {
	box
	g  page.Glyphs
	nr int // among the items of its page: what comes later is drawn over it
}

func inkOf(g page.Glyphs, nr int) ink {
	f := font.Of(g.Face)
	w := f.Tracked(g.Text, g.Size, g.Track)
	b := box{g.X, g.Base - f.CapHeight(g.Size), g.X + w, g.Base + f.Descent(g.Size)*0.4}
	if g.Angle != 0 {
		b = turned(b, g.X, g.Base, g.Angle)
	}
	return ink{b, g, nr}
}

// turned is the upright box round a box that is turned by degrees counter-clockwise round a point.
func turned(b box, x, y, degrees float64) box {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	out := nothing
	for _, p := range [...]page.Point{{X: b.left, Y: b.top}, {X: b.right, Y: b.top}, {X: b.left, Y: b.bottom}, {X: b.right, Y: b.bottom}} {
		dx, dy := p.X-x, p.Y-y
		out = out.with(page.Point{X: x + dx*cos + dy*sin, Y: y - dx*sin + dy*cos})
	}
	return out
}

// nothing is the box round no point.
var nothing = box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}

func (a box) with(p page.Point) box {
	return box{min(a.left, p.X), min(a.top, p.Y), max(a.right, p.X), max(a.bottom, p.Y)}
}

// segments calls f for each straight piece of a path; curves are cut into pieces.
func segments(p page.Path, f func(a, b page.Point)) {
	const pieces = 8
	var at, start page.Point
	for _, c := range p.Cmds {
		switch c.Op {
		case 'M':
			at, start = c.P[0], c.P[0]
		case 'L':
			f(at, c.P[0])
			at = c.P[0]
		case 'C':
			from := at
			for i := 1; i <= pieces; i++ {
				to := bezier(from, c.P, float64(i)/pieces)
				f(at, to)
				at = to
			}
		case 'Z':
			if at != start {
				f(at, start)
			}
			at = start
		}
	}
}

func bezier(a page.Point, p [3]page.Point, t float64) page.Point {
	u := 1 - t
	w := [4]float64{u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t}
	return page.Point{X: w[0]*a.X + w[1]*p[0].X + w[2]*p[1].X + w[3]*p[2].X, Y: w[0]*a.Y + w[1]*p[0].Y + w[2]*p[1].Y + w[3]*p[2].Y}
}

// bounds is the box round a path, without the width of its line.
func bounds(p page.Path) box {
	b := nothing
	segments(p, func(a, c page.Point) { b = b.with(a).with(c) })
	return b
}

// hull is a box that a path does not leave: that round its points, those that a curve only tends to among them. It is the
// box round the path where there are no curves, and found much faster.
func hull(p page.Path) box {
	b := nothing
	for _, c := range p.Cmds {
		switch c.Op {
		case 'M', 'L':
			b = b.with(c.P[0])
		case 'C':
			b = b.with(c.P[0]).with(c.P[1]).with(c.P[2])
		}
	}
	return b
}

// covers reports whether the area of a path holds a point: by the non-zero rule, as it is filled.
func covers(p page.Path, x, y float64) bool {
	winding := 0
	edge := func(a, b page.Point) {
		if (a.Y <= y) == (b.Y <= y) {
			return
		}
		if cut := a.X + (y-a.Y)*(b.X-a.X)/(b.Y-a.Y); cut > x {
			if b.Y > a.Y {
				winding++
			} else {
				winding--
			}
		}
	}
	var first, last page.Point
	open := false
	segments(page.Path{Cmds: p.Cmds}, func(a, b page.Point) {
		if !open {
			first, open = a, true
		} else if a != last {
			edge(last, first) // an area that its path leaves open is closed by filling it
			first = a
		}
		edge(a, b)
		last = b
	})
	if open {
		edge(last, first)
	}
	return winding != 0
}

// crosses reports whether a straight line goes through a box (Liang and Barsky's clipping).
func (a box) crosses(p, q page.Point) bool {
	t0, t1 := 0.0, 1.0
	clip := func(d, low, high, from float64) bool {
		if d == 0 {
			return from > low && from < high
		}
		u, v := (low-from)/d, (high-from)/d
		if u > v {
			u, v = v, u
		}
		t0, t1 = max(t0, u), min(t1, v)
		return t0 < t1
	}
	return clip(q.X-p.X, a.left, a.right, p.X) && clip(q.Y-p.Y, a.top, a.bottom, p.Y)
}
