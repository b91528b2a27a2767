package draw

import (
	"strings"
	"testing"

	"ovillo/render/scene"
)

// counts are the numbers of pieces that a schematic writes.
func counts(s *scene.Scene) []string {
	var out []string
	for _, it := range s.Items {
		if l, ok := it.(scene.Label); ok && strings.HasPrefix(l.Text, "×") {
			out = append(out, l.Text)
		}
	}
	return out
}

// Of pieces that are alike one is drawn, with their number beside it; mirror images are two drawings.
func TestAlikePiecesAreDrawnOnce(t *testing.T) {
	all := sources(t)
	for name, want := range map[string]string{
		"ria-vest":         "×2",    // the armhole bands; the halves of the front hang on it
		"seams":            "×2 ×2", // back and front, and the sleeves
		"marea-bootees":    "×2 ×2", // upper and sole
		"salitre-seal":     "×2 ×2", // flippers in front and behind
		"mirrored-fronts":  "",      // mirror images
		"marisma-leggings": "",
	} {
		s := must(Schematic(all[name], roomW, roomH, both...))
		if got := strings.Join(counts(s), " "); got != want {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
}

// A piece that a measure is taken from is drawn, even if another is like it.
func TestMeasuredPieceIsDrawn(t *testing.T) {
	m := make1("two", "")
	a := m.part("a", false, 1).dc(30).even(9)
	b := m.part("b", false, 1).dc(30).even(9)
	m.measure("wide", widthOf(a, 1))
	m.measure("tall", high(b))
	s := must(Schematic(m.p, roomW, roomH, both...))
	if got := len(labels(s)); got != 2 || len(counts(s)) > 0 {
		t.Errorf("%d letters and %v", got, counts(s))
	}
}
