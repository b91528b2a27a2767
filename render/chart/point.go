package chart

import (
	"math"

	"ovillo/render/page"
)

func plus(a, b page.Point) page.Point          { return page.Point{X: a.X + b.X, Y: a.Y + b.Y} }
func minus(a, b page.Point) page.Point         { return page.Point{X: a.X - b.X, Y: a.Y - b.Y} }
func times(a page.Point, k float64) page.Point { return page.Point{X: a.X * k, Y: a.Y * k} }
func long(a page.Point) float64                { return math.Hypot(a.X, a.Y) }

// unit is the direction of a, or what stands in for it where a has no length.
func unit(a, or page.Point) page.Point {
	if l := long(a); l > 1e-9 {
		return times(a, 1/l)
	}
	return or
}

// crossing is how far along the segment from a to b the segment from c to d crosses it, and false if it does not.
func crossing(a, b, c, d page.Point) (float64, bool) {
	r, q := minus(b, a), minus(d, c)
	det := r.X*q.Y - r.Y*q.X
	if math.Abs(det) < 1e-12 {
		return 0, false
	}
	e := minus(c, a)
	t, u := (e.X*q.Y-e.Y*q.X)/det, (e.X*r.Y-e.Y*r.X)/det
	return t, t > 0 && t < 1 && u > 0 && u < 1
}
