package draw

import (
	"strings"
	"testing"

	"ovillo/render/scene"
)

// marked are the heavy lines, the dots and the rows of circles of a schematic.
func marked(s *scene.Scene) (heavy, dots, circles int) {
	for _, it := range s.Items {
		p, ok := it.(scene.Path)
		switch {
		case !ok:
		case p.Stroke != nil && p.Width == startWide && p.Fill == nil:
			heavy++
		case p.Stroke == nil && count(p.Cmds, 'C') == 4:
			dots++
		case p.Stroke != nil && p.Fill != nil && count(p.Cmds, 'C') >= 8:
			circles++
		}
	}
	return heavy, dots, circles
}

// Every piece that begins by itself is marked where it begins: with a heavy line on its chain, or a dot in its ring. Where stitches
// wait for another piece there are circles; and both are explained, in the description and on the page, only where they are drawn.
func TestBeginningsAreMarked(t *testing.T) {
	all := sources(t)
	for name, want := range map[string][3]int{
		"marisma-leggings":   {1, 0, 2}, // the waistband; the legs on the stitches of the body
		"orilla-pullover":    {1, 0, 2}, // the neckband; the sleeves
		"rompiente-cardigan": {1, 0, 2},
		"duna-hat":           {0, 1, 0},
		"ria-vest":           {2, 0, 0}, // back and front; what the armhole bands stand on is drawn apart
		"marea-bootees":      {1, 0, 0}, // the chain in the middle of the sole
		"salitre-seal":       {1, 3, 0}, // the muzzle is worked on both sides of a chain
	} {
		p := all[name]
		s := must(Schematic(p, roomW, roomH, both...))
		heavy, dots, circles := marked(s)
		if got := [3]int{heavy, dots, circles}; got != want {
			t.Errorf("%s: %v heavy lines, dots and rows of circles, want %v", name, got, want)
		}
		if said := strings.Contains(s.Desc["en-US"], "kept waiting"); said != (circles > 0) {
			t.Errorf("%s: waiting stitches are described: %v", name, said)
		}
		if said := strings.Contains(s.Desc["en-US"], "diamonds"); said != (diamonds(s) > 0) {
			t.Errorf("%s: markers are described: %v", name, said)
		}
		waits := false
		for i := range p.Parts {
			waits = waits || p.Waited(i)
		}
		if waits != (circles > 0) {
			t.Errorf("%s: the page speaks of waiting stitches: %v", name, waits)
		}
	}
}

// diamonds is how many markers are drawn.
func diamonds(s *scene.Scene) int {
	for _, it := range s.Items {
		if p, ok := it.(scene.Path); ok && p.Stroke == nil && p.Fill != nil && len(p.Cmds)%5 == 0 && count(p.Cmds, 'Z')*5 == len(p.Cmds) {
			return len(p.Cmds) / 5
		}
	}
	return 0
}

// Markers stand where they are counted off: those of the leggings two over each leg's edge, front and back lying over each other; and
// the page speaks of them only where they are drawn.
func TestMarkersAreDrawn(t *testing.T) {
	drawn := 0
	for name, p := range sources(t) {
		for z := range p.Sizes {
			p.Shown = z
			s := must(Schematic(p, roomW, roomH, both...))
			n, said := diamonds(s), 0
			for i := range p.Parts {
				said += len(p.MarkersAt(i))
			}
			drawn += n
			if (n > 0) != (said > 0) && mosaicOf(p) == nil {
				t.Errorf("%s, %s: %d markers are drawn, the page speaks of %d", name, p.Sizes[z].Name, n, said)
			}
			if n > said {
				t.Errorf("%s: %d markers are drawn, there are %d", name, n, said)
			}
		}
	}
	if drawn < 10 {
		t.Errorf("only %d markers", drawn)
	}
	p := sources(t)["marisma-leggings"]
	if n := diamonds(must(Schematic(p, roomW, roomH, both...))); n != 2 {
		t.Errorf("%d markers of the leggings: front and back lie over each other", n)
	}
}
