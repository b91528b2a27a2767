package compile

import (
	"math"

	"ovillo/compile/plan"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// leastRound is how much of the way round a flat disc the last round of a disc must go: with less it stands up as a bowl, and
// what is measured across it is no diameter. At printed gauges the usual starts come within a fifth of the flat circle (see
// standard.FlatIncrease), so a quarter is beyond doubt.
const leastRound = 0.75

// measuredAcross works out how wide a piece is that is worked in rounds from its middle: twice the height of the rounds.
func (c *checker) measuredAcross(e *lang.Expr) (value.Vector, *plan.MeasuredOn) {
	p := c.parts[e.Path[0]]
	if p == nil {
		c.say(codeNoPart, e.Span(), diag.Args{"word": e.Path[0], "near": lang.Near(e.Path[0], keys(c.parts))})
		return value.Unknown, nil
	}
	if k := p.plan.Start.Kind; p.plan.Grid != nil || k != plan.StartRing && k != plan.StartChainRing {
		c.say(codeNoDisc, e.Span(), diag.Args{"part": p.plan.Name})
		return value.Unknown, nil
	}
	var at plan.Nums
	if e.R != nil {
		if at = c.count(e.R, nil); at == nil {
			return value.Unknown, nil
		}
	}
	out := make(plan.Lengths, c.z)
	cups := newSpread(c)
	var have, need []string
	for z := range out {
		if p.fab[z].Halted() {
			return value.Unknown, nil
		}
		facts := p.plan.Worked[z]
		if at != nil {
			k := len(rowsUpTo(facts, at[z]))
			if at[z] < 1 || k == 0 || facts[k-1].Number != at[z] {
				c.report(diag.Diagnostic{Code: codeMeasuredRow, Span: e.R.Span(), Args: diag.Args{
					"need": at[z], "have": len(facts), "part": p.plan.Name, "round": diag.Term{Key: rowWord(p), N: 1}}, Sizes: []string{c.pat.Sizes[z].Name}})
				return value.Unknown, nil
			}
			facts = facts[:k]
		}
		within := func(number int) bool { return at == nil || number <= at[z] }
		if len(facts) == 0 || !p.gauged(z, within, true, e) {
			return value.Unknown, nil
		}
		for _, f := range facts {
			out[z] += 2 * f.Height
		}
		last := facts[len(facts)-1].Width
		if flat := math.Pi * float64(out[z]); float64(last) < leastRound*flat {
			cups.add(z, 0, 0)
			have, need = append(have, cmText(last)), append(need, cmText(plan.Length(flat)))
		}
	}
	if cups.any() {
		h, n := cups.per(cups.need), cups.per(cups.need)
		h.Values, n.Values = have, need
		c.report(diag.Diagnostic{Code: codeDiscCups, Span: e.Span(), Sizes: cups.sizes(), Args: diag.Args{"part": p.plan.Name, "have": h, "need": n}})
	}
	return value.OfLengths(out), &plan.MeasuredOn{Kind: plan.Across, Part: p.index, Row: at, Values: out}
}

// seenFromAbove reports whether the drawing shows a part as rounds seen from above, where it has a way across: its rounds grow all
// the way about as fast as those of a flat disc, and nothing stands on them.
func (c *checker) seenFromAbove(part int) bool {
	const flat = 4.7 // of the round to the height; 2 pi in a disc
	for _, other := range c.pat.Parts {
		for _, o := range other.From {
			if o.Part == part {
				return false
			}
		}
	}
	for _, facts := range c.pat.Parts[part].Worked {
		var widest, tall plan.Length
		for _, f := range facts {
			widest, tall = max(widest, f.Width), tall+f.Height
		}
		if len(facts) == 0 || tall <= 0 || float64(facts[len(facts)-1].Width) < 0.98*float64(widest) || float64(widest) < flat*float64(tall) {
			return false
		}
	}
	return true
}

// rowsUpTo are the rows up to a number.
func rowsUpTo(facts []plan.RowFact, number int) []plan.RowFact {
	for i := range facts {
		if facts[i].Number > number {
			return facts[:i]
		}
	}
	return facts
}
