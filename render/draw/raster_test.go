package draw

import (
	"image"
	"image/color"
	imgdraw "image/draw"
	"image/png"
	"io"
	"math"

	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"golang.org/x/image/vector"

	"ovillo/render/font"
	"ovillo/render/page"
	"ovillo/render/scene"
)

// points turns millimetres into points, the unit of type sizes.
const points = 72 / 25.4

// writePNG writes a scene as a picture on white with so many dots to the inch, for those who read the drawings of a
// change.
func writePNG(w io.Writer, s *scene.Scene, dpi float64) error {
	k := dpi / 25.4
	img := image.NewRGBA(image.Rect(0, 0, max(1, int(math.Ceil(s.W*k))), max(1, int(math.Ceil(s.H*k)))))
	imgdraw.Draw(img, img.Bounds(), image.White, image.Point{}, imgdraw.Src)
	c := canvas{img: img, k: k, r: vector.NewRasterizer(img.Bounds().Dx(), img.Bounds().Dy())}
	for _, it := range s.Items {
		switch it := it.(type) {
		case scene.Path:
			c.path(it)
		case scene.Label:
			if err := c.label(it); err != nil {
				return err
			}
		}
	}
	return png.Encode(w, img)
}

// canvas fills areas on a picture, k dots to the millimetre.
type canvas struct {
	img *image.RGBA
	k   float64
	r   *vector.Rasterizer
}

func (c *canvas) fill(ink page.Color) {
	src := image.NewUniform(color.RGBA{uint8(channel(ink[0])), uint8(channel(ink[1])), uint8(channel(ink[2])), 255})
	c.r.Draw(c.img, c.img.Bounds(), src, image.Point{})
	b := c.img.Bounds()
	c.r.Reset(b.Dx(), b.Dy())
}

func (c *canvas) ring(pts []vec) {
	for i, p := range pts {
		x, y := float32(p.x*c.k), float32(p.y*c.k)
		if i == 0 {
			c.r.MoveTo(x, y)
		} else {
			c.r.LineTo(x, y)
		}
	}
	c.r.ClosePath()
}

func (c *canvas) path(p scene.Path) {
	runs := flatten(p.Cmds)
	if p.Fill != nil {
		for _, r := range runs {
			c.ring(r.pts)
		}
		c.fill(*p.Fill)
	}
	if p.Stroke == nil || p.Width <= 0 {
		return
	}
	for _, r := range runs {
		for _, d := range dashes(r, p.Dash) {
			for _, area := range stroke(d, p.Width, p.Round) {
				c.ring(area)
			}
		}
	}
	c.fill(*p.Stroke)
}

// label fills the outlines of the letters.
func (c *canvas) label(l scene.Label) error {
	face := font.Of(l.Face)
	f, err := sfnt.Parse(face.Program())
	if err != nil {
		return err
	}
	x := l.X
	width := face.Width(l.Text, l.Height*points)
	switch l.Anchor {
	case scene.Middle:
		x -= width / 2
	case scene.End:
		x -= width
	}
	base := baseline(l)
	var buf sfnt.Buffer
	for _, r := range font.Compose(l.Text) {
		g, err := f.GlyphIndex(&buf, r)
		if err != nil {
			return err
		}
		segs, err := f.LoadGlyph(&buf, g, fixed.I(1000), nil)
		if err != nil {
			return err
		}
		c.glyph(segs, vec{x, base}, l.Height/1000)
		x += float64(face.Advance(r)) / 1000 * l.Height
	}
	c.fill(page.Black)
	return nil
}

func (c *canvas) glyph(segs sfnt.Segments, at vec, scale float64) {
	on := func(p fixed.Point26_6) (float32, float32) {
		v := at.add(vec{float64(p.X) / 64, float64(p.Y) / 64}.times(scale)).times(c.k)
		return float32(v.x), float32(v.y)
	}
	for _, s := range segs {
		ax, ay := on(s.Args[0])
		bx, by := on(s.Args[1])
		cx, cy := on(s.Args[2])
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			c.r.MoveTo(ax, ay)
		case sfnt.SegmentOpLineTo:
			c.r.LineTo(ax, ay)
		case sfnt.SegmentOpQuadTo:
			c.r.QuadTo(ax, ay, bx, by)
		case sfnt.SegmentOpCubeTo:
			c.r.CubeTo(ax, ay, bx, by, cx, cy)
		}
	}
	c.r.ClosePath()
}
