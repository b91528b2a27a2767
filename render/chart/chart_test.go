package chart

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/page"
)

// The radius of a flat disc is that of its ring and the heights of its rounds, as long as the stitches have room on it; a circle of
// radius r has room for 2πr (plane geometry). In print a flat disc has 6 more sc in each round, 8 to 10 more hdc, or 12 more dc (S75 Crafty
// Maria 2009/06, S76 mkcarroll.com 2009/5/14, S77 ana-rosa, S78 crochetrebellion.com/circle): with these no round needs to be larger.
func TestRadiusOfADisc(t *testing.T) {
	for _, is := range []struct {
		id     stitch.ID
		more   int
		height float64
		rounds int
	}{{stitch.SC, 6, 1, 60}, {stitch.DC, 12, 1.9, 12}, {stitch.HDC, 9, 1.45, 20}} {
		c := Lay(&discOf(is.id, is.more, is.rounds).s, nil, 0.6)
		for n, line := range c.Lines[1:] {
			want := ringRadius + float64(n+1)*is.height
			for _, st := range line.Stitches {
				require.InDelta(t, want, long(st.Head), 1e-6, "%s, round %d", is.id, n+1)
			}
			require.Len(t, line.Stitches, is.more*(n+1))
		}
	}
}

// Where there are more stitches than a round has room for, it is as large as they need.
func TestCrowdedRoundsAreLifted(t *testing.T) {
	b := ring()
	b.row(false, true, each(stitch.SC, 1, false)[0], made(stitch.SC, 0))
	var list []plan.Worked
	for range 40 {
		list = append(list, made(stitch.SC, 0))
	}
	b.row(false, true, list...)
	c := Lay(&b.s, nil, 0.6)
	for _, st := range c.Lines[2].Stitches {
		require.GreaterOrEqual(t, long(st.Head)*2*math.Pi, 40*roundPitch)
	}
}

// Increases stand on one foot, decreases have one head, and each of their feet is a place of its own.
func TestSharedFeetAndHeads(t *testing.T) {
	b := chains(6).row(false, false, made(stitch.DC, 0), made(stitch.DC, 1), made(stitch.DC, 1), made(stitch.DC, 2, 3), made(stitch.DC, 4), made(stitch.DC, 5))
	c := Lay(&b.s, nil, 0.6)
	row := c.Lines[1].Stitches
	require.Equal(t, row[1].Feet, row[2].Feet)
	require.NotEqual(t, row[1].Head, row[2].Head)
	require.True(t, row[1].Shared && row[2].Shared && row[3].Shared && !row[0].Shared)
	require.Len(t, row[3].Feet, 2)
	for k, at := range []int{2, 3} {
		require.InDelta(t, c.Lines[0].Stitches[at].Head.X, row[3].Feet[k].X, 1e-9)
	}
}

// Stitches over stitches stand upright, in rows of either direction.
func TestPlainRowsAreUpright(t *testing.T) {
	b := chains(9).row(false, false, each(stitch.SC, 9, false)...).row(true, false, each(stitch.DC, 9, true)...).row(false, false, each(stitch.HDC, 9, true)...)
	c := Lay(&b.s, nil, 0.6)
	for i := 1; i < len(c.Lines); i++ {
		for _, st := range c.Lines[i].Stitches {
			require.InDelta(t, st.Head.X, st.Feet[0].X, 1e-9)
			require.InDelta(t, c.Lines[i].Stitches[0].Head.Y, st.Head.Y, 1e-9)
		}
	}
	require.Greater(t, c.Lines[1].Stitches[0].Head.X, c.Lines[1].Stitches[8].Head.X, "from right to left")
	require.Less(t, c.Lines[2].Stitches[0].Head.X, c.Lines[2].Stitches[8].Head.X, "from left to right")
	require.Greater(t, c.Lines[1].Begin.X, c.Lines[1].Stitches[0].Head.X, "the number stands where the row starts")
	require.Less(t, c.Lines[2].Begin.X, c.Lines[2].Stitches[0].Head.X)
}

// granny is three rounds of a square: 3 dc, ch 2, 3 dc in each corner.
func granny() *builder {
	b := ring()
	dc := func(at int) plan.Worked { return made(stitch.DC, at) }
	var one []plan.Worked
	for range 4 {
		one = append(one, dc(0), dc(0), dc(0), space(2))
	}
	b.row(false, true, one...)
	var two []plan.Worked
	for k := range 4 {
		at := 4*k + 3
		two = append(two, dc(at), dc(at), dc(at), space(2), dc(at), dc(at), dc(at), space(1))
	}
	b.row(false, true, two...)
	var three []plan.Worked
	for k := range 4 {
		at := 8*k + 3
		three = append(three, dc(at), dc(at), dc(at), space(2), dc(at), dc(at), dc(at), space(1), dc(at+4), dc(at+4), dc(at+4), space(1))
	}
	return b.row(false, true, three...)
}

// The corners of a square are square: its corner spaces lie on the diagonals, and between them its sides are straight.
func TestSquareIsSquare(t *testing.T) {
	c := Lay(&granny().s, nil, 0.6)
	for i := 1; i < 4; i++ {
		var corners []page.Point
		flat := map[[2]bool]float64{}
		for _, st := range c.Lines[i].Stitches {
			x, y := st.Head.X, st.Head.Y
			if len(st.Ovals) == 2 {
				corners = append(corners, st.Head)
				require.InDelta(t, math.Abs(x), math.Abs(y), 0.02, "round %d", i)
				continue
			}
			if len(st.Feet) == 0 {
				continue
			}
			side := [2]bool{math.Abs(x) > math.Abs(y), x+y > 0}
			v := max(math.Abs(x), math.Abs(y))
			if was, ok := flat[side]; ok {
				require.InDelta(t, was, v, 1e-6, "round %d: a side is not straight", i)
			}
			flat[side] = v
		}
		require.Len(t, corners, 4)
		require.Len(t, flat, 4)
		for k := range corners {
			a, b := corners[k], corners[(k+1)%4]
			d, e := minus(b, a), minus(corners[(k+2)%4], b)
			require.InDelta(t, 0, (d.X*e.X+d.Y*e.Y)/(long(d)*long(e)), 0.01, "round %d: a corner is not square", i)
		}
	}
}

// Staggered increases, and two in one place, are no corners: their rounds stay round.
func TestDiscsHaveNoCorners(t *testing.T) {
	k, _ := corners(&discOf(stitch.SC, 6, 8).s)
	require.Zero(t, k)
	k, _ = corners(&granny().s)
	require.Equal(t, 4, k)
}

// A shell fans out evenly about its foot.
func TestShellsAreEven(t *testing.T) {
	list := []plan.Worked{made(stitch.SC, 0)}
	for range 5 {
		list = append(list, made(stitch.DC, 3))
	}
	b := chains(7).row(false, false, append(list, made(stitch.SC, 6))...)
	row := Lay(&b.s, nil, 0.6).Lines[1].Stitches
	foot := row[1].Feet[0]
	for k := range 5 {
		require.InDelta(t, foot.X-row[1+k].Head.X, row[5-k].Head.X-foot.X, 1e-6)
		require.InDelta(t, row[1+k].Head.Y, row[5-k].Head.Y, 1e-6)
	}
	require.Less(t, row[3].Head.Y, row[0].Head.Y, "a shell stands higher than the sc beside it")
}

// An oval has straight sides, on which stitches stand over their chains, and both ends alike.
func TestOval(t *testing.T) {
	const n = 6
	b := chains(n)
	b.s.Outward, b.s.Start = true, plan.StartBothSides
	base := &b.s.Lines[0]
	base.Closed = true
	for k := n - 2; k > 0; k-- {
		w := made(stitch.Chain, k)
		w.Form.Together = 1
		w.Feet[0].Into = plan.FootBelow
		base.Stitches = append(base.Stitches, w)
	}
	var list []plan.Worked
	for k := range base.Stitches {
		for range map[bool]int{true: 3, false: 1}[k == 0 || k == n-1] {
			list = append(list, made(stitch.SC, k))
		}
	}
	b.row(false, true, list...)
	c := Lay(&b.s, nil, 0.6)
	for k, st := range c.Lines[1].Stitches {
		foot := list[k].Feet[0].At
		if foot == 0 || foot == n-1 {
			continue
		}
		require.InDelta(t, c.Lines[0].Stitches[foot].Head.X, st.Feet[0].X, 1e-6)
		require.InDelta(t, st.Feet[0].X, st.Head.X, 0.3)
		require.Equal(t, foot < n, st.Head.Y < 0, "the first side lies above")
	}
	require.InDelta(t, -c.Lines[0].Stitches[0].Head.X, c.Lines[0].Stitches[n-1].Head.X, 1e-9)
}

// anyRows are rows of all kinds of things, in rows or in rounds, with feet anywhere below.
func anyRows(t *rapid.T) *plan.Stitches {
	n := rapid.IntRange(0, 9).Draw(t, "places")
	b := chains(n)
	if rapid.Bool().Draw(t, "ring") {
		b = ring()
	}
	b.s.Outward = rapid.Bool().Draw(t, "outward")
	closed := rapid.Bool().Draw(t, "closed")
	ids := []stitch.ID{stitch.SC, stitch.HDC, stitch.DC, stitch.TR, stitch.Slip, stitch.Chain, "pebble"}
	for i := 1; i <= rapid.IntRange(1, 6).Draw(t, "rows"); i++ {
		var list []plan.Worked
		for range rapid.IntRange(0, 12).Draw(t, "stitches") {
			w := made(rapid.SampledFrom(ids).Draw(t, "id"))
			w.Kind = plan.WorkedKind(rapid.IntRange(0, 6).Draw(t, "kind"))
			w.Chains = rapid.IntRange(0, 30).Draw(t, "chains")
			w.Begin = rapid.IntRange(0, 9).Draw(t, "begin") == 0
			w.Form.Group = stitch.Group(rapid.IntRange(0, 9).Draw(t, "group"))
			w.Form.Of = rapid.IntRange(0, 6).Draw(t, "of")
			for range rapid.IntRange(0, 3).Draw(t, "feet") {
				w.Feet = append(w.Feet, plan.Foot{Line: rapid.IntRange(-1, i+1).Draw(t, "line"), At: rapid.IntRange(-1, 12).Draw(t, "at"),
					Into: plan.FootInto(rapid.IntRange(0, 5).Draw(t, "into")), Chain: rapid.IntRange(-1, 9).Draw(t, "chain")})
			}
			list = append(list, w)
		}
		b.s.Lines = append(b.s.Lines, plan.Line{Number: i, Closed: closed, Joined: rapid.Bool().Draw(t, "joined"), FromLeft: rapid.Bool().Draw(t, "left"), Stitches: list})
	}
	if n > 2 && rapid.Bool().Draw(t, "both sides") {
		b.s.Lines[0].Stitches = append(b.s.Lines[0].Stitches, space(3), made(stitch.Chain, 1))
		last := &b.s.Lines[0].Stitches[len(b.s.Lines[0].Stitches)-1]
		last.Feet[0].Into = plan.FootBelow
	}
	b.s.Repeat = plan.ChartRepeat{From: rapid.IntRange(-1, 9).Draw(t, "from"), N: rapid.IntRange(-1, 9).Draw(t, "n"), Times: 2}
	return &b.s
}

// Whatever is laid out, every number is one, and nothing is lost: the plan may hold what no source brings about.
func TestNothingIsLost(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anyRows(t)
		c := Lay(s, nil, 0.6)
		require.Len(t, c.Lines, len(s.Lines))
		fine := func(p page.Point) {
			if math.IsNaN(p.X+p.Y) || math.IsInf(p.X+p.Y, 0) {
				t.Fatalf("a point is none: %v", p)
			}
		}
		for i, line := range c.Lines {
			require.Len(t, line.Stitches, len(s.Lines[i].Stitches))
			for _, p := range []page.Point{line.Begin, line.End, line.Way, c.Min, c.Max, c.Arrow} {
				fine(p)
			}
			for _, st := range line.Stitches {
				fine(st.Head)
				fine(st.Up)
				for _, f := range st.Feet {
					fine(f)
				}
				for _, o := range st.Ovals {
					fine(o.At)
					fine(o.Along)
				}
				if math.IsNaN(st.Room) || math.IsInf(st.Room, 0) {
					t.Fatal("no room")
				}
			}
		}
	})
}

// Stitches of a row stand in the order of making, each as far from the next as it must be.
func TestRowsKeepTheirOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anyRows(t)
		s.Outward = false
		s, at := turned(s)
		l := newLayout(s, nil, 0.6)
		l.turned = at
		for i := range s.Lines {
			l.line(i)
			r := &l.rows[i]
			for k := 1; k < len(r.nodes); k++ {
				if s.Lines[i].Stitches[k].Kind == plan.WorkedSpace || s.Lines[i].Stitches[k-1].Kind == plan.WorkedSpace {
					continue // its middle lies between its neighbours
				}
				if d := r.way * (r.nodes[k].s - r.nodes[k-1].s); d < r.nodes[k-1].least-1e-6 {
					t.Fatalf("line %d: %.3f between %d and %d, at least %.3f", i, d, k-1, k, r.nodes[k-1].least)
				}
			}
		}
	})
}

// What is set apart is moved as little as possible: no other places with the distances are nearer to the wishes.
func TestApartIsNearest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 8).Draw(t, "n")
		at, weight, least := make([]float64, n), make([]float64, n), make([]float64, max(n-1, 0))
		for k := range n {
			at[k], weight[k] = rapid.Float64Range(-5, 5).Draw(t, "at"), rapid.Float64Range(0.1, 3).Draw(t, "weight")
			if k > 0 {
				least[k-1] = rapid.Float64Range(0, 2).Draw(t, "least")
			}
		}
		x := apart(at, weight, least)
		cost := func(x []float64) (sum float64) {
			for k := range x {
				sum += weight[k] * (x[k] - at[k]) * (x[k] - at[k])
			}
			return sum
		}
		kept := func(x []float64) bool {
			for k := 1; k < n; k++ {
				if x[k]-x[k-1] < least[k-1]-1e-9 {
					return false
				}
			}
			return true
		}
		require.True(t, kept(x))
		for range 20 { // any other places near by that keep the distances cost more
			y := make([]float64, n)
			for k := range y {
				y[k] = x[k] + rapid.Float64Range(-0.5, 0.5).Draw(t, "off")
				if k > 0 {
					y[k] = max(y[k], y[k-1]+least[k-1])
				}
			}
			require.GreaterOrEqual(t, cost(y), cost(x)-1e-9)
		}
	})
}

func TestNothingToLay(t *testing.T) {
	require.Nil(t, Lay(nil, nil, 0.6))
	require.Nil(t, Lay(&plan.Stitches{}, nil, 0.6))
	require.NotNil(t, Lay(&plan.Stitches{Lines: []plan.Line{{}, {Number: 1}}, Outward: true}, nil, 0.6))
}

// A ripple waves: where it increases its rows are high, where it decreases they are low, from its foundation on, and its stitches
// stand square to them; rows that do not lean stay straight.
func TestRipplesWave(t *testing.T) {
	const n, half = 30, 15
	b := chains(n)
	for i := range 4 {
		var list []plan.Worked
		add := func(at ...int) {
			for k := range at {
				if i > 0 {
					at[k] = n - 1 - at[k]
				}
			}
			list = append(list, made(stitch.SC, at...))
		}
		for _, from := range []int{0, half} {
			add(from)
			add(from)
			for k := 1; k < 6; k++ {
				add(from + k)
			}
			add(from+6, from+7, from+8)
			for k := 9; k < 14; k++ {
				add(from + k)
			}
			add(from + 14)
			add(from + 14)
		}
		b.row(i%2 == 1, false, list[:n]...)
	}
	c := Lay(&b.s, nil, 0.6)
	base := c.Lines[0].Stitches
	middle, dip := base[half].Head.Y, base[7].Head.Y
	require.Less(t, middle, dip-1, "the foundation is high where the rows increase")
	require.InDelta(t, dip, base[half+7].Head.Y, 0.3)
	for k := range 4 {
		require.InDelta(t, base[k].Head.Y, base[n-1-k].Head.Y, 0.3, "both ends alike")
	}
}
