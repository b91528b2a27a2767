package draw

import (
	"bytes"
	stdpng "image/png"
	"os"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/render/png"
	"ovillo/render/svg"
)

// Another program draws the SVG of every drawing as our PNG has it, dot by dot: librsvg, which shares no code with us. Edges may be
// softened otherwise, so a dot may differ a little, and a few of them more.
func TestAnotherProgramDrawsTheSame(t *testing.T) {
	const tool = "rsvg-convert"
	if _, err := exec.LookPath(tool); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatalf("%s is not installed", tool)
		}
		t.Skipf("%s is not installed", tool)
	}
	for name, s := range drawings() {
		var file, out, complaint bytes.Buffer
		require.NoError(t, svg.Write(&file, s))
		cmd := exec.Command(tool, "--dpi-x", "150", "--dpi-y", "150", "--background-color", "white")
		cmd.Stdin, cmd.Stdout, cmd.Stderr = &file, &out, &complaint
		require.NoError(t, cmd.Run(), "%s: %s", name, complaint.String())
		theirs, err := stdpng.Decode(&out)
		require.NoError(t, err)
		ours, err := png.Picture(s, 150)
		require.NoError(t, err)
		b := ours.Bounds()
		require.InDelta(t, b.Dx(), theirs.Bounds().Dx(), 1, name)
		require.InDelta(t, b.Dy(), theirs.Bounds().Dy(), 1, name)
		sum, far, dots := 0.0, 0, 0
		for y := range min(b.Dy(), theirs.Bounds().Dy()) {
			for x := range min(b.Dx(), theirs.Bounds().Dx()) {
				r, _, _, _ := theirs.At(x, y).RGBA()
				d := int(ours.RGBAAt(x, y).R) - int(r>>8)
				if d = max(d, -d); d > 100 {
					far++
				}
				sum += float64(d)
				dots++
			}
		}
		require.Less(t, sum/float64(dots), 2.5, "%s: the mean difference of a dot, of 255", name)
		require.Less(t, float64(far)/float64(dots), 0.0005, "%s: dots that are other dots", name)
	}
}
