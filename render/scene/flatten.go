package scene

import (
	"math"

	"ovillo/render/page"
)

// Run is a line of straight stretches.
type Run struct {
	Pts    []page.Point
	Closed bool
}

// Flatten turns the steps of a path into runs of straight lines. steps says into how many stretches a curve with the given points is
// cut, its ends among them.
func Flatten(cmds []page.Cmd, steps func(pts ...page.Point) int) []Run {
	var runs []Run
	for _, c := range cmds {
		switch c.Op {
		case 'M':
			runs = append(runs, Run{Pts: []page.Point{c.P[0]}})
			continue
		case 'Z':
			if len(runs) > 0 {
				runs[len(runs)-1].Closed = true
			}
			continue
		}
		if len(runs) == 0 {
			continue
		}
		r := &runs[len(runs)-1]
		a, b, d, e := r.Pts[len(r.Pts)-1], c.P[0], c.P[1], c.P[2]
		switch c.Op {
		case 'L':
			r.Pts = append(r.Pts, b)
		case 'Q':
			n := steps(a, b, d)
			for i := 1; i <= n; i++ {
				t := float64(i) / float64(n)
				r.Pts = append(r.Pts, Between(Between(a, b, t), Between(b, d, t), t))
			}
		case 'C':
			n := steps(a, b, d, e)
			for i := 1; i <= n; i++ {
				t := float64(i) / float64(n)
				ab, bd, de := Between(a, b, t), Between(b, d, t), Between(d, e, t)
				r.Pts = append(r.Pts, Between(Between(ab, bd, t), Between(bd, de, t), t))
			}
		}
	}
	return runs
}

// Between is the point a part t of the way from a to b.
func Between(a, b page.Point, t float64) page.Point {
	return page.Point{X: a.X + (b.X-a.X)*t, Y: a.Y + (b.Y-a.Y)*t}
}

// Fine gives the steps of [Flatten] with which a curve is never farther than off from its chords.
func Fine(off float64) func(pts ...page.Point) int {
	return func(pts ...page.Point) int {
		bend := 0.0
		for i := 2; i < len(pts); i++ {
			bend = math.Max(bend, math.Hypot(pts[i].X-2*pts[i-1].X+pts[i-2].X, pts[i].Y-2*pts[i-1].Y+pts[i-2].Y))
		}
		degree := float64(len(pts) - 1)
		n := math.Sqrt(degree * (degree - 1) * bend / 8 / off) // the bound of the distance between a curve and its chord
		return int(math.Max(1, math.Min(200, math.Ceil(n))))
	}
}
