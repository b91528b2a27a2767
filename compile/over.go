package compile

import (
	"math"
	"slices"

	"ovillo/compile/caution"
	"ovillo/compile/plan"
	"ovillo/compile/standard"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file compares openings with what they must go over: a neck with the head, a cuff with the foot.

// muchStretch is the most an edge is counted on to stretch, in percent: 20 to 30 in ribbing worked through the back loops or
// round posts, next to nothing in a plain edge. Common practice, no source; to be measured on the swatch.
const muchStretch = 30

// over compares a measure, stretched as far as its edge goes, with a measure of the wearer.
func (c *checker) over(n *lang.Measure, out *plan.Measure) {
	if n.Over == nil {
		return
	}
	body, assumed := c.goesOver(n.Over)
	stretch := c.stretch(n)
	if body == nil || stretch == nil {
		return
	}
	o := &plan.Over{Body: n.Over.Path[len(n.Over.Path)-1], Values: body, Assumed: assumed, Percent: stretch, Stretched: make(plan.Lengths, c.z)}
	bad := newSpread(c)
	var have, most, need, least, more []string
	for z, girth := range out.Values {
		o.Stretched[z] = plan.NoLength
		if girth == plan.NoLength || body[z] == plan.NoLength {
			continue
		}
		o.Stretched[z] = girth * plan.Length(100+stretch[z]) / 100
		if o.Stretched[z] >= body[z] {
			continue
		}
		bad.add(z, 0, 0)
		have, most, need = append(have, cmText(girth)), append(most, cmText(o.Stretched[z])), append(need, cmText(body[z]))
		// What would do, rounded up: a tenth of a centimetre, a whole percent.
		enough := math.Ceil(float64(body[z])*100/float64(100+stretch[z])/float64(plan.Millimetre)) * float64(plan.Millimetre)
		least = append(least, cmText(plan.Length(enough)))
		more = append(more, itoa(int(math.Ceil(float64(body[z])*100/float64(max(girth, 1)))-100))+" %")
	}
	out.Over = o
	if assumed {
		c.say(codeHeadAssumed, n.Over.Span(), diag.Args{"need": c.allLengths(body)})
	}
	if !bad.any() {
		return
	}
	per := func(values []string) diag.PerSize {
		p := bad.per(bad.need)
		p.Values = values
		return p
	}
	help := ""
	if n.Stretch == nil {
		help = "plain"
	}
	c.report(diag.Diagnostic{Code: codeTooNarrow, Span: n.Span(), Sizes: bad.sizes(), Help: help, Args: diag.Args{
		"name": out.Name, "body": o.Body, "have": per(have), "most": per(most), "need": per(need), "least": per(least), "more": per(more)}})
}

// allLengths lists a length in every size.
func (c *checker) allLengths(ls plan.Lengths) diag.PerSize {
	p := diag.PerSize{Names: c.sizeNames(), All: true}
	for _, l := range ls {
		p.Values = append(p.Values, cmText(l))
	}
	return p
}

// goesOver is the measure of the wearer that an opening goes over. A head that nobody states is the largest of the growth
// table, its 97th percentile: a garment that a large head does not get through is returned, one that is a little wide is not.
func (c *checker) goesOver(ref *lang.Ref) (ls plan.Lengths, assumed bool) {
	name := ref.Path[len(ref.Path)-1]
	if _, known := c.lets["fit."+name]; !known && len(ref.Path) == 2 && ref.Path[0] == "fit" && bodyName(name) == "head" {
		var heads plan.Lengths
		for _, s := range c.pat.Sizes {
			if _, _, top, ok := standard.Head(s.Age); ok {
				heads = append(heads, top)
			}
		}
		if len(heads) == c.z {
			return heads, true
		}
	}
	e := &lang.Expr{At: ref.At, Op: lang.OpName, Path: ref.Path, Text: ref.Path[0]}
	return c.eval(e, nil, nil).Lengths(), false
}

// stretch is how far an edge stretches, in whole percent; nil if that cannot be known, which was reported.
func (c *checker) stretch(n *lang.Measure) plan.Nums {
	if n.Stretch == nil {
		return c.nums(0)
	}
	v := c.value(n.Stretch, nil).As(value.Percent, &scope{c: c}, n.Stretch)
	if v.Unknown {
		return nil
	}
	out := c.nums(0)
	for z := range out {
		if q := v.At(z); q.N != nil {
			f, _ := q.N.Float64()
			out[z] = int(math.Floor(f))
		}
	}
	if most := slices.Max(out); most > muchStretch {
		c.say(codeMuchStretch, n.Stretch.Span(), diag.Args{"have": most, "max": muchStretch})
	}
	return out
}

// headUnchecked notes a garment that is pulled over the head while none of its measures says what goes over it. One that is
// buttoned opens.
func (c *checker) headUnchecked() {
	if c.oversaid || !caution.PulledOver(c.pat.Kind) || len(blocks[*lang.MeasureBlock](c.file.Body)) == 0 {
		return
	}
	for _, f := range c.pat.Finish {
		if f.Kind == plan.SewButtons {
			return
		}
	}
	c.say(codeHeadUnchecked, c.kindAt, diag.Args{"kind": c.pat.Kind})
}
