package plan

// Folded reports whether a part that is worked flat lies folded round the wearer, as a cardigan in one piece does: two tubes or
// more, its sleeves, grow on places that it left aside. A flat part along the whole of such an edge, as a neckband, is folded
// with it. Laid flat, both are half as wide as they were worked.
func (p *Pattern) Folded(part int) bool {
	if part < 0 || part >= len(p.Parts) || p.Parts[part].Style != Rows {
		return false
	}
	tubes := 0
	for _, other := range p.Parts {
		if other.Style == Rows {
			continue
		}
		for _, o := range other.From {
			if o.Part == part && o.Kind == RefSkipped {
				tubes++
				break
			}
		}
	}
	if tubes > 1 {
		return true
	}
	from := p.Parts[part].From
	return len(from) == 1 && from[0].Part < part && from[0].whole() && p.Folded(from[0].Part)
}

// whole reports whether a run is an edge from end to end.
func (o Origin) whole() bool {
	if o.Kind != RefEdge && o.Kind != RefFoundation && o.Kind != RefRow {
		return false
	}
	return o.ends()
}

// Turned is the part in rounds that stands on the whole side of a flat part, as the crown of a hat stands on a brim that was worked
// sideways and joined to a ring; -1 if there is none. Laid flat, the flat part lies across, half as long as it was worked.
func (p *Pattern) Turned(part int) int {
	if part < 0 || part >= len(p.Parts) || p.Parts[part].Style != Rows || len(p.Parts[part].From) > 0 || p.Parts[part].Make > 1 {
		return -1
	}
	found := -1
	for i, other := range p.Parts {
		for _, o := range other.From {
			switch {
			case o.Part != part:
			case found >= 0 || other.Style == Rows || len(other.From) > 1 || o.Kind != RefRowEnds || !o.ends():
				return -1
			default:
				found = i
			}
		}
	}
	return found
}

// ends reports whether a run is an edge from end to end.
func (o Origin) ends() bool {
	for i, of := range o.Of {
		if of != Absent && (min(o.From[i], o.To[i]) != 1 || max(o.From[i], o.To[i]) != of) {
			return false
		}
	}
	return len(o.Of) > 0
}

// Waited reports whether a part that is shown hangs on stitches that another, shown as well, had left waiting: the drawing marks
// where. What is worked along the ends of rows besides lies across pieces and is drawn by itself.
func (p *Pattern) Waited(part int) bool {
	if !p.Schematic.Shows(part) {
		return false
	}
	found := false
	for _, o := range p.Parts[part].From {
		switch o.Kind {
		case RefRowEnds, RefAround:
			return false
		case RefSkipped:
			found = found || p.Schematic.Shows(o.Part)
		}
	}
	return found
}
