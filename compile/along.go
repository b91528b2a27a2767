package compile

import (
	"cmp"
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file starts a part along edges that are there already: runs of places by name, new chains, the ends of rows, all round a
// piece or an opening.

// alongRun is one run of the edge a part starts along, in every size.
type alongRun struct {
	ref    plan.Ref
	runs   []fabric.Run // per size, before the stitches are spread over them
	ends   *sideEdge    // the run is ends of rows
	rate   rate         // of stitches and rows; 0: one in each
	forced bool         // brought to a multiple: the groups are spread, not worked at the rate
	groups [][]group    // per size, for ends of rows
	marks  []string     // set before it
	label  string
	at     lang.Node
	from   plan.Nums // the places before it on the edge
	count  plan.Nums // its places
	chain  bool      // of new chains
	plain  bool      // of places that the maker finds without being told: nothing is said of them
}

// from starts along runs.
func (p *partState) from(n *lang.From, mask []bool) {
	st := &p.plan.Start
	st.Kind = plan.StartFrom
	a := &along{p: p, mask: mask}
	for _, it := range n.Runs {
		if !a.add(it) {
			p.halt(mask)
			return
		}
	}
	if !a.spread() {
		p.halt(mask)
		return
	}
	p.along, p.lastMarks = a.runs, a.marks
	closed := p.style != plan.Rows
	p.each(mask, n, func(z int) *fabric.Fault {
		var runs []fabric.Run
		for _, r := range a.runs {
			run := r.runs[z]
			if r.ends != nil {
				counts, _ := countsOf(r.groups[z])
				run = run.Spread(counts)
			}
			if run.Markers = r.marks; r.label != "" {
				run = run.Called(r.label)
			}
			runs = append(runs, run)
		}
		if len(a.marks) > 0 {
			runs = append(runs, fabric.Run{Markers: a.marks})
		}
		return p.fab[z].From(runs, closed)
	})
	p.begun = make([]fabric.ID, p.c.z)
	for z := range p.begun {
		p.begun[z] = p.fab[z].Begun()
	}
	for _, r := range a.runs {
		if r.ref.Count = r.count; r.chain {
			r.ref.Chains = r.count
		}
		if !r.plain {
			st.Runs = append(st.Runs, r.ref)
		}
	}
	p.maxMarks = max(p.maxMarks, p.mostMarkers())
	p.takesUp(a.runs)
	p.continues(a.runs[0])
}

// mostMarkers is the most markers that stand on the live edge in any size.
func (p *partState) mostMarkers() int {
	most := 0
	for z := range p.fab {
		most = max(most, p.fab[z].Markers())
	}
	return most
}

// along gathers the runs a part starts along.
type along struct {
	p     *partState
	mask  []bool
	runs  []*alongRun
	marks []string // set since the last run
	mult  *lang.FromRun
}

// add reads one item; it reports whether it could be understood.
func (a *along) add(it *lang.FromRun) bool {
	switch {
	case it.Mark != nil:
		a.marks = append(a.marks, it.Mark.Text)
		a.p.marker(it.Mark.Text)
		return true
	case it.Mult != nil:
		a.mult = it
		return true
	case it.Chain != nil:
		return a.chain(it)
	case it.Side != nil:
		e := a.p.c.sideEdge(it.Side, a.p.lex)
		return e != nil && a.side(it, e)
	case it.Around:
		return a.around(it)
	}
	return a.named(it)
}

// put adds a run.
func (a *along) put(it *lang.FromRun, ref plan.Ref, runs []fabric.Run) *alongRun {
	r := &alongRun{ref: ref, runs: runs, at: it, marks: a.marks, label: labelOf(it.Label)}
	if a.marks = nil; r.label != "" {
		r.ref.Called = a.p.called(r.label, r.ref.Called)
	}
	a.runs = append(a.runs, r)
	return r
}

// called is the printed name of a label of the part, or another if it has none.
func (p *partState) called(label string, other plan.Text) plan.Text {
	if t := p.calls[label]; t != nil {
		return t
	}
	return other
}

// chain adds new chains.
func (a *along) chain(it *lang.FromRun) bool {
	p := a.p
	k := p.startCount(it.Chain, a.mask, it)
	if k == nil {
		return false
	}
	runs := make([]fabric.Run, p.c.z)
	p.each(a.mask, it, func(z int) *fabric.Fault {
		p.addChains(z, k[z])
		r, f := p.fab[z].ChainRun(k[z])
		runs[z] = r
		return f
	})
	a.put(it, plan.Ref{Kind: plan.RefSpace, Own: true, Chains: k, Count: k}, runs).chain = true
	return true
}

// side adds the ends of rows at a side edge. With the right side facing, the fabric lies to the left of the way: a right edge is
// worked upwards, a left edge downwards; from the wrong side it is the other way round.
func (a *along) side(it *lang.FromRun, e *sideEdge) bool {
	p := a.p
	runs := make([]fabric.Run, p.c.z)
	none := newSpread(p.c)
	p.each(a.mask, it, func(z int) *fabric.Fault {
		runs[z] = e.run(z)
		if len(runs[z].Places) == 0 && !runs[z].Halted {
			none.add(z, 1, 0)
		}
		if (e.side == fabric.LeftEdge) != p.plan.FirstWrong {
			runs[z] = runs[z].Reversed()
		}
		return nil
	})
	if none.any() {
		p.c.report(diag.Diagnostic{Code: codeNoRowEnds, Span: it.Span(), Sizes: none.sizes(), Args: diag.Args{"part": e.part.plan.Name}})
		return false
	}
	r := a.put(it, e.ref(a.mask), runs)
	r.ends, r.ref.Down = e, (e.side == fabric.LeftEdge) != p.plan.FirstWrong
	if !a.pick(r, it.Pick) {
		return false
	}
	p.plan.From = append(p.plan.From, e.origin(r.ref))
	return true
}

// origin says where the part grows on a side edge.
func (e *sideEdge) origin(ref plan.Ref) plan.Origin {
	c := e.part.c
	o := plan.Origin{Kind: plan.RefRowEnds, Part: e.part.index, Side: ref.Side, Label: e.name,
		Row: c.nums(plan.Absent), From: c.nums(1), To: ref.Ends, Of: c.nums(plan.Absent)}
	for z := range o.Of {
		o.Of[z] = len(e.part.plan.Worked[z])
		if e.rows != nil {
			o.From[z], o.To[z] = e.rows[z].from, e.rows[z].to
		}
	}
	return o
}

// pick sets how many stitches are worked along the ends of rows of a run.
func (a *along) pick(r *alongRun, n *lang.PickUp) bool {
	p := a.p
	switch {
	case n == nil:
	case n.Gauge:
		if !a.byGauge(r, n) {
			return false
		}
	default:
		k, per := p.c.cnt(n.N, p.lex), p.c.cnt(n.Per, p.lex)
		if k == nil || per == nil {
			return false
		}
		sts, same := k.Same()
		rows, also := per.Same()
		if !same || !also || sts < 1 || rows < 1 || rows > 100 || sts > 1000 {
			p.c.say(codePickRate, n.Span(), nil)
			return false
		}
		r.rate = rate{sts, rows}
	}
	return true
}

// byGauge takes the rate from the two gauges: the height of a row against the width of the stitch that is worked along it.
func (a *along) byGauge(r *alongRun, n *lang.PickUp) bool {
	p := a.p
	id, w, ok := p.alongStitch()
	if !ok {
		p.c.say(codePickGauge, n.Span(), diag.Args{"stitch": id})
		return false
	}
	z := p.c.pat.Shown
	for k := range r.runs {
		if r.runs[z].Halted {
			z = k // any size that is known will do: the gauges are the same in all
		}
	}
	if r.runs[z].Halted {
		return false // said where that part failed
	}
	length, lacks := r.ends.length(z, r.runs[z])
	if length == plan.NoLength {
		p.c.say(codePickGauge, n.Span(), diag.Args{"stitch": p.c.word(cmp.Or(lacks, p.base))})
		return false
	}
	p.asked = true
	r.rate = rateOf(float64(length) / float64(len(r.runs[z].Places)) / w)
	return true
}

// named adds places by name: a label, the last row of a part or its start, or what lies below.
func (a *along) named(it *lang.FromRun) bool {
	p, path := a.p, it.Ref.Path
	runs := make([]fabric.Run, p.c.z)
	if q, ok := p.c.parts[path[0]]; ok && len(path) == 2 && (path[1] == fabric.FoundationName || path[1] == fabric.EdgeName) && !q.names[path[1]] {
		a.wholeEdge(it, q, runs)
		return true
	}
	w := &lowerer{c: p.c, p: p, mask: a.mask}
	r := w.ref(it.Ref)
	if w.bad {
		return false
	}
	q := p
	if r.Part != "" {
		q = p.c.parts[r.Part]
	}
	p.each(a.mask, it, func(z int) *fabric.Fault {
		run, f := q.fab[z].NamedRun(r.Name, it.Below)
		runs[z] = run
		return f
	})
	kind := fabric.NamedEach
	if it.Below {
		kind = fabric.Below
	}
	ref := p.refer(r, a.mask, kind)
	ref.Pick = plan.EachOf
	a.put(it, ref, runs)
	p.origin(r, q)
	return true
}

// wholeEdge adds the last row of a part, or its start.
func (a *along) wholeEdge(it *lang.FromRun, q *partState, runs []fabric.Run) {
	p := a.p
	kind := plan.RefEdge
	if it.Ref.Path[1] == fabric.FoundationName {
		kind = plan.RefFoundation
	}
	count := p.c.nums(0)
	p.each(a.mask, it, func(z int) *fabric.Fault {
		if runs[z] = q.fab[z].EdgeRun(); kind == plan.RefFoundation {
			runs[z] = q.fab[z].FoundationRun()
		}
		count[z] = len(runs[z].Places)
		return nil
	})
	a.put(it, plan.Ref{Kind: kind, Part: q.index, Label: q.plan.Name, Called: q.plan.Called, Count: count, Pick: plan.EachOf}, runs)
	o := plan.Origin{Kind: kind, Part: q.index, Row: p.c.nums(0), From: p.c.nums(1), To: count, Of: count}
	if kind == plan.RefEdge {
		o.Row = append(plan.Nums(nil), q.number...)
	}
	p.plan.From = append(p.plan.From, o)
}
