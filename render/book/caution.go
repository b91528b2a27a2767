package book

import (
	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/words"
)

// Measures of a caution: a bar at its left, never smaller than the instructions.
const (
	barW       = 0.9
	barGap     = 3.0
	cautionGap = 5.0
)

// frontCautions sets all cautions on the title page.
func (s *setter) frontCautions() []layout.Strip {
	if len(s.p.Cautions) == 0 {
		return nil
	}
	strips := s.cautions(s.p.Cautions, s.sect, side.margin)
	strips[0].Space = cautionGap
	return strips
}

// cautions sets cautions under one head in each language, a bar at their left where at says. None of them is split; they
// may part company between two.
func (s *setter) cautions(list []plan.Caution, parent *page.Elem, at func(sd side) float64) []layout.Strip {
	notes := make([]*page.Elem, len(s.sides))
	for i, sd := range s.sides {
		notes[i] = sd.elem(parent, "Div")
	}
	var strips []layout.Strip
	for k, c := range list {
		heads := make([]layout.Box, len(s.sides))
		high := 0.0
		for i, sd := range s.sides {
			heads[i] = s.caution(sd, c, k == 0, notes[i], at(sd)+barW+barGap)
			high = max(high, heads[i].H)
		}
		if k < len(list)-1 {
			high += layout.Module
		}
		var b layout.Box
		for i, sd := range s.sides {
			b.Put(0, 0, heads[i])
			// The bar goes through to the next caution; the last one's is as long as its own text, for the white
			// below belongs to nobody.
			top, foot := 0.0, high
			if k == 0 {
				top = 0.5
			}
			if k == len(list)-1 {
				foot = heads[i].H - 0.25
			}
			b.Add(layout.Bar(at(sd), top, barW, foot-top))
		}
		b.H = high
		strips = append(strips, layout.Strip{Box: b})
		if k > 0 {
			strips[k].Resume = []layout.Strip{{Box: s.cautionAgain(at), Heading: true}}
		}
	}
	return strips
}

// cautionAgain is the head of cautions that go on on another sheet.
func (s *setter) cautionAgain(at func(sd side) float64) layout.Box {
	return s.each(func(sd side) layout.Box {
		b := layout.Text(sd.l.Say(words.CautionHead), s.innerType, false, at(sd)+barW+barGap, nil)
		b.Add(layout.Bar(at(sd), 0.5, barW, b.H-0.5))
		return b
	})
}

// caution sets the text of a caution, the first of several with the head.
func (s *setter) caution(sd side, c plan.Caution, first bool, note *page.Elem, x float64) layout.Box {
	var b layout.Box
	head, body := sd.l.Caution(c)
	if first {
		b = layout.Text(head, s.innerType, false, x, note.New("P"))
	}
	if only := sd.l.OnlyFor(s.p, c.For); len(only) > 0 {
		b.Below(0, layout.Set(layout.Break(only, s.onlyType, sd.right-x, 0), s.onlyType, x, note.New("P")))
	}
	b.Below(0, layout.Set(sd.broken(body, s.textType, sd.right-x, 0), s.textType, x, note.New("P")))
	return b
}
