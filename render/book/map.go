package book

import (
	"strconv"

	"ovillo/render/layout"
	"ovillo/render/words"
)

// The drawing of the map is at most so high, in large print so much.
const (
	mapH      = 60.0
	mapHLarge = 110.0
)

// mapLeast is the number of steps from which a piece is worth a map.
const mapLeast = 3

// construction sets how the piece comes about: its parts in the order of working, each under the number of its chapter.
func (s *setter) construction() {
	steps := make([][]words.MapStep, len(s.sides))
	for i, sd := range s.sides {
		steps[i] = sd.l.MapSteps(s.p)
	}
	if len(steps[0]) < mapLeast {
		return
	}
	s.section()
	s.add(s.sectionHead(words.MapHead, "map"))
	lists := s.lists()
	var strips []layout.Strip
	for k := range steps[0] {
		var b layout.Box
		for i := range s.sides {
			x, w := s.textColumn(i)
			step := steps[i][k]
			li := lists[i].New("LI")
			b.Put(0, 0, layout.Text(strconv.Itoa(k+1), s.noteType, true, x, li.New("Lbl")))
			text := append(strong(step.Title+". "), step.Text...)
			b.Put(0, 0, layout.Set(s.sides[i].broken(text, s.noteType, w-s.hang, 0), s.noteType, x+s.hang, li.New("LBody")))
		}
		strips = append(strips, layout.Strip{Box: b, Space: layout.Module})
	}
	strips[0].Space = 0
	drawing := s.mapDrawing()
	drawn := drawing != nil
	if drawn {
		b := s.figure(drawing, (s.blockW-drawing.W)/2, s.sect)
		b.H = layout.Snap(b.H)
		strips[0].Space = sectionGap
		strips = append([]layout.Strip{{Box: b, Keep: true}}, strips...)
	}
	strips = layout.Loosely(strips, 2)
	if drawn && len(strips) > 3 {
		strips[1].Keep = true // two steps below the drawing, not one
	}
	s.add(strips...)
}

// startHere marks the head of the first part, for those who pass over what stands before it.
func (s *setter) startHere() layout.Box {
	const wedge, gap = 2.6, 1.2
	b := s.each(func(sd side) layout.Box {
		b := layout.Text(sd.l.Say(words.StartHere), s.onlyType, false, sd.head+wedge+gap, sd.elem(s.sect, "P"))
		b.Add(layout.Wedge(sd.head+wedge/2, (s.onlyType.Leading-2)/2, wedge, 2))
		return b
	})
	return b
}
