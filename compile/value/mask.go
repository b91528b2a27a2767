package value

import "math/big"

// Pick returns the values of the sizes that a mask holds, in their order; a nil mask holds all sizes.
func (v Vector) Pick(mask []bool) Vector {
	if v.Unknown || mask == nil {
		return v
	}
	var at []int
	for i, on := range mask {
		if on && i < len(v.N) {
			at = append(at, i)
		}
	}
	return v.rearranged(at)
}

// Spread is the other way of [Vector.Pick]: the values go to the sizes that the mask holds, and there is none in the
// others.
func (v Vector) Spread(mask []bool) Vector {
	if v.Unknown || mask == nil {
		return v
	}
	at := make([]int, len(mask))
	next := 0
	for i, on := range mask {
		at[i] = -1
		if on && next < len(v.N) {
			at[i] = next
			next++
		}
	}
	return v.rearranged(at)
}

// rearranged takes the value number at[i] for each size i, none where that is -1.
func (v Vector) rearranged(at []int) Vector {
	out := Vector{Dim: v.Dim, N: rearrange(v.N, at)}
	if f := v.Fitted; f != nil {
		g := *f
		if f.Wanted != nil {
			g.Wanted, g.Got = rearrange(f.Wanted, at), rearrange(f.Got, at)
		}
		if f.ByHand != nil {
			g.ByHand = make([]bool, len(at))
			for i, j := range at {
				g.ByHand[i] = j >= 0 && f.ByHand[j]
			}
		}
		g.Step, g.First = make([]int64, len(at)), make([]int64, len(at))
		for i, j := range at {
			if g.Step[i] = 1; j >= 0 {
				g.Step[i], g.First[i] = f.Step[j], f.First[j]
			}
		}
		out.Fitted = &g
	}
	return out
}

func rearrange(xs []*big.Rat, at []int) []*big.Rat {
	out := make([]*big.Rat, len(at))
	for i, j := range at {
		if j >= 0 {
			out[i] = xs[j]
		}
	}
	return out
}
