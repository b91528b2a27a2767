package compile

import (
	"slices"

	"ovillo/compile/caution"
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/atonce"
	"ovillo/lang/source"
)

// This file looks at the fabric for what is not closed: runs of chains between stitches, and stitches that were skipped. What they are to
// the cautions, holes, loops or strings, is told in safety_holes.go and safety_loose.go.

// gap is a run of chains, or a place where stitches were skipped without any.
type gap struct {
	part   *partState
	id     fabric.ID // of the chains; -1 if there are none
	n      int       // chains
	clear  float64   // stitches of the edge below that lie under it; -1 if that is not known
	at     source.Span
	chain  float64 // how wide a chain is, and a stitch of the row, and how tall the row, in micrometres; 0 if no gauge tells
	stitch float64
	height float64
	tall   bool // stitches as tall as a double crochet stand on both sides
	free   bool // nothing holds it at one end: the chains hang at the end of a row
	slip   bool // it goes back to the fabric with a slip stitch
	last   bool // it stands in the last row of its part
	used   bool // something was worked into it
}

// scan is the fabric of one size, looked at for its gaps.
type scan struct {
	c    *checker
	f    *fabric.Fabric
	x    []float32 // where an element stands along its edge, in stitches, if its row was laid out
	wide []float32 // how long each edge is, by the number of its row; below 0 if that was not laid out

	talls []caution.Truth               // whether a form is tall, by its number
	sizes map[stitchInManner][2]float64 // how wide and high a stitch is
}

// gapsIn are all gaps of a size, part by part and row by row.
func (c *checker) gapsIn(z int) []gap {
	if c.gaps == nil {
		c.gaps = make([][]gap, c.z)
		// The sizes have nothing to do with each other here, and nothing is written but what is found.
		rooms := c.room.scans(c.z)
		atonce.Do(c.z, func(i int) { c.gaps[i] = c.scanned(i, &rooms[i]) })
	}
	return c.gaps[z]
}

func (c *checker) scanned(z int, room *scanRoom) []gap {
	f := c.fabrics[z]
	s := &scan{c: c, f: f, x: again(&room.x, len(f.Elems)), wide: again(&room.wide, int(f.Rows())+1), sizes: map[stitchInManner][2]float64{}}
	for i := range s.wide {
		s.wide[i] = -1
	}
	var out []gap
	for _, pl := range c.pat.Parts {
		p := c.parts[pl.Name]
		if p.fab[z].Halted() {
			continue
		}
		for i, r := range p.serials[z] {
			if !r.again {
				out = append(out, s.rowGaps(p, r, i == len(p.serials[z])-1)...)
			}
		}
	}
	return out
}

// layOut puts the elements of a row, which are numbered one after the other, each behind those before it. id is one of them.
func (s *scan) layOut(id fabric.ID) {
	row := s.f.Elems[id].Row
	for id > 0 && s.f.Elems[id-1].Row == row {
		id--
	}
	at := float32(0)
	for ; int(id) < len(s.f.Elems) && s.f.Elems[id].Row == row; id++ {
		w := float32(1)
		switch el := &s.f.Elems[id]; el.Kind {
		case fabric.Space:
			w = float32(el.N)
		case fabric.Slip, fabric.Ring:
			w = 0
		}
		s.x[id] = at + w/2
		at += w
	}
	s.wide[row] = at
}

// slipBehind reports whether a slip stitch was made right behind an element.
func (s *scan) slipBehind(id fabric.ID) bool {
	next := int(id) + 1
	return next < len(s.f.Elems) && s.f.Elems[next].Kind == fabric.Slip && s.f.Elems[next].Row == s.f.Elems[id].Row
}

// rowGaps are the gaps of a row.
func (s *scan) rowGaps(p *partState, r rowAt, last bool) []gap {
	var out []gap
	m := p.manner(r.style)
	closed := r.style != plan.Rows
	made := r.made
	for i, id := range made {
		el := &s.f.Elems[id]
		before, after := i-1, i+1
		if closed {
			before, after = (i+len(made)-1)%len(made), (i+1)%len(made)
		}
		if el.Kind != fabric.Space {
			if after < len(made) && s.sideBySide(el, &s.f.Elems[made[after]]) {
				continue // as most stitches are: no gap shows between them
			}
			if after < len(made) && after != i && s.tall(id) && s.tall(made[after]) {
				if n := s.clear(id, made[after], closed && after == 0); n >= 1 {
					out = append(out, s.sized(gap{part: p, id: -1, clear: n, at: r.at, tall: true, last: last}, id, m))
				}
			}
			continue
		}
		g := gap{part: p, id: id, n: int(el.N), clear: -1, at: r.at, used: el.Used > 0, last: last, slip: s.slipBehind(id)}
		side := fabric.ID(-1)
		if before >= 0 && before != i {
			side = made[before]
		}
		switch {
		case after >= len(made) || after == i:
			g.free = !g.slip
		case side >= 0:
			g.clear = s.clear(side, made[after], closed && (before > i || after < i))
			side = made[after]
		default:
			side = made[after]
		}
		out = append(out, s.sized(g, side, m))
	}
	return out
}

// sideBySide reports whether two stitches stand in stitches that were made one right after the other.
func (s *scan) sideBySide(a, b *fabric.Elem) bool {
	if a.Kind != fabric.Stitch || b.Kind != fabric.Stitch || a.Into != a.Into2 || b.Into != b.Into2 || a.Into.ID < 0 || b.Into.ID < 0 {
		return false
	}
	from, to := &s.f.Elems[a.Into.ID], &s.f.Elems[b.Into.ID]
	d := a.Into.ID - b.Into.ID
	return (d == 1 || d == -1 || d == 0) && from.Row == to.Row && from.Kind == fabric.Stitch && to.Kind == fabric.Stitch
}

// clear is how many stitches of the edge below lie between the feet of two elements; -1 if that is not known.
func (s *scan) clear(a, b fabric.ID, round bool) float64 {
	footA, stands := s.f.Foot(a, true)
	footB, also := s.f.Foot(b, false)
	if !stands || !also {
		return -1
	}
	from, to := footA.ID, footB.ID
	rowA, rowB := s.f.Elems[from].Row, s.f.Elems[to].Row
	if rowA != rowB {
		return -1
	}
	if s.wide[rowA] < 0 {
		s.layOut(from)
	}
	d := s.x[to] - s.x[from]
	if d < 0 {
		d = -d
	}
	if round || d > s.wide[rowA]/2 && s.wide[rowA] > 8 { // a round is met again at its beginning
		d = min(d, s.wide[rowA]-d)
	}
	return max(float64(d)-1, 0)
}

// tallFrom is the height, beside a single crochet, from which stitches stand apart so far that a gap shows between them: that of a
// double crochet. Common practice, no source.
const tallFrom = 1.9

// tall reports whether an element is a stitch that stands so far from the next.
func (s *scan) tall(id fabric.ID) bool {
	if s.f.Elems[id].Kind != fabric.Stitch {
		return false
	}
	form := int(s.f.Elems[id].Form)
	if form >= len(s.talls) {
		s.talls = append(s.talls, make([]caution.Truth, form+1-len(s.talls))...)
	}
	if s.talls[form] == caution.Unknown { // most of a fabric is of a few forms: each is looked up once
		is := s.f.FormOf(id).ID
		s.talls[form] = truthOf(is != stitch.Chain && s.height(is) >= tallFrom)
	}
	return s.talls[form] == caution.True
}

// height is the nominal height of a stitch, that of another one for a stitch of the designer's own.
func (s *scan) height(id stitch.ID) float64 {
	if o, own := s.c.own[id]; own {
		id = o.Tall
	}
	k, _ := stitch.Of(id)
	return k.Height
}

// sized gives a gap the sizes that the gauge tells, by a stitch beside it.
func (s *scan) sized(g gap, side fabric.ID, m manner) gap {
	id := g.part.base
	if side >= 0 && s.f.Elems[side].Kind == fabric.Stitch {
		id = s.f.FormOf(side).ID
	}
	if id == "" || id == stitch.Chain {
		id = stitch.SC
	}
	g.stitch, g.height = s.size(stitchInManner{id, m})
	g.chain = g.stitch
	if s.c.gaugeFor(stitch.Chain, manner{}) != nil {
		g.chain, _ = s.size(stitchInManner{stitch.Chain, manner{}})
	}
	return g
}

// size is the width and height of a stitch. It is kept here, since what the checker keeps is not for several sizes at once.
func (s *scan) size(k stitchInManner) (w, h float64) {
	got, known := s.sizes[k]
	if !known {
		got[0], got[1], _ = s.c.sizeByGauge(k.id, k.manner)
		s.sizes[k] = got
	}
	return got[0], got[1]
}

// arch is how long the chains of a gap are, span how far apart their ends are fixed; in micrometres.
func (g gap) arch() float64 { return float64(g.n) * g.chain }
func (g gap) span() float64 {
	if g.clear < 0 {
		return g.arch()
	}
	return g.clear * g.stitch
}

// gapName is what a gap is called: the part, with the label of the chains if they have one.
func (c *checker) gapName(g gap, z int) string {
	names := g.part.fab[z].Names()
	slices.Sort(names)
	for _, n := range names {
		if ids, _, _, ok := g.part.fab[z].Label(n); ok && slices.Contains(ids, g.id) {
			return g.part.plan.Name + "." + n
		}
	}
	return g.part.plan.Name
}
