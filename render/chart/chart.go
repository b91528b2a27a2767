package chart

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/page"
)

// Chart is where the stitches of a chart stand.
type Chart struct {
	Lines   []Line // one for each line of the plan
	Outward bool
	// Arrow is where an arrow shows the direction of work, its middle, and Way that direction, of length 1: before the first row,
	// over the beginning of the last round.
	Arrow, Way page.Point
	Repeat     *Repeat // nil: none is shown
	Min, Max   page.Point
}

// Line is one row.
type Line struct {
	Stitches []Stitch // one for each that the plan has
	// Begin is where the number of the row stands, End where its count does, and Way is the direction of work at its beginning,
	// of length 1. In rows a text begins there and runs away from the row; in rounds its middle stands there.
	Begin, End, Way page.Point
	Join            *page.Point // where the slip stitch lies that closes the round; nil: none, or the line has it as a stitch
}

// Stitch is where one thing of a row stands.
type Stitch struct {
	Head page.Point
	Up   page.Point // from the row below to the row above, of length 1
	// Feet are where the stems begin, clear of what they stand on. Stitches worked into one place share a foot, unless the
	// place is a chain space.
	Feet   []page.Point
	Room   float64 // how far the nearest neighbour in the row is
	Shared bool    // another stitch of the row has the same foot, or this one has several
	// Ovals are the chains of a space, of a beginning, and of a stitch that makes its own chain. Many is then how many they
	// are where too little room is left to draw them one by one: Ovals are the ends and the middle of their arc.
	Ovals []Oval
	Many  int
	// Broken are the places where a stem that lies behind others is crossed by them, each as a part of the way from the head
	// to the foot.
	Broken []float64
}

// Oval is one chain: its middle, the direction it lies in, of length 1, and how long it is.
type Oval struct {
	At, Along page.Point
	Long      float64
}

// Repeat is how the repeat of a chart is marked: a line on either side of it, and a bracket from one to the other.
type Repeat struct {
	Sides    [2][2]page.Point
	Bracket  []page.Point
	Label    page.Point
	N, Times int
}

// Distances between things, in units of a single crochet.
const (
	flatPitch  = 1.08 // between stitches in rows
	fanPitch   = 0.86 // part of that between stitches that share a foot
	roundPitch = 1.0  // least between stitches in rounds, which have more as a rule
	chainPitch = 0.9  // of chains beside a stitch
	chainLong  = 0.77 // of a chain's oval
	chainHigh  = 0.42 // its thickness
	cornerLong = 0.62 // of the oval of a chain beside a corner, so that two of them do not meet there
	beginPitch = 0.8
	ovalBegin  = 0.22 // how far behind its place the chain at the beginning of an oval stands, where the first stitch has room
	slipPitch  = 0.42
	footClear  = 0.17 // between a foot and what it stands on
	slipClear  = 0.32 // of a slip stitch over what it lies on
	postClear  = 0.46 // with the hook of a post stitch
	loopClear  = 0.40 // with the arc of a loop
	ringRadius = 0.62 // of a ring
	joinRoom   = 0.36 // more between the last and the first stitch of a round, for the slip stitch that joins it
	besideText = 0.28 // between a number and what stands beside it
	digitWide  = 0.56 // of a digit, in heights of its type
)

// Lay lays out a chart; nil if there is nothing to lay out. Tall says how tall a stitch is that the table of stitches does not have, em how
// high the type of the numbers is.
func Lay(s *plan.Stitches, tall func(stitch.ID) float64, em float64) *Chart {
	if s == nil || len(s.Lines) == 0 {
		return nil
	}
	laid, at := turned(s)
	l := newLayout(laid, tall, em)
	l.turned = at
	for i := range laid.Lines {
		l.line(i)
	}
	if _, ok := l.frame.(flat); ok {
		l.frame = flat{l.bent()}
	}
	c := l.chart()
	for i, at := range at {
		if at == nil {
			continue
		}
		list := make([]Stitch, len(at))
		for k, pos := range at {
			list[k] = c.Lines[i].Stitches[pos]
		}
		c.Lines[i].Stitches = list
	}
	return c
}

// Height is how tall a stitch stands in a chart.
func (l *layout) height(f stitch.Form) float64 {
	k, known := stitch.Of(f.ID)
	switch {
	case !known && l.tall != nil:
		return max(l.tall(f.ID), 0.5)
	case !known:
		return 1
	case f.Group == stitch.Popcorn:
		return k.Height + 0.25
	case k.Height == 0:
		return chainHigh // a chain
	}
	return k.Height
}
