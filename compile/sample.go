package compile

import (
	"math/big"

	"ovillo/compile/figure"
	"ovillo/compile/plan"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// sample is the piece that was made: which size it is, and what it weighs.
type sample struct {
	at     source.Span
	size   int
	grams  map[int]*big.Rat // by yarn
	all    *big.Rat         // grams of all yarns together; nil if that is not said
	weight source.Span      // where its weight is said
	bad    bool             // a weight of it is none, or of no yarn; that was said
}

// readSample reads the block of the sample.
func (c *checker) readSample() {
	b := blocks[*lang.Sample](c.file.Body)
	if len(b) == 0 || c.z == 0 {
		return
	}
	if len(b) > 1 {
		c.report(diag.Diagnostic{Code: codeTwice, Span: b[1].Head, Args: diag.Args{"name": "sample"},
			Related: []diag.Related{{Span: b[0].Head, Key: "first"}}})
	}
	n := b[0].Node.(*lang.Sample)
	s := &sample{at: b[0].Head, size: c.sizeIndex(n.Size.Text), grams: map[int]*big.Rat{}}
	if s.size < 0 {
		c.say(codeNoSize, n.Size.Span(), c.sizeArgs(n.Size.Text))
		return
	}
	c.sample = s
	c.pat.Sample = &plan.Sample{Size: s.size}
	for _, l := range b[0].Body {
		if w, ok := l.Node.(*lang.SampleWeight); ok {
			c.sampleWeight(s, w)
		}
	}
}

// sampleWeight reads what the sample weighs, in each yarn or in all of them.
func (c *checker) sampleWeight(s *sample, n *lang.SampleWeight) {
	s.weight = n.Span()
	if n.All != nil {
		s.all = c.grams(n.All)
		s.bad = s.bad || s.all == nil
		return
	}
	for _, it := range n.Items {
		i, ok := c.yarnAt[it.Yarn.Text]
		if !ok {
			c.noYarn(it.Yarn)
			s.bad = true
			continue
		}
		g := c.grams(it.Grams)
		if g != nil {
			s.grams[i] = g
		}
		s.bad = s.bad || g == nil
	}
}

// grams is a weight above zero that is the same in every size; nil if it is none, which was said.
func (c *checker) grams(n *lang.Val) *big.Rat {
	v := c.value(n, nil)
	if v.Unknown {
		return nil
	}
	g := v.At(0)
	if v.Dim != value.Mass || g.N == nil || g.N.Sign() <= 0 {
		c.say(codeSampleWeight, n.Span(), nil)
		return nil
	}
	return g.N
}

// perArea is how heavy the fabric of each yarn is, by the sample or else by a weighed swatch, nil where neither tells, with the
// reason. uses is what each yarn is used for, by size.
func (c *checker) perArea(uses [][]figure.Use, balls []figure.Ball) ([]figure.PerArea, []figure.Missing) {
	out, why := make([]figure.PerArea, len(uses)), make([]figure.Missing, len(uses))
	for i := range uses {
		out[i], why[i] = c.facts[i].swatch.PerArea()
		if why[i] == figure.NoSwatch && c.facts[i].noGauge {
			why[i] = figure.NoGauge
		}
	}
	s := c.sample
	if s == nil {
		return out, why
	}
	inSample := make([]figure.Use, len(uses))
	for i := range uses {
		inSample[i] = uses[i][s.size]
		if g := s.grams[i]; g != nil {
			if per, _ := figure.Sampled(g, uses[i][s.size:s.size+1], balls[i:i+1], nil); per != nil && per[0] != nil {
				out[i], why[i], c.pat.Yarns[i].BySample = per[0], figure.Nothing, true
			}
		}
	}
	if s.all == nil {
		return out, why
	}
	per, _ := figure.Sampled(s.all, inSample, balls, out)
	for i := range per {
		if per[i] != nil {
			out[i], why[i], c.pat.Yarns[i].BySample = per[i], figure.Nothing, true
		}
	}
	return out, why
}
