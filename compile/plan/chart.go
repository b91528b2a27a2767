package plan

import "ovillo/compile/stitch"

// Chart is a grid of cells as the right side looks, row 1 at the bottom. Each cell is a stitch in a yarn or, in a mesh, a
// square that is open or filled.
type Chart struct {
	Name  string
	Title Text
	Rows  [][]int // from the bottom, each from the left: the index of a yarn; in a mesh 1 for a filled square, 0 for an open one
	Mesh  Mesh
}

// Mesh is what the squares of a filet chart are made of: a stitch of Form, and Behind places to the next one. Behind is 0
// for a chart of colours.
type Mesh struct {
	Form   stitch.Form
	Behind int
}

// ChartRow says from which row of a chart a row is worked, and how that is read. Several rows that read the same are worked
// from several rows of the chart.
type ChartRow struct {
	Chart       int // index into Charts
	First, Last int // rows of the chart, from 1 at the bottom
	Read        Reading
	Seam        bool // it begins with the cell that would be read last: the one over the join of a turned round
}

// Reading is the way in which a row of a chart is read.
type Reading uint8

// The ways of reading.
const (
	FromRight Reading = iota // from right to left, as a row does that shows the right side
	FromLeft
	EitherWay // it makes no difference, and some rows do the one and some the other
)
