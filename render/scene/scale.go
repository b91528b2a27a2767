package scene

import "slices"

// Enlarged is a drawing k times as large: its lines and its letters as well.
func (s *Scene) Enlarged(k float64) *Scene {
	if s == nil || k == 1 {
		return s
	}
	out := *s
	out.W, out.H = s.W*k, s.H*k
	out.Items = make([]Item, len(s.Items))
	for i, it := range s.Items {
		switch it := it.(type) {
		case Path:
			it.Cmds = slices.Clone(it.Cmds)
			for c := range it.Cmds {
				for p := range it.Cmds[c].P {
					it.Cmds[c].P[p].X *= k
					it.Cmds[c].P[p].Y *= k
				}
			}
			it.Dash = slices.Clone(it.Dash)
			for d := range it.Dash {
				it.Dash[d] *= k
			}
			it.Width *= k
			out.Items[i] = it
		case Label:
			it.X, it.Y, it.Height = it.X*k, it.Y*k, it.Height*k
			out.Items[i] = it
		}
	}
	return &out
}
