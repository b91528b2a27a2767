package draw

// tipsDown says where a closed end points on things that are not worn on the head or hands: down. Everything else that is
// closed at one end is drawn with that end up.
var tipsDown = map[string]bool{
	"socks": true, "sock": true, "bootees": true, "slippers": true, "bag": true, "tote": true, "pouch": true, "purse": true,
	"basket": true, "bowl": true, "pot": true, "cocoon": true, "sleep_bag": true, "stocking": true, "stockings": true,
}

// limbsUp are the things whose branches point up.
var limbsUp = map[string]bool{"gloves": true, "glove": true, "mittens": true, "mitten": true, "mitts": true}

// down decides whether the rows of the root of a group run down the page.
func (g *graph) down(root int) bool {
	pc := g.pieces[root]
	if !pc.closed {
		// A cardigan from the neck down: its sleeves hang.
		j := g.joint(ending{root, endEdge})
		return j != nil && g.divides(j)
	}
	for _, edge := range [2]int{endEdge, startEdge} {
		j := g.joint(ending{root, edge})
		if j == nil || !g.divides(j) {
			continue
		}
		// The branches hang down: the root grows towards them, or away from those on its start.
		return (edge == endEdge) != limbsUp[g.p.Kind]
	}
	if tip, ok := g.tip(root); ok {
		return (tip == startEdge) != tipsDown[g.p.Kind]
	}
	if j := g.joint(ending{root, startEdge}); j != nil {
		return g.weight(ending{root, endEdge}) > g.weight(ending{j.branches[0].piece, endEdge})
	}
	// A skirt or a cape widens downwards.
	last := g.last(root)
	return last.widest() > 1.1*pc.start && last.rows[len(last.rows)-1].flat > 1.1*pc.start
}

// divides reports whether two tubes or more hang on an edge.
func (g *graph) divides(j *joint) bool {
	tubes := 0
	for _, b := range j.branches {
		if g.pieces[b.piece].closed && !b.around {
			tubes++
		}
	}
	return tubes > 1
}

// tip finds the end at which a chain of single pieces closes: its start or its end.
func (g *graph) tip(root int) (edge int, ok bool) {
	if g.closes(root, startEdge) {
		return startEdge, true
	}
	for i := root; ; {
		j := g.joint(ending{i, endEdge})
		if j == nil {
			return endEdge, g.closes(i, endEdge)
		}
		i = j.branches[0].piece
	}
}

func (g *graph) closes(i, edge int) bool {
	s := g.pieces[i].outwards(edge)
	return s.widths[0] < 0.25*g.pieces[i].widest()
}

// last is the piece at the end of the chain of single pieces from the root on.
func (g *graph) last(i int) *piece {
	for {
		j := g.joint(ending{i, endEdge})
		if j == nil {
			return g.pieces[i]
		}
		i = j.branches[0].piece
	}
}

// weight is the area of a piece and of what hangs on its far edge.
func (g *graph) weight(e ending) float64 {
	sum := g.pieces[e.piece].area()
	if j := g.joint(e); j != nil {
		for _, b := range j.branches {
			sum += g.weight(ending{b.piece, 1 - b.edge})
		}
	}
	return sum
}
