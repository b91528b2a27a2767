package book

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// Columns of the table of sizes: names at both ends, the letter of the drawing, and a column for each size.
const (
	nameW      = 44.0
	letterW    = 8.0
	pairW      = 20.0 // centimetres and inches of one size
	cmEnd      = 11.8 // where the centimetres end in it
	tailGap    = 5.0  // between the last size and the names of the second language
	tailW      = 43.0
	groupSpace = 2.5
	hairline   = 0.1
	noteAbove  = 1.5  // above the notes under the measures of the wearer
	markGap    = 0.3  // between a figure and its mark
	nameThin   = 30.0 // on a narrow sheet
	sizeLeast  = 11.0 // with less, each figure stands behind its size
	pairLeast  = 15.5 // with less, centimetres and inches are two tables
	nameNarrow = 36.0
	tailNarrow = 33.0
)

// grid is where the columns of a shared table stand.
type grid struct {
	name, letter, first float64 // left edges of name and letter, and of the first size
	size                float64 // width of a size
	tail                float64 // left edge of the names of the second language
	pairs               bool    // centimetres and inches side by side
	values, small       layout.Style
	nameW, tailW        float64
}

// gridOf divides the block for a number of sizes: centimetres and inches side by side if there is room for pairs, else in
// two tables.
func (s *setter) gridOf() grid {
	if s.arrangement == single {
		return s.narrowGrid()
	}
	g := s.gridWith(nameW, tailW, pairW)
	if g.size >= pairLeast {
		g.pairs = true
	} else {
		g = s.gridWith(nameNarrow, tailNarrow, pairLeast) // the names give way, so that a size keeps 10 mm
	}
	if g.size < pairW-2 {
		g.values.Size, g.small.Size = 9, 8.5
	}
	return g
}

// narrowGrid divides the block of a narrow sheet.
func (s *setter) narrowGrid() grid {
	g := grid{values: s.tableType, small: s.tableSmallType, nameW: nameThin - 2, letter: nameThin}
	g.first = g.letter + letterW
	right := s.blockW - s.hangs()
	g.size = min(pairW, (right-g.first)/float64(s.sizes))
	if s.sizes > 2 {
		g.first = right - g.size*float64(s.sizes)
	}
	g.pairs = g.size >= pairLeast
	if g.size < pairW-2 {
		g.values.Size, g.small.Size = 9, 8.5
	}
	return g
}

// listsSizes reports whether the tables of sizes and yarns are set as lists, since their columns would be too narrow to read.
func (s *setter) listsSizes() bool {
	return s.figures == named || s.edition.Has(Large) || s.arrangement == single && s.narrowGrid().size < sizeLeast
}

// gridWith divides the block with names so wide, and sizes no wider than most.
func (s *setter) gridWith(name, tail, most float64) grid {
	g := grid{values: s.tableType, small: s.tableSmallType, name: s.sides[0].x}
	if !s.two() {
		name += 12
	}
	g.nameW = name - 2
	g.letter = g.name + name
	g.first = g.letter + letterW
	if !s.two() {
		right := s.blockW - s.hangs()
		g.size = min(most, (right-g.first)/float64(s.sizes))
		if s.sizes > 2 {
			g.first = right - g.size*float64(s.sizes) // over the columns of the counts; one or two stay near their names
		}
		return g
	}
	g.size = min(most, (s.blockW-g.first-tailGap-tail)/float64(s.sizes))
	g.tail = max(g.first+g.size*float64(s.sizes)+tailGap, s.spineR)
	g.tailW = s.blockW - g.tail
	return g
}

// hangs is the room that the mark of a figure from memory takes behind the last column; 0 if there is none.
func (s *setter) hangs() float64 {
	if !slices.ContainsFunc(s.p.Body, func(b plan.BodyMeasure) bool { return b.Memory }) {
		return 0
	}
	return markGap + s.tableType.Width(words.FromMemory, false)
}

// end is the right edge of the column of a size.
func (g grid) end(i int) float64 { return g.first + g.size*float64(i+1) }

// tableEnd is the right edge of a shared table.
func (s *setter) tableEnd(g grid) float64 {
	if s.two() {
		return s.blockW
	}
	return g.end(s.sizes - 1)
}

// cmEnd is where the centimetres of a size end.
func (g grid) cmEnd(i int) float64 { return g.end(i) - (pairW-cmEnd)*min(1, g.size/pairW+0.06) }

// nameAt is where the name of a line stands for a language, and how wide it may be.
func (s *setter) nameAt(g grid, nth int) (x, w float64) {
	if nth == 1 {
		return g.tail, g.tailW
	}
	return g.name, g.nameW
}

// tableName sets the name of a line in each language, as the head of its row.
func (s *setter) tableName(g grid, tr *page.Elem, style layout.Style, text func(sd side) string) layout.Box {
	var b layout.Box
	for i, sd := range s.sides {
		x, w := s.nameAt(g, i)
		th := sd.elem(tr, "TH")
		th.Scope = "Row"
		lines := sd.fitted(rich.T(text(sd)), style, w)
		b.Put(0, 0, layout.Set(lines, style, x, th))
	}
	return b
}

// tableHead names the sizes over their columns, in both languages.
func (s *setter) tableHead(g grid, table *page.Elem) layout.Box {
	if s.sizes == 1 {
		return layout.Box{}
	}
	var b layout.Box
	tr := table.New("TR")
	for i, sd := range s.sides {
		x, w := s.nameAt(g, i)
		th := sd.elem(tr, "TH")
		th.Scope = "Column"
		b.Put(0, 0, layout.Set(layout.Break(rich.T(sd.l.Say(words.CircleYourSize)), s.sizeType, w, 0), s.sizeType, x, th))
	}
	tr.New("TD") // over the letters
	sizes := make([]*page.Elem, s.sizes)
	for i := range sizes {
		sizes[i] = tr.New("TH")
		sizes[i].Scope = "Column"
	}
	y := 0.0
	for n, sd := range s.sides {
		style := s.figureType
		if n == 1 {
			style = s.sizeType
		}
		line := 0.0
		style = s.nameType(sd, style, g.size-1)
		for i, size := range s.p.Sizes {
			lines := layout.Break(weigh(breakable(sd.l.SizeName(size)), i), style, g.size-1, 0)
			box := layout.SetRight(lines, style, g.end(i), sd.elem(sizes[i], "Span"))
			b.Put(0, y, box)
			line = max(line, box.H)
		}
		y += line
	}
	return b
}

// measureTable makes the strips of the table of sizes: what the finished piece measures, and whom it fits.
func (s *setter) measureTable() []layout.Strip {
	if s.listsSizes() {
		return s.namedMeasures()
	}
	g := s.gridOf()
	table := s.sizeTable
	var strips []layout.Strip
	if head := s.tableHead(g, table); head.H > 0 {
		strips = append(strips, layout.Strip{Box: head, Keep: true, Heading: true})
	}
	units := [][]unit{{centimetres, inches}}
	if !g.pairs {
		units = [][]unit{{centimetres}, {inches}}
	}
	for _, u := range units {
		strips = append(strips, s.measureGroup(g, table, words.FinishedPiece, u, s.finished())...)
		strips = append(strips, s.measureGroup(g, table, words.ToFitBody, u, s.fitted())...)
	}
	return s.noted(strips)
}

// noted puts the notes on the measures of the wearer below a table, never on another sheet than its last line.
func (s *setter) noted(strips []layout.Strip) []layout.Strip {
	notes := s.bodyNotes()
	if n := len(strips); n > 0 && len(notes) > 0 {
		strips[n-1].Keep = true
	}
	return append(strips, notes...)
}

// bodyNotes says under the table where the measures of the wearer are from.
func (s *setter) bodyNotes() []layout.Strip {
	if len(s.p.Body) == 0 {
		return nil
	}
	b := s.each(func(sd side) layout.Box {
		var text layout.Box
		x, w := sd.x, sd.w()
		switch s.arrangement {
		case apart:
			w = s.blockW - x
		case single:
			x, w = 0, s.blockW
		}
		for _, note := range sd.l.BodyNotes(s.p) {
			text.Below(0, layout.Set(layout.Break(rich.T(note), s.captionType, w, 0), s.captionType, x, sd.elem(s.sect, "P")))
		}
		return text
	})
	return []layout.Strip{{Box: b, Space: noteAbove}}
}

// unit is a unit in which a table gives lengths.
type unit struct {
	sign func(l *words.Language) string
	of   func(l *words.Language, v plan.Length) string
}

var (
	centimetres = unit{func(*words.Language) string { return "cm" }, (*words.Language).Cm}
	inches      = unit{(*words.Language).InchSign, (*words.Language).Inches}
)

// symbolOfInches heads inches where two languages share a column: the symbol of the unit, which is the same in every language.
const symbolOfInches = "in"

// signOf heads a column of figures in a unit.
func (s *setter) signOf(u unit) string {
	sign := u.sign(s.sides[0].l)
	for _, sd := range s.sides[1:] {
		if u.sign(sd.l) != sign {
			return symbolOfInches
		}
	}
	return sign
}

// measured is a line of the table of sizes.
type measured struct {
	name   func(sd side) string
	letter string
	values plan.Lengths
	memory bool // the figures rest on some from memory, and are marked
}

func (s *setter) finished() []measured {
	var list []measured
	for _, m := range s.p.Measures {
		list = append(list, measured{func(sd side) string { return sd.l.MeasureName(m) }, m.Letter, m.Values, false})
	}
	return list
}

// fitted lists the measures of the wearer, the openings as far as they stretch, and the ease of what is fitted to the wearer.
func (s *setter) fitted() []measured {
	var list []measured
	for _, b := range s.p.Body {
		list = append(list, measured{func(sd side) string { return sd.l.BodyName(b.Name) }, "", b.Values, b.Memory})
	}
	for _, m := range s.p.Measures {
		if m.Over != nil && !m.Over.Percent.Is(0) {
			list = append(list, measured{func(sd side) string { return sd.l.Stretched(s.p, m) }, "", m.Over.Stretched, false})
		}
	}
	for _, m := range s.p.Measures {
		if m.Fits != nil && m.Fits.Ease != nil {
			list = append(list, measured{func(sd side) string { return sd.l.Ease(m.Fits.Body) }, "", m.Fits.Ease, s.p.Remembered(m.Fits.Body)})
		}
	}
	return list
}

// measureGroup makes the lines of one group under their head; the head and two lines stay together.
func (s *setter) measureGroup(g grid, table *page.Elem, head words.Key, units []unit, list []measured) []layout.Strip {
	if len(list) == 0 {
		return nil
	}
	strips := []layout.Strip{s.groupHead(g, table, func(sd side) string { return sd.l.Say(head) }, units)}
	for _, m := range list {
		tr := table.New("TR")
		b := s.tableName(g, tr, g.values, m.name)
		letter := tr.New("TD")
		if m.letter != "" {
			b.Put(0, 0, layout.Text(m.letter, s.letterType, false, g.letter, letter))
		}
		for i, v := range m.values {
			s.measureCell(&b, g, tr.New("TD"), units, i, v, m.memory)
		}
		strips = append(strips, layout.Strip{Box: b})
	}
	return groupKeeps(strips)
}

// measureCell sets the value of one size in the units of the table, with the mark of a figure from memory if it is one.
func (s *setter) measureCell(b *layout.Box, g grid, td *page.Elem, units []unit, i int, v plan.Length, memory bool) {
	l := s.sides[0].l
	for k, u := range units {
		style, end := g.values, g.end(i)
		if k == 0 && len(units) == 2 {
			end = g.cmEnd(i)
		}
		drop := 0.0
		if k == 1 {
			style = g.small
			drop = g.values.Baseline() - g.small.Baseline()
		}
		b.Put(0, drop, layout.TextRight(u.of(l, v), style, i%2 == 1, end, td))
		if memory && v != plan.NoLength {
			b.Put(0, drop, layout.Text(words.FromMemory, style, false, end+markGap, td)) // hangs, so that figures stand below figures
		}
	}
	b.H = layout.Snap(b.H - 1) // the drop of the small figures needs no room of its own
	b.H = max(b.H, g.values.Leading)
}

// groupHead is the head of a group: its name in each language, the units over their columns, a hairline below.
func (s *setter) groupHead(g grid, table *page.Elem, name func(sd side) string, units []unit) layout.Strip {
	tr := table.New("TR")
	b := s.tableName(g, tr, s.tableHeadType, name)
	tr.New("TD") // over the letters
	for i := range s.p.Sizes {
		td := tr.New("TD")
		for k, u := range units {
			end := g.end(i)
			if k == 0 && len(units) == 2 {
				end = g.cmEnd(i)
			}
			b.Put(0, 0, layout.TextRight(s.signOf(u), s.sizeType, false, end, td))
		}
	}
	b.H = layout.Snap(b.H)
	b.Add(layout.Rule(g.name, b.H, s.tableEnd(g), b.H, hairline))
	return layout.Strip{Box: b, Space: groupSpace, Heading: true}
}

// groupKeeps ties a group's head to its first two lines, and its last two lines to each other.
func groupKeeps(strips []layout.Strip) []layout.Strip {
	for i := range strips {
		if i < min(2, len(strips)-1) || i == len(strips)-2 {
			strips[i].Keep = true
		}
	}
	return strips
}
