package standard

import (
	"math"
	"math/big"
)

// FlatIncrease is how many stitches each round of a flat circle adds: 2πh/w for rows of height h and stitches of width w
// (plane geometry: the circumference grows by 2π for each unit of radius). Both gauges are over the same length. It is 0
// if one of them is not above zero.
func FlatIncrease(stsPer, rowsPer *big.Rat) float64 {
	if stsPer == nil || rowsPer == nil || stsPer.Sign() <= 0 || rowsPer.Sign() <= 0 {
		return 0
	}
	ratio, _ := new(big.Rat).Quo(stsPer, rowsPer).Float64()
	return 2 * math.Pi * ratio
}

// Disc says how a round piece with steady increases lies.
type Disc int8

// How a disc lies.
const (
	Cups Disc = iota - 1 // too few increases: it draws up into a bowl
	Flat
	Ruffles // too many: its edge waves
)

// flatTolerance is how far the increases of a round may lie from those of the geometry before the piece is said not to
// lie flat. Starts in print (6 in sc, 8 to 10 in hdc, 12 to 14 in dc) differ from it by up to about as much.
const flatTolerance = 1.5

// Lies tells how a disc lies that adds so many stitches each round. flat is what [FlatIncrease] gives.
func Lies(increase, flat float64) Disc {
	switch {
	case increase < flat-flatTolerance:
		return Cups
	case increase > flat+flatTolerance:
		return Ruffles
	}
	return Flat
}
