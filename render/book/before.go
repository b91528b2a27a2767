package book

import (
	"ovillo/render/layout"
	"ovillo/render/rich"
	"ovillo/render/words"
)

const (
	headBelow  = 2.5
	sectionGap = 5.0
)

// beforeYouStart sets what must be known before the first stitch: sizes, yarn, gauge, tools, and the schematic.
func (s *setter) beforeYouStart(fresh bool) {
	s.section()
	head := s.sectionHead(words.BeforeYouStart, "before")
	head.Fresh = fresh
	s.add(head)
	s.sizeTable = s.sect.New("Table")
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
		return layout.Set(layout.Break(strong(sd.l.Say(key)), s.headType, s.headRoom(sd), 0), s.headType, s.headAt(sd), h)
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
	return s.blockW - s.headAt(sd)
}

// headAt is where heads without a number stand: over the text, or on a narrow sheet at its edge.
func (s *setter) headAt(sd side) float64 {
	if s.arrangement == single {
		return 0
	}
	return sd.x
}

func strong(text string) rich.Text { return rich.Text{{Text: text, Strong: true}} }

// textColumn is where text stands that has nothing beside it.
func (s *setter) textColumn(nth int) (x, w float64) {
	switch s.arrangement {
	case apart:
		return s.boxW, s.proseR - s.boxW
	case single:
		return 0, s.blockW
	}
	sd := s.sides[nth]
	return sd.x, sd.w()
}
