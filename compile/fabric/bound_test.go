package fabric

import "testing"

// A row and a start may be as wide as MostInRow, and a run of chains as long; one more is too wide, and says by how much.
func TestMostInRow(t *testing.T) {
	begun := func(text string) (*Fabric, *Part) {
		f, p := edged(text, false)
		f.Limit = 10 * MostInRow
		return f, p
	}
	for over := range 2 {
		n := MostInRow + over
		wide := func(what string, have int, f *Fault) {
			t.Helper()
			if over == 0 && f != nil || over == 1 && (f == nil || f.Kind != TooWide || f.Need != have || f.Have != MostInRow) {
				t.Errorf("%s of %d: %+v", what, n, f)
			}
		}
		_, p := begun("")
		wide("a foundation", n, p.Foundation(chain, n, false))
		_, p = begun("")
		_, f := p.ChainRun(n)
		wide("a start with chains", n, f)
		for what, ops := range map[string]struct {
			list []*Op
			need int
		}{
			"chains":                {[]*Op{next(1), ch(n), next(1)}, n},
			"chains and chains":     {[]*Op{next(1), ch(n - 3), ch(3), next(1)}, 3},
			"stitches in one place": {[]*Op{next(1), per(n-1, 1)}, 1},
			"stitches in several":   {[]*Op{per(n/2, 1), per(n-n/2, 1)}, 1},
		} {
			_, p := begun("ss")
			_, f := p.Work(flat(ops.list...))
			wide(what, ops.need, f)
		}
	}
}
