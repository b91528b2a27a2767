package scene

import "ovillo/render/page"

// Mirrored is the drawing as in a mirror, for makers who work with the left hand: right and left change places, up and
// down do not, and letters stay readable.
func (s *Scene) Mirrored() *Scene {
	m := *s
	m.Items = make([]Item, len(s.Items))
	for i, it := range s.Items {
		switch it := it.(type) {
		case Path:
			m.Items[i] = it.mirrored(s.W)
		case Label:
			it.X = s.W - it.X
			switch it.Anchor {
			case Start:
				it.Anchor = End
			case End:
				it.Anchor = Start
			}
			m.Items[i] = it
		}
	}
	return &m
}

func (p Path) mirrored(w float64) Path {
	cmds := make([]page.Cmd, len(p.Cmds))
	for i, c := range p.Cmds {
		for k := range c.P {
			c.P[k].X = w - c.P[k].X
		}
		cmds[i] = c
	}
	p.Cmds = cmds
	return p
}
