package compile_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
)

// weighed is a flat panel of two sizes in two yarns, the second for the upper half; sample is what is said of a sample of it.
func weighed(t *testing.T, sample string) []plan.Yarn {
	p := clean(t, fmt.Sprintf(`sizes "S", "M"
end
gauge 10 cm
  sc 20 sts, 20 rows
end
yarn sand
  name en "sand" es "arena"
  ball 50 g, 120 m
end
yarn kelp like sand
  name en "kelp" es "alga"
end
sample "M"
  %s
end
part panel
  title en "P" es "P"
  yarn sand
  in rows
  ring
  row: 40 (80) sc in ring
  99 rows: sc in each
  100 rows, with kelp: sc in each
  fasten off
end
`, sample))
	return p.Yarns
}

// A sample that was weighed gives the yarn of every size by its fabric: each yarn by its own weight, or all by one, shared out by
// the fabric of each.
func TestWeighedSample(t *testing.T) {
	grams := func(ys []plan.Yarn) (out []int64) {
		for _, y := range ys {
			for _, a := range y.Amount {
				out = append(out, a.Milligrams/1000)
			}
		}
		return out
	}
	require.Equal(t, []int64{110, 220, 55, 110}, grams(weighed(t, "weight sand 200 g, kelp 100 g")))
	require.Equal(t, []int64{82, 165, 82, 165}, grams(weighed(t, "weight 300 g")))
	for _, y := range weighed(t, "weight 300 g") {
		require.True(t, y.BySample)
	}
}
