package layout

import (
	"ovillo/render/font"
	"ovillo/render/page"
	"ovillo/render/scene"
)

// Drawing makes a box of a scene with its top left corner at x. It belongs to the Figures given, whose Box it sets: the last
// items to one each, so that none is empty, and all others to the first. Without any it is an ornament.
func Drawing(s *scene.Scene, x float64, figures ...*page.Elem) Box {
	b := Box{H: s.H, Items: make([]page.Item, 0, len(s.Items))}
	items := s.Items
	for n := len(items); n > 0 && len(items) < len(figures); {
		items = append(items[:len(items):len(items)], items[n-1]) // drawn over itself, which shows nothing
	}
	for i, it := range items {
		var elem *page.Elem
		if n := len(figures); n > 0 {
			elem = figures[max(0, n-len(items)+i)]
		}
		switch it := it.(type) {
		case scene.Path:
			b.Add(Shift(page.Path{Cmds: it.Cmds, Stroke: it.Stroke, Width: it.Width, Dash: it.Dash, Round: it.Round,
				Fill: it.Fill, Elem: elem}, x, 0))
		case scene.Label:
			b.Add(label(it, x, elem))
		}
	}
	for _, f := range figures {
		f.Box = &[4]float64{x, 0, s.W, s.H}
	}
	b.Figures = figures
	return b
}

func label(l scene.Label, x float64, elem *page.Elem) page.Glyphs {
	face := font.Of(l.Face)
	pt := l.Height / millimetres
	x += l.X
	switch l.Anchor {
	case scene.Middle:
		x -= face.Width(l.Text, pt) / 2
	case scene.End:
		x -= face.Width(l.Text, pt)
	}
	return page.Glyphs{X: x, Base: l.Y + face.CapHeight(pt)/2, Size: pt, Face: l.Face, Text: l.Text, Color: page.Black, Elem: elem}
}
