package book

import (
	"slices"
	"strings"

	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// howToRead sets what the signs of the pages mean, a row for each.
func (s *setter) howToRead() {
	facts := s.howToRows()
	if len(facts) == 0 {
		return
	}
	s.section()
	key := words.HowToReadHead
	if s.cover {
		key = words.HowToReadAllHead
	}
	head := s.sectionHead(key, "read")
	rows := make([]layout.Box, len(facts))
	for i, sd := range s.sides {
		for k := range facts {
			f := facts[k][i]
			if f.Head == "" {
				continue
			}
			text := append(rich.Text{{Text: f.Head + ". ", Strong: true}}, f.Text...)
			x, w := s.textColumn(i)
			rows[k].Put(0, 0, layout.Set(sd.broken(text, s.textType, w, 0), s.textType, x, sd.elem(s.sect, "P")))
		}
	}
	s.add(head)
	for i, row := range rows {
		strip := layout.Strip{Box: row, Space: layout.Module}
		if i == 0 {
			strip.Space = 0
		}
		s.add(strip)
	}
}

// The columns of the table of abbreviations are as wide as what stands in them, within these limits.
const (
	shortLeast, shortMost = 12.0, 22.0
	othersLeast           = 21.5
	abbrevGap             = 2.0
)

const abbreviationsMark = "abbreviations"

// abbreviations sets the table of abbreviations: the short form, what it means, and what others call it. With two
// languages each has its own order.
func (s *setter) abbreviations() {
	s.section()
	lists := make([][]words.Abbreviation, len(s.sides))
	lines := 0
	for i := range s.sides {
		lists[i] = s.shortForms(i)
		lines = max(lines, len(lists[i]))
	}
	if lines == 0 {
		return
	}
	s.add(s.sectionHead(words.AbbreviationsHead, abbreviationsMark))
	var note layout.Box
	for i, sd := range s.sides {
		x, w := s.textColumn(i)
		note.Put(0, 0, layout.Set(sd.broken(sd.l.TermsNote(s.p), s.textType, w, 0), s.textType, x, sd.elem(s.sect, "P")))
	}
	s.add(layout.Strip{Box: note, Keep: true})
	tables := make([]*page.Elem, len(s.sides))
	for i, sd := range s.sides {
		tables[i] = sd.elem(s.sect, "Table")
	}
	head := s.abbrevHead(lists, tables, nil)
	strips := []layout.Strip{{Box: head, Heading: true, Space: layout.Module}}
	rows := make([][]layout.Box, len(s.sides))
	for i := range s.sides {
		for k := range lists[i] {
			rows[i] = append(rows[i], s.abbrevLine(i, lists[i], k, tables[i]))
		}
	}
	for _, b := range abreast(rows) {
		again := s.abbrevHead(lists, make([]*page.Elem, len(s.sides)), b.done)
		strips = append(strips, layout.Strip{Box: b.box, Resume: []layout.Strip{{Box: again, Heading: true}}})
	}
	s.add(groupKeeps(strips)...)
}

// band is what stands between two cuts through columns of rows.
type band struct {
	box  layout.Box
	done []bool // the columns that have come to their end before it
}

// abreast sets columns of rows side by side, each at its own pace, and cuts them where no row of any column is cut: each language
// has its own order, so that rows of the same height say nothing together.
func abreast(columns [][]layout.Box) []band {
	var out []band
	next, at := make([]int, len(columns)), make([]float64, len(columns)) // the row to be set, and where it starts
	b := band{done: ended(columns, next)}
	for {
		lowest := -1
		for i := range columns {
			if next[i] < len(columns[i]) && (lowest < 0 || at[i] < at[lowest]-cutSlack) {
				lowest = i
			}
		}
		if lowest < 0 {
			break
		}
		row := columns[lowest][next[lowest]]
		b.box.Put(0, at[lowest], row)
		at[lowest] += row.H
		next[lowest]++
		if level(columns, next, at) {
			out = append(out, b)
			b, at = band{done: ended(columns, next)}, make([]float64, len(columns))
		}
	}
	return out
}

// ended says which columns have no row left.
func ended(columns [][]layout.Box, next []int) []bool {
	done := make([]bool, len(columns))
	for i := range columns {
		done[i] = next[i] == len(columns[i])
	}
	return done
}

// cutSlack is how far two heights may differ and count as one.
const cutSlack = 0.01

// level reports whether all columns that go on have come to the same height, the furthest.
func level(columns [][]layout.Box, next []int, at []float64) bool {
	furthest := slices.Max(at)
	for i := range columns {
		if next[i] < len(columns[i]) && at[i] < furthest-cutSlack {
			return false
		}
	}
	return true
}

// abbrevColumns are the left edges of the three columns of a language, and its right edge.
func (s *setter) abbrevColumns(nth int, list []words.Abbreviation) (at []float64, right float64) {
	x, w := s.textColumn(nth)
	short, meaning, others := shortLeast, 0.0, othersLeast
	for _, a := range list {
		short = max(short, s.abbrevType.Width(a.Short, true)+abbrevGap)
		meaning = max(meaning, s.abbrevType.Width(a.Meaning, false)+abbrevGap+0.1)
		for _, o := range a.Others {
			others = max(others, s.abbrevType.Width(o, false)+0.1)
		}
	}
	short = min(short, shortMost)
	room := w - short
	switch spare := room - meaning - others; {
	case spare > 0:
		meaning += spare / 2
	case others > room/2 && meaning > room/2:
		meaning = room / 2
	case meaning > room/2:
		meaning = room - others
	}
	meaning = min(meaning, room-othersLeast)
	return []float64{x, x + short, x + short + meaning}, x + w
}

// abbrevHead is the head of the tables, but for those that are done.
func (s *setter) abbrevHead(lists [][]words.Abbreviation, tables []*page.Elem, done []bool) layout.Box {
	var b layout.Box
	for i, sd := range s.sides {
		if done != nil && done[i] {
			continue
		}
		at, right := s.abbrevColumns(i, lists[i])
		var tr *page.Elem
		if tables[i] != nil {
			tr = tables[i].New("TR")
		}
		for k, head := range []string{sd.l.Say(words.HereHead), sd.l.Say(words.MeansHead), sd.l.OthersHead()} {
			var th *page.Elem
			if tr != nil {
				th = tr.New("TH")
				th.Scope = "Column"
			}
			b.Put(0, 0, layout.Text(head, s.abbrevType, false, at[k], th))
		}
		b.Add(layout.Rule(at[0], s.abbrevType.Leading, right, s.abbrevType.Leading, hairline))
	}
	b.H = s.abbrevType.Leading
	return b
}

func (s *setter) abbrevLine(nth int, list []words.Abbreviation, k int, table *page.Elem) layout.Box {
	at, right := s.abbrevColumns(nth, list)
	a := list[k]
	tr := table.New("TR")
	th := tr.New("TH")
	th.Scope = "Row"
	s.explain(s.sides[nth], a, th)
	cell := func(text rich.Text, k int, e *page.Elem) layout.Box {
		end := right
		if k+1 < len(at) {
			end = at[k+1] - abbrevGap
		}
		return layout.Set(s.sides[nth].fitted(text, s.abbrevType, end-at[k]), s.abbrevType, at[k], e)
	}
	short := a.Short
	if s.abbrevType.Width(short, true) > at[1]-at[0]-abbrevGap {
		short = strings.ReplaceAll(short, "\u00a0", " ") // better broken between words than within one
	}
	b := cell(strong(short), 0, th)
	b.Put(0, 0, cell(rich.T(a.Meaning), 1, tr.New("TD")))
	td := tr.New("TD")
	y := 0.0
	for _, other := range a.Others {
		box := cell(rich.T(other), 2, td)
		b.Put(0, y, box)
		y += box.H
	}
	return b
}

// Where the symbol of an explained stitch stands, at the height of its head.
const symbolTop = 1.25

// specials explains the stitches that need it, the symbol of each on the axis.
func (s *setter) specials() {
	s.section()
	rows := s.specialRows()
	if len(rows) == 0 {
		return
	}
	s.add(s.sectionHead(words.SpecialsHead, "specials"))
	var strips []layout.Strip
	for k, row := range rows {
		var b layout.Box
		for i, sd := range s.sides {
			sp := row[i]
			if len(sp.Head) == 0 {
				continue
			}
			x, w := s.textColumn(i)
			if s.arrangement == single { // the symbol stands where boxes to tick do elsewhere
				x, w = sd.x, sd.w()
			}
			text := layout.Set(layout.Break(sp.Head, s.innerType, w, 0), s.innerType, x, sd.elem(s.sect, "H3"))
			text.Below(0, layout.Set(sd.broken(sp.Text, s.textType, w, 0), s.textType, x, sd.elem(s.sect, "P")))
			b.Put(0, 0, text)
		}
		if sign := symbol(row[0].Form); sign != nil {
			x := s.spine - sign.W/2
			if !s.two() {
				x = 0
			}
			if s.edition.Has(LeftHanded) {
				sign = sign.Mirrored()
			}
			b.Put(0, symbolTop, layout.Drawing(sign, x))
			b.H = layout.Snap(b.H)
		}
		strip := layout.Strip{Box: b, Space: 2 * layout.Module}
		if k == 0 {
			strip.Space = 0
		}
		strips = append(strips, strip)
	}
	s.add(strips...)
}
