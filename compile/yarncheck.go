package compile

import (
	"math"

	"ovillo/compile/figure"
	"ovillo/lang/diag"
)

// This file looks at the amounts of yarn, and at what is said of each yarn, as an editor does.

// checkYarns looks at the yarns when their amounts are known.
func (c *checker) checkYarns() {
	c.yarnFalls()
	for i := range c.pat.Yarns {
		c.yarnLacks(i)
	}
}

// yarnFalls warns of the first size that takes less yarn than the one before it. Where a measure falls that was said, and is the
// cause; sizes in which some row failed have no amounts to compare.
func (c *checker) yarnFalls() {
	if c.reported(codeFalls) {
		return
	}
	for z := 1; z < c.z; z++ {
		var names []string
		var at int
		have, need := 0.0, 0.0
		for i, y := range c.pat.Yarns {
			if y.Amount == nil || c.anyHalted(z) || c.anyHalted(z-1) || y.Amount[z].Milligrams >= y.Amount[z-1].Milligrams {
				continue
			}
			if names == nil {
				at = i
			}
			names = append(names, y.Name)
			have += float64(y.Amount[z].Milligrams) / 1000
			need += float64(y.Amount[z-1].Milligrams) / 1000
		}
		if names != nil {
			c.say(codeYarnFalls, c.facts[at].head, diag.Args{"yarns": names, "size": c.pat.Sizes[z].Name,
				"have": int(math.Round(have)), "need": int(math.Round(need))})
			return
		}
	}
}

// anyFailed reports whether some part could not be worked to its end in some size.
func (c *checker) anyFailed() bool {
	for z := range c.z {
		if c.anyHalted(z) {
			return true
		}
	}
	return false
}

// yarnLacks notes what is not said of a yarn, by the words of the lines that would say it: a maker who looks for another one goes
// by them. A name is asked for elsewhere, and so is a ball where the amount rests on it.
func (c *checker) yarnLacks(i int) {
	y := &c.pat.Yarns[i]
	if !c.used[i] {
		return
	}
	var what []string
	if y.Weight == "" {
		what = append(what, "weight")
	}
	if len(y.Fibre) == 0 {
		what = append(what, "fibre")
	}
	if (y.BallWeight == 0 || y.BallLength == 0) && y.WhyNoAmount != string(figure.NoBall) {
		what = append(what, "ball")
	}
	if what != nil {
		c.say(codeYarnLacks, c.facts[i].head, diag.Args{"yarn": y.Name, "what": what})
	}
}
