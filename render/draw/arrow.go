package draw

import "math"

// The arrow of the direction of work, in millimetres.
const (
	workHeadLong = 2.6
	workHeadWide = 3.0
	workLong     = 11.0
	workLeast    = 6.0
	workShort    = 4.4
)

// workArrow says which way a piece is worked.
type workArrow struct{ from, to vec }

// arrow finds a place for the arrow on the largest patch of the group, or beside it where it is low.
func (s *sheet) arrow() {
	pt := s.gr.largest()
	if pt.rings {
		s.radial(pt)
		return
	}
	dir := pt.worked()
	deep := pt.depths()
	all := deep[len(deep)-1] * s.scale
	long := min(workLong, all*0.4)
	if long < workLeast {
		long = min(workLeast, all*0.65) // in a low piece it is little more than its head
	}
	if long < workShort {
		s.besidePiece(dir)
		return
	}
	best, least := workArrow{}, costWall
	for _, at := range []float64{0.45, 0.35, 0.55, 0.65, 0.25, 0.75} {
		ends := pt.edgesAt(deep[len(deep)-1] * at)
		for _, x := range []float64{0.5, 0.35, 0.65, 0.25, 0.75, 0.15, 0.85} {
			mid := s.on(ends[0].to(ends[1], x))
			a := workArrow{mid.sub(dir.times(long / 2)), mid.add(dir.times(long / 2))}
			cost := 10*math.Abs(at-0.45) + 12*math.Abs(x-0.5) + s.inTheWay(a)
			if cost < least {
				best, least = a, cost
			}
		}
	}
	if least < costWall {
		s.put(best)
		return
	}
	s.besidePiece(dir)
}

// besidePiece puts the arrow at a side of the group, where nothing else stands.
func (s *sheet) besidePiece(dir vec) {
	const long, off = 7.0, 3.0
	b := s.gr.bounds()
	low, high := s.on(b.min), s.on(b.max)
	for _, x := range []float64{high.x + off, low.x - off, high.x + off + dimPitch, low.x - off - dimPitch} {
		mid := vec{x, (low.y + high.y) / 2}
		a := workArrow{mid.sub(dir.times(long / 2)), mid.add(dir.times(long / 2))}
		if s.inTheWay(a) < costWall {
			s.put(a)
			return
		}
	}
}

// radial puts the arrow of rounds that grow outwards.
func (s *sheet) radial(pt *patch) {
	outer := pt.lines[len(pt.lines)-1]
	for _, angle := range []float64{-90, 90, -30, 210} {
		sin, cos := math.Sincos(degrees(angle))
		dir := vec{cos, sin}
		edge := s.on(outer.toward(pt.f.o, dir))
		start := s.on(pt.lines[0].toward(pt.f.o, dir))
		room := edge.sub(start).length()
		from := start.to(edge, 0.25)
		a := workArrow{from, from.add(dir.times(min(room/2, workLong)))}
		if room*0.5 >= workLeast*0.7 && s.inTheWay(a) < costWall {
			s.put(a)
			return
		}
	}
}

func (s *sheet) put(a workArrow) {
	s.arrows = append(s.arrows, a)
	s.board.blocks = append(s.board.blocks, a.box())
}

// inTheWay is what it would cost to put the arrow somewhere.
func (s *sheet) inTheWay(a workArrow) float64 {
	room, sum := a.box().grown(0.8), 0.0
	sum += costWall * float64(struck(room, s.board.walls)+struck(room, s.board.inner)+struck(room, s.board.lines))
	for _, l := range s.board.labels {
		if room.overlaps(l) {
			sum += costWall
		}
	}
	return sum
}

func (a workArrow) box() box {
	var b box
	side := a.to.sub(a.from).unit().normal().times(workHeadWide / 2)
	for _, p := range [2]vec{a.from, a.to} {
		b.add(p.add(side))
		b.add(p.sub(side))
	}
	return b
}

func (a workArrow) draw(p *pen) {
	dir := a.to.sub(a.from).unit()
	p.line(straight(a.from, a.to.sub(dir.times(workHeadLong*0.8))), workWide)
	p.head(a.to, dir, workHeadLong, workHeadWide)
}
