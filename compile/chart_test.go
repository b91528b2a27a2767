package compile_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/plan"
)

// drawnChart is a part worked from a chart of two yarns, in two sizes: plain rows first, and some stitches beside the chart.
type drawnChart struct {
	cells          [][]int // from the bottom, each from the left: 0 sand, 1 kelp
	style, stitch  string
	firstWrong     bool
	plain          []int // plain rows before, per size
	wide           []int // stitches by the chart, per size
	before, behind int   // in sand, before the chart and behind it
	where          string
	from           []int // the column at the right end, per size
	first, last    int   // rows of the chart
	times          []int
}

const chartHead = `sizes "a", "b"
end

yarn sand
  name en "sand" es "arena"
end
yarn kelp like sand
  name en "kelp" es "alga"
end

`

func drawChart(t *rapid.T) *drawnChart {
	d := &drawnChart{stitch: rapid.SampledFrom([]string{"sc", "dc"}).Draw(t, "stitch")}
	w, h := rapid.IntRange(1, 6).Draw(t, "width"), rapid.IntRange(1, 4).Draw(t, "height")
	for range h {
		d.cells = append(d.cells, rapid.SliceOfN(rapid.IntRange(0, 1), w, w).Draw(t, "cells"))
	}
	d.style = rapid.SampledFrom([]string{"in rows", "in joined rounds", "in joined rounds, turned"}).Draw(t, "style")
	d.firstWrong = d.style != "in joined rounds" && rapid.Bool().Draw(t, "wrong side first")
	d.before, d.behind = rapid.IntRange(0, 2).Draw(t, "before"), rapid.IntRange(0, 2).Draw(t, "behind")
	how := rapid.SampledFrom([]string{"", "centred ", "from"}).Draw(t, "how")
	for range 2 {
		reps, more, from := rapid.IntRange(1, 4).Draw(t, "repeats"), 0, 0
		n := reps * w
		switch how {
		case "centred ":
			if more = rapid.IntRange(0, 5).Draw(t, "more"); n-w+2*more < 0 {
				more = 0
			}
			n = w + 2*more
			from = ((w-n)/2%w + w) % w
		case "from":
			from = rapid.IntRange(0, w-1).Draw(t, "from")
			n += rapid.IntRange(0, w-1).Draw(t, "more")
		}
		d.wide, d.from = append(d.wide, n), append(d.from, from)
		d.plain = append(d.plain, rapid.IntRange(1, 2).Draw(t, "plain rows"))
		d.times = append(d.times, rapid.IntRange(1, 3).Draw(t, "times"))
	}
	d.where = how
	if how == "from" {
		d.where = fmt.Sprintf("from column %d (%d) ", d.from[0]+1, d.from[1]+1)
	}
	d.first, d.last = rapid.IntRange(1, h).Draw(t, "from row"), rapid.IntRange(1, h).Draw(t, "to row")
	return d
}

// source is the part as a designer writes it, and its mirror image.
func (d *drawnChart) source() string {
	var b strings.Builder
	b.WriteString(chartHead + "chart grid\n  legend \".\" sand, \"x\" kelp\n")
	for r := len(d.cells) - 1; r >= 0; r-- {
		fmt.Fprintf(&b, "  %d | ", r+1)
		for _, c := range d.cells[r] {
			b.WriteString([]string{". ", "x "}[c])
		}
		b.WriteString("\n")
	}
	sts := []int{d.before + d.wide[0] + d.behind, d.before + d.wide[1] + d.behind}
	word, join := "round", ", join"
	if d.style == "in rows" {
		word, join = "row", ""
	}
	fmt.Fprintf(&b, "end\n\npart piece\n  title en \"P\" es \"P\"\n  yarn sand\n  %s\n", d.style)
	if d.firstWrong {
		b.WriteString("  row 1 is wrong side\n")
	}
	fmt.Fprintf(&b, "  chain %d (%d)%s\n  %d (%d) %ss: %s in each = %d (%d)\n", sts[0], sts[1], join, d.plain[0], d.plain[1], word, d.stitch, sts[0], sts[1])
	list := []string{fmt.Sprintf("%s by chart %sto last %d", d.stitch, d.where, d.behind)}
	if d.before > 0 {
		list = slices.Insert(list, 0, fmt.Sprintf("%s in next %d", d.stitch, d.before))
	}
	if d.behind > 0 {
		list = append(list, fmt.Sprintf("%s in next %d", d.stitch, d.behind))
	}
	fmt.Fprintf(&b, "  %ss from chart grid, rows %d to %d, %d (%d) times: %s = %d (%d)\nend\n", word, d.first, d.last, d.times[0], d.times[1],
		strings.Join(list, ", "), sts[0], sts[1])
	if d.style == "in rows" {
		b.WriteString(mirrorPart("other", "piece"))
	}
	return b.String()
}

// rows are the yarns of every row by the chart in one size, stitch by stitch as it is worked.
func (d *drawnChart) rows(z int) [][]int {
	var seq []int
	for r := d.first; ; {
		seq = append(seq, r)
		if r == d.last {
			break
		}
		if r < d.last {
			r++
		} else {
			r--
		}
	}
	var out [][]int
	wrong := d.firstWrong
	if d.style != "in joined rounds" {
		wrong = wrong != (d.plain[z]%2 == 1)
	}
	for range d.times[z] {
		for _, r := range seq {
			cells := d.cells[r-1]
			w := len(cells)
			var row []int
			for i := range d.wide[z] {
				// Column i of the stretch, counted from its right end as the right side looks.
				row = append(row, cells[w-1-(d.from[z]+i)%w])
			}
			if wrong {
				slices.Reverse(row)
			}
			if n := len(row); wrong && n > 1 && d.style == "in joined rounds, turned" && d.before+d.behind == 0 {
				row = append(row[n-1:n:n], row[:n-1]...) // the stitch over the join comes first, from either side
			}
			row = append(make([]int, d.before), row...)
			out = append(out, append(row, make([]int, d.behind)...))
			if d.style != "in joined rounds" {
				wrong = !wrong
			}
		}
	}
	return out
}

// yarnsOf reads off the yarns of a printed row, stitch by stitch.
func yarnsOf(row *plan.Row, z int) []int {
	var out []int
	if row.Begin.Counts {
		first := row.Yarn
		if row.Begin.OtherYarn {
			first = row.Begin.Yarn
		}
		out = append(out, first)
	}
	return append(out, yarnsIn(row.Work, z, row.Yarn)...)
}

func yarnsIn(work []plan.Instr, z, hand int) []int {
	var out []int
	for _, in := range work {
		n := at(in.N, z, 1)
		switch in.Op {
		case plan.Repeat:
			for range n {
				out = append(out, yarnsIn(in.Body, z, hand)...)
			}
		case plan.Work:
			yarn := hand
			if in.Yarn >= 0 {
				yarn = in.Yarn
			}
			out = append(out, slices.Repeat([]int{yarn}, n)...)
		}
	}
	return out
}

// Every row that is printed from a chart has the yarns of the grid, read from the right where the right side faces and from the
// left where the wrong side does, in every size; it says which row of the chart it is and how that is read; a mirrored part has
// each row the other way round; and the stitches of all yarns are the stitches of the row.
func TestChartLaw(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawChart(t)
		text := d.source()
		t.Log(text)
		p := clean(t, text)
		for z := range p.Sizes {
			page, want := pageOf(p.Parts[0], z), d.rows(z)
			for i, yarns := range want {
				number := d.plain[z] + 1 + i
				row := page[number]
				if row == nil {
					t.Fatalf("row %d of size %d does not print", number, z)
				}
				if got := yarnsOf(row, z); !slices.Equal(got, yarns) {
					t.Fatalf("size %d, row %d: the page makes %v, the chart says %v", z, number, got, yarns)
				}
				f := factOf(p.Parts[0], z, number)
				if f.ByYarn.Count(0)+f.ByYarn.Count(1) != f.Stitches || f.Stitches != len(yarns) {
					t.Fatalf("size %d, row %d: %v of %d stitches in the yarns", z, number, f.ByYarn, f.Stitches)
				}
				read := plan.FromRight
				if f.Wrong {
					read = plan.FromLeft
				}
				if c := row.Chart; c == nil || c.Read != read && c.Read != plan.EitherWay {
					t.Fatalf("size %d, row %d: the page says to read %v", z, number, c)
				}
				if d.style == "in rows" {
					slices.Reverse(yarns)
					if got := yarnsOf(pageOf(p.Parts[1], z)[number], z); !slices.Equal(got, yarns) {
						t.Fatalf("size %d, row %d of the mirror: %v, want %v", z, number, got, yarns)
					}
				}
			}
			if n := d.plain[z] + len(want); len(p.Parts[0].Worked[z]) != n {
				t.Fatalf("size %d works %d rows, want %d", z, len(p.Parts[0].Worked[z]), n)
			}
		}
		checkPage(t, p)
	})
}

// A filet chart drawn at random makes, in every row, its stitches and spaces over an edge that never grows; the page says so
// square by square.
func TestMeshLaw(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, h := rapid.IntRange(1, 5).Draw(t, "width"), rapid.IntRange(1, 5).Draw(t, "height")
		k := rapid.IntRange(1, 3).Draw(t, "behind")
		reps := []int{rapid.IntRange(1, 3).Draw(t, "repeats"), rapid.IntRange(1, 3).Draw(t, "repeats")}
		rounds := rapid.Bool().Draw(t, "rounds")
		var cells [][]int
		var lines []string
		for r := range h {
			row := rapid.SliceOfN(rapid.IntRange(0, 1), w, w).Draw(t, "squares")
			line := fmt.Sprintf("  %d |", r+1)
			for _, c := range row {
				line += []string{" .", " x"}[c]
			}
			cells, lines = append(cells, row), append(lines, line)
		}
		slices.Reverse(lines)
		word, join, ends := "row", "", 1
		if rounds {
			word, join, ends = "round", ", join", 0
		}
		places := []int{reps[0]*w*(k+1) + ends, reps[1]*w*(k+1) + ends}
		start := fmt.Sprintf("  chain %d (%d)%s\n", places[0], places[1], join)
		plain := rapid.IntRange(0, 1).Draw(t, "plain rows")
		if rounds {
			plain = 1
		}
		if plain > 0 {
			start += fmt.Sprintf("  %s: dc in each = %d (%d)\n", word, places[0], places[1])
		}
		text := "sizes \"a\", \"b\"\nend\n\nchart net\n  mesh dc and " + fmt.Sprint(k) + "\n  legend \".\" open, \"x\" filled\n" + strings.Join(lines, "\n") +
			"\nend\n\npart piece\n  title en \"P\" es \"P\"\n  in " + map[bool]string{true: "joined rounds", false: "rows"}[rounds] + "\n" + start +
			fmt.Sprintf("  %ss from chart net, 2 times = %d (%d) sts and chains\nend\n", word, places[0], places[1])
		t.Log(text)
		p := clean(t, text)
		for z := range p.Sizes {
			for i := range 2 * h {
				f := factOf(p.Parts[0], z, plain+1+i)
				filled := 0
				for _, c := range cells[i%h] {
					filled += c * reps[z]
				}
				squares := w * reps[z]
				if f.Stitches != squares+ends+k*filled || f.Spaces != squares-filled || f.Stitches+f.Chains != places[z] {
					t.Fatalf("size %d, row %d: %d stitches, %d spaces, %d chains for %d filled squares of %d", z, f.Number, f.Stitches, f.Spaces, f.Chains, filled, squares)
				}
			}
		}
		if read := checkPage(t, p); read < len(p.Sizes) {
			t.Fatalf("only %d rows could be read", read)
		}
	})
}
