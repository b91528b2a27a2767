package layout

import "ovillo/render/page"

// Lines cuts a box of text into strips of one line each, for a text that may go on on the next sheet with two lines at least on
// either side. All lines of the box are leading millimetres high, those of columns side by side as well; what is no text
// goes with the line that it begins in. Elements keep their text: a paragraph that is cut is read as one.
func Lines(b Box, leading float64) []Strip {
	n := max(1, int(b.H/leading+0.5))
	strips := make([]Strip, n)
	for i := range strips {
		strips[i].H = leading
	}
	for _, it := range b.Items {
		k := min(n-1, max(0, int(startOf(it)/leading)))
		strips[k].Add(Shift(it, 0, -float64(k)*leading))
	}
	const least = 2
	return Loosely(strips, least)
}

// startOf is how far down an item begins: of text the middle of its letters, since a line is higher than they are.
func startOf(it page.Item) float64 {
	switch it := it.(type) {
	case page.Glyphs:
		return it.Base - it.Size/4*millimetres
	case page.Anchor:
		return it.Y + it.H/2
	case page.Picture:
		return it.Y
	case page.Path:
		top := 0.0
		for i, c := range it.Cmds {
			if i == 0 || c.Op != 'Z' && c.P[0].Y < top {
				top = c.P[0].Y
			}
		}
		return top
	}
	return 0
}
