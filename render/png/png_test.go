package png

import (
	"bytes"
	"encoding/binary"
	"errors"
	"hash/crc32"
	"image/color"
	stdpng "image/png"
	"io"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/render/page"
	"ovillo/render/scene"
)

var (
	black = page.Black
	red   = page.Color{1, 0, 0}
)

func path(closed bool, at ...float64) []page.Cmd {
	var out []page.Cmd
	for i := 0; i < len(at); i += 2 {
		op := byte('L')
		if i == 0 {
			op = 'M'
		}
		out = append(out, page.Cmd{Op: op, P: [3]page.Point{{X: at[i], Y: at[i+1]}}})
	}
	if closed {
		out = append(out, page.Cmd{Op: 'Z'})
	}
	return out
}

// ten dots are a millimetre.
const ten = 254

// ink is how much of a picture is black, in square millimetres.
func ink(t *testing.T, w, h float64, items ...scene.Item) float64 {
	t.Helper()
	img, err := Picture(&scene.Scene{W: w, H: h, Items: items}, ten)
	require.NoError(t, err)
	sum := 0.0
	for i := 0; i < len(img.Pix); i += 4 {
		sum += 1 - float64(img.Pix[i])/255
	}
	return sum / 100
}

// What is drawn covers as much as geometry says.
func TestAreas(t *testing.T) {
	const k = 0.5523
	disc := []page.Cmd{{Op: 'M', P: [3]page.Point{{X: 18, Y: 10}}}}
	for _, c := range [][6]float64{{18, 10 + 8*k, 10 + 8*k, 18, 10, 18}, {10 - 8*k, 18, 2, 10 + 8*k, 2, 10}, {2, 10 - 8*k, 10 - 8*k, 2, 10, 2}, {10 + 8*k, 2, 18, 10 - 8*k, 18, 10}} {
		disc = append(disc, page.Cmd{Op: 'C', P: [3]page.Point{{X: c[0], Y: c[1]}, {X: c[2], Y: c[3]}, {X: c[4], Y: c[5]}}})
	}
	closed := append(disc, page.Cmd{Op: 'Z'})
	for name, c := range map[string]struct {
		item scene.Item
		area float64
	}{
		"a square":                {scene.Path{Cmds: path(true, 2, 2, 12, 2, 12, 12, 2, 12), Fill: &black}, 100},
		"with a hole":             {scene.Path{Cmds: append(path(true, 2, 2, 12, 2, 12, 12, 2, 12), path(true, 5, 5, 5, 8, 8, 8, 8, 5)...), Fill: &black}, 91},
		"a disc":                  {scene.Path{Cmds: closed, Fill: &black}, math.Pi * 64},
		"a ring":                  {scene.Path{Cmds: closed, Stroke: &black, Width: 1, Round: true}, 2 * math.Pi * 8},
		"a line":                  {scene.Path{Cmds: path(false, 2, 10, 12, 10), Stroke: &black, Width: 2}, 20},
		"a slanting line":         {scene.Path{Cmds: path(false, 3, 3, 11, 9), Stroke: &black, Width: 2}, 20},
		"with round ends":         {scene.Path{Cmds: path(false, 4, 10, 14, 10), Stroke: &black, Width: 2, Round: true}, 20 + math.Pi},
		"a frame with its corner": {scene.Path{Cmds: path(true, 3, 3, 13, 3, 13, 13, 3, 13), Stroke: &black, Width: 2}, 144 - 64},
		"with round corners":      {scene.Path{Cmds: path(true, 3, 3, 13, 3, 13, 13, 3, 13), Stroke: &black, Width: 2, Round: true}, 80 - (4 - math.Pi)},
		"dashes":                  {scene.Path{Cmds: path(false, 2, 10, 14, 10), Stroke: &black, Width: 1, Dash: []float64{2, 1}}, 8},
		"dashes all round":        {scene.Path{Cmds: path(true, 2, 2, 8, 2, 8, 8, 2, 8), Stroke: &black, Width: 0.5, Dash: []float64{1, 1}}, 6},
		"twice over itself":       {scene.Path{Cmds: path(false, 2, 10, 12, 10, 2, 10), Stroke: &black, Width: 2}, 20},
	} {
		require.InDelta(t, c.area, ink(t, 20, 20, c.item), 0.012*c.area+0.05, name)
	}
}

// A corner that is too sharp is cut off, and one less sharp is not: the area of a mitre is half the width squared times the
// tangent of half the turn.
func TestSharpCorners(t *testing.T) {
	for _, c := range []struct {
		half  float64 // of the angle between the lines, in degrees
		mitre bool
	}{{30, true}, {10, true}, {5, false}} {
		a := c.half * math.Pi / 180
		dx, dy := 15*math.Cos(a), 15*math.Sin(a)
		got := ink(t, 40, 20, scene.Path{Cmds: path(false, 30-dx, 10-dy, 30, 10, 30-dx, 10+dy), Stroke: &black, Width: 1})
		overlap := 0.25 / math.Tan(a) // both bars, inside the corner
		want := 2*15 - overlap
		if c.mitre {
			want += 0.25 / math.Tan(a)
		} else {
			want += 0.25 * math.Cos(a) * math.Sin(a)
		}
		require.InDelta(t, want, got, 0.15, "%v degrees", c.half)
	}
}

// Later items cover earlier ones, and what leaves the picture is cut off.
func TestOrderAndEdges(t *testing.T) {
	img, err := Picture(&scene.Scene{W: 10, H: 10, Items: []scene.Item{
		scene.Path{Cmds: path(true, -50, -50, 60, -50, 60, 5, -50, 5), Fill: &black},
		scene.Path{Cmds: path(true, 2, 2, 4, 2, 4, 8, 2, 8), Fill: &red},
		scene.Path{Cmds: path(true, 200, 200, 300, 200, 300, 300), Fill: &red},
	}}, ten)
	require.NoError(t, err)
	require.Equal(t, color.RGBA{0, 0, 0, 255}, img.RGBAAt(0, 0))
	require.Equal(t, color.RGBA{0, 0, 0, 255}, img.RGBAAt(99, 49))
	require.Equal(t, color.RGBA{255, 0, 0, 255}, img.RGBAAt(30, 30))
	require.Equal(t, color.RGBA{255, 0, 0, 255}, img.RGBAAt(30, 70))
	require.Equal(t, color.RGBA{255, 255, 255, 255}, img.RGBAAt(90, 90))
}

// A capital stands with its middle on the place of its label.
func TestLabels(t *testing.T) {
	for _, face := range []page.Face{page.Sans, page.SansBold, page.Serif, page.SerifBold} {
		img, err := Picture(&scene.Scene{W: 20, H: 20, Items: []scene.Item{scene.Label{X: 10, Y: 10, Text: "H", Height: 10, Face: face}}}, ten)
		require.NoError(t, err)
		left, right, top, bottom := 999, 0, 999, 0
		for y := range 200 {
			for x := range 200 {
				if img.RGBAAt(x, y).R < 128 {
					left, right, top, bottom = min(left, x), max(right, x), min(top, y), max(bottom, y)
				}
			}
		}
		require.InDelta(t, 99.5, float64(left+right)/2, 2)
		require.InDelta(t, 99.5, float64(top+bottom)/2, 1)
		require.InDelta(t, 66.5, float64(bottom-top+1), 2) // capitals are 0.66 and 0.67 em tall
	}
}

// chunks reads the pieces of a PNG and checks their sums.
func chunks(t *testing.T, data []byte) (kinds []string, held map[string][]string) {
	t.Helper()
	held = map[string][]string{}
	require.Equal(t, "\x89PNG\r\n\x1a\n", string(data[:8]))
	for at := 8; at < len(data); {
		n := int(binary.BigEndian.Uint32(data[at:]))
		kind := string(data[at+4 : at+8])
		body := data[at+8 : at+8+n]
		require.Equal(t, crc32.ChecksumIEEE(data[at+4:at+8+n]), binary.BigEndian.Uint32(data[at+8+n:]), kind)
		kinds = append(kinds, kind)
		held[kind] = append(held[kind], string(body))
		at += 12 + n
	}
	return kinds, held
}

func TestNotes(t *testing.T) {
	s := &scene.Scene{W: 20, H: 10, Title: map[string]string{"en": "Chart", "es": "Gráfico"}, Desc: map[string]string{"es": "Tres hileras."},
		Items: []scene.Item{scene.Path{Cmds: path(false, 2, 5, 12, 6), Stroke: &black, Width: 1}}}
	var b, again bytes.Buffer
	require.NoError(t, Write(&b, s, 300))
	require.NoError(t, Write(&again, s, 300))
	require.Equal(t, b.Bytes(), again.Bytes())
	kinds, held := chunks(t, b.Bytes())
	require.Equal(t, "IHDR", kinds[0])
	require.Equal(t, "IEND", kinds[len(kinds)-1])
	require.Equal(t, []string{"Title\x00\x00\x00en\x00\x00Chart", "Title\x00\x00\x00es\x00\x00Gráfico", "Description\x00\x00\x00es\x00\x00Tres hileras."}, held["iTXt"])
	// 300 dots an inch are 11811 a metre, as the example of the PNG documents has it (from memory).
	require.Equal(t, []string{"\x00\x00\x2e\x23\x00\x00\x2e\x23\x01"}, held["pHYs"])
	img, err := stdpng.Decode(&b)
	require.NoError(t, err)
	require.Equal(t, 237, img.Bounds().Dx()) // 20 mm are 236.2 dots
	require.Equal(t, 119, img.Bounds().Dy())
	want, err := Picture(s, 300)
	require.NoError(t, err)
	for y := range 119 {
		for x := range 237 {
			r, g, bl, a := img.At(x, y).RGBA()
			wr, wg, wb, wa := want.At(x, y).RGBA()
			require.Equal(t, [4]uint32{wr, wg, wb, wa}, [4]uint32{r, g, bl, a})
		}
	}
}

// A picture of more colours than a list holds keeps them all.
func TestManyColours(t *testing.T) {
	s := &scene.Scene{W: 30, H: 1}
	for i := range 300 {
		c := page.Color{float64(i%256) / 255, float64(i/256) / 255, 0.5}
		x := float64(i) / 10
		s.Items = append(s.Items, scene.Path{Cmds: path(true, x, 0, x+0.1, 0, x+0.1, 1, x, 1), Fill: &c})
	}
	var b bytes.Buffer
	require.NoError(t, Write(&b, s, ten))
	img, err := stdpng.Decode(&b)
	require.NoError(t, err)
	require.Equal(t, 300, img.Bounds().Dx())
	for i := range 300 {
		r, g, _, _ := img.At(i, 5).RGBA()
		require.InDelta(t, i%256, float64(r>>8), 1)
		require.InDelta(t, i/256, float64(g>>8), 1)
	}
}

// A picture that would take too much memory is refused before any is taken, and the error says what would do.
func TestTooLarge(t *testing.T) {
	for _, s := range []*scene.Scene{{W: 2000, H: 2000}, {W: math.Inf(1), H: 10}, {W: 1e12, H: 1e12}} {
		var large *TooLarge
		require.True(t, errors.As(Write(io.Discard, s, 300), &large), "%v by %v", s.W, s.H)
	}
	var large *TooLarge
	require.True(t, errors.As(Write(io.Discard, &scene.Scene{W: 2000, H: 1000}, 300), &large))
	require.Positive(t, large.DPI)
	_, err := Picture(&scene.Scene{W: 2000, H: 1000}, large.DPI)
	require.NoError(t, err)
	_, err = Picture(&scene.Scene{W: 2000, H: 1000}, large.DPI+1)
	require.Error(t, err)
}

func TestNothing(t *testing.T) {
	for _, s := range []*scene.Scene{{}, {W: math.NaN(), H: 3}, {W: 5, H: 0}, {W: 10, H: 10, Items: []scene.Item{
		scene.Path{Stroke: &black, Width: 1}, scene.Path{Cmds: path(false, 1, 1), Stroke: &black, Width: 1}, scene.Path{Cmds: path(true, 1, 1), Fill: &black}}}} {
		require.NoError(t, Write(io.Discard, s, 100))
	}
}

type shut struct{}

func (shut) Write([]byte) (int, error) { return 0, io.ErrClosedPipe }

func TestErrorOfTheWriter(t *testing.T) {
	require.ErrorIs(t, Write(shut{}, &scene.Scene{W: 5, H: 5}, 100), io.ErrClosedPipe)
}

// A drawing of many small things is drawn in time that goes with them, not with the picture.
func BenchmarkManyMarks(b *testing.B) {
	s := &scene.Scene{W: 200, H: 200}
	for i := range 20_000 {
		x, y := float64(i%141)*1.4, float64(i/141)*1.4
		s.Items = append(s.Items, scene.Path{Cmds: path(false, x, y, x+1, y+1), Stroke: &black, Width: 0.2, Round: true})
	}
	for b.Loop() {
		if err := Write(io.Discard, s, 300); err != nil {
			b.Fatal(err)
		}
	}
}
