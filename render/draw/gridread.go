package draw

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// timesOf says whether the rows of a chart go over it more than once, and how often if that is the same in every row and size;
// else 0. How often is known where the row as it is printed says over how many stitches it follows the chart; of a mesh, where all
// stitches and chains of the row belong to its squares.
func timesOf(p *plan.Pattern, i int) (times int, repeats bool) {
	c := p.Charts[i]
	wide := len(c.Rows[0])
	alike := true
	add := func(n int) {
		if n < 1 {
			return
		}
		alike = alike && (times == 0 || times == n)
		times = n
		repeats = repeats || n > 1
	}
	for _, part := range p.Parts {
		for _, r := range part.Rows() {
			if r.Chart == nil || r.Chart.Chart != i {
				continue
			}
			if c.Mesh.Behind == 0 {
				for z := range p.Sizes {
					n := 0
					for k := range r.Work {
						if cells := r.Work[k].Cells; z < len(cells) && cells[z] > 0 {
							n += cells[z]
						}
					}
					add(n / wide)
					alike = alike && n%wide == 0 // else it is worked so often, and a part of it
				}
				continue
			}
			for z := range part.Worked {
				if z >= len(r.First) {
					continue
				}
				for _, f := range part.Worked[z] {
					if squares := f.Stitches + f.Chains; f.Number == r.First[z] {
						if n := squares / (wide * (1 + c.Mesh.Behind)); squares-n*wide*(1+c.Mesh.Behind) <= 1 { // a stitch closes the last square
							add(n)
						}
					}
				}
			}
		}
	}
	if !alike {
		times = 0
	}
	return times, repeats
}

// run is cells of one kind beside one another.
type gridRun struct{ n, cell int }

// runs are the cells of a stretch of a row in the order in which it is read.
func (g *grid) runs(r int, of gridSpan) []gridRun {
	row := slices.Clone(g.rows[r][of.from:of.to])
	if g.right[r] {
		slices.Reverse(row)
	}
	var out []gridRun
	for _, cell := range row {
		if k := len(out) - 1; k >= 0 && out[k].cell == cell {
			out[k].n++
			continue
		}
		out = append(out, gridRun{1, cell})
	}
	return out
}

// row says in a language what a stretch of a row of the chart is: "row 3, from right to left: 2 sand, 1 kelp".
func (g *grid) row(w speech, r int, of gridSpan) string {
	var said []string
	for _, run := range g.runs(r, of) {
		said = append(said, strconv.Itoa(run.n)+"\u00a0"+g.cellName(w, run.cell, run.n))
	}
	form := w.GridRowRight
	if !g.right[r] {
		form = w.GridRowLeft
	}
	return fmt.Sprintf(form, r+1, strings.Join(said, ", "))
}

// cellName is what cells of a kind are: those of a yarn by its name, those of a mesh open or filled.
func (g *grid) cellName(w speech, cell, n int) string {
	switch {
	case g.mesh && cell == 1 && n == 1:
		return w.GridFull
	case g.mesh && cell == 1:
		return w.GridFulls
	case g.mesh && n == 1:
		return w.GridOpen
	case g.mesh:
		return w.GridOpens
	case cell >= 0 && cell < len(g.p.Yarns):
		return w.YarnName(g.p.Yarns[cell])
	}
	return words.YarnLetter(max(cell, 0))
}

// rowNames names the rows of a sheet in the first of some languages, as they are grouped.
func (t *gridSheet) rowNames(langs []*words.Language) func(r int) string {
	if len(langs) == 0 {
		return func(r int) string { return fmt.Sprint(r + 1) }
	}
	w := speak(langs[:1])[langs[0].Tag()]
	return func(r int) string { return t.row(w, r, t.columns) }
}

// say says what a sheet shows.
func (g *grid) say(s *scene.Scene, t *gridSheet, langs []*words.Language) {
	s.Title, s.Desc = map[string]string{}, map[string]string{}
	for lang, w := range speak(langs) {
		s.Title[lang] = fmt.Sprintf(w.Chart, w.ChartTitle(g.p, g.chart))
		var said []string
		if t.sheets() > 1 {
			said = append(said, fmt.Sprintf(w.ChartSheet, t.number(), t.sheets()))
		}
		said = append(said, fmt.Sprintf(w.ChartGrid, g.wide, g.high))
		if text := g.repeated(w); text != "" {
			said = append(said, capital(text)+".")
		}
		s.Desc[lang] = strings.Join(said, " ")
	}
}

// repeated says how often the chart is worked along a row; "" where once.
func (g *grid) repeated(w speech) string {
	switch {
	case !g.repeats:
		return ""
	case g.times > 1:
		return fmt.Sprintf(w.GridTimes, g.times)
	}
	return w.GridRepeats
}

func capital(s string) string {
	r := []rune(s)
	if len(r) == 0 {
		return s
	}
	return strings.ToUpper(string(r[0])) + string(r[1:])
}

// GridRows says what each row of a chart is, in the order of reading, for those who do not see it.
func GridRows(p *plan.Pattern, i int, lang *words.Language) []string {
	g := gridOf(p, i)
	if g == nil {
		return nil
	}
	w := speak([]*words.Language{lang})[lang.Tag()]
	out := make([]string, g.high)
	for r := range out {
		out[r] = g.row(w, r, gridSpan{0, g.wide}) + "."
	}
	return out
}

// GridKey is the key of a chart of colours or of filet: what the marks are and how many cells each has, how a row is read, and what
// the heavy frame is, where there is one.
func GridKey(p *plan.Pattern, i int, langs ...*words.Language) []KeyItem {
	g := gridOf(p, i)
	if g == nil {
		return nil
	}
	counts := map[int]int{}
	for _, row := range g.rows {
		for _, cell := range row {
			counts[cell]++
		}
	}
	var out []KeyItem
	add := func(s *scene.Scene, says func(w speech) string) {
		item := KeyItem{s, map[string]string{}}
		for tag, w := range speak(langs) {
			item.Says[tag] = says(w)
		}
		out = append(out, item)
	}
	for _, yarn := range g.yarns {
		add(g.cellSign(yarn), func(w speech) string {
			name := w.GridOpenSquare
			switch {
			case g.mesh && yarn == 1:
				name = w.GridFullSquare
			case !g.mesh:
				name = fmt.Sprintf(w.GridYarn, g.cellName(w, yarn, 1), words.YarnLetter(yarn))
			}
			return fmt.Sprintf(w.GridCells, name, counts[yarn], g.wide*g.high)
		})
	}
	add(arrowSign(g.fromLeft), func(w speech) string { return w.GridRead })
	if g.repeats {
		add(frameSign(), func(w speech) string { return w.GridFrame + " " + g.repeated(w) })
	}
	return out
}

// signRoom is how large the symbols of a key are: that of a cell and its frame.
const signRoom = gridCell + gridRepeat

// cellSign is a cell with its mark.
func (g *grid) cellSign(cell int) *scene.Scene {
	look, tint := g.look(cell)
	p := &pen{scale: 1}
	corner := vec{gridRepeat / 2, gridRepeat / 2}
	if tint != nil {
		fill := *tint
		p.items = append(p.items, scene.Path{Cmds: rectangle(nil, corner.x, corner.y, gridCell, gridCell), Fill: &fill})
	}
	p.gridMarks(look, words.YarnLetter(cell), []vec{corner}, gridCell)
	p.items = append(p.items, scene.Path{Cmds: rectangle(nil, corner.x, corner.y, gridCell, gridCell), Stroke: &black, Width: gridLine})
	return &scene.Scene{W: signRoom, H: signRoom, Items: p.items}
}

// arrowSign is the arrow of a row, larger than beside its number: a key has no small figures, which large print could not have.
func arrowSign(fromLeft bool) *scene.Scene {
	way := -1.0
	if fromLeft {
		way = 1
	}
	const long = 2.6
	p := &pen{scale: 1}
	m := vec{signRoom / 2, 0.42 * long}
	p.area(black, straight(m.add(vec{way * long / 2, 0}), m.add(vec{-way * long / 2, 0.42 * long}), m.add(vec{-way * long / 2, -0.42 * long})))
	return &scene.Scene{W: signRoom, H: 0.84 * long, Items: p.items}
}

// frameSign is a corner of the heavy frame.
func frameSign() *scene.Scene {
	p := &pen{scale: 1}
	const in, side = gridRepeat / 2, 5.0
	p.line(straight(vec{(signRoom - side) / 2, in}, vec{(signRoom + side) / 2, in}, vec{(signRoom + side) / 2, in + 3}), gridRepeat)
	return &scene.Scene{W: signRoom, H: 3 + gridRepeat, Items: p.items}
}

// yarnsOf are the yarns of a chart, in the order of their letters; a mesh has none.
func yarnsOf(c plan.Chart) []int {
	if c.Mesh.Behind > 0 {
		return nil
	}
	most := -1
	seen := map[int]bool{}
	for _, row := range c.Rows {
		for _, y := range row {
			seen[y] = true
			most = max(most, y)
		}
	}
	var out []int
	for y := range most + 1 {
		if seen[y] {
			out = append(out, y)
		}
	}
	return out
}

// eachChartRow calls f for what every printed row from a chart says of it.
func eachChartRow(p *plan.Pattern, f func(*plan.ChartRow)) {
	for _, part := range p.Parts {
		for _, r := range part.Rows() {
			if r.Chart != nil {
				f(r.Chart)
			}
		}
	}
}
