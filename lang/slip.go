package lang

import (
	"github.com/alecthomas/participle/v2/lexer"
)

// slip is a slip in the writing that has been recognised. It ends the statement; explain.go words it.
type slip struct {
	kind  slipKind
	token lexer.Token // where it shows
	words []string    // slipWords: what could stand there
}

// Error is never shown to anybody.
func (s *slip) Error() string { return "a slip in the writing" }

// slipKind tells the slips apart.
type slipKind uint8

const (
	noSlip slipKind = iota

	// What would have to come next.
	slipFit    // nothing: the statement is complete, and this does not belong to it
	slipWords  // one of some words
	slipName   // a name
	slipNumber // a number
	slipValue  // a value
	slipText   // a text in quotes
	slipBi     // a language and a text
	slipPlace  // a place, a run or a part
	slipStitch // a stitch
	slipList   // an instruction
	slipOften  // how often a repeat is worked
	slipWhere  // into which place a group goes

	// Slips that have a message of their own.
	slipPoint    // nothing that can stand behind a point
	slipBut      // but without a size in quotes
	slipSizes    // the list of the other sizes
	slipBetween  // between next 2
	slipInNumber // in 5
	slipBelow    // in next 2 rows below

	// Slips that show before the statement is read.
	slipDepth      // brackets or signs nested too deeply
	slipLong       // a statement of too many words
	slipLongName   // a word of too many letters
	slipLongNumber // a number of too many digits
	slipLongText   // a text in quotes of too many letters
	slipOpen       // a bracket that is not closed
	slipClosing    // a bracket that closes nothing, or another kind
	slipUnfinished // the line should go on, but the next begins a statement
)

func (r reader) slip(k slipKind) error { return &slip{kind: k, token: *r.Peek()} }

// tooLarge reports whether a statement is at fault for its size alone.
func (k slipKind) tooLarge() bool { return k == slipDepth || slipLong <= k && k <= slipLongText }
