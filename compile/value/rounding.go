package value

import (
	"math/big"
)

// Way says to which of the two neighbouring counts a number goes.
type Way uint8

// The ways to round.
const (
	Nearest Way = iota // the nearer one; see Rounding.TiesDown for a number just between
	Up
	Down
)

// Parity says whether a count must be even or odd.
type Parity uint8

// The parities.
const (
	AnyParity Parity = iota
	Even
	Odd
)

// Rounding says how a length becomes a whole number of stitches or rows. The zero value is the nearest whole number, and
// the greater one of two that are equally near.
type Rounding struct {
	Way      Way
	TiesDown bool
	Parity   Parity
}

// ReadRounding reads rounding words as they stand in a call or behind a row's header: nearest up down even odd, "ties
// up", "ties down". If two of them contradict each other it returns both and false.
func ReadRounding(words []string) (r Rounding, a, b string, ok bool) {
	said := map[string]string{} // what was said about the way, the ties, the parity and the gauge
	for _, w := range words {
		about := "way"
		switch w {
		case "nearest":
			r.Way = Nearest
		case "up":
			r.Way = Up
		case "down":
			r.Way = Down
		case "even":
			about, r.Parity = "parity", Even
		case "odd":
			about, r.Parity = "parity", Odd
		case "ties up":
			about, r.TiesDown = "ties", false
		case "ties down":
			about, r.TiesDown = "ties", true
		case "rows", "rounds":
			about = "gauge" // which gauge is meant rounds nothing
		default:
			continue
		}
		if before := said[about]; before != "" && before != w {
			return r, before, w, false
		}
		said[about] = w
	}
	return r, "", "", true
}

// lattice holds the counts that are allowed: first, first + step, first + 2 step and so on.
type lattice struct{ step, first int64 }

// latticeOf is a multiple of `of` (1: any) plus `plus`, of a parity. It says false if there is no such count.
func latticeOf(of, plus int64, p Parity) (lattice, bool) {
	if p == AnyParity {
		return lattice{of, plus}, true
	}
	fits := plus%2 == 0
	if p == Odd {
		fits = !fits
	}
	if of%2 == 0 {
		return lattice{of, plus}, fits
	}
	if !fits {
		plus += of
	}
	return lattice{2 * of, plus}, true
}

// has reports whether a number is one of the allowed counts.
func (l lattice) has(x *big.Rat) bool {
	if !x.IsInt() || !x.Num().IsInt64() {
		return false
	}
	n := x.Num().Int64()
	return n >= l.first && (n-l.first)%l.step == 0
}

// around returns the allowed counts next to a number: the greatest not above it and the least not below it. They are the
// same if the number is one itself; below is -1 if there is none.
func (l lattice) around(x *big.Rat) (below, above int64) {
	q := new(big.Rat).Sub(x, big.NewRat(l.first, 1))
	q.Quo(q, big.NewRat(l.step, 1))
	if q.Sign() < 0 {
		return -1, l.first
	}
	below = l.first + l.step*floor(q)
	if l.has(x) {
		return below, below
	}
	return below, below + l.step
}

// round returns the allowed count for a number that is not negative. It says false if the count is to be rounded down
// and even the least allowed one is above.
func (l lattice) round(x *big.Rat, r Rounding) (int64, bool) {
	below, above := l.around(x)
	switch {
	case r.Way == Down:
		return below, below >= 0
	case below < 0 || r.Way == Up:
		return above, true
	}
	middle := big.NewRat(below+above, 2)
	if c := x.Cmp(middle); c < 0 || c == 0 && r.TiesDown {
		return below, true
	}
	return above, true
}
