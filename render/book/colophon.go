package book

import (
	"ovillo/render/layout"
	"ovillo/render/words"
)

// colophon sets what stands last: care and what goes on a label, what changed in this edition, what may be done with the pattern, what
// those who sell must know.
func (s *setter) colophon() {
	s.section()
	strips := s.careAndLabel()
	strips = append(strips, s.minor(func(sd side) string { return sd.l.Edition(s.p) }, s.p.Changes)...)
	strips = append(strips, s.minor(s.fixed(words.LicenceHead), s.p.Licence)...)
	strips = append(strips, s.sellersNotes()...)
	s.add(strips...)
}

// careAndLabel sets the care of the piece, in words and never in symbols, which are trademarks, and what it is made of.
func (s *setter) careAndLabel() []layout.Strip {
	head := func(sd side) string { return sd.l.CareHead(s.p) }
	return s.under(head, func() []layout.Strip {
		strips := s.prose(s.p.Care)
		var b layout.Box
		for i, sd := range s.sides {
			if text := sd.l.Contents(s.p); len(text) > 0 {
				x, w := s.textColumn(i)
				b.Put(0, 0, layout.Set(sd.broken(text, s.textType, w, 0), s.textType, x, sd.elem(s.sect, "P")))
			}
		}
		if b.H > 0 {
			if n := len(strips); n > 0 {
				strips[n-1].Keep = true // they are copied to a label together
			}
			strips = append(strips, divided([]layout.Strip{{Box: b, Space: layout.Module}}, s.textType.Leading)...)
		}
		return strips
	})
}

// ruledNotes draws lines to write on where the last sheet has room for a few.
func (s *setter) ruledNotes(sheet *layout.Sheet, height float64) {
	const (
		least = 40.0
		pitch = 9.0
	)
	if height-sheet.H < least {
		return
	}
	y := sheet.H + minorSpace
	sect := s.root.New("Sect")
	sheet.Put(0, y, s.each(func(sd side) layout.Box {
		h := sd.elem(sect, "H3")
		return layout.Text(sd.l.Say(words.MyNotes), s.minorType, false, s.headAt(sd), h)
	}))
	for y += s.minorType.Leading + pitch; y <= height+1e-9; y += pitch {
		for _, sd := range s.sides {
			right := sd.right
			if !s.two() {
				right = s.blockW
			}
			sheet.Add(layout.Rule(s.headAt(sd), y, right, y, hairline))
		}
	}
	sheet.H = height
}
