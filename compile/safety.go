package compile

import (
	"regexp"
	"slices"

	"ovillo/compile/caution"
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// cautions gathers what the rules of safety ask for and lets them judge.
func (c *checker) cautions() {
	if c.z == 0 {
		return
	}
	f := caution.Facts{Kind: c.pat.Kind, KindAt: c.kindAt, Words: c.file.Names("kind", caution.Kinds()), SizeNames: c.sizeNames(), SizesAt: c.sizesAt, Gap: c.gaps(),
		Fibres: -1}
	for _, s := range c.pat.Sizes {
		f.AgeMonths = append(f.AgeMonths, s.Age)
	}
	for i, step := range c.pat.Finish {
		switch step.Kind {
		case plan.ThreadElastic:
			f.Elastics = append(f.Elastics, caution.Elastic{Step: i, At: step.Span, Zone: c.elasticZone(i, step)})
		}
	}
	f.Cords, f.Parts = c.cordFacts(), c.partFacts()
	f.Markets, f.ForSale = c.markets, ifSaid(c.notForSale, caution.False)
	f.Weighted = c.saidOf(func(n notionFact) bool { return slices.Contains(n.kinds, weights) })
	f.AnimalPart = c.saidOf(func(n notionFact) bool { return n.animal })
	c.notionsAsked()
	c.cordsAsked()
	cautions, found := caution.Evaluate(f)
	c.pat.Cautions = cautions
	c.out = append(c.out, found...)
}

// limb is how a part round a wrist or an ankle is named, in English or Spanish. The words are ours.
var limb = regexp.MustCompile(`(?i)wrist|ankle|cuff|leg(_|$)|sleeve|muñeca|tobillo|puño|pierna|manga`)

// elasticZone is where elastic is: as the source says, or by the name of the part it runs through. On what is worn on hands and
// feet it is always round a wrist or an ankle.
func (c *checker) elasticZone(i int, step plan.Finishing) caution.Zone {
	name := c.pat.Parts[step.Through.Part].Name
	zone := c.zones[i]
	if zone == caution.UnknownZone {
		if zone = caution.ZoneOf(c.pat.Kind, name); limb.MatchString(name) {
			zone = caution.Sleeve
		}
	}
	if caution.OnLimb(c.pat.Kind) {
		return caution.Sleeve
	}
	return zone
}

// someOf is the sizes that have any of a thing; nil, all of them, if that is not said.
func someOf(n plan.Nums) plan.Sizes {
	if n == nil {
		return nil
	}
	out := make(plan.Sizes, len(n))
	for z, v := range n {
		out[z] = v > 0
	}
	return out
}

// gaps is the largest chain space of the fabric in each size, spaces under a name apart: those are openings that other
// parts go on from. Without a gauge it is not known.
func (c *checker) gaps() plan.Lengths {
	out := make(plan.Lengths, c.z)
	first := stitch.SC
	if len(c.pat.Gauges) > 0 {
		first = c.pat.Gauges[0].Stitch
	}
	w, _, _ := c.stitchSize(first, manner{})
	for z, f := range c.fabrics {
		named := map[fabric.ID]bool{}
		for _, p := range f.Parts {
			for _, n := range p.Names() {
				ids, _, _, _ := p.Label(n)
				for _, id := range ids {
					named[id] = true
				}
			}
		}
		most := 0
		for id := range f.Elems {
			if el := &f.Elems[id]; el.Kind == fabric.Space && !named[fabric.ID(id)] {
				most = max(most, int(el.N))
			}
		}
		switch {
		case most == 0:
		case w == 0:
			out[z] = plan.NoLength
		default:
			out[z] = micro(w * float64(most))
		}
	}
	return out
}
