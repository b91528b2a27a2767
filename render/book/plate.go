package book

import (
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// plate is the picture of the title page: the photograph, if the pattern has one, else the drawing.
type plate struct {
	w, h    float64
	set     func(x float64) layout.Box
	caption func(sd side, x, w float64) layout.Box
}

// titlePlate makes the picture of the title page, no taller than high; nil if there is none.
func (s *setter) titlePlate(high float64) *plate {
	if photo := s.photoPlate(high); photo != nil {
		return photo
	}
	drawn := s.titleDrawing(high)
	if drawn == nil {
		return nil
	}
	return s.drawingPlate(drawn)
}

func (s *setter) drawingPlate(drawn *scene.Scene) *plate {
	return &plate{w: drawn.W, h: drawn.H,
		set:     func(x float64) layout.Box { return s.figure(drawn, x, s.sect) },
		caption: func(sd side, x, w float64) layout.Box { return s.caption(s.sect, words.DrawingCaption, sd, x, w) },
	}
}

// photoPlate makes the plate of the photograph; nil without one, and where ink is to be saved.
func (s *setter) photoPlate(high float64) *plate {
	photo := s.p.Photo
	if photo == nil || photo.Data == nil || s.edition.Has(LowInk) {
		return nil
	}
	wide := s.drawingW
	if s.arrangement == single {
		wide = s.blockW
	}
	w, h := wide, wide*float64(photo.H)/float64(photo.W)
	if h > high {
		w, h = high*float64(photo.W)/float64(photo.H), high
	}
	return &plate{w: w, h: h,
		set: func(x float64) layout.Box { return s.photograph(x, w, h) },
		caption: func(sd side, x, w float64) layout.Box {
			text := sd.l.PhotoCaption(s.p)
			if text == nil {
				return layout.Box{}
			}
			return layout.Set(layout.Break(text, s.captionType, w, 0), s.captionType, x, sd.elem(s.sect, "P"))
		},
	}
}

// photoFrame is a hairline, so that a photograph on a white ground has an edge.
const photoFrame = hairline

// photograph sets the photograph in its frame. A figure speaks one language: that of the first holds the picture, that of the
// second the frame, since an element that holds nothing is not read.
func (s *setter) photograph(x, w, h float64) layout.Box {
	b := layout.Box{H: h}
	frame := layout.Frame(x, 0, w, h, photoFrame)
	for i, sd := range s.sides {
		fig := sd.elem(s.sect, "Figure")
		fig.Alt = sd.l.PhotoAlt(s.p)
		fig.Box = &[4]float64{x, 0, w, h}
		if i == 0 {
			b.Add(page.Picture{X: x, W: w, H: h, Data: s.p.Photo.Data, Format: s.p.Photo.Format, Elem: fig})
		}
		frame.Elem = fig
		b.Figures = append(b.Figures, fig)
	}
	b.Add(frame)
	return b
}

// captioned sets a plate with its captions below.
func (s *setter) captioned(p *plate, x float64, captions func() layout.Box) layout.Box {
	b := p.set(x)
	b.H = layout.Snap(b.H)
	if c := captions(); c.H > 0 {
		b.Below(captionGap, c)
		b.H = layout.Snap(b.H)
	}
	return b
}

// caption says what a drawing of the size that is shown shows.
func (s *setter) caption(parent *page.Elem, key words.Key, sd side, x, w float64) layout.Box {
	size := ""
	if s.p.Shown >= 0 && s.p.Shown < s.sizes {
		size = upperFirst(sd.l.InSize(s.p.Sizes[s.p.Shown]))
	}
	text := rich.T(sd.l.SayWith(key, size))
	return layout.Set(layout.Break(text, s.captionType, w, 0), s.captionType, x, sd.elem(parent, "P"))
}
