package fabric

import "ovillo/compile/stitch"

// asMade works each stitch as it presents: what was worked round the post from the front on the one side is worked from the
// back on the other, so that it stands out on the same side still. Chains go over chains.
func (r *row) asMade(op *Op) (int, *Fault) {
	if r.group != nil {
		return 0, fault(Nested, 0, 0, "")
	}
	stop, f := r.bound(&op.Bound)
	if f != nil {
		return 0, f
	}
	n := 0
	for r.c < stop {
		el := r.el(r.c)
		if el.Kind == Space {
			k := el.N
			r.move(1, skipped)
			if f := r.make(&Elem{Kind: Space, N: k, Into: nowhere, Into2: nowhere}); f != nil {
				return 0, f
			}
			continue
		}
		if el.Kind != Stitch || el.Form == chainForm {
			return 0, fault(NoStitches, 0, 0, "")
		}
		form := Presents(r.f.FormOf(r.places[r.c]), el.Facing != r.in.Wrong)
		p, f := r.take(Stitches, 1, true)
		if f != nil {
			return 0, f
		}
		r.from = len(r.made)
		if f := r.make(&Elem{Kind: Stitch, Form: r.f.intern(form), Into: p, Into2: p}); f != nil {
			return 0, f
		}
		r.last, r.worked = p, true
		r.settle()
		n++
	}
	return n, nil
}

// Presents is how a stitch is worked on another so that the fabric goes on as it was; turned says that it was made from the
// other side.
func Presents(f stitch.Form, turned bool) stitch.Form {
	out := stitch.Form{ID: f.ID, Post: f.Post, Together: 1}
	if turned {
		switch f.Post {
		case stitch.FrontPost:
			out.Post = stitch.BackPost
		case stitch.BackPost:
			out.Post = stitch.FrontPost
		}
	}
	return out
}
