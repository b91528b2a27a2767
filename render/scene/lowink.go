package scene

import (
	"math"
	"slices"

	"ovillo/render/page"
)

// The hatch that stands in place of a black area, in millimetres.
const (
	hatchWidth = 0.3
	hatchEvery = 0.9 // from line to line
	rimWidth   = 0.2 // of the outline that an area without one gets
	thin       = 0.9 // bars narrower than this are hatched without one
	mostSolid  = 3.0 // square millimetres that may stay black
	mostWide   = 0.4 // of a line
	mostTint   = 0.6 // the luminance from which a tint is left out; a darker one is hatched
)

// LowInk is the drawing with little ink: black lines on white. Colours become black, tints go, lines are no wider than 0.4 mm,
// and areas of more than 3 mm² that were solid are hatched at 45°. What was hidden behind an area stays hidden.
func (s *Scene) LowInk() *Scene {
	m := *s
	m.Items = nil
	at := make([]int, len(s.Items)+1) // where what an item became begins
	for i, it := range s.Items {
		at[i] = len(m.Items)
		if p, ok := it.(Path); ok {
			m.Items = append(m.Items, p.lowInk()...)
			continue
		}
		m.Items = append(m.Items, it)
	}
	at[len(s.Items)] = len(m.Items)
	m.Groups = slices.Clone(s.Groups)
	for i, g := range m.Groups {
		m.Groups[i].From, m.Groups[i].To = at[g.From], at[g.To]
	}
	return &m
}

var (
	inkBlack = page.Black
	inkWhite = page.Color{1, 1, 1}
)

// lowInk is what a path becomes.
func (p Path) lowInk() []Item {
	if p.Stroke != nil && *p.Stroke != inkWhite {
		p.Stroke, p.Width = &inkBlack, math.Min(p.Width, mostWide)
	}
	if p.Fill == nil || *p.Fill == inkWhite {
		return []Item{p}
	}
	shape := polygons(p.Cmds)
	area, round := measured(shape)
	light := 0.2126*p.Fill[0]+0.7152*p.Fill[1]+0.0722*p.Fill[2] >= mostTint
	if !light && area <= mostSolid {
		p.Fill = &inkBlack
		return []Item{p}
	}
	under, rim := p, p
	under.Stroke, under.Fill = nil, &inkWhite
	rim.Fill = nil
	if rim.Stroke == nil && (light || 2*area/math.Max(round, 1e-9) >= thin) {
		rim.Stroke, rim.Width, rim.Dash = &inkBlack, rimWidth, nil
	}
	items := []Item{under}
	if !light {
		if lines := hatch(shape); lines != nil {
			items = append(items, Path{Cmds: lines, Stroke: &inkBlack, Width: hatchWidth})
		}
	}
	if rim.Stroke != nil {
		items = append(items, rim)
	}
	return items
}

// polygons are the outlines of a path as straight lines, each closed, as filling closes them.
func polygons(cmds []page.Cmd) [][]page.Point {
	var out [][]page.Point
	for _, c := range cmds {
		switch c.Op {
		case 'M':
			out = append(out, []page.Point{c.P[0]})
		case 'L':
			if n := len(out) - 1; n >= 0 {
				out[n] = append(out[n], c.P[0])
			}
		case 'C':
			n := len(out) - 1
			if n < 0 {
				continue
			}
			const steps = 12
			a := out[n][len(out[n])-1]
			for i := 1; i <= steps; i++ {
				t := float64(i) / steps
				u := 1 - t
				at := func(a, b, c, d float64) float64 { return u*u*u*a + 3*u*u*t*b + 3*u*t*t*c + t*t*t*d }
				out[n] = append(out[n], page.Point{X: at(a.X, c.P[0].X, c.P[1].X, c.P[2].X), Y: at(a.Y, c.P[0].Y, c.P[1].Y, c.P[2].Y)})
			}
		}
	}
	return out
}

// measured is the area inside some outlines, holes taken off, and how far it is round them. Outlines without holes, such as a
// row of dots, are areas of their own: then it is the largest of them.
func measured(shape [][]page.Point) (area, round float64) {
	var least, most, largest, its float64
	for _, ring := range shape {
		one, length := 0.0, 0.0
		for i, a := range ring {
			b := ring[(i+1)%len(ring)]
			one += (a.X*b.Y - b.X*a.Y) / 2
			length += math.Hypot(b.X-a.X, b.Y-a.Y)
		}
		area, round = area+one, round+length
		least, most = min(least, one), max(most, one)
		if math.Abs(one) > math.Abs(largest) {
			largest, its = one, length
		}
	}
	if least < 0 && most > 0 {
		return math.Abs(area), round
	}
	return math.Abs(largest), its
}

// hatch draws the lines of a hatch inside some outlines, by the rule that fills them: what they wind round is inside. The lines
// lie on one grid over the whole drawing, so that areas beside each other are hatched as one.
func hatch(shape [][]page.Point) []page.Cmd {
	const step = hatchEvery * math.Sqrt2 // from line to line along x, as x + y is the same all along a line
	// Each line is laid only over the outlines that it can meet: a row of a chart is many small ones.
	meets := map[int][][]page.Point{}
	least, most := math.MaxInt, math.MinInt
	for _, ring := range shape {
		lo, hi := math.Inf(1), math.Inf(-1)
		for _, p := range ring {
			lo, hi = math.Min(lo, p.X+p.Y), math.Max(hi, p.X+p.Y)
		}
		for k := int(math.Ceil(lo / step)); float64(k)*step < hi; k++ {
			meets[k] = append(meets[k], ring)
			least, most = min(least, k), max(most, k)
		}
	}
	var out []page.Cmd
	for n := least; n <= most; n++ {
		k := float64(n)
		for _, in := range inside(meets[n], k*step) {
			// The ends of a line are cut square; half its width is kept off the outline for them.
			const off = hatchWidth / 2 / math.Sqrt2
			a, b := in[0]+off, in[1]-off
			if b-a < hatchWidth {
				continue
			}
			from, to := page.Point{X: a, Y: k*step - a}, page.Point{X: b, Y: k*step - b}
			out = append(out, page.Cmd{Op: 'M', P: [3]page.Point{from}}, page.Cmd{Op: 'L', P: [3]page.Point{to}})
		}
	}
	return out
}

// inside are the stretches of the line x + y = c that lie inside some outlines, by their x from left to right.
func inside(shape [][]page.Point, c float64) [][2]float64 {
	type crossing struct {
		x    float64
		turn int
	}
	var at []crossing
	for _, ring := range shape {
		for i, a := range ring {
			b := ring[(i+1)%len(ring)]
			da, db := a.X+a.Y-c, b.X+b.Y-c
			if (da < 0) == (db < 0) { // a corner on the line counts with the edges on one side of it
				continue
			}
			turn := 1
			if da >= 0 {
				turn = -1
			}
			at = append(at, crossing{a.X + (b.X-a.X)*da/(da-db), turn})
		}
	}
	slices.SortFunc(at, func(a, b crossing) int {
		switch {
		case a.x < b.x:
			return -1
		case a.x > b.x:
			return 1
		}
		return a.turn - b.turn
	})
	var out [][2]float64
	winds, from := 0, 0.0
	for _, x := range at {
		was := winds
		winds += x.turn
		switch {
		case was == 0:
			from = x.x
		case winds == 0:
			out = append(out, [2]float64{from, x.x})
		}
	}
	return out
}
