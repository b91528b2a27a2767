package draw

import (
	"math"

	"ovillo/render/page"
	"ovillo/render/scene"
)

// The lines of the schematic, in millimetres.
const (
	dimLine   = 0.18
	arrowLong = 1.5
	arrowWide = 0.84
	extGap    = 1.0 // between the piece and an extension line
	extPast   = 1.0 // of an extension line beyond the dimension line
	dimOff    = 4.0 // of the first dimension line from the piece
	dimPitch  = 6.0
	letterEm  = 4.0 // of the letters
	letterGap = 5.0 // in the line, for a letter
	shortLine = 8.6 // below this a line has no room for its letter and arrows
	tail      = 4.0 // of an arrow that points at a short distance from outside
)

// dimension is a dimension line on paper, in millimetres.
type dimension struct {
	letter   string
	from, to vec
	ext      [][2]vec // extension lines
	label    vec      // middle of the letter
	beside   bool     // the letter stands beyond an end and not in the line
	lead     float64  // of the line towards that letter
	aside    bool     // the letter stands at one side of the line
	outside  bool     // the arrows point at the distance from outside
	cut      float64  // centimetres by which the line is shorter than what it measures, since the piece is broken there
	ring     float64  // radius: the line runs once round, from may be any point on it
	middle   vec      // of that ring
	upright  int      // -1 or +1: an upright line at that side of the piece
	cost     float64
}

// inLine puts the letter in the line, a part t of the way along. A line too short for that has its letter beyond its
// end.
func (d dimension) inLine(t float64) dimension {
	l := d.to.sub(d.from).length()
	if l < shortLine {
		return d.beyond(true)
	}
	room := (letterGap/2 + arrowLong + 0.5) / l
	d.label = d.from.to(d.to, clamp(t, room, 1-room))
	return d
}

// beyond puts the letter beyond an end of the line.
func (d dimension) beyond(after bool) dimension { return d.farBeyond(after, 0) }

// farBeyond puts it so many letters further away, where others stand already.
func (d dimension) farBeyond(after bool, letters int) dimension {
	dir, at := d.to.sub(d.from).unit(), d.to
	if !after {
		dir, at = dir.times(-1), d.from
	}
	d.beside = true
	d.outside = d.to.sub(d.from).length() < 2*arrowLong+2
	lead := 1.0
	if d.outside {
		lead = tail
	}
	d.lead = lead + letterGap*float64(letters)
	d.label = at.add(dir.times(d.lead + letterGap/2))
	return d
}

// asideAt puts the letter at one side of the line, which then runs through.
func (d dimension) asideAt(t float64, out vec) dimension {
	d.aside = true
	d.label = d.from.to(d.to, t).add(out.times(letterGap/2 + 0.4))
	return d
}

// strokes are the straight lines that the dimension line is made of.
func (d dimension) strokes() [][2]vec {
	if d.ring > 0 {
		return d.roundStrokes()
	}
	dir := d.to.sub(d.from).unit()
	switch {
	case d.aside:
		return [][2]vec{{d.from, d.to}}
	case d.outside:
		before, after := d.from.sub(dir.times(tail)), d.to.add(dir.times(tail))
		if d.label.sub(d.to).dot(dir) > 0 {
			after = d.to.add(dir.times(d.lead))
		} else {
			before = d.from.sub(dir.times(d.lead))
		}
		return [][2]vec{{before, d.from}, {d.from, d.to}, {d.to, after}}
	case d.beside:
		if d.label.sub(d.to).dot(dir) > 0 {
			return [][2]vec{{d.from, d.to.add(dir.times(d.lead))}}
		}
		return [][2]vec{{d.from.sub(dir.times(d.lead)), d.to}}
	}
	half := d.opening(dir)
	return [][2]vec{{d.from, d.label.sub(dir.times(half))}, {d.label.add(dir.times(half)), d.to}}
}

// opening is half the gap in a line of a direction that a letter needs.
func (d dimension) opening(dir vec) float64 {
	wide := letterGap + letterEm*0.6*float64(len([]rune(d.letter))-1)
	// The gap is a box: an upright line needs its height, a level one its width.
	return 0.5 * min(wide/max(math.Abs(dir.x), 1e-6), letterGap/max(math.Abs(dir.y), 1e-6))
}

// box is the room of the letter.
func (d dimension) box() box {
	half := vec{letterEm * (0.42 + 0.3*float64(len([]rune(d.letter))-1)), letterEm * 0.42}
	return box{d.label.sub(half), d.label.add(half), true}
}

// draw adds the dimension to a drawing.
func (d dimension) draw(p *pen) {
	for _, e := range d.ext {
		p.line(straight(e[0], e[1]), dimLine)
	}
	for _, s := range d.strokes() {
		p.line(straight(s[0], s[1]), dimLine)
	}
	if d.cut > 0 {
		d.breakLine(p)
	}
	for _, h := range d.heads() {
		p.head(h[0], h[1], arrowLong, arrowWide)
	}
	at := p.on(d.label)
	p.items = append(p.items, scene.Label{X: at.x, Y: at.y, Text: d.letter, Height: letterEm, Face: page.SerifBold})
}

// heads are the points of the arrows and their directions.
func (d dimension) heads() [][2]vec {
	if d.ring > 0 {
		return d.roundHeads()
	}
	dir := d.to.sub(d.from).unit()
	if d.outside {
		dir = dir.times(-1)
	}
	return [][2]vec{{d.from, dir.times(-1)}, {d.to, dir}}
}

// head draws a solid arrowhead that ends in a point.
func (p *pen) head(at, dir vec, long, wide float64) {
	base := at.sub(dir.times(long))
	side := dir.normal().times(wide / 2)
	p.area(black, straight(at, base.add(side), base.sub(side)))
}

// The circle of a dimension that runs once round opens for its letter at this angle, to the right and up.
const roundAt = -math.Pi / 4

func (d dimension) onRing(angle float64) vec {
	sin, cos := math.Sincos(angle)
	return d.middle.add(vec{cos, sin}.times(d.ring))
}

// open is half the angle that the circle leaves for the letter.
func (d dimension) open() float64 { return min(letterGap/2/d.ring, 1) }

func (d dimension) roundStrokes() [][2]vec {
	const steps = 90
	from, to := roundAt+d.open(), roundAt+2*math.Pi-d.open()
	var out [][2]vec
	for i := range steps {
		a, b := from+(to-from)*float64(i)/steps, from+(to-from)*float64(i+1)/steps
		out = append(out, [2]vec{d.onRing(a), d.onRing(b)})
	}
	return out
}

func (d dimension) roundHeads() [][2]vec {
	tangent := func(a, way float64) vec { return vec{-math.Sin(a), math.Cos(a)}.times(way) }
	a, b := roundAt+d.open(), roundAt-d.open()
	return [][2]vec{{d.onRing(a), tangent(a, -1)}, {d.onRing(b), tangent(b, 1)}}
}
