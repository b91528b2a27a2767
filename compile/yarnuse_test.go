package compile_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// panelOf is a flat panel of four sizes, 180 stitches of 2.5 mm across: it has the areas of the worked construction of yarn
// amounts, 6120 (6840, 7560, 8370) cm². Without a chain nothing else is in it.
const panelOf = `pattern panel
  terms us%s
end
sizes "S", "M", "L", "XL"
end
gauge 10 cm
  sc 20 sts, 20 rows
end
yarn sand
  name en "sand" es "arena"
  ball 50 g, 120 m
end
sample "M"
  weight 380 g
end
part panel
  title en "P" es "P"
  begin sc none
  in rows
  ring
  row: 180 sc in ring
  135 (151, 167, 185) rows: sc in each = 180
  fasten off
end
%s`

// The worked construction of yarn amounts as a whole source: a sample of size M that weighs 380 g, its figures worked out apart.
// Rounded before the allowance, M would come to 8 balls and 4 balls less would be bought in all.
func TestYarnOfAWholePattern(t *testing.T) {
	y := clean(t, fmt.Sprintf(panelOf, "", "")).Yarns[0]
	require.True(t, y.BySample)
	var grams, allowance []float64
	var balls, metres []int
	for _, a := range y.Amount {
		grams = append(grams, float64(a.Of.Fabric)/1000)
		allowance = append(allowance, float64(a.Milligrams)/1000)
		balls = append(balls, a.Balls)
		metres = append(metres, int(a.Length/(1000*plan.Millimetre)))
	}
	require.InDeltaSlice(t, []float64{340, 380, 420, 465}, grams, 0.001)
	require.InDeltaSlice(t, []float64{374, 418, 462, 511.5}, allowance, 0.001)
	require.Equal(t, []int{8, 9, 10, 11}, balls)
	require.Equal(t, []int{900, 1005, 1110, 1230}, metres)
}

// What is used by length is in the weight of the sample and in every size; another allowance is added once to all of it.
func TestYarnByParts(t *testing.T) {
	p := clean(t, fmt.Sprintf(panelOf, "\n  allowance 5 %", `finish
  pompom with sand, 7 cm, 120 wraps
  cord with sand, length 1 m
  sew right edge of panel to left edge of panel
end
`))
	require.Equal(t, 50, p.Allowance)
	for z, a := range p.Yarns[0].Amount {
		require.EqualValues(t, 7167, a.Of.Pompoms) // 17.2 m at 2.4 m a gram
		require.EqualValues(t, 4167, a.Of.Cords)   // ten times its length
		seam := []float64{68, 76, 84, 93}[z]       // centimetres
		require.InDelta(t, seam*3/100/2.4*1000, float64(a.Of.Seams), 1, "three times its length")
		sum := a.Of.Fabric + a.Of.Pompoms + a.Of.Cords + a.Of.Seams
		require.InDelta(t, float64(sum)/20, float64(a.Of.Allowance), 1)
		require.InDelta(t, float64(sum+a.Of.Allowance), float64(a.Milligrams), 2)
		if z == 1 {
			require.InDelta(t, 380_000, float64(sum), 2, "the sample weighs what it takes")
		}
	}
}

// A swatch of a stitch pattern is as heavy as the rows of the pattern that cover its area, whatever their stitches are, and may be
// counted in repeats: three of 6 and one stitch more are 19.
func TestSwatchOfStitchPattern(t *testing.T) {
	grams := func(swatch string) float64 {
		p := clean(t, fmt.Sprintf(`sizes "one"
end
stitch pattern fans
  multiple of 6 plus 1
  row 1: sc in next, [skip 2, 5 dc in next, skip 2, sc in next] across
  row 2, begin with ch 3 as dc: 3 dc in next, skip 2, sc in next, skip 2,
         [5 dc in next, skip 2, sc in next, skip 2] to last, 3 dc in last
end
gauge 10 cm
  sc 20 sts, 22 rows
  fans 19 sts, 10 rows
end
yarn sand
  name en "sand" es "arena"
  ball 50 g, 120 m
  swatch %s
end
part piece
  title en "P" es "P"
  yarn sand
  in rows
  ring
  row: 61 sc in ring
  20 rows of fans
end
`, swatch))
		return float64(p.Yarns[0].Amount[0].Of.Fabric) / 1000
	}
	// The fans are 61 stitches at 19 to 10 cm wide and 20 cm high: 61/19 × 2 = 6.42 swatches of 19 by 10. The plain row is heavier
	// or lighter beside them as its stitches say.
	bySts, byRepeats := grams("19 sts by 10 rows of fans, 5 g"), grams("3 repeats by 10 rows of fans, 5 g")
	require.InDelta(t, bySts, byRepeats, 0.001)
	plain := 61 * 10.0 / 20 * 10 / 22 / 100 // of the swatch, as far as the area goes
	require.InDelta(t, 5*(61.0/19*2+plain), bySts, 5*plain/2)
}

// Factors of the table against the measurements of one maker (windchilde.com/bluedepth, Crochet Yarn Estimating), in inches of
// yarn: for an inch of one row 10.6, 15.7 and 20.4 in single, half double and double crochet; for a square inch of fabric 31.42,
// 32.08 and 31.6; for an inch of chain 4.8 to 5.1; for an inch of foundation single crochet 16.
func TestFactorsAgainstMeasurements(t *testing.T) {
	const sc, scArea = 10.6, 31.42
	of := func(id stitch.ID) stitch.Kind { k, _ := stitch.Of(id); return k }
	for id, want := range map[stitch.ID]float64{stitch.SC: sc, stitch.HDC: 15.7, stitch.DC: 20.4} {
		require.InEpsilon(t, want, of(id).Yarn*sc, 0.01, string(id))
	}
	for id, want := range map[stitch.ID]float64{stitch.SC: scArea, stitch.HDC: 32.08, stitch.DC: 31.6} {
		require.InEpsilon(t, want, of(id).Yarn/of(id).Height*scArea, 0.01, string(id))
	}
	chain := of(stitch.Chain).Yarn * sc
	require.True(t, chain >= 4.8 && chain <= 5.1, "%g inches", chain)
	require.InEpsilon(t, 16, chain+sc, 0.05, "a foundation stitch is a stitch and the chain it stands on")
}

// Chains that a piece starts with, chains that a row begins with and that do not count, and foundation stitches take yarn.
func TestYarnOfChains(t *testing.T) {
	grams := func(lines string) float64 {
		p := clean(t, strings.Replace(fmt.Sprintf(panelOf, "", ""), "  begin sc none\n  in rows\n  ring\n  row: 180 sc in ring\n  135 (151, 167, 185) rows: sc in each = 180\n", lines, 1))
		a := p.Yarns[0].Amount
		return float64(a[3].Of.Fabric) / float64(a[1].Of.Fabric)
	}
	plain := "  in rows\n  begin sc none\n"
	// Twice and once 100 stitches of yarn, and a chain of 100 with 0.46 of a stitch each.
	require.InDelta(t, 246.0/146, grams(plain+"  chain 100\n  1 (1, 2, 2) rows: sc in each = 100\n"), 1e-4)
	// A foundation row of single crochet is its stitches and as many chains.
	require.InDelta(t, 246.0/146, grams(plain+"  foundation sc 100\n  0 (0, 1, 1) rows: sc in each = 100\n"), 1e-4)
	// A chain at the beginning of every row.
	require.InDelta(t, (10*2+4.6+2*0.46)/(10+4.6+0.46), grams("  in rows\n  chain 10\n  1 (1, 2, 2) rows: sc in each = 10\n"), 1e-4)
}
