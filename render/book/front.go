package book

import (
	"math"
	"slices"
	"strings"

	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
)

// Measures of the title page.
const (
	introW       = 50.0
	drawingLeast = 50.0 // it is no smaller, whatever has to stand below
	drawingTight = 40.0 // but where no line of the cautions is then left for another page
	afterRule    = 7.5
	afterTitle   = 5.0
	captionGap   = 2.5
	factsGap     = 3.75
	factLabelW   = 21.0
	factGap      = 1.25
	frontTextW   = 88.0
)

// front sets the title page: who made what, what it is, what it looks like, what is needed, what to beware of. The
// drawing gives way so that cautions stand on the first page; on a narrow sheet, if there is no room for them at all, so that
// at least the facts do.
func (s *setter) front() {
	all, facts := s.opened(s.drawingH)
	if all <= s.frontH {
		return
	}
	high := s.lower(s.drawingH, all)
	for {
		all, _ = s.opened(high)
		if all <= s.frontH || high <= drawingLeast {
			break
		}
		high = s.lower(high, all)
	}
	if tight := high - layout.Snap(all-s.frontH) - layout.Module; all > s.frontH && high == drawingLeast && tight >= drawingTight {
		if all, _ = s.opened(tight); all > s.frontH {
			s.opened(high)
		}
	}
	if all <= s.frontH || s.arrangement != single {
		return
	}
	for high = s.drawingH; facts > s.frontH && high > drawingLeast; {
		high = s.lower(high, facts)
		_, facts = s.opened(high)
	}
	if facts > s.frontH || high == s.drawingH {
		s.opened(s.drawingH)
	}
}

// lower is a height of the drawing that makes the title page so much shorter as it is too tall.
func (s *setter) lower(high, page float64) float64 {
	return max(drawingLeast, high-layout.Snap(page-s.frontH))
}

// opened begins the document with the title page, the drawing so high. It returns how far down all goes on a sheet without end,
// and how far the facts go, behind which the cautions stand.
func (s *setter) opened(high float64) (all, facts float64) {
	const endless = 1e5
	s.room.give(s.flow, s.frontH)
	s.flow, s.root.Kids = nil, nil
	s.section()
	s.add(s.masthead(), s.titles())
	s.add(s.opening(high)...)
	s.add(s.facts()...)
	s.add(s.editionNotes()...)
	_, facts = layout.Fill(s.flow, endless, s.frontH)
	cautions := s.frontCautions()
	if len(cautions) > 0 && s.arrangement != single {
		s.flow[len(s.flow)-1].Keep = true // what is to be feared stands on the first page, whatever follows
	}
	s.add(cautions...)
	_, all = layout.Fill(s.flow, endless, s.frontH)
	return all, facts
}

// masthead is the line over the title: the designer and the edition, which goes below if both are long.
func (s *setter) masthead() layout.Strip {
	var b layout.Box
	by := layout.Break(rich.T(s.p.By), s.mastheadType, s.blockW, 0)
	b.Put(0, 0, layout.Set(by, s.mastheadType, 0, s.sect.New("P")))
	s.editionLine(&b, by)
	if b.H == 0 {
		return layout.Strip{}
	}
	b.H += 2
	b.Add(layout.Rule(0, b.H, s.blockW, b.H, 0.25))
	b.H = layout.Snap(b.H)
	return layout.Strip{Box: b, Keep: true}
}

// editionLine puts the edition, in each language, at the right of the line of the designer, or below if there is no room.
func (s *setter) editionLine(b *layout.Box, by []layout.Line) {
	var texts []string
	var elems []*page.Elem
	w := 0.0
	for _, sd := range s.sides {
		text := sd.l.Edition(s.p)
		for _, kind := range s.kinds(sd) {
			text += ", " + kind
		}
		if text = strings.TrimPrefix(text, ", "); text == "" || slices.Contains(texts, text) {
			continue
		}
		if n := len(texts); n > 0 {
			texts[n-1] += " · "
			w += s.editionType.Width(" · ", false)
		}
		texts = append(texts, text)
		elems = append(elems, sd.elem(s.sect, "P"))
		w += s.editionType.Width(text, false)
	}
	if len(texts) == 0 {
		return
	}
	last := 0.0
	if len(by) > 0 {
		last = by[len(by)-1].Width
	}
	if last+10+w > s.blockW {
		for i, text := range texts {
			lines := layout.Break(rich.T(strings.TrimSuffix(text, " · ")), s.editionType, s.blockW, 0)
			b.Below(0, layout.Set(lines, s.editionType, 0, elems[i]))
		}
		return
	}
	drop := max(b.H, s.mastheadType.Leading) - s.mastheadType.Leading + s.mastheadType.Baseline() - s.editionType.Baseline()
	x := s.blockW - w
	for i, text := range texts {
		b.Put(0, drop, layout.Text(text, s.editionType, false, x, elems[i]))
		x += s.editionType.Width(text, false)
	}
	b.H = float64(max(len(by), 1)) * s.mastheadType.Leading
}

// titleLevel is a type for a title, with the lines it may take in it.
type titleLevel struct {
	style layout.Style
	lines int
}

// titleLevels are the types for a title, the best first. In the large ones it has two lines, in the smaller ones more.
func (k *look) titleLevels() []titleLevel {
	var levels []titleLevel
	large := len(k.displays) - 2
	for _, style := range k.displays[:large] {
		levels = append(levels, titleLevel{style, 2})
	}
	return append(levels, titleLevel{k.displays[large-1], 3}, titleLevel{k.displays[large], 3}, titleLevel{k.displays[large+1], 100})
}

// titles sets the title of each language over its column, all in the largest type that serves all.
func (s *setter) titles() layout.Strip {
	style := s.displays[len(s.displays)-1]
	for _, level := range s.titleLevels() {
		if s.titleFits(level.style, level.lines) {
			style = level.style
			break
		}
	}
	b := s.each(func(sd side) layout.Box {
		h := sd.elem(s.sect, "H1")
		lines := layout.Break(rich.T(sd.l.Title(s.p)), style, s.titleRoom(sd), 0)
		return layout.Set(lines, style, sd.margin(), h)
	})
	b.H = layout.Snap(b.H)
	strip := layout.Strip{Box: b, Space: afterRule, Keep: true}
	s.bookmark(&strip, titleMark, 1, func(sd side) string { return sd.l.Title(s.p) })
	return strip
}

func (s *setter) titleRoom(sd side) float64 {
	if s.two() {
		return sd.w()
	}
	return s.blockW
}

func (s *setter) titleFits(style layout.Style, most int) bool {
	for _, sd := range s.sides {
		title := sd.l.Title(s.p)
		if len(layout.Break(rich.T(title), style, s.titleRoom(sd), 0)) > most {
			return false
		}
		for _, word := range strings.Fields(title) {
			if style.Width(word, false) > s.titleRoom(sd) {
				return false
			}
		}
	}
	return true
}

// opening sets the introduction beside the title drawing: with two languages one at either side of it.
func (s *setter) opening(high float64) []layout.Strip {
	drawn := s.titlePlate(high)
	switch s.arrangement {
	case apart:
		return []layout.Strip{s.openingApart(drawn)}
	case single:
		return s.openingSingle(drawn)
	}
	var b layout.Box
	for i, sd := range s.sides {
		x, w := sd.x, introW
		if drawn == nil {
			w = sd.w()
		} else if i == 1 {
			x = s.blockW - introW
		}
		b.Put(0, 0, s.intro(sd, x, w))
	}
	if drawn != nil {
		b.Put(0, 0, drawn.set((s.blockW-drawn.w)/2))
		b.H = layout.Snap(b.H) // the captions stand below the longest of the three
		if c := s.each(func(sd side) layout.Box { return drawn.caption(sd, sd.x, sd.w()) }); c.H > 0 {
			b.Below(captionGap, c)
		}
	}
	b.H = layout.Snap(b.H)
	return []layout.Strip{{Box: b, Space: afterTitle, Keep: true}}
}

// openingApart is the opening with one language on a wide sheet: the words at the left, facts among them, the drawing at the right.
func (s *setter) openingApart(drawn *plate) layout.Strip {
	sd := s.sides[0]
	w := frontTextW
	if drawn == nil {
		w = s.proseR
	}
	b := s.intro(sd, 0, w)
	b.Below(factsGap, s.factBox(0, w))
	b.H = layout.Snap(b.H)
	if drawn != nil {
		b.Put(0, 0, s.captioned(drawn, s.blockW-(s.drawingW+drawn.w)/2, func() layout.Box {
			return drawn.caption(sd, s.blockW-s.drawingW, s.drawingW)
		}))
		b.H = layout.Snap(b.H)
	}
	return layout.Strip{Box: b, Space: afterTitle, Keep: true}
}

// openingSingle is the opening with one column: the drawing, and below it the words.
func (s *setter) openingSingle(drawn *plate) []layout.Strip {
	sd := s.sides[0]
	var strips []layout.Strip
	if drawn != nil {
		b := s.captioned(drawn, (s.blockW-drawn.w)/2, func() layout.Box { return drawn.caption(sd, 0, s.blockW) })
		strips = append(strips, layout.Strip{Box: b, Space: afterTitle})
	}
	for i, block := range s.blocks(sd, s.p.Intro, s.introType, 0, s.blockW) {
		block.H = layout.Snap(block.H)
		strip := layout.Strip{Box: block.Box, Space: layout.Module}
		if i == 0 {
			strip.Space = factsGap
		}
		strips = append(strips, divided([]layout.Strip{strip}, s.introType.Leading)...)
	}
	return strips
}

// intro is the introduction.
func (s *setter) intro(sd side, x, w float64) layout.Box {
	var b layout.Box
	for i, block := range s.blocks(sd, s.p.Intro, s.introType, x, w) {
		space := layout.Module
		if i == 0 || block.close {
			space = 0
		}
		b.Below(space, block.Box)
	}
	return b
}

// facts sets the table of facts of two languages, the same fact at the same height; with one language they stand in the
// opening already.
func (s *setter) facts() []layout.Strip {
	if s.arrangement == apart {
		return nil
	}
	rows := s.factRows(func(nth int) (x, w float64) {
		if s.two() {
			return s.sides[nth].x, s.sides[nth].w()
		}
		return 0, s.blockW
	})
	if s.two() {
		return []layout.Strip{{Box: stacked(rows, factGap), Space: factsGap}}
	}
	var strips []layout.Strip
	for i, row := range rows {
		row.H = layout.Snap(row.H)
		strip := layout.Strip{Box: row, Space: factGap}
		if i == 0 {
			strip.Space = factsGap
		}
		strips = append(strips, strip)
	}
	return strips
}

func (s *setter) factBox(x, w float64) layout.Box {
	return stacked(s.factRows(func(int) (float64, float64) { return x, w }), factGap)
}

// factRows sets the facts as pairs of label and value.
func (s *setter) factRows(column func(nth int) (x, w float64)) []layout.Box {
	var rows []layout.Box
	lists := s.lists()
	for i, sd := range s.sides {
		x, w := column(i)
		facts := sd.l.Facts(s.p)
		label := factLabelW
		for _, f := range facts {
			label = max(label, math.Ceil(s.factType.Width(f.Head, true)+2))
		}
		for k, f := range facts {
			if k == len(facts)-1 && len(sd.l.Abbreviations(s.p)) > 0 { // the terms, which speak of the abbreviations
				f.Text = append(f.Text[:len(f.Text):len(f.Text)], rich.Run{Text: ", "}, s.onPageOf(sd, s.abbreviationsAt()))
			}
			if k == len(rows) {
				rows = append(rows, layout.Box{})
			}
			li := lists[i].New("LI")
			b := layout.Text(f.Head, s.factType, true, x, li.New("Lbl"))
			b.Put(0, 0, layout.Set(sd.broken(f.Text, s.factType, w-label, 0), s.factType, x+label, li.New("LBody")))
			rows[k].Put(0, 0, b)
		}
	}
	return rows
}

// stacked puts boxes one below the other.
func stacked(rows []layout.Box, gap float64) layout.Box {
	var b layout.Box
	for i, row := range rows {
		if i > 0 {
			b.H += gap
		}
		b.Below(0, row)
	}
	return b
}
