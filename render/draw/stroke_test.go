package draw

import "math"

// stroke gives the areas that make a run as thick as a pen: a bar for every line and a patch for every corner. All run
// the same way round, so that where they overlap they stay filled.
func stroke(c curve, width float64, round bool) [][]vec {
	pts := c.pts
	if c.closed && len(pts) > 1 {
		pts = append(append([]vec(nil), pts...), pts[0])
	}
	h := width / 2
	var areas [][]vec
	for i := 1; i < len(pts); i++ {
		a, b := pts[i-1], pts[i]
		if b.sub(a).length() < 1e-9 {
			continue
		}
		n := b.sub(a).unit().normal().times(h)
		areas = append(areas, []vec{a.sub(n), b.sub(n), b.add(n), a.add(n)})
	}
	from, to := 1, len(pts)-1
	if round {
		from, to = 0, len(pts)
	} else if c.closed {
		from = 0
	}
	for i := from; i < to; i++ {
		const steps = 12
		dot := make([]vec, steps)
		for k := range dot {
			sin, cos := math.Sincos(2 * math.Pi * float64(k) / steps)
			dot[k] = pts[i].add(vec{cos, sin}.times(h))
		}
		areas = append(areas, dot)
	}
	return areas
}
