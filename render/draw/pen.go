package draw

import (
	"ovillo/render/page"
	"ovillo/render/scene"
)

var (
	black = page.Black
	white = page.Color{1, 1, 1}
)

// pen adds to a scene. Its points are in the units of the model, which it scales and shifts to millimetres of paper.
type pen struct {
	items []scene.Item
	scale float64
	shift vec
}

func (p *pen) on(v vec) vec { return v.times(p.scale).add(p.shift) }

func point(v vec) [3]page.Point { return [3]page.Point{{X: v.x, Y: v.y}} }

// path turns a curve into the steps of a path, from a move on.
func (p *pen) path(c curve) []page.Cmd {
	pts := make([]vec, len(c.pts))
	for i, v := range c.pts {
		pts[i] = p.on(v)
	}
	cmds := []page.Cmd{{Op: 'M', P: point(pts[0])}}
	if c.smooth && len(pts) > 2 {
		cmds = append(cmds, smoothed(pts, c.closed)...)
	} else {
		for _, v := range pts[1:] {
			cmds = append(cmds, page.Cmd{Op: 'L', P: point(v)})
		}
	}
	if c.closed {
		cmds = append(cmds, page.Cmd{Op: 'Z'})
	}
	return cmds
}

// smoothed runs through points in curves whose direction at each point is that from the point before to the one after.
func smoothed(pts []vec, closed bool) []page.Cmd {
	n := len(pts)
	get := func(i int) vec {
		switch {
		case closed:
			return pts[(i+n)%n]
		case i < 0:
			// The direction at an end is what makes the first stretch a parabola.
			return pts[0].times(3).sub(pts[1].times(3)).add(pts[2])
		case i >= n:
			return pts[n-1].times(3).sub(pts[n-2].times(3)).add(pts[n-3])
		}
		return pts[i]
	}
	last := n - 1
	if closed {
		last = n
	}
	var cmds []page.Cmd
	for i := range last {
		a, b := get(i), get(i+1)
		c1 := a.add(b.sub(get(i - 1)).times(1.0 / 6))
		c2 := b.sub(get(i + 2).sub(a).times(1.0 / 6))
		cmds = append(cmds, page.Cmd{Op: 'C', P: [3]page.Point{{X: c1.x, Y: c1.y}, {X: c2.x, Y: c2.y}, {X: b.x, Y: b.y}}})
	}
	return cmds
}

// line draws a curve.
func (p *pen) line(c curve, width float64, dash ...float64) {
	if len(c.pts) < 2 {
		return
	}
	ink := black
	p.items = append(p.items, scene.Path{Cmds: p.path(c), Stroke: &ink, Width: width, Dash: dash})
}

// round draws a curve with round ends and corners.
func (p *pen) round(c curve, width float64) {
	if len(c.pts) < 2 {
		return
	}
	ink := black
	p.items = append(p.items, scene.Path{Cmds: p.path(c), Stroke: &ink, Width: width, Round: true})
}

// lines draws curves of the same kind as one path, which keeps a drawing of many rounds small.
func (p *pen) lines(cs []curve, width float64, dash ...float64) {
	var cmds []page.Cmd
	for _, c := range cs {
		if len(c.pts) > 1 {
			cmds = append(cmds, p.path(c)...)
		}
	}
	if len(cmds) == 0 {
		return
	}
	ink := black
	p.items = append(p.items, scene.Path{Cmds: cmds, Stroke: &ink, Width: width, Dash: dash})
}

// area fills an outline.
func (p *pen) area(fill page.Color, cs ...curve) {
	var cmds []page.Cmd
	for _, c := range cs {
		c.closed = true
		cmds = append(cmds, p.path(c)...)
	}
	p.items = append(p.items, scene.Path{Cmds: cmds, Fill: &fill})
}

// outlined fills an outline and draws its line, with round corners.
func (p *pen) outlined(fill page.Color, width float64, cs ...curve) {
	p.area(fill, cs...)
	last := p.items[len(p.items)-1].(scene.Path)
	ink := black
	last.Stroke, last.Width, last.Round = &ink, width, true
	p.items[len(p.items)-1] = last
}
