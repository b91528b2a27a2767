package words

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// Specials explains the stitches that need it: those round a post, those that draw several places together, those of
// the designer's own, and starts without a chain. Each says what it takes and what it makes.
func (l *Language) Specials(p *plan.Pattern) []Special {
	c := l.context(p, nil, nil)
	var out []Special
	for _, f := range c.printedForms() {
		if f.Post == stitch.NoPost && f.Together == 1 {
			continue
		}
		out = append(out, Special{Form: f, Head: merge(capital(l.voice.specialName(f))), Text: paragraph(l.voice.special(c.explain(f)))})
	}
	for i := range p.Own {
		out = append(out, c.ownSpecial(&p.Own[i]))
	}
	return append(out, c.starts()...)
}

// explain collects what the instructions of a stitch depend on.
func (c *context) explain(f stitch.Form) explained {
	k, _ := stitch.Of(f.ID)
	return explained{form: f, overs: overs(f.ID), start: max(k.Begin, 2), base: c.l.voice.form(plainForm(f.ID))}
}

// overs is how many times the yarn goes over the hook before the hook goes in: none for single crochet, once more for
// each taller stitch from double crochet on; half double crochet has one and is drawn through all loops at once.
func overs(id stitch.ID) int {
	switch id {
	case stitch.HDC, stitch.DC:
		return 1
	case stitch.TR:
		return 2
	case stitch.DTR:
		return 3
	case stitch.TRTR:
		return 4
	}
	return 0
}

func (c *context) ownSpecial(own *plan.OwnStitch) Special {
	n := c.l.ownNoun(own, stitch.Form{})
	head := n.one
	if name := n.one[0].Expand; name != "" {
		head = fill("{} ({})", upper(name), n.one.String())
	}
	var body []rich.Text
	for _, b := range c.prose(own.How) {
		body = append(body, stopped(b.Text))
	}
	body = append(body, c.l.voice.takesMakes(own.Takes, own.Makes))
	return Special{
		Form: stitch.Form{ID: own.ID, Together: 1},
		Head: merge(capital(head)), Text: paragraph(join(" ", body...)),
	}
}

// starts explains how a part is started that needs more than a chain.
func (c *context) starts() []Special {
	var out []Special
	ring, seen := false, map[stitch.ID]bool{}
	for _, part := range c.p.Parts {
		switch part.Start.Kind {
		case plan.StartRing:
			if !ring {
				ring = true
				out = append(out, Special{Head: rich.T(c.l.voice.line(ringName)), Text: paragraph(fill(c.l.voice.line(ringText)))})
			}
		case plan.StartFoundation, plan.StartFoundationJoined:
			f := part.Start.Form
			if !seen[f.ID] {
				seen[f.ID] = true
				head, text := c.l.voice.foundationSpecial(c.explain(f))
				out = append(out, Special{Form: f, Head: merge(capital(head)), Text: paragraph(text)})
			}
		}
	}
	return out
}
