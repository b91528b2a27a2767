package compile

import (
	"slices"

	"ovillo/compile/plan"
)

// This file finds what the rows of a chart repeat, and draws less of it.

// strip is a stretch of the lowest line, as it lies from the right, that stands n times side by side.
type strip struct{ from, wide, n int }

// repeat finds the shortest strip that all rows repeat, where the source repeats something in a row: rows of plain stitches
// repeat anything.
func (t *taking) repeat() {
	if len(t.s.Lines) < 2 {
		return
	}
	for i, k := range t.rows {
		for _, r := range k.repeats {
			if s, ok := t.below(i, r.From+k.before, r.Width, r.N); ok {
				if s = t.verified(s); s.n > 1 {
					t.s.Repeat = plan.ChartRepeat{From: t.walked(s), N: s.wide, Times: s.n}
					return
				}
			}
		}
	}
}

// walked is where a strip begins in the order of the lowest line.
func (t *taking) walked(s strip) int {
	if base := &t.s.Lines[0]; base.FromLeft {
		return t.width() - s.from - s.wide*s.n
	}
	return s.from
}

// below finds the strip of the lowest line that a repeat of a row lies over: places from, wide of them, n times, of what the row
// is worked into.
func (t *taking) below(row, from, wide, n int) (strip, bool) {
	open := t.rows[row].open
	if from < 0 || wide*n > len(open)-from {
		return strip{}, false
	}
	column := t.columns()
	lo, hi := t.width(), -1
	for _, id := range open[from : from+wide*n] {
		foot, ok := t.at[id]
		if !ok {
			return strip{}, false
		}
		x := column[foot.Line][foot.At]
		lo, hi = min(lo, x), max(hi, x)
	}
	if row == 0 {
		return strip{lo, wide, n}, true
	}
	// Higher up a repeat lies over so many places of the lowest line as its first and last stitch are apart, and as many more as
	// make it whole.
	over := hi - lo + 1
	if over < n {
		return strip{}, false
	}
	each := (over + n - 1) / n
	return strip{lo, each, n}, lo+each*n <= t.width()
}

// columns says over which place of the lowest line, from the right, everything stands: a stitch over its rightmost foot, chains
// over what lies to the right of them.
func (t *taking) columns() [][]int {
	out := make([][]int, len(t.s.Lines))
	for i := range t.s.Lines {
		l := &t.s.Lines[i]
		out[i] = make([]int, len(l.Stitches))
		at := 0
		for k, j := range l.RightToLeft() {
			if i == 0 {
				out[i][j] = k
				continue
			}
			if feet := l.Stitches[j].Feet; len(feet) > 0 {
				at = t.width()
				for _, f := range feet {
					if f.Line < i {
						at = min(at, out[f.Line][f.At])
					}
				}
				if at == t.width() {
					at = 0
				}
			}
			out[i][j] = at
		}
	}
	return out
}

// verified is the widest run of strips, from s inwards, that are all alike in every row; strips of two and more widths are tried
// as well, since rows may repeat differently. n is 0 if there is none.
func (t *taking) verified(s strip) strip {
	const widest = 6
	for m := 1; m <= widest && s.n/m > 1; m++ {
		for _, skip := range [2]int{0, 1} {
			try := strip{s.from + skip*s.wide*m, s.wide * m, s.n/m - 2*skip}
			if try.n > 1 && t.alike(try) {
				return try
			}
		}
	}
	return strip{}
}

// trait is what is the same of a stitch in every strip: what it is, and where its feet are, counted from its own strip.
type trait struct {
	w    plan.Worked
	feet [4]footTrait
	n    int
}

type footTrait struct{ line, strip, at int }

// alike reports whether all strips are the same in every row.
func (t *taking) alike(s strip) bool {
	in, rank := t.strips(s)
	for i := 1; i < len(t.s.Lines); i++ {
		l := &t.s.Lines[i]
		traits := make([][]trait, s.n)
		for _, j := range l.RightToLeft() {
			b := in[i][j]
			if b < 0 || b >= s.n {
				continue
			}
			w := l.Stitches[j]
			g := trait{n: len(w.Feet)}
			for k, f := range w.Feet {
				if k < len(g.feet) {
					g.feet[k] = footTrait{i - f.Line, in[f.Line][f.At] - b, rank[f.Line][f.At]}
					if in[f.Line][f.At] < 0 || in[f.Line][f.At] >= s.n {
						// What lies beside all strips is not counted like what lies in one; the edge may differ.
						g.feet[k].at = -1
					}
				}
			}
			w.Feet, w.Rides = nil, nil
			g.w = w
			traits[b] = append(traits[b], g)
		}
		for b := 1; b < s.n; b++ {
			if !slices.EqualFunc(traits[0], traits[b], sameTrait) {
				return false
			}
		}
	}
	return true
}

func sameTrait(a, b trait) bool {
	if a.n != b.n || a.w.Kind != b.w.Kind || a.w.Form != b.w.Form || a.w.Chains != b.w.Chains || a.w.Begin != b.w.Begin || a.w.Behind != b.w.Behind {
		return false
	}
	for i := range a.feet {
		x, y := a.feet[i], b.feet[i]
		if x.line != y.line || x.strip != y.strip || x.at != y.at && x.at >= 0 && y.at >= 0 {
			return false
		}
	}
	return true
}

// strips says in which strip everything stands, -1 to the right of them and n to the left, and as which of its strip and line.
func (t *taking) strips(s strip) (in, rank [][]int) {
	columns := t.columns()
	in, rank = make([][]int, len(columns)), make([][]int, len(columns))
	for i := range columns {
		l := &t.s.Lines[i]
		in[i], rank[i] = make([]int, len(columns[i])), make([]int, len(columns[i]))
		count := map[int]int{}
		for _, j := range l.RightToLeft() {
			b := -1
			if x := columns[i][j] - s.from; x >= 0 {
				b = min(x/s.wide, s.n)
			}
			in[i][j], rank[i][j] = b, count[b]
			count[b]++
		}
	}
	return in, rank
}

// shorten draws the repeat n times and leaves the others out. It reports false if there are no such repeats.
func (t *taking) shorten(n int) bool {
	r := &t.s.Repeat
	if n < 1 || n > r.Times {
		return false
	}
	base := &t.s.Lines[0]
	s := strip{r.From, r.N, r.Times}
	if base.FromLeft {
		s.from = t.width() - r.From - r.N*r.Times
	}
	in, rank := t.strips(s)
	// The strips n-1 … Times-2 go: the last one stays, since rows may end in it otherwise than in the middle.
	first, last := n-1, s.n-2
	gone := func(b int) bool { return b >= first && b <= last }
	// What stands where in a strip, to find again what a foot in a strip that goes stands for.
	type spot struct{ line, strip, rank int }
	at := map[spot]int{}
	for i := range in {
		for j, b := range in[i] {
			at[spot{i, b, rank[i][j]}] = j
		}
	}
	stays := func(f plan.Foot, from int) plan.Foot {
		b := in[f.Line][f.At]
		if !gone(b) {
			return f
		}
		to := s.n - 1 // from the strips that stay on the right, the next one is the last
		if from > last {
			to = max(first-1, -1)
		}
		if j, ok := at[spot{f.Line, to, rank[f.Line][f.At]}]; ok {
			f.At = j
		}
		return f
	}
	t.only(func(line, j int) bool { return !gone(in[line][j]) }, func(f plan.Foot, line, j int) (plan.Foot, bool) {
		f = stays(f, in[line][j])
		return f, !gone(in[f.Line][f.At])
	})
	t.s.Left = r.Times - n
	r.From, r.Times = t.walked(strip{s.from, s.wide, n}), n
	return true
}

// window draws the stitches of the lowest line from a to before b, counted from the right, with all that stands on them.
func (t *taking) window(a, b int) {
	width := t.width()
	columns := t.columns()
	has := func(line, j int) bool { return columns[line][j] >= a && columns[line][j] < b }
	t.only(has, func(f plan.Foot, line, j int) (plan.Foot, bool) { return f, has(f.Line, f.At) })
	t.s.CutRight, t.s.CutLeft = a > 0, b < width
	t.s.Repeat = plan.ChartRepeat{}
}

// only keeps some stitches of each line, and of their feet what foot lets stand.
func (t *taking) only(has func(line, j int) bool, foot func(f plan.Foot, line, j int) (plan.Foot, bool)) {
	now := make([][]int, len(t.s.Lines)) // where what stays stands from now on
	for i := range t.s.Lines {
		now[i] = make([]int, len(t.s.Lines[i].Stitches))
		k := 0
		for j := range now[i] {
			now[i][j] = k
			if has(i, j) {
				k++
			}
		}
	}
	lines := make([]plan.Line, len(t.s.Lines))
	for i, l := range t.s.Lines {
		lines[i] = l
		lines[i].Stitches = nil
		for j, w := range l.Stitches {
			if !has(i, j) {
				continue
			}
			var feet []plan.Foot
			for _, f := range w.Feet {
				if f, ok := foot(f, i, j); ok {
					f.At = now[f.Line][f.At]
					feet = append(feet, f)
				}
			}
			w.Feet = feet
			lines[i].Stitches = append(lines[i].Stitches, w)
		}
	}
	t.s.Lines = lines
}

// sameStitches reports whether all sizes that are drawn look alike.
func sameStitches(sizes []*plan.Stitches) bool {
	var first *plan.Stitches
	for _, s := range sizes {
		switch {
		case s == nil:
		case first == nil:
			first = s
		case !s.Like(first):
			return false
		}
	}
	return true
}
