package book

import (
	"ovillo/render/layout"
	"ovillo/render/page"
)

// The notes stand on both sides of the schematic.
const (
	asideW     = 46.0
	asideOneW  = 72.0 // with one language
	schematicW = 80.0 // 4 mm clear of the notes on either side
	notesAbove = 7.5
	asideSpace = 1.25
	overhang   = 10.0 // by which notes may be longer than the schematic beside them
)

// The schematic is as tall as there is room for, within these limits.
const (
	schematicMost  = 100.0
	schematicLeast = 60.0
	schematicStep  = 7.5
)

// notes are the side notes set twice: narrow, for beside the schematic, and wide, for below it.
type notes struct {
	narrow, wide []layout.Box
}

// asides sets the notes and the schematic side by side, the schematic a little smaller if then all stands on the sheet of
// the table, or at least the schematic does. Notes that do not fit beside it go on below, over the whole column.
func (s *setter) asides() []layout.Strip {
	if s.arrangement == single {
		return s.asidesBelow()
	}
	read := s.perSide()
	n := notes{s.noteRows(s.asideColumn, read), s.noteRows(s.textColumn, read)}
	drawn := s.schematic(schematicMost)
	if drawn == nil {
		return noteStrips(n.wide, notesAbove)
	}
	_, filled := layout.Fill(s.flow, s.frontH, s.bodyH)
	if high := n.height(drawn.H, s.bodyH-filled-notesAbove); high < drawn.H {
		drawn = s.schematic(high)
	}
	k, b := n.beside(drawn.H)
	x := (s.blockW - schematicW) / 2
	if !s.two() {
		x = s.blockW - schematicW
	}
	b.Put(0, 0, s.figure(drawn, x+(schematicW-drawn.W)/2, s.sect))
	b.H = layout.Snap(b.H)
	strips := []layout.Strip{{Box: b, Space: notesAbove}}
	return append(strips, noteStrips(n.wide[k:], 2*asideSpace)...)
}

// asidesBelow sets the schematic, and the notes below it.
func (s *setter) asidesBelow() []layout.Strip {
	var strips []layout.Strip
	if drawn := s.schematic(min(schematicMost, s.bodyH-40)); drawn != nil {
		b := s.figure(drawn, (s.blockW-drawn.W)/2, s.sect)
		b.H = layout.Snap(b.H)
		strips = append(strips, layout.Strip{Box: b, Space: notesAbove})
	}
	return append(strips, noteStrips(s.noteRows(s.textColumn, s.perSide()), notesAbove)...)
}

// height chooses how tall the schematic is, at most the height given, where so much of the sheet is left.
func (n notes) height(most, room float64) float64 {
	begun := 0.0
	for h := most; h >= schematicLeast; h -= schematicStep {
		k, b := n.beside(h)
		first := max(b.H, h)
		if begun == 0 && first <= room {
			begun = h
		}
		for i, wide := range n.wide[k:] {
			first += wide.H + asideSpace
			if i == 0 {
				first += asideSpace
			}
		}
		if first <= room {
			return h
		}
	}
	if begun > 0 {
		return begun
	}
	return most
}

// perSide adds an element for each language.
func (s *setter) perSide() []*page.Elem {
	list := make([]*page.Elem, len(s.sides))
	for i := range s.sides {
		list[i] = s.sect.New("Div")
	}
	return list
}

// beside sets as many notes as stand beside a schematic of a height, and returns how many they are. The last of all notes
// may come a little below it.
func (n notes) beside(high float64) (int, layout.Box) {
	var b layout.Box
	for k, note := range n.narrow {
		h := b.H + note.H
		if k > 0 {
			h += asideSpace
		}
		last := k == len(n.narrow)-1
		if !last && h > high || h > high+overhang {
			return k, b
		}
		b.Below(h-b.H-note.H, note)
	}
	return len(n.narrow), b
}

// asideColumn is where the notes of a language stand beside the schematic.
func (s *setter) asideColumn(nth int) (x, w float64) {
	switch {
	case !s.two():
		return s.boxW, asideOneW
	case nth == 1:
		return s.blockW - asideW, asideW
	}
	return 0, asideW
}

// noteStrips makes strips of notes, the first of them so far below what stands above.
func noteStrips(rows []layout.Box, above float64) []layout.Strip {
	var strips []layout.Strip
	for i, row := range rows {
		strip := layout.Strip{Box: row, Space: asideSpace}
		if i == 0 {
			strip.Space = above
		}
		strips = append(strips, strip)
	}
	return strips
}

// noteRows sets the side notes, the same note of both languages at the same height. They are read one language after the
// other, each in its own element.
func (s *setter) noteRows(column func(nth int) (x, w float64), read []*page.Elem) []layout.Box {
	var rows []layout.Box
	for i, sd := range s.sides {
		x, w := column(i)
		for k, note := range sd.l.SideNotes(s.p) {
			if k == len(rows) {
				rows = append(rows, layout.Box{})
			}
			b := layout.Text(note.Head, s.noteHeadType, false, x, sd.elem(read[i], "H3"))
			b.Below(0, layout.Set(sd.broken(note.Text, s.noteType, w, 0), s.noteType, x, sd.elem(read[i], "P")))
			rows[k].Put(0, 0, b)
		}
	}
	return rows
}
