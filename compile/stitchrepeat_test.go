package compile_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
)

// repeated are rows over n repeats of something, with the chain they start with. They are invented for the test.
var repeated = []struct {
	name string
	rows func(n int) string
}{
	{"fans", func(n int) string {
		return fmt.Sprintf(`  in rows
  chain %d
  row: sc in each
  row: sc in next, [skip 2, 5 dc in next, skip 2, sc in next] across
  row, begin with ch 3 as dc: 3 dc in next, skip 2, sc in next, skip 2, [5 dc in next, skip 2, sc in next, skip 2] to last, 3 dc in last
  row: sc in each
`, 6*n+1)
	}},
	{"mesh", func(n int) string {
		return fmt.Sprintf(`  in rows
  chain %d
  row: dc in each
  row: dc in next, [ch 2, skip 2, dc in next] across
  row: dc in next, [2 dc in next space, dc in next] across
`, 3*n+1)
	}},
	{"ripple", func(n int) string {
		return fmt.Sprintf(`  in rows
  chain %d
  2 rows: 2 hdc in next, [hdc in next 4, skip 2, hdc in next 4, 3 hdc in next] %d times, hdc in next 4, skip 2, hdc in next 4, 2 hdc in last
`, 11*n+1, n-1)
	}},
	{"two repeats of different widths", func(n int) string {
		return fmt.Sprintf(`  in joined rounds
  chain %d, join
  round: [sc in next, dc in next] around
  round: [hdc in next 2, sc in next] around
  round: [sc in next, ch 1, skip 1] around
`, 6*n)
	}},
	{"crossing", func(n int) string {
		return fmt.Sprintf(`  in rows
  chain %d
  row: dc in each
  row: dc in next, [fpdc in next 4, dc in next 2] across
  row: dc in next, [bpdc in next 4, dc in next 2] across
  row: dc in next, [fptr4cross, dc in next 2] across
`, 6*n+1)
	}},
	{"turned rounds", func(n int) string {
		return fmt.Sprintf(`  in joined rounds, turned
  chain %d, join
  round: [sc in next, dc in next] around
  round: [dc in next, sc in next] around
`, 2*n)
	}},
}

func repeatedPattern(lines, chart string) string {
	return "pattern trial\n  title en \"Trial\" es \"Prueba\"\n  terms us\nend\nsizes \"S\"\nend\npart strip\n  title en \"Strip\" es \"Tira\"\n" +
		lines + "end\nchart drawn_rows of strip\n" + chart + "end\n"
}

// What is drawn with fewer repeats is what would be drawn of a piece that has no more of them: nothing at the join gives away that
// repeats were left out.
func TestFewerRepeatsAreASmallerPiece(t *testing.T) {
	for _, of := range repeated {
		t.Run(of.name, func(t *testing.T) {
			shorter := 0
			for n := 6; n <= 13; n++ {
				for k := 1; k <= n; k++ {
					p, found := compile.Compile(parsed(repeatedPattern(of.rows(n), fmt.Sprintf("  repeats %d\n", k))))
					if found.HasErrors() {
						require.Contains(t, fmt.Sprint(found), "OV426", "%d of %d", k, n)
						require.Greater(t, k, 1, "one repeat can always be drawn")
						continue
					}
					s := p.Drawn[0].Sizes[0]
					require.Equal(t, k, s.Repeat.Times)
					if s.Left == 0 {
						continue
					}
					shorter++
					whole := compiled(t, repeatedPattern(of.rows(n), "")).Drawn[0].Sizes[0]
					gone := len(whole.Lines[0].Stitches) - len(s.Lines[0].Stitches)
					per := (len(whole.Lines[0].Stitches) - len(compiled(t, repeatedPattern(of.rows(n-1), "")).Drawn[0].Sizes[0].Lines[0].Stitches))
					require.Zero(t, gone%per, "%d of %d", k, n)
					if n-gone/per < 2 {
						continue // so small a piece is not in the table: its rows end otherwise
					}
					small := compiled(t, repeatedPattern(of.rows(n-gone/per), "")).Drawn[0].Sizes[0]
					for i := range small.Lines {
						require.Equal(t, small.Lines[i].Stitches, s.Lines[i].Stitches, "%d of %d, line %d", k, n, i)
					}
				}
			}
			require.Greater(t, shorter, 5)
		})
	}
}

// A window holds what stands on its stitches and nothing else, and windows side by side hold everything once.
func TestWindowsMakeUpTheRow(t *testing.T) {
	for _, of := range repeated {
		t.Run(of.name, func(t *testing.T) {
			whole := compiled(t, repeatedPattern(of.rows(6), "")).Drawn[0].Sizes[0]
			width := len(whole.Lines[0].Stitches)
			stitches := 0
			for a := 1; a <= width; a += 5 {
				b := min(a+4, width)
				s := compiled(t, repeatedPattern(of.rows(6), fmt.Sprintf("  stitches %d to %d\n", a, b))).Drawn[0].Sizes[0]
				require.Len(t, s.Lines[0].Stitches, b-a+1)
				require.Equal(t, []bool{a > 1, b < width}, []bool{s.CutRight, s.CutLeft})
				require.Equal(t, plan.ChartRepeat{}, s.Repeat)
				for i := range s.Lines {
					stitches += len(s.Lines[i].Stitches)
				}
			}
			for i := range whole.Lines {
				stitches -= len(whole.Lines[i].Stitches)
			}
			require.Zero(t, stitches)
		})
	}
}
