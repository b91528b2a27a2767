package words

import (
	"fmt"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// The names of the plan's words, for the tables.
var (
	reachNames = []string{"Next", "ToEnd", "ToMark", "ToLast", "ToLabel", "ToSpace", "Times", "First", "Last", "Same", "InRing", "InMarked", "InGapHere", "At", "BelowOf", "BesideOf", "NextOf", "ThroughBoth"}
	placeNames = []string{"Stitch", "FoundationCh", "ChainFromBack", "Space", "StitchSpace", "StitchChain", "Gap", "Unworked", "RowEnd", "RingPlace", "PostBelow"}
	refNames   = map[plan.RefKind]string{plan.RefStitches: "stitches", plan.RefSpace: "space", plan.RefSkipped: "skipped", plan.RefEdge: "edge", plan.RefFoundation: "foundation", plan.RefRow: "row", plan.RefSection: "section"}
	pickNames  = []string{"whole", "each", "first", "last", "nth"}
)

// The numbers of the tables: three sizes.
var tableNumbers = []struct {
	name string
	n    plan.Nums
}{
	{"0", plan.Nums{0, 0, 0}},
	{"1", plan.Nums{1, 1, 1}},
	{"2", plan.Nums{2, 2, 2}},
	{"many", plan.Nums{12, 14, 16}},
	{"one", plan.Nums{1, 2, 3}},
	{"absent", plan.Nums{plan.Absent, 12, 14}},
	{"gap", plan.Nums{1, plan.Absent, 1}},
	{"unknown", nil},
}

// tablePattern is a pattern of two parts, one in rounds and one in rows, for instructions to stand in.
func tablePattern() *plan.Pattern {
	two := func(en, es string) plan.Text { return plan.Text{"en": en, "es": es} }
	markers := []plan.Marker{{Name: "m1", Number: 1}, {Name: "m2", Number: 2}}
	return &plan.Pattern{
		Name:  "table",
		Sizes: []plan.Size{{Name: "S", Age: -1}, {Name: "M", Age: -1}, {Name: "L", Age: -1}},
		Yarns: []plan.Yarn{{Name: "sand", Names: two("sand", "arena")}, {Name: "kelp", Names: two("kelp", "alga")}},
		Parts: []*plan.Part{
			{Name: "tube", Title: two("Tube", "Tubo"), Called: two("the tube", "el tubo"), Style: plan.JoinedRounds, Markers: markers, Yarn: -1},
			{Name: "panel", Title: two("Panel", "Panel"), Style: plan.Rows, Markers: markers, Yarn: -1},
		},
	}
}

func tableInstr(op plan.Op, reach plan.Reach, over plan.PlaceKind, n plan.Nums) plan.Instr {
	in := plan.Instr{Op: op, Form: plainForm(stitch.SC), N: n, Reach: reach, Over: over, Marker: 1, Yarn: -1}
	in.Last, in.Chains = plan.Nums{3, 3, 3}, plan.Nums{2, 2, 2}
	switch op {
	case plan.Decrease:
		in.Form = stitch.Form{ID: stitch.DC, Together: 2}
	case plan.Repeat:
		in.Body = []plan.Instr{bodyInstr(stitch.SC, plan.Nums{2, 2, 2}, 1), bodyInstr(stitch.SC, plan.Nums{1, 1, 1}, 2)}
	case plan.InOne:
		in.Body = []plan.Instr{bodyInstr(stitch.DC, plan.Nums{1, 1, 1}, 2), {Op: plan.Chains, N: plan.Nums{1, 1, 1}, Marker: -1, Yarn: -1}, bodyInstr(stitch.DC, plan.Nums{1, 1, 1}, 2)}
	case plan.ChangeTo:
		in.Yarn = 1
	case plan.SpreadOut:
		in.Spread = &plan.Spread{Increase: true, Long: plan.Nums{2, 0, 3}, LongPlain: plan.Nums{5, 4, 1}, Short: plan.Nums{4, 6, 3}, ShortPlain: plan.Nums{4, 3, 0}}
	}
	switch reach {
	case plan.At, plan.BelowOf, plan.BesideOf, plan.NextOf, plan.ThroughBoth, plan.ToLabel:
		in.Ref = tableRef(plan.RefStitches, plan.Whole, true)
	}
	if over == plan.PostBelow {
		in.Deep = 2
	}
	return in
}

// inCells is a stretch of a row from a chart: some cells before the first whole chart in two sizes, then the chart over and over.
func inCells() plan.Instr {
	cells := func(yarn, s, m, l int) plan.Instr {
		in := bodyInstr(stitch.SC, plan.Nums{s, m, l}, 1)
		in.Yarn = yarn
		return in
	}
	return plan.Instr{Op: plan.Repeat, Form: plainForm(stitch.SC), Reach: plan.ToEnd, N: plan.Nums{1, 1, 1}, Cells: plan.Nums{32, 42, 53}, Marker: -1, Yarn: -1, Body: []plan.Instr{
		cells(1, 0, 1, 2), cells(0, 0, 1, 3),
		{Op: plan.Repeat, Reach: plan.Times, N: plan.Nums{8, 10, 12}, Marker: -1, Yarn: -1, Body: []plan.Instr{cells(1, 1, 1, 1), cells(0, 3, 3, 3)}}}}
}

func bodyInstr(id stitch.ID, n plan.Nums, per int) plan.Instr {
	in := plan.Instr{Op: plan.Work, Form: plainForm(id), N: n, Marker: -1, Yarn: -1}
	if per > 1 {
		in.Per = plan.Nums{per, per, per}
	}
	return in
}

func tableRef(kind plan.RefKind, pick plan.Pick, called bool) *plan.Ref {
	r := &plan.Ref{Kind: kind, Part: 0, Label: "run_a", Pick: pick, Nth: 3, Row: plan.Nums{7, 8, 9}, Count: plan.Nums{4, 4, 4}}
	switch kind {
	case plan.RefSpace:
		r.Chains, r.Count = plan.Nums{5, 5, 5}, plan.Nums{1, 1, 1}
	case plan.RefStitches:
		r.Form = plainForm(stitch.DC)
	case plan.RefEdge, plan.RefFoundation:
		r.Row = nil
	}
	if called {
		r.Called = plan.Text{"en": "the left front", "es": "el delantero izquierdo"}
	}
	return r
}

// say writes one instruction in the middle of a row; begun says that something was worked before it.
func say(l *Language, part int, begun bool, in plan.Instr) string {
	p := tablePattern()
	c := l.context(p, p.Parts[part], nil)
	c.worked = begun
	return shown(paragraph(run(c.items([]plan.Instr{in}))))
}

func TestInstructionsInWords(t *testing.T) {
	for _, tag := range []string{"en-US", "es"} {
		golden(t, "instructions."+tag+".golden", instructionTable(language(t, tag)))
	}
}

func language(t testing.TB, tag string) *Language {
	t.Helper()
	l, err := For(tag)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func instructionTable(l *Language) string {
	var b strings.Builder
	line := func(what, text string) {
		if text == "" {
			text = "(nothing)"
		}
		fmt.Fprintf(&b, "%-34s %s\n", what, text)
	}
	b.WriteString("# Work: places\n")
	for over, place := range placeNames {
		if plan.PlaceKind(over) == plan.RingPlace {
			continue
		}
		for _, reach := range []plan.Reach{plan.Next, plan.Last, plan.ToEnd} {
			for _, k := range tableNumbers {
				in := tableInstr(plan.Work, reach, plan.PlaceKind(over), k.n)
				line(fmt.Sprintf("%s %s %s", place, reachNames[reach], k.name), say(l, 0, reach != plan.ToEnd, in))
			}
		}
	}
	for _, k := range tableNumbers {
		line("a row begins "+k.name, say(l, 0, false, tableInstr(plan.Work, plan.Next, plan.Stitch, k.n)))
	}
	b.WriteString("\n# Work: how far\n")
	for reach, name := range reachNames {
		for _, k := range tableNumbers {
			if plan.Reach(reach) == plan.Times {
				continue
			}
			in := tableInstr(plan.Work, plan.Reach(reach), plan.Stitch, k.n)
			line(name+" "+k.name, say(l, 1, true, in))
		}
	}
	formTable(l, line)
	refTable(l, line, &b)
	opTable(l, line, &b)
	return b.String()
}

// formTable varies what is worked: several in one place, posts, loops, the place behind a beginning chain.
func formTable(l *Language, line func(what, text string)) {
	with := func(name string, part int, begun bool, change func(*plan.Instr)) {
		in := tableInstr(plan.Work, plan.ToEnd, plan.Stitch, plan.Nums{12, 14, 16})
		change(&in)
		line(name, say(l, part, begun, in))
	}
	for _, k := range tableNumbers {
		with("Per "+k.name, 0, true, func(in *plan.Instr) { in.Reach, in.N, in.Per = plan.Next, plan.Nums{1, 1, 1}, k.n })
		with("Per 2 in "+k.name, 0, true, func(in *plan.Instr) { in.Reach, in.N, in.Per = plan.Next, k.n, plan.Nums{2, 2, 2} })
	}
	for part, style := range []string{"round", "row"} {
		with("first, "+style, part, false, func(in *plan.Instr) {})
		with("later, "+style, part, true, func(in *plan.Instr) {})
		with("after begin, "+style, part, false, func(in *plan.Instr) { in.AfterBegin = true })
	}
	with("after begin, to marker", 0, false, func(in *plan.Instr) { in.AfterBegin, in.Reach = true, plan.ToMark })
	with("after begin, gaps", 0, false, func(in *plan.Instr) { in.AfterBegin, in.Over = true, plan.Gap })
	with("3 before marker", 0, false, func(in *plan.Instr) { in.Reach, in.Before = plan.ToMark, plan.Nums{3, 3, 3} })
	with("1 before marker", 0, false, func(in *plan.Instr) { in.Reach, in.Before = plan.ToMark, plan.Nums{1, 1, 1} })
	with("any marker", 0, false, func(in *plan.Instr) { in.Reach, in.Marker = plan.ToMark, -1 })
	with("last 1", 0, false, func(in *plan.Instr) { in.Reach, in.Last = plan.ToLast, plan.Nums{1, 1, 1} })
	for _, f := range someForms {
		with(fmt.Sprintf("form %s post %d loop %d", f.ID, f.Post, f.Loop), 0, false, func(in *plan.Instr) { in.Form = f })
		with(fmt.Sprintf("next %s post %d loop %d", f.ID, f.Post, f.Loop), 0, true, func(in *plan.Instr) { in.Form, in.Reach, in.N = f, plan.Next, plan.Nums{1, 1, 1} })
	}
	with("1 row below", 1, true, func(in *plan.Instr) {
		in.Form, in.Over, in.Deep, in.Reach, in.N = stitch.Form{ID: stitch.TR, Post: stitch.FrontPost, Together: 1}, plan.PostBelow, 1, plan.Next, plan.Nums{1, 1, 1}
	})
	with("with yarn", 0, true, func(in *plan.Instr) { in.Reach, in.N, in.Yarn = plan.Next, plan.Nums{2, 2, 2}, 1 })
	with("crossing front", 0, true, func(in *plan.Instr) {
		in.Reach, in.Ref, in.N, in.Cross = plan.At, tableRef(plan.RefSkipped, plan.EachOf, false), plan.Nums{2, 2, 2}, plan.CrossFront
	})
	with("crossing back", 0, true, func(in *plan.Instr) {
		in.Reach, in.Ref, in.N, in.Cross = plan.At, tableRef(plan.RefSkipped, plan.EachOf, false), plan.Nums{2, 2, 2}, plan.CrossBack
	})
	with("called", 0, true, func(in *plan.Instr) {
		in.Reach, in.N, in.Called = plan.Next, plan.Nums{4, 4, 4}, plan.Text{"en": "the front", "es": "el delantero"}
	})
	with("next of a kind", 0, true, func(in *plan.Instr) {
		in.Reach, in.N, in.Ref = plan.Next, plan.Nums{1, 1, 1}, tableRef(plan.RefSpace, plan.Whole, false)
		in.Ref.Called = plan.Text{"en": "the corner", "es": "la esquina"}
	})
	with("next of a kind, no name", 0, true, func(in *plan.Instr) {
		in.Reach, in.N, in.Ref = plan.Next, plan.Nums{1, 1, 1}, tableRef(plan.RefSpace, plan.Whole, false)
	})
}

var someForms = []stitch.Form{
	{ID: stitch.HDC, Post: stitch.FrontPost, Together: 1},
	{ID: stitch.TR, Post: stitch.BackPost, Together: 1},
	{ID: stitch.SC, Loop: stitch.FrontLoop, Together: 1},
	{ID: stitch.SC, Loop: stitch.BackLoop, Together: 1},
	{ID: stitch.HDC, Loop: stitch.ThirdLoop, Together: 1},
}

func refTable(l *Language, line func(what, text string), b *strings.Builder) {
	b.WriteString("\n# Places by name\n")
	for kind := plan.RefStitches; kind <= plan.RefSection; kind++ {
		for pick := plan.Whole; pick <= plan.NthOf; pick++ {
			for _, called := range []bool{true, false} {
				for _, reach := range []plan.Reach{plan.At, plan.BelowOf, plan.BesideOf} {
					in := tableInstr(plan.Work, reach, plan.Stitch, plan.Nums{4, 4, 4})
					in.Ref = tableRef(kind, pick, called)
					line(fmt.Sprintf("%s %s %s called=%v", reachNames[reach], refNames[kind], pickNames[pick], called), say(l, 1, true, in))
				}
			}
		}
	}
	for _, n := range []plan.Nums{{1, 1, 1}, {1, 2, 3}, {plan.Absent, 2, 3}} {
		for _, kind := range []plan.RefKind{plan.RefSkipped, plan.RefStitches} {
			in := tableInstr(plan.Work, plan.At, plan.Stitch, n)
			in.Ref = tableRef(kind, plan.EachOf, true)
			in.Ref.Count = n
			line(fmt.Sprintf("At %s each %v", refNames[kind], n), say(l, 1, true, in))
		}
	}
	in := tableInstr(plan.Work, plan.At, plan.Stitch, plan.Nums{3, 3, 3})
	in.Ref, in.AfterBegin = tableRef(plan.RefSkipped, plan.EachOf, true), true
	line("At skipped each, after begin", say(l, 0, false, in))
	in.Ref, in.AfterBegin = tableRef(plan.RefSkipped, plan.EachOf, true), false
	in.Ref.Own = true
	line("At skipped each, own part", say(l, 0, false, in))
	in.Ref.Called, in.Ref.Below = nil, true
	line("At skipped each, no name", say(l, 0, false, in))
	in.Ref.Row, in.Ref.Below = nil, false
	line("At skipped each, this row", say(l, 0, false, in))
	in.Ref.Pick = plan.LastOf
	line("At skipped last, this row", say(l, 0, false, in))
}

func opTable(l *Language, line func(what, text string), b *strings.Builder) {
	b.WriteString("\n# Other instructions\n")
	ops := []struct {
		op      plan.Op
		name    string
		reaches []plan.Reach
	}{
		{plan.Decrease, "Decrease", []plan.Reach{plan.Next, plan.ToEnd, plan.ToMark, plan.ToLast}},
		{plan.Chains, "Chains", []plan.Reach{plan.Next}},
		{plan.SkipOver, "SkipOver", []plan.Reach{plan.Next, plan.ToEnd, plan.ToMark, plan.ToLast, plan.ToLabel, plan.ToSpace}},
		{plan.LeaveRest, "LeaveRest", []plan.Reach{plan.Next}},
		{plan.Repeat, "Repeat", []plan.Reach{plan.Times, plan.ToEnd, plan.ToMark, plan.ToLast, plan.ToLabel}},
		{plan.InOne, "InOne", []plan.Reach{plan.Next, plan.ToEnd, plan.Same, plan.Last, plan.InRing}},
		{plan.SlipOver, "SlipOver", []plan.Reach{plan.Next, plan.ToMark, plan.ToLabel}},
		{plan.SpreadOut, "SpreadOut", []plan.Reach{plan.ToEnd, plan.ToMark}},
		{plan.TurnWork, "TurnWork", []plan.Reach{plan.Next}},
		{plan.ChangeTo, "ChangeTo", []plan.Reach{plan.Next}},
	}
	for _, o := range ops {
		for _, reach := range o.reaches {
			for _, k := range tableNumbers {
				if o.op == plan.SpreadOut && k.n != nil {
					continue // its numbers are those of its groups
				}
				line(fmt.Sprintf("%s %s %s", o.name, reachNames[reach], k.name), say(l, 0, true, tableInstr(o.op, reach, plan.Stitch, k.n)))
			}
		}
	}
	for _, called := range []plan.Op{plan.SkipOver, plan.LeaveRest, plan.Chains} {
		in := tableInstr(called, plan.Next, plan.Stitch, plan.Nums{6, 6, 6})
		in.Called = plan.Text{"en": "the thumb", "es": "el pulgar"}
		line(fmt.Sprintf("op %d called", called), say(l, 0, true, in))
	}
	spread := tableInstr(plan.SpreadOut, plan.ToEnd, plan.Stitch, plan.Nums{6, 6, 6})
	spread.Spread.Increase, spread.Spread.Before, spread.Spread.After = false, plan.Nums{2, 2, 2}, plan.Nums{1, 2, 3}
	line("SpreadOut, decreases, centred", say(l, 0, false, spread))
	spread.Spread = &plan.Spread{Increase: true, Alternating: true, Long: plan.Nums{2, 2, 3}, LongPlain: plan.Nums{5, 5, 5}, Short: plan.Nums{2, 2, 3}, ShortPlain: plan.Nums{4, 4, 4}}
	line("SpreadOut, alternating", say(l, 0, false, spread))
	for _, op := range []plan.Op{plan.PlaceMark, plan.MoveMark, plan.RemoveMark} {
		for where := plan.LastMade; where <= plan.LastOne; where++ {
			in := tableInstr(op, plan.Next, plan.Stitch, nil)
			in.Where = where
			line(fmt.Sprintf("marker %d where %d", op, where), say(l, 0, true, in))
		}
	}
	only := tableInstr(plan.PlaceMark, plan.Next, plan.Stitch, plan.Nums{plan.Absent, 1, 1})
	line("marker in some sizes", say(l, 0, true, only))
}
