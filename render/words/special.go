package words

import (
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// Specials explains the stitches that need it: extended ones, those round a post, those that draw several places together,
// groups in one place, those of the designer's own, and starts without a chain. Each says what it takes and what it makes.
func (l *Language) Specials(p *plan.Pattern) []Special {
	c := l.context(p, nil, nil)
	var out []Special
	for _, f := range c.printedForms() {
		if k, _ := stitch.Of(f.ID); !f.Derived() && k.Extends == "" && !k.Back {
			continue
		}
		text := l.voice.special(c.explain(f))
		if f.Group != stitch.Single {
			text = join(" ", text, c.elsewhere(f))
		}
		out = append(out, Special{Form: f, Head: merge(capital(l.voice.specialName(f))), Text: paragraph(text)})
	}
	for i := range p.Own {
		out = append(out, c.ownSpecial(&p.Own[i]))
	}
	seen := map[stitch.ID]bool{}
	eachInstr(p, func(in *plan.Instr) {
		if spikes(in) && !seen[in.Form.ID] {
			seen[in.Form.ID] = true
			f := c.l.voice.form(in.Form.Base())
			head, text := c.l.voice.spikeSpecial(l.voice.spike(f), f)
			out = append(out, Special{Form: in.Form.Base(), Head: merge(capital(head)), Text: paragraph(text)})
		}
	})
	return append(out, c.starts()...)
}

// elsewhere is what other readings call a group of stitches, nil if they say the same.
func (c *context) elsewhere(f stitch.Form) rich.Text {
	says := c.othersGroup(f)
	if len(says) == 0 {
		return nil
	}
	return fill(c.l.voice.line(elsewhere), upper(c.l.otherReadings()), strings.Join(says, "; "))
}

// explain collects what the instructions of a stitch depend on.
func (c *context) explain(f stitch.Form) explained {
	k, _ := stitch.Of(f.ID)
	v := c.l.voice
	x := explained{form: f, overs: k.Overs, start: max(k.Begin, 2), base: v.form(f.Base()), single: v.form(stitch.Form{ID: f.ID, Post: f.Post, Together: 1}),
		back: k.Back, extended: k.Extends != "", half: f.ID == stitch.HDC || k.Extends == stitch.HDC}
	if x.extended {
		x.extends = v.form(stitch.Plain(k.Extends))
	}
	return x
}

// kept is how many loops are on the hook before n stitches are finished at once.
func (x explained) kept(n int) int {
	if x.half {
		return 2*n + 1
	}
	return n + 1
}

func (c *context) ownSpecial(own *plan.OwnStitch) Special {
	n := c.l.ownNoun(own, stitch.Form{})
	head := n.one
	if name := n.one[0].Expand; name != "" {
		head = fill("{} ({})", upper(name), n.one.String())
	}
	body := []rich.Text{c.proseLine(own.How, stopped), c.l.voice.takesMakes(own.Takes, own.Makes, 0)}
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
				out = append(out, c.foundation(f, false))
			}
		}
	}
	longer := map[stitch.ID]bool{}
	eachInstr(c.p, func(in *plan.Instr) {
		if in.Op == plan.Lengthen && !longer[in.Form.ID] {
			longer[in.Form.ID] = true
			out = append(out, c.foundation(in.Form, true))
		}
	})
	return out
}

// foundation explains stitches that make their own chain.
func (c *context) foundation(f stitch.Form, goesOn bool) Special {
	head, text := c.l.voice.foundationSpecial(c.explain(f), goesOn)
	return Special{Form: f, Head: merge(capital(head)), Text: paragraph(text)}
}
