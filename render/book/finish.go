package book

import (
	"fmt"
	"strconv"

	"ovillo/compile/plan"
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
		strip := layout.Strip{Box: s.finishStep(i+1, n), Space: s.rowSpace, Resume: resume, Keep: i == 0 && len(list) > 1}
		if i == 0 {
			strip.Space = 0
		}
		s.add(strip)
	}
}

// finishStep sets one step under its number in the chapter, and its cautions, which never stand on another sheet.
func (s *setter) finishStep(number, n int) layout.Box {
	li := s.list.New("LI")
	lbl := li.New("Lbl")
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
	var list []plan.Caution
	for _, c := range s.p.Cautions {
		if c.Step == n {
			list = append(list, c)
		}
	}
	for i, strip := range s.cautions(list, body, func(sd side) float64 { return sd.x + s.hang }) {
		if i == 0 {
			b.H += layout.Module
		}
		b.Below(0, strip.Box)
	}
	return b
}
