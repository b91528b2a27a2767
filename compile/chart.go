package compile

import (
	"slices"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file reads charts.

// chart is a chart as it was read.
type chart struct {
	plan.Chart
	word  string // the stitch of a mesh, as the source writes it
	index int    // in the plan, -1 until a row is worked from it
	bad   bool   // something in it could not be understood; that was reported
}

// chartNamed looks a chart up. It is nil for a chart that is not there or that could not be read; the one is reported here, the
// other was.
func (c *checker) chartNamed(n *lang.Name) *chart {
	ch := c.charts[n.Text]
	switch {
	case ch == nil:
		c.say(codeNoName, n.Span(), diag.Args{"word": n.Text, "near": lang.Near(n.Text, keys(c.charts))})
		return nil
	case ch.bad:
		return nil
	}
	return ch
}

// useChart enters a chart in the plan.
func (c *checker) useChart(ch *chart) int {
	if ch.index < 0 {
		ch.index = len(c.pat.Charts)
		c.pat.Charts = append(c.pat.Charts, ch.Chart)
	}
	return ch.index
}

// width is the number of cells of a row.
func (ch *chart) width() int { return len(ch.Rows[0]) }

// fromRight are the cells of a row as one meets them that shows the right side.
func (ch *chart) fromRight(row int) []int {
	out := slices.Clone(ch.Rows[row])
	slices.Reverse(out)
	return out
}

// readChart reads the grid of a chart.
func (c *checker) readChart(s *lang.Statement, n *lang.Chart) *chart {
	ch := &chart{Chart: plan.Chart{Name: n.Name.Text}, index: -1}
	for _, b := range s.Body {
		switch m := b.Node.(type) {
		case *lang.Title:
			ch.Title = c.text(m.Text, m)
		case *lang.Mesh:
			c.readMesh(ch, m)
		case *lang.DrawnRows, *lang.DrawnStitches, *lang.DrawnRepeats:
			if !ch.bad {
				c.say(codeDrawnGrid, m.Span(), diag.Args{"name": n.Name.Text})
			}
			ch.bad = true
		case nil:
			ch.bad = true // it could not be read
		}
	}
	legend := c.readLegend(ch, s)
	for i := len(s.Lines) - 1; i >= 0 && !ch.bad; i-- {
		l := s.Lines[i]
		if k, err := strconv.Atoi(l.Head); err == nil && k != len(ch.Rows)+1 {
			ch.bad = true
			c.say(codeChartLine, l.Span, diag.Args{"have": k, "need": len(ch.Rows) + 1, "rows": len(s.Lines)})
			break
		}
		cells := c.readCells(ch, l, legend)
		ch.Rows = append(ch.Rows, cells)
		if ch.bad || len(cells) > 0 && len(cells) == ch.width() {
			continue
		}
		ch.bad = true
		d := diag.Diagnostic{Code: codeChartWidth, Span: l.Span, Args: diag.Args{"need": ch.width(), "have": len(cells)}}
		if len(cells) == 0 {
			d.Args["need"], d.Help = marksNeeded(s.Lines)
		}
		c.report(d)
	}
	return ch
}

// marksNeeded is how many cells a line without marks needs, and the remedy: as many as the lowest line that has some. If none has any, no
// number is known.
func marksNeeded(lines []lang.RawLine) (need any, help string) {
	for i := len(lines) - 1; i >= 0; i-- {
		if n := squaresIn(lines[i]); n > 0 {
			return n, "blank"
		}
	}
	return diag.Term{Key: "one or more"}, "none"
}

// readCells reads the cells of a line.
func (c *checker) readCells(ch *chart, l lang.RawLine, legend map[rune]int) []int {
	var cells []int
	for _, r := range l.Text {
		if r == ' ' || r == '\t' {
			continue
		}
		v, ok := legend[r]
		if !ok {
			c.say(codeChartMark, l.Span, diag.Args{"mark": string(r)})
			ch.bad = true
			break
		}
		cells = append(cells, v)
	}
	return cells
}

// readLegend reads what the marks mean.
func (c *checker) readLegend(ch *chart, s *lang.Statement) map[rune]int {
	legend := map[rune]int{}
	for _, b := range s.Body {
		l, ok := b.Node.(*lang.Legend)
		if !ok {
			continue
		}
		for _, it := range l.Items {
			v := c.cell(ch, it)
			for _, r := range it.Mark.Text {
				legend[r] = v
			}
		}
	}
	return legend
}

// cell is what a mark of a legend stands for.
func (c *checker) cell(ch *chart, it *lang.LegendItem) int {
	if ch.Mesh.Behind == 0 {
		v := c.yarn(it.Means)
		ch.bad = ch.bad || v < 0
		return v
	}
	switch it.Means.Text {
	case "open":
		return 0
	case "filled":
		return 1
	}
	ch.bad = true
	c.say(codeChartLegend, it.Means.Span(), diag.Args{"word": it.Means.Text, "near": c.file.At(it.Span()).Near(it.Means.Text, []string{"open", "filled"})})
	return 0
}

// maxBehind is the most places behind the stitch of a square.
const maxBehind = 100

// readMesh reads what the squares are made of.
func (c *checker) readMesh(ch *chart, n *lang.Mesh) {
	k, same := c.cnt(n.N, nil).Same()
	f, ok := c.form(n.Stitch.Text)
	switch {
	case !ok:
		c.unknownStitch(n.Stitch)
	case !same || k < 1 || k > maxBehind, f.Together > 1 || f.ID == stitch.Slip || f.ID == stitch.Chain:
		ok = false
		c.say(codeChartMesh, n.Span(), diag.Args{"max": maxBehind})
	}
	if !ok {
		ch.bad = true
		k = 1
	}
	ch.Mesh, ch.word = plan.Mesh{Form: f, Behind: k}, n.Stitch.Text
}
