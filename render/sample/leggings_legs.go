package sample

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// fork says where a leg grows on the dividing round. The edge of that round is dc, dc, space, 4 dc, space, dc, dc.
type fork struct {
	name       string
	title      plan.Text
	gap, run   string
	place      int // of the space along the dividing round, from 1
	near, far  plan.Ref
	skippedOff func(size int) int // stitches of the round before that lie before the run
}

func forkOf(part int) fork {
	if part == rightLeg {
		return fork{
			name: "right_leg", title: plan.Text{"en": "Right leg", "es": "Pierna derecha"},
			gap: "right_gap", run: "right", place: 3,
			near:       divided("back_a", rightBack, 2, plan.LastOf),
			far:        divided("front", midFront, 4, plan.FirstOf),
			skippedOff: func(int) int { return 2 },
		}
	}
	return fork{
		name: "left_leg", title: plan.Text{"en": "Left leg", "es": "Pierna izquierda"},
		gap: "left_gap", run: "left", place: 8,
		near:       divided("front", midFront, 4, plan.LastOf),
		far:        divided("back_b", leftBack, 2, plan.FirstOf),
		skippedOff: func(i int) int { return 2 + leg[i] + 4 },
	}
}

func divided(label string, called plan.Text, count int, pick plan.Pick) plan.Ref {
	return plan.Ref{Kind: plan.RefStitches, Part: body, Label: label, Called: called, Pick: pick, Row: divide, Count: all(count), Form: dc}
}

func legPart(part int) *plan.Part {
	f := forkOf(part)
	space := plan.Ref{Kind: plan.RefSpace, Part: body, Label: f.gap, Called: legNames[part], Row: divide, Count: all(1), Chains: all(2)}
	skipped := plan.Ref{Kind: plan.RefSkipped, Part: body, Label: f.run, Called: legNames[part], Pick: plan.EachOf, Row: divide, Count: leg}
	p := &plan.Part{
		Name:   f.name,
		Title:  f.title,
		Called: legNames[part],
		Make:   1,
		Style:  plan.JoinedRounds,
		Yarn:   sand,
		Hook:   3750,
		Start:  plan.Start{Kind: plan.StartIn, N: thigh, Runs: []plan.Ref{space}, Fresh: true, Yarn: sand},
	}
	p.Steps = []plan.Step{
		legFirst(f, space, skipped), shapingBy(2), shapingBy(3), legPlain(),
		ribRow(plus(plainEnd(), 1), ankle, plan.Begin{Chains: 2, As: stitch.HDC}, true),
		&plan.Fasten{Off: true},
	}
	p.Worked = factsBySize(legFacts)
	p.From = legOrigins(f)
	return p
}

// legFirst is the round around the leg's opening: into the space, the side and the base of the stitch at its end, each
// skipped stitch, and the base and side of the stitch at its other end.
func legFirst(f fork, space, skipped plan.Ref) *plan.Row {
	at := func(reach plan.Reach, ref plan.Ref, n plan.Nums, over plan.PlaceKind) plan.Instr {
		in := work(dc, n, reach, over)
		in.Ref = &ref
		return in
	}
	// The beginning chain is the first of the two stitches in the space; the other is left to say, and goes where the
	// chain stands.
	rest := at(plan.Same, space, all(1), plan.Space)
	rest.Per, rest.Chains, rest.AfterBegin = all(1), all(2), true
	return &plan.Row{
		First: all(1), Last: all(1), Times: all(1), Label: "first",
		Begin: counting(false),
		Work: []plan.Instr{
			rest,
			at(plan.BesideOf, f.near, all(1), plan.Stitch),
			at(plan.BelowOf, f.near, all(1), plan.Stitch),
			at(plan.At, skipped, leg, plan.Unworked),
			at(plan.BelowOf, f.far, all(1), plan.Stitch),
			at(plan.BesideOf, f.far, all(1), plan.Stitch),
		},
		Join:   chainTop(),
		Counts: []plan.Count{{Kind: plan.CountForm, Form: dc, N: thigh}},
		Yarn:   sand,
	}
}

// shapingBy is the shaping of the sizes in which one round of so many is a decrease round.
func shapingBy(period int) *plan.Block {
	only := func(f func(i int) int) plan.Nums {
		return each(func(i int) int {
			if every[i] != period {
				return plan.Absent
			}
			return f(i)
		})
	}
	b := &plan.Block{
		Times:  only(func(i int) int { return shaped[i] }),
		First:  only(func(int) int { return 2 }),
		Last:   only(shapedEnd),
		Counts: []plan.Count{{Kind: plan.CountForm, Form: dc, N: only(func(i int) int { return ankle[i] })}},
		Change: []plan.Count{{Kind: plan.CountForm, Form: dc, N: only(func(int) int { return -2 })}},
		For:    make(plan.Sizes, len(every)),
	}
	for i, e := range every {
		b.For[i] = e == period
	}
	// The numbers of these two differ from pass to pass: only how far they go can be said.
	plain := work(dc, nil, plan.ToEnd, plan.Stitch)
	middle := work(dc, nil, plan.ToLast, plan.Stitch)
	middle.Last = all(3)
	two := plan.Instr{Op: plan.Decrease, Form: dec, N: only(func(int) int { return 1 }), Marker: -1, Yarn: -1}
	plainRow := &plan.Row{
		First: only(func(int) int { return 2 }), Last: only(func(int) int { return period }), Times: only(func(int) int { return period - 1 }),
		For: b.For, Begin: counting(false), Work: []plan.Instr{lessened(plain)}, Join: chainTop(), Yarn: sand,
	}
	decRow := &plan.Row{
		First: only(func(int) int { return period + 1 }), Last: only(func(int) int { return period + 1 }), Times: only(func(int) int { return 1 }),
		For: b.For, Label: "less", Called: plan.Text{"en": "Decrease round", "es": "Vuelta de disminución"}, Begin: counting(false),
		Work: []plan.Instr{
			lessened(work(dc, only(func(int) int { return 1 }), plan.Next, plan.Stitch)),
			two, middle, two,
			work(dc, only(func(int) int { return 1 }), plan.Last, plan.Stitch),
		},
		Join: chainTop(), Yarn: sand,
	}
	b.Rows = []*plan.Row{plainRow, decRow}
	return b
}

// lessened is afterBegin for an instruction that some sizes do not have.
func lessened(in plan.Instr) plan.Instr {
	n := in.N
	in.AfterBegin = true
	if n == nil {
		return in
	}
	in.N = each(func(i int) int {
		if n[i] == plan.Absent {
			return plan.Absent
		}
		return n[i] - 1
	})
	return in
}

func shapedEnd(i int) int { return 1 + every[i]*shaped[i] }

func plainEnd() plan.Nums { return each(func(i int) int { return shapedEnd(i) + straight[i] }) }

func legPlain() *plan.Row {
	tall := make(plan.Lengths, len(straight))
	for i, n := range plainEnd() {
		tall[i] = plan.Length(n) * dcHigh
	}
	return &plan.Row{
		First: each(func(i int) int { return shapedEnd(i) + 1 }), Last: plainEnd(), Times: straight,
		Begin:  counting(false),
		Work:   []plan.Instr{afterBegin(work(dc, ankle, plan.ToEnd, plan.Stitch))},
		Join:   chainTop(),
		Counts: []plan.Count{{Kind: plan.CountForm, Form: dc, N: ankle}},
		Yarn:   sand,
		Tall:   tall,
	}
}

func legFacts(i int) []plan.RowFact {
	sts := thigh[i]
	first := roundFact(1, sts, sts, sand, dc, plan.Plain)
	first.Label = "first"
	// The space is one place that takes two stitches.
	first.Taken = sts - 1
	rows := []plan.RowFact{first}
	for n := 2; n <= shapedEnd(i); n++ {
		taken := sts
		if (n-1)%every[i] == 0 {
			sts -= 2
		}
		r := roundFact(n, sts, taken, sand, dc, plan.Plain)
		if sts < taken {
			r.Label = "less"
			r.ByForm = plan.Tally[stitch.Form]{{Of: dc, N: sts - 2}, {Of: dec, N: 2}}
		}
		rows = append(rows, r)
	}
	for range straight[i] {
		rows = append(rows, roundFact(len(rows)+1, sts, sts, sand, dc, plan.Plain))
	}
	for range ribRounds {
		rows = append(rows, ribFact(len(rows)+1, sts, kelp))
	}
	return rows
}

// legOrigins lists the places of a leg's first round. Places are counted from 1; the ends are included.
func legOrigins(f fork) []plan.Origin {
	before := plus(divide, -1)
	off := each(f.skippedOff)
	one := func(kind plan.RefKind, label string, row plan.Nums, at, of plan.Nums) plan.Origin {
		return plan.Origin{Kind: kind, Part: body, Label: label, Row: row, From: at, To: at, Of: of}
	}
	near, far := all(f.place-1), all(f.place+1)
	nearBelow, farBelow := off, each(func(i int) int { return off[i] + leg[i] + 1 })
	run := plan.Origin{
		Kind: plan.RefSkipped, Part: body, Label: f.run, Row: before,
		From: plus(off, 1), To: each(func(i int) int { return off[i] + leg[i] }), Of: waist,
	}
	return []plan.Origin{
		one(plan.RefSpace, f.gap, divide, all(f.place), all(10)),
		one(plan.RefStitches, f.near.Label, divide, near, all(10)),
		one(plan.RefStitches, f.near.Label, before, nearBelow, waist),
		run,
		one(plan.RefStitches, f.far.Label, before, farBelow, waist),
		one(plan.RefStitches, f.far.Label, divide, far, all(10)),
	}
}
