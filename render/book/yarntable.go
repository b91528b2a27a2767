package book

import (
	"fmt"

	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/words"
)

// yarnTable makes the strips of the yarns in the table of sizes, whose heads hold for them too: for each the balls and, below, the length in metres and yards or
// else the weight. A yarn whose amount is not known is in the notes beside the schematic, not here.
func (s *setter) yarnTable() []layout.Strip {
	if s.listsSizes() {
		return s.namedYarns()
	}
	g := s.gridOf()
	table := s.sizeTable
	strips := []layout.Strip{s.groupHead(g, table, func(sd side) string { return upperFirst(sd.l.YarnTableHead(s.p)) }, nil)}
	for i, y := range s.p.Yarns {
		if len(y.Amount) != s.sizes {
			continue
		}
		lines := s.yarnLines(y, g.pairs)
		for k, line := range lines {
			strips = append(strips, s.yarnStrip(g, table, i, k, line))
		}
		strips[len(strips)-1].Keep = false
		for k := 1; k < len(lines); k++ {
			strips[len(strips)-1-k].Keep = true
		}
	}
	if len(strips) == 1 {
		table.Kids = table.Kids[:len(table.Kids)-1]
		return nil
	}
	strips[0].Keep = true
	return strips
}

// yarnLine is one line of a yarn: what it gives and a figure for each size.
type yarnLine struct {
	name  func(sd side) string
	value func(a plan.YarnAmount) string
	small bool
}

// yarnLines decides what is said of a yarn: balls if the ball is known, else grams; and its length.
func (s *setter) yarnLines(y plan.Yarn, pairs bool) []yarnLine {
	name := func(sd side) string { return upperFirst(sd.l.YarnName(y)) }
	l := s.sides[0].l
	between := "\u00A0"
	if !pairs {
		between = "\n" // narrow columns: the yards stand below
	}
	grams := func(a plan.YarnAmount) string { return fmt.Sprintf("%s g", l.Number(float64(a.Milligrams)/1000, 0)) }
	first := yarnLine{name: name, value: grams}
	if y.Amount[0].Balls > 0 {
		first.value = func(a plan.YarnAmount) string { return fmt.Sprint(a.Balls) }
	}
	lines := []yarnLine{first}
	if y.Amount[0].Length != plan.NoLength && y.Amount[0].Length > 0 {
		lines = append(lines, yarnLine{
			name: func(sd side) string { return sd.l.Say(words.MetersYards) },
			value: func(a plan.YarnAmount) string {
				return fmt.Sprintf("%.0f%s(%d)", metres(a.Length), between, a.Yards)
			},
			small: true,
		})
	} else if y.Amount[0].Balls > 0 {
		lines = append(lines, yarnLine{name: func(sd side) string { return sd.l.Say(words.Grams) }, value: grams, small: true})
	}
	return lines
}

func metres(l plan.Length) float64 { return float64(l) / float64(1000*plan.Millimetre) }

// yarnStrip sets one line of a yarn.
func (s *setter) yarnStrip(g grid, table *page.Elem, yarn, nth int, line yarnLine) layout.Strip {
	style := g.values
	if line.small {
		style = g.small
		style.Leading = 5
	}
	tr := table.New("TR")
	b := s.tableName(g, tr, style, line.name)
	letter := tr.New("TD")
	if nth == 0 && len(s.p.Yarns) > 1 {
		b.Put(0, 0, layout.Text(words.YarnLetter(yarn), s.letterType, false, g.letter, letter))
	}
	for i, a := range s.p.Yarns[yarn].Amount {
		lines := layout.Break(weigh(line.value(a), i), style, g.size-1, 0)
		b.Put(0, 0, layout.SetRight(lines, style, g.end(i), tr.New("TD")))
	}
	return layout.Strip{Box: b}
}
