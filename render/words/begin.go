package words

import (
	"iter"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// beginning makes a beginning chain ready to be said. Whether it counts is said where such a chain first stands in the
// pattern, and holds throughout; and again where it first stands in each further part, for a part may be worked a week later.
func (c *context) beginning(r *plan.Row) beginning {
	b := r.Begin
	always := b.And > 0 || c.disputed(b)
	such := c.beginnings()
	first := b.Throughout || isFirst(such.first, r)
	again := c.part != nil && isFirst(such.inPart[c.part], r)
	return beginning{
		chains: b.Chains, and: b.And, counts: b.Counts, as: c.as(b.As),
		explain: always || first || again, throughout: first && !always,
	}
}

// beginnings are the beginning chains of a pattern.
type beginnings struct {
	ways   map[int]way                        // what chains of a number are, in the first row that has them
	split  map[int]bool                       // such numbers that are something else in another row
	first  map[start]*plan.Row                // the first row that begins so
	inPart map[*plan.Part]map[start]*plan.Row // and in each part
}

// way is whether chains count, and as what if they do.
type way struct {
	counts bool
	as     stitch.ID
}

func wayOf(b *plan.Begin) way {
	if !b.Counts {
		return way{}
	}
	return way{true, b.As}
}

// start is what is said of chains once.
type start struct {
	chains int
	counts bool
}

func beginningsOf(p *plan.Pattern) *beginnings {
	out := &beginnings{ways: map[int]way{}, split: map[int]bool{}, first: map[start]*plan.Row{}, inPart: map[*plan.Part]map[start]*plan.Row{}}
	for _, part := range p.Parts {
		in := map[start]*plan.Row{}
		out.inPart[part] = in
		for r := range rowsIn(part) {
			b := &r.Begin
			if b.FromHook > 0 {
				continue
			}
			w, known := out.ways[b.Chains]
			if !known {
				out.ways[b.Chains] = wayOf(b)
			} else if w != wayOf(b) {
				out.split[b.Chains] = true
			}
			if b.And > 0 {
				continue
			}
			k := start{b.Chains, b.Counts}
			if _, had := in[k]; !had {
				in[k] = r
			}
			if _, had := out.first[k]; !had {
				out.first[k] = r
			}
		}
	}
	return out
}

// beginnings are those of the pattern at hand.
func (c *context) beginnings() *beginnings {
	switch {
	case c.l.keeps(c.p):
		return c.l.kept.beginnings()
	case c.begun == nil:
		c.begun = beginningsOf(c.p)
	}
	return c.begun
}

// isFirst reports whether a row is the first of some that begins as it does.
func isFirst(first map[start]*plan.Row, r *plan.Row) bool {
	o, ok := first[start{r.Begin.Chains, r.Begin.Counts}]
	return !ok || o == r
}

// as is the stitch that a chain stands for.
func (c *context) as(id stitch.ID) noun {
	if id == "" {
		return c.l.voice.places(plan.Stitch)
	}
	return c.form(stitch.Form{ID: id, Together: 1})
}

// disputed reports whether the same number of chains counts in one row of the pattern and does not in another: each row
// must then say which it is.
func (c *context) disputed(b plan.Begin) bool {
	such := c.beginnings()
	w, known := such.ways[b.Chains]
	return known && (such.split[b.Chains] || w != wayOf(&b))
}

// rows are all rows of the pattern, those in blocks included.
func rows(p *plan.Pattern) iter.Seq[*plan.Row] {
	return func(yield func(*plan.Row) bool) {
		for _, part := range p.Parts {
			for r := range rowsIn(part) {
				if !yield(r) {
					return
				}
			}
		}
	}
}

// rowsIn are all rows of a part, those in blocks included.
func rowsIn(part *plan.Part) iter.Seq[*plan.Row] {
	return func(yield func(*plan.Row) bool) {
		for _, s := range part.Steps {
			switch s := s.(type) {
			case *plan.Row:
				if !yield(s) {
					return
				}
			case *plan.Block:
				for _, r := range s.Rows {
					if !yield(r) {
						return
					}
				}
			}
		}
	}
}

// eachRow calls f with every row of the pattern, those in blocks included.
func eachRow(p *plan.Pattern, f func(*plan.Row)) {
	for r := range rows(p) {
		f(r)
	}
}

// eachInstr calls f with every instruction of the pattern, those in brackets included.
func eachInstr(p *plan.Pattern, f func(*plan.Instr)) {
	eachRow(p, func(r *plan.Row) { walk(r.Work, f) })
}

func walk(work []plan.Instr, f func(*plan.Instr)) {
	for i := range work {
		f(&work[i])
		walk(work[i].Body, f)
	}
}

// hook writes the first stitch of a row in a new chain, and what is left of the row's instructions. A row that starts
// with a single form goes on in the same breath ("and in each ch across"); any other only says where it starts.
func (c *context) hook(r *plan.Row) (item, []plan.Instr) {
	b := r.Begin
	h := hooked{per: c.per(nil), nth: b.FromHook, skipped: b.Skipped, counts: b.Counts, as: c.as(b.As), throughout: b.Throughout}
	if len(r.Work) == 0 || !c.hookable(&r.Work[0]) {
		return item{text: c.l.voice.startHook(h), heavy: true}, r.Work
	}
	in := r.Work[0]
	h.per = c.per(in.Per)
	in.N, in.AfterBegin = c.minus(in.N, 1), false
	rest := c.spot(&in)
	if !rest.n.some() {
		rest.n = num{}
	}
	return item{text: c.l.voice.fromHook(c.form(in.Form), h, rest), heavy: true}, r.Work[1:]
}

// hookable reports whether an instruction is stitches in each of some chains, in every size.
func (c *context) hookable(in *plan.Instr) bool {
	plainWork := in.Op == plan.Work && in.Ref == nil && in.Called == nil && in.N != nil && !c.num(in.N).gaps()
	return plainWork && (in.Reach == plan.Next || in.Reach == plan.ToEnd)
}
