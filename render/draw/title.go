package draw

import (
	"math"

	"ovillo/compile/plan"
	"ovillo/render/scene"
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
// in a second yarn are bars, in a third dots, and ribs stand upright.
func Title(p *plan.Pattern, w, h float64) (*scene.Scene, error) {
	l, err := lie(p, courses)
	if err != nil {
		return nil, err
	}
	s := &scene.Scene{W: w, H: h, Title: map[string]string{}, Desc: map[string]string{}}
	titleWords(l, s)
	if len(l.groups) == 0 {
		return s, nil
	}
	for _, gr := range l.groups {
		gr.round()
	}
	sh := l.shelve(w-2*titleOutline, h-2*titleOutline, func(*group) margins { return margins{gap: 5} })
	marks := l.marks()
	pen := &pen{scale: sh.scale}
	for i, gr := range l.groups {
		pen.shift = sh.at[i].add(vec{titleOutline, titleOutline})
		for _, pt := range gr.patches {
			pen.rounds(pt, marks)
		}
		for _, pt := range gr.patches {
			pen.edges(l.g, pt, titleOutline)
		}
	}
	s.Items = pen.items
	s.H = math.Min(h, sh.high+2*titleOutline)
	return s, nil
}

// round lets every line of a group hang through a little, as rounds of a body do when it is seen from the front.
func (gr *group) round() {
	for _, pt := range gr.patches {
		if pt.rings || !pt.pc.closed {
			pt.ripple()
			continue
		}
		pt.sag()
	}
}

func (pt *patch) sag() {
	deep := pt.depths()
	all := deep[len(deep)-1]
	for k := range pt.lines {
		i := pt.turn(k)
		c := pt.lines[i]
		wide := c.last().sub(c.first()).length()
		sag := titleSag * math.Min(1, wide/titleWide)
		if pt.f.along.y < 0 {
			sag = -sag
		}
		v := 0.0
		if all > 0 {
			v = deep[k] / all
		}
		if pt.drop > 0 && k < len(pt.lines)-1 {
			// Rounds come down to the crotch little by little.
			pt.lines[i] = c.hung(pt.f.along, sag, pt.drop*v*v*v, v)
			continue
		}
		if pt.side != 0 && pt.branchedLow() {
			// A leg starts along the line of the body's edge.
			sag *= clamp(deep[k]/3, 0, 1)
		}
		pt.lines[i] = c.hung(pt.f.along, sag, 0, 0)
	}
}

// branchedLow reports whether the patch starts on a bent edge, whose corner a sagging line would cut.
func (pt *patch) branchedLow() bool { return math.Abs(pt.f.along.x) > 1e-6 }

// hung is a curve that hangs through in a direction: by sag in its middle as a parabola, and by drop partly as two
// straight lines that meet there.
func (c curve) hung(dir vec, sag, drop, bent float64) curve {
	if sag == 0 && drop == 0 {
		return c
	}
	const steps = 16
	out := curve{smooth: true}
	for i := range steps + 1 {
		t := float64(i) / steps
		u := math.Abs(2*t - 1)
		off := sag*(1-u*u) + drop*(bent*(1-u)+(1-bent)*(1-u*u))
		out.pts = append(out.pts, c.at(t).add(dir.times(off)))
	}
	return out
}
