package fabric

import (
	"strconv"

	"ovillo/compile/plan"
)

// This file counts off sections along an edge and finds what lies in them.

// section is what lies between two markers; an empty name is the start or the end of the edge.
type section struct{ from, to string }

// between gives the indices of a section on the edge.
func (p *Part) between(s section) (int, int, *Fault) {
	a, b := 0, len(p.edge.p)
	if s.from != "" {
		m := p.marks[s.from]
		if m == nil || m.edge != p.edge.serial {
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
	return a, max(a, b), nil
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
	return nil
}

func (p *Part) endSection(name, marker string) {
	if name != "" {
		p.spans[name] = section{p.spans[name].from, marker}
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
