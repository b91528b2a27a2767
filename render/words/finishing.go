package words

import (
	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// Finishing writes one step of the finishing.
func (l *Language) Finishing(p *plan.Pattern, f plan.Finishing) rich.Text {
	c := l.context(p, nil, nil)
	switch f.Kind {
	case plan.FreeStep:
		return merge(c.proseLine(f.Prose, asWritten))
	case plan.SewRuns:
		var eased rich.Text
		if f.Ease != nil {
			eased = c.both(f.Ease)
		}
		return paragraph(sentence(l.voice.sew(c.runs(f.Sewn), c.runs(f.To), f.Match, eased)))
	case plan.MakeCord:
		return paragraph(c.asSentences(l.voice.cord(c.cord(f))))
	case plan.MakeFringe:
		return paragraph(c.asSentences(l.voice.fringe(c.fringe(f))))
	case plan.MakePompom:
		return paragraph(sentence(l.voice.pompom(pompom{c.yarn(f.Yarn), c.both(f.Length), f.Wraps, c.metres(f.Winds)})))
	case plan.ThreadElastic:
		return paragraph(c.asSentences(l.voice.elastic(c.elastic(f))))
	case plan.SewButtons:
		return paragraph(sentence(l.voice.buttons(c.tally(f.Buttons.N), l.millimetres(f.Buttons.Size), f.Buttons.Material)))
	case plan.WeaveEnds:
		return paragraph(sentence(rich.T(l.voice.line(weaveEnds))))
	case plan.BlockPiece:
		return paragraph(rich.T(l.voice.line(blockPiece)))
	}
	return nil
}

// asSentences makes a sentence of each text.
func (c *context) asSentences(texts []rich.Text) rich.Text {
	var body []rich.Text
	for _, t := range texts {
		body = append(body, sentence(t))
	}
	return join(" ", body...)
}

func (c *context) elastic(f plan.Finishing) elastic {
	e := elastic{width: c.width(f.Width), length: c.both(f.Length), through: c.named(f.Through)}
	if f.Row != nil {
		e.through.row = c.num(f.Row)
	}
	return e
}

func (c *context) fringe(f plan.Finishing) fringe {
	k := fringe{yarn: c.yarn(f.Yarn), length: c.both(f.Length), cut: c.both(f.Cut), along: c.runs(f.Sewn), known: f.Strands != nil, bundle: f.Bundle}
	if k.known {
		k.strands = c.tally(f.Strands)
	}
	return k
}

// width is how wide something is that is sold by its width: below a centimetre in millimetres.
func (c *context) width(v plan.Length) rich.Text {
	cm := c.l.Cm(v) + tie + "cm"
	if v < plan.Centimetre {
		cm = c.l.millimetres(v)
	}
	if c.l.voice.inches() {
		return fill("{} ({}~{})", cm, c.l.Inches(v), c.l.InchesBehind(c.l.Inches(v)))
	}
	return rich.T(cm)
}

// metres is a length of yarn in metres, and in yards where lengths are given in inches too.
func (c *context) metres(ls plan.Lengths) rich.Text {
	if ls == nil {
		return nil
	}
	per := func(one plan.Length) func(plan.Length) string {
		return func(v plan.Length) string { return c.l.Number(float64(v)/float64(one), 1) }
	}
	ls = c.kept(ls)
	m := c.l.lengths(ls, c.names(), per(1000*plan.Millimetre), "m")
	if !c.l.voice.inches() {
		return m
	}
	return fill("{} ({})", m, c.l.lengths(ls, c.names(), per(36*plan.Inch), c.l.yardSign()))
}

func (c *context) cord(f plan.Finishing) cord {
	k := cord{yarn: c.yarn(f.Yarn), length: c.both(f.Length), known: f.Chains != nil, ends: f.Ends, fixed: f.Fixed, inside: f.Inside}
	if f.Made != nil {
		k.part, k.worked = c.named(f.Made), true
	} else if f.Width > 0 {
		k.width = c.width(f.Width)
	}
	if k.known {
		k.chains = c.num(f.Chains)
	}
	if f.Through != nil {
		k.through, k.threads = c.named(f.Through), true
		if f.Row != nil {
			k.through.row = c.num(f.Row)
		}
	}
	if f.Free != nil {
		k.free = c.both(f.Free)
	}
	return k
}
