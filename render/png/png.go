// Package png draws a scene as a picture in PNG: dots on white, with smooth edges. It draws nothing of its own: what is in the
// scene is in the picture, letters in the faces of the pages.
package png

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/draw"
	stdpng "image/png"
	"io"
	"math"

	"ovillo/render/page"
	"ovillo/render/scene"
)

// Most is the largest picture that is drawn, in dots. It takes four bytes a dot while it is drawn.
const Most = 40_000_000

// TooLarge says that a picture would have more than [Most] dots.
type TooLarge struct {
	Wide, High int
	DPI        float64 // the finest at which it would not
}

func (e *TooLarge) Error() string {
	return fmt.Sprintf("a picture of %d by %d dots has more than %d million", e.Wide, e.High, Most/1_000_000)
}

// Write writes a scene with so many dots to the inch. Title and description go with it as text in each language, and so does the
// resolution, so that it prints in its true size. A picture that would be too large is refused with a [*TooLarge]. The same
// scene gives the same bytes.
func Write(w io.Writer, s *scene.Scene, dpi float64) error {
	img, err := Picture(s, dpi)
	if err != nil {
		return err
	}
	var b bytes.Buffer
	if err := stdpng.Encode(&b, fewColours(img)); err != nil {
		return err
	}
	return withNotes(w, b.Bytes(), s, dpi)
}

// Picture draws a scene with so many dots to the inch.
func Picture(s *scene.Scene, dpi float64) (*image.RGBA, error) {
	k := dpi / 25.4
	wide, high := math.Ceil(s.W*k-1e-6), math.Ceil(s.H*k-1e-6)
	switch {
	case !(wide >= 1 && high >= 1): // nor no number
		wide, high = 1, 1
	case wide*high > Most:
		return nil, &TooLarge{int(math.Min(wide, 1e9)), int(math.Min(high, 1e9)), math.Floor(math.Sqrt(Most/(s.W*s.H)) * 25.4)}
	}
	img := image.NewRGBA(image.Rect(0, 0, int(wide), int(high)))
	draw.Draw(img, img.Bounds(), image.White, image.Point{}, draw.Src)
	c := canvas{img: img, k: k}
	for _, it := range s.Items {
		switch it := it.(type) {
		case scene.Path:
			c.path(it)
		case scene.Label:
			c.label(it)
		}
	}
	return img, nil
}

// path fills the area of a path and draws its line.
func (c *canvas) path(p scene.Path) {
	runs := c.flatten(p.Cmds)
	if p.Fill != nil {
		for _, r := range runs {
			c.area(r.pts)
		}
		c.fill(*p.Fill)
	}
	if p.Stroke == nil || p.Width <= 0 {
		return
	}
	for _, r := range runs {
		for _, d := range dashes(r, p.Dash, c.k) {
			for _, area := range stroke(d, p.Width*c.k, p.Round) {
				c.area(area)
			}
		}
	}
	c.fill(*p.Stroke)
}

// fewColours is the picture with a list of its colours, if they are no more than such a list holds: it is much smaller then.
func fewColours(img *image.RGBA) image.Image {
	at := map[color.RGBA]uint8{}
	var list color.Palette
	out := image.NewPaletted(img.Bounds(), nil)
	last, lastAt := color.RGBA{}, uint8(0) // most dots are as the one before; no dot is transparent
	for i := range out.Pix {
		dot := color.RGBA{img.Pix[4*i], img.Pix[4*i+1], img.Pix[4*i+2], img.Pix[4*i+3]}
		if dot != last {
			k, known := at[dot]
			if !known {
				if len(list) == 256 {
					return img
				}
				k = uint8(len(list))
				at[dot], list = k, append(list, dot)
			}
			last, lastAt = dot, k
		}
		out.Pix[i] = lastAt
	}
	out.Palette = list
	return out
}

func channel(v float64) uint8 { return uint8(math.Round(max(0, min(1, v)) * 255)) }

func opaque(c page.Color) color.RGBA {
	return color.RGBA{channel(c[0]), channel(c[1]), channel(c[2]), 255}
}
