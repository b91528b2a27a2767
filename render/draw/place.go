package draw

import (
	"math"
	"sort"

	"ovillo/compile/plan"
)

// task is a measure to be drawn on a group.
type task struct {
	letter string
	order  int
	long   float64 // of its shortest way
	inside bool
	ways   []dimension
}

// place finds room for every measure of the group and for the arrow.
func (s *sheet) place(l *layout) {
	tasks := s.tasks(l)
	// What has the fewest places to go comes first: widths, then lengths from short to long, which so lie further and
	// further out.
	sort.SliceStable(tasks, func(a, b int) bool {
		if tasks[a].inside != tasks[b].inside {
			return tasks[a].inside
		}
		return tasks[a].long < tasks[b].long
	})
	arrowed := false
	for _, t := range tasks {
		if !t.inside && !arrowed {
			s.arrow()
			arrowed = true
		}
		s.best(t)
	}
	if !arrowed {
		s.arrow()
	}
	sort.SliceStable(s.dims, func(a, b int) bool { return s.dims[a].letter < s.dims[b].letter })
}

// best draws a measure in the way that costs least.
func (s *sheet) best(t task) {
	least, at := math.Inf(1), -1
	for i := range t.ways {
		t.ways[i].letter = t.letter
		if t.ways[i].cost >= least {
			continue
		}
		if c := s.board.cost(&t.ways[i], least); c < least {
			least, at = c, i
		}
	}
	if at >= 0 {
		s.dims = append(s.dims, t.ways[at])
		s.board.put(t.ways[at])
	}
}

// tasks are the measures that are drawn on this group: each on the group of the first part it is taken from.
func (s *sheet) tasks(l *layout) []task {
	var tasks []task
	for i, m := range l.g.p.Measures {
		if m.Letter == "" || l.home(m) != s.gr {
			continue
		}
		t := task{letter: m.Letter, order: i, inside: m.Of[0].Kind != plan.Height && m.Of[0].Kind != plan.Long}
		if m.Of[0].Kind == plan.Long {
			t.ways = s.sideways(m.Of[0])
		} else if t.inside {
			t.ways = s.widths(m.Of[first(m)])
		} else {
			t.ways = s.heights(m.Of)
		}
		t.long = math.Inf(1)
		for _, w := range t.ways {
			t.long = min(t.long, w.to.sub(w.from).length())
		}
		tasks = append(tasks, t)
	}
	return tasks
}

// first is the term of a measure that is added first.
func first(m plan.Measure) int {
	for i, t := range m.Of {
		if !t.Minus {
			return i
		}
	}
	return 0
}

// home is the group that shows a measure, nil if none can.
func (l *layout) home(m plan.Measure) *group {
	if len(m.Of) == 0 {
		return nil
	}
	for _, t := range m.Of {
		if t.Part < 0 || t.Part >= len(l.g.rows) {
			return nil
		}
	}
	for _, gr := range l.groups {
		for _, pt := range gr.patches {
			if pt.pc.part == m.Of[first(m)].Part {
				return gr
			}
		}
	}
	return nil
}

// widths are the ways to draw a width or a length once around.
func (s *sheet) widths(on plan.MeasuredOn) []dimension {
	var ways []dimension
	twins := map[int]bool{on.Part: true}
	for _, side := range [2]int{-1, 1} {
		if t := s.g.twin(on.Part, s.gr, side); t >= 0 && s.limb(on.Part) {
			twins[t] = true
		}
	}
	for _, pt := range s.gr.patches {
		if !twins[pt.pc.part] {
			continue
		}
		k, ok := pt.line(on, s.g.size)
		if !ok {
			continue
		}
		some := s.acrossAny(pt, k, on.Kind)
		for i := range some {
			// Of two limbs that are alike the named one shows its lengths; a width inside goes to the other.
			inside := len(some[i].ext) == 0 && len(twins) > 1
			if inside == (pt.pc.part == on.Part) {
				some[i].cost += 2
			}
		}
		ways = append(ways, some...)
	}
	if len(ways) == 0 && on.Row != nil {
		// The row was not worked in this size: the part is measured where it is widest.
		on.Row = nil
		return s.widths(on)
	}
	return ways
}

// limb reports whether a part hangs at a side, where another like it shows the same.
func (s *sheet) limb(part int) bool {
	for _, pt := range s.gr.patches {
		if pt.pc.part == part && pt.side != 0 {
			return true
		}
	}
	return false
}

// line is the line of a patch where a measure is taken: after its row, or where it is widest if it has none.
func (pt *patch) line(on plan.MeasuredOn, size int) (int, bool) {
	if row := inSize(on.Row, size); row > 0 {
		return pt.pc.boundary(row)
	}
	best := 0
	w := pt.pc.widths()
	for k := range w {
		if w[k] > w[best] {
			best = k
		}
	}
	return best, true
}

func (s *sheet) acrossAny(pt *patch, k int, kind plan.MeasureKind) []dimension {
	if kind == plan.Across {
		return s.through(pt, k)
	}
	if !pt.rings {
		return s.across(pt, k)
	}
	if kind == plan.Around && !pt.pc.oval && pt.pc.point {
		return s.circle(pt, k)
	}
	return s.diameter(pt, k)
}

// circle is the way to draw a length once around a disc.
func (s *sheet) circle(pt *patch, k int) []dimension {
	reach := 0.0
	for _, p := range pt.lines[k].pts {
		reach = max(reach, p.sub(pt.f.o).length())
	}
	d := dimension{middle: s.on(pt.f.o), ring: reach*s.scale + dimOff}
	if k < len(pt.lines)-1 {
		d.ring = reach * s.scale
	}
	d.from, d.to = d.onRing(0), d.onRing(math.Pi)
	d.label = d.onRing(roundAt)
	return []dimension{d}
}

// through are the ways to draw how wide rounds are that are seen from above, through their middle. A figure with corners lies on
// one of its sides: what is measured is the way from there up.
func (s *sheet) through(pt *patch, k int) []dimension {
	if !pt.rings {
		return nil
	}
	if pt.pc.corner <= 2 || pt.pc.corner == 4 {
		return s.diameter(pt, k)
	}
	deep := pt.pc.height(0, k)
	var ways []dimension
	for i, x := range []float64{0, 0.15, -0.15, 0.3, -0.3} {
		at := pt.f.o.add(vec{x * deep, 0})
		d := dimension{from: s.on(at.sub(vec{0, deep})), to: s.on(at.add(vec{0, deep}))}
		for _, t := range letters {
			w := d.inLine(t)
			w.cost = 4*float64(i) + 10*math.Abs(t-0.5)
			ways = append(ways, w)
		}
	}
	return ways
}

// diameter are the ways to draw the width of rings, through them or below or above.
func (s *sheet) diameter(pt *patch, k int) []dimension {
	var b box
	for _, p := range pt.lines[k].pts {
		b.add(s.on(p))
	}
	a, c := vec{b.min.x, b.middle().y}, vec{b.max.x, b.middle().y}
	var ways []dimension
	for i, off := range []float64{0, b.height()/2 + dimOff, b.height()/2 + dimOff + dimPitch} {
		for _, out := range [2]vec{{0, 1}, {0, -1}} {
			d := dimension{from: a.add(out.times(off)), to: c.add(out.times(off))}
			if off > 0 {
				for _, p := range [2]vec{a, c} {
					d.ext = append(d.ext, [2]vec{p.add(out.times(extGap)), p.add(out.times(off + extPast))})
				}
			}
			for _, t := range letters[:5] {
				w := d.inLine(t)
				w.cost = 6*float64(i) + 10*math.Abs(t-0.5)
				ways = append(ways, w)
			}
		}
	}
	return ways
}
