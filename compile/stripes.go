package compile

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/lang"
)

// This file works stripes: which yarn a row has follows a cycle of rows, whatever is worked in them.

// stripes is a cycle of yarns: rows of each, one number a size.
type stripes struct {
	yarns []int
	rows  []plan.Nums
	done  []int         // rows worked since the stripes were begun, per size
	at    []map[int]int // the rows done before a row, by its number, per size
}

// setStripes begins stripes: they hold from the next row on, until another yarn is set.
func (p *partState) setStripes(n *lang.Stripes) {
	s := &stripes{done: make([]int, p.c.z), at: make([]map[int]int, p.c.z)}
	total := p.c.nums(0)
	for _, it := range n.Items {
		i, rows := p.c.yarn(it.Yarn), p.c.cnt(it.N, p.lex)
		if i < 0 || rows == nil {
			p.halt(all(p.c.z))
			return
		}
		s.yarns, s.rows = append(s.yarns, i), append(s.rows, rows)
		for z, k := range rows {
			total[z] += max(k, 0)
		}
		p.c.used[i] = true
	}
	if slices.Contains(pickNums(total, p.lex), 0) {
		p.c.say(codeStripes, n.Span(), nil)
		p.halt(all(p.c.z))
		return
	}
	for z := range s.at {
		s.at[z] = map[int]int{}
	}
	p.stripes, p.yarn = s, s.yarns[0]
	if !p.firstDone {
		p.plan.Yarn = p.yarn
		if p.started && p.plan.Start.Yarn < 0 {
			p.plan.Start.Yarn = p.yarn
		}
	}
}

// index is which stripe of the cycle the row of a size lies in before which so many were worked.
func (s *stripes) index(z, done int) int {
	total := 0
	for _, rows := range s.rows {
		total += max(rows[z], 0)
	}
	done %= max(total, 1)
	for i, rows := range s.rows {
		if done -= max(rows[z], 0); done < 0 {
			return i
		}
	}
	return 0
}

// yarnOf is the yarn that a row of a size is begun with: the next one, or one so many rows behind it.
func (w *working) yarnOf(z, behind int) int {
	if s := w.kick.stripes; s != nil {
		return s.yarns[s.index(z, s.done[z]+behind)]
	}
	return w.kick.yarn
}

// inHand is the yarn on the hook behind the last row of a size.
func (w *working) inHand(z int) int {
	res, s := w.last[z], w.kick.stripes
	switch {
	case !res.Pure:
		return res.LastYarn
	case s != nil: // what is known of the row may be from one like it, in another yarn
		return s.yarns[s.index(z, s.at[z][w.to[z]])]
	}
	return w.kick.yarn
}

// worked notes that a size has worked a row.
func (s *stripes) worked(z, number int) {
	s.at[z][number] = s.done[z]
	s.done[z]++
}

// stripe says in which yarn the rows of a printed step are: in one, to which the maker changes, or in the stripes that come
// in them.
func (p *partState) stripe(r *plan.Row, w *working) {
	s := w.kick.stripes
	if s == nil {
		return
	}
	r.Striped = true
	in := p.stripesIn(s, w.from, w.to)
	if in == nil {
		return
	}
	if one, ok := in.Single(); ok {
		r.Yarn, r.ChangeYarn = one, p.firstDone && p.inHand >= 0 && one != p.inHand
		r.NewYarn = false
		return
	}
	r.Stripes, r.NewYarn = in, false
}

// stripesIn are the stripes of the rows from one number to another: the rest of the cycle that is begun, whole cycles, and the
// beginning of the next.
func (p *partState) stripesIn(s *stripes, from, to plan.Nums) *plan.Stripes {
	c := p.c
	out := &plan.Stripes{Times: c.nums(plan.Absent)}
	lead, tail := make([]plan.Nums, len(s.yarns)), make([]plan.Nums, len(s.yarns))
	for i := range s.yarns {
		lead[i], tail[i] = c.nums(plan.Absent), c.nums(plan.Absent)
	}
	for z := range from {
		if from[z] == plan.Absent || to[z] == plan.Absent {
			continue
		}
		first, ok := s.at[z][from[z]]
		if last, too := s.at[z][to[z]]; !ok || !too || last-first != to[z]-from[z] {
			return nil
		}
		left, at, total := to[z]-from[z]+1, first, 0
		for i, rows := range s.rows {
			lead[i][z], tail[i][z] = 0, 0
			total += max(rows[z], 0)
		}
		step := func(n []plan.Nums) {
			n[s.index(z, at)][z]++
			at++
			left--
		}
		for left > 0 && at%total != 0 {
			step(lead)
		}
		out.Times[z] = left / total
		at += out.Times[z] * total
		left -= out.Times[z] * total
		for left > 0 {
			step(tail)
		}
	}
	for i, y := range s.yarns {
		out.Cycle = append(out.Cycle, plan.Stripe{Yarn: y, Rows: s.rows[i]})
		if !lead[i].Is(0) {
			out.Lead = append(out.Lead, plan.Stripe{Yarn: y, Rows: lead[i]})
		}
		if !tail[i].Is(0) {
			out.Tail = append(out.Tail, plan.Stripe{Yarn: y, Rows: tail[i]})
		}
	}
	return out
}
