package book

import (
	"ovillo/render/layout"
	"ovillo/render/words"
)

// colophon sets what stands last: care, what changed in this edition, what may be done with the pattern.
func (s *setter) colophon() {
	s.section()
	strips := s.minor(s.fixed(words.CareHead), s.p.Care)
	strips = append(strips, s.minor(func(sd side) string { return sd.l.Edition(s.p) }, s.p.Changes)...)
	strips = append(strips, s.minor(s.fixed(words.LicenceHead), s.p.Licence)...)
	s.add(strips...)
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
