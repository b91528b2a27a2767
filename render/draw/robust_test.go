package draw

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/page"
	"ovillo/render/scene"
)

func TestNoGauge(t *testing.T) {
	for _, spoil := range []func(*plan.RowFact){
		func(f *plan.RowFact) { f.Width = plan.NoLength },
		func(f *plan.RowFact) { f.Height = plan.NoLength },
	} {
		p := pullover()
		spoil(&p.Parts[1].Worked[0][7])
		if _, err := Schematic(p, roomW, roomH, both...); !errors.Is(err, ErrNoGauge) {
			t.Errorf("schematic: %v", err)
		}
		if _, err := Title(p, titleW, titleH, both...); !errors.Is(err, ErrNoGauge) {
			t.Errorf("title: %v", err)
		}
		// The small piece needs no measures.
		if s := Here(p, 1, 11, 12.5, both...); len(s.Items) < 4 {
			t.Errorf("the small piece has %d items", len(s.Items))
		}
	}
}

// sound reports the numbers of a scene that are none.
func sound(t *testing.T, name string, s *scene.Scene) {
	t.Helper()
	bad := func(v float64) bool { return math.IsNaN(v) || math.IsInf(v, 0) }
	for i, it := range s.Items {
		switch it := it.(type) {
		case scene.Path:
			for _, c := range it.Cmds {
				for _, p := range c.P {
					if bad(p.X) || bad(p.Y) {
						t.Fatalf("%s: item %d: %v", name, i, c)
					}
				}
			}
		case scene.Label:
			if bad(it.X) || bad(it.Y) {
				t.Fatalf("%s: label %s: %v, %v", name, it.Text, it.X, it.Y)
			}
		}
	}
}

// all draws everything there is of a pattern and looks through it.
func all(t *testing.T, name string, p *plan.Pattern) {
	t.Helper()
	if s, err := Schematic(p, roomW, roomH, both...); err == nil {
		sound(t, name, s)
		inside(t, name+" schematic", s, roomW, roomH)
	} else if !errors.Is(err, ErrNoGauge) {
		t.Errorf("%s: %v", name, err)
	}
	if s, err := Title(p, titleW, titleH, both...); err == nil {
		sound(t, name, s)
		inside(t, name+" title", s, titleW, titleH)
	} else if !errors.Is(err, ErrNoGauge) {
		t.Errorf("%s: %v", name, err)
	}
	for part := -1; part < len(p.Parts); part++ {
		s := Here(p, part, 11, 12.5, both...)
		sound(t, name, s)
		inside(t, name+" here", s, 11, 12.5)
	}
}

func TestExtremes(t *testing.T) {
	none := make1("none", "")
	all(t, "no parts", none.p)

	empty := make1("empty", "")
	empty.part("chain", false, plan.StartChain)
	all(t, "no rows", empty.p)
	if s := must(Schematic(empty.p, roomW, roomH, both...)); len(s.Items) != 0 || s.Desc["en-US"] == "" {
		t.Errorf("no rows: %d items, %q", len(s.Items), s.Desc["en-US"])
	}

	one := make1("one", "")
	w := one.part("row", false, plan.StartChain).dc(20)
	one.measure("width", widthOf(w, 1))
	one.measure("height", high(w))
	all(t, "one row", one.p)

	ring := make1("ring", "")
	ring.part("round", true, plan.StartRing).dc(12)
	all(t, "one round", ring.p)

	long := make1("long", "scarf")
	scarf := long.part("scarf", false, plan.StartChain).dc(40).even(499)
	long.measure("length", high(scarf))
	all(t, "500 rows", long.p)

	many := make1("many", "decor")
	for i := range 12 {
		w := many.part(fmt.Sprint("part", i), i%2 == 0, plan.StartChain).dc(10 + 3*i).even(5 + 2*i)
		many.measure(fmt.Sprint("height", i), high(w))
	}
	all(t, "12 parts", many.p)
	if got := len(labels(must(Schematic(many.p, roomW, roomH, both...)))); got != 12 {
		t.Errorf("12 parts: %d letters", got)
	}

	for _, shown := range []int{7, -1} {
		away := hat()
		away.Shown = shown
		all(t, "size that does not exist", away)
	}
}

// Where rows would stand too close on paper, fewer lines are drawn.
func TestLongPieceIsNotABlackOne(t *testing.T) {
	m := make1("long", "scarf")
	m.part("scarf", false, plan.StartChain).dc(40).even(499)
	s := must(Title(m.p, titleW, titleH, both...))
	rounds := 0
	for _, it := range s.Items {
		if p := it.(scene.Path); p.Width == titleRound {
			rounds += count(p.Cmds, 'M')
		}
	}
	if most := int(math.Floor(titleH / titleClose)); rounds == 0 || rounds > most {
		t.Errorf("%d lines on %.0f mm, at most %d are wanted", rounds, titleH, most)
	}
}

func count(cmds []page.Cmd, op byte) int {
	n := 0
	for _, c := range cmds {
		if c.Op == op {
			n++
		}
	}
	return n
}

func TestEveryRoundIsALine(t *testing.T) {
	p := skirt()
	lines := 0
	for _, it := range must(Title(p, titleW, titleH, both...)).Items {
		if p := it.(scene.Path); p.Width == titleRound {
			lines += count(p.Cmds, 'M')
		}
	}
	// 36 rounds of the skirt have 35 lines between them; the ribs stand upright.
	if lines != 35 {
		t.Errorf("%d lines for 36 rounds", lines)
	}
}

// FuzzDraw draws plausible and less plausible patterns that a seed makes.
func FuzzDraw(f *testing.F) {
	for seed := range uint64(200) {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, seed uint64) {
		all(t, fmt.Sprint("seed ", seed), randomPattern(seed))
	})
}

// dice makes random patterns.
type dice struct {
	*rand.Rand
	m *maker
}

func randomPattern(seed uint64) *plan.Pattern {
	kinds := []string{"", "hat", "trousers", "mittens", "bag", "garment", "blanket"}
	d := dice{Rand: rand.New(rand.NewPCG(seed, 1))}
	d.m = make1("random", kinds[d.IntN(len(kinds))])
	var parts []*work
	for range 1 + d.IntN(6) {
		parts = append(parts, d.part(parts))
	}
	for range d.IntN(9) {
		d.measure(parts)
	}
	if d.IntN(4) == 0 {
		show := &plan.Schematic{Without: d.IntN(2) == 0}
		for range 1 + d.IntN(3) {
			show.Parts = append(show.Parts, d.IntN(len(parts)))
		}
		d.m.p.Schematic = show
	}
	return d.m.p
}

func (d dice) part(before []*work) *work {
	starts := []plan.StartKind{plan.StartChain, plan.StartJoined, plan.StartRing, plan.StartBothSides, plan.StartFoundation}
	start := starts[d.IntN(len(starts))]
	if len(before) > 0 && d.IntN(4) > 0 {
		start = plan.StartFrom
		if d.IntN(6) == 0 {
			start = plan.StartIn
		}
	}
	w := d.m.part(fmt.Sprint("part", len(before)), d.IntN(3) > 0, start)
	w.Make = 1 + d.IntN(8)/7
	w.Start.N = plan.Nums{d.IntN(40)}
	if d.IntN(12) == 0 {
		return w
	}
	w.dc(1 + d.IntN(200))
	for range d.IntN(5) {
		switch d.IntN(7) {
		case 0:
			w.even(d.IntN(20))
		case 1:
			w.slope(1+d.IntN(250), 1+d.IntN(20))
		case 2:
			w.with(d.IntN(4)).rib(w.last().Stitches, d.IntN(6))
		case 3:
			w.row(w.last().Stitches, float64(d.IntN(3)), stitch.SC)
			w.last().Passed = d.IntN(30)
		case 4:
			d.wedge(w)
		case 5:
			w.narrow(min(1+d.IntN(6), w.last().Stitches/2), d.IntN(2) == 0)
		case 6:
			w.last().Wrong = d.IntN(2) == 0
		}
	}
	if d.IntN(60) == 0 {
		w.last().Width = plan.NoLength
	}
	for range d.IntN(4) {
		d.origin(w, before)
	}
	return w
}

// wedge adds short rows, some of which never come back, and some of which come back over more than was left.
func (d dice) wedge(w *work) {
	left := 0
	for range 1 + d.IntN(6) {
		n := 1 + d.IntN(8)
		if w.last().Stitches <= n {
			break
		}
		w.shortRow(n)
		left += n
	}
	for range d.IntN(4) {
		w.back(max(0, left+d.IntN(3)-1))
	}
}

func (d dice) origin(w *work, before []*work) {
	if len(before) == 0 {
		return
	}
	kinds := []plan.RefKind{plan.RefStitches, plan.RefSpace, plan.RefSkipped, plan.RefEdge, plan.RefFoundation, plan.RefRow, plan.RefSection, plan.RefRowEnds, plan.RefRowEnds, plan.RefAround}
	on := before[d.IntN(len(before))]
	of := 1 + d.IntN(200)
	if len(on.Worked[0]) > 0 && d.IntN(3) > 0 {
		of = on.last().Stitches
	}
	from := d.IntN(of + 1)
	w.on(kinds[d.IntN(len(kinds))], on, d.IntN(len(on.Worked[0])+3), from, from+d.IntN(of-from+2), of)
	w.From[len(w.From)-1].Side = plan.Side(d.IntN(2))
	if d.IntN(20) == 0 {
		w.From[len(w.From)-1].Part = d.IntN(20) - 5
	}
	if d.IntN(20) == 0 {
		w.From[len(w.From)-1].From = plan.Nums{plan.Absent}
	}
}

func (d dice) measure(parts []*work) {
	kinds := []plan.MeasureKind{plan.Around, plan.Height, plan.Width, plan.Long, plan.Across}
	var on []plan.MeasuredOn
	for range 1 + d.IntN(3) {
		part := parts[d.IntN(len(parts))]
		o := plan.MeasuredOn{Kind: kinds[d.IntN(len(kinds))], Part: part.index, Minus: d.IntN(5) == 0}
		if d.IntN(3) > 0 {
			o.Row = plan.Nums{d.IntN(part.rows() + 2)}
		}
		on = append(on, o)
	}
	d.m.measure("measure", on...)
	if d.IntN(30) == 0 {
		d.m.p.Measures[len(d.m.p.Measures)-1].Of[0].Part = 99
	}
}
