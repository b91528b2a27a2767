package chart

import "math"

// bend is how rows wave up and down: those of a ripple do, since their stitches lean the same way row after row, away from where they
// increase and towards where they decrease. Rows then lie across their stitches, as in the fabric.
type bend struct {
	from   float64   // where the first slope begins
	slopes []float64 // of a row, one for each stretch
	high   []float64 // the height at the beginning of each stretch, and at the end of the last
}

const (
	bendWide  = 1.0  // of a stretch
	bendLeast = 0.35 // rows whose stitches lean less are straight
	bendMost  = 0.85
	// Where stitches lean more than this, rows grow all along, which waving would not set right.
	bendTooFar = 1.5
	bendDeep   = 1.2 // of a wave that is worth showing
	bendShare  = 0.9 // of what would set rows square to their stitches
)

// bent finds how the rows of a chart wave; nil if they are straight.
func (l *layout) bent() *bend {
	lo, hi := math.Inf(1), math.Inf(-1)
	for i := range l.rows {
		if len(l.rows[i].nodes) == 0 {
			continue
		}
		a, b := l.rows[i].ends()
		lo, hi = min(lo, a), max(hi, b)
	}
	if l.s.Outward || !(hi-lo >= 4*bendWide) {
		return nil
	}
	n := int(math.Ceil((hi - lo) / bendWide))
	sum, all, lines := make([]float64, n), make([]float64, n), make([]int, n)
	for i := 1; i < len(l.rows); i++ {
		lean, many := make([]float64, n), make([]float64, n)
		for k := range l.rows[i].nodes {
			nd := &l.rows[i].nodes[k]
			if len(nd.feet) == 0 || nd.spike || nd.tall == 0 || l.fanned(i, k) {
				continue
			}
			off := nd.s
			for _, f := range nd.feet {
				off -= f.s / float64(len(nd.feet))
			}
			at := min(max(int((nd.s-lo)/bendWide), 0), n-1)
			lean[at] += off / max(nd.v-nd.under, 0.5)
			many[at]++
		}
		for at := range lean {
			if many[at] > 0 {
				sum[at] += lean[at] / many[at]
				all[at] += math.Abs(lean[at] / many[at])
				lines[at]++
			}
		}
	}
	raw := make([]float64, n)
	any := false
	for at := range raw {
		// They must lean row after row, and all the same way.
		if lines[at] < 2 || math.Abs(sum[at]) < 0.8*all[at] {
			continue
		}
		lean := sum[at] / float64(lines[at])
		if math.Abs(lean) > bendTooFar {
			return nil
		}
		if math.Abs(lean) > bendLeast {
			raw[at] = min(max(-bendShare*lean, -bendMost), bendMost)
			any = true
		}
	}
	if !any {
		return nil
	}
	b := &bend{from: lo, slopes: make([]float64, n), high: make([]float64, n+1)}
	least, most := 0.0, 0.0
	for at := range raw {
		b.slopes[at] = (raw[max(at-1, 0)] + 2*raw[at] + raw[min(at+1, n-1)]) / 4
		b.high[at+1] = b.high[at] + b.slopes[at]*bendWide
		least, most = min(least, b.high[at+1]), max(most, b.high[at+1])
	}
	if most-least < bendDeep {
		return nil
	}
	for at := range b.high {
		b.high[at] -= least
	}
	return b
}

// fanned reports whether a stitch is one of three or more in one place, which lean each its own way.
func (l *layout) fanned(i, k int) bool {
	list, n := l.s.Lines[i].Stitches, 1
	for j := k - 1; j >= 0 && sameFoot(&list[j], &list[k]); j-- {
		n++
	}
	for j := k + 1; j < len(list) && sameFoot(&list[j], &list[k]); j++ {
		n++
	}
	return n > 2
}

// at is how high a row lies at a place, and how it slopes there.
func (b *bend) at(s float64) (high, slope float64) {
	if b == nil {
		return 0, 0
	}
	x := (s - b.from) / bendWide
	n := len(b.slopes)
	switch k := int(math.Floor(x)); {
	case x < 0:
		return b.high[0], 0
	case k >= n:
		return b.high[n], 0
	default:
		return b.high[k] + (x-float64(k))*b.slopes[k]*bendWide, b.slopes[k]
	}
}

// most is the greatest height.
func (b *bend) most() float64 {
	top := 0.0
	if b != nil {
		for _, h := range b.high {
			top = max(top, h)
		}
	}
	return top
}
