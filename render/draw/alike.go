package draw

import "slices"

// alike leaves out groups that are the same as an earlier one, so that of two pieces that are made alike one is drawn, with their
// number beside it. Only pieces by themselves are compared; one that a measure is taken from stays.
func (l *layout) alike() {
	l.times = map[*group]int{}
	measured := map[*group]bool{}
	for _, m := range l.g.p.Measures {
		if m.Letter != "" {
			measured[l.home(m)] = true
		}
	}
	var kept []*group
	for _, gr := range l.groups {
		at := slices.IndexFunc(kept, func(other *group) bool { return l.same(other, gr) && !measured[gr] })
		if at < 0 {
			kept = append(kept, gr)
			l.times[gr] = gr.made(l.g.p)
			continue
		}
		l.times[kept[at]] += gr.made(l.g.p)
	}
	l.groups = kept
}

// same reports whether two groups are one piece each, of the same rows and the same outline.
func (l *layout) same(a, b *group) bool {
	if len(a.patches) != 1 || len(b.patches) != 1 {
		return false
	}
	p, q := a.patches[0], b.patches[0]
	if !sameRows(p.pc.rows, q.pc.rows) || p.pc.closed != q.pc.closed || l.g.beginning(p) != l.g.beginning(q) {
		return false
	}
	for k := range p.pc.rows {
		if p.pc.rows[k].yarn != q.pc.rows[k].yarn || p.pc.rows[k].texture != q.pc.rows[k].texture {
			return false
		}
	}
	x, y := p.outline(), q.outline()
	if len(x) != len(y) {
		return false
	}
	for i := range x {
		if x[i].sub(y[i]).length() > 1e-6 {
			return false
		}
	}
	return true
}
