package fabric

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/source"
)

// Op is one instruction of a row, for all sizes: its numbers are one a size.
type Op struct {
	Kind   OpKind
	Form   stitch.Form
	N      plan.Nums // places, chains, times; see the kinds
	Per    plan.Nums // stitches in each place; nil: 1
	Extra  int       // how many stitches more than one each stitch makes; -1: it makes none
	Stated plan.Nums // how many the author says it is; nil: not said
	Target Target
	Bound  Bound // Repeat (N nil), Skip to a bound, Spread
	Body   []*Op
	Label  string
	Marker string // Move, Unmark: ""; the one that was met last
	Where  plan.MarkWhere
	Cells  *Cells
	Yarn   int // Change: the yarn; others: -1, or the yarn of this instruction alone
	How    Spreading
	Edge   plan.Nums // Spaced: the plain stitches before the first, or with FromEnd behind the last; nil: the ends share
	Cross  plan.Cross
	Span   source.Span
	Index  int // of its trace in the row; the same in every size
}

// OpKind says what an instruction does.
type OpKind uint8

// The instructions.
const (
	Work       OpKind = iota // Per stitches of Form in each place of Target
	Draw                     // N stitches of Form, each drawing Form.Together places into one: the next ones, or those of Body
	Cross                    // N groups of Form that cross over the next Form.Of places
	Chains                   // N chains
	SkipOver                 // N stitches, or to Bound
	SkipSpaces               // N spaces
	Leave                    // the N stitches that are left; N nil: all that is left
	Turn
	Repeat // Body, N times or to Bound
	InOne  // Body into each place of Target
	Spread // N increases (Per 2) or decreases (Together 2) spread to Bound
	Found  // N stitches of Form, each in the foot of the one before it
	Ride   // a picot of Form on what was just made: it takes and makes nothing
	Spaced // Body, N times, as far apart as they go among single stitches of Form, to Bound
	AsMade // a stitch of the same kind on each up to Bound, as it presents from this side
	ByCell // N cells of Cells, or as many as there are up to Bound
	Mark
	Move
	Unmark
	Change    // yarn
	SlideTo   // slip stitches to Bound, which only carry the start on
	JoinSpace // a space of N chains in which a slip stitch, into a motif beside this one, stands in place of Per of them
)

// Spreading says where spread shaping goes.
type Spreading uint8

// The ways of spreading.
const (
	AtEnds Spreading = iota // the shaping is the last of its group, long groups first
	Alternating
	Centred
	FromEnd // Spaced: as from the other end of the row
)

// TargetKind says where stitches go.
type TargetKind uint8

// The targets.
const (
	Next      TargetKind = iota // the next N of the op
	Each                        // every place up to Bound
	First                       // the first place of the edge
	Last                        // the last N; nothing may lie before them
	Same                        // the place last worked into
	InRing                      // the ring
	InMarked                    // the next place, which must carry a marker
	GapHere                     // the gap the cursor stands in
	Named                       // Ref, one place
	NamedEach                   // Ref, place by place
	NextOf                      // the next N of the run Ref, which keeps its own place from row to row
	NextNamed                   // the next place of the run Ref, passing stitches
	Below                       // what the stitches of Ref were worked into; chains: their other side
	Beside                      // the side of a stitch of Ref
	Through                     // each next place together with the matching place of Ref
	UnworkedNext
	UnworkedEach
)

// Takes says what counts as a place, as bits.
type Takes uint8

// What counts as a place.
const (
	Stitches Takes = 1 << iota
	Spaces         // a space as one
	InChains       // each chain of a space
	Gaps
)

// Target says where stitches go.
type Target struct {
	Kind  TargetKind
	Takes Takes
	Of    plan.Nums // spaces of so many chains only; nil: any
	Bound Bound     // Each
	Ref   Ref
	Deep  int // rows below
}

// BoundKind says how far.
type BoundKind uint8

// The bounds.
const (
	ToEnd BoundKind = iota
	ToLast
	ToSpace
	ToName
	ToMarker // the next marker of any name
)

// Bound says how far an instruction goes.
type Bound struct {
	Kind BoundKind
	N    plan.Nums // ToLast: how many; ToName, ToMarker: how many before; nil: 0
	Name string
}

// Ref names a run of places: a label or marker of this part, or of another.
type Ref struct {
	Part string // "": the part at hand
	Name string
	Pick plan.Pick // Whole, FirstOf, LastOf, NthOf
	Nth  int
}

// Style says how a row ends.
type Style = plan.Style

// Row is a row to be worked.
type Row struct {
	Ops    []*Op
	Traces int // how many traces: indices run from 0 to Traces-1
	Style  Style
	Open   bool // a round that is not joined
	Turned bool // filled by Turn
	Back   bool // worked the other way, without turning
	Yarn   int
	Wrong  bool // the wrong side faces
	Pure   bool // as the function of that name says
	More   bool // others like it follow: the result is to say whether the row is steady
	Span   source.Span
}

// Trace is what an instruction did when the row was worked.
type Trace struct {
	Runs   int  // how often it was carried out
	N      int  // places taken, chains made, passes of a repeat: the first time
	Varies bool // another time it was another number
	Made   int  // elements made, in all
	Took   Took // what it took
	Chains int  // chains of the spaces it took; -1 if they differ, 0 if none
	Group  Groups
	Worked Worked // ByCell
	Ref    []ID   // the places of the run it named, the first time
	Met    Met    // the markers up to which it went
	Begun  []ID   // the places it took of an edge that the part started along, in order
}

// Met is where the markers stood up to which an instruction went, as bits.
type Met uint8

// Where a marker can stand.
const (
	MetStitch Met = 1 << iota
	MetGap
)

// Took is what an instruction took, as bits.
type Took uint8

// What an instruction can take.
const (
	TookStitch Took = 1 << iota
	TookFoundation
	TookSpace
	TookChain
	TookGap
	TookRing
	TookOther // the other side of chains
	TookRowEnd
)

// Groups is how spread shaping was spread.
type Groups struct {
	Long, LongPlain, Short, ShortPlain, Before, After int
	Lead                                              int // 1: a shaping of its own stands behind Before; else 0
}
