package compile

import (
	"slices"

	"ovillo/compile/caution"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// This file looks at the measures of the finished piece from size to size. A size is chosen by the wearer's measures, so
// whatever the wearer decides has to grow with her; a measure that falls is as a rule a list of numbers in the wrong order.

// growth is a measure in all sizes, with what it has to keep up with.
type growth struct {
	name   string
	at     source.Span
	values plan.Lengths
	wearer plan.Lengths // nil: it is not compared with the wearer
}

// together are the measures that grow with each other: the width of the body, the depth of the armhole and the width of
// the sleeve. One that stands still while another grows binds in the larger size. The names are those that a page prints
// without being told how; common practice, no source.
var together = map[string]bool{"chest": true, "bust": true, "armhole": true, "armhole_depth": true, "upper_arm": true,
	"sleeve_width": true, "yoke_depth": true}

// follow is a step in one of these that the others have to follow. Common practice, no source.
const follow = 10 * plan.Millimetre

// growing looks at every measure from size to size; each gives one message. Where a count that was made from a length has
// been reported for the same, that is the cause.
func (c *checker) growing() {
	alike, uneven := c.reported(codeSizesAlike), c.reported(codeStepsUneven)
	all := make([]growth, len(c.pat.Measures))
	for i, m := range c.pat.Measures {
		all[i] = growth{name: m.Name, at: c.measureAt[m.Name], values: m.Values}
		if m.Fits != nil {
			all[i].wearer = m.Fits.Values
		}
	}
	for _, g := range all {
		switch {
		case c.falls(g):
		case alike:
		case c.stays(g), c.leftBehind(g, all):
		case !uneven:
			c.leaps(g)
		}
	}
}

// reported says whether a message of a code was given already.
func (c *checker) reported(code diag.Code) bool {
	return slices.ContainsFunc(c.out, func(d diag.Diagnostic) bool { return d.Code == code })
}

// step is how much a measure grows from a size to the next; ok is false where one of the two is not known.
func step(ls plan.Lengths, z int) (l plan.Length, ok bool) {
	if z+1 >= len(ls) || ls[z] == plan.NoLength || ls[z+1] == plan.NoLength {
		return 0, false
	}
	return ls[z+1] - ls[z], true
}

// falls reports a measure that is smaller in a larger size.
func (c *checker) falls(g growth) bool {
	for z := range g.values {
		if d, ok := step(g.values, z); ok && d <= -plan.Millimetre {
			c.grown(codeFalls, g, z, diag.Args{"have": diag.Length(g.values[z+1]), "before": diag.Length(g.values[z])})
			return true
		}
	}
	return false
}

// stays reports a measure that two sizes share though the wearer grows.
func (c *checker) stays(g growth) bool {
	for z := range g.wearer {
		d, ok := step(g.values, z)
		body, known := step(g.wearer, z)
		if ok && known && d < plan.Millimetre && body >= sameWithin {
			c.grown(codeStays, g, z, diag.Args{"have": diag.Length(g.values[z]), "gap": diag.Length(body)})
			return true
		}
	}
	return false
}

// leftBehind reports a measure that stands still where one it has to grow with grows.
func (c *checker) leftBehind(g growth, all []growth) bool {
	if !together[g.name] {
		return false
	}
	for z := range g.values {
		if d, ok := step(g.values, z); !ok || d >= plan.Millimetre {
			continue
		}
		i := slices.IndexFunc(all, func(o growth) bool {
			d, ok := step(o.values, z)
			return ok && together[o.name] && o.name != g.name && d >= follow
		})
		if i < 0 {
			continue
		}
		d, _ := step(all[i].values, z)
		c.grown(codeLeftBehind, g, z, diag.Args{"have": diag.Length(g.values[z]), "other": all[i].name, "gap": diag.Length(d)})
		return true
	}
	return false
}

// leaps reports the widest step of a measure if it is at least twice another in which the wearer grows as much.
func (c *checker) leaps(g growth) {
	wide, narrow := -1, -1
	for i := range g.wearer {
		for j := range g.wearer {
			a, okA := step(g.values, i)
			b, okB := step(g.values, j)
			wearerA, knownA := step(g.wearer, i)
			wearerB, knownB := step(g.wearer, j)
			alike := okA && okB && knownA && knownB && 4*wearerA <= 5*wearerB // a quarter more is as much
			if alike && b > 0 && a >= 2*b && a-b >= stepWithin && (wide < 0 || a > g.values[wide+1]-g.values[wide]) {
				wide, narrow = i, j
			}
		}
	}
	if wide < 0 {
		return
	}
	c.grown(codeLeaps, g, wide, diag.Args{"have": diag.Length(g.values[wide+1] - g.values[wide]),
		"need": diag.Length(g.values[narrow+1] - g.values[narrow])})
}

// grown reports a step from a size to the next.
func (c *checker) grown(code diag.Code, g growth, z int, args diag.Args) {
	args["name"], args["small"], args["large"] = g.name, c.pat.Sizes[z].Name, c.pat.Sizes[z+1].Name
	c.say(code, g.at, args)
}

// parity notes stitches made from lengths that are even in some sizes and odd in others. Nothing is wrong with such counts
// by themselves; but whatever is halved, or worked in pairs, then comes out in half of the sizes. Where a multiple was asked
// for, the stitch pattern decides. Of rows it is the side that matters, see sameSide.
func (g *graded) parity() {
	if g.unit != "stitch" || g.multiple {
		return
	}
	var even, odd []string
	for z, n := range g.counts {
		switch {
		case n == plan.Absent:
		case n%2 == 0:
			even = append(even, g.c.pat.Sizes[z].Name)
		default:
			odd = append(odd, g.c.pat.Sizes[z].Name)
		}
	}
	if len(even) > 0 && len(odd) > 0 {
		g.c.say(codeMixedParity, g.at, diag.Args{"even": even, "odd": odd, "unit": diag.Term{Key: g.unit, N: 2}})
	}
}

// alternatives notes blocks for some sizes that stand side by side, share no size, and together leave one out: each size
// has a step of its own there, but one. Blocks that share sizes add rows to the larger ones and may leave out the smaller.
func (c *checker) alternatives(body []*lang.Statement) {
	for i := 0; i < len(body); i++ {
		c.alternatives(body[i].Body)
		var run []*lang.Only
		for j := i; j < len(body); j++ {
			n, ok := body[j].Node.(*lang.Only)
			if !ok {
				break
			}
			run = append(run, n)
		}
		if len(run) > 1 {
			c.covers(run)
			i += len(run) - 1
		}
	}
}

func (c *checker) covers(run []*lang.Only) {
	in := map[string]int{}
	for _, n := range run {
		for _, s := range n.Sizes {
			in[s.Text]++
		}
	}
	var named, missing []string
	for _, s := range c.pat.Sizes {
		switch in[s.Name] {
		case 0:
			missing = append(missing, s.Name)
		case 1:
			named = append(named, s.Name)
		default:
			return
		}
	}
	if len(missing) > 0 && len(named) > 0 {
		c.say(codeSizeLeftOut, run[0].Span(), diag.Args{"named": named, "missing": missing})
	}
}

// compares reports whether a measure of the source is compared with the wearer, be it that an error keeps it from being worked out.
func (c *checker) compares() bool {
	for _, s := range blocks[*lang.MeasureBlock](c.file.Body) {
		for _, b := range s.Body {
			if m, ok := b.Node.(*lang.Measure); ok && (m.Fits != nil || m.Over != nil) {
				return true
			}
		}
	}
	return false
}

// measuredAtAll notes what a designer of something worn forgets: to measure the piece, or to compare it with the wearer
// whose measures are given.
func (c *checker) measuredAtAll() {
	switch {
	case len(c.pat.Measures) > 0:
		if len(c.pat.Body) > 0 && !c.compares() {
			c.say(codeNoFit, c.sizesAt, nil)
		}
	case caution.Worn(c.pat.Kind) && len(c.pat.Gauges) > 0 && len(blocks[*lang.MeasureBlock](c.file.Body)) == 0:
		c.say(codeNoMeasures, c.kindAt, diag.Args{"kind": c.pat.Kind})
	}
}
