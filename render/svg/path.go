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
func (t *trace) cmds(w *bufio.Writer, cmds []page.Cmd) { w.Write(t.append(w.AvailableBuffer(), cmds)) }

// append writes steps of a path behind b.
func (t *trace) append(b []byte, cmds []page.Cmd) []byte {
	for _, c := range cmds {
		p := [3][2]int{}
		for k := range points(c.Op) {
			p[k] = [2]int{hundred(c.P[k].X), hundred(c.P[k].Y)}
		}
		b = t.step(b, c.Op, p)
	}
	return b
}

func (t *trace) step(b []byte, op byte, p [3][2]int) []byte {
	if op == 'Z' {
		t.x, t.y, t.last = t.mx, t.my, 'z'
		return append(b, 'z')
	}
	n := points(op)
	if n == 0 {
		return b
	}
	end := p[n-1]
	dx, dy := end[0]-t.x, end[1]-t.y
	switch {
	case op == 'M' && !t.begun:
		b = t.write(b, 'M', end[0], end[1]) // the first step of a path stands from the corner
		t.begun = true
	case op == 'M':
		b = t.write(b, 'm', dx, dy)
	case op == 'L' && dy == 0:
		b = t.write(b, 'h', dx)
	case op == 'L' && dx == 0:
		b = t.write(b, 'v', dy)
	case op == 'L':
		b = t.write(b, 'l', dx, dy)
	default:
		var all [6]int
		for k, q := range p[:n] {
			all[2*k], all[2*k+1] = q[0]-t.x, q[1]-t.y
		}
		b = t.write(b, op|0x20, all[:2*n]...)
	}
	t.x, t.y = end[0], end[1]
	if op == 'M' {
		t.mx, t.my = t.x, t.y
	}
	return b
}

// write writes a step. Its letter is left out where it is the one before, but for a move, behind which numbers are lines.
func (t *trace) write(b []byte, op byte, numbers ...int) []byte {
	named := op != t.last || op == 'm' || op == 'M'
	if named {
		b = append(b, op)
	}
	for i, n := range numbers {
		if (i > 0 || !named) && n >= 0 {
			b = append(b, ' ')
		}
		b = hundredths(b, n)
	}
	t.last = op
	return b
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
