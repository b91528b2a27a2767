package book

import (
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// Where neither columns nor a strip have room, and in large print, every figure stands behind the name of its size: 1 y: 112.

const (
	namedMost = 4   // in a line
	namedGap  = 5.0 // between two of a line
)

// sized is a figure with its size.
type sized struct {
	name, figure string
}

// sizedOf pairs figures with their sizes; a size that has none is left out, since nothing has to keep its place.
func (s *setter) sizedOf(sd side, figures []string) []sized {
	var list []sized
	for i, f := range figures {
		if f != absent {
			list = append(list, sized{sd.l.SizeName(s.p.Sizes[i]), f})
		}
	}
	return list
}

// absent is how a size without a figure is written where figures have places.
const absent = "–"

// alike returns the figure that all sizes of a list share.
func alike(list []sized) (figure string, ok bool) {
	for _, f := range list {
		if f.figure != list[0].figure {
			return "", false
		}
	}
	if len(list) == 0 {
		return "", false
	}
	return list[0].figure, true
}

// namedFigures sets figures behind the names of their sizes, as many in a line as there is room for, below each other.
func (s *setter) namedFigures(list []sized, style layout.Style, x, w float64, elem *page.Elem) layout.Box {
	texts := make([]rich.Text, len(list))
	widest := 0.0
	for i, f := range list {
		name := strings.ReplaceAll(f.name, " ", "\u00A0")
		if s.sizes == 1 {
			texts[i] = rich.T(f.figure)
			continue
		}
		texts[i] = rich.Text{{Text: name + ":", Strong: true}, {Text: "\u00A0" + f.figure}}
		widest = max(widest, style.Width(name+":", true)+style.Width("\u00A0"+f.figure, false))
	}
	n := min(namedMost, len(list), max(1, int((w+namedGap)/(widest+namedGap))))
	if len(list) > n { // lines of one length, as far as they go
		lines := (len(list) + n - 1) / n
		n = (len(list) + lines - 1) / lines
	}
	var b layout.Box
	for i, text := range texts {
		column := (w + namedGap) / float64(max(n, 1))
		if natural := widest + 2*namedGap; natural < column {
			column = natural
		}
		lines := layout.Break(text, style, w-column*float64(i%n), 0)
		row := layout.Set(lines, style, x+column*float64(i%n), elem)
		if i%n == 0 {
			b.Below(0, row)
			continue
		}
		b.Put(0, b.H-style.Leading, row)
	}
	return b
}

// namedCount sets a count: what is counted, then a figure for each size.
func (s *setter) namedCount(sd side, c *words.CountText, elem *page.Elem) layout.Box {
	b := layout.Box{}
	if c.Slots == nil {
		b = layout.Set(layout.Break(c.Line, s.figureType, sd.w(), 0), s.figureType, sd.x, elem)
	} else {
		list := s.sizedOf(sd, c.Slots)
		head := rich.Text{{Text: upperFirst(c.Unit.String()) + ":", Strong: true}}
		if one, ok := alike(list); ok { // for which sizes the row is stands above it
			head = append(head, rich.Run{Text: "\u00A0" + one})
			list = nil
		}
		b = layout.Set(layout.Break(head, s.figureType, sd.w(), 0), s.figureType, sd.x, elem)
		b.Below(0, s.namedFigures(list, s.figureType, sd.x, sd.w(), elem))
	}
	b.Add(layout.Rule(sd.x, 0, sd.x+sumShort, 0, sumLine))
	return b
}

// sumShort is the rule over a count that has no columns to span.
const sumShort = 20.0

// namedMeasures is the table of sizes as a list: each measure, and below it what it is in each size.
func (s *setter) namedMeasures() []layout.Strip {
	sd := s.sides[0]
	var list *page.Elem
	var strips []layout.Strip
	group := func(head words.Key, all []measured) {
		for i, m := range all {
			var b layout.Box
			if i == 0 {
				lead := layout.Set(layout.Break(rich.T(sd.l.Say(head)), s.innerType, sd.right, 0), s.innerType, 0, sd.elem(s.sect, "P"))
				b.Below(0, lead)
				list = s.sect.New("L")
			}
			li := sd.elem(list, "LI")
			name := m.name(sd)
			if m.letter != "" {
				name = m.letter + "  " + name
			}
			lbl, body := li.New("Lbl"), li.New("LBody")
			b.Below(0, layout.Set(layout.Break(rich.T(name), s.tableHeadType, sd.right, 0), s.tableHeadType, 0, lbl))
			b.Below(0, s.namedFigures(s.sizedLengths(sd, m), s.tableType, s.boxW, sd.right-s.boxW, body))
			b.H = layout.Snap(b.H)
			strip := layout.Strip{Box: b, Space: layout.Module}
			if i == 0 {
				strip.Space = 3 * layout.Module
			}
			strips = append(strips, strip)
		}
	}
	group(words.FinishedPiece, s.finished())
	group(words.ToFitBody, s.fitted())
	return append(strips, s.bodyNotes()...)
}

// sizedLengths pairs the values of a measure with their sizes: 50 cm (19¾ in). One value for all stands once.
func (s *setter) sizedLengths(sd side, m measured) []sized {
	var list []sized
	for i, v := range m.values {
		if v == plan.NoLength {
			continue
		}
		text := sd.l.Cm(v) + "\u00A0cm (" + sd.l.Inches(v) + "\u00A0" + sd.l.InchesBehind(sd.l.Inches(v)) + ")"
		if m.memory {
			text += words.FromMemory
		}
		list = append(list, sized{sd.l.SizeName(s.p.Sizes[i]), text})
	}
	return list
}

// namedYarns is the table of yarns as a list.
func (s *setter) namedYarns() []layout.Strip {
	sd := s.sides[0]
	var list *page.Elem
	var strips []layout.Strip
	for i, y := range s.p.Yarns {
		if len(y.Amount) != s.sizes {
			continue
		}
		var b layout.Box
		if len(strips) == 0 {
			head := upperFirst(sd.l.YarnTableHead(s.p))
			b.Below(0, layout.Set(layout.Break(rich.T(head), s.innerType, sd.right, 0), s.innerType, 0, sd.elem(s.sect, "P")))
			list = s.sect.New("L")
		}
		li := sd.elem(list, "LI")
		lbl, body := li.New("Lbl"), li.New("LBody")
		for k, line := range s.yarnLines(y, true) {
			name := line.name(sd)
			if k == 0 && len(s.p.Yarns) > 1 {
				name = words.YarnLetter(i) + "  " + name
			}
			b.Below(0, layout.Set(layout.Break(rich.T(name), s.tableHeadType, sd.right, 0), s.tableHeadType, 0, lbl))
			var figures []sized
			for z, a := range y.Amount {
				figures = append(figures, sized{sd.l.SizeName(s.p.Sizes[z]), line.value(a)})
			}
			b.Below(0, s.namedFigures(figures, s.tableType, s.boxW, sd.right-s.boxW, body))
			lbl = body // the second line goes on with the first
		}
		b.H = layout.Snap(b.H)
		strip := layout.Strip{Box: b, Space: layout.Module}
		if len(strips) == 0 {
			strip.Space = 3 * layout.Module
		}
		strips = append(strips, strip)
	}
	return strips
}
