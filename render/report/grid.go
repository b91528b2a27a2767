package report

import (
	"ovillo/render/layout"
	"ovillo/render/page"
)

// tables sets tables under one head.
func (s *setter) tables(head text, list []Table) {
	if len(list) == 0 {
		return
	}
	s.section(head.in(s.r.Lang))
	for i, t := range list {
		title := t.Title
		if head == hCounts && i == 0 {
			t.Note = tCountsNote.in(s.r.Lang)
		}
		s.small(title)
		if t.Note != "" {
			b := layout.Set(layout.Break(plain(t.Note), smallType, blockW, 0), smallType, 0, s.sect.New("P"))
			s.add(layout.Strip{Box: b, Keep: true, Heading: true})
		}
		lead := 70.0
		if t.First == 2 {
			lead = 48
		}
		s.table(t, lead)
	}
}

// Columns of figures.
const (
	colGap   = 4.0
	colMost  = 24.0 // wider than this, figures lose the line of their name
	numberW  = 16.0 // of the column of row numbers
	hairline = 0.1
)

// table sets a table whose names have lead millimetres. Columns that do not fit beside each other go on below, the names
// repeated.
func (s *setter) table(t Table, lead float64) {
	width := 0.0
	for _, row := range append([][]string{t.Head}, t.Rows...) {
		for _, cell := range row[t.First:] {
			width = max(width, cellType.Width(clean(cell), true))
		}
	}
	width = min(width+colGap, colMost)
	n := max(int((blockW-lead)/width), 1)
	for from := t.First; from < len(t.Head); from += n {
		s.columns(t, lead, width, from, min(from+n, len(t.Head)))
	}
}

// columns sets the columns from up to to of a table, under their head.
func (s *setter) columns(t Table, lead, width float64, from, to int) {
	table := s.sect.New("Table")
	end := lead + width*float64(to-from)
	head := s.tableLine(t, t.Head, table, lead, width, from, to, true)
	head.H = layout.Snap(head.H)
	head.Add(layout.Rule(0, head.H, end, head.H, hairline))
	strips := []layout.Strip{{Box: head, Space: 2 * layout.Module, Keep: true, Heading: true}}
	// A head that is repeated is drawn again, outside the reading order.
	again := s.tableLine(t, t.Head, nil, lead, width, from, to, true)
	again.H = layout.Snap(again.H)
	again.Add(layout.Rule(0, again.H, end, again.H, hairline))
	for i, row := range t.Rows {
		b := s.tableLine(t, row, table, lead, width, from, to, false)
		strip := layout.Strip{Box: b, Resume: []layout.Strip{{Box: again, Heading: true}}}
		if i == 0 {
			strip.Space = 0.75
		}
		strips = append(strips, strip)
	}
	for i := range strips {
		strips[i].Keep = strips[i].Keep || i < 2 && i < len(strips)-1 || i == len(strips)-2
	}
	s.add(strips...)
}

// tableLine sets one line of a table: its names to the left, figures to the right.
func (s *setter) tableLine(t Table, row []string, table *page.Elem, lead, width float64, from, to int, head bool) layout.Box {
	var tr *page.Elem
	cell := func(tag, scope string) *page.Elem {
		if table == nil {
			return nil
		}
		e := tr.New(tag)
		e.Scope = scope
		return e
	}
	if table != nil {
		tr = table.New("TR")
	}
	style := cellType
	if head {
		style = columns
	}
	var b layout.Box
	nameAt := 0.0
	if t.First == 2 {
		tag, scope := "TH", "Row"
		if head {
			scope = "Column"
		}
		b.Put(0, 0, layout.TextRight(clean(row[0]), style, false, numberW-colGap, cell(tag, scope)))
		nameAt = numberW
	}
	scope := "Row"
	if head {
		scope = "Column"
	}
	name := row[t.First-1]
	b.Put(0, 0, layout.Set(layout.Break(plain(indented(name)), style, lead-nameAt-2, 0), style, nameAt, cell("TH", scope)))
	for i := from; i < to; i++ {
		tag, scope := "TD", ""
		if head {
			tag, scope = "TH", "Column"
		}
		right := lead + width*float64(i-from+1)
		lines := layout.Break(plain(row[i]), style, width-1, 0)
		b.Put(0, 0, layout.SetRight(lines, style, right, cell(tag, scope)))
	}
	b.H = max(b.H, style.Leading)
	return b
}

// indented keeps the blanks at the beginning of a name, which the breaking of lines would drop.
func indented(name string) string {
	out := []rune(name)
	for i := range out {
		if out[i] != ' ' {
			break
		}
		out[i] = '\u00A0'
	}
	return string(out)
}
