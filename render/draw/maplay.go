package draw

import "math"

// This file sets the pieces of a map out on paper: what comes later stands further to the right.

// column is pieces that stand one below the other.
type column struct {
	nodes      []*mapNode
	wide, high float64
}

// arrange stands the pieces as large as they go. Pieces on the same level stand below each other; where there are many, in
// several columns, whichever makes all of them largest. A way that must pass others by costs a little.
func (m *mapping) arrange(wide, high float64) {
	best, least := 1, -1.0
	for most := 1; most <= len(m.nodes); most++ {
		cols := m.columns(most)
		scale := m.fit(cols, wide, high)
		if worth := scale * math.Pow(0.92, float64(m.passing(cols))); worth > least*1.02 {
			best, least = most, worth
		}
	}
	cols := m.columns(best)
	m.scale = m.fit(cols, wide, high)
	m.stand(cols, wide)
	m.lead(cols)
}

// columns puts the pieces in columns of at most so many.
func (m *mapping) columns(most int) []*column {
	levels := 0
	for _, n := range m.nodes {
		levels = max(levels, n.level+1)
	}
	var out []*column
	for level := range levels {
		full := most
		for _, n := range m.nodes {
			if n.level != level {
				continue
			}
			if full == most {
				out, full = append(out, &column{}), 0
			}
			c := out[len(out)-1]
			c.nodes = append(c.nodes, n)
			full++
		}
	}
	return out
}

// passing is from how many pieces ways pass a column by. All of one piece run together.
func (m *mapping) passing(cols []*column) int {
	from := map[int]bool{}
	for at, c := range cols {
		for _, node := range c.nodes {
			for _, k := range node.parents {
				if m.columnOf(cols, k) != at-1 {
					from[k] = true
				}
			}
		}
	}
	return len(from)
}

func (m *mapping) columnOf(cols []*column, node int) int {
	for i, c := range cols {
		for _, n := range c.nodes {
			if n == m.nodes[node] {
				return i
			}
		}
	}
	return -1
}

const (
	mapPass = 2.4  // the room between ways that pass columns by
	mapRim  = 0.25 // half of the widest line, so that none is cut off at the edge
)

// fit is the largest scale at which the columns fit.
func (m *mapping) fit(cols []*column, wide, high float64) float64 {
	largest := 0.0
	for _, n := range m.nodes {
		largest = max(largest, n.bounds.width(), n.bounds.height())
	}
	lo, hi := 0.0, mapLargest/max(largest, 1e-6)
	for range 40 {
		mid := (lo + hi) / 2
		w, h := m.size(cols, mid)
		if w <= wide && h <= high {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo
}

// size is the room that the columns take at a scale.
func (m *mapping) size(cols []*column, scale float64) (wide, high float64) {
	for i, c := range cols {
		c.wide, c.high = 0, 0
		for k, n := range c.nodes {
			w, h := n.size(scale)
			c.wide = max(c.wide, w)
			if c.high += h; k > 0 {
				c.high += mapDown
			}
		}
		if wide += c.wide; i > 0 {
			wide += mapAcross
		}
		high = max(high, c.high)
	}
	return wide + 2*mapRim, high + mapPass*float64(m.passing(cols)) + 2*mapRim
}

// The arrow of the direction of work on the map.
const (
	mapArrow  = 7.0 // its length
	mapInside = 7.5 // from which room on it stands inside the piece
	mapBeside = 3.4 // what it takes beside one

	mapShortest = 1.4 // the shortest that is seen
)

// inside reports whether the arrow of a piece stands in it. One outwards stands nowhere else: beside the piece it would read as
// a way to the next.
func (n *mapNode) inside(scale float64) bool { return n.radial || n.room*scale >= mapInside }

// besides is how long and how wide the arrow beside a piece is.
func (n *mapNode) besides(scale float64) (wide, high float64) {
	if n.dir.length() == 0 || n.unknown || n.inside(scale) {
		return 0, 0
	}
	across := math.Abs(n.dir.x)*mapArrow + math.Abs(n.dir.y)*mapWorkWide
	return 1.2 + max(mapBeside-1.2, across), math.Abs(n.dir.y)*mapArrow + math.Abs(n.dir.x)*mapWorkWide
}

// drawn is the size of the piece alone.
func (n *mapNode) drawn(scale float64) (wide, high float64) {
	if n.unknown {
		return mapUnknown, mapUnknown
	}
	return n.bounds.width() * scale, n.bounds.height() * scale
}

// size is the room a piece takes, with its number above it and its arrow.
func (n *mapNode) size(scale float64) (wide, high float64) {
	w, h := n.drawn(scale)
	aw, ah := n.besides(scale)
	return max(w+aw, n.labelWide()), max(h, ah) + mapNumberGap
}

// stand gives every piece its place.
func (m *mapping) stand(cols []*column, wide float64) {
	total, high := m.size(cols, m.scale)
	m.high = high
	ways := mapPass * float64(m.passing(cols))
	x := (wide-total)/2 + mapRim
	for _, c := range cols {
		y := mapRim + (high-2*mapRim-ways-c.high)/2
		for _, n := range c.nodes {
			w, h := n.size(m.scale)
			pw, ph := n.drawn(m.scale)
			aw, ah := n.besides(m.scale)
			left := x + (c.wide-w)/2
			n.at = box{vec{left, y}, vec{left + w, y + h}, true}
			top := y + mapNumberGap + (max(ph, ah)-ph)/2
			n.body = box{vec{left, top}, vec{left + pw, top + ph}, true}
			mid := n.body.min.add(n.from.sub(n.bounds.min).times(m.scale))
			long := min(mapArrow+2, n.room*m.scale*0.6)
			switch {
			case !n.inside(m.scale):
				mid, long = vec{n.body.max.x + 1.2 + (aw-1.2)/2, n.body.middle().y}, mapArrow
			case n.radial && n.room*m.scale < mapInside:
				if long = n.room * m.scale * 0.8; long < mapShortest {
					long = 0
				}
			}
			if n.unknown {
				long = 0
			}
			if n.inside(m.scale) && !n.radial {
				// A yoke may bend up to its shoulders on both sides of its middle.
				half := n.dir.times(long / 2)
				mid = mid.within(n.body.grown(-0.6).inset(half))
			}
			n.arrow = workArrow{mid.sub(n.dir.times(long / 2)), mid.add(n.dir.times(long / 2))}
			y += h + mapDown
		}
		x += c.wide + mapAcross
	}
}

// lead draws the ways: straight to the next column, and below all columns to one further on.
func (m *mapping) lead(cols []*column) {
	const off = 1.1 // from a piece
	edges := make([][2]float64, len(cols))
	for i, c := range cols {
		edges[i] = [2]float64{math.Inf(1), math.Inf(-1)}
		for _, n := range c.nodes {
			edges[i] = [2]float64{min(edges[i][0], n.at.min.x), max(edges[i][1], n.at.max.x)}
		}
	}
	below := m.high - mapPass*float64(m.passing(cols)) - mapRim
	deep := map[int]float64{} // of the ways from a piece that pass others by
	for at, c := range cols {
		for _, n := range c.nodes {
			for _, k := range n.parents {
				from := m.columnOf(cols, k)
				o := m.nodes[k]
				a, b := vec{o.at.max.x + off, o.body.middle().y}, vec{n.body.min.x - off, n.body.middle().y}
				leave, come := vec{edges[from][1] + off, a.y}, vec{edges[at][0] - mapWayLong - 2*off, b.y}
				way := []vec{a, leave, come, b}
				if from != at-1 {
					if deep[k] == 0 {
						below += mapPass
						deep[k] = below
					}
					leave.x += mapWayLong
					way = []vec{a, leave, {leave.x, deep[k]}, {come.x, deep[k]}, come, b}
				}
				m.ways = append(m.ways, way)
			}
		}
	}
}
