package draw

import (
	"math"
	"strings"
	"testing"

	"ovillo/compile/plan"
)

// bag has a long strap beside it.
func bag(rows int) *plan.Pattern {
	m := make1("bag", "bag")
	body := m.part("body", false, plan.StartChain).dc(40).even(19)
	strap := m.part("strap", false, plan.StartChain).dc(6).even(rows - 1)
	m.measure("width", widthOf(body, 1))
	m.measure("height", high(body))
	m.measure("strap", high(strap))
	m.measure("wide", widthOf(strap, 1))
	return m.p
}

// broken is the layout of a schematic with its breaks.
func brokenLayout(t *testing.T, p *plan.Pattern) *layout {
	t.Helper()
	l := laid(t, p)
	l.breaks()
	return l
}

// A strap four times as long as the bag is drawn as long as the bag, broken in its middle; its line and the scale of all other
// pieces are what they would be with a strap of that length, and together with what is left out the line is as long as the strap.
func TestLongPiecesAreBroken(t *testing.T) {
	l := brokenLayout(t, bag(80))
	body, strap := only(t, l, "body"), only(t, l, "strap")
	if body.brake != nil || strap.brake == nil {
		t.Fatal("not the strap alone is broken")
	}
	about(t, "the strap is drawn", strap.bounds().height(), 20)
	about(t, "what is left out", strap.brake.cut, 60)
	about(t, "its width", strap.widthAt(3), 3)
	sheets, _, _ := l.dimensioned(roomW, roomH)
	for _, s := range sheets {
		for _, d := range s.dims {
			if d.letter == "C" {
				about(t, "the line and what is left out", d.to.sub(d.from).length()/s.scale+d.cut, 80)
			}
		}
	}
	keepClear(t, "bag", sheets)
	p := bag(80)
	s := must(Schematic(p, roomW, roomH, both...))
	inside(t, "bag", s, roomW, roomH)
	if !strings.Contains(s.Desc["en-US"], "A break means") || !strings.Contains(s.Desc["es"], "Un corte") || !strings.Contains(s.Desc["en-US"], "80 cm") {
		t.Errorf("the break is not described: %s", s.Desc["en-US"])
	}
	short := must(Schematic(bag(20), roomW, roomH, both...))
	if a, b := extent(s.Items), extent(short.Items); math.Abs(a.height()-b.height()) > 3 {
		t.Errorf("the bag is drawn %.0f mm tall with a long strap, and %.0f with a short one", a.height(), b.height())
	}
}

// Pieces are broken only where they are much longer than wide and than all others, and even enough.
func TestWhatIsNotBroken(t *testing.T) {
	scarf := func(sts, rows int) *plan.Pattern {
		m := make1("scarf", "scarf")
		m.part("scarf", false, plan.StartChain).dc(sts).even(rows - 1)
		return m.p
	}
	tapers := make1("tapers", "")
	w := tapers.part("tapers", false, plan.StartChain).dc(20)
	w.slope(4, 99)
	joined := bag(80)
	joined.Parts[1].From = []plan.Origin{{Kind: plan.RefEdge, Part: 0, Row: plan.Nums{20}, From: plan.Nums{1}, To: plan.Nums{6}, Of: plan.Nums{40}}}
	joined.Parts[1].Start.Kind = plan.StartFrom
	for name, c := range map[string]struct {
		p    *plan.Pattern
		want bool
	}{
		"a strap": {bag(80), true}, "a short strap": {bag(25), false}, "a long scarf": {scarf(20, 150), true},
		"a scarf": {scarf(40, 150), false}, "a wedge": {tapers.p, false}, "a strap on its bag": {joined, false},
	} {
		if got := brokenLayout(t, c.p).broken(); got != c.want {
			t.Errorf("%s is broken: %v", name, got)
		}
		all(t, name, c.p)
	}
}
