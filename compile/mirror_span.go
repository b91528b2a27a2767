package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
)

// This file works out how far the instructions of a mirrored row go. An instruction that goes as far as it can (to the end,
// to the last three, to a marker) starts where the one before it stopped; from the other end it stops there.

// cut is a place of a row: some places behind its start, behind the place so many before its end, or behind a marker.
type cut struct {
	kind   cutKind
	last   plan.Nums // fromLast: how many before the end
	marker *lang.Ref // fromMarker
	behind plan.Nums
}

type cutKind uint8

const (
	fromStart cutKind = iota
	fromLast
	fromMarker
)

// stretch is from where to where an open instruction goes.
type stretch struct{ from, to cut }

// measure works out the stretch of each item that goes as far as it can. It returns an item that cannot be measured.
func (m *mirror) measure(items []lang.Item) ([]*stretch, lang.Item) {
	out := make([]*stretch, len(items))
	at := cut{kind: fromStart, behind: m.c.nums(0)}
	for i, it := range items {
		b, open := openEnd(it)
		if !open {
			takes, ok := m.takes(it)
			if !ok {
				return nil, it
			}
			at.behind = plus(at.behind, takes, 1)
			continue
		}
		to, ok := m.cutOf(b)
		if !ok {
			return nil, it
		}
		out[i] = &stretch{at, to}
		at = to
	}
	return out, nil
}

func plus(a, b plan.Nums, sign int) plan.Nums {
	out := slices.Clone(a)
	for z := range out {
		if out[z] == plan.Absent || b[z] == plan.Absent {
			out[z] = plan.Absent
			continue
		}
		out[z] += sign * b[z]
	}
	return out
}

// cutOf is where a bound lies.
func (m *mirror) cutOf(b *lang.Bound) (cut, bool) {
	c := m.c
	switch {
	case b == nil || b.End:
		return cut{kind: fromLast, last: c.nums(0), behind: c.nums(0)}, true
	case b.Last:
		n := c.nums(1)
		if b.LastN != nil {
			m.quiet(func() { n = c.cnt(b.LastN, m.p.lex) })
		}
		return cut{kind: fromLast, last: n, behind: c.nums(0)}, n != nil
	case b.Ref != nil && len(b.Ref.Path) == 1 && (m.gaps[b.Ref.Path[0]] || m.ins[b.Ref.Path[0]]):
		behind := c.nums(0)
		if b.Before != nil {
			var n plan.Nums
			m.quiet(func() { n = c.count(b.Before.E, m.p.lex) })
			if n == nil {
				return cut{}, false
			}
			behind = plus(behind, n, -1)
		}
		return cut{kind: fromMarker, marker: b.Ref, behind: behind}, true
	}
	return cut{}, false
}

// apply lets an item, read from the other end, stop where it started.
func (s *stretch) apply(m *mirror, it lang.Item) lang.Item {
	at := atOf(it)
	switch s.from.kind {
	case fromStart:
		if m.zero(s.from.behind) {
			return withBound(it, &lang.Bound{At: at, End: true})
		}
		return withBound(it, &lang.Bound{At: at, Last: true, LastN: m.number(at, s.from.behind)})
	case fromMarker:
		before := s.from.behind
		if m.ins[s.from.marker.Path[0]] {
			before = plus(before, m.c.nums(1), -1) // the marked place itself lies on the other side now
		}
		if !m.whole(before) {
			return nil
		}
		b := &lang.Bound{At: at, Ref: s.from.marker}
		if !m.zero(before) {
			b.Before = &lang.BefCnt{At: at, E: m.number(at, before).E}
		}
		return withBound(it, b)
	}
	if s.to.kind != fromLast {
		return nil
	}
	n := plus(plus(s.from.last, s.from.behind, -1), s.to.last, -1)
	if !m.whole(n) {
		return nil
	}
	return m.withCount(it, m.number(at, n), n)
}

// whole reports whether numbers are not below zero in any size of the block.
func (m *mirror) whole(n plan.Nums) bool {
	for z, v := range n {
		if (m.p.lex == nil || m.p.lex[z]) && v < 0 {
			return false
		}
	}
	return true
}

func (m *mirror) zero(n plan.Nums) bool {
	for z, v := range n {
		if (m.p.lex == nil || m.p.lex[z]) && v != 0 {
			return false
		}
	}
	return true
}

// number writes numbers as the source would: one for each size of the block, or one for all.
func (m *mirror) number(at lang.At, n plan.Nums) *lang.Cnt {
	e := &lang.Expr{At: at, Op: lang.OpNumber}
	same, first := true, true
	for z, v := range n {
		if m.p.lex != nil && !m.p.lex[z] {
			continue
		}
		text := itoa(max(v, 0))
		if first {
			e.Text, first = text, false
			continue
		}
		same = same && text == e.Text
		e.Sizes = append(e.Sizes, text)
	}
	if same {
		e.Sizes = nil
	}
	return &lang.Cnt{At: at, E: e}
}

// takes is how many places an item takes in each size.
func (m *mirror) takes(it lang.Item) (plan.Nums, bool) {
	var low *lowered
	m.quiet(func() { low = m.c.lower(m.p, &lang.List{Items: []lang.Item{it}}, nil) })
	if !low.ok {
		return m.c.nums(0), true // that is reported when the row is worked
	}
	out := m.c.nums(0)
	for z := range out {
		n, ok := takes(low.ops, z)
		if !ok {
			return nil, false
		}
		out[z] = n
	}
	return out, true
}

// takes is how many places a list takes, in one size; false if that depends on the row it is worked over.
func takes(ops []*fabric.Op, z int) (int, bool) {
	at := func(n plan.Nums, def int) int {
		if n == nil || n[z] == plan.Absent {
			return def
		}
		return n[z]
	}
	sum := 0
	for _, o := range ops {
		switch o.Kind {
		case fabric.Cross:
			sum += o.Form.Of * at(o.N, 1)
		case fabric.Draw:
			n, ok := o.Form.Together, true
			if o.Body != nil {
				n, ok = takes(o.Body, z)
			}
			if !ok {
				return 0, false
			}
			sum += n * at(o.N, 1)
		case fabric.Work, fabric.InOne:
			switch o.Target.Kind {
			case fabric.Next, fabric.Last:
				sum += at(o.N, 1)
			case fabric.First:
				sum++
			default:
				return 0, false
			}
		case fabric.SkipOver, fabric.SkipSpaces, fabric.Leave:
			if o.N == nil {
				return 0, false
			}
			sum += at(o.N, 0)
		case fabric.Repeat:
			n, ok := takes(o.Body, z)
			if !ok || o.N == nil {
				return 0, false
			}
			sum += n * at(o.N, 0)
		case fabric.ByCell:
			if o.N == nil {
				return 0, false
			}
			sum += at(o.N, 0) * (o.Cells.Behind + 1)
			if o.Cells.Behind > 0 {
				sum++
			}
		case fabric.Spread, fabric.Spaced, fabric.SlideTo:
			return 0, false
		}
	}
	return sum, true
}
