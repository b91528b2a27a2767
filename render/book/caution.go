package book

import (
	"fmt"
	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
	"strings"
)

// Measures of a caution: a bar at its left, never smaller than the instructions.
const (
	barW       = 0.9
	barGap     = 3.0
	cautionGap = 5.0
)

// frontCautions sets all cautions on the title page.
func (s *setter) frontCautions() []layout.Strip {
	if len(s.p.Cautions) == 0 {
		return nil
	}
	strips := s.cautionsWith(s.p.Cautions, s.sect, side.margin, s.stepLink)
	strips[0].Space = cautionGap
	// As many as there is room for stand on the title page, whatever would be more even.
	for k := len(strips); k > 1; k-- {
		if n, _ := layout.Fill(append(s.flow[:len(s.flow):len(s.flow)], strips[:k]...), s.frontH, s.bodyH); n <= 1 {
			layout.Bind(strips[:k])
			break
		}
	}
	return strips
}

// stepLink says behind the last of the cautions of a step on which page that step is.
func (s *setter) stepLink(sd side, k int) rich.Text {
	list := s.p.Cautions
	if list[k].Step < 0 || k+1 < len(list) && list[k+1].Step == list[k].Step {
		return nil
	}
	before, after, _ := strings.Cut(sd.l.StepOnPage(0), sd.l.OnPage(0))
	return rich.Text{{Text: " " + before}, s.onPage(sd, stepPlace(list[k].Step)), {Text: after}}
}

// stepPlace is the name of the place of a step of the finishing.
func stepPlace(n int) string { return fmt.Sprint("step ", n) }

// cautions sets the cautions of a step.
func (s *setter) cautions(list []plan.Caution, parent *page.Elem, at func(sd side) float64) []layout.Strip {
	return s.cautionsWith(list, parent, at, func(side, int) rich.Text { return nil })
}

// cautionsWith sets cautions under one head in each language, a bar at their left where at says, and behind each what more says.
// None of them is split; they may part company between two.
func (s *setter) cautionsWith(list []plan.Caution, parent *page.Elem, at func(sd side) float64, more func(sd side, k int) rich.Text) []layout.Strip {
	notes := make([]*page.Elem, len(s.sides))
	for i, sd := range s.sides {
		notes[i] = sd.elem(parent, "Div")
	}
	var strips []layout.Strip
	for k, c := range list {
		heads := make([]layout.Box, len(s.sides))
		high := 0.0
		for i, sd := range s.sides {
			heads[i] = s.caution(sd, c, k == 0, notes[i], at(sd)+barW+barGap, more(sd, k))
			high = max(high, heads[i].H)
		}
		if k < len(list)-1 {
			high += layout.Module
		}
		var b layout.Box
		for i, sd := range s.sides {
			b.Put(0, 0, heads[i])
			// The bar goes through to the next caution; the last one's is as long as its own text, for the white
			// below belongs to nobody.
			top, foot := 0.0, high
			if k == 0 {
				top = 0.5
			}
			if k == len(list)-1 {
				foot = heads[i].H - 0.25
			}
			b.Add(layout.Bar(at(sd), top, barW, foot-top))
		}
		b.H = high
		strips = append(strips, layout.Strip{Box: b})
		if k > 0 {
			strips[k].Resume = []layout.Strip{{Box: s.cautionAgain(at), Heading: true}}
		}
	}
	return strips
}

// cautionAgain is the head of cautions that go on on another sheet.
func (s *setter) cautionAgain(at func(sd side) float64) layout.Box {
	return s.each(func(sd side) layout.Box {
		b := layout.Text(sd.l.Say(words.CautionHead), s.innerType, false, at(sd)+barW+barGap, nil)
		b.Add(layout.Bar(at(sd), 0.5, barW, b.H-0.5))
		return b
	})
}

// caution sets the text of a caution, the first of several with the head.
func (s *setter) caution(sd side, c plan.Caution, first bool, note *page.Elem, x float64, more rich.Text) layout.Box {
	var b layout.Box
	head, body := sd.l.Caution(c)
	body = append(body[:len(body):len(body)], more...)
	if first {
		b = layout.Text(head, s.innerType, false, x, note.New("P"))
	}
	if only := sd.l.OnlyFor(s.p, c.For); len(only) > 0 {
		b.Below(0, layout.Set(layout.Break(only, s.onlyType, sd.right-x, 0), s.onlyType, x, note.New("P")))
	}
	b.Below(0, layout.Set(sd.broken(body, s.textType, sd.right-x, 0), s.textType, x, note.New("P")))
	return b
}
