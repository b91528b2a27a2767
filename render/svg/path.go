package svg

import (
	"bufio"

	"ovillo/render/page"
)

// trace writes the steps of paths, each from where the one before ended, which is shorter than from the corner of the picture. It
// goes by the rounded places, so that nothing drifts.
type trace struct {
	x, y   int  // where the pen is, in hundredths
	mx, my int  // where this outline began
	last   byte // the step written last, which need not be named again; 0: none
	begun  bool
}

// cmds writes steps of a path.
func (t *trace) cmds(w *bufio.Writer, cmds []page.Cmd) {
	for _, c := range cmds {
		p := [3][2]int{}
		for k := range points(c.Op) {
			p[k] = [2]int{hundred(c.P[k].X), hundred(c.P[k].Y)}
		}
		t.step(w, c.Op, p)
	}
}

func (t *trace) step(w *bufio.Writer, op byte, p [3][2]int) {
	if op == 'Z' {
		w.WriteByte('z')
		t.x, t.y, t.last = t.mx, t.my, 'z'
		return
	}
	n := points(op)
	if n == 0 {
		return
	}
	end := p[n-1]
	dx, dy := end[0]-t.x, end[1]-t.y
	switch {
	case op == 'M' && !t.begun:
		t.write(w, 'M', end[0], end[1]) // the first step of a path stands from the corner
		t.begun = true
	case op == 'M':
		t.write(w, 'm', dx, dy)
	case op == 'L' && dy == 0:
		t.write(w, 'h', dx)
	case op == 'L' && dx == 0:
		t.write(w, 'v', dy)
	case op == 'L':
		t.write(w, 'l', dx, dy)
	default:
		var all []int
		for _, q := range p[:n] {
			all = append(all, q[0]-t.x, q[1]-t.y)
		}
		t.write(w, op|0x20, all...)
	}
	t.x, t.y = end[0], end[1]
	if op == 'M' {
		t.mx, t.my = t.x, t.y
	}
}

// write writes a step. Its letter is left out where it is the one before, but for a move, behind which numbers are lines.
func (t *trace) write(w *bufio.Writer, op byte, numbers ...int) {
	named := op != t.last || op == 'm' || op == 'M'
	if named {
		w.WriteByte(op)
	}
	for i, n := range numbers {
		if (i > 0 || !named) && n >= 0 {
			w.WriteByte(' ')
		}
		w.Write(hundredths(w.AvailableBuffer(), n))
	}
	t.last = op
}

// points is how many points a step of a path has.
func points(op byte) int {
	switch op {
	case 'M', 'L':
		return 1
	case 'Q':
		return 2
	case 'C':
		return 3
	}
	return 0
}
