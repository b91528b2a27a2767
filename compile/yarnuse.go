package compile

import (
	"math/big"

	"ovillo/compile/figure"
	"ovillo/compile/plan"
	"ovillo/compile/standard"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// yarnFacts are what a yarn's lines say beyond what prints.
type yarnFacts struct {
	swatch  figure.Swatch
	weight  standard.Weight
	at      source.Span // of the weight
	head    source.Span
	noGauge bool // the stitch of the swatch has none
}

// readSwatch reads a weighed swatch; its stitch must have a gauge.
func (c *checker) readSwatch(y *plan.Yarn, f *yarnFacts, n *lang.Swatch) {
	sts, rows := c.eval(exprOf(n.Sts), nil, nil).At(0), c.eval(exprOf(n.Rows), nil, nil).At(0)
	id := c.stitchID(n.Stitch)
	weight := c.value(n.Weight, nil).At(0)
	if sts.N == nil || rows.N == nil || id == "" || weight.N == nil {
		return
	}
	g := c.gauge[id]
	if g == nil || g.rows == nil {
		f.noGauge = true
		return
	}
	f.swatch = figure.Swatch{Sts: sts.N, Rows: rows.N, StsPerMM: g.sts, RowsPerMM: g.rows, Grams: weight.N}
	y.SwatchSts, y.SwatchRows = int(floor(sts.N)), int(floor(rows.N))
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
	per, why := c.perArea(uses, balls)
	for i := range c.pat.Yarns {
		y, f := &c.pat.Yarns[i], c.facts[i]
		if !c.used[i] {
			c.say(codeYarnUnused, f.head, diag.Args{"yarn": y.Name})
			continue
		}
		var missing figure.Missing
		y.Amount, missing = figure.Yarn(uses[i], per[i], balls[i], figure.Allowance)
		if missing == figure.NoSwatch {
			missing = why[i]
		}
		y.WhyNoAmount = string(missing)
		if c.sample == nil || !c.sample.bad {
			c.out = append(c.out, missing.Report(y.Name, f.head)...)
		}
	}
	c.checkMaterials()
}

// yarnUses is what each yarn is used for, by size.
func (c *checker) yarnUses() [][]figure.Use {
	out := make([][]figure.Use, len(c.pat.Yarns))
	for i := range out {
		out[i] = make([]figure.Use, c.z)
		for z := range out[i] {
			if i < len(c.area) {
				out[i][z].Fabric = figure.Area(c.area[i][z])
			}
		}
	}
	for _, f := range c.pat.Finish {
		if f.Yarn < 0 {
			continue
		}
		for z, l := range f.Length {
			u := &out[f.Yarn][z]
			switch f.Kind {
			case plan.MakeCord:
				u.Cords = addYarn(u.Cords, figure.CordYarn(l))
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
		c.out = append(c.out, standard.CheckWeightHook(f.weight, c.pat.Hooks[0], f.at, c.hookAt)...)
		if g := c.gauge[stitch.SC]; g != nil {
			c.out = append(c.out, standard.CheckWeightGauge(f.weight, g.sts, f.at, source.Span{})...)
		}
	}
}
