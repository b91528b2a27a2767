package words

import (
	"slices"

	"ovillo/compile/plan"
)

// This file says once that markers are moved up: in the first row in which they ride, for all rows until they are taken out.
// Said in every row, it would be read over, and with it the row that is different.

// ridesUp says of a row in which markers ride up: how many there are, whether they do so in later rows too (on), and whether it
// is to be said at all, for the sizes of the row.
func (c *context) ridesUp(at *plan.Row) (n int, on, say bool) {
	told := make([]bool, len(c.p.Sizes)) // per size: it was said of the markers that stand now
	live := setAtStart(c.part)
	here := false
	for _, s := range c.part.Steps {
		now := &context{l: c.l, p: c.p, part: c.part, sizes: sizesOf(s)}
		eachRow(&plan.Pattern{Parts: []*plan.Part{{Steps: []plan.Step{s}}}}, func(r *plan.Row) {
			if here && r.MarksUp && len(live) > 0 {
				on = true
			}
			if r == at {
				n, here = len(live), true
			}
			if here || !r.MarksUp {
				return
			}
			for i := range told {
				told[i] = told[i] || now.sizes.Has(i)
			}
		})
		live = standing(live, s)
		if len(live) > 0 {
			continue
		}
		if here {
			break
		}
		told = make([]bool, len(c.p.Sizes))
	}
	for i := range told {
		say = say || c.sizes.Has(i) && !told[i]
	}
	return n, on, say
}

// setAtStart are the markers that no step of a part places: its start does.
func setAtStart(part *plan.Part) []int {
	var placed []int
	for _, s := range part.Steps {
		placed = append(placed, placedIn(s)...)
	}
	var out []int
	for i := range part.Markers {
		if !slices.Contains(placed, i) {
			out = append(out, i)
		}
	}
	return out
}

// placedIn are the markers that a step places.
func placedIn(s plan.Step) []int {
	var out []int
	eachRow(&plan.Pattern{Parts: []*plan.Part{{Steps: []plan.Step{s}}}}, func(r *plan.Row) {
		walk(r.Work, func(in *plan.Instr) {
			if in.Op == plan.PlaceMark {
				out = append(out, in.Marker)
			}
		})
	})
	if o, ok := s.(*plan.CountOff); ok {
		for _, it := range o.Items {
			if it.N == nil {
				out = append(out, it.Marker)
			}
		}
	}
	return out
}

// sizesOf are the sizes that a step is for.
func sizesOf(s plan.Step) plan.Sizes {
	switch s := s.(type) {
	case *plan.Row:
		return present(s.For, s.First)
	case *plan.Block:
		return present(s.For, s.First)
	}
	return nil
}

// standing is which markers stand after a step, given those that stood before it.
func standing(live []int, s plan.Step) []int {
	live = slices.Clone(live)
	for _, m := range placedIn(s) {
		if !slices.Contains(live, m) {
			live = append(live, m)
		}
	}
	take := func(m int) { live = slices.DeleteFunc(live, func(o int) bool { return o == m }) }
	eachRow(&plan.Pattern{Parts: []*plan.Part{{Steps: []plan.Step{s}}}}, func(r *plan.Row) {
		walk(r.Work, func(in *plan.Instr) {
			if in.Op == plan.RemoveMark {
				take(in.Marker)
			}
		})
		for _, m := range r.Drop {
			take(m)
		}
	})
	switch s := s.(type) {
	case *plan.Block:
		for _, m := range s.Drop {
			take(m)
		}
	case *plan.MoveStart:
		if s.Drop {
			take(s.Marker)
		}
	}
	return live
}
