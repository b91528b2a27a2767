package draw

import (
	"math"

	"ovillo/render/scene"
)

// A piece that is long and thin, such as a tie, would make all others small. It is drawn shorter, with a break in its even middle,
// and so is the line that measures its length.
const (
	breakFrom = 8.0 // how many times as long as it is wide a piece must be
	breakTo   = 5.0 // how many times as long it is drawn then, at least
	breakGap  = 1.4 // between the two lines of a break, in millimetres
	breakMost = 12.0
)

// brake is a break in a patch: the line before it, and how much is left out there.
type brake struct {
	line int
	cut  float64 // centimetres
}

// breaks shortens pieces by themselves that are long and thin. Beside others they must also be longer than all of them.
func (l *layout) breaks() {
	for i, gr := range l.groups {
		longest, from := 0.0, breakMost
		for k, other := range l.groups {
			if k != i {
				b := other.bounds()
				longest, from = max(longest, b.width(), b.height()), breakFrom
			}
		}
		if len(gr.patches) != 1 {
			continue
		}
		pt := gr.patches[0]
		wide, tall := pt.pc.widest(), pt.pc.tall()
		if pt.rings || pt.pc.wedge != nil || pt.tips[0] != nil || pt.tips[1] != nil || wide <= 0 || tall < from*wide || tall < 1.6*longest {
			continue
		}
		pt.shorten(tall - max(breakTo*wide, longest))
	}
}

// shorten leaves out so much of the longest even stretch of a strip, but for a piece at each of its ends.
func (pt *patch) shorten(cut float64) {
	from, to := evenStretch(pt.pc.rows)
	keep := pt.pc.widest()
	for from < to && keep > 0 {
		keep -= pt.pc.rows[from].high
		from++
	}
	for keep = pt.pc.widest(); to > from && keep > 0; {
		to--
		keep -= pt.pc.rows[to].high
	}
	pc := *pt.pc
	pc.rows = append([]course(nil), pt.pc.rows...)
	out, mid := 0.0, (from+to)/2
	// Rows are left out from the middle of the stretch on, to both sides.
	for step := 0; out < cut && mid-step-1 >= from; step++ {
		for _, k := range [2]int{mid + step, mid - step - 1} {
			if k >= from && k < to && out < cut {
				out += pc.rows[k].high
				pc.rows[k].high = 0
			}
		}
	}
	if out <= 0 {
		return
	}
	pt.pc = &pc
	pt.strip(pt.f, pc.outwards(pt.turnEdge(0)))
	pt.brake = &brake{line: mid, cut: out}
}

// evenStretch is the longest run of rows that are alike: rows from one to another, exclusive.
func evenStretch(rows []course) (from, to int) {
	for a := 0; a < len(rows); {
		b := a + 1
		for b < len(rows) && math.Abs(rows[b].flat-rows[a].flat) < 1e-6 && rows[b].texture == rows[a].texture && rows[b].yarn == rows[a].yarn && rows[b].waves == rows[a].waves {
			b++
		}
		if b-a > to-from {
			from, to = a, b
		}
		a = b
	}
	return from, to
}

// broken draws the break of a patch over its outline.
func (p *pen) broken(pt *patch, scale float64) {
	if from, to, ok := pt.breakAcross(scale); ok {
		p.gap(from, to, breakGap/scale)
	}
}

// breakAcross is where the break of a patch runs at a scale, a little beyond its sides.
func (pt *patch) breakAcross(scale float64) (from, to vec, ok bool) {
	if pt.brake == nil || scale <= 0 {
		return vec{}, vec{}, false
	}
	c := pt.lines[pt.brake.line]
	past := c.last().sub(c.first()).unit().times(1.2 / scale)
	return c.first().sub(past), c.last().add(past), true
}

// gap wipes out what is drawn between two parallel wavy lines, and draws these.
//
// The points are in the units of the pen, and so is the width.
func (p *pen) gap(from, to vec, wide float64) {
	side := to.sub(from).unit().normal()
	wave := func(off float64) curve {
		out := curve{smooth: true}
		const steps = 8
		for i := range steps + 1 {
			t := float64(i) / steps
			out.pts = append(out.pts, from.to(to, t).add(side.times(off+0.5*wide*math.Sin(2*math.Pi*t))))
		}
		return out
	}
	a, b := wave(-wide/2), wave(wide/2)
	cmds := append(p.path(a), p.path(b.turned())...)
	for i := range cmds {
		if i > 0 && cmds[i].Op == 'M' {
			cmds[i].Op = 'L'
		}
	}
	fill := white
	p.items = append(p.items, scene.Path{Cmds: cmds, Fill: &fill})
	p.lines([]curve{a, b}, dimLine)
}

// breakLine breaks the line of a dimension between its letter and its farther end.
func (d dimension) breakLine(p *pen) {
	end := d.to
	if d.label.sub(d.from).length() > d.label.sub(d.to).length() {
		end = d.from
	}
	at, dir := d.label.to(end, 0.5), d.to.sub(d.from).unit()
	half := dir.normal().times(1.1)
	p.gap(at.sub(half), at.add(half), breakGap*0.7)
}
