package files

import (
	"bytes"
	"image"
	"image/color"
	"image/jpeg"
	"math"
)

// Ropes is the picture of the example that has one: a band with two cables, each the mirror of the other. It is drawn and
// shows no piece that was made; a photograph would go in its place.
func Ropes() []byte {
	const w, h = 1000, 640
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	for y := range h {
		for x := range w {
			img.SetRGBA(x, y, ropeAt(float64(x), float64(y)))
		}
	}
	var b bytes.Buffer
	if err := jpeg.Encode(&b, img, &jpeg.Options{Quality: 74}); err != nil {
		panic(err)
	}
	return b.Bytes()
}

// The band in pixels: its upper and lower edge, the middles of its cables, and of a cable how far its strands swing, how thick
// one is, and after which length it has turned once.
const (
	bandTop, bandFoot     = 110, 530
	upperRope, lowerRope  = 245, 395
	swing, strand, turned = 27, 21, 230
)

var (
	table = [3]float64{226, 219, 206}
	wool  = [3]float64{70, 112, 132}
)

func ropeAt(x, y float64) color.RGBA {
	edge := 3 * math.Sin(2*math.Pi*x/26) // rows end in small bows
	if y < bandTop+edge || y > bandFoot-edge {
		near := math.Min(math.Abs(y-bandTop), math.Abs(y-bandFoot))
		return shade(table, 1-0.22*math.Exp(-near/16)-0.00006*x)
	}
	light := 0.74 + 0.10*math.Sin(2*math.Pi*x/26) + 0.05*math.Sin(2*math.Pi*y/15+2*math.Sin(2*math.Pi*x/26))
	for _, rope := range []struct{ middle, sense float64 }{{upperRope, 1}, {lowerRope, -1}} {
		across := math.Sin(2 * math.Pi * x / turned)
		front := rope.sense * math.Cos(2*math.Pi*x/turned)
		for _, side := range []float64{-sign(front), sign(front)} { // the strand behind first
			d := (y - rope.middle - side*swing*across) / strand
			if math.Abs(d) >= 1.25 {
				continue
			}
			if math.Abs(d) >= 1 {
				light = 0.45 // the shadow beside it
				continue
			}
			ply := math.Sin(2*math.Pi*(x+9*d)/21 + 1.5*side)
			light = 0.62 + 0.5*math.Sqrt(1-d*d) + 0.07*ply
		}
	}
	return shade(wool, light)
}

func sign(v float64) float64 {
	if v < 0 {
		return -1
	}
	return 1
}

func shade(c [3]float64, light float64) color.RGBA {
	v := func(i int) uint8 { return uint8(math.Round(math.Max(0, math.Min(255, c[i]*light)))) }
	return color.RGBA{v(0), v(1), v(2), 255}
}
