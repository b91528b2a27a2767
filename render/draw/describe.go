package draw

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// titleWords says what the title drawing shows.
func titleWords(l *layout, s *scene.Scene, langs []*words.Language) {
	p := l.g.p
	marks := l.g.marks()
	for lang, w := range speak(langs) {
		s.Title[lang] = fmt.Sprintf(w.Piece, w.Title(p))
		said := []string{fmt.Sprintf(w.Line, w.sizeOf(p))}
		said = append(said, l.shapes(w)...)
		for _, y := range slices.Sorted(maps.Keys(marks)) {
			if look := w.looks(marks[y]); look != "" && y >= 0 && y < len(p.Yarns) {
				said = append(said, fmt.Sprintf(w.Yarn, w.YarnName(p.Yarns[y]), look))
			}
		}
		if l.ribbed() {
			said = append(said, w.Ribs)
		}
		s.Desc[lang] = strings.Join(said, " ")
	}
}

// schematicWords says what the schematic shows.
func schematicWords(l *layout, s *scene.Scene, langs []*words.Language) {
	p := l.g.p
	for lang, w := range speak(langs) {
		s.Title[lang] = fmt.Sprintf(w.Schematic, w.Title(p))
		said := []string{fmt.Sprintf(w.Flat, w.sizeOf(p))}
		said = append(said, l.shapes(w)...)
		said = append(said, l.signs(w)...)
		for _, m := range p.Measures {
			if m.Letter == "" || l.home(m) == nil || p.Shown < 0 || p.Shown >= len(m.Values) || m.Values[p.Shown] == plan.NoLength {
				continue
			}
			form := w.Measure
			if m.Half {
				form = w.Half
			}
			said = append(said, fmt.Sprintf(form, m.Letter, w.MeasureName(m), w.cm(m.Values[p.Shown].Cm())))
		}
		s.Desc[lang] = strings.Join(said, " ")
	}
}

// broken reports whether a piece is drawn shorter than it is.
func (l *layout) broken() bool {
	for _, gr := range l.groups {
		for _, pt := range gr.patches {
			if pt.brake != nil {
				return true
			}
		}
	}
	return false
}

// signs explains the signs on the lines.
func (l *layout) signs(w speech) []string {
	begins, waits, short, markers := false, false, false, false
	for _, gr := range l.groups {
		for _, pt := range gr.patches {
			begins, waits = begins || l.g.beginning(pt) != onAnother, waits || l.g.waits(pt)
			short = short || len(pt.shortRows()) > 0
			markers = markers || len(l.g.markersOn(pt)) > 0
		}
	}
	var said []string
	if begins {
		said = append(said, w.Begin)
	}
	if waits {
		said = append(said, w.Wait)
	}
	if markers {
		said = append(said, w.Marker)
	}
	if l.broken() {
		said = append(said, w.Broken)
	}
	if short {
		said = append(said, w.Short)
	}
	return said
}

// ribbed reports whether any row is a rib.
func (l *layout) ribbed() bool {
	for _, pc := range l.g.pieces {
		for _, r := range pc.rows {
			if r.texture == plan.Rib {
				return true
			}
		}
	}
	return false
}

// shapes describes every part as it is drawn, and how parts hang together.
func (l *layout) shapes(w speech) []string {
	if len(l.groups) == 0 {
		return []string{w.Empty}
	}
	var said []string
	for _, gr := range l.groups {
		told := map[int]*patch{}
		for _, pt := range gr.patches {
			if told[pt.pc.part] == nil {
				told[pt.pc.part] = pt
			}
		}
		for _, part := range slices.Sorted(maps.Keys(told)) {
			said = append(said, l.shape(told[part], w))
		}
		if s := gr.limbs(w); s != "" {
			said = append(said, s)
		}
		if n := gr.made(l.g.p); n > 1 {
			said = append(said, fmt.Sprintf(w.Made, n))
		}
		if gr.patches[0].pc.folded {
			said = append(said, w.Open)
		}
		said = append(said, gr.direction(w))
	}
	return said
}

// shape describes a part in one sentence.
func (l *layout) shape(pt *patch, w speech) string {
	name := w.PartTitle(l.g.p, pt.pc.part)
	pieces := l.g.of[pt.pc.part]
	tall, widest := 0.0, 0.0
	for _, i := range pieces {
		tall += l.g.pieces[i].tall()
		widest = max(widest, l.g.pieces[i].widest())
	}
	first, last := l.g.pieces[pieces[0]], l.g.pieces[pieces[len(pieces)-1]]
	end := last.rows[len(last.rows)-1].flat
	switch {
	case pt.rings && (pt.pc.point || pt.pc.oval):
		b := pt.bounds()
		return fmt.Sprintf(w.Disc, name, w.cm(b.width()))
	case pt.rings:
		return fmt.Sprintf(w.OnEdge, name)
	case first.start < 0.25*widest || end < 0.25*widest:
		return fmt.Sprintf(w.Dome, name, w.cm(widest), w.cm(tall))
	case pt.pc.folded:
		return fmt.Sprintf(w.Sheet, name, w.cm(2*first.start), w.cm(2*end), w.cm(tall))
	case pt.pc.closed:
		return fmt.Sprintf(w.Tube, name, w.cm(first.start), w.cm(end), w.cm(tall))
	}
	return fmt.Sprintf(w.Sheet, name, w.cm(first.start), w.cm(end), w.cm(tall))
}

// limbs says what stands out at the sides of a group.
func (gr *group) limbs(w speech) string {
	sides, yoke := map[int]int{}, false
	for _, pt := range gr.patches {
		if pt.pc.closed && pt.side != 0 && pt.forks[0] {
			sides[pt.side]++
		}
		yoke = yoke || len(pt.seams) > 0 || pt.pc.goesOn
	}
	switch {
	case sides[-1] == 0 && sides[1] == 0:
		return ""
	case sides[-1] > 0 && sides[1] > 0 && yoke:
		return w.Sleeves
	case sides[-1] > 0 && sides[1] > 0:
		return w.Legs
	}
	return w.Branch
}

// direction says which way most of a group is worked.
func (gr *group) direction(w speech) string {
	main := gr.largest()
	switch {
	case main.rings:
		return w.Outward
	case main.worked().y > 0:
		return w.Down
	}
	return w.Up
}

// largest is the patch with the largest area.
func (gr *group) largest() *patch {
	best := gr.patches[0]
	for _, pt := range gr.patches {
		if pt.pc.area() > best.pc.area()*1.001 {
			best = pt
		}
	}
	return best
}

// worked is the direction in which a patch is worked.
func (pt *patch) worked() vec {
	if pt.outward {
		return pt.f.along
	}
	return pt.f.along.times(-1)
}
