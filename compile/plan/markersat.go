package plan

// MarkerAt is where a stitch marker is counted off to: behind a row of a part, before place At of the Of that its edge has. Row 0 is the
// edge that the part begins with.
type MarkerAt struct{ Row, At, Of int }

// MarkersAt are the places to which markers are counted off along the edges of a part, in the size that is shown; none if the
// schematic does not show the part.
func (p *Pattern) MarkersAt(part int) []MarkerAt {
	if !p.Schematic.Shows(part) || p.Shown < 0 {
		return nil
	}
	in := func(n Nums) int {
		if p.Shown < len(n) && n[p.Shown] != Absent {
			return n[p.Shown]
		}
		return 0
	}
	var out []MarkerAt
	row := 0
	for _, step := range p.Parts[part].Steps {
		switch s := step.(type) {
		case *Row:
			row = max(row, in(s.Last))
		case *Block:
			row = max(row, in(s.Last))
		case *CountOff:
			if !s.For.Has(p.Shown) {
				continue
			}
			first, at := len(out), 0
			for _, it := range s.Items {
				if it.Marker >= 0 {
					out = append(out, MarkerAt{Row: row, At: at})
				}
				if it.Marker >= 0 && it.InNext {
					at++
				}
				at += max(in(it.N), 0)
			}
			for i := first; i < len(out); i++ {
				out[i].Of = at
			}
		}
	}
	return out
}
