package layout

import (
	"ovillo/render/font"
	"ovillo/render/page"
)

// Box is a finished piece of a page: items whose places are given from its top left corner. Its left edge is that of the
// text block, so that columns keep their places; only its height matters for what comes below.
type Box struct {
	H       float64
	Items   []page.Item
	Figures []*page.Elem // elements whose Box moves with the box
}

// Add puts items into the box.
func (b *Box) Add(items ...page.Item) { b.Items = append(b.Items, items...) }

// Put puts another box into this one, x and y from its corner, and makes this one at least so high that it holds it.
func (b *Box) Put(x, y float64, o Box) {
	for _, it := range o.Items {
		b.Items = append(b.Items, Shift(it, x, y))
	}
	for _, f := range o.Figures {
		f.Box[0] += x
		f.Box[1] += y
	}
	b.Figures = append(b.Figures, o.Figures...)
	b.H = max(b.H, y+o.H)
}

// Below puts another box under this one, space millimetres lower.
func (b *Box) Below(space float64, o Box) { b.Put(0, b.H+space, o) }

// Shift returns the item moved.
func Shift(it page.Item, dx, dy float64) page.Item {
	if dx == 0 && dy == 0 {
		return it
	}
	switch it := it.(type) {
	case page.Glyphs:
		it.X += dx
		it.Base += dy
		return it
	case page.Path:
		cmds := make([]page.Cmd, len(it.Cmds))
		for i, c := range it.Cmds {
			for k := range c.P {
				c.P[k].X += dx
				c.P[k].Y += dy
			}
			cmds[i] = c
		}
		it.Cmds = cmds
		return it
	case page.Picture:
		it.X += dx
		it.Y += dy
		return it
	case page.Anchor:
		it.X += dx
		it.Y += dy
		return it
	case page.Folio:
		return it
	}
	panic("layout: unknown page item")
}

// Set makes a box of lines in a column that starts at x. Its text belongs to elem; a run with a link gets an element of
// its own and an area to point at.
func Set(lines []Line, s Style, x float64, elem *page.Elem) Box {
	b := Box{H: float64(len(lines)) * s.Leading, Items: make([]page.Item, 0, len(lines)+2)}
	for i, l := range lines {
		b.line(l, s, x+l.X, float64(i)*s.Leading, elem)
	}
	return b
}

// SetRight makes a box of lines that end at the right edge of their column.
func SetRight(lines []Line, s Style, right float64, elem *page.Elem) Box {
	b := Box{H: float64(len(lines)) * s.Leading}
	for i, l := range lines {
		b.line(l, s, right-l.Width, float64(i)*s.Leading, elem)
	}
	return b
}

func (b *Box) line(l Line, s Style, x, top float64, elem *page.Elem) {
	base := top + s.Baseline()
	for _, r := range l.Runs {
		owner := elem
		if r.Link != "" && elem != nil {
			owner = elem.New("Link")
			label := r.Text
			if r.Expand != "" {
				label = r.Expand
			}
			b.Add(page.Anchor{X: x + r.X, Y: top, W: r.Width, H: s.Leading, URI: r.Link, Elem: owner, Label: label})
		}
		b.Add(page.Glyphs{
			X: x + r.X, Base: base, Size: s.Size, Face: r.Face, Text: r.Text, Color: page.Black,
			Track: s.Track, Elem: owner, Actual: r.Spoken, Expand: r.Expand,
		})
	}
}

// Text makes a box of one line that starts at x and is never broken.
func Text(text string, s Style, strong bool, x float64, elem *page.Elem) Box {
	b := Box{H: s.Leading}
	b.Add(page.Glyphs{X: x, Base: s.Baseline(), Size: s.Size, Face: s.Of(strong), Text: font.Compose(text),
		Color: page.Black, Track: s.Track, Elem: elem})
	return b
}

// TextRight makes a box of one line that ends at right.
func TextRight(text string, s Style, strong bool, right float64, elem *page.Elem) Box {
	return Text(text, s, strong, right-s.Width(text, strong), elem)
}

// TextCentred makes a box of one line with its middle at x.
func TextCentred(text string, s Style, strong bool, x float64, elem *page.Elem) Box {
	return Text(text, s, strong, x-s.Width(text, strong)/2, elem)
}
