package report

import (
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
)

// CountTables counts every row of every part in every size: stitches, and spaces behind a +. A part in several yarns ends
// with the stitches in each of them; of joined motifs it counts motifs, sides and joins.
func CountTables(p *plan.Pattern, lang string) []Table {
	return countTables(p, lang, func(y plan.Yarn) string { return y.Name })
}

func countTables(p *plan.Pattern, lang string, yarn func(plan.Yarn) string) []Table {
	var out []Table
	for _, part := range p.Parts {
		t := Table{Title: part.Name, Head: []string{rowHead.in(lang), ""}, First: 2}
		for _, z := range p.Sizes {
			t.Head = append(t.Head, z.Name)
		}
		for _, number := range RowNumbers(part) {
			row := []string{strconv.Itoa(number), labelOf(p, part, number)}
			for z := range p.Sizes {
				f, ok := FactOf(part, z, number)
				row = append(row, countsCell(f, ok))
			}
			t.Rows = append(t.Rows, row)
		}
		t.Rows = append(t.Rows, motifTotals(part, lang)...)
		t.Rows = append(t.Rows, yarnTotals(p, part, yarn)...)
		out = append(out, t)
	}
	return out
}

// countTables are the counts with the names that the pages print, rows that are alike in every size on one line.
func (s *subject) countTables() []Table {
	out := countTables(s.p, s.in.Lang, s.in.Words.YarnName)
	for i := range out {
		t := &out[i]
		t.Title = s.in.Words.PartTitle(s.p, i)
		copy(t.Head[t.First:], s.sizeNames())
		t.Rows = gathered(t.Rows)
	}
	return out
}

// gathered puts rows that follow each other and are alike, label and all, on one line: 2–5.
func gathered(rows [][]string) [][]string {
	var out [][]string
	from := ""
	for _, row := range rows {
		if n := len(out); n > 0 && row[0] != "" && slices.Equal(out[n-1][1:], row[1:]) {
			out[n-1][0] = from + "–" + row[0]
			continue
		}
		from = row[0]
		out = append(out, slices.Clone(row))
	}
	return out
}

// RowNumbers returns the numbers of a part's rows in any size, in order.
func RowNumbers(part *plan.Part) []int {
	var out []int
	for _, rows := range part.Worked {
		for _, f := range rows {
			out = append(out, f.Number)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// FactOf is a row of a part in a size by its printed number; ok is false where the size has none of it.
func FactOf(part *plan.Part, size, number int) (fact plan.RowFact, ok bool) {
	for _, f := range part.Worked[size] {
		if f.Number == number {
			return f, true
		}
	}
	return plan.RowFact{}, false
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
	}{{motifsLine, motifs}, {sharedLine, g.Shared}, {sidesLine, g.AtSides}, {cornersLine, g.AtCorners}} {
		row := []string{"", r.name.in(lang)}
		for _, n := range r.n {
			row = append(row, strconv.Itoa(n))
		}
		rows = append(rows, row)
	}
	return rows
}

// yarnTotals counts the stitches of a part in each of its yarns, if they are several.
func yarnTotals(p *plan.Pattern, part *plan.Part, yarn func(plan.Yarn) string) [][]string {
	var rows [][]string
	for i, y := range p.Yarns {
		row, some := []string{"", yarn(y)}, false
		for z := range p.Sizes {
			n := 0
			for _, f := range part.Worked[z] {
				n += f.ByYarn.Count(i)
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
		if f, ok := FactOf(part, z, number); ok {
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
		return dash
	case f.Spaces > 0:
		return strconv.Itoa(f.Stitches) + " + " + strconv.Itoa(f.Spaces)
	}
	return strconv.Itoa(f.Stitches)
}
