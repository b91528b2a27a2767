package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file reads and prints what is set at even distances among plain stitches.

// spaced lets a stitch that is worked in each place hold a bracket, some times.
func (w *lowerer) spaced(o *fabric.Op, n *lang.Work) *fabric.Op {
	if o.Kind != fabric.Work || o.Target.Kind != fabric.Each || o.Target.Takes != fabric.Stitches || o.Per != nil {
		w.say(codeSpacedAmong, n.Spaced.Span(), nil)
		return nil
	}
	o.Kind, o.Bound, o.N = fabric.Spaced, o.Target.Bound, w.cnt(n.Spaced.N, 0)
	o.Body = w.list(n.Spaced.List)
	if n.Spaced.After != nil {
		o.Edge = w.cnt(n.Spaced.After, 0)
	}
	if n.Spaced.Last {
		o.How = fabric.FromEnd
	}
	for z := range w.c.z {
		if width, ok := fabric.Width(o.Body, z); (!ok || width == 0) && !w.bad {
			w.say(codeSpacedWidth, n.Spaced.List.Span(), diag.Args{"text": w.c.file.Source.Slice(n.Spaced.List.Span())})
		}
	}
	return o
}

// spaced prints it as it is worked: the stitches before the first, then each of them with the stitches behind it, and the
// last with those up to the end.
func (pr *printer) spaced(o *fabric.Op) []plan.Instr {
	c := pr.p.c
	before, times, between, one, after := c.nums(plan.Absent), c.nums(plan.Absent), c.nums(plan.Absent), c.nums(plan.Absent), c.nums(plan.Absent)
	for z := range before {
		if res := pr.w.first[z]; res != nil {
			g := res.Traces[o.Index].Group
			before[z], times[z], between[z], after[z] = g.Before, g.Short, g.ShortPlain, g.After
			one[z] = min(res.Traces[o.Index].N, 1)
		}
	}
	plain := plan.Instr{Op: plan.Work, Form: o.Form, Marker: -1, Yarn: o.Yarn}
	c.useForm(o.Form)
	pr.overTook(&plain, o)
	work := func(n plan.Nums) []plan.Instr {
		if n.Is(0) {
			return nil
		}
		in := plain
		in.N = n
		return []plan.Instr{in}
	}
	again := func(n plan.Nums, body []plan.Instr) []plan.Instr {
		switch {
		case n.Is(0):
			return nil
		case n.Is(1):
			return body
		}
		return []plan.Instr{{Op: plan.Repeat, Reach: plan.Times, N: n, Body: body, Marker: -1, Yarn: -1}}
	}
	body := pr.list(o.Body)
	pr.p.c.useForm(o.Form)
	out := append(work(before), again(times, append(slices.Clone(body), work(between)...))...)
	out = append(out, again(one, pr.list(o.Body))...)
	if o.Bound.Kind == fabric.ToEnd {
		plain.Reach = plan.Last
	}
	return append(out, work(after)...)
}
