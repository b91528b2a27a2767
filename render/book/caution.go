package book

import (
	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/page"
)

// Measures of a caution: a bar at its left, never smaller than the instructions.
const (
	barW       = 0.9
	barGap     = 3.0
	cautionGap = 5.0
)

// frontCautions sets all cautions on the title page.
func (s *setter) frontCautions() []layout.Strip {
	var strips []layout.Strip
	for i, c := range s.p.Cautions {
		strip := layout.Strip{Box: s.caution(c, s.sect, side.margin), Space: 2 * layout.Module}
		if i == 0 {
			strip.Space = cautionGap
		}
		strips = append(strips, strip)
	}
	return strips
}

// caution sets one caution in each language, the bar where at says. It is never split.
func (s *setter) caution(c plan.Caution, parent *page.Elem, at func(sd side) float64) layout.Box {
	return s.each(func(sd side) layout.Box {
		x := at(sd)
		left := x + barW + barGap
		note := sd.elem(parent, "Note")
		head, body := sd.l.Caution(c)
		b := layout.Text(head, innerType, false, left, note.New("P"))
		if only := sd.l.OnlyFor(s.p, c.For); len(only) > 0 {
			b.Below(0, layout.Set(layout.Break(only, onlyType, sd.right-left, 0), onlyType, left, note.New("P")))
		}
		b.Below(0, layout.Set(layout.Break(body, textType, sd.right-left, 0), textType, left, note.New("P")))
		// Each bar is as long as its own text: the white below it belongs to nobody.
		b.Add(layout.Bar(x, 0.5, barW, b.H-0.75))
		return b
	})
}
