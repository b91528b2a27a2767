package draw

import (
	"slices"

	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// gridLook is the mark of a cell.
type gridLook uint8

// The marks of the yarns of a chart, in the order of their letters; the first yarn is the ground and has none. Bar and dot are those
// of the title drawing. A chart of more yarns than there are marks has their letters.
const (
	emptyLook gridLook = iota
	barLook
	dotLook
	ringLook
	uprightLook
	crossLook
	triangleLook
	diamondLook
	letterLook
	filledLook // a filled square of a mesh
)

// What marks measure, in sides of a cell.
const (
	barLong, barThick = 0.72, 0.32
	dotRadius         = 0.24
	ringRadius        = 0.26
	markStroke        = 0.075 // of a ring and a cross
	filledInset       = 0.12  // of a filled square from the lines round it, so that cells can be counted
)

// gridTints are greys under the marks, one a yarn from the second on: by the rule for tints lighter than 0.75, so that a black mark
// stays far darker, and darker than 0.88, so that a printer draws them. A source says no colour of a yarn that could be mixed with white,
// and a made-up colour beside the name of another would mislead. Neighbours in the list differ more.
var gridTints = []page.Color{{0.77, 0.77, 0.77}, {0.87, 0.87, 0.87}, {0.82, 0.82, 0.82}, {0.79, 0.79, 0.79}, {0.85, 0.85, 0.85}, {0.75, 0.75, 0.75}, {0.84, 0.84, 0.84}}

// look is the mark of a yarn, by its place among those of the chart, and its tint; nil: none.
func (g *grid) look(cell int) (gridLook, *page.Color) {
	if g.mesh {
		if cell == 1 {
			return filledLook, nil
		}
		return emptyLook, nil
	}
	k := slices.Index(g.yarns, cell)
	switch {
	case k <= 0:
		return emptyLook, nil
	case k >= int(letterLook):
		return letterLook, nil // no letters on a tint
	}
	return gridLook(k), &gridTints[k-1]
}

// tints fills the cells of each yarn with its tint, cells beside one another as one.
func (t *gridSheet) tints() {
	for _, yarn := range t.yarns {
		_, tint := t.look(yarn)
		if tint == nil {
			continue
		}
		var cmds []page.Cmd
		for r := t.rows.from; r < t.rows.to; r++ {
			for c := t.columns.from; c < t.columns.to; c++ {
				from := c
				for c < t.columns.to && t.grid.rows[r][c] == yarn {
					c++
				}
				if c > from {
					cmds = rectangle(cmds, t.x(from), t.y(r), t.side*float64(c-from), t.side)
				}
			}
		}
		if cmds != nil {
			fill := *tint
			t.pen.items = append(t.pen.items, scene.Path{Cmds: cmds, Fill: &fill})
		}
	}
}

// marks draws the marks of a row, those of a kind as one path.
func (t *gridSheet) marks(r int) {
	for _, yarn := range t.yarns {
		look, _ := t.look(yarn)
		if look == emptyLook {
			continue
		}
		var at []vec
		for c := t.columns.from; c < t.columns.to; c++ {
			if t.grid.rows[r][c] == yarn {
				at = append(at, vec{t.x(c), t.y(r)})
			}
		}
		t.pen.gridMarks(look, words.YarnLetter(yarn), at, t.side)
	}
}

// gridMarks draws marks of one kind in cells whose upper left corners are given.
func (p *pen) gridMarks(look gridLook, letter string, at []vec, side float64) {
	if len(at) == 0 {
		return
	}
	var cmds []page.Cmd
	if look != letterLook {
		cmds = make([]page.Cmd, 0, 6*len(at))
	}
	path := scene.Path{Fill: &page.Color{}}
	for _, a := range at {
		m := a.add(vec{side / 2, side / 2})
		switch look {
		case barLook:
			cmds = rectangle(cmds, m.x-barLong/2*side, m.y-barThick/2*side, barLong*side, barThick*side)
		case uprightLook:
			cmds = rectangle(cmds, m.x-barThick/2*side, m.y-barLong/2*side, barThick*side, barLong*side)
		case filledLook:
			cmds = rectangle(cmds, a.x+filledInset*side, a.y+filledInset*side, (1-2*filledInset)*side, (1-2*filledInset)*side)
		case dotLook:
			cmds = circle(cmds, m, dotRadius*side)
		case ringLook:
			cmds = circle(cmds, m, ringRadius*side)
		case crossLook:
			const d = 0.28
			cmds = polyline(cmds, m.add(vec{-d, -d}.times(side)), m.add(vec{d, d}.times(side)))
			cmds = polyline(cmds, m.add(vec{-d, d}.times(side)), m.add(vec{d, -d}.times(side)))
		case triangleLook:
			cmds = append(polyline(cmds, m.add(vec{0, -0.3}.times(side)), m.add(vec{0.33, 0.27}.times(side)), m.add(vec{-0.33, 0.27}.times(side))), page.Cmd{Op: 'Z'})
		case diamondLook:
			const d = 0.32
			cmds = append(polyline(cmds, m.add(vec{0, -d}.times(side)), m.add(vec{d, 0}.times(side)), m.add(vec{0, d}.times(side)), m.add(vec{-d, 0}.times(side))), page.Cmd{Op: 'Z'})
		case letterLook:
			p.items = append(p.items, scene.Label{X: m.x, Y: m.y, Text: letter, Height: min(gridEm, 0.7*side), Face: page.SansBold})
		}
	}
	if look == ringLook || look == crossLook {
		path = scene.Path{Stroke: &page.Color{}, Width: markStroke * side}
	}
	if cmds != nil {
		path.Cmds = cmds
		p.items = append(p.items, path)
	}
}

// rectangle adds a rectangle to a path.
func rectangle(cmds []page.Cmd, x, y, w, h float64) []page.Cmd {
	return append(polyline(cmds, vec{x, y}, vec{x + w, y}, vec{x + w, y + h}, vec{x, y + h}), page.Cmd{Op: 'Z'})
}

// polyline adds straight lines to a path.
func polyline(cmds []page.Cmd, pts ...vec) []page.Cmd {
	for i, v := range pts {
		op := byte('L')
		if i == 0 {
			op = 'M'
		}
		cmds = append(cmds, page.Cmd{Op: op, P: point(v)})
	}
	return cmds
}

// circle adds a circle to a path: four curves, which leave it by less than a thousandth of its radius.
func circle(cmds []page.Cmd, m vec, r float64) []page.Cmd {
	const k = 0.5523
	at := func(x, y float64) page.Point { return page.Point{X: m.x + r*x, Y: m.y + r*y} }
	cmds = append(cmds, page.Cmd{Op: 'M', P: [3]page.Point{at(1, 0)}})
	for _, q := range [4][2]float64{{1, 0}, {0, 1}, {-1, 0}, {0, -1}} {
		x, y := q[0], q[1] // and the next quarter is turned: (-y, x)
		cmds = append(cmds, page.Cmd{Op: 'C', P: [3]page.Point{at(x-k*y, y+k*x), at(-y+k*x, x+k*y), at(-y, x)}})
	}
	return append(cmds, page.Cmd{Op: 'Z'})
}
