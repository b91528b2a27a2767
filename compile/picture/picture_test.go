package picture_test

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"hash/crc32"
	"image"
	"image/color"
	"image/draw"
	"image/jpeg"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/picture"
	"ovillo/compile/picture/files"
)

var corners = map[string]color.RGBA{"red": {255, 0, 0, 255}, "green": {0, 200, 0, 255}, "blue": {0, 0, 255, 255}, "white": {255, 255, 255, 255}}

// quarters is a JPEG of 64 by 32 pixels with a colour in each quarter: red where row 0 and column 0 meet, green at the end of
// row 0, blue at the end of column 0.
func quarters(t testing.TB) []byte {
	img := image.NewRGBA(image.Rect(0, 0, 64, 32))
	for name, r := range map[string]image.Rectangle{"red": image.Rect(0, 0, 32, 16), "green": image.Rect(32, 0, 64, 16),
		"blue": image.Rect(0, 16, 32, 32), "white": image.Rect(32, 16, 64, 32)} {
		draw.Draw(img, r, image.NewUniform(corners[name]), image.Point{}, draw.Src)
	}
	var b bytes.Buffer
	require.NoError(t, jpeg.Encode(&b, img, &jpeg.Options{Quality: 95}))
	return b.Bytes()
}

// withWay puts a note of the camera into a JPEG, with a second field before it.
func withWay(jpg []byte, order binary.AppendByteOrder, way int) []byte {
	tiff := []byte("II")
	if order == binary.AppendByteOrder(binary.BigEndian) {
		tiff = []byte("MM")
	}
	tiff = order.AppendUint16(tiff, 42)
	tiff = order.AppendUint32(tiff, 8)
	tiff = order.AppendUint16(tiff, 2)
	for _, f := range [][4]int{{0x010f, 2, 1, 0}, {0x0112, 3, 1, way}} {
		tiff = order.AppendUint16(tiff, uint16(f[0]))
		tiff = order.AppendUint16(tiff, uint16(f[1]))
		tiff = order.AppendUint32(tiff, uint32(f[2]))
		tiff = order.AppendUint16(tiff, uint16(f[3]))
		tiff = order.AppendUint16(tiff, 0)
	}
	body := append([]byte("Exif\x00\x00"), tiff...)
	out := append([]byte{}, jpg[:2]...)
	out = append(out, 0xff, 0xe1)
	out = binary.BigEndian.AppendUint16(out, uint16(len(body)+2))
	return append(append(out, body...), jpg[2:]...)
}

// TestTheWayTheCameraWasHeld checks all eight ways against the words of Exif 2.32 (4.6.4.A, Orientation): at which side of the
// visual picture row 0 and column 0 of the file are.
func TestTheWayTheCameraWasHeld(t *testing.T) {
	for way, sides := range [][2]string{1: {"top", "left"}, 2: {"top", "right"}, 3: {"bottom", "right"}, 4: {"bottom", "left"},
		5: {"left", "top"}, 6: {"right", "top"}, 7: {"right", "bottom"}, 8: {"left", "bottom"}} {
		if way == 0 {
			continue
		}
		for _, order := range []binary.AppendByteOrder{binary.LittleEndian, binary.BigEndian} {
			data := withWay(quarters(t), order, way)
			require.Equal(t, way, picture.WayUp(data))
			p, err := picture.Read(data)
			require.NoError(t, err)
			if way > 1 {
				require.NotContains(t, string(p.Data), "Exif")
			}
			if sides[0] == "left" || sides[0] == "right" {
				require.Equal(t, [2]int{32, 64}, [2]int{p.W, p.H})
			} else {
				require.Equal(t, [2]int{64, 32}, [2]int{p.W, p.H})
			}
			img, err := jpeg.Decode(bytes.NewReader(p.Data))
			require.NoError(t, err)
			require.Equal(t, image.Rect(0, 0, p.W, p.H), img.Bounds())
			opposite := map[string]string{"top": "bottom", "bottom": "top", "left": "right", "right": "left"}
			for name, at := range map[string][2]string{"red": sides, "green": {sides[0], opposite[sides[1]]}, "blue": {opposite[sides[0]], sides[1]}} {
				x, y := p.W/4, p.H/4
				for _, side := range at {
					switch side {
					case "right":
						x = p.W * 3 / 4
					case "bottom":
						y = p.H * 3 / 4
					}
				}
				r, g, b, _ := img.At(x, y).RGBA()
				want := corners[name]
				for i, v := range []uint32{r, g, b} {
					require.InDelta(t, []uint8{want.R, want.G, want.B}[i], v>>8, 12, "way %d: %s at %v", way, name, at)
				}
			}
		}
	}
}

func TestGreyStaysGrey(t *testing.T) {
	var b bytes.Buffer
	img := image.NewGray(image.Rect(0, 0, 32, 16))
	draw.Draw(img, image.Rect(0, 0, 16, 16), image.White, image.Point{}, draw.Src)
	require.NoError(t, jpeg.Encode(&b, img, nil))
	p, err := picture.Read(withWay(b.Bytes(), binary.LittleEndian, 6))
	require.NoError(t, err)
	out, err := jpeg.Decode(bytes.NewReader(p.Data))
	require.NoError(t, err)
	gray, ok := out.(*image.Gray)
	require.True(t, ok)
	require.Greater(t, gray.GrayAt(8, 4).Y, uint8(240)) // the left end of the file is the top of the picture
	require.Less(t, gray.GrayAt(8, 28).Y, uint8(15))
}

func TestPicturesThatCannotBeRead(t *testing.T) {
	whole := files.JPEG(200, 100)
	for name, c := range map[string]struct {
		data []byte
		want error
	}{
		"nothing":           {nil, picture.ErrFormat},
		"another format":    {[]byte("GIF89a\x01\x00\x01\x00"), picture.ErrFormat},
		"ends early":        {whole[:len(whole)*2/3], picture.ErrBroken},
		"a beginning alone": {whole[:3], picture.ErrBroken},
		"a PNG that ends":   {files.PNG(200, 100)[:60], picture.ErrBroken},
	} {
		if _, err := picture.Read(c.data); err != c.want {
			t.Errorf("%s: %v, want %v", name, err, c.want)
		}
	}
	huge, err := files.Open("huge.png")
	require.NoError(t, err)
	p, err := picture.Read(huge)
	require.Equal(t, picture.ErrLarge, err)
	require.Equal(t, [2]int{10000, 10000}, [2]int{p.W, p.H})
	for _, good := range [][]byte{whole, files.PNG(200, 100)} {
		p, err := picture.Read(good)
		require.NoError(t, err)
		require.Equal(t, fmt.Sprint(200, 100), fmt.Sprint(p.W, p.H))
		require.Equal(t, good, p.Data)
	}
}

// Whatever stands before the pixels, it is read without a fault, and what is handed on can be decoded.
func FuzzRead(f *testing.F) {
	f.Add(withWay(quarters(f), binary.LittleEndian, 6))
	f.Add(withWay(quarters(f), binary.BigEndian, 3))
	f.Add(files.PNG(3, 3))
	f.Add([]byte("\xff\xd8\xff\xe1\x00\x10Exif\x00\x00II*\x00\xff\xff\xff\xff"))
	f.Fuzz(func(t *testing.T, data []byte) {
		if way := picture.WayUp(data); way < 1 || way > 8 {
			t.Fatalf("a picture lies in way %d", way)
		}
		if len(data) > 1<<16 {
			return
		}
		p, err := picture.Read(data)
		if err != nil {
			return
		}
		if again, err := picture.Read(p.Data); err != nil || again.W != p.W || again.H != p.H {
			t.Fatalf("what was read is not read again: %v", err)
		}
	})
}

// A picture is decoded as long as its pixels, its sides and the memory that they take are within bounds. What the headers say is
// believed, so that nothing of a picture beyond them is unpacked: behind these there is nothing, and they are broken or refused.
func TestAtTheBound(t *testing.T) {
	png := func(w, h, depth, kind, interlaced int) []byte {
		b := []byte("\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR")
		b = binary.BigEndian.AppendUint32(b, uint32(w))
		b = binary.BigEndian.AppendUint32(b, uint32(h))
		b = append(b, byte(depth), byte(kind), 0, 0, byte(interlaced))
		return binary.BigEndian.AppendUint32(b, crc32.ChecksumIEEE(b[12:]))
	}
	jpg := func(w, h int, frame byte) []byte {
		b := []byte{0xff, 0xd8, 0xff, frame, 0, 17, 8, byte(h >> 8), byte(h), byte(w >> 8), byte(w), 3}
		return append(b, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0, 0xff, 0xda, 0, 12) // and the scan begins
	}
	const (
		grey, colours, clear = 0, 2, 6
		plain, refined       = 0xc0, 0xc2
	)
	const (
		wide  = 8192                           // of those that are refused for their height
		tall  = picture.MostPixels / wide      // with as many pixels as there may be
		heavy = picture.MostMemory / wide / 8  // that takes as much memory, eight bytes for each pixel
		twice = picture.MostMemory / wide / 16 // likewise, there twice
		again = picture.MostMemory / wide / 15 // likewise, five times three bytes
	)
	file := func(n int) []byte { return append(files.PNG(2, 2), make([]byte, n-len(files.PNG(2, 2)))...) }
	for name, c := range map[string]struct {
		data []byte
		want error
	}{
		"as many bytes":               {file(picture.MostBytes), nil},
		"a byte more":                 {file(picture.MostBytes + 1), picture.ErrLarge},
		"as many pixels":              {png(wide, tall, 8, colours, 0), picture.ErrBroken},
		"a row of pixels more":        {png(wide, tall+1, 8, colours, 0), picture.ErrLarge},
		"as long a side":              {png(picture.MostSide, 1, 8, grey, 0), picture.ErrBroken},
		"a pixel longer":              {png(picture.MostSide+1, 1, 8, grey, 0), picture.ErrHeavy},
		"as high a side":              {png(1, picture.MostSide, 8, grey, 0), picture.ErrBroken},
		"a pixel higher":              {png(1, picture.MostSide+1, 8, grey, 0), picture.ErrHeavy},
		"as much memory, 16 bits":     {png(wide, heavy, 16, clear, 0), picture.ErrBroken},
		"a row more, 16 bits":         {png(wide, heavy+1, 16, clear, 0), picture.ErrHeavy},
		"as much memory, interlaced":  {png(wide, twice, 16, clear, 1), picture.ErrBroken},
		"a row more, interlaced":      {png(wide, twice+1, 16, clear, 1), picture.ErrHeavy},
		"greys, 16 bits":              {png(wide, tall, 16, grey, 0), picture.ErrBroken},
		"as much memory, progressive": {jpg(wide, again, refined), picture.ErrBroken},
		"a row more, progressive":     {jpg(wide, again+1, refined), picture.ErrHeavy},
		"as large, not progressive":   {jpg(wide, tall, plain), picture.ErrBroken},
	} {
		if _, err := picture.Read(c.data); err != c.want {
			t.Errorf("%s: %v, want %v", name, err, c.want)
		}
	}
}
