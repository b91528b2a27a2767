package book

import (
	"fmt"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// Measures of cautions: a bar at their left, never smaller than the instructions.
const (
	barW       = 0.9
	barGap     = 3.0
	cautionGap = 5.0
	groupGap   = 2 * layout.Module // above cautions for some sizes
)

// frontCautions sets all cautions on the title page, and below them what holds for all.
func (s *setter) frontCautions() []layout.Strip {
	if !slices.ContainsFunc(s.p.Cautions, ofSafety) {
		return nil
	}
	k := cautionBlock{want: ofSafety, at: side.margin, more: s.stepLinks, standing: true}
	strips := s.cautions(k, s.sect)
	strips[0].Space = cautionGap
	// As many as there is room for stand on the title page, whatever would be more even; but what holds for all never stands alone on
	// the next.
	for k := len(strips); k > 1; k-- {
		if k == len(strips)-1 {
			strips[k-1].Yields = false
			continue
		}
		if n, _ := layout.Fill(append(s.flow[:len(s.flow):len(s.flow)], strips[:k]...), s.frontH, s.bodyH); n <= 1 {
			for i := range layout.Bind(strips[:k]) {
				strips[i].Yields = strips[i].Yields && i == k-1
			}
			break
		}
	}
	return strips
}

// ofSafety tells cautions from the notes for those who sell what they make.
func ofSafety(c plan.Caution) bool { return !c.Seller }

// stepLinks says on which pages the steps of a caution are; of several that belong to the same, behind the last.
func (s *setter) stepLinks(sd side, item, next words.CautionText) rich.Text {
	if slices.Equal(item.Steps, next.Steps) {
		return nil
	}
	var out rich.Text
	for _, n := range item.Steps {
		before, after, _ := strings.Cut(sd.l.StepOnPage(0), sd.l.OnPage(0))
		link := s.onPage(sd, stepPlace(n))
		link.Text += after // it stays close to a number of one figure
		out = append(out, rich.Run{Text: " " + before}, link)
	}
	return out
}

// stepPlace is the name of the place of a step of the finishing.
func stepPlace(n int) string { return fmt.Sprint("step ", n) }

// cautionBlock is cautions under one head in each language.
type cautionBlock struct {
	want     func(plan.Caution) bool
	at       func(sd side) float64                                 // where the bar at their left stands
	more     func(sd side, item, next words.CautionText) rich.Text // what stands behind one; nil: nothing
	standing bool                                                  // what holds for all stands below them
}

// stepCautions sets the cautions of a step.
func (s *setter) stepCautions(n int, parent *page.Elem, at func(sd side) float64) []layout.Strip {
	want := func(c plan.Caution) bool { return ofSafety(c) && c.Step == n }
	if !slices.ContainsFunc(s.p.Cautions, want) {
		return nil
	}
	return s.cautions(cautionBlock{want: want, at: at}, parent)
}

// cautions sets a block of cautions as a list, in groups for the sizes they are for. None of them is split; they may part company
// between two.
func (s *setter) cautions(k cautionBlock, parent *page.Elem) []layout.Strip {
	cs := make([]*cautionColumn, len(s.sides))
	for i, sd := range s.sides {
		cs[i] = s.cautionColumn(sd, k, sd.elem(parent, "Div"))
	}
	var strips []layout.Strip
	add := func(row func(c *cautionColumn) layout.Box, last bool) {
		texts := make([]layout.Box, len(cs))
		high := 0.0
		for i, c := range cs {
			texts[i] = row(c)
			high = max(high, texts[i].H)
		}
		if !last {
			high += layout.Module
		}
		var b layout.Box
		for i, c := range cs {
			b.Put(0, 0, texts[i])
			// The bar goes through to the next caution; the last one's is as long as its own text, for the white
			// below belongs to nobody.
			top, foot := 0.0, high
			if len(strips) == 0 {
				top = 0.5
			}
			if last {
				foot = texts[i].H - 0.25
			}
			b.Add(layout.Bar(c.x, top, barW, foot-top))
		}
		b.H = high
		strips = append(strips, layout.Strip{Box: b})
	}
	groups := cs[0].groups
	for g := range groups {
		for n := range groups[g].Items {
			first := len(strips) == 0
			add(func(c *cautionColumn) layout.Box { return s.cautionRow(c, g, n, first) },
				!k.standing && g == len(groups)-1 && n == len(groups[g].Items)-1)
			if !first {
				strips[len(strips)-1].Resume = []layout.Strip{{Box: s.cautionsAgain(cs, g, n), Heading: true}}
			}
		}
	}
	if k.standing {
		last := &strips[len(strips)-1]
		last.Keep, last.Yields = true, true
		add(func(c *cautionColumn) layout.Box {
			return layout.Set(c.sd.broken(rich.T(c.sd.l.Say(words.CautionsStanding)), s.textType, c.width(0), 0), s.textType, c.text, c.note.New("P"))
		}, true)
		strips[len(strips)-1].Resume = []layout.Strip{{Box: s.cautionsAgain(cs, 0, 0), Heading: true}}
	}
	return strips
}

// cautionColumn is the cautions of one language.
type cautionColumn struct {
	cautionBlock
	sd      side
	x, text float64 // the bar, and what stands beside it
	bullets float64 // room for the sign of an item; 0 where there is one alone
	groups  []words.CautionGroup
	note    *page.Elem
	list    *page.Elem // of the group at hand
}

func (s *setter) cautionColumn(sd side, k cautionBlock, note *page.Elem) *cautionColumn {
	c := &cautionColumn{cautionBlock: k, sd: sd, x: k.at(sd), note: note, groups: sd.l.Cautions(s.p, k.want)}
	c.text = c.x + barW + barGap
	if c.count() > 1 {
		c.bullets = s.bulletW - cautionBulletLess
	}
	return c
}

// cautionBulletLess is by how much the items of cautions are indented less than those of the designer's lists.
const cautionBulletLess = 2.0

// count is how many cautions there are.
func (c *cautionColumn) count() int {
	n := 0
	for _, g := range c.groups {
		n += len(g.Items)
	}
	return n
}

// width is how wide a text may be that is indented so far.
func (c *cautionColumn) width(indent float64) float64 { return c.sd.right - c.text - indent }

// cautionRow sets a caution of a language, with the reasons that were given for it, the first of all with the head, the first of a
// group with the sizes it is for.
func (s *setter) cautionRow(c *cautionColumn, g, n int, first bool) layout.Box {
	var b layout.Box
	if first {
		b = layout.Text(c.sd.l.CautionsHead(c.count()), s.innerType, false, c.text, c.note.New("P"))
	}
	if n == 0 {
		if only := c.groups[g].Only; len(only) > 0 {
			space := 0.0
			if !first {
				space = groupGap
			}
			b.Below(space, layout.Set(layout.Break(only, s.labelType, c.width(0), 0), s.labelType, c.text, c.note.New("P")))
		}
		c.list = c.note.New("L")
	}
	item := c.groups[g].Items[n]
	var more rich.Text
	if c.more != nil {
		more = c.more(c.sd, item, c.next(g, n))
	}
	b.Below(0, s.cautionItem(c.sd, c.list, item, more, c.text, c.width(0), c.bullets))
	return b
}

// next is the caution that stands below another; an empty one below the last of a group.
func (c *cautionColumn) next(g, n int) words.CautionText {
	if n+1 < len(c.groups[g].Items) {
		return c.groups[g].Items[n+1]
	}
	return words.CautionText{}
}

// cautionItem sets one caution as an item of a list, with the reasons that were given for it below; with bullets wide there is a sign
// before it.
func (s *setter) cautionItem(sd side, list *page.Elem, item words.CautionText, more rich.Text, x, w, bullets float64) layout.Box {
	li := list.New("LI")
	var b layout.Box
	if bullets > 0 {
		b = layout.Text("•", s.textType, false, x, li.New("Lbl"))
	}
	body := li.New("LBody")
	text := append(item.Text[:len(item.Text):len(item.Text)], more...)
	b.Put(0, 0, layout.Set(sd.broken(text, s.textType, w-bullets, 0), s.textType, x+bullets, body.New("P")))
	for _, reason := range item.Reasons {
		b.Below(0, layout.Set(sd.broken(reason, s.textType, w-bullets, 0), s.textType, x+bullets, body.New("P")))
	}
	return b
}

// cautionsAgain heads cautions that go on on another sheet, with the sizes they are for.
func (s *setter) cautionsAgain(cs []*cautionColumn, g, n int) layout.Box {
	var b layout.Box
	for _, c := range cs {
		head := c.sd.l.CautionsHead(c.count()) + ", " + c.sd.l.Say(words.ContinuedMark)
		one := layout.Text(head, s.innerType, false, c.text, nil)
		if only := c.groups[g].Only; n > 0 && len(only) > 0 {
			one.Below(0, layout.Set(layout.Break(only, s.labelType, c.width(0), 0), s.labelType, c.text, nil))
		}
		b.Put(0, 0, one)
	}
	for _, c := range cs {
		b.Add(layout.Bar(c.x, 0.5, barW, b.H-0.5))
	}
	return b
}

// sellersNotes sets what concerns those who sell what they make, and below it what holds for all of them.
func (s *setter) sellersNotes() []layout.Strip {
	return s.under(s.fixed(words.SellersHead), func() []layout.Strip {
		var strips []layout.Strip
		var standing layout.Box
		for i, sd := range s.sides {
			groups := sd.l.Cautions(s.p, func(c plan.Caution) bool { return c.Seller })
			x, w := s.textColumn(i)
			k := 0
			for _, g := range groups {
				var only layout.Box
				if len(g.Only) > 0 {
					only = layout.Set(layout.Break(g.Only, s.labelType, w, 0), s.labelType, x, sd.elem(s.sect, "P"))
				}
				list := sd.elem(s.sect, "L")
				for n, item := range g.Items {
					if k == len(strips) {
						strips = append(strips, layout.Strip{Space: layout.Module})
					}
					var b layout.Box
					if n == 0 {
						b = only
					}
					b.Below(0, s.cautionItem(sd, list, item, nil, x, w, s.bulletW-cautionBulletLess))
					strips[k].Put(0, 0, b)
					k++
				}
			}
			if k > 0 {
				standing.Put(0, 0, layout.Set(sd.broken(rich.T(sd.l.Say(words.SellersStanding)), s.textType, w, 0), s.textType, x, sd.elem(s.sect, "P")))
			}
		}
		if n := len(strips); n > 0 {
			strips[n-1].Keep = true
			strips = append(strips, layout.Strip{Box: standing, Space: layout.Module})
		}
		return strips
	})
}
