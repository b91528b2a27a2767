package scene

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/render/page"
)

func ring(points ...page.Point) []page.Cmd {
	var out []page.Cmd
	for i, p := range points {
		op := byte('L')
		if i == 0 {
			op = 'M'
		}
		out = append(out, page.Cmd{Op: op, P: [3]page.Point{p}})
	}
	return append(out, page.Cmd{Op: 'Z'})
}

func square(x, y, side float64) []page.Cmd {
	return ring(page.Point{X: x, Y: y}, page.Point{X: x + side, Y: y}, page.Point{X: x + side, Y: y + side}, page.Point{X: x, Y: y + side})
}

func turned(x, y, side float64) []page.Cmd {
	return ring(page.Point{X: x, Y: y}, page.Point{X: x, Y: y + side}, page.Point{X: x + side, Y: y + side}, page.Point{X: x + side, Y: y})
}

// hatched are the lines of the hatch that an area becomes; there must be one hatch.
func hatched(t *testing.T, p Path) [][2]page.Point {
	t.Helper()
	var out [][2]page.Point
	for _, it := range (&Scene{Items: []Item{p}}).LowInk().Items {
		q := it.(Path)
		if q.Fill != nil {
			require.Equal(t, inkWhite, *q.Fill)
			continue
		}
		if q.Width != hatchWidth {
			continue
		}
		for i := 0; i < len(q.Cmds); i += 2 {
			require.Equal(t, "ML", string([]byte{q.Cmds[i].Op, q.Cmds[i+1].Op}))
			out = append(out, [2]page.Point{q.Cmds[i].P[0], q.Cmds[i+1].P[0]})
		}
	}
	return out
}

// A square of 20 mm is hatched from edge to edge at 45°, 0.9 mm from line to line, and no line leaves it.
func TestSolidAreasAreHatched(t *testing.T) {
	lines := hatched(t, Path{Cmds: square(5, 7, 20), Fill: &inkBlack})
	require.InDelta(t, 20*math.Sqrt2/hatchEvery, len(lines), 2)
	long := 0.0
	for i, l := range lines {
		dx, dy := l[1].X-l[0].X, l[1].Y-l[0].Y
		require.InDelta(t, dx, -dy, 1e-9, "a line that does not rise at 45°")
		long += math.Hypot(dx, dy)
		for _, p := range l {
			require.True(t, p.X >= 5 && p.X <= 25 && p.Y >= 7 && p.Y <= 27, "%v lies outside", p)
		}
		if i > 0 {
			require.InDelta(t, hatchEvery, (l[0].X+l[0].Y-lines[i-1][0].X-lines[i-1][0].Y)/math.Sqrt2, 1e-9)
		}
	}
	require.InDelta(t, 400/hatchEvery, long, 0.03*400/hatchEvery) // the lines together are as long as the area says
}

// A hole stays white, whatever the hatch crosses it.
func TestHolesAreNotHatched(t *testing.T) {
	lines := hatched(t, Path{Cmds: append(square(0, 0, 20), turned(5, 5, 10)...), Fill: &inkBlack})
	long, crossed := 0.0, 0
	for _, l := range lines {
		long += math.Hypot(l[1].X-l[0].X, l[1].Y-l[0].Y)
		for i := range 20 {
			u := (float64(i) + 0.5) / 20
			x, y := l[0].X+u*(l[1].X-l[0].X), l[0].Y+u*(l[1].Y-l[0].Y)
			if x > 5 && x < 15 && y > 5 && y < 15 {
				crossed++
			}
		}
	}
	require.Zero(t, crossed, "the hatch runs through the hole")
	require.InDelta(t, 300/hatchEvery, long, 0.06*300/hatchEvery)
}

// Two outlines that overlap and turn the same way are one area, as when they are filled: what lies in both is hatched.
func TestOverlapsAreHatchedOnce(t *testing.T) {
	lines := hatched(t, Path{Cmds: append(square(0, 0, 12), square(4, 4, 12)...), Fill: &inkBlack})
	long := 0.0
	for _, l := range lines {
		long += math.Hypot(l[1].X-l[0].X, l[1].Y-l[0].Y)
	}
	require.InDelta(t, (2*144-64)/hatchEvery, long, 0.08*(2*144-64)/hatchEvery)
}

// A disc is hatched inside its curve; areas beside each other are hatched on one grid.
func TestCurvesAreHatched(t *testing.T) {
	const r, k = 8.0, 0.5523
	c := func(pts ...page.Point) page.Cmd { return page.Cmd{Op: 'C', P: [3]page.Point{pts[0], pts[1], pts[2]}} }
	p := func(x, y float64) page.Point { return page.Point{X: 10 + r*x, Y: 10 + r*y} }
	disc := []page.Cmd{{Op: 'M', P: [3]page.Point{p(1, 0)}}, c(p(1, k), p(k, 1), p(0, 1)), c(p(-k, 1), p(-1, k), p(-1, 0)),
		c(p(-1, -k), p(-k, -1), p(0, -1)), c(p(k, -1), p(1, -k), p(1, 0)), {Op: 'Z'}}
	long := 0.0
	for _, l := range hatched(t, Path{Cmds: disc, Fill: &inkBlack}) {
		for _, q := range l {
			require.LessOrEqual(t, math.Hypot(q.X-10, q.Y-10), r+0.01)
		}
		long += math.Hypot(l[1].X-l[0].X, l[1].Y-l[0].Y)
		on := (l[0].X + l[0].Y) / (hatchEvery * math.Sqrt2)
		require.InDelta(t, math.Round(on), on, 1e-9)
	}
	require.InDelta(t, math.Pi*r*r/hatchEvery, long, 0.06*math.Pi*r*r/hatchEvery)
}

// A row of dots in one path is many small areas, which stay black as each of them would alone.
func TestDotsStay(t *testing.T) {
	var dots []page.Cmd
	for i := range 20 {
		dots = append(dots, square(float64(i), 0, 0.5)...)
	}
	drawn := Path{Cmds: dots, Fill: &inkBlack}
	require.Equal(t, []Item{drawn}, (&Scene{Items: []Item{drawn}}).LowInk().Items)
}

func TestLittleInk(t *testing.T) {
	red, pale, dark := page.Color{0.9, 0.1, 0.1}, page.Color{0.9, 0.9, 1}, page.Color{0.2, 0.3, 0.2}
	s := &Scene{W: 50, H: 50, Title: map[string]string{"en": "x"}, Items: []Item{
		Path{Cmds: square(0, 0, 1.7), Fill: &inkBlack},                                                                    // 0: small: it stays
		Path{Cmds: square(0, 0, 1.7), Fill: &red},                                                                         // 1: small and coloured: black
		Path{Cmds: square(0, 0, 9), Fill: &inkWhite, Stroke: &inkBlack, Width: 0.28},                                      // 2: white, which hides what is behind it
		Path{Cmds: square(0, 0, 9), Fill: &pale},                                                                          // 3: a tint: an outline
		Path{Cmds: square(0, 0, 9)[:4], Stroke: &red, Width: 1.5, Dash: []float64{1, 2}},                                  // 4: a wide line
		Label{X: 3, Y: 4, Text: "A"},                                                                                      // 5
		Path{Cmds: square(0, 0, 9), Fill: &dark, Stroke: &red, Width: 0.25},                                               // 6: dark: hatched, with its own line
		Path{Cmds: ring(page.Point{}, page.Point{X: 30}, page.Point{X: 30, Y: 0.6}, page.Point{Y: 0.6}), Fill: &inkBlack}, // 7: a bar
		Path{Cmds: square(0, 0, 9)[:4], Stroke: &inkWhite, Width: 0.6},                                                    // 8: a gap cut in white
	}}
	var got [][]Item
	for _, it := range s.Items {
		one := *s
		one.Items = []Item{it}
		got = append(got, one.LowInk().Items)
	}
	require.Equal(t, inkBlack, *got[0][0].(Path).Fill)
	require.Equal(t, inkBlack, *got[1][0].(Path).Fill)
	require.Equal(t, []Item{s.Items[2]}, got[2])
	require.Len(t, got[3], 2)
	require.Equal(t, rimWidth, got[3][1].(Path).Width)
	require.Equal(t, mostWide, got[4][0].(Path).Width)
	require.Equal(t, inkBlack, *got[4][0].(Path).Stroke)
	require.Equal(t, []float64{1, 2}, got[4][0].(Path).Dash)
	require.Equal(t, []Item{s.Items[5]}, got[5])
	require.Len(t, got[6], 3)
	require.Equal(t, 0.25, got[6][2].(Path).Width)
	require.Len(t, got[7], 2, "a thin bar is hatched and has no outline")
	require.Equal(t, []Item{s.Items[8]}, got[8])
	all := s.LowInk()
	require.Equal(t, [2]float64{50, 50}, [2]float64{all.W, all.H})
	require.Equal(t, s.Title, all.Title)
	require.Equal(t, red, *s.Items[1].(Path).Fill, "the drawing itself was changed")
}

// The paths of a group stay one group, however many they become.
func TestGroupsOfLittleInk(t *testing.T) {
	s := &Scene{W: 50, H: 50, Items: []Item{
		Label{Text: "1"},
		Path{Cmds: square(0, 0, 9), Fill: &inkBlack, Stroke: &inkBlack, Width: 0.2}, // three paths
		Label{Text: "2"},
		Label{Text: "3"},
	}, Groups: []Group{{"row 1", 1, 3}, {"row 2", 3, 4}}}
	m := s.LowInk()
	require.Equal(t, []Group{{"row 1", 1, 5}, {"row 2", 5, 6}}, m.Groups)
	require.Equal(t, Label{Text: "2"}, m.Items[4])
	require.Equal(t, []Group{{"row 1", 1, 3}, {"row 2", 3, 4}}, s.Groups)
}
