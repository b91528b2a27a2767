package book

import (
	"ovillo/compile/stitch"
	"ovillo/render/draw"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// A pattern without a gauge, or of a shape that cannot be laid flat, has no drawing: its place is closed, not left white.

// drawn returns a scene if there is anything to see in it.
func drawn(s *scene.Scene, err error) *scene.Scene {
	if err != nil || s == nil || len(s.Items) == 0 {
		return nil
	}
	return s
}

// once keeps drawings by their height: what stands in front is set twice, the second time with a list of contents, and to lay out a
// schematic takes as long as all the rows. A drawing is not written to once it is drawn.
type once map[float64]*scene.Scene

func (o *once) of(high float64, draw func() *scene.Scene) *scene.Scene {
	if *o == nil {
		*o = once{}
	}
	d, known := (*o)[high]
	if !known {
		d = draw()
		(*o)[high] = d
	}
	return d
}

func (s *setter) titleDrawing(high float64) *scene.Scene {
	return s.title.of(high, func() *scene.Scene { return drawn(draw.Title(s.p, s.drawingW, high, s.speakers()...)) })
}

func (s *setter) schematic(high float64) *scene.Scene {
	return s.flat.of(high, func() *scene.Scene {
		k := s.larger(lettersLarge)
		return s.legible(drawn(draw.Schematic(s.p, schematicW/k, high/k, s.speakers()...)).Enlarged(k))
	})
}

// In large print drawings are made for less room and then enlarged, so that their letters have 18 points and more: those of a
// schematic are 4 mm, the figures of grids 3.2 mm, those of charts in symbols 2.9 mm.
const (
	lettersLarge = 1.6
	figuresLarge = 2.0
	symbolsLarge = 2.25
)

// point is a point in millimetres.
const point = 25.4 / 72

// larger is k in large print and else 1.
func (s *setter) larger(k float64) float64 {
	if s.edition.Has(Large) {
		return k
	}
	return 1
}

// legible returns a drawing unless large print would have letters in it that are under 18 points. Such a drawing is left out:
// all that it shows is in the text as well.
func (s *setter) legible(d *scene.Scene) *scene.Scene {
	if d == nil || !s.edition.Has(Large) {
		return d
	}
	for _, it := range d.Items {
		if l, ok := it.(scene.Label); ok && l.Height < s.textType.Size*point-1e-9 {
			return nil
		}
	}
	return d
}

// hereDrawing says which of several parts is at hand.
func (s *setter) hereDrawing(part int) *scene.Scene {
	if len(s.p.Parts) == 1 {
		return nil // there is nowhere else to be
	}
	if s.small == nil {
		s.small = draw.SmallPieceOf(s.p, hereW, hereH)
	}
	return drawn(s.small.Here(part, s.speakers()...), nil)
}

func (s *setter) mapDrawing() *scene.Scene {
	k, high := s.larger(figuresLarge), mapH
	if s.edition.Has(Large) {
		high = mapHLarge
	}
	return s.mapped.of(high, func() *scene.Scene {
		return s.legible(drawn(draw.Map(s.p, s.blockW/k, high/k, s.speakers()...), nil).Enlarged(k))
	})
}

func (s *setter) motifDrawing(part int, high float64) *scene.Scene {
	k := s.larger(figuresLarge)
	wide := s.drawingW
	if s.edition.Has(Large) {
		wide = s.sides[0].w() // a motif is as large as its number needs
	}
	return s.legible(drawn(draw.Motifs(s.p, part, wide/k, high/k, s.speakers()...), nil).Enlarged(k))
}

// speakers are the languages in which drawings are described.
func (s *setter) speakers() []*words.Language {
	var list []*words.Language
	for _, sd := range s.sides {
		list = append(list, sd.l)
	}
	return list
}

func symbol(f stitch.Form) *scene.Scene {
	s, _ := draw.Symbol(f)
	return drawn(s, nil)
}

// inked is a drawing for the hand and the ink of the edition.
func (s *setter) inked(d *scene.Scene) *scene.Scene {
	if s.edition.Has(LeftHanded) {
		d = d.Mirrored()
	}
	if s.edition.Has(LowInk) {
		d = d.LowInk()
	}
	return d
}

// figure places a drawing and says, in the words of each language, what it shows. An element speaks one language: so
// there is one for each over the same place, and each holds something of the drawing, since one that holds nothing is not
// read.
func (s *setter) figure(d *scene.Scene, x float64, parent *page.Elem) layout.Box {
	d = s.inked(d)
	figures := make([]*page.Elem, len(s.sides))
	for i, sd := range s.sides {
		figures[i] = sd.elem(parent, "Figure")
		figures[i].Alt = d.Title[sd.l.Tag()]
		if desc := d.Desc[sd.l.Tag()]; desc != "" {
			figures[i].Alt += ". " + desc
		}
	}
	return layout.Drawing(d, x, figures...)
}
