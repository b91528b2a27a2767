package compile

import (
	"strconv"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// lowered is a list of instructions ready to be worked in every size.
type lowered struct {
	ops     []*fabric.Op
	traces  int
	join    *lang.Join   // nil: as the style of the part says
	ok      bool         // false: something in it could not be understood; that was reported
	spreads []int        // the traces of shaping that is spread over the row
	back    bool         // the row goes the other way
	cells   []*fabric.Op // what is worked by a chart
	grouped bool         // it names groups
	pure    bool         // see [fabric.Pure]
}

// lowerer turns the instructions of one row into operations of the fabric.
type lowerer struct {
	c      *checker
	p      *partState
	mask   []bool
	n      int
	bad    bool
	join   *lang.Join
	named  *lang.Work    // the last group that the row itself names
	within []*lang.Group // the groups that are being written out: none may hold itself
	turned bool          // the row is the mirror image of another: charts are read from the other end
	inOne  bool          // in round brackets, where a number before a stitch needs no place
}

// maxInstructions is the most instructions a row may come to once its groups are written out. Groups in groups grow fast.
const maxInstructions = 20_000

// lower turns a list into operations.
func (c *checker) lower(p *partState, l *lang.List, mask []bool) *lowered {
	w := &lowerer{c: c, p: p, mask: mask, turned: c.turned[l]}
	ops := w.list(l)
	if w.n > maxInstructions && w.named != nil {
		w.tooLong(w.named)
	}
	back := w.goesBack(ops)
	return &lowered{ops: ops, grouped: w.named != nil, traces: w.n, join: w.join, ok: !w.bad, spreads: spreadOps(ops, nil), back: back, cells: byCells(ops, nil), pure: fabric.Pure(ops)}
}

// tooLong reports a row that is too long where a group makes it so, unless something else is wrong with it already.
func (w *lowerer) tooLong(n *lang.Work) {
	if !w.bad {
		w.say(codeLongRow, n.Span(), diag.Args{"name": n.Stitch.Text, "max": maxInstructions})
	}
}

// goesBack reports whether a row is one of a stitch that is worked the other way. All its stitches must then be.
func (w *lowerer) goesBack(ops []*fabric.Op) bool {
	var other *fabric.Op
	back := stitch.ID("")
	var walk func([]*fabric.Op)
	walk = func(ops []*fabric.Op) {
		for _, o := range ops {
			switch k, _ := stitch.Of(o.Form.ID); {
			case k.Back:
				back = k.ID
			case o.Form.ID != "" && o.Form.ID != stitch.Slip && other == nil:
				other = o
			}
			walk(o.Body)
		}
	}
	walk(ops)
	if back != "" && other != nil {
		w.say(codeBackRow, other.Span, diag.Args{"stitch": w.c.word(back)})
	}
	return back != ""
}

func (w *lowerer) op(k fabric.OpKind, at lang.Node) *fabric.Op {
	o := &fabric.Op{Kind: k, Yarn: -1, Span: at.Span(), Index: w.n}
	w.n++
	return o
}

func (w *lowerer) say(code diag.Code, at source.Span, args diag.Args) {
	w.bad = true
	w.c.say(code, at, args)
}

// count reads a count; def holds if none is written.
func (w *lowerer) count(e *lang.Expr, def int) plan.Nums {
	if e == nil {
		return w.c.nums(def)
	}
	n := w.c.count(e, w.p.lex)
	if n == nil {
		w.bad = true
		return w.c.nums(0)
	}
	return n
}

func (w *lowerer) cnt(n *lang.Cnt, def int) plan.Nums { return w.count(exprOf(n), def) }

func (w *lowerer) list(l *lang.List) []*fabric.Op {
	if l == nil {
		w.bad = true
		return nil
	}
	var out []*fabric.Op
	for _, it := range l.Items {
		if o := w.item(it); o != nil {
			out = append(out, o)
		}
	}
	return out
}

func (w *lowerer) item(it lang.Item) *fabric.Op {
	switch n := it.(type) {
	case *lang.Work:
		return w.work(n)
	case *lang.ChainItem:
		o := w.op(fabric.Chains, n)
		o.N, o.Label = w.cnt(n.N, 1), labelOf(n.Label)
		return o
	case *lang.Lengthen:
		return w.lengthen(n)
	case *lang.Skip:
		return w.skip(n)
	case *lang.Established:
		return w.established(n)
	case *lang.Leave:
		o := w.op(fabric.Leave, n)
		if !n.Rest {
			o.N = w.cnt(n.N, 0)
		}
		o.Label = labelOf(n.Label)
		return o
	case *lang.Turn:
		return w.op(fabric.Turn, n)
	case *lang.Join:
		w.join = n
		return nil
	case *lang.Mark:
		return w.mark(n)
	case *lang.ChangeYarn:
		o := w.op(fabric.Change, n)
		o.Yarn = w.yarn(n.Yarn)
		return o
	case *lang.ChartRow:
		return w.chartRow(n)
	case *lang.Together:
		o := w.op(fabric.InOne, n)
		outer := w.inOne
		w.inOne = true
		o.Body = w.list(n.List)
		w.inOne = outer
		w.target(o, n.Target)
		o.Label = labelOf(n.Label)
		w.with(o, n.With)
		return o
	case *lang.Bracket:
		if n.Tog {
			return w.drawn(n)
		}
		o := w.op(fabric.Repeat, n)
		o.Body = w.list(n.List)
		w.repEnd(o, n.End)
		o.Label = labelOf(n.Label)
		w.with(o, n.With)
		return o
	}
	w.bad = true
	return nil
}

func labelOf(a *lang.As) string {
	if a == nil || a.Name == nil {
		return ""
	}
	return a.Name.Text
}

func (w *lowerer) yarn(n *lang.Name) int {
	i := w.c.yarn(n)
	if i < 0 {
		w.bad = true
	}
	return i
}

func (w *lowerer) with(o *fabric.Op, n *lang.Name) {
	if n != nil {
		o.Yarn = w.yarn(n)
	}
}

func (w *lowerer) skip(n *lang.Skip) *fabric.Op {
	o := w.op(fabric.SkipOver, n)
	o.Label = labelOf(n.Label)
	switch {
	case n.Rest:
	case n.Bound != nil:
		w.bound(&o.Bound, n.Bound)
	case n.Space:
		o.Kind, o.N = fabric.SkipSpaces, w.c.nums(1)
	default:
		o.N = w.cnt(n.N, 1)
		if n.Spaces {
			o.Kind = fabric.SkipSpaces
		}
	}
	if n.Stated != nil {
		o.Stated = w.cnt(n.Stated.N, 0)
	}
	return o
}

func (w *lowerer) mark(n *lang.Mark) *fabric.Op {
	k := map[string]fabric.OpKind{"mark": fabric.Mark, "move": fabric.Move, "unmark": fabric.Unmark}[n.Verb]
	o := w.op(k, n)
	switch {
	case n.Met && k == fabric.Mark:
		w.say(codeMarkName, n.Span(), nil)
		return nil
	case n.Met:
	case n.Name == nil:
		w.bad = true
		return nil
	default:
		o.Marker = n.Name.Text
	}
	switch {
	case n.Gap:
		o.Where = plan.GapHere
	case n.Next:
		o.Where = plan.NextOne
	case n.To == "first":
		o.Where = plan.FirstOne
	case n.To == "middle":
		o.Where = plan.MiddleOne
	case n.To == "last":
		o.Where = plan.LastOne
	}
	if k != fabric.Unmark && !n.Met {
		w.p.marker(o.Marker)
	}
	return o
}

func (w *lowerer) repEnd(o *fabric.Op, e *lang.RepEnd) {
	if e == nil {
		w.bad = true
		return
	}
	o.N = nil
	switch {
	case e.N != nil:
		o.N = w.cnt(e.N, 1)
	case e.Bound != nil:
		w.bound(&o.Bound, e.Bound)
	}
	if e.Stated != nil {
		o.Stated = w.cnt(e.Stated.N, 0)
	}
}

func (w *lowerer) bound(b *fabric.Bound, n *lang.Bound) {
	switch {
	case n.End:
		b.Kind = fabric.ToEnd
	case n.Space:
		b.Kind = fabric.ToSpace
	case n.Last:
		b.Kind, b.N = fabric.ToLast, w.cnt(n.LastN, 1)
	default:
		b.Kind = fabric.ToName
		if n.Marker {
			b.Kind = fabric.ToMarker
		}
		if n.Before != nil {
			b.N = w.count(n.Before.E, 0)
		}
		if n.Ref != nil && len(n.Ref.Path) > 0 {
			b.Name = n.Ref.Path[0]
			w.p.known(w, n.Ref)
		}
	}
}

// ref reads a reference to a place: label, label.2, part.label, part.label.first.
func (w *lowerer) ref(n *lang.Ref) fabric.Ref {
	if n == nil || len(n.Path) == 0 {
		w.bad = true
		return fabric.Ref{}
	}
	path := n.Path
	r := fabric.Ref{}
	if _, isPart := w.c.parts[path[0]]; isPart && len(path) > 1 {
		r.Part, path = path[0], path[1:]
	}
	r.Name = path[0]
	if len(path) > 1 {
		switch x := path[1]; x {
		case "first":
			r.Pick = plan.FirstOf
		case "last":
			r.Pick = plan.LastOf
		default:
			k, err := strconv.Atoi(x)
			if err != nil || len(path) > 2 {
				w.say(codeNoName, n.Span(), diag.Args{"word": w.c.file.Source.Slice(n.Span()), "near": []string(nil)})
				return r
			}
			r.Pick, r.Nth = plan.NthOf, k
		}
	}
	w.p.known(w, n)
	return r
}
