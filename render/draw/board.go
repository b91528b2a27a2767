package draw

// board is what stands on a sheet already, in millimetres.
type board struct {
	walls  [][2]vec // the lines of the piece itself
	inner  [][2]vec // ribs, which letters keep off but lines may cross
	lines  [][2]vec // dimension and extension lines
	mains  [][2]vec // dimension lines alone
	labels []box
	blocks []box       // an arrow of the direction of work
	sides  map[int]int // upright dimension lines at each side
}

// What it costs to draw a dimension badly.
const (
	costLetters  = 1000.0 // a letter on a letter or on a line
	costWall     = 400.0  // a letter on a line of the piece
	costCross    = 20.0   // a dimension line across another
	costBarred   = 14.0   // an extension line across a line of the piece
	costCrowd    = 4.0    // one more upright line at the same side
	costCrossing = 16.0   // a dimension line across a line of the piece
	costClose    = 60.0   // two dimension lines side by side without room
	costAlong    = 20.0   // a dimension line on a line of the piece
)

// cost judges a dimension by what it would run into. From most on it does not look further: the dimension is too dear.
func (b *board) cost(d *dimension, most float64) float64 {
	sum := d.cost
	room := d.box().grown(0.4)
	for _, l := range b.labels {
		if room.overlaps(l) {
			sum += costLetters
		}
	}
	for _, k := range b.blocks {
		if room.overlaps(k) {
			sum += costLetters
		}
	}
	sum += costLetters * float64(struck(room, b.lines))
	sum += costWall * float64(min(struck(room, b.walls)+struck(room, b.inner), 2))
	if d.upright != 0 {
		sum += costCrowd * float64(b.sides[d.upright])
	}
	if sum >= most {
		return sum
	}
	strokes := d.strokes()
	sum += costCrossing*float64(crossings(strokes, b.walls)) + costBarred*float64(crossings(d.ext, b.walls))
	if sum >= most {
		return sum
	}
	own := append(append(make([][2]vec, 0, len(strokes)+len(d.ext)), strokes...), d.ext...)
	for _, o := range own {
		for _, l := range b.labels {
			if l.grown(0.4).meets(o[0], o[1]) {
				sum += costLetters
			}
		}
		for _, k := range b.blocks {
			if k.meets(o[0], o[1]) {
				sum += costWall
			}
		}
	}
	sum += costCross * float64(crossings(own, b.lines))
	if sum >= most {
		return sum
	}
	for _, o := range strokes {
		for _, m := range b.mains {
			sum += costClose * closeness(o, m, 2.5)
		}
		sum += costAlong * hugging(o, b.walls)
	}
	return sum
}

func struck(room box, lines [][2]vec) int {
	n := 0
	for _, l := range lines {
		if room.meets(l[0], l[1]) {
			n++
		}
	}
	return n
}

func crossings(own, lines [][2]vec) int {
	n := 0
	for _, o := range own {
		for _, l := range lines {
			if cross(o[0], o[1], l[0], l[1]) {
				n++
			}
		}
	}
	return n
}

// closeness is the share of a line that runs nearer to another than two lines may.
func closeness(o, m [2]vec, near float64) float64 {
	n := 0
	for i := range samples {
		if distance(o[0].to(o[1], (float64(i)+0.5)/samples), m) < near {
			n++
		}
	}
	return float64(n) / samples
}

// hugging is the share of a line that runs on a line of the piece, or as good as on it.
func hugging(o [2]vec, walls [][2]vec) float64 {
	const near = 0.8
	n := 0
	for i := range samples {
		p := o[0].to(o[1], (float64(i)+0.5)/samples)
		for _, w := range walls {
			if p.x < min(w[0].x, w[1].x)-near || p.x > max(w[0].x, w[1].x)+near ||
				p.y < min(w[0].y, w[1].y)-near || p.y > max(w[0].y, w[1].y)+near {
				continue // most lines are far away
			}
			if distance(p, w) < near {
				n++
				break
			}
		}
	}
	return float64(n) / samples
}

// samples is at how many points of a line its distance from others is taken.
const samples = 8

func distance(p vec, m [2]vec) float64 {
	dir := m[1].sub(m[0])
	t := 0.0
	if l := dir.dot(dir); l > 0 {
		t = clamp(p.sub(m[0]).dot(dir)/l, 0, 1)
	}
	return p.sub(m[0].to(m[1], t)).length()
}

// put adds a dimension.
func (b *board) put(d dimension) {
	if d.upright != 0 {
		if b.sides == nil {
			b.sides = map[int]int{}
		}
		b.sides[d.upright]++
	}
	b.labels = append(b.labels, d.box())
	b.mains = append(b.mains, d.strokes()...)
	b.lines = append(append(b.lines, d.strokes()...), d.ext...)
}
