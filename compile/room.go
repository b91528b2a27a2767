package compile

import "ovillo/compile/fabric"

// Room is memory that one check after the other works in, so that a source that is checked at every keystroke does not take it anew
// each time. It serves one check at a time; the zero Room is ready for use. Nothing of a checked pattern lies in it.
type Room struct {
	elems [][]fabric.Elem
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
