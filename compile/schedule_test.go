package compile_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// failer is a test or one case of a property.
type failer interface {
	Helper()
	Fatalf(string, ...any)
}

// clean reads and checks a source that must have no errors.
func clean(t failer, text string) *plan.Pattern {
	t.Helper()
	sf := source.NewFile("drawn.ovillo", text)
	f, list := lang.Parse(sf)
	p, more := compile.Compile(f)
	if list = append(list, more...); list.HasErrors() {
		var b bytes.Buffer
		diag.Text(&b, sf, list, "en", false)
		t.Fatalf("%s\n%s", text, b.String())
	}
	return p
}

// piece is a source of one part in one size.
func piece(style, start, lines string) string {
	return fmt.Sprintf("sizes \"one\"\nend\n\npart piece\n  title en \"Piece\" es \"Pieza\"\n  base sc\n  in %s\n  %s\n%s\n  fasten off\nend\n", style, start, lines)
}

// stitchesOf lists the stitches of every row of the first part, in one size.
func stitchesOf(p *plan.Pattern, part, z int) []int {
	var out []int
	for _, f := range p.Parts[part].Worked[z] {
		out = append(out, f.Stitches)
	}
	return out
}

// A schedule with given intervals makes the rows that a maker would count off by hand.
func TestGivenSchedule(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, x := rapid.IntRange(1, 6).Draw(t, "every"), rapid.IntRange(0, 5).Draw(t, "times")
		b, y := rapid.IntRange(1, 6).Draw(t, "then every"), rapid.IntRange(0, 5).Draw(t, "times")
		rest := rapid.IntRange(0, 4).Draw(t, "rest")
		total := a*x + b*y + rest
		if total == 0 {
			t.Skip("no rows")
		}
		start := 2*(x+y) + rapid.IntRange(2, 6).Draw(t, "stitches")
		var want []int
		sts := start
		plain := func(n int) {
			for range n {
				want = append(want, sts)
			}
		}
		for range x {
			plain(a - 1)
			sts -= 2
			plain(1)
		}
		for range y {
			plain(b - 1)
			sts -= 2
			plain(1)
		}
		plain(rest)
		p := clean(t, piece("joined rounds", fmt.Sprintf("chain %d, join", start), fmt.Sprintf(`  shape taper: %d rounds
    plain:   sc in each
    shaping: dec, sc to last 2, dec
    every %d rounds %d times, then every %d rounds %d times
  end = %d`, total, a, x, b, y, sts)))
		if got := stitchesOf(p, 0, 0); fmt.Sprint(got) != fmt.Sprint(want) {
			t.Fatalf("%v, want %v", got, want)
		}
	})
}

// A schedule on listed rows is shaped on those and on no other.
func TestListedSchedule(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		total := rapid.IntRange(1, 20).Draw(t, "rows")
		var rows []string
		sts := 8
		var want []int
		for r := 1; r <= total; r++ {
			if rapid.Bool().Draw(t, "shaped") {
				rows = append(rows, fmt.Sprint(r))
				sts += 2
			}
			want = append(want, sts)
		}
		if len(rows) == 0 {
			t.Skip("nothing is shaped")
		}
		p := clean(t, piece("joined rounds", "chain 8, join", fmt.Sprintf(`  shape wide: %d rounds
    plain:   sc in each
    shaping: inc, sc to last, inc
    on rounds %s
  end = %d`, total, strings.Join(rows, ", "), sts)))
		if got := stitchesOf(p, 0, 0); fmt.Sprint(got) != fmt.Sprint(want) {
			t.Fatalf("%v, want %v", got, want)
		}
	})
}

// A schedule that is solved ends at its count, in its rows; its intervals are two neighbours, the longer ones first; on
// right-side rows they are even and every shaped row shows the right side.
func TestSolvedSchedule(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k, right := rapid.IntRange(1, 8).Draw(t, "shaped rows"), rapid.Bool().Draw(t, "right side")
		step, opt, first := 1, "", ""
		if right {
			step, opt, first = 2, ", on right-side rows", "row 1 is wrong side\n  "
		}
		total := k*step + rapid.IntRange(0, 20).Draw(t, "more rows")
		top := 2*k + 4
		p := clean(t, piece("rows", first+fmt.Sprintf("chain %d", top), fmt.Sprintf(`  shape taper: %d rows, %d to 4%s
    plain:   sc in each
    shaping: dec, sc to last 2, dec
  end = 4`, total, top, opt)))
		facts := p.Parts[0].Worked[0]
		if len(facts) != total {
			t.Fatalf("%d rows, want %d", len(facts), total)
		}
		var gaps []int
		last, sts := 0, top
		for _, f := range facts {
			if f.Stitches == sts {
				continue
			}
			if right && f.Wrong {
				t.Fatalf("row %d is shaped and shows the wrong side", f.Number)
			}
			gaps = append(gaps, f.Number-last)
			last, sts = f.Number, f.Stitches
		}
		if len(gaps) != k {
			t.Fatalf("%d rows are shaped, want %d", len(gaps), k)
		}
		for i, g := range gaps {
			switch {
			case g%step != 0:
				t.Fatalf("an interval of %d rows", g)
			case g != gaps[0] && g != gaps[0]-step, i > 0 && g > gaps[i-1]:
				t.Fatalf("intervals %v are not two neighbours, the longer ones first", gaps)
			}
		}
	})
}

// Two schedules merged row by row shape exactly as they would apart.
func TestMergedSchedules(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		total := rapid.IntRange(1, 24).Draw(t, "rows")
		type edge struct{ first, every, times int }
		draw := func() edge {
			e := edge{rapid.IntRange(1, total).Draw(t, "first"), rapid.IntRange(1, 5).Draw(t, "every"), 1}
			e.times = rapid.IntRange(1, 1+(total-e.first)/e.every).Draw(t, "times")
			return e
		}
		a, b := draw(), draw()
		hits := func(e edge, row int) int {
			if d := row - e.first; d >= 0 && d%e.every == 0 && d/e.every < e.times {
				return 1
			}
			return 0
		}
		var want []int
		sts := 60
		for r := 1; r <= total; r++ {
			sts -= hits(a, r) + hits(b, r)
			want = append(want, sts)
		}
		p := clean(t, piece("rows", "edges armhole, neck\n  chain 60", fmt.Sprintf(`  shape v: %d rows
    plain: sc in each
    at armhole: dec on row %d, then every %d rows, %d times in all
    at neck: dec on row %d, then every %d rows, %d times in all
  end = %d`, total, a.first, a.every, a.times, b.first, b.every, b.times, sts)))
		if got := stitchesOf(p, 0, 0); fmt.Sprint(got) != fmt.Sprint(want) {
			t.Fatalf("%v, want %v", got, want)
		}
	})
}
