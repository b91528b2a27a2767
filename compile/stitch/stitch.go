// Package stitch is the table of stitches: what each takes, makes and measures, and how a row of it usually begins.
//
// Stitches are known by their United States abbreviation whatever reading a source or a page uses; the words of each
// language stand with the languages, not here.
package stitch

// ID names a stitch kind: "sc", "dc". Own stitches of a pattern use their own name.
type ID string

// The standard stitches.
const (
	Chain ID = "ch"
	Slip  ID = "slst"
	SC    ID = "sc"
	HDC   ID = "hdc"
	DC    ID = "dc"
	TR    ID = "tr"
	DTR   ID = "dtr"
	TRTR  ID = "trtr"
)

// Post says that a stitch goes round the post of a stitch instead of into its top.
type Post uint8

// The posts.
const (
	NoPost Post = iota
	FrontPost
	BackPost
)

// Loop says which loops of a stitch are worked into.
type Loop uint8

// The loops.
const (
	BothLoops Loop = iota
	FrontLoop
	BackLoop
	ThirdLoop
)

// Form is a stitch as it is worked: its kind, round which post or into which loop, and how many places it draws
// together (1 for an ordinary stitch).
type Form struct {
	ID       ID
	Post     Post
	Loop     Loop
	Together int
}

// Kind is one row of the table.
type Kind struct {
	ID     ID
	US, UK string // abbreviations as a source writes them
	// Begin is the number of chains that usually start a row of the stitch, and Counts whether they count as its first
	// stitch. Source: geometry_facts, section 2 (sl st 0, sc 1, hdc 2, dc 3, tr 4, dtr 5; trtr 6); in sc the chain does
	// not count, for hdc print is divided and the chain is taken not to count.
	Begin  int
	Counts bool
	// Height is the nominal height of the stitch in chains, used only where no gauge is given (common practice, no
	// source beyond the ladder above).
	Height float64
}

// Table holds the standard stitches, short to tall.
var Table = []Kind{
	{ID: Chain, US: "ch", UK: "ch", Height: 0},
	{ID: Slip, US: "slst", UK: "ss", Height: 0.3},
	{ID: SC, US: "sc", UK: "dc", Begin: 1, Height: 1},
	{ID: HDC, US: "hdc", UK: "htr", Begin: 2, Height: 1.45},
	{ID: DC, US: "dc", UK: "tr", Begin: 3, Counts: true, Height: 1.9},
	{ID: TR, US: "tr", UK: "dtr", Begin: 4, Counts: true, Height: 2.6},
	{ID: DTR, US: "dtr", UK: "trtr", Begin: 5, Counts: true, Height: 3.3},
	{ID: TRTR, US: "trtr", UK: "qtr", Begin: 6, Counts: true, Height: 4},
}

// Of returns the table's row of a stitch.
func Of(id ID) (Kind, bool) {
	for _, k := range Table {
		if k.ID == id {
			return k, true
		}
	}
	return Kind{}, false
}
