package pdf

import (
	"bytes"
	"encoding/binary"
	"hash/crc32"
	"image"
	"image/color"
	"image/png"
	"io"
	"strings"
	"testing"

	"ovillo/render/page"
)

// claimed is a PNG whose header claims a size that its data do not have.
func claimed(w, h uint32) []byte {
	b := []byte("\x89PNG\r\n\x1a\n")
	head := []byte("IHDR")
	head = binary.BigEndian.AppendUint32(head, w)
	head = binary.BigEndian.AppendUint32(head, h)
	head = append(head, 8, 6, 0, 0, 0)
	b = binary.BigEndian.AppendUint32(b, 13)
	b = append(b, head...)
	return binary.BigEndian.AppendUint32(b, crc32.ChecksumIEEE(head))
}

func TestHostilePictures(t *testing.T) {
	whole := photo("png", false)
	for _, c := range []struct {
		p    page.Picture
		want string
	}{
		{page.Picture{W: 10, H: 10, Format: "png"}, "cannot be read"},
		{page.Picture{W: 10, H: 10, Format: "gif", Data: whole}, "PNG and JPEG are known"},
		{page.Picture{W: 10, H: 10, Format: "jpeg", Data: whole}, "cannot be read"},
		{page.Picture{W: 10, H: 10, Format: "png", Data: whole[:len(whole)/2]}, "cannot be read"},
		{page.Picture{W: 10, H: 10, Format: "jpeg", Data: photo("jpeg", false)[:300]}, "cannot be read"},
		{page.Picture{W: 10, H: 10, Format: "png", Data: claimed(60_000, 60_000)}, "is too large"},
		{page.Picture{W: 10, H: 10, Format: "png", Data: claimed(100, 100)}, "cannot be read"},
		{page.Picture{W: 0, H: 10, Format: "png", Data: whole}, "without a size"},
	} {
		err := Write(io.Discard, one(c.p), Options{})
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s of %d bytes: error %v, want %q", c.p.Format, len(c.p.Data), err, c.want)
		}
	}
}

// A picture of as many pixels as may be decoded is looked at; of one with a row more the header is enough.
func TestMostPixels(t *testing.T) {
	const wide = 8192
	for over := range 2 {
		_, h, err := sizeOf(page.Picture{Format: "png", Data: claimed(wide, uint32(mostPixels/wide+over))})
		if over == 0 && (err != nil || h*wide != mostPixels) || over == 1 && (err == nil || !strings.Contains(err.Error(), "is too large")) {
			t.Errorf("%d rows of %d pixels: %v", mostPixels/wide+over, wide, err)
		}
	}
}

func TestPicturesAreKeptOnce(t *testing.T) {
	var ps pictures
	err := ps.takeAll(&page.Document{Pages: []page.Page{{Items: []page.Item{
		page.Picture{W: 40, H: 30, Format: "png", Data: photo("png", false)},
		page.Picture{W: 20, H: 15, Format: "png", Data: photo("png", false)},
	}}, {Items: []page.Item{
		page.Path{},
		page.Picture{W: 40, H: 30, Format: "png", Data: photo("png", true)},
	}}}})
	if err != nil {
		t.Fatal(err)
	}
	a, b, c := ps.number[place{0, 0}], ps.number[place{0, 1}], ps.number[place{1, 1}]
	if a != b || a == c || len(ps.list) != 2 || len(ps.number) != 3 {
		t.Errorf("numbers %d, %d, %d of %d pictures", a, b, c, len(ps.list))
	}
}

func TestNeeded(t *testing.T) {
	for _, c := range []struct {
		pixels int
		mm     float64
		want   int
	}{
		{100, 25.4, 100}, {450, 25.4, 450}, {451, 25.4, 300}, {4000, 80, 945}, {500, 0.001, 1},
	} {
		if got := needed(c.pixels, c.mm); got != c.want {
			t.Errorf("%d pixels on %g mm: %d, want %d", c.pixels, c.mm, got, c.want)
		}
	}
}

// A picture finer than print shows is made smaller, in greys if it is grey, and keeps its colours.
func TestFinePicturesAreMadeSmaller(t *testing.T) {
	for name, model := range map[string]color.Model{"grey": color.GrayModel, "16 bit": color.Gray16Model, "colour": color.NRGBAModel} {
		var img interface {
			image.Image
			Set(x, y int, c color.Color)
		} = image.NewNRGBA(image.Rect(0, 0, 1200, 600))
		switch model {
		case color.GrayModel:
			img = image.NewGray(img.Bounds())
		case color.Gray16Model:
			img = image.NewGray16(img.Bounds())
		}
		for y := range 600 {
			for x := range 1200 {
				img.Set(x, y, color.NRGBA{180, 180, 180, 255})
			}
		}
		var b bytes.Buffer
		if err := png.Encode(&b, img); err != nil {
			t.Fatal(err)
		}
		r, err := encode(page.Picture{Format: "png", Data: b.Bytes()}, 300, 150)
		if err != nil {
			t.Fatal(err)
		}
		if r.w != 300 || r.h != 150 || r.gray != (name != "colour") {
			t.Errorf("%s: %d × %d, grey %v", name, r.w, r.h, r.gray)
		}
		out, err := inflate(r.data)
		if err != nil {
			t.Fatal(err)
		}
		want := 300 * 150
		if !r.gray {
			want *= 3
		}
		if len(out) != want || out[0] != 180 || out[len(out)/2] != 180 {
			t.Errorf("%s: %d values, the first %d, want %d of 180", name, len(out), out[0], want)
		}
	}
}

func FuzzPicture(f *testing.F) {
	f.Add(photo("png", false), true)
	f.Add(photo("jpeg", false), false)
	f.Add(claimed(3, 3), true)
	f.Fuzz(func(t *testing.T, data []byte, isPNG bool) {
		p := page.Picture{W: 1, H: 1, Format: "jpeg", Data: data}
		if isPNG {
			p.Format = "png"
		}
		if w, h, err := sizeOf(p); err == nil && w*h > 1<<20 {
			return // decoding is slow, not wrong
		}
		var ps pictures
		err := ps.takeAll(&page.Document{Pages: []page.Page{{Items: []page.Item{p}}}})
		if err == nil && (len(ps.list) != 1 || ps.list[0].w < 1 || len(ps.list[0].data) == 0) {
			t.Fatalf("%+v", ps.list)
		}
	})
}
