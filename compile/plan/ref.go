package plan

import "ovillo/compile/stitch"

// RefKind says what a name stands for.
type RefKind uint8

// What a name can stand for.
const (
	RefStitches   RefKind = iota + 1 // stitches that were made
	RefSpace                         // chains that were made
	RefSkipped                       // places that were passed over or left
	RefEdge                          // the last row of a part
	RefFoundation                    // the other side of a part's start
	RefRow                           // a row of a part
	RefSection                       // what lies between two markers
	RefRowEnds                       // the ends of rows at a side edge
	RefAround                        // all the way round joined motifs, or the four sides of a flat piece
	RefCorner                        // a corner of an opening, beside the stitch that ends its chain
)

// Pick says which place of a run is meant.
type Pick uint8

// Which place.
const (
	Whole   Pick = iota // the run as a whole; in a space: the space
	EachOf              // its places one by one
	FirstOf             // the first place
	LastOf              // the last
	NthOf               // the place number Ref.Nth
)

// Ref is a place or run that is reached by name.
type Ref struct {
	Kind   RefKind
	Part   int  // index into Parts
	Own    bool // it belongs to the part at hand
	Label  string
	Called Text // printed name, with article; nil if the source gives none
	Pick   Pick
	Nth    int
	Row    Nums        // number of the row where it was made; nil for an edge or foundation
	Count  Nums        // how many places
	Chains Nums        // RefSpace: chains
	Form   stitch.Form // the stitch, where all are alike; else the zero Form
	Below  bool        // its other side
	Role   Role        // what a place is by its position, where the form names it and the source does not
	Apart  bool        // its places stand apart from each other, as corners do: the next one is meant
	// RefRowEnds: at which side, the ends, and so many stitches worked along so many of them (0: said size by size, or one in
	// each). Row and ToRow are then the rows whose ends are meant; nil: all.
	Side           Side
	Down           bool // walked from the last row to the first
	Ends           Nums
	Rate, RateRows int
	ToRow          Nums
}

// Role is what a place is by its position.
type Role uint8

// The roles.
const (
	NoRole      Role = iota
	OuterCorner      // a corner of joined motifs as a whole
	Corner           // a corner of a flat piece
	Joint            // a corner space of a motif, on the outer edge where two motifs are joined
)

// Side is a side edge of flat work, as its right side shows it.
type Side uint8

// The sides.
const (
	RightEdge Side = iota
	LeftEdge
)
