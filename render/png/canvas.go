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

// fill fills the areas. Only the part of the picture round them is looked at, since a drawing is many small areas.
func (c *canvas) fill(ink page.Color) {
	lo, hi := page.Point{X: math.Inf(1), Y: math.Inf(1)}, page.Point{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, a := range c.areas {
		for _, p := range a {
			lo = page.Point{X: math.Min(lo.X, p.X), Y: math.Min(lo.Y, p.Y)}
			hi = page.Point{X: math.Max(hi.X, p.X), Y: math.Max(hi.Y, p.Y)}
		}
	}
	all := c.img.Bounds()
	dot := func(v, most float64) int { return int(math.Max(-1, math.Min(most+1, v))) }
	w, h := float64(all.Dx()), float64(all.Dy())
	in := image.Rect(dot(math.Floor(lo.X), w), dot(math.Floor(lo.Y), h), dot(math.Floor(hi.X)+1, w), dot(math.Floor(hi.Y)+1, h)).Intersect(all)
	if len(c.areas) == 0 || in.Empty() {
		c.areas = c.areas[:0]
		return
	}
	c.raster.Reset(in.Dx(), in.Dy())
	for _, a := range c.areas {
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
	c.raster.Draw(c.img, in, image.NewUniform(opaque(ink)), image.Point{})
	c.areas = c.areas[:0]
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
