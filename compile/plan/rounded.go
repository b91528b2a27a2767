package plan

import (
	"ovillo/compile/stitch"
	"ovillo/lang/source"
)

// Unit says what a length was turned into.
type Unit uint8

// The units of counts that are made from lengths.
const (
	UnitStitches Unit = iota + 1
	UnitRows          // rows or rounds
	UnitRepeats       // times that a block of rows is worked
	UnitChains
)

// Rounded is a length of the source that became a count: what was wanted and what came out, for each size. A report
// lists these in the order of the source.
type Rounded struct {
	Let    string      // the value it stands in, by its name; "" where it stands in no let
	Part   int         // index into Parts of the part in a line of which it stands; -1 outside the parts
	Row    string      // the label of the row it stands in; "" if it has none
	Span   source.Span // of the call, or of the length behind rows for
	Stitch stitch.ID   // or the stitch pattern whose gauge was used; "" for a block of rows of several stitches
	Unit   Unit
	Counts Nums    // Absent in a size that does not work it
	Wanted Lengths // NoLength likewise
	Got    Lengths // what the counts measure; of rows to a length, what the part then measures
	// A count is Plus and any number of times Multiple; both nil for rows that end where a stitch pattern may, or that are to
	// end on one side.
	Multiple, Plus Nums
	Way            string // nearest, up, down
	TiesDown       bool   // of two that are equally near the lower one
	ByHand         []bool // sizes whose count the source sets by hand; nil if there are none
}

// Errors returns how much longer than wanted each size comes out; NoLength in a size that does not work it.
func (r *Rounded) Errors() Lengths {
	out := make(Lengths, len(r.Got))
	for z := range out {
		if out[z] = NoLength; r.Got[z] != NoLength && r.Wanted[z] != NoLength {
			out[z] = r.Got[z] - r.Wanted[z]
		}
	}
	return out
}
