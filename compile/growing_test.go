package compile_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// TestGrowing: what is said of a band whose stitches are given, whose wearer grows by 4 cm from size to size, and whose
// armhole is as high as its rows.
func TestGrowing(t *testing.T) {
	for _, c := range []struct {
		name, sts, rows string
		want            []diag.Code
	}{
		{"even steps", "100 (108, 116)", "20 (22, 24)", nil},
		{"a step of 5 and one of 3 cm, less than twice as wide", "100 (110, 116)", "20 (22, 24)", nil},
		{"a step of 6 and one of 2 cm", "100 (112, 116)", "20 (22, 24)", []diag.Code{"OV612"}},
		{"a step of 3 and one of 1.5 cm, which is 1.5 cm more", "100 (106, 109)", "20 (22, 24)", nil},
		{"two sizes alike", "100 (108, 108)", "20 (22, 24)", []diag.Code{"OV610"}},
		{"a size that falls", "100 (116, 108)", "20 (22, 24)", []diag.Code{"OV609"}},
		{"the armhole stands still", "100 (108, 116)", "20 (20, 24)", []diag.Code{"OV611"}},
		{"the armhole falls", "100 (108, 116)", "22 (20, 24)", []diag.Code{"OV609"}},
		{"a multiple makes uneven steps: the cause alone", "stitches(53.6 (57.6, 62.4) cm, sc, multiple of 8)", "20 (22, 24)", []diag.Code{"OV608"}},
		{"a multiple makes sizes alike: the cause alone", "stitches(50 (54, 58) cm, sc, multiple of 20)", "20 (22, 24)", []diag.Code{"OV607"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			file := source.NewFile("band.ovillo", fmt.Sprintf(`pattern band
  title en "Band" es "Banda"
  terms us
end
sizes "S", "M", "L"
  fit chest 50 (54, 58) cm
end
gauge 10 cm
  sc 20 sts, 20 rounds
end
let around_all = %s
let high = %s
part band
  title en "Band" es "Banda"
  in joined rounds
  chain around_all, join
  high rounds: sc in each = around_all
  fasten off
end
measure
  chest = around band fits fit.chest ease -10 to 10 cm
  armhole = height of band
end
`, c.sts, c.rows))
			tree, slips := lang.Parse(file)
			require.Empty(t, slips)
			_, found := compile.Compile(tree)
			var got []diag.Code
			for _, d := range found {
				got = append(got, d.Code)
			}
			require.Equal(t, c.want, got)
		})
	}
}
