package fabric

import (
	"slices"
	"strconv"

	"ovillo/compile/plan"
)

// This file counts off sections along an edge and finds what lies in them.

// section is what lies between two markers; an empty name is the start or the end of the edge. In a round it may lie across the
// start: then it goes on from the last marker to the first.
type section struct {
	from, to string
	across   bool
}

// between gives the indices of a section on the edge.
func (p *Part) between(s section) (int, int, *Fault) {
	a, b := 0, len(p.edge.p)
	if s.from != "" {
		m := p.marks[s.from]
		lost := m == nil || m.edge != p.edge.serial
		if lost && s.across {
			return p.between(section{to: s.to}) // it begins where the round does again
		}
		if lost {
			return 0, 0, fault(Lost, 0, 0, s.from)
		}
		if a = m.at; !m.gap {
			a++
		}
	}
	if s.to != "" {
		m := p.marks[s.to]
		if m == nil || m.edge != p.edge.serial {
			return 0, 0, fault(Lost, 0, 0, s.to)
		}
		b = m.at
	}
	if s.across && a > b {
		return a, b, nil
	}
	return a, max(a, b), nil
}

// in are the places of a section; of one that lies across the start those before it come first, as they are made first in a round
// that goes round again.
func (p *Part) in(s section) ([]ID, *Fault) {
	a, b, f := p.between(s)
	switch {
	case f != nil:
		return nil, f
	case a > b:
		return append(slices.Clone(p.edge.p[a:]), p.edge.p[:b]...), nil
	}
	return p.edge.p[a:b], nil
}

// OffStep is a step of a counting off: N places, or a marker.
type OffStep struct {
	N      plan.Nums
	Label  string
	Marker string
	InNext bool
	Fault  *Fault
}

// CountOff walks along the edge without working, sets markers and names sections. It must reach the end.
func (p *Part) CountOff(steps []OffStep) *Fault {
	at, last := 0, ""
	total := len(p.edge.p)
	open := "" // the section that waits for what stands behind it
	for _, s := range steps {
		if s.Marker != "" {
			if s.InNext && at >= total {
				return fault(TooFew, 1, 0, s.Marker)
			}
			p.marks[s.Marker] = &marker{edge: p.edge.serial, at: at, gap: !s.InNext}
			p.endSection(open, s.Marker)
			open, last = "", s.Marker
			if s.InNext {
				at++
			}
			continue
		}
		if open != "" {
			last = p.boundary(at) // two sections side by side, with no marker between them
			p.endSection(open, last)
			open = ""
		}
		if s.Label != "" {
			if last == "" && at > 0 {
				last = p.boundary(at)
			}
			p.spans[s.Label] = section{from: last}
			open = s.Label
		}
		at += s.N[p.f.Size]
		if s.Label == "" {
			last = ""
		}
	}
	if at != total {
		return fault(StatedOther, at, total, "")
	}
	if first, end := steps[0], steps[len(steps)-1]; p.edge.closed && first.Label != "" && end.Marker != "" {
		// What is made behind the last marker belongs to the section that begins the round.
		p.spans[first.Label] = section{from: end.Marker, to: p.spans[first.Label].to, across: true}
	}
	return nil
}

func (p *Part) endSection(name, marker string) {
	if name != "" {
		p.spans[name] = section{from: p.spans[name].from, to: marker}
	}
}

// hidden begins the name of a boundary that no marker of the maker's stands at.
const hidden = "|"

// boundary sets a marker of our own where a section ends or begins without one, so that it rides up like any other.
func (p *Part) boundary(at int) string {
	name := hidden + strconv.Itoa(int(p.edge.serial)) + "." + strconv.Itoa(at)
	p.marks[name] = &marker{edge: p.edge.serial, at: at, gap: true}
	return name
}
