package font

import (
	"math"
	"testing"

	"ovillo/render/page"
)

// Letters stand where the width of what is before them says, and end where the width of the whole does.
func TestLetters(t *testing.T) {
	for _, face := range []page.Face{page.Sans, page.SansBold, page.Serif, page.SerifBold} {
		f := Of(face)
		const pt = 1000 / millimetres // a thousandth of an em is a millimetre
		for _, s := range []string{"A", "AVANTE", "1.234", "vuelta 12", "ma\u0303o"} {
			letters, width := f.Letters(s)
			if math.Abs(float64(width)-f.Width(s, pt)) > 1e-6 {
				t.Errorf("%s, %q: width %d, measured %v", f.Name(), s, width, f.Width(s, pt))
			}
			runes := []rune(Compose(s))
			if len(letters) != len(runes) {
				t.Fatalf("%q: %d letters", s, len(letters))
			}
			for i, l := range letters {
				end := l.X + f.Advance(runes[i])
				if l.Rune != runes[i] || math.Abs(float64(end)-f.Width(string(runes[:i+1]), pt)) > 1e-6 {
					t.Errorf("%s, %q: letter %d ends at %d", f.Name(), s, i, end)
				}
			}
		}
	}
}

// Capitals reach from the baseline to the height that the face gives for them, and a blank has no outline.
func TestOutlines(t *testing.T) {
	for _, face := range []page.Face{page.Sans, page.SansBold, page.Serif, page.SerifBold} {
		f := Of(face)
		_, _, caps, _ := f.Vertical()
		for _, r := range "HEX" {
			top, bottom := math.Inf(1), math.Inf(-1)
			for _, c := range f.Outline(r) {
				if c.Op != 'Z' {
					top, bottom = min(top, c.P[0].Y), max(bottom, c.P[0].Y)
				}
			}
			if math.Abs(top+float64(caps)) > 6 || math.Abs(bottom) > 6 {
				t.Errorf("%s, %c: from %.0f to %.0f, capitals are %d", f.Name(), r, top, bottom, caps)
			}
		}
		if got := f.Outline(' '); len(got) != 0 {
			t.Errorf("%s: a blank is drawn: %v", f.Name(), got)
		}
		for _, r := range "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyzñáéíóúü¿¡" {
			if cmds := f.Outline(r); len(cmds) < 4 || cmds[0].Op != 'M' || cmds[len(cmds)-1].Op != 'Z' {
				t.Errorf("%s: no outline of %c: %v", f.Name(), r, cmds)
			}
		}
	}
}
