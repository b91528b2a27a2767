package words

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// CareHead heads what is said of care and of what the finished piece is made of, whichever of the two there is.
func (l *Language) CareHead(p *plan.Pattern) string {
	switch {
	case len(l.Contents(p)) == 0:
		return l.Say(CareHead)
	case l.read.of(p.Care.Text) == "":
		return l.Say(LabelHead)
	}
	return l.Say(CareLabelHead)
}

// Contents says what the finished piece is made of, as it goes on a label: "Fiber content: 60% cotton, 40% wool." Where that was
// weighed it is called an estimate. It is nil if not all yarns say their fibres.
func (l *Language) Contents(p *plan.Pattern) rich.Text {
	c := l.context(p, nil, nil)
	k := p.Contents
	if k == nil || len(k.Shares) == 0 {
		if c.oneFibre() || slices.ContainsFunc(p.Yarns, func(y plan.Yarn) bool { return len(y.Fibre) == 0 }) {
			return nil
		}
		return paragraph(capital(fill(l.voice.line(contentsByYarn), c.fibresByYarn())))
	}
	out := capital(fill(l.voice.line(contentsAre), c.contents(k)))
	if slices.Contains(k.Weighted, true) {
		out = join(" ", out, rich.T(l.voice.line(contentsGuessed)))
	}
	if n := p.Notions; len(n.Buttons)+len(n.Elastic)+len(n.Others) > 0 {
		out = join(" ", out, rich.T(l.voice.line(contentsAlone)))
	}
	return paragraph(out)
}

// contents writes the fibres of each size, those together that are made of the same.
func (c *context) contents(k *plan.Contents) rich.Text {
	if k.Alike() {
		return c.shares(k.Shares[0])
	}
	var out []rich.Text
	done := make([]bool, len(k.Shares))
	for z, shares := range k.Shares {
		if done[z] || shares == nil {
			continue
		}
		var names []string
		for i := z; i < len(k.Shares); i++ {
			if slices.Equal(k.Shares[i], shares) {
				done[i] = true
				names = append(names, c.l.SizeName(c.p.Sizes[i]))
			}
		}
		sizes := rich.T(c.l.InSize(c.p.Sizes[z]))
		if len(names) > 1 {
			sizes = rich.T(lower(fill(c.l.voice.line(subjectSizes), c.l.voice.sizeList(names)).String()))
		}
		out = append(out, fill(c.l.voice.line(contentsIn), sizes, c.shares(shares)))
	}
	return join("; ", out...)
}

// fibres says what the yarns are made of, once if all are made of the same.
func (c *context) fibres() rich.Text {
	if len(c.p.Yarns) > 0 && c.oneFibre() {
		return sentence(c.shares(c.p.Yarns[0].Fibre))
	}
	return sentence(c.fibresByYarn())
}

func (c *context) fibresByYarn() rich.Text {
	var texts []rich.Text
	for _, y := range c.p.Yarns {
		if len(y.Fibre) > 0 {
			texts = append(texts, fill("{}: {}", c.l.YarnName(y), c.shares(y.Fibre)))
		}
	}
	return join("; ", texts...)
}

// shares writes fibres with their percentages: 60% cotton, 40% wool.
func (c *context) shares(list []plan.Share) rich.Text {
	var out []rich.Text
	for _, s := range list {
		out = append(out, fill(c.l.voice.line(fibreShare), s.Percent, c.l.fibre(s.Fibre)))
	}
	return join(", ", out...)
}

// oneFibre reports whether all yarns are made of the same.
func (c *context) oneFibre() bool {
	for _, y := range c.p.Yarns {
		if !slices.Equal(y.Fibre, c.p.Yarns[0].Fibre) {
			return false
		}
	}
	return true
}

// fibre is the name of a fibre; one that the language has no word for is printed as it stands.
func (l *Language) fibre(id string) string {
	if t := l.voice.name(fibreName, id); t != "" {
		return t
	}
	return spaced(id)
}
