package fabric

import (
	"slices"

	"ovillo/compile/plan"
)

// This file works rows that are like earlier ones without working them. Most of a fabric is such rows: dc in each, for thirty
// centimetres, or two rows by turns.
//
// A pure row does what follows from what it can tell of the edge: the kinds of places in the order they are met, the chains of spaces,
// the markers, what lies unworked beyond the ends. If the same row was worked on such an edge before, it does the same again. So the
// elements that it made then stand for those of the new row, and the old row exists by its number alone, and by its ends, along which
// other parts may go on. What they stand on is as what lies below the new row would be.
//
// A row is steady if it left the edge as it found it: then any number of rows like it can be counted at once.

// found is what a pure row can tell of an edge.
type found struct {
	edge
	stood []standing // the markers on it
}

// alike reports whether a pure row does the same on two edges.
func (f *Fabric) alike(a, b *found) bool {
	if a.closed != b.closed || a.loop != b.loop || a.back != b.back || len(a.p) != len(b.p) || !slices.Equal(a.post, b.post) || !slices.Equal(a.pre, b.pre) ||
		len(a.stood) != len(b.stood) {
		return false
	}
	for _, s := range a.stood {
		if !slices.Contains(b.stood, s) {
			return false
		}
	}
	if len(a.p) == 0 || &a.p[0] == &b.p[0] {
		return true
	}
	for i, id := range a.p {
		a, b := &f.Elems[id], &f.Elems[b.p[i]]
		if a.Kind != b.Kind || a.N != b.N {
			return false
		}
	}
	return true
}

// plain reports whether a row along an edge can be like another. An edge that the part started along cannot: its places are told apart
// in what the row did. Nor can one with chains of a foundation in it, where it matters how they came to be places.
func (f *Fabric) plain(p *Part, e *edge) bool {
	if e.free || e.serial == p.begun {
		return false
	}
	for _, id := range e.p {
		if el := &f.Elems[id]; el.Kind > Space || el.Kind == Stitch && el.Form == chainForm {
			return false
		}
	}
	return true
}

// standing lists the markers of the edge.
func (p *Part) standing() []standing {
	var out []standing
	for name, m := range p.marks {
		if m.edge == p.edge.serial {
			out = append(out, standing{name, m.at, m.gap})
		}
	}
	return out
}

// pastRow is a pure row that was worked: on which edge, and what came of it.
type pastRow struct {
	ops    []*Op
	style  Style
	open   bool
	before found
	after  found
	used   []uint16 // how often each place of the edge before was worked into then
	res    *Result
}

// mostPast is how many rows are kept: a stitch pattern of more rows is worked each time.
const mostPast = 12

// past is the row that was worked before, if what a new one does is known from it.
func (p *Part) past(in *Row, now *found) *pastRow {
	for i := len(p.rows) - 1; i >= 0; i-- {
		if r := &p.rows[i]; r.style == in.Style && r.open == in.Open && sameOps(r.ops, in.Ops, p.f.Size) && p.f.alike(&r.before, now) {
			return r
		}
	}
	return nil
}

// keep notes a row that was worked along an edge.
func (p *Part) keep(in *Row, before found, res *Result) {
	r := pastRow{ops: in.Ops, style: in.Style, open: in.Open, before: before, after: found{p.edge, p.standing()}, res: res, used: make([]uint16, len(before.p))}
	for i, id := range before.p {
		r.used[i] = p.f.Elems[id].Used
	}
	if len(p.rows) == mostPast {
		p.rows = append(p.rows[:0], p.rows[1:]...)
	}
	p.rows = append(p.rows, r)
}

// forget has no row be like one before it: somebody else may know their elements.
func (p *Part) forget() { p.rows = nil }

// repeat works a row as it was worked before.
func (p *Part) repeat(in *Row, now *found, r *pastRow) *Result {
	was := r.after.serial
	row := p.nextRow()
	if len(now.p) > 0 && (len(r.after.p) == 0 || &now.p[0] != &r.after.p[0]) {
		for i, id := range now.p {
			p.f.Elems[id].Used = r.used[i]
		}
	}
	if !r.after.closed {
		p.endsLater(was, row, in.Wrong)
	}
	p.edge = r.after.edge
	p.edge.serial = row
	p.f.stamp(p.edge.p, row, in.Yarn, in.Wrong)
	for _, id := range p.edge.p {
		p.f.Elems[id].Used = 0
	}
	for _, s := range r.after.stood {
		p.marks[s.name] = &marker{edge: row, at: s.at, gap: s.gap}
	}
	r.before, r.after.serial = *now, row
	p.replaced = was
	return r.res
}

// stamp has the elements of a row be those of another.
func (f *Fabric) stamp(ids []ID, row int32, yarn int, wrong bool) {
	for _, id := range ids {
		el := &f.Elems[id]
		el.Row, el.Yarn, el.Facing = row, int32(yarn), wrong
	}
}

// Replaced is the number of the row of which what the last row made stands in the place: that row was like it. 0: of none.
func (p *Part) Replaced() int32 { return p.replaced }

// endsLater has the ends of a row be those of another one, and gives the row ends of its own.
func (p *Part) endsLater(was, row int32, wrong bool) {
	for side := range p.ends {
		ends := p.ends[side]
		for i := len(ends) - 1; i >= 0; i-- {
			if ends[i].row != was {
				continue
			}
			end, to := ends[i], Side(side)
			el := p.f.Elems[end.at.ID]
			ends[i] = p.endOf(end, was, el.Facing)
			if el.Facing != wrong {
				to = 1 - to // a row that comes from the other side
			}
			end.row = row
			p.ends[to] = append(p.ends[to], end)
			break
		}
	}
}

// sameOps reports whether two lists of instructions ask for the same in a size, wherever they stand in the source.
func sameOps(a, b []*Op, size int) bool {
	return slices.EqualFunc(a, b, func(a, b *Op) bool {
		return a == b || a.Kind == b.Kind && a.Form == b.Form && a.Extra == b.Extra && a.Index == b.Index && a.How == b.How && a.Cross == b.Cross &&
			sameNumber(a.N, b.N, size) && sameNumber(a.Per, b.Per, size) && sameNumber(a.Stated, b.Stated, size) && sameNumber(a.Edge, b.Edge, size) &&
			a.Target.Kind == b.Target.Kind && a.Target.Takes == b.Target.Takes && sameNumber(a.Target.Of, b.Target.Of, size) &&
			sameBound(&a.Target.Bound, &b.Target.Bound, size) && sameBound(&a.Bound, &b.Bound, size) && sameOps(a.Body, b.Body, size)
	})
}

func sameBound(a, b *Bound, size int) bool {
	return a.Kind == b.Kind && a.Name == b.Name && sameNumber(a.N, b.N, size)
}

func sameNumber(a, b plan.Nums, size int) bool {
	return (a == nil) == (b == nil) && (a == nil || a[size] == b[size])
}

// Pure reports whether what instructions do follows from the kinds of places alone that the edge has and from where its markers stand,
// and changes nothing but the edge: no names, no yarns, no markers placed, nothing outside the edge.
func Pure(ops []*Op) bool {
	for _, o := range ops {
		if o.Label != "" || o.Yarn >= 0 || o.Form.ID == slip || o.Cross == plan.CrossBack || o.Bound.Kind == ToName || o.Target.Bound.Kind == ToName || o.Target.Deep > 1 {
			return false
		}
		switch o.Kind {
		case Work, Draw, Cross, Chains, SkipOver, SkipSpaces, Repeat, InOne, Spread, Spaced:
		default:
			return false
		}
		switch o.Target.Kind {
		case Next, Each, First, Last, Same, GapHere, InMarked:
		default:
			return false
		}
		if !Pure(o.Body) {
			return false
		}
	}
	return true
}

// Again works the row that was just worked as many times more, which must be steady; the last of them in a yarn, with the wrong side
// facing or not. It returns the number of the first of them, as [Part.Serial] counts; the others follow it.
func (p *Part) Again(times int, in *Row, yarn int, wrong bool) int32 {
	e := &p.edge
	first := e.serial
	last := first + int32(times)
	if !e.closed {
		p.endsAgain(times, in)
	}
	p.f.stamp(e.p, last, yarn, wrong)
	for i := range p.rows { // one of them is the row at hand
		if r := &p.rows[i]; r.after.serial == first {
			r.after.serial = last
		}
	}
	for _, m := range p.marks {
		if m.edge == first {
			m.edge = last
		}
	}
	e.serial, p.f.rows = last, last
	return first + 1
}

// endsAgain notes the ends of rows worked again. The row itself gets ends of its own, since what it made stands for the last of them.
func (p *Part) endsAgain(times int, in *Row) {
	at, to := RightEdge, LeftEdge
	if in.Wrong {
		at, to = to, at
	}
	a, b := len(p.ends[at])-1, len(p.ends[to])-1
	if a < 0 || b < 0 || p.ends[at][a].row != p.edge.serial {
		return // it made nothing
	}
	first, last := p.ends[at][a], p.ends[to][b]
	p.ends[at], p.ends[to] = p.ends[at][:a], p.ends[to][:b]
	turns := in.Style == plan.Rows || in.Style == plan.TurnedRounds
	for k := range times {
		row := p.edge.serial + int32(k)
		wrong := in.Wrong != (turns && k%2 == 1)
		p.ends[at] = append(p.ends[at], p.endOf(first, row, wrong))
		p.ends[to] = append(p.ends[to], p.endOf(last, row, wrong))
		if turns {
			at, to = to, at
		}
	}
	first.row += int32(times)
	last.row += int32(times)
	p.ends[at], p.ends[to] = append(p.ends[at], first), append(p.ends[to], last)
}

// endOf is the end of a row that is like another.
func (p *Part) endOf(like rowEnd, row int32, wrong bool) rowEnd {
	el := p.f.Elems[like.at.ID]
	el.Facing, el.Row, el.Into, el.Into2, el.Used = wrong, row, nowhere, nowhere, 0
	like.at.ID, like.row = p.f.add(&el), row
	return like
}
