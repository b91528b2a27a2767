package value

import (
	"math/big"

	"ovillo/lang/diag"
)

// Dim is the dimension of a quantity: what its numbers count or measure.
type Dim uint8

// The dimensions.
const (
	Count   Dim = iota // stitches, rows, times: a number without a unit
	Length             // in millimetres
	Mass               // in grams
	Percent            // in hundredths
	Age                // in months
)

// dimensions is the table of dimensions: the word of the trade, and the unit in which a message shows a value.
var dimensions = [...]struct {
	term string
	unit string
	per  *big.Rat // canonical units in one shown unit
}{
	Count:   {"count", "", big.NewRat(1, 1)},
	Length:  {"length", " cm", big.NewRat(10, 1)},
	Mass:    {"weight", " g", big.NewRat(1, 1)},
	Percent: {"percentage", " %", big.NewRat(1, 1)},
	Age:     {"month", " months", big.NewRat(1, 1)},
}

// term is the dimension as a word for a message.
func (d Dim) term() diag.Term { return diag.Term{Key: dimensions[d].term, N: 1} }

// units is the table of units: what one of them is in the canonical unit of its dimension. All are exact. The inch, yard
// and ounce are those of the international yard and pound agreement of 1959: 25.4 mm, 914.4 mm, 28.349523125 g.
var units = map[string]struct {
	dim Dim
	one *big.Rat
}{
	"":       {Count, big.NewRat(1, 1)},
	"mm":     {Length, big.NewRat(1, 1)},
	"cm":     {Length, big.NewRat(10, 1)},
	"m":      {Length, big.NewRat(1000, 1)},
	"in":     {Length, big.NewRat(254, 10)},
	"yd":     {Length, big.NewRat(9144, 10)},
	"g":      {Mass, big.NewRat(1, 1)},
	"kg":     {Mass, big.NewRat(1000, 1)},
	"oz":     {Mass, big.NewRat(28349523125, 1000000000)},
	"%":      {Percent, big.NewRat(1, 1)},
	"months": {Age, big.NewRat(1, 1)},
	"years":  {Age, big.NewRat(12, 1)},
}
