package compile

import (
	"slices"

	"ovillo/compile/caution"
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
)

// This file tells where a yarn lies loose behind the stitches of another.

// rests notes a row in which a yarn rests while another is worked, and is taken up again: the yarn that rests goes along behind. In rows
// from a chart the page tells to work over it, so that none hangs loose.
func (w *working) rests(z int, res *fabric.Result) {
	c := w.p.c
	if !c.resting.IsZero() || len(w.low.cells) > 0 || w.p.chart != nil {
		return
	}
	runs := 0
	var yarns []int32
	last := int32(-1)
	for _, id := range res.Made {
		if yarn := c.fabrics[z].Elems[id].Yarn; runs == 0 || yarn != last {
			runs++
			if last = yarn; !slices.Contains(yarns, yarn) {
				yarns = append(yarns, yarn)
			}
		}
	}
	// In a round the yarn of its beginning is taken up again at the next one; in rows it waits at its own edge.
	if len(yarns) > 1 && (runs > len(yarns) || w.kick.style != plan.Rows && w.kick.style != plan.TurnedRounds) && !worksChart(w.n) {
		c.resting = w.n.Span()
	}
}

// worksChart reports whether a row works a row of a chart among its instructions.
func worksChart(n *lang.Row) bool {
	found := false
	lang.Inspect(n, func(m lang.Node) bool {
		if _, is := m.(*lang.ChartRow); is {
			found = true
		}
		return !found
	})
	return found
}

// floats tells whether yarns lie loose inside: where one rests in a row, and no text says that it is carried in the stitches.
func (c *checker) floats() caution.Said {
	if c.resting.IsZero() || c.claimed("carried").Is == caution.True {
		return caution.Said{Is: caution.False}
	}
	return caution.Said{Is: caution.True, At: c.resting}
}
