package compare

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"ovillo/compile/plan"
)

// Start stands for the start of a part where a step is meant.
const Start = -1

// element is one thing that is done in a part in one size: a row by itself, or what stands between rows.
type element struct {
	step   int // index of the step of the part in that size, or Start
	key    string
	words  map[string]int // of the key, to say how alike two are
	refs   []ref
	number int // of the row; 0: it is none
	tall   plan.Length
	prose  *plan.Prose // of a note
}

// elementsOf writes out what is done in a part.
func (b *book) elementsOf(part, unrolled *plan.Part) []element {
	out := []element{b.start(part)}
	rest := unrolled.Steps
	for i, step := range part.Steps {
		first, last, rows := numbersOf(step)
		if !rows || len(rest) == 0 || rest[0] == step {
			if len(rest) > 0 {
				rest = rest[1:]
			}
			out = append(out, b.element(part, i, step)...)
			continue
		}
		for len(rest) > 0 {
			r, ok := rest[0].(*plan.Row)
			if !ok || r.First[0] < first || r.First[0] > last {
				break
			}
			out = append(out, b.element(part, i, r)...)
			rest = rest[1:]
		}
	}
	return out
}

// numbersOf are the rows that a step of one size stands for.
func numbersOf(step plan.Step) (first, last int, ok bool) {
	switch t := step.(type) {
	case *plan.Row:
		return t.First[0], t.Last[0], true
	case *plan.Block:
		return t.First[0], t.Last[0], true
	}
	return 0, 0, false
}

// start is how a part starts. The chains for the beginning of the first row are chains like the others.
func (b *book) start(part *plan.Part) element {
	k := keyer{book: b, part: part}
	k.put(reflect.ValueOf(part.Start), "")
	chains := 0
	for _, n := range []plan.Nums{part.Start.N, part.Start.Extra} {
		if len(n) > 0 {
			chains += n[0]
		}
	}
	key := fmt.Sprintf("start %s of %d", k.b.String(), chains)
	return element{step: Start, key: key, refs: k.refs, tall: plan.NoLength}
}

// element is a step that stands for itself; none for what says again what rows say.
func (b *book) element(part *plan.Part, i int, step plan.Step) []element {
	e := element{step: i, tall: plan.NoLength}
	switch t := step.(type) {
	case *plan.Counted:
		return nil
	case *plan.Row:
		e.key, e.refs, _ = b.rowKey(part, t)
		if e.number = t.First[0]; len(t.Tall) > 0 {
			e.tall = printed(t.Tall[0])
		}
	case *plan.Block: // one that is too long to be written out
		var keys []string
		for _, r := range t.Rows {
			key, refs, _ := b.rowKey(part, r)
			keys, e.refs = append(keys, key), append(e.refs, refs...)
		}
		k := keyer{book: b, part: part}
		one := *t
		one.Rows = nil
		k.put(reflect.ValueOf(one), "")
		e.key = fmt.Sprintf("%s %s counts %s", k.b.String(), strings.Join(keys, "; "), b.key(t.Counts))
		e.number = t.First[0]
	case *plan.JoinRound:
		k := keyer{book: b, part: part}
		one := *t
		one.Row = nil
		k.put(reflect.ValueOf(one), "")
		e.key, e.refs = k.b.String(), k.refs
		if t.Row != nil {
			key, refs, _ := b.rowKey(part, t.Row)
			e.key, e.refs = e.key+key, append(e.refs, refs...)
		}
	case *plan.Fasten:
		one := *t
		if one.Close != "" { // what is drawn together is cut and drawn through
			one.Off, one.Tail = false, false
		}
		e.key = b.key(one)
	case *plan.NoteStep:
		e.key, e.prose = "note", &t.Prose
	default:
		k := keyer{book: b, part: part}
		k.put(reflect.ValueOf(step), "")
		e.key, e.refs = k.b.String(), k.refs
	}
	return []element{e}
}

// sitesOf finds where the labels of a part stand.
func (b *book) sitesOf(part *plan.Part) map[string]site {
	out := map[string]site{}
	note := func(label string, at site) {
		if _, known := out[label]; label != "" && !known {
			out[label] = at
		}
	}
	for _, step := range part.Steps {
		for _, r := range plan.RowsOf(step) {
			note(r.Label, site{-2})
			_, _, labels := b.rowKey(part, r)
			for l, at := range labels {
				note(l, at)
			}
		}
		if t, ok := step.(*plan.CountOff); ok {
			n := 0
			for _, it := range t.Items {
				note(it.Label, site{1_000_000 + n})
				if len(it.N) > 0 {
					n += it.N[0]
				}
			}
		}
	}
	return out
}

// unlike says how unlike two elements are, by the words of their keys: 0 for the same, 1 for nothing in common.
func unlike(a, b *element) float64 {
	if a.key == b.key {
		return 0
	}
	if (a.step == Start) != (b.step == Start) || (a.number > 0) != (b.number > 0) || (a.prose == nil) != (b.prose == nil) {
		return 1
	}
	for _, e := range []*element{a, b} {
		if e.words == nil {
			e.words = map[string]int{}
			for _, w := range strings.FieldsFunc(e.key, func(r rune) bool { return strings.ContainsRune(" ×:,", r) }) {
				e.words[w]++
			}
		}
	}
	all, common := 0, 0
	for w, n := range a.words {
		all += max(n, b.words[w])
		common += min(n, b.words[w])
	}
	for w, n := range b.words {
		if a.words[w] == 0 {
			all += n
		}
	}
	return 1 - float64(common)/float64(max(all, 1))
}

// lines are the two lists of elements of a part, lined up.
type lines struct {
	old, new []element
	pairs    []pair
	changed  map[pair]bool // pairs of elements that do not mean the same
}

func lineUp(old, new []element) *lines {
	keys := func(list []element) []string {
		out := make([]string, len(list))
		for i, e := range list {
			out[i] = e.key
		}
		return out
	}
	l := &lines{old: old, new: new, changed: map[pair]bool{}}
	l.pairs = lined(keys(old), keys(new), func(i, k int) float64 { return unlike(&old[i], &new[k]) })
	for _, p := range l.pairs {
		if p.old < 0 || p.new < 0 || old[p.old].key != new[p.new].key {
			l.changed[p] = true
		}
	}
	return l
}

// rows are the old rows by their numbers, and where they are in the new pattern.
func (l *lines) rows() map[int]where {
	out := map[int]where{}
	for _, p := range l.pairs {
		if p.old >= 0 && p.new >= 0 && l.old[p.old].number > 0 && l.new[p.new].number > 0 {
			out[l.old[p.old].number] = where{l.new[p.new].number, l.changed[p]}
		}
	}
	return out
}

// refer finds pairs that seemed the same and are not: they refer to rows that are not the same, or give another height or figure.
func (l *lines) refer(moved func(part, row int) where, figures func(old, new plan.Prose) bool) {
	for _, p := range l.pairs {
		if l.changed[p] {
			continue
		}
		a, b := &l.old[p.old], &l.new[p.new]
		apart := a.tall != plan.NoLength && b.tall != plan.NoLength && a.tall != b.tall
		if a.prose != nil {
			apart = apart || !figures(*a.prose, *b.prose)
		}
		if apart || !sameRefs(a.refs, b.refs, moved) {
			l.changed[p] = true
		}
	}
}

// sameRefs reports whether two things refer to the same rows.
func sameRefs(a, b []ref, moved func(part, row int) where) bool {
	if len(a) != len(b) {
		return false
	}
	for i, r := range a {
		row, to := moved(r.part, r.row), moved(r.part, r.toRow)
		if row.row != b[i].row || to.row != b[i].toRow {
			return false
		}
		// In a row that is changed itself a label may stand elsewhere and mean what it meant.
		if r.at != b[i].at && !row.changed {
			return false
		}
	}
	return true
}

// where is the row that stands for an old one: 0 for none, and for no row -1 if it is gone.
type where struct {
	row     int
	changed bool
}

// group is steps of the old part and those of the new one that stand for them, of which something is changed.
type group struct{ old, new []int }

// groups gathers what is changed by the steps that print it: of a run of rows that became longer, the run as it was and as it is.
func (l *lines) groups() []group {
	type node struct {
		new  bool
		step int
	}
	parent := map[node]node{}
	var find func(n node) node
	find = func(n node) node {
		if p, ok := parent[n]; ok && p != n {
			return find(p)
		}
		return n
	}
	touched := map[node]bool{}
	for _, p := range l.pairs {
		if l.changed[p] {
			if p.old >= 0 {
				touched[node{false, l.old[p.old].step}] = true
			}
			if p.new >= 0 {
				touched[node{true, l.new[p.new].step}] = true
			}
		}
	}
	for again := true; again; {
		again = false
		for _, p := range l.pairs {
			if p.old < 0 || p.new < 0 {
				continue
			}
			a, b := node{false, l.old[p.old].step}, node{true, l.new[p.new].step}
			if touched[a] || touched[b] {
				again = again || !touched[a] || !touched[b] || find(a) != find(b)
				touched[a], touched[b] = true, true
				parent[find(b)] = find(a)
			}
		}
	}
	var order []node
	sets := map[node]*group{}
	take := func(n node) {
		if !touched[n] {
			return
		}
		root := find(n)
		g := sets[root]
		if g == nil {
			g = &group{}
			sets[root] = g
			order = append(order, root)
		}
		list := &g.old
		if n.new {
			list = &g.new
		}
		if k := len(*list); k == 0 || (*list)[k-1] != n.step {
			*list = append(*list, n.step)
		}
	}
	for _, p := range l.pairs {
		if p.old >= 0 {
			take(node{false, l.old[p.old].step})
		}
		if p.new >= 0 {
			take(node{true, l.new[p.new].step})
		}
	}
	out := make([]group, len(order))
	for i, root := range order {
		out[i] = *sets[root]
	}
	return out
}

// Run is rows with a number of their own that have another number now, so many rows on.
type Run struct{ From, To, By int }

// runs are the rows that are the same and have other numbers, without those of steps of which something is changed.
func (l *lines) runs(told []group) []Run {
	var out []Run
	for _, p := range l.pairs {
		if p.old >= 0 && slices.ContainsFunc(told, func(g group) bool { return slices.Contains(g.old, l.old[p.old].step) }) {
			continue
		}
		if p.old < 0 || p.new < 0 || l.old[p.old].number == 0 || l.new[p.new].number == 0 {
			continue
		}
		was, by := l.old[p.old].number, l.new[p.new].number-l.old[p.old].number
		if by == 0 {
			continue
		}
		if n := len(out); n > 0 && out[n-1].By == by && out[n-1].To == was-1 {
			out[n-1].To = was
			continue
		}
		out = append(out, Run{was, was, by})
	}
	return out
}
