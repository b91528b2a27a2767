package layout

// Side is what stands in one column of a row: its text at the top, and at its foot what closes it.
type Side struct {
	Top, Foot Box
}

// Facing joins columns into a row: their tops are aligned and so are their feet, gap millimetres under the longest text.
// The white of the shorter ones goes between text and foot; nothing is stretched.
func Facing(gap float64, sides ...Side) Box {
	var top, foot float64
	for _, s := range sides {
		top = max(top, s.Top.H)
		foot = max(foot, s.Foot.H)
	}
	if foot > 0 {
		top += gap
	}
	var b Box
	for _, s := range sides {
		b.Put(0, 0, s.Top)
		if len(s.Foot.Items) > 0 {
			b.Put(0, top+foot-s.Foot.H, s.Foot)
		}
	}
	b.H = top + foot
	return b
}
