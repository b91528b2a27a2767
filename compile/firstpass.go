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
	r.Work = pr.unroll(r.Work)
	i := firstWorked(r.Work)
	if i < 0 {
		return
	}
	in := &r.Work[i]
	switch {
	case in.Op == plan.InOne:
		r.Work = append(r.Work[:i:i], append(pr.inOneRest(*in), r.Work[i+1:]...)...)
	case in.Per != nil && !in.Per.Is(1):
		r.Work = append(r.Work[:i:i], append(pr.perRest(*in), r.Work[i+1:]...)...)
	default:
		in.AfterBegin = true
		in.N = less(in.N, 1)
	}
	if i = firstWorked(r.Work); i >= 0 && r.Work[i].AfterBegin && r.Work[i].N.Is(0) {
		r.Work = slices.Delete(r.Work, i, i+1)
		if i < len(r.Work) && r.Work[i].Op == plan.Chains {
			if n, ok := r.Work[i].N.Same(); ok && r.Work[i].Label == "" {
				r.Begin.And = n
				r.Work = slices.Delete(r.Work, i, i+1)
			}
		}
	}
}

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

// unroll opens the first pass of a bracket that begins the row.
func (pr *printer) unroll(work []plan.Instr) []plan.Instr {
	i := firstWorked(work)
	if i < 0 || work[i].Op != plan.Repeat {
		return work
	}
	in := work[i]
	out := slices.Clone(work[:i])
	out = append(out, cloneAll(in.Body)...)
	in.N = less(in.N, 1)
	if in.N == nil || !in.N.Is(0) {
		out = append(out, in)
	}
	return pr.unroll(append(out, work[i+1:]...))
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
func (pr *printer) inOneRest(in plan.Instr) []plan.Instr {
	head := in
	head.Body = cloneAll(in.Body)
	head.N = pr.p.c.nums(1)
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
	rest.N = less(in.N, 1)
	if rest.N.Is(0) {
		return []plan.Instr{head}
	}
	return []plan.Instr{head, rest}
}

// perRest splits 2 dc in each: one stitch in the place of the chain, then two in each of the others.
func (pr *printer) perRest(in plan.Instr) []plan.Instr {
	head := in
	head.Per, head.N, head.AfterBegin = less(in.Per, 1), pr.p.c.nums(1), true
	if in.Reach != plan.InRing {
		head.Reach = plan.Same
	} else {
		return []plan.Instr{head}
	}
	rest := in
	rest.N = less(in.N, 1)
	if rest.N.Is(0) {
		return []plan.Instr{head}
	}
	return []plan.Instr{head, rest}
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
