package fabric

import (
	"math"

	"ovillo/compile/plan"
)

// stretch works one stitch into each of the next places, so far as these are stitches and no more than most, and returns how many. It
// is what each does with single, for most of a fabric, without asking at every stitch what does not change within the stretch: an
// instruction of another kind, and the first place of another kind, are left to each.
func (r *row) stretch(op *Op, single bool, most int) (int, *Fault) {
	t := &op.Target
	if r.f.Plain || op.Kind != Work || !single || op.Form.ID == slip || op.Form.Group != 0 || op.Cross == plan.CrossBack ||
		t.Of != nil || t.Deep > 1 || t.Takes != 0 && t.Takes != Stitches {
		return 0, nil
	}
	most = min(most, len(r.places)-r.c)
	e := Elem{Kind: Stitch, Form: r.f.intern(op.Form), Row: r.f.rows, Yarn: int32(r.yarn), Facing: r.in.Wrong}
	noted := false // the trace says already what places like the last one are
	var like Elem
	n := 0
	for n < most {
		id := r.places[r.c]
		el := &r.f.Elems[id]
		if el.Kind != Stitch {
			break
		}
		e.Into = Place{ID: id}
		e.Into2 = e.Into
		if !noted || r.p.begun > 0 || el.Form != like.Form || el.Form == chainForm {
			r.note(el, e.Into)
			noted, like = true, *el
		}
		if len(r.marked) > 0 {
			r.rise(1, true)
		}
		if el.Used < math.MaxUint16 {
			el.Used++
		}
		n++
		if len(r.gaps) > 0 {
			r.move(1, taken)
		} else {
			r.res.Taken++
			r.c++
		}
		r.last, r.worked = e.Into, true
		r.from = len(r.made)
		if f := r.room(); f != nil {
			return n, f
		}
		r.keep(r.f.add(&e))
		if len(r.gaps) > 0 {
			r.settle()
		}
	}
	return n, nil
}
