package draw

import (
	"math"

	"ovillo/compile/stitch"
)

// This file draws the symbols of groups: several stitches in one place.

const (
	bulge      = 1.9 // between neighbouring stems of a cluster at their middle, if they are few
	lensWide   = 5.6 // of the lens of many stems
	fanPitch   = 4.2 // between the heads of a shell
	popWide    = 3.2 // of the oval over a popcorn
	popHigh    = 1.7
	crossPitch = 4.6 // between the heads of stitches that cross
	crossGap   = 1.6 // in a stem where another crosses it
	veeSpread  = 5.6 // between the heads of a V stitch
	ringAway   = 2.8 // of the chains of a picot from its middle, for three of them
)

// group draws a group for a key: stems that share foot and head for a cluster, a bobble and a puff, with an oval on their head for a
// popcorn; a fan for a shell; two stems with a chain between them for a V stitch; a ring of chains for a picot.
func (p *pen) group(f stitch.Form, k stitch.Kind) {
	tall := tallOf(f, k)
	g := stance{head: vec{0, -tall}, feet: []vec{{}}, up: vec{0, -1}}
	switch f.Group {
	case stitch.Picot:
		p.picot(f.Of, vec{}, g.up, 1)
		return
	case stitch.CrossFront, stitch.CrossBack:
		for i := range f.Of {
			at := crossPitch * (float64(i) - float64(f.Of-1)/2)
			to := crossPitch * (float64((i+f.Of/2)%f.Of) - float64(f.Of-1)/2)
			g := stance{head: vec{to, -tall}, feet: []vec{{at, 0}}, up: vec{0, -1}, narrow: true, room: crossPitch}
			if back := f.Group == stitch.CrossBack; back == (i < f.Of/2) {
				g.broken = []float64{0.5} // what lies behind is broken where it is crossed
			}
			p.crossed(f, k, g)
		}
		return
	case stitch.Shell:
		for i := range f.Of {
			p.leaning(f, k, fanPitch*(float64(i)-float64(f.Of-1)/2), tall)
		}
	case stitch.Vee:
		p.leaning(f, k, -veeSpread/2, tall)
		p.leaning(f, k, veeSpread/2, tall)
		p.oval(vec{0, -tall}, vec{1, 0}, chainWide/2*0.6, chainHigh/2*0.8, false)
	default:
		p.bunch(f, k, g)
	}
	p.foot(f, g, vec{})
}

// bunch draws stitches that share head and foot.
func (p *pen) bunch(f stitch.Form, k stitch.Kind, g stance) {
	if f.Group == stitch.Puff {
		k.Slashes, k.Symbol = 0, stitch.Stem
	}
	wide := lensWide
	if g.room > 0 {
		wide = min(wide, g.room*0.72)
	}
	apart := min(bulge, wide/float64(max(f.Of-1, 1)))
	for i := range f.Of {
		p.bowed(k, g, apart*(float64(i)-float64(f.Of-1)/2), min(1, apart/1.3))
	}
	if f.Group == stitch.Popcorn {
		p.oval(g.head.add(g.up.times(popHigh/2)), g.right(), popWide/2, popHigh/2, false)
		return
	}
	p.capOf(stitch.Kind{Symbol: stitch.Stem}, g)
}

// crossed draws a stitch that leans over others, its bars near its head.
func (p *pen) crossed(f stitch.Form, k stitch.Kind, g stance) {
	bars := k
	bars.Slashes = 0
	if k.Symbol == stitch.Cross {
		bars.Symbol = stitch.Stem // its arms stand near the head as well
	}
	foot := g.foot()
	p.stem(bars, g, foot)
	p.crossbars(k, true, g.head, g.head.to(foot, 0.42))
	p.capOf(k, g)
	p.foot(f, g, foot)
}

// leaning draws a stitch of a fan whose head lies to one side of its foot.
func (p *pen) leaning(f stitch.Form, k stitch.Kind, side, tall float64) {
	head := vec{side, -math.Sqrt(max(tall*tall-side*side/4, tall*tall/4))}
	p.spread(k, stance{head: head, feet: []vec{{}}, up: head.unit(), narrow: true, room: capWide * 0.72 / 0.76})
}

// spread draws a stitch that shares its foot with others: its bars lie near the head, where the stems stand apart.
func (p *pen) spread(k stitch.Kind, g stance) {
	foot := g.foot()
	bars := k
	bars.Extends = ""
	stem := bars
	stem.Slashes, stem.Symbol = 0, stitch.Stem
	p.stem(stem, g, foot)
	p.crossbars(bars, true, g.head, g.head.to(foot, 0.62))
	if k.Extends != "" { // its bar lies higher than usual, where there is room for it
		across := g.head.sub(foot).unit().normal().times(extendedWide * 0.35)
		low := g.head.to(foot, 0.58)
		p.ink(straight(low.sub(across), low.add(across)))
	}
	p.capOf(k, g)
}

// bowed draws a stem that bows out between its head and its foot, with its bars, so large, at the widest place.
func (p *pen) bowed(k stitch.Kind, g stance, out, size float64) {
	head, foot := g.head, g.foot()
	up := head.sub(foot).unit()
	right := up.normal()
	c := curve{smooth: true}
	for i := range 5 {
		t := float64(i) / 4
		c.pts = append(c.pts, head.to(foot, t).add(right.times(4*out*t*(1-t))))
	}
	p.ink(c)
	on := func(t float64) vec { return head.to(foot, t).add(right.times(4 * out * t * (1 - t))) }
	if k.Symbol == stitch.Cross {
		across := right.times(scArm * 0.17 * size)
		p.ink(straight(on(0.5).sub(across), on(0.5).add(across)))
		return
	}
	half := right.times(slashWide / 2).add(up.times(slashHigh / 2)).times(0.6 * size)
	apart := slashPitch * 0.8 / max(head.sub(foot).length(), 1)
	for i := range k.Slashes {
		mid := on(0.5 + apart*(float64(i)-float64(k.Slashes-1)/2))
		p.ink(straight(mid.sub(half), mid.add(half)))
	}
}

// picot draws a ring of chains over a point, closed there with a dot; size 1 is that of the key.
func (p *pen) picot(n int, at, up vec, size float64) {
	n = max(n, 1)
	away := ringAway * size * max(1, float64(n)/4)
	middle := at.add(up.times(away))
	right := up.normal()
	for i := range n {
		sin, cos := math.Sincos(2*math.Pi*(float64(i)+1)/float64(n+1) - math.Pi/2)
		from := right.times(cos).add(up.times(sin))
		p.oval(middle.add(from.times(away)), from.normal(), chainWide/2*0.85*size, chainHigh/2*0.85*size, false)
	}
	p.dot(at, slipWide/2*0.8*size)
}
