package book

import (
	"ovillo/render/layout"
)

const tickTop = 0.7 // below the top of the row

// ticks draws n boxes to tick, one below the other, with their middle at x.
func (k *look) ticks(x float64, n int) layout.Box {
	var b layout.Box
	top := tickTop
	if k.tickW > k.textType.Leading-2*tickTop {
		top = (k.textType.Leading - k.tickW) / 2
	}
	inner := k.tickW - k.tickLine
	for i := range n {
		y := top + k.tickPitch*float64(i)
		b.Add(layout.Frame(x-inner/2, y+k.tickLine/2, inner, inner, k.tickLine))
		b.H = layout.Snap(y + k.tickW)
	}
	return b
}
