package compile_test

import (
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// made adds up the stitches that printed instructions make in one size, as a maker who reads them would.
func made(work []plan.Instr, z int) int {
	sum := 0
	for _, in := range work {
		n, k := at(in.N, z, 1), at(in.Per, z, 1)
		switch in.Op {
		case plan.Work:
			if in.Form.ID != stitch.Slip {
				sts, _ := in.Form.Makes()
				sum += n * k * sts
			}
		case plan.Decrease, plan.Lengthen:
			sum += n
		case plan.CrossOver:
			sum += n * in.Form.Of
		case plan.Repeat, plan.InOne:
			sum += n * made(in.Body, z)
		case plan.SpreadOut:
			s := in.Spread
			each := 1
			if s.Increase {
				each = 2
			}
			sum += at(s.Long, z, 0)*(at(s.LongPlain, z, 0)+each) + at(s.Short, z, 0)*(at(s.ShortPlain, z, 0)+each)
			sum += at(s.Before, z, 0) + at(s.After, z, 0)
		}
	}
	return sum
}

func at(n plan.Nums, z, def int) int {
	if n == nil {
		return def
	}
	return max(n[z], 0) // what a size does not work is Absent
}

// unnumbered reports whether an instruction prints without a number, as it must where later passes of a repeat work it over
// another one.
func unnumbered(work []plan.Instr) bool {
	for _, in := range work {
		far := in.Reach == plan.ToEnd || in.Reach == plan.ToMark || in.Reach == plan.ToLast || in.Reach == plan.ToLabel || in.Reach == plan.ToSpace
		if far && in.N == nil || unnumbered(in.Body) {
			return true
		}
	}
	return false
}

// What prints is what was counted: the stitches of the printed instructions, with a beginning chain that counts, are those
// of the row.
func TestPrintedIsCounted(t *testing.T) {
	rows := 0
	for _, path := range append(sources(t, casesAt+"/*.ovillo"), sources(t, "../examples/*.ovillo")...) {
		p := checked(t, path)
		for _, part := range p.Parts {
			for _, r := range part.Rows() {
				if unnumbered(r.Work) {
					continue
				}
				for z := range p.Sizes {
					if r.First[z] == plan.Absent || at(r.Times, z, 1) == 0 {
						continue
					}
					got := made(r.Work, z)
					if r.Begin.Counts {
						got++
					}
					want := factOf(part, z, r.First[z])
					if want == nil || got != want.Stitches {
						t.Errorf("%s: %s row %d, size %s prints %d stitches, counted %v", path, part.Name, r.First[z], p.Sizes[z].Name, got, want)
					}
					rows++
				}
			}
		}
	}
	if rows < 300 {
		t.Errorf("only %d rows were compared", rows)
	}
}

func factOf(part *plan.Part, z, number int) *plan.RowFact {
	for i := range part.Worked[z] {
		if part.Worked[z][i].Number == number {
			return &part.Worked[z][i]
		}
	}
	return nil
}
