package scene

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/render/page"
)

// A quarter of a circle, drawn as one curve, lies within the bound of its flattened line: the curve is off the circle by 0.027 % of the
// radius at most (the usual approximation with 0.5523 of the radius, plane geometry), the chords by what was asked.
func TestFlattenKeepsToTheCurve(t *testing.T) {
	const r, handle = 20.0, 0.5523
	cmds := []page.Cmd{
		{Op: 'M', P: [3]page.Point{{X: r}}},
		{Op: 'C', P: [3]page.Point{{X: r, Y: handle * r}, {X: handle * r, Y: r}, {Y: r}}},
		{Op: 'L', P: [3]page.Point{{}}},
		{Op: 'Z'},
	}
	before := 0
	for _, off := range []float64{1, 0.1, 0.01} {
		runs := Flatten(cmds, Fine(off))
		require.Len(t, runs, 1)
		require.True(t, runs[0].Closed)
		pts := runs[0].Pts
		require.Greater(t, len(pts), before)
		before = len(pts)
		require.Equal(t, page.Point{}, pts[len(pts)-1])
		for i := 1; i < len(pts)-1; i++ {
			m := Between(pts[i-1], pts[i], 0.5)
			require.InDelta(t, r, math.Hypot(m.X, m.Y), off+0.0003*r)
		}
	}
	require.Empty(t, Flatten([]page.Cmd{{Op: 'L'}, {Op: 'Z'}}, Fine(1)), "without a beginning there is no line")
}
