package compile

import (
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// What clothes leave between themselves and the wearer, in percent of the wearer: publishers' bands run from less than nothing for
// what clings (Lion Brand fit guide at gratefullyinhisgrace 2011/08) over 5 cm in a baby's sweater of 41 to 46 cm (justknitting.co.uk)
// to 15 cm and more for what is oversized. The bounds lie well outside these: what passes them is as a rule the wrong measure, a
// wrong unit, or a piece laid flat. Common practice, no source.
const (
	leastEase = -20
	mostEase  = 60
)

// usualEase notes an ease that no garment has, even where the source states that it is wanted.
func (c *checker) usualEase(n *lang.Measure, f *plan.Fit) {
	if f == nil {
		return
	}
	bad := newSpread(c)
	var have, need []string
	for z, e := range f.Ease {
		body := f.Values[z]
		if e == plan.NoLength || body == plan.NoLength || body <= 0 || 100*e >= leastEase*body && 100*e <= mostEase*body {
			continue
		}
		bad.add(z, 0, 0)
		have, need = append(have, cmText(e)), append(need, cmText(body))
	}
	if !bad.any() {
		return
	}
	h, w := bad.per(bad.need), bad.per(bad.need)
	h.Values, w.Values = have, need
	c.report(diag.Diagnostic{Code: codeUnusualEase, Span: n.Span(), Sizes: bad.sizes(), Args: diag.Args{
		"name": n.Name.Text, "body": f.Body, "have": h, "need": w}})
}
