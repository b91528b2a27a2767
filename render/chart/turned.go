package chart

import (
	"slices"

	"ovillo/compile/plan"
)

// turned puts rounds that are laid flat and turned in the order in which their stitches lie, from the right, since what is worked first
// stands over the join while the others come to meet it from the left. What is given is the same chart with these lines read from right
// to left, and where each stitch of such a line stands in it; nil for the others.
func turned(s *plan.Stitches) (*plan.Stitches, [][]int) {
	at := make([][]int, len(s.Lines))
	any := false
	for i := range s.Lines {
		line := &s.Lines[i]
		if s.Outward || !line.Closed || !line.FromLeft {
			continue
		}
		any = true
		at[i] = make([]int, len(line.Stitches))
		for pos, k := range line.RightToLeft() {
			at[i][k] = pos
		}
	}
	if !any {
		return s, at
	}
	out := *s
	out.Lines = slices.Clone(s.Lines)
	for i := range out.Lines {
		line := &out.Lines[i]
		list := make([]plan.Worked, len(line.Stitches))
		for k, w := range line.Stitches {
			feet := slices.Clone(w.Feet)
			for j := range feet {
				f := &feet[j]
				if f.Line < 0 || f.Line >= len(at) || f.At < 0 || f.At >= len(at[f.Line]) {
					continue
				}
				below := s.Lines[f.Line].Stitches
				if f.Into == plan.FootGap && f.At+1 < len(below) {
					f.At++ // the gap lies before it, seen from the right
				}
				if f.Into == plan.FootChain {
					f.Chain = below[f.At].Chains - 1 - f.Chain
				}
				f.At = at[f.Line][f.At]
			}
			pos := k
			if at[i] != nil {
				pos = at[i][k]
			}
			w.Feet = feet
			list[pos] = w
		}
		line.Stitches = list
		line.FromLeft = line.FromLeft && at[i] == nil
	}
	return &out, at
}
