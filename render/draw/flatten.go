package draw

import "ovillo/render/page"

// flatten turns the steps of a path into runs of straight lines.
func flatten(cmds []page.Cmd) []curve {
	var runs []curve
	v := func(p page.Point) vec { return vec{p.X, p.Y} }
	for _, c := range cmds {
		switch c.Op {
		case 'M':
			runs = append(runs, straight(v(c.P[0])))
			continue
		case 'Z':
			if len(runs) > 0 {
				runs[len(runs)-1].closed = true
			}
			continue
		}
		if len(runs) == 0 {
			continue
		}
		r := &runs[len(runs)-1]
		if c.Op == 'L' {
			r.pts = append(r.pts, v(c.P[0]))
			continue
		}
		const steps = 10
		a, b, d, e := r.last(), v(c.P[0]), v(c.P[1]), v(c.P[2])
		for i := 1; i <= steps; i++ {
			t := float64(i) / steps
			ab, bd, de := a.to(b, t), b.to(d, t), d.to(e, t)
			r.pts = append(r.pts, ab.to(bd, t).to(bd.to(de, t), t))
		}
	}
	return runs
}
