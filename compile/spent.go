package compile

import (
	"slices"

	"ovillo/compile/plan"
)

// This file finds out when a marker has done its work. A marker that no later instruction looks for is taken out where it was
// looked for last, and is not carried on to the end of its part. The steps are read as they print, so that a marker that is met
// in the rows of a block goes out behind the last pass of the block.

// spentMarkers says of every part where its markers are taken out.
func (c *checker) spentMarkers() {
	for _, part := range c.pat.Parts {
		p := c.parts[part.Name]
		if p == nil || len(part.Markers) == 0 || c.sectionsOf(p) {
			continue
		}
		r := &removal{p: p, sections: sectionNames(part)}
		for i := range part.Markers {
			r.spend(i)
		}
		r.ride()
	}
}

// sectionsOf reports whether anything outside of a part goes to what lies between its markers: they then stay in place for it.
func (c *checker) sectionsOf(p *partState) bool {
	asks := func(r *plan.Ref) bool { return r != nil && r.Kind == plan.RefSection && r.Part == p.index }
	for _, q := range c.pat.Parts {
		if q == p.plan {
			continue
		}
		found := slices.ContainsFunc(q.Start.Runs, func(r plan.Ref) bool { return asks(&r) })
		eachRowOf(q.Steps, func(row *plan.Row) {
			eachInstrOf(row.Work, func(in *plan.Instr) { found = found || asks(in.Ref) })
		})
		if found {
			return true
		}
	}
	return false
}

// eachRowOf calls f with every row of some steps, those of blocks included.
func eachRowOf(steps []plan.Step, f func(*plan.Row)) {
	for _, s := range steps {
		switch s := s.(type) {
		case *plan.Row:
			f(s)
		case *plan.Block:
			for _, r := range s.Rows {
				f(r)
			}
		}
	}
}

// eachInstrOf calls f with every instruction, those in brackets included.
func eachInstrOf(work []plan.Instr, f func(*plan.Instr)) {
	for i := range work {
		f(&work[i])
		eachInstrOf(work[i].Body, f)
	}
}

// removal puts the taking out of the markers of a part where it belongs.
type removal struct {
	p        *partState
	sections map[string]bool // names of what lies between markers
	stays    [][]stay        // per marker
}

// stay is a marker that stands on the fabric of one size: from the step that places it (-1: the start of the part) to the one
// that looks for it last, in which the row itself may take it out.
type stay struct {
	size, from, to int
	out            bool
}

// sectionNames are the names of what was counted off in a part.
func sectionNames(part *plan.Part) map[string]bool {
	names := map[string]bool{}
	for _, s := range part.Steps {
		if o, ok := s.(*plan.CountOff); ok {
			for _, it := range o.Items {
				if it.Label != "" {
					names[it.Label] = true
				}
			}
		}
	}
	return names
}

// spend takes a marker out behind the last step that looks for it, each time that it was placed. A marker that nothing looks
// for is there for the maker's eye, and stays.
func (r *removal) spend(marker int) {
	steps := r.p.plan.Steps
	uses := make([]use, len(steps))
	placed := false
	for i, s := range steps {
		uses[i] = r.use(s, marker)
		placed = placed || uses[i].places
		undrop(s, marker)
	}
	var stays []stay
	for z := range r.p.fab {
		now := stay{size: z, from: -1, to: -1}
		stands := !placed
		end := func() {
			if stands && now.to >= 0 {
				stays = append(stays, now)
			}
		}
		for i, u := range uses {
			if !sizesOfStep(steps[i]).Has(z) {
				continue
			}
			if u.places && !(stands && u.asks) {
				end()
				now, stands = stay{size: z, from: i, to: -1}, true
			}
			if stands && (u.asks || u.meets) {
				now.to = i
			}
			now.out = now.out || u.removes
		}
		end()
	}
	r.stays = append(r.stays, stays)
	for _, t := range stays {
		if !t.out {
			r.drop(marker, t, stays)
		}
	}
}

// sizesOfStep are the sizes that a step is for; nil: all.
func sizesOfStep(s plan.Step) plan.Sizes {
	in := func(sizes plan.Sizes, first plan.Nums) plan.Sizes {
		out := make(plan.Sizes, len(first))
		for z, n := range first {
			out[z] = sizes.Has(z) && n != plan.Absent
		}
		return out
	}
	switch s := s.(type) {
	case *plan.Row:
		return in(s.For, s.First)
	case *plan.Block:
		return in(s.For, s.First)
	case *plan.CountOff:
		return s.For
	case *plan.MoveStart:
		return s.For
	case *plan.Counted:
		return s.For
	}
	return nil
}

// use is what a step does with a marker. A step that meets markers by no name meets those that stand.
type use struct{ places, asks, meets, removes bool }

func (r *removal) use(s plan.Step, marker int) use {
	var u use
	switch s := s.(type) {
	case *plan.CountOff:
		u.places = slices.ContainsFunc(s.Items, func(it plan.OffItem) bool { return it.N == nil && it.Marker == marker })
		return u
	case *plan.MoveStart:
		u.asks = s.Marker == marker
		return u
	case *plan.Counted:
		u.meets = slices.ContainsFunc(s.Counts, func(k plan.Count) bool { return k.Kind == plan.CountIn && r.sections[k.Label] })
		return u
	}
	eachRowOf([]plan.Step{s}, func(row *plan.Row) {
		if slices.Contains(r.p.removed[row], marker) {
			u.asks, u.removes = true, true
		}
		eachInstrOf(row.Work, func(in *plan.Instr) {
			goes := in.Reach == plan.ToMark || in.Reach == plan.InMarked
			switch {
			case in.Marker < 0 && goes, in.Ref != nil && in.Ref.Kind == plan.RefSection && in.Ref.Part == r.p.index:
				u.meets = true
			case in.Marker != marker:
			case in.Op == plan.PlaceMark:
				u.places = true
			case in.Op == plan.MoveMark, goes:
				u.asks = true
			}
		})
	})
	return u
}

// drop notes that a marker is taken out in the step that looks for it last, or in the next one of that size in which something
// is worked. A row that is for other sizes too waits until they need it no more.
func (r *removal) drop(marker int, t stay, stays []stay) {
	steps := r.p.plan.Steps
	for i := t.to; i < len(steps); i++ {
		sizes := sizesOfStep(steps[i])
		needed := slices.ContainsFunc(stays, func(o stay) bool { return sizes.Has(o.size) && o.from <= i && o.to > i })
		if !sizes.Has(t.size) || needed {
			continue
		}
		var drop *[]int
		switch s := steps[i].(type) {
		case *plan.Row:
			drop = &s.Drop
		case *plan.Block:
			drop = &s.Drop
		case *plan.MoveStart:
			s.Drop = s.Drop || s.Marker == marker
			return
		default:
			continue
		}
		if !slices.Contains(*drop, marker) {
			*drop = append(*drop, marker)
			slices.Sort(*drop)
		}
		return
	}
}

func undrop(s plan.Step, marker int) {
	eachRowOf([]plan.Step{s}, func(row *plan.Row) {
		row.Drop = slices.DeleteFunc(row.Drop, func(m int) bool { return m == marker })
	})
}

// ride says in which rows markers are still moved up: those that are not taken out yet.
func (r *removal) ride() {
	for i, s := range r.p.plan.Steps {
		eachRowOf([]plan.Step{s}, func(row *plan.Row) {
			_, block := s.(*plan.Block)
			times, same := row.Times.Same()
			several := block || !same || times > 1
			row.MarksUp = slices.ContainsFunc(r.p.riding[row], func(m int) bool { return r.rides(m, i, several) })
		})
	}
}

// rides reports whether a marker is still looked for behind a step, in a size of the step; several says that the step is worked
// more than once, so that a marker that is taken out behind it rides up in it. A marker that nothing looks for rides on.
func (r *removal) rides(marker, step int, several bool) bool {
	stays := r.stays[marker]
	sizes := sizesOfStep(r.p.plan.Steps[step])
	return len(stays) == 0 || slices.ContainsFunc(stays, func(t stay) bool {
		return sizes.Has(t.size) && t.from <= step && (t.to > step || t.to == step && several)
	})
}
