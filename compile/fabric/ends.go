package fabric

import (
	"maps"
	"slices"
)

// This file keeps the side edges of flat work: the ends of its rows, which can be worked along like any other edge.

// Side is a side edge of flat work, as its right side shows it with the start at the bottom: a row that shows the right side
// begins at the right edge, one that shows the wrong side at the left.
type Side uint8

// The side edges.
const (
	RightEdge Side = iota
	LeftEdge
)

// rowEnd is the end of a row at a side edge.
type rowEnd struct {
	at  Place // the side of its first or last stitch
	row int32
	// beyond is the nearest place that an earlier row, or this one, left beyond this end; -1 if there is none. If the part works
	// into it later on, as short rows do, then the end of this row is not on the edge.
	beyond ID
}

// noteEnds notes where the row that is done begins and ends, if it is flat. A row that makes nothing has no ends.
func (r *row) noteEnds(pre, post []ID) {
	n := len(r.made)
	if n == 0 {
		return
	}
	first := rowEnd{Place{ID: r.made[0], Asp: Before}, r.f.rows, -1}
	last := rowEnd{Place{ID: r.made[n-1], Asp: After}, r.f.rows, -1}
	if len(pre) > 0 {
		first.beyond = pre[len(pre)-1]
	}
	if len(post) > 0 {
		last.beyond = post[0]
	}
	at, to := RightEdge, LeftEdge
	if r.in.Wrong {
		at, to = to, at
	}
	r.p.ends[at] = append(r.p.ends[at], first)
	r.p.ends[to] = append(r.p.ends[to], last)
}

// SideRun is the run of row ends at a side edge, from the start of the part upwards: those of the rows that keep accepts, by
// the number of [Part.Serial]. Each row has one place in it; the end of a short row has none where later rows work on beyond it.
func (p *Part) SideRun(s Side, keep func(row int32) bool) Run {
	p.forget()
	out := Run{Halted: p.halted}
	for _, e := range p.ends[s] {
		if keep(e.row) && (e.beyond < 0 || !p.regained[e.beyond]) {
			out.Places = append(out.Places, e.at)
		}
	}
	return out
}

// RowOf is the row that a place of a run of row ends belongs to, as [Part.Serial] counts.
func (f *Fabric) RowOf(p Place) int32 { return f.Elems[p.ID].Row }

// Spread gives each place of a run as many places as counts says: none leaves it out.
func (r Run) Spread(counts []int) Run {
	out := Run{Closed: r.Closed, Halted: r.Halted}
	for i, p := range r.Places {
		for range counts[i] {
			out.Places = append(out.Places, p)
		}
	}
	return out
}

// Called gives all the places of a run a name, beside those it has.
func (r Run) Called(name string) Run {
	names := map[string][]int{}
	maps.Copy(names, r.Names)
	for i := range r.Places {
		names[name] = append(names[name], i)
	}
	r.Names = names
	return r
}

// Reversed is the run walked from its other end.
func (r Run) Reversed() Run {
	r.Places = slices.Clone(r.Places)
	slices.Reverse(r.Places)
	return r
}
