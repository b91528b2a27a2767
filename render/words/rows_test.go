package words

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

func TestRowsInWords(t *testing.T) {
	for _, tag := range []string{"en-US", "es"} {
		l := language(t, tag)
		var b strings.Builder
		seen := map[string]bool{}
		keep := func(what string, text rich.Text) {
			s := shown(text)
			if !seen[s] {
				seen[s] = true
				fmt.Fprintf(&b, "%s\n    %s\n", what, s)
			}
		}
		rowCorpus(l, func(what string, text rich.Text) {
			if strings.Contains(what, " sc ch 1 counts false") || strings.Contains(what, " dc ch 3 counts true") || strings.Contains(what, " hdc ch 2 counts false") {
				keep(what, text)
			}
		})
		stepCorpus(l, keep)
		for _, k := range rowCases() {
			st := l.Step(k.p, k.p.Parts[k.part], k.row)
			keep(k.what, join(". ", st.Only, join(" ", st.Label, rich.T(strings.Join(st.Slots, " | "))), st.Body))
			if st.Count != nil {
				keep(k.what+", count", join(" ", st.Count.Unit, st.Count.Line, rich.T(strings.Join(st.Count.Slots, " | "))))
			}
		}
		golden(t, "rows."+tag+".golden", b.String())
	}
}

type rowCase struct {
	what string
	p    *plan.Pattern
	part int
	row  *plan.Row
}

// rowCases are rows that need more than one instruction to show what they show.
func rowCases() []rowCase {
	one, all := plan.Nums{1, 1, 1}, plan.Nums{20, 22, 24}
	var cases []rowCase
	add := func(what string, part int, r *plan.Row) {
		p := tablePattern()
		p.Parts[part].Steps = []plan.Step{r}
		cases = append(cases, rowCase{what, p, part, r})
	}
	each := func(n plan.Nums) plan.Instr {
		in := bodyInstr(stitch.SC, n, 1)
		in.Reach = plan.ToEnd
		return in
	}
	ch := func(n int) plan.Instr {
		return plan.Instr{Op: plan.Chains, N: plan.Nums{n, n, n}, Marker: -1, Yarn: -1}
	}
	add("sided", 1, &plan.Row{First: one, Last: one, Times: one, Sided: true, Wrong: true, Work: []plan.Instr{each(all)}, Turn: true})
	add("two rows", 0, &plan.Row{First: plan.Nums{4, 4, 4}, Last: plan.Nums{5, 5, 5}, Times: plan.Nums{2, 2, 2}, Work: []plan.Instr{each(all)}})
	add("some sizes", 0, &plan.Row{First: plan.Nums{plan.Absent, 4, 4}, Last: plan.Nums{plan.Absent, 6, 7}, Times: plan.Nums{plan.Absent, 3, 4}, For: plan.Sizes{false, true, true},
		Work: []plan.Instr{each(plan.Nums{plan.Absent, 22, 24})}, Counts: []plan.Count{{Kind: plan.CountSts, N: plan.Nums{plan.Absent, 22, 24}}}})
	add("sizes with nothing to do", 0, &plan.Row{First: plan.Nums{plan.Absent, 4, 4}, Last: plan.Nums{plan.Absent, 6, 4}, Times: plan.Nums{plan.Absent, 3, 1}, Work: []plan.Instr{each(plan.Nums{plan.Absent, 22, 24})}})
	add("called, one number", 0, &plan.Row{First: plan.Nums{9, 9, 9}, Last: plan.Nums{9, 9, 9}, Times: one, Called: plan.Text{"en": "the dividing round", "es": "la vuelta de división"}, Work: []plan.Instr{each(all)}})
	add("chain and space", 0, &plan.Row{First: one, Last: one, Times: one, Begin: plan.Begin{Chains: 3, Counts: true, As: stitch.DC, And: 1},
		Work:   []plan.Instr{{Op: plan.Repeat, Reach: plan.ToEnd, N: plan.Nums{11, 12, 13}, Marker: -1, Yarn: -1, Body: []plan.Instr{{Op: plan.SkipOver, N: one, Marker: -1, Yarn: -1}, bodyInstr(stitch.DC, one, 1), ch(1)}}},
		Join:   plan.Join{Kind: plan.JoinSlip, Into: plan.IntoChain, Nth: 3},
		Counts: []plan.Count{{Kind: plan.CountForm, Form: plainForm(stitch.DC), N: plan.Nums{12, 13, 14}}, {Kind: plan.CountSpaces, Chains: 1, N: plan.Nums{12, 13, 14}}}})
	same := plan.Instr{Op: plan.InOne, N: one, Reach: plan.Same, Over: plan.Space, AfterBegin: true, Marker: -1, Yarn: -1, Body: []plan.Instr{bodyInstr(stitch.DC, one, 1), ch(2), bodyInstr(stitch.DC, one, 2)}}
	next := plan.Instr{Op: plan.InOne, N: plan.Nums{3, 3, 3}, Over: plan.Space, Chains: plan.Nums{2, 2, 2}, Marker: -1, Yarn: -1, Body: []plan.Instr{bodyInstr(stitch.DC, one, 2), ch(2), bodyInstr(stitch.DC, one, 2)}}
	add("groups in corners", 0, &plan.Row{First: one, Last: one, Times: one, Begin: plan.Begin{Chains: 3, Counts: true, As: stitch.DC, Throughout: true}, Work: []plan.Instr{same, next},
		Join: plan.Join{Kind: plan.JoinSlip, Into: plan.IntoChain, Nth: 3}, Counts: []plan.Count{{Kind: plan.CountForm, Form: plainForm(stitch.DC), N: plan.Nums{16, 16, 16}}, {Kind: plan.CountSpaces, Chains: 2, N: plan.Nums{4, 4, 4}}}})
	add("short row", 1, &plan.Row{First: one, Last: one, Times: one, Work: []plan.Instr{bodyInstr(stitch.SC, plan.Nums{12, 12, 12}, 1), {Op: plan.TurnWork, Marker: -1, Yarn: -1}, {Op: plan.LeaveRest, N: plan.Nums{4, 4, 4}, Called: plan.Text{"en": "the step", "es": "el escalón"}, Marker: -1, Yarn: -1}}})
	add("join with a stitch", 0, &plan.Row{First: one, Last: one, Times: one, Work: []plan.Instr{each(all)}, Join: plan.Join{Kind: plan.JoinWith, Form: stitch.Form{ID: stitch.HDC}}})
	add("one size of one", 0, &plan.Row{First: one, Last: one, Times: one, Work: []plan.Instr{bodyInstr(stitch.SC, one, 1)}, Counts: []plan.Count{{Kind: plan.CountSts, N: one}}})
	add("markers and hook", 0, &plan.Row{First: one, Last: one, Times: one, Work: []plan.Instr{each(all)}, Hook: 3250, MarksUp: true, Drop: []int{0, 1}, NewYarn: true, Yarn: 1})
	add("markers out of several rounds", 0, &plan.Row{First: one, Last: plan.Nums{3, 3, 3}, Times: plan.Nums{3, 3, 3}, Work: []plan.Instr{each(all)}, Drop: []int{0, 1}})
	toMark := func(marker int, n plan.Nums) []plan.Instr {
		to := plan.Instr{Op: plan.Work, Form: plainForm(stitch.SC), N: n, Reach: plan.ToMark, Marker: marker, Yarn: -1}
		in := plan.Instr{Op: plan.Work, Form: plainForm(stitch.SC), N: one, Per: plan.Nums{3, 3, 3}, Reach: plan.InMarked, Marker: marker, Yarn: -1}
		move := plan.Instr{Op: plan.MoveMark, Marker: marker, Where: plan.MiddleOne, Yarn: -1}
		return []plan.Instr{to, in, move}
	}
	alike := append(toMark(0, all), toMark(1, plan.Nums{12, 14, 16})...)
	add("the same at each marker", 0, &plan.Row{First: one, Last: one, Times: one, Work: append(slices.Clone(alike), each(all))})
	add("not the same at each marker", 0, &plan.Row{First: one, Last: one, Times: one, Work: append(append(toMark(1, all), toMark(0, all)...), each(all))})
	add("not all markers", 0, &plan.Row{First: one, Last: one, Times: one, Work: append(toMark(0, all), each(all))})
	add("a row in a part of rounds", 0, &plan.Row{First: one, Last: one, Times: one, Flat: true, Work: []plan.Instr{each(all)}, Turn: true})
	add("one marker out", 0, &plan.Row{First: one, Last: one, Times: one, Work: []plan.Instr{each(all)}, Drop: []int{1}})
	add("a start in the middle of a chain", 1, &plan.Row{First: one, Last: one, Times: one, Begin: plan.Begin{Chains: 1, FromHook: 2, Skipped: 1},
		Work: []plan.Instr{{Op: plan.Repeat, Reach: plan.ToEnd, N: plan.Nums{5, 6, 7}, Marker: -1, Yarn: -1, Body: []plan.Instr{bodyInstr(stitch.SC, one, 1), ch(1), {Op: plan.SkipOver, N: one, Over: plan.FoundationCh, Marker: -1, Yarn: -1}}}}})
	charted := func(c plan.ChartRow, r plan.Row) *plan.Row {
		r.First, r.Last, r.Times, r.Chart = one, one, one, &c
		return &r
	}
	add("from a chart", 0, charted(plan.ChartRow{First: 3, Last: 3}, plan.Row{Work: []plan.Instr{inCells()}, Begin: plan.Begin{Chains: 1}, Join: plan.Join{Kind: plan.JoinSlip, Form: plainForm(stitch.SC)}}))
	add("from a chart, the wrong side", 1, charted(plan.ChartRow{First: 3, Last: 3, Read: plan.FromLeft}, plan.Row{Sided: true, Wrong: true, Work: []plan.Instr{inCells()}}))
	add("from a chart, over the join first", 1, charted(plan.ChartRow{First: 3, Last: 3, Read: plan.FromLeft, Seam: true}, plan.Row{Work: []plan.Instr{inCells()}}))
	begun := inCells()
	begun.AfterBegin = true
	add("from a chart, begun in another yarn", 1, charted(plan.ChartRow{First: 3, Last: 3}, plan.Row{Work: []plan.Instr{begun}, Begin: plan.Begin{Chains: 3, Counts: true, As: stitch.DC, OtherYarn: true, Yarn: 1}}))
	plain := each(all)
	plain.Yarn, plain.AfterBegin = 1, true
	add("from a chart, one yarn alone", 1, charted(plan.ChartRow{First: 3, Last: 3}, plan.Row{Work: []plan.Instr{plain}, Begin: plan.Begin{Chains: 3, Counts: true, As: stitch.DC, OtherYarn: true, Yarn: 1},
		Counts: []plan.Count{{Kind: plan.CountYarn, Yarn: 1, N: all}}}))
	add("from two rows of a chart", 0, charted(plan.ChartRow{First: 3, Last: 4}, plan.Row{Work: []plan.Instr{each(all)}, Counts: []plan.Count{{Kind: plan.CountYarn, N: one}, {Kind: plan.CountYarn, Yarn: 1, N: all}}}))
	add("from four rows of a chart, either way", 0, charted(plan.ChartRow{First: 3, Last: 6, Read: plan.EitherWay}, plan.Row{Work: []plan.Instr{each(all)}}))
	add("from one of two charts", 0, charted(plan.ChartRow{Chart: 1, First: 3, Last: 3}, plan.Row{Work: []plan.Instr{each(all)}}))
	for i := range cases {
		if cases[i].p.Charts = []plan.Chart{{Name: "wave"}}; cases[i].what == "from one of two charts" {
			cases[i].p.Charts = []plan.Chart{{Name: "wave"}, {Name: "leaf", Title: plan.Text{"en": "Leaf", "es": "Hoja"}}}
		}
	}
	return cases
}
