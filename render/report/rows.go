package report

import (
	"slices"

	"ovillo/compile/plan"
)

// workedRow is a row as it is printed, with its part.
type workedRow struct {
	part *plan.Part
	*plan.Row
}

// rowsOf lists the printed rows of a pattern, those of blocks and of joined motifs among them.
func rowsOf(p *plan.Pattern) []workedRow {
	var list []workedRow
	for _, part := range p.Parts {
		for _, step := range part.Steps {
			switch st := step.(type) {
			case *plan.Row:
				list = append(list, workedRow{part, st})
			case *plan.Block:
				for _, r := range st.Rows {
					list = append(list, workedRow{part, r})
				}
			case *plan.JoinRound:
				if st.Row != nil {
					list = append(list, workedRow{part, st.Row})
				}
			}
		}
	}
	return list
}

// eachInstr calls f for every instruction of every printed row, those inside repeats and groups as well.
func (s *subject) eachInstr(f func(r workedRow, in *plan.Instr)) {
	for _, r := range s.rows {
		var all func(list []plan.Instr)
		all = func(list []plan.Instr) {
			for i := range list {
				f(r, &list[i])
				all(list[i].Body)
			}
		}
		all(r.Work)
	}
}

// instructions counts the instructions that f holds for.
func (s *subject) instructions(f func(in *plan.Instr) bool) int {
	n := 0
	s.eachInstr(func(_ workedRow, in *plan.Instr) {
		if f(in) {
			n++
		}
	})
	return n
}

// rowsWith counts the printed rows that f holds for.
func (s *subject) rowsWith(f func(r workedRow) bool) int {
	n := 0
	for _, r := range s.rows {
		if f(r) {
			n++
		}
	}
	return n
}

// eachFact calls f for every row of every size as it was worked.
func (s *subject) eachFact(f func(part *plan.Part, z, i int)) {
	for _, part := range s.p.Parts {
		for z := range part.Worked {
			for i := range part.Worked[z] {
				f(part, z, i)
			}
		}
	}
}

// worked counts the rows and the rounds of all sizes.
func (s *subject) worked() (rows, rounds int) {
	s.eachFact(func(part *plan.Part, z, i int) {
		if part.Worked[z][i].Closed {
			rounds++
		} else {
			rows++
		}
	})
	return rows, rounds
}

// workedAmounts are the rows and rounds of all sizes.
func (s *subject) workedAmounts() []amount {
	rows, rounds := s.worked()
	return rowAmounts(rows, rounds, amount{s.z, nSizes})
}

// rowAmounts are numbers of rows and of rounds, the larger first, and something else.
func rowAmounts(rows, rounds int, more amount) []amount {
	if rounds > rows {
		return []amount{{rounds, nRounds}, {rows, nRows}, more}
	}
	return []amount{{rows, nRows}, {rounds, nRounds}, more}
}

// ungauged counts the rows of all sizes whose size is not known since a stitch of theirs has no gauge, and names the stitches
// they are made of.
func (s *subject) ungauged() (n int, stitches []string) {
	s.eachFact(func(part *plan.Part, z, i int) {
		f := part.Worked[z][i]
		if f.Width != plan.NoLength && f.Height != plan.NoLength {
			return
		}
		n++
		for form := range f.ByForm.All() {
			stitches = append(stitches, string(form.ID))
		}
	})
	slices.Sort(stitches)
	return n, slices.Compact(stitches)
}

// partIndex is the place of a part in the pattern.
func (s *subject) partIndex(part *plan.Part) int { return slices.Index(s.p.Parts, part) }

// numbers writes the number of a row, one for all sizes or one a size.
func (s *subject) numbers(n plan.Nums) string { return s.in.Words.Nums(n).String() }
