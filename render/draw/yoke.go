package draw

import "math"

// The angles between the axis of a sleeve and that of the body.
const (
	sleeveLeast = 25.0
	sleeveMost  = 42.0
	thumb       = 40.0
)

// shoulder is one side of a yoke in the frame of its edge, for the right side.
type shoulder struct {
	neck  vec     // where it begins
	tip   vec     // upper corner of the sleeve
	under vec     // underarm
	top   float64 // half the width that belongs to the body where the yoke begins
	angle float64
}

// yoke lays a piece that goes on in the middle and has tubes at its sides: body and sleeves, or hand and thumb. The frame
// stands on the edge where they part.
func (t *table) yoke(pt *patch, middle limb, sides []limb, f frame) {
	s := pt.pc.outwards(startEdge)
	if pt.lineAt(f) != len(pt.lines)-1 {
		s = s.reversed()
	}
	from, sum := s.grows(), 0.0
	deep := s.depths()
	n := len(deep) - 1
	high := deep[n] - deep[from]
	for _, m := range sides {
		sum += m.wide
	}
	fits := (s.widths[n]-middle.wide) > 0.5*sum && high > 0
	var done [2]bool
	for _, m := range sides {
		at := (m.side + 1) / 2
		if done[at] {
			continue // a second tube at this side has no place of its own
		}
		done[at] = true
		if !fits {
			t.slit(middle, m, f)
			continue
		}
		sh := meetAt(s.widths[from]/2, middle.wide/2, high, m.wide)
		sh.top = s.widths[from] / 2 * t.g.bodyShare(pt, middle, sides)
		t.sleeve(m, sh, f)
		pt.shoulder(f, sh, from, deep, float64(m.side))
	}
	if !t.g.isRaglan(pt.pc.part) {
		pt.blend(f)
	}
	pt.forks[pt.end(f)], pt.yoke[pt.end(f)] = fits, fits
	t.lay(middle.ending, f).forks[0] = fits
	for _, m := range sides {
		if !t.drawn[m.piece] {
			t.limb(m, f.moved(float64(m.side)*middle.wide/2, 0))
		}
	}
}

// grows is the number of the line from which a shape widens towards its far edge, so that the even rows of a neckband
// are not drawn into the yoke.
func (s shape) grows() int {
	const short = 2 // centimetres that may as well be part of the yoke
	from := 0
	for k := 1; k < len(s.widths)-1 && s.widths[k] <= s.widths[0]*1.02; k++ {
		from = k
	}
	if s.depths()[from] < short {
		return 0
	}
	return from
}

// meetAt finds the corner of a sleeve that is as far from the underarm as the sleeve is wide, and as far from the neck
// as the yoke is high. y is 0 where yoke and body part, negative above.
func meetAt(neck, body, high, sleeve float64) shoulder {
	sh := shoulder{neck: vec{neck, -high}, under: vec{body, 0}}
	line := sh.under.sub(sh.neck)
	l := line.length()
	angle := degrees((sleeveLeast + sleeveMost) / 2)
	if along := (l*l + high*high - sleeve*sleeve) / (2 * l); l > 0 && math.Abs(along) < high {
		// The corner lies on the outer side of the line from neck to underarm.
		off := math.Sqrt(high*high - along*along)
		dir := line.unit()
		tip := sh.neck.add(dir.times(along)).add(vec{dir.y, -dir.x}.times(off))
		angle = math.Atan2(sh.under.y-tip.y, tip.x-sh.under.x)
	} else if high+l <= sleeve {
		angle = degrees(sleeveMost)
	}
	sh.angle = clamp(angle, degrees(sleeveLeast), degrees(sleeveMost))
	sin, cos := math.Sincos(sh.angle)
	sh.tip = sh.under.add(vec{cos * sleeve, -sin * sleeve})
	return sh
}

// sleeve lays a tube between underarm and shoulder.
func (t *table) sleeve(m limb, sh shoulder, f frame) {
	side := float64(m.side)
	mid := sh.under.to(sh.tip, 0.5)
	t.limb(m, f.swung(side*mid.x, mid.y, side*sh.angle)).forks[0] = true
}

// shoulder bends one half of the lines of a yoke over the shoulder.
func (pt *patch) shoulder(f frame, sh shoulder, from int, deep []float64, side float64) {
	n := len(deep) - 1
	high := deep[n] - deep[from]
	near := pt.lineAt(f) == 0
	seam := curve{}
	for k := from; k <= n; k++ {
		done := (deep[k] - deep[from]) / high
		seamAt := vec{sh.top, -high}.to(sh.under, done)
		fold := sh.neck.to(sh.tip, done)
		i := k
		if near {
			i = n - k
		}
		half := []vec{f.at(0, (done-1)*high), f.at(side*seamAt.x, seamAt.y), f.at(side*fold.x, fold.y)}
		pt.lines[i] = pt.lines[i].replaced(half, side)
		seam.pts = append(seam.pts, half[1])
	}
	seam.pts = slim(seam.pts, 0.01)
	pt.seams = append(pt.seams, seam)
}

// blend makes the rounds of a yoke that grows evenly all round run smoothly over the shoulders; the last one keeps its
// corners at the underarms.
func (pt *patch) blend(f frame) {
	pt.seams = nil
	end := pt.lineAt(f)
	for k, c := range pt.lines {
		if k != end && len(c.pts) == 5 {
			pt.lines[k] = c.cut()
		}
	}
}

// replaced is the curve with its left or right half replaced; half runs from the middle outwards.
func (c curve) replaced(half []vec, side float64) curve {
	var other []vec
	if len(c.pts) == 5 {
		other = c.pts[3:]
		if side > 0 {
			other = []vec{c.pts[1], c.pts[0]}
		}
	} else {
		end := c.first()
		if side < 0 {
			end = c.last()
		}
		other = []vec{half[0].to(end, 0.5), end}
	}
	if side > 0 {
		return straight(other[1], other[0], half[0], half[1], half[2])
	}
	return straight(half[2], half[1], half[0], other[0], other[1])
}

// slit lays a tube on the opening left at the side of a piece that stays as wide: its upper edge runs back to that side.
func (t *table) slit(middle, m limb, f frame) {
	side := float64(m.side)
	sin, cos := math.Sincos(degrees(thumb))
	under := vec{middle.wide / 2, 0}
	mid := under.add(vec{cos, -sin}.times(m.wide / 2))
	child := t.limb(m, f.swung(side*mid.x, mid.y, side*degrees(thumb)))
	child.forks[0] = true
	first := child.near()
	back := f.at(side*under.x, under.y-m.wide/sin)
	if side > 0 {
		first = straight(first.first(), back)
	} else {
		first = straight(back, first.last())
	}
	child.lines[child.turn(0)] = first
}
