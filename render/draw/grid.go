package draw

import (
	"math"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// A grid, in millimetres.
const (
	gridCell    = 6.5  // side of a cell
	gridLegible = 2.5  // the smallest at all
	gridLeast   = 5.0  // the smallest at which it is not cut into sheets
	gridLine    = 0.18 // between cells
	gridHeavy   = 0.35 // every so many cells, and all round
	gridRepeat  = 0.75 // all round, where the rows repeat the chart
	gridEm      = 3.2  // type of the numbers
	gridDigit   = 1.65 // room for a figure of them
	gridGap     = 0.9  // from the grid to the arrow of a row, and from that to its number
	gridArrow   = 1.3
	gridBelow   = 4.6 // room for the numbers below
	gridNarrow  = 2.0 // room at a side where nothing stands
	gridPlan    = 9.0 // room above for the plan of the sheets
	gridSoon    = 12  // cells that an eye counts without a heavier line
	gridTiny    = 1.0 // no cell is smaller
	gridFewest  = 6   // cells of a sheet, in either direction: cells are smaller rather than fewer
)

// Grid is a chart of colours or of filet as the right side looks, row 1 at the bottom, in the size that is shown. Each row has its
// number where it begins, with an arrow that points the way it is read; stitches are numbered below from where row 1 begins. Cells
// have marks that need no colour, and tints that tell nothing by themselves. It is drawn on as many sheets as it needs, none wider
// than w or taller than h: one, if cells of 5 mm have room; with w and h infinite one at its natural size. Two sheets beside each
// other share two columns or rows. What the marks are says [GridKey]. nil if there is no such chart, or no room for one.
func Grid(p *plan.Pattern, i int, w, h float64, langs ...*words.Language) []*scene.Scene {
	g := gridOf(p, i)
	if g == nil || !(w > 0 && h > 0) {
		return nil
	}
	across, down := g.cut(w, h)
	n := len(across) * len(down)
	room := vec{g.room(w, across, g.sides().x), g.room(h, down, g.sides().y+planRoom(n))}
	side := min(gridCell, room.x, room.y)
	if side < gridLegible {
		return nil // in so little room nothing could be told apart
	}
	if side < gridTiny {
		return nil
	}
	var out []*scene.Scene
	for d, rows := range down {
		for a, columns := range across {
			t := gridSheet{grid: g, columns: columns, rows: rows, at: [2]int{a, d}, of: [2]int{len(across), len(down)}, side: side}
			s := t.draw(langs)
			g.say(s, &t, langs)
			out = append(out, s)
		}
	}
	return out
}

// grid is a chart and how its rows are worked.
type grid struct {
	p          *plan.Pattern
	chart      int
	rows       [][]int // from the bottom, each from the left
	wide, high int
	mesh       bool
	yarns      []int // those of the chart, in the order of their letters; of a mesh open and filled
	left       []bool
	right      []bool // whether a row begins at that side, by its index
	fromLeft   bool   // columns are numbered from the left
	times      int    // how often the rows work the chart in every size, one after the other; 0: not known, or not alike
	repeats    bool
}

func gridOf(p *plan.Pattern, i int) *grid {
	if i < 0 || i >= len(p.Charts) || len(p.Charts[i].Rows) == 0 || len(p.Charts[i].Rows[0]) == 0 {
		return nil
	}
	c := p.Charts[i]
	g := &grid{p: p, chart: i, rows: c.Rows, wide: len(c.Rows[0]), high: len(c.Rows), mesh: c.Mesh.Behind > 0, yarns: yarnsOf(c)}
	if g.mesh {
		g.yarns = []int{0, 1}
	}
	g.read()
	return g
}

// read finds out at which side each row begins. One that nobody works, or that is read either way, begins at the right.
func (g *grid) read() {
	g.left, g.right = make([]bool, g.high), make([]bool, g.high)
	eachChartRow(g.p, func(c *plan.ChartRow) {
		for r := min(c.First, c.Last); c.Chart == g.chart && r >= 1 && r <= max(c.First, c.Last) && r <= g.high; r++ {
			g.left[r-1] = g.left[r-1] || c.Read == plan.FromLeft
			g.right[r-1] = g.right[r-1] || c.Read != plan.FromLeft
		}
	})
	for r := range g.high {
		g.right[r] = g.right[r] || !g.left[r]
	}
	g.fromLeft = !g.right[0]
	g.times, g.repeats = timesOf(g.p, g.chart)
}

// sides is the room beside and below the cells.
func (g *grid) sides() vec {
	x := 0.0
	for _, side := range [][]bool{g.left, g.right} {
		x += g.beside(side)
	}
	return vec{x, gridRepeat + gridBelow}
}

// beside is the room at a side at which some rows begin.
func (g *grid) beside(begins []bool) float64 {
	for r := g.high - 1; r >= 0; r-- {
		if begins[r] {
			return gridRepeat/2 + gridGap + gridArrow + gridGap + gridDigit*float64(len(strconv.Itoa(r+1)))
		}
	}
	return gridNarrow
}

func planRoom(sheets int) float64 {
	if sheets > 1 {
		return gridPlan
	}
	return 0
}

// gridSpan is cells from one to another, which is not in it.
type gridSpan struct{ from, to int }

// overlapping cells stand on both of two sheets.
const gridOverlap = 2

// cut says which columns and rows stand on which sheet, the columns from the left and the rows from the top.
func (g *grid) cut(w, h float64) (across, down []gridSpan) {
	whole := func(planned float64) bool {
		return gridLeast*float64(g.wide) <= w-g.sides().x+1e-9 && gridLeast*float64(g.high) <= h-g.sides().y-planned+1e-9
	}
	if whole(0) {
		return []gridSpan{{0, g.wide}}, []gridSpan{{0, g.high}}
	}
	across = gridSpans(g.wide, w-g.sides().x)
	rows := gridSpans(g.high, h-g.sides().y-gridPlan)
	for k := range rows {
		s := rows[len(rows)-1-k] // rows are counted from the bottom
		down = append(down, s)
	}
	return across, down
}

// gridSpans cuts n cells into as few stretches as have room, all as long as each other.
func gridSpans(n int, room float64) []gridSpan {
	most := n
	if room < gridLeast*float64(n) {
		most = max(int(math.Floor(room/gridLeast+1e-9)), gridFewest)
	}
	if most >= n {
		return []gridSpan{{0, n}}
	}
	k := (n - gridOverlap + most - gridOverlap - 1) / (most - gridOverlap)
	long := (n + gridOverlap*(k-1) + k - 1) / k
	var out []gridSpan
	for i := range k {
		from := min(i*(long-gridOverlap), n-long)
		out = append(out, gridSpan{from, from + long})
	}
	return out
}

// room is how large a cell can be where so much room is taken by what stands beside the cells.
func (g *grid) room(all float64, cut []gridSpan, beside float64) float64 {
	return (all - beside) / float64(cut[0].to-cut[0].from)
}

// gridSheet is one sheet of a grid.
type gridSheet struct {
	*grid
	columns, rows gridSpan
	at, of        [2]int // which sheet it is across and down, and of how many
	side          float64
	zero          vec // the upper left corner of its cells
	pen           pen
	groups        []scene.Group
}

func (t *gridSheet) number() int { return t.at[1]*t.of[0] + t.at[0] + 1 }
func (t *gridSheet) sheets() int { return t.of[0] * t.of[1] }

// x is where a column begins, y where a row ends.
func (t *gridSheet) x(column int) float64 { return t.zero.x + t.side*float64(column-t.columns.from) }
func (t *gridSheet) y(row int) float64    { return t.zero.y + t.side*float64(t.rows.to-1-row) }

// draw draws the sheet: tints, lines, the marks row by row, and what stands round them.
func (t *gridSheet) draw(langs []*words.Language) *scene.Scene {
	t.pen.scale = 1
	t.zero = vec{t.beside(t.left), gridRepeat/2 + planRoom(t.sheets())}
	end := vec{t.x(t.columns.to), t.y(t.rows.from) + t.side}
	s := &scene.Scene{W: end.x + t.beside(t.right), H: end.y + gridRepeat/2 + gridBelow}
	t.tints()
	t.lines(end)
	names := t.rowNames(langs)
	for r := t.rows.from; r < t.rows.to; r++ {
		from := len(t.pen.items)
		t.marks(r)
		t.rowNumber(r, end)
		t.groups = append(t.groups, scene.Group{Name: names(r), From: from, To: len(t.pen.items)})
	}
	t.columnNumbers(end)
	if t.sheets() > 1 {
		t.cuts(end)
		t.pen.sheetPlan(vec{gridLine, gridLine}, t.at, t.of, gridPlan-3.5)
		s.W = max(s.W, sheetPlanWide(t.of, gridPlan-3.5))
	}
	s.Items, s.Groups = t.pen.items, t.groups
	return s
}

// lines draws the lines between cells, a heavier one every five or ten cells from where a row begins, and the frame: heavy where
// the rows repeat the chart. An edge at which the chart goes on on another sheet has none.
func (t *gridSheet) lines(end vec) {
	var light, heavy []curve
	every := t.every()
	for c := t.columns.from; c <= t.columns.to; c++ {
		n := t.wide - c // how many columns it is from where they are counted
		if t.fromLeft {
			n = c
		}
		l := straight(vec{t.x(c), t.zero.y}, vec{t.x(c), end.y})
		switch {
		case c == 0 || c == t.wide:
		case n%every == 0 && t.wide > gridSoon:
			heavy = append(heavy, l)
		default:
			light = append(light, l)
		}
	}
	for r := t.rows.from; r <= t.rows.to; r++ {
		y := t.y(r) + t.side
		l := straight(vec{t.zero.x, y}, vec{end.x, y})
		switch {
		case r == 0 || r == t.high:
		case r%every == 0 && t.high > gridSoon:
			heavy = append(heavy, l)
		default:
			light = append(light, l)
		}
	}
	t.pen.lines(light, gridLine)
	t.pen.lines(heavy, gridHeavy)
	frame := gridHeavy
	if t.repeats {
		frame = gridRepeat
	}
	half := frame / 2 // the corners are filled
	var edges []curve
	add := func(on bool, a, b, out vec) {
		if on {
			edges = append(edges, straight(a.sub(out.times(half)), b.add(out.times(half))))
		}
	}
	down, right := vec{0, 1}, vec{1, 0}
	add(t.columns.from == 0, t.zero, vec{t.zero.x, end.y}, down)
	add(t.columns.to == t.wide, vec{end.x, t.zero.y}, end, down)
	add(t.rows.to == t.high, t.zero, vec{end.x, t.zero.y}, right)
	add(t.rows.from == 0, vec{t.zero.x, end.y}, end, right)
	t.pen.lines(edges, frame)
}

// every is after how many cells a line is heavier: an eye counts five, and tens in a large chart.
func (g *grid) every() int {
	if max(g.wide, g.high) > 30 {
		return 10
	}
	return 5
}

// rowNumber numbers a row where it begins, with an arrow that points the way it is read.
func (t *gridSheet) rowNumber(r int, end vec) {
	y := t.y(r) + t.side/2
	head := func(x, way float64) {
		tip := vec{x + way*gridArrow, y}
		half := vec{0, 0.42 * gridArrow}
		t.pen.area(black, straight(tip, vec{x, y}.add(half), vec{x, y}.sub(half)))
	}
	em := min(gridEm, 0.9*t.side)
	number := func(x float64, anchor scene.Anchor) {
		t.pen.items = append(t.pen.items, scene.Label{X: x, Y: y, Text: strconv.Itoa(r + 1), Height: em, Face: page.Sans, Anchor: anchor})
	}
	const off = gridRepeat/2 + gridGap + gridArrow
	if t.right[r] {
		head(end.x+off, -1)
		number(end.x+off+gridGap, scene.Start)
	}
	if t.left[r] {
		head(t.zero.x-off, 1)
		number(t.zero.x-off-gridGap, scene.End)
	}
}

// columnNumbers numbers the stitches below, from where row 1 begins: the first, then every fourth in a chart that is soon counted,
// else where a line is heavier. A sheet on which none of these stands has the number of its first.
func (t *gridSheet) columnNumbers(end vec) {
	every := 4
	if t.wide > gridSoon {
		every = t.every()
	}
	em := min(gridEm, 0.9*t.side)
	number := func(c int) int {
		if t.fromLeft {
			return c + 1
		}
		return t.wide - c
	}
	put := func(c int) {
		t.pen.items = append(t.pen.items, scene.Label{X: t.x(c) + t.side/2, Y: end.y + gridRepeat/2 + gridBelow/2 + 0.2, Text: strconv.Itoa(number(c)), Height: em, Face: page.Sans})
	}
	none := true
	for c := t.columns.from; c < t.columns.to; c++ {
		if n := number(c); n == 1 || n%every == 0 {
			put(c)
			none = false
		}
	}
	switch {
	case none && t.fromLeft:
		put(t.columns.from)
	case none:
		put(t.columns.to - 1)
	}
}

// cuts marks the edges at which the chart goes on on another sheet, where that one begins: what lies beyond stands on both.
func (t *gridSheet) cuts(end vec) {
	shared := gridOverlap * t.side
	if t.columns.from > 0 {
		t.pen.cutEdge(vec{t.zero.x + shared, t.zero.y}, vec{t.zero.x + shared, end.y}, vec{-1, 0})
	}
	if t.columns.to < t.wide {
		t.pen.cutEdge(vec{end.x - shared, t.zero.y}, vec{end.x - shared, end.y}, vec{1, 0})
	}
	if t.rows.to < t.high {
		t.pen.cutEdge(vec{t.zero.x, t.zero.y + shared}, vec{end.x, t.zero.y + shared}, vec{0, -1})
	}
	if t.rows.from > 0 {
		t.pen.cutEdge(vec{t.zero.x, end.y - shared}, vec{end.x, end.y - shared}, vec{0, 1})
	}
}
