package draw

import "ovillo/compile/plan"

// bodyShare is the share of the edge where a yoke begins that belongs to the body, between the lines of increases. The
// sections a part was counted off into tell it; where there are none, each wedge of the yoke is taken to grow alike.
func (g *graph) bodyShare(pt *patch, middle limb, sides []limb) float64 {
	arms := 0.0
	for _, m := range sides {
		arms += m.share
	}
	if share, ok := g.counted(pt.pc.part); ok {
		return share
	}
	if arms <= 0 || arms >= 1 {
		return clamp(middle.share, 0.3, 0.9)
	}
	return 1 - arms
}

// counted reads the sections of the first counting off of a part as back, sleeve, front and sleeve, and gives the share
// of back and front. Single stitches between the sections, the corners, are nobody's.
func (g *graph) counted(part int) (float64, bool) {
	for _, step := range g.p.Parts[part].Steps {
		off, ok := step.(*plan.CountOff)
		if !ok || !off.For.Has(g.size) {
			continue
		}
		var sections []int
		for _, it := range off.Items {
			if n := inSize(it.N, g.size); it.N != nil && n > 1 {
				sections = append(sections, n)
			}
		}
		body, arms := 0, 0
		switch len(sections) {
		case 4: // from one end of the back
			body, arms = sections[0]+sections[2], sections[1]+sections[3]
		case 5: // from the middle of the back
			body, arms = sections[0]+sections[2]+sections[4], sections[1]+sections[3]
		default:
			return 0, false
		}
		if body < arms {
			body, arms = arms, body // from one end of a sleeve
		}
		return float64(body) / float64(body+arms), true
	}
	return 0, false
}

// isRaglan reports whether the increases of a yoke run along lines.
func (g *graph) isRaglan(part int) bool {
	_, ok := g.counted(part)
	return ok
}
