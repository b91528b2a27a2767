package chart

import (
	"math"

	"ovillo/compile/plan"
)

// corner is a place where a round turns a corner: a group of stitches in one place of the round below.
type corner struct {
	foot plan.Foot // what they are worked into
	// middle are the stitches in the middle of the group, one or two, by their index in the line.
	middle []int
	space  bool // chains lie in the middle of the group
}

// corners finds rounds with corners: from three to eight in a round, evenly spaced, which stand on those of the round below.
// What is found is how many they are in a round, 0 for none, and those of each line. Increases of two, and those that are
// staggered, keep a round round.
func corners(s *plan.Stitches) (int, [][]corner) {
	found := make([][]corner, len(s.Lines))
	times, stacked, spaced := map[int]int{}, map[int]int{}, map[int]int{}
	for i := 1; i < len(s.Lines); i++ {
		if found[i] = cornersOf(s, i); len(found[i]) == 0 {
			continue
		}
		k := len(found[i])
		times[k]++
		if found[i][0].space {
			spaced[k]++
		}
		below := found[i][0].foot.Line
		if below >= 0 && below < i && len(found[below]) == k && stands(s, found[i], found[below]) {
			stacked[k]++
		}
	}
	best := 0
	for k := 3; k <= 8; k++ {
		if times[k] > times[best] && (stacked[k] > 0 && 2*stacked[k] >= times[k]-1 || k == 4 && spaced[k] > 0) {
			best = k
		}
	}
	for i := range found {
		if len(found[i]) != best {
			found[i] = nil
		}
	}
	return best, found
}

// stands reports whether the corners of a round stand on those of the round below.
func stands(s *plan.Stitches, over, below []corner) bool {
	n := len(s.Lines[over[0].foot.Line].Stitches)
	for _, c := range over {
		near := false
		for _, b := range below {
			for _, m := range b.middle {
				d := abs(c.foot.At - m)
				near = near || min(d, n-d) <= 1
			}
		}
		if !near {
			return false
		}
	}
	return true
}

func abs(n int) int { return max(n, -n) }

// cornersOf finds the groups of a round that may be its corners.
func cornersOf(s *plan.Stitches, i int) []corner {
	line := &s.Lines[i]
	if !line.Closed {
		return nil
	}
	var groups [][]int // of indices, chains between stitches included
	var feet []plan.Foot
	last := -1
	for k := range line.Stitches {
		w := &line.Stitches[k]
		if w.Kind != plan.WorkedStitch || len(w.Feet) == 0 {
			continue
		}
		foot := w.Feet[0]
		if len(w.Feet) == 1 && last >= 0 && feet[len(feet)-1] == foot {
			g := &groups[len(groups)-1]
			for j := (*g)[len(*g)-1] + 1; j <= k; j++ {
				*g = append(*g, j)
			}
			continue
		}
		last = k
		groups, feet = append(groups, []int{k}), append(feet, foot)
	}
	if n := len(groups); n > 1 && feet[0] == feet[n-1] { // the round begins within a corner
		g := groups[n-1]
		for j := g[len(g)-1] + 1; j < len(line.Stitches); j++ {
			g = append(g, j)
		}
		for j := range groups[0][0] {
			g = append(g, j)
		}
		groups[0] = append(g, groups[0]...)
		groups, feet = groups[:n-1], feet[:n-1]
	}
	// A group in the middle of the whole work is none, nor is one that the others are all like.
	size, most := make([]int, len(groups)), 0
	for g, members := range groups {
		stitches, chains := 0, 0
		for _, k := range members {
			switch w := &line.Stitches[k]; w.Kind {
			case plan.WorkedStitch:
				stitches++
			case plan.WorkedSpace:
				chains += w.Chains
			}
		}
		foot := feet[g]
		if foot.Line < 0 || foot.Line >= i || len(s.Lines[foot.Line].Stitches) < 3 || stitches < 2 || stitches+chains < 3 {
			continue
		}
		if size[g] = stitches; chains > 0 {
			size[g] += 100 // chains in a group are its corner, whatever there is besides
		}
		most = max(most, size[g])
	}
	var out []corner
	var middles []float64
	for g, members := range groups {
		if most == 0 || size[g] != most && (most < 100 || size[g] < 100) {
			continue
		}
		c := corner{foot: feet[g], space: most >= 100}
		n := len(members)
		c.middle = members[(n-1)/2 : n/2+1]
		if c.space {
			var spaces []int
			for _, k := range members {
				if line.Stitches[k].Kind == plan.WorkedSpace {
					spaces = append(spaces, k)
				}
			}
			if len(spaces)%2 == 1 {
				c.middle = spaces[len(spaces)/2 : len(spaces)/2+1]
			}
		}
		out = append(out, c)
		middles = append(middles, float64(c.middle[0]))
	}
	if n := len(out); n < 3 || n > 8 || !even(middles, len(line.Stitches)) {
		return nil
	}
	return out
}

// even reports whether places along a round of n are evenly spaced, but for what begins and closes a round.
func even(at []float64, n int) bool {
	mean := float64(n) / float64(len(at))
	for i := range at {
		d := at[(i+1)%len(at)] - at[i]
		if d <= 0 {
			d += float64(n)
		}
		if math.Abs(d-mean) > max(2.5, 0.2*mean) {
			return false
		}
	}
	return true
}
