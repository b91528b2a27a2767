package compile_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
)

// Stitches that share a head or a foot take the yarn of as many; a shell that of its stitches, a picot that of its chains.
func TestYarnOfGroups(t *testing.T) {
	amount := func(rows string) float64 {
		p := clean(t, fmt.Sprintf(`sizes "one"
end
gauge 10 cm
  sc 20 sts, 20 rows
end
yarn sand
  name   en "sand" es "arena"
  ball   50 g, 120 m
  swatch 20 sts by 20 rows of sc, 10 g
end
part piece
  title en "P" es "P"
  yarn sand
  in rows
  begin sc none
  chain 61
  repeat 50 times
%s
  end
end
`, rows))
		return float64(p.Yarns[0].Amount[0].Milligrams)
	}
	plain := amount("  2 rows: sc in each")
	for _, k := range []struct {
		row string
		of  float64 // the yarn of the row beside a plain one
	}{
		{"sc3cl in each", 3},
		{"sc5pop in each", 5},
		{"sc in next, [skip 1, sc4shell in next, skip 2] 15 times", 1},
		{"sc in next, [sc2tog, 2 sc in next] 20 times", 81.0 / 61},
		{"sc in next, [sc in next 4, picot] 15 times", (61 + 15*4*0.46) / 61},
	} {
		got := amount("  row: " + k.row + "\n  row: sc in each")
		require.InDelta(t, (1+k.of)/2, got/plain, 0.02, k.row)
	}
}
