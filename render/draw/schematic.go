package draw

import (
	"ovillo/compile/plan"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// The lines of the piece in the schematic, in millimetres.
const (
	outlineWide = 0.35
	ribWide     = 0.16
	bandWide    = 0.5
	workWide    = 0.5 // the arrow of the direction of work
)

// Schematic draws the pattern to scale in the size that is shown, laid flat, with a dimension line for every measure that
// has a letter, within w by h millimetres. Its width is w, its height no more than it needs. It is
// described in the languages given.
func Schematic(p *plan.Pattern, w, h float64, langs ...*words.Language) (*scene.Scene, error) {
	if m := mosaicOf(p); m != nil {
		s := m.schematic(w, h)
		m.words(s, langs, func(v speech) string { return v.Schematic }, func(v speech) string { return v.Flat })
		return s, nil
	}
	l, err := chosen(p, courses)
	if err != nil {
		return nil, err
	}
	s := &scene.Scene{W: w, H: h, Title: map[string]string{}, Desc: map[string]string{}}
	l.trim()
	schematicWords(l, s, langs)
	l.alike()
	if len(l.groups) == 0 {
		return s, nil
	}
	drawn, at, high := l.dimensioned(w, h)
	pen := &pen{}
	for i, sh := range drawn {
		pen.scale, pen.shift = sh.scale, at[i]
		sh.piece(pen)
		sh.marks(pen)
		pen.scale = 1
		sh.signs(pen)
	}
	s.Items, s.H = pen.items, min(h, high)
	return s, nil
}

// trim gives the pieces the outlines of the schematic: the edges of ripples in waves, and long pieces broken.
func (l *layout) trim() {
	for _, gr := range l.groups {
		for _, pt := range gr.patches {
			pt.rippleEdges()
		}
	}
	l.breaks()
}

// dimensioned sets the groups and their dimension lines out as large as they go. The room that lines and letters take
// beside a group hardly depends on the scale, so a few rounds of measuring it settle both. Where a line jumps from one
// place to another between rounds, room for both is kept.
func (l *layout) dimensioned(w, h float64) (drawn []*sheet, at []vec, high float64) {
	const free, most = 3, 24
	room := map[*group]margins{}
	for _, gr := range l.groups {
		room[gr] = margins{left: 9, right: 9, top: 9, bottom: 9, gap: 4}
	}
	for round := range most {
		st := l.shelve(w, h, func(gr *group) margins { return room[gr] })
		drawn, at, high = nil, st.at, st.high
		fits := true
		for _, gr := range l.groups {
			sh := l.sheet(gr, st.scale)
			drawn = append(drawn, sh)
			need := sh.overhang()
			fits = fits && need.within(room[gr])
			if round >= free {
				need = need.with(room[gr])
			}
			room[gr] = need
		}
		if fits && round > 1 {
			break
		}
	}
	return drawn, at, high
}

// with is room for both.
func (m margins) with(n margins) margins {
	return margins{
		left: max(m.left, n.left), right: max(m.right, n.right),
		top: max(m.top, n.top), bottom: max(m.bottom, n.bottom), gap: m.gap,
	}
}

// within reports whether the room needed is there.
func (m margins) within(have margins) bool {
	const enough = 0.05
	return m.left <= have.left+enough && m.right <= have.right+enough && m.top <= have.top+enough && m.bottom <= have.bottom+enough
}

// sheet draws nothing yet: it places the dimension lines and the arrow of a group at a scale.
func (l *layout) sheet(gr *group, scale float64) *sheet {
	s := &sheet{g: l.g, gr: gr, scale: scale}
	s.walls()
	s.place(l)
	s.times(l)
	return s
}

// walls notes the lines of the piece, so that letters keep off them.
func (s *sheet) walls() {
	for _, v := range s.markers() {
		s.board.walls = append(s.board.walls, [2]vec{v.sub(vec{markerHalf, 0}), v.add(vec{markerHalf, 0})}, [2]vec{v.sub(vec{0, markerHalf}), v.add(vec{0, markerHalf})})
	}
	for _, pt := range s.gr.patches {
		pts := pt.outline()
		for i := range pts {
			a, b := s.on(pts[i]), s.on(pts[(i+1)%len(pts)])
			if b.sub(a).length() > 1e-6 {
				s.board.walls = append(s.board.walls, [2]vec{a, b})
			}
		}
		if pt.rings {
			for i, c := 1, pt.lines[0]; i < len(c.pts); i++ {
				s.board.walls = append(s.board.walls, [2]vec{s.on(c.pts[i-1]), s.on(c.pts[i])})
			}
			continue
		}
		if from, to, ok := pt.breakAcross(s.scale); ok {
			off := to.sub(from).unit().normal().times(breakGap)
			s.board.walls = append(s.board.walls, [2]vec{s.on(from).add(off), s.on(to).add(off)}, [2]vec{s.on(from).sub(off), s.on(to).sub(off)})
		}
		for _, c := range pt.shortRows() {
			for i := 1; i < len(c.pts); i++ {
				s.board.inner = append(s.board.inner, [2]vec{s.on(c.pts[i-1]), s.on(c.pts[i])})
			}
		}
		for _, c := range pt.bands(s.g.ground()) {
			c = c.fine()
			for i := 1; i < len(c.pts); i++ {
				s.board.inner = append(s.board.inner, [2]vec{s.on(c.pts[i-1]), s.on(c.pts[i])})
			}
		}
		for _, st := range stretches(pt.pc.rows) {
			if st.texture == plan.Rib {
				a, b := pt.lines[st.from], pt.lines[st.to]
				for i := range 9 {
					t := float64(i) / 8
					s.board.inner = append(s.board.inner, [2]vec{s.on(a.at(t)), s.on(b.at(t))})
				}
				s.board.inner = append(s.board.inner, [2]vec{s.on(a.first()), s.on(a.last())})
			}
		}
	}
}

// overhang is the room that dimension lines and letters take beside the piece.
func (s *sheet) overhang() margins {
	b := s.gr.bounds()
	piece := box{s.on(b.min), s.on(b.max), b.full}
	all := piece.grown(max(bandWide/2, startWide/2, startDot, heldDot+dimLine) + 0.05)
	for _, pt := range s.gr.patches {
		if from, to, ok := pt.breakAcross(s.scale); ok {
			all.join(box{s.on(from), s.on(to), true}.grown(breakGap))
		}
	}
	for _, l := range s.board.lines {
		for _, p := range l {
			all.join(box{p, p, true}.grown(arrowWide/2 + dimLine))
		}
	}
	for _, l := range s.board.labels {
		all.join(l.grown(0.4))
	}
	for _, v := range s.markers() {
		all.join(box{v, v, true}.grown(markerHalf))
	}
	for _, a := range s.arrows {
		all.join(a.box())
	}
	return margins{
		left: piece.min.x - all.min.x, right: all.max.x - piece.max.x,
		top: piece.min.y - all.min.y, bottom: all.max.y - piece.max.y, gap: 4,
	}
}

// piece draws the lines of the pieces of a group.
func (s *sheet) piece(p *pen) {
	ground := s.g.ground()
	for _, pt := range s.gr.patches {
		for _, st := range stretches(pt.pc.rows) {
			if pt.rings || st.texture != plan.Rib {
				continue
			}
			p.ribs(pt, st, ribWide, 1)
			for _, k := range [2]int{st.from, st.to} {
				if k > 0 && k < len(pt.lines)-1 {
					p.line(pt.lines[k], outlineWide)
				}
			}
		}
		for _, c := range pt.bands(ground) {
			p.line(c, bandWide, 1.2, 0.9)
		}
	}
	for _, pt := range s.gr.patches {
		p.lines(thinned(pt.shortRows(), pt.pc.rows, s.scale), ribWide)
	}
	for _, pt := range s.gr.patches {
		if pt.over {
			p.area(white, curve{pts: pt.outline()})
		}
		p.edges(s.g, pt, outlineWide)
		if pt.pc.folded && !pt.band {
			p.line(pt.opening(), outlineWide)
		}
		for _, c := range pt.seams {
			p.line(c, ribWide, 1.6, 1)
		}
		p.broken(pt, s.scale)
	}
}

// bands are the rows of a patch in other yarns than the ground, where they are a band or two.
func (pt *patch) bands(ground int) []curve {
	if pt.rings || !pt.banded(ground) {
		return nil
	}
	var out []curve
	for _, st := range stretches(pt.pc.rows) {
		if st.yarn == ground || st.texture == plan.Rib {
			continue
		}
		for k := st.from; k < st.to; k++ {
			out = append(out, pt.lines[k].between(pt.lines[k+1], 0.5))
		}
	}
	return out
}

// banded reports whether the rows of a patch in other yarns are a band or two, worth showing; stripes all over are not.
func (pt *patch) banded(ground int) bool {
	rows := 0
	for _, r := range pt.pc.rows {
		if r.yarn != ground && r.texture != plan.Rib {
			rows++
		}
	}
	return rows <= 8 && rows*2 < len(pt.pc.rows)
}

// signs draws the dimensions and the arrow of the direction of work.
func (s *sheet) signs(p *pen) {
	for _, d := range s.dims {
		d.draw(p)
	}
	for _, a := range s.arrows {
		a.draw(p)
	}
	if s.count != nil {
		label := *s.count
		at := p.on(vec{label.X, label.Y})
		label.X, label.Y = at.x, at.y
		p.items = append(p.items, label)
	}
}
