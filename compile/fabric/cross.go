package fabric

import "ovillo/compile/stitch"

// cross makes N groups of stitches that cross: each skips half of its places, works the other half, and goes back to the
// first. In the row they stand as they were made.
func (r *row) cross(op *Op) (int, *Fault) {
	if r.group != nil || r.legs != nil {
		return 0, fault(Nested, 0, 0, "")
	}
	n, of := r.num(op.N, 1), op.Form.Of
	form := r.f.intern(op.Form)
	for range n {
		places := make([]Place, of)
		for i := range places {
			if r.drawing = i > 0; r.drawing {
				r.settle() // a marker where stitches cross has no place of its own
			}
			p, f := r.take(Stitches, -1, false)
			if f != nil {
				r.drawing = false
				if f.Kind == TooFew {
					f.Need, f.Have = of, i
				}
				return 0, f
			}
			places[i] = p
		}
		r.drawing = false
		r.from = len(r.made)
		for i := range places {
			p := places[(i+of/2)%of]
			if op.Form.Group == stitch.CrossBack && i >= of/2 {
				r.f.passesBehind(ID(len(r.f.Elems)))
			}
			if f := r.make(&Elem{Kind: Stitch, Form: form, Into: p, Into2: p}); f != nil {
				return 0, f
			}
			r.last, r.worked = p, true
		}
		r.settle()
	}
	return n, nil
}
