package words

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// MapStep is a step of the map of the construction: a part, or what is done between parts and behind the last.
type MapStep struct {
	Part  int // index into the parts; -1 for assembly and finishing
	Title string
	Text  rich.Text // from what it starts and how it is worked, in few words
}

// MapSteps tells in few words how a piece comes about: a step for each part in the order of working, with what is done before
// a part that cannot be begun without it, and the finishing.
func (l *Language) MapSteps(p *plan.Pattern) []MapStep {
	c := l.context(p, nil, nil)
	var out []MapStep
	finish := func(before int, title Key) {
		var list []plan.Finishing
		for _, f := range p.Finish {
			if f.Before == before {
				list = append(list, f)
			}
		}
		if len(list) > 0 {
			out = append(out, MapStep{Part: -1, Title: l.Say(title), Text: c.finishedHow(list)})
		}
	}
	for i, part := range p.Parts {
		finish(i+1, AssemblyHead)
		out = append(out, MapStep{Part: i, Title: l.PartTitle(p, i), Text: c.partHow(part)})
	}
	finish(0, FinishingHead)
	return out
}

// partHow says from what a part starts, how it is worked, and how many of it are made.
func (c *context) partHow(part *plan.Part) rich.Text {
	c = c.l.context(c.p, part, nil)
	v := c.l.voice
	if part.Grid != nil {
		return paragraph(sentence(v.motifs(c.laid(part.Grid))))
	}
	texts := []rich.Text{c.startHow(part), rich.T(v.line(workedHow[part.Style]))}
	out := sentence(join(", ", texts...))
	if part.Make > 1 {
		out = join(" ", out, sentence(v.makeSeveral(part.Make)))
	}
	if part.Motifs != nil {
		out = join(" ", out, sentence(v.makeMotifs(c.num(part.Motifs))))
	}
	return paragraph(out)
}

var workedHow = map[plan.Style]line{plan.Rows: mapRows, plan.JoinedRounds: mapJoinedRounds, plan.TurnedRounds: mapTurnedRounds, plan.SpiralRounds: mapSpiral}

var startsHow = map[plan.StartKind]line{
	plan.StartChain: mapChain, plan.StartJoined: mapJoined, plan.StartBothSides: mapBothSides, plan.StartRing: mapRing,
	plan.StartChainRing: mapChainRing, plan.StartFoundation: mapFoundation, plan.StartFoundationJoined: mapFoundation,
}

// startHow says from what a part starts.
func (c *context) startHow(part *plan.Part) rich.Text {
	v := c.l.voice
	if key, ok := startsHow[part.Start.Kind]; ok {
		return rich.T(v.line(key))
	}
	from := c.origins(part)
	runs := part.Start.Runs
	switch {
	case len(from) == 0:
		return nil
	case len(from) > 1 && !slices.ContainsFunc(runs, atEdge):
		return fill(v.line(mapJoins), c.partNames(from))
	case len(runs) > 1 && slices.ContainsFunc(runs, atEdge) || runs[0].Kind == plan.RefAround:
		return fill(v.line(mapAlong), c.partNames(from))
	}
	place := c.partNames(from)
	if k := runs[0].Kind; len(runs) == 1 && (k == plan.RefEdge || k == plan.RefFoundation || k == plan.RefRowEnds && runs[0].Row == nil) {
		place = v.run(c.named(&runs[0]))
	}
	if part.Start.Fresh {
		return fill(v.line(mapFrom), place)
	}
	return fill(v.line(mapGoesOn), place)
}

// atEdge reports whether a run lies along the outer edge of a piece.
func atEdge(r plan.Ref) bool {
	return r.Kind == plan.RefRowEnds || r.Kind == plan.RefCorner || r.Kind == plan.RefAround
}

// finishedHow says in few words what is done in some steps of the finishing: the seams, then what is added. Steps in the
// designer's words are left to their place.
func (c *context) finishedHow(list []plan.Finishing) rich.Text {
	v := c.l.voice
	var texts []rich.Text
	said := map[string]bool{}
	add := func(t rich.Text) {
		if s := t.String(); s != "" && !said[s] {
			said[s] = true
			texts = append(texts, t)
		}
	}
	counts := map[plan.FinishKind]int{}
	for _, f := range list {
		counts[f.Kind]++
	}
	for _, f := range list {
		if f.Kind == plan.SewRuns {
			add(c.seamHow(f))
		}
	}
	for _, k := range []struct {
		kind      plan.FinishKind
		one, many line
	}{{plan.ThreadElastic, theElastic, theElastic}, {plan.MakeCord, theCord, theCords}, {plan.MakeFringe, theFringe, theFringe}, {plan.MakePompom, thePompom, thePompoms}, {plan.SewButtons, theButtons, theButtons}} {
		switch {
		case counts[k.kind] == 1:
			add(rich.T(v.line(k.one)))
		case counts[k.kind] > 1:
			add(rich.T(v.line(k.many)))
		}
	}
	if counts[plan.WeaveEnds] > 0 {
		add(rich.T(v.line(weaveEnds)))
	}
	return paragraph(sentence(join("; ", texts...)))
}

// seamHow names the parts of a seam.
func (c *context) seamHow(f plan.Finishing) rich.Text {
	a, b := partsOf(f.Sewn), partsOf(f.To)
	if len(a) == 0 || len(b) == 0 {
		return nil
	}
	if slices.Equal(a, b) {
		return fill(c.l.voice.line(mapSelf), c.partNames(a))
	}
	return fill(c.l.voice.line(mapSeam), c.partNames(a), c.partNames(b))
}

// partsOf lists the parts of some edges, each once.
func partsOf(refs []plan.Ref) []int {
	var out []int
	for _, r := range refs {
		if !slices.Contains(out, r.Part) {
			out = append(out, r.Part)
		}
	}
	return out
}
