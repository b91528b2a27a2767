package plan

import "slices"

// Schematic is what the source asks of the schematic: which parts it shows, in which order. Nobody draws a piece; this only
// leaves some out or sets them in order. A nil one shows all parts in the order in which they are worked.
type Schematic struct {
	Parts   []int // indices into Pattern.Parts
	Without bool  // Parts are left out, and the others stay in their order; else these alone are shown, in this order
}

// Shows reports whether the schematic shows a part.
func (s *Schematic) Shows(part int) bool {
	return s == nil || slices.Contains(s.Parts, part) != s.Without
}

// Place is where a part stands in the order that is asked for: the earlier the lower. Parts of no stated order stand in their own.
func (s *Schematic) Place(part int) int {
	if s == nil || s.Without {
		return part
	}
	if i := slices.Index(s.Parts, part); i >= 0 {
		return i
	}
	return len(s.Parts) + part
}
