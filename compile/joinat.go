package compile

import (
	"slices"

	"ovillo/compile/plan"
)

// joinedAt finds out in which space a new yarn is joined: where the beginning chain that stands for the first stitch goes
// into one. Slip stitches that would have carried the old yarn there are not worked.
func joinedAt(r *plan.Row) {
	if !r.NewYarn || !r.Begin.Counts {
		return
	}
	at := firstSpace(r.Work)
	if at == nil {
		return
	}
	r.JoinAt = at
	for len(r.Work) > 0 && r.Work[0].Op == plan.SlipOver {
		r.Work = r.Work[1:]
	}
}

// firstSpace is the space into which the first stitch of a row goes; nil if it goes anywhere else.
func firstSpace(work []plan.Instr) *plan.Ref {
	i := firstWorked(work)
	if i < 0 || work[i].N == nil || slices.ContainsFunc(work[i].N, func(n int) bool { return n == 0 }) {
		return nil
	}
	switch in := work[i]; {
	case in.Op == plan.Repeat:
		return firstSpace(in.Body)
	case in.Op == plan.Decrease || in.Reach != plan.Next:
		return nil
	case in.Ref != nil && in.Ref.Kind == plan.RefSpace:
		return in.Ref
	case in.Ref == nil && in.Over == plan.Space:
		return &plan.Ref{Kind: plan.RefSpace, Own: true, Pick: plan.Whole, Chains: in.Chains}
	}
	return nil
}
