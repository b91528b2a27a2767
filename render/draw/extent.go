package draw

import (
	"ovillo/render/page"
	"ovillo/render/scene"
)

// extent is the box round the lines and areas of a drawing, the thickness of lines included. Control points count as
// points: a curve never leaves the box of its own.
func extent(items []scene.Item) box {
	var all box
	for _, it := range items {
		p, ok := it.(scene.Path)
		if !ok {
			continue
		}
		var b box
		for _, c := range p.Cmds {
			for i := range operands(c.Op) {
				b.add(vec{c.P[i].X, c.P[i].Y})
			}
		}
		if p.Stroke != nil {
			b = b.grown(p.Width / 2)
		}
		all.join(b)
	}
	return all
}

// moved is a path somewhere else.
func moved(p scene.Path, by vec) scene.Path {
	cmds := make([]page.Cmd, len(p.Cmds))
	for i, c := range p.Cmds {
		for k := range operands(c.Op) {
			c.P[k].X += by.x
			c.P[k].Y += by.y
		}
		cmds[i] = c
	}
	p.Cmds = cmds
	return p
}

// operands is how many points a step of a path has.
func operands(op byte) int {
	switch op {
	case 'M', 'L':
		return 1
	case 'C':
		return 3
	}
	return 0
}
