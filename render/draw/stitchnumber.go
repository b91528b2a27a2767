package draw

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"ovillo/render/page"
	"ovillo/render/scene"
)

// Between two texts of a chart, in millimetres.
const (
	textApart  = 0.5
	textBeside = 1.0 // where one stands beside the other
	textTall   = 0.8 // of the height of its type, of capitals and what hangs below them
)

// numbers sets the numbers of rows and their counts. In rows a text that would run into another, since rows are lower than figures, stands
// farther out, counts behind numbers. Rounds have no room farther out: there the number of a round is left out if that of the round over
// it is too close.
func (q *chartPen) numbers() {
	n := len(q.c.Lines)
	q.said = make([][]scene.Label, n)
	var placed []box
	put := func(i int, text string, at vec, anchor scene.Anchor, count bool) {
		v := q.on(at)
		l := scene.Label{X: v.x, Y: v.y, Text: text, Height: q.em, Face: page.Sans, Anchor: anchor}
		for again := true; again; {
			again = false
			b := textBox(l).grown(textApart / 2)
			for _, o := range placed {
				if !b.overlaps(o) {
					continue
				}
				if again = true; anchor == scene.Start {
					l.X = o.max.x + textBeside - textApart/2
				} else if anchor == scene.End {
					l.X = o.min.x - textBeside + textApart/2
				} else {
					return
				}
				b = textBox(l).grown(textApart / 2)
			}
		}
		// A row that is shorter than the one below it ends over that: its number stands beyond, its count has no place.
		for step := 0; q.onStitches(i, textBox(l)); step++ {
			if count || anchor == scene.Middle || step == 40 {
				return
			}
			l.X += 2 * map[scene.Anchor]float64{scene.Start: 1, scene.End: -1}[anchor]
		}
		if q.s.Outward && !q.clear(i, &l, placed) {
			return
		}
		placed = append(placed, textBox(l).grown(textApart/2))
		q.said[i] = append(q.said[i], l)
	}
	for k := range n {
		i := k
		if q.s.Outward {
			i = n - 1 - k
		}
		if first := q.firstOn(i); first >= 0 && q.s.Lines[i].Number > 0 {
			at, anchor := q.numberAt(i, first)
			put(i, strconv.Itoa(q.s.Lines[i].Number), at, anchor, false)
		}
	}
	if !q.s.Whole() {
		return // the row has more stitches than are drawn, and the text says how many
	}
	for i := range n {
		line, plans := &q.c.Lines[i], &q.s.Lines[i]
		last := len(line.Stitches) - 1
		if q.s.Outward || plans.Number == 0 || last < 0 || !q.t.holds(standsAt(&line.Stitches[last])) {
			continue
		}
		if n := stitchCount(plans); n > 0 {
			put(i, "("+strconv.Itoa(n)+")", mm(line.End), outside(line.Way.X > 0), true)
		}
	}
}

// roundCounts sets the number of every round with its count, 4 (48), below rounds that grow from a middle: in the drawing there is no
// room for counts. b is the box round what is drawn so far, and grows with them. Of several sheets the last has them.
func (q *chartPen) roundCounts(b *box) {
	if !q.s.Outward || !q.s.Whole() || q.t.number() < q.t.of[0]*q.t.of[1] {
		return
	}
	const apart, down = 2.4, 1.4 // between two of them, and from line to line in heights of the type
	const inset = 1              // from the edges of the drawing
	left, right := b.min.x+inset, max(b.max.x, b.min.x+30)-inset
	x, y := left, b.max.y+down*q.em
	for i := range q.s.Lines {
		line := &q.s.Lines[i]
		if line.Number == 0 || line.Base {
			continue
		}
		l := scene.Label{X: x, Y: y, Text: fmt.Sprintf("%d\u00a0(%d)", line.Number, stitchCount(line)), Height: q.em, Face: page.Sans, Anchor: scene.Start}
		if labelBox(l).max.x > right && x > left {
			x, y = left, y+down*q.em
			l.X, l.Y = x, y
		}
		x = labelBox(l).max.x + apart
		b.join(labelBox(l))
		q.items = append(q.items, l)
	}
}

// clear moves the number of a round to where no symbol of it or of its neighbours is drawn and no other text, not far away; false if there is no such
// place.
func (q *chartPen) clear(i int, l *scene.Label, placed []box) bool {
	at := vec{l.X, l.Y}
	reach := 14 * q.scale
	var lines [][2]vec
	for k := max(i-1, 0); k <= min(i+1, len(q.c.Lines)-1); k++ {
		line := &q.c.Lines[k]
		for n := range line.Stitches {
			if q.on(mm(line.Stitches[n].Head)).sub(at).length() > reach {
				continue
			}
			one := &chartPen{symbolChart: q.symbolChart, pen: &pen{scale: q.scale}, t: q.t, em: q.em}
			one.worked(&q.s.Lines[k].Stitches[n], &line.Stitches[n])
			lines = append(lines, strokesIn(one.items)...)
		}
		if line.Join != nil {
			dot := q.on(mm(*line.Join))
			lines = append(lines, [2]vec{dot.sub(vec{slipWide / 2 * q.scale, 0}), dot.add(vec{slipWide / 2 * q.scale, 0})})
		}
	}
	for _, far := range []float64{0, 0.5, 1, 1.5, 2} {
		for turn := range 12 {
			sin, cos := math.Sincos(2 * math.Pi * float64(turn) / 12)
			l.X, l.Y = at.x+far*cos, at.y+far*sin
			b := textBox(*l).grown(textApart / 2)
			if struck(textBox(*l).grown(0.15), lines) == 0 && !slices.ContainsFunc(placed, b.overlaps) {
				return true
			}
			if far == 0 {
				break
			}
		}
	}
	return false
}

// strokesIn are the straight stretches of the lines of a drawing.
func strokesIn(items []scene.Item) [][2]vec {
	var out [][2]vec
	for _, it := range items {
		path, ok := it.(scene.Path)
		if !ok || len(path.Dash) > 0 {
			continue
		}
		for _, run := range flatten(path.Cmds) {
			for n := 1; n < len(run.pts); n++ {
				out = append(out, [2]vec{run.pts[n-1], run.pts[n]})
			}
		}
	}
	return out
}

// onStitches reports whether a text beside a row would stand on stitches of it or of those next to it.
func (q *chartPen) onStitches(i int, b box) bool {
	if q.s.Outward {
		return false
	}
	arms := capWide / 2 * q.scale * 0.8
	b = b.grown(0.3 * q.scale)
	b.min.x, b.max.x = b.min.x-arms, b.max.x+arms
	for k := max(i-2, 0); k <= min(i+2, len(q.c.Lines)-1); k++ {
		if q.s.Lines[k].Base {
			continue
		}
		for n := range q.c.Lines[k].Stitches {
			st := &q.c.Lines[k].Stitches[n]
			head := q.on(mm(st.Head))
			if math.Abs(head.x-b.min.x) > 60 || !q.t.holds(standsAt(st)) {
				continue
			}
			stems := [][2]vec{}
			for _, f := range st.Feet {
				stems = append(stems, [2]vec{head, q.on(mm(f))})
			}
			for _, o := range st.Ovals {
				half := mm(o.Along).unit().times(o.Long * chartUnit / 2)
				stems = append(stems, [2]vec{q.on(mm(o.At).add(half)), q.on(mm(o.At).sub(half))})
			}
			if struck(b, stems) > 0 {
				return true
			}
		}
	}
	return false
}

// textBox is where the letters of a text stand, without the white above capitals.
func textBox(l scene.Label) box {
	b := labelBox(l)
	off := l.Height * (1 - textTall) / 2
	b.min.y, b.max.y = b.min.y+off, b.max.y-off
	return b
}

// firstOn is the first stitch of a line on this sheet; -1 if there is none.
func (q *chartPen) firstOn(i int) int {
	for k := range q.c.Lines[i].Stitches {
		if q.t.holds(standsAt(&q.c.Lines[i].Stitches[k])) {
			return k
		}
	}
	return -1
}

// numberAt is where the number of a row stands: where it begins, or before its first stitch on this sheet.
func (q *chartPen) numberAt(i, first int) (vec, scene.Anchor) {
	line, plans := &q.c.Lines[i], &q.s.Lines[i]
	anchor := scene.Middle
	if !q.s.Outward {
		anchor = outside(line.Way.X < 0)
	}
	if first == 0 {
		return mm(line.Begin), anchor
	}
	st := &line.Stitches[first]
	if q.s.Outward {
		ahead := mm(st.Up).unit().normal()
		if !plans.FromLeft {
			ahead = ahead.times(-1)
		}
		return mm(st.Head).sub(ahead.times(chartUnit)), anchor
	}
	at := mm(st.Head).sub(mm(line.Way).unit().times(chartUnit))
	way := line.Way.X
	for k := first; k < min(first+8, len(line.Stitches)); k++ { // clear of all that leans out over the edge of the sheet
		if x := mm(line.Stitches[k].Head).x; (x-at.x)*way < chartUnit {
			at.x = x - way*chartUnit
		}
	}
	if len(st.Feet) > 0 {
		at.y = (mm(st.Head).y + mm(st.Feet[0]).y) / 2
	}
	return at, anchor
}
