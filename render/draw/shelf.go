package draw

// margins is the room in millimetres that a group needs on paper beside its own lines, and the gap to the next.
type margins struct {
	left, top, right, bottom, gap float64
}

// shelves says where groups stand on paper.
type shelves struct {
	scale      float64 // millimetres of paper to a centimetre of fabric
	at         []vec   // of the point each group hangs from
	wide, high float64 // the room taken, margins included
}

// shelve sets the groups out on one shelf or several, whichever makes them largest, in the middle of the room.
func (l *layout) shelve(w, h float64, room func(*group) margins) shelves {
	var best shelves
	boxes := make([]box, len(l.groups))
	for i, gr := range l.groups {
		boxes[i] = gr.bounds()
	}
	for rows := 1; rows <= len(l.groups); rows++ {
		if s := l.fit(rows, w, h, boxes, room); s.scale > best.scale*1.02 {
			best = s
		}
	}
	return best
}

// fit finds the largest scale at which the groups fit on so many shelves.
func (l *layout) fit(rows int, w, h float64, boxes []box, room func(*group) margins) shelves {
	lo, hi := 0.0, 1e4
	for range 48 {
		mid := (lo + hi) / 2
		if s := l.stand(rows, mid, w, boxes, room); s.wide <= w && s.high <= h {
			lo = mid
		} else {
			hi = mid
		}
	}
	if lo == 0 {
		return shelves{}
	}
	return l.stand(rows, lo, w, boxes, room)
}

// stand sets the groups, whose bounds are given, out at a scale, in rows of about the same number, their feet on one line.
func (l *layout) stand(rows int, scale, w float64, boxes []box, room func(*group) margins) shelves {
	s := shelves{scale: scale, at: make([]vec, len(l.groups))}
	per := (len(l.groups) + rows - 1) / rows
	y := 0.0
	for from := 0; from < len(l.groups); from += per {
		row := l.groups[from:min(from+per, len(l.groups))]
		wide, high, bottom := 0.0, 0.0, 0.0
		for i, gr := range row {
			m, b := room(gr), boxes[from+i]
			if i > 0 {
				wide += m.gap
			}
			wide += m.left + b.width()*scale + m.right
			high, bottom = max(high, m.top+b.height()*scale), max(bottom, m.bottom)
		}
		high += bottom
		if from > 0 {
			y += room(row[0]).gap
		}
		x := (w - wide) / 2
		if len(row) == 1 {
			// A piece alone has its middle in the middle of the page, whatever stands beside it, if there is room.
			m, b := room(row[0]), boxes[from]
			half := -row[0].middle()*scale + b.min.x*scale
			x = clamp(w/2+half-m.left, 0, max(0, w-wide))
		}
		s.wide = max(s.wide, wide)
		for i, gr := range row {
			m, b := room(gr), boxes[from+i]
			x += m.left
			s.at[from+i] = vec{x - b.min.x*scale, y + high - bottom - b.max.y*scale}
			x += b.width()*scale + m.right + m.gap
		}
		y += high
	}
	s.high = y
	return s
}

// middle is the axis of a group, in fabric: where its first patch has its own.
func (gr *group) middle() float64 {
	if len(gr.patches) == 0 {
		return 0
	}
	return gr.patches[0].f.o.x
}
