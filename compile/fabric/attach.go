package fabric

// This file works along another edge bit by bit, as a band does that is worked sideways and joined to a piece at the end of each
// row: that edge keeps its own place from row to row.

// nextOf works into the next N places of a run.
func (r *row) nextOf(op *Op, ids []ID, at func(Place) *Fault) *Fault {
	key := op.Target.Ref.Part + "." + op.Target.Ref.Name
	from, want := r.p.walked[key], r.num(op.N, 1)
	if r.walks != nil {
		if k, ok := r.walks[key]; ok {
			from = k
		}
	}
	if left := len(ids) - from; want > left {
		return fault(RunShort, want, left, op.Target.Ref.Name)
	}
	for _, id := range ids[from : from+want] {
		r.f.use(id)
		r.res.Named++
		r.note(&r.f.Elems[id], Place{ID: id})
		if f := at(Place{ID: id}); f != nil {
			return f
		}
	}
	if r.walks == nil {
		r.walks = map[string]int{}
	}
	r.walks[key] = from + want
	return nil
}

// Walked is how many places of a run were worked into bit by bit, by the name of its part and its own.
func (p *Part) Walked(part, name string) int { return p.walked[part+"."+name] }
