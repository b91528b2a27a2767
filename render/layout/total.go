package layout

import "math"

// The costs of breaks, in square millimetres: a sheet whose foot is open by 40 mm costs (40 − 30)², the first thirty being free,
// since that is better than a row that is split. One sheet more costs more than anything else, and strips that belong together
// are parted only where they have to be.
const (
	freeWhite   = 30.0 // millimetres may be open at the foot of a sheet
	costYields  = 100  // strips parted that had better be together: worth it from 40 mm of white
	costSplit   = 300  // worth it from 48 mm of white: a sheet that ends between two strips without white between them: the lines of a row or of a table
	scantSheet  = 0.2  // a sheet that ends a document or comes before a fresh one is filled so far at least
	costScant   = 500  // for one that is empty; less as it is fuller
	costSheet   = 1e5
	costParted  = 1e7
	costHeading = 1e9  // a heading parted from what it names
	costTall    = 1e11 // a strip that is taller than its sheet
)

// breaks chooses the strips with which sheets start: those that cost least over the whole. Of choices that cost the same it
// takes the one whose first sheets are fullest. The work is the number of strips times those that fit on a sheet.
func breaks(strips []Strip, first, rest float64) []int {
	n := len(strips)
	if n == 0 {
		return nil
	}
	best := make([]float64, n+1) // of the strips from i on, were a sheet to start there
	next := make([]int, n)
	for i := n - 1; i >= 0; i-- {
		height := rest
		if i == 0 {
			height = first
		}
		best[i] = math.Inf(1)
		m := measure{height: height}
		m.resume(strips[i].Resume)
		for j := i + 1; j <= n; j++ {
			m.add(strips[j-1])
			c := m.cost(strips, i, j)
			if total := c + best[j]; total <= best[i]+slop {
				best[i], next[i] = total, j
			}
			if m.full() || j < n && strips[j].Fresh {
				break
			}
		}
	}
	var starts []int
	for i := 0; i < n; i = next[i] {
		starts = append(starts, i)
	}
	return starts
}

// measure adds up what stands on a sheet.
type measure struct {
	height, y, give float64
	any             bool
}

func (m *measure) add(s Strip) {
	if m.y > 0 {
		m.y += s.Space
	}
	if m.any {
		m.give += s.Give
	}
	m.y += s.H
	m.any = true
}

func (m *measure) resume(heads []Strip) {
	for _, s := range heads {
		m.add(s)
	}
}

// full reports whether there is no room on the sheet, even in its spaces.
func (m *measure) full() bool { return m.y-m.give > m.height+slop }

// cost is that of a sheet with the strips from i up to j.
func (m *measure) cost(strips []Strip, i, j int) float64 {
	c := costSheet
	if m.full() {
		if j > i+1 {
			return math.Inf(1)
		}
		c += costTall
	}
	last := strips[j-1]
	filled := min(m.y, m.height) / m.height
	if j == len(strips) || strips[j].Fresh {
		if i > 0 && filled < scantSheet {
			c += costScant * (1 - filled/scantSheet)
		}
		return c
	}
	if white := m.height - m.y - freeWhite; white > 0 {
		c += white * white
	}
	switch {
	case last.Keep && last.Yields:
		c += costYields
	case last.Keep:
		c += costParted
	}
	if last.Heading {
		c += costHeading
	}
	if strips[j].Space == 0 && !last.Keep {
		c += costSplit
	}
	return c
}
