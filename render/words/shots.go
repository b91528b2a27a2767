package words

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// Shot is something to show when a pattern is taught in pictures, in one size.
type Shot struct {
	Part  int       // index into the parts; -1 for what is done between them and at the end
	Label rich.Text // the row; nil where it has none
	Why   rich.Text // what is to be seen in it
	Say   rich.Text // what it comes to, with numbers in words; nil: nothing is counted
}

// Shots lists what a film of a pattern in one size has to show: how each part starts; each row in which something is done for the first
// time, in which stitches are gained or lost, markers are set or the yarn changes; and each step of the finishing. Rows that repeat what was
// seen are left out. The language writes in full, since it is spoken.
func (l *Language) Shots(p *plan.Pattern) []Shot {
	m := l.Manner()
	m.Full = true
	l = l.With(m).Keeping(p)
	s := shooting{l: l, p: p, forms: map[string]bool{}, ops: map[plan.Op]bool{}, ends: map[string]bool{}}
	for i := range p.Parts {
		s.finishing(i + 1)
		s.part(i)
	}
	s.finishing(0)
	return s.out
}

// shooting goes through a pattern and notes what was seen.
type shooting struct {
	l      *Language
	p      *plan.Pattern
	forms  map[string]bool
	ops    map[plan.Op]bool
	joined map[plan.JoinKind]bool
	ends   map[string]bool // ways to end a part
	out    []Shot
}

// part lists the shots of a part.
func (s *shooting) part(i int) {
	part := s.p.Parts[i]
	c := s.l.context(s.p, part, nil)
	if start := s.l.Start(s.p, part); len(start.Body) > 0 {
		var say rich.Text
		if part.Start.N != nil && start.Count != nil {
			if made := c.plus(part.Start.N, part.Start.Extra); part.Start.Kind != plan.StartFoundation && part.Start.Kind != plan.StartFoundationJoined {
				say = sentence(c.aloud(made, s.l.voice.places(plan.FoundationCh)))
			} else {
				say = sentence(c.aloud(part.Start.N, c.form(part.Start.Form)))
			}
		}
		s.out = append(s.out, Shot{Part: i, Label: start.Label, Why: start.Body, Say: say})
	}
	before := 0
	onto := part.Start.Kind == plan.StartFrom || part.Start.Kind == plan.StartIn
	for _, step := range part.Steps {
		st := s.l.Step(s.p, part, step)
		var why []rich.Text
		var counts []plan.Count
		var names, deeds []rich.Text
		for _, r := range plan.RowsOf(step) {
			if onto {
				why, onto = append(why, rich.T(s.l.voice.line(shotOnto))), false
			}
			n, d := s.firsts(r)
			names, deeds = append(names, n...), append(deeds, d...)
		}
		if len(names) > 0 {
			why = append(why, fill(s.l.voice.line(shotFirst), s.l.voice.and(names)))
		}
		why = append(why, dropTwice(deeds)...)
		switch t := step.(type) {
		case *plan.Row:
			counts = t.Counts
			why = append(why, s.change(c, part, t.First, t.Last, &before)...)
		case *plan.Block:
			counts = t.Counts
			why = append(why, s.change(c, part, t.First, t.Last, &before)...)
		case *plan.NoteStep, *plan.Counted:
			continue
		case *plan.Grid:
			why = append(why, rich.T(s.l.voice.line(shotLayout)))
		case *plan.JoinRound:
			if t.Row != nil {
				why = append(why, rich.T(s.l.voice.line(shotMotif)))
			}
		case *plan.Fasten:
			if text := st.Body.String(); !s.ends[text] {
				s.ends[text] = true
				why = append(why, st.Body)
			}
		default:
			why = append(why, st.Body)
		}
		if len(why) == 0 {
			continue
		}
		s.out = append(s.out, Shot{Part: i, Label: st.Label, Why: sentence(join("; ", why...)), Say: c.countsAloud(counts)})
	}
}

// firsts are the stitches of a row that were not seen before, and what else it does that is to be seen.
func (s *shooting) firsts(r *plan.Row) (names, out []rich.Text) {
	walk(r.Work, func(in *plan.Instr) {
		switch in.Op {
		case plan.Work, plan.Decrease, plan.CrossOver, plan.Lengthen, plan.RideOn:
			name := s.l.StitchName(s.p, bare(in.Form))
			if in.Form.ID != "" && !s.forms[name] {
				s.forms[name] = true
				names = append(names, rich.T(name))
			}
		}
		seen := s.ops[in.Op]
		s.ops[in.Op] = true
		switch {
		case in.Op == plan.PlaceMark || in.Op == plan.ChangeTo:
			if key := shotOf[in.Op]; !seen || in.Op == plan.ChangeTo {
				out = append(out, rich.T(s.l.voice.line(key)))
			}
		case !seen && shotOf[in.Op] != 0:
			out = append(out, rich.T(s.l.voice.line(shotOf[in.Op])))
		}
	})
	if r.NewYarn || r.ChangeYarn || r.Stripes != nil {
		out = append(out, rich.T(s.l.voice.line(shotYarn)))
	}
	if r.Join.Kind != plan.NoJoin && !s.joined[r.Join.Kind] {
		if s.joined == nil {
			s.joined = map[plan.JoinKind]bool{}
		}
		s.joined[r.Join.Kind] = true
		out = append(out, rich.T(s.l.voice.line(shotJoin)))
	}
	return names, out
}

// shotOf are the instructions that are shown the first time.
var shotOf = map[plan.Op]line{plan.PlaceMark: shotMarker, plan.ChangeTo: shotYarn, plan.LeaveRest: shotLeave, plan.CrossOver: shotCross, plan.InOne: shotInOne}

// bare is a stitch without where it goes.
func bare(f stitch.Form) stitch.Form {
	f.Loop = 0
	return f
}

func dropTwice(texts []rich.Text) []rich.Text {
	seen := map[string]bool{}
	var out []rich.Text
	for _, t := range texts {
		if s := t.String(); !seen[s] {
			seen[s] = true
			out = append(out, t)
		}
	}
	return out
}

// change says what rows gain or lose in all, and keeps how many stitches they end with.
func (s *shooting) change(c *context, part *plan.Part, first, last plan.Nums, before *int) []rich.Text {
	if len(first) != 1 || len(part.Worked) != 1 {
		return nil
	}
	was, is := *before, 0
	for _, f := range part.Worked[0] {
		if f.Number == last[0] {
			is = f.Stitches
		}
	}
	if is == 0 {
		return nil
	}
	*before = is
	noun := s.l.voice.places(plan.Stitch)
	switch {
	case was == 0 || was == is:
		return nil
	case is > was:
		return []rich.Text{fill(s.l.voice.line(shotGain), amount(exactly(is-was), noun))}
	}
	return []rich.Text{fill(s.l.voice.line(shotLose), amount(exactly(was-is), noun))}
}

// finishing lists the steps that belong before the part of a number, each of which is shown.
func (s *shooting) finishing(before int) {
	for _, f := range s.p.Finish {
		if f.Before == before {
			s.out = append(s.out, Shot{Part: -1, Why: s.l.Finishing(s.p, f)})
		}
	}
}

// countsAloud is what a row of one size comes to, with numbers in words: sixty-four half double crochets.
func (c *context) countsAloud(counts []plan.Count) rich.Text {
	var out []rich.Text
	for _, k := range counts {
		if k.Kind == plan.CountIn || len(k.N) != 1 || k.N[0] == plan.Absent || k.N[0] == 0 && len(counts) > 1 {
			continue
		}
		out = append(out, c.aloud(k.N, c.countNoun(k)))
	}
	if len(out) == 0 {
		return nil
	}
	return sentence(c.l.voice.and(out))
}

// aloud is a number of one size in words with what is counted.
func (c *context) aloud(n plan.Nums, of noun) rich.Text {
	if len(n) != 1 {
		return nil
	}
	said := c.l.voice.spoken(n[0], of.feminine)
	if said == "" {
		return amount(exactly(n[0]), of)
	}
	return fill("{} {}", said, of.by(exactly(n[0])))
}
