package scene

import (
	"reflect"
	"testing"

	"ovillo/render/page"
)

func TestMirrored(t *testing.T) {
	s := &Scene{W: 10, H: 5, Title: map[string]string{"en": "A"}, Items: []Item{
		Path{Cmds: []page.Cmd{{Op: 'M', P: [3]page.Point{{X: 1, Y: 2}}}, {Op: 'C', P: [3]page.Point{{X: 2, Y: 0}, {X: 3, Y: 1}, {X: 4, Y: 2}}}}, Width: 0.3},
		Label{X: 3, Y: 4, Text: "A", Anchor: Start},
	}}
	m := s.Mirrored()
	path := m.Items[0].(Path)
	if got := path.Cmds[1].P; got != [3]page.Point{{X: 8, Y: 0}, {X: 7, Y: 1}, {X: 6, Y: 2}} || path.Width != 0.3 {
		t.Errorf("path: %v", path)
	}
	if got := m.Items[1].(Label); got.X != 7 || got.Anchor != End || got.Text != "A" {
		t.Errorf("label: %+v", got)
	}
	if s.Items[0].(Path).Cmds[0].P[0].X != 1 {
		t.Error("the scene itself was changed")
	}
	// The third point of a step that has none mirrors to the edge; twice over all is as before.
	if back := m.Mirrored(); !reflect.DeepEqual(back, s) {
		t.Errorf("mirrored twice: %+v", back)
	}
}
