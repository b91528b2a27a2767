package layout

import "ovillo/render/page"

// Rule is a straight line, an artifact.
func Rule(x1, y1, x2, y2, width float64) page.Path {
	black := page.Black
	return page.Path{Cmds: []page.Cmd{move(x1, y1), to(x2, y2)}, Stroke: &black, Width: width}
}

// Frame is the outline of a rectangle, an artifact.
func Frame(x, y, w, h, width float64) page.Path {
	black := page.Black
	return page.Path{Cmds: rectangle(x, y, w, h), Stroke: &black, Width: width}
}

// Bar is a filled rectangle, an artifact.
func Bar(x, y, w, h float64) page.Path {
	black := page.Black
	return page.Path{Cmds: rectangle(x, y, w, h), Fill: &black}
}

// Wedge is a filled triangle that points down, its middle at x, an artifact.
func Wedge(x, y, w, h float64) page.Path {
	black := page.Black
	return page.Path{Cmds: []page.Cmd{move(x-w/2, y), to(x+w/2, y), to(x, y+h), {Op: 'Z'}}, Fill: &black}
}

// Circle is the outline of a circle round x, y, an artifact.
func Circle(x, y, r, width float64) page.Path {
	const k = 0.5522847498 // the handle that makes a Bézier curve a quarter of a circle
	black := page.Black
	arc := func(x1, y1, x2, y2, x3, y3 float64) page.Cmd {
		return page.Cmd{Op: 'C', P: [3]page.Point{{X: x + r*x1, Y: y + r*y1}, {X: x + r*x2, Y: y + r*y2}, {X: x + r*x3, Y: y + r*y3}}}
	}
	return page.Path{Cmds: []page.Cmd{
		move(x+r, y), arc(1, k, k, 1, 0, 1), arc(-k, 1, -1, k, -1, 0), arc(-1, -k, -k, -1, 0, -1), arc(k, -1, 1, -k, 1, 0), {Op: 'Z'},
	}, Stroke: &black, Width: width}
}

func rectangle(x, y, w, h float64) []page.Cmd {
	return []page.Cmd{move(x, y), to(x+w, y), to(x+w, y+h), to(x, y+h), {Op: 'Z'}}
}

func move(x, y float64) page.Cmd { return page.Cmd{Op: 'M', P: [3]page.Point{{X: x, Y: y}}} }

func to(x, y float64) page.Cmd { return page.Cmd{Op: 'L', P: [3]page.Point{{X: x, Y: y}}} }
