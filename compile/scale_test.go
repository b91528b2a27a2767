package compile_test

import (
	"fmt"
	"runtime/debug"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// Invented sources, larger than anything that is worn or laid over a bed, for what a check costs.

// sized is the head of a source of so many sizes.
func sized(kind string, sizes int) string {
	names := make([]string, sizes)
	for i := range names {
		names[i] = fmt.Sprintf("%q", fmt.Sprint(i+1))
	}
	return "pattern large\n  title en \"Large\" es \"Grande\"\n  kind " + kind + "\n  terms us\n  base sc\nend\n\nsizes " + strings.Join(names, ", ") + "\nend\n\n" +
		"gauge 10 cm, blocked\n  sc 20 sts, 24 rows\nend\nhook 4 mm\n\n"
}

// stepped is a number for each size, from one up in steps.
func stepped(from, step, sizes int) string {
	var more []string
	for i := 1; i < sizes; i++ {
		more = append(more, fmt.Sprint(from+i*step))
	}
	return fmt.Sprintf("%d (%s)", from, strings.Join(more, ", "))
}

// hugeBlanket is 2,000 stitches wide and 2,000 rows high in the smallest of ten sizes.
func hugeBlanket() string {
	return sized("blanket", 10) + "let wide = " + stepped(2000, 10, 10) + "\n\npart blanket\n  in rows\n  chain wide\n  2000 rows: sc in each = wide\nend\n"
}

// texturedBlanket is as large, in a stitch pattern of four rows.
func texturedBlanket() string {
	return sized("blanket", 10) + "let wide = " + stepped(2000, 12, 10) + `

stitch pattern waves
  multiple of 4
  row 1: sc in each
  row 2: [sc in next 2, dc in next 2] across
  row 3: sc in each
  row 4: [dc in next 2, sc in next 2] across
end

part blanket
  in rows
  chain wide
  row: sc in each = wide
  2000 rows of waves = wide
end
`
}

// yokedPullover has 20,000 stitches and more in each of twelve sizes: a raglan from the neck down, with increases in most rounds of the
// yoke.
func yokedPullover() string {
	return sized("pullover", 12) + "let neck_half = " + stepped(44, 2, 12) + `
let neck_arm  = 20
let fast      = 10
let slow      = 10
let under     = 4
let half      = neck_half + 2 * (fast + slow)
let arm       = neck_arm + 2 * (fast + slow)

part yoke
  in joined rounds
  foundation sc 2 * (neck_half + neck_arm) + 4, join
  count off: neck_half, mark r1 in next, neck_arm, mark r2 in next, neck_half, mark r3 in next, neck_arm, mark r4 in next
  repeat fast times
    round: [sc to marker, 3 sc in marker, move marker to the middle one] 4 times, sc to end
  end                             = + 8 each time
  repeat slow times
    round: sc in each
    round: [sc to marker, 3 sc in marker, move marker to the middle one] 4 times, sc to end
  end                             = 2 * (half + arm) + 4
  round divide:
    sc to r1, sc in r1, ch under as under_1, skip to r2 as sleeve_1 = arm,
    sc in r2, sc to r3, sc in r3, ch under as under_2, skip to r4 as sleeve_2 = arm, sc in r4, sc to end
                                  = 2 * half + 4 sc, 2 spaces
  round: sc in each st and chain  = 2 * half + 4 + 2 * under
  50 rounds: sc in each           = 2 * half + 4 + 2 * under
  fasten off
end

part right_sleeve
  in joined rounds
  from below yoke.under_1, yoke.sleeve_1
  round first: sc in each = under + arm
  shape taper: 40 rounds
    plain:   sc in each
    shaping: sc in next, dec, sc to last 3, dec, sc in last
    every 5 rounds 5 times
  end                     = arm + under - 10
  fasten off
end

part left_sleeve like right_sleeve
  from below yoke.under_2, yoke.sleeve_2
end
`
}

// manyLines is a source of so many lines: parts of two hundred rows each, every one of which is worked, since each has a line of its own.
func manyLines(lines int) string {
	b := strings.Builder{}
	b.WriteString(sized("blanket", 2))
	for part := 0; part*204 < lines; part++ {
		fmt.Fprintf(&b, "part strip_%d\n  in rows\n  chain 8\n", part)
		for range 100 {
			b.WriteString("  row: sc in each\n  row: dc in each\n")
		}
		b.WriteString("end\n")
	}
	return b.String()
}

// large are the sources, and how many stitches each has at least in every size.
var large = []struct {
	name     string
	text     string
	stitches int
	rows     int
}{
	{"blanket", hugeBlanket(), 2000 * 2000, 2000},
	{"textured", texturedBlanket(), 2000 * 2000, 2001},
	{"pullover", yokedPullover(), 20_000, 83 + 2*41}, // the foundation, 10 and 20 rounds of the yoke, 2 to divide it, 50 of the body; two sleeves
}

// TestLarge: sources of millions of stitches check, and every row of theirs is counted.
func TestLarge(t *testing.T) {
	for _, l := range large {
		f, found := lang.Parse(source.NewFile(l.name, l.text))
		require.False(t, found.HasErrors(), "%s: %v", l.name, found)
		p, list := compile.Compile(f)
		require.False(t, list.HasErrors(), "%s: %v", l.name, list)
		for z := range p.Sizes {
			stitches, rows := 0, 0
			for _, part := range p.Parts {
				for _, r := range part.Worked[z] {
					stitches += r.Stitches
					rows++
				}
			}
			require.GreaterOrEqual(t, stitches, l.stitches, "%s, size %d", l.name, z)
			require.Equal(t, l.rows, rows, l.name)
		}
	}
}

// BenchmarkLarge checks them:
//
//	go test ./compile -run xxx -bench Large -benchmem
func BenchmarkLarge(b *testing.B) {
	defer debug.SetGCPercent(debug.SetGCPercent(200)) // as the command does
	for _, l := range large {
		f, _ := lang.Parse(source.NewFile(l.name, l.text))
		b.Run(l.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				compile.Compile(f)
			}
		})
	}
}

// BenchmarkLines reads and checks sources of more and more lines: the time for one line is to stay the same.
func BenchmarkLines(b *testing.B) {
	for _, lines := range []int{1_000, 10_000, 100_000} {
		text := manyLines(lines)
		b.Run(fmt.Sprint(lines), func(b *testing.B) {
			for b.Loop() {
				f, found := lang.Parse(source.NewFile("lines", text))
				if found.HasErrors() {
					b.Fatal(found)
				}
				if _, list := compile.Compile(f); list.HasErrors() {
					b.Fatal(list[len(list)-1])
				}
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/float64(lines), "ns/line")
		})
	}
}

// TestRowBound: a row may have a hundred thousand stitches, and a run of chains as many; one more is refused as that.
func TestRowBound(t *testing.T) {
	at := func(start, row string) diag.List {
		f, found := lang.Parse(source.NewFile("wide", sized("blanket", 1)+"part strip\n  in rows\n  "+start+"\n  row: "+row+"\nend\n"))
		require.False(t, found.HasErrors(), "%v", found)
		_, list := compile.Compile(f)
		return list
	}
	for _, c := range []struct {
		start, row string
		over       diag.Code
	}{
		{"chain 100000", "sc in each", ""},
		{"chain 100001", "sc in each", "OV440"},
		{"chain 50000", "2 sc in each", ""},
		{"chain 50000", "3 sc in next, 2 sc in each", "OV421"},
		{"chain 8", "sc in next 4, ch 100000, sc in each", ""},
		{"chain 8", "sc in next 4, ch 100001, sc in each", "OV421"},
		{"chain 8", "sc in next 4, ch 60000, ch 40001, sc in each", "OV421"},
		{"chain 8", "sc in next 4, [ch 1] 1000000000 times, sc in each", "OV421"},
	} {
		list := at(c.start, c.row)
		require.Equal(t, c.over != "", list.HasErrors(), "%s, %s: %v", c.start, c.row, list)
		i := slices.IndexFunc(list, func(d diag.Diagnostic) bool { return d.Code == c.over })
		require.Equal(t, c.over != "", i >= 0, "%s, %s: %v", c.start, c.row, list)
		if c.over == "OV421" {
			require.Equal(t, "row", list[i].Args["where"].(diag.Term).Key, "%s, %s", c.start, c.row)
		}
	}
}
