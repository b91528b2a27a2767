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

// TestPlacesCountedOff: a part that starts within the last row of another one says how many places are counted off first, in the direction in
// which it is worked. Six rows end with the wrong side facing and seven with the right side; a part always begins with the right side
// facing, so that after seven the row is met again from its beginning, and the ten stitches behind the first four are met behind four.
func TestPlacesCountedOff(t *testing.T) {
	for _, c := range []struct {
		plain int
		parts string
		want  plan.Nums
	}{
		{6, "a", nil},             // the last row: a shows the right side and ends at the left
		{6, "b", plan.Nums{4, 6}}, // its first four or six stitches lie before it
		{6, "c", plan.Nums{14, 18}},
		{5, "c", nil}, // the last row shows the wrong side: the right side begins where it ended
		{5, "b", plan.Nums{3, 3}},
		{5, "a", plan.Nums{13, 15}},
	} {
		text := fmt.Sprintf(`pattern p
  terms us
end
sizes "S", "L"
end
part body
  in rows
  chain 17 (21)
  %d rows: sc in each
  row: sc in next 4 (6) as a, sc in next 10 (12) as b, sc in each as c
  fasten off
end
part other
  in rows
  from body.%s
  row: sc in each
end
`, c.plain, c.parts)
		tree, said := lang.Parse(source.NewFile("p.ovillo", text))
		require.False(t, said.HasErrors())
		p, _ := compile.Compile(tree)
		require.Equal(t, c.want, p.Parts[1].Start.Skip, "%d rows, %s", c.plain, c.parts)
	}
}
