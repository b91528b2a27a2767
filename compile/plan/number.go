package plan

import "math"

// Absent stands in [Nums] for a size in which the thing does not exist.
const Absent = math.MinInt32

// Nums is one whole number for each size, in the order of the sizes.
type Nums []int

// Same returns the number that holds in every size that has one, and whether there is such a number.
func (n Nums) Same() (int, bool) {
	v, seen := 0, false
	for _, x := range n {
		switch {
		case x == Absent:
		case !seen:
			v, seen = x, true
		case x != v:
			return 0, false
		}
	}
	return v, seen
}

// Everywhere reports whether every size has a number.
func (n Nums) Everywhere() bool {
	for _, x := range n {
		if x == Absent {
			return false
		}
	}
	return len(n) > 0
}

// Is reports whether the number is v in every size that has one (and at least one has).
func (n Nums) Is(v int) bool {
	x, ok := n.Same()
	return ok && x == v
}

// Length is a length in micrometres; NoLength stands for a length that is not known.
type Length int64

// NoLength is a length that is not known, or that does not exist in a size.
const NoLength Length = math.MinInt64

// Millimetre, Centimetre and Inch are exact.
const (
	Millimetre Length = 1000
	Centimetre Length = 10 * Millimetre
	Inch       Length = 25400
)

// Cm returns the length in centimetres.
func (l Length) Cm() float64 { return float64(l) / float64(Centimetre) }

// Lengths is one length for each size.
type Lengths []Length

// Text is one text for each language, by its code ("en", "es").
type Text map[string]string

// Sizes says for each size whether something holds in it. nil means all sizes.
type Sizes []bool

// Has reports whether size i is meant.
func (s Sizes) Has(i int) bool { return s == nil || s[i] }

// All reports whether every size is meant.
func (s Sizes) All() bool {
	for _, b := range s {
		if !b {
			return false
		}
	}
	return true
}
