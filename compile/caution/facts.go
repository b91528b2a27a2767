package caution

import (
	"ovillo/compile/plan"
	"ovillo/lang/source"
)

// Facts is what is known of a piece. All lists by size have one entry for each of SizeNames.
type Facts struct {
	Kind      string // what is made, as the source says it; "" if it does not say
	KindAt    source.Span
	Words     []string // what a source may say is made, in its own language; nil: those of [Kinds]
	SizeNames []string
	SizesAt   source.Span
	AgeMonths []int // the youngest wearer of each size, -1 if not known
	Cords     []Cord
	Buttons   []Piece
	Pompoms   []Piece
	Elastics  []Elastic
	Gap       plan.Lengths // the largest opening of the fabric; NoLength if not known
	GapAt     source.Span
}

// Cord is one cord.
type Cord struct {
	Zone       Zone
	Drawstring Truth        // it runs through an opening and draws it in
	Length     plan.Lengths // NoLength if not known
	Opening    plan.Lengths // around the opening it runs through, laid open; NoLength if not known or none
	Step       int          // index of its step in the finishing, -1 if none
	At         source.Span
}

// Piece is one thing sewn on, or several of them.
type Piece struct {
	For  plan.Sizes // the sizes that have it; nil: all
	Step int
	At   source.Span
}

// Elastic is elastic that runs through a row; at a wrist or an ankle its zone is that of sleeves.
type Elastic struct {
	Zone Zone
	Step int
	At   source.Span
}

// at reads an entry of a list by size.
func at(l plan.Lengths, i int) plan.Length {
	if i >= len(l) {
		return plan.NoLength
	}
	return l[i]
}

// free is the free end of the cord in size i, as far as it is known: the least and the greatest it can be. Laid open, a
// drawstring hangs out by half of what is longer than its opening; any other cord may hang from one end.
func (c Cord) free(i int) (least, greatest plan.Length, known bool) {
	length, opening := at(c.Length, i), at(c.Opening, i)
	if length == plan.NoLength {
		return 0, 0, false
	}
	switch {
	case c.Drawstring == False:
		return length, length, true
	case c.Drawstring == Unknown:
		return plan.NoLength, length, true
	case opening == plan.NoLength:
		return plan.NoLength, length / 2, true
	}
	return (length - opening) / 2, (length - opening) / 2, true
}

// longer reports whether the free end is longer than a limit.
func (c Cord) longer(i int, limit plan.Length) Truth {
	least, greatest, known := c.free(i)
	switch {
	case !known:
		return Unknown
	case greatest <= limit:
		return False
	case least > limit:
		return True
	}
	return Unknown
}

// longest is the longest cord in size i whose free ends keep to a limit, in whole millimetres.
func (c Cord) longest(i int, limit plan.Length) plan.Length {
	l := limit
	if c.Drawstring == True && at(c.Opening, i) != plan.NoLength {
		l = at(c.Opening, i) + 2*limit
	}
	return l / plan.Millimetre * plan.Millimetre
}
