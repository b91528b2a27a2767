package draw

// turned is the part that stands on the side of a flat piece which was joined to a ring, -1 if there is none.
func (g *graph) turned(piece int) int {
	pc := g.pieces[piece]
	if len(g.of[pc.part]) != 1 || pc.closed || g.attached(ending{piece, startEdge}) || g.attached(ending{piece, endEdge}) {
		return -1
	}
	return g.p.Turned(pc.part)
}

// turn lays a piece that was worked sideways and joined to a ring where what stands on it begins: across, its rows upright, half as
// long as it is. It reports whether that is on the table.
func (l *layout) turn(piece int) bool {
	on := l.g.turned(piece)
	for _, gr := range l.groups {
		for _, above := range gr.patches {
			if above.pc.part != on || above.pc.first > 0 || above.rings {
				continue
			}
			pc := *l.g.pieces[piece]
			pc.rows = append([]course(nil), pc.rows...)
			for k := range pc.rows {
				pc.rows[k].high /= 2
			}
			away := above.worked().times(-1)
			edge := above.lines[0]
			pt := &patch{pc: &pc, index: piece, outward: true, band: true, free: [2]bool{true, true}}
			along := vec{1, 0}
			if away.y < 0 {
				along = vec{-1, 0}
			}
			pt.f = frame{o: edge.first().to(edge.last(), 0.5).sub(along.times(pc.tall() / 2)).add(away.times(pc.start / 2)), across: away, along: along}
			x := -pc.tall() / 2
			middle := edge.first().to(edge.last(), 0.5)
			for k, w := range pc.widths() {
				if k > 0 {
					x += pc.rows[k-1].high
				}
				at := middle.add(along.times(x))
				pt.lines = append(pt.lines, straight(at, at.add(away.times(w))))
			}
			above.free[startEdge] = false
			gr.patches = append(gr.patches, pt)
			return true
		}
	}
	return false
}
