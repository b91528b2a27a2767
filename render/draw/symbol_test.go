package draw

import (
	"math"
	"testing"

	"ovillo/compile/stitch"
	"ovillo/render/scene"
)

func form(id stitch.ID) stitch.Form { return stitch.Form{ID: id, Together: 1} }

func symbol(t *testing.T, f stitch.Form) *scene.Scene {
	t.Helper()
	s, ok := Symbol(f)
	if !ok {
		t.Fatalf("%+v has no symbol", f)
	}
	return s
}

func TestSymbolSizes(t *testing.T) {
	for id, want := range map[stitch.ID][2]float64{
		stitch.Chain: {3.5 + 0.32, 1.9 + 0.32}, stitch.Slip: {1.5, 1.5}, stitch.SC: {3.6 + 0.32, 3.6 + 0.32}, stitch.DC: {4 + 0.32, 8.6 + 0.32},
	} {
		s := symbol(t, form(id))
		if math.Abs(s.W-want[0]) > 0.03 || math.Abs(s.H-want[1]) > 0.03 {
			t.Errorf("%s is %.2f by %.2f mm, want %.2f by %.2f", id, s.W, s.H, want[0], want[1])
		}
	}
}

// Stitches stand in the order of their heights, and a taller one has a slash more.
func TestSymbolsGrow(t *testing.T) {
	last := 0.0
	for i, id := range []stitch.ID{stitch.HDC, stitch.DC, stitch.TR, stitch.DTR, stitch.TRTR} {
		s := symbol(t, form(id))
		if s.H <= last {
			t.Errorf("%s is no taller than the one before", id)
		}
		last = s.H
		if want := 2 + i; len(s.Items) != want {
			t.Errorf("%s has %d strokes, want a stem, a cap and %d slashes", id, len(s.Items), i)
		}
	}
}

// The hook of a post stitch lies to the right in front and to the left behind.
func TestPostHooks(t *testing.T) {
	plain := symbol(t, form(stitch.DC))
	for post, side := range map[stitch.Post]float64{stitch.FrontPost: 1, stitch.BackPost: -1} {
		f := form(stitch.DC)
		f.Post = post
		s := symbol(t, f)
		if s.H <= plain.H+1 {
			t.Errorf("post %d: no hook below the stem", post)
		}
		stem := s.Items[0].(scene.Path).Cmds[0].P[0].X
		if (s.W/2-stem)*side <= 0 {
			t.Errorf("post %d: the hook lies on the wrong side", post)
		}
	}
}

func TestStitchesTogetherShareTheirHead(t *testing.T) {
	for n := 2; n <= 5; n++ {
		s := symbol(t, stitch.Form{ID: stitch.DC, Together: n})
		feet := map[float64]bool{}
		head := s.Items[0].(scene.Path).Cmds[0].P[0]
		for _, it := range s.Items {
			if c := it.(scene.Path).Cmds; c[0].P[0] == head {
				feet[c[len(c)-1].P[0].X] = true
			}
		}
		if len(feet) != n {
			t.Errorf("dc%dtog has %d feet at its head", n, len(feet))
		}
	}
}

func TestLoopsAreArcsBelow(t *testing.T) {
	bend := map[stitch.Loop]float64{}
	for _, loop := range []stitch.Loop{stitch.FrontLoop, stitch.BackLoop} {
		f := form(stitch.DC)
		f.Loop = loop
		for _, it := range symbol(t, f).Items {
			if c := it.(scene.Path).Cmds; len(c) > 4 {
				bend[loop] = c[len(c)/2].P[2].Y - c[0].P[0].Y
			}
		}
	}
	if bend[stitch.BackLoop] <= 0 || bend[stitch.FrontLoop] >= 0 {
		t.Errorf("the arc of the back loop opens upwards and that of the front loop downwards: %v", bend)
	}
}

func TestSymbolsStayInTheirFrame(t *testing.T) {
	keep := func(f stitch.Form) {
		s := symbol(t, f)
		sound(t, string(f.ID), s)
		inside(t, string(f.ID), s, s.W, s.H)
	}
	for _, k := range stitch.Table {
		for post := range stitch.BackPost + 1 {
			for together := range 6 {
				keep(stitch.Form{ID: k.ID, Together: together, Post: post})
			}
			for _, g := range stitch.Groups {
				for of := max(g.Least, g.Usual); of <= togetherMax; of++ {
					keep(stitch.Form{ID: k.ID, Together: 1, Post: post, Group: g.Group, Of: of})
				}
			}
		}
	}
}

// An extended stitch is its stitch, taller, with a bar more.
func TestExtendedStitchesHaveABarMore(t *testing.T) {
	for _, k := range stitch.Table {
		if k.Extends == "" {
			continue
		}
		s, of := symbol(t, form(k.ID)), symbol(t, form(k.Extends))
		if s.H <= of.H || len(s.Items) != len(of.Items)+1 {
			t.Errorf("%s: %.1f mm and %d strokes, %s has %.1f and %d", k.ID, s.H, len(s.Items), k.Extends, of.H, len(of.Items))
		}
	}
}

// The stems of a cluster share head and foot, those of a shell their foot alone; a picot has a chain for each of its own.
func TestGroupsShareHeadOrFoot(t *testing.T) {
	ends := func(s *scene.Scene) (starts, stops map[float64]int) {
		starts, stops = map[float64]int{}, map[float64]int{}
		for _, it := range s.Items {
			c := it.(scene.Path).Cmds
			last := c[len(c)-1].P
			end := last[0]
			if len(c) > 2 {
				end = last[2]
			}
			starts[math.Round(c[0].P[0].X*100)]++
			stops[math.Round(end.X*100)]++
		}
		return starts, stops
	}
	most := func(m map[float64]int) int {
		n := 0
		for _, v := range m {
			n = max(n, v)
		}
		return n
	}
	for n := 3; n <= 6; n++ {
		starts, stops := ends(symbol(t, stitch.Form{ID: stitch.HDC, Together: 1, Group: stitch.Cluster, Of: n}))
		if most(starts) < n || most(stops) < n {
			t.Errorf("%d hdc in a cluster: %d share a head, %d a foot", n, most(starts), most(stops))
		}
		starts, stops = ends(symbol(t, stitch.Form{ID: stitch.HDC, Together: 1, Group: stitch.Shell, Of: n}))
		if most(starts) > 2 || most(stops) < n {
			t.Errorf("%d hdc in a shell: %d share a head, %d a foot", n, most(starts), most(stops))
		}
		if got := len(symbol(t, stitch.Form{ID: stitch.Chain, Together: 1, Group: stitch.Picot, Of: n}).Items); got != n+1 {
			t.Errorf("a picot of %d has %d strokes, want its chains and a dot", n, got)
		}
	}
}

func TestNoSymbol(t *testing.T) {
	for _, f := range []stitch.Form{{ID: "pebble", Together: 1}, {ID: stitch.DC, Loop: stitch.ThirdLoop}, {ID: stitch.DC, Together: 40}, {}} {
		if _, ok := Symbol(f); ok {
			t.Errorf("%+v has a symbol", f)
		}
	}
}
