package chart

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// builder makes stitches by hand.
type builder struct{ s plan.Stitches }

func chains(n int) *builder {
	b := &builder{}
	line := plan.Line{Base: true}
	for range n {
		line.Stitches = append(line.Stitches, made(stitch.Chain))
	}
	b.s.Lines = []plan.Line{line}
	return b
}

func ring() *builder {
	b := &builder{}
	b.s.Outward, b.s.Start = true, plan.StartRing
	b.s.Lines = []plan.Line{{Base: true, Closed: true, Stitches: []plan.Worked{{Kind: plan.WorkedRing}}}}
	return b
}

func made(id stitch.ID, at ...int) plan.Worked {
	w := plan.Worked{Kind: plan.WorkedStitch, Form: stitch.Plain(id), Yarn: -1}
	w.Form.Together = max(len(at), 1)
	for _, a := range at {
		w.Feet = append(w.Feet, plan.Foot{At: a})
	}
	return w
}

func space(n int) plan.Worked {
	return plan.Worked{Kind: plan.WorkedSpace, Form: stitch.Plain(stitch.Chain), Chains: n, Yarn: -1}
}

// row adds a line whose feet are in the line before it.
func (b *builder) row(fromLeft, closed bool, list ...plan.Worked) *builder {
	below := len(b.s.Lines) - 1
	line := plan.Line{Number: below + 1, FromLeft: fromLeft, Closed: closed}
	for _, w := range list {
		for k := range w.Feet {
			w.Feet[k].Line = below
		}
		line.Stitches = append(line.Stitches, w)
	}
	b.s.Lines = append(b.s.Lines, line)
	return b
}

// each is a stitch in each of n places, from the first or from the last on.
func each(id stitch.ID, n int, back bool) []plan.Worked {
	var out []plan.Worked
	for k := range n {
		if back {
			k = n - 1 - k
		}
		out = append(out, made(id, k))
	}
	return out
}

// discOf is n rounds, with so many stitches more in each, increases one above the other.
func discOf(id stitch.ID, more, n int) *builder {
	b := ring()
	var first []plan.Worked
	for range more {
		first = append(first, made(id, 0))
	}
	b.row(false, true, first...)
	for k := 1; k < n; k++ {
		var list []plan.Worked
		for at := range more * k {
			list = append(list, made(id, at))
			if at%k == k-1 {
				list = append(list, made(id, at))
			}
		}
		b.row(false, true, list...)
	}
	return b
}
