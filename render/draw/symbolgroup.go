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

// group draws a group: stems that share foot and head for a cluster, a bobble and a puff, with an oval on their head for a
// popcorn; a fan for a shell; two stems with a chain between them for a V stitch; a ring of chains for a picot.
func (p *pen) group(f stitch.Form, k stitch.Kind) {
	tall := tallOf(f, k)
	head, foot := vec{0, -tall}, vec{}
	switch f.Group {
	case stitch.Picot:
		p.picot(f.Of)
		return
	case stitch.CrossFront, stitch.CrossBack:
		for i := range f.Of {
			at := crossPitch * (float64(i) - float64(f.Of-1)/2)
			to := crossPitch * (float64((i+f.Of/2)%f.Of) - float64(f.Of-1)/2)
			gap := 0.0
			if back := f.Group == stitch.CrossBack; back == (i < f.Of/2) {
				gap = crossGap // what lies behind is broken where it is crossed
			}
			p.crossing(k, vec{to, -tall}, vec{at, 0}, gap)
		}
		return
	case stitch.Shell:
		for i := range f.Of {
			p.leaning(k, fanPitch*(float64(i)-float64(f.Of-1)/2), tall)
		}
	case stitch.Vee:
		p.leaning(k, -veeSpread/2, tall)
		p.leaning(k, veeSpread/2, tall)
		p.round(ellipse(vec{0, -tall}, chainWide/2*0.6, chainHigh/2*0.8), symbolLine)
	default:
		if f.Group == stitch.Puff {
			k.Slashes, k.Symbol = 0, stitch.Stem
		}
		for i := range f.Of {
			p.bowed(k, head, foot, min(bulge, lensWide/float64(max(f.Of-1, 1)))*(float64(i)-float64(f.Of-1)/2))
		}
		if f.Group == stitch.Popcorn {
			p.round(ellipse(head.add(vec{0, -popHigh / 2}), popWide/2, popHigh/2), symbolLine)
		} else {
			p.capOf(stitch.Kind{Symbol: stitch.Stem}, head)
		}
	}
	p.foot(f, head, foot)
}

// crossing draws a stitch that leans over another; gap is how much of its stem is left out where they cross.
func (p *pen) crossing(k stitch.Kind, head, foot vec, gap float64) {
	share := gap / 2 / head.sub(foot).length()
	p.round(straight(head, head.to(foot, 0.5-share)), symbolLine)
	p.round(straight(head.to(foot, 0.5+share), foot), symbolLine)
	p.crossbars(k, true, head, head.to(foot, 0.5))
	across := vec{capWide * 0.36, 0}
	if k.Symbol != stitch.Cross {
		p.round(straight(head.sub(across), head.add(across)), symbolLine)
	}
}

// leaning draws a stitch whose head lies to one side of its foot.
func (p *pen) leaning(k stitch.Kind, side, tall float64) {
	head := vec{side, -math.Sqrt(max(tall*tall-side*side/4, tall*tall/4))}
	p.round(straight(head, vec{}), symbolLine)
	p.crossbars(k, true, head, head.to(vec{}, 0.62)) // near the head, where the stems stand apart
	if k.Symbol == stitch.Cross {
		return
	}
	across := head.unit().normal().times(capWide * 0.36)
	p.round(straight(head.sub(across), head.add(across)), symbolLine)
}

// bowed draws a stem that bows out between its head and its foot, with its bars at the widest place.
func (p *pen) bowed(k stitch.Kind, head, foot vec, out float64) {
	c := curve{smooth: true}
	for i := range 9 {
		t := float64(i) / 8
		c.pts = append(c.pts, head.to(foot, t).add(vec{4 * out * t * (1 - t), 0}))
	}
	p.round(c, symbolLine)
	shift := vec{out, 0}
	k.Extends = "" // there is no room for its bar
	if k.Symbol == stitch.Cross {
		mid, across := head.to(foot, 0.5).add(shift), vec{scArm / 5, 0}
		p.round(straight(mid.sub(across), mid.add(across)), symbolLine)
		return
	}
	half := vec{slashWide / 2, -slashHigh / 2}.times(0.6)
	for i := range k.Slashes {
		mid := head.to(foot, 0.5).add(shift).add(vec{0, slashPitch * 0.8 * (float64(i) - float64(k.Slashes-1)/2)})
		p.round(straight(mid.sub(half), mid.add(half)), symbolLine)
	}
}

// picot draws a ring of chains, closed at its foot with a dot.
func (p *pen) picot(n int) {
	away := ringAway * max(1, float64(n)/4)
	middle := vec{0, -away}
	for i := range n {
		sin, cos := math.Sincos(math.Pi/2 + 2*math.Pi*(float64(i)+1)/float64(n+1))
		p.round(turned(ellipse(vec{}, chainWide/2*0.85, chainHigh/2*0.85), -sin, cos, middle.add(vec{cos * away, sin * away})), symbolLine)
	}
	p.area(black, ellipse(vec{}, slipWide/2*0.8, slipWide/2*0.8))
}

// turned turns a curve so that what points right points along (x, y), and moves its middle to o.
func turned(c curve, x, y float64, o vec) curve {
	for i, v := range c.pts {
		c.pts[i] = vec{v.x*x - v.y*y, v.x*y + v.y*x}.add(o)
	}
	return c
}
