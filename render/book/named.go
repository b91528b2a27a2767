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
	var b layout.Box
	for _, line := range s.namedLines(list, style, x, w, elem) {
		b.Below(0, line)
	}
	return b
}

// namedLines sets figures behind the names of their sizes, each line of them by itself.
func (s *setter) namedLines(list []sized, style layout.Style, x, w float64, elem *page.Elem) []layout.Box {
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
	var out []layout.Box
	for i, text := range texts {
		column := (w + namedGap) / float64(max(n, 1))
		if natural := widest + 2*namedGap; natural < column {
			column = natural
		}
		lines := layout.Break(text, style, w-column*float64(i%n), 0)
		row := layout.Set(lines, style, x+column*float64(i%n), elem)
		if i%n == 0 {
			out = append(out, row)
			continue
		}
		out[len(out)-1].Put(0, 0, row)
	}
	return out
}

// entry makes the strips of an item of a list: its name in so many lines, and lines below it. It goes on on another sheet
// only where it is long, and then with two lines at least on either side, under again.
func entry(lines []layout.Box, space float64, heads int, again layout.Box) []layout.Strip {
	if len(lines) <= longRow {
		var b layout.Box
		for _, line := range lines {
			b.Below(0, line)
		}
		b.H = layout.Snap(b.H)
		return []layout.Strip{{Box: b, Space: space}}
	}
	strips := make([]layout.Strip, len(lines))
	high := 0.0
	for i, line := range lines {
		high += line.H
		strips[i] = layout.Strip{Box: line, Keep: i < heads, Resume: []layout.Strip{{Box: again, Heading: true}}}
	}
	strips[len(lines)-1].H += layout.Snap(high) - high
	strips[0].Space = space
	return layout.Loosely(strips, splitLines)
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
			var lines []layout.Box
			space := layout.Module
			if i == 0 {
				space = 3 * layout.Module
				lines = linesOf(rich.T(sd.l.Say(head)), s.innerType, sd.right, sd.elem(s.sect, "P"))
				list = s.sect.New("L")
			}
			li := sd.elem(list, "LI")
			name := m.name(sd)
			if m.letter != "" {
				name = m.letter + "  " + name
			}
			lbl, body := li.New("Lbl"), li.New("LBody")
			lines = append(lines, linesOf(rich.T(name), s.tableHeadType, sd.right, lbl)...)
			heads := len(lines)
			lines = append(lines, s.namedLines(s.sizedLengths(sd, m), s.tableType, s.boxW, sd.right-s.boxW, body)...)
			strips = append(strips, entry(lines, space, heads, s.entryAgain(name))...)
		}
	}
	group(words.FinishedPiece, s.finished())
	group(words.ToFitBody, s.fitted())
	return s.noted(strips)
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
		var lines []layout.Box
		space := layout.Module
		if len(strips) == 0 {
			space = 3 * layout.Module
			head := upperFirst(sd.l.YarnTableHead(s.p))
			lines = linesOf(rich.T(head), s.innerType, sd.right, sd.elem(s.sect, "P"))
			list = s.sect.New("L")
		}
		li := sd.elem(list, "LI")
		lbl, body := li.New("Lbl"), li.New("LBody")
		heads, first := 0, ""
		for k, line := range s.yarnLines(y, true) {
			name := line.name(sd)
			if k == 0 && len(s.p.Yarns) > 1 {
				name = words.YarnLetter(i) + "  " + name
			}
			lines = append(lines, linesOf(rich.T(name), s.tableHeadType, sd.right, lbl)...)
			if k == 0 {
				heads, first = len(lines), name
			}
			var figures []sized
			for z, a := range y.Amount {
				figures = append(figures, sized{sd.l.SizeName(s.p.Sizes[z]), line.value(a)})
			}
			lines = append(lines, s.namedLines(figures, s.tableType, s.boxW, sd.right-s.boxW, body)...)
			lbl = body // the second line goes on with the first
		}
		strips = append(strips, entry(lines, space, heads, s.entryAgain(first))...)
	}
	return strips
}

// entryAgain is the name of an item that goes on on another sheet.
func (s *setter) entryAgain(name string) layout.Box {
	sd := s.sides[0]
	text := name + ", " + sd.l.Say(words.ContinuedMark)
	return layout.Set(layout.Break(rich.T(text), s.tableHeadType, sd.right, 0), s.tableHeadType, 0, nil)
}

// linesOf sets a text at the edge of the block, each line by itself.
func linesOf(text rich.Text, style layout.Style, measure float64, elem *page.Elem) []layout.Box {
	var out []layout.Box
	for _, line := range layout.Break(text, style, measure, 0) {
		out = append(out, layout.Set([]layout.Line{line}, style, 0, elem))
	}
	return out
}
