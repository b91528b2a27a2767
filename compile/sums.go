package compile

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// This file sees that measures add up. Each is worked out from the fabric by itself and is printed to a tenth of a centimetre;
// where two add up exactly, their printed figures do within one in the last place, so nothing is done about those.

// sumWithin is how far measures that must add up may be off where the source does not say. Common practice, no source.
const sumWithin = plan.Centimetre / 2

// sums are measures that add up on every garment, by the names that a page prints without being told how: two lengths, and
// what they make together.
var sums = []struct{ a, b, whole []string }{
	{[]string{"rise"}, []string{"inseam"}, []string{"outseam", "total", "length"}},
	{[]string{"side"}, []string{"armhole", "armhole_depth"}, []string{"total", "length"}},
}

// checkSums checks the sums that the source states, and those that the names of its measures make.
func (c *checker) checkSums() {
	stated := map[string]bool{}
	for _, s := range blocks[*lang.MeasureBlock](c.file.Body) {
		for _, b := range s.Body {
			if n, ok := b.Node.(*lang.CheckSum); ok {
				names(n.Left.E, stated)
				names(n.Right.E, stated)
				c.checkSum(n)
			}
		}
	}
	for _, s := range sums {
		a, b, whole := c.firstMeasure(s.a), c.firstMeasure(s.b), c.firstMeasure(s.whole)
		if a == nil || b == nil || whole == nil || stated[a.Name] && stated[b.Name] && stated[whole.Name] {
			continue
		}
		sum := make(plan.Lengths, c.z)
		for z := range sum {
			if sum[z] = plan.NoLength; a.Values[z] != plan.NoLength && b.Values[z] != plan.NoLength {
				sum[z] = a.Values[z] + b.Values[z]
			}
		}
		c.differSums(codeSumByName, c.measureAt[whole.Name], sum, whole.Values, sumWithin, diag.Args{"a": a.Name, "b": b.Name, "whole": whole.Name})
	}
}

// names gathers the names in an expression.
func names(e *lang.Expr, into map[string]bool) {
	if e == nil {
		return
	}
	if e.Op == lang.OpName && len(e.Path) == 1 {
		into[e.Path[0]] = true
	}
	names(e.L, into)
	names(e.R, into)
}

// firstMeasure is the first measure there is of some names, in their order.
func (c *checker) firstMeasure(of []string) *plan.Measure {
	for _, name := range of {
		if i := slices.IndexFunc(c.pat.Measures, func(m plan.Measure) bool { return m.Name == name }); i >= 0 {
			return &c.pat.Measures[i]
		}
	}
	return nil
}

// checkSum checks one sum that the source states.
func (c *checker) checkSum(n *lang.CheckSum) {
	left, right := c.amongMeasures(n.Left), c.amongMeasures(n.Right)
	within := sumWithin
	if n.Within != nil {
		if w := c.value(n.Within, nil).Lengths(); w != nil {
			within = w[0]
		}
	}
	if left.Unknown || right.Unknown {
		return
	}
	a, b := left.Lengths(), right.Lengths()
	if a == nil || b == nil {
		at := n.Left
		if a != nil {
			at = n.Right
		}
		c.say(codeMeasured, at.Span(), nil)
		return
	}
	text := func(v *lang.Val) string { return c.file.Source.Slice(v.Span()) }
	if !c.differSums(codeSum, n.Span(), a, b, within, diag.Args{"left": text(n.Left), "right": text(n.Right)}) {
		c.pat.Sums = append(c.pat.Sums, plan.Sum{Left: text(n.Left), Right: text(n.Right), Values: b})
	}
}

// amongMeasures works out a value in which measures stand by their names alone.
func (c *checker) amongMeasures(v *lang.Val) value.Vector {
	if c.z == 0 {
		return value.Unknown
	}
	return value.Eval(v.E, &scope{c: c, first: "measure."})
}

// differSums reports the sizes in which two lengths differ by more than allowed, and whether there are any.
func (c *checker) differSums(code diag.Code, at source.Span, a, b plan.Lengths, within plan.Length, args diag.Args) bool {
	bad := newSpread(c)
	var have, need []string
	for z := range a {
		if a[z] == plan.NoLength || b[z] == plan.NoLength {
			continue
		}
		if d := a[z] - b[z]; d > within || -d > within {
			bad.add(z, 0, 0)
			have, need = append(have, cmText(a[z])), append(need, cmText(b[z]))
		}
	}
	if !bad.any() {
		return false
	}
	h, w := bad.per(bad.need), bad.per(bad.need)
	h.Values, w.Values = have, need
	args["have"], args["need"], args["within"] = h, w, diag.Length(within)
	c.report(diag.Diagnostic{Code: code, Span: at, Sizes: bad.sizes(), Args: args})
	return true
}
