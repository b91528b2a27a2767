package compile_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
)

// TestChainsBeforeTheFirstStitch holds how many chains are made beyond those that are worked into. Round a chain in a spiral
// there is one too: nothing can be worked into the chain next to the hook.
func TestChainsBeforeTheFirstStitch(t *testing.T) {
	for _, c := range []struct {
		style, start, row    string
		extra, from, skipped int
	}{
		{"in spiral rounds", "chain 6, both sides", "round: sc in next 5, 3 sc in next, sc in next 4, 2 sc in first", 1, 2, 1},
		{"in joined rounds", "chain 6, both sides", "round: sc in next 5, 3 sc in next, sc in next 4, 2 sc in first", 1, 2, 1},
		{"in spiral rounds", "chain 6, join", "round: sc in each", 0, 0, 0},
		{"in spiral rounds", "ring", "round: 6 sc in ring", 0, 0, 0},
		{"in rows", "chain 6", "row: dc in each", 2, 4, 3},
	} {
		text := fmt.Sprintf("pattern p\n  terms us\nend\nsizes \"S\"\nend\npart one\n  %s\n  %s\n  %s\nend\n", c.style, c.start, c.row)
		f, list := lang.Parse(source.NewFile("p.ovillo", text))
		require.False(t, list.HasErrors(), "%s", text)
		p, list := compile.Compile(f)
		require.False(t, list.HasErrors(), "%s %v", text, list)
		row, extra := p.Parts[0].Steps[0].(*plan.Row), 0
		if e := p.Parts[0].Start.Extra; e != nil {
			extra = e[0]
		}
		require.Equal(t, []int{c.extra, c.from, c.skipped}, []int{extra, row.Begin.FromHook, row.Begin.Skipped}, "%s", text)
	}
}

// TestFirstRowOfOneSize holds that a row is printed into the chain in the size in which it is the first, and into the row before
// in the others.
func TestFirstRowOfOneSize(t *testing.T) {
	text := "pattern p\n  terms us\nend\nsizes \"S\", \"M\"\nend\npart one\n  in rows\n  chain 6 (8)\n  2 (0) rows: sc in each\n  row: dc in each\nend\n"
	f, list := lang.Parse(source.NewFile("p.ovillo", text))
	require.False(t, list.HasErrors())
	p, list := compile.Compile(f)
	require.False(t, list.HasErrors(), "%v", list)
	require.Equal(t, plan.Nums{1, 2}, p.Parts[0].Start.Extra)
	var got []string
	for _, s := range p.Parts[0].Steps {
		r := s.(*plan.Row)
		got = append(got, fmt.Sprintf("%v %v from chain %d", r.For, r.First, r.Begin.FromHook))
	}
	none := plan.Absent
	require.Equal(t, []string{
		fmt.Sprintf("[true false] %v from chain 2", plan.Nums{1, none}),
		fmt.Sprintf("[true false] %v from chain 0", plan.Nums{2, none}),
		fmt.Sprintf("[false true] %v from chain 4", plan.Nums{none, 1}),
		fmt.Sprintf("[true false] %v from chain 0", plan.Nums{3, none}),
	}, got)
}
