package draw

import (
	"sort"

	"ovillo/compile/plan"
)

// ending is an edge of a piece: its start or its end.
type ending struct{ piece, edge int }

// branch is a piece that hangs on the edge of another.
type branch struct {
	ending
	at, share float64 // the middle of its run on that edge, and how much of the edge it takes: 0 to 1
	both      float64 // where its first run lies, if it has two that face each other across the start; else 0
	rest      bool    // it is what remains of the part after a dividing row
	mirrored  bool    // it is the second of two that are made alike
	around    bool    // it goes round the whole piece, as an edging does
}

// joint is an edge of a piece with what hangs on it.
type joint struct {
	trunk    ending
	branches []branch
	wrong    bool // places on this edge are numbered as the wrong side shows them
}

// graph is the pattern in one size as pieces and joints.
type graph struct {
	p      *plan.Pattern
	size   int
	pieces []*piece
	joints []*joint
	of     [][]int // pieces of each part
	rows   [][]course
	from   [][]plan.Origin // of each part: what it grows on
	bridge []int           // number of rows after which a part only bridges gaps; all of them where it does not
	group  []int           // of each piece: joined pieces are of one group
	soles  [][2]int        // ovals that are drawn by themselves, and the tubes that stand on them
	show   *plan.Schematic // which parts are drawn; nil: all
}

// rowsOf gives the rows of a part of a pattern in a size.
type rowsOf func(p *plan.Pattern, part, size int) ([]course, error)

// connect makes the graph of a pattern in the size that is shown.
func connect(p *plan.Pattern, read rowsOf) (*graph, error) {
	g := &graph{p: p, size: p.Shown, from: make([][]plan.Origin, len(p.Parts)), of: make([][]int, len(p.Parts)), rows: make([][]course, len(p.Parts)), bridge: make([]int, len(p.Parts))}
	for i := range p.Parts {
		rows, err := read(p, i, g.size)
		if err != nil {
			return nil, err
		}
		if p.Folded(i) {
			fold(rows)
		}
		raise(rows)
		g.rows[i], g.bridge[i], g.from[i] = rows, len(rows), origins(p, i)
	}
	g.mark()
	for i := range p.Parts {
		for _, pc := range cut(p, i, g.rows[i], g.cuts(i)) {
			g.of[i] = append(g.of[i], len(g.pieces))
			g.pieces = append(g.pieces, pc)
		}
	}
	g.group = make([]int, len(g.pieces))
	for i := range g.group {
		g.group[i] = i
	}
	for i := range p.Parts {
		for k := 1; k < len(g.of[i]); k++ {
			g.link(ending{g.of[i][k-1], endEdge}, branch{ending: ending{g.of[i][k], startEdge}, at: 0.5, rest: true})
		}
		if len(g.of[i]) > 0 {
			g.hang(i)
		}
	}
	return g, nil
}

// fold lays rows round the wearer, as those of a cardigan lie when it is closed.
func fold(rows []course) {
	for k := range rows {
		rows[k].flat, rows[k].closed, rows[k].folded = rows[k].flat/2, true, true
	}
}

// grows reports whether a part that starts so grows on others. One with a start of its own may meet them later, when
// pieces are joined, but does not hang on them.
func grows(k plan.StartKind) bool { return k == plan.StartFrom || k == plan.StartIn }

// mark notes the rows where something is measured: they are drawn as wide as they are, and so are those of a part that
// is alike.
func (g *graph) mark() {
	for _, m := range g.p.Measures {
		for _, on := range m.Of {
			if on.Part < 0 || on.Part >= len(g.rows) || on.Row == nil {
				continue
			}
			for k, r := range g.rows[on.Part] {
				if r.number != inSize(on.Row, g.size) {
					continue
				}
				for _, rows := range g.rows {
					if sameRows(rows, g.rows[on.Part]) {
						rows[k].exact = true
					}
				}
			}
		}
	}
}

// cuts finds the rows of a part before which other parts were left to be worked, and the rows at its end that only
// bridge the gaps between such places: those count in its height, but the piece stays as wide as it was.
func (g *graph) cuts(part int) []int {
	rows := g.rows[part]
	seen := map[int]bool{}
	for i := range g.p.Parts {
		if i == part {
			continue
		}
		for _, o := range g.from[i] {
			if o.Part != part || o.Kind == plan.RefRow || o.Kind == plan.RefFoundation || o.Kind == plan.RefEdge {
				continue
			}
			if e := g.below(o); e > 0 && e < len(rows) && rows[e].passed {
				seen[e] = true
			}
		}
	}
	var cuts []int
	for e := range seen {
		cuts = append(cuts, e)
	}
	sort.Ints(cuts)
	if len(cuts) == 0 {
		return nil
	}
	if e := cuts[len(cuts)-1]; bridges(rows, e) {
		g.bridge[part] = e
		for k := e; k < len(rows); k++ {
			rows[k].flat, rows[k].closed, rows[k].exact = rows[e-1].flat, rows[e-1].closed, true
		}
		cuts = cuts[:len(cuts)-1]
	}
	return cuts
}

// bridges reports whether the rows from e on are but one or two narrow ones between places left aside.
func bridges(rows []course, e int) bool {
	if len(rows)-e > 2 {
		return false
	}
	for _, r := range rows[e:] {
		if r.flat > 0.3*rows[e-1].flat {
			return false
		}
	}
	return true
}

// below is the number of rows of the part that lie below the places of an origin, -1 if it cannot be told.
func (g *graph) below(o plan.Origin) int {
	if o.Part < 0 || o.Part >= len(g.rows) || !(run{o, g.size}).known() {
		return -1
	}
	rows := g.rows[o.Part]
	switch {
	case o.Kind == plan.RefFoundation:
		return 0
	case o.Kind == plan.RefEdge:
		return len(rows)
	}
	number := inSize(o.Row, g.size)
	if number == 0 {
		return 0
	}
	for k, r := range rows {
		if r.number != number {
			continue
		}
		// Places that were left aside lie on the row below the one that left them.
		of := inSize(o.Of, g.size)
		if k > 0 && r.passed && of != r.places && of == rows[k-1].places {
			return k
		}
		return k + 1
	}
	return -1
}

// edge is the ending at which the places of an origin lie.
func (g *graph) edge(o plan.Origin) (ending, bool) {
	e := g.below(o)
	if e < 0 || len(g.of[o.Part]) == 0 {
		return ending{}, false
	}
	if e >= g.bridge[o.Part] {
		e = len(g.rows[o.Part])
	}
	if e == 0 {
		return ending{g.of[o.Part][0], startEdge}, true
	}
	for _, i := range g.of[o.Part] {
		if pc := g.pieces[i]; pc.first+len(pc.rows) == e {
			return ending{i, endEdge}, true
		}
	}
	return ending{}, false
}

// link hangs a branch on an edge, unless the two are joined already: a group stays a tree.
func (g *graph) link(trunk ending, b branch) bool {
	if g.group[trunk.piece] == g.group[b.piece] && !b.mirrored {
		return false
	}
	old, now := g.group[b.piece], g.group[trunk.piece]
	for i := range g.group {
		if g.group[i] == old {
			g.group[i] = now
		}
	}
	for _, j := range g.joints {
		if j.trunk == trunk {
			j.branches = append(j.branches, b)
			return true
		}
	}
	g.joints = append(g.joints, &joint{trunk: trunk, branches: []branch{b}, wrong: g.shownWrong(trunk)})
	return true
}

// shownWrong reports whether the places of an edge are numbered as the wrong side shows them: they are numbered as they were
// made, and so by the side that the last row shows.
func (g *graph) shownWrong(e ending) bool {
	rows := g.pieces[e.piece].rows
	return e.edge == endEdge && rows[len(rows)-1].wrong
}
