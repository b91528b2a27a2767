package words

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// estimate says how the amounts of yarn were worked out: from which swatch or sample, and what is in them. Of yarns without an
// amount it says what is missing.
func (c *context) estimate() rich.Text {
	var bases []basis
	add := func(b basis, yarn int) {
		for i := range bases {
			if bases[i].text.String() == b.text.String() {
				bases[i].yarns = append(bases[i].yarns, yarn)
				return
			}
		}
		b.yarns = []int{yarn}
		bases = append(bases, b)
	}
	for i, y := range c.p.Yarns {
		switch {
		case y.Amount != nil:
			if text := c.basisOf(y); text != nil {
				add(basis{amounts, amountsOf, text, nil}, i)
			}
		case y.WhyNoAmount != "":
			if key, ok := whyNot[y.WhyNoAmount]; ok {
				add(basis{noAmounts, noAmountsOf, rich.T(c.l.voice.line(key)), nil}, i)
			}
		}
	}
	var out []rich.Text
	for _, b := range bases {
		if len(b.yarns) == len(c.p.Yarns) {
			out = append(out, fill(c.l.voice.line(b.all), b.text))
			continue
		}
		var names []string
		for _, i := range b.yarns {
			names = append(names, c.l.YarnName(c.p.Yarns[i]))
		}
		out = append(out, fill(c.l.voice.line(b.some), c.list(names), b.text))
	}
	return join(" ", join(" ", out...), c.included())
}

// basis is what the amounts of some yarns rest on, or why there are none: how it is said of all yarns, and of some.
type basis struct {
	all, some line
	text      rich.Text
	yarns     []int
}

var whyNot = map[string]line{"swatch": whyNoSwatch, "gauge": whyNoGauge, "ball": whyNoBall}

// basisOf is the swatch or the sample that a yarn was weighed in.
func (c *context) basisOf(y plan.Yarn) rich.Text {
	if y.BySample && c.p.Sample != nil {
		return fill(c.l.voice.line(weighedSample), c.l.InSize(c.p.Sample.Made), c.weights(c.p.Sample))
	}
	s := y.Swatch
	if s == nil {
		return nil
	}
	wide := fill("{}~{}", s.Sts, c.form(plainForm(s.Stitch)).many)
	switch {
	case s.Repeats:
		wide = fill(c.l.voice.line(repeatsOf), s.Sts, c.patternName(s.Called, s.Pattern))
	case s.Pattern != "":
		wide = fill("{}~{}", s.Sts, c.l.voice.stsOf(c.patternName(s.Called, s.Pattern)).many)
	}
	key := weighedSwatch
	if s.Rounds {
		key = weighedTube
	}
	return fill(c.l.voice.line(key), wide, s.Rows)
}

// weights says what a sample weighs, each yarn by itself or all together.
func (c *context) weights(s *plan.Sample) rich.Text {
	if s.All > 0 {
		return rich.T(c.l.grams(s.All))
	}
	var out []rich.Text
	for i, mg := range s.Milligrams {
		switch {
		case mg == 0:
		case len(c.p.Yarns) == 1:
			out = append(out, rich.T(c.l.grams(mg)))
		default:
			out = append(out, fill(c.l.voice.line(notionAmount), c.l.grams(mg), c.l.YarnName(c.p.Yarns[i])))
		}
	}
	return c.l.voice.and(out)
}

// included says what is in the amounts besides the fabric: seams, cords and pompoms, and what is added to all of it.
func (c *context) included() rich.Text {
	if !slices.ContainsFunc(c.p.Yarns, func(y plan.Yarn) bool { return y.Amount != nil }) {
		return nil
	}
	var items []rich.Text
	for _, k := range []struct {
		kind      plan.FinishKind
		one, many line
	}{{plan.SewRuns, theSeam, theSeams}, {plan.MakeCord, theCord, theCords}, {plan.MakeFringe, theFringe, theFringe}, {plan.MakePompom, thePompom, thePompoms}} {
		n := 0
		for _, f := range c.p.Finish {
			if f.Kind == k.kind && f.Yarn >= 0 && c.p.Yarns[f.Yarn].Amount != nil && slices.ContainsFunc(f.Length, func(l plan.Length) bool { return l > 0 }) {
				n++
			}
		}
		switch {
		case n == 1:
			items = append(items, rich.T(c.l.voice.line(k.one)))
		case n > 1:
			items = append(items, rich.T(c.l.voice.line(k.many)))
		}
	}
	if c.p.Allowance > 0 {
		items = append(items, fill(c.l.voice.line(allowance), c.l.Number(float64(c.p.Allowance)/10, 1)))
	}
	if items == nil {
		return nil
	}
	return fill(c.l.voice.line(sideYarnIncludes), c.l.voice.and(items))
}
