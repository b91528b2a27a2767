package draw

import (
	"math"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/sample"
	"ovillo/render/scene"
)

// fixtures are the patterns that all drawings are tested with.
func fixtures() map[string]*plan.Pattern {
	return map[string]*plan.Pattern{
		"leggings": sample.Leggings(), "hat": hat(), "pullover": pullover(), "blanket": blanket(), "roundyoke": roundYoke(),
		"jacket": jacket(), "mitten": mitten(), "upward": upward(), "skirt": skirt(), "motifs": motifs(), "edged": edged(),
		"glove": glove(), "cuffsup": cuffsUp(),
	}
}

// The room of the schematic and of the title drawing on the pages.
const (
	roomW, roomH   = 88.0, 95.0
	titleW, titleH = 76.0, 95.0
)

// placed is the schematic of a pattern with its dimension lines still apart.
func placed(t *testing.T, p *plan.Pattern) []*sheet {
	t.Helper()
	l, err := chosen(p, courses)
	if err != nil {
		t.Fatal(err)
	}
	l.trim()
	l.alike()
	sheets, _, _ := l.dimensioned(roomW, roomH)
	return sheets
}

// lines are all dimension lines of a pattern by letter, in centimetres of fabric.
func lines(t *testing.T, p *plan.Pattern) map[string]float64 {
	t.Helper()
	found := map[string]float64{}
	for _, s := range placed(t, p) {
		for _, d := range s.dims {
			found[d.letter] = d.to.sub(d.from).length()/s.scale + d.cut
			if d.ring > 0 {
				found[d.letter] = 2 * math.Pi * (d.ring - dimOff) / s.scale
			}
		}
	}
	return found
}

// A dimension line is as long as what it measures, to scale: counts over gauge, half of it for a length once around.
func TestDimensionLinesAreToScale(t *testing.T) {
	// A width beside a joint is drawn where its letter has room, a little further down; a leg begins no wider than there
	// is room for at the crotch; the length of a piece down a slanting leg is drawn upright.
	loose := map[string]map[string]float64{
		"leggings": {"C": 0.05, "F": 0.02}, "pullover": {"C": 0.04},
	}
	for name, p := range fixtures() {
		if name == "motifs" {
			continue // widths of rounds seen from above are not counts over gauge
		}
		drawn := lines(t, p)
		for _, m := range p.Measures {
			want := m.Values[p.Shown].Cm()
			if m.Of[0].Kind == plan.Around {
				want /= 2
			}
			tolerance := 0.005
			if v := loose[name][m.Letter]; v > 0 {
				tolerance = v
			}
			if got := drawn[m.Letter]; math.Abs(got-want) > tolerance*want {
				t.Errorf("%s: %s (%s) is drawn %.2f cm long, want %.2f", name, m.Letter, m.Name, got, want)
			}
		}
	}
}

func TestDiscIsAsWideAsItsRoundsAreHigh(t *testing.T) {
	drawn := lines(t, motifs())
	for letter, want := range map[string]float64{"A": 2 * math.Pi * 6, "B": 7 + 2*5, "C": 2 * 5} {
		if got := drawn[letter]; math.Abs(got-want) > 0.05 {
			t.Errorf("%s is drawn %.2f cm long, want %.2f", letter, got, want)
		}
	}
}

func labels(s *scene.Scene) []scene.Label {
	var found []scene.Label
	for _, it := range s.Items {
		if l, ok := it.(scene.Label); ok && !strings.HasPrefix(l.Text, "×") {
			found = append(found, l)
		}
	}
	return found
}

func TestEveryLetterIsDrawnOnce(t *testing.T) {
	for name, p := range fixtures() {
		s, err := Schematic(p, roomW, roomH)
		if err != nil {
			t.Fatal(name, err)
		}
		seen := map[string]int{}
		for _, l := range labels(s) {
			seen[l.Text]++
		}
		for _, m := range p.Measures {
			if seen[m.Letter] != 1 {
				t.Errorf("%s: letter %s is drawn %d times", name, m.Letter, seen[m.Letter])
			}
		}
		if len(seen) != len(p.Measures) {
			t.Errorf("%s: %d letters for %d measures", name, len(seen), len(p.Measures))
		}
	}
}

func TestMeasureWithoutLetterIsNotDrawn(t *testing.T) {
	p := hat()
	p.Measures[0].Letter = ""
	for _, l := range labels(must(Schematic(p, roomW, roomH))) {
		if l.Text == "" || l.Text == "A" {
			t.Errorf("a letter %q is drawn", l.Text)
		}
	}
}

func must(s *scene.Scene, err error) *scene.Scene {
	if err != nil {
		panic(err)
	}
	return s
}

// No letter stands on another one or on a line of another dimension.
func TestLettersKeepClear(t *testing.T) {
	for name, p := range fixtures() {
		keepClear(t, name, placed(t, p))
	}
}

// keepClear reports letters that stand on something, and dimension lines that lie on each other.
func keepClear(t *testing.T, name string, sheets []*sheet) {
	t.Helper()
	for _, s := range sheets {
		for i, d := range s.dims {
			for k, e := range s.dims {
				if i == k {
					continue
				}
				if i < k && d.box().overlaps(e.box()) {
					t.Errorf("%s: %s stands on %s", name, d.letter, e.letter)
				}
				for _, l := range append(e.strokes(), e.ext...) {
					if d.box().meets(l[0], l[1]) {
						t.Errorf("%s: %s stands on the line of %s", name, d.letter, e.letter)
					}
				}
				for _, a := range d.strokes() {
					for _, b := range e.strokes() {
						if closeness(a, b, 0.5) == 1 {
							t.Errorf("%s: the line of %s lies on that of %s", name, d.letter, e.letter)
						}
					}
				}
			}
			if n := struck(d.box(), s.board.walls); n > 0 {
				t.Errorf("%s: %s stands on %d lines of the piece", name, d.letter, n)
			}
			for _, a := range s.arrows {
				if d.box().overlaps(a.box()) {
					t.Errorf("%s: %s stands on the arrow", name, d.letter)
				}
			}
		}
	}
}

// inside reports what of a scene lies outside of it.
func inside(t *testing.T, name string, s *scene.Scene, w, h float64) {
	t.Helper()
	const edge = 0.06
	if s.W > w+1e-9 || s.H > h+1e-9 {
		t.Errorf("%s: the drawing is %.1f by %.1f mm in a room of %.1f by %.1f", name, s.W, s.H, w, h)
	}
	b := inked(s)
	for _, l := range labels(s) {
		d := dimension{letter: l.Text, label: vec{l.X, l.Y}}
		b.join(d.box())
	}
	if b.full && (b.min.x < -edge || b.min.y < -edge || b.max.x > s.W+edge || b.max.y > s.H+edge) {
		t.Errorf("%s: %.2f … %.2f by %.2f … %.2f lies outside %.2f by %.2f", name, b.min.x, b.max.x, b.min.y, b.max.y, s.W, s.H)
	}
}

// inked is the box round all the ink of lines and areas.
func inked(s *scene.Scene) box {
	var b box
	for _, it := range s.Items {
		p, ok := it.(scene.Path)
		if !ok {
			continue
		}
		for _, run := range flatten(p.Cmds) {
			areas := [][]vec{run.pts}
			if p.Stroke != nil {
				areas = stroke(run, p.Width, p.Round)
			}
			for _, area := range areas {
				for _, v := range area {
					b.add(v)
				}
			}
		}
	}
	return b
}

func TestDrawingsStayInTheirRoom(t *testing.T) {
	for name, p := range fixtures() {
		inside(t, name+" schematic", must(Schematic(p, roomW, roomH)), roomW, roomH)
		inside(t, name+" small schematic", must(Schematic(p, 50, 40)), 50, 40)
		inside(t, name+" title", must(Title(p, titleW, titleH)), titleW, titleH)
		for part := -1; part < len(p.Parts); part++ {
			inside(t, name+" here", Here(p, part, 11, 12.5), 11, 12.5)
		}
	}
}

// The schematic must be worth its room: it reaches two of the sides.
func TestDrawingsFillTheirRoom(t *testing.T) {
	for name, p := range fixtures() {
		for kind, s := range map[string]*scene.Scene{"schematic": must(Schematic(p, roomW, roomH)), "title": must(Title(p, titleW, titleH))} {
			b := extent(s.Items)
			w, h := roomW, roomH
			if kind == "title" {
				w, h = titleW, titleH
			}
			if b.width() < 0.93*w && b.height() < 0.93*h {
				t.Errorf("%s: the %s is only %.0f by %.0f mm in a room of %.0f by %.0f", name, kind, b.width(), b.height(), w, h)
			}
		}
	}
}

func TestArrowPointsTheWayOfWork(t *testing.T) {
	for name, down := range map[string]bool{"leggings": true, "hat": true, "pullover": true, "blanket": false, "mitten": false,
		"upward": false, "skirt": true, "glove": false, "cuffsup": false} {
		s := placed(t, fixtures()[name])[0]
		if len(s.arrows) != 1 {
			t.Errorf("%s: %d arrows", name, len(s.arrows))
			continue
		}
		if a := s.arrows[0]; (a.to.y > a.from.y) != down {
			t.Errorf("%s: the arrow points down: %v, want %v", name, !down, down)
		}
	}
}
