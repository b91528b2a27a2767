package draw

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/scene"
)

// A telephone held upright shows a picture at most 320 pixels wide, and letters of under eight cannot be read: common practice, no
// source. At its own size a millimetre is 96/25.4 pixels.
func onPhone(s *scene.Scene) float64 { return s.SmallestLetter() * min(96/25.4, 320/s.W) }

// Every drawing of every source can be read on a telephone and has its words, in the width that files have and in that of a
// telephone, for either hand. A chart is whole unless a width is asked for, and can be too wide then, which the command says.
func TestFilesCanBeReadOnAPhone(t *testing.T) {
	looked := 0
	for _, p := range sources(t) {
		for _, o := range []FileOptions{{}, {Wide: 85}, {Left: true}, {LowInk: true, Wide: 85}} {
			o.Langs = both
			for _, d := range Drawings(p) {
				for _, s := range d.Sheets(o) {
					looked++
					chart := d.Name != "title" && d.Name != "map" && d.Name != "schematic"
					if px := onPhone(s); s.SmallestLetter() > 0 && px < 8-0.05 && (o.Wide > 0 || !chart) {
						t.Errorf("%s, %s (%v mm): letters of %.1f pixels", p.Name, d.Name, o.Wide, px)
					}
					for _, l := range both {
						if s.Title[l.Tag()] == "" || s.Desc[l.Tag()] == "" {
							t.Errorf("%s, %s: not described in %s", p.Name, d.Name, l.Tag())
						}
					}
					if o.Wide > 0 && s.W > o.Wide+0.3 {
						t.Errorf("%s, %s: %.1f mm wide, %v asked", p.Name, d.Name, s.W, o.Wide)
					}
					insideFile(t, p.Name+" "+d.Name, s)
				}
			}
		}
	}
	if looked < 100 {
		t.Errorf("only %d drawings were looked at", looked)
	}
}

// insideFile checks that nothing comes nearer to the edge than its margin, letters included.
func insideFile(t *testing.T, name string, s *scene.Scene) {
	t.Helper()
	b := inked(s)
	for _, l := range labels(s) {
		w := keyedWidth(l.Text) * l.Height / keyedEm
		x := l.X - map[scene.Anchor]float64{scene.Middle: 0.5, scene.End: 1}[l.Anchor]*w
		b.join(box{vec{x, l.Y - l.Height*0.34}, vec{x + w, l.Y + l.Height*0.34}, true})
	}
	const slack = 1.0
	if b.min.x < fileMargin-slack || b.min.y < fileMargin-slack || b.max.x > s.W-fileMargin+slack || b.max.y > s.H-fileMargin+slack {
		t.Errorf("%s: %.2f … %.2f by %.2f … %.2f in %.2f by %.2f", name, b.min.x, b.max.x, b.min.y, b.max.y, s.W, s.H)
	}
}

// The names can be typed, and each is there once.
func TestNamesOfDrawings(t *testing.T) {
	p := throw(4, 5)
	p.Charts = []plan.Chart{{Name: "throw", Rows: [][]int{{0, 1}}}, {Name: "wave", Rows: [][]int{{1}}}, {Name: "title", Rows: [][]int{{1}}}}
	p.Parts[1].Name = "throw"
	var names []string
	for _, d := range Drawings(p) {
		names = append(names, d.Name)
	}
	require.Equal(t, []string{"title", "map", "schematic", "throw", "throw-chart", "wave", "title-chart"}, names)
	for _, d := range Drawings(&plan.Pattern{}) {
		require.Empty(t, d.Sheets(FileOptions{Langs: both}), d.Name)
	}
}

// A key reads from left to right below its drawing, in both languages, and says what the table of sizes says.
func TestKeyOfTheSchematic(t *testing.T) {
	p := hat()
	for _, left := range []bool{false, true} {
		s := sheetOf(t, p, "schematic", FileOptions{Langs: both, Left: left})
		var text []string
		at := map[string]float64{}
		for _, l := range labels(s) {
			text = append(text, strings.ReplaceAll(l.Text, "\u00a0", " "))
			if _, known := at[l.Text]; len(l.Text) == 1 && known {
				require.Less(t, l.X, 10.0, "the letter of the key stands at its left")
			}
			at[l.Text] = l.X
		}
		for _, m := range p.Measures {
			n := 0
			for _, s := range text {
				if s == m.Letter {
					n++
				}
			}
			require.Equal(t, 2, n, "%s stands on its line and in the key", m.Letter)
		}
		all := strings.Join(text, "|")
		require.Contains(t, all, "48 cm; the line shows half")
		require.Contains(t, all, "48 cm; la línea muestra la mitad")
	}
}

func sheetOf(t *testing.T, p *plan.Pattern, name string, o FileOptions) *scene.Scene {
	t.Helper()
	for _, d := range Drawings(p) {
		if d.Name == name {
			sheets := d.Sheets(o)
			require.Len(t, sheets, 1)
			return sheets[0]
		}
	}
	t.Fatalf("no %s", name)
	return nil
}

// With little ink nothing has a colour.
func TestFilesOfLittleInk(t *testing.T) {
	for _, it := range sheetOf(t, pullover(), "title", FileOptions{Langs: both, LowInk: true}).Items {
		if p, ok := it.(scene.Path); ok {
			for _, c := range []*page.Color{p.Fill, p.Stroke} {
				require.True(t, c == nil || *c == black || *c == white, "%v", c)
			}
		}
	}
}

// Long words of a key are broken between words, never at a hard space, and none is lost.
func TestKeysAreBroken(t *testing.T) {
	long := "a stitch that has a long name and goes on for quite a while, 58\u00a0cm; the line shows half of it, laid flat"
	s := Keyed(&scene.Scene{W: 20, H: 10, Items: []scene.Item{scene.Label{Text: "x", Height: 3}}},
		[]KeyItem{{sign("A", page.Serif), map[string]string{"en-US": long, "es": "corto"}}}, both...)
	var lines []string
	for _, l := range labels(s)[2:] {
		lines = append(lines, l.Text)
		require.LessOrEqual(t, l.X+keyedWidth(l.Text), s.W+1e-9)
		require.GreaterOrEqual(t, l.Y, 10.0)
		require.LessOrEqual(t, l.Y, s.H)
	}
	i := slices.Index(lines, "corto")
	require.GreaterOrEqual(t, i, 2)
	require.Equal(t, long, strings.Join(lines[:i], " "))
	require.Equal(t, 60.0, s.W)
	// A word that is wider than the drawing makes it wider.
	wide := Keyed(&scene.Scene{W: 20, H: 10}, []KeyItem{{sign("A", page.Serif), map[string]string{"en-US": strings.Repeat("m", 60)}}}, both[:1]...)
	require.Greater(t, wide.W, 100.0)
	require.Same(t, s, Keyed(s, nil, both...))
}

// A chart that is cut says on every sheet that what stands on two is worked once; a whole one has nothing of the kind.
func TestSheetsSayWhatTheyShare(t *testing.T) {
	for _, d := range Drawings(tide(40, 12)) {
		if d.Name != "tide" {
			continue
		}
		for wide, several := range map[float64]bool{0: false, 100: true} {
			sheets := d.Sheets(FileOptions{Langs: both, Wide: wide})
			require.Equal(t, several, len(sheets) > 1)
			for _, s := range sheets {
				text := ""
				for _, l := range labels(s) {
					text += " " + l.Text
				}
				require.Equal(t, several, strings.Contains(text, "is worked once"), text)
				require.Equal(t, several, strings.Contains(text, "una sola vez"), text)
			}
		}
	}
}
