// Package sample holds patterns built by hand: fixtures for the packages that write, set and draw a checked pattern.
//
// The designs, names and people in them are invented. The figures close: every row takes what the row below offers, in
// every size, and the tests of this package prove it. A fixture shows how the types of package plan are filled in, so
// it follows their comments to the letter. Ask for a new one in each test; callers may change what they get.
package sample

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// Indexes of the parts and yarns of the leggings.
const (
	waistband = iota
	body
	rightLeg
	leftLeg
)

const (
	sand = iota
	kelp
)

// The forms the leggings are made of.
var (
	chain = form(stitch.Chain)
	slip  = form(stitch.Slip)
	hdc   = form(stitch.HDC)
	dc    = form(stitch.DC)
	front = stitch.Form{ID: stitch.HDC, Post: stitch.FrontPost, Together: 1}
	back  = stitch.Form{ID: stitch.HDC, Post: stitch.BackPost, Together: 1}
	dec   = stitch.Form{ID: stitch.DC, Together: 2}
)

func form(id stitch.ID) stitch.Form { return stitch.Form{ID: id, Together: 1} }

// The counts of the leggings, one a size: what all other figures follow from.
var (
	waist    = plan.Nums{112, 116, 120, 124} // stitches around waist and hips
	leg      = plan.Nums{52, 54, 56, 58}     // stitches skipped for one leg: (waist - 8) / 2
	thigh    = plan.Nums{58, 60, 62, 64}     // leg + 6
	ankle    = plan.Nums{44, 44, 48, 48}
	rise     = plan.Nums{16, 17, 18, 19} // plain rounds of the body
	divide   = plan.Nums{18, 19, 20, 21} // number of the dividing round
	shaped   = plan.Nums{7, 8, 7, 8}     // decrease rounds of a leg
	every    = plan.Nums{2, 2, 3, 3}     // of how many rounds one is a decrease round
	straight = plan.Nums{4, 6, 5, 6}     // plain rounds between the shaping and the cuff
)

const (
	ribRounds = 3
	dcHigh    = 10 * plan.Millimetre // a round of dc: 10 to 10 cm
	hdcHigh   = 8 * plan.Millimetre  // a round of hdc: 12.5 to 10 cm
	stWide    = 5 * plan.Millimetre  // 20 stitches to 10 cm
)

// Leggings is a pattern for children's leggings in four sizes, worked from the waist down: a ribbed waistband, a body
// that is divided by counting off, and two legs with ribbed cuffs, whose shaping differs in structure between sizes.
func Leggings() *plan.Pattern {
	p := &plan.Pattern{
		Name:      "vega_leggings",
		Title:     plan.Text{"en": "Vega leggings", "es": "Mallas Vega"},
		By:        "Marta Lucena",
		Edition:   2,
		Date:      "2026-03",
		Level:     "easy",
		Kind:      "trousers",
		Languages: []string{"en", "es"},
		Intro: prose("Soft leggings for toddlers, worked from the waist down **without a seam**. Ribbed waistband and cuffs hold them in place.",
			"Mallas suaves para peques, tejidas de la cintura hacia abajo y **sin costuras**. La pretina y los puños en elástico las sujetan."),
		Care: prose("Wash by hand or at 30 °C (86 °F), dry flat, do not iron the ribs.",
			"Lavar a mano o a 30 °C, secar en plano, no planchar los elásticos."),
		Licence: prose("What you make is yours to wear, give or sell. Please do not copy or resell the pattern.",
			"Lo que se teje con este patrón puede usarse, regalarse o venderse. El patrón no debe copiarse ni revenderse."),
		Changes: prose("Cord shortened in all sizes. Corrections: [studio.example/vega](https://studio.example/vega)",
			"Cordón más corto en todas las tallas. Correcciones: [studio.example/vega](https://studio.example/vega)"),
		Sizes: []plan.Size{size("1 y", "1 año", 12), size("2 y", "2 años", 24), size("3 y", "3 años", 36), size("4 y", "4 años", 48)},
		Shown: 1,
		Body: []plan.BodyMeasure{
			{Name: "waist", Values: cm(50.5, 53, 54.5, 56)},
			{Name: "hips", Values: cm(53, 55, 57, 59.5)},
			{Name: "inseam", Values: cm(24, 28, 32.5, 36)},
			{Name: "height", Values: cm(80, 92, 98, 104)},
		},
		Gauges: []plan.Gauge{
			{Stitch: stitch.DC, Over: 10 * plan.Centimetre, Sts: 20000, Rows: 10000, Rounds: true},
			{Stitch: stitch.HDC, Over: 10 * plan.Centimetre, Sts: 20000, Rows: 12500, Rounds: true},
		},
		Hooks:     []plan.Length{3750, 3250},
		Yarns:     yarns(),
		Parts:     []*plan.Part{waistbandPart(), bodyPart(), legPart(rightLeg), legPart(leftLeg)},
		Finish:    finishing(),
		Measures:  measures(),
		Allowance: 100,
		Notions:   plan.Notions{Markers: 4, Needle: true, Pin: true},
		Contents:  contents(),
		Cautions:  cautions(),
		Stitches:  []stitch.Form{chain, slip, hdc, front, back, dc, dec},
		Source:    []byte("pattern vega_leggings\n  title en \"Vega leggings\" es \"Mallas Vega\"\nend\n"),
	}
	note := prose("Hips: {hips} around.", "Cadera: {hips} de contorno.")
	note.Values = map[string]plan.Value{"hips": {Lengths: around(waist)}}
	p.Notes = []plan.Prose{note}
	return p
}

func prose(en, es string) plan.Prose { return plan.Prose{Text: plan.Text{"en": en, "es": es}} }

func size(en, es string, months int) plan.Size {
	return plan.Size{Name: en, Names: plan.Text{"en": en, "es": es}, Age: months}
}

func cm(values ...float64) plan.Lengths {
	ls := make(plan.Lengths, len(values))
	for i, v := range values {
		ls[i] = plan.Length(v*10+0.5) * plan.Millimetre
	}
	return ls
}

// around gives the length of a round of so many stitches, size by size.
func around(n plan.Nums) plan.Lengths {
	ls := make(plan.Lengths, len(n))
	for i, v := range n {
		ls[i] = plan.Length(v) * stWide
	}
	return ls
}

// each works out a number for every size.
func each(f func(size int) int) plan.Nums {
	n := make(plan.Nums, len(waist))
	for i := range n {
		n[i] = f(i)
	}
	return n
}

func all(v int) plan.Nums { return each(func(int) int { return v }) }

func plus(n plan.Nums, v int) plan.Nums { return each(func(i int) int { return n[i] + v }) }
