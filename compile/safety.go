package compile

import (
	"regexp"

	"ovillo/compile/caution"
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
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
		case plan.MakeCord:
			f.Cords = append(f.Cords, c.cordFacts(i, step))
		case plan.ThreadElastic:
			f.Elastics = append(f.Elastics, caution.Elastic{Step: i, At: step.Span, Zone: c.elasticZone(i, step)})
		case plan.SewButtons:
			f.Parts = append(f.Parts, caution.Part{Kind: "button", Size: plan.NoLength, Step: i, At: step.Span, For: someOf(step.Buttons.N)})
		case plan.MakePompom:
			f.Parts = append(f.Parts, caution.Part{Kind: "pompom", Material: "yarn", Size: plan.NoLength, Step: i, At: step.Span})
		}
	}
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

// someOf is the sizes that have any of a thing.
func someOf(n plan.Nums) plan.Sizes {
	out := make(plan.Sizes, len(n))
	for z, v := range n {
		out[z] = v > 0
	}
	return out
}

// cordFacts is what is known of a cord: where it is, its length, and how far round the row it runs through goes.
func (c *checker) cordFacts(i int, step plan.Finishing) caution.Cord {
	out := caution.Cord{Step: i, At: step.Span, Length: step.Length, Thick: plan.NoLength, Name: "cord", Zone: c.zones[i]}
	if step.Through == nil {
		if out.Zone == caution.UnknownZone {
			out.Zone = caution.ZoneOf(c.pat.Kind, "")
		}
		return out
	}
	out.Role = "drawstring"
	p := c.parts[c.pat.Parts[step.Through.Part].Name]
	if out.Zone == caution.UnknownZone {
		out.Zone = caution.ZoneOf(c.pat.Kind, p.plan.Name)
	}
	for z := range c.pat.Sizes {
		around := plan.NoLength
		for _, r := range p.plan.Worked[z] {
			if step.Row == nil || r.Number == step.Row[z] {
				around = max(around, r.Width)
			}
		}
		out.Opening = append(out.Opening, around)
	}
	return out
}

// zoneOf reads the place of the body a source names for a cord.
func zoneOf(n *lang.Name) caution.Zone {
	if n == nil {
		return caution.UnknownZone
	}
	return caution.Zone(n.Text)
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
