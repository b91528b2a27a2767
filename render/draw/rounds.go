package draw

import (
	"maps"
	"math"
	"slices"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/scene"
)

// mark is how the rows of a yarn are drawn.
type mark uint8

// The marks, by how much of the piece is made of the yarn.
const (
	lineMark mark = iota // thin lines between the rows
	barMark              // a bar along the row
	dotMark              // dots
	dashMark             // short bars
)

// areas are how much of the pattern is made of each yarn.
func (g *graph) areas() map[int]float64 {
	area := map[int]float64{}
	for _, pc := range g.pieces {
		for _, r := range pc.rows {
			area[r.yarn] += r.flat * r.high
		}
	}
	return area
}

// ground is the yarn that most of the pattern is made of.
func (g *graph) ground() int {
	area := g.areas()
	ground, most := 0, -1.0
	for _, y := range slices.Sorted(maps.Keys(area)) {
		if area[y] > most {
			ground, most = y, area[y]
		}
	}
	return ground
}

// marks gives every yarn its mark: thin lines for the ground, and others in the order of the yarns.
func (g *graph) marks() map[int]mark {
	ground, next := g.ground(), barMark
	marks := map[int]mark{ground: lineMark}
	for _, y := range slices.Sorted(maps.Keys(g.areas())) {
		if y == ground {
			continue
		}
		marks[y] = next
		if next++; next > dashMark {
			next = barMark
		}
	}
	return marks
}

// stretch is rows of one patch that are drawn alike: rows from to to, exclusive.
type stretch struct {
	from, to int
	texture  plan.Texture
	yarn     int
}

func stretches(rows []course) []stretch {
	var out []stretch
	for k, r := range rows {
		if n := len(out); n > 0 && out[n-1].texture == r.texture && out[n-1].yarn == r.yarn {
			out[n-1].to = k + 1
			continue
		}
		out = append(out, stretch{k, k + 1, r.texture, r.yarn})
	}
	return out
}

// rounds draws the rows of a patch. Where they would stand too close on paper, only every second or third is drawn.
func (p *pen) rounds(pt *patch, marks map[int]mark) {
	step := 1
	if n := len(pt.pc.rows); n > 0 {
		if each := pt.pc.tall() * p.scale / float64(n); each > 0 && each < titleClose {
			step = int(math.Ceil(titleClose / each))
		}
	}
	for i, s := range stretches(pt.pc.rows) {
		if rib := s.texture == plan.Rib; i > 0 && rib != (pt.pc.rows[s.from-1].texture == plan.Rib) {
			p.line(pt.lines[s.from], titleRound)
		}
		m := marks[s.yarn]
		switch {
		case s.texture == plan.Rib && !pt.rings:
			width := titlePlain
			if m != lineMark {
				width = titleRib
			}
			p.ribs(pt, s, width, 1)
		case m == lineMark:
			p.ground(pt, s, step)
		default:
			p.banded(pt, s, step, m)
		}
	}
}

// ground draws the lines between rows.
func (p *pen) ground(pt *patch, s stretch, step int) {
	var lines []curve
	for k := s.from + 1; k < s.to; k++ {
		if k%step == 0 {
			lines = append(lines, pt.lines[k])
		}
	}
	if s.texture == plan.Lace {
		p.lines(lines, titleRound, 0.9, 0.5)
		return
	}
	p.lines(lines, titleRound)
}

// banded draws the rows of another yarn along their middles.
func (p *pen) banded(pt *patch, s stretch, step int, m mark) {
	for k := s.from; k < s.to; k += step {
		end := min(k+step, s.to)
		high := pt.pc.height(k, end) * p.scale
		c := pt.lines[k].between(pt.lines[end], 0.5)
		switch m {
		case dotMark:
			p.dots(c, titleDot*high)
		case dashMark:
			p.line(c, titleBand*high, 1.6*high, 0.9*high)
		default:
			p.bar(pt.lines[k], pt.lines[end])
		}
	}
}

// bar fills the middle of a row, from edge to edge.
func (p *pen) bar(a, b curve) {
	lower, upper := a.between(b, 0.5-titleBand/2), a.between(b, 0.5+titleBand/2)
	if a.closed {
		p.area(black, upper, lower.turned())
		return
	}
	cmds := p.path(lower)
	back := p.path(upper.turned())
	back[0].Op = 'L'
	ink := black
	p.items = append(p.items, scene.Path{Cmds: append(append(cmds, back...), page.Cmd{Op: 'Z'}), Fill: &ink})
}

// between is a curve on the way to another, from 0 to 1.
func (c curve) between(d curve, way float64) curve {
	if len(c.pts) == len(d.pts) && c.smooth == d.smooth {
		m := curve{smooth: c.smooth, closed: c.closed}
		for i := range c.pts {
			m.pts = append(m.pts, c.pts[i].to(d.pts[i], way))
		}
		return m
	}
	const steps = 16
	c, d = c.fine(), d.fine()
	m := curve{smooth: c.smooth || d.smooth, closed: c.closed}
	for i := range steps + 1 {
		t := float64(i) / steps
		m.pts = append(m.pts, c.at(t).to(d.at(t), way))
	}
	return m
}

// dots draws a row of dots along a curve, as one path: a blanket has thousands of them.
func (p *pen) dots(c curve, radius float64) {
	total := 0.0
	for i := 1; i < len(c.pts); i++ {
		total += c.pts[i].sub(c.pts[i-1]).length() * p.scale
	}
	n := int(total / (4 * radius))
	if n == 0 {
		return
	}
	c = c.fine()
	cmds := make([]page.Cmd, 0, 6*n)
	for i := range n {
		cmds = appendCircle(cmds, p.on(c.at((float64(i)+0.5)/float64(n))), radius)
	}
	ink := black
	p.items = append(p.items, scene.Path{Cmds: cmds, Fill: &ink})
}

// appendCircle adds a circle in four curves, which are never further from it than 0.03 % of its radius.
func appendCircle(cmds []page.Cmd, o vec, radius float64) []page.Cmd {
	const reach = 4.0 / 3 * (math.Sqrt2 - 1) // of the handles, in radii
	at := func(v vec) page.Point { v = o.add(v); return page.Point{X: v.x, Y: v.y} }
	a := vec{radius, 0}
	cmds = append(cmds, page.Cmd{Op: 'M', P: [3]page.Point{at(a)}})
	for range 4 {
		b := a.normal()
		cmds = append(cmds, page.Cmd{Op: 'C', P: [3]page.Point{at(a.add(b.times(reach))), at(b.add(a.times(reach))), at(b)}})
		a = b
	}
	return append(cmds, page.Cmd{Op: 'Z'})
}

// ribs draws upright strokes through a stretch of rows, so many to the centimetre.
func (p *pen) ribs(pt *patch, s stretch, width, perCm float64) {
	a, b := pt.lines[s.from].fine(), pt.lines[s.to].fine()
	wide := (a.last().sub(a.first()).length() + b.last().sub(b.first()).length()) / 2
	n := int(math.Round(wide * perCm))
	// Ribs closer than twice their own width would run together.
	if most := int(wide * p.scale / (2 * width)); n > most {
		n = most
	}
	var strokes []curve
	for i := range n {
		t := (float64(i) + 0.5) / float64(n)
		strokes = append(strokes, straight(a.at(t), b.at(t)))
	}
	p.lines(strokes, width)
}

// edges draws the outline of a patch, without edges where the same part goes on.
func (p *pen) edges(g *graph, pt *patch, width float64) {
	if pt.rings {
		p.round(pt.lines[len(pt.lines)-1], width)
		if pt.pc.oval || !pt.pc.point {
			p.round(pt.lines[0], width)
		}
		return
	}
	left, right := pt.sides()
	p.round(straight(left...), width)
	p.round(straight(right...), width)
	for edge := range 2 {
		if (edge == startEdge && pt.pc.goesOn || edge == endEdge && g.goesOn(pt)) && pt.drop == 0 {
			continue
		}
		c := pt.lines[0]
		if edge == endEdge {
			c = pt.lines[len(pt.lines)-1]
		}
		p.round(c, width)
	}
}

// goesOn reports whether the part of a patch goes on beyond its end in another piece.
func (g *graph) goesOn(pt *patch) bool {
	pieces := g.of[pt.pc.part]
	return pieces[len(pieces)-1] != pt.index
}
