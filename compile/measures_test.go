package compile_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
)

// TestPostsBesidePlainStitches holds the height of rows with stitches round the post: beside plain stitches these do not make
// a row taller, and need no gauge for it; where all of a row is worked round posts they decide.
func TestPostsBesidePlainStitches(t *testing.T) {
	for _, c := range []struct {
		row  string
		want plan.Length // of both rows; 0: refused, since tr has no gauge
	}{
		{"row: dc in next 2, fptr in next 6, dc in next 2", 20 * plan.Millimetre},
		{"row: [fpdc, bpdc] across", 20 * plan.Millimetre},
		{"row: fptr in each", 0},
		{"row: dc in next 2, tr in next 6, dc in next 2", 0},
	} {
		text := "pattern p\n  terms us\nend\nsizes \"S\"\nend\ngauge 10 cm\n  dc 20 sts, 10 rows\nend\npart one\n  in rows\n  begin tr none\n  begin dc none\n  chain 10\n  row: dc in each\n  " +
			c.row + "\nend\nmeasure\n  tall = height of one\nend\n"
		f, list := lang.Parse(source.NewFile("p.ovillo", text))
		require.False(t, list.HasErrors(), "%s: %v", c.row, list)
		p, list := compile.Compile(f)
		if c.want == 0 {
			require.True(t, list.HasErrors(), c.row)
			continue
		}
		require.False(t, list.HasErrors(), "%s: %v", c.row, list)
		require.Equal(t, plan.Lengths{c.want}, p.Measures[0].Values, c.row)
	}
}

// TestMeasureDrawn holds which measures have a line in the drawing: a sum of lengths of parts, each with its sign. A figure
// that is worked out otherwise has none, since no line of the drawing is as long as it.
func TestMeasureDrawn(t *testing.T) {
	for _, c := range []struct{ value, want string }{
		{"height of one", "A +0"},
		{"height of one + height of two", "A +0+1"},
		{"height of one + (height of one - height of two)", "A +0+0-1"},
		{"height of one - (height of one - height of two)", "A +0-0+1"},
		{"height of one + height of apart", " +0+2"}, // which is drawn apart
		{"around one at row 1", "A½ +0"},
		{"width of apart + width of alike", "A½ +2+3"},
		{"width of apart + width of wider", " +2+4"},
		{"width of apart - width of alike", " +2-3"},
		{"width of apart + height of apart", " +2+2"},
		{"along right edge of apart", "A +2"},
		{"along left edge of apart rows 2 to 4", "A +2"},
		{"along left edge of apart + height of apart", " +2+2"},
		{"across disc", "A +5"},
		{"across crown at round 3", " +6"}, // a side stands on it
		{"across based at round 3", " +7"}, // another part grows on it
		{"around disc + across disc", " +5+5"},
		{"2 * height of one", " "},
		{"height of one / 2", " "},
		{"length(9, sc) + height of one", " "},
		{"height of one + 2 cm", " "},
	} {
		text := `pattern p
  title en "P" es "P"
  terms us
end
sizes "S"
end
gauge 10 cm
  sc 20 sts, 20 rows
end
part one
  title en "One" es "Uno"
  chain 10, join
  9 rounds: sc in each
end
part two
  title en "Two" es "Dos"
  from one.edge
  5 rounds: sc in each
end
part apart
  title en "Apart" es "Aparte"
  chain 10
  5 rows: sc in each
end
part alike
  title en "Alike" es "Igual"
  chain 10
  7 rows: sc in each
end
part wider
  title en "Wider" es "Más ancha"
  chain 12
  5 rows: sc in each
end
part disc
  title en "Disc" es "Disco"
  in joined rounds
  ring
  round: 6 sc in ring
  round: 2 sc in each
  round: [sc in next, 2 sc in next] around
end
part crown
  title en "Crown" es "Copa"
  in joined rounds
  ring
  round: 6 sc in ring
  round: 2 sc in each
  round: [sc in next, 2 sc in next] around
  9 rounds: sc in each
end
part based
  title en "Base" es "Base"
  in joined rounds
  ring
  round: 6 sc in ring
  round: 2 sc in each
  round: [sc in next, 2 sc in next] around
end
part side
  title en "Side" es "Lado"
  in joined rounds
  from based.edge
  5 rounds: sc in each
end
measure
  m en "M" es "M" = ` + c.value + `
end
`
		f, list := lang.Parse(source.NewFile("p.ovillo", text))
		require.False(t, list.HasErrors(), "%s: %v", c.value, list)
		p, _ := compile.Compile(f)
		require.Len(t, p.Measures, 1, c.value)
		var b strings.Builder
		fmt.Fprintf(&b, "%s%s ", p.Measures[0].Letter, map[bool]string{true: "½"}[p.Measures[0].Half])
		for _, on := range p.Measures[0].Of {
			fmt.Fprintf(&b, "%s%d", map[bool]string{false: "+", true: "-"}[on.Minus], on.Part)
		}
		require.Equal(t, c.want, b.String(), c.value)
	}
}
