package fabric

import (
	"fmt"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// The tests write edges as text, in the order in which they are worked: a letter is a stitch, a figure a space of so many
// chains, o a ring. "sss2s" is three stitches, a space of two chains and a stitch.

var sc = stitch.Form{ID: stitch.SC, Together: 1}

func nums(n int) plan.Nums { return plan.Nums{n} }

// edged makes a part with an edge.
func edged(text string, closed bool) (*Fabric, *Part) {
	f := New(0, 100_000)
	p := f.Begin("p")
	p.edge = edge{closed: closed, serial: p.nextRow()}
	for _, c := range text {
		e := Elem{Kind: Stitch, Form: f.intern(sc), Into: nowhere, Into2: nowhere, Row: p.edge.serial}
		switch {
		case c == 'o':
			e.Kind = Ring
		case '0' <= c && c <= '9':
			e.Kind, e.N = Space, c-'0'
		}
		p.edge.p = append(p.edge.p, f.add(&e))
	}
	return f, p
}

// written is the reverse: elements as text.
func written(f *Fabric, ids []ID) string {
	var b strings.Builder
	for _, id := range ids {
		switch e := f.Elems[id]; e.Kind {
		case Space:
			fmt.Fprint(&b, e.N)
		case Ring:
			b.WriteByte('o')
		default:
			b.WriteByte('s')
		}
	}
	return b.String()
}

// into says, for each element made, which place of the edge it was worked into (first-last for one that draws together).
func into(f *Fabric, edge, made []ID) string {
	at := map[ID]int{}
	for i, id := range edge {
		at[id] = i
	}
	var out []string
	for _, id := range made {
		e := f.Elems[id]
		name := func(p Place) string {
			i, here := at[p.ID]
			if !here {
				return "-"
			}
			return fmt.Sprint(i) + map[Aspect]string{GapAfter: "g", OneChain: fmt.Sprintf("c%d", p.Sub)}[p.Asp]
		}
		s := name(e.Into)
		if e.Into != e.Into2 {
			s += "-" + name(e.Into2)
		}
		out = append(out, s)
	}
	return strings.Join(out, " ")
}

// op makes an instruction that works single crochet.
func op(k OpKind, n int) *Op {
	return &Op{Kind: k, Form: sc, N: nums(n), Yarn: -1, Target: Target{Takes: Stitches}}
}

func next(n int) *Op { return op(Work, n) }

func nextOf(t Takes, n int) *Op { o := op(Work, n); o.Target.Takes = t; return o }

// inOne works per stitches into each of the next n.
func per(k, n int) *Op { o := next(n); o.Per = nums(k); return o }

func to(b Bound) *Op {
	o := op(Work, 0)
	o.N, o.Target.Kind, o.Target.Bound = nil, Each, b
	return o
}

func eachOf(t Takes) *Op { o := to(Bound{}); o.Target.Takes = t; return o }

func each() *Op { return to(Bound{}) }

func at(k TargetKind) *Op { o := op(Work, 1); o.Target.Kind = k; return o }

func named(k TargetKind, name string) *Op { o := at(k); o.Target.Ref = Ref{Name: name}; return o }

func dec(k, n int) *Op { o := op(Draw, n); o.Form.Together = k; return o }

func ch(n int) *Op { return op(Chains, n) }

func slipped(n int) *Op { o := next(n); o.Form.ID = slip; return o }

func skip(n int) *Op { return op(SkipOver, n) }

func skipTo(b Bound) *Op { o := op(SkipOver, 0); o.N, o.Bound = nil, b; return o }

func leave(n int) *Op { return op(Leave, n) }

func times(n int, body ...*Op) *Op { o := op(Repeat, n); o.Body = body; return o }

func repeatTo(b Bound, body ...*Op) *Op { o := times(0, body...); o.N, o.Bound = nil, b; return o }

func around(body ...*Op) *Op { return repeatTo(Bound{}, body...) }

func together(t *Op, body ...*Op) *Op { t.Kind, t.Body = InOne, body; return t }

func spread(n, k int, how Spreading) *Op {
	o := op(Spread, n)
	o.Form.Together, o.How = k, how
	return o
}

func as(o *Op, label string) *Op { o.Label = label; return o }

func marks(k OpKind, name string, w plan.MarkWhere) *Op {
	o := op(k, 0)
	o.Marker, o.Where = name, w
	return o
}

func last(n int) Bound { return Bound{Kind: ToLast, N: nums(n)} }

func name(n string) Bound { return Bound{Kind: ToName, Name: n} }

// rowOf numbers the traces of a list.
func rowOf(style Style, ops ...*Op) *Row {
	r := &Row{Ops: ops, Style: style}
	var number func([]*Op)
	number = func(list []*Op) {
		for _, o := range list {
			o.Index = r.Traces
			r.Traces++
			number(o.Body)
		}
	}
	number(ops)
	return r
}
