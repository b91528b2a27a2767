package book

import (
	"fmt"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// hang is how far the text of a numbered step stands from its number.
const hang = 5.0

// finishing sets the last steps, numbered, each with its box, and a caution at the step it belongs to.
func (s *setter) finishing() {
	if len(s.p.Finish) == 0 {
		return
	}
	s.section()
	number := len(s.p.Parts) + 1
	titles := make([]string, len(s.sides))
	for i, sd := range s.sides {
		titles[i] = sd.l.Say(words.FinishingHead)
	}
	head := s.partHead(-1, number, titles, make([]rich.Text, len(s.sides)))
	s.bookmark(&head, "finishing", 1, func(sd side) string {
		return fmt.Sprintf("%d  %s", number, sd.l.Say(words.FinishingHead))
	})
	s.add(head)
	s.list = s.sect.New("L")
	resume := s.resumed(strconv.Itoa(number), titles)[:1]
	for i := range s.p.Finish {
		strip := layout.Strip{Box: s.finishStep(i), Space: rowSpace, Resume: resume, Keep: i == 0 && len(s.p.Finish) > 1}
		if i == 0 {
			strip.Space = 0
		}
		s.add(strip)
	}
}

// finishStep sets one step and its cautions, which never stand on another sheet.
func (s *setter) finishStep(n int) layout.Box {
	li := s.list.New("LI")
	lbl := li.New("Lbl")
	body := li.New("LBody")
	b := s.each(func(sd side) layout.Box {
		text := sd.l.Finishing(s.p, s.p.Finish[n])
		box := layout.Text(strconv.Itoa(n+1), stepType, true, sd.x, lbl)
		box.Put(0, 0, layout.Set(layout.Break(text, textType, sd.w()-hang, 0), textType, sd.x+hang, sd.elem(body, "P")))
		return box
	})
	b.Put(0, 0, ticks(s.axis, 1))
	var list []plan.Caution
	for _, c := range s.p.Cautions {
		if c.Step == n {
			list = append(list, c)
		}
	}
	for i, strip := range s.cautions(list, body, func(sd side) float64 { return sd.x + hang }) {
		if i == 0 {
			b.H += layout.Module
		}
		b.Below(0, strip.Box)
	}
	return b
}
