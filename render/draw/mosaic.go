package draw

import (
	"fmt"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// mosaic is a pattern of joined motifs, with or without a border: squares side by side, and rounds around them. It is drawn as
// it lies, for no rows of a single part show its shape.
type mosaic struct {
	p            *plan.Pattern
	whole, motif int // parts
	across, down int
	side         float64 // of a motif, in centimetres
	rounds       []int   // the yarn of each round of a motif, from the middle
	border       []ring  // rounds around the whole, from the inside
}

// ring is a round of the border.
type ring struct {
	part, yarn int
	deep       float64 // centimetres
}

// Where no gauge says, a round is as deep as a guess: the drawing then shows the order of things and not their size.
const guessedRound = 1.0

// mosaicOf is the mosaic that a pattern is, in the size that is shown; nil if it has other parts or no joined motifs.
func mosaicOf(p *plan.Pattern) *mosaic {
	m := &mosaic{p: p, whole: -1}
	for i, part := range p.Parts {
		if part.Grid != nil && m.whole < 0 {
			m.whole, m.motif = i, part.Grid.Motif
		}
	}
	if m.whole < 0 || p.Shown < 0 || p.Shown >= len(p.Sizes) {
		return nil
	}
	g, z := p.Parts[m.whole].Grid, p.Shown
	if m.across, m.down = g.Across[z], g.Down[z]; m.across < 1 || m.down < 1 {
		return nil
	}
	for i, part := range p.Parts {
		switch {
		case i == m.whole:
		case i == m.motif:
			for _, f := range part.Worked[z] {
				m.rounds = append(m.rounds, f.Yarn)
			}
		case len(part.Start.Runs) == 1 && part.Start.Runs[0].Kind == plan.RefAround && part.Start.Runs[0].Part == m.whole:
			for _, f := range part.Worked[z] {
				r := ring{i, f.Yarn, guessedRound}
				if f.Height > 0 {
					r.deep = f.Height.Cm()
				}
				m.border = append(m.border, r)
			}
		default:
			return nil
		}
	}
	m.side = m.sideOf(g, z)
	return m
}

// sideOf is how long the side of a motif is: as the source says, or a quarter of the last round, or a guess.
func (m *mosaic) sideOf(g *plan.Grid, z int) float64 {
	if g.Each != nil && g.Each[z] > 0 {
		return g.Each[z].Cm()
	}
	if rows := m.p.Parts[m.motif].Worked[z]; len(rows) > 0 && rows[len(rows)-1].Width > 0 {
		return rows[len(rows)-1].Width.Cm() / 4
	}
	return max(1, 2*guessedRound*float64(len(m.rounds)))
}

// measured reports whether its size is known: that of its motifs, and of its border by the gauge.
func (m *mosaic) measured() bool {
	z := m.p.Shown
	if g := m.p.Parts[m.whole].Grid; g.Each == nil {
		return false
	}
	for _, r := range m.border {
		for _, f := range m.p.Parts[r.part].Worked[z] {
			if f.Height <= 0 {
				return false
			}
		}
	}
	return true
}

// frame is how deep the border is.
func (m *mosaic) frame() float64 {
	deep := 0.0
	for _, r := range m.border {
		deep += r.deep
	}
	return deep
}

// inner is the outline of the motifs, from (0, 0) on.
func (m *mosaic) inner() box {
	return box{vec{}, vec{m.side * float64(m.across), m.side * float64(m.down)}, true}
}

// fit sets a pen so that the mosaic fits into w by h millimetres with such margins, and returns the size it takes.
func (m *mosaic) fit(p *pen, w, h float64, left, top, right, bottom float64) (wide, high float64) {
	all := m.inner().grown(m.frame())
	p.scale = min((w-left-right)/all.width(), (h-top-bottom)/all.height())
	wide, high = all.width()*p.scale+left+right, all.height()*p.scale+top+bottom
	p.shift = all.min.times(-p.scale).add(vec{left, top})
	return wide, high
}

// square is the outline of a box.
func (b box) square() curve {
	return curve{pts: []vec{b.min, {b.max.x, b.min.y}, b.max, {b.min.x, b.max.y}}, closed: true}
}

// cells are the lines between the motifs.
func (m *mosaic) cells() []curve {
	b := m.inner()
	var out []curve
	for c := 1; c < m.across; c++ {
		x := m.side * float64(c)
		out = append(out, straight(vec{x, 0}, vec{x, b.max.y}))
	}
	for r := 1; r < m.down; r++ {
		y := m.side * float64(r)
		out = append(out, straight(vec{0, y}, vec{b.max.x, y}))
	}
	return out
}

// cell is the box of a motif.
func (m *mosaic) cell(r, c int) box {
	at := vec{m.side * float64(c), m.side * float64(r)}
	return box{at, at.add(vec{m.side, m.side}), true}
}

// marks gives each yarn its mark: thin lines for the one most rounds of a motif are made of.
func (m *mosaic) marks() map[int]mark {
	n, ground := map[int]int{}, -1
	yarns := append([]int(nil), m.rounds...)
	for _, r := range m.border {
		yarns = append(yarns, r.yarn)
	}
	for i, y := range m.rounds {
		if n[y] += 2*i + 1; ground < 0 || n[y] > n[ground] { // the larger a round, the more yarn it takes
			ground = y
		}
	}
	marks, next := map[int]mark{ground: lineMark}, barMark
	for _, y := range yarns {
		if _, known := marks[y]; !known {
			marks[y] = next
			if next++; next > dashMark {
				next = barMark
			}
		}
	}
	return marks
}

// band draws a round that goes from one outline to another: as a bar, dots or dashes where its yarn has such a mark.
func (m *mosaic) band(p *pen, in, deep float64, b box, look mark) {
	at := b.grown(-(in - deep/2)).square()
	wide := titleBand * deep * p.scale
	switch look {
	case barMark:
		p.line(at, wide)
	case dotMark:
		p.line(at, wide, 0.4*wide, wide)
	case dashMark:
		p.line(at, wide, 2*wide, wide)
	}
}

// title draws the mosaic with a line for every round.
func (m *mosaic) title(w, h float64) *scene.Scene {
	p := &pen{}
	wide, high := m.fit(p, w, h, titleOutline, titleOutline, titleOutline, titleOutline)
	marks := m.marks()
	deep := m.side / 2 / float64(max(len(m.rounds), 1))
	var lines []curve
	for r := range m.down {
		for c := range m.across {
			b := m.cell(r, c)
			for k, y := range m.rounds {
				// Rounds are drawn from the outside in; the innermost has the middle of the motif for its inner edge.
				in := m.side/2 - deep*float64(k)
				m.band(p, in, deep, b, marks[y])
				if k > 0 {
					lines = append(lines, b.grown(-in).square())
				}
			}
		}
	}
	p.lines(lines, titleRound)
	p.lines(m.cells(), titleRound)
	out := 0.0
	for _, r := range m.border {
		p.line(m.inner().grown(out).square(), titleOutline)
		out += r.deep
		m.band(p, r.deep, r.deep, m.inner().grown(out), marks[r.yarn])
	}
	p.line(m.inner().grown(out).square(), titleOutline)
	return &scene.Scene{W: wide, H: high, Items: p.items, Title: map[string]string{}, Desc: map[string]string{}}
}

// here draws the small piece: the part in hand solid. For the motif, one of them is.
func (m *mosaic) here(part int, w, h float64) []scene.Item {
	p := &pen{}
	wide, high := m.fit(p, w, h, hereLine/2, hereLine/2, hereLine/2, hereLine/2)
	p.shift = p.shift.add(vec{(w - wide) / 2, (h - high) / 2})
	in, all := m.inner(), m.inner().grown(m.frame())
	border := part >= 0 && part != m.whole && part != m.motif
	switch {
	case part < 0:
		p.outlined(black, hereLine, all.square())
		return p.items
	case border:
		p.outlined(black, hereLine, all.square(), in.square().turned())
	default:
		p.outlined(white, hereLine, all.square())
	}
	switch part {
	case m.whole:
		p.outlined(black, hereLine, in.square())
		white := page.Color{1, 1, 1}
		for _, c := range m.cells() {
			p.items = append(p.items, scene.Path{Cmds: p.path(c), Stroke: &white, Width: hereLine})
		}
	default:
		p.line(in.square(), hereLine)
		p.lines(m.cells(), hereLine/2)
	}
	if part == m.motif {
		p.outlined(black, hereLine, m.cell(0, 0).square())
	}
	return p.items
}

// schematic draws the mosaic to scale, with a line for its width and one for its height where these have letters. Without a
// measured motif there is nothing to draw to scale.
func (m *mosaic) schematic(w, h float64) *scene.Scene {
	s := &scene.Scene{W: w, Title: map[string]string{}, Desc: map[string]string{}}
	if !m.measured() {
		return s
	}
	m = m.chosen()
	p := &pen{}
	margin := dimOff + letterGap
	wide, high := m.fit(p, w-2*outlineWide, h, margin, outlineWide, margin, margin)
	p.shift = p.shift.add(vec{(w - wide) / 2, 0})
	in, all := m.inner(), m.inner().grown(m.frame())
	p.lines(m.cells(), ribWide)
	p.line(in.square(), outlineWide)
	if len(m.border) > 0 {
		p.line(all.square(), outlineWide)
	}
	scaled := func(b box) box { return box{p.on(b.min), p.on(b.max), true} }
	down, out := 0, 0
	for _, me := range m.p.Measures {
		if me.Letter == "" || len(me.Of) == 0 {
			continue
		}
		b, on := scaled(in), me.Of[0]
		if slices.ContainsFunc(me.Of, func(t plan.MeasuredOn) bool { return !m.p.Schematic.Shows(t.Part) }) {
			continue
		}
		if len(me.Of) > 1 {
			b = scaled(all)
		}
		switch {
		case on.Part != m.whole:
		case on.Kind == plan.Width && down < 1:
			down++
			y := scaled(all).max.y + dimOff
			flat(p, me.Letter, vec{b.min.x, y}, vec{b.max.x, y}, vec{b.min.x, scaled(all).max.y + extGap}, vec{b.max.x, scaled(all).max.y + extGap})
		case on.Kind == plan.Height && out < 1:
			out++
			x := scaled(all).min.x - dimOff
			flat(p, me.Letter, vec{x, b.max.y}, vec{x, b.min.y}, vec{scaled(all).min.x - extGap, b.max.y}, vec{scaled(all).min.x - extGap, b.min.y})
		}
	}
	s.Items, s.H = p.items, high
	return s
}

// chosen is the mosaic without what the schematic is to leave out. Where the joined motifs are, one of them is left.
func (m *mosaic) chosen() *mosaic {
	show, c := m.p.Schematic, *m
	c.border = slices.DeleteFunc(slices.Clone(m.border), func(r ring) bool { return !show.Shows(r.part) || !show.Shows(m.whole) })
	if !show.Shows(m.whole) {
		c.across, c.down = 1, 1
	}
	return &c
}

// flat draws a dimension line in millimetres of paper, with its two extension lines.
func flat(p *pen, letter string, from, to, extFrom, extTo vec) {
	past := func(a, b vec) [2]vec { return [2]vec{a, b.add(b.sub(a).unit().times(extPast))} }
	d := dimension{letter: letter, from: from, to: to, ext: [][2]vec{past(extFrom, from), past(extTo, to)}}.inLine(0.5)
	scale, shift := p.scale, p.shift
	p.scale, p.shift = 1, vec{}
	d.draw(p)
	p.scale, p.shift = scale, shift
}

// words says what a drawing of the mosaic shows.
func (m *mosaic) words(s *scene.Scene, langs []*words.Language, title, first func(v speech) string) {
	for lang, v := range speak(langs) {
		s.Title[lang] = fmt.Sprintf(title(v), v.Title(m.p))
		said := []string{fmt.Sprintf(first(v), v.sizeOf(m.p)), fmt.Sprintf(v.Mosaic, m.across*m.down, m.across, m.down)}
		if m.p.Parts[m.whole].Grid.Each != nil {
			said = append(said, fmt.Sprintf(v.MotifSide, v.cm(m.side)))
		}
		for i := range m.p.Parts {
			if i != m.whole && i != m.motif {
				said = append(said, fmt.Sprintf(v.Border, v.PartTitle(m.p, i)))
			}
		}
		s.Desc[lang] = strings.Join(said, " ")
	}
}
