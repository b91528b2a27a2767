package compile

import (
	"reflect"
	"slices"

	"ovillo/compile/plan"
	"ovillo/lang/source"
)

// This file prints repeats. The passes of a repeat are printed one by one; those that read alike are then folded into one
// block, "work these 2 rows 6 times". As a rule all of them do, or all but the first, which goes into a new chain or joins
// a yarn. Passes that differ in what a maker has to do stay written out.

// repeated is a repeat while it is worked: where in the part its passes print.
type repeated struct {
	p      *partState
	times  plan.Nums
	mask   []bool
	at     source.Span
	from   int
	passes []onePass
}

// onePass is one pass of a repeat.
type onePass struct {
	start  int   // index of its first step
	before []int // the number of the last row before it, per size
	sizes  []bool
}

func (r *repeated) begins(sizes []bool) {
	r.passes = append(r.passes, onePass{len(r.p.plan.Steps), slices.Clone(r.p.number), sizes})
}

// print folds what reads alike.
func (r *repeated) print() {
	n := len(r.passes)
	if n < 2 {
		return
	}
	var steps [][]plan.Step
	for i := range r.passes {
		end := len(r.p.plan.Steps)
		if i+1 < n {
			end = r.passes[i+1].start
		}
		pass := slices.Clone(r.p.plan.Steps[r.passes[i].start:end])
		if i > 0 {
			pass = slices.DeleteFunc(pass, isNote) // a note is read once
		}
		steps = append(steps, pass)
	}
	out := r.p.plan.Steps[:r.from]
	for apart := range min(2, n-1) {
		notes, rows := partNotes(steps[apart])
		if !readAlike(rows, steps[apart+1:]) {
			continue
		}
		if apart > 0 {
			out = append(out, steps[0]...)
		}
		r.p.plan.Steps = append(append(out, notes...), r.block(rows, steps[apart+1:], apart))
		return
	}
	for _, pass := range steps {
		out = append(out, pass...)
	}
	r.p.plan.Steps = out
}

func isNote(s plan.Step) bool { _, ok := s.(*plan.NoteStep); return ok }

func partNotes(steps []plan.Step) (notes, rest []plan.Step) {
	for _, s := range steps {
		if isNote(s) {
			notes = append(notes, s)
		} else {
			rest = append(rest, s)
		}
	}
	return notes, rest
}

// readAlike reports whether passes are rows that can be printed as one.
func readAlike(first []plan.Step, others [][]plan.Step) bool {
	if len(first) == 0 {
		return false
	}
	for _, pass := range append([][]plan.Step{first}, others...) {
		if len(pass) != len(first) {
			return false
		}
		for i, s := range pass {
			a, ok := first[i].(*plan.Row)
			b, too := s.(*plan.Row)
			if !ok || !too || !sameRow(a, b) {
				return false
			}
		}
	}
	return true
}

// block is the printed block of passes that read alike; skipped is how many passes print before it.
func (r *repeated) block(first []plan.Step, others [][]plan.Step, skipped int) *plan.Block {
	c := r.p.c
	b := &plan.Block{Times: c.nums(plan.Absent), For: sizesOf(r.passes[skipped].sizes), Span: r.at,
		First: c.nums(plan.Absent), Last: c.nums(plan.Absent)}
	for _, s := range first {
		b.Rows = append(b.Rows, s.(*plan.Row))
	}
	for _, pass := range others {
		for i, s := range pass {
			merge(b.Rows[i], s.(*plan.Row))
		}
	}
	for z, on := range r.mask {
		if on && r.times[z] > skipped {
			b.Times[z] = r.times[z] - skipped
			b.First[z], b.Last[z] = r.passes[skipped].before[z]+1, r.p.number[z]
		} else if on {
			b.Times[z] = 0
		}
	}
	if slices.ContainsFunc(b.Rows, func(r *plan.Row) bool { return r.Striped }) && r.p.stripes != nil {
		b.Stripes = r.p.stripesIn(r.p.stripes, b.First, b.Last)
		for _, row := range b.Rows {
			row.Yarn, row.ChangeYarn, row.Stripes = -1, false, nil
		}
	}
	if b.Counts = b.Rows[len(b.Rows)-1].Counts; b.Counts == nil {
		b.Counts = []plan.Count{r.p.lastCount(b.Times, r.mask)}
	}
	b.Change = r.change(b, skipped)
	return b
}

// sameRow reports whether two rows read alike but for numbers that need not be said and counts.
func sameRow(a, b *plan.Row) bool {
	x, y := a.Begin, b.Begin
	x.Throughout, y.Throughout = false, false
	return a.Span == b.Span && sameChart(a.Chart, b.Chart) && a.Label == b.Label && a.Flat == b.Flat && x == y && a.Join == b.Join && a.Turn == b.Turn && a.Back == b.Back && a.Unturned == b.Unturned &&
		sameYarn(a, b) && a.Hook == b.Hook && a.MarksUp == b.MarksUp && slices.Equal(a.Drop, b.Drop) &&
		sameWhere(a.Times, b.Times) && sameWork(a.Work, b.Work)
}

// sameChart reports whether two rows are worked from the same rows of a chart.
func sameChart(a, b *plan.ChartRow) bool {
	if a == nil || b == nil {
		return a == b
	}
	return a.Chart == b.Chart && a.First == b.First && a.Last == b.Last && a.Seam == b.Seam
}

// sameYarn reports whether two rows are in the same yarn, or both in that of their stripes.
func sameYarn(a, b *plan.Row) bool {
	if a.Striped || b.Striped {
		return a.Striped == b.Striped && (a.Stripes == nil) == (b.Stripes == nil)
	}
	return a.Yarn == b.Yarn && a.NewYarn == b.NewYarn
}

// sameWhere compares numbers in the sizes that have both.
func sameWhere(a, b plan.Nums) bool {
	if a == nil || b == nil {
		return a == nil && b == nil
	}
	for i := range a {
		if a[i] != plan.Absent && b[i] != plan.Absent && a[i] != b[i] {
			return false
		}
	}
	return true
}

func sameWork(a, b []plan.Instr) bool {
	return slices.EqualFunc(a, b, func(x, y plan.Instr) bool {
		same := x.Op == y.Op && x.Form == y.Form && sameWhere(x.Per, y.Per) && x.Reach == y.Reach && x.Over == y.Over &&
			sameWhere(x.Last, y.Last) && sameWhere(x.Before, y.Before) && x.Deep == y.Deep && x.Marker == y.Marker && x.Marked == y.Marked && x.Where == y.Where &&
			x.Cross == y.Cross && x.Yarn == y.Yarn && x.Label == y.Label && x.AfterBegin == y.AfterBegin &&
			(openReach(x) || sameWhere(x.Cells, y.Cells)) && (x.Cells == nil) == (y.Cells == nil)
		return same && (openReach(x) || sameWhere(x.N, y.N)) && sameRef(x.Ref, y.Ref) && sameWork(x.Body, y.Body) && sameSpread(x.Spread, y.Spread)
	})
}

// openReach reports whether an instruction says how far it goes without its number.
func openReach(in plan.Instr) bool {
	switch in.Reach {
	case plan.ToEnd, plan.ToMark, plan.ToLast, plan.ToLabel, plan.ToSpace:
		return true
	}
	return in.Op == plan.LeaveRest
}

func sameRef(a, b *plan.Ref) bool {
	if a == nil || b == nil {
		return a == b
	}
	x, y := *a, *b
	alike := sameWhere(x.Row, y.Row) && sameWhere(x.Count, y.Count) && sameWhere(x.Chains, y.Chains)
	x.Row, x.Count, x.Chains, y.Row, y.Count, y.Chains = nil, nil, nil, nil, nil, nil
	return alike && reflect.DeepEqual(x, y)
}

func sameSpread(a, b *plan.Spread) bool {
	if a == nil || b == nil {
		return a == b
	}
	return a.Increase == b.Increase && a.Alternating == b.Alternating && sameWhere(a.Long, b.Long) && sameWhere(a.LongPlain, b.LongPlain) &&
		sameWhere(a.Short, b.Short) && sameWhere(a.ShortPlain, b.ShortPlain) && sameWhere(a.Before, b.Before) && sameWhere(a.After, b.After)
}

// merge clears from a printed row what another pass, which reads alike, makes different.
func merge(a, b *plan.Row) {
	if !sameCounts(a.Counts, b.Counts) {
		a.Counts = nil
	}
	if a.Chart != nil && a.Chart.Read != b.Chart.Read {
		one := *a.Chart
		one.Read = plan.EitherWay
		a.Chart = &one
	}
	a.Sided = a.Sided && a.Wrong == b.Wrong
	loosen(a.Work, b.Work)
}

func sameCounts(a, b []plan.Count) bool {
	return slices.EqualFunc(a, b, func(x, y plan.Count) bool {
		return x.Kind == y.Kind && x.Form == y.Form && x.Chains == y.Chains && sameWhere(x.N, y.N)
	})
}

// loosen drops the numbers that differ from pass to pass.
func loosen(a, b []plan.Instr) {
	for i := range a {
		if !sameWhere(a[i].N, b[i].N) {
			a[i].N = nil
		}
		if !sameWhere(a[i].Chains, b[i].Chains) {
			a[i].Chains = nil
		}
		loosen(a[i].Body, b[i].Body)
	}
}
