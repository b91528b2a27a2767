package fabric

import (
	"fmt"
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/plan"
)

// run is a row that is worked so many times.
type run struct {
	style  Style
	ops    []*Op
	traces int
	times  int
	open   bool
	yarns  []int // taken in turn
}

// worker works the same runs on a fabric of its own and keeps what a reader of rows may ask for.
type worker struct {
	f      *Fabric
	p      *Part
	wrong  bool
	rows   []string // what each row did
	worked int      // rows that were worked, and not like one before
}

// work works a run, row by row where the fabric is to be worked like that.
func (w *worker) work(in run) *Fault {
	turns := in.style == plan.Rows || in.style == plan.TurnedRounds
	for i := 0; i < in.times; i++ {
		more := in.times - 1 - i
		yarn := func(k int) int { return in.yarns[k%len(in.yarns)] }
		row := &Row{Ops: in.ops, Traces: in.traces, Style: in.style, Open: in.open, Wrong: w.wrong, Yarn: yarn(i), Pure: Pure(in.ops), More: more > 0}
		res, f := w.p.Work(row)
		if f != nil {
			return f
		}
		if w.p.Replaced() == 0 {
			w.worked++
		}
		if !res.Steady {
			more = 0
		}
		serial := w.p.Serial()
		if more > 0 {
			if first := w.p.Again(more, row, yarn(i+more), w.wrong != (turns && more%2 == 1)); first != serial+1 {
				panic("rows are not numbered one after the other")
			}
		}
		for k := range more + 1 {
			w.rows = append(w.rows, fmt.Sprint(serial+int32(k), w.wrong, w.did(res)))
			if turns || res.Turned {
				w.wrong = !w.wrong
			}
		}
		i += more
	}
	return nil
}

// did is what a row did, without the numbers of elements.
func (w *worker) did(res *Result) string {
	r := *res
	r.Made, r.Pure, r.Steady, r.LastYarn = nil, false, false, 0
	places := written(w.f, res.Made)
	r.Traces, r.Slid = slices.Clone(r.Traces), slices.Clone(r.Slid)
	for i, t := range r.Traces {
		places += " " + written(w.f, t.Ref) + " " + written(w.f, t.Begun)
		r.Traces[i].Ref, r.Traces[i].Begun = nil, nil
	}
	for i, s := range r.Slid {
		places += " " + written(w.f, []ID{s.ID})
		r.Slid[i].ID = 0
	}
	return fmt.Sprintf("%+v %s", r, places)
}

// stands is all of a part that a row to come, or another part, can tell.
func (w *worker) stands() string {
	e := &w.p.edge
	s := fmt.Sprintln(written(w.f, e.p), e.closed, e.free, e.back, e.serial, e.loop, written(w.f, e.post), written(w.f, e.pre))
	for _, id := range e.p {
		el := w.f.Elems[id]
		s += fmt.Sprint(w.f.FormOf(id), el.N, el.Row, el.Yarn, el.Facing, el.Used, " ")
	}
	for _, name := range []string{"m", "g"} {
		m := w.p.marks[name]
		if m == nil { // taken away
			continue
		}
		s += fmt.Sprintln(name, m.at, m.gap, m.edge)
	}
	for side := range w.p.ends {
		for _, end := range w.p.ends[side] {
			el := w.f.Elems[end.at.ID]
			s += fmt.Sprint(side, " ", end.row, el.Row, el.Kind, w.f.FormOf(end.at.ID), el.N, end.at.Asp, el.Facing, end.beyond >= 0, w.p.regained[end.beyond], "\n")
		}
	}
	return s
}

// TestAgain: rows that are like one another, counted and not worked, leave all as working each of them by itself does, stitch by
// stitch: the edge, its markers, the ends of the rows, what each row did, and why a row cannot be worked. With more programs:
//
//	go test ./compile/fabric -run 'TestAgain$' -rapid.checks 1000000
func TestAgain(t *testing.T) {
	saved, all := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		more, of := countedAsWorked(t)
		saved, all = saved+more, all+of
	})
	if 8*saved < all {
		t.Errorf("of %d rows only %d were not worked", all, saved)
	}
	t.Logf("of %d rows %d were not worked", all, saved)
}

// FuzzAgain looks for programs in which they do not.
func FuzzAgain(f *testing.F) { f.Fuzz(rapid.MakeFuzz(func(t *rapid.T) { countedAsWorked(t) })) }

// countedAsWorked works the rows of a random program in both ways. It returns how many rows were not worked, and how many there are.
func countedAsWorked(t *rapid.T) (saved, all int) {
	text, closed := edgeText.Draw(t, "edge"), rapid.Bool().Draw(t, "closed")
	quick, plain := &worker{}, &worker{}
	quick.f, quick.p = edged(text, closed)
	plain.f, plain.p = edged(text, closed)
	plain.f.Plain, plain.f.EachRow = true, true
	defer func() { saved, all = plain.worked-quick.worked, plain.worked }()
	if n := len(text); n > 0 {
		in, gap := rapid.IntRange(0, n-1).Draw(t, "in"), rapid.IntRange(0, n).Draw(t, "gap")
		for _, w := range []*worker{quick, plain} {
			w.p.marks["m"], w.p.marks["g"] = &marker{edge: w.p.edge.serial, at: in}, &marker{edge: w.p.edge.serial, at: gap, gap: true}
		}
	} else {
		for _, w := range []*worker{quick, plain} {
			w.p.marks["m"], w.p.marks["g"] = &marker{edge: -1}, &marker{edge: -1, gap: true}
		}
	}
	n := len(text)
	for range rapid.IntRange(1, 3).Draw(t, "blocks") {
		var block []run
		for range rapid.SampledFrom([]int{1, 1, 2, 3}).Draw(t, "runs") {
			in := run{style: drawStyle(t), times: rapid.SampledFrom([]int{1, 1, 2, 3, 6}).Draw(t, "times"), open: rapid.IntRange(0, 5).Draw(t, "open") == 0,
				yarns: rapid.SampledFrom([][]int{{0}, {0, 1}, {2, 0, 0}}).Draw(t, "yarns"), ops: drawRun(t, n)}
			in.traces = rowOf(in.style, in.ops...).Traces
			block = append(block, in)
		}
		for range rapid.SampledFrom([]int{1, 2, 5}).Draw(t, "times") {
			for _, in := range block {
				if !quick.like(t, plain, in) {
					return
				}
			}
		}
		n = len(plain.p.edge.p)
	}
	return
}

// widest is how many places an edge of a random program may have: more would only take longer, and no program of so few comes to the
// limit of elements, which rows that are not worked do not come nearer to.
const widest = 250

// like works a run on both and compares them; false where it cannot be worked, or the edge has grown too wide.
func (w *worker) like(t *rapid.T, plain *worker, in run) bool {
	a, b := w.work(in), plain.work(in)
	if !reflect.DeepEqual(a, b) {
		t.Fatalf("refused with %v, row by row with %v", a, b)
	}
	if a, b := w.stands(), plain.stands(); a != b {
		t.Fatalf("it stands as\n%s\nrow by row as\n%s", a, b)
	}
	for i := range plain.rows {
		if w.rows[i] != plain.rows[i] {
			t.Fatalf("row %d did\n%s\nrow by row\n%s", i+1, w.rows[i], plain.rows[i])
		}
	}
	return a == nil && len(plain.p.edge.p) <= widest
}

// drawRun is a row: mostly one that can be worked over and over on an edge of n places, or else any.
func drawRun(t *rapid.T, n int) []*Op {
	switch rapid.IntRange(0, 9).Draw(t, "row") {
	case 0:
		return drawOps(t, 1)
	case 1:
		return plainOps(t, n)
	case 2:
		return []*Op{{Kind: AsMade, Form: sc, Yarn: -1}}
	case 3:
		deep := eachOf(Stitches | Spaces)
		deep.Target.Deep = 2
		return []*Op{deep}
	case 4: // a mesh
		return []*Op{around(nextOf(Stitches|Spaces, 1), ch(1), skip(1))}
	case 5: // spaces over spaces
		return []*Op{repeatTo(Bound{}, together(nextOf(Stitches|Spaces, 1), next(1))), ch(0)}
	case 6: // as many lost as gained
		k := max(n-4, 0)
		return []*Op{per(2, 1), nextOf(Stitches|Spaces, k), dec(2, 1), nextOf(Stitches|Spaces, 1)}
	case 7:
		return []*Op{spread(rapid.IntRange(0, 1).Draw(t, "spread"), 1, AtEnds)}
	case 8:
		return []*Op{at(First), eachOf(Stitches | Spaces)}
	}
	return []*Op{eachOf(Stitches | Spaces)}
}
