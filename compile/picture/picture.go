// Package picture reads the photograph that a pattern names: a JPEG or PNG file, with the way up that the camera noted.
//
// Nothing else that stands in a file is looked at or handed on: neither the place where the picture was taken nor the time.
package picture

import (
	"bytes"
	"errors"
	"image"
	"image/color"
	"image/draw"
	"image/jpeg"
	"image/png"
)

// The most that a picture may be. A file beyond MostBytes is not decoded, nor is a picture beyond MostPixels, which takes 256 MB of
// memory (cameras of today make half of that), beyond MostSide on one side, or one that takes more than MostMemory to decode: a
// file of some kilobytes may ask for gigabytes.
const (
	MostBytes  = 40 << 20
	MostPixels = 64 << 20
	MostSide   = 20_000
	MostMemory = 384 << 20
)

// Picture is a picture that could be read, the right way up.
type Picture struct {
	Data   []byte // the file; made anew where the camera was not held upright
	Format string // "jpeg" or "png"
	W, H   int    // pixels
}

// Why a picture cannot be read.
var (
	ErrFormat = errors.New("neither JPEG nor PNG")
	ErrBroken = errors.New("broken, or of a kind that is not known")
	ErrLarge  = errors.New("too large") // the picture returned with it has its pixels, if they are known
	ErrHeavy  = errors.New("takes too much memory to decode")
)

// upright is the quality of a JPEG that is made anew: high, since it is made once more for the page.
const upright = 95

// Read reads a picture. It decodes all of it, so that what is broken is found here and not when the pages are set.
func Read(data []byte) (Picture, error) {
	p := Picture{Data: data, Format: formatOf(data)}
	decodeConfig, decode := jpeg.DecodeConfig, jpeg.Decode
	switch p.Format {
	case "":
		return p, ErrFormat
	case "png":
		decodeConfig, decode = png.DecodeConfig, png.Decode
	}
	if len(data) > MostBytes {
		return p, ErrLarge
	}
	c, err := decodeConfig(bytes.NewReader(data))
	if err != nil || c.Width < 1 || c.Height < 1 {
		return p, ErrBroken
	}
	if p.W, p.H = c.Width, c.Height; p.W > MostPixels/p.H {
		return p, ErrLarge
	}
	if max(p.W, p.H) > MostSide || p.W*p.H > MostMemory/bytesOf(data, c.ColorModel) {
		return p, ErrHeavy
	}
	img, err := decode(bytes.NewReader(data))
	if err != nil {
		return p, ErrBroken
	}
	way := WayUp(data)
	if way == 1 || p.Format != "jpeg" {
		return p, nil
	}
	img = turned(img, way)
	var b bytes.Buffer
	if err := jpeg.Encode(&b, img, &jpeg.Options{Quality: upright}); err != nil {
		return p, ErrBroken
	}
	p.Data, p.W, p.H = b.Bytes(), img.Bounds().Dx(), img.Bounds().Dy()
	return p, nil
}

// bytesOf is how many bytes a pixel takes while a picture is decoded. An interlaced PNG is there twice; of a progressive JPEG the
// decoder keeps every coefficient, four bytes each.
func bytesOf(data []byte, m color.Model) int {
	n := 4
	switch m {
	case color.GrayModel:
		n = 1
	case color.Gray16Model:
		n = 2
	case color.RGBA64Model, color.NRGBA64Model:
		n = 8
	case color.YCbCrModel:
		n = 3
	}
	const interlace = 28 // where a PNG says so
	switch {
	case formatOf(data) == "png" && len(data) > interlace && data[interlace] != 0:
		n *= 2
	case progressive(data):
		n *= 5
	}
	return n
}

// progressive reports whether a JPEG is refined scan by scan.
func progressive(data []byte) bool {
	for i := 2; i+4 <= len(data) && data[i] == 0xff; {
		switch m := data[i+1]; {
		case m == 0xc2:
			return true
		case m == 0xff:
			i++ // a fill byte
		case m == 0xda:
			return false
		default:
			i += 2 + int(data[i+2])<<8 + int(data[i+3])
		}
	}
	return false
}

// formatOf knows a file by how it begins.
func formatOf(data []byte) string {
	switch {
	case bytes.HasPrefix(data, []byte("\xff\xd8\xff")):
		return "jpeg"
	case bytes.HasPrefix(data, []byte("\x89PNG\r\n\x1a\n")):
		return "png"
	}
	return ""
}

// turned returns a picture the right way up, given how it lies: 2 mirrored, 3 upside down, 4 both, 5 to 8 on a side. It goes
// row by row, since a large picture is there twice already.
func turned(img image.Image, way int) image.Image {
	b := img.Bounds()
	w, h := b.Dx(), b.Dy()
	// to is where a place of the file comes to lie.
	to := func(x, y int) (int, int) {
		switch way {
		case 2:
			return w - 1 - x, y
		case 3:
			return w - 1 - x, h - 1 - y
		case 4:
			return x, h - 1 - y
		case 5:
			return y, x
		case 6:
			return h - 1 - y, x
		case 7:
			return h - 1 - y, w - 1 - x
		}
		return y, w - 1 - x
	}
	size := image.Rect(0, 0, w, h)
	if way >= 5 {
		size = image.Rect(0, 0, h, w)
	}
	if g, ok := img.(*image.Gray); ok {
		out := image.NewGray(size)
		for y := range h {
			for x, v := range g.Pix[y*g.Stride:][:w] {
				dx, dy := to(x, y)
				out.Pix[dy*out.Stride+dx] = v
			}
		}
		return out
	}
	out, row := image.NewRGBA(size), image.NewRGBA(image.Rect(0, 0, w, 1))
	for y := range h {
		draw.Draw(row, row.Rect, img, b.Min.Add(image.Pt(0, y)), draw.Src)
		for x := range w {
			dx, dy := to(x, y)
			copy(out.Pix[dy*out.Stride+4*dx:][:4], row.Pix[4*x:][:4])
		}
	}
	return out
}
