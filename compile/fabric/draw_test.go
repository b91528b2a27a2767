package fabric

import (
	"pgregory.net/rapid"

	"ovillo/compile/plan"
)

// Random edges and rows for the laws.

var edgeText = rapid.StringMatching(`[sss123]{0,14}`)

// drawStyle keeps to the styles that any row can be worked in.
func drawStyle(t *rapid.T) Style {
	return rapid.SampledFrom([]Style{plan.Rows, plan.JoinedRounds, plan.TurnedRounds, plan.SpiralRounds}).Draw(t, "style")
}

// drawOp is any instruction; deep bounds how far lists stand in lists.
func drawOp(t *rapid.T, deep int) *Op {
	n := rapid.IntRange(0, 4).Draw(t, "n")
	takes := rapid.SampledFrom([]Takes{Stitches, Stitches, Spaces, Stitches | Spaces, Stitches | InChains, Gaps}).Draw(t, "takes")
	kinds := 17
	if deep == 0 {
		kinds = 14
	}
	switch rapid.IntRange(0, kinds).Draw(t, "kind") {
	case 0, 1, 2:
		return nextOf(takes, n)
	case 3:
		o := nextOf(takes, rapid.IntRange(0, 2).Draw(t, "places"))
		o.Per = nums(n)
		return o
	case 4:
		return dec(rapid.IntRange(2, 3).Draw(t, "together"), rapid.IntRange(0, 2).Draw(t, "times"))
	case 5:
		return as(ch(n), drawLabel(t))
	case 6:
		return as(skip(n), drawLabel(t))
	case 7:
		return leave(n)
	case 8:
		return at(rapid.SampledFrom([]TargetKind{First, Last, Same, InMarked, GapHere, UnworkedNext, UnworkedEach, InRing}).Draw(t, "place"))
	case 9:
		return named(rapid.SampledFrom([]TargetKind{Named, NamedEach, NextNamed, Below, Beside, Through}).Draw(t, "how"), drawName(t))
	case 10:
		return marks(rapid.SampledFrom([]OpKind{Mark, Move, Unmark}).Draw(t, "verb"), drawName(t),
			rapid.SampledFrom([]plan.MarkWhere{plan.LastMade, plan.NextOne, plan.GapHere, plan.FirstOne, plan.MiddleOne, plan.LastOne}).Draw(t, "where"))
	case 11:
		return skipTo(drawBound(t))
	case 12:
		return slideTo(drawBound(t))
	case 13:
		o := spread(n, rapid.IntRange(1, 2).Draw(t, "of"), rapid.SampledFrom([]Spreading{AtEnds, Alternating, Centred}).Draw(t, "spread"))
		o.Bound = drawBound(t)
		return o
	case 14:
		o := to(drawBound(t))
		o.Target.Takes = takes
		return o
	case 15:
		return times(n, drawOps(t, deep-1)...)
	case 16:
		return repeatTo(drawBound(t), drawOps(t, deep-1)...)
	}
	return together(nextOf(takes, rapid.IntRange(0, 2).Draw(t, "groups")), drawOps(t, deep-1)...)
}

func drawOps(t *rapid.T, deep int) []*Op {
	var out []*Op
	for range rapid.IntRange(1, 4).Draw(t, "ops") {
		out = append(out, drawOp(t, deep))
	}
	return out
}

func drawLabel(t *rapid.T) string { return rapid.SampledFrom([]string{"", "a", "b"}).Draw(t, "label") }

func drawName(t *rapid.T) string {
	return rapid.SampledFrom([]string{"a", "b", "m", "g", FoundationName, EdgeName}).Draw(t, "name")
}

func drawBound(t *rapid.T) Bound {
	switch rapid.IntRange(0, 4).Draw(t, "bound") {
	case 0:
		return last(rapid.IntRange(0, 3).Draw(t, "last"))
	case 1:
		return Bound{Kind: ToSpace}
	case 2:
		return Bound{Kind: ToName, Name: drawName(t), N: nums(rapid.IntRange(0, 2).Draw(t, "before"))}
	case 3:
		return Bound{Kind: ToMarker}
	}
	return Bound{}
}

// drawMarks sets a marker in a stitch and one in a gap, where there is room.
func drawMarks(t *rapid.T, p *Part) {
	n := len(p.Edge())
	if n == 0 {
		return
	}
	in, gap := rapid.IntRange(0, n-1).Draw(t, "in"), rapid.IntRange(0, n).Draw(t, "gap")
	p.marks["m"] = &marker{edge: p.edge.serial, at: in}
	p.marks["g"] = &marker{edge: p.edge.serial, at: gap, gap: true}
}

// plainOps is a row that comes out on an edge of n stitches: it takes them all, one instruction after the other, and none of
// its instructions goes as far as it can.
func plainOps(t *rapid.T, n int) []*Op {
	var out []*Op
	for n > 0 {
		k := rapid.IntRange(1, n).Draw(t, "k")
		switch rapid.IntRange(0, 5).Draw(t, "what") {
		case 0:
			out = append(out, per(rapid.IntRange(2, 4).Draw(t, "per"), k))
		case 1:
			k = min(max(k, 2), n)
			if k < 2 {
				out = append(out, next(1))
				n--
				continue
			}
			out = append(out, dec(k, 1))
		case 2:
			out = append(out, skip(k))
		case 3:
			k = rapid.IntRange(1, max(1, n/2)).Draw(t, "half")
			m := n / k
			body := []*Op{next(k)}
			if rapid.Bool().Draw(t, "chains") {
				body = append(body, ch(2))
			}
			out = append(out, times(m, body...))
			n -= k * m
			continue
		case 4:
			out = append(out, together(next(k), next(2), ch(1), next(1)))
		default:
			out = append(out, next(k))
		}
		n -= k
	}
	return out
}
