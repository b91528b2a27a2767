package draw

import "math"

// vec is a point or a direction. The model reckons in centimetres of fabric, a scene in millimetres of paper; y runs
// downwards in both.
type vec struct{ x, y float64 }

func (a vec) add(b vec) vec           { return vec{a.x + b.x, a.y + b.y} }
func (a vec) sub(b vec) vec           { return vec{a.x - b.x, a.y - b.y} }
func (a vec) times(k float64) vec     { return vec{a.x * k, a.y * k} }
func (a vec) dot(b vec) float64       { return a.x*b.x + a.y*b.y }
func (a vec) length() float64         { return math.Sqrt(a.x*a.x + a.y*a.y) }
func (a vec) to(b vec, t float64) vec { return a.add(b.sub(a).times(t)) }

// unit is the direction of a; that of no length points right, so that a drawing never holds a number that is none.
func (a vec) unit() vec {
	l := a.length()
	if l < 1e-12 {
		return vec{1, 0}
	}
	return a.times(1 / l)
}

// normal is a turned a quarter, from right to down.
func (a vec) normal() vec { return vec{-a.y, a.x} }

// frame is a place and two directions: across the fabric, always towards the reader's right as far as the piece hangs
// straight, and along it, away from what it hangs on.
type frame struct{ o, across, along vec }

func (f frame) at(x, s float64) vec { return f.o.add(f.across.times(x)).add(f.along.times(s)) }

// out is a vector of the frame without its place.
func (f frame) out(x, s float64) vec { return f.across.times(x).add(f.along.times(s)) }

// moved is the frame with its origin at a point of its own.
func (f frame) moved(x, s float64) frame { f.o = f.at(x, s); return f }

// swung is the frame with its origin at a point of its own and turned by an angle, from along towards across.
func (f frame) swung(x, s, angle float64) frame {
	sin, cos := math.Sincos(angle)
	return frame{o: f.at(x, s), across: f.out(cos, -sin), along: f.out(sin, cos)}
}

// box is an upright rectangle; the zero box is empty.
type box struct {
	min, max vec
	full     bool
}

func (b *box) add(p vec) {
	if !b.full {
		*b = box{p, p, true}
		return
	}
	b.min = vec{min(b.min.x, p.x), min(b.min.y, p.y)}
	b.max = vec{max(b.max.x, p.x), max(b.max.y, p.y)}
}

func (b *box) join(c box) {
	if c.full {
		b.add(c.min)
		b.add(c.max)
	}
}

func (b box) width() float64  { return b.max.x - b.min.x }
func (b box) height() float64 { return b.max.y - b.min.y }
func (b box) middle() vec     { return b.min.to(b.max, 0.5) }

// grown is the box with a margin all round.
func (b box) grown(m float64) box {
	return box{b.min.sub(vec{m, m}), b.max.add(vec{m, m}), b.full}
}

// inset is the box without a margin as wide and as high as a vector is.
func (b box) inset(d vec) box {
	m := vec{math.Abs(d.x), math.Abs(d.y)}
	return box{b.min.add(m), b.max.sub(m), b.full}
}

// within is the point of a box that is nearest to one; the middle in a direction in which the box has no room.
func (a vec) within(b box) vec {
	near := func(v, lo, hi float64) float64 {
		if lo > hi {
			return (lo + hi) / 2
		}
		return clamp(v, lo, hi)
	}
	return vec{near(a.x, b.min.x, b.max.x), near(a.y, b.min.y, b.max.y)}
}

func (b box) overlaps(c box) bool {
	return b.full && c.full && b.min.x < c.max.x && c.min.x < b.max.x && b.min.y < c.max.y && c.min.y < b.max.y
}

// meets reports whether a line from p to q runs through the box.
func (b box) meets(p, q vec) bool {
	if !b.full {
		return false
	}
	if max(p.x, q.x) < b.min.x || min(p.x, q.x) > b.max.x || max(p.y, q.y) < b.min.y || min(p.y, q.y) > b.max.y {
		return false // most lines are far away
	}
	lo, hi := 0.0, 1.0
	d := q.sub(p)
	for _, side := range [4][2]float64{{-d.x, p.x - b.min.x}, {d.x, b.max.x - p.x}, {-d.y, p.y - b.min.y}, {d.y, b.max.y - p.y}} {
		switch dir, room := side[0], side[1]; {
		case dir == 0 && room <= 0:
			return false
		case dir < 0:
			lo = max(lo, room/dir)
		case dir > 0:
			hi = min(hi, room/dir)
		}
	}
	return lo < hi
}

// cross reports whether two lines cross; lines that only touch do not.
func cross(a, b, c, d vec) bool {
	side := func(p, q, r vec) float64 { return q.sub(p).normal().dot(r.sub(p)) }
	const touch = 1e-9
	ab := side(a, b, c) * side(a, b, d)
	cd := side(c, d, a) * side(c, d, b)
	return ab < -touch && cd < -touch
}

func clamp(v, lo, hi float64) float64 { return max(lo, min(hi, v)) }

func degrees(d float64) float64 { return d * math.Pi / 180 }
