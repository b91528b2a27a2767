package lsp

import (
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang"
)

// This file finds, for a row of the source, the rows of the checked pattern that were worked by it.

// known is a checked pattern with what relates it to a text: the text itself, or a later one that could not be read.
type known struct {
	*snapshot // in which the pattern is known
	*plan.Pattern
	place func(at int32) (int32, bool) // where a place of the later text was; false if its line is new
	fresh bool                         // the pattern is that of the text itself
}

// pattern waits for the text to be checked. It is nil if nothing is known.
func (q *query) pattern() *known {
	select {
	case <-q.done:
	case <-q.ctx.Done():
		return nil
	}
	switch {
	case q.known():
		return &known{q.snapshot, q.checked.Pattern, func(at int32) (int32, bool) { return at, true }, true}
	case q.before != nil:
		return &known{q.before, q.before.checked.Pattern, linesBefore(q.before.text.body, q.text.body), false}
	}
	return nil
}

// linesBefore maps places of a text to places of an older one: those of lines above and below all that has changed.
func linesBefore(old, now string) func(int32) (int32, bool) {
	above := 0
	for i := 0; i < len(old) && i < len(now) && old[i] == now[i]; i++ {
		if old[i] == '\n' {
			above = i + 1
		}
	}
	below := 0
	for i := 1; i <= len(old)-above && i <= len(now)-above && old[len(old)-i] == now[len(now)-i]; i++ {
		if i == len(now) || now[len(now)-i-1] == '\n' {
			below = i
		}
	}
	return func(at int32) (int32, bool) {
		switch {
		case int(at) < above:
			return at, true
		case int(at) >= len(now)-below:
			return at + int32(len(old)-len(now)), true
		}
		return 0, false
	}
}

// worked is the rows of a part that a line of the source stands for.
type worked struct {
	part *plan.Part
	rows [][]*plan.RowFact // by size, in the order in which they are worked; empty in a size that has none
	step plan.Step         // that prints them first
}

// rowsAt lists what was worked by the row of the source that begins at a place: one entry for each part that has it.
func (k *known) rowsAt(at int32) []*worked {
	was, ok := k.place(at)
	if !ok {
		return nil
	}
	return k.rowsByPlace()[was]
}

// gatherRows finds the rows of a pattern by where they begin in the source.
func gatherRows(p *plan.Pattern) map[int32][]*worked {
	out := map[int32][]*worked{}
	for i, part := range p.Unrolled().Parts {
		facts := make([]map[int]*plan.RowFact, len(p.Sizes))
		for z := range part.Worked {
			facts[z] = map[int]*plan.RowFact{}
			for j := range part.Worked[z] {
				facts[z][part.Worked[z][j].Number] = &part.Worked[z][j]
			}
		}
		printed := map[int32]plan.Step{}
		for _, s := range p.Parts[i].Steps {
			for _, r := range plan.RowsOf(s) {
				if printed[r.Span.Start] == nil {
					printed[r.Span.Start] = s
				}
			}
		}
		here := map[int32]*worked{}
		for _, s := range part.Steps {
			for _, r := range plan.RowsOf(s) {
				w := here[r.Span.Start]
				if w == nil {
					w = &worked{part: p.Parts[i], rows: make([][]*plan.RowFact, len(p.Sizes)), step: printed[r.Span.Start]}
					here[r.Span.Start] = w
					out[r.Span.Start] = append(out[r.Span.Start], w)
				}
				w.add(r, facts)
			}
		}
	}
	return out
}

// add notes the rows of a step.
func (w *worked) add(r *plan.Row, facts []map[int]*plan.RowFact) {
	for z := range w.rows {
		if z >= len(r.First) || r.First[z] == plan.Absent || !r.For.Has(z) {
			continue
		}
		for n := r.First[z]; n <= max(r.First[z], r.Last[z]); n++ {
			if f := facts[z][n]; f != nil {
				w.rows[z] = append(w.rows[z], f)
			}
		}
	}
}

// first and last are a number of the first and the last row in each size, Absent where there is none.
func (w *worked) first(of func(*plan.RowFact) int) plan.Nums {
	return w.each(func(rows []*plan.RowFact) int { return of(rows[0]) })
}

func (w *worked) last(of func(*plan.RowFact) int) plan.Nums {
	return w.each(func(rows []*plan.RowFact) int { return of(rows[len(rows)-1]) })
}

func (w *worked) each(of func([]*plan.RowFact) int) plan.Nums {
	n := make(plan.Nums, len(w.rows))
	for z, rows := range w.rows {
		if n[z] = plan.Absent; len(rows) > 0 {
			n[z] = of(rows)
		}
	}
	return n
}

// steady reports whether all the rows have the same counts.
func (w *worked) steady() bool {
	for _, rows := range w.rows {
		for _, f := range rows {
			if f.Stitches != rows[0].Stitches || f.Spaces != rows[0].Spaces {
				return false
			}
		}
	}
	return true
}

func stitches(f *plan.RowFact) int { return f.Stitches }
func spaces(f *plan.RowFact) int   { return f.Spaces }

// sourceRow is a row of the source: where it begins, and whether it says its count.
type sourceRow struct {
	*lang.Statement
	counted bool
	only    bool // it is for some sizes alone
	again   bool // it is worked again and again, in turn with others
	part    string
}

// sourceRows lists the rows of a source.
func sourceRows(body []*lang.Statement) []sourceRow {
	var out []sourceRow
	part, only, again := "", 0, 0
	var walk func(body []*lang.Statement)
	walk = func(body []*lang.Statement) {
		for _, s := range body {
			switch n := s.Node.(type) {
			case *lang.Row:
				out = append(out, sourceRow{s, n.Claims != nil, only > 0, again > 0, part})
			case *lang.ShapeRow:
				out = append(out, sourceRow{s, n.Claims != nil, only > 0, again > 0, part})
			case *lang.Part:
				part = n.Name.Text
			case *lang.Only:
				only++
				walk(s.Body)
				only--
				continue
			case *lang.Repeat, *lang.Shape:
				again++
				walk(s.Body)
				again--
				continue
			}
			walk(s.Body)
		}
	}
	walk(body)
	return out
}

// numbers is a number for each size, as a source writes them: 64 (72, 80). Sizes that have none are left out.
func numbers(n plan.Nums) string {
	var all []string
	for _, v := range n {
		if v != plan.Absent {
			all = append(all, itoa(v))
		}
	}
	if v, same := n.Same(); same {
		return itoa(v)
	}
	return all[0] + " (" + strings.Join(all[1:], ", ") + ")"
}
