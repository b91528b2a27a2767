package draw

import (
	"math"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/chart"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// A symbol chart. Lengths are millimetres at its natural scale, at which a dc is 8.6 mm tall.
const (
	chartUnit   = dcTall / 1.9 // a unit of package chart: the height of an sc, in which a dc is 1.9
	leastScale  = 0.55         // smaller symbols are not legible, and rows have no room for their numbers
	leastOwn    = 0.75         // the same where symbols have letters in them
	sheetScale  = 0.65         // of a chart that needs several sheets anyway
	numberEm    = 2.9          // type of row numbers, counts and letters, however small the symbols
	lightLine   = 0.16         // of the row below the first, and of what marks the repeat and the sheets
	repeatLine  = 0.22
	wayLong     = 7.0 // of the arrow of direction
	wayHead     = 1.7
	sheetsHigh  = 7.5  // for the name of a sheet and the plan of all of them
	overlapping = 2.4  // units that neighbouring sheets have in common
	digitShare  = 0.56 // of the height of its type that a digit is wide
	beyondEdge  = 2.2  // units that symbols and numbers reach beyond the middle of a stitch
)

// StitchChart draws chart i of p.Drawn in the size that is shown, on as many sheets as it needs, none larger than w by h
// millimetres. A chart that fits one sheet at a legible scale is on one; others are cut into sheets that overlap, each with its number,
// the numbers of its rows, and a small plan that says where it belongs. It is nil if nothing is drawn in the size.
func StitchChart(p *plan.Pattern, i int, w, h float64, langs ...*words.Language) []*scene.Scene {
	s := stitchesOf(p, i)
	if s == nil {
		return nil
	}
	of := *p
	of.Shown = p.Drawn[i].Drawn(p.Shown) // where the size shown has none of the rows, another is drawn
	d := &symbolChart{p: &of, s: s, own: ownLetters(p)}
	var out []*scene.Scene
	for _, t := range d.sheets(w, h) {
		one := d.sheet(t)
		d.say(one, i, t, langs)
		out = append(out, one)
	}
	return out
}

func stitchesOf(p *plan.Pattern, i int) *plan.Stitches {
	if i < 0 || i >= len(p.Drawn) || p.Drawn[i] == nil {
		return nil
	}
	z := p.Drawn[i].Drawn(p.Shown)
	if z < 0 || len(p.Drawn[i].Sizes[z].Lines) == 0 {
		return nil
	}
	return p.Drawn[i].Sizes[z]
}

// tallOwn says how tall the stitches of the designer's own are: as tall as the stitch the source compares them with.
func tallOwn(p *plan.Pattern) func(stitch.ID) float64 {
	return func(id stitch.ID) float64 {
		for _, o := range p.Own {
			if o.ID == id {
				if k, ok := stitch.Of(o.Tall); ok {
					return k.Height
				}
			}
		}
		return 1
	}
}

// ownLetters gives each stitch of the designer's own the letter of its symbol.
func ownLetters(p *plan.Pattern) map[stitch.ID]string {
	out := map[stitch.ID]string{}
	for i, o := range p.Own {
		out[o.ID] = string(rune('A' + i%26))
	}
	return out
}

// symbolChart draws a chart that is laid out.
type symbolChart struct {
	p   *plan.Pattern
	s   *plan.Stitches
	c   *chart.Chart
	own map[stitch.ID]string
}

// tile is one sheet of a chart: a part of it, in units, and at which scale.
type tile struct {
	min, max vec // the middles of what is drawn lie in here
	at, of   [2]int
	scale    float64
	cuts     [4]bool // left, right, top, bottom: the chart goes on there
}

func (t tile) split() bool { return t.of[0]*t.of[1] > 1 }

// number is that of a sheet, from 1, row by row.
func (t tile) number() int { return t.at[1]*t.of[0] + t.at[0] + 1 }

func (t tile) holds(v vec) bool {
	return v.x >= t.min.x && v.x <= t.max.x && v.y >= t.min.y && v.y <= t.max.y
}

// lay lays the chart out for a scale, since the numbers between its symbols do not shrink with them, and returns its corners.
func (d *symbolChart) lay(scale float64) (lo, hi vec) {
	d.c = chart.Lay(d.s, tallOwn(d.p), numberEm/chartUnit/scale)
	return vec{d.c.Min.X, d.c.Min.Y}, vec{d.c.Max.X, d.c.Max.Y}
}

// letters reports whether there are symbols with letters in them.
func (d *symbolChart) letters() bool {
	for i := range d.s.Lines {
		for _, w := range d.s.Lines[i].Stitches {
			if _, known := stitch.Of(w.Form.ID); !known && w.Kind == plan.WorkedStitch {
				return true
			}
		}
	}
	return false
}

// sheets cuts a chart into sheets.
func (d *symbolChart) sheets(w, h float64) []tile {
	least, several := leastScale, sheetScale
	if d.letters() {
		least, several = leastOwn, leastOwn
	}
	lo, hi := d.lay(1)
	whole := tile{of: [2]int{1, 1}, scale: 1}
	size := vec{max(hi.x-lo.x, 1), max(hi.y-lo.y, 1)}.times(chartUnit)
	for range 5 {
		whole.min, whole.max = lo.sub(vec{9, 9}), hi.add(vec{9, 9})
		if min(w/size.x, h/size.y) < least*0.95 { // there is no need to try
			whole.scale = 0
			break
		}
		// Letters do not shrink with the rest, so the scale is found by looking.
		s := d.sheet(whole)
		k := min(w/s.W, h/s.H, 1)
		if k > 0.999 {
			break
		}
		if whole.scale *= k * 0.999; whole.scale < least {
			break
		}
		lo, hi = d.lay(whole.scale)
	}
	if whole.scale >= least {
		return []tile{whole}
	}
	lo, hi = d.lay(several)
	mm := chartUnit * several
	room := vec{max(w/mm-2*beyondEdge, 4), max((h-sheetsHigh)/mm-2*beyondEdge, 4)}
	size = hi.sub(lo)
	cut := func(size, room float64) (n int, step float64) {
		n = max(1, int(math.Ceil((size-overlapping)/max(room-overlapping, 1))))
		return n, (size - overlapping) / float64(n)
	}
	nx, stepX := cut(size.x, room.x)
	ny, stepY := cut(size.y, room.y)
	var out []tile
	for y := range ny {
		for x := range nx {
			t := tile{at: [2]int{x, y}, of: [2]int{nx, ny}, scale: several}
			t.min = vec{lo.x + stepX*float64(x), lo.y + stepY*float64(y)}
			t.max = t.min.add(vec{stepX + overlapping, stepY + overlapping})
			t.cuts = [4]bool{x > 0, x < nx-1, y > 0, y < ny-1}
			const slack = 9 // nothing is lost at the edges of the whole
			for k, at := range [4]*float64{&t.min.x, &t.max.x, &t.min.y, &t.max.y} {
				if !t.cuts[k] {
					*at += slack * float64(2*(k%2)-1)
				}
			}
			out = append(out, t)
		}
	}
	return out
}

// sheet draws one sheet.
func (d *symbolChart) sheet(t tile) *scene.Scene {
	q := &chartPen{symbolChart: d, pen: &pen{scale: t.scale}, t: t, em: numberEm}
	s := &scene.Scene{Title: map[string]string{}, Desc: map[string]string{}}
	q.numbers()
	for i := range d.c.Lines {
		from := len(q.items)
		q.line(i)
		if len(q.items) > from {
			s.Groups = append(s.Groups, scene.Group{Name: d.groupName(i), From: from, To: len(q.items)})
		}
	}
	q.arrow()
	q.repeat()
	q.edges()
	b := extent(q.items)
	for _, it := range q.items {
		if l, ok := it.(scene.Label); ok {
			b.join(labelBox(l))
		}
	}
	if !b.full {
		b.add(vec{})
	}
	b = b.grown(0.3)
	top := 0.0
	if t.split() {
		top = sheetsHigh
	}
	q.cutMarks(&b)
	q.roundCounts(&b)
	s.W, s.H = b.width(), b.height()+top
	by := vec{-b.min.x, top - b.min.y}
	for k, it := range q.items {
		switch it := it.(type) {
		case scene.Path:
			q.items[k] = moved(it, by)
		case scene.Label:
			it.X, it.Y = it.X+by.x, it.Y+by.y
			q.items[k] = it
		}
	}
	if t.split() {
		q.planOfSheets(s)
	}
	s.Items = q.items
	return s
}

func (d *symbolChart) groupName(i int) string {
	line := &d.s.Lines[i]
	switch {
	case line.Base || line.Number == 0:
		return "below"
	case line.Closed:
		return "round " + strconv.Itoa(line.Number)
	}
	return "row " + strconv.Itoa(line.Number)
}

// labelBox is about where a label stands.
func labelBox(l scene.Label) box {
	wide := digitShare * l.Height * float64(len([]rune(l.Text)))
	from := l.X
	switch l.Anchor {
	case scene.Middle:
		from -= wide / 2
	case scene.End:
		from -= wide
	}
	return box{vec{from, l.Y - l.Height/2}, vec{from + wide, l.Y + l.Height/2}, true}
}

// chartPen draws on one sheet. Its points are millimetres at the natural scale.
type chartPen struct {
	*symbolChart
	*pen
	t    tile
	em   float64
	said [][]scene.Label // the texts of each line
}

func mm(v page.Point) vec { return vec{v.X * chartUnit, v.Y * chartUnit} }

// write adds a text whose middle is at a point.
func (q *chartPen) write(text string, at vec, em float64) {
	v := q.on(at)
	q.items = append(q.items, scene.Label{X: v.x, Y: v.y, Text: text, Height: em, Face: page.Sans, Anchor: scene.Middle})
}

// arrow draws the direction of work.
func (q *chartPen) arrow() {
	if q.c.Way == (page.Point{}) || !q.t.holds(vec{q.c.Arrow.X, q.c.Arrow.Y}) {
		return
	}
	way := mm(q.c.Way).unit()
	to := mm(q.c.Arrow).add(way.times(wayLong / 2))
	from := to.sub(way.times(wayLong))
	if !q.s.Outward { // its point stands before the number
		by := way.times(-wayLong/2 - 1.2 - q.em*digitShare*float64(len(strconv.Itoa(q.firstNumber())))/q.scale)
		from, to = from.add(by), to.add(by)
	}
	q.items = append(q.items, q.stroke(straight(from, to.sub(way.times(wayHead*0.8))), 0.3))
	q.head(to, way, wayHead, wayHead*0.85)
}

// firstNumber is that of the lowest row drawn.
func (q *chartPen) firstNumber() int {
	for i := range q.s.Lines {
		if line := &q.s.Lines[i]; line.Number > 0 && !line.Base {
			return line.Number
		}
	}
	return 0
}

// stroke is a line whose width shrinks with the chart.
func (q *chartPen) stroke(c curve, width float64, dash ...float64) scene.Path {
	ink := black
	for i := range dash {
		dash[i] *= max(q.scale, 0.6)
	}
	return scene.Path{Cmds: q.path(c), Stroke: &ink, Width: width * max(q.scale, 0.6), Dash: dash}
}

// repeat marks what the rows repeat: a dashed line on either side, a bracket, and of how many stitches it is.
func (q *chartPen) repeat() {
	r := q.c.Repeat
	if r == nil || q.t.split() && !q.t.holds(vec{r.Label.X, max(r.Label.Y, q.t.min.y)}) {
		return
	}
	for _, side := range r.Sides {
		q.items = append(q.items, q.stroke(straight(q.kept(side[0]), q.kept(side[1])), repeatLine, 0.9, 0.9))
	}
	c := curve{smooth: len(r.Bracket) > 3}
	for _, v := range r.Bracket {
		c.pts = append(c.pts, mm(v))
	}
	q.items = append(q.items, q.stroke(c, 0.3))
	inner := mm(r.Label).sub(c.at(0.5)).unit().times(-0.9)
	for _, end := range [2]vec{c.first(), c.last()} {
		q.items = append(q.items, q.stroke(straight(end, end.add(inner)), 0.3))
	}
	off := mm(r.Label).sub(c.at(0.5)).unit().times(q.em * 0.75 / q.scale)
	q.write(strconv.Itoa(r.N), c.at(0.5).add(off), q.em)
}

// kept is a point of the chart, held inside the sheet.
func (q *chartPen) kept(v page.Point) vec {
	v.X = min(max(v.X, q.t.min.x-1), q.t.max.x+1)
	v.Y = min(max(v.Y, q.t.min.y-1), q.t.max.y+1)
	return mm(v)
}

// edges marks where the rows go on beyond what is drawn.
func (q *chartPen) edges() {
	if q.s.Outward {
		return
	}
	for k, cut := range [2]bool{q.s.CutLeft, q.s.CutRight} {
		if !cut || q.t.cuts[k] {
			continue
		}
		x := q.c.Min.X - 0.75
		if k == 1 {
			x = q.c.Max.X + 0.75
		}
		for _, y := range [3]float64{-0.5, 0, 0.5} {
			for i := range q.c.Lines {
				line := &q.c.Lines[i]
				if len(line.Stitches) == 0 || q.s.Lines[i].Number == 0 {
					continue
				}
				at := vec{x + y*0.7, (line.Begin.Y + line.End.Y) / 2}
				if q.t.holds(at) {
					q.dot(at.times(chartUnit), 0.28)
				}
			}
		}
	}
}
