package draw

import (
	"errors"
	"fmt"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// ErrNoGauge says that a length the drawing rests on is not known, because a gauge is missing.
var ErrNoGauge = errors.New("a width or height is not known without a gauge")

// course is one row of the fabric as it lies on the table, in centimetres.
type course struct {
	number  int
	flat    float64 // width: of a row; half the circumference of a round
	high    float64
	stitch  float64 // width of one stitch, 0 if there is none
	closed  bool
	wrong   bool
	yarn    int
	texture plan.Texture
	waves   int     // valleys of a ripple, 0 if the row is straight
	folded  bool    // it lies folded round the wearer: open in the middle of the front, and drawn half as wide as it is
	short   float64 // width of a short row within a tube, on one face of it; 0 for others
	passed  bool    // it left places aside
	places  int     // of its edge: stitches and spaces
	exact   bool    // its width must be drawn as it is, since something is measured or joined here
}

// courses reads the rows of a part in a size.
func courses(p *plan.Pattern, part, size int) ([]course, error) {
	worked := p.Parts[part].Worked
	if size < 0 || size >= len(worked) {
		return nil, nil
	}
	rows := make([]course, 0, len(worked[size]))
	for _, f := range worked[size] {
		if f.Width < 0 || f.Height < 0 {
			return nil, fmt.Errorf("%s, row %d: %w", p.Parts[part].Name, f.Number, ErrNoGauge)
		}
		rows = append(rows, lay(f, f.Width.Cm(), f.Height.Cm()))
	}
	ripples(p.Parts[part], rows, size)
	return rows, nil
}

// guessed reads the rows of a part by the nominal heights of stitches, as if a stitch were half as wide as a dc is tall:
// enough for a picture without measures.
func guessed(p *plan.Pattern, part, size int) []course {
	worked := p.Parts[part].Worked
	if size < 0 || size >= len(worked) {
		return nil
	}
	rows := make([]course, 0, len(worked[size]))
	for _, f := range worked[size] {
		high := 1.0
		if k, ok := stitch.Of(f.Tall); ok && k.Height > 0 {
			high = k.Height
		}
		rows = append(rows, lay(f, float64(max(f.Stitches+f.Chains, 0)), high))
	}
	return rows
}

func lay(f plan.RowFact, width, high float64) course {
	c := course{
		number: f.Number, flat: width, high: high, closed: f.Closed, wrong: f.Wrong, yarn: f.Yarn, texture: f.Texture,
		passed: f.Passed > 0, places: f.Stitches + f.Spaces,
	}
	if n := f.Stitches + f.Chains; n > 0 {
		c.stitch = width / float64(n)
	}
	if f.Closed {
		c.flat = width / 2
	}
	return c
}

// ripples marks the rows of a ripple: rows that draw places together or pass them over in several spots and yet are as
// wide as the row below, so that between two valleys stands a peak.
func ripples(part *plan.Part, rows []course, size int) {
	facts, steps := part.Worked[size], rowSteps(part, size)
	for i := range rows {
		if i > 0 && facts[i].Stitches != facts[i-1].Stitches || facts[i].Chains > 0 {
			continue
		}
		valleys := 0
		for form, n := range facts[i].ByForm.All() {
			if form.Together > 1 {
				valleys += n
			}
		}
		if row := steps[facts[i].Number]; valleys == 0 && row != nil {
			_, _, valleys = effects(row.Work, size)
		}
		// Clusters and shells of a lace stand closer than the valleys of any ripple.
		const apart = 8
		if valleys > 1 && facts[i].Stitches >= apart*valleys {
			rows[i].waves = valleys
		}
	}
}
