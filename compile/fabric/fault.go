package fabric

import (
	"fmt"

	"ovillo/lang/source"
)

// FaultKind says why a row cannot be worked.
type FaultKind uint8

// The faults.
const (
	TooFew        FaultKind = iota + 1 // Need places, Have are left
	RunShort                           // Need places of the run Name are wanted, which keeps its own place; Have are left of it
	LeftOver                           // Have places are left at the end of the row
	SpaceInWay                         // a chain space of Have chains where a stitch was wanted
	NoSpace                            // no space ahead
	NotEven                            // a repeat that takes Need does not come out even over Have
	TakesNothing                       // a repeat whose pass takes no place
	Behind                             // Name lies behind
	Ahead                              // Have places before Name are not accounted for
	NotHere                            // Name is not on this edge
	Unknown                            // there is no Name
	OtherSpace                         // a space of Need chains was wanted, one of Have is there
	NoGap                              // no gap here
	LeaveOther                         // Need were to be left, Have are
	StartSpace                         // a round must begin with a stitch
	Between                            // Have places left earlier lie between the ends that are joined
	ManyPlaces                         // Name stands for Have places, one is wanted
	NothingDone                        // nothing was worked yet
	NotRing                            // there is no ring here
	NoRoom                             // Need places for the shaping, Have are there
	StatedOther                        // Need was said, Have it is
	Nested                             // a group inside a group, a label on part of a space …
	DrawnBelow                         // below a stitch that draws several together
	Mismatch                           // two layers of Need and Have places
	Lost                               // the marker Name lost its place
	NoMiddle                           // no one in the middle of Have stitches
	Placed                             // the marker Name stands already
	TooMany                            // more than Have stitches in all
	TooWide                            // more than Have stitches or chains in a row
	LastNotLast                        // Need were to be the last, Have are left
	NoNext                             // the marker Name was to stand in a stitch that the row does not make
	NoMarker                           // no marker lies ahead
	NotMarked                          // the next place carries no marker
	NoStitches                         // there are chains where stitches were to go on as they present
	NoneMet                            // no marker was met yet in this row
	Crowded                            // what is set at even distances needs Need places, Have are there
	ShortSpace                         // a join stands in place of Need chains, the space Name has Have
	UnevenCells                        // a chart of Need cells does not come out even over Have stitches
	UnevenSquares                      // a chart of Need squares does not come out even over Have squares
	NoCentre                           // a chart of Need cells has no middle over Have stitches
	NoSquares                          // squares of Need places, and one stitch, do not come out even over Have places
)

// Fault is why a row, or another step of a part, could not be worked in one size.
type Fault struct {
	Kind FaultKind
	Span source.Span
	Need int
	Have int
	Name string
	// Total is what the instruction had to work with as a whole, where that helps: the places a repeat runs over.
	Total int
	// from is where the cursor stood when the instruction that failed began, once it is known.
	from  int
	known bool
}

func (e *Fault) Error() string {
	return fmt.Sprintf("fault %d: need %d, have %d %s", e.Kind, e.Need, e.Have, e.Name)
}

func fault(k FaultKind, need, have int, name string) *Fault {
	return &Fault{Kind: k, Need: need, Have: have, Name: name}
}
