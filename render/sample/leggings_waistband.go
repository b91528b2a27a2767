package sample

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

func waistbandPart() *plan.Part {
	p := &plan.Part{
		Name:   "waistband",
		Title:  plan.Text{"en": "Waistband", "es": "Pretina"},
		Called: plan.Text{"en": "the waistband", "es": "la pretina"},
		Make:   1,
		Style:  plan.JoinedRounds,
		Yarn:   kelp,
		Hook:   3250,
		Start:  plan.Start{Kind: plan.StartJoined, N: waist, Fresh: true, Yarn: kelp},
	}
	p.Steps = []plan.Step{
		&plan.Row{
			First: all(1), Last: all(1), Times: all(1),
			Begin:  plan.Begin{Chains: 2, As: stitch.HDC, Throughout: true},
			Work:   []plan.Instr{work(hdc, waist, plan.ToEnd, plan.FoundationCh)},
			Join:   plan.Join{Kind: plan.JoinSlip, Into: plan.IntoFirst, Form: hdc},
			Counts: []plan.Count{{Kind: plan.CountForm, Form: hdc, N: waist}},
			Yarn:   kelp,
		},
		ribRow(all(2), waist, plan.Begin{Chains: 2, As: stitch.HDC}, false),
		&plan.Fasten{Off: true},
	}
	p.Worked = factsBySize(func(i int) []plan.RowFact {
		rows := []plan.RowFact{roundFact(1, waist[i], waist[i], kelp, hdc, plan.Plain)}
		for n := 2; n <= 1+ribRounds; n++ {
			rows = append(rows, ribFact(n, waist[i], kelp))
		}
		return rows
	})
	return p
}

// ribRow is three rounds of rib that start with round from.
func ribRow(from, sts plan.Nums, begin plan.Begin, newYarn bool) *plan.Row {
	half := each(func(i int) int { return sts[i] / 2 })
	pair := []plan.Instr{work(front, all(1), plan.Next, plan.Stitch), work(back, all(1), plan.Next, plan.Stitch)}
	rib := plan.Instr{Op: plan.Repeat, N: half, Reach: plan.ToEnd, Body: pair, Marker: -1, Yarn: -1}
	return &plan.Row{
		First: from, Last: plus(from, ribRounds-1), Times: all(ribRounds),
		Begin:   begin,
		Work:    []plan.Instr{rib},
		Join:    plan.Join{Kind: plan.JoinSlip, Into: plan.IntoFirst, Form: front},
		Counts:  []plan.Count{{Kind: plan.CountSts, N: sts}},
		Yarn:    kelp,
		NewYarn: newYarn,
	}
}

// work is one stitch in each of n places.
func work(f stitch.Form, n plan.Nums, reach plan.Reach, over plan.PlaceKind) plan.Instr {
	return plan.Instr{Op: plan.Work, Form: f, N: n, Reach: reach, Over: over, Marker: -1, Yarn: -1}
}

// afterBegin lessens an instruction by the beginning chain that stands for its first stitch.
func afterBegin(in plan.Instr) plan.Instr {
	in.N, in.AfterBegin = plus(in.N, -1), true
	return in
}

// counting is a beginning chain of three that is the first dc.
func counting(throughout bool) plan.Begin {
	return plan.Begin{Chains: 3, Counts: true, As: stitch.DC, Throughout: throughout}
}

// chainTop closes a round that began with three chains.
func chainTop() plan.Join {
	return plan.Join{Kind: plan.JoinSlip, Into: plan.IntoChain, Form: dc, Nth: 3}
}
