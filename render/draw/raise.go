package draw

// raise reads the short rows of a tube, which raise one face of it: that of trousers at the back, or of a neck. The tube is drawn
// as tall as that face, and as wide there as the rounds on either side; the rows are drawn on it, each as long as it is.
func raise(rows []course) {
	closed, all := 0.0, 0.0
	for _, r := range rows {
		if all += r.high; r.closed {
			closed += r.high
		}
	}
	if closed*2 < all || closed == all {
		return
	}
	for k := range rows {
		if rows[k].closed {
			continue
		}
		wide := beforeAndAfter(rows, k)
		rows[k].short = min(rows[k].flat, wide)
		rows[k].flat = wide
	}
	for k := range rows {
		rows[k].closed = true
	}
}

// beforeAndAfter is the width of the round before a row, or of the one after it where there is none.
func beforeAndAfter(rows []course, k int) float64 {
	for i := k - 1; i >= 0; i-- {
		if rows[i].closed {
			return rows[i].flat
		}
	}
	for _, r := range rows[k:] {
		if r.closed {
			return r.flat
		}
	}
	return rows[k].flat
}

// shortRows are the edges of the short rows of a patch: of a flat one as they lie on each other, of a tube each in the middle of
// the face.
func (pt *patch) shortRows() []curve {
	var out []curve
	for k := range pt.lines {
		switch {
		case pt.short(k):
			out = append(out, pt.lines[k])
		case k > 0 && pt.pc.rows[k-1].short > 0 && !pt.rings:
			c := pt.lines[k]
			half := pt.pc.rows[k-1].short / 2
			if w := lengthOf(c); w > 0 && 2*half < w {
				out = append(out, straight(c.at(0.5-half/w), c.at(0.5+half/w)))
			}
		}
	}
	return out
}

// thinned leaves out curves that would stand closer than so many millimetres on paper, evenly.
func thinned(cs []curve, rows []course, scale float64) []curve {
	const close = 0.7
	if len(cs) < 2 || len(rows) == 0 {
		return cs
	}
	mean := 0.0
	for _, r := range rows {
		mean += r.high
	}
	step := 1
	for mean /= float64(len(rows)); mean > 0 && mean*scale*float64(step) < close; step++ {
	}
	var out []curve
	for i := 0; i < len(cs); i += step {
		out = append(out, cs[i])
	}
	return out
}
