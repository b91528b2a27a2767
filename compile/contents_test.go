package compile

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ovillo/compile/plan"
)

// yarnFor is a yarn of some fibres, of which the sizes take so many grams each; none: no amount is known.
func yarnFor(fibres []plan.Share, grams ...int64) plan.Yarn {
	y := plan.Yarn{Fibre: fibres}
	for _, g := range grams {
		y.Amount = append(y.Amount, plan.YarnAmount{Milligrams: 1000 * g})
	}
	return y
}

func of(parts ...any) []plan.Share {
	var out []plan.Share
	for i := 0; i < len(parts); i += 2 {
		out = append(out, plan.Share{Fibre: parts[i].(string), Percent: parts[i+1].(int)})
	}
	return out
}

// A label names all fibres with their percentage by weight in descending order: Regulation (EU) No 1007/2011, by the summary of
// EUR-Lex (article 9, as far as remembered). The sums were made by hand.
func TestContents(t *testing.T) {
	cotton, wool, blend := of("cotton", 100), of("wool", 100), of("cotton", 40, "wool", 60)
	for _, c := range []struct {
		name     string
		yarns    []plan.Yarn
		shares   [][]plan.Share
		weighted []bool
	}{
		{"one yarn, in falling order", []plan.Yarn{yarnFor(blend)}, [][]plan.Share{of("wool", 60, "cotton", 40)}, []bool{false}},
		{"two alike, written otherwise", []plan.Yarn{yarnFor(blend), yarnFor(of("wool", 60, "cotton", 40))}, [][]plan.Share{of("wool", 60, "cotton", 40)}, []bool{false}},
		// 300 g of cotton and 100 g of wool; 200 g of each: the order of the yarns.
		{"by weight, size by size", []plan.Yarn{yarnFor(cotton, 300, 200), yarnFor(wool, 100, 200)},
			[][]plan.Share{of("cotton", 75, "wool", 25), of("cotton", 50, "wool", 50)}, []bool{true, true}},
		// 120 g, of them 48 g of cotton and 72 g of wool; with 80 g of cotton: 128 and 72 of 200 g.
		{"a blend and a yarn of one fibre", []plan.Yarn{yarnFor(blend, 120), yarnFor(cotton, 80)}, [][]plan.Share{of("cotton", 64, "wool", 36)}, []bool{true}},
		{"a size that takes one of them", []plan.Yarn{yarnFor(cotton, 300, 200), yarnFor(wool, 100, 0)},
			[][]plan.Share{of("cotton", 75, "wool", 25), of("cotton", 100)}, []bool{true, false}},
		{"thirds make a hundred", []plan.Yarn{yarnFor(of("silk", 100), 10), yarnFor(cotton, 10), yarnFor(wool, 10)},
			[][]plan.Share{of("silk", 34, "cotton", 33, "wool", 33)}, []bool{true}},
		// 997, 2 and 1 of 1000 g: 99.7, 0.2 and 0.1 %.
		{"traces are named", []plan.Yarn{yarnFor(cotton, 997), yarnFor(wool, 2), yarnFor(of("silk", 100), 1)}, [][]plan.Share{of("cotton", 98, "wool", 1, "silk", 1)}, []bool{true}},
		{"two words for one fibre", []plan.Yarn{yarnFor(of("flax", 50, "linen", 10, "cotton", 40))}, [][]plan.Share{of("flax", 60, "cotton", 40)}, []bool{false}},
	} {
		got := contentsOf(c.yarns, len(c.shares))
		require.NotNil(t, got, c.name)
		require.Equal(t, c.shares, got.Shares, c.name)
		require.Equal(t, c.weighted, got.Weighted, c.name)
	}
	for name, yarns := range map[string][]plan.Yarn{
		"no yarn": nil, "a yarn without fibres": {yarnFor(nil, 10)}, "one of two without": {yarnFor(cotton, 10), yarnFor(nil, 10)},
		"not a hundred": {yarnFor(of("cotton", 60))}, "unlike, amounts not known": {yarnFor(cotton), yarnFor(wool)},
	} {
		require.Nil(t, contentsOf(yarns, 1), name)
	}
}

// Whatever is weighed, a label names every fibre, adds up to a hundred, falls, and is off by less than one per cent, but for what
// the largest share gives to traces.
func TestContentsMakeAHundred(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var sum fibreSum
		weights := map[string]int64{}
		for _, name := range rapid.SliceOfNDistinct(rapid.SampledFrom([]string{"cotton", "wool", "silk", "acrylic", "nettle", "mohair", "jute"}), 1, 7, rapid.ID[string]).Draw(t, "fibres") {
			weights[name] = rapid.Int64Range(1, 1_000_000).Draw(t, name)
			sum.add(name, weights[name])
		}
		shares, all, traces := sum.hundred(), 0, 0
		exact := func(fibre string) float64 { return float64(weights[fibre]) * 100 / float64(sum.total()) }
		for fibre := range weights {
			if exact(fibre) < 1 {
				traces++
			}
		}
		require.Len(t, shares, len(weights))
		for i, s := range shares {
			require.Positive(t, s.Percent)
			require.LessOrEqual(t, s.Percent, shares[max(i-1, 0)].Percent)
			require.InDelta(t, exact(s.Fibre), s.Percent, 1+float64(traces))
			all += s.Percent
		}
		require.Equal(t, 100, all)
	})
}
