package fabric

import (
	"slices"

	"ovillo/compile/plan"
)

// This file works rows that are like the one before without working them. Most of a fabric is such rows: dc in each, for thirty
// centimetres.
//
// A row is steady if it left the edge as it found it, in all that a row can tell: the kinds of places in the order they are met, the
// chains of spaces, the markers, what lies unworked beyond the ends; and if it looks at nothing but that. The same row then does the
// same once more, and again. So the elements that it made stand for those of the last of such rows, and the rows between exist by
// their numbers alone, and by their ends, along which other parts may go on. What stands on the elements now made stands on them
// all the same; what they stand on is the edge from which the first of the rows was worked, and it is as the one below them would be.

// steady reports whether a row, worked on the edge that it left, does again what it did. before is the edge that it was worked on, and
// stood are the markers there.
func (r *row) steady(before *edge, stood []standing) bool {
	now := &r.p.edge
	if before.closed != now.closed || before.free || before.loop != now.loop || before.back != now.back || before.serial == r.p.begun ||
		len(before.p) != len(now.p) || !slices.Equal(before.post, now.post) || !slices.Equal(before.pre, now.pre) {
		return false
	}
	n := 0
	for name, m := range r.p.marks {
		if m.edge == now.serial {
			n++
			if !slices.Contains(stood, standing{name, m.at, m.gap}) {
				return false
			}
		}
	}
	if n != len(stood) {
		return false
	}
	for i, id := range now.p {
		a, b := &r.f.Elems[before.p[i]], &r.f.Elems[id]
		if a.Kind != b.Kind || a.N != b.N || a.Kind > Space || a.Form == chainForm != (b.Form == chainForm) {
			return false
		}
		if a.Kind == Stitch && a.Form == chainForm {
			return false // it matters how a chain came to be a place
		}
	}
	return true
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
	for _, id := range e.p {
		el := &p.f.Elems[id]
		el.Row, el.Yarn, el.Facing = last, int32(yarn), wrong
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
