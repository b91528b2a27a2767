package plan

import "testing"

// A part with as many rows as are written out is written out; one with a row more stays as it is, be they in a run, one by one or in a block.
func TestUnrolledAtTheBound(t *testing.T) {
	row := func(first, times int) *Row {
		return &Row{First: Nums{first}, Last: Nums{first + times - 1}, Times: Nums{times}, Yarn: -1}
	}
	for what, steps := range map[string]func(n int) []Step{
		"a run":              func(n int) []Step { return []Step{row(1, n)} },
		"a row behind a run": func(n int) []Step { return []Step{row(1, n-1), row(n, 1)} },
		"a block": func(n int) []Step {
			return []Step{&Block{Rows: []*Row{row(1, 1)}, Times: Nums{n}, First: Nums{1}, Last: Nums{n}}}
		},
	} {
		for over := range 2 {
			n := maxUnrolled + over
			before := steps(n)
			p := &Pattern{Sizes: make([]Size, 1), Parts: []*Part{{Steps: before}}}
			after := p.Unrolled().Parts[0].Steps
			if over == 0 && len(after) != n || over == 1 && (len(after) != len(before) || after[0] != before[0]) {
				t.Errorf("%s of %d rows has %d steps written out", what, n, len(after))
			}
		}
	}
}
