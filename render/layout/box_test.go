package layout

import (
	"math"
	"strings"
	"testing"

	"ovillo/render/font"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/scene"
)

func TestSetPlacesBaselines(t *testing.T) {
	lines := Break(rich.T("dc in each stitch around, then join with a slip stitch in the first one"), body, 50, 0)
	p := &page.Elem{Tag: "P"}
	b := Set(lines, body, 12, p)
	if len(lines) < 2 || b.H != 5*float64(len(lines)) {
		t.Fatalf("%d lines are %v high", len(lines), b.H)
	}
	for i, it := range b.Items {
		g := it.(page.Glyphs)
		if g.X != 12 || g.Elem != p || math.Abs(g.Base-(float64(i)*5+3.71)) > 0.005 {
			t.Errorf("line %d at %.2f %.2f, want 12 and the baseline 3.71 below its top", i, g.X, g.Base)
		}
	}
}

func TestSetRight(t *testing.T) {
	lines := Break(rich.T("8 dc, 2 ch-4 sps"), body, 60, 0)
	g := SetRight(lines, body, 84, nil).Items[0].(page.Glyphs)
	if end := g.X + font.Of(g.Face).Width(g.Text, g.Size); math.Abs(end-84) > 1e-9 {
		t.Errorf("ends at %v", end)
	}
	for _, b := range []Box{TextRight("28–31", body, true, 84, nil), TextCentred("28–31", body, true, 84, nil)} {
		g := b.Items[0].(page.Glyphs)
		w := font.Of(page.SansBold).Width(g.Text, g.Size)
		if math.Abs(g.X+w-84) > 1e-9 && math.Abs(g.X+w/2-84) > 1e-9 {
			t.Errorf("from %v, %v wide", g.X, w)
		}
	}
}

func TestSetLinks(t *testing.T) {
	p := &page.Elem{Tag: "P"}
	lines := Break(rich.Text{{Text: "See "}, {Text: "a.example", Link: "https://a.example"}}, body, 60, 0)
	b := Set(lines, body, 0, p)
	if len(p.Kids) != 1 || p.Kids[0].Tag != "Link" {
		t.Fatalf("kids %v, want a Link", p.Kids)
	}
	var found bool
	for _, it := range b.Items {
		if a, ok := it.(page.Anchor); ok {
			found = a.URI == "https://a.example" && a.Elem == p.Kids[0] && a.X > 5 && a.H == 5
		}
	}
	if !found {
		t.Errorf("no anchor over the link in %v", b.Items)
	}
}

func TestFacing(t *testing.T) {
	long, short := Box{H: 20}, Box{H: 10}
	foot := Text("44", body, false, 0, nil)
	b := Facing(1.25, Side{long, foot}, Side{short, Text("44", body, false, 96, nil)})
	if b.H != 26.25 {
		t.Errorf("height %v, want 20 + 1.25 + 5", b.H)
	}
	x, y := b.Items[0].(page.Glyphs), b.Items[1].(page.Glyphs)
	if x.Base != y.Base || math.Abs(x.Base-21.25-3.71) > 0.005 {
		t.Errorf("counts at %v and %v, want both 21.25 below the top", x.Base, y.Base)
	}
	if b = Facing(1.25, Side{Top: long}, Side{Top: short}); b.H != 20 {
		t.Errorf("height without a foot %v, want 20", b.H)
	}
}

func TestDrawing(t *testing.T) {
	s := &scene.Scene{W: 30, H: 20, Items: []scene.Item{
		scene.Path{Cmds: []page.Cmd{move(0, 0), to(30, 20)}, Width: 0.2, Stroke: &page.Black},
		scene.Label{X: 15, Y: 10, Text: "A", Height: 4, Face: page.SerifBold},
	}}
	fig := &page.Elem{Tag: "Figure"}
	b := Drawing(s, 46, fig)
	var outer Box
	outer.Put(0, 100, b)
	if *fig.Box != [4]float64{46, 100, 30, 20} {
		t.Errorf("figure at %v", *fig.Box)
	}
	path := outer.Items[0].(page.Path)
	if path.Cmds[1].P[0] != (page.Point{X: 76, Y: 120}) || path.Elem != fig {
		t.Errorf("path %v", path)
	}
	if first := s.Items[0].(scene.Path).Cmds[0].P[0]; first != (page.Point{}) {
		t.Errorf("the scene itself was moved to %v", first)
	}
	g := outer.Items[1].(page.Glyphs)
	cap := font.Of(page.SerifBold).CapHeight(g.Size)
	w := font.Of(page.SerifBold).Width("A", g.Size)
	if math.Abs(g.Base-cap/2-110) > 1e-9 || math.Abs(g.X+w/2-61) > 1e-9 || math.Abs(g.Size-4*72/25.4) > 1e-9 {
		t.Errorf("letter at %.2f %.2f, %.2f pt", g.X, g.Base, g.Size)
	}
}

func TestShiftMovesEverything(t *testing.T) {
	for _, it := range []page.Item{
		page.Glyphs{X: 1, Base: 2}, page.Picture{X: 1, Y: 2}, page.Anchor{X: 1, Y: 2}, Rule(1, 2, 1, 2, 0.1), Circle(0, 2, 1, 0.2),
	} {
		var x, y float64
		switch m := Shift(it, 10, 20).(type) {
		case page.Glyphs:
			x, y = m.X, m.Base
		case page.Picture:
			x, y = m.X, m.Y
		case page.Anchor:
			x, y = m.X, m.Y
		case page.Path:
			x, y = m.Cmds[0].P[0].X, m.Cmds[0].P[0].Y
		}
		if x != 11 || y != 22 {
			t.Errorf("%T moved to %v %v", it, x, y)
		}
	}
}

func TestSnap(t *testing.T) {
	for in, want := range map[float64]float64{0: 0, 1.25: 1.25, 28: 28.75, 5.0000001: 5, 230: 230} {
		if got := Snap(in); got != want {
			t.Errorf("Snap(%v) = %v, want %v", in, got, want)
		}
	}
}

func TestDump(t *testing.T) {
	var b Box
	b.Put(15, 31, Set(Break(rich.Text{{Text: "112\u00A0("}, {Text: "116", Strong: true}, {Text: ")"}}, body, 84, 0), body, 0, nil))
	b.Put(0, 31, Text("112", body, false, 111, nil))
	b.Add(Rule(15, 30, 195, 30, 0.25), Frame(100, 31.7, 3.6, 3.6, 0.22), Frame(105, 31.7, 3.6, 3.6, 0.22))
	fig := &page.Elem{Tag: "Figure"}
	b.Put(15, 60, Drawing(&scene.Scene{W: 10, H: 10, Items: []scene.Item{
		scene.Path{Cmds: []page.Cmd{move(0, 0), to(10, 10)}}, scene.Label{Text: "A", Height: 4},
	}}, 0, fig))
	doc := &page.Document{
		Pages:   []page.Page{{W: 210, H: 297, Label: "1", Items: b.Items}},
		Outline: []page.Outline{{Title: "Body", Level: 1, Page: 0, Y: 31}},
	}
	want := strings.TrimPrefix(`
page 1, 210 × 297
30.00 15 rule 0.25 180 × 0
31.70 100 frame 0.22 8.6 × 3.6, 2 paths
34.71 15 [sans 11] 112~(«116») | 111 112
60.00 15 drawing 10 × 10: A

outline
  Body, page 1 at 31
`, "\n")
	if got := Dump(doc); got != want {
		t.Errorf("dump\n%s\nwant\n%s", got, want)
	}
}
