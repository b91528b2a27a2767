package draw

import (
	"strconv"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/chart"
	"ovillo/render/scene"
)

// How symbols are fitted to one another in a chart, in millimetres at its natural scale.
const (
	crossOff  = 0.35 // of an sc below what stands on its head
	tickWide  = 1.7  // of a stitch of the row below the first
	ownWide   = 3.2  // of the box of a stitch of the designer's own
	ringTight = 0.86 // of a ring, so that what goes into it stands clear
)

// line draws one row: all its strokes are one path, and all that is filled another, so that a large chart stays small.
func (q *chartPen) line(i int) {
	line, plans := &q.c.Lines[i], &q.s.Lines[i]
	from := len(q.items)
	for k := range line.Stitches {
		st := &line.Stitches[k]
		if !q.t.holds(standsAt(st)) {
			continue
		}
		if plans.Base && plans.Stitches[k].Kind != plan.WorkedRing && plans.Stitches[k].Form.ID != stitch.Chain {
			q.lies(st)
			continue
		}
		q.worked(&plans.Stitches[k], st)
	}
	if line.Join != nil && q.t.holds(vec{line.Join.X, line.Join.Y}) {
		q.dot(mm(*line.Join), slipWide/2*0.85)
	}
	q.items = append(q.items[:from], gathered(q.items[from:])...)
	for _, l := range q.said[i] {
		q.items = append(q.items, l)
	}
}

// outside is how a text is set that runs away from a row at its right or its left end.
func outside(right bool) scene.Anchor {
	if right {
		return scene.Start
	}
	return scene.End
}

// stitchCount is how many stitches a row has.
func stitchCount(l *plan.Line) int {
	n := 0
	for _, w := range l.Stitches {
		if w.Kind == plan.WorkedStitch {
			n++
		}
	}
	return n
}

// standsAt is where a stitch belongs to a sheet: by its foot, so that a shell is not cut apart, or where it lies if it has none.
func standsAt(st *chart.Stitch) vec {
	if len(st.Feet) == 0 {
		return vec{st.Head.X, st.Head.Y}
	}
	var v vec
	for _, f := range st.Feet {
		v = v.add(vec{f.X, f.Y}.times(1 / float64(len(st.Feet))))
	}
	return v
}

// gathered makes one path of all strokes of one width, and one of all that is filled.
func gathered(items []scene.Item) []scene.Item {
	var out []scene.Item
	at := map[[2]float64]int{} // width of the stroke, and whether it is filled
	for _, it := range items {
		p, ok := it.(scene.Path)
		if !ok {
			continue
		}
		key := [2]float64{p.Width, 0}
		if p.Fill != nil {
			key[1] = 1
		}
		if p.Fill != nil && *p.Fill != black {
			key[1] = 2
		}
		k, seen := at[key]
		if !seen {
			at[key] = len(out)
			out = append(out, p)
			continue
		}
		q := out[k].(scene.Path)
		q.Cmds = append(q.Cmds, p.Cmds...)
		out[k] = q
	}
	for _, it := range items {
		if l, ok := it.(scene.Label); ok {
			out = append(out, l)
		}
	}
	return out
}

// lies draws a place of the row below the first, to stand on.
func (q *chartPen) lies(st *chart.Stitch) {
	at := mm(st.Head)
	across := mm(st.Up).unit().normal().times(tickWide / 2)
	if len(st.Ovals) > 0 {
		across = mm(st.Ovals[0].Along).unit().times(tickWide)
	}
	ink := black
	q.items = append(q.items, scene.Path{Cmds: q.path(straight(at.sub(across), at.add(across))), Stroke: &ink, Width: lightLine})
}

// worked draws one thing of a row.
func (q *chartPen) worked(w *plan.Worked, st *chart.Stitch) {
	switch {
	case w.Kind == plan.WorkedSlip:
		q.dot(mm(st.Head), slipWide/2*0.85)
		return
	case w.Kind == plan.WorkedEnd:
		q.lies(st)
		return
	case w.Kind == plan.WorkedRing:
		if len(st.Ovals) == 0 {
			r := st.Room / 2 * chartUnit * ringTight
			q.oval(mm(st.Head), vec{1, 0}, r, r, false)
			if w.Chains > 0 {
				q.write(strconv.Itoa(w.Chains), mm(st.Head), q.em)
			}
			return
		}
	case st.Many > 0:
		c := curve{smooth: true}
		for _, o := range st.Ovals {
			c.pts = append(c.pts, mm(o.At))
		}
		q.ink(c)
		up := mm(st.Up).unit()
		q.write(strconv.Itoa(st.Many), mm(st.Head).add(up.times(q.em*0.75/q.scale)), q.em)
		return
	}
	for _, o := range st.Ovals {
		q.chain(mm(o.At), mm(o.Along).unit(), o.Long*chartUnit)
	}
	if w.Kind == plan.WorkedStitch && !w.Begin && w.Form.ID != stitch.Chain {
		q.standing(w.Form, st)
	}
	for _, f := range w.Rides {
		q.picot(f.Of, mm(st.Head).add(mm(st.Up).unit().times(0.5)), mm(st.Up).unit(), 0.55)
	}
}

// standing draws a stitch between its head and its feet.
func (q *chartPen) standing(f stitch.Form, st *chart.Stitch) {
	g := stance{head: mm(st.Head), up: mm(st.Up).unit(), narrow: st.Shared, room: st.Room * chartUnit, broken: st.Broken}
	for _, v := range st.Feet {
		g.feet = append(g.feet, mm(v))
	}
	k, known := stitch.Of(f.ID)
	switch {
	case !known:
		q.box(q.own[f.ID], g)
		return
	case k.Symbol == stitch.Dot:
		q.dot(g.head.to(g.foot(), 0.4), slipWide/2)
		q.foot(f, g, g.head)
		return
	case k.Symbol == stitch.Cross && f.Group == stitch.Single && len(g.feet) < 2:
		g.head = g.head.sub(g.up.times(crossOff))
		if over := g.head.sub(g.foot()).length() - scArm*1.1; over > 0 && !g.narrow && k.Extends == "" {
			g.head = g.head.sub(g.up.times(over / 2)) // a cross does not grow with its row
			g.feet[0] = g.feet[0].add(g.up.times(over / 2))
		}
	}
	switch {
	case f.Group.Closed():
		q.bunch(f, k, g)
		q.foot(f, g, g.foot())
	case f.Group.Crossed() || len(g.broken) > 0:
		g.narrow = true
		q.crossed(f, k, g)
	case len(g.feet) < 2 && g.narrow:
		q.spread(k, g)
		q.foot(f, g, g.foot())
	default:
		q.stitch(f, k, g)
	}
	if k.Back && (f.Group != stitch.Single || g.narrow && len(g.feet) < 2) {
		q.wave(g)
	}
}

// box draws a stitch of the designer's own: its stem, and its letter in a box on it.
func (q *chartPen) box(letter string, g stance) {
	foot := g.foot()
	size := max(ownWide, numberEm*1.02/q.scale)
	half := size / 2
	right, along := g.right().times(half), g.up.times(half)
	middle := g.head.sub(g.up.times(half))
	q.ink(curve{pts: []vec{middle.add(along).sub(right), middle.add(along).add(right), middle.sub(along).add(right), middle.sub(along).sub(right)}, closed: true})
	if below := middle.sub(along); below.sub(foot).length() > 0.3 && below.sub(foot).dot(g.up) > 0 {
		q.ink(straight(below, foot))
	}
	q.write(letter, middle, q.em)
}
