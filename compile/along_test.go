package compile_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/lang/diag"
)

// alongTrial has a flat part of 20 (24) stitches and 12 (15) rows, a tube with an opening, and what starts along them.
func alongTrial(second string) string {
	return `pattern trial
  title en "Trial" es "Prueba"
  terms us
end
sizes "S", "M"
end
gauge 10 cm
  sc  16 sts, 18 rows
  hdc 14 sts, 12 rows
end
part panel
  title en "Panel" es "Panel"
  in rows
  edges hem, neck
  chain 20 (24)
  12 (15) rows: hdc in each = 20 (24)
  fasten off
end
part slope
  title en "Slope" es "Pendiente"
  in rows
  chain 18
  row: sc in each                   = 18
  row: sc in next 12, leave 6       = 12
  row: sc in each                   = 12
  row: sc in next 6, leave 6        = 6
  row: sc in each                   = 6
  row: sc in each, sc in each left  = 18
  3 rows: sc in each                = 18
  fasten off
end
part mitten
  title en "Mitten" es "Manopla"
  in joined rounds
  chain 30, join
  round: sc in each                                      = 30
  round: sc in next 6, ch 5, skip 7 as thumb, sc to end  = 23 sts, 1 space
  round: sc in each st and chain                         = 28
end
part second
  title en "Second" es "Segunda"
` + second + `
end
`
}

// Counts along edges. Each is the plain sum: row ends times the rate to the nearest whole, stitches and chains as they are.
func TestAlongEdges(t *testing.T) {
	for _, c := range []struct{ name, second string }{
		{"one in each row end", "  in rows\n  from right edge of panel\n  row: sc in each = 12 (15)"},
		{"at a rate, with a rest", "  in rows\n  from left edge of panel at 4 per 3 rows\n  row: sc in each = 16 (20)"},
		{"the rest to the nearest", "  in rows\n  from left edge of panel at 3 per 2 rows\n  row: sc in each = 18 (23)"},
		{"the gauges give 4 per 3", "  in rows\n  from right edge of panel by gauge\n  row: sc in each = 16 (20)"},
		{"by the name of the edge", "  in rows\n  from neck edge of panel by gauge\n  row: sc in each = 16 (20)"},
		{"some rows", "  in rows\n  from hem edge of panel rows 4 to 9 at 4 per 3 rows\n  row: sc in each = 8"},
		{"two runs, brought to a multiple", "  in rows\n  from panel.edge, hem edge of panel at 4 per 3 rows as side, multiple of 5 by side\n  row: sc in each = 35 (45)"},
		{"a chain that gives way to the multiple", "  in joined rounds\n  from panel.edge, chain 5 as gap, multiple of 8 by gap\n  round: sc in each = 24 (32)"},
		{"all round, corners worked", "  in joined rounds\n  from around panel at 4 per 3 rows\n  round: [sc to corner, 3 sc in corner] 4 times = 80 (96)\n  round: sc in each = 80 (96)"},
		{"mitred corners grow by eight", "  in joined rounds\n  from around panel at 4 per 3 rows\n  round: [sc to corner, (sc, sc as corner, sc) in corner] 4 times = 80 (96)\n" +
			"  round: [sc to corner, (sc, sc as corner, sc) in corner] 4 times, sc to end = 88 (104)"},
		{"an opening all round", "  in spiral rounds\n  from around mitten.thumb\n  round: sc in each = 14"}, // 7 skipped, 5 chains, 2 corners
		// Short rows end inside the piece at the left, where later rows work on beyond them: rows 1, 6, 7, 8 and 9 reach that edge.
		{"short rows have one end", "  in rows\n  from right edge of slope\n  row: sc in each = 5"},
		{"and reach the other edge", "  in rows\n  from left edge of slope\n  row: sc in each = 9"},
		{"markers between runs", "  base sc\n  in joined rounds\n  from panel.edge, mark m1, right edge of panel, mark m2\n  round: sc in each = 32 (39)\n  round: sc to 2 before m1, dec, sc to 2 before m2, dec = 30 (37)"},
	} {
		t.Run(c.name, func(t *testing.T) {
			require.Empty(t, errorsIn(found(alongTrial(c.second))), said(found(alongTrial(c.second))))
		})
	}
}

// errorsIn are the messages that refuse a source.
func errorsIn(l diag.List) (out diag.List) {
	for _, d := range l {
		if diag.Lookup(d.Code).Severity == diag.Error {
			out.Add(d)
		}
	}
	return out
}

// A part along an edge that is not known says nothing of its own.
func TestAlongAnUnknownEdge(t *testing.T) {
	for _, second := range []string{
		"  in rows\n  from right edge of panel by gauge\n  row: sc in each",
		"  in rows\n  from panel.edge, right edge of panel rows 1 to 2 as side, multiple of 15 by side\n  row: sc in each",
		"  in joined rounds\n  from around panel at 4 per 3 rows\n  round: [sc to corner, 3 sc in corner] 4 times",
	} {
		text := strings.Replace(alongTrial(second), "12 (15) rows: hdc in each = 20 (24)", "12 (15) rows: hdc in next 7 = 20 (24)", 1)
		require.Len(t, errorsIn(found(text)), 1, said(found(text)))
	}
}
