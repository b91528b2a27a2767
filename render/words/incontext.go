package words

import (
	"slices"

	"ovillo/compile/plan"
)

// runOn puts stitches of a kind in one that the source works one instruction after the other: 3 and then 1 are 4.
func runOn(work []plan.Instr) []plan.Instr {
	var out []plan.Instr
	for _, in := range work {
		if k := len(out) - 1; k >= 0 && goesOn(&out[k], &in) {
			n := slices.Clone(out[k].N)
			for z := range n {
				if n[z] != plan.Absent {
					n[z] += in.N[z]
				}
			}
			out[k].N = n
			continue
		}
		out = append(out, in)
	}
	return out
}

// goesOn reports whether b does on just what a does, in the same sizes.
func goesOn(a, b *plan.Instr) bool {
	plain := func(in *plan.Instr) bool {
		return in.Op == plan.Work && in.Reach == plan.Next && in.Ref == nil && in.Label == "" && in.Called == nil && in.N != nil && in.Cross == plan.NoCross
	}
	return plain(a) && plain(b) && !b.AfterBegin && a.Form == b.Form && a.Over == b.Over && a.Deep == b.Deep && a.Yarn == b.Yarn &&
		slices.Equal(a.Per, b.Per) && slices.Equal(a.Chains, b.Chains) &&
		slices.EqualFunc(a.N, b.N, func(x, y int) bool { return (x == plan.Absent) == (y == plan.Absent) })
}

// inContext is an instruction as it is said among its neighbours.
func (c *context) inContext(work []plan.Instr, i int, in *plan.Instr) *plan.Instr {
	before, after := c.neighbour(work, i, -1), c.neighbour(work, i, 1)
	said := *in
	switch {
	case in.Op == plan.Work && in.Reach == plan.ToEnd && in.N != nil && after != nil && after.Over == plan.Unworked:
		// The row goes on behind its turn, so that this is not its end.
		said.Reach = plan.Next
	case before == nil && c.begins(in):
		// Behind a beginning chain that does not count, the next stitch could be taken for the second.
		said.Reach = plan.First
	case after == nil && before != nil && before.Reach == plan.ToLast && c.takesRest(before, in):
		said.Reach = plan.Last
	case in.Op == plan.SkipOver && in.Label != "" && crossed(work[i+1:], in.Label):
		// What is worked soon, in front or behind, needs no name.
		said.Called = nil
	}
	return &said
}

// begins reports whether an instruction is the first of a row that goes into a stitch, with no beginning chain that stands for
// a stitch before it.
func (c *context) begins(in *plan.Instr) bool {
	if c.worked || in.AfterBegin || in.Op != plan.Work && in.Op != plan.InOne || in.Reach != plan.Next || in.Ref != nil || in.N == nil {
		return false
	}
	n := c.num(in.N)
	return (in.Over == plan.Stitch || in.Over == plan.FoundationCh) && in.Deep == 0 && (n.one() && !n.gaps() || n.plain())
}

// neighbour is the instruction before or behind another one that works into places; nil if none does.
func (c *context) neighbour(work []plan.Instr, i, step int) *plan.Instr {
	for i += step; i >= 0 && i < len(work); i += step {
		switch work[i].Op {
		case plan.PlaceMark, plan.MoveMark, plan.RemoveMark, plan.ChangeTo:
			continue
		}
		if !c.idle(&work[i]) {
			return &work[i]
		}
	}
	return nil
}

// takesRest reports whether an instruction takes just the last places before which another one ended.
func (c *context) takesRest(before, in *plan.Instr) bool {
	if in.Op != plan.Work || in.Reach != plan.Next || in.Over != plan.Stitch && in.Over != plan.FoundationCh || in.Ref != nil || in.N == nil {
		return false
	}
	for z, n := range in.N {
		last := 1
		if before.Last != nil {
			last = before.Last[z]
		}
		if c.sizes.Has(z) && n != last {
			return false
		}
	}
	return true
}

// crossed reports whether what was skipped under a label is worked in front of or behind other stitches of the list.
func crossed(work []plan.Instr, label string) bool {
	return slices.ContainsFunc(work, func(in plan.Instr) bool {
		return in.Cross != plan.NoCross && in.Ref != nil && in.Ref.Label == label
	})
}
