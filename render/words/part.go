package words

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// PartTitle is the heading of a part.
func (l *Language) PartTitle(p *plan.Pattern, i int) string {
	part := p.Parts[i]
	if t := l.theName(part.Title); t != "" {
		return t
	}
	return upper(l.theLabel(part.Name))
}

// PartNote says with what and how a part is worked: its yarn and hook, rows or rounds, from where, how many.
func (l *Language) PartNote(p *plan.Pattern, part *plan.Part) rich.Text {
	c := l.context(p, part, nil)
	var out []rich.Text
	if part.Motifs != nil {
		out = append(out, sentence(l.voice.makeMotifs(c.num(part.Motifs))))
	}
	if part.Grid != nil {
		return paragraph(sentence(l.voice.motifs(c.laid(part.Grid))))
	}
	if part.Make > 1 {
		out = append(out, sentence(l.voice.makeSeveral(part.Make)))
	}
	if t := c.tools(part); t != nil {
		out = append(out, sentence(t))
	}
	out = append(out, rich.T(l.voice.line(styleLine(part.Style))))
	if part.FirstWrong {
		key := firstRowWrong
		if c.round() {
			key = firstRoundWrong
		}
		out = append(out, fill(l.voice.line(key)))
	}
	if from := c.origins(part); len(from) > 0 {
		out = append(out, sentence(l.voice.worked(c.partNames(from))))
	}
	return paragraph(join(" ", out...))
}

// tools is the yarn of a part, with the letter the tables give it, and the hook.
func (c *context) tools(part *plan.Part) rich.Text {
	yarn, hook := "", ""
	if name := c.yarn(part.Yarn); name != "" {
		yarn = name
		if len(c.p.Yarns) > 1 {
			yarn += tie + "(" + YarnLetter(part.Yarn) + ")"
		}
	}
	if part.Hook > 0 {
		hook = c.l.hook(part.Hook)
	}
	if yarn == "" && hook == "" {
		return nil
	}
	return c.l.voice.handedHook(hook, yarn)
}

// YarnLetter is the letter by which tables and notes point at a yarn of the pattern: A for the first.
func YarnLetter(i int) string { return string(rune('A' + i%26)) }

func styleLine(s plan.Style) line {
	switch s {
	case plan.JoinedRounds:
		return styleJoined
	case plan.TurnedRounds:
		return styleTurned
	case plan.SpiralRounds:
		return styleSpiral
	}
	return styleRows
}

// passedOver is how many places of its row lie before the run along which a part starts. A run with a name is found by that.
func (c *context) passedOver(part *plan.Part) num {
	if part.Start.Skip == nil || c.l.read.of(part.Start.Runs[0].Called) != "" {
		return num{}
	}
	return c.num(part.Start.Skip)
}

// origins are the parts on which a part grows.
func (c *context) origins(part *plan.Part) []int {
	var parts []int
	seen := map[int]bool{}
	for _, r := range part.Start.Runs {
		if r.Own || seen[r.Part] || r.Part < 0 || r.Part >= len(c.p.Parts) || c.p.Parts[r.Part] == part {
			continue
		}
		seen[r.Part] = true
		parts = append(parts, r.Part)
	}
	return parts
}

// Start writes how a part starts. The body is empty for a part that goes on where the yarn hangs.
func (l *Language) Start(p *plan.Pattern, part *plan.Part) StepText {
	c := l.context(p, part, nil)
	s := part.Start
	st := StepText{Label: rich.T(l.voice.fixed(StartLabel))}
	var body []rich.Text
	switch s.Kind {
	case plan.StartChain, plan.StartBothSides, plan.StartJoined, plan.StartChainRing:
		body, st.Count = c.chainStart(s)
	case plan.StartRing:
		body = append(body, rich.T(l.voice.line(makeRing)))
	case plan.StartFoundation, plan.StartFoundationJoined:
		body, st.Count = c.foundationStart(s)
		st.Label = l.voice.namedLabel(l.voice.fixed(StartLabel), l.voice.label(c.round(), 1, 1))
	case plan.StartFrom:
		if len(s.Runs) == 1 && s.Runs[0].Kind == plan.RefAround {
			body = append(body, l.voice.startAround(c.named(&s.Runs[0]), c.joined(s, part)))
			break
		}
		if len(s.Runs) > 1 || s.Fresh && len(s.Runs) > 0 {
			body = append(body, l.voice.startAlong(alongText{runs: c.runs(s.Runs), skip: c.passedOver(part), yarn: c.joined(s, part), rates: !s.Spelt, round: s.Round}))
			break
		}
		if len(s.Runs) == 1 && s.Runs[0].Kind != plan.RefEdge {
			body = append(body, sentence(l.voice.goesOn(c.named(&s.Runs[0]))))
		}
	case plan.StartIn:
		if s.Fresh && len(s.Runs) > 0 {
			body = append(body, l.voice.startIn(c.named(&s.Runs[0]), c.joined(s, part)))
		}
	}
	st.Body = paragraph(join(" ", body...))
	return st
}

func (c *context) joined(s plan.Start, part *plan.Part) joined {
	return joined{fresh: s.Fresh, name: c.yarn(s.Yarn), wrong: part.FirstWrong}
}

func (c *context) runs(refs []plan.Ref) []named {
	out := make([]named, len(refs))
	for i := range refs {
		out[i] = c.named(&refs[i])
	}
	return out
}

// chainStart is a start with chains. The chains that the first row adds for its own beginning are made with them.
func (c *context) chainStart(s plan.Start) ([]rich.Text, *CountText) {
	made := c.plus(s.N, s.Extra)
	body := []rich.Text{sentence(c.opened(c.l.voice.chains(c.num(made)), false))}
	switch s.Kind {
	case plan.StartJoined:
		body = append(body, sentence(c.l.voice.joinRing(c.l.voice.places(plan.FoundationCh), true)))
	case plan.StartChainRing:
		return append(body, sentence(c.l.voice.joinRing(c.l.voice.places(plan.FoundationCh), false))), nil
	case plan.StartBothSides:
		body = append(body, rich.T(c.l.voice.line(bothSides)))
	}
	return body, c.count([]plan.Count{{Kind: plan.CountChains, N: made}})
}

func (c *context) foundationStart(s plan.Start) ([]rich.Text, *CountText) {
	body := []rich.Text{sentence(c.l.voice.startFoundation(c.num(s.N), c.form(s.Form)))}
	if s.Kind == plan.StartFoundationJoined {
		body = append(body, sentence(c.l.voice.joinRing(c.form(s.Form), true)))
	}
	return body, c.count([]plan.Count{{Kind: plan.CountForm, Form: s.Form, N: s.N}})
}

// fasten ends a part.
func (c *context) fasten(f *plan.Fasten) StepText {
	var body []rich.Text
	if f.Slip > 0 {
		body = append(body, sentence(c.l.voice.level(f.Slip)))
	}
	switch {
	case f.Close != "":
		body = append(body, sentence(c.l.voice.closeThrough(f.Close)))
	case f.Off && f.Tail:
		body = append(body, rich.T(upper(c.l.voice.line(fastenOff))+c.l.voice.line(longTail)+"."))
	case f.Off:
		body = append(body, rich.T(upper(c.l.voice.line(fastenOff))+"."))
	}
	return c.step(nil, join(" ", body...))
}

// noteStep is prose between rows.
func (c *context) noteStep(n *plan.NoteStep) StepText {
	return c.step(rich.T(c.l.voice.fixed(NoteLabel)), c.proseLine(n.Prose, asWritten))
}

// plainForm is an ordinary stitch of a kind.
func plainForm(id stitch.ID) stitch.Form { return stitch.Form{ID: id, Together: 1} }
