package preview

import (
	"bytes"
	"context"
	"fmt"
	"image"
	"image/draw"
	_ "image/png"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// dots is how many dots of a picture there are to the inch: those of a browser, twice over.
const dots = 192

// TestAsItPrints holds what Chromium shows of a page against what poppler makes of the PDF, dot by dot. The two fill the edges of
// letters in their own ways, so dots may differ there; what is elsewhere, or another letter, differs in its whole strokes, and in more
// dots than any edge has.
func TestAsItPrints(t *testing.T) {
	if _, err := exec.LookPath("pdftoppm"); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("needs pdftoppm")
		}
		t.Skip("needs pdftoppm")
	}
	photo, err := os.ReadFile("../../../examples/jarcia-headband.jpg")
	require.NoError(t, err)
	d := newDesktop(t, map[string]string{"jarcia-headband.jpg": string(photo), "band.ovillo": example(t, "jarcia-headband.ovillo")}, "band.ovillo")
	v := d.sees(1, "the band", isFresh)
	printed := filepath.Join(t.TempDir(), "band.pdf")
	data, err := v.set.pdf()
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(printed, data, 0o644))
	tab := d.open(chromedp.WindowSize(1500, 1300))
	_, err = chromedp.Run(tab, func(ctx context.Context, _ *chromedp.Target) (chromedp.Void, error) {
		_, err := chromedp.Call(ctx, emulation.SetDeviceMetricsOverride, emulation.SetDeviceMetricsOverrideParams{Width: 1500, Height: 1300, DeviceScaleFactor: dots / 96})
		return chromedp.Void{}, err
	})
	require.NoError(t, err)
	until(t, tab, filled)
	for _, number := range []int{1, 4} { // a title page with a photograph, and rows with a chart
		t.Run(fmt.Sprint("page ", number), func(t *testing.T) {
			shown := picture(t, tab, number)
			ppm := exec.Command("pdftoppm", "-png", "-r", fmt.Sprint(dots), "-f", fmt.Sprint(number), "-l", fmt.Sprint(number), printed)
			out, err := ppm.Output()
			require.NoError(t, err)
			paper, _, err := image.Decode(bytes.NewReader(out))
			require.NoError(t, err)
			assert.InDelta(t, paper.Bounds().Dx(), shown.Bounds().Dx(), 2)
			assert.InDelta(t, paper.Bounds().Dy(), shown.Bounds().Dy(), 2)
			black, far := compare(grey(paper), grey(shown))
			t.Logf("%d black dots, %d of them with nothing near on the other picture", black, far)
			assert.Greater(t, black, 20_000, "there is hardly anything on the page")
			assert.Less(t, float64(far), 0.002*float64(black))
		})
	}
	// The measure tells two pages apart, and a page from itself a millimetre away.
	one, other := grey(picture(t, tab, 1)), grey(picture(t, tab, 4))
	black, far := compare(one, other)
	assert.Greater(t, float64(far), 0.2*float64(black))
	moved := image.NewGray(one.Bounds())
	for y := range one.Bounds().Dy() {
		copy(moved.Pix[y*moved.Stride+8:(y+1)*moved.Stride], one.Pix[y*one.Stride:])
	}
	black, far = compare(one, moved)
	assert.Greater(t, float64(far), 0.05*float64(black))
}

// picture is what the browser shows of a page.
func picture(t *testing.T, tab context.Context, number int) image.Image {
	t.Helper()
	box := read[[]float64](t, tab, fmt.Sprintf(`(() => {
		const p = document.getElementById("page-%d");
		document.getElementById("bar").style.display = "none";
		p.scrollIntoView({block: "start"});
		const b = p.getBoundingClientRect();
		return [b.x + scrollX, b.y + scrollY, b.width, b.height];
	})()`, number))
	until(t, tab, `document.fonts.status === "loaded"`)
	// What was scrolled to is painted some frames later, and piece by piece: a picture from before that is white, or lacks the photograph.
	// So it is taken until two, one after the other, show the same. A page that stays white is returned.
	var out image.Image
	var before []byte
	for range 50 {
		shot, err := chromedp.Run(tab, func(ctx context.Context, _ *chromedp.Target) ([]byte, error) {
			r, err := chromedp.Call(ctx, page.CaptureScreenshot, page.CaptureScreenshotParams{
				Format: "png", CaptureBeyondViewport: new(true), Clip: &page.Viewport{X: box[0], Y: box[1], Width: box[2], Height: box[3], Scale: 1}})
			return r.Data, err
		})
		require.NoError(t, err)
		out, _, err = image.Decode(bytes.NewReader(shot))
		require.NoError(t, err)
		if bytes.Equal(shot, before) && bytes.IndexFunc(grey(out).Pix, func(r rune) bool { return r < 64 }) >= 0 {
			break
		}
		before = shot
		time.Sleep(100 * time.Millisecond)
	}
	return out
}

func grey(m image.Image) *image.Gray {
	out := image.NewGray(image.Rect(0, 0, m.Bounds().Dx(), m.Bounds().Dy()))
	draw.Draw(out, out.Rect, m, m.Bounds().Min, draw.Src)
	return out
}

// compare counts the dots that are black on one picture and how many of them have nothing dark within two dots on the other, both ways.
func compare(a, b *image.Gray) (black, far int) {
	for _, pair := range [][2]*image.Gray{{a, b}, {b, a}} {
		from, to := pair[0], pair[1]
		for y := range from.Rect.Dy() {
			for x := range from.Rect.Dx() {
				if from.GrayAt(x, y).Y > 64 {
					continue
				}
				black++
				if !darkNear(to, x, y) {
					far++
				}
			}
		}
	}
	return black, far
}

func darkNear(m *image.Gray, x, y int) bool {
	for dy := -2; dy <= 2; dy++ {
		for dx := -2; dx <= 2; dx++ {
			if p := image.Pt(x+dx, y+dy); p.In(m.Rect) && m.GrayAt(p.X, p.Y).Y < 160 {
				return true
			}
		}
	}
	return false
}
