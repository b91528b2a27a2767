package draw

import (
	"math"

	"ovillo/compile/stitch"
	"ovillo/render/scene"
)

// The symbols of the stitches, in millimetres. A dc is as tall as here; the others as tall as they are beside it.
const (
	symbolLine  = 0.32
	dcTall      = 8.6
	scArm       = 3.6 // of the plus
	capWide     = 4.0
	slashWide   = 2.6
	slashHigh   = 1.7
	slashPitch  = 1.9
	chainWide   = 3.5
	chainHigh   = 1.9
	slipWide    = 1.5
	hookRadius  = 1.45
	footPitch   = 3.4 // between the feet of stitches worked together
	loopWide    = 2.4
	loopDeep    = 0.8
	loopBelow   = 0.9 // of the arc of a loop below the foot
	togetherMax = 8
)

// slashes are the yarn overs of a stitch as its symbol shows them: none on hdc, by custom.
var slashes = map[stitch.ID]int{stitch.HDC: 0, stitch.DC: 1, stitch.TR: 2, stitch.DTR: 3, stitch.TRTR: 4}

// Symbol is the international symbol of a stitch, its foot at the bottom. There is none for own stitches, nor for
// loops that no custom has a sign for.
func Symbol(f stitch.Form) (*scene.Scene, bool) {
	p := &pen{scale: 1}
	k, known := stitch.Of(f.ID)
	if !known || f.Loop == stitch.ThirdLoop || f.Together > togetherMax {
		return nil, false
	}
	switch f.ID {
	case stitch.Chain:
		p.round(ellipse(vec{}, chainWide/2, chainHigh/2), symbolLine)
	case stitch.Slip:
		p.area(black, ellipse(vec{}, slipWide/2, slipWide/2))
	default:
		p.stitch(f, k)
	}
	return framed(p), true
}

// stitch draws a stitch with a stem, or several that share one head.
func (p *pen) stitch(f stitch.Form, k stitch.Kind) {
	dc, _ := stitch.Of(stitch.DC)
	tall := dcTall * k.Height / dc.Height
	if f.ID == stitch.SC && f.Together < 2 {
		tall = scArm
	}
	head := vec{0, -tall}
	n := max(f.Together, 1)
	for i := range n {
		foot := vec{footPitch * (float64(i) - float64(n-1)/2), 0}
		p.round(straight(head, foot), symbolLine)
		p.crossbars(f, head, foot)
		p.foot(f, head, foot)
	}
	if f.ID != stitch.SC {
		p.round(straight(head.add(vec{-capWide / 2, 0}), head.add(vec{capWide / 2, 0})), symbolLine)
	}
}

// crossbars draws the bar of an sc, or the slashes of a taller stitch, across its stem.
func (p *pen) crossbars(f stitch.Form, head, foot vec) {
	if f.ID == stitch.SC {
		across := vec{scArm / 2, 0}
		if f.Together > 1 {
			across = head.sub(foot).unit().normal().times(scArm / 4)
		}
		mid := head.to(foot, 0.5)
		if f.Together > 1 {
			mid = head.to(foot, 0.62)
		}
		p.round(straight(mid.sub(across), mid.add(across)), symbolLine)
		return
	}
	n := slashes[f.ID]
	down := foot.sub(head).unit()
	for i := range n {
		mid := head.to(foot, 0.47).add(down.times(slashPitch * (float64(i) - float64(n-1)/2)))
		if f.Together > 1 {
			// Beside each other the slashes of neighbouring stems would run together at the head.
			mid = head.to(foot, 0.6).add(down.times(slashPitch * (float64(i) - float64(n-1)/2)))
		}
		half := vec{slashWide / 2, -slashHigh / 2}
		if f.Together > 1 {
			half = half.times(0.75)
		}
		p.round(straight(mid.sub(half), mid.add(half)), symbolLine)
	}
}

// foot draws what is under the stem: the hook of a post stitch, to the right in front and to the left behind, or the arc
// of the one loop that is worked into.
func (p *pen) foot(f stitch.Form, head, foot vec) {
	switch f.Post {
	case stitch.FrontPost:
		p.round(hook(foot, 1), symbolLine)
	case stitch.BackPost:
		p.round(hook(foot, -1), symbolLine)
	}
	way := 0.0
	switch f.Loop {
	case stitch.BackLoop:
		way = 1
	case stitch.FrontLoop:
		way = -1
	default:
		return
	}
	c := curve{smooth: true}
	for i := range 9 {
		t := 2*float64(i)/8 - 1
		y := foot.y + loopBelow + loopDeep/2 + way*loopDeep*(0.5-t*t)
		c.pts = append(c.pts, vec{foot.x + t*loopWide/2, y})
	}
	p.round(c, symbolLine)
}

// hook curls from a foot to one side.
func hook(foot vec, side float64) curve {
	c := curve{smooth: true}
	middle := foot.add(vec{side * hookRadius, 0})
	for i := range 9 {
		sin, cos := math.Sincos(math.Pi * 0.9 * float64(i) / 8)
		c.pts = append(c.pts, middle.add(vec{-side * hookRadius * cos, hookRadius * sin}))
	}
	return c
}

func ellipse(o vec, rx, ry float64) curve {
	c := curve{smooth: true, closed: true}
	for i := range 24 {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / 24)
		c.pts = append(c.pts, o.add(vec{rx * cos, ry * sin}))
	}
	return c
}

// framed makes a scene just as large as what was drawn.
func framed(p *pen) *scene.Scene {
	b := extent(p.items)
	s := &scene.Scene{W: b.width(), H: b.height()}
	for _, it := range p.items {
		s.Items = append(s.Items, moved(it.(scene.Path), b.min.times(-1)))
	}
	return s
}
