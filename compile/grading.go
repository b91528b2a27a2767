package compile

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/value"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// This file looks at counts from size to size. Rounding to a stitch pattern can make neighbouring sizes alike, or one step
// twice as wide as the next, though every single count is within its tolerance. Both may be meant, so both are warnings.

// What is small beside a garment. Common practice, no source.
const (
	sameWithin = 5 * plan.Millimetre  // sizes that are to differ by less may come out alike
	stepWithin = 20 * plan.Millimetre // steps that differ by less are even enough
)

// grading looks at counts that were made from lengths.
func (c *checker) grading(at source.Span, v value.Vector) {
	if v.Unknown || v.Fitted == nil || v.Fitted.Wanted == nil {
		return
	}
	counts := make(plan.Nums, c.z)
	for z, x := range v.N {
		if counts[z] = plan.Absent; x != nil && x.IsInt() {
			counts[z] = int(x.Num().Int64())
		}
	}
	unit := "stitch"
	if v.Fitted.Rows {
		unit = "row"
	}
	lengths := func(v value.Vector) plan.Lengths { v.Dim = value.Length; return v.Lengths() }
	multiple := slices.ContainsFunc(v.Fitted.Step, func(n int64) bool { return n > 1 })
	g := graded{c, at, unit, multiple, counts, lengths(value.Vector{N: v.Fitted.Wanted}), lengths(value.Vector{N: v.Fitted.Got})}
	g.alike()
	g.steps()
	g.parity()
}

// graded is a count in all sizes: which lengths it was to measure, and which it measures.
type graded struct {
	c           *checker
	at          source.Span
	unit        string
	multiple    bool // they are brought to one
	counts      plan.Nums
	wanted, got plan.Lengths
}

// known reports whether a size and the next one have such a count.
func (g *graded) known(z int) bool {
	return z+1 < len(g.counts) && g.counts[z] != plan.Absent && g.counts[z+1] != plan.Absent
}

// alike reports neighbouring sizes of one count that are to differ.
func (g *graded) alike() {
	for z := 0; g.known(z); z++ {
		end := z
		for g.known(end) && g.counts[end+1] == g.counts[z] {
			end++
		}
		if gap := g.wanted[end] - g.wanted[z]; gap >= sameWithin {
			g.say(codeSizesAlike, z, end, diag.Args{"have": g.counts[z], "gap": diag.Length(gap),
				"unit": diag.Term{Key: g.unit, N: g.counts[z]}})
		}
		z = end
	}
}

// steps reports the widest step from one size to the next if it is at least twice another one that was to be as wide.
func (g *graded) steps() {
	wide, narrow := -1, -1
	for i := 0; g.known(i); i++ {
		for j := 0; g.known(j); j++ {
			a, b := g.got[i+1]-g.got[i], g.got[j+1]-g.got[j]
			asked := 4*(g.wanted[i+1]-g.wanted[i]) <= 5*(g.wanted[j+1]-g.wanted[j]) // a quarter more is as wide
			if b > 0 && a >= 2*b && a-b >= stepWithin && asked && (wide < 0 || a > g.got[wide+1]-g.got[wide]) {
				wide, narrow = i, j
			}
		}
	}
	if wide < 0 {
		return
	}
	have, need := g.counts[wide+1]-g.counts[wide], g.counts[narrow+1]-g.counts[narrow]
	g.say(codeStepsUneven, wide, wide+1, diag.Args{"have": have, "need": need, "unit": diag.Term{Key: g.unit, N: have}})
}

func (g *graded) say(code diag.Code, from, to int, args diag.Args) {
	args["small"], args["large"] = g.c.pat.Sizes[from].Name, g.c.pat.Sizes[to].Name
	g.c.say(code, g.at, args)
}
