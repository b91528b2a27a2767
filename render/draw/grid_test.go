package draw

import (
	"bytes"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/svg"
	"ovillo/render/words"
)

var endless = math.Inf(1)

func oneGrid(t *testing.T, p *plan.Pattern, i int) *scene.Scene {
	t.Helper()
	sheets := Grid(p, i, endless, endless, both...)
	require.Len(t, sheets, 1)
	return sheets[0]
}

// names are the cells of a chart by what its key calls them.
func names(p *plan.Pattern, i int, cell int) string {
	switch c := p.Charts[i]; {
	case c.Mesh.Behind > 0 && cell == 1:
		return "filled square"
	case c.Mesh.Behind > 0:
		return "open square"
	}
	return fmt.Sprintf("%s (%s)", words.YarnLetter(cell), words.YarnLetter(cell))
}

// compared says where a drawing and a chart differ; "" if they agree.
func compared(p *plan.Pattern, i int, s *scene.Scene) string {
	key, err := keyedMarks(GridKey(p, i, both...))
	if err != nil {
		return err.Error()
	}
	b, err := readGrid(s)
	if err != nil {
		return err.Error()
	}
	for r, row := range p.Charts[i].Rows {
		got := b.rows[r+1]
		if len(got) != len(row) {
			return fmt.Sprintf("row %d has %d cells, not %d", r+1, len(got), len(row))
		}
		for c, cell := range row {
			// Yarns are compared by their letters, which stand in the key behind the name.
			says, want := key[got[c]], names(p, i, cell)
			if p.Charts[i].Mesh.Behind == 0 {
				says = says[max(0, strings.LastIndexByte(says, '(')):]
				want = want[strings.LastIndexByte(want, '('):]
			}
			if says != want {
				return fmt.Sprintf("row %d, cell %d is drawn as %q, %s; it is %s", r+1, c+1, got[c], says, want)
			}
		}
	}
	return ""
}

// counted are the cells of a row by what they are.
func counted(cells []string) map[string]int {
	n := map[string]int{}
	for _, c := range cells {
		n[c]++
	}
	return n
}

// The chart, its drawing and the rows that are worked from it agree: every source's charts are read back from the drawing, in every
// size, and the stitches of each yarn in a row are those of the row as it was worked.
func TestGridsAgreeWithTheRows(t *testing.T) {
	looked, worked := 0, 0
	for name, p := range sources(t) {
		for z := range p.Sizes {
			p.Shown = z
			for i := range p.Charts {
				s := oneGrid(t, p, i)
				require.Empty(t, compared(p, i, s), "%s, chart %s", name, p.Charts[i].Name)
				looked++
				b, err := readGrid(s)
				require.NoError(t, err)
				key, err := keyedMarks(GridKey(p, i, both...))
				require.NoError(t, err)
				for _, part := range p.Parts {
					for _, r := range part.Rows() {
						worked += rowAgrees(t, p, i, part, r, z, b, key)
					}
				}
			}
		}
	}
	require.GreaterOrEqual(t, looked, 5)
	require.GreaterOrEqual(t, worked, 30, "rows compared with what was worked")
}

// rowAgrees compares a printed row with the drawing of the chart row it is worked from, where the chart makes the whole row. It
// returns how many rows it compared.
func rowAgrees(t *testing.T, p *plan.Pattern, i int, part *plan.Part, r *plan.Row, z int, b *back, key map[string]string) int {
	t.Helper()
	if r.Chart == nil || r.Chart.Chart != i || r.Chart.First != r.Chart.Last || z >= len(part.Worked) {
		return 0
	}
	at := slices.IndexFunc(part.Worked[z], func(f plan.RowFact) bool { return f.Number == r.First[z] })
	if at < 0 {
		return 0
	}
	f, cells := part.Worked[z][at], b.rows[r.Chart.First]
	drawn := counted(cells)
	if p.Charts[i].Mesh.Behind > 0 {
		times := (f.Stitches + f.Chains) / (len(cells) * (1 + p.Charts[i].Mesh.Behind))
		require.Equal(t, f.Spaces, times*drawn[""], "%s, %s row %d: open squares", p.Name, part.Name, f.Number)
		return 1
	}
	if len(r.Work) != 1 || f.Stitches%len(cells) != 0 {
		return 0 // there are stitches beside the chart
	}
	for mark, n := range drawn {
		says := key[mark]
		yarn := slices.IndexFunc([]rune("ABCDEFGHIJ"), func(l rune) bool { return strings.HasSuffix(says, "("+string(l)+")") })
		require.Equal(t, f.ByYarn.Count(yarn), n*f.Stitches/len(cells), "%s, %s row %d in %s: stitches of %s", p.Name, part.Name, f.Number, p.Sizes[z].Name, says)
	}
	return 1
}

// A drawing that says something else is found out: a mark less, a mark elsewhere, another mark, two numbers changed over.
func TestTamperedGridsAreFound(t *testing.T) {
	p := tide(9, 7)
	require.Empty(t, compared(p, 0, oneGrid(t, p, 0)))
	tampered := 0
	for k := range oneGrid(t, p, 0).Items {
		s := oneGrid(t, p, 0)
		path, ok := s.Items[k].(scene.Path)
		if !ok || path.Fill == nil || *path.Fill != black || len(path.Cmds) < 5 {
			continue
		}
		tampered++
		start := slices.IndexFunc(path.Cmds[1:], func(c page.Cmd) bool { return c.Op == 'M' }) + 1
		if start == 0 {
			start = len(path.Cmds)
		}
		less := path
		less.Cmds = path.Cmds[start:]
		s.Items[k] = less
		require.NotEmpty(t, compared(p, 0, s), "item %d without its first mark", k)
		s.Items[k] = moved(path, vec{gridCell, 0})
		require.NotEmpty(t, compared(p, 0, s), "item %d a cell further", k)
		s.Items[k] = moved(path, vec{0, gridCell})
		require.NotEmpty(t, compared(p, 0, s), "item %d a row further", k)
		s.Items[k] = moved(path, vec{0.4 * gridCell, 0})
		require.NotEmpty(t, compared(p, 0, s), "item %d over a line", k)
	}
	require.Greater(t, tampered, 10)
	s := oneGrid(t, p, 0)
	for k, it := range s.Items {
		if l, ok := it.(scene.Label); ok && l.Anchor != scene.Middle && (l.Text == "2" || l.Text == "3") {
			l.Text = map[string]string{"2": "3", "3": "2"}[l.Text]
			s.Items[k] = l
		}
	}
	require.NotEmpty(t, compared(p, 0, s))
}

// tide is a chart of eleven yarns, the rows of which are worked from the right and from the left.
func tide(wide, high int) *plan.Pattern {
	rows := make([][]int, high)
	for r := range rows {
		rows[r] = make([]int, wide)
		for c := range rows[r] {
			rows[r][c] = (c*c + 3*r + c*r) % 11
		}
	}
	p := charted(plan.Chart{Name: "tide", Rows: rows})
	p.Yarns = nil
	for i := range 11 {
		p.Yarns = append(p.Yarns, plan.Yarn{Name: fmt.Sprintf("yarn %d", i+1)})
	}
	return p
}

// Every yarn has a mark of its own, however many there are.
func TestMarksDiffer(t *testing.T) {
	p := tide(11, 11)
	key, err := keyedMarks(GridKey(p, 0, both...))
	require.NoError(t, err)
	require.Len(t, key, 11)
	require.Empty(t, compared(p, 0, oneGrid(t, p, 0)))
}

// Numbers and arrows stand where a row begins, and the mirror changes both over; the marks stay what they are.
func TestGridsInTheMirror(t *testing.T) {
	p := charted(plan.Chart{Name: "wave", Rows: [][]int{{0, 2, 2, 0}, {2, 0, 0, 2}, {0, 0, 0, 2}}})
	s := oneGrid(t, p, 0)
	b, err := readGrid(s)
	require.NoError(t, err)
	require.Equal(t, map[int]string{1: "right<", 2: "left>", 3: "right<"}, b.starts)
	require.Equal(t, []int{4, 0, 0, 1}, b.columns)
	m, err := readGrid(s.Mirrored())
	require.NoError(t, err)
	require.Equal(t, map[int]string{1: "left>", 2: "right<", 3: "left>"}, m.starts)
	require.Equal(t, []int{1, 0, 0, 4}, m.columns)
	for r, row := range b.rows {
		back := slices.Clone(m.rows[r])
		slices.Reverse(back)
		require.Equal(t, row, back)
	}
	// A file for the left hand has a key that reads from left to right, with an arrow that points as in the chart.
	left := sheetOf(t, p, "wave", FileOptions{Langs: both, Left: true})
	for _, l := range labels(left) {
		if strings.Contains(l.Text, "cells") {
			require.Equal(t, scene.Start, l.Anchor)
		}
	}
	arrows := 0
	for _, m := range figuresOf(left.Items, blackInk) {
		if m.name() == "triangle" && m.box().width() > 2 {
			require.Greater(t, m.pts[0].x, m.pts[1].x, "row 1 is read from left to right")
			arrows++
		}
	}
	require.Equal(t, 1, arrows)
	require.Contains(t, left.Desc["en-US"], "Row 1, from left to right: 1\u00a0sand, 2\u00a0foam, 1\u00a0sand.")
	require.Contains(t, left.Desc["es"], "Hilera 2, de derecha a izquierda: ")
}

// A chart that is too large for its room is cut: no sheet is larger than the room, cells are no smaller than 5 mm, beside one
// another two sheets share two columns or rows, and together they are the chart.
func TestSheetsAreTheChart(t *testing.T) {
	for _, c := range []struct {
		wide, high int
		w, h       float64
		sheets     int
	}{{20, 20, 180, 150, 1}, {27, 20, 180, 230, 1}, {40, 20, 180, 150, 2}, {20, 60, 180, 200, 2}, {60, 70, 150, 200, 6}, {13, 8, 66, 110, 2}, {400, 5, 180, 230, 13}, {100, 100, 60, 60, 196}} {
		p := tide(c.wide, c.high)
		sheets := Grid(p, 0, c.w, c.h, both...)
		require.Len(t, sheets, c.sheets, "%v", c)
		key, err := keyedMarks(GridKey(p, 0, both...))
		require.NoError(t, err)
		seen := map[[2]int]int{}
		for _, s := range sheets {
			require.LessOrEqual(t, s.W, c.w+1e-6)
			require.LessOrEqual(t, s.H, c.h+1e-6)
			b, err := readGrid(s)
			require.NoError(t, err, "%v", c)
			if c.w > 60 {
				require.GreaterOrEqual(t, b.side, gridLeast-1e-9)
			}
			require.LessOrEqual(t, b.side, gridCell+1e-9)
			k := slices.IndexFunc(b.columns, func(n int) bool { return n > 0 })
			require.GreaterOrEqual(t, k, 0, "a sheet whose columns have no number: %v", c)
			for r, row := range b.rows {
				for i, mark := range row {
					column := c.wide - (b.columns[k] + k - i) // numbered from the right
					says := key[mark]
					require.Equal(t, "("+words.YarnLetter(p.Charts[0].Rows[r-1][column])+")", says[strings.LastIndexByte(says, '('):])
					seen[[2]int{r, column}]++
				}
			}
		}
		require.Len(t, seen, c.wide*c.high)
		if c.sheets > 1 {
			twice := 0
			for _, n := range seen {
				if n > 1 {
					twice++
				}
			}
			require.Positive(t, twice)
			require.Contains(t, sheets[1].Desc["es"], fmt.Sprintf("Hoja 2 de %d.", c.sheets))
		}
	}
	for _, p := range []*plan.Pattern{{}, charted(plan.Chart{}), charted(plan.Chart{Rows: [][]int{{}}})} {
		require.Empty(t, Grid(p, 0, 80, 80, both...))
	}
	require.Empty(t, Grid(tide(3, 3), 1, 80, 80))
	require.Empty(t, Grid(tide(3, 3), 0, 0, 80))
}

// In any room there is a drawing that keeps to it, or none, and its rows can be read back.
func TestGridsKeepToTheirRoom(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := tide(rapid.IntRange(1, 70).Draw(t, "wide"), rapid.IntRange(1, 70).Draw(t, "high"))
		w, h := rapid.Float64Range(0, 400).Draw(t, "w"), rapid.Float64Range(0, 400).Draw(t, "h")
		for _, s := range Grid(p, 0, w, h, both...) {
			require.LessOrEqual(t, s.H, h+1e-6)
			require.LessOrEqual(t, s.W, max(w, 40)+1e-6) // the plan of sheets takes what it needs
			if _, err := readGrid(s); err != nil {
				t.Fatalf("%v by %v: %v", w, h, err)
			}
		}
	})
}

// Spans are as few as have room and as long as each other.
func TestSpans(t *testing.T) {
	for n := 1; n < 120; n++ {
		for most := gridFewest; most < 60; most++ {
			spans := gridSpans(n, gridLeast*float64(most))
			require.Equal(t, 0, spans[0].from)
			require.Equal(t, n, spans[len(spans)-1].to)
			for i, s := range spans {
				require.LessOrEqual(t, s.to-s.from, max(most, gridFewest))
				if i > 0 {
					require.GreaterOrEqual(t, spans[i-1].to-s.from, gridOverlap, "%d cells, %d a sheet: %v", n, most, spans)
					require.Greater(t, s.from, spans[i-1].from)
				}
			}
			if fewer := len(spans) - 1; fewer > 0 {
				require.Less(t, fewer*most-gridOverlap*(fewer-1), n, "fewer sheets would do")
			}
		}
	}
}

// The marks are black on tints so light that the contrast is over twelve, where 3 to 1 is asked of what tells something (WCAG 2.2,
// 1.4.11), and the tints lie between 0.75 and 0.88 of white, apart from paper and apart from their neighbours in the list.
func TestTints(t *testing.T) {
	linear := func(v float64) float64 {
		if v <= 0.04045 {
			return v / 12.92
		}
		return math.Pow((v+0.055)/1.055, 2.4)
	}
	light := func(c page.Color) float64 { return 0.2126*linear(c[0]) + 0.7152*linear(c[1]) + 0.0722*linear(c[2]) }
	require.Len(t, gridTints, int(letterLook)-1)
	for i, c := range gridTints {
		require.Equal(t, c[0], c[1])
		require.Equal(t, c[1], c[2])
		require.GreaterOrEqual(t, c[0], 0.75)
		require.LessOrEqual(t, c[0], 0.88)
		require.GreaterOrEqual(t, (light(c)+0.05)/0.05, 11.0, "black on a tint")
		if i > 0 {
			require.GreaterOrEqual(t, math.Abs(c[0]-gridTints[i-1][0]), 0.03-1e-9)
		}
	}
	// A tint stands under all the cells of its yarn and under no other.
	p := tide(11, 9)
	s := oneGrid(t, p, 0)
	for _, it := range s.Items {
		path, ok := it.(scene.Path)
		if !ok || path.Fill == nil || *path.Fill == black {
			continue
		}
		k := slices.Index(gridTints, *path.Fill)
		require.GreaterOrEqual(t, k, 0)
		cells := 0.0
		for _, sh := range figuresOf([]scene.Item{path}, func(scene.Path) bool { return true }) {
			b := sh.box()
			cells += b.width() * b.height() / gridCell / gridCell
		}
		n := 0
		for _, row := range p.Charts[0].Rows {
			for _, c := range row {
				if c == k+1 {
					n++
				}
			}
		}
		require.InDelta(t, n, cells, 1e-6, "tint %d", k)
	}
	// With little ink they are gone, and no mark is.
	low := s.LowInk()
	for _, it := range low.Items {
		if path, ok := it.(scene.Path); ok && path.Fill != nil {
			require.True(t, *path.Fill == black || *path.Fill == white)
		}
	}
}

// The frame is heavy where rows work the chart more than once, and the key says how often where every size has the same.
func TestRepeatsAreFramed(t *testing.T) {
	for _, c := range []struct {
		cells  [][]int // of each row, in each size
		heavy  bool
		es, en string
	}{
		{[][]int{{4, 4}, {4, 4}}, false, "", ""},
		{[][]int{{12, 12}, {12, 12}}, true, "se teje 3 veces seguidas", "it is worked 3 times one after the other"},
		{[][]int{{8, 12}, {8, 12}}, true, "se teje una y otra vez", "it is worked over and over"},
		{[][]int{{10, 10}, {10, 10}}, true, "se teje una y otra vez", "it is worked over and over"},
		{nil, false, "", ""},
	} {
		p := charted(plan.Chart{Name: "wave", Rows: [][]int{{0, 2, 2, 0}, {2, 0, 0, 2}}})
		p.Sizes = []plan.Size{{Name: "S"}, {Name: "M"}}
		for k, r := range p.Parts[0].Rows() {
			if c.cells != nil {
				r.Work = []plan.Instr{{Op: plan.Repeat, Cells: c.cells[k], N: plan.Nums{1, 1}}}
			}
		}
		b, err := readGrid(oneGrid(t, p, 0))
		require.NoError(t, err)
		require.Equal(t, c.heavy, b.heavy)
		key := GridKey(p, 0, both...)
		last := key[len(key)-1]
		require.Equal(t, c.heavy, strings.HasPrefix(last.Says["es"], "marco grueso: "))
		require.Contains(t, last.Says["es"], c.es)
		require.Contains(t, last.Says["en-US"], c.en)
	}
	_, repeats := timesOf(sources(t)["filet"], 0)
	require.False(t, repeats, "the filet panel is as wide as its chart")
}

func leaf() *plan.Pattern {
	return charted(plan.Chart{Name: "leaf", Mesh: plan.Mesh{Form: stitch.Form{ID: stitch.DC, Together: 1}, Behind: 2}, Rows: [][]int{{0, 1, 1}, {0, 0, 1}}})
}

// What a chart of squares says of itself.
func TestGridOfSquares(t *testing.T) {
	p := leaf()
	require.Empty(t, compared(p, 0, oneGrid(t, p, 0)))
	require.Equal(t, []string{"Row 1, from right to left: 2\u00a0filled, 1\u00a0open.", "Row 2, from left to right: 2\u00a0open, 1\u00a0filled."}, GridRows(p, 0, both[0]))
	require.Equal(t, []string{"Hilera 1, de derecha a izquierda: 2\u00a0llenos, 1\u00a0abierto.", "Hilera 2, de izquierda a derecha: 2\u00a0abiertos, 1\u00a0lleno."}, GridRows(p, 0, both[1]))
	key := GridKey(p, 0, both...)
	require.Equal(t, "open square: 3 of 6 cells", key[0].Says["en-US"])
	require.Equal(t, "cuadro lleno: 3 de 6 casillas", key[1].Says["es"])
}

// Each row of a chart is a group of its drawing, under what it says.
func TestRowsAreGroups(t *testing.T) {
	p := tide(5, 4)
	s := oneGrid(t, p, 0)
	require.Len(t, s.Groups, 4)
	for i, g := range s.Groups {
		require.Equal(t, GridRows(p, 0, both[0])[i], g.Name+".")
		require.Less(t, g.From, g.To)
		if i > 0 {
			require.Equal(t, s.Groups[i-1].To, g.From)
		}
	}
}

// A grid of 400 by 400 cells takes items by its rows and kinds of mark, not by its cells, and a file of bounded size.
func TestLargeGrid(t *testing.T) {
	p := tide(400, 400)
	s := oneGrid(t, p, 0)
	labels := len(labels(s))
	require.LessOrEqual(t, len(s.Items)-labels, 400*(11+2)+20)
	var b bytes.Buffer
	require.NoError(t, svg.Write(&b, s))
	require.Less(t, b.Len(), 100*400*400)
	require.Empty(t, compared(p, 0, s))
}

func BenchmarkGrid400(b *testing.B) {
	p := tide(400, 400)
	b.Run("draw", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			Grid(p, 0, endless, endless, both...)
		}
	})
	b.Run("svg", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			var w bytes.Buffer
			if err := svg.Write(&w, Grid(p, 0, endless, endless, both...)[0]); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("sheets", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			Grid(p, 0, 180, 230, both...)
		}
	})
}

// charted is a pattern whose part works the rows of a chart, the second of them from the left.
func charted(c plan.Chart) *plan.Pattern {
	one := plan.Nums{1}
	row := func(n int, read plan.Reading) *plan.Row {
		return &plan.Row{First: one, Last: one, Times: one, Chart: &plan.ChartRow{First: n, Last: n, Read: read}}
	}
	return &plan.Pattern{
		Sizes: []plan.Size{{Name: "one"}}, Yarns: []plan.Yarn{{Name: "sand"}, {Name: "kelp"}, {Name: "foam"}}, Charts: []plan.Chart{c},
		Parts: []*plan.Part{{Name: "band", Steps: []plan.Step{row(1, plan.FromRight), &plan.Block{Rows: []*plan.Row{row(2, plan.FromLeft)}}}}},
	}
}

// areasOf counts the filled outlines of a drawing, and its labels by their text and side.
