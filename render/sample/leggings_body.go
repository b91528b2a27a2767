package sample

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

func bodyPart() *plan.Part {
	p := &plan.Part{
		Name:    "body",
		Title:   plan.Text{"en": "Body", "es": "Cuerpo"},
		Called:  plan.Text{"en": "the body", "es": "el cuerpo"},
		Make:    1,
		Style:   plan.JoinedRounds,
		Yarn:    sand,
		Hook:    3750,
		Markers: []plan.Marker{{Name: "m1", Number: 1}, {Name: "m2", Number: 2}, {Name: "m3", Number: 3}, {Name: "m4", Number: 4}},
		Start:   plan.Start{Kind: plan.StartFrom, N: waist, Runs: []plan.Ref{bandFoundation()}, Fresh: true, Yarn: sand},
	}
	p.Steps = []plan.Step{bodyFirst(), bodyPlain(), countOff(), dividing(), &plan.Fasten{Off: true}}
	p.Worked = factsBySize(bodyFacts)
	p.From = []plan.Origin{{Kind: plan.RefFoundation, Part: waistband, Row: all(0), From: all(1), To: waist, Of: waist}}
	return p
}

func bandFoundation() plan.Ref {
	return plan.Ref{Kind: plan.RefFoundation, Part: waistband, Called: plan.Text{"en": "the waistband", "es": "la pretina"}, Pick: plan.EachOf, Count: waist, Below: true}
}

// bodyFirst works between the stitches of the waistband's first round, from its lower edge.
func bodyFirst() *plan.Row {
	return &plan.Row{
		First: all(1), Last: all(1), Times: all(1),
		Begin:  plan.Begin{Chains: 2, As: stitch.HDC},
		Work:   []plan.Instr{work(hdc, waist, plan.ToEnd, plan.Gap)},
		Join:   plan.Join{Kind: plan.JoinSlip, Into: plan.IntoFirst, Form: hdc},
		Counts: []plan.Count{{Kind: plan.CountForm, Form: hdc, N: waist}},
		Yarn:   sand,
	}
}

func bodyPlain() *plan.Row {
	tall := make(plan.Lengths, len(rise))
	for i, n := range rise {
		tall[i] = hdcHigh + plan.Length(n)*dcHigh
	}
	return &plan.Row{
		First: all(2), Last: plus(rise, 1), Times: rise,
		Begin:  counting(true),
		Work:   []plan.Instr{afterBegin(work(dc, waist, plan.ToEnd, plan.Stitch))},
		Join:   chainTop(),
		Counts: []plan.Count{{Kind: plan.CountForm, Form: dc, N: waist}},
		Yarn:   sand,
		Tall:   tall,
	}
}

func countOff() *plan.CountOff {
	sts := func(n plan.Nums) plan.OffItem { return plan.OffItem{N: n, Marker: -1} }
	mark := func(i int) plan.OffItem { return plan.OffItem{Marker: i} }
	return &plan.CountOff{Items: []plan.OffItem{
		sts(all(2)), mark(0), sts(leg), mark(1), sts(all(4)), mark(2), sts(leg), mark(3), sts(all(2)),
	}}
}

// The runs of the dividing round that the legs grow on.
var (
	rightBack = plan.Text{"en": "the right back", "es": "la parte trasera derecha"}
	midFront  = plan.Text{"en": "the front", "es": "la parte delantera"}
	leftBack  = plan.Text{"en": "the left back", "es": "la parte trasera izquierda"}
	legNames  = map[int]plan.Text{
		rightLeg: {"en": "the right leg", "es": "la pierna derecha"},
		leftLeg:  {"en": "the left leg", "es": "la pierna izquierda"},
	}
)

func dividing() *plan.Row {
	toMark := func(in plan.Instr, marker int, label string, called plan.Text) plan.Instr {
		in.Reach, in.Marker, in.Label, in.Called = plan.ToMark, marker, label, called
		return in
	}
	skip := plan.Instr{Op: plan.SkipOver, N: leg, Over: plan.Stitch, Yarn: -1}
	gap := func(label string, called plan.Text) plan.Instr {
		return plan.Instr{Op: plan.Chains, N: all(2), Label: label, Called: called, Marker: -1, Yarn: -1}
	}
	last := work(dc, all(2), plan.ToEnd, plan.Stitch)
	last.Label, last.Called = "back_b", leftBack
	return &plan.Row{
		First: divide, Last: divide, Times: all(1),
		Label: "divide", Called: plan.Text{"en": "Dividing round", "es": "Vuelta de división"},
		Begin: counting(false),
		Work: []plan.Instr{
			toMark(afterBegin(work(dc, all(2), plan.ToMark, plan.Stitch)), 0, "back_a", rightBack),
			gap("right_gap", legNames[rightLeg]),
			toMark(skip, 1, "right", legNames[rightLeg]),
			toMark(work(dc, all(4), plan.ToMark, plan.Stitch), 2, "front", midFront),
			gap("left_gap", legNames[leftLeg]),
			toMark(skip, 3, "left", legNames[leftLeg]),
			last,
		},
		Join: chainTop(),
		Counts: []plan.Count{
			{Kind: plan.CountForm, Form: dc, N: all(8)},
			{Kind: plan.CountSpaces, Chains: 2, N: all(2)},
		},
		Yarn: sand,
	}
}

func bodyFacts(i int) []plan.RowFact {
	rows := []plan.RowFact{roundFact(1, waist[i], waist[i], sand, hdc, plan.Plain)}
	for n := 2; n < divide[i]; n++ {
		rows = append(rows, roundFact(n, waist[i], waist[i], sand, dc, plan.Plain))
	}
	d := roundFact(divide[i], 8, 8, sand, dc, plan.Lace)
	d.Label, d.Spaces, d.Chains, d.Passed = "divide", 2, 4, 2*leg[i]
	d.Width = plan.Length(8+4) * stWide
	return append(rows, d)
}
