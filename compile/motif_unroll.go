package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// This file parts the last round of a motif, as a rule a repeat of four, into sides that are joined and sides that are not.

// unroller rewrites the instructions of a round so that the spaces of its first sides are worked with joins. A side is what
// follows a corner; the corners at both ends of a joined side are joined.
type unroller struct {
	g       *grid
	of      *working
	sides   int
	n       int    // traces
	corners int    // corners made so far
	flags   []bool // of each space that could be joined so far, whether it is
	stuck   bool
}

func (u *unroller) list(ops []*fabric.Op) []*fabric.Op {
	var out []*fabric.Op
	for _, o := range ops {
		out = append(out, u.op(o)...)
	}
	return out
}

// copied is an operation with a trace of its own.
func (u *unroller) copied(o *fabric.Op) *fabric.Op {
	c := *o
	c.Index = u.n
	u.n++
	return &c
}

func (u *unroller) op(o *fabric.Op) []*fabric.Op {
	switch o.Kind {
	case fabric.Chains:
		return []*fabric.Op{u.chains(o)}
	case fabric.InOne:
		if u.passes(o) > 1 && u.cornersIn(o.Body) > 0 {
			u.stuck = true // several corners at once: there is nothing to part them by
		}
		c := u.copied(o)
		c.Body = u.list(o.Body)
		return []*fabric.Op{c}
	case fabric.Repeat:
		return u.repeat(o)
	}
	return []*fabric.Op{u.copied(o)}
}

// chains works a space with a join, if it is one of those.
func (u *unroller) chains(o *fabric.Op) *fabric.Op {
	c := u.copied(o)
	for i, r := range u.g.rules {
		if r.label != o.Label {
			continue
		}
		joins := u.sides > 0 && u.corners > 0 && u.corners <= u.sides
		if i == 0 {
			joins = u.sides > 0 && u.corners <= u.sides
			u.corners++
		}
		u.flags = append(u.flags, joins)
		if joins {
			c.Kind, c.Per, c.Form = fabric.JoinSpace, r.n, stitch.Form{}
		}
	}
	return c
}

// passes is how often an operation was carried out in one go, which is the same in every size where corners are made in it.
func (u *unroller) passes(o *fabric.Op) int {
	n := -1
	for z, res := range u.of.last {
		if res == nil || u.of.mask[z] && u.g.p.fab[z].Halted() {
			continue
		}
		if t := res.Traces[o.Index]; n >= 0 && t.N != n || t.Varies {
			u.stuck = true
		} else {
			n = t.N
		}
	}
	return max(n, 0)
}

// cornersIn is how many corners instructions make.
func (u *unroller) cornersIn(ops []*fabric.Op) int {
	n := 0
	for _, o := range ops {
		if o.Kind == fabric.Chains && o.Label == u.g.rules[0].label {
			n++
		}
		if k := u.cornersIn(o.Body); k > 0 {
			n += k * u.passes(o)
		}
	}
	return n
}

// repeat parts the passes of a repeat in which corners are made, and puts those together again that are worked alike.
func (u *unroller) repeat(o *fabric.Op) []*fabric.Op {
	if u.cornersIn(o.Body) == 0 {
		c := u.copied(o)
		c.Body = u.list(o.Body)
		return []*fabric.Op{c}
	}
	var out []*fabric.Op
	var before []bool
	for i := range u.passes(o) {
		from, trace := len(u.flags), u.n
		c := u.copied(o)
		c.N, c.Bound, c.Stated = u.g.p.c.nums(1), fabric.Bound{}, nil
		c.Body = u.list(o.Body)
		flags := slices.Clone(u.flags[from:])
		if i > 0 && slices.Equal(flags, before) {
			u.n = trace // worked like the pass before
			last := out[len(out)-1]
			last.N = plan.Nums(slices.Clone(last.N))
			for z := range last.N {
				last.N[z]++
			}
			continue
		}
		out, before = append(out, c), flags
	}
	return out
}
