package draw

import (
	"image"
	"testing"

	"ovillo/render/png"
	"ovillo/render/sample"
	"ovillo/render/scene"
)

// dark reports whether a scene is black at a point in millimetres.
func dark(t *testing.T, s *scene.Scene, at vec) bool {
	t.Helper()
	const dpi = 254
	img, err := png.Picture(s, dpi)
	if err != nil {
		t.Fatal(err)
	}
	p := image.Pt(int(at.x*dpi/25.4), int(at.y*dpi/25.4))
	if !p.In(img.Bounds()) {
		t.Fatalf("%v lies outside the picture", at)
	}
	r, _, _, _ := img.At(p.X, p.Y).RGBA()
	return r < 0x8000
}

// The part in hand is solid and no other; part -1 is the whole piece.
func TestHereIsSolidWhereTheMakerIs(t *testing.T) {
	p := sample.Leggings()
	l := laid(t, p)
	sh := l.shelve(11-hereLine, 12.5-hereLine, func(*group) margins { return margins{gap: 0.8} })
	for part := -1; part < len(p.Parts); part++ {
		s := Here(p, part, 11, 12.5, both...)
		for _, pt := range l.groups[0].patches {
			mid := pt.f.at(0, pt.pc.tall()/2).times(sh.scale).add(sh.at[0]).add(vec{hereLine / 2, hereLine / 2})
			want := part < 0 || pt.pc.part == part
			if got := dark(t, s, mid); got != want {
				t.Errorf("part %d in hand: %s is black: %v", part, p.Parts[pt.pc.part].Name, got)
			}
		}
	}
}

func TestHereOfNoPart(t *testing.T) {
	p := hat()
	if s := Here(p, 7, 11, 12.5, both...); len(s.Items) != 2 || s.Desc["en-US"] == "" {
		t.Errorf("a part that does not exist: %d items, %q", len(s.Items), s.Desc["en-US"])
	}
}
