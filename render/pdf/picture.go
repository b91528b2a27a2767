package pdf

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"fmt"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"math"
	"strings"

	"golang.org/x/image/draw"

	"ovillo/render/page"
)

const (
	mostPixels = 64 << 20 // of a picture that is decoded at all: 256 MB in memory
	finest     = 450      // pixels an inch beyond which a picture is made smaller
	enough     = 300      // pixels an inch that print shows
)

// pictures are the images of a document, each kept once at each size.
type pictures struct {
	list   []raster
	number map[place]int // of the image at each place
}

type pictureKey struct {
	data [sha256.Size]byte
	w, h int
}

// raster is an image as the file holds it.
type raster struct {
	w, h   int
	gray   bool
	filter string
	data   []byte
}

// picture draws a photograph.
func (s *sheet) picture(p page.Picture) error {
	if err := s.mark(p.Elem, "", ""); err != nil {
		return err
	}
	s.op("q")
	s.op("cm", p.W*point, 0, 0, p.H*point, s.x(p.X), s.y(p.Y+p.H))
	s.b = fmt.Appendf(s.b, "/I%d Do\nQ\n", s.of.pictures.number[s.item])
	return nil
}

// takeAll decodes the pictures of a document and encodes them again, one after the other, since one may take some hundred megabytes. What
// comes from outside is never copied into the file: a decoded picture holds pixels and nothing else, neither broken headers nor
// the place where it was taken.
func (ps *pictures) takeAll(d *page.Document) error {
	known := map[pictureKey]int{}
	ps.number = map[place]int{}
	for i := range d.Pages {
		for k, item := range d.Pages[i].Items {
			p, ok := item.(page.Picture)
			if !ok {
				continue
			}
			key, err := keyOf(p)
			if err != nil {
				return at(place{i, k}, err)
			}
			n, ok := known[key]
			if !ok {
				r, err := encode(p, key.w, key.h)
				if err != nil {
					return at(place{i, k}, err)
				}
				n = len(ps.list)
				known[key], ps.list = n, append(ps.list, r)
			}
			ps.number[place{i, k}] = n
		}
	}
	return nil
}

// keyOf says which image of the file a picture is.
func keyOf(p page.Picture) (pictureKey, error) {
	w, h, err := sizeOf(p)
	if err != nil {
		return pictureKey{}, err
	}
	return pictureKey{sha256.Sum256(p.Data), needed(w, p.W), needed(h, p.H)}, nil
}

// sizeOf reads the size of a picture without decoding it.
func sizeOf(p page.Picture) (w, h int, err error) {
	var c image.Config
	switch strings.ToLower(p.Format) {
	case "png":
		c, err = png.DecodeConfig(bytes.NewReader(p.Data))
	case "jpeg", "jpg":
		c, err = jpeg.DecodeConfig(bytes.NewReader(p.Data))
	default:
		return 0, 0, fmt.Errorf("a picture of the format %q: PNG and JPEG are known", shorten(p.Format))
	}
	if err != nil {
		return 0, 0, fmt.Errorf("a picture that cannot be read: %w", err)
	}
	if c.Width < 1 || c.Height < 1 {
		return 0, 0, errors.New("a picture without pixels")
	}
	if c.Width > mostPixels/c.Height {
		return 0, 0, fmt.Errorf("a picture of %d × %d pixels is too large", c.Width, c.Height)
	}
	return c.Width, c.Height, nil
}

// needed is the number of pixels for a side of the given length: those there are, or enough for print.
func needed(pixels int, mm float64) int {
	inches := mm / 25.4
	if float64(pixels) <= finest*inches {
		return pixels
	}
	return max(1, int(math.Ceil(enough*inches)))
}

func encode(p page.Picture, w, h int) (raster, error) {
	photo := strings.ToLower(p.Format) != "png"
	decode := png.Decode
	if photo {
		decode = jpeg.Decode
	}
	img, err := decode(bytes.NewReader(p.Data))
	if err != nil {
		return raster{}, fmt.Errorf("a picture that cannot be read: %w", err)
	}
	img = flatten(img, w, h)
	_, gray := img.(*image.Gray)
	r := raster{w: w, h: h, gray: gray}
	if photo {
		var b bytes.Buffer
		err = jpeg.Encode(&b, img, &jpeg.Options{Quality: 92})
		r.filter, r.data = "/DCTDecode", b.Bytes()
		return r, err
	}
	r.filter, r.data = "/FlateDecode", deflate(samples(img))
	return r, nil
}

// flatten brings a picture to its size on white paper, in greys or in colours, without transparency.
func flatten(img image.Image, w, h int) image.Image {
	to := image.Rect(0, 0, w, h)
	var out draw.Image = image.NewRGBA(to)
	switch img.ColorModel() {
	case color.GrayModel, color.Gray16Model:
		out = image.NewGray(to)
	}
	draw.Draw(out, to, image.White, image.Point{}, draw.Src)
	if img.Bounds().Dx() == w && img.Bounds().Dy() == h {
		draw.Draw(out, to, img, img.Bounds().Min, draw.Over)
	} else {
		draw.CatmullRom.Scale(out, to, img, img.Bounds(), draw.Over, nil)
	}
	return out
}

// samples lists the values of a picture row by row.
func samples(img image.Image) []byte {
	if g, ok := img.(*image.Gray); ok {
		return g.Pix
	}
	rgba, ok := img.(*image.RGBA)
	if !ok {
		return nil
	}
	out := make([]byte, 0, len(rgba.Pix)/4*3)
	for i := 0; i+3 < len(rgba.Pix); i += 4 {
		out = append(out, rgba.Pix[i:i+3]...)
	}
	return out
}

// embedPictures adds the images and returns their object numbers. They do not go through fpdf, which sets images of
// equal width in an order that changes from run to run.
func (f *file) embedPictures(ps pictures) []int {
	var numbers []int
	for _, r := range ps.list {
		space := "/DeviceRGB"
		if r.gray {
			space = "/DeviceGray"
		}
		dict := fmt.Sprintf("/Type /XObject /Subtype /Image /Width %d /Height %d /ColorSpace %s /BitsPerComponent 8 /Filter %s",
			r.w, r.h, space, r.filter)
		numbers = append(numbers, f.addStream(dict, r.data))
	}
	return numbers
}
