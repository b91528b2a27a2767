package plan

import (
	"sort"

	"ovillo/compile/stitch"
	"ovillo/lang/source"
)

// Style says how a part is worked.
type Style uint8

// The styles.
const (
	Rows         Style = iota // back and forth
	JoinedRounds              // each round joined, not turned
	TurnedRounds              // each round joined and turned
	SpiralRounds              // never joined
)

// Part is what is worked in one go.
type Part struct {
	Name       string
	Title      Text
	Called     Text // its name inside a sentence, with the article ("the body", "el cuerpo"); nil if not given
	Make       int  // how many are made; 1 as a rule
	Style      Style
	FirstWrong bool // row 1 shows the wrong side
	Yarn       int  // index into Yarns, -1 if the pattern names none
	Hook       Length
	Markers    []Marker
	Start      Start
	Steps      []Step
	Span       source.Span

	// Worked is the fabric row by row, for each size: what counts and drawings need.
	Worked [][]RowFact
	// Silent are the sizes in which a row did not come out: nothing is known of the part behind the rows in Worked. nil: none.
	Silent Sizes
	// From says on which other parts this one grows, one entry a run; empty for a part that starts by itself.
	From []Origin

	Motifs Nums  // how many of the part are made to be joined to one another; nil if it is no such motif
	Grid   *Grid // motifs joined to one another, which this part is; nil if it is worked by itself
}

// Marker is a stitch marker of a part. Number is how it is printed: marker 1.
type Marker struct {
	Name   string
	Called Text
	Number int
}

// StartKind says how a part starts.
type StartKind uint8

// The starts.
const (
	StartChain      StartKind = iota + 1 // ch N
	StartJoined                          // ch N, joined into a ring
	StartBothSides                       // ch N, worked along both sides
	StartRing                            // adjustable ring
	StartChainRing                       // ch N, joined, worked into the ring
	StartFoundation                      // N foundation stitches (Form)
	StartFoundationJoined
	StartFrom // along runs of other parts
	StartIn   // in one place of another part
	StartGrid // nowhere: the part is motifs joined to one another
)

// Start is how a part starts.
type Start struct {
	Kind  StartKind
	N     Nums        // chains or stitches that are worked into
	Extra Nums        // chains added in print for the beginning of row 1; nil if none
	Form  stitch.Form // StartFoundation
	Runs  []Ref       // StartFrom, StartIn: where the yarn is joined
	Spelt bool        // StartFrom: the first row says stitch by stitch how the ends of rows are worked
	Round bool        // StartFrom: all round a flat piece, beginning behind its first corner
	Fresh bool        // yarn is joined here (it does not hang there already)
	Skip  Nums        // places of the live edge before the first run, where that is places of it without a name; else nil
	Yarn  int
}

// Step is one printed step of a part.
type Step interface{ step() }

// Row is a row, or several in a run that read the same.
type Row struct {
	First, Last Nums // numbers of the first and last row, Absent in a size that does not work it
	Times       Nums // how many rows
	Label       string
	Called      Text      // printed name of the row, nil if it has none
	Chart       *ChartRow // the row of a chart it is worked from; nil: none, or several
	For         Sizes
	Wrong       bool // the wrong side faces (only meaningful where Sided)
	Sided       bool // the side is worth saying (work in rows or turned rounds, one row)
	Begin       Begin
	Work        []Instr
	Join        Join
	Turn        bool
	Back        bool     // worked the other way: from left to right for who holds the hook in the right hand
	Unturned    bool     // the work is not turned before it, in a part that is turned after each row
	Flat        bool     // worked as a row, in a part that is worked in rounds
	Counts      []Count  // after the row (the last of the run)
	Change      []Count  // what each row of a run adds to the stitches, or takes from them; nil: nothing, or not the same each time
	Yarn        int      // yarn the row starts with
	NewYarn     bool     // that yarn is not the one in hand: it is joined here
	ChangeYarn  bool     // the maker changes to that yarn, which may hang there already
	Striped     bool     // the yarn follows stripes
	Stripes     *Stripes // the stripes that come in the rows; nil if they are in one yarn
	JoinAt      *Ref     // the space in which that yarn is joined, where the beginning chain stands in one; else nil
	Tall        Lengths  // height of the part after the run, where the source asked for a length; else nil
	Hook        Length   // the hook to change to before the row; 0: the one in hand
	MarksUp     bool     // markers ride up in this row without being named: they are moved up as they are met
	Drop        []int    // markers that have no place after this row and are taken out
	Span        source.Span
}

// Stripes are the yarns of the rows of a step: the rest of a cycle, whole cycles, and the beginning of the next.
type Stripes struct {
	Lead, Cycle, Tail []Stripe
	Times             Nums // whole cycles
}

// Stripe is so many rows of a yarn.
type Stripe struct {
	Yarn int
	Rows Nums
}

// Single is the one yarn of all the rows, if there is one in every size.
func (s *Stripes) Single() (int, bool) {
	yarn, one := -1, true
	add := func(list []Stripe, on func(z int) bool) {
		for _, st := range list {
			for z, n := range st.Rows {
				if n > 0 && on(z) {
					one = one && (yarn < 0 || yarn == st.Yarn)
					yarn = st.Yarn
				}
			}
		}
	}
	always := func(int) bool { return true }
	add(s.Lead, always)
	add(s.Cycle, func(z int) bool { return s.Times[z] > 0 })
	add(s.Tail, always)
	return yarn, one && yarn >= 0
}

// Block is several rows worked over and over.
type Block struct {
	Times       Nums
	First, Last Nums
	Rows        []*Row // numbers of the first pass
	Counts      []Count
	Change      []Count // what each pass adds to the stitches, or takes from them; nil: nothing, or not the same each time
	For         Sizes
	Stripes     *Stripes // the stripes that come in the rows; nil if there are none
	Drop        []int    // markers that nothing looks for behind the last pass, after which they are taken out
	Tall        Lengths
	Span        source.Span
}

// CountOff places markers along a finished row without working.
type CountOff struct {
	Items []OffItem
	For   Sizes
	Span  source.Span
}

// OffItem is one step of a counting off: N places (named or not), or a marker.
type OffItem struct {
	N      Nums // nil for a marker
	Called Text // the section's printed name
	Label  string
	Marker int // index into Part.Markers, -1 if this item counts
	InNext bool
}

// Fasten ends the part: fasten off, level a spiral (Slip > 0), or draw the last round together.
type Fasten struct {
	Off   bool
	Tail  bool // with a long tail, to sew with
	Slip  int
	Close string // "", "front", "back", "both": through these loops
	For   Sizes
}

// MoveStart moves the start of the round to a marker.
type MoveStart struct {
	Marker int
	Moved  Nums // places passed
	Drop   bool // nothing looks for the marker behind it: it is taken out as the first round begins there
	For    Sizes
}

// NoteStep is prose between rows.
type NoteStep struct {
	Prose Prose
	For   Sizes
}

// Counted states counts between rows: "You now have".
type Counted struct {
	Counts []Count
	For    Sizes
}

// RowsOf are the rows that a step prints: one, those of a repeat in its first pass, or none.
func RowsOf(s Step) []*Row {
	switch s := s.(type) {
	case *Row:
		return []*Row{s}
	case *Block:
		return s.Rows
	}
	return nil
}

// Rows are the rows that a part prints, those of repeats in their first pass.
func (p *Part) Rows() []*Row {
	var out []*Row
	for _, s := range p.Steps {
		out = append(out, RowsOf(s)...)
	}
	return out
}

func (*Row) step()       {}
func (*Block) step()     {}
func (*CountOff) step()  {}
func (*Fasten) step()    {}
func (*MoveStart) step() {}
func (*NoteStep) step()  {}
func (*Counted) step()   {}

// Begin is the beginning chain of a row.
type Begin struct {
	Chains     int  // 0: none
	Counts     bool // it is the first stitch of the row
	OtherYarn  bool // it is made in Yarn, which is not the yarn of the row
	Yarn       int
	As         stitch.ID
	Throughout bool // first time in the pattern: "here and throughout"
	// FromHook is set in a row worked into a new chain: the first stitch goes into the n-th chain from the hook. Skipped
	// is then how many chains are passed over (and count as the first stitch if Counts).
	FromHook int
	Skipped  int
	// And is a chain that follows at once and is printed with it: ch 4, counts as dc and ch 1.
	And int
}

// Join is how a round is closed.
type Join struct {
	Kind JoinKind
	Into JoinInto
	Form stitch.Form // the first stitch joined to; for JoinWith the stitch that joins
	Nth  int         // IntoChain: the chain of the beginning chain, counted from its start
}

// JoinKind says how.
type JoinKind uint8

// The joins.
const (
	NoJoin JoinKind = iota
	JoinSlip
	JoinWith
)

// JoinInto says into what.
type JoinInto uint8

// What a join goes into.
const (
	IntoFirst JoinInto = iota // the first stitch
	IntoChain                 // the top of the beginning chain
)

// Op says what an instruction does.
type Op uint8

// The instructions.
const (
	Work      Op = iota + 1 // Per stitches of Form in each of N places
	Decrease                // N times Form, which draws Form.Together places into one
	Chains                  // N chains
	SkipOver                // N places passed over
	LeaveRest               // N places left for later
	TurnWork                // turn
	Repeat                  // Body, N times in all
	InOne                   // Body, all into one place, for each of N places
	SpreadOut               // shaping spread over the row, see Spread
	PlaceMark               // marker Marker
	MoveMark
	RemoveMark
	ChangeTo  // go on with Yarn
	CrossOver // N times Form, a group that crosses over as many places as it has stitches
	Lengthen  // N stitches of Form, each in the foot of the one before it
	RideOn    // a picot of Form on the stitch just made
	AsMade    // each stitch as it presents
	SlipOver  // N slip stitches that only carry the yarn on; not counted
	JoinTo    // a slip stitch into the matching space, of Chains chains, of the motif beside this one
	AlongRun  // what follows is worked along Ref
)

// Reach says how the instruction says how far it goes, or where.
type Reach uint8

// How far, or where.
const (
	Next        Reach = iota // the next N
	ToEnd                    // each to the end of the row or round
	ToMark                   // each to Marker (Before places before it)
	ToLast                   // each to the last Last
	ToLabel                  // each to Ref
	ToSpace                  // each to the next space
	Times                    // Repeat: N times as written
	First                    // the first place again
	Last                     // the last N
	Same                     // the place last worked into
	InRing                   // the ring
	InMarked                 // the marked place
	InGapHere                // the gap between the stitches where the hook is
	At                       // Ref, a place or each place of a run
	BelowOf                  // what the stitches of Ref were worked into
	BesideOf                 // the side of a stitch of Ref
	NextOf                   // the next N of the run Ref, which keeps its own place from row to row
	ThroughBoth              // each next place together with the matching place of Ref
)

// PlaceKind says what is worked into.
type PlaceKind uint8

// The kinds of place.
const (
	Stitch        PlaceKind = iota
	FoundationCh            // the chains of a foundation
	ChainFromBack           // the other side of chains
	Space                   // chain spaces, whole
	StitchSpace             // stitches and spaces, each space as one
	StitchChain             // stitches and each chain of a space
	Gap                     // between two stitches
	Unworked                // places left in an earlier row
	RowEnd                  // ends of rows
	RingPlace
	PostBelow // post or top of the stitch Deep rows below
)

// Instr is one instruction of a row with its numbers for every size.
type Instr struct {
	Op     Op
	Form   stitch.Form
	Per    Nums // stitches in one place; nil: 1
	N      Nums // places, chains, times …; Absent where the instruction is not worked, 0 where there is nothing to do
	Reach  Reach
	Over   PlaceKind
	Chains Nums // chains of the space worked into, where it is a space and all are alike; else nil
	Last   Nums // ToLast
	Before Nums // ToMark
	Posts  bool // AsMade: there are stitches round posts among them
	Marked bool // ToMark: the marker stands in a stitch, in every size
	Deep   int  // rows below
	Marker int  // index into Part.Markers; -1 if none, or for one that is met by no name
	Where  MarkWhere
	Ref    *Ref
	Body   []Instr
	Cells  Nums // Repeat: Body is a stretch of a chart over so many places, one stitch a cell, worked once; nil: it is not
	Spread *Spread
	Cross  Cross
	Yarn   int // -1: the yarn in hand
	Label  string
	Called Text // printed name of what is made or passed over
	// AfterBegin: a beginning chain stands for the first stitch; N has been lessened by it. If N was only that one, the
	// instruction is not printed at all.
	AfterBegin bool
}

// MarkWhere says where a marker goes.
type MarkWhere uint8

// Where a marker goes.
const (
	LastMade MarkWhere = iota // the stitch last made
	NextOne                   // the next stitch
	GapHere                   // between the stitch last made and the next
	FirstOne                  // the first, middle or last of the stitches just made in one place
	MiddleOne
	LastOne
)

// Cross says how stitches of a cable pass the ones skipped.
type Cross uint8

// The crossings.
const (
	NoCross Cross = iota
	CrossFront
	CrossBack
)

// Spread is shaping spread evenly: Long[i] times a group with LongPlain[i] plain stitches before the shaping, then Short
// times one with ShortPlain; Form is the stitch. Increase says two in one place, else two places drawn together.
type Spread struct {
	Increase          bool
	Long, LongPlain   Nums
	Short, ShortPlain Nums
	Before, After     Nums // plain stitches before and after, for centred shaping
	Alternating       bool
}

// CountKind says what is counted.
type CountKind uint8

// What is counted.
const (
	CountSts    CountKind = iota // stitches of any kind
	CountForm                    // stitches of Form
	CountSpaces                  // chain spaces of Chains chains (0: of different sizes)
	CountChains                  // chains of a start
	CountIn                      // stitches in a section or kind of place
	CountYarn                    // stitches in the yarn Yarn
)

// Count is a count that prints after a row.
type Count struct {
	Kind   CountKind
	Form   stitch.Form
	Chains int
	Yarn   int
	Label  string
	Called Text
	N      Nums
}

// Origin says where a part grows on another: along places From to To (the first is 1, both are part of it) of an edge
// of Of places, in the row Row (0: its start) of part Part. All per size.
type Origin struct {
	Kind         RefKind
	Part         int
	Label        string
	Side         Side // RefRowEnds: From and To are rows then
	Row          Nums
	From, To, Of Nums
}

// Texture tells drawings what a row looks like.
type Texture uint8

// Textures.
const (
	Plain Texture = iota
	Rib           // post stitches in columns
	Lace          // spaces
)

// RowFact is one row of one size as it was worked.
type RowFact struct {
	Number   int // as printed
	Label    string
	Stitches int // with a beginning chain that counts
	Spaces   int
	Chains   int // in the spaces
	Slips    int
	Taken    int    // places of the edge below that were worked into
	Passed   int    // skipped, passed or left
	Width    Length // of the row, by the gauge; NoLength if the gauge is missing
	Height   Length // of the row
	Closed   bool   // a round
	Wrong    bool   // the wrong side faces
	Yarn     int    // the yarn most of it is made of
	Texture  Texture
	Tall     stitch.ID // its tallest stitch
	ByForm   Tally[stitch.Form]
	BySpace  Tally[int] // chain spaces by the number of their chains
	ByYarn   Tally[int] // stitches in each yarn, by its index; -1: the pattern names none
}

// FactOf is the row of a number among the rows of one size, which stand in the order of their numbers; nil if there is none. What
// it points to is not to be written to.
func FactOf(rows []RowFact, number int) *RowFact {
	i := sort.Search(len(rows), func(i int) bool { return rows[i].Number >= number })
	if i == len(rows) || rows[i].Number != number {
		return nil
	}
	return &rows[i]
}
