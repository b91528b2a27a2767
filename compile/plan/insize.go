package plan

import (
	"maps"
	"slices"

	"ovillo/compile/stitch"
)

// In returns the pattern in size z alone, as if the source had only that one: every number that is one for each size is
// the one of that size, and what only other sizes have is left out: rows and steps, instructions, markers, charts, yarns,
// hooks, stitches, measures, notions, cautions and steps of the finishing. Rows keep their numbers, measures their letters
// and markers theirs, so that a maker can be answered from the pattern in all sizes. The pattern itself is not changed, and
// the two share what neither of them changes. It panics if there is no such size.
func (p *Pattern) In(z int) *Pattern {
	s := &sized{z: z}
	s.yarns = s.yarnsOf(p)
	s.charts = s.chartsOf(p)
	q := *p
	q.Sizes, q.Shown = []Size{p.Sizes[z]}, 0
	q.Intro, q.Care, q.Licence, q.Changes = s.prose(p.Intro), s.prose(p.Care), s.prose(p.Licence), s.prose(p.Changes)
	q.Notes = each(p.Notes, s.prose)
	q.Body = some(p.Body, s.body)
	q.Yarns = s.keptYarns(p)
	q.Contents = s.contents(p.Contents)
	q.Charts = s.keptCharts(p)
	q.Drawn = some(p.Drawn, s.drawn)
	q.Sample = s.sample(p.Sample)
	q.Photo = s.photo(p.Photo)
	q.Parts = each(p.Parts, s.part)
	q.Measures = some(p.Measures, s.measure)
	q.Sums = some(p.Sums, s.sum)
	q.Rounded = some(p.Rounded, s.rounded)
	q.Regraded = s.regraded(p.Regraded)
	s.finish(p, &q)
	q.Notions = s.notions(&q)
	was, is := p.inUse(), q.inUse()
	q.Hooks = stays(p.Hooks, was.hooks, is.hooks)
	q.Stitches = stays(p.Stitches, was.forms, is.forms)
	q.Own = slices.DeleteFunc(slices.Clone(p.Own), func(o OwnStitch) bool { return was.ids[o.ID] && !is.ids[o.ID] })
	q.Own = each(q.Own, func(o OwnStitch) OwnStitch { o.How = s.prose(o.How); return o })
	q.throughout(p)
	return &q
}

// StepsIn returns the indices of the steps of a part that [Pattern.In] keeps for size z, in order.
func (p *Part) StepsIn(z int) []int {
	var out []int
	for i, step := range p.Steps {
		if doneIn(step, z) {
			out = append(out, i)
		}
	}
	return out
}

// sized takes out of a pattern what one of its sizes has.
type sized struct {
	z             int
	yarns, charts []int // the new index of each; -1 for one that only other sizes have
	markers       []int // likewise, of the part at hand
}

// each returns what f makes of each element; nil stays nil.
func each[T any](list []T, f func(T) T) []T {
	if list == nil {
		return nil
	}
	out := make([]T, len(list))
	for i, x := range list {
		out[i] = f(x)
	}
	return out
}

// some returns what f makes of each element that the size has; nothing is nil.
func some[T any](list []T, f func(T) (T, bool)) []T {
	var out []T
	for _, x := range list {
		if y, ok := f(x); ok {
			out = append(out, y)
		}
	}
	return out
}

// at is the one element of a list with one for each size; nil where there is no list.
func at[L ~[]T, T any](list L, z int) L {
	if len(list) == 0 {
		return nil
	}
	return L{list[z]}
}

func (s *sized) nums(n Nums) Nums          { return at(n, s.z) }
func (s *sized) lengths(l Lengths) Lengths { return at(l, s.z) }

// has reports whether a number that must be given is there in the size.
func (s *sized) has(n Nums) bool { return len(n) == 0 || n[s.z] != Absent }

// known reports likewise of a length.
func (s *sized) known(l Lengths) bool { return len(l) == 0 || l[s.z] != NoLength }

// index is the new place of what was at i.
func index(of []int, i int) int {
	if i < 0 || i >= len(of) {
		return i
	}
	return of[i]
}

func (s *sized) yarn(i int) int   { return index(s.yarns, i) }
func (s *sized) marker(i int) int { return index(s.markers, i) }

// renumbered gives new indices to what is kept, and -1 to the rest.
func renumbered(n int, keep func(i int) bool) []int {
	out, k := make([]int, n), 0
	for i := range out {
		if out[i] = -1; keep(i) {
			out[i] = k
			k++
		}
	}
	return out
}

// yarnsOf leaves out a yarn that other sizes need and this one does not.
func (s *sized) yarnsOf(p *Pattern) []int {
	return renumbered(len(p.Yarns), func(i int) bool {
		a := p.Yarns[i].Amount
		needed := func(a YarnAmount) bool { return a.Milligrams > 0 }
		return len(a) == 0 || needed(a[s.z]) || !slices.ContainsFunc(a, needed)
	})
}

func (s *sized) keptYarns(p *Pattern) []Yarn {
	var out []Yarn
	for i, y := range p.Yarns {
		if s.yarns[i] >= 0 {
			y.Amount = at(y.Amount, s.z)
			out = append(out, y)
		}
	}
	return out
}

func (s *sized) contents(c *Contents) *Contents {
	if c == nil {
		return nil
	}
	return &Contents{Shares: at(c.Shares, s.z), Weighted: at(c.Weighted, s.z)}
}

// chartsOf leaves out a chart from which only rows of other sizes are worked.
func (s *sized) chartsOf(p *Pattern) []int {
	other, here := map[int]bool{}, map[int]bool{}
	for _, part := range p.Parts {
		part.eachRow(func(r *Row, does func(z int) bool) {
			if r.Chart != nil {
				other[r.Chart.Chart] = true
				here[r.Chart.Chart] = here[r.Chart.Chart] || does(s.z)
			}
		})
	}
	return renumbered(len(p.Charts), func(i int) bool { return here[i] || !other[i] })
}

func (s *sized) keptCharts(p *Pattern) []Chart {
	var out []Chart
	for i, c := range p.Charts {
		if s.charts[i] < 0 {
			continue
		}
		if c.Mesh.Behind == 0 { // the cells are yarns
			c.Rows = each(c.Rows, func(row []int) []int { return each(row, s.yarn) })
		}
		out = append(out, c)
	}
	return out
}

// drawn is a chart of stitches of the size, with its yarns as the size has them.
func (s *sized) drawn(c *StitchChart) (*StitchChart, bool) {
	of := c.Sizes[s.z]
	if of == nil {
		return nil, false
	}
	one := *of
	one.Lines = each(of.Lines, func(l Line) Line {
		l.Stitches = each(l.Stitches, func(w Worked) Worked { w.Yarn = s.yarn(w.Yarn); return w })
		l.Counts = each(l.Counts, func(c Count) Count { c.Yarn = s.yarn(c.Yarn); return c }) // of one size as they are
		return l
	})
	out := *c
	out.Sizes = []*Stitches{&one}
	return &out, true
}

func (s *sized) prose(t Prose) Prose {
	if t.Values == nil {
		return t
	}
	t.Values = maps.Clone(t.Values)
	for k, v := range t.Values {
		t.Values[k] = s.value(v)
	}
	return t
}

func (s *sized) value(v Value) Value {
	v.Counts, v.Lengths, v.Amounts = s.nums(v.Counts), s.lengths(v.Lengths), at(v.Amounts, s.z)
	return v
}

func (s *sized) body(b BodyMeasure) (BodyMeasure, bool) {
	ok := s.known(b.Values)
	b.Values = s.lengths(b.Values)
	return b, ok
}

func (s *sized) sample(k *Sample) *Sample {
	if k == nil {
		return nil
	}
	out := *k
	if out.Size = -1; k.Size == s.z {
		out.Size = 0
	}
	out.Milligrams = nil
	for i, mg := range k.Milligrams {
		if s.yarn(i) >= 0 {
			out.Milligrams = append(out.Milligrams, mg)
		}
	}
	return &out
}

func (s *sized) photo(f *Photo) *Photo {
	if f == nil {
		return nil
	}
	out := *f
	if out.Size = -1; f.Size == s.z {
		out.Size = 0
	}
	return &out
}

func (s *sized) sum(m Sum) (Sum, bool) {
	ok := s.known(m.Values)
	m.Values = s.lengths(m.Values)
	return m, ok
}

func (s *sized) measure(m Measure) (Measure, bool) {
	ok := s.known(m.Values)
	m.Values, m.Wanted = s.lengths(m.Values), s.lengths(m.Wanted)
	if m.Fits != nil {
		fit := *m.Fits
		fit.Values, fit.Ease = s.lengths(fit.Values), s.lengths(fit.Ease)
		m.Fits = &fit
	}
	if m.Over != nil {
		over := *m.Over
		over.Values, over.Percent, over.Stretched = s.lengths(over.Values), s.nums(over.Percent), s.lengths(over.Stretched)
		m.Over = &over
	}
	m.Of = each(m.Of, func(t MeasuredOn) MeasuredOn {
		t.Row, t.ToRow, t.Values = s.nums(t.Row), s.nums(t.ToRow), s.lengths(t.Values)
		return t
	})
	return m, ok
}

func (s *sized) rounded(r Rounded) (Rounded, bool) {
	ok := s.has(r.Counts)
	r.Counts, r.Wanted, r.Got = s.nums(r.Counts), s.lengths(r.Wanted), s.lengths(r.Got)
	r.Multiple, r.Plus, r.ByHand = s.nums(r.Multiple), s.nums(r.Plus), at(r.ByHand, s.z)
	return r, ok
}

func (s *sized) regraded(r *Regraded) *Regraded {
	if r == nil {
		return nil
	}
	out := *r
	out.Changes = each(r.Changes, func(c Change) Change {
		c.Old, c.New = s.value(c.Old), s.value(c.New)
		c.OldGrams, c.NewGrams = s.nums(c.OldGrams), s.nums(c.NewGrams)
		return c
	})
	return &out
}

// throughout lets the first row that begins with a chain that counts say so, where the row that does it is of other sizes.
func (p *Pattern) throughout(full *Pattern) {
	first, said := (*Row)(nil), false
	look := func(of *Pattern) {
		first, said = nil, false
		for _, part := range of.Parts {
			part.eachRow(func(r *Row, _ func(int) bool) {
				if first == nil && r.Begin.Counts {
					first = r
				}
				said = said || r.Begin.Throughout
			})
		}
	}
	if look(full); !said {
		return
	}
	if look(p); !said && first != nil {
		first.Begin.Throughout = true
	}
}

// used is what the rows and steps of a pattern make use of.
type used struct {
	hooks map[Length]bool
	forms map[stitch.Form]bool
	ids   map[stitch.ID]bool
}

// stays keeps what is still used, and what no row ever used.
func stays[T comparable](list []T, was, is map[T]bool) []T {
	return slices.DeleteFunc(slices.Clone(list), func(x T) bool { return was[x] && !is[x] })
}

// inUse gathers the hooks and stitches that are used.
func (p *Pattern) inUse() *used {
	u := &used{hooks: map[Length]bool{}, forms: map[stitch.Form]bool{}, ids: map[stitch.ID]bool{}}
	for _, g := range p.Gauges {
		u.hooks[g.Hook], u.ids[g.Stitch] = true, true
	}
	for _, t := range append([]Prose{p.Intro, p.Care, p.Licence, p.Changes}, p.Notes...) {
		u.prose(t)
	}
	for _, f := range p.Finish {
		u.prose(f.Prose)
		if f.Kind == MakeCord && f.Made == nil {
			u.form(stitch.Form{ID: stitch.Chain, Together: 1})
			u.form(stitch.Form{ID: stitch.Slip, Together: 1})
		}
	}
	for _, part := range p.Parts {
		u.hooks[part.Hook] = true
		u.form(part.Start.Form)
		for _, facts := range part.Worked {
			for _, f := range facts {
				for form := range f.ByForm.All() {
					u.form(form)
				}
			}
		}
		part.eachRow(func(r *Row, _ func(int) bool) { u.row(r) })
		for _, step := range part.Steps {
			if n, ok := step.(*NoteStep); ok {
				u.prose(n.Prose)
			}
		}
	}
	return u
}

func (u *used) form(f stitch.Form) {
	u.forms[f], u.ids[f.ID] = true, true
	f.Together = 1
	u.forms[f] = true // the plain stitch beside one that draws together
}

func (u *used) prose(t Prose) {
	for _, v := range t.Values {
		if v.Form != nil {
			u.form(*v.Form)
		}
	}
}

func (u *used) row(r *Row) {
	u.hooks[r.Hook] = true
	if r.Begin.Chains > 0 {
		u.form(stitch.Form{ID: stitch.Chain, Together: 1})
	}
	if r.Begin.As != "" {
		u.form(stitch.Form{ID: r.Begin.As, Together: 1})
	}
	if r.Join.Kind != NoJoin {
		u.form(stitch.Form{ID: stitch.Slip, Together: 1})
		u.form(r.Join.Form)
	}
	for _, c := range r.Counts {
		u.form(c.Form)
	}
	u.work(r.Work)
}

func (u *used) work(work []Instr) {
	for i := range work {
		u.form(work[i].Form)
		if r := work[i].Ref; r != nil {
			u.form(r.Form)
		}
		switch work[i].Op {
		case Chains:
			u.form(stitch.Form{ID: stitch.Chain, Together: 1})
		case SlipOver, JoinTo:
			u.form(stitch.Form{ID: stitch.Slip, Together: 1})
		}
		u.work(work[i].Body)
	}
}
