package data

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// styles say how a part is worked.
var styles = map[plan.Style]string{plan.Rows: "rows", plan.JoinedRounds: "joined rounds", plan.TurnedRounds: "turned rounds", plan.SpiralRounds: "spiral"}

func (x *writer) part(i int, p *plan.Part) part {
	out := part{Name: p.Name, Title: x.in(func(l *words.Language) string { return l.PartTitle(x.p, i) }), Make: p.Make, Worked: styles[p.Style],
		Note: x.rich(func(l *words.Language) rich.Text { return l.PartNote(x.p, p) }), Hook: known(p.Hook), From: []string{}, Steps: []step{},
		Rows: make([][]rowOut, len(x.p.Sizes))}
	for _, o := range p.From {
		if name := x.p.Parts[o.Part].Name; !slices.Contains(out.From, name) {
			out.From = append(out.From, name)
		}
	}
	start := x.step("start", func(l *words.Language) words.StepText { return l.Start(x.p, p) })
	if len(start.Text) > 0 {
		start.Counts = x.counts(startCounts(p.Start))
		out.Steps = append(out.Steps, start)
	}
	for _, s := range p.Steps {
		out.Steps = append(out.Steps, x.stepOf(p, s))
	}
	for z := range out.Rows {
		out.Rows[z] = []rowOut{}
		if z >= len(p.Worked) {
			continue
		}
		for _, f := range p.Worked[z] {
			out.Rows[z] = append(out.Rows[z], rowOut{f.Number, optional(f.Label), f.Stitches, f.Spaces, f.Taken})
		}
	}
	return out
}

// startCounts is what a start comes to.
func startCounts(s plan.Start) []plan.Count {
	if s.N == nil {
		return nil
	}
	switch s.Kind {
	case plan.StartFoundation, plan.StartFoundationJoined:
		return []plan.Count{{Kind: plan.CountForm, Form: s.Form, N: s.N}}
	}
	n := slices.Clone(s.N)
	for z := range n {
		if n[z] != plan.Absent && z < len(s.Extra) && s.Extra[z] != plan.Absent {
			n[z] += s.Extra[z]
		}
	}
	return []plan.Count{{Kind: plan.CountChains, N: n}}
}

// step is a step as it is said; what it is of is added by its kind.
func (x *writer) step(kind string, say func(l *words.Language) words.StepText) step {
	said := map[string]words.StepText{}
	for _, l := range x.langs {
		said[l.Tag()] = say(l)
	}
	get := func(of func(words.StepText) rich.Text) texts {
		return x.rich(func(l *words.Language) rich.Text { return of(said[l.Tag()]) })
	}
	return step{Kind: kind, For: x.sizes(nil), Only: get(func(s words.StepText) rich.Text { return s.Only }),
		Label: get(func(s words.StepText) rich.Text { return s.Label }), Text: get(func(s words.StepText) rich.Text { return s.Body }), Counts: []count{}}
}

// stepOf is a step of a part.
func (x *writer) stepOf(p *plan.Part, s plan.Step) step {
	say := func(l *words.Language) words.StepText { return l.Step(x.p, p, s) }
	var out step
	of := plan.Sizes(nil)
	switch t := s.(type) {
	case *plan.Row:
		out, of = x.step("rows", say), t.For
		out.First, out.Last, out.Counts = numbers(t.First), numbers(t.Last), x.counts(t.Counts)
		if t.Sided {
			side := "right"
			if t.Wrong {
				side = "wrong"
			}
			out.Side = &side
		}
	case *plan.Block:
		out, of = x.step("repeated rows", say), t.For
		out.First, out.Last, out.Counts = numbers(t.First), numbers(t.Last), x.counts(t.Counts)
	case *plan.CountOff:
		out, of = x.step("markers", say), t.For
	case *plan.Fasten:
		out, of = x.step("end", say), t.For
	case *plan.MoveStart:
		out, of = x.step("new start of rounds", say), t.For
	case *plan.NoteStep:
		out, of = x.step("note", say), t.For
	case *plan.Counted:
		out, of = x.step("counts", say), t.For
		out.Counts = x.counts(t.Counts)
	case *plan.Grid:
		out = x.step("layout of motifs", say)
	case *plan.JoinRound:
		out, of = x.step("joining of motifs", say), t.For
		if t.Row != nil {
			out.Counts = x.counts(t.Row.Counts)
		}
	default:
		out = x.step("note", say)
	}
	out.For = x.sizes(of)
	for z, n := range out.First {
		out.For[z] = out.For[z] && n != nil
	}
	return out
}

// counts are what is counted, with its name in each language.
func (x *writer) counts(list []plan.Count) []count {
	out := []count{}
	for _, k := range list {
		out = append(out, count{x.rich(func(l *words.Language) rich.Text { return l.Counted(x.p, k) }), numbers(k.N)})
	}
	return out
}
