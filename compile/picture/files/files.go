// Package files makes the picture files that the examples of messages name, for tests: in the repository they would be
// bytes that nobody can read.
package files

import (
	"bytes"
	"hash/crc32"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"io/fs"

	"ovillo/lang/shared"
)

// Open returns a picture by its name: hat.jpg is as a printer wants it, small.jpg is coarse, huge.png says that it has 100
// million pixels, broken.jpg ends early, and hat.tif is of another format. The file locked.jpg cannot be opened.
//
// Files that patterns share are those of [shared.Open].
func Open(name string) ([]byte, error) {
	switch name {
	case "hat.jpg", "pictures/hat.jpg", "sea-hat.jpg", "pictures/sea-hat.jpg":
		return JPEG(1000, 40), nil
	case "small.jpg":
		return JPEG(320, 240), nil
	case "broken.jpg":
		whole := JPEG(1000, 40)
		return whole[:len(whole)/2], nil
	case "huge.png":
		return hugePNG(), nil
	case "hat.tif":
		return []byte("II*\x00\x08\x00\x00\x00"), nil
	case "locked.jpg":
		return nil, fs.ErrPermission
	}
	return shared.Open(name)
}

// JPEG is a picture of so many pixels, each lighter than its neighbours to the left and above.
func JPEG(w, h int) []byte {
	var b bytes.Buffer
	if err := jpeg.Encode(&b, shades(w, h), &jpeg.Options{Quality: 90}); err != nil {
		panic(err)
	}
	return b.Bytes()
}

// PNG is likewise.
func PNG(w, h int) []byte {
	var b bytes.Buffer
	if err := png.Encode(&b, shades(w, h)); err != nil {
		panic(err)
	}
	return b.Bytes()
}

func shades(w, h int) image.Image {
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	for y := range h {
		for x := range w {
			img.Set(x, y, color.RGBA{uint8(255 * x / w), uint8(255 * y / h), 128, 255})
		}
	}
	return img
}

// hugePNG is a picture of one pixel whose header says 10000 by 10000.
func hugePNG() []byte {
	b := PNG(1, 1)
	i := bytes.Index(b, []byte("IHDR"))
	for _, at := range []int{i + 4, i + 8} {
		copy(b[at:], "\x00\x00\x27\x10")
	}
	sum := crc32.ChecksumIEEE(b[i : i+17])
	copy(b[i+17:], []byte{byte(sum >> 24), byte(sum >> 16), byte(sum >> 8), byte(sum)})
	return b
}
