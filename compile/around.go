package compile

import (
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file adds what goes all the way round: the four sides of a flat piece, the edges of an opening.

// cornerName is what the four corners of a piece that is worked all round are called.
const cornerName = "corner"

// around adds all four sides of a flat piece, or the edges of an opening.
func (a *along) around(it *lang.FromRun) bool {
	c, path := a.p.c, it.Ref.Path
	q := c.parts[path[0]]
	switch {
	case q == nil && len(path) == 1:
		c.say(codeNoPart, it.Ref.Span(), diag.Args{"word": path[0], "near": lang.Near(path[0], keys(c.parts))})
		return false
	case q != nil && len(path) == 1 && q.plan.Start.Kind == plan.StartGrid:
		return a.motifs(it, q)
	case q != nil && len(path) == 1:
		return a.piece(it, q)
	}
	return a.opening(it)
}

// piece adds the four sides of a flat piece, with the right side facing: the last row from right to left, the left edge down, the
// start from left to right, the right edge up. The way begins behind the first corner, so that each side ends in its corner.
func (a *along) piece(it *lang.FromRun, q *partState) bool {
	p := a.p
	z0 := p.c.pat.Shown
	if q.fab[z0].Closed() || q.fab[z0].FreeEdge() || q.style != plan.Rows || len(q.fab[z0].FoundationRun().Places) == 0 {
		p.c.say(codeAroundFlat, it.Ref.Span(), diag.Args{"part": q.plan.Name})
		return false
	}
	top, bottom, first := make([]fabric.Run, p.c.z), make([]fabric.Run, p.c.z), make([]fabric.Run, p.c.z)
	p.each(a.mask, it, func(z int) *fabric.Fault {
		whole := q.fab[z].EdgeRun()
		if q.wrong[z] {
			whole = whole.Reversed() // the next row would show the wrong side; here the right side faces
		}
		if bottom[z] = q.fab[z].FoundationRun(); q.plan.FirstWrong {
			bottom[z] = bottom[z].Reversed()
		}
		top[z], first[z] = whole, whole
		if k := len(whole.Places); k > 0 {
			top[z].Places, first[z].Places = whole.Places[1:], whole.Places[:1]
		}
		// The corners are the ends of the last row and of the start.
		top[z].Names, first[z].Names = named(cornerName, len(top[z].Places)-1), named(cornerName, 0)
		bottom[z].Names = named(cornerName, 0, len(bottom[z].Places)-1)
		return nil
	})
	left, right := &sideEdge{part: q, side: fabric.LeftEdge}, &sideEdge{part: q, side: fabric.RightEdge}
	edge := plan.Ref{Kind: plan.RefEdge, Part: q.index, Label: q.plan.Name, Called: q.plan.Called, Pick: plan.EachOf}
	a.put(it, edge, top)
	side := *it
	side.Label = nil
	if !a.side(&side, left) {
		return false
	}
	start := edge
	start.Kind = plan.RefFoundation
	a.put(&side, start, bottom)
	if !a.side(&side, right) {
		return false
	}
	a.put(&side, edge, first).plain = true
	p.names[cornerName], p.roles[cornerName], p.plan.Start.Round = true, plan.Corner, true
	p.plan.From = append(p.plan.From, plan.Origin{Kind: plan.RefAround, Part: q.index, Row: p.c.nums(0), From: p.c.nums(1), To: p.c.nums(1), Of: p.c.nums(1)})
	return true
}

// named gives places of a run a name, by where they stand in it; a run without places has none.
func named(name string, at ...int) map[string][]int {
	if at[len(at)-1] < 0 {
		return nil
	}
	return map[string][]int{name: at}
}

// opening adds the edges of an opening, with the right side facing: the places that were passed over, the corner, the other side of
// the chain over them, and the other corner.
func (a *along) opening(it *lang.FromRun) bool {
	p := a.p
	w := &lowerer{c: p.c, p: p, mask: a.mask}
	r := w.ref(it.Ref)
	if w.bad {
		return false
	}
	q := p
	if r.Part != "" {
		q = p.c.parts[r.Part]
	}
	var pieces [4][]fabric.Run
	for k := range pieces {
		pieces[k] = make([]fabric.Run, p.c.z)
	}
	closed := true
	p.each(a.mask, it, func(z int) *fabric.Fault {
		four, ok := q.fab[z].OpeningRuns(r.Name)
		closed = closed && (ok || q.fab[z].Halted())
		for k := range pieces {
			pieces[k][z] = four[k]
		}
		return nil
	})
	if !closed {
		p.c.say(codeAroundOpening, it.Ref.Span(), diag.Args{"name": p.c.file.Source.Slice(it.Ref.Span())})
		return false
	}
	skipped := p.refer(r, a.mask, fabric.NamedEach)
	skipped.Pick = plan.EachOf
	over := plan.Ref{Kind: plan.RefSpace, Part: q.index, Own: q == p, Label: r.Name, Called: skipped.Called, Below: true, Row: skipped.Row, Pick: plan.EachOf}
	corner := plan.Ref{Kind: plan.RefCorner, Part: q.index, Own: q == p, Label: r.Name, Called: skipped.Called, Row: skipped.Row}
	p.origin(r, q)
	side := *it
	side.Label = nil
	a.put(it, skipped, pieces[0])
	a.put(&side, corner, pieces[1])
	a.put(&side, over, pieces[2])
	a.put(&side, corner, pieces[3])
	return true
}

// motifs adds the outer edge of joined motifs.
func (a *along) motifs(it *lang.FromRun, q *partState) bool {
	p, c := a.p, a.p.c
	runs := make([]fabric.Run, c.z)
	for z := range p.fab {
		runs[z] = q.fab[z].AroundRun()
		for name := range runs[z].Names {
			p.names[name] = true
		}
	}
	p.roles[fabric.OuterCorner], p.roles[fabric.JointName] = plan.OuterCorner, plan.Joint
	for name, called := range c.motifCalls(q) {
		if p.calls[name] == nil {
			p.calls[name] = called
		}
	}
	a.put(it, plan.Ref{Kind: plan.RefAround, Part: q.index, Label: q.plan.Name, Called: q.plan.Called, Pick: plan.EachOf}, runs)
	return true
}

// motifCalls are the printed names of the places of a motif, which its outer edge has as well.
func (c *checker) motifCalls(q *partState) map[string]plan.Text {
	if q.plan.Grid == nil {
		return nil
	}
	return c.parts[c.pat.Parts[q.plan.Grid.Motif].Name].calls
}
