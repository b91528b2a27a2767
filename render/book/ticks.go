package book

import (
	"ovillo/render/layout"
)

const (
	tickW     = 3.6  // outside
	tickLine  = 0.22 // its line
	tickTop   = 0.7  // below the top of the row
	tickPitch = 4.5
)

// ticks draws n boxes to tick, one below the other, with their middle at x.
func ticks(x float64, n int) layout.Box {
	var b layout.Box
	inner := tickW - tickLine
	for i := range n {
		y := tickTop + tickPitch*float64(i)
		b.Add(layout.Frame(x-inner/2, y+tickLine/2, inner, inner, tickLine))
		b.H = layout.Snap(y + tickW)
	}
	return b
}
