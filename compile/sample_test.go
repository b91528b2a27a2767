package compile_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

// weighedPanel is a flat panel of two sizes in two yarns, the second for the upper half; with what is said of a sample of it.
const weighedPanel = `sizes "S", "M"
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
`

// weighed are the yarns of the panel, with what is said of a sample of it.
func weighed(t *testing.T, sample string) []plan.Yarn {
	return clean(t, fmt.Sprintf(weighedPanel, sample)).Yarns
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

// A sample and swatches that are far apart are said once for what was put on the scales together.
func TestSampleAgainstSwatches(t *testing.T) {
	warned := func(weight string) (out []string) {
		text := strings.Replace(fmt.Sprintf(weighedPanel, weight), "  ball 50 g, 120 m\n", "  ball 50 g, 120 m\n  swatch 20 sts by 20 rows of sc, 5 g\n", 1)
		for _, d := range found(text) {
			if d.Code == "OV718" {
				out = append(out, diag.Fill(diag.Lookup(d.Code).En.Message, d.Args, "en"))
			}
		}
		return out
	}
	// By the swatches each half of the panel weighs 100 g in size M, 80 by 100 stitches of 5 by 5 mm at 5 g for 100 cm²,
	// and its turning chains a little more.
	require.Empty(t, warned("weight 200 g"))
	require.Empty(t, warned("weight 229 g"))
	require.Equal(t, []string{"by the sample the fabric of sand and kelp in size M weighs 232 g, by the swatch 201 g"}, warned("weight 232 g"))
	require.Equal(t, []string{"by the sample the fabric of kelp in size M weighs 80 g, by the swatch 101 g"}, warned("weight sand 100 g, kelp 80 g"))
}

// Where a sample has a cord and no ball says what a length weighs, that is the reason that is given.
func TestSampleWithoutBall(t *testing.T) {
	text := strings.Replace(fmt.Sprintf(weighedPanel, "weight 200 g"), "  ball 50 g, 120 m\n", "", 1) + "finish\n  cord with kelp, length 1 m\nend\n"
	for _, y := range clean(t, text).Yarns {
		require.Nil(t, y.Amount)
		require.Equal(t, "ball", y.WhyNoAmount)
	}
}
