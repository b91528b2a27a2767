package caution

import (
	"ovillo/compile/plan"
	"ovillo/lang/source"
)

// FactsOf gathers the facts from a pattern whose parts and finishing are done. kindAt is where the kind stands, or where
// to ask for it; sizesAt the same for the sizes.
func FactsOf(p *plan.Pattern, kindAt, sizesAt source.Span) Facts {
	f := Facts{Kind: p.Kind, KindAt: kindAt, SizesAt: sizesAt, GapAt: kindAt}
	for _, s := range p.Sizes {
		f.SizeNames = append(f.SizeNames, s.Name)
		f.AgeMonths = append(f.AgeMonths, s.Age)
	}
	for i := range p.Finish {
		s := &p.Finish[i]
		switch s.Kind {
		case plan.MakeCord:
			f.Cords = append(f.Cords, cordOf(p, s, i))
		case plan.MakePompom:
			f.Pompoms = append(f.Pompoms, Piece{Step: i, At: s.Span})
		case plan.SewButtons:
			if in := sizesWith(s.Buttons.N); in != nil {
				f.Buttons = append(f.Buttons, Piece{For: in, Step: i, At: s.Span})
			}
		}
	}
	f.Gap, f.GapAt = gaps(p, kindAt)
	return f
}

// cordOf takes the opening from the free ends that were worked out: length minus both ends.
func cordOf(p *plan.Pattern, s *plan.Finishing, step int) Cord {
	c := Cord{Step: step, At: s.Span, Length: s.Length}
	part := ""
	if s.Through != nil {
		c.Drawstring = True
		if t := s.Through.Part; t >= 0 && t < len(p.Parts) {
			part = p.Parts[t].Name
		}
	}
	c.Zone = ZoneOf(p.Kind, part)
	for i, free := range s.Free {
		l := at(s.Length, i)
		if l != plan.NoLength && free != plan.NoLength {
			l -= 2 * free
		} else {
			l = plan.NoLength
		}
		c.Opening = append(c.Opening, l)
	}
	return c
}

// sizesWith tells in which sizes there is at least one; nil if in none.
func sizesWith(n plan.Nums) plan.Sizes {
	out := make(plan.Sizes, len(n))
	some := false
	for i, x := range n {
		out[i] = x != plan.Absent && x > 0
		some = some || out[i]
	}
	if !some {
		return nil
	}
	return out
}

// gaps estimates the largest chain space of each size by the gauge: as wide as its chains, each of which is taken to be as
// wide as a stitch of its row. A size without chain spaces has no known gap: the fabric between stitches is not measured.
// The place is that of the part with the largest.
func gaps(p *plan.Pattern, kindAt source.Span) (plan.Lengths, source.Span) {
	out := make(plan.Lengths, len(p.Sizes))
	where, largest := kindAt, plan.Length(0)
	for i := range out {
		out[i] = plan.NoLength
		for _, part := range p.Parts {
			if i >= len(part.Worked) {
				continue
			}
			for _, r := range part.Worked[i] {
				g := gap(r)
				if g == plan.NoLength {
					continue
				}
				out[i] = max(out[i], g)
				if g > largest {
					largest, where = g, part.Span
				}
			}
		}
	}
	return out, where
}

func gap(r plan.RowFact) plan.Length {
	if r.Spaces <= 0 || r.Width == plan.NoLength || r.Stitches+r.Chains <= 0 {
		return plan.NoLength
	}
	return r.Width / plan.Length(r.Stitches+r.Chains) * plan.Length(r.Chains) / plan.Length(r.Spaces)
}
