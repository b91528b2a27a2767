package plan

import "slices"

func (s *sized) part(was *Part) *Part {
	out := *was
	s.markers = nil
	s.markers = s.markersOf(was)
	out.Markers = nil
	for i, m := range was.Markers {
		if s.markers[i] >= 0 {
			out.Markers = append(out.Markers, m)
		}
	}
	out.Yarn = s.yarn(was.Yarn)
	out.Start = s.start(was.Start)
	out.Steps = nil
	for _, step := range was.Steps {
		if one := s.step(step); one != nil {
			out.Steps = append(out.Steps, one)
		}
	}
	out.Worked = nil
	if len(was.Worked) > 0 {
		out.Worked = [][]RowFact{each(was.Worked[s.z], s.fact)}
	}
	if out.Silent = nil; was.Silent != nil && was.Silent[s.z] {
		out.Silent = Sizes{true}
	}
	out.From = some(was.From, s.origin)
	out.Motifs = s.nums(was.Motifs)
	if was.Grid != nil {
		out.Grid = s.grid(was.Grid)
	}
	return &out
}

// markersOf leaves out the markers that only steps of other sizes place.
func (s *sized) markersOf(part *Part) []int {
	other, here := map[int]bool{}, map[int]bool{}
	for _, step := range part.Steps {
		found := map[int]bool{}
		markersIn(step, found)
		now := map[int]bool{}
		if one := s.step(step); one != nil { // s.markers is still that of no part: indices stay
			markersIn(one, now)
		}
		for m := range found {
			other[m] = true
			here[m] = here[m] || now[m]
		}
	}
	return renumbered(len(part.Markers), func(i int) bool { return here[i] || !other[i] })
}

// markersIn notes the markers that a step places, moves or starts its round at.
func markersIn(step Step, in map[int]bool) {
	switch t := step.(type) {
	case *Row:
		placed(t.Work, in)
	case *Block:
		for _, r := range t.Rows {
			placed(r.Work, in)
		}
	case *JoinRound:
		if t.Row != nil {
			placed(t.Row.Work, in)
		}
	case *CountOff:
		for _, it := range t.Items {
			if it.N == nil {
				in[it.Marker] = true
			}
		}
	case *MoveStart:
		in[t.Marker] = true
	}
}

func placed(work []Instr, in map[int]bool) {
	for i := range work {
		if work[i].Op == PlaceMark || work[i].Op == MoveMark {
			in[work[i].Marker] = true
		}
		placed(work[i].Body, in)
	}
}

func (s *sized) fact(f RowFact) RowFact {
	f.Yarn = s.yarn(f.Yarn)
	if f.ByYarn != nil {
		var by Tally[int]
		for y, n := range f.ByYarn.All() {
			by.Add(s.yarn(y), n)
		}
		f.ByYarn = by
	}
	return f
}

func (s *sized) origin(o Origin) (Origin, bool) {
	ok := s.has(o.Of)
	o.Row, o.From, o.To, o.Of = s.nums(o.Row), s.nums(o.From), s.nums(o.To), s.nums(o.Of)
	return o, ok
}

func (s *sized) start(st Start) Start {
	st.N, st.Extra, st.Skip = s.nums(st.N), s.nums(st.Extra), s.nums(st.Skip)
	st.Runs = some(st.Runs, s.run)
	st.Yarn = s.yarn(st.Yarn)
	return st
}

// run is a run that a start or a seam goes along; a size that has no place of it does not.
func (s *sized) run(r Ref) (Ref, bool) {
	return *s.ref(&r), s.has(r.Count)
}

func (s *sized) ref(r *Ref) *Ref {
	if r == nil {
		return nil
	}
	out := *r
	out.Row, out.Count, out.Chains = s.nums(r.Row), s.nums(r.Count), s.nums(r.Chains)
	out.Ends, out.ToRow = s.nums(r.Ends), s.nums(r.ToRow)
	return &out
}

func (s *sized) grid(g *Grid) *Grid {
	out := *g
	out.Across, out.Down, out.Each, out.Round = s.nums(g.Across), s.nums(g.Down), s.lengths(g.Each), s.nums(g.Round)
	for i, k := range g.Kinds {
		out.Kinds[i] = s.nums(k)
	}
	out.Shared, out.AtSides, out.AtCorners = s.nums(g.Shared), s.nums(g.AtSides), s.nums(g.AtCorners)
	return &out
}

// step is a step in the size; nil if it is not worked there.
func (s *sized) step(step Step) Step {
	if !doneIn(step, s.z) {
		return nil
	}
	switch t := step.(type) {
	case *Row:
		return s.row(t)
	case *Block:
		return s.block(t)
	case *CountOff:
		out := *t
		out.For = nil
		out.Items = some(t.Items, func(it OffItem) (OffItem, bool) {
			ok := s.has(it.N)
			if it.N, it.Marker = s.nums(it.N), s.marker(it.Marker); it.N == nil && it.Marker < 0 {
				return it, false
			}
			return it, ok
		})
		return &out
	case *Fasten:
		out := *t
		out.For = nil
		return &out
	case *MoveStart:
		out := *t
		out.For, out.Marker, out.Moved = nil, s.marker(t.Marker), s.nums(t.Moved)
		return &out
	case *NoteStep:
		return &NoteStep{Prose: s.prose(t.Prose)}
	case *Counted:
		return &Counted{Counts: some(t.Counts, s.count)}
	case *Grid:
		return s.grid(t)
	case *JoinRound:
		out := *t
		out.For, out.Motifs = nil, s.nums(t.Motifs)
		if t.Row != nil {
			out.Row = s.row(t.Row)
		}
		return &out
	}
	panic("plan: a step of no known kind")
}

// Does reports whether a size does a step: In keeps those steps of a part, in their order, and no others.
func Does(step Step, z int) bool { return doneIn(step, z) }

// doneIn reports whether a size does a step.
func doneIn(step Step, z int) bool {
	does := func(sizes Sizes, n Nums) bool { return sizes.Has(z) && (len(n) == 0 || n[z] != Absent) }
	switch t := step.(type) {
	case *Row:
		return does(t.For, t.First)
	case *Block:
		return does(t.For, t.First) && (len(t.Times) == 0 || t.Times[z] > 0)
	case *CountOff:
		return does(t.For, nil)
	case *Fasten:
		return does(t.For, nil)
	case *MoveStart:
		return does(t.For, nil)
	case *NoteStep:
		return does(t.For, nil)
	case *Counted:
		return does(t.For, nil)
	case *JoinRound:
		return does(t.For, nil) && (len(t.Motifs) == 0 || t.Motifs[z] > 0)
	}
	return true
}

// inBlock reports whether a size works a row of a block.
func inBlock(r *Row, z int) bool {
	return doneIn(r, z) && (len(r.Times) == 0 || r.Times[z] != Absent && r.Times[z] != 0)
}

// eachRow calls f with every row of the part, those of blocks and of joined motifs included, and with what tells whether a
// size works it.
func (p *Part) eachRow(f func(r *Row, does func(z int) bool)) {
	for _, step := range p.Steps {
		switch t := step.(type) {
		case *Row:
			f(t, func(z int) bool { return doneIn(t, z) })
		case *Block:
			for _, r := range t.Rows {
				f(r, func(z int) bool { return doneIn(t, z) && inBlock(r, z) })
			}
		case *JoinRound:
			if t.Row != nil {
				f(t.Row, func(z int) bool { return doneIn(t, z) })
			}
		}
	}
}

func (s *sized) row(r *Row) *Row {
	out := *r
	out.First, out.Last, out.Times, out.For = s.nums(r.First), s.nums(r.Last), s.nums(r.Times), nil
	if r.Chart != nil {
		chart := *r.Chart
		chart.Chart = index(s.charts, chart.Chart)
		out.Chart = &chart
	}
	out.Begin.Yarn = s.yarn(r.Begin.Yarn)
	out.Work = s.work(r.Work)
	out.Counts, out.Change = some(r.Counts, s.count), some(r.Change, s.count)
	out.Yarn = s.yarn(r.Yarn)
	out.Stripes = s.stripes(r.Stripes)
	out.JoinAt = s.ref(r.JoinAt)
	out.Tall = s.height(r.Tall)
	out.Drop = s.drop(r.Drop)
	return &out
}

func (s *sized) block(b *Block) *Block {
	out := *b
	out.Times, out.First, out.Last, out.For = s.nums(b.Times), s.nums(b.First), s.nums(b.Last), nil
	out.Rows = nil
	for _, r := range b.Rows {
		if inBlock(r, s.z) {
			out.Rows = append(out.Rows, s.row(r))
		}
	}
	out.Counts, out.Change = some(b.Counts, s.count), some(b.Change, s.count)
	out.Stripes = s.stripes(b.Stripes)
	out.Drop = s.drop(b.Drop)
	out.Tall = s.height(b.Tall)
	return &out
}

// height is a height that was asked for; none for a size that does not come to it here.
func (s *sized) height(l Lengths) Lengths {
	if !s.known(l) {
		return nil
	}
	return s.lengths(l)
}

// drop are the markers that are taken out, those that the size has.
func (s *sized) drop(markers []int) []int {
	var out []int
	for _, m := range markers {
		if m = s.marker(m); m >= 0 {
			out = append(out, m)
		}
	}
	return out
}

func (s *sized) count(c Count) (Count, bool) {
	ok := s.has(c.N)
	c.N, c.Yarn = s.nums(c.N), s.yarn(c.Yarn)
	return c, ok
}

func (s *sized) stripes(t *Stripes) *Stripes {
	if t == nil {
		return nil
	}
	rows := func(st Stripe) (Stripe, bool) {
		ok := st.Rows[s.z] > 0
		st.Yarn, st.Rows = s.yarn(st.Yarn), s.nums(st.Rows)
		return st, ok
	}
	return &Stripes{Lead: some(t.Lead, rows), Cycle: some(t.Cycle, rows), Tail: some(t.Tail, rows), Times: s.nums(t.Times)}
}

// work keeps the instructions of which the size has something to do.
func (s *sized) work(work []Instr) []Instr {
	return some(work, s.instr)
}

func (s *sized) instr(in Instr) (Instr, bool) {
	if s.idle(&in) {
		return in, false
	}
	had := in.Body
	in.Per, in.N, in.Chains = s.nums(in.Per), s.nums(in.N), s.nums(in.Chains)
	in.Last, in.Before, in.Cells = s.nums(in.Last), s.nums(in.Before), s.nums(in.Cells)
	in.Marker, in.Yarn = s.marker(in.Marker), s.yarn(in.Yarn)
	in.Ref = s.ref(in.Ref)
	in.Body = s.work(had)
	if in.Spread != nil {
		sp := *in.Spread
		sp.Long, sp.LongPlain, sp.Short, sp.ShortPlain = s.nums(sp.Long), s.nums(sp.LongPlain), s.nums(sp.Short), s.nums(sp.ShortPlain)
		sp.Before, sp.After = s.nums(sp.Before), s.nums(sp.After)
		in.Spread = &sp
	}
	return in, len(had) == 0 || len(in.Body) > 0
}

// idle reports whether the size has nothing to do of an instruction. What is done or not, rather than a number of times, is
// done with a number of 0 as well; and so is shaping that is spread, for there may be plain stitches on both sides of none.
func (s *sized) idle(in *Instr) bool {
	if !s.has(in.N) {
		return true
	}
	if slices.Contains([]Op{TurnWork, PlaceMark, MoveMark, RemoveMark, ChangeTo, SpreadOut}, in.Op) {
		return false
	}
	none := func(n Nums) bool { return len(n) > 0 && (n[s.z] == 0 || n[s.z] == Absent) }
	return none(in.N) || none(in.Per)
}
