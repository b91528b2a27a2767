package chart

import (
	"math"

	"ovillo/render/page"
)

// A frame is where a row lies. s is a place along the row as long as the row is at the distance that is given with it; v is how far
// a point is from the start of the work.
type frame interface {
	// length is how long a round is at a distance; infinite where rows do not close.
	length(v float64) float64
	// least is the distance at which a round is so long.
	least(length float64) float64
	// carry takes a place along the row at one distance to the row at another.
	carry(s, from, to float64) float64
	// at is the point over the place s of the row at the distance nominal, and the direction away from the start there.
	at(s, nominal, v float64) (p, up page.Point)
}

// flat is rows one above the other, straight or waving.
type flat struct{ bend *bend }

func (flat) length(float64) float64        { return math.Inf(1) }
func (flat) least(float64) float64         { return 0 }
func (flat) carry(s, _, _ float64) float64 { return s }

func (f flat) at(s, _, v float64) (p, up page.Point) {
	high, slope := f.bend.at(s)
	return page.Point{X: -s, Y: -v - high}, unit(page.Point{X: slope, Y: -1}, page.Point{Y: -1})
}

// disc is rounds about a point. s is 0 at the top.
type disc struct{}

func (disc) length(v float64) float64     { return 2 * math.Pi * v }
func (disc) least(length float64) float64 { return length / (2 * math.Pi) }
func (disc) carry(s, from, to float64) float64 {
	if from < 1e-9 {
		return s
	}
	return s * to / from
}

func (disc) at(s, nominal, v float64) (p, up page.Point) {
	sin, cos := math.Sincos(s / math.Max(nominal, 1e-9))
	up = page.Point{X: -sin, Y: -cos}
	return times(up, v), up
}

// oval is rounds about a segment from (-half, 0) to (half, 0). s is 0 at its right end.
type oval struct{ half float64 }

func (o oval) length(v float64) float64     { return 4*o.half + 2*math.Pi*v }
func (o oval) least(length float64) float64 { return max(0, (length-4*o.half)/(2*math.Pi)) }

// stretch is which of its five stretches a place is on, and how far: along a side in units, along an arc as an angle. Three arcs and
// two sides by turns, the first and the last being halves of one.
func (o oval) stretch(s, v float64) (turns float64, k int, t float64) {
	length := o.length(v)
	turns = math.Floor(s / length)
	s -= turns * length
	for k, long := range [5]float64{math.Pi / 2 * v, 2 * o.half, math.Pi * v, 2 * o.half, math.Pi / 2 * v} {
		if s <= long || k == 4 {
			if k%2 == 0 {
				s /= math.Max(v, 1e-9)
			}
			return turns, k, s
		}
		s -= long
	}
	return turns, 0, 0
}

func (o oval) carry(s, from, to float64) float64 {
	turns, k, t := o.stretch(s, from)
	out := turns * o.length(to)
	if k%2 == 0 {
		t *= to
	}
	long := [5]float64{math.Pi / 2 * to, 2 * o.half, math.Pi * to, 2 * o.half}
	for _, one := range long[:k] {
		out += one
	}
	return out + t
}

func (o oval) at(s, nominal, v float64) (p, up page.Point) {
	_, k, t := o.stretch(s, nominal)
	switch k {
	case 1:
		return page.Point{X: o.half - t, Y: -v}, page.Point{Y: -1}
	case 3:
		return page.Point{X: t - o.half, Y: v}, page.Point{Y: 1}
	}
	middle := page.Point{X: o.half}
	angle := t // counterclockwise from the right
	switch k {
	case 2:
		middle.X, angle = -o.half, t+math.Pi/2
	case 4:
		angle = t - math.Pi/2
	}
	sin, cos := math.Sincos(angle)
	up = page.Point{X: cos, Y: -sin}
	return plus(middle, times(up, v)), up
}

// sides is rounds of so many straight sides about a point; v is the distance of a side. s is 0 in the middle of the side on top.
type sides struct{ n int }

func (f sides) half(v float64) float64   { return v * math.Tan(math.Pi/float64(f.n)) }
func (f sides) length(v float64) float64 { return 2 * float64(f.n) * f.half(v) }
func (f sides) least(length float64) float64 {
	return length / (2 * float64(f.n) * math.Tan(math.Pi/float64(f.n)))
}

// corner is the place of corner number c, counterclockwise from that at the left end of the side on top.
func (f sides) corner(c int, v float64) float64 { return f.half(v) * float64(2*c+1) }

// nearest is the number of the corner nearest to a place.
func (f sides) nearest(s, v float64) int {
	return int(math.Round((s/math.Max(f.half(v), 1e-9) - 1) / 2))
}

// side is which side a place is on, and how far from its middle.
func (f sides) side(s, v float64) (j, t float64) {
	half := math.Max(f.half(v), 1e-9)
	j = math.Floor((s + half) / (2 * half))
	return j, s - j*2*half
}

func (f sides) carry(s, from, to float64) float64 {
	j, t := f.side(s, from)
	half := f.half(to)
	return j*2*half + min(max(t, -half), half)
}

func (f sides) at(s, nominal, v float64) (p, up page.Point) {
	j, t := f.side(s, nominal)
	half := math.Max(f.half(nominal), 1e-9)
	// On a side a stitch stays abreast at every height; towards a corner it keeps to the corner.
	near := t / half
	t += near * near * near * (f.half(v) - half)
	sin, cos := math.Sincos(2 * math.Pi * j / float64(f.n))
	up = page.Point{X: -sin, Y: -cos}
	along := page.Point{X: -cos, Y: sin}
	p = plus(times(up, v), times(along, t))
	// Beside the corner the direction turns towards it.
	const reach = 0.9
	if gap := half - math.Abs(t); gap < reach {
		turn := math.Pi / float64(f.n) * (1 - max(gap, 0)/reach)
		s, c := math.Sincos(math.Copysign(turn, t))
		up = plus(times(up, c), times(along, s))
	}
	return p, up
}
