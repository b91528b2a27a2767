package compile

import (
	"math/big"

	"ovillo/compile/figure"
	"ovillo/compile/plan"
	"ovillo/compile/standard"
	"ovillo/compile/stitch"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// yarnFacts are what a yarn's lines say beyond what prints.
type yarnFacts struct {
	swatch  figure.Swatch
	pattern *stitchPattern // of the swatch; nil if it is of a stitch
	weight  standard.Weight
	at      source.Span // of the weight
	head    source.Span
	weighed source.Span // of the swatch
	noGauge bool        // the stitch of the swatch has none
	repeats bool        // the swatch is counted in repeats of its stitch pattern
	surface string      // smooth, brushed, fluffy or looped; "" if it is not said
	bad     bool        // the swatch cannot be understood; that was said
}

// readSwatch reads a weighed swatch; its stitch, or stitch pattern, must have a gauge.
func (c *checker) readSwatch(y *plan.Yarn, f *yarnFacts, n *lang.Swatch) {
	sts, rows := c.eval(exprOf(n.Sts), nil, nil).At(0), c.eval(exprOf(n.Rows), nil, nil).At(0)
	out := plan.Swatch{Repeats: n.Repeats, Rounds: n.Rounds}
	sp := c.patterns[n.Stitch.Text]
	if sp != nil {
		out.Stitch, out.Pattern, out.Called = stitch.ID(sp.name), sp.name, sp.text
	} else {
		out.Stitch = c.stitchID(n.Stitch)
	}
	weight := c.value(n.Weight, nil).At(0)
	if sts.N == nil || rows.N == nil || out.Stitch == "" || weight.N == nil {
		return
	}
	out.Sts, out.Rows = int(floor(sts.N)), int(floor(rows.N))
	if n.Repeats && (sp == nil || sp.of == nil) {
		c.say(codeSwatchRepeats, n.Span(), diag.Args{"name": n.Stitch.Text})
		f.bad = true
		return
	}
	f.pattern, f.repeats, f.weighed = sp, n.Repeats, n.Span()
	by := inRows
	if n.Rounds {
		by = inRounds
	}
	g := c.gaugeFor(out.Stitch, manner{by: by})
	if g == nil || g.rows == nil {
		f.noGauge = true
		return
	}
	f.swatch = figure.Swatch{Sts: sts.N, Rows: rows.N, StsPerMM: g.sts, RowsPerMM: g.rows, Grams: weight.N}
	y.Swatch = &out
}

// readAllowance reads how much yarn is added to what the pieces take.
func (c *checker) readAllowance() {
	c.allowance = figure.Allowance
	for _, h := range blocks[*lang.Pattern](c.file.Body) {
		for _, s := range blocks[*lang.Allowance](h.Body) {
			n := s.Node.(*lang.Allowance)
			v := c.value(n.Share, nil)
			if v.Unknown {
				continue
			}
			q := v.At(0)
			if v.Dim != value.Percent || q.N == nil || q.N.Sign() < 0 || q.N.Cmp(big.NewRat(100, 1)) > 0 {
				c.say(codeAllowance, n.Span(), nil)
				continue
			}
			c.allowance = new(big.Rat).Quo(q.N, big.NewRat(100, 1))
		}
	}
	c.pat.Allowance = int(thousandths(c.allowance))
}

func floor(r *big.Rat) int64 { return new(big.Int).Div(r.Num(), r.Denom()).Int64() }

// yarnArea is the fabric made of each yarn in each size, in square micrometres.
type yarnArea [][]float64

// yarns estimates what each size needs of each yarn, and notes yarns that are never used.
func (c *checker) yarns() {
	uses, balls := c.yarnUses(), make([]figure.Ball, len(c.pat.Yarns))
	for i, y := range c.pat.Yarns {
		balls[i] = figure.Ball{Grams: big.NewRat(y.BallWeight, 1000), MM: big.NewRat(int64(y.BallLength), int64(plan.Millimetre))}
	}
	per, why := c.weights(uses, balls)
	for i := range c.pat.Yarns {
		y, f := &c.pat.Yarns[i], c.facts[i]
		if !c.used[i] {
			c.say(codeYarnUnused, f.head, diag.Args{"yarn": y.Name})
			continue
		}
		var missing figure.Missing
		y.Amount, missing = figure.Yarn(uses[i], per[i], balls[i], c.allowance)
		if missing == figure.NoSwatch {
			missing = why[i]
		}
		y.WhyNoAmount = string(missing)
		if !f.bad && (c.sample == nil || !c.sample.bad) {
			c.out = append(c.out, missing.Report(y.Name, f.head)...)
		}
	}
	c.checkMaterials()
	c.checkYarns()
}

// weights is how heavy the fabric of each yarn is. Swatch and sample were made at the gauge of the source, so a maker's own changes
// nothing of it.
func (c *checker) weights(uses [][]figure.Use, balls []figure.Ball) ([]figure.PerArea, []figure.Missing) {
	if c.origin == nil {
		c.per, c.whyNoPer = c.perArea(uses, balls)
		return c.per, c.whyNoPer
	}
	for i := range c.pat.Yarns {
		c.pat.Yarns[i].BySample = c.origin.pat.Yarns[i].BySample
	}
	if c.sample != nil {
		c.sample.bad = c.origin.sample.bad
	}
	return c.origin.per, c.origin.whyNoPer
}

// yarnUses is what each yarn is used for, by size.
func (c *checker) yarnUses() [][]figure.Use {
	out := make([][]figure.Use, len(c.pat.Yarns))
	for i := range out {
		out[i] = make([]figure.Use, c.z)
		for z := range out[i] {
			area := 0.0
			for _, p := range c.parts {
				if i < len(p.area) {
					area += p.area[i][z] * p.pieces(z)
				}
			}
			out[i][z].Fabric = figure.Area(area)
		}
	}
	for _, f := range c.pat.Finish {
		if f.Yarn < 0 || f.Made != nil {
			continue
		}
		for z, l := range f.Length {
			u := &out[f.Yarn][z]
			switch f.Kind {
			case plan.SewRuns:
				u.Seams = addYarn(u.Seams, figure.SeamYarn(l))
			case plan.MakeCord:
				u.Cords = addYarn(u.Cords, figure.CordYarn(l))
			case plan.MakeFringe:
				if f.Strands != nil {
					u.Cords = addYarn(u.Cords, figure.FringeYarn(f.Strands[z], f.Cut[z]))
				}
			case plan.MakePompom:
				u.Pompoms = addYarn(u.Pompoms, figure.PompomYarn(f.Wraps, l))
			}
		}
	}
	return out
}

// addYarn adds a length of yarn, if there is one.
func addYarn(sum, more *big.Rat) *big.Rat {
	switch {
	case more == nil:
		return sum
	case sum == nil:
		return more
	}
	return new(big.Rat).Add(sum, more)
}

// checkMaterials compares hook, gauge and yarn class with the published tables.
func (c *checker) checkMaterials() {
	if len(c.pat.Hooks) == 0 {
		return
	}
	for i, f := range c.facts {
		if !c.used[i] || f.weight.Name == "" || i > 0 && c.pat.Yarns[i].Weight == c.pat.Yarns[0].Weight {
			continue
		}
		c.out = append(c.out, standard.CheckWeightHook(f.weight, c.pat.Hooks[0], f.at, c.hookAt[c.pat.Hooks[0]])...)
		if g := c.gaugeFor(stitch.SC, manner{}); g != nil {
			c.out = append(c.out, standard.CheckWeightGauge(f.weight, g.sts, f.at, source.Span{})...)
		}
	}
}
