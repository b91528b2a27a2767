package sample

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// factsBySize makes the facts of a part for every size.
func factsBySize(f func(size int) []plan.RowFact) [][]plan.RowFact {
	facts := make([][]plan.RowFact, len(waist))
	for i := range facts {
		facts[i] = f(i)
	}
	return facts
}

// roundFact is a round of one form.
func roundFact(number, sts, taken, yarn int, f stitch.Form, look plan.Texture) plan.RowFact {
	high := dcHigh
	if f.ID == stitch.HDC {
		high = hdcHigh
	}
	return plan.RowFact{
		Number: number, Stitches: sts, Taken: taken, Width: plan.Length(sts) * stWide, Height: high,
		Closed: true, Yarn: yarn, Texture: look, Tall: f.ID, ByForm: plan.Tally[stitch.Form]{{Of: f, N: sts}},
	}
}

// ribFact is a round of front and back post stitches by turns.
func ribFact(number, sts, yarn int) plan.RowFact {
	r := roundFact(number, sts, sts, yarn, hdc, plan.Rib)
	r.ByForm = plan.Tally[stitch.Form]{{Of: front, N: sts / 2}, {Of: back, N: sts / 2}}
	return r
}
