package compile

import (
	"math"
	"slices"
	"strconv"

	"ovillo/compile/caution"
	"ovillo/compile/plan"
	"ovillo/compile/standard"
	"ovillo/lang"
	"ovillo/lang/lazy"
)

// This file gathers what is known of the piece as a whole: for whom it is, how large it is, what it is made of.

// wearers fills in for whom each size is made.
func (c *checker) wearers(f *caution.Facts) {
	for i, s := range c.pat.Sizes {
		to := s.AgeTo
		if to < 0 && i+1 < c.z && c.pat.Sizes[i+1].Age > s.Age && s.Age >= 0 {
			to = c.pat.Sizes[i+1].Age
		}
		f.AgeMonths, f.AgeTo = append(f.AgeMonths, s.Age), append(f.AgeTo, to)
	}
	f.Height = c.heights()
	f.Child = c.childSizes()
}

// heights are those of the shortest wearers: as the source says, or by the sizes of a table that are called by the height of the child
// in centimetres, as European sizes are (50, 56 … 122).
func (c *checker) heights() plan.Lengths {
	if v, ok := c.lets["fit.height"]; ok {
		return v.Lengths()
	}
	var out plan.Lengths
	for _, s := range blocks[*lang.Sizes](c.file.Body) {
		for _, b := range blocks[*lang.Body](s.Body) {
			n := b.Node.(*lang.Body)
			if len(n.Rows) != c.z || !slices.ContainsFunc(n.Tables, func(t *lang.Name) bool { return t.Text == "babies" || t.Text == "children" }) {
				continue
			}
			for _, r := range n.Rows {
				cm, err := strconv.Atoi(r.Text)
				if err != nil || cm < shortestSize {
					return nil
				}
				out = append(out, plan.Length(cm)*plan.Centimetre)
			}
		}
	}
	return out
}

// shortestSize is the smallest size that is a height in centimetres; below it a number is an age, or a size of another kind. Common
// practice, no source.
const shortestSize = 44

// Sizes by their names: of children, and of grown-ups. The words are ours.
var (
	childSize = lazy.Regexp(`(?i)^(?:\d+ ?[-–—/] ?)?\d+ ?(?:m|mo|months?|meses|mes|y|yrs?|years?|años|año|t)\.?$|newborn|preemie|prematur|recién nacid|bab(?:y|ies)|bebé|toddler|child|kid|niñ[oa]`)
	grownSize = lazy.Regexp(`(?i)\badult|\bwom[ae]n|\bm[ae]n\b|mujer|hombre|adulto|señora`)
)

// childSizes tells whether the sizes are those of children, by the tables their measures are from or by their names.
func (c *checker) childSizes() caution.Truth {
	children, grown := false, c.z > 0
	if c.body != nil {
		for _, t := range c.body.names {
			switch t {
			case "babies", "children", "youth":
				return caution.True
			case "women", "men":
				return caution.False
			}
		}
	}
	for _, s := range c.pat.Sizes {
		names := []string{s.Name}
		for _, n := range s.Names {
			names = append(names, n)
		}
		children = children || slices.ContainsFunc(names, childSize().MatchString) && !slices.ContainsFunc(names, grownSize().MatchString)
		grown = grown && slices.ContainsFunc(names, grownSize().MatchString)
	}
	switch {
	case children:
		return caution.True
	case grown:
		return caution.False
	}
	return caution.Unknown
}

// measuresOf fills in how large the piece is, by the measures of the source.
func (c *checker) measuresOf(f *caution.Facts) {
	named := func(names ...string) plan.Lengths {
		for _, n := range names {
			for _, m := range c.pat.Measures {
				if m.Name == n && len(m.Values) == c.z {
					return m.Values
				}
			}
		}
		return nil
	}
	f.Length = named("length", "height")
	f.BelowCrotch = c.belowCrotch(f)
	f.NeckOpening = named("neck_opening", "neck")
	if f.Diameter = named("diameter"); f.Diameter == nil && f.Kind == "ball" {
		f.Diameter = c.ballAcross()
	}
}

// fromShoulder are the kinds that hang from the neck or the shoulders and may end above the crotch or below it.
var fromShoulder = []string{"garment", "tunic", "coat", "poncho", "cape", "costume"}

// belowCrotch tells whether what hangs from the shoulders ends below the crotch: by its length, against the wearer from the nape to the
// waist and on to the crotch, as the source says or as the tables of body measures have it for the age.
func (c *checker) belowCrotch(f *caution.Facts) caution.Truth {
	if !slices.Contains(fromShoulder, f.Kind) || f.Length == nil {
		return caution.Unknown
	}
	is := caution.False
	for z := range c.pat.Sizes {
		back, sure := c.wearerBy("back_waist_length", z)
		rise, sureRise := c.wearerBy("crotch_depth", z)
		switch {
		case f.Length[z] == plan.NoLength:
			return caution.Unknown
		case f.Length[z] <= back+rise: // no longer than the least that the wearer can measure
		case !sure || !sureRise:
			return caution.Unknown
		default:
			is = caution.True
		}
	}
	return is
}

// wearerBy is a measure of the youngest wearer of a size: as the source says, or by age; beyond the tables the last that they have, which
// is not sure but the least it can be.
func (c *checker) wearerBy(measure string, z int) (l plan.Length, sure bool) {
	if v, ok := c.lets["fit."+measure]; ok {
		if ls := v.Lengths(); len(ls) == c.z {
			return ls[z], true
		}
	}
	age := c.pat.Sizes[z].Age
	for _, name := range []string{"babies", "children"} {
		t, _ := standard.BodyTableOf(name)
		for _, r := range t.Rows {
			if figure, ok := r.Figures[measure]; ok && r.From >= 0 && r.From <= age && figure.Value >= l {
				l, sure = figure.Value, age <= r.To
			}
		}
	}
	return l, sure
}

// ballAcross is how wide a ball is: through its widest round.
func (c *checker) ballAcross() plan.Lengths {
	out := make(plan.Lengths, c.z)
	for z := range out {
		for _, p := range c.pat.Parts {
			for _, r := range p.Worked[z] {
				if r.Closed && r.Width > 0 {
					out[z] = max(out[z], plan.Length(float64(r.Width)/math.Pi))
				}
			}
		}
		if out[z] == 0 {
			out[z] = plan.NoLength
		}
	}
	return out
}

// maybeFilled are the kinds that may be filled though the source does not say so.
var maybeFilled = []string{"", "toy", "doll", "comforter", "ball", "rattle", "mobile", "pillow", "cushion", "nest", "cot_bumper", "decor"}

// substance fills in what the piece is made of and how it is cared for.
func (c *checker) substance(f *caution.Facts) {
	filled := c.saidOf(func(n notionFact) bool { return slices.Contains(n.kinds, stuffing) })
	switch {
	case filled.Is == caution.True, c.claimed("stuffed").Is == caution.True:
		f.SoftFilled = caution.True
	case c.notStuffed, !slices.Contains(maybeFilled, f.Kind):
		f.SoftFilled = caution.False
	}
	f.CareText = truthOf(!c.pat.Care.Empty())
	f.FibreText, f.Fibres = caution.True, -1
	for i, y := range c.pat.Yarns {
		sum := 0
		for _, s := range y.Fibre {
			sum += s.Percent
		}
		if c.used[i] && sum != 100 {
			f.FibreText = caution.False
		}
		if c.used[i] && f.Fibres < 0 && sum == 100 {
			f.Fibres = len(y.Fibre)
		}
	}
	if len(c.pat.Yarns) == 0 {
		f.FibreText = caution.False
	}
	c.surfaceOf(f)
}

// shedding are fibres whose yarns are fluffy and shed: their long hairs stand off the thread. Common practice, no source.
var shedding = []string{"mohair", "angora"}

// surfaces are the words for what the surface of a yarn is like.
var surfaces = wordsFor[string]{{"smooth", "smooth"}, {"brushed", "brushed"}, {"fluffy", "fluffy"}, {"looped", "looped"}}

// surfaceOf fills in what the yarns are like that are used: as the source says, or by fibres with long hairs. Brushed and fluffy yarns shed
// and stand off the fabric, looped ones only stand off it.
func (c *checker) surfaceOf(f *caution.Facts) {
	smooth := len(c.pat.Yarns) > 0
	unlikely := smooth // no yarn sheds
	for i, y := range c.pat.Yarns {
		if !c.used[i] {
			continue
		}
		surface := c.facts[i].surface
		if surface == "" && slices.ContainsFunc(y.Fibre, func(s plan.Share) bool { return slices.Contains(shedding, s.Fibre) }) {
			surface = "fluffy"
		}
		switch surface {
		case "brushed", "fluffy":
			f.Fluffy, f.Raised = caution.True, caution.True
		case "looped":
			f.Raised = caution.True
		}
		smooth = smooth && surface == "smooth"
		unlikely = unlikely && (surface == "smooth" || surface == "looped")
	}
	if unlikely {
		f.Fluffy = caution.False
	}
	if smooth {
		f.Raised = caution.False
	}
}
