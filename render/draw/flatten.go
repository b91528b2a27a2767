package draw

import (
	"ovillo/render/page"
	"ovillo/render/scene"
)

// flatten turns the steps of a path into runs of straight lines, ten to a curve.
func flatten(cmds []page.Cmd) []curve {
	var out []curve
	for _, r := range scene.Flatten(cmds, func(...page.Point) int { return 10 }) {
		c := curve{closed: r.Closed, pts: make([]vec, len(r.Pts))}
		for i, p := range r.Pts {
			c.pts[i] = vec{p.X, p.Y}
		}
		out = append(out, c)
	}
	return out
}
