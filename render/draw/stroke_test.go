package draw

import "math"

// dashes cuts a run into its dashes; the whole run if there are none.
func dashes(c curve, pattern []float64) []curve {
	sum := 0.0
	for _, d := range pattern {
		sum += d
	}
	if sum <= 0 {
		return []curve{c}
	}
	pts := c.pts
	if c.closed {
		pts = append(append([]vec(nil), pts...), pts[0])
	}
	var out []curve
	at, left := 0, pattern[0]
	now := straight(pts[0])
	for i := 1; i < len(pts); i++ {
		from, l := pts[i-1], pts[i].sub(pts[i-1]).length()
		for l > left {
			from = from.to(pts[i], left/l)
			l -= left
			if now.pts = append(now.pts, from); at%2 == 0 {
				out = append(out, now)
			}
			now = straight(from)
			at++
			left = math.Max(pattern[at%len(pattern)], 1e-3)
		}
		left -= l
		now.pts = append(now.pts, pts[i])
	}
	if at%2 == 0 && len(now.pts) > 1 {
		out = append(out, now)
	}
	return out
}

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
