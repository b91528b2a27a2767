package words

import (
	"fmt"
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// spokenForms are the standard stitches in every way the table of forms knows.
func spokenForms() []stitch.Form {
	var forms []stitch.Form
	for _, k := range stitch.Table {
		if k.ID == stitch.Chain {
			continue
		}
		for post := stitch.NoPost; post <= stitch.BackPost; post++ {
			for loop := stitch.BothLoops; loop <= stitch.ThirdLoop; loop++ {
				if post == stitch.NoPost && (loop == stitch.BothLoops || k.Extends == "") || loop == stitch.BothLoops && k.Body {
					forms = append(forms, stitch.Form{ID: k.ID, Post: post, Loop: loop, Together: 1})
				}
			}
			if k.Body {
				forms = append(forms, stitch.Form{ID: k.ID, Post: post, Together: 2}, stitch.Form{ID: k.ID, Post: post, Together: 3})
			}
		}
	}
	for _, f := range spokenGroups() {
		if k, _ := f.Group.Kind(); f.ID == stitch.DC && f.Post == stitch.NoPost || k.Only != "" { // the others read alike
			forms = append(forms, f)
		}
	}
	return forms
}

// ownForms gives a pattern stitches of the designer's own, of either gender, with and without an abbreviation.
func ownForms(p *plan.Pattern) []stitch.Form {
	var forms []stitch.Form
	for _, own := range []plan.OwnStitch{
		{ID: "pebble", Names: plan.Text{"en": "pebble", "es": "guijarro"}, Abbr: plan.Text{"en": "peb", "es": "guij"}},
		{ID: "ear", Names: plan.Text{"en": "ear", "es": "espiga"}, Abbr: plan.Text{"en": "ear", "es": "espg"}},
		{ID: "wave", Names: plan.Text{"en": "wave", "es": "ola"}},
		{ID: "knot", Names: plan.Text{"en": "knot", "es": "nudo"}},
	} {
		p.Own = append(p.Own, own)
		forms = append(forms, stitch.Form{ID: own.ID, Together: 1})
	}
	return forms
}

// spokenGroups are the groups of stitches in one place, of a stitch without yarn overs, one of either gender, and round a
// post.
func spokenGroups() []stitch.Form {
	var forms []stitch.Form
	for _, g := range stitch.Groups {
		for _, k := range stitch.Table {
			if k.ID != g.Only && (g.Only != "" || !k.Body) {
				continue
			}
			n := g.Usual
			if n == 0 {
				n = g.Least + 2
			}
			forms = append(forms, stitch.Form{ID: k.ID, Together: 1, Group: g.Group, Of: n})
			if k.ID == stitch.DC {
				forms = append(forms, stitch.Form{ID: k.ID, Post: stitch.FrontPost, Together: 1, Group: g.Group, Of: n})
			}
		}
	}
	return forms
}

// corpus calls f with every kind of text that a part can print: all instructions by all reaches, places and numbers, all
// forms, named places, and rows with every beginning and end. What says how the text came about.
func corpus(l *Language, f func(what string, text rich.Text)) {
	if slices.Contains([]string{"en-US", "es", "es-AR"}, l.Tag()) { // the other readings change no gender
		instructionCorpus(l, f)
	}
	formCorpus(l, f)
	rowCorpus(l, f)
	stepCorpus(l, f)
}

func instructionCorpus(l *Language, f func(what string, text rich.Text)) {
	p := tablePattern()
	for part := range p.Parts {
		for op := plan.Work; op <= plan.SlipOver; op++ {
			for reach := plan.Next; reach <= plan.ThroughBoth; reach++ {
				if reach == plan.Times && op != plan.Repeat {
					continue // only a repeat is counted so
				}
				for over := plan.Stitch; over <= plan.PostBelow; over++ {
					if over != plan.Stitch && (part > 0 || !works(op)) {
						continue // the place makes no difference
					}
					for _, k := range tableNumbers {
						for _, begun := range []bool{false, true} {
							in := tableInstr(op, reach, over, k.n)
							in.AfterBegin = !begun && op == plan.Work
							c := l.context(p, p.Parts[part], nil)
							c.worked = begun
							f(fmt.Sprintf("part %d op %d %s %s %s begun=%v", part, op, reachNames[reach], placeNames[over], k.name, begun), paragraph(run(c.items([]plan.Instr{in}))))
						}
					}
				}
			}
		}
	}
}

// works reports whether an instruction says into what it works.
func works(op plan.Op) bool {
	return op == plan.Work || op == plan.Decrease || op == plan.SkipOver || op == plan.InOne
}

func formCorpus(l *Language, f func(what string, text rich.Text)) {
	p := tablePattern()
	one, two, many := plan.Nums{1, 1, 1}, plan.Nums{2, 2, 2}, plan.Nums{21, 21, 21}
	for _, form := range append(spokenForms(), ownForms(p)...) {
		for _, reach := range []plan.Reach{plan.Next, plan.ToEnd, plan.Same, plan.Last, plan.First} {
			for _, per := range []plan.Nums{nil, two, {1, 2, 3}} {
				for i, n := range []plan.Nums{one, two, {1, 2, 3}, many, {plan.Absent, 1, 2}, nil} {
					if per != nil && i > 2 {
						break // how many go into one place makes no difference to these
					}
					op := plan.Work
					if form.Together > 1 {
						op = plan.Decrease
					}
					in := tableInstr(op, reach, plan.Stitch, n)
					in.Form, in.Per = form, per
					c := l.context(p, p.Parts[0], nil)
					f(fmt.Sprintf("%v %s per %v n %v", form, reachNames[reach], per, n), paragraph(run(c.items([]plan.Instr{in}))))
				}
			}
		}
		for pick := plan.Whole; pick <= plan.NthOf; pick++ {
			for _, count := range []plan.Nums{one, two, many, {1, 2, 3}} {
				in := tableInstr(plan.Work, plan.At, plan.Stitch, count)
				in.Ref = tableRef(plan.RefStitches, pick, pick%2 == 0)
				in.Ref.Form, in.Ref.Count = form, count
				for _, reach := range []plan.Reach{plan.At, plan.BelowOf, plan.BesideOf, plan.ThroughBoth} {
					in.Reach = reach
					c := l.context(p, p.Parts[1], nil)
					f(fmt.Sprintf("%v %s %s of %v", form, reachNames[reach], pickNames[pick], count), paragraph(run(c.items([]plan.Instr{in}))))
				}
			}
		}
		for _, n := range []plan.Nums{one, two, many, {1, 2, 3}, {plan.Absent, 1, 1}} {
			c := l.context(p, p.Parts[0], nil)
			k := c.count([]plan.Count{{Kind: plan.CountForm, Form: form, N: n}})
			f(fmt.Sprintf("count %v %v", form, n), join("", k.Unit, k.Line))
		}
	}
}

// rowCorpus is rows with every beginning chain and join, in a new chain and along an edge.
func rowCorpus(l *Language, f func(what string, text rich.Text)) {
	one := plan.Nums{1, 1, 1}
	for part := range 2 {
		for _, k := range stitch.Table {
			if k.ID == stitch.Chain {
				continue
			}
			for chains := 1; chains <= 4; chains++ {
				for _, counts := range []bool{false, true} {
					for _, n := range []plan.Nums{{20, 22, 24}, {2, 2, 2}, {1, 2, 3}} {
						for _, hook := range []bool{false, true} {
							p := tablePattern()
							in := bodyInstr(k.ID, n, 1)
							in.Reach, in.AfterBegin = plan.ToEnd, counts
							r := &plan.Row{
								First: one, Last: one, Times: one, Work: []plan.Instr{in}, Turn: true, Yarn: 1, NewYarn: chains == 2,
								Begin: plan.Begin{Chains: chains, Counts: counts, As: k.ID},
								Join:  plan.Join{Kind: plan.JoinSlip, Into: plan.IntoFirst, Form: plainForm(k.ID)},
								Tall:  plan.Lengths{100 * plan.Millimetre, 110 * plan.Millimetre, 120 * plan.Millimetre},
							}
							if counts {
								r.Join.Into, r.Join.Nth = plan.IntoChain, chains
							}
							if hook {
								r.Begin.FromHook, r.Begin.Skipped = chains+1, chains
								r.Work[0].Over = plan.FoundationCh
							}
							p.Parts[part].Steps = []plan.Step{r}
							st := l.Step(p, p.Parts[part], r)
							f(fmt.Sprintf("row part %d %s ch %d counts %v n %v hook %v", part, k.ID, chains, counts, n, hook), join(". ", st.Label, st.Body))
						}
					}
				}
			}
		}
	}
}

// stepCorpus is what stands between the rows, and the starts.
func stepCorpus(l *Language, f func(what string, text rich.Text)) {
	say := func(what string, p *plan.Pattern, s plan.Step) {
		st := l.Step(p, p.Parts[0], s)
		f(what, join(". ", st.Only, st.Label, st.Body))
	}
	for _, n := range []plan.Nums{{1, 1, 1}, {2, 2, 2}, {1, 2, 3}, {8, 11, 12}} {
		p := tablePattern()
		work := []plan.Instr{tableInstr(plan.Work, plan.Next, plan.Stitch, n)}
		say(fmt.Sprint("count off ", n), p, &plan.CountOff{Items: []plan.OffItem{{N: n, Marker: -1}, {Marker: 0}, {N: n, Marker: -1}, {Marker: 1}, {N: n, Marker: -1}}})
		say(fmt.Sprint("count off in next ", n), p, &plan.CountOff{Items: []plan.OffItem{{N: n, Marker: -1}, {Marker: 0, InNext: true}, {N: n, Marker: -1, Called: plan.Text{"en": "the sleeve", "es": "la manga"}}, {Marker: 1}}})
		say(fmt.Sprint("count off without markers ", n), p, &plan.CountOff{Items: []plan.OffItem{{N: n, Marker: -1, Called: plan.Text{"en": "the neck", "es": "el escote"}}, {N: n, Marker: -1, Called: plan.Text{"en": "the sleeve", "es": "la manga"}}}})
		say(fmt.Sprint("move start ", n), p, &plan.MoveStart{Marker: 1, Moved: n})
		say(fmt.Sprint("have ", n), p, &plan.Counted{Counts: []plan.Count{{Kind: plan.CountSts, N: n}, {Kind: plan.CountIn, Called: plan.Text{"en": "the sleeve", "es": "la manga"}, N: n}, {Kind: plan.CountSpaces, Chains: 1, N: n}}})
		say(fmt.Sprint("block ", n), p, &plan.Block{Times: n, First: plan.Nums{2, 2, 2}, Last: plan.Nums{5, 5, 5}, Rows: []*plan.Row{{Times: plan.Nums{1, 1, 1}, Work: work}, {Times: n, Work: append(work, work...)}}})
		for kind := plan.StartChain; kind <= plan.StartIn; kind++ {
			part := p.Parts[1]
			part.Start = plan.Start{Kind: kind, N: n, Form: plainForm(stitch.DC), Fresh: true, Yarn: 1, Runs: []plan.Ref{*tableRef(plan.RefSkipped, plan.EachOf, false), *tableRef(plan.RefSpace, plan.Whole, true)}}
			part.Start.Runs[1].Below = true
			st := l.Start(p, part)
			f(fmt.Sprintf("start %d %v", kind, n), join(". ", st.Label, st.Body))
		}
	}
	for _, slip := range []int{1, 2} {
		say(fmt.Sprint("level ", slip), tablePattern(), &plan.Fasten{Slip: slip, Off: true})
	}
	three := &plan.Row{Times: plan.Nums{1, 1, 1}, Work: []plan.Instr{tableInstr(plan.Work, plan.ToEnd, plan.Stitch, plan.Nums{8, 9, 10})}}
	say("block of three", tablePattern(), &plan.Block{Times: plan.Nums{4, 4, 4}, First: plan.Nums{2, 2, 2}, Last: plan.Nums{13, 13, 13}, Rows: []*plan.Row{three, three, three}})
	say("long tail", tablePattern(), &plan.Fasten{Off: true, Tail: true})
	for _, loops := range []string{"front", "back", "both"} {
		say("close "+loops, tablePattern(), &plan.Fasten{Close: loops})
	}
}
