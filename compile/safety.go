package compile

import (
	"slices"

	"ovillo/compile/caution"
	"ovillo/compile/plan"
	"ovillo/lang/lazy"
)

// cautions gathers what the rules of safety ask for and lets them judge.
func (c *checker) cautions() {
	if c.z == 0 {
		return
	}
	cautions, found := caution.Evaluate(c.cautionFacts())
	c.pat.Cautions = cautions
	for i := range found {
		c.askedOfChains(&found[i])
	}
	c.out = append(c.out, found...)
	c.notionsAsked()
	c.cordsAsked()
}

// cautionFacts is what is known of the piece, of its cords and of all that is on it.
func (c *checker) cautionFacts() caution.Facts {
	f := caution.Facts{Kind: c.pat.Kind, KindAt: c.kindAt, Words: c.file.Names("kind", caution.Kinds()), SizeNames: c.sizeNames(), SizesAt: c.sizesAt, AgeUnread: c.ageUnread && c.out.HasErrors(),
		Markets: c.markets, ForSale: ifSaid(c.notForSale, caution.False)}
	c.wearers(&f)
	c.measuresOf(&f)
	c.substance(&f)
	f.Cords, f.Parts, f.Elastics = c.cordFacts(), c.partFacts(), c.elasticFacts()
	f.Gap, f.GapAt = c.holeSizes()
	f.Floats = c.floats()
	f.Weighted = c.saidOf(func(n notionFact) bool { return slices.Contains(n.kinds, weights) })
	f.AnimalPart = c.animalPart()
	f.SleepUse, f.SafetyClaim, f.AdultOnly, f.SaysPure = c.claimed("sleep"), c.claimed("safety"), c.claimed("adult"), c.claimed("pure")
	return f
}

// elasticFacts is what is known of the elastic that the finishing threads.
func (c *checker) elasticFacts() []caution.Elastic {
	var out []caution.Elastic
	for i, step := range c.pat.Finish {
		if step.Kind == plan.ThreadElastic {
			out = append(out, caution.Elastic{Step: i, At: step.Span, Zone: c.elasticZone(i, step)})
		}
	}
	return out
}

// limb is how a part round a wrist or an ankle is named, in English or Spanish. The words are ours.
var limb = lazy.Regexp(`(?i)wrist|ankle|cuff|leg(_|$)|sleeve|muñeca|tobillo|puño|pierna|manga`)

// elasticZone is where elastic is: as the source says, or by the name of the part it runs through. On what is worn on hands and
// feet it is always round a wrist or an ankle.
func (c *checker) elasticZone(i int, step plan.Finishing) caution.Zone {
	name := c.pat.Parts[step.Through.Part].Name
	zone := c.zones[i]
	if zone == caution.UnknownZone {
		if zone = caution.ZoneOf(c.pat.Kind, name); limb().MatchString(name) {
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
