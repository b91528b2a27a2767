package draw

import (
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// The map of the construction, in millimetres.
const (
	mapLine      = 0.28 // an outline
	mapFine      = 0.14 // a line inside of one
	mapWay       = 0.22 // the line from a piece to what grows on it
	mapWayLong   = 1.7  // its head
	mapWayWide   = 1.4
	mapWork      = 0.45 // the arrow of the direction of work
	mapWorkLong  = 2.1
	mapWorkWide  = 2.2
	mapNumber    = 4.0 // the type of a number
	mapNumberGap = 5.2 // from the foot of a number to that of its piece's top
	mapAcross    = 13.0
	mapDown      = 3.5
	mapLargest   = 42.0 // no piece is drawn larger
	mapUnknown   = 8.0  // the side of a piece whose shape is not known
)

// Map is the map of the construction: the pieces from left to right in the order of working, each to one scale and under the
// number of its step ([words.Language.MapSteps]), with an arrow in or beside it for the direction of work, and thin arrows from
// what a piece grows on to it. It is at most wide by high millimetres and no higher than it needs, and is described in the
// languages given. Without a gauge the pieces are drawn from nominal stitches; a pattern of no pieces has an empty map.
func Map(p *plan.Pattern, wide, high float64, langs ...*words.Language) *scene.Scene {
	s := &scene.Scene{W: wide, H: high, Title: map[string]string{}, Desc: map[string]string{}}
	for lang, v := range speak(langs) {
		s.Title[lang] = v.Say(words.MapHead) + ": " + v.Language.Title(p)
		s.Desc[lang] = mapWords(p, v)
	}
	if len(p.Parts) == 0 || p.Shown < 0 || p.Shown >= len(p.Sizes) {
		return s
	}
	m := mapOf(p)
	for i, st := range stepsOf(p, langs) {
		m.nodes[i].number = st
	}
	m.arrange(wide, high)
	pen := &pen{scale: 1}
	for _, w := range m.ways {
		pen.line(straight(w...), mapWay)
		last := len(w) - 1
		pen.head(w[last], w[last].sub(w[last-1]).unit(), mapWayLong, mapWayWide)
	}
	for _, n := range m.nodes {
		n.draw(pen, m.scale)
	}
	s.Items, s.H = pen.items, min(high, m.high)
	return s
}

// stepsOf gives every part the number of its step: what is done between parts is a step as well.
func stepsOf(p *plan.Pattern, langs []*words.Language) []int {
	out := make([]int, len(p.Parts))
	for i := range out {
		out[i] = i + 1
	}
	if len(langs) > 0 {
		for k, st := range langs[0].MapSteps(p) {
			if st.Part >= 0 {
				out[st.Part] = k + 1
			}
		}
	}
	return out
}

// mapWords tells what the map shows: the steps that are parts, with their numbers.
func mapWords(p *plan.Pattern, v speech) string {
	var out []string
	for k, st := range v.MapSteps(p) {
		if st.Part >= 0 {
			out = append(out, strings.TrimSpace(strconv.Itoa(k+1)+". "+st.Title+". "+st.Text.String()))
		}
	}
	return strings.Join(out, " ")
}

// mapping is the pieces of a map and how they stand on paper.
type mapping struct {
	nodes       []*mapNode
	scale, high float64
	ways        [][]vec // the arrows from piece to piece
}

// mapNode is one piece: its drawing in centimetres, and where it stands.
type mapNode struct {
	number  int
	made    int // how many are made
	fills   []curve
	inner   []curve
	bounds  box
	dir     vec       // of the work; none for a piece that grows in no direction
	from    vec       // the middle of its arrow, where there is room for one
	room    float64   // for the arrow, in centimetres
	radial  bool      // it is worked from its middle outwards, or round another
	parents []int     // on which it grows, those left out from which it follows anyway
	level   int       // how many pieces come before it at least
	unknown bool      // its shape is not known
	at      box       // on paper, with its number and arrow
	body    box       // on paper, the piece alone
	arrow   workArrow // on paper
}

// mapOf reads the pieces of a pattern and what grows on what.
func mapOf(p *plan.Pattern) *mapping {
	m := &mapping{}
	for _, part := range p.Parts {
		n := &mapNode{made: max(part.Make, 1), unknown: true}
		if k := inSize(part.Motifs, p.Shown); k > 0 {
			n.made = k
		}
		m.nodes = append(m.nodes, n)
	}
	if mo := mosaicOf(p); mo != nil {
		m.mosaic(mo)
	} else {
		m.patches(p)
	}
	m.grow(p)
	return m
}

// patches takes the shapes of the parts from where they lie on the table. Of a part that is made twice, one is drawn.
func (m *mapping) patches(p *plan.Pattern) {
	l, err := lie(p, courses)
	if err != nil {
		l, err = lie(p, func(p *plan.Pattern, part, size int) ([]course, error) { return guessed(p, part, size), nil })
	}
	if err != nil {
		return
	}
	largest := map[int]*patch{}
	for _, gr := range l.groups {
		for _, pt := range gr.patches {
			n := m.nodes[pt.pc.part]
			if pt.mirrored {
				continue
			}
			n.unknown = false
			n.bounds.join(pt.bounds())
			outline := curve{pts: pt.outline(), closed: true, smooth: pt.rings && pt.lines[len(pt.lines)-1].smooth}
			n.fills = append(n.fills, outline)
			if pt.rings && pt.pc.start > 0 && !pt.pc.oval {
				n.inner = append(n.inner, pt.lines[0])
			}
			if o := largest[pt.pc.part]; o == nil || pt.pc.area() > o.pc.area()*1.001 {
				largest[pt.pc.part] = pt
			}
		}
	}
	for part, pt := range largest {
		m.nodes[part].works(pt)
	}
}

// works sets the direction in which a piece is worked, and where an arrow has room in it.
func (n *mapNode) works(pt *patch) {
	if pt.rings {
		n.dir, n.radial = vec{1, 0}, true
		from, to := pt.lines[0].toward(pt.f.o, n.dir), pt.lines[len(pt.lines)-1].toward(pt.f.o, n.dir)
		n.from, n.room = from.to(to, 0.5), to.sub(from).length()
		return
	}
	n.dir = pt.worked()
	deep := pt.depths()
	ends := pt.edgesAt(deep[len(deep)-1] / 2)
	n.from = ends[0].to(ends[1], 0.5)
	n.room = min(deep[len(deep)-1], 2*ends[1].sub(ends[0]).length())
}

// mosaic takes the shapes of joined motifs and of what goes round them.
func (m *mapping) mosaic(mo *mosaic) {
	set := func(part int, b box, inner ...curve) *mapNode {
		n := m.nodes[part]
		n.unknown, n.bounds, n.fills, n.inner = false, b, []curve{b.square()}, inner
		return n
	}
	in := mo.inner()
	cell := mo.cell(0, 0)
	motif := set(mo.motif, cell)
	motif.dir, motif.radial = vec{1, 0}, true
	motif.from, motif.room = cell.middle().add(vec{mo.side / 4, 0}), mo.side/2
	set(mo.whole, in, mo.cells()...)
	out := 0.0
	for i, r := range mo.border {
		if i == 0 || mo.border[i-1].part != r.part {
			set(r.part, in.grown(out), in.grown(out).square())
		}
		out += r.deep
		n := m.nodes[r.part]
		n.bounds, n.fills = in.grown(out), []curve{in.grown(out).square()}
	}
}

// grow finds what each piece grows on. What follows from another arrow anyway has none of its own.
func (m *mapping) grow(p *plan.Pattern) {
	above := make([]map[int]bool, len(m.nodes)) // all that come before a piece
	for i, part := range p.Parts {
		on := map[int]bool{}
		note := func(k int) {
			if k >= 0 && k < i {
				on[k] = true
			}
		}
		for _, o := range part.From {
			note(o.Part)
		}
		for _, r := range part.Start.Runs {
			note(r.Part)
		}
		if part.Grid != nil {
			note(part.Grid.Motif)
		}
		above[i] = map[int]bool{}
		for k := range i {
			if !on[k] {
				continue
			}
			above[i][k] = true
			for a := range above[k] {
				above[i][a] = true
			}
			m.nodes[i].level = max(m.nodes[i].level, m.nodes[k].level+1)
		}
		for k := range i {
			follows := false
			for o := range i {
				follows = follows || on[o] && above[o][k]
			}
			if on[k] && !follows {
				m.nodes[i].parents = append(m.nodes[i].parents, k)
			}
		}
	}
}

// draw draws a piece where it stands, with its number and its arrow.
func (n *mapNode) draw(p *pen, scale float64) {
	own := &pen{scale: scale, shift: n.body.min.sub(n.bounds.min.times(scale))}
	if n.unknown {
		own = &pen{scale: 1}
		own.items = append(own.items, scene.Path{Cmds: own.path(n.body.square()), Stroke: &black, Width: mapLine, Dash: []float64{1.2, 0.8}})
	}
	for _, c := range n.fills {
		own.outlined(white, mapLine, c)
	}
	own.lines(n.inner, mapFine)
	p.items = append(p.items, own.items...)
	if way := n.arrow.to.sub(n.arrow.from); way.length() > 0 {
		// A short arrow is little more than its head.
		k := min(1, way.length()/(1.4*mapWorkLong))
		p.line(straight(n.arrow.from, n.arrow.to.sub(way.unit().times(k*mapWorkLong*0.8))), mapWork)
		p.head(n.arrow.to, way.unit(), k*mapWorkLong, k*mapWorkWide)
	}
	at := vec{n.at.min.x, n.at.min.y + mapNumber/2}
	number := strconv.Itoa(n.number)
	p.items = append(p.items, scene.Label{X: at.x, Y: at.y, Text: number, Height: mapNumber, Face: page.SansBold, Anchor: scene.Start})
	if n.made > 1 {
		p.items = append(p.items, scene.Label{X: at.x + digitWide*mapNumber*float64(len(number)) + 1, Y: at.y, Text: "×" + strconv.Itoa(n.made),
			Height: mapNumber * 0.8, Face: page.Sans, Anchor: scene.Start})
	}
}

// digitWide is the width of a digit in ems: no face of the pages has a wider one.
const digitWide = 0.58

// labelWide is the room that the number of a piece takes.
func (n *mapNode) labelWide() float64 {
	wide := digitWide * mapNumber * float64(len(strconv.Itoa(n.number)))
	if n.made > 1 {
		wide += 1 + digitWide*mapNumber*0.8*float64(1+len(strconv.Itoa(n.made)))
	}
	return wide
}
