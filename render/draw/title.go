package draw

import (
	"math"

	"ovillo/compile/plan"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// The lines of the title drawing, in millimetres, and its shape.
const (
	titleRound   = 0.16 // a round
	titleOutline = 0.34 // outlines and edges of parts
	titleRib     = 0.62 // a rib in another yarn than most of the piece
	titlePlain   = 0.34 // a rib in the same yarn
	titleBand    = 0.56 // of a round's height: the bar of a round in a second yarn
	titleDot     = 0.33 // of a round's height: the radius of a dot
	titleSag     = 0.55 // centimetres that a round hangs through, so that the piece looks round
	titleWide    = 14.0 // width from which it does so in full
	titleClose   = 0.62 // least distance between two lines
)

// Title is the title drawing: one line is one row or round, so that the density of lines is the tone of the fabric. Rows
// in a second yarn are bars, in a third dots, and ribs stand upright. It is described in the languages given.
func Title(p *plan.Pattern, w, h float64, langs ...*words.Language) (*scene.Scene, error) {
	if m := mosaicOf(p); m != nil {
		s := m.title(w, h)
		m.words(s, langs, func(v speech) string { return v.Piece }, func(v speech) string { return v.Line })
		return s, nil
	}
	l, err := lie(p, courses)
	if err != nil {
		return nil, err
	}
	s := &scene.Scene{W: w, H: h, Title: map[string]string{}, Desc: map[string]string{}}
	titleWords(l, s, langs)
	if len(l.groups) == 0 {
		return s, nil
	}
	for _, gr := range l.groups {
		gr.round()
	}
	sh := l.shelve(w-2*titleOutline, h-2*titleOutline, func(*group) margins { return margins{gap: 5} })
	marks := l.g.marks()
	pen := &pen{scale: sh.scale}
	for i, gr := range l.groups {
		pen.shift = sh.at[i].add(vec{titleOutline, titleOutline})
		for _, pt := range gr.patches {
			pen.rounds(pt, marks)
		}
		for _, pt := range gr.patches {
			if pt.over {
				pen.area(white, curve{pts: pt.outline()})
				pen.rounds(pt, marks)
			}
			pen.edges(l.g, pt, titleOutline)
			if pt.pc.folded && !pt.band {
				pen.line(pt.opening(), titleOutline)
			}
			if pt.pc.goesOn {
				pen.line(pt.lines[0], titleRound)
			}
		}
	}
	s.Items = pen.items
	s.H = min(h, sh.high+2*titleOutline)
	return s, nil
}

// round lets every line of a group hang through a little, as rounds of a body do when it is seen from the front.
func (gr *group) round() {
	gr.stiffen()
	for _, pt := range gr.patches {
		if pt.rings || !pt.pc.closed {
			pt.ripple()
			continue
		}
		pt.sag()
	}
}

// stiffen finds the edges of tubes that lie along a flat piece.
func (gr *group) stiffen() {
	for _, tube := range gr.patches {
		if tube.rings || !tube.pc.closed {
			continue
		}
		for edge, c := range [2]curve{tube.near(), tube.far()} {
			for _, flat := range gr.patches {
				if flat.rings || flat.pc.closed || flat.over {
					continue
				}
				b := flat.bounds()
				if m := b.middle(); math.Abs(m.x-c.at(0.5).x) > b.width()/2+lengthOf(c)/2 {
					continue
				}
				for _, y := range [2]float64{b.min.y, b.max.y} {
					tube.stiff[edge] = tube.stiff[edge] || math.Abs(y-c.at(0.5).y) < 0.01
				}
			}
		}
	}
}

func lengthOf(c curve) float64 { return c.last().sub(c.first()).length() }

// sag lets the rounds of a tube hang through: less where it is narrow, in a rounded end, and near an edge that is bent to
// meet several pieces, which must stay where it is. On the way to a crotch they come down little by little.
func (pt *patch) sag() {
	deep := pt.depths()
	last := len(deep) - 1
	for k := range pt.lines {
		i := pt.turn(k)
		c := pt.lines[i]
		sag := titleSag * min(1, c.last().sub(c.first()).length()/titleWide)
		if pt.f.along.y < 0 {
			sag = -sag
		}
		sag *= pt.slack(deep[k], deep[last])
		drop, v := 0.0, 0.0
		along := pt.f.along
		if pt.drop > 0 && deep[last] > 0 {
			v = deep[k] / deep[last]
			if pt.forks[0] {
				v, along = 1-v, along.times(-1)
				sag = -sag
			}
			if v < 1 {
				drop = pt.drop * v * v * v
			}
		}
		pt.lines[i] = c.hung(along, sag, drop, v)
	}
}

// slack is how much of its sag a round has at a depth: 0 to 1.
func (pt *patch) slack(deep, all float64) float64 {
	const soon = 3 // centimetres from a bent edge
	slack := 1.0
	for edge, d := range [2]float64{deep, all - deep} {
		if pt.forks[edge] || pt.stiff[edge] {
			slack *= clamp(d/soon, 0, 1)
		}
		if t := pt.tips[edge]; t != nil {
			slack *= clamp(d/t.deep, 0, 1)
		}
	}
	return slack
}

// hung is a curve that hangs through in a direction: by sag in its middle as a parabola, and by drop partly as two
// straight lines that meet there.
func (c curve) hung(dir vec, sag, drop, bent float64) curve {
	if sag == 0 && drop == 0 {
		return c
	}
	c = c.fine()
	steps := 16
	if len(c.pts) == 2 && drop == 0 {
		steps = 2 // a parabola through three points is drawn as it is
	}
	out := curve{smooth: true}
	for i := range steps + 1 {
		t := float64(i) / float64(steps)
		u := math.Abs(2*t - 1)
		off := sag*(1-u*u) + drop*(bent*(1-u)+(1-bent)*(1-u*u))
		out.pts = append(out.pts, c.at(t).add(dir.times(off)))
	}
	return out
}
