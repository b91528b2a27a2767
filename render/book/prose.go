package book

import (
	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/words"
)

// Measures of the designer's own prose.
const (
	minorSpace = 7.5
	minorBelow = 0.0
	bulletW    = 5.0
)

// minor sets a small head and the prose below it; a head that is empty in the first language is left out.
func (s *setter) minor(head func(sd side) string, prose plan.Prose) []layout.Strip {
	strips := s.prose(prose)
	if len(strips) == 0 {
		return nil
	}
	strips[0].Space = layout.Module
	if head(s.sides[0]) == "" {
		return strips
	}
	strips[0].Space = minorBelow
	b := s.each(func(sd side) layout.Box {
		h := sd.elem(s.sect, "H3")
		return layout.Set(layout.Break(strong(head(sd)), minorType, s.headRoom(sd), 0), minorType, sd.x, h)
	})
	return append([]layout.Strip{{Box: b, Space: minorSpace, Keep: true, Heading: true}}, strips...)
}

// fixed gives the words of a key in each language; 0 is no word.
func (s *setter) fixed(key words.Key) func(sd side) string {
	return func(sd side) string {
		if key == 0 {
			return ""
		}
		return sd.l.Say(key)
	}
}

// prose sets the paragraphs and lists of the designer, the same block of both languages at the same height.
func (s *setter) prose(prose plan.Prose) []layout.Strip {
	var strips []layout.Strip
	for i, sd := range s.sides {
		x, w := s.textColumn(i)
		for k, block := range sd.l.Prose(s.p, prose) {
			if k == len(strips) {
				strips = append(strips, layout.Strip{Space: layout.Module})
			}
			strips[k].Put(0, 0, s.block(sd, block, x, w))
			if block.Head > 0 {
				strips[k].Keep, strips[k].Heading = true, true
			}
		}
	}
	if n := len(strips); n > 0 {
		strips[n-1].Keep, strips[n-1].Heading = false, false
	}
	return strips
}

// block sets one block of prose.
func (s *setter) block(sd side, block words.Block, x, w float64) layout.Box {
	if block.Head > 0 {
		h := sd.elem(s.sect, "H4")
		return layout.Set(layout.Break(block.Text, innerType, w, 0), innerType, x, h)
	}
	if block.Bullet == "" {
		return layout.Set(layout.Break(block.Text, textType, w, 0), textType, x, sd.elem(s.sect, "P"))
	}
	li := sd.elem(s.sect.New("L"), "LI")
	b := layout.Text(block.Bullet, textType, false, x, li.New("Lbl"))
	b.Put(0, 0, layout.Set(layout.Break(block.Text, textType, w-bulletW, 0), textType, x+bulletW, li.New("LBody")))
	return b
}
