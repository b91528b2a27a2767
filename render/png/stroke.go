package png

import (
	"math"

	"ovillo/render/page"
	"ovillo/render/scene"
)

// run is a line of straight stretches.
type run struct {
	pts    []page.Point
	closed bool
}

// offCurve is how many dots a flattened curve may lie off itself.
const offCurve = 0.1

// flatten turns the steps of a path, in millimetres, into runs of dots.
func (c *canvas) flatten(cmds []page.Cmd) []run {
	runs := scene.Flatten(cmds, scene.Fine(offCurve/c.k))
	out := make([]run, len(runs))
	for i, r := range runs {
		for k := range r.Pts {
			r.Pts[k].X, r.Pts[k].Y = r.Pts[k].X*c.k, r.Pts[k].Y*c.k
		}
		out[i] = run{r.Pts, r.Closed}
	}
	return out
}

// dashes cuts a run into its dashes, k dots a millimetre; the whole run if there are none.
func dashes(r run, pattern []float64, k float64) []run {
	sum := 0.0
	for _, d := range pattern {
		sum += d
	}
	if sum*k <= 0.01 || len(r.pts) == 0 {
		return []run{r}
	}
	pts := r.pts
	if r.closed {
		pts = append(append([]page.Point(nil), pts...), pts[0])
	}
	var out []run
	at, left := 0, pattern[0]*k
	now := run{pts: []page.Point{pts[0]}}
	for i := 1; i < len(pts); i++ {
		from, l := pts[i-1], math.Hypot(pts[i].X-pts[i-1].X, pts[i].Y-pts[i-1].Y)
		for l > left {
			from = scene.Between(from, pts[i], left/l)
			l -= left
			if now.pts = append(now.pts, from); at%2 == 0 {
				out = append(out, now)
			}
			now = run{pts: []page.Point{from}}
			at++
			left = math.Max(pattern[at%len(pattern)]*k, 1e-3)
		}
		left -= l
		now.pts = append(now.pts, pts[i])
	}
	if at%2 == 0 && len(now.pts) > 1 {
		out = append(out, now)
	}
	return out
}

// mostMitre is how far a corner may reach beyond its middle, in halves of the line's width; one that would reach farther is cut off.
// It is that of PDF, where no other is set.
const mostMitre = 10

// stroke gives the areas that make a run as thick as a pen: a bar for every line, and at every corner what its two bars leave open.
// All run the same way round, so that where they overlap they stay filled.
func stroke(r run, width float64, round bool) [][]page.Point {
	pts := make([]page.Point, 0, len(r.pts)+1)
	for i, p := range r.pts {
		if i == 0 || math.Hypot(p.X-pts[len(pts)-1].X, p.Y-pts[len(pts)-1].Y) > 1e-6 {
			pts = append(pts, p)
		}
	}
	closed := r.closed && len(pts) > 1
	if first, last := pts[0], pts[len(pts)-1]; closed && math.Hypot(first.X-last.X, first.Y-last.Y) > 1e-6 {
		pts = append(pts, first)
	}
	h := width / 2
	var areas [][]page.Point
	var normals []page.Point // of each line, half the width long, to its right
	for i := 1; i < len(pts); i++ {
		a, b := pts[i-1], pts[i]
		l := math.Hypot(b.X-a.X, b.Y-a.Y)
		n := page.Point{X: -(b.Y - a.Y) / l * h, Y: (b.X - a.X) / l * h}
		normals = append(normals, n)
		areas = append(areas, []page.Point{{X: a.X - n.X, Y: a.Y - n.Y}, {X: b.X - n.X, Y: b.Y - n.Y}, {X: b.X + n.X, Y: b.Y + n.Y}, {X: a.X + n.X, Y: a.Y + n.Y}})
	}
	if round && (!closed || len(normals) == 0) {
		areas = append(areas, disc(pts[0], h), disc(pts[len(pts)-1], h))
	}
	corner := func(at page.Point, a, b page.Point) {
		if bend := a.X*b.X + a.Y*b.Y; round && bend < 0.95*h*h {
			areas = append(areas, disc(at, h)) // the small bends of a curve need none, and would be heavy with them
		} else if m := mitre(at, a, b, h); m != nil {
			areas = append(areas, m)
		}
	}
	for i := 1; i < len(normals); i++ {
		corner(pts[i], normals[i-1], normals[i])
	}
	if closed && len(normals) > 1 {
		corner(pts[0], normals[len(normals)-1], normals[0])
	}
	return areas
}

// disc is a round patch; it leaves its circle by less than a tenth of a dot.
func disc(at page.Point, r float64) []page.Point {
	steps := int(math.Max(8, math.Min(64, math.Ceil(math.Pi*math.Sqrt(r/0.2)))))
	out := make([]page.Point, steps)
	for k := range out {
		sin, cos := math.Sincos(2 * math.Pi * float64(k) / float64(steps))
		out[k] = page.Point{X: at.X + cos*r, Y: at.Y + sin*r}
	}
	return out
}

// mitre is what two lines that meet in a corner leave open at its outer side; a and b are their normals, h long.
func mitre(at, a, b page.Point, h float64) []page.Point {
	turn := a.X*b.Y - a.Y*b.X
	if math.Abs(turn) < 1e-9 {
		return nil
	}
	if turn > 0 { // to the right: the outer side is the left one
		a, b = page.Point{X: -a.X, Y: -a.Y}, page.Point{X: -b.X, Y: -b.Y}
	}
	out := []page.Point{at, {X: at.X + a.X, Y: at.Y + a.Y}}
	sum := page.Point{X: a.X + b.X, Y: a.Y + b.Y}
	if l := sum.X*sum.X + sum.Y*sum.Y; l > 0 {
		if reach := 2 * h * h / l; reach*math.Sqrt(l) <= mostMitre*h {
			out = append(out, page.Point{X: at.X + sum.X*reach, Y: at.Y + sum.Y*reach})
		}
	}
	out = append(out, page.Point{X: at.X + b.X, Y: at.Y + b.Y})
	if turn < 0 {
		for i, j := 0, len(out)-1; i < j; i, j = i+1, j-1 {
			out[i], out[j] = out[j], out[i]
		}
	}
	return out
}
