package compare

import (
	"fmt"
	"reflect"
	"slices"

	"ovillo/compile/plan"
)

// parts compares what is worked, part by part.
func (c *comparison) parts() {
	was, is := c.old.p, c.new.p
	unrolledWas, unrolledIs := was.Unrolled(), is.Unrolled()
	all := map[int]*lines{}
	for i, k := range c.to {
		if k < 0 {
			c.note(Change{Topic: Parts, Part: Pair{i, -1}, Old: one(i)}, one(i), nil)
			continue
		}
		c.head(i, k)
		all[i] = lineUp(c.old.elementsOf(was.Parts[i], unrolledWas.Parts[i]), c.new.elementsOf(is.Parts[k], unrolledIs.Parts[k]))
	}
	for k, i := range c.back {
		if i < 0 {
			c.note(Change{Topic: Parts, Part: Pair{-1, k}, New: one(k)}, nil, one(k))
		}
	}
	c.moves = c.moved(all)
	for i, k := range c.to {
		if k >= 0 {
			all[i].refer(c.moves, c.sameFigures)
		}
	}
	for i, k := range c.to {
		if k >= 0 {
			c.steps(Pair{i, k}, all[i])
		}
	}
}

// moved says where the old rows of all parts are in the new pattern.
func (c *comparison) moved(all map[int]*lines) func(part, row int) where {
	rows := map[int]map[int]where{}
	return func(part, row int) where {
		if row == 0 || all[part] == nil {
			return where{row: row}
		}
		if rows[part] == nil {
			rows[part] = all[part].rows()
		}
		if to, known := rows[part][row]; known {
			return to
		}
		return where{-1, true}
	}
}

// head compares how a part is worked.
func (c *comparison) head(i, k int) {
	key := func(b *book, part *plan.Part) string {
		y := part.Yarn
		return fmt.Sprint(part.Make, part.Style, part.FirstWrong, renumber(b.yarns, y), int64(hookOf(b.p, part)), b.key(part.Motifs))
	}
	if key(c.old, c.old.p.Parts[i]) != key(c.new, c.new.p.Parts[k]) {
		c.note(Change{Topic: Heads, Part: Pair{i, k}}, one(i), one(k))
	}
}

// hookOf is the hook of a part: the main one unless it has its own.
func hookOf(p *plan.Pattern, part *plan.Part) plan.Length {
	if part.Hook == 0 && len(p.Hooks) > 0 {
		return p.Hooks[0]
	}
	return part.Hook
}

// steps notes what changed in a part, by the steps that the pages print.
func (c *comparison) steps(at Pair, l *lines) {
	full := func(p *plan.Pattern, part, z int, list []int) []int {
		kept := p.Parts[part].StepsIn(z)
		var out []int
		for _, s := range list {
			if s != Start {
				s = kept[s]
			}
			out = append(out, s)
		}
		return out
	}
	size := c.r.Sizes[c.z]
	groups := l.groups()
	for _, g := range groups {
		c.note(Change{Topic: Steps, Part: at, Old: full(c.r.Old, at.Old, size.Old, g.old), New: full(c.r.New, at.New, size.New, g.new)}, g.old, g.new)
	}
	runs := l.runs(groups)
	if len(runs) == 0 {
		return
	}
	i := slices.IndexFunc(c.r.Shifts, func(s Shift) bool { return s.Part == at && slices.Equal(s.Runs, runs) })
	if i < 0 {
		i = len(c.r.Shifts)
		c.r.Shifts = append(c.r.Shifts, Shift{Part: at, Runs: runs})
	}
	c.r.Shifts[i].Sizes = append(c.r.Shifts[i].Sizes, c.z)
}

// after compares the finishing and the cautions.
func (c *comparison) after() {
	was, is := c.old.p, c.new.p
	list := func(b *book) (keys []string, refs [][]ref) {
		for _, f := range b.p.Finish {
			k := keyer{book: b}
			k.put(reflect.ValueOf(f), "")
			if len(f.Row) > 0 && f.Through != nil {
				k.refs = append(k.refs, ref{part: renumber(b.parts, f.Through.Part), row: f.Row[0], at: nowhere})
			}
			keys, refs = append(keys, k.b.String()), append(refs, k.refs)
		}
		return keys, refs
	}
	full := func(p *plan.Pattern, one *plan.Pattern, i int) []int {
		if i < 0 {
			return nil
		}
		return []int{slices.IndexFunc(p.Finish, func(f plan.Finishing) bool { return f.Span == one.Finish[i].Span && f.Kind == one.Finish[i].Kind })}
	}
	old, oldRefs := list(c.old)
	new, newRefs := list(c.new)
	same := func(i, k int) bool {
		return old[i] == new[k] && c.sameFigures(was.Finish[i].Prose, is.Finish[k].Prose) && sameRefs(oldRefs[i], newRefs[k], c.moves)
	}
	for _, p := range lined(old, new, func(i, k int) float64 {
		if was.Finish[i].Kind != is.Finish[k].Kind {
			return 1
		}
		return min(apartBy(old[i], new[k]), most)
	}) {
		if p.old >= 0 && p.new >= 0 && same(p.old, p.new) {
			continue
		}
		c.note(Change{Topic: Finish, Old: full(c.r.Old, was, p.old), New: full(c.r.New, is, p.new)}, one(p.old), one(p.new))
	}
	c.cautions()
}

// cautions compares the cautions by the rules they come from: their texts are the rules', with figures of the piece.
func (c *comparison) cautions() {
	list := func(p *plan.Pattern) (out []item) {
		times := map[string]int{}
		for _, k := range p.Cautions {
			times[k.ID]++
			out = append(out, item{fmt.Sprintf("%s %d", k.ID, times[k.ID]), fmt.Sprint(k.Severity, k.Seller, figuresOf(k.Text["en"]))})
		}
		return out
	}
	c.byName(Cautions, list(c.old.p), list(c.new.p))
}
