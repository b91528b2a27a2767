package draw

import (
	"fmt"
	"math"
	"slices"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/scene"
)

// Signs on the lines of the schematic, in millimetres.
const (
	startWide  = 0.7 // the line where work begins
	startDot   = 0.6 // radius of the dot where it begins in a ring
	heldDot    = 0.5 // radius of the circles where stitches wait
	heldPitch  = 2.2
	markerHalf = 0.8 // of the diagonal of the diamond of a marker
	madeEm     = letterEm
)

// beginning is how the piece of a patch begins.
type beginning uint8

const (
	onAnother beginning = iota // on another piece, or after a dividing row
	onALine                    // on a chain or a foundation
	inARing
)

func (g *graph) beginning(pt *patch) beginning {
	if pt.pc.first > 0 || pt.pc.goesOn {
		return onAnother
	}
	switch g.p.Parts[pt.pc.part].Start.Kind {
	case plan.StartChain, plan.StartJoined, plan.StartBothSides, plan.StartFoundation, plan.StartFoundationJoined:
		return onALine
	case plan.StartRing, plan.StartChainRing:
		return inARing
	}
	return onAnother
}

// waits reports whether a patch hangs on stitches that another part had left waiting.
func (g *graph) waits(pt *patch) bool {
	if pt.pc.first > 0 || pt.free[startEdge] || pt.band {
		return false
	}
	return g.p.Waited(pt.pc.part)
}

// marks draws where work begins and where stitches wait.
func (s *sheet) marks(p *pen) {
	for _, pt := range s.gr.patches {
		c := pt.lines[0]
		switch s.g.beginning(pt) {
		case onALine:
			p.round(c, startWide)
		case inARing:
			p.spot(pt.heart(), startDot)
		}
		if s.g.waits(pt) {
			p.circles(c, heldDot, heldPitch)
		}
	}
	var cmds []page.Cmd
	for _, v := range s.markers() {
		d := markerHalf
		for i, q := range []vec{{0, -d}, {d, 0}, {0, d}, {-d, 0}} {
			op := byte('L')
			if i == 0 {
				op = 'M'
			}
			cmds = append(cmds, page.Cmd{Op: op, P: point(p.shift.add(v).add(q))})
		}
		cmds = append(cmds, page.Cmd{Op: 'Z'})
	}
	if len(cmds) > 0 {
		ink := black
		p.items = append(p.items, scene.Path{Cmds: cmds, Fill: &ink})
	}
}

// markers are the places on paper to which markers are counted off, before the drawing is shifted. What lies in front of another is
// drawn once.
func (s *sheet) markers() []vec {
	var out []vec
	for _, pt := range s.gr.patches {
		if pt.mirrored {
			continue
		}
		for _, at := range s.g.markersOn(pt) {
			at = s.on(at)
			if !slices.ContainsFunc(out, func(o vec) bool { return o.sub(at).length() < 1.5*markerHalf }) {
				out = append(out, at)
			}
		}
	}
	return out
}

// markersOn are the places of markers on a patch. On a yoke with lines of increases they stand where these begin.
func (g *graph) markersOn(pt *patch) []vec {
	var out []vec
	for _, m := range g.p.MarkersAt(pt.pc.part) {
		if at, ok := g.marker(pt, m); ok {
			out = append(out, at)
		}
	}
	if len(out) > 0 && len(pt.seams) > 0 {
		out = out[:0]
		for _, c := range pt.seams {
			out = append(out, c.first())
		}
	}
	return out
}

// marker is where a marker stands on a patch; false if its edge is of another.
func (g *graph) marker(pt *patch, m plan.MarkerAt) (vec, bool) {
	k, ok := pt.pc.boundary(m.Row)
	if m.Row == 0 {
		k, ok = 0, pt.pc.first == 0
	}
	if !ok || m.Of == 0 {
		return vec{}, false
	}
	f := float64(m.At) / float64(m.Of)
	if pt.rings {
		return pt.lines[k].at(f), true
	}
	sign := 1.0
	if pt.f.along.y > 0 {
		sign = -1
	}
	if rows := pt.pc.rows; k > 1 && rows[k-1].wrong != rows[k-2].wrong && !rows[k-1].wrong || pt.pc.folded {
		sign = -sign
	}
	x := sign * (1 - 2*f)
	if pt.pc.closed {
		x = sign * across(f)
	}
	return pt.lines[k].at((x + 1) / 2), true
}

// heart is where the rounds of a patch begin: its middle from above, and else the middle of its first line.
func (pt *patch) heart() vec {
	if pt.rings {
		return pt.f.o
	}
	return pt.lines[0].at(0.5)
}

// spot draws a solid dot of a radius on paper.
func (p *pen) spot(at vec, radius float64) {
	ink := black
	p.items = append(p.items, scene.Path{Cmds: appendCircle(nil, p.on(at), radius), Fill: &ink})
}

// circles draws small circles along a curve, as far apart on paper as a pitch; at least two.
func (p *pen) circles(c curve, radius, pitch float64) {
	c = c.fine()
	long := 0.0
	for i := 1; i < len(c.pts); i++ {
		long += c.pts[i].sub(c.pts[i-1]).length() * p.scale
	}
	n := max(2, int(math.Round(long/pitch)))
	var cmds []page.Cmd
	for i := range n {
		cmds = appendCircle(cmds, p.on(c.at((float64(i)+0.5)/float64(n))), radius)
	}
	ink, paper := black, white
	p.items = append(p.items, scene.Path{Cmds: cmds, Fill: &paper, Stroke: &ink, Width: dimLine})
}

// made is how many of a group are made alike: 1 where they are not, or where both of them are drawn.
func (gr *group) made(p *plan.Pattern) int {
	n := max(p.Parts[gr.patches[0].pc.part].Make, 1)
	for _, pt := range gr.patches {
		if pt.mirrored || max(p.Parts[pt.pc.part].Make, 1) != n {
			return 1
		}
	}
	return n
}

// times finds a place for the number of pieces that are made alike, such as ×2.
func (s *sheet) times(l *layout) {
	n := s.gr.made(s.g.p)
	if l.times != nil {
		n = l.times[s.gr]
	}
	if n < 2 {
		return
	}
	text := fmt.Sprintf("×%d", n)
	half := vec{madeEm * 0.3 * float64(len([]rune(text))), madeEm * 0.42}
	b := s.gr.bounds()
	piece := box{s.on(b.min), s.on(b.max), true}
	off := half.x + 1.5
	for _, at := range []vec{
		{piece.max.x + off, piece.max.y - half.y}, {piece.min.x - off, piece.max.y - half.y}, {piece.max.x + off, piece.min.y + half.y},
		{piece.min.x - off, piece.min.y + half.y}, {piece.middle().x, piece.max.y + half.y + 1.5}, {piece.max.x + off + 2*letterGap, piece.max.y - half.y},
		{piece.middle().x, piece.max.y + half.y + dimOff + dimPitch},
	} {
		room := box{at.sub(half), at.add(half), true}.grown(0.4)
		free := struck(room, s.board.lines) == 0 && struck(room, s.board.walls) == 0
		for _, l := range append(append([]box(nil), s.board.labels...), s.board.blocks...) {
			free = free && !room.overlaps(l)
		}
		if free {
			s.count = &scene.Label{X: at.x, Y: at.y, Text: text, Height: madeEm, Face: page.Sans}
			s.board.labels = append(s.board.labels, box{at.sub(half), at.add(half), true})
			return
		}
	}
}
