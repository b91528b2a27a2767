package words

import (
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// Finishing writes one step of the finishing.
func (l *Language) Finishing(p *plan.Pattern, f plan.Finishing) rich.Text {
	c := l.context(p, nil, nil)
	switch f.Kind {
	case plan.FreeStep:
		var body []rich.Text
		for _, b := range c.prose(f.Prose) {
			body = append(body, b.Text)
		}
		return paragraph(join(" ", body...))
	case plan.SewRuns:
		var eased rich.Text
		if f.Ease != nil {
			eased = c.both(f.Ease)
		}
		return paragraph(sentence(l.voice.sew(c.runs(f.Sewn), c.runs(f.To), f.Match, eased)))
	case plan.MakeCord:
		var body []rich.Text
		for _, t := range l.voice.cord(c.cord(f)) {
			body = append(body, sentence(t))
		}
		return paragraph(join(" ", body...))
	case plan.MakePompom:
		return paragraph(sentence(l.voice.pompom(c.yarn(f.Yarn), c.both(f.Length), f.Wraps)))
	case plan.SewButtons:
		return paragraph(sentence(l.voice.buttons(c.tally(f.Buttons.N), l.millimetres(f.Buttons.Size))))
	case plan.WeaveEnds:
		return paragraph(sentence(rich.T(l.voice.line(weaveEnds))))
	case plan.BlockPiece:
		return paragraph(rich.T(l.voice.line(blockPiece)))
	}
	return nil
}

func (c *context) cord(f plan.Finishing) cord {
	k := cord{yarn: c.yarn(f.Yarn), length: c.both(f.Length), known: f.Chains != nil}
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

// fractions are written with their own signs, as the lengths of the pages are.
var fractions = strings.NewReplacer(" 1/2 in", "½ in", " 1/4 in", "¼ in", " 3/4 in", "¾ in")

// Caution writes a caution: its head, and its text with the source behind it. A source that is only remembered is
// called so.
func (l *Language) Caution(k plan.Caution) (head string, body rich.Text) {
	body = rich.T(tieUnits(fractions.Replace(l.read.of(k.Text))))
	if k.Source != "" {
		key := cautionSource
		if strings.HasPrefix(k.Basis, "memory") {
			key = cautionMemory
		}
		body = join(" ", stopped(body), fill(l.voice.line(key), k.Source))
	}
	return l.Say(CautionHead), paragraph(body)
}
