package words

import (
	"slices"

	"ovillo/compile/plan"
)

// gather puts what is worked alike at every marker of a round into brackets: "[sc in each st to next marker, 3 sc in
// marked st, …] 4 times" in the place of four times the same with another number. It does so only if all markers of the
// part are met, one after the other, so that the next marker is always the one that is meant.
func (c *context) gather(work []plan.Instr) []plan.Instr {
	if c.part == nil || len(c.part.Markers) < 2 {
		return work
	}
	for i := range work {
		for length := 1; length <= maxGathered && i+length <= len(work); length++ {
			times := 1
			for c.atNextMarker(work, i, length, times) {
				times++
			}
			if times == len(c.part.Markers) && times*length >= worthGathering && meetsMarkers(work[i:i+length]) {
				out := slices.Clone(work[:i])
				out = append(out, c.atEachMarker(work[i:i+length*times], length, times))
				return append(out, work[i+length*times:]...)
			}
		}
	}
	return work
}

// drawnTogether makes one instruction of decreases that follow each other and are alike: "hdc2tog 2 times".
func (c *context) drawnTogether(work []plan.Instr) []plan.Instr {
	var out []plan.Instr
	for i := range work {
		in := work[i]
		if n := len(out); n > 0 && in.Op == plan.Decrease && in.Marker < 0 && !c.bounded(&in) && in.N != nil && alikeInstr(&work[i-1], &in) {
			out[n-1].N = c.plus(out[n-1].N, in.N)
			continue
		}
		out = append(out, in)
	}
	return out
}

const (
	maxGathered    = 6 // instructions at one marker
	worthGathering = 6 // instructions that are saved from being said one by one
)

// atNextMarker reports whether the group that stands so many groups behind another does the same at the next marker.
func (c *context) atNextMarker(work []plan.Instr, at, length, groups int) bool {
	from := at + length*groups
	if from+length > len(work) {
		return false
	}
	for k := range length {
		a, b := &work[at+k], &work[from+k]
		if !alikeInstr(a, b) || a.Marker >= 0 && b.Marker != a.Marker+groups {
			return false
		}
	}
	return true
}

// alikeInstr reports whether two instructions differ in nothing but their marker and how many places lie before it.
func alikeInstr(a, b *plan.Instr) bool {
	plainOne := func(in *plan.Instr) bool {
		return in.Ref == nil && in.Called == nil && in.Label == "" && in.Body == nil && in.Spread == nil && !in.AfterBegin
	}
	if !plainOne(a) || !plainOne(b) || (a.Marker < 0) != (b.Marker < 0) {
		return false
	}
	same := a.Op == b.Op && a.Form == b.Form && a.Reach == b.Reach && a.Over == b.Over && a.Deep == b.Deep && a.Where == b.Where && a.Marked == b.Marked && a.Cross == b.Cross && a.Yarn == b.Yarn
	same = same && slices.Equal(a.Per, b.Per) && slices.Equal(a.Last, b.Last) && slices.Equal(a.Before, b.Before) && slices.Equal(a.Chains, b.Chains)
	return same && (a.Reach == plan.ToMark || slices.Equal(a.N, b.N))
}

// meetsMarkers reports whether a group goes on to a marker or works into one.
func meetsMarkers(group []plan.Instr) bool {
	return slices.ContainsFunc(group, func(in plan.Instr) bool {
		return in.Reach == plan.ToMark && in.Marker >= 0 || in.Reach == plan.InMarked && in.Marker >= 0
	})
}

// atEachMarker is a repeat of the first group, with the next marker in the place of its own.
func (c *context) atEachMarker(work []plan.Instr, length, times int) plan.Instr {
	body := slices.Clone(work[:length])
	for k := range body {
		body[k].Marker = -1
		for g := 1; g < times; g++ {
			if !slices.Equal(body[k].N, work[g*length+k].N) {
				body[k].N = nil
			}
		}
	}
	return plan.Instr{Op: plan.Repeat, N: c.same(times), Reach: plan.Times, Body: body, Marker: -1, Yarn: -1}
}
