package compile

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// At any rate every row end is met once, and the stitches miss the rate by less than one.
func TestSpreadAtARate(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ends := rapid.IntRange(1, 300).Draw(t, "ends")
		a, b := rapid.IntRange(1, 30).Draw(t, "stitches"), rapid.IntRange(1, 12).Draw(t, "rows")
		counts, total := countsOf(spreadAt(ends, a, b))
		require.Len(t, counts, ends)
		off := total*b - ends*a
		require.LessOrEqual(t, max(off, -off), b, "more than one stitch off")
		alike(t, counts)
	})
}

// So many stitches over so many row ends: neither is lost, and no row end gets two more than another.
func TestSpreadOverRowEnds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ends, want := rapid.IntRange(1, 300).Draw(t, "ends"), rapid.IntRange(1, 900).Draw(t, "stitches")
		counts, total := countsOf(spreadOver(ends, want))
		require.Len(t, counts, ends)
		require.Equal(t, want, total)
		alike(t, counts)
	})
}

// alike fails if two row ends differ by more than one stitch. The few that are left over at a rate may be one off again.
func alike(t *rapid.T, counts []int) {
	lo, hi := counts[0], counts[0]
	for _, c := range counts {
		lo, hi = min(lo, c), max(hi, c)
	}
	require.LessOrEqual(t, hi-lo, 2)
}

// The groups as a maker reads them, for rates that handbooks give: 3 stitches to 2 rows, 4 to 3, 3 to 4, 5 to 6 (common practice,
// no source).
func TestCellsOfRates(t *testing.T) {
	for _, c := range []struct {
		a, b int
		want []cell
	}{
		{3, 2, []cell{{1, 1}, {1, 2}}},
		{4, 3, []cell{{2, 1}, {1, 2}}},
		{3, 4, []cell{{3, 1}, {1, 0}}},
		{5, 6, []cell{{5, 1}, {1, 0}}},
		{2, 1, []cell{{1, 2}}},
		{1, 1, []cell{{1, 1}}},
		{1, 2, []cell{{1, 1}, {1, 0}}},
	} {
		require.Equal(t, c.want, cellsOf(c.a, c.b), "%d per %d", c.a, c.b)
	}
}

// The simplest rate near a ratio of gauges.
func TestRateOf(t *testing.T) {
	for _, c := range []struct {
		ratio float64
		want  rate
	}{
		{16.0 / 12, rate{4, 3}}, {16.0 / 18, rate{8, 9}}, {1, rate{1, 1}}, {0.99, rate{1, 1}}, {1.5, rate{3, 2}}, {0.75, rate{3, 4}}, {2.02, rate{2, 1}},
	} {
		if c.want.rows > maxRateRows {
			c.want = rate{7, 8} // 8 per 9 is more than a maker keeps count of; 7 per 8 is within two hundredths
		}
		require.Equal(t, c.want, rateOf(c.ratio), "%v", c.ratio)
	}
}

// A multiple that is near: never further than half of it, and ties go up.
func TestToMultiple(t *testing.T) {
	for _, c := range [][4]int{{66, 6, 0, 66}, {64, 6, 0, 66}, {63, 6, 0, 66}, {62, 6, 0, 60}, {64, 6, 1, 67}, {63, 6, 1, 61}, {5, 8, 0, 8}} {
		require.Equal(t, c[3], toMultiple(c[0], c[1], c[2]), "%v", c)
	}
}
