package draw

import "ovillo/compile/plan"

// origins are the runs that a part grows on. A run that is named but not numbered is a section that the other part was
// counted off into: where it lies follows from the counting off.
func origins(p *plan.Pattern, part int) []plan.Origin {
	if p.Shown < 0 || !grows(p.Parts[part].Start.Kind) {
		return nil
	}
	var found []plan.Origin
	for _, o := range p.Parts[part].From {
		if o.Kind == plan.RefRowEnds || o.Kind == plan.RefAround {
			return nil // what goes along a side lies across the piece: it is drawn by itself
		}
		if !(run{o, p.Shown}).known() && o.Part >= 0 && o.Part < len(p.Parts) {
			if s, ok := section(p.Parts[o.Part], o, p.Shown); ok {
				o = s
			}
		}
		found = append(found, o)
	}
	return found
}

// section finds a section by its name in the last counting off that has it.
func section(part *plan.Part, o plan.Origin, size int) (plan.Origin, bool) {
	found, row := false, 0
	for _, step := range part.Steps {
		switch s := step.(type) {
		case *plan.Row:
			row = max(row, inSize(s.Last, size))
		case *plan.Block:
			row = max(row, inSize(s.Last, size))
		case *plan.CountOff:
			at := 0
			from, to := 0, 0
			for _, it := range s.Items {
				n := places(it, size)
				if it.Label == o.Label && it.Label != "" {
					from, to, found = at, at+n, true
				}
				at += n
			}
			if to > from {
				o.Kind = plan.RefSection
				o.Row, o.From, o.To, o.Of = inOne(size, row), inOne(size, from), inOne(size, to), inOne(size, at)
			}
		}
	}
	return o, found
}

// places is how many places an item of a counting off walks over.
func places(it plan.OffItem, size int) int {
	if it.N == nil && it.InNext {
		return 1
	}
	return max(inSize(it.N, size), 0)
}

// inOne is a number for one size alone.
func inOne(size, n int) plan.Nums {
	nums := make(plan.Nums, size+1)
	for i := range nums {
		nums[i] = plan.Absent
	}
	nums[size] = n
	return nums
}
