package fabric

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/plan"
)

// account checks that every place of an edge was taken, skipped, passed or left, and that what was made is the next edge.
func account(t *rapid.T, f *Fabric, p *Part, res *Result, style Style) {
	if n := res.Taken + res.Skipped + res.Passed + res.Left; n != res.Places {
		t.Fatalf("taken %d, skipped %d, passed %d, left %d: not the %d places there are", res.Taken, res.Skipped, res.Passed, res.Left, res.Places)
	}
	stitches, spaces, _ := p.Count()
	if len(res.Made) != stitches+spaces || len(res.Made) != len(p.Edge()) {
		t.Fatalf("made %d, the edge has %d stitches and %d spaces", len(res.Made), stitches, spaces)
	}
	made := slices.Clone(res.Made)
	switch {
	case style == plan.Rows || res.Turned:
		slices.Reverse(made)
	case style == plan.TurnedRounds && len(made) > 0:
		slices.Reverse(made[1:])
	}
	if !slices.Equal(made, p.Edge()) {
		t.Fatalf("the edge %v is not what was made, %v", p.Edge(), made)
	}
	for _, id := range res.Made {
		if f.Elems[id].Kind == Slip {
			t.Fatal("a slip stitch stands on the edge")
		}
	}
}

// Whatever is asked of a row, it is worked with every place accounted for, or refused with the edge as it was.
func TestAnyRow(t *testing.T) {
	came := 0
	rapid.Check(t, func(t *rapid.T) {
		for range 10 {
			f, p := edged(edgeText.Draw(t, "edge"), rapid.Bool().Draw(t, "closed"))
			drawMarks(t, p)
			for rows := 0; rows < 3 && anyRow(t, f, p); rows++ {
				came++
			}
		}
	})
	if came < 100 {
		t.Errorf("only %d rows came out", came)
	}
}

// anyRow works one row and reports whether it came out.
func anyRow(t *rapid.T, f *Fabric, p *Part) bool {
	style, ops, before := drawStyle(t), drawOps(t, 2), p.Edge()
	if rapid.IntRange(0, 3).Draw(t, "rest") > 0 {
		ops = append(ops, eachOf(Stitches|Spaces))
	}
	res, fault := p.Work(rowOf(style, ops...))
	if fault != nil {
		if fault.Kind == 0 || !slices.Equal(before, p.Edge()) {
			t.Fatalf("refused with %v, the edge was %v and is %v", fault, before, p.Edge())
		}
		return false
	}
	account(t, f, p, res, style)
	for n, m := range p.marks {
		if m.edge == p.edge.serial && (m.at < 0 || m.at > len(p.Edge()) || !m.gap && m.at == len(p.Edge())) {
			t.Fatalf("marker %s stands at %d of %d", n, m.at, len(p.Edge()))
		}
	}
	return true
}

// The rows of plainOps come out: the laws below are not about rows that are refused.
func TestPlainRowsComeOut(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(0, 12).Draw(t, "n")
		f, p := edged(strings.Repeat("s", n), false)
		res, fault := p.Work(flat(plainOps(t, n)...))
		if fault != nil {
			t.Fatal(fault)
		}
		account(t, f, p, res, plan.Rows)
	})
}

// Taking an instruction that took places out of a row that came out makes it fail.
func TestNothingCanBeLeftOut(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 12).Draw(t, "n")
		ops := plainOps(t, n)
		out := rapid.IntRange(0, len(ops)-1).Draw(t, "out")
		_, p := edged(strings.Repeat("s", n), false)
		_, fault := p.Work(flat(slices.Delete(slices.Clone(ops), out, out+1)...))
		if fault == nil || fault.Kind != LeftOver {
			t.Fatalf("without instruction %d of %d it gives %v", out+1, len(ops), fault)
		}
	})
}

// result is what a row makes of an edge, in a form that can be compared: elements and where they were worked into.
func result(text string, closed bool, ops ...*Op) string {
	f, p := edged(text, closed)
	before := p.Edge()
	style := plan.Rows
	if closed {
		style = plan.SpiralRounds
	}
	res, fault := p.Work(rowOf(style, ops...))
	if fault != nil {
		return "refused"
	}
	return written(f, res.Made) + ": " + into(f, before, res.Made)
}

// same fails unless two rows do the same on an edge, and come out on some edges.
func same(t *testing.T, what string, rows func(t *rapid.T) (a, b []*Op)) {
	came := 0
	rapid.Check(t, func(t *rapid.T) {
		text, closed := edgeText.Draw(t, "edge"), rapid.Bool().Draw(t, "closed")
		a, b := rows(t)
		ra, rb := result(text, closed, a...), result(text, closed, b...)
		if ra != rb {
			t.Fatalf("%s on %q: %s, but %s", what, text, ra, rb)
		}
		if ra != "refused" {
			came++
		}
	})
	if came == 0 {
		t.Errorf("%s: no row came out, so nothing was compared", what)
	}
}

func TestRepeats(t *testing.T) {
	takes := rapid.SampledFrom([]Takes{Stitches, Stitches | Spaces, Stitches | InChains})
	few := rapid.IntRange(0, 4)
	same(t, "[S] n times = S in next n", func(t *rapid.T) (a, b []*Op) {
		k, n := takes.Draw(t, "takes"), few.Draw(t, "n")
		rest := func() *Op { return eachOf(Stitches | Spaces) }
		return []*Op{times(n, nextOf(k, 1)), rest()}, []*Op{nextOf(k, n), rest()}
	})
	same(t, "[S] around = S in each", func(t *rapid.T) (a, b []*Op) {
		k := takes.Draw(t, "takes")
		return []*Op{around(nextOf(k, 1))}, []*Op{eachOf(k)}
	})
	same(t, "[B] a times, [B] b times = [B] a+b times", func(t *rapid.T) (a, b []*Op) {
		body := func() []*Op { return []*Op{nextOf(Stitches|Spaces, 1), ch(1), per(2, 1)} }
		x, y := few.Draw(t, "a"), few.Draw(t, "b")
		rest := func() *Op { return eachOf(Stitches | Spaces) }
		return []*Op{times(x, body()...), times(y, body()...), rest()}, []*Op{times(x+y, body()...), rest()}
	})
	same(t, "skip a, skip b = skip a+b", func(t *rapid.T) (a, b []*Op) {
		x, y := few.Draw(t, "a"), few.Draw(t, "b")
		return []*Op{skip(x), skip(y), eachOf(Stitches | Spaces)}, []*Op{skip(x + y), eachOf(Stitches | Spaces)}
	})
	same(t, "ch a, ch b = ch a+b", func(t *rapid.T) (a, b []*Op) {
		x, y := few.Draw(t, "a"), few.Draw(t, "b")
		all := func() *Op { return eachOf(Stitches | Spaces) }
		return []*Op{all(), ch(x), ch(y)}, []*Op{all(), ch(x + y)}
	})
}

func TestToLast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(0, 6).Draw(t, "n")
		text := strings.Repeat("s", n+rapid.IntRange(0, 6).Draw(t, "before"))
		want := result(text, false, each())
		if got := result(text, false, to(last(n)), next(n)); got != want {
			t.Fatalf("to the last %d, then in next %d: %s, want %s", n, n, got, want)
		}
	})
}

// Each on a closed edge that begins elsewhere gives the same round, begun elsewhere.
func TestRotated(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`[ss12]{1,12}`).Draw(t, "edge")
		k := rapid.IntRange(0, len(text)-1).Draw(t, "start")
		takes := rapid.SampledFrom([]Takes{Stitches | Spaces, Stitches | InChains}).Draw(t, "takes")
		perPlace := rapid.IntRange(1, 3).Draw(t, "per")
		work := func(rotate int) (made string, places []string) {
			f, p := edged(text, true)
			before := p.Edge()
			p.marks["m"] = &marker{edge: p.edge.serial, at: rotate, gap: true}
			if _, fault := p.RotateTo("m"); fault != nil {
				t.Fatal(fault)
			}
			o := eachOf(takes)
			o.Per = nums(perPlace)
			res, fault := p.Work(rowOf(plan.SpiralRounds, o))
			if fault != nil {
				t.Fatal(fault)
			}
			return written(f, res.Made), strings.Fields(into(f, before, res.Made))
		}
		m0, p0 := work(0)
		m1, p1 := work(k)
		if len(m0) != len(m1) {
			t.Fatalf("%q and %q", m0, m1)
		}
		for s := range p0 {
			if reflect.DeepEqual(append(slices.Clone(p0[s:]), p0[:s]...), p1) {
				return
			}
		}
		t.Fatalf("%v is no rotation of %v", p1, p0)
	})
}

// Two plain rows bring back the order of the edge, the places of both kinds of marker, and what was left at both ends.
func TestTurningTwice(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 10).Draw(t, "n")
		style := rapid.SampledFrom([]Style{plan.Rows, plan.TurnedRounds}).Draw(t, "style")
		f, p := edged(strings.Repeat("s", n), style != plan.Rows)
		drawMarks(t, p)
		before := p.Edge()
		in, gap := p.marks["m"].at, p.marks["g"].at
		if style == plan.Rows {
			q := f.Begin("other")
			if fault := q.Foundation(sc, rapid.IntRange(0, 4).Draw(t, "left"), false); fault != nil {
				t.Fatal(fault)
			}
			cut := rapid.IntRange(0, len(q.found)).Draw(t, "cut")
			p.edge.post, p.edge.pre = slices.Clone(q.found[:cut]), slices.Clone(q.found[cut:])
		}
		post, pre := p.edge.post, p.edge.pre
		for range 2 {
			if _, fault := p.Work(rowOf(style, each())); fault != nil {
				t.Fatal(fault)
			}
		}
		for i, id := range p.Edge() {
			if root := f.Elems[f.Elems[id].Into.ID].Into.ID; root != before[i] {
				t.Fatalf("place %d stands over %d, not over %d", i, root, before[i])
			}
		}
		if m := p.marks["m"]; m.edge != p.edge.serial || m.at != in {
			t.Fatalf("the marker in a stitch came from %d to %d", in, m.at)
		}
		// A round has one gap over its join: before its first place and behind its last.
		if m := p.marks["g"]; m.edge != p.edge.serial || m.at != gap && !(style != plan.Rows && m.at%n == gap%n) {
			t.Fatalf("the marker in a gap came from %d to %d of %d", gap, m.at, n)
		}
		if !slices.Equal(p.edge.post, post) || !slices.Equal(p.edge.pre, pre) {
			t.Fatalf("left at the ends: %v and %v, were %v and %v", p.edge.post, p.edge.pre, post, pre)
		}
	})
}

// The gap of a marker keeps its two neighbours when the work is turned.
func TestGapKeepsItsNeighbours(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 10).Draw(t, "n")
		f, p := edged(strings.Repeat("s", n), false)
		gap := rapid.IntRange(1, n-1).Draw(t, "gap")
		p.marks["g"] = &marker{edge: p.edge.serial, at: gap, gap: true}
		a, b := p.Edge()[gap-1], p.Edge()[gap]
		if _, fault := p.Work(flat(each())); fault != nil {
			t.Fatal(fault)
		}
		g := p.marks["g"].at
		below := func(i int) ID { return f.Elems[p.Edge()[i]].Into.ID }
		if below(g-1) != b || below(g) != a {
			t.Fatalf("the gap stands between the stitches over %d and %d, not over %d and %d", below(g-1), below(g), b, a)
		}
	})
}

// Spread shaping takes every place and makes as many more or fewer as there are shapings; its groups differ by one place
// at the most.
func TestSpreadLaw(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		have, size := rapid.IntRange(1, 40).Draw(t, "have"), rapid.IntRange(1, 3).Draw(t, "size")
		k := rapid.IntRange(0, have/size).Draw(t, "k")
		how := rapid.SampledFrom([]Spreading{AtEnds, Alternating, Centred}).Draw(t, "how")
		f, p := edged(strings.Repeat("s", have), true)
		res, fault := p.Work(rowOf(plan.JoinedRounds, spread(k, size, how)))
		if fault != nil {
			t.Fatal(fault)
		}
		account(t, f, p, res, plan.JoinedRounds)
		want := have + k
		if size > 1 {
			want = have - k*(size-1)
		}
		if len(res.Made) != want {
			t.Fatalf("%d shapings over %d make %d, want %d", k, have, len(res.Made), want)
		}
		g := SpreadGroups(have, k, size, how)
		if total := g.Before + g.Lead*size + g.After + g.Long*(g.LongPlain+size) + g.Short*(g.ShortPlain+size); total != have {
			t.Fatalf("the groups take %d of %d: %+v", total, have, g)
		}
		if gap := max(g.Before, g.After); how == Centred && k > 0 && gap > 3*(g.ShortPlain+1) && g.Short > 0 {
			t.Fatalf("%d plain stitches at an end, %d between: %+v", gap, g.ShortPlain, g)
		}
		if how != Centred && g.Long > 0 && g.Short > 0 && g.LongPlain != g.ShortPlain+1 {
			t.Fatalf("long and short groups differ by more than one: %+v", g)
		}
	})
}

// What is set at even distances takes every place; between any two stand equally many stitches, and the end that is not
// counted off has fewer than one more for each distance than the other. It is refused only where there is no room.
func TestSpacedLaw(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		have, n, width := rapid.IntRange(1, 80).Draw(t, "have"), rapid.IntRange(0, 9).Draw(t, "n"), rapid.IntRange(1, 4).Draw(t, "width")
		edge := rapid.IntRange(-1, 6).Draw(t, "edge")
		fromEnd := rapid.Bool().Draw(t, "from the end")
		g, need := SpacedGroups(have, n, width, edge, fromEnd)
		o := op(Spaced, n)
		o.Body = []*Op{ch(2), skip(width)}
		if edge >= 0 {
			o.Edge = nums(edge)
		}
		if fromEnd {
			o.How = FromEnd
		}
		f, p := edged(strings.Repeat("s", have), false)
		res, fault := p.Work(rowOf(plan.Rows, o))
		if need > have {
			if fault == nil || fault.Kind != Crowded || fault.Need != need || fault.Have != have {
				t.Fatalf("%d of %d, edge %d, over %d: %v", n, width, edge, have, fault)
			}
			if _, more := SpacedGroups(need, n, width, edge, fromEnd); more > need {
				t.Fatalf("%d are needed, but %d are not enough", need, need)
			}
			return
		}
		if fault != nil {
			t.Fatal(fault)
		}
		account(t, f, p, res, plan.Rows)
		if g.Before+g.After+n*width+g.Short*g.ShortPlain != have {
			t.Fatalf("the groups take another number than %d: %+v", have, g)
		}
		if n == 0 {
			return
		}
		if n > 1 && g.ShortPlain < 1 {
			t.Fatalf("nothing stands between: %+v", g)
		}
		near, far := g.Before, g.After
		if fromEnd {
			near, far = far, near
		}
		switch {
		case edge < 0 && (far < near || far > near+1 || near < 1 || near+far < g.ShortPlain || near+far >= g.ShortPlain+n):
			t.Fatalf("the ends do not share what is left: %+v", g)
		case edge >= 0 && near != edge:
			t.Fatalf("not %d before the first: %+v", edge, g)
		case edge >= 0 && n > 1 && (far < edge || far >= edge+n-1):
			t.Fatalf("the far end does not hold what is left: %+v", g)
		}
	})
}
