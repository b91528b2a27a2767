package book

import (
	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/words"
)

// Measures of the designer's own prose.
const (
	minorSpace = 7.5
	minorBelow = 0.0
)

// minor sets a small head and the prose below it; a head that is empty in the first language is left out.
func (s *setter) minor(head func(sd side) string, prose plan.Prose) []layout.Strip {
	return s.under(head, func() []layout.Strip { return s.prose(prose) })
}

// under sets a small head and what stands below it; without that it is nil.
func (s *setter) under(head func(sd side) string, below func() []layout.Strip) []layout.Strip {
	b := s.each(func(sd side) layout.Box { // before the prose, for that is the order of reading
		h := sd.elem(s.sect, "H3")
		return layout.Set(layout.Break(strong(head(sd)), s.minorType, s.headRoom(sd), 0), s.minorType, s.headAt(sd), h)
	})
	strips := below()
	if len(strips) == 0 {
		return nil
	}
	strips[0].Space = layout.Module
	if head(s.sides[0]) == "" {
		return strips
	}
	strips[0].Space = minorBelow
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
		for k, b := range s.blocks(sd, prose, s.textType, x, w) {
			if k == len(strips) {
				strips = append(strips, layout.Strip{Space: layout.Module})
			}
			strips[k].Put(0, 0, b.Box)
			if b.head {
				strips[k].Keep, strips[k].Heading = true, true
			}
			if b.close {
				strips[k].Space = 0
			}
		}
	}
	if n := len(strips); n > 0 {
		strips[n-1].Keep, strips[n-1].Heading = false, false
	}
	return divided(strips, s.textType.Leading)
}

// divided lets long paragraphs go on on the next sheet, line by line.
func divided(strips []layout.Strip, leading float64) []layout.Strip {
	var out []layout.Strip
	for _, strip := range strips {
		if strip.H <= longRow*leading+0.01 {
			out = append(out, strip)
			continue
		}
		lines := layout.Lines(strip.Box, leading)
		lines[0].Space = strip.Space
		lines[len(lines)-1].Keep = strip.Keep
		out = append(out, lines...)
	}
	return out
}

// proseBlock is a block of prose that is set.
type proseBlock struct {
	layout.Box
	head  bool
	close bool // an item behind another of its list
}

// blocks sets the blocks of a text in one language. The items of a list are read as one list.
func (s *setter) blocks(sd side, prose plan.Prose, style layout.Style, x, w float64) []proseBlock {
	var out []proseBlock
	var lists, bodies []*page.Elem // the lists that are open, one in the other, and the last item of each
	for i, block := range sd.l.Prose(s.p, prose) {
		b := proseBlock{head: block.Head > 0, close: i > 0 && block.Deep > 0 && len(lists) > 0}
		if len(lists) > block.Deep {
			lists, bodies = lists[:block.Deep], bodies[:block.Deep]
		}
		for len(lists) < block.Deep {
			in := s.sect
			if n := len(bodies); n > 0 {
				in = bodies[n-1]
			}
			lists, bodies = append(lists, in.New("L")), append(bodies, in)
		}
		indent := s.bulletW * float64(block.Deep)
		switch {
		case b.head:
			b.Box = layout.Set(layout.Break(block.Text, s.innerType, w, 0), s.innerType, x, sd.elem(s.sect, "H4"))
		case block.Deep == 0:
			b.Box = layout.Set(sd.broken(block.Text, style, w, 0), style, x, sd.elem(s.sect, "P"))
		case block.Bullet == "":
			b.Box = layout.Set(sd.broken(block.Text, style, w-indent, 0), style, x+indent, sd.elem(bodies[len(bodies)-1], "P"))
		default:
			li := sd.elem(lists[len(lists)-1], "LI")
			lbl := li.New("Lbl")
			bodies[len(bodies)-1] = li.New("LBody")
			b.Box = layout.Text(block.Bullet, style, false, x+indent-s.bulletW, lbl)
			b.Put(0, 0, layout.Set(sd.broken(block.Text, style, w-indent, 0), style, x+indent, bodies[len(bodies)-1].New("P")))
		}
		out = append(out, b)
	}
	return out
}
