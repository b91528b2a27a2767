package compile

import (
	"math"
	"math/big"
	"slices"

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
	c.pat.Sample = &plan.Sample{Size: s.size, Made: c.pat.Sizes[s.size], Milligrams: make([]int64, len(c.pat.Yarns))}
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
		if s.all = c.grams(n.All); s.all == nil {
			s.bad = true
			return
		}
		c.pat.Sample.All = milligrams(s.all)
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
			s.grams[i], c.pat.Sample.Milligrams[i] = g, milligrams(g)
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

func milligrams(g *big.Rat) int64 {
	x, _ := g.Float64()
	return int64(math.Round(x * 1000))
}

// perArea is how heavy the fabric of each yarn is, by the sample or else by a weighed swatch, nil where neither tells, with the
// reason. uses is what each yarn is used for, by size. Where both tell, they are compared.
func (c *checker) perArea(uses [][]figure.Use, balls []figure.Ball) ([]figure.PerArea, []figure.Missing) {
	bySwatch, why := make([]figure.PerArea, len(uses)), make([]figure.Missing, len(uses))
	for i := range uses {
		bySwatch[i], why[i] = c.swatchPerArea(&c.facts[i])
	}
	s := c.sample
	if s == nil {
		return bySwatch, why
	}
	out := slices.Clone(bySwatch)
	one := make([]figure.Use, len(uses))
	for i := range uses {
		one[i] = uses[i][s.size]
	}
	// take lets the sample decide on some yarns, or notes why it cannot.
	take := func(per []figure.PerArea, missing figure.Missing, yarns ...int) {
		c.sampled(missing)
		for k, i := range yarns {
			switch {
			case per != nil && per[k] != nil:
				out[i], why[i], c.pat.Yarns[i].BySample = per[k], figure.Nothing, true
			case missing == figure.NoBall && out[i] == nil:
				why[i] = missing
			}
		}
		c.compareSample(yarns, one, out, bySwatch)
	}
	for i := range uses {
		if g := s.grams[i]; g != nil {
			per, missing := figure.Sampled(g, one[i:i+1], balls[i:i+1], nil)
			take(per, missing, i)
		}
	}
	if s.all != nil {
		per, missing := figure.Sampled(s.all, one, balls, bySwatch)
		every := make([]int, len(uses))
		for i := range every {
			every[i] = i
		}
		take(per, missing, every...)
	}
	return out, why
}

// sampled warns of a sample that weighs no more than its cords, pompoms and seams take.
func (c *checker) sampled(missing figure.Missing) {
	if missing == figure.Outweighed && !c.sample.bad {
		c.say(codeSampleLight, c.sample.weight, nil)
		c.sample.bad = true
	}
}

// farApart is how much a sample and a swatch may differ before it is worth a warning: more than a swatch differs from the next.
// Common practice, no source.
const farApart = 0.15

// compareSample warns of a sample and swatches of which one weighs far more than the other for the fabric of some yarns, which
// were put on the scales together. Without a swatch of each there is nothing to compare.
func (c *checker) compareSample(yarns []int, uses []figure.Use, sample, swatch []figure.PerArea) {
	var names []string
	have, need := 0.0, 0.0
	var at source.Span
	for _, i := range yarns {
		if uses[i].Fabric <= 0 {
			continue
		}
		if sample[i] == nil || swatch[i] == nil || !c.pat.Yarns[i].BySample {
			return
		}
		grams := func(per figure.PerArea) float64 {
			g, _ := new(big.Rat).Mul(per, big.NewRat(int64(uses[i].Fabric), 1)).Float64()
			return g
		}
		if names == nil {
			at = c.facts[i].weighed
		}
		names, have, need = append(names, c.pat.Yarns[i].Name), have+grams(sample[i]), need+grams(swatch[i])
	}
	if names == nil || c.anyHalted(c.sample.size) || have <= need*(1+farApart) && need <= have*(1+farApart) {
		return
	}
	c.report(diag.Diagnostic{Code: codeSampleSwatch, Span: c.sample.weight, Args: diag.Args{"yarns": names,
		"size": c.pat.Sizes[c.sample.size].Name, "have": int(math.Round(have)), "need": int(math.Round(need))},
		Related: []diag.Related{{Span: at, Key: "swatch"}}})
}

// weighed compares the fabric of rows of a stitch pattern, by the sizes of their stitches, with the area they cover.
type weighed struct{ fabric, area float64 }

// weigh adds a row of a stitch pattern.
func (c *checker) weigh(sp *stitchPattern, fabric, area float64) {
	w := c.weighed[sp]
	if w == nil {
		w = &weighed{}
		c.weighed[sp] = w
	}
	w.fabric += fabric
	w.area += area
}

// swatchPerArea is how heavy a yarn's fabric is by its weighed swatch. A swatch of a stitch pattern is compared with the rows of
// that pattern that were worked: they count for as much as they cover, and plain rows beside them in proportion.
func (c *checker) swatchPerArea(f *yarnFacts) (figure.PerArea, figure.Missing) {
	s := f.swatch
	if f.noGauge {
		return nil, figure.NoGauge
	}
	if f.repeats && s.Sts != nil {
		of, plus, ok := c.multipleOf(f.pattern, nil)
		if f.pattern.bad || !ok {
			return nil, figure.NoSwatch
		}
		s.Sts = new(big.Rat).Mul(s.Sts, big.NewRat(int64(of[0]), 1))
		s.Sts.Add(s.Sts, big.NewRat(int64(plus[0]), 1)) // those at its edges are in the weight
	}
	per, missing := s.PerArea()
	if w := c.weighed[f.pattern]; per != nil && w != nil && w.fabric > 0 {
		per = new(big.Rat).Mul(per, new(big.Rat).SetFloat64(w.area/w.fabric))
	}
	return per, missing
}
