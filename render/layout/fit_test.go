package layout

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/render/font"
	"ovillo/render/page"
	"ovillo/render/rich"
)

var body = Style{Face: page.Sans, Strong: page.SansBold, Size: 11, Leading: 5}

func texts(lines []Line) []string {
	var out []string
	for _, l := range lines {
		out = append(out, l.String())
	}
	return out
}

func same(a, b []string) bool {
	return strings.Join(a, "|") == strings.Join(b, "|") && len(a) == len(b)
}

// words draws paragraphs of the kinds of pieces a pattern holds.
var words = rapid.Custom(func(t *rapid.T) rich.Text {
	piece := rapid.SampledFrom([]string{
		"dc", "in", "each", "st", "around", "3\u00A0cad", "112\u00A0(", "116", ",\u00A0120)", "2–17", "front-to-back", "y/o",
		"entrepierna", "a", "[FPdc", "esp]", "studio.example/leggings", "—", "½", "1.ª",
	})
	n := rapid.IntRange(1, 40).Draw(t, "n")
	var text rich.Text
	for i := range n {
		s := piece.Draw(t, "piece")
		if i > 0 && rapid.IntRange(0, 5).Draw(t, "space") > 0 {
			s = " " + s
		}
		text = append(text, rich.Run{Text: s, Strong: rapid.Bool().Draw(t, "strong")})
	}
	return text
})

// TestBreakLaws: no line is wider than its column, the lines joined give the text back, and every line ends where a line
// may end.
func TestBreakLaws(t *testing.T) { rapid.Check(t, breakLaws) }

// breakLaws draws a paragraph and a column.
func breakLaws(t *rapid.T) {
	text := words.Draw(t, "text")
	measure := rapid.Float64Range(8, 120).Draw(t, "measure")
	indent := rapid.Float64Range(0, 7).Draw(t, "indent")
	lines := Break(text, body, measure, indent)
	letters := func(s string) string { return strings.NewReplacer(" ", "", "\u00A0", "").Replace(s) }
	joined := ""
	for i, l := range lines {
		if l.End() > measure+tolerance {
			t.Fatalf("line %q ends at %.3f in a column of %.3f", l, l.End(), measure)
		}
		if i > 0 && l.X != 0 {
			t.Fatalf("line %d starts at %.3f", i, l.X)
		}
		s := l.String()
		if s != strings.Trim(s, " ") {
			t.Fatalf("line %q keeps a space at its edge", s)
		}
		joined += s
	}
	if got, want := letters(joined), letters(text.String()); got != want {
		t.Fatalf("lines give %q, text is %q", got, want)
	}
}

// TestBreakKeepsPieces: in a column that every piece fits into, lines joined by a space (or by nothing after a hyphen or
// slash inside a word) are the text.
func TestBreakKeepsPieces(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 30).Draw(t, "n")
		piece := rapid.SampledFrom([]string{"dc", "3\u00A0cad", "112\u00A0(116,\u00A0120,\u00A0124)", "2–17", "front-to-back", "y/o", "ch-4", "cada"})
		var list []string
		for range n {
			list = append(list, piece.Draw(t, "piece"))
		}
		text := strings.Join(list, " ")
		joined := ""
		for i, s := range texts(Break(rich.T(text), body, 45, 0)) {
			if i > 0 && !(strings.HasSuffix(joined, "front-") || strings.HasSuffix(joined, "to-")) {
				joined += " "
			}
			joined += s
		}
		if joined != text {
			t.Fatalf("lines give\n%q, text is\n%q", joined, text)
		}
	})
}

// TestBreakIsOptimal compares the chosen lines with all other ways to break a short text.
func TestBreakIsOptimal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 9).Draw(t, "n")
		piece := rapid.SampledFrom([]string{"chain", "crochet", "stitches", "and", "the", "through", "marker", "loops"})
		var list []string
		for range n {
			list = append(list, piece.Draw(t, "piece"))
		}
		measure := rapid.Float64Range(20, 45).Draw(t, "measure")
		got := raggedness(texts(Break(rich.T(strings.Join(list, " ")), body, measure, 0)), measure)
		for cut := range 1 << (n - 1) {
			var lines []string
			line := list[0]
			for i := 1; i < n; i++ {
				if cut>>(i-1)&1 == 1 {
					lines = append(lines, line)
					line = list[i]
				} else {
					line += " " + list[i]
				}
			}
			lines = append(lines, line)
			if other := raggedness(lines, measure); other < got-1e-6 {
				t.Fatalf("%q would cost %.3f, chosen lines cost %.3f", lines, other, got)
			}
		}
	})
}

// raggedness is what lines of plain words cost.
func raggedness(lines []string, measure float64) float64 {
	sum := 0.0
	for i, s := range lines {
		w := body.Width(s, false)
		if w > measure+tolerance {
			return math.Inf(1)
		}
		sum += costLine
		if i < len(lines)-1 {
			sum += costEmpty * (measure - w) / measure * (measure - w) / measure
		} else if i > 0 && !strings.Contains(s, " ") && len(s) <= 7 {
			sum += costStub
		}
	}
	return sum
}

func TestBreakPlaces(t *testing.T) {
	for _, c := range []struct {
		name, text string
		measure    float64
		want       []string
	}{
		{"no-break spaces hold", "work 12\u00A0dc around", 16, []string{"work", "12\u00A0dc", "around"}},
		{"a range is never broken", "rounds 112–118 only", 20, []string{"rounds", "112–118", "only"}},
		{"a chain space is never broken", "the next ch-4 sp", 20, []string{"the next", "ch-4 sp"}},
		{"a compound may be broken", "work self-striping", 22, []string{"work self-", "striping"}},
		{"single letters each side hold", "redonda y/o recta", 17, []string{"redonda", "y/o recta"}},
		{"no word stands alone at the end", "dc in each stitch around. Join.", 48, []string{"dc in each stitch", "around. Join."}},
		{"initials keep their number", "according to EN 14682 and", 30, []string{"according to", "EN 14682 and"}},
		{"soft hyphens are dropped", "cro\u00ADchet", 40, []string{"crochet"}},
		{"a line end is kept", "one\ntwo three", 40, []string{"one", "two three"}},
		{"an address is torn at its marks", "studio.example/vega/corrections", 30, []string{"studio.example/", "vega/corrections"}},
		{"spaces at the ends are dropped", " dc around ", 40, []string{"dc around"}},
		{"nothing", "", 40, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := texts(Break(rich.T(c.text), body, c.measure, 0)); !same(got, c.want) {
				t.Errorf("lines %q, want %q", got, c.want)
			}
		})
	}
}

func TestBreakIndent(t *testing.T) {
	lines := Break(rich.T("With right side facing, join sand in first ch"), body, 60, 20)
	if lines[0].X != 20 || lines[0].End() > 60 {
		t.Errorf("first line from %.1f to %.1f, want it to start at 20 and to end before 60", lines[0].X, lines[0].End())
	}
	lines = Break(rich.T("entrepierna"), body, 30, 25)
	if len(lines) != 2 || len(lines[0].Runs) != 0 || lines[1].String() != "entrepierna" {
		t.Errorf("a word that does not fit beside the indent: %q, want it on the second line", texts(lines))
	}
}

func TestBreakMaxRunes(t *testing.T) {
	s := body
	s.MaxRunes = 20
	for _, l := range Break(rich.T("a line may be wide enough and still be too long to read with ease"), s, 200, 0) {
		if n := len([]rune(l.String())); n > 20 {
			t.Errorf("%q has %d characters", l, n)
		}
	}
}

// TestRunsMeet: runs stand where the one before ends, with the kerning between them where the face is the same.
func TestRunsMeet(t *testing.T) {
	text := rich.Text{{Text: "112 ("}, {Text: "116", Strong: true}, {Text: ", A"}, {Text: "V", Link: "https://a.example"}, {Text: ")"}}
	lines := Break(text, body, 80, 0)
	if len(lines) != 1 || len(lines[0].Runs) != 5 {
		t.Fatalf("lines %+v, want one of five runs", lines)
	}
	runs := lines[0].Runs
	for i := 1; i < len(runs); i++ {
		gap := runs[i].X - runs[i-1].X - runs[i-1].Width
		if runs[i-1].Text == ", A" {
			want := float64(font.Of(page.Sans).Kern('A', 'V')) * 11 / 1000 * millimetres
			if want >= 0 || math.Abs(gap-want) > 1e-9 {
				t.Errorf("gap between A and V %.4f, want the kerning %.4f", gap, want)
			}
		} else if i == 1 || i == 2 {
			if math.Abs(gap) > 1e-9 {
				t.Errorf("gap before %q is %.4f", runs[i].Text, gap)
			}
		}
	}
	if runs[1].Face != page.SansBold || runs[0].Face != page.Sans {
		t.Errorf("faces %v %v", runs[0].Face, runs[1].Face)
	}
}

// TestPlainRunsJoin: runs that look alike are one run, so that an extracted text has no seams.
func TestPlainRunsJoin(t *testing.T) {
	lines := Break(rich.Text{{Text: "ch "}, {Text: "3, "}, {Text: "dc"}}, body, 80, 0)
	if len(lines) != 1 || len(lines[0].Runs) != 1 || lines[0].Runs[0].Text != "ch 3, dc" {
		t.Errorf("lines %+v, want one run", lines)
	}
}

// TestWidthIsTheFonts: the width of a line is what the font measures for it as a whole.
func TestWidthIsTheFonts(t *testing.T) {
	for _, track := range []float64{0, -0.012, 0.05} {
		s := Style{Face: page.Serif, Strong: page.SerifBold, Size: 17, Leading: 7.5, Track: track}
		l := Break(rich.T("Tiro, con pretina: AVATAR"), s, 500, 0)[0]
		if want := s.Width(l.String(), false); math.Abs(l.Width-want) > 1e-9 {
			t.Errorf("track %v: width %.6f, want %.6f", track, l.Width, want)
		}
	}
}

func BenchmarkBreak(b *testing.B) {
	text := rich.T(strings.Repeat("Con el derecho de frente, unir arena en la 1.ª cad del esp de 4 cad. ", 6))
	b.ReportAllocs()
	for b.Loop() {
		Break(text, body, 84, 0)
	}
}
