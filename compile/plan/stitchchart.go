package plan

import (
	"slices"

	"ovillo/compile/stitch"
)

// StitchChart is rows of a part that are drawn stitch by stitch, in symbols, because the source asks for it.
type StitchChart struct {
	Name  string
	Title Text
	Part  int // index into Parts
	// Sizes is what is drawn in each size; nil in a size that works none of the rows.
	Sizes []*Stitches
	Same  bool // every size that has the rows is drawn alike
}

// Drawn is the size that is drawn where one is shown: that one, or else the first that has the rows; -1 if none has.
func (c *StitchChart) Drawn(shown int) int {
	if shown >= 0 && shown < len(c.Sizes) && c.Sizes[shown] != nil {
		return shown
	}
	return slices.IndexFunc(c.Sizes, func(s *Stitches) bool { return s != nil })
}

// EndsIn reports whether a step works the last row that the chart shows, where the shown size is drawn.
func (c *StitchChart) EndsIn(step Step, shown int) bool {
	var first, last Nums
	switch st := step.(type) {
	case *Row:
		first, last = st.First, st.Last
	case *Block:
		first, last = st.First, st.Last
	default:
		return false
	}
	z := c.Drawn(shown)
	if z < 0 {
		return false
	}
	lines := c.Sizes[z].Lines
	n := lines[len(lines)-1].Number
	return first[z] <= n && n <= last[z]
}

// Stitches are rows of a fabric, stitch by stitch, from the bottom or from the middle outwards. A place is always one of
// Lines and one of its stitches; what lies below Lines[0] is not there.
type Stitches struct {
	// Lines are the rows. The first is what the lowest row drawn is worked into, so that every stitch above has its foot in
	// a line below it: the foundation, the ring, or the row before, which is not itself a row of the chart. Of a chain that is
	// worked along both sides its chains stand there, and behind them once more those that are met again from below, each with
	// a FootBelow in its chain; nothing else in it has feet.
	Lines []Line
	// Outward says that the rounds grow from a middle, Start says from what; else rows and rounds lie one above the other.
	Outward bool
	Start   StartKind
	// Repeat is what all rows repeat, in places of Lines[0]; a Repeat without places is none.
	Repeat ChartRepeat
	// Left is how often the repeat is left out behind the places that are drawn: the row has so many more. 0: all is drawn.
	Left int
	// Cut says that the row goes on beyond the right or the left edge of what is drawn.
	CutRight, CutLeft bool
}

// ChartRepeat is the stretch of Lines[0] that a row repeats, N places from the place From on, in the order of Lines[0], and
// how often in all.
type ChartRepeat struct{ From, N, Times int }

// Line is one row of a chart. Its stitches stand in the order of making.
type Line struct {
	Number   int      // of the row, as printed; 0 for a line that only lies below
	Wrong    bool     // the wrong side faces
	Closed   bool     // it is a round
	Joined   bool     // it is closed with a slip stitch into its first stitch
	FromLeft bool     // it is worked from left to right, as the right side shows it
	Stitches []Worked // what was made; behind the last place of Lines[0] stand none
	Counts   []Count  // that print after it, of the one size; nil where its row prints none
	Base     bool     // it lies below the rows that are drawn, to show what they are worked into
	Tall     stitch.ID
}

// WorkedKind says what something in a line is.
type WorkedKind uint8

// What stands in a line.
const (
	WorkedStitch WorkedKind = iota
	WorkedSpace             // Chains chains over nothing, with Form ch
	WorkedSlip              // a slip stitch: it is no place of the row above
	WorkedRing              // a ring that stitches go into
	WorkedEnd               // the end of a row, along an edge that is picked up
	WorkedBegin             // Chains chains at the beginning that count as no stitch: no place of the row above
)

// Worked is one thing that a row made.
type Worked struct {
	Kind   WorkedKind
	Form   stitch.Form
	Chains int // of a space, or of chains at the beginning
	// Begin is set in the stitch that the beginning chain stands for: Chains are then the chains of that.
	Begin bool
	// Feet are the places it was worked into, in the order they were taken; none for chains, and for a stitch worked into
	// a part, or a row, that is not drawn.
	Feet  []Foot
	Rides []stitch.Form // picots on it
	// Behind says of a stitch that crosses some made before it in its row that it passes behind them.
	Behind bool
	Yarn   int // -1: the pattern names none
}

// Foot is a place that something was worked into.
type Foot struct {
	Line, At int // Lines[Line].Stitches[At]
	Into     FootInto
	Chain    int // FootChain: which chain of the space, from 0 in the order of making
}

// FootInto says which side of a place is meant.
type FootInto uint8

// The sides of a place.
const (
	FootTop   FootInto = iota // a stitch or a whole space
	FootChain                 // one chain of a space
	FootGap                   // between it and the one made after it
	FootBelow                 // its other side
	FootSide                  // the side of a stitch at the end of a row
)

// Whole reports whether every stitch of the rows is drawn.
func (s *Stitches) Whole() bool { return s.Left == 0 && !s.CutLeft && !s.CutRight }

// Like reports whether two sizes are drawn alike: the same rows with the same stitches in the same places.
func (s *Stitches) Like(o *Stitches) bool {
	return s.Outward == o.Outward && s.Start == o.Start && s.CutLeft == o.CutLeft && s.CutRight == o.CutRight && s.Repeat == o.Repeat &&
		slices.EqualFunc(s.Lines, o.Lines, func(a, b Line) bool {
			return a.Number == b.Number && a.Wrong == b.Wrong && a.Closed == b.Closed && a.Joined == b.Joined && a.FromLeft == b.FromLeft && a.Base == b.Base &&
				slices.EqualFunc(a.Stitches, b.Stitches, func(a, b Worked) bool {
					return a.Kind == b.Kind && a.Form == b.Form && a.Chains == b.Chains && a.Begin == b.Begin && a.Yarn == b.Yarn && a.Behind == b.Behind &&
						slices.Equal(a.Feet, b.Feet) && slices.Equal(a.Rides, b.Rides)
				})
		})
}
