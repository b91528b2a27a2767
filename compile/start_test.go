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
		row := p.Parts[0].Steps[0].(*plan.Row)
		require.Equal(t, []int{c.extra, c.from, c.skipped}, []int{p.Parts[0].Start.Extra, row.Begin.FromHook, row.Begin.Skipped}, "%s", text)
	}
}
