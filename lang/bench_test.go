package lang

import (
	"fmt"
	"strings"
	"testing"

	"ovillo/lang/source"
)

// longSource makes a source of about n lines, mixed as in a real pattern.
func longSource(n int) string {
	rows := strings.Split(`  round: dc in each                                       = 96 (104, 112)
  round: [dc in next 5, 2 dc in next] around              = 112
  4 rounds: [fpdc, bpdc] around
  round: hdc in each to m1, (hdc, move m1, hdc) in m1, hdc in each   = 98 (106, 114)
  round: dc to m1 as back_a, ch 2 as right_gap, skip leg as right, dc to m2 as front   = 8 dc, 2 spaces
  row: sc in first, [skip 2, 5 dc in next, skip 2, sc in next] 12 (13, 14) times   = 73 (79, 85) sts
  rounds for fit.inseam - 4 cm: dc in each
  row: sc2tog, sc in each to last 2, sc2tog  # taper
  count off: 2, mark a, leg, mark b, 4, mark c, leg, mark d, 2
  round: [(3 dc, ch 2, 3 dc) in next corner, ch 1, 3 dc in next space, ch 1] around`, "\n")
	var b strings.Builder
	b.WriteString("let leg = (96 - 8) / 2\n")
	for i := 1; i < n; {
		fmt.Fprintf(&b, "part p%d\n  in joined rounds\n  chain 96, join\n", i)
		i += 3
		for k := 0; k < 40 && i < n; k++ {
			b.WriteString(rows[(k*7+i)%len(rows)] + "\n")
			i++
		}
		b.WriteString("  fasten off\nend\n\n")
		i += 3
	}
	return b.String()
}

func BenchmarkParseLeggings(b *testing.B) {
	benchmarkParse(b, readSource(b, "leggings.ovillo"))
}

func BenchmarkParse10000Lines(b *testing.B) {
	benchmarkParse(b, source.NewFile("long.ovillo", longSource(10_000)))
}

func benchmarkParse(b *testing.B, f *source.File) {
	b.ReportAllocs()
	b.SetBytes(int64(len(f.Text)))
	for b.Loop() {
		if _, faults := Parse(f); len(faults) > 0 {
			b.Fatalf("line %d: %s", f.Line(faults[0].Span.Start), faults[0].Code)
		}
	}
}

func BenchmarkTokens10000Lines(b *testing.B) {
	text := longSource(10_000)
	b.ReportAllocs()
	b.SetBytes(int64(len(text)))
	for b.Loop() {
		Tokens(text)
	}
}
