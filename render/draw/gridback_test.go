package draw

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"ovillo/render/page"
	"ovillo/render/scene"
)

// back is what a reader sees of a sheet of a chart: the marks of its cells by their shapes, found from the drawing alone.
type back struct {
	rows    map[int][]string // the marks of a row from the left, by its number
	columns []int            // the number of each column, 0 where it is not known
	starts  map[int]string   // at which sides the number of a row stands, and which way its arrows point: "right<", "left>"
	side    float64
	heavy   bool // the frame is heavy
}

// figure is one outline of a path.
type figure struct {
	pts    []vec
	curved bool
	filled bool
	width  float64 // of its line
}

func (s figure) box() box {
	var b box
	for _, p := range s.pts {
		b.add(p)
	}
	return b
}

// name says which mark it is; "" for what is none.
func (s figure) name() string {
	b := s.box()
	w, h := b.width(), b.height()
	switch {
	case s.filled && s.curved:
		return "dot"
	case s.curved:
		return "ring"
	case s.filled && len(s.pts) == 3:
		return "triangle"
	case s.filled && len(s.pts) == 4 && s.pts[0].x != s.pts[3].x && s.pts[0].x != s.pts[1].x:
		return "diamond"
	case s.filled && len(s.pts) == 4 && w > 1.5*h:
		return "bar"
	case s.filled && len(s.pts) == 4 && h > 1.5*w:
		return "upright"
	case s.filled && len(s.pts) == 4:
		return "filled"
	case len(s.pts) == 2 && w > 0 && h > 0:
		return "stroke"
	}
	return ""
}

// figuresOf cuts the paths of a drawing into their outlines.
func figuresOf(items []scene.Item, black func(scene.Path) bool) []figure {
	var out []figure
	for _, it := range items {
		p, ok := it.(scene.Path)
		if !ok || !black(p) {
			continue
		}
		for _, c := range p.Cmds {
			switch c.Op {
			case 'M':
				out = append(out, figure{pts: []vec{{c.P[0].X, c.P[0].Y}}, filled: p.Fill != nil, width: p.Width})
			case 'L':
				out[len(out)-1].pts = append(out[len(out)-1].pts, vec{c.P[0].X, c.P[0].Y})
			case 'C':
				last := &out[len(out)-1]
				last.pts, last.curved = append(last.pts, vec{c.P[2].X, c.P[2].Y}), true
			}
		}
	}
	return out
}

func blackInk(p scene.Path) bool {
	return p.Fill != nil && *p.Fill == page.Black || p.Fill == nil && p.Stroke != nil && *p.Stroke == page.Black
}

// readGrid reads a sheet. Columns lie between its upright lines and rows between its level ones; the numbers beside the rows and
// below the columns say which they are.
func readGrid(s *scene.Scene) (*back, error) {
	all := figuresOf(s.Items, blackInk)
	var xs, ys []float64
	b := &back{rows: map[int][]string{}, starts: map[int]string{}}
	long := func(l figure, x bool) bool {
		d := l.box()
		if x {
			return d.width() < 1e-9 && d.height() > 2
		}
		return d.height() < 1e-9 && d.width() > 2
	}
	for _, l := range all {
		switch {
		case l.filled || len(l.pts) != 2:
		case long(l, true):
			xs = append(xs, l.pts[0].x)
		case long(l, false):
			ys = append(ys, l.pts[0].y)
		}
		b.heavy = b.heavy || !l.filled && l.width == gridRepeat
	}
	// A cut edge has no frame: the lines across reach it.
	for _, l := range all {
		if !l.filled && len(l.pts) == 2 && l.width < gridRepeat && (long(l, true) || long(l, false)) {
			for _, p := range l.pts {
				if long(l, true) && l.width == gridLine {
					ys = append(ys, p.y)
				} else if l.width == gridLine {
					xs = append(xs, p.x)
				}
			}
		}
	}
	xs, ys = apart(xs), apart(ys)
	if len(xs) < 2 || len(ys) < 2 {
		return nil, fmt.Errorf("%d upright and %d level lines", len(xs), len(ys))
	}
	b.side = xs[1] - xs[0]
	cells := make([][]string, len(ys)-1) // from the top
	for r := range cells {
		cells[r] = make([]string, len(xs)-1)
	}
	at := func(v vec) (r, c int, in bool) {
		r, c = slices.IndexFunc(ys, func(y float64) bool { return y > v.y })-1, slices.IndexFunc(xs, func(x float64) bool { return x > v.x })-1
		return r, c, r >= 0 && c >= 0
	}
	put := func(d box, name string, grown float64) error {
		r, c, in := at(d.middle())
		if !in {
			return nil
		}
		d = d.grown(grown)
		if d.min.x < xs[c]+gridLine/2 || d.max.x > xs[c+1]-gridLine/2 || d.min.y < ys[r]+gridLine/2 || d.max.y > ys[r+1]-gridLine/2 {
			return fmt.Errorf("a %s leaves its cell", name)
		}
		if name == "stroke" && cells[r][c] == "stroke" {
			cells[r][c] = "cross"
			return nil
		}
		if cells[r][c] != "" {
			return fmt.Errorf("two marks, %s and %s, in one cell", cells[r][c], name)
		}
		cells[r][c] = name
		return nil
	}
	var heads []figure
	for _, m := range all {
		name := m.name()
		d := m.box()
		if _, _, in := at(d.middle()); name == "triangle" && !in {
			heads = append(heads, m)
		}
		if name != "" && max(d.width(), d.height()) < b.side {
			if err := put(d, name, m.width/2); err != nil {
				return nil, err
			}
		}
	}
	b.columns = make([]int, len(xs)-1)
	for _, l := range labels(s) {
		v := vec{l.X, l.Y}
		n, err := strconv.Atoi(l.Text)
		r, c, in := at(v)
		switch {
		case in && err != nil:
			cells[r][c] = "letter " + l.Text
		case err != nil:
		case v.y > ys[len(ys)-1] && l.Anchor == scene.Middle:
			if c := slices.IndexFunc(xs, func(x float64) bool { return x > v.x }) - 1; c >= 0 {
				b.columns[c] = n
			}
		case l.Anchor == scene.Middle || v.y < ys[0]:
		default:
			row := slices.IndexFunc(ys, func(y float64) bool { return y > v.y }) - 1
			if row < 0 {
				return nil, fmt.Errorf("the number %d stands beside no row", n)
			}
			where := "right"
			if v.x < xs[0] {
				where = "left"
			}
			for _, h := range heads {
				m := h.box().middle()
				if math.Abs(m.y-v.y) < 0.1 && (m.x < xs[0]) == (v.x < xs[0]) {
					if h.pts[0].x < h.pts[1].x { // its tip is the first point
						where += "<"
					} else {
						where += ">"
					}
				}
			}
			b.starts[n] += where
			b.rows[n] = cells[row]
		}
	}
	if len(b.rows) != len(cells) {
		return nil, fmt.Errorf("%d of %d rows have a number", len(b.rows), len(cells))
	}
	return b, nil
}

// apart sorts numbers and leaves out those that are there already.
func apart(v []float64) []float64 {
	slices.Sort(v)
	return slices.CompactFunc(v, func(a, b float64) bool { return math.Abs(a-b) < 0.05 })
}

// keyed are the cells by the mark that the key gives them: what it says of the mark in English.
func keyedMarks(key []KeyItem) (map[string]string, error) {
	out := map[string]string{}
	for _, k := range key {
		says, _, cell := strings.Cut(k.Says["en-US"], ": ")
		if !cell || strings.HasPrefix(says, "heavy frame") {
			continue
		}
		name := ""
		strokes := 0
		for _, m := range figuresOf(k.Symbol.Items, blackInk) {
			switch n := m.name(); {
			case n == "stroke":
				if strokes++; strokes == 2 {
					name = "cross"
				}
			case n != "":
				name = n
			}
		}
		for _, l := range labels(k.Symbol) {
			name = "letter " + l.Text
		}
		if before, taken := out[name]; taken {
			return nil, fmt.Errorf("%q is the mark of %s and of %s", name, before, says)
		}
		out[name] = says
	}
	return out, nil
}
