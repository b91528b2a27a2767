package png

import (
	"image"
	"math"

	"golang.org/x/image/vector"

	"ovillo/render/font"
	"ovillo/render/page"
	"ovillo/render/scene"
)

// canvas is a picture on which areas are gathered and then filled. Its points are dots, k of them to the millimetre.
type canvas struct {
	img    *image.RGBA
	k      float64
	areas  [][]page.Point
	raster vector.Rasterizer
}

// area adds an area to those that are filled next, by the rule of winding.
func (c *canvas) area(pts []page.Point) {
	if len(pts) > 1 {
		c.areas = append(c.areas, pts)
	}
}

// tile is the side of the squares of dots in which areas are filled. What is in the way of one square is all that is looked at, so that
// a drawing of many small areas, or a large picture, takes no more time and memory than it has ink.
const tile = 512

// fill fills the areas.
func (c *canvas) fill(ink page.Color) {
	all := c.img.Bounds()
	over := map[image.Point][][]page.Point{}
	var order []image.Point
	for _, a := range c.areas {
		in := dots(a).Intersect(all)
		if in.Empty() {
			continue
		}
		for y := in.Min.Y / tile; y <= (in.Max.Y-1)/tile; y++ {
			for x := in.Min.X / tile; x <= (in.Max.X-1)/tile; x++ {
				at := image.Pt(x, y)
				if over[at] == nil {
					order = append(order, at)
				}
				over[at] = append(over[at], a)
			}
		}
	}
	c.areas = c.areas[:0]
	src := image.NewUniform(opaque(ink))
	for _, at := range order {
		c.fillTile(over[at], image.Rect(at.X*tile, at.Y*tile, at.X*tile+tile, at.Y*tile+tile).Intersect(all), src)
	}
}

// fillTile fills what of some areas lies in a square of dots.
func (c *canvas) fillTile(areas [][]page.Point, in image.Rectangle, src image.Image) {
	var all image.Rectangle
	for _, a := range areas {
		all = all.Union(dots(a))
	}
	if in = in.Intersect(all); in.Empty() {
		return
	}
	c.raster.Reset(in.Dx(), in.Dy())
	for _, a := range areas {
		for i, p := range a {
			x, y := float32(p.X-float64(in.Min.X)), float32(p.Y-float64(in.Min.Y))
			if i == 0 {
				c.raster.MoveTo(x, y)
			} else {
				c.raster.LineTo(x, y)
			}
		}
		c.raster.ClosePath()
	}
	c.raster.Draw(c.img, in, src, image.Point{})
}

// dots is the box of dots round an area.
func dots(a []page.Point) image.Rectangle {
	lo, hi := page.Point{X: math.Inf(1), Y: math.Inf(1)}, page.Point{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, p := range a {
		lo = page.Point{X: math.Min(lo.X, p.X), Y: math.Min(lo.Y, p.Y)}
		hi = page.Point{X: math.Max(hi.X, p.X), Y: math.Max(hi.Y, p.Y)}
	}
	const far = 1 << 20 // farther out than any picture
	dot := func(v float64) int { return int(math.Max(-far, math.Min(far, math.Floor(v)))) }
	return image.Rect(dot(lo.X), dot(lo.Y), dot(hi.X)+1, dot(hi.Y)+1)
}

// label fills the outlines of the letters.
func (c *canvas) label(l scene.Label) {
	face := font.Of(l.Face)
	letters, width := face.Letters(l.Text)
	em := l.Height / 1000 // millimetres that a thousandth of the type is
	x := l.X
	switch l.Anchor {
	case scene.Middle:
		x -= float64(width) * em / 2
	case scene.End:
		x -= float64(width) * em
	}
	_, _, capital, _ := face.Vertical()
	base := l.Y + float64(capital)*em/2
	for _, letter := range letters {
		cmds := face.Outline(letter.Rune)
		for i := range cmds {
			for k, p := range cmds[i].P {
				cmds[i].P[k] = page.Point{X: x + (float64(letter.X)+p.X)*em, Y: base + p.Y*em}
			}
		}
		for _, r := range c.flatten(cmds) {
			c.area(r.pts)
		}
	}
	c.fill(page.Black)
}
