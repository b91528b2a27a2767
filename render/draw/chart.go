package draw

import (
	"fmt"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// A chart, in millimetres.
const (
	cellMost   = 3.4 // side of a cell
	cellLine   = 0.14
	chartFrame = 0.35
	chartEm    = 2.5 // type of the numbers beside the largest cells
	numberRoom = 4.6 // for the number of a row at either side
	inset      = 0.1 // of a full cell from the lines around it, so that cells can be counted
	legendGap  = 2.6
	legendStep = 10.0 // from one mark of the legend to the next
)

// Chart is a chart as the right side looks, row 1 at the bottom. Each row has its number where it begins: at the right where
// it is read from right to left, at the left where it is read the other way. The yarns have marks that need no colour, and below
// stands which letter each mark is, as the tables of yarns have them. It is no wider than w and no taller than h, and nil if there
// is no such chart.
func Chart(p *plan.Pattern, i int, w, h float64, langs ...*words.Language) *scene.Scene {
	if i < 0 || i >= len(p.Charts) || len(p.Charts[i].Rows) == 0 || len(p.Charts[i].Rows[0]) == 0 {
		return nil
	}
	c := p.Charts[i]
	wide, high := float64(len(c.Rows[0])), float64(len(c.Rows))
	yarns := yarnsOf(c)
	legend := 0.0
	if len(yarns) > 0 {
		legend = legendGap + cellMost
	}
	side := min(cellMost, (w-2*numberRoom)/wide, (h-legend-chartFrame)/high)
	d := &pen{scale: side, shift: vec{numberRoom, chartFrame / 2}}
	for r, row := range c.Rows {
		for k, cell := range row {
			d.cell(vec{float64(k), high - 1 - float64(r)}, lookOf(c, yarns, cell))
		}
	}
	d.grid(wide, high)
	d.rowNumbers(p, i, wide, high)
	s := &scene.Scene{W: side*wide + 2*numberRoom, H: side*high + chartFrame, Title: map[string]string{}, Desc: map[string]string{}}
	if legend > 0 {
		s.H += legend
		s.W = max(s.W, numberRoom+legendStep*float64(len(yarns)))
		d.legend(yarns, s.H-cellMost/2)
	}
	s.Items = d.items
	for lang, v := range speak(langs) {
		s.Title[lang] = fmt.Sprintf(v.Chart, v.ChartTitle(p, i))
		s.Desc[lang] = fmt.Sprintf(v.ChartGrid, len(c.Rows[0]), len(c.Rows))
	}
	return s
}

// yarnsOf are the yarns of a chart, in the order of their letters; a mesh has none.
func yarnsOf(c plan.Chart) []int {
	if c.Mesh.Behind > 0 {
		return nil
	}
	most := -1
	seen := map[int]bool{}
	for _, row := range c.Rows {
		for _, y := range row {
			seen[y] = true
			most = max(most, y)
		}
	}
	var out []int
	for y := range most + 1 {
		if seen[y] {
			out = append(out, y)
		}
	}
	return out
}

// cellLook is the mark of a cell.
type cellLook uint8

// The marks of cells. The first yarn of a chart is the ground and has none.
const (
	emptyCell cellLook = iota
	fullCell
	dotCell
	crossCell
	slashCell
	ringCell
	looks // how many there are; further yarns have the first ones again, and their letter
)

func lookOf(c plan.Chart, yarns []int, cell int) cellLook {
	if c.Mesh.Behind > 0 {
		return cellLook(cell) // 1 is a filled square
	}
	for k, y := range yarns {
		if y == cell {
			return cellLook(k) % looks
		}
	}
	return emptyCell
}

// cell draws the mark of a cell whose upper left corner is at v.
func (p *pen) cell(v vec, look cellLook) {
	in := func(x, y float64) vec { return v.add(vec{x, y}) }
	switch middle := in(0.5, 0.5); look {
	case fullCell:
		p.area(black, straight(in(inset, inset), in(1-inset, inset), in(1-inset, 1-inset), in(inset, 1-inset)))
	case dotCell:
		p.area(black, ellipse(middle, 0.22, 0.22))
	case crossCell:
		p.line(straight(in(0.2, 0.2), in(0.8, 0.8)), chartFrame)
		p.line(straight(in(0.2, 0.8), in(0.8, 0.2)), chartFrame)
	case slashCell:
		p.line(straight(in(0.15, 0.85), in(0.85, 0.15)), chartFrame)
	case ringCell:
		p.line(ellipse(middle, 0.3, 0.3), chartFrame*0.8)
	}
}

// grid draws the lines between cells, and the frame.
func (p *pen) grid(wide, high float64) {
	var lines []curve
	for k := range int(wide) + 1 {
		lines = append(lines, straight(vec{float64(k), 0}, vec{float64(k), high}))
	}
	for k := range int(high) + 1 {
		lines = append(lines, straight(vec{0, float64(k)}, vec{wide, float64(k)}))
	}
	p.lines(lines, cellLine)
	p.line(curve{pts: []vec{{0, 0}, {wide, 0}, {wide, high}, {0, high}}, closed: true}, chartFrame)
}

// rowNumbers numbers each row where it begins. Rows that nobody works, and those that are read either way, begin at the right.
func (p *pen) rowNumbers(pat *plan.Pattern, chart int, wide, high float64) {
	left := make([]bool, int(high)+1)
	right := make([]bool, int(high)+1)
	eachChartRow(pat, func(c *plan.ChartRow) {
		for r := min(c.First, c.Last); c.Chart == chart && r <= max(c.First, c.Last) && r <= int(high); r++ {
			left[r] = left[r] || c.Read == plan.FromLeft
			right[r] = right[r] || c.Read == plan.FromRight
		}
	})
	em := min(chartEm, p.scale*0.9)
	for r := 1; r <= int(high); r++ {
		y := high - float64(r) + 0.5
		if right[r] || !left[r] {
			p.number(r, vec{wide, y}, vec{1.2, 0}, em, scene.Start)
		}
		if left[r] {
			p.number(r, vec{0, y}, vec{-1.2, 0}, em, scene.End)
		}
	}
}

// number writes the number of a row beside a point.
func (p *pen) number(n int, at, beside vec, em float64, anchor scene.Anchor) {
	v := p.on(at).add(beside)
	p.items = append(p.items, scene.Label{X: v.x, Y: v.y, Text: strconv.Itoa(n), Height: em, Face: page.Sans, Anchor: anchor})
}

// eachChartRow calls f for what every printed row from a chart says of it.
func eachChartRow(p *plan.Pattern, f func(*plan.ChartRow)) {
	for _, part := range p.Parts {
		for _, s := range part.Steps {
			var rows []*plan.Row
			switch s := s.(type) {
			case *plan.Row:
				rows = []*plan.Row{s}
			case *plan.Block:
				rows = s.Rows
			}
			for _, r := range rows {
				if r.Chart != nil {
					f(r.Chart)
				}
			}
		}
	}
}

// legend draws the mark of each yarn with its letter, their middle at the height y.
func (p *pen) legend(yarns []int, y float64) {
	for k, yarn := range yarns {
		box := &pen{scale: cellMost, shift: vec{numberRoom + legendStep*float64(k), y - cellMost/2}}
		box.cell(vec{}, cellLook(k)%looks)
		box.line(curve{pts: []vec{{0, 0}, {1, 0}, {1, 1}, {0, 1}}, closed: true}, chartFrame)
		p.items = append(p.items, box.items...)
		at := box.on(vec{1, 0.5}).add(vec{1.2, 0})
		p.items = append(p.items, scene.Label{X: at.x, Y: at.y, Text: words.YarnLetter(yarn), Height: chartEm, Face: page.Sans, Anchor: scene.Start})
	}
}
