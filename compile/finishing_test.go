package compile_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestFinishBetweenParts holds where the steps of finishing belong: before the part that stands behind them, or at the end.
func TestFinishBetweenParts(t *testing.T) {
	part := func(name string) string {
		return "part " + name + "\n  title en \"P\" es \"P\"\n  in rows\n  chain 4\n  row: sc in each = 4\nend\n"
	}
	p := clean(t, "sizes \"S\"\nend\n"+part("one")+part("two")+"finish\n  sew one.edge to two.edge\n  block\nend\n"+part("three")+"finish\n  weave in ends\nend\n")
	var before []int
	for _, f := range p.Finish {
		before = append(before, f.Before)
	}
	require.Equal(t, []int{3, 3, 0}, before)
}
