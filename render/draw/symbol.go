package draw

import (
	"math"
	"slices"

	"ovillo/compile/stitch"
	"ovillo/render/page"
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

// stance is where a symbol stands: its head, its feet, and the direction from the one to the others' place, of length 1. Narrow says
// that other stems stand close by, so that its bars are kept short, and room how wide its cap may be; 0: as wide as usual.
type stance struct {
	head   vec
	feet   []vec
	up     vec
	narrow bool
	room   float64
	broken []float64 // where the stem is crossed by those before it, as parts of the way from the head
}

// right is the direction to the right of a symbol that stands upright on its foot.
func (g stance) right() vec { return g.up.normal() }

// foot is where a symbol with one stem stands.
func (g stance) foot() vec {
	if len(g.feet) == 0 {
		return g.head.sub(g.up.times(scArm))
	}
	return g.feet[0]
}

// Symbol is the international symbol of a stitch, its foot at the bottom. There is none for own stitches, nor for
// loops that no custom has a sign for.
func Symbol(f stitch.Form) (*scene.Scene, bool) {
	p := &pen{scale: 1}
	k, known := stitch.Of(f.ID)
	if !known || f.Loop == stitch.ThirdLoop || f.Together > togetherMax || f.Of > togetherMax {
		return nil, false
	}
	g := stance{head: vec{0, -tallOf(f, k)}, up: vec{0, -1}}
	n := max(f.Together, 1)
	for i := range n {
		g.feet = append(g.feet, vec{footPitch * (float64(i) - float64(n-1)/2), 0})
	}
	g.narrow = n > 1
	switch {
	case f.Group != stitch.Single:
		p.group(f, k)
	case k.Symbol == stitch.Oval:
		p.chain(vec{}, vec{1, 0}, chainWide)
	case k.Symbol == stitch.Dot:
		p.dot(vec{}, slipWide/2)
	default:
		p.stitch(f, k, g)
	}
	return framed(p), true
}

// stitch draws a stitch with a stem, or several that share one head.
func (p *pen) stitch(f stitch.Form, k stitch.Kind, g stance) {
	for _, foot := range g.feet {
		p.stem(k, g, foot)
		p.foot(f, g, foot)
	}
	p.capOf(k, g)
	if k.Back {
		p.wave(g)
	}
}

// ink draws a stroke of a symbol.
func (p *pen) ink(c curve) { p.round(c, symbolLine*p.scale) }

// chain draws a chain, so long, that lies in a direction.
func (p *pen) chain(at, along vec, long float64) {
	p.oval(at, along, long/2, min(chainHigh, 0.62*long)/2, false)
}

// dot fills a small circle.
func (p *pen) dot(at vec, radius float64) { p.oval(at, vec{1, 0}, radius, radius, true) }

// oval draws an ellipse, or fills it, whose half axis rx lies in a direction.
func (p *pen) oval(at, along vec, rx, ry float64, full bool) {
	const round = 0.5523 // of the handles of a quarter of a circle
	a, b := along.times(rx), along.normal().times(ry)
	on := func(x, y float64) page.Point {
		v := p.on(at.add(a.times(x)).add(b.times(y)))
		return page.Point{X: v.x, Y: v.y}
	}
	path := scene.Path{Cmds: []page.Cmd{
		{Op: 'M', P: [3]page.Point{on(1, 0)}},
		{Op: 'C', P: [3]page.Point{on(1, round), on(round, 1), on(0, 1)}},
		{Op: 'C', P: [3]page.Point{on(-round, 1), on(-1, round), on(-1, 0)}},
		{Op: 'C', P: [3]page.Point{on(-1, -round), on(-round, -1), on(0, -1)}},
		{Op: 'C', P: [3]page.Point{on(round, -1), on(1, -round), on(1, 0)}},
		{Op: 'Z'},
	}}
	ink := black
	if full {
		path.Fill = &ink
	} else {
		path.Stroke, path.Width, path.Round = &ink, symbolLine*p.scale, true
	}
	p.items = append(p.items, path)
}

// wave draws the wave over a stitch that is worked backwards.
func (p *pen) wave(g stance) {
	c := curve{smooth: true}
	for i := range 5 {
		t := float64(i)/2 - 1
		c.pts = append(c.pts, g.head.add(g.right().times(t*scArm/2)).add(g.up.times(waveOver+waveHigh*math.Sin(math.Pi*t))))
	}
	p.ink(c)
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
func (p *pen) capOf(k stitch.Kind, g stance) {
	if k.Symbol == stitch.Cross {
		return
	}
	wide := capWide
	if g.room > 0 {
		wide = min(wide, 0.76*g.room)
	}
	across := g.right().times(wide / 2)
	p.ink(straight(g.head.sub(across), g.head.add(across)))
}

// stem draws a stem with its bars, and leaves out of it what lies behind other stems.
func (p *pen) stem(k stitch.Kind, g stance, foot vec) {
	from, length := 0.0, g.head.sub(foot).length()
	for _, t := range slices.Sorted(slices.Values(g.broken)) {
		gap := crossGap / 2 / max(length, 0.1)
		if t-gap > from {
			p.ink(straight(g.head.to(foot, from), g.head.to(foot, t-gap)))
		}
		from = max(from, t+gap)
	}
	if from < 1 {
		p.ink(straight(g.head.to(foot, from), foot))
	}
	p.crossbars(k, g.narrow, g.head, foot)
}

// crossbars draws the bar of an sc, or the slashes of a taller stitch, across its stem, and the short bar low on it that an
// extended stitch has. Beside each other, in narrow, bars of neighbouring stems would run together at the head.
func (p *pen) crossbars(k stitch.Kind, narrow bool, head, foot vec) {
	up := head.sub(foot).unit()
	right := up.normal()
	if k.Extends != "" {
		across := right.times(extendedWide / 2)
		low := head.to(foot, extendedLow)
		p.ink(straight(low.sub(across), low.add(across)))
	}
	if k.Symbol == stitch.Cross {
		half, at := scArm/2, 0.5
		if k.Extends != "" {
			at = 0.36 // the arms of the cross stay as long
		}
		if narrow {
			half, at = scArm/4, 0.62
			if k.Extends != "" {
				at = 0.5
			}
		}
		mid := head.to(foot, at)
		p.ink(straight(mid.sub(right.times(half)), mid.add(right.times(half))))
		return
	}
	n := k.Slashes
	at, size := 0.47, 0.5
	if narrow {
		at, size = 0.6, 0.375
	}
	half := right.times(slashWide * size).add(up.times(slashHigh * size))
	for i := range n {
		mid := head.to(foot, at).sub(up.times(slashPitch * (float64(i) - float64(n-1)/2)))
		p.ink(straight(mid.sub(half), mid.add(half)))
	}
}

// foot draws what is under the stem: the hook of a post stitch, to the right in front and to the left behind, or the arc
// of the one loop that is worked into.
func (p *pen) foot(f stitch.Form, g stance, foot vec) {
	switch f.Post {
	case stitch.FrontPost:
		p.ink(hook(foot, g, 1))
	case stitch.BackPost:
		p.ink(hook(foot, g, -1))
	}
	way := 0.0
	switch f.Loop {
	case stitch.BackLoop:
		way = 1
	case stitch.FrontLoop:
		way = -1
	case stitch.ThirdLoop: // no custom has a sign for it: a bar, which the key explains
		bar := foot.sub(g.up.times(loopBelow))
		across := g.right().times(loopWide / 2)
		p.ink(straight(bar.sub(across), bar.add(across)))
		return
	default:
		return
	}
	c := curve{smooth: true}
	for i := range 5 {
		t := float64(i)/2 - 1
		down := loopBelow + loopDeep/2 + way*loopDeep*(0.5-t*t)
		c.pts = append(c.pts, foot.add(g.right().times(t*loopWide/2)).sub(g.up.times(down)))
	}
	p.ink(c)
}

// hook curls from a foot to one side.
func hook(foot vec, g stance, side float64) curve {
	c := curve{smooth: true}
	right := g.right().times(side)
	middle := foot.add(right.times(hookRadius))
	for i := range 5 {
		sin, cos := math.Sincos(math.Pi * 0.9 * float64(i) / 4)
		c.pts = append(c.pts, middle.sub(right.times(hookRadius*cos)).sub(g.up.times(hookRadius*sin)))
	}
	return c
}

// framed makes a scene just as large as what was drawn.
func framed(p *pen) *scene.Scene {
	b := extent(p.items)
	for _, it := range p.items {
		if l, ok := it.(scene.Label); ok {
			b.join(labelBox(l))
		}
	}
	s := &scene.Scene{W: b.width(), H: b.height()}
	for _, it := range p.items {
		switch it := it.(type) {
		case scene.Path:
			s.Items = append(s.Items, moved(it, b.min.times(-1)))
		case scene.Label:
			it.X, it.Y = it.X-b.min.x, it.Y-b.min.y
			s.Items = append(s.Items, it)
		}
	}
	return s
}
