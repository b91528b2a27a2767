package compile_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
)

// roundedSource asks for lengths wherever a source can.
const roundedSource = `sizes "S", "M"
end
gauge 10 cm
  sc 20 sts, 25 rows
  dc 20 sts, 10 rows
  ch 20 sts
end
yarn sand
  name en "sand" es "arena"
end
let wide = stitches(20.2 (22.3) cm, sc, even) but "M" 46
let more = (wide + stitches(10 cm, dc, multiple of 4 plus 1, up)) / 1
part one
  title en "One" es "Uno"
  in rows
  chain wide
  rows for 10.3 (12.5) cm, even, ties down: sc in each
  rows upper to 21 cm: dc in each
  only "M"
    rows for 4 cm: sc in each
  end
  repeat rows for 9 cm
    row: sc in each
    row: dc in each
  end
  row: sc in next stitches(5 cm, sc), leave rest
end
part two like one
  title en "Two" es "Dos"
end
finish
  cord with sand, length 31.1 cm
end
`

// TestRounded keeps every length that became a count with what was wanted and what came out. The counts are by hand: 20.2 cm
// of 2 stitches to a centimetre are 40.4, the nearest even number 40; 10 cm up to 4k + 1 are 21; 10.3 cm of 2.5 rows are 25.75,
// the nearest even number 26; 12.5 cm are 31.25, and 32 is nearer than 30; to 21 cm there are 10.6 and 8.2 cm left, 11 and 8
// rows of dc; a pair of rows is 1.4 cm, and 9 cm are 6 of them; 31.1 cm are 62.2 chains.
func TestRounded(t *testing.T) {
	f, list := lang.Parse(source.NewFile("rounded.ovillo", roundedSource))
	p, more := compile.Compile(f)
	require.False(t, append(list, more...).HasErrors(), "%v", append(list, more...))
	var got []string
	for _, r := range p.Rounded {
		line := fmt.Sprintf("%s %d %s %s %d %v", r.Let, r.Part, r.Row, r.Stitch, r.Unit, r.Counts)
		for z, e := range r.Errors() {
			if e == plan.NoLength {
				line += " -"
				continue
			}
			line += fmt.Sprintf(" %.2f", float64(r.Got[z]-r.Wanted[z])/float64(plan.Centimetre))
		}
		if r.Multiple != nil {
			line += fmt.Sprintf(" %dk+%d", r.Multiple[0], r.Plus[0])
		}
		line += " " + r.Way
		if r.TiesDown {
			line += " ties down"
		}
		if r.ByHand != nil {
			line += fmt.Sprint(" ", r.ByHand)
		}
		got = append(got, line)
	}
	part := func(i int) []string {
		return []string{
			fmt.Sprintf(" %d  sc 2 [26 32] 0.10 0.30 2k+0 nearest ties down", i),
			fmt.Sprintf(" %d upper dc 2 [11 8] 0.40 -0.20 1k+0 nearest", i),
			fmt.Sprintf(" %d  sc 2 [%d 10] - 0.00 1k+0 nearest", i, plan.Absent),
			fmt.Sprintf(" %d   3 [6 6] -0.60 -0.60 1k+0 nearest", i),
			fmt.Sprintf(" %d  sc 1 [10 10] 0.00 0.00 1k+0 nearest", i),
		}
	}
	want := append([]string{
		"wide -1  sc 1 [40 46] -0.20 0.70 2k+0 nearest [false true]",
		"more -1  dc 1 [21 21] 0.50 0.50 4k+1 up",
	}, part(0)...)
	want = append(append(want, part(1)...), " -1  ch 4 [62 62] -0.10 -0.10 1k+0 nearest")
	require.Equal(t, want, got)
}
