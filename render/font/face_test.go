package font

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"golang.org/x/image/font/sfnt"

	"ovillo/render/page"
)

var all = []page.Face{page.Sans, page.SansBold, page.Serif, page.SerifBold}

// The figures of the design, read from the files with another tool.
func TestVerticalMeasures(t *testing.T) {
	for f, want := range map[page.Face][4]float64{
		page.Sans:      {1024, 400, 660, 486},
		page.SansBold:  {1024, 400, 660, 491},
		page.Serif:     {1036, 335, 670, 475},
		page.SerifBold: {1036, 335, 670, 475},
	} {
		face := Of(f)
		got := [4]float64{face.ascent, face.descent, face.capHeight, face.xHeight}
		if got != want {
			t.Errorf("%s: ascent, descent, cap and x height %v, want %v", face.Name(), got, want)
		}
	}
}

func TestNamesAreThoseOfTheFiles(t *testing.T) {
	for _, f := range all {
		face := Of(f)
		var buf sfnt.Buffer
		name, err := face.sfnt.Name(&buf, sfnt.NameIDPostScript)
		if err != nil || name != face.Name() {
			t.Errorf("PostScript name %q (%v), want %q", name, err, face.Name())
		}
		if u := face.sfnt.UnitsPerEm(); u != 1000 {
			t.Errorf("%s: %d units an em; widths would be rounded", name, u)
		}
	}
}

// stem measures the upright of the letter l at half its height.
func stem(t *testing.T, f *Face) int {
	t.Helper()
	g, _ := f.glyph('l')
	segments, err := f.sfnt.LoadGlyph(&f.buf, g, f.em, nil)
	if err != nil {
		t.Fatal(err)
	}
	left, right := math.Inf(1), math.Inf(-1)
	var x, y float64
	for _, s := range segments {
		nx, ny := f.thousandths(s.Args[0].X), -f.thousandths(s.Args[0].Y)
		if s.Op == sfnt.SegmentOpLineTo && nx == x && min(y, ny) < 300 && max(y, ny) > 300 {
			left, right = min(left, x), max(right, x)
		}
		last := s.Args[0]
		switch s.Op {
		case sfnt.SegmentOpQuadTo:
			last = s.Args[1]
		case sfnt.SegmentOpCubeTo:
			last = s.Args[2]
		}
		x, y = f.thousandths(last.X), -f.thousandths(last.Y)
	}
	return int(right - left)
}

func TestStems(t *testing.T) {
	for _, f := range all {
		if got := stem(t, Of(f)); got != Of(f).Stem() {
			t.Errorf("%s: stem %d, said to be %d", Of(f).Name(), got, Of(f).Stem())
		}
	}
}

func TestUnknownFaceMeasuresAsSans(t *testing.T) {
	if Of(page.Face(200)) != Of(page.Sans) {
		t.Error("an unknown face does not fall back on the text face")
	}
}

func TestProgramIsACopy(t *testing.T) {
	p := Of(page.Sans).Program()
	if !bytes.Equal(p, sansRegular) {
		t.Fatal("the program differs from the file")
	}
	p[0] ^= 0xFF
	if bytes.Equal(p, sansRegular) {
		t.Error("writing to the program changes the embedded file")
	}
}

func TestBoundsHoldTheLetters(t *testing.T) {
	for _, f := range all {
		b := Of(f).Bounds()
		if b[0] > 0 || b[1] > -200 || b[2] < 1000 || b[3] < 700 {
			t.Errorf("%s: bounds %v", Of(f).Name(), b)
		}
	}
}

func TestLicencesLieBesideTheFiles(t *testing.T) {
	for _, file := range []string{"files/SourceSans3-OFL.txt", "files/SourceSerif4-OFL.txt"} {
		text := read(t, file)
		if !strings.Contains(text, "SIL OPEN FONT LICENSE Version 1.1") || !strings.Contains(text, "Source") {
			t.Errorf("%s is not the licence of the face", file)
		}
	}
}
