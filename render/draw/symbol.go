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
	waveOver    = 1.3 // of the wave of a reverse stitch over its head
	waveHigh    = 0.5
	// The short bar of an extended stitch, and how far down the stem it lies.
	extendedWide = 1.7
	extendedLow  = 0.84
)

// Symbol is the international symbol of a stitch, its foot at the bottom. There is none for own stitches, nor for
// loops that no custom has a sign for.
func Symbol(f stitch.Form) (*scene.Scene, bool) {
	p := &pen{scale: 1}
	k, known := stitch.Of(f.ID)
	if !known || f.Loop == stitch.ThirdLoop || f.Together > togetherMax || f.Of > togetherMax {
		return nil, false
	}
	switch {
	case f.Group != stitch.Single:
		p.group(f, k)
	case k.Symbol == stitch.Oval:
		p.round(ellipse(vec{}, chainWide/2, chainHigh/2), symbolLine)
	case k.Symbol == stitch.Dot:
		p.area(black, ellipse(vec{}, slipWide/2, slipWide/2))
	default:
		p.stitch(f, k)
	}
	return framed(p), true
}

// stitch draws a stitch with a stem, or several that share one head.
func (p *pen) stitch(f stitch.Form, k stitch.Kind) {
	head := vec{0, -tallOf(f, k)}
	n := max(f.Together, 1)
	for i := range n {
		foot := vec{footPitch * (float64(i) - float64(n-1)/2), 0}
		p.stem(f, k, head, foot)
		p.foot(f, head, foot)
	}
	p.capOf(k, head)
	if k.Back {
		p.wave(head)
	}
}

// wave draws the wave over a stitch that is worked backwards.
func (p *pen) wave(head vec) {
	c := curve{smooth: true}
	for i := range 13 {
		t := float64(i)/6 - 1
		c.pts = append(c.pts, head.add(vec{t * scArm / 2, -waveOver - waveHigh*math.Sin(math.Pi*t)}))
	}
	p.round(c, symbolLine)
}

// tallOf is the height of a symbol. The cross of an sc is smaller than the stitch, by custom; drawn together with others
// it is a stem.
func tallOf(f stitch.Form, k stitch.Kind) float64 {
	if k.Symbol == stitch.Cross && f.Together < 2 && f.Group == stitch.Single {
		sc, _ := stitch.Of(stitch.SC)
		return scArm * k.Height / sc.Height
	}
	dc, _ := stitch.Of(stitch.DC)
	return dcTall * k.Height / dc.Height
}

// capOf draws the bar over a stem.
func (p *pen) capOf(k stitch.Kind, head vec) {
	if k.Symbol != stitch.Cross {
		p.round(straight(head.add(vec{-capWide / 2, 0}), head.add(vec{capWide / 2, 0})), symbolLine)
	}
}

// stem draws a stem with its bars.
func (p *pen) stem(f stitch.Form, k stitch.Kind, head, foot vec) {
	p.round(straight(head, foot), symbolLine)
	p.crossbars(k, f.Together > 1, head, foot)
}

// crossbars draws the bar of an sc, or the slashes of a taller stitch, across its stem, and the short bar low on it that an
// extended stitch has. Beside each other, in narrow, bars of neighbouring stems would run together at the head.
func (p *pen) crossbars(k stitch.Kind, narrow bool, head, foot vec) {
	if k.Extends != "" {
		across := head.sub(foot).unit().normal().times(extendedWide / 2)
		low := head.to(foot, extendedLow)
		p.round(straight(low.sub(across), low.add(across)), symbolLine)
	}
	if k.Symbol == stitch.Cross {
		across, mid := vec{scArm / 2, 0}, head.to(foot, 0.5)
		if k.Extends != "" {
			mid = head.to(foot, 0.36) // the arms of the cross stay as long
		}
		if narrow {
			across, mid = head.sub(foot).unit().normal().times(scArm/4), head.to(foot, 0.62)
			if k.Extends != "" {
				mid = head.to(foot, 0.5)
			}
		}
		p.round(straight(mid.sub(across), mid.add(across)), symbolLine)
		return
	}
	n := k.Slashes
	down := foot.sub(head).unit()
	at, half := 0.47, vec{slashWide / 2, -slashHigh / 2}
	if narrow {
		at, half = 0.6, half.times(0.75)
	}
	for i := range n {
		mid := head.to(foot, at).add(down.times(slashPitch * (float64(i) - float64(n-1)/2)))
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
