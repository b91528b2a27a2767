package lang

import (
	"github.com/alecthomas/participle/v2/lexer"
)

// slip is a slip in the writing that a part read by hand has recognised. It ends the statement; explain.go words it.
type slip struct {
	kind  slipKind
	token lexer.Token // where it shows
}

// Error is never shown to anybody.
func (s *slip) Error() string { return string(s.kind) }

type slipKind string

const (
	slipDepth    slipKind = "depth"    // brackets or signs nested too deeply
	slipPoint    slipKind = "point"    // nothing that can stand behind a point
	slipBut      slipKind = "but"      // but without a size in quotes
	slipValue    slipKind = "value"    // a value is missing
	slipSizes    slipKind = "sizes"    // the list of the other sizes
	slipMeasured slipKind = "measured" // what is measured is missing
	slipAtRow    slipKind = "at row"   // at without a row
	slipBetween  slipKind = "between"  // between next 2
	slipInNumber slipKind = "in"       // in 5
	slipBelow    slipKind = "below"    // in next 2 rows below

	slipLong       slipKind = "long"       // a statement of too many words
	slipOpen       slipKind = "open"       // a bracket that is not closed
	slipClosing    slipKind = "closing"    // a bracket that closes nothing, or another kind
	slipUnfinished slipKind = "unfinished" // the line should go on, but the next begins a statement
)

func (r reader) slip(k slipKind) error { return &slip{k, *r.Peek()} }
