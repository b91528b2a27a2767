package book

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/render/draw"
	"ovillo/render/layout"
	"ovillo/render/rich"
	"ovillo/render/scene"
)

// This file sets charts among the rows of a part: grids before the first row that is worked from them, charts in symbols behind the
// last row that they show.

const (
	gridH      = 170.0 // a sheet of a grid is no taller
	stitchesH  = 150.0 // nor one of symbols
	keyGap     = 1.5   // above a symbol of a key
	keyMargin  = 3.0   // beside it
	keySymbolW = 14.0  // where the symbols of a key stand, in one column
	keyWhole   = 90.0  // a key that is no taller stays on one sheet
)

// grids sets the grids that a step is the first to be worked from.
func (s *setter) grids(step plan.Step) []set {
	var out []set
	for _, r := range plan.RowsOf(step) {
		if r.Chart == nil || s.charted[r.Chart.Chart] {
			continue
		}
		if s.charted == nil {
			s.charted = map[int]bool{}
		}
		i := r.Chart.Chart
		s.charted[i] = true
		k := s.larger(figuresLarge)
		sheets := draw.Grid(s.p, i, s.chartW()/k, gridH/k, s.speakers()...)
		key := draw.GridKey(s.p, i, s.speakers()...)
		out = append(out, s.chartSheets(sheets, k, key, nil, func(sd side) rich.Text { return rich.T(sd.l.ChartTitle(s.p, i)) })...)
	}
	return out
}

// stitchCharts sets the charts in symbols of part n whose last row a step works; with no step those that are left at the end of
// the part.
func (s *setter) stitchCharts(n int, step plan.Step) []set {
	var out []set
	for i, c := range s.p.Drawn {
		if c.Part != n || s.symbols[i] || step != nil && !c.EndsIn(step, s.p.Shown) {
			continue
		}
		if s.symbols == nil {
			s.symbols = map[int]bool{}
		}
		s.symbols[i] = true
		k := s.larger(symbolsLarge)
		sheets := draw.StitchChart(s.p, i, s.chartW()/k, stitchesH/k, s.speakers()...)
		key := draw.StitchKey(s.p, i, s.speakers()...)
		note := func(sd side) rich.Text { return rich.T(sd.l.Drawing().KeyNote) }
		out = append(out, s.chartSheets(sheets, k, key, note, func(sd side) rich.Text { return sd.l.StitchCaption(s.p, i) })...)
	}
	return out
}

// chartW is the width that a chart may have.
func (s *setter) chartW() float64 {
	if !s.two() {
		return s.sides[0].w()
	}
	return s.blockW
}

// chartSheets sets the sheets of a chart, the caption below each, the key below the last. They are drawn k times smaller than they are
// set.
func (s *setter) chartSheets(list []*scene.Scene, k float64, key []draw.KeyItem, note, caption func(side) rich.Text) []set {
	var out []set
	for _, d := range list {
		d = s.legible(drawn(d, nil).Enlarged(k))
		if d == nil {
			return nil // what is too small to be read is left out whole
		}
		x := (s.blockW - d.W) / 2
		if !s.two() {
			x = s.sides[0].x
		}
		item := s.list.New("LI").New("LBody") // it stands among the rows, and is read there
		b := s.figure(d, x, item)
		b.H = layout.Snap(b.H)
		b.Below(captionGap, s.each(func(sd side) layout.Box {
			return layout.Set(layout.Break(caption(sd), s.captionType, sd.w(), 0), s.captionType, sd.x, sd.elem(item, "P"))
		}))
		b.H = layout.Snap(b.H)
		out = append(out, set{strips: []layout.Strip{{Box: b, Space: s.rowSpace}}, leads: len(key) > 0})
	}
	if len(out) > 1 {
		key = append(slices.Clone(key), draw.SharedKey(s.speakers()...))
	}
	if len(out) > 0 && len(key) > 0 {
		out = append(out, set{strips: s.key(key, note), leads: true})
	}
	return out
}

// key sets the key of a chart, below what is said of all of it, if anything is: with two languages side by side each symbol on the
// axis between its two names, else before its name.
func (s *setter) key(items []draw.KeyItem, note func(side) rich.Text) []layout.Strip {
	var strips []layout.Strip
	high := 0.0
	add := func(b layout.Box) {
		high += b.H
		strips = append(strips, layout.Strip{Box: b})
	}
	if note != nil {
		item := s.list.New("LI").New("LBody")
		b := s.each(func(sd side) layout.Box {
			return layout.Set(layout.Break(note(sd), s.captionType, sd.w(), 0), s.captionType, sd.x, sd.elem(item, "P"))
		})
		b.H = layout.Snap(b.H)
		add(b)
	}
	for _, it := range items {
		add(s.keyLine(it))
	}
	strips[0].Space = s.rowSpace
	strips[len(strips)-1].H += layout.Module // what follows is no line of the key
	if high > keyWhole {
		return layout.Loosely(strips, 3)
	}
	return layout.Bind(strips)
}

// keyLine sets one line of a key: the symbol and its names, their middles at one height.
func (s *setter) keyLine(it draw.KeyItem) layout.Box {
	parent := s.list.New("LI").New("LBody")
	high := s.textType.Leading
	sign := drawn(it.Symbol, nil)
	if sign != nil {
		sign = s.inked(sign).Enlarged(s.larger(symbolsLarge))
		high = max(high, sign.H)
	}
	symbolW := keySymbolW * s.larger(figuresLarge)
	names := make([][]layout.Line, len(s.sides))
	for i, sd := range s.sides {
		w := sd.w() - symbolW
		if s.two() {
			w = sd.w() - keyMargin
		}
		names[i] = layout.Break(rich.T(it.Says[sd.l.Tag()]), s.textType, w, 0)
		high = max(high, float64(len(names[i]))*s.textType.Leading)
	}
	high = layout.Snap(high + keyGap)
	var b layout.Box
	for i, sd := range s.sides {
		y := (high - float64(len(names[i]))*s.textType.Leading) / 2
		switch elem := sd.elem(parent, "P"); {
		case s.two() && i == 0:
			b.Put(0, y, layout.SetRight(names[i], s.textType, sd.right-keyMargin, elem))
		case s.two():
			b.Put(0, y, layout.Set(names[i], s.textType, sd.x+keyMargin, elem))
		default:
			b.Put(0, y, layout.Set(names[i], s.textType, sd.x+symbolW, elem))
		}
	}
	if sign != nil {
		x := s.spine - sign.W/2
		if !s.two() {
			x = s.sides[0].x + (symbolW-keyMargin-sign.W)/2
		}
		b.Put(0, (high-sign.H)/2, layout.Drawing(sign, x))
	}
	b.H = high
	return b
}
