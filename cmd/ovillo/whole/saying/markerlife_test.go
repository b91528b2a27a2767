package saying

import (
	"fmt"
	"slices"
	"testing"

	"ovillo/compile/plan"
)

// A maker moves, meets and removes only markers that stand in the work, and at the end of a part none is left in it that nothing
// looks for any more. This file follows the markers of every printed part, size by size.

// markerFaults are the markers of a part that are used without standing in the work, or left in it. Between says that something
// outside of the part goes to what lies between its markers, which then stay.
func markerFaults(part *plan.Part, size int, between bool) []string {
	if len(part.Markers) == 0 {
		return nil
	}
	f := &follower{part: part, size: size, stands: map[int]bool{}, used: map[int]bool{}}
	for i := range part.Markers {
		f.stands[i] = !f.placed(i) // the start of the part placed it
	}
	for _, s := range part.Steps {
		f.step(s)
	}
	for m, stands := range f.stands {
		// A marker that no instruction asks for is there for the maker's eye.
		if stands && f.used[m] && !between {
			f.say("marker %d is left in the work", m)
		}
	}
	return f.faults
}

type follower struct {
	part         *plan.Part
	size         int
	stands, used map[int]bool
	faults       []string
}

func (f *follower) say(format string, marker int) {
	f.faults = append(f.faults, fmt.Sprintf(format, f.part.Markers[marker].Number))
}

func (f *follower) has(sizes plan.Sizes, first plan.Nums) bool {
	return sizes.Has(f.size) && (first == nil || first[f.size] != plan.Absent)
}

func (f *follower) placed(marker int) bool {
	found := false
	for _, s := range f.part.Steps {
		switch s := s.(type) {
		case *plan.CountOff:
			found = found || slices.ContainsFunc(s.Items, func(it plan.OffItem) bool { return it.N == nil && it.Marker == marker })
		default:
			walkRows(s, func(r *plan.Row) {
				walkInstr(r.Work, func(in plan.Instr) { found = found || in.Op == plan.PlaceMark && in.Marker == marker })
			})
		}
	}
	return found
}

func walkRows(s plan.Step, f func(*plan.Row)) {
	switch s := s.(type) {
	case *plan.Row:
		f(s)
	case *plan.Block:
		for _, r := range s.Rows {
			f(r)
		}
	}
}

func walkInstr(work []plan.Instr, f func(plan.Instr)) {
	for _, in := range work {
		f(in)
		walkInstr(in.Body, f)
	}
}

func (f *follower) step(s plan.Step) {
	switch s := s.(type) {
	case *plan.CountOff:
		for _, it := range s.Items {
			if it.N == nil && f.has(s.For, nil) {
				f.stands[it.Marker], f.used[it.Marker] = true, false
			}
		}
	case *plan.MoveStart:
		if f.has(s.For, nil) {
			f.meets(s.Marker)
			f.stands[s.Marker] = !s.Drop
		}
	case *plan.Row:
		if f.has(s.For, s.First) {
			f.row(s)
		}
	case *plan.Block:
		if f.has(s.For, s.First) {
			for range 2 { // the second pass meets what the first one leaves
				for _, r := range s.Rows {
					f.row(r)
				}
			}
			f.drop(s.Drop)
		}
	}
}

func (f *follower) row(r *plan.Row) {
	ups := 0
	for _, stands := range f.stands {
		if stands {
			ups++
		}
	}
	if r.MarksUp && ups == 0 {
		f.faults = append(f.faults, "markers are moved up where none stands")
	}
	met := 0
	walkInstr(r.Work, func(in plan.Instr) {
		if in.N != nil && in.N[f.size] == plan.Absent {
			return
		}
		goes := in.Reach == plan.ToMark || in.Reach == plan.InMarked
		switch {
		case in.Op == plan.PlaceMark && in.Marker >= 0:
			f.stands[in.Marker] = true
		case in.Op == plan.RemoveMark && in.Marker >= 0:
			f.meets(in.Marker)
			f.stands[in.Marker] = false
		case in.Op == plan.RemoveMark:
			f.oneOut(met)
		case in.Op == plan.MoveMark && in.Marker >= 0, goes && in.Marker >= 0:
			f.meets(in.Marker)
		case goes:
			met++
			f.any()
		}
	})
	f.drop(r.Drop)
}

func (f *follower) meets(marker int) {
	if f.used[marker] = true; !f.stands[marker] {
		f.say("marker %d is met and does not stand", marker)
	}
}

// any is a marker that is met by no name: one must stand, and any of those may be meant.
func (f *follower) any() {
	some := false
	for m, stands := range f.stands {
		some = some || stands
		if stands {
			f.used[m] = true
		}
	}
	if !some {
		f.faults = append(f.faults, "a marker is met and none stands")
	}
}

// oneOut takes out the marker that was met by no name: of those that stand, the one that was met last.
func (f *follower) oneOut(met int) {
	var stands []int
	for m := range f.part.Markers {
		if f.stands[m] {
			stands = append(stands, m)
		}
	}
	if len(stands) == 0 || met == 0 {
		f.faults = append(f.faults, "a marker is removed and none was met")
		return
	}
	f.stands[stands[min(met, len(stands))-1]] = false
}

func (f *follower) drop(markers []int) {
	for _, m := range markers {
		if !f.stands[m] {
			f.say("marker %d is removed and does not stand", m)
		}
		f.stands[m] = false
	}
}

// goneTo reports whether another part or the finishing goes to what lies between the markers of a part.
func goneTo(p *plan.Pattern, part int) bool {
	asks := func(r plan.Ref) bool { return r.Kind == plan.RefSection && r.Part == part }
	for i, q := range p.Parts {
		if i != part && slices.ContainsFunc(q.Start.Runs, asks) {
			return true
		}
	}
	return false
}

func TestMarkersArePlacedMovedAndRemoved(t *testing.T) {
	parts := 0
	look := func(name string, p *plan.Pattern) {
		for i, part := range p.Parts {
			for z := range p.Sizes {
				if len(part.Markers) > 0 {
					parts++
				}
				for _, f := range markerFaults(part, z, goneTo(p, i)) {
					t.Errorf("%s, %s, size %s: %s", name, part.Name, p.Sizes[z].Name, f)
				}
			}
		}
	}
	for name, p := range everySource(t) {
		look(name, p)
		look(name+", written out", p.Unrolled())
		for z := range p.Sizes {
			look(name+", one size", p.In(z))
			look(name+", one size, written out", p.In(z).Unrolled())
		}
	}
	if parts < 80 {
		t.Errorf("markers were followed through %d parts only", parts)
	}
}

// Every marker that is not removed, or that is met without standing, must be found.
func TestMarkersLeftOrMissingAreFound(t *testing.T) {
	found := map[string]int{}
	must := func(what, name string, part *plan.Part) {
		for z := range part.Worked {
			if len(markerFaults(part, z, false)) > 0 {
				found[what]++
				return
			}
		}
		t.Errorf("%s, %s: nothing is found when %s", name, part.Name, what)
	}
	for name, p := range everySource(t) {
		for i, part := range p.Parts {
			if goneTo(p, i) {
				continue
			}
			for k, s := range part.Steps {
				switch s := s.(type) {
				case *plan.Row:
					if was := s.Drop; len(was) > 0 {
						s.Drop = nil
						must("a marker is not removed behind a row", name, part)
						s.Drop = was
					}
				case *plan.Block:
					if was := s.Drop; len(was) > 0 {
						s.Drop = nil
						must("a marker is not removed behind a block", name, part)
						s.Drop = was
					}
				case *plan.MoveStart:
					if s.Drop {
						s.Drop = false
						must("the marker of a new start is not removed", name, part)
						s.Drop = true
					}
				case *plan.CountOff:
					if !slices.ContainsFunc(s.Items, func(it plan.OffItem) bool { return it.N == nil }) {
						continue
					}
					// It is counted off behind its rows, so that these meet markers that do not stand yet.
					was := part.Steps
					part.Steps = append(append(slices.Clone(was[:k]), was[k+1:]...), s)
					must("markers are placed too late", name, part)
					part.Steps = was
				}
			}
		}
	}
	if len(found) < 4 {
		t.Errorf("only these were tried: %v", found)
	}
}
