package words

import "ovillo/render/rich"

func (e *english) makeMotifs(n num) rich.Text {
	return fill("make {}~"+timesOf(n, "motif", "motifs")+", joined to one another in the last "+e.rowWord(true).One, n)
}

func (e *english) motifs(g laid) rich.Text {
	return fill("{}~"+timesOf(g.n, "motif", "motifs")+", {} across and {} down, joined while they are worked", g.n, g.across, g.down)
}

func (e *english) layMotifs(g laid) rich.Text {
	if !g.many {
		return rich.T("There is one motif, and nothing to join it to.")
	}
	order := "row by row from the top, each row from the left"
	switch {
	case g.across.one():
		order = "from the top down"
	case g.down.one():
		order = "from left to right"
	}
	text := "Work the motifs one after another in the order of their numbers, " + e.sided(order) + ". Work each up to its last round as it " +
		"stands. In the last round, with the right side facing, join it to the motifs that lie beside it already, and hold it so that " +
		"the joined sides come first in the round."
	if g.crossed {
		text += " Where corners meet already, join to the corner diagonally opposite."
	}
	all := fill("In all there are {}~shared "+timesOf(g.shared, "side", "sides")+" and {}~"+timesOf(g.joins, "join", "joins"), g.shared, g.joins)
	switch {
	case g.sides && g.corners:
		all = fill(e.expand("{}: {}~at side~{sp*.} and {}~at corners."), all, g.atSides, g.atCorners)
	default:
		all = fill("{}, all at corners.", all)
	}
	return join(" ", rich.T(text), all)
}

func (e *english) motifSize(side rich.Text) rich.Text { return fill("1~motif = {} square", side) }

func (e *english) whichMotifs(n num, sides int, rest bool) rich.Text {
	which := ", the first"
	switch {
	case sides == 2 || rest:
		which = ", all the others"
	case sides == 1:
		which = ", the others of the top row and the first of each row below"
	}
	return fill("{}~"+timesOf(n, "motif", "motifs")+which, n)
}

func (e *english) joinTo(space noun, again bool) rich.Text {
	sl := e.short("slst").one
	if again {
		return fill("{} in corresponding {}", sl, space.one)
	}
	return fill("{} in corresponding {} of adjoining motif", sl, space.one)
}

func (e *english) startAround(r named, y joined) rich.Text {
	return fill(e.joins(y)+e.sided(" in the first {} after the upper right corner of {}."), e.short("st").one, e.owner(r))
}
