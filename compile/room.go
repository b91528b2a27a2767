package compile

import (
	"slices"
	"strings"

	"ovillo/compile/fabric"
	"ovillo/compile/numeral"
)

// Room is memory that one check after the other works in, so that a source that is checked at every keystroke does not take it anew
// each time. It serves one check at a time; the zero Room is ready for use. Nothing of a checked pattern lies in it.
type Room struct {
	fabrics []*fabric.Room
	scan    []scanRoom

	// What was found in texts, which are read again as long as they stand there.
	read map[string][]numeral.Number
	made map[string]claimAt
}

// claimAt is where a text makes a claim, if it does.
type claimAt struct {
	from, to int
	ok       bool
}

// claim finds a claim in a text, from and to.
func (r *Room) claim(claim, text string) (from, to int, ok bool) {
	if r == nil {
		return claimsIn(claim, text)
	}
	key := claim + "\x00" + text
	got, known := r.made[key]
	if !known {
		if r.made == nil || len(r.made) >= mostRead {
			r.made = map[string]claimAt{}
		}
		got.from, got.to, got.ok = claimsIn(claim, text)
		r.made[key] = got
	}
	return got.from, got.to, got.ok
}

// mostRead is for how many texts that is kept; more than any source has.
const mostRead = 4096

// numbers are those of a text of a pattern in some sizes.
func (r *Room) numbers(text, language string, sizes []string) []numeral.Number {
	if r == nil {
		return numeral.Read(text, language, sizes)
	}
	key := language + "\x00" + strings.Join(sizes, "\x00") + "\x00\x00" + text
	got, known := r.read[key]
	if !known {
		if r.read == nil || len(r.read) >= mostRead {
			r.read = map[string][]numeral.Number{}
		}
		got = numeral.Read(text, language, sizes)
		r.read[key] = got
	}
	return slices.Clone(got)
}

// scanRoom is room to look for the gaps of one size.
type scanRoom struct {
	x, wide []float32
}

// scans is room to look for gaps, for so many sizes.
func (r *Room) scans(sizes int) []scanRoom {
	if r == nil {
		return make([]scanRoom, sizes)
	}
	for len(r.scan) < sizes {
		r.scan = append(r.scan, scanRoom{})
	}
	return r.scan
}

// again is a slice of a length in room that was used before, if there is enough. What it holds is to be overwritten.
func again[T any](room *[]T, n int) []T {
	if cap(*room) < n {
		*room = make([]T, n)
	}
	return (*room)[:n]
}

// take is room for a fabric; nil if there is none.
func (r *Room) take() *fabric.Room {
	if r == nil || len(r.fabrics) == 0 {
		return nil
	}
	last := len(r.fabrics) - 1
	f := r.fabrics[last]
	r.fabrics = r.fabrics[:last]
	return f
}

// giveBack returns the room of all fabrics, which are not to be used any more: that of the last size lies on top, as it is asked for
// last.
func (r *Room) giveBack(fabrics []*fabric.Fabric) {
	if r == nil {
		return
	}
	for i := len(fabrics) - 1; i >= 0; i-- {
		r.fabrics = append(r.fabrics, fabrics[i].GiveBack())
	}
}
