package main

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
)

var countsCommand = command{
	name: "counts",
	args: text{"FILE", "ARCHIVO"},
	line: text{"count every row in every size", "contar cada vuelta en cada talla"},
	long: text{
		"The table has a line for each row and a column for each size: stitches, and spaces behind a +.\n" +
			"A part in several yarns ends with the stitches in each of them. Of joined motifs it counts motifs, sides and joins.\n" +
			"With --csv there is a line for each row and size; taken counts the places of the row below that were worked into.",
		"La tabla tiene una línea por vuelta y una columna por talla: los puntos y, detrás de +, los espacios.\n" +
			"Una pieza de varios hilos acaba con los puntos de cada uno. De los motivos unidos cuenta motivos, lados y uniones.\n" +
			"Con --csv hay una línea por vuelta y talla; taken cuenta los lugares de la vuelta anterior en los que se tejió."},
	flags: []flagDef{{name: "--csv", help: text{"values parted by commas", "valores separados por comas"}}},
	run:   runCounts,
}

func runCounts(c *call) int {
	paths, ok := c.sources(1)
	if !ok {
		return failed
	}
	return c.each(paths, func(path string) int {
		_, p, code := c.checked(path)
		if code != clean {
			return code
		}
		if c.has("--csv") {
			return c.print(countsCSV(p))
		}
		return c.print([]byte(countsTable(p, c.lang)))
	})
}

// csvHead is promised to other programs; it is the same in every language.
var csvHead = []string{"part", "row", "label", "size", "stitches", "spaces", "taken"}

// countsCSV lists the rows part by part, and each row size by size. Rows go by the number they are printed with, so that
// a row whose number differs from size to size stands once under each.
func countsCSV(p *plan.Pattern) []byte {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.Write(csvHead)
	for _, part := range p.Parts {
		for _, number := range rowNumbers(part) {
			for z, size := range p.Sizes {
				if f, ok := factOf(part, z, number); ok {
					w.Write([]string{part.Name, strconv.Itoa(number), f.Label, size.Name,
						strconv.Itoa(f.Stitches), strconv.Itoa(f.Spaces), strconv.Itoa(f.Taken)})
				}
			}
		}
	}
	w.Flush() // a buffer does not fail
	return b.Bytes()
}

// rowNumbers returns the numbers of a part's rows in any size, in order.
func rowNumbers(part *plan.Part) []int {
	var out []int
	for _, rows := range part.Worked {
		for _, f := range rows {
			out = append(out, f.Number)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

func factOf(part *plan.Part, size, number int) (plan.RowFact, bool) {
	for _, f := range part.Worked[size] {
		if f.Number == number {
			return f, true
		}
	}
	return plan.RowFact{}, false
}

// countsTable is the table for people: a block a part, a column a size.
func countsTable(p *plan.Pattern, lang string) string {
	var b strings.Builder
	for i, part := range p.Parts {
		if i > 0 {
			b.WriteByte('\n')
		}
		b.WriteString(part.Name + "\n")
		head := []string{msgRow.in(lang), ""}
		for _, s := range p.Sizes {
			head = append(head, s.Name)
		}
		rows := [][]string{head}
		for _, number := range rowNumbers(part) {
			row := []string{strconv.Itoa(number), labelOf(p, part, number)}
			for z := range p.Sizes {
				f, ok := factOf(part, z, number)
				row = append(row, countsCell(f, ok))
			}
			rows = append(rows, row)
		}
		rows = append(rows, motifTotals(part, lang)...)
		align(&b, append(rows, yarnTotals(p, part)...))
	}
	return b.String()
}

// motifTotals counts what joined motifs are made of; nil for other parts.
func motifTotals(part *plan.Part, lang string) [][]string {
	g := part.Grid
	if g == nil {
		return nil
	}
	motifs := make(plan.Nums, len(g.Across))
	for z := range motifs {
		motifs[z] = g.Across[z] * g.Down[z]
	}
	var rows [][]string
	for _, r := range []struct {
		name text
		n    plan.Nums
	}{{msgMotifs, motifs}, {msgSharedSides, g.Shared}, {msgSideJoins, g.AtSides}, {msgCornerJoins, g.AtCorners}} {
		row := []string{"", r.name.in(lang)}
		for _, n := range r.n {
			row = append(row, strconv.Itoa(n))
		}
		rows = append(rows, row)
	}
	return rows
}

// yarnTotals counts the stitches of a part in each of its yarns, if they are several.
func yarnTotals(p *plan.Pattern, part *plan.Part) [][]string {
	var rows [][]string
	for i, y := range p.Yarns {
		row, some := []string{"", y.Name}, false
		for z := range p.Sizes {
			n := 0
			for _, f := range part.Worked[z] {
				n += f.ByYarn[i]
			}
			row, some = append(row, strconv.Itoa(n)), some || n > 0
		}
		if some {
			rows = append(rows, row)
		}
	}
	if len(rows) < 2 {
		return nil
	}
	return rows
}

// labelOf gives the label of a row; where only some sizes have that row under the number, it names them.
func labelOf(p *plan.Pattern, part *plan.Part, number int) string {
	sizes := map[string][]string{}
	var labels []string
	for z, size := range p.Sizes {
		if f, ok := factOf(part, z, number); ok {
			if sizes[f.Label] == nil {
				labels = append(labels, f.Label)
			}
			sizes[f.Label] = append(sizes[f.Label], size.Name)
		}
	}
	if len(labels) == 1 {
		return labels[0]
	}
	var parts []string
	for _, l := range labels {
		if l != "" {
			parts = append(parts, l+": "+strings.Join(sizes[l], ", "))
		}
	}
	return strings.Join(parts, "; ")
}

func countsCell(f plan.RowFact, there bool) string {
	switch {
	case !there:
		return "–"
	case f.Spaces > 0:
		return fmt.Sprintf("%d + %d", f.Stitches, f.Spaces)
	}
	return strconv.Itoa(f.Stitches)
}

// align writes rows in columns: the label to the left, numbers to the right.
func align(b *strings.Builder, rows [][]string) {
	widths := make([]int, len(rows[0]))
	for _, row := range rows {
		for i, cell := range row {
			widths[i] = max(widths[i], len([]rune(cell)))
		}
	}
	for _, row := range rows {
		var line strings.Builder
		for i, cell := range row {
			blank := strings.Repeat(" ", widths[i]-len([]rune(cell)))
			if i == 1 {
				line.WriteString("  " + cell + blank)
			} else {
				line.WriteString("  " + blank + cell)
			}
		}
		b.WriteString(strings.TrimRight(line.String(), " ") + "\n")
	}
}
