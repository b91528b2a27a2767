package compile_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestUsualEase holds which ease is noted whatever the source states. The eases of print are not: none at all, 5 cm over a baby's
// chest of 41 cm (justknitting.co.uk), 12.5 cm over a child's of 71 cm (yarnfwd.com), 15 cm over a woman's of 94 cm.
func TestUsualEase(t *testing.T) {
	for _, c := range []struct {
		stitches int // of 16 to 10 cm
		body     string
		noted    bool
	}{
		{64, "40 cm", false}, {74, "41 cm", false}, {134, "71 cm", false}, {174, "94 cm", false},
		{64, "50 cm", false}, {64, "50.1 cm", true}, {64, "25 cm", false}, {64, "24.9 cm", true}, {64, "80 cm", true},
	} {
		list := codesOf(t, fmt.Sprintf(`pattern p
  terms us
end
sizes "one"
  fit chest %s
end
gauge 10 cm
  sc 16 sts, 18 rows
end
part tube
  in joined rounds
  chain %d, join
  round: sc in each
end
measure
  chest = around tube fits fit.chest ease -50 to 50 cm
end
`, c.body, c.stitches))
		require.Equal(t, c.noted, list["OV788"], "%d stitches on %s: %v", c.stitches, c.body, list)
	}
}
