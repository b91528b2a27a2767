package draw

import (
	"slices"

	"ovillo/compile/plan"
)

// chosen lays out the parts that the schematic is to show. A part that is left out is not drawn, but the others lie as they
// would beside it: a yoke bends over the shoulders whether sleeves are shown or not. Only a part that others grow on is left
// out altogether, so that what grows on it is drawn by itself.
func chosen(p *plan.Pattern, read rowsOf) (*layout, error) {
	show := p.Schematic
	if show == nil {
		return lie(p, read)
	}
	g, err := connect(p, func(p *plan.Pattern, part, size int) ([]course, error) {
		if !show.Shows(part) && carries(p, part) {
			return nil, nil
		}
		return read(p, part, size)
	})
	if err != nil {
		return nil, err
	}
	g.show = show
	l := g.lie()
	l.keep(show)
	return l, nil
}

// carries reports whether another part that is shown grows on a part.
func carries(p *plan.Pattern, part int) bool {
	for i, other := range p.Parts {
		if i == part || !p.Schematic.Shows(i) {
			continue
		}
		for _, o := range other.From {
			if o.Part == part {
				return true
			}
		}
	}
	return false
}

// keep leaves out what is not shown and sets what is in the order asked for.
func (l *layout) keep(show *plan.Schematic) {
	kept := l.groups[:0]
	for _, gr := range l.groups {
		gr.patches = slices.DeleteFunc(gr.patches, func(pt *patch) bool { return !show.Shows(pt.pc.part) })
		if len(gr.patches) > 0 {
			kept = append(kept, gr)
		}
	}
	l.groups = kept
	place := func(gr *group) int {
		least := show.Place(gr.patches[0].pc.part)
		for _, pt := range gr.patches {
			least = min(least, show.Place(pt.pc.part))
		}
		return least
	}
	slices.SortStableFunc(l.groups, func(a, b *group) int { return place(a) - place(b) })
}
