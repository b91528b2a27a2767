package draw

import (
	"strconv"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/scene"
)

// throw is motifs of three rounds, the middle one in a second yarn, and a border.
func throw(across, down int) *plan.Pattern {
	m := make1("throw", "blanket")
	square := m.part("square", true, plan.StartRing).dc(12).with(1).dc(24).with(0).dc(36)
	square.Motifs = plan.Nums{across * down}
	whole := m.part("whole", true, plan.StartGrid)
	whole.Grid = &plan.Grid{Motif: square.index, Across: plan.Nums{across}, Down: plan.Nums{down}, Each: plan.Lengths{cmLength(9)}}
	edge := m.part("edge", true, plan.StartFrom).with(1).row(300, scHigh, stitch.SC).row(308, scHigh, stitch.SC)
	edge.Start.Runs = []plan.Ref{{Kind: plan.RefAround, Part: whole.index}}
	border := plan.MeasuredOn{Kind: plan.Height, Part: edge.index}
	m.measure("width", plan.MeasuredOn{Kind: plan.Width, Part: whole.index}, border, border)
	m.measure("length", plan.MeasuredOn{Kind: plan.Height, Part: whole.index}, border, border)
	return m.p
}

func writing(s *scene.Scene) map[string]int {
	out := map[string]int{}
	for _, it := range s.Items {
		if l, ok := it.(scene.Label); ok {
			out[l.Text]++
		}
	}
	return out
}

// The plan of joined motifs numbers each of them once, whatever their number, within the room there is.
func TestMotifsAreNumbered(t *testing.T) {
	for _, n := range [][2]int{{1, 1}, {1, 30}, {3, 4}, {40, 50}} {
		p := throw(n[0], n[1])
		s := Motifs(p, 1, 72, 110)
		sound(t, "motifs", s)
		if s.W > 72.001 || s.H > 110.001 {
			t.Errorf("%v: %v by %v", n, s.W, s.H)
		}
		got := writing(s)
		for i := 1; i <= n[0]*n[1]; i++ {
			if got[strconv.Itoa(i)] != 1 {
				t.Errorf("%v: number %d stands %d times", n, i, got[strconv.Itoa(i)])
			}
		}
		if len(got) != n[0]*n[1] {
			t.Errorf("%v: %d numbers", n, len(got))
		}
	}
	if Motifs(throw(2, 2), 0, 72, 110) != nil {
		t.Error("a motif by itself has no plan")
	}
}

// The schematic is to scale, with a line for each measure; one of unmeasured motifs is not drawn.
func TestMosaicIsToScale(t *testing.T) {
	p := throw(3, 5)
	s := must(Schematic(p, roomW, roomH))
	if got := writing(s); got["A"] != 1 || got["B"] != 1 {
		t.Errorf("letters: %v", got)
	}
	m := mosaicOf(p)
	pen := &pen{}
	wide, high := m.fit(pen, roomW, roomH, 0, 0, 0, 0)
	// 3 motifs of 9 cm and two rounds of 0.5 cm at either side are 29 cm; 5 are 47 cm.
	if r := wide / high; r < 29.0/47-1e-9 || r > 29.0/47+1e-9 {
		t.Errorf("%v by %v is not 29 by 47", wide, high)
	}
	p.Parts[1].Grid.Each = nil
	if s := must(Schematic(p, roomW, roomH)); len(s.Items) > 0 {
		t.Error("motifs of no known size are drawn to scale")
	}
	sound(t, "title", must(Title(p, titleW, titleH)))
}

// A pattern with other parts besides is drawn as any other.
func TestMosaicWithOtherParts(t *testing.T) {
	p := throw(2, 2)
	(&maker{p}).part("pocket", false, plan.StartChain).dc(20).even(9)
	if mosaicOf(p) != nil {
		t.Error("a pocket is no border")
	}
	for part := -1; part < len(p.Parts); part++ {
		sound(t, "here", Here(p, part, 11, 12.5))
	}
}
