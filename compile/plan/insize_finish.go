package plan

import "slices"

// finish fills in the steps of the finishing that the size has, and the cautions, which say to which of them they belong.
func (s *sized) finish(p, out *Pattern) {
	out.Finish, out.Cautions = nil, nil
	moved := make([]int, len(p.Finish))
	for i, f := range p.Finish {
		one, ok := s.finishing(f)
		if moved[i] = -1; ok {
			moved[i] = len(out.Finish)
			out.Finish = append(out.Finish, one)
		}
	}
	for _, k := range p.Cautions {
		step := index(moved, k.Step)
		if !k.For.Has(s.z) || k.Step >= 0 && step < 0 {
			continue
		}
		k.For, k.Step = nil, step
		out.Cautions = append(out.Cautions, k)
	}
}

// finishing is a step of the finishing; a thing of no size, or of which there is none, is not made.
func (s *sized) finishing(f Finishing) (Finishing, bool) {
	sizeless := len(f.Length) > 0 && f.Length[s.z] <= 0
	ok := true
	switch f.Kind {
	case MakeCord, ThreadElastic, MakePompom:
		ok = !sizeless || f.Made != nil // a part that is the cord has its size, known or not
	case MakeFringe:
		f.Sewn = some(f.Sewn, s.run)
		ok = !sizeless && len(f.Sewn) > 0
	case SewButtons:
		ok = len(f.Buttons.N) == 0 || f.Buttons.N[s.z] > 0
	case SewRuns:
		sewn, to := some(f.Sewn, s.run), some(f.To, s.run)
		ok = len(sewn)+len(to) > 0
		f.Sewn, f.To = sewn, to
	}
	if f.Winds != nil {
		f.Winds = s.winds(f)
	}
	f.Prose = s.prose(f.Prose)
	f.Yarn = s.yarn(f.Yarn)
	f.Length, f.Chains, f.Row = s.lengths(f.Length), s.nums(f.Chains), s.nums(f.Row)
	f.Strands, f.Cut = s.nums(f.Strands), s.lengths(f.Cut)
	f.Through, f.Made = s.ref(f.Through), s.ref(f.Made)
	f.Ease, f.Free = s.lengths(f.Ease), s.lengths(f.Free)
	f.Buttons.N = s.nums(f.Buttons.N)
	return f, ok
}

// winds is how much yarn the pompom of the size takes: they are those of the sizes that have one.
func (s *sized) winds(f Finishing) Lengths {
	i := 0
	for z, l := range f.Length {
		if z == s.z && l > 0 && i < len(f.Winds) {
			return Lengths{f.Winds[i]}
		}
		if l > 0 {
			i++
		}
	}
	return nil
}

// notions is what is needed for the steps that are left.
func (s *sized) notions(q *Pattern) Notions {
	n := q.Notions
	n.Markers = min(n.Markers, q.mostMarkers())
	n.Buttons = some(n.Buttons, func(b Buttons) (Buttons, bool) {
		ok := len(b.N) == 0 || b.N[s.z] > 0
		b.N = s.nums(b.N)
		return b, ok
	})
	n.Elastic = some(n.Elastic, func(e Elastic) (Elastic, bool) {
		ok := len(e.Length) == 0 || e.Length[s.z] > 0
		e.Length = s.lengths(e.Length)
		return e, ok
	})
	n.Formers = nil
	threaded := false
	for _, f := range q.Finish {
		threaded = threaded || f.Kind == ThreadElastic || f.Kind == MakeCord && f.Through != nil
		if f.Kind == MakePompom && len(f.Length) > 0 && !slices.Contains(n.Formers, f.Length[0]) {
			n.Formers = append(n.Formers, f.Length[0])
		}
	}
	n.Pin = n.Pin && threaded
	n.Others = some(n.Others, func(o Notion) (Notion, bool) {
		none := func(n Nums) bool { return len(n) > 0 && (n[s.z] == 0 || n[s.z] == Absent) }
		ok := !none(o.N) && !none(o.Grams) && (len(o.Length) == 0 || o.Length[s.z] > 0)
		o.N, o.Length, o.Grams = s.nums(o.N), s.lengths(o.Length), s.nums(o.Grams)
		return o, ok
	})
	return n
}

// mostMarkers is the most markers that a part can have in use, that of a spiral's first stitch included.
func (p *Pattern) mostMarkers() int {
	most := 0
	for _, part := range p.Parts {
		n := len(part.Markers)
		if part.Style == SpiralRounds {
			n++
		}
		most = max(most, n)
	}
	return most
}
