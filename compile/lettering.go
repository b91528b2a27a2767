package compile

import (
	"slices"

	"ovillo/compile/figure"
	"ovillo/compile/plan"
)

// lettering gives the measures that are drawn their letters: those a line of the drawing is as long as, or half as long.
func (c *checker) lettering() {
	k := 0
	for i := range c.pat.Measures {
		m := &c.pat.Measures[i]
		drawn := false
		if drawn, m.Half = c.drawnAs(m); drawn {
			m.Letter = figure.Letter(k)
			k++
		}
	}
}

// drawnAs says whether the drawing has a line for a measure, and whether that shows half of it: what goes around is laid flat,
// so does what is folded round the wearer, and of two pieces of one width, such as a front and a back, one is measured. A sum of heights is a line where its parts
// hang together, and any sum is where motifs are drawn with their border.
func (c *checker) drawnAs(m *plan.Measure) (drawn, half bool) {
	of := m.Of
	is := func(kind plan.MeasureKind) bool {
		return !slices.ContainsFunc(of, func(t plan.MeasuredOn) bool { return t.Kind != kind })
	}
	switch {
	case len(of) == 0:
		return false, false
	case slices.ContainsFunc(of, func(t plan.MeasuredOn) bool { return !c.pat.Schematic.Shows(t.Part) }):
		return false, false // the source leaves the part out of the drawing
	case slices.ContainsFunc(of, func(t plan.MeasuredOn) bool { return c.pat.Parts[t.Part].Grid != nil }):
		return true, false
	case len(of) == 1 && of[0].Kind == plan.Across:
		return c.seenFromAbove(of[0].Part), false
	case len(of) == 1 && of[0].Kind == plan.Long:
		return c.upright(of[0].Part), false
	case len(of) == 1:
		return true, of[0].Kind == plan.Around || of[0].Kind == plan.Width && c.pat.Folded(of[0].Part) ||
			of[0].Kind == plan.Height && c.pat.Turned(of[0].Part) >= 0
	case is(plan.Height):
		return c.hangTogether(of), false
	case is(plan.Width) && len(of) == 2:
		alike := !of[0].Minus && !of[1].Minus && slices.Equal(of[0].Values, of[1].Values)
		return alike, alike
	}
	return false, false
}

// upright reports whether the drawing shows the side edges of a flat part upright: neither a band along the side of another part nor
// one that was joined to a ring lies so.
func (c *checker) upright(part int) bool {
	along := func(o plan.Origin) bool { return o.Kind == plan.RefRowEnds }
	return c.pat.Turned(part) < 0 && !slices.ContainsFunc(c.pat.Parts[part].From, along)
}

// hangTogether reports whether the parts of a sum grow on each other, one from the next in any order.
func (c *checker) hangTogether(of []plan.MeasuredOn) bool {
	grows := func(a, b int) bool {
		return slices.ContainsFunc(c.pat.Parts[a].From, func(o plan.Origin) bool { return o.Part == b })
	}
	reached, more := map[int]bool{of[0].Part: true}, true
	for more {
		more = false
		for _, t := range of {
			for r := range reached {
				if !reached[t.Part] && (grows(t.Part, r) || grows(r, t.Part)) {
					reached[t.Part], more = true, true
				}
			}
		}
	}
	return !slices.ContainsFunc(of, func(t plan.MeasuredOn) bool { return !reached[t.Part] })
}
