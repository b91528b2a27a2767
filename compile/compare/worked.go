package compare

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"ovillo/compile/plan"
)

// worker writes out what instructions make, one thing after the other, as the maker works it: repeats are written out, and like
// things that follow each other are one. So [3 dc] is [dc, 2 dc], and a repeat over a row is the row.
type worker struct {
	*keyer
	run    []made
	total  int
	labels map[string]site
}

// made is so many of one thing.
type made struct {
	what string
	n    int
}

// mostMade is how many things are written out of a repeat; a longer one stays a repeat.
const mostMade = 4000

func (w *worker) String() string {
	var b strings.Builder
	for _, m := range w.run {
		fmt.Fprintf(&b, "%d×%s, ", m.n, m.what)
	}
	return b.String()
}

func (w *worker) add(what string, n int) {
	if n == 0 {
		return
	}
	w.total += n
	if last := len(w.run) - 1; last >= 0 && w.run[last].what == what {
		w.run[last].n += n
		return
	}
	w.run = append(w.run, made{what, n})
}

func (w *worker) all(list []plan.Instr) {
	for i := range list {
		if w.labels != nil && list[i].Label != "" {
			if _, known := w.labels[list[i].Label]; !known {
				w.labels[list[i].Label] = site{w.total}
			}
		}
		w.instr(&list[i])
	}
}

// simple says how far an instruction goes where that is told by its number alone.
var simple = []plan.Reach{plan.Next, plan.ToEnd, plan.ToMark, plan.ToLast, plan.ToLabel, plan.ToSpace, plan.Times, plan.Last}

// instr writes out one instruction.
func (w *worker) instr(in *plan.Instr) {
	n, known := 1, len(in.N) > 0
	if known {
		n = in.N[0]
	}
	per := 1
	if len(in.Per) > 0 {
		per = in.Per[0]
	}
	if !known || !slices.Contains(simple, in.Reach) {
		w.whole(in)
		return
	}
	chains := ""
	if len(in.Chains) > 0 {
		chains = fmt.Sprint(" of ", in.Chains[0])
	}
	yarn := ""
	if in.Yarn >= 0 {
		yarn = fmt.Sprint(" in ", w.yarn(in.Yarn))
	}
	switch in.Op {
	case plan.Work, plan.Decrease, plan.CrossOver, plan.AsMade:
		w.add(fmt.Sprintf("%d:%s per %d over %d%s deep %d cross %d%s", in.Op, w.form(in.Form), per, in.Over, chains, in.Deep, in.Cross, yarn), n)
	case plan.Chains:
		w.add("chain"+yarn, n)
	case plan.SkipOver, plan.LeaveRest:
		w.add(fmt.Sprintf("%d: over %d%s", in.Op, in.Over, chains), n)
	case plan.Repeat:
		w.repeat(in.Body, n)
	default:
		w.whole(in)
	}
}

// repeat writes a body out so many times.
func (w *worker) repeat(body []plan.Instr, n int) {
	one := worker{keyer: w.keyer, labels: map[string]site{}}
	if n > 0 {
		one.all(body)
	}
	for l, at := range one.labels {
		if _, known := w.labels[l]; !known && w.labels != nil {
			w.labels[l] = site{w.total + at.made}
		}
	}
	if n*len(one.run) > mostMade {
		w.add(fmt.Sprintf("%d times (%s)", n, one.String()), 1)
		return
	}
	for range n {
		for _, m := range one.run {
			w.add(m.what, m.n)
		}
	}
}

// whole writes an instruction as it stands, with where it goes.
func (w *worker) whole(in *plan.Instr) {
	k := keyer{book: w.book, part: w.part}
	one := *in
	one.AfterBegin, one.Cells, one.Posts, one.Marked, one.Last = false, nil, false, false, nil
	if !slices.Contains([]plan.Op{plan.PlaceMark, plan.MoveMark, plan.RemoveMark}, in.Op) && in.Reach != plan.InMarked && in.Reach != plan.ToMark {
		one.Marker = 0 // nothing is said of one
	}
	k.put(reflect.ValueOf(one), "")
	w.keyer.refs = append(w.keyer.refs, k.refs...)
	w.add(k.b.String(), 1)
}

// rowKey is what a row means in one size: what is worked, how it begins and ends, and what comes of it.
func (b *book) rowKey(part *plan.Part, r *plan.Row) (key string, refs []ref, labels map[string]site) {
	k := &keyer{book: b, part: part}
	one := *r
	if len(one.Times) > 0 && one.Times[0] == 1 {
		one.Times = nil
	}
	if !one.Begin.OtherYarn { // its yarn says nothing
		one.Begin.Yarn = part.Yarn
	}
	k.put(reflect.ValueOf(one), "")
	if r.Sided {
		fmt.Fprintf(&k.b, " wrong side %v", r.Wrong)
	}
	w := worker{keyer: k, labels: map[string]site{}}
	w.all(r.Work)
	k.b.WriteString(" work: " + w.String())
	if f := factOf(part, r); f != nil {
		k.b.WriteString(" makes: ")
		k.put(reflect.ValueOf(*f), "")
	} else {
		k.b.WriteString(" counts: ")
		k.put(reflect.ValueOf(r.Counts), "")
	}
	return k.b.String(), k.refs, w.labels
}

// factOf is the fabric of a row that stands for itself.
func factOf(part *plan.Part, r *plan.Row) *plan.RowFact {
	if len(part.Worked) == 0 || len(r.First) == 0 {
		return nil
	}
	return plan.FactOf(part.Worked[0], r.First[0])
}
