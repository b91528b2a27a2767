package layout

import (
	"slices"

	"ovillo/render/font"
	"ovillo/render/page"
	"ovillo/render/scene"
)

// Drawing makes a box of a scene with its top left corner at x. It belongs to the Figures given, whose Box it sets: a path
// to each but the first, so that none is empty, and all else to the first. Without any it is an ornament.
func Drawing(s *scene.Scene, x float64, figures ...*page.Elem) Box {
	b := Box{H: s.H, Items: make([]page.Item, 0, len(s.Items))}
	items, owners := share(s.Items, figures)
	for i, it := range items {
		switch it := it.(type) {
		case scene.Path:
			b.Add(Shift(page.Path{Cmds: it.Cmds, Stroke: it.Stroke, Width: it.Width, Dash: it.Dash, Round: it.Round,
				Fill: it.Fill, Elem: owners[i]}, x, 0))
		case scene.Label:
			b.Add(label(it, x, owners[i]))
		}
	}
	for _, f := range figures {
		f.Box = &[4]float64{x, 0, s.W, s.H}
	}
	b.Figures = figures
	return b
}

// share says which figure each item belongs to. Where there are too few the last is drawn over itself, which shows nothing.
func share(items []scene.Item, figures []*page.Elem) ([]scene.Item, []*page.Elem) {
	if n := len(items); n > 0 {
		items = slices.Clone(items)
		for len(items) < len(figures) {
			items = append(items, items[n-1])
		}
	}
	owners := make([]*page.Elem, len(items))
	if len(figures) == 0 {
		return items, owners
	}
	rest := figures[1:]
	for i := len(items) - 1; i >= 0; i-- {
		owners[i] = figures[0]
		if _, drawn := items[i].(scene.Path); len(rest) > 0 && (drawn || i < len(rest)) {
			owners[i], rest = rest[len(rest)-1], rest[:len(rest)-1]
		}
	}
	return items, owners
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
