package book

import (
	"ovillo/render/layout"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// The notes stand on both sides of the schematic.
const (
	asideW      = 46.0
	schematicW  = 88.0
	schematicH  = 100.0
	schematicX  = (blockW - schematicW) / 2
	headBelow   = 2.5
	sectionGap  = 5.0
	asideSpace  = 1.25
	notesAbove  = 7.5
	asideOneW   = 72.0 // with one language
	schematic1X = blockW - schematicW
)

// beforeYouStart sets what must be known before the first stitch: sizes, yarn, gauge, tools, and the schematic.
func (s *setter) beforeYouStart() {
	s.section()
	head := s.sectionHead(words.BeforeYouStart, "before")
	head.Fresh = true
	s.add(head)
	s.add(s.measureTable()...)
	s.add(s.yarnTable()...)
	s.add(s.asides()...)
	for i, note := range s.p.Notes {
		head := words.NotesHead
		if i > 0 {
			head = 0
		}
		s.add(s.minor(s.fixed(head), note)...)
	}
}

// sectionHead is the head of a section without a number.
func (s *setter) sectionHead(key words.Key, mark string) layout.Strip {
	b := s.each(func(sd side) layout.Box {
		h := sd.elem(s.sect, "H2")
		return layout.Set(layout.Break(strong(sd.l.Say(key)), headType, s.headRoom(sd), 0), headType, sd.x, h)
	})
	b.H += headBelow
	strip := layout.Strip{Box: b, Space: sectionGap, Keep: true, Heading: true}
	s.bookmark(&strip, mark, 1, func(sd side) string { return sd.l.Say(key) })
	return strip
}

// headRoom is how wide a head may be.
func (s *setter) headRoom(sd side) float64 {
	if s.two() {
		return sd.w()
	}
	return blockW - sd.x
}

func strong(text string) rich.Text { return rich.Text{{Text: text, Strong: true}} }

// asides sets the notes and the schematic side by side. What is taller than a sheet is set one below the other.
func (s *setter) asides() []layout.Strip {
	drawn := schematic(s.p)
	if drawn == nil {
		return s.noteStrips()
	}
	var b layout.Box
	for i, row := range s.noteRows(s.asideColumn) {
		if i > 0 {
			b.H += asideSpace
		}
		b.Below(0, row)
	}
	x := schematicX
	if !s.two() {
		x = schematic1X
	}
	fig := s.figure(drawn, x+(schematicW-drawn.W)/2, s.sect)
	if b.H > bodyH {
		return append(s.noteStrips(), layout.Strip{Box: fig, Space: notesAbove})
	}
	b.Put(0, 0, fig)
	b.H = layout.Snap(b.H)
	return []layout.Strip{{Box: b, Space: notesAbove}}
}

// asideColumn is where the notes of a language stand beside the schematic.
func (s *setter) asideColumn(nth int) (x, w float64) {
	switch {
	case !s.two():
		return boxW, asideOneW
	case nth == 1:
		return blockW - asideW, asideW
	}
	return 0, asideW
}

// textColumn is where text stands that has nothing beside it.
func (s *setter) textColumn(nth int) (x, w float64) {
	sd := s.sides[nth]
	return sd.x, sd.w()
}

// noteStrips sets the notes over the whole columns.
func (s *setter) noteStrips() []layout.Strip {
	var strips []layout.Strip
	for i, row := range s.noteRows(s.textColumn) {
		strip := layout.Strip{Box: row, Space: asideSpace}
		if i == 0 {
			strip.Space = notesAbove
		}
		strips = append(strips, strip)
	}
	return strips
}

// noteRows sets the side notes, the same note of both languages at the same height.
func (s *setter) noteRows(column func(nth int) (x, w float64)) []layout.Box {
	var rows []layout.Box
	for i, sd := range s.sides {
		x, w := column(i)
		for k, note := range sd.l.SideNotes(s.p) {
			if k == len(rows) {
				rows = append(rows, layout.Box{})
			}
			b := layout.Text(note.Head, noteHeadType, false, x, sd.elem(s.sect, "H3"))
			b.Below(0, layout.Set(layout.Break(note.Text, noteType, w, 0), noteType, x, sd.elem(s.sect, "P")))
			rows[k].Put(0, 0, b)
		}
	}
	return rows
}
