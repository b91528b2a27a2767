package compile

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// This file lets a beginning chain stand for the first stitch of a row that was written without it.

// begin lets a beginning chain that counts stand for the first stitch written: brackets are opened for their first pass,
// and the first instruction has one less to do.
func (pr *printer) begin(r *plan.Row) {
	if !r.Begin.Counts {
		return
	}
	if len(r.Work) > 0 && r.Work[0].Op == plan.AsMade {
		r.Work[0].AfterBegin = true
		return
	}
	left := map[int]bool{} // the sizes whose first stitch is still to be found
	for z, res := range pr.w.first {
		if res != nil {
			left[z] = true
		}
	}
	pr.beginIn(r, left, len(left))
}

// beginIn lets the beginning chain stand for the first stitch in the sizes of left, of live in all.
func (pr *printer) beginIn(r *plan.Row, left map[int]bool, live int) {
	for i := 0; i < len(r.Work) && len(left) > 0; i++ {
		in := r.Work[i]
		here := pr.firstIn(in, left)
		if len(here) == 0 {
			continue
		}
		if in.Cells != nil {
			inner := plan.Row{Work: cloneAll(in.Body)}
			pr.beginIn(&inner, left, live)
			in.Body, in.Cells, in.AfterBegin = inner.Work, lessIn(in.Cells, here), true
			r.Work[i] = in
			continue
		}
		if in.Op == plan.Repeat {
			r.Work = slices.Replace(r.Work, i, i+1, pr.opened(in, here, live)...)
			i--
			continue
		}
		rest := pr.rest(in, here)
		if len(rest) == 1 && rest[0].AfterBegin && rest[0].N.Is(0) {
			r.Work = slices.Delete(r.Work, i, i+1)
			pr.chainBehind(r, i)
			i-- // what stood behind it stands in its place
		} else {
			r.Work = slices.Replace(r.Work, i, i+1, rest...)
			i += len(rest) - 1
		}
		for z := range here {
			delete(left, z)
		}
	}
}

// firstIn are the sizes of left in which an instruction makes the first stitch.
func (pr *printer) firstIn(in plan.Instr, left map[int]bool) map[int]bool {
	switch in.Op {
	case plan.Work, plan.Decrease, plan.InOne, plan.Repeat:
	default:
		return nil
	}
	if in.Form.ID == stitch.Slip {
		return nil
	}
	here := map[int]bool{}
	for z := range left {
		if in.N == nil || in.N[z] > 0 {
			here[z] = true
		}
	}
	return here
}

// opened is a bracket that begins the row, its first pass written out before it; only in the sizes that work it.
func (pr *printer) opened(in plan.Instr, here map[int]bool, live int) []plan.Instr {
	out := cloneAll(in.Body)
	if len(here) < live {
		for i := range out {
			if out[i].N != nil {
				out[i].N = only(out[i].N, here)
			}
		}
	}
	if in.N = lessIn(in.N, here); in.N == nil || !in.N.Is(0) {
		out = append(out, in)
	}
	return out
}

// rest is what remains of an instruction whose first stitch is the beginning chain.
func (pr *printer) rest(in plan.Instr, here map[int]bool) []plan.Instr {
	switch {
	case in.Op == plan.InOne:
		return pr.inOneRest(in, here)
	case in.Per != nil && !in.Per.Is(1):
		return pr.perRest(in, here)
	}
	in.AfterBegin, in.N = true, lessIn(in.N, here)
	return []plan.Instr{in}
}

// chainBehind prints chains that follow the beginning chain at once together with it: ch 4, counts as dc and ch 1.
func (pr *printer) chainBehind(r *plan.Row, i int) {
	if i >= len(r.Work) || r.Work[i].Op != plan.Chains || r.Work[i].Label != "" {
		return
	}
	if pr.p.alongChain() && slices.Contains(pr.w.begin(), true) {
		return // along a new chain the skipped chains are the first stitch, and these are made
	}
	if n, ok := r.Work[i].N.Same(); ok {
		r.Begin.And = n
		r.Work = slices.Delete(r.Work, i, i+1)
	}
}

// firstWorked is the first instruction that makes a stitch, -1 if none does.
func firstWorked(work []plan.Instr) int {
	for i := range work {
		switch work[i].Op {
		case plan.Work, plan.Decrease, plan.InOne, plan.Repeat:
			if work[i].Form.ID != stitch.Slip {
				return i
			}
		}
	}
	return -1
}

// only keeps numbers in some sizes; in the others there is nothing to do.
func only(n plan.Nums, here map[int]bool) plan.Nums {
	out := slices.Clone(n)
	for z := range out {
		if !here[z] && out[z] != plan.Absent {
			out[z] = 0
		}
	}
	return out
}

// lessIn takes one from the numbers of some sizes.
func lessIn(n plan.Nums, here map[int]bool) plan.Nums {
	if n == nil {
		return nil
	}
	out := slices.Clone(n)
	for z := range here {
		if out[z] > 0 {
			out[z]--
		}
	}
	return out
}

func cloneAll(in []plan.Instr) []plan.Instr {
	out := slices.Clone(in)
	for i := range out {
		out[i].Body = cloneAll(out[i].Body)
	}
	return out
}

// inOneRest splits a group whose first stitch is the beginning chain: the rest of it goes into the same place, and what
// remains of a run of groups follows.
func (pr *printer) inOneRest(in plan.Instr, here map[int]bool) []plan.Instr {
	head := in
	head.Body = cloneAll(in.Body)
	head.N = pr.one(here)
	head.AfterBegin = true
	if f := firstWorked(head.Body); f >= 0 {
		first := &head.Body[f]
		if first.Per != nil && !first.Per.Is(1) {
			first.Per = less(first.Per, 1)
		} else {
			first.N = less(first.N, 1)
		}
		if first.N.Is(0) {
			head.Body = slices.Delete(head.Body, f, f+1)
		}
	}
	if in.Reach != plan.InRing {
		head.Reach = plan.Same
	}
	rest := in
	rest.N = lessIn(in.N, here)
	if rest.N.Is(0) {
		return []plan.Instr{head}
	}
	return []plan.Instr{head, rest}
}

// perRest splits 2 dc in each: one stitch in the place of the chain, then two in each of the others.
func (pr *printer) perRest(in plan.Instr, here map[int]bool) []plan.Instr {
	head := in
	head.Per, head.N, head.AfterBegin = less(in.Per, 1), pr.one(here), true
	for z := range here {
		if head.Per[z] < 1 {
			head.N[z] = 0 // one stitch went there, and that is the chain
		}
	}
	if in.Reach != plan.InRing {
		head.Reach = plan.Same
	} else {
		return []plan.Instr{head}
	}
	rest := in
	rest.N = lessIn(in.N, here)
	if rest.N.Is(0) {
		return []plan.Instr{head}
	}
	return []plan.Instr{head, rest}
}

// one is the number one in some sizes.
func (pr *printer) one(here map[int]bool) plan.Nums {
	n := pr.p.c.nums(0)
	for z := range n {
		switch {
		case here[z]:
			n[z] = 1
		case pr.w.first[z] == nil:
			n[z] = plan.Absent
		}
	}
	return n
}

// less takes k from every number.
func less(n plan.Nums, k int) plan.Nums {
	if n == nil {
		return nil
	}
	out := slices.Clone(n)
	for i := range out {
		if out[i] != plan.Absent && out[i] > 0 {
			out[i] -= k
		}
	}
	return out
}
