package layout

import (
	"math"
	"unicode"

	"ovillo/render/rich"
)

// The costs of a whole line. A paragraph takes as few lines as it can; within that, the right edge is as even as it can
// be made over the paragraph as a whole (the last line is free), which greedy filling does not look for.
const (
	costEmpty = 100   // a line with nothing on it; a shorter one costs the square of its share
	costLine  = 1e5   // one more line
	costStub  = 20    // a last line of one short word
	costWide  = 1e9   // a line that cannot be made to fit
	tolerance = 0.005 // millimetres a line may stand out, for rounding
)

// Break sets a text in lines no wider than measure by total fit. The first line starts indent millimetres in. Lines end
// only at ordinary spaces and inside compounds, after the hyphen or slash, and with [Style.Hyphens] at soft hyphens, but not in
// the last word; a piece that is wider than the measure is torn, since text must not leave its column.
func Break(t rich.Text, s Style, measure, indent float64) []Line {
	p := measureText(t, s)
	if len(p.letters) == 0 {
		return nil
	}
	list := p.chances(measure)
	if indent > 0 { // a first piece that does not fit beside what stands in the indent goes below it
		list = append([]chance{{}}, list...)
	}
	stops := p.fit(list, measure, indent)
	lines := make([]Line, 0, len(stops))
	start := 0
	for _, c := range stops {
		l := p.line(start, c.end)
		if c.hyphen > 0 {
			l.hyphenate(c.hyphen)
		}
		if len(lines) == 0 {
			l.X = indent
		}
		lines = append(lines, l)
		start = c.next
	}
	return lines
}

// node is the best way to break the text up to one chance.
type node struct {
	cost float64
	prev int
}

// fit chooses the chances at which the lines end.
func (p *paragraph) fit(list []chance, measure, indent float64) []chance {
	best := make([]node, len(list)+1) // best[0] is the start of the text, best[k+1] the chance k
	for k, c := range list {
		best[k+1].cost = math.Inf(1)
		for i := k; i >= 0; i-- {
			if i < k && list[i].must {
				break // a line cannot run over a forced end
			}
			start, room := 0, measure
			if i > 0 {
				start = list[i-1].next
			} else {
				room -= indent
			}
			cost, wide := p.cost(list, start, k, i, room)
			if c.hyphen > 0 && i > 0 && list[i-1].hyphen > 0 {
				cost += costTwice
			}
			if total := best[i].cost + cost + c.cost; total < best[k+1].cost {
				best[k+1] = node{total, i}
			}
			if wide && i < k {
				break // adding words makes it wider still
			}
		}
	}
	var stops []chance
	for k := len(list); k > 0; k = best[k].prev {
		stops = append(stops, list[k-1])
	}
	for i, j := 0, len(stops)-1; i < j; i, j = i+1, j-1 {
		stops[i], stops[j] = stops[j], stops[i]
	}
	return stops
}

// cost is what the line from letter start to chance k costs, which holds the pieces after chance i; and whether it is too
// wide.
func (p *paragraph) cost(list []chance, start, k, i int, room float64) (float64, bool) {
	end := list[k].end
	w := p.width(start, end) + list[k].hyphen
	runes := end - start
	if list[k].hyphen > 0 {
		runes++
	}
	if w > room+tolerance || p.style.MaxRunes > 0 && runes > p.style.MaxRunes {
		return costWide * (1 + w), true
	}
	if list[k].must {
		if i == k && i > 0 && !list[i-1].must && p.stub(start, end) {
			return costLine + costStub, false
		}
		return costLine, false
	}
	slack := (room - w) / room
	return costLine + costEmpty*slack*slack, false
}

// stub reports whether the letters are one word too short to stand on a line alone: seven letters or fewer.
func (p *paragraph) stub(start, end int) bool {
	n := 0
	for _, l := range p.letters[start:end] {
		if unicode.IsLetter(l.r) || unicode.IsDigit(l.r) {
			n++
		}
	}
	return n <= 7
}
