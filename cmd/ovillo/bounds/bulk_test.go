//go:build unix

package bounds

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"ovillo/lang"
)

// bulk are patterns as large as a source may be that can be read line by line, by what they have too much of: the kinds of lines that were found
// to cost most of some sixty. Each of the first ones hung before it had a bound.
func bulk() map[string]string {
	const head = "pattern p\n  title en \"P\" es \"P\"\n  terms us\n  kind scarf\nend\nsizes \"S\"\n  age 20 years\nend\n"
	part := func(name, body string) string {
		return fmt.Sprintf("part %s\n  title en \"%[1]s\" es \"%[1]s\"\n  in rows\n  chain 21\n  row: sc in each = 21\n%send\n", name, body)
	}
	// A line as often as a source has room for it, with its number for #.
	full := func(line string) string {
		var b strings.Builder
		for i := 0; b.Len() < lang.MostBytes-4000 && i < 110_000; i++ {
			b.WriteString(strings.ReplaceAll(line, "#", fmt.Sprint(i)))
		}
		return b.String()
	}
	times := func(n int, what string) string { return strings.TrimSuffix(strings.Repeat(what+", ", n), ", ") }
	numbered := func(n int, what string) string {
		var b strings.Builder
		for i := range n {
			b.WriteString(strings.ReplaceAll(strings.ReplaceAll(what, "#", fmt.Sprint(i)), "@", fmt.Sprint("q", i-1)))
		}
		return b.String()
	}
	return map[string]string{
		"markers in rows":   head + part("p", full("  row: sc in next 5, mark m# in next, sc in each\n")),
		"markers between":   head + part("p", full("  count off: 10, mark m#, 11\n")),
		"groups of groups":  head + "group g0 = [" + times(100, "skip 0") + "]\ngroup g1 = [" + times(14, "g0") + "]\ngroup g2 = [" + times(14, "g1") + "]\n" + part("p", full("  row: g2, sc in each\n")),
		"charts in symbols": head + numbered(199, "chart d# of p\n  title en \"a\" es \"b\"\nend\n") + part("p", "  900 rows: sc in each = 21\n"),
		"rows from charts": head + "chart net\n  mesh dc and 1\n  legend \".\" open, \"x\" filled\n  1 | x\nend\n" +
			numbered(400, "part q#\n  title en \"q#\" es \"q#\"\n  in rows\n  chain 3\n  rows from chart net, 20000 times = 3 dc\nend\n"),
		"mirrors of mirrors": head + part("q0", strings.Repeat("  row: sc in each\n", 3000)) +
			strings.ReplaceAll(numbered(490, "part q# mirror of @\n  title en \"q#\" es \"q#\"\nend\n"), "part q0 mirror of q-1\n  title en \"q0\" es \"q0\"\nend\n", ""),

		"rows":       head + part("p", full("  row: sc in each = 21\n")),
		"long rows":  head + part("p", full("  row: "+times(20, "sc in next")+", sc in next\n")),
		"lets":       head + full("let x# = 1 + 2 * 3 cm\n") + part("p", ""),
		"gauges":     head + "gauge 10 cm\n" + full(" sc 10 sts, 10 rows\n") + "end\n" + part("p", ""),
		"what it is": head + full("meant OV601 en \"so\" es \"asi\"\n") + part("p", ""),
	}
}

// TestTwoMegabytesOfLines: what can be read takes more than what cannot, and still ends. On a quiet machine the worst takes four seconds of a
// processor and 440 MB, most of it for the lines themselves.
func TestTwoMegabytesOfLines(t *testing.T) {
	const most = 700 << 20
	for name, text := range bulk() {
		t.Run(name, func(t *testing.T) {
			if len(text) > lang.MostBytes {
				t.Fatalf("%d bytes are refused unread", len(text))
			}
			path := filepath.Join(t.TempDir(), "bulk.ovillo")
			put(t, path, []byte(text))
			s := run(t, nil, "check", path)
			if s.Code < 0 || s.Code > 1 || s.CPU > 4*mostTime || s.Memory > most || !strings.Contains(s.said, "bulk.ovillo") {
				t.Errorf("exit code %d after %v, %d MB: %.300s", s.Code, s.CPU, s.Memory>>20, s.said)
			}
			t.Logf("%v, %d MB: %.100s", s.CPU.Round(time.Millisecond), s.Memory>>20, s.said)
		})
	}
}
