package main

import (
	"bytes"
	"image"
	"image/jpeg"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/picture/files"

	"ovillo/cmd/ovillo/whole"
)

// The picture of the example is the one that is drawn by a program, pixel by pixel but for what the next encoder may round
// otherwise, and no larger than a repository should carry.
func TestPictureOfTheExampleIsDrawn(t *testing.T) {
	path := filepath.Join("..", "..", "examples", "jarcia-headband.jpg")
	if *whole.Update {
		require.NoError(t, os.WriteFile(path, files.Ropes(), 0o644))
	}
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Less(t, len(data), 60_000)
	decode := func(b []byte) image.Image {
		img, err := jpeg.Decode(bytes.NewReader(b))
		require.NoError(t, err)
		return img
	}
	kept, drawn := decode(data), decode(files.Ropes())
	require.Equal(t, drawn.Bounds(), kept.Bounds())
	for y := 0; y < drawn.Bounds().Dy(); y += 7 {
		for x := 0; x < drawn.Bounds().Dx(); x += 7 {
			r1, g1, b1, _ := kept.At(x, y).RGBA()
			r2, g2, b2, _ := drawn.At(x, y).RGBA()
			for i, v := range []uint32{r1, g1, b1} {
				require.InDelta(t, []uint32{r2, g2, b2}[i]>>8, v>>8, 3, "at %d, %d", x, y)
			}
		}
	}
}
