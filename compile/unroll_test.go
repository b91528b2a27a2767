package compile_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
)

// Written out, a part says the rows that were worked: each once in every size, in their order, with the counts that were
// made, the side that shows and the yarn it is begun with.
func TestUnrolled(t *testing.T) {
	rows := 0
	for name, text := range cleanSources(t) {
		t.Run(name, func(t *testing.T) {
			p, untouched := comesOut(t, text), comesOut(t, text)
			long := p.Unrolled()
			require.Equal(t, untouched, p, "the pattern itself was changed")
			for i, part := range long.Parts {
				for z := range p.Sizes {
					require.Equal(t, workedNumbers(p.Parts[i], z), printedNumbers(t, part, z), "%s, size %s", part.Name, p.Sizes[z].Name)
					rows += countsHold(t, p.Parts[i], part, z)
					require.Equal(t, tallsOf(p.Parts[i], z), tallsOf(part, z), "%s, size %s", part.Name, p.Sizes[z].Name)
				}
			}
		})
	}
	if rows < 3000 {
		t.Errorf("only %d rows were compared", rows)
	}
}

// workedNumbers are the rows that were worked, without one that the foundation makes.
func workedNumbers(part *plan.Part, z int) []int {
	var out []int
	for i, f := range part.Worked[z] {
		if k := part.Start.Kind; i == 0 && (k == plan.StartFoundation || k == plan.StartFoundationJoined) {
			continue
		}
		out = append(out, f.Number)
	}
	return out
}

func printedNumbers(t *testing.T, part *plan.Part, z int) []int {
	var out []int
	for _, step := range part.Steps {
		if _, ok := step.(*plan.Block); ok {
			t.Errorf("%s: a block is left", part.Name)
		}
		r, ok := step.(*plan.Row)
		if !ok || !r.For.Has(z) || r.First[z] == plan.Absent {
			continue
		}
		if r.First[z] != r.Last[z] || r.Times[z] != 1 {
			t.Errorf("%s: a run is left: %d to %d", part.Name, r.First[z], r.Last[z])
		}
		out = append(out, r.First[z])
	}
	return out
}

// countsHold compares the counts of every row with the fabric, and those behind the last row of a run or block with what is
// printed behind it in the pattern as it was. It returns how many rows it compared.
func countsHold(t *testing.T, was, is *plan.Part, z int) int {
	rows := map[int]*plan.Row{}
	for _, step := range is.Steps {
		r, ok := step.(*plan.Row)
		if !ok || !r.For.Has(z) || r.First[z] == plan.Absent {
			continue
		}
		rows[r.First[z]] = r
		f := factOf(was, z, r.First[z])
		require.NotNil(t, f)
		if r.Sided && r.Wrong != f.Wrong {
			t.Errorf("%s, row %d: the side is not that of the fabric", is.Name, r.First[z])
		}
		sts, spaces := 0, 0
		for _, c := range r.Counts {
			switch c.Kind {
			case plan.CountSts, plan.CountForm:
				sts += c.N[z]
			case plan.CountSpaces:
				spaces += c.N[z]
			}
		}
		if len(r.Counts) > 0 && (sts != f.Stitches || spaces != f.Spaces) {
			t.Errorf("%s, row %d: %d sts and %d sps are printed, %d and %d were made", is.Name, r.First[z], sts, spaces, f.Stitches, f.Spaces)
		}
	}
	same := func(last plan.Nums, counts []plan.Count) {
		if last[z] == plan.Absent || rows[last[z]] == nil {
			return
		}
		total := func(list []plan.Count) map[plan.CountKind]int {
			out := map[plan.CountKind]int{}
			for _, c := range list {
				if kind := c.Kind; c.N[z] != plan.Absent {
					if kind == plan.CountForm {
						kind = plan.CountSts // another size may have stitches of several kinds there
					}
					out[kind] += c.N[z]
				}
			}
			return out
		}
		require.Equal(t, total(counts), total(rows[last[z]].Counts), "%s, row %d", is.Name, last[z])
	}
	for _, step := range was.Steps {
		switch s := step.(type) {
		case *plan.Row:
			if s.For.Has(z) {
				same(s.Last, s.Counts)
			}
		case *plan.Block:
			if s.For.Has(z) && s.Times[z] > 0 {
				same(s.Last, s.Counts)
			}
		}
	}
	return len(rows)
}

// tallsOf are the heights that a size is told, with the last row they are told behind.
func tallsOf(part *plan.Part, z int) map[int]plan.Length {
	out := map[int]plan.Length{}
	for _, step := range part.Steps {
		switch s := step.(type) {
		case *plan.Row:
			if s.Tall != nil && s.For.Has(z) && s.Last[z] != plan.Absent && s.Tall[z] != plan.NoLength {
				out[s.Last[z]] = s.Tall[z]
			}
		case *plan.Block:
			if s.Tall != nil && s.For.Has(z) && s.Last[z] != plan.Absent && s.Times[z] > 0 && s.Tall[z] != plan.NoLength {
				out[s.Last[z]] = s.Tall[z]
			}
		}
	}
	return out
}

// Yarns of stripes, markers that are taken out and heights stand with the row they are of, also where sizes end apart.
func TestUnrolledTellsEachRowItsOwn(t *testing.T) {
	row := &plan.Row{First: plan.Nums{3, 3}, Last: plan.Nums{5, 6}, Times: plan.Nums{3, 4}, Yarn: 0, Drop: []int{0}, NewYarn: true,
		Stripes: &plan.Stripes{Lead: []plan.Stripe{{Yarn: 1, Rows: plan.Nums{1, 1}}}, Times: plan.Nums{1, 1},
			Cycle: []plan.Stripe{{Yarn: 0, Rows: plan.Nums{2, 2}}}, Tail: []plan.Stripe{{Yarn: 1, Rows: plan.Nums{plan.Absent, 1}}}},
		Tall: plan.Lengths{100, 120}}
	p := &plan.Pattern{Sizes: make([]plan.Size, 2), Parts: []*plan.Part{{Markers: []plan.Marker{{Number: 1}}, Steps: []plan.Step{row}}}}
	type told struct {
		first   plan.Nums
		yarn    int
		changes bool
		joins   bool
		drop    []int
		tall    plan.Lengths
	}
	var got []told
	for _, s := range p.Unrolled().Parts[0].Steps {
		r := s.(*plan.Row)
		got = append(got, told{r.First, r.Yarn, r.ChangeYarn, r.NewYarn, r.Drop, r.Tall})
	}
	none := plan.Absent
	require.Equal(t, []told{
		{plan.Nums{3, 3}, 1, false, true, nil, nil},
		{plan.Nums{4, 4}, 0, true, false, nil, nil},
		{plan.Nums{5, none}, 0, false, false, []int{0}, plan.Lengths{100, plan.NoLength}},
		{plan.Nums{none, 5}, 0, false, false, nil, nil},
		{plan.Nums{none, 6}, 1, true, false, []int{0}, plan.Lengths{plan.NoLength, 120}},
	}, got)
}
