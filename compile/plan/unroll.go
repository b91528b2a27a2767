package plan

import "slices"

// maxUnrolled is how many rows a part may have for them to be written out: more than the longest garment has, and fewer than
// would make a book of it.
const maxUnrolled = 600

// Unrolled returns the pattern with every row and round written out, each with its own number, side, yarn and count, as
// large print has them: a run of rows becomes one step a row, a block its passes. A row in which some sizes come to the end
// of a run, and are told so, is parted into one step for these sizes and one for the others. What a maker can only do as
// she goes, in rows that are not alike, stays as it is said. A part with more than 600 rows stays as it is. The pattern
// itself is not changed, and the two share what neither of them changes.
func (p *Pattern) Unrolled() *Pattern {
	q := *p
	q.Parts = nil
	for _, part := range p.Parts {
		u := unroller{part: part, last: map[int]int{}}
		one := *part
		one.Steps = u.steps()
		if u.rows > maxUnrolled {
			one.Steps = part.Steps
		}
		q.Parts = append(q.Parts, &one)
	}
	return &q
}

// unroller writes out the rows of a part.
type unroller struct {
	part *Part
	rows int         // steps that are rows
	last map[int]int // the yarn of the last row, by size
}

func (u *unroller) steps() []Step {
	var out []Step
	for _, step := range u.part.Steps {
		switch t := step.(type) {
		case *Row:
			out = u.run(out, t, pass{at: numbersOf(t, t.First), yarns: yarnsOf(t.Stripes, len(t.First)), first: true})
		case *Block:
			out = u.block(out, t)
		default:
			out = append(out, step)
		}
		if u.rows > maxUnrolled {
			return nil
		}
	}
	return out
}

// pass is where a row that is written out stands.
type pass struct {
	at    Nums    // the number of its first row, Absent in a size that does not work it
	yarns [][]int // the yarns of stripes, by size; nil if there are none
	first bool    // it stands in the first pass of a block, or in none
	tail  *tail   // what is said behind the last pass of its block; nil if nothing is
}

// tail is what a block says behind its last pass.
type tail struct {
	drop []int
	tall Lengths
	in   []bool // the sizes whose last pass this is
}

// numbersOf are the numbers of a step, Absent in a size that does not do it.
func numbersOf(step Step, first Nums) Nums {
	at := make(Nums, len(first))
	for z := range at {
		if at[z] = Absent; doneIn(step, z) {
			at[z] = first[z]
		}
	}
	return at
}

// times is how many rows a row stands for in a size that works it.
func (r *Row) times(z int) int {
	if len(r.Times) == 0 {
		return 1
	}
	return max(r.Times[z], 0) // Absent is below
}

// run writes out the rows that a row stands for. One that stands for itself stays.
func (u *unroller) run(out []Step, r *Row, p pass) []Step {
	top := 0
	for z, n := range p.at {
		if n != Absent {
			top = max(top, r.times(z))
		}
	}
	for i := range top {
		for _, sizes := range u.alike(r, p, i) {
			if u.rows++; u.rows > maxUnrolled {
				return out
			}
			out = append(out, u.one(r, p, i, sizes))
		}
	}
	return out
}

// told is what a row says beside how it is worked. By it the sizes of a row are parted.
type told struct {
	yarn         int
	change       bool
	ends, closes bool // it is the last of the run, and of its block
}

func (u *unroller) told(r *Row, p pass, z, i int) told {
	k := told{yarn: r.Yarn, change: r.ChangeYarn && i == 0}
	if p.yarns != nil {
		last, any := u.last[z]
		k.yarn = p.yarns[z][i]
		k.change = any && last != k.yarn
	}
	if i == r.times(z)-1 {
		k.closes = p.tail != nil && p.tail.in[z]
		k.ends = len(r.Drop) > 0 || r.Tall != nil
	}
	return k
}

// alike are the sizes that work the i-th row of a run, those together that are told the same.
func (u *unroller) alike(r *Row, p pass, i int) []Sizes {
	var kinds []told
	var out []Sizes
	for z, n := range p.at {
		if n == Absent || i >= r.times(z) {
			continue
		}
		k := u.told(r, p, z, i)
		j := slices.Index(kinds, k)
		if j < 0 {
			j = len(kinds)
			kinds, out = append(kinds, k), append(out, make(Sizes, len(p.at)))
		}
		out[j][z] = true
	}
	return out
}

// one is the i-th row of a run, for sizes that are told the same.
func (u *unroller) one(r *Row, p pass, i int, sizes Sizes) *Row {
	out := *r
	n := len(sizes)
	out.First, out.Times, out.For = make(Nums, n), make(Nums, n), sizes
	facts := make([]*RowFact, n)
	last, known := false, true
	var is told
	for z, on := range sizes {
		if out.First[z], out.Times[z] = Absent, Absent; !on {
			continue
		}
		out.First[z], out.Times[z] = p.at[z]+i, 1
		facts[z] = u.fact(z, p.at[z]+i)
		known = known && facts[z] != nil
		last = last || i == r.times(z)-1
		is = u.told(r, p, z, i)
	}
	for z, on := range sizes {
		if on {
			u.last[z] = is.yarn
		}
	}
	if out.Last = out.First; sizes.All() {
		out.For = nil
	}
	out.Yarn, out.ChangeYarn, out.Stripes, out.Change = is.yarn, is.change, nil, nil
	if i > 0 {
		out.NewYarn, out.JoinAt, out.Hook, out.Unturned = false, nil, 0, false
	}
	out.Begin.Throughout = r.Begin.Throughout && i == 0 && p.first
	if !last {
		out.Label, out.Called = "", nil
	}
	if !is.ends {
		out.Drop, out.Tall = nil, nil
	}
	if is.closes {
		out.Drop = append(slices.Clone(out.Drop), p.tail.drop...)
		if p.tail.tall != nil {
			out.Tall = p.tail.tall
		}
	}
	if out.Tall != nil {
		out.Tall = slices.Clone(out.Tall)
		for z, on := range sizes {
			if !on {
				out.Tall[z] = NoLength
			}
		}
	}
	if known {
		out.Counts = CountsAfter(facts)
		u.side(&out, facts)
	}
	out.Chart = chartRow(&out, facts, i)
	return &out
}

// fact is a row of a size by its number.
func (u *unroller) fact(z, number int) *RowFact {
	if z >= len(u.part.Worked) {
		return nil
	}
	return FactOf(u.part.Worked[z], number)
}

// side says which side a row shows, where it is worked back and forth and all its sizes show the same.
func (u *unroller) side(r *Row, facts []*RowFact) {
	r.Sided, r.Wrong = false, false
	if style := u.part.Style; style != Rows && style != TurnedRounds && !r.Flat {
		return
	}
	seen := false
	for _, f := range facts {
		if f == nil {
			continue
		}
		if seen && f.Wrong != r.Wrong {
			r.Sided, r.Wrong = false, false
			return
		}
		r.Sided, r.Wrong, seen = true, f.Wrong, true
	}
}

// chartRow is the row of a chart that the i-th row of a run is worked from.
func chartRow(r *Row, facts []*RowFact, i int) *ChartRow {
	if r.Chart == nil {
		return nil
	}
	out := *r.Chart
	if out.First != out.Last {
		if out.Last < out.First {
			i = -i
		}
		out.First += i
		out.Last = out.First
	}
	if out.Read == EitherWay {
		sides := map[bool]bool{}
		for _, f := range facts {
			if f != nil {
				sides[f.Wrong != r.Back] = true
			}
		}
		if len(sides) == 1 {
			if out.Read = FromRight; sides[true] {
				out.Read = FromLeft
			}
		}
	}
	return &out
}

// block writes out the passes of a block.
func (u *unroller) block(out []Step, b *Block) []Step {
	at, yarns := numbersOf(b, b.First), yarnsOf(b.Stripes, len(b.First))
	passes := 0
	for z, n := range at {
		if n != Absent {
			passes = max(passes, b.Times[z])
		}
	}
	for k := range passes {
		for i, r := range b.Rows {
			p := pass{at: make(Nums, len(at)), first: k == 0}
			if i == len(b.Rows)-1 {
				p.tail = &tail{drop: b.Drop, tall: b.Tall, in: make([]bool, len(at))}
			}
			if yarns != nil {
				p.yarns = make([][]int, len(at))
			}
			for z := range at {
				if p.at[z] = Absent; at[z] == Absent || k >= b.Times[z] || !inBlock(r, z) {
					continue
				}
				p.at[z] = at[z]
				at[z] += r.times(z)
				if yarns != nil {
					p.yarns[z], yarns[z] = yarns[z][:r.times(z)], yarns[z][r.times(z):]
				}
				if p.tail != nil {
					p.tail.in[z] = k == b.Times[z]-1 && (len(b.Drop) > 0 || b.Tall != nil)
				}
			}
			if out = u.run(out, r, p); u.rows > maxUnrolled {
				return out
			}
		}
	}
	return out
}

// yarnsOf are the yarns of the rows of some stripes, one after the other, by size; nil if there are no stripes.
func yarnsOf(s *Stripes, sizes int) [][]int {
	if s == nil {
		return nil
	}
	out := make([][]int, sizes)
	for z := range out {
		add := func(list []Stripe) {
			for _, st := range list {
				for range max(st.Rows[z], 0) { // Absent is below
					out[z] = append(out[z], st.Yarn)
				}
			}
		}
		add(s.Lead)
		for range max(s.Times[z], 0) {
			add(s.Cycle)
		}
		add(s.Tail)
	}
	return out
}
