package draw

import (
	"fmt"

	"ovillo/render/page"
	"ovillo/render/scene"
)

// cutMarks marks the edges at which the chart goes on on another sheet: a dashed line where that one begins, between two small
// triangles that point outwards.
func (q *chartPen) cutMarks(b *box) {
	if !q.t.split() {
		return
	}
	const size = 1.5
	u := chartUnit * q.scale
	lo, hi := q.t.min.times(u), q.t.max.times(u)
	half := overlapping / 2 * u
	all := *b
	for k, cut := range q.t.cuts {
		if !cut {
			continue
		}
		var from, to, out vec
		switch k {
		case 0:
			from, to, out = vec{lo.x + half, all.min.y}, vec{lo.x + half, all.max.y}, vec{-1, 0}
		case 1:
			from, to, out = vec{hi.x - half, all.min.y}, vec{hi.x - half, all.max.y}, vec{1, 0}
		case 2:
			from, to, out = vec{all.min.x, lo.y + half}, vec{all.max.x, lo.y + half}, vec{0, -1}
		default:
			from, to, out = vec{all.min.x, hi.y - half}, vec{all.max.x, hi.y - half}, vec{0, 1}
		}
		ink := black
		plain := pen{scale: 1}
		q.items = append(q.items, scene.Path{Cmds: plain.path(straight(from, to)), Stroke: &ink, Width: lightLine, Dash: []float64{1.2, 1.2}})
		for _, end := range [2]vec{from, to} {
			side := out.normal().times(size / 2)
			tip := curve{pts: []vec{end.add(side), end.sub(side), end.add(out.times(size))}, closed: true}
			q.items = append(q.items, scene.Path{Cmds: plain.path(tip), Fill: &ink})
			for _, v := range [3]vec{end.add(side.times(2)), end.sub(side.times(2)), end.add(out.times(size * 1.1))} {
				b.add(v)
			}
		}
	}
}

// planOfSheets says in the upper left corner which sheet this is, and shows where it lies among the others.
func (q *chartPen) planOfSheets(s *scene.Scene) {
	ink := black
	n := q.t.of[0] * q.t.of[1]
	plain := pen{scale: 1}
	cell := min(4.5, (sheetsHigh-1.5)/float64(q.t.of[1]))
	wide := min(cell*1.3, 24/float64(q.t.of[0]))
	for k := range n {
		x, y := 0.3+wide*float64(k%q.t.of[0]), 0.3+cell*float64(k/q.t.of[0])
		c := curve{pts: []vec{{x, y}, {x + wide, y}, {x + wide, y + cell}, {x, y + cell}}, closed: true}
		path := scene.Path{Cmds: plain.path(c), Stroke: &ink, Width: lightLine}
		if k == q.t.number()-1 {
			path.Fill = &ink
		}
		q.items = append(q.items, path)
	}
	q.items = append(q.items, scene.Label{X: 1.8 + wide*float64(q.t.of[0]), Y: 0.3 + numberEm/2, Text: fmt.Sprintf("%d/%d", q.t.number(), n),
		Height: numberEm, Face: page.Sans, Anchor: scene.Start})
	s.W = max(s.W, 12+wide*float64(q.t.of[0]))
}
