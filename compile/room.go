package compile

import "ovillo/compile/fabric"

// Room is memory that one check after the other works in, so that a source that is checked at every keystroke does not take it anew
// each time. It serves one check at a time; the zero Room is ready for use. Nothing of a checked pattern lies in it.
type Room struct {
	elems [][]fabric.Elem
	scan  []scanRoom
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

// take is room for the elements of one fabric; nil if there is none.
func (r *Room) take() []fabric.Elem {
	if r == nil || len(r.elems) == 0 {
		return nil
	}
	last := len(r.elems) - 1
	e := r.elems[last]
	r.elems = r.elems[:last]
	return e[:0]
}

// giveBack returns the room of all fabrics, which are not to be used any more: that of the last size lies on top, as it is asked for
// last.
func (r *Room) giveBack(fabrics []*fabric.Fabric) {
	if r == nil {
		return
	}
	for i := len(fabrics) - 1; i >= 0; i-- {
		r.elems = append(r.elems, fabrics[i].Elems)
		fabrics[i].Elems = nil
	}
}
