package draw

import (
	"math"

	"ovillo/compile/plan"
)

// footing is what a part stands on at one edge of another piece.
type footing struct {
	ending
	runs   []run
	places int
}

// hang joins a part to what it grows on.
func (g *graph) hang(part int) {
	own := ending{g.of[part][0], startEdge}
	feet := g.footings(part)
	if len(feet) == 0 {
		return
	}
	if merged := g.merged(feet); len(merged) > 1 {
		g.merge(own, merged)
		return
	}
	main := feet[0]
	for _, f := range feet[1:] {
		if f.places > main.places {
			main = f
		}
	}
	if g.stands(own.piece, main.ending) {
		g.soles = append(g.soles, [2]int{main.piece, own.piece})
		g.pieces[own.piece].side = true
		leans(g.p.Parts[part], g.piecesOf(part), g.size)
		return
	}
	b := branch{ending: own, around: g.encloses(own.piece, main.piece)}
	b.at, b.share = spread(main.runs)
	b.both = facing(main.runs)
	g.begins(own.piece, main.ending, b)
	if g.p.Parts[part].Make != 2 || b.around || !g.pieces[main.piece].closed || !g.pieces[own.piece].closed {
		g.link(main.ending, b)
		return
	}
	g.twice(main, b)
}

// stands reports whether a tube stands on the rim of an oval, as the upper of a shoe stands on its sole. The oval is then drawn
// from above, and the tube from its side, where the round begins at one of its ends.
func (g *graph) stands(own int, on ending) bool {
	sole, upper := g.pieces[on.piece], g.pieces[own]
	if !sole.oval || !sole.flatRound() || on.edge != endEdge || !upper.closed {
		return false
	}
	last := upper.rows[len(upper.rows)-1]
	return 2*(last.flat-upper.start)/max(upper.tall(), 1e-6) < flatLeast
}

// begins lets a flat piece on a run of a flat edge begin as wide as that run is: its first row may be shaped already.
func (g *graph) begins(own int, on ending, b branch) {
	pc, trunk := g.pieces[own], g.pieces[on.piece]
	if pc.closed || trunk.closed || b.around || b.share <= 0 {
		return
	}
	width := trunk.start
	if on.edge == endEdge {
		width = trunk.rows[len(trunk.rows)-1].flat
	}
	if width *= b.share; math.Abs(width-pc.start) < 0.12*width {
		pc.start, pc.shaped = width, true
		leans(g.p.Parts[pc.part], g.piecesOf(pc.part), g.size)
	}
}

func (g *graph) piecesOf(part int) []*piece {
	var all []*piece
	for _, i := range g.of[part] {
		all = append(all, g.pieces[i])
	}
	return all
}

// twice hangs a part that is made two times. Its runs may be those of both, or of the first alone.
func (g *graph) twice(main footing, b branch) {
	c := b
	c.mirrored = true
	if len(main.runs) > 1 && b.share > 0.6 {
		half := len(main.runs) / 2
		b.at, b.share = spread(main.runs[:half])
		c.at, c.share = spread(main.runs[half:])
	} else {
		c.at = wrap(b.at + 0.5)
	}
	if g.link(main.ending, b) && b.share <= 0.6 {
		g.link(main.ending, c)
	}
}

// footings groups the origins of a part by the edge they lie on. Places of the runs proper count; spaces and the
// stitches beside them only where there is nothing else.
func (g *graph) footings(part int) []footing {
	var feet []footing
	for pass := 0; pass < 2 && len(feet) == 0; pass++ {
		for _, o := range g.from[part] {
			small := o.Kind == plan.RefSpace || o.Kind == plan.RefStitches
			if o.Part == part || small != (pass == 1) {
				continue
			}
			at, ok := g.edge(o)
			if !ok {
				continue
			}
			feet = stand(feet, at, run{o, g.size})
		}
	}
	return feet
}

func stand(feet []footing, at ending, r run) []footing {
	for i := range feet {
		if feet[i].ending == at {
			feet[i].runs = append(feet[i].runs, r)
			feet[i].places += r.length()
			return feet
		}
	}
	return append(feet, footing{at, []run{r}, r.length()})
}

// spread is the middle of some runs of one edge and their share of it. On a round the runs may lie on both sides of the
// start.
func spread(runs []run) (at, share float64) {
	weight := 0.0
	for _, r := range runs {
		at += r.at() * r.share()
		weight += r.share()
	}
	if weight == 0 {
		return 0.5, 0
	}
	return at / weight, min(weight, 1)
}

// facing is the middle of the first of two runs as far after the start of the round as the other lies before it: front
// and back of one finger. 0 if that is not so.
func facing(runs []run) float64 {
	if len(runs) != 2 {
		return 0
	}
	a, b := runs[0].at(), runs[1].at()
	if a > b {
		a, b = b, a
	}
	if a <= 0 || a+b < 0.9 || a+b > 1.1 {
		return 0
	}
	return a
}

func wrap(f float64) float64 {
	if f >= 1 {
		return f - 1
	}
	return f
}

// merged are the footings of a part that brings several others together, as a yoke brings body and sleeves.
func (g *graph) merged(feet []footing) []footing {
	most := 0
	for _, f := range feet {
		most = max(most, f.places)
	}
	var kept []footing
	seen := map[int]bool{}
	for _, f := range feet {
		_, share := spread(f.runs)
		part := g.pieces[f.piece].part
		if f.edge != endEdge || seen[part] || share < 0.4 || f.places*6 < most {
			continue
		}
		seen[part] = true
		kept = append(kept, f)
	}
	return kept
}

// merge hangs several pieces by their ends on the start of another. Where each lies on that start follows from the order
// in which it takes them up.
func (g *graph) merge(own ending, feet []footing) {
	sum := 0
	for _, f := range feet {
		sum += f.places
	}
	done := 0
	for _, f := range feet {
		g.link(own, branch{
			ending: f.ending,
			at:     (float64(done) + float64(f.places)/2) / float64(max(sum, 1)),
			share:  float64(f.places) / float64(max(sum, 1)),
		})
		done += f.places
	}
}

// encloses reports whether a piece in rounds goes round the whole outline of a flat one: then its start is about as
// long as that outline.
func (g *graph) encloses(outer, inner int) bool {
	o, i := g.pieces[outer], g.pieces[inner]
	if !o.closed || i.closed || i.tall() == 0 {
		return false
	}
	ratio := 2 * o.start / (2 * (i.widest() + i.tall()))
	return ratio > 0.7 && ratio < 1.4
}
