package book

import (
	"math"
	"testing"

	"ovillo/render/page"
)

func TestSlotsStandInColumns(t *testing.T) {
	b := usual.slots([]string{"2–17", "2–18", "–", "100"}, usual.figureType, 84, nil, nil)
	for i, it := range b.Items {
		g := it.(page.Glyphs)
		if want := 84 - usual.slotW*float64(3-i); math.Abs(inkOf(g).right-want) > 1e-9 {
			t.Errorf("%q ends at %.3f, want %.3f", g.Text, inkOf(g).right, want)
		}
		if strong := g.Face == page.SansBold; strong != (i%2 == 1) {
			t.Errorf("%q is strong: %v", g.Text, strong)
		}
	}
}

// TestSlotsShrinkTogether: one text too wide for its column makes the whole row smaller, on the same baseline.
func TestSlotsShrinkTogether(t *testing.T) {
	plain := usual.slots([]string{"2–17", "2–18"}, usual.figureType, 84, nil, nil)
	b := usual.slots([]string{"2–17", "102–118"}, usual.figureType, 84, nil, nil)
	first, last := b.Items[0].(page.Glyphs), b.Items[1].(page.Glyphs)
	if first.Size != last.Size || first.Size >= usual.figureType.Size {
		t.Errorf("sizes %v and %v", first.Size, last.Size)
	}
	if first.Base != plain.Items[0].(page.Glyphs).Base {
		t.Errorf("the baseline moved to %v", first.Base)
	}
	if w := inkOf(last).right - inkOf(last).left; w > usual.slotW-1 {
		t.Errorf("%v wide", w)
	}
}

func TestSizeNamesAreNotTornWithoutNeed(t *testing.T) {
	e := edition{sizes: 4, langs: []string{"en", "es"}}
	p := e.pattern()
	for i := range p.Sizes {
		p.Sizes[i].Names["es"] = "pequeña grande"
	}
	s := newSetter(p, Options{}, languages(t, e.langs...), &page.Elem{Tag: "Document"})
	for _, it := range s.sizeNames(s.sides[1]).Items {
		if g := it.(page.Glyphs); g.Text != "pequeña" && g.Text != "grande" {
			t.Errorf("a name reads %q", g.Text)
		}
	}
}
