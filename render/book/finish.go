package book

import (
	"fmt"
	"slices"
	"strconv"

	"ovillo/render/layout"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// assembly sets what is done before a part, such as the seams that its edge goes over.
func (s *setter) assembly(part int) {
	s.steps(words.AssemblyHead, fmt.Sprint("assembly ", part), s.doneBefore(part+1))
}

// finishing sets the last steps.
func (s *setter) finishing() {
	s.steps(words.FinishingHead, "finishing", s.doneBefore(0))
}

// doneBefore lists the steps that belong before the part of a number; before none, 0, they are the last.
func (s *setter) doneBefore(part int) []int {
	var list []int
	for i, f := range s.p.Finish {
		if f.Before == part {
			list = append(list, i)
		}
	}
	return list
}

// steps sets a chapter of steps, numbered, each with its box, and a caution at the step it belongs to.
func (s *setter) steps(title words.Key, mark string, list []int) {
	if len(list) == 0 {
		return
	}
	s.section()
	s.chapter++
	number := s.chapter
	titles := make([]string, len(s.sides))
	for i, sd := range s.sides {
		titles[i] = sd.l.Say(title)
	}
	head := s.partHead(-1, number, titles, make([]rich.Text, len(s.sides)))
	s.bookmark(&head, mark, 1, func(sd side) string {
		return fmt.Sprintf("%d  %s", number, sd.l.Say(title))
	})
	s.add(head)
	s.list = s.sect.New("L")
	resume := s.resumed(strconv.Itoa(number), titles)[:1]
	for i, n := range list {
		strips := s.finishStep(i+1, n)
		if i > 0 {
			strips[0].Space = s.rowSpace
		}
		for k := range strips {
			strips[k].Resume = append(slices.Clone(resume), strips[k].Resume...)
		}
		last := &strips[len(strips)-1]
		last.Keep, last.Yields = i == 0 && len(list) > 1, len(strips) > 1
		s.add(strips...)
	}
}

// finishStep makes the strips of a step under its number in the chapter, and of its cautions. The first caution stands on the
// sheet of the step; others go on on the next one only where all of them are taller than a sheet.
func (s *setter) finishStep(number, n int) []layout.Strip {
	li := s.list.New("LI")
	lbl := li.New("Lbl")
	s.targets[lbl] = s.place(stepPlace(n))
	body := li.New("LBody")
	b := s.each(func(sd side) layout.Box {
		text := sd.l.Finishing(s.p, s.p.Finish[n])
		label := lbl
		if sd != s.sides[0] {
			label = nil // the number stands on both sides, and is said once
		}
		box := layout.Text(strconv.Itoa(number), s.stepType, true, sd.x, label)
		box.Put(0, 0, layout.Set(sd.broken(text, s.textType, sd.w()-s.hang, 0), s.textType, sd.x+s.hang, sd.elem(body, "P")))
		return box
	})
	b.Put(0, 0, s.ticks(s.axis, 1))
	cautions := s.stepCautions(n, body, func(sd side) float64 { return sd.x + s.hang })
	strips := divided([]layout.Strip{{Box: b}}, s.textType.Leading)
	if len(strips) > 1 { // a step so long goes on on the next sheet, with its cautions
		strips[len(strips)-1].Keep = len(cautions) > 0
		return append(strips, cautions...)
	}
	strips = append(strips, cautions...)
	if len(strips) == 1 {
		return strips
	}
	strips[1].Space = layout.Module
	strips[0].Heading = true
	return layout.Bind(strips)
}
