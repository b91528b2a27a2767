package book

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/draw"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/scene"
)

// A pattern without a gauge, or of a shape that cannot be laid flat, has no drawing: its place is closed, not left white.

// drawn returns a scene if there is anything to see in it.
func drawn(s *scene.Scene, err error) *scene.Scene {
	if err != nil || s == nil || len(s.Items) == 0 {
		return nil
	}
	return s
}

func titleDrawing(p *plan.Pattern, high float64) *scene.Scene {
	return drawn(draw.Title(p, drawingW, high))
}

func schematic(p *plan.Pattern, high float64) *scene.Scene {
	return drawn(draw.Schematic(p, schematicW, high))
}

func hereDrawing(p *plan.Pattern, part int) *scene.Scene {
	return drawn(draw.Here(p, part, hereW, hereH), nil)
}

func motifPlan(p *plan.Pattern, part int, high float64) *scene.Scene {
	return drawn(draw.Motifs(p, part, drawingW, high), nil)
}

func chartGrid(p *plan.Pattern, chart int, wide, high float64) *scene.Scene {
	return drawn(draw.Chart(p, chart, wide, high), nil)
}

func symbol(f stitch.Form) *scene.Scene {
	s, _ := draw.Symbol(f)
	return drawn(s, nil)
}

// figure places a drawing and says, in the words of the first language, what it shows.
func (s *setter) figure(d *scene.Scene, x float64, parent *page.Elem) layout.Box {
	sd := s.sides[0]
	fig := sd.elem(parent, "Figure")
	fig.Alt = d.Title[sd.l.Code()]
	if desc := d.Desc[sd.l.Code()]; desc != "" {
		fig.Alt += ". " + desc
	}
	return layout.Drawing(d, x, fig)
}
