package draw

import (
	"fmt"

	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// Drawings on several sheets, in millimetres.
const (
	cutLine    = 0.18
	cutTip     = 1.5 // a triangle that points to where the drawing goes on
	sheetsMost = 24.0
	sheetsEm   = 3.2
)

// cutEdge marks where another sheet begins, on which the drawing goes on: a dashed line, and beyond its ends two small triangles that
// point there.
func (p *pen) cutEdge(from, to, out vec) {
	ground := white
	p.items = append(p.items, scene.Path{Cmds: p.path(straight(from, to)), Stroke: &ground, Width: 2 * cutLine})
	p.line(straight(from, to), 2*cutLine, 1.2, 1.2)
	along := to.sub(from).unit()
	for _, end := range [2]vec{from.sub(along.times(0.8 * cutTip)), to.add(along.times(0.8 * cutTip))} {
		side := along.times(0.4 * cutTip)
		p.area(black, straight(end.add(side), end.sub(side), end.add(out.times(0.8*cutTip))))
	}
}

// SharedKey is the line of a key that says what the marks at the edge of a sheet mean, for a chart on several sheets: nothing is to
// be worked twice because it is drawn twice.
func SharedKey(langs ...*words.Language) KeyItem {
	p := &pen{scale: 1}
	const wide, high = signRoom, 9.0
	p.cutEdge(vec{wide / 2, 2 * cutTip}, vec{wide / 2, high - 2*cutTip}, vec{1, 0})
	item := KeyItem{&scene.Scene{W: wide, H: high, Items: p.items}, map[string]string{}}
	for tag, w := range speak(langs) {
		item.Says[tag] = w.ChartShared
	}
	return item
}

// sheetPlan draws how the sheets lie beside and below one another, this one black, with its number, within a height.
func (p *pen) sheetPlan(corner vec, at, of [2]int, high float64) {
	cell, wide := sheetPlanCell(of, high)
	for k := range of[0] * of[1] {
		a := corner.add(vec{wide * float64(k%of[0]), cell * float64(k/of[0])})
		box := curve{pts: []vec{a, a.add(vec{wide, 0}), a.add(vec{wide, cell}), a.add(vec{0, cell})}, closed: true}
		if k == at[1]*of[0]+at[0] {
			p.area(black, box)
		}
		p.line(box, cutLine)
	}
	p.items = append(p.items, scene.Label{X: corner.x + wide*float64(of[0]) + 1.5, Y: corner.y + sheetsEm/2,
		Text: fmt.Sprintf("%d/%d", at[1]*of[0]+at[0]+1, of[0]*of[1]), Height: sheetsEm, Face: page.Sans, Anchor: scene.Start})
}

// sheetPlanCell is how large a sheet is in the plan of sheets.
func sheetPlanCell(of [2]int, high float64) (cell, wide float64) {
	cell = min(4.5, high/float64(of[1]))
	return cell, min(cell*1.3, sheetsMost/float64(of[0]))
}

// sheetPlanWide is how wide the plan of sheets is, its number included.
func sheetPlanWide(of [2]int, high float64) float64 {
	_, wide := sheetPlanCell(of, high)
	return 2 + wide*float64(of[0]) + 1.5 + 1.8*float64(len(fmt.Sprint(of[0]*of[1]))*2+1)
}
