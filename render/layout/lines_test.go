package layout

import (
	"strings"
	"testing"

	"ovillo/render/page"
	"ovillo/render/rich"
)

// A long paragraph in two columns is cut line by line, both columns at once, and nothing is lost or moved on its line.
func TestLines(t *testing.T) {
	style := Sans(11, 5)
	var b Box
	left := Break(rich.T(strings.Repeat("work even until it measures ", 20)), style, 60, 0)
	right := Break(rich.T(strings.Repeat("tejer recto hasta que mida ", 30)), style, 60, 0)
	b.Put(0, 0, Set(left, style, 0, nil))
	b.Put(0, 0, Set(right, style, 90, nil))
	b.Add(Frame(82, 0.5, 3, 3, 0.2))
	strips := Lines(b, style.Leading)
	if len(strips) != len(right) {
		t.Fatalf("%d strips for %d lines", len(strips), len(right))
	}
	items := 0
	for i, s := range strips {
		items += len(s.Items)
		for _, it := range s.Items {
			g, ok := it.(page.Glyphs)
			if !ok {
				if i != 0 {
					t.Errorf("the box to tick is in line %d", i)
				}
				continue
			}
			if d := g.Base - style.Baseline(); d < -1e-9 || d > 1e-9 {
				t.Errorf("line %d: a baseline at %v, not %v", i, g.Base, style.Baseline())
			}
		}
		want := ""
		if i < len(left) {
			want = left[i].String()
		}
		if got := s.Items[0].(page.Glyphs).Text; want != "" && got != want {
			t.Errorf("line %d begins with %q, not %q", i, got, want)
		}
	}
	if items != len(b.Items) {
		t.Errorf("%d items of %d", items, len(b.Items))
	}
	if !strips[0].Keep || strips[1].Keep || !strips[len(strips)-2].Keep || strips[len(strips)-1].Keep {
		t.Error("two lines at least stay together at either end")
	}
	if got := Paginate(strips, 12, 12); len(got) < 2 {
		t.Error("it does not go on on another sheet")
	}
}
