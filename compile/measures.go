package compile

import (
	"math/big"

	"ovillo/compile/figure"
	"ovillo/compile/plan"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// measures works out the measures of the finished piece from the fabric.
func (c *checker) measures() {
	for _, s := range blocks[*lang.MeasureBlock](c.file.Body) {
		for _, b := range s.Body {
			if m, ok := b.Node.(*lang.Measure); ok {
				c.measure(m)
			}
		}
	}
}

func (c *checker) measure(n *lang.Measure) {
	out := plan.Measure{Name: n.Name.Text}
	c.oversaid = c.oversaid || n.Over != nil
	if len(n.Text) > 0 {
		out.Text = c.text(n.Text, n)
	}
	taken := map[*lang.Expr]plan.MeasuredOn{}
	v := c.eval(n.Value.E, nil, func(e *lang.Expr) (value.Vector, bool) {
		w, of := c.measured(e)
		if of != nil {
			taken[e] = *of
		}
		return w, true
	})
	c.takenOf[out.Name] = takenIn(n.Value.E, taken)
	if of, ok := sumOf(n.Value.E, taken, false); ok {
		out.Of = of
	}
	if v.Unknown {
		return
	}
	if out.Values = v.Lengths(); out.Values == nil {
		c.say(codeMeasured, n.Value.Span(), nil)
		return
	}
	c.lets["measure."+out.Name], c.measureAt[out.Name] = v, n.Span()
	c.fit(n, &out)
	c.over(n, &out)
	c.wanted(n, &out)
	c.pat.Measures = append(c.pat.Measures, out)
}

// sumOf is where a measure is taken: the terms of a sum. Anything else, such as twice a height or a length that stands on no
// part, is a figure that no line of the drawing is as long as; ok is false then.
func sumOf(e *lang.Expr, taken map[*lang.Expr]plan.MeasuredOn, minus bool) (of []plan.MeasuredOn, ok bool) {
	switch e.Op {
	case lang.OpMeasure:
		on, known := taken[e]
		on.Minus = minus
		return []plan.MeasuredOn{on}, known
	case lang.OpParen:
		return sumOf(e.L, taken, minus)
	case lang.OpAdd, lang.OpSub:
		left, okL := sumOf(e.L, taken, minus)
		right, okR := sumOf(e.R, taken, minus != (e.Op == lang.OpSub))
		return append(left, right...), okL && okR
	}
	return nil, false
}

// measured works out around, height, width or length of a part; a value that is not known is silent.
func (c *checker) measured(e *lang.Expr) (value.Vector, *plan.MeasuredOn) {
	switch {
	case e.Side != nil:
		return c.measuredAlong(e)
	case e.Text == "along":
		return c.measuredPlaces(e)
	case e.Text == "across":
		return c.measuredAcross(e)
	}
	p := c.parts[e.Path[0]]
	if p == nil {
		c.say(codeNoPart, e.Span(), diag.Args{"word": e.Path[0], "near": lang.Near(e.Path[0], keys(c.parts))})
		return value.Unknown, nil
	}
	on := &plan.MeasuredOn{Part: p.index}
	if e.R != nil {
		if on.Row = c.count(e.R, nil); on.Row == nil {
			return value.Unknown, nil
		}
	}
	out := make(plan.Lengths, c.z)
	for z := range out {
		if p.fab[z].Halted() {
			return value.Unknown, nil
		}
		l, ok := c.measuredIn(p, z, e, on)
		if !ok {
			return value.Unknown, nil
		}
		out[z] = l
	}
	if on.Kind == plan.Height {
		on.Row = nil
	}
	on.Values = out
	return value.OfLengths(out), on
}

// measuredPlaces works out how long a run of places is: a label, the last row of a part, its start.
func (c *checker) measuredPlaces(e *lang.Expr) (value.Vector, *plan.MeasuredOn) {
	ref, ls, lacks := c.placesRef(&lang.Ref{At: e.At, Path: e.Path})
	if ref == nil {
		return value.Unknown, nil
	}
	if lacks != "" {
		c.noGauge(lacks, e)
	}
	for _, l := range ls {
		if l == plan.NoLength {
			return value.Unknown, nil
		}
	}
	return value.OfLengths(ls), nil
}

// measuredAlong works out how long a side edge is.
func (c *checker) measuredAlong(e *lang.Expr) (value.Vector, *plan.MeasuredOn) {
	edge := c.sideEdge(e.Side, nil)
	if edge == nil {
		return value.Unknown, nil
	}
	out := make(plan.Lengths, c.z)
	for z := range out {
		run := edge.run(z)
		if run.Halted {
			return value.Unknown, nil
		}
		l, lacks := edge.length(z, run)
		if lacks != "" {
			c.noGauge(lacks, e)
		}
		if out[z] = l; l == plan.NoLength {
			return value.Unknown, nil
		}
	}
	on := &plan.MeasuredOn{Kind: plan.Long, Part: edge.part.index, Side: plan.Side(edge.side), Values: out}
	if edge.rows != nil {
		on.Row, on.ToRow = c.nums(plan.Absent), c.nums(plan.Absent)
		for z, r := range edge.rows {
			on.Row[z], on.ToRow[z] = r.from, r.to
		}
	}
	return value.OfLengths(out), on
}

func (c *checker) measuredIn(p *partState, z int, e *lang.Expr, on *plan.MeasuredOn) (plan.Length, bool) {
	if g := p.plan.Grid; g != nil {
		return c.measuredOf(g, z, e, on)
	}
	facts := p.plan.Worked[z]
	tall := e.Text == "height" || e.Text == "length"
	if !p.gauged(z, func(number int) bool { return tall || on.Row == nil || number == on.Row[z] }, tall, e) {
		return 0, false
	}
	switch e.Text {
	case "height", "length":
		on.Kind = plan.Height
		var sum plan.Length
		for _, f := range facts {
			sum += f.Height
		}
		return sum, true
	case "around":
		on.Kind = plan.Around
	default:
		on.Kind = plan.Width
	}
	if on.Row == nil {
		var widest plan.Length
		for _, f := range facts {
			widest = max(widest, f.Width)
		}
		return widest, true
	}
	f := plan.FactOf(facts, on.Row[z])
	if f == nil {
		c.report(diag.Diagnostic{Code: codeMeasuredRow, Span: e.R.Span(), Args: diag.Args{
			"need": on.Row[z], "have": len(facts), "part": p.plan.Name, "round": diag.Term{Key: rowWord(p), N: 1}}, Sizes: []string{c.pat.Sizes[z].Name}})
		return 0, false
	}
	return f.Width, true
}

// fit compares a measure with the wearer.
func (c *checker) fit(n *lang.Measure, out *plan.Measure) {
	if n.Fits == nil {
		return
	}
	e := &lang.Expr{At: n.Fits.At, Op: lang.OpName, Path: n.Fits.Path, Text: n.Fits.Path[0]}
	body := c.eval(e, nil, nil).Lengths()
	lo, hi := c.value(n.Lo, nil), c.value(n.Hi, nil)
	// ease 0 to 6 cm: a bare number takes the unit of the other bound.
	los, his := lo.Lengths(), hi.Lengths()
	if los == nil && his != nil && !lo.Unknown && lo.Dim == value.Count {
		los = rescale(lo, n.Hi.E)
	}
	if body == nil || los == nil || his == nil {
		return
	}
	f, found := figure.Fits(figure.Measured{Name: out.Name, Values: out.Values, Sizes: c.sizeNames(), Span: n.Span()},
		n.Fits.Path[len(n.Fits.Path)-1], body, los, his)
	out.Fits = f
	c.usualEase(n, f)
	c.out = append(c.out, found...)
}

// rescale gives a bare number the unit that stands at the end of another value.
func rescale(v value.Vector, like *lang.Expr) plan.Lengths {
	unit := map[string]int64{"cm": int64(plan.Centimetre), "mm": int64(plan.Millimetre), "in": int64(plan.Inch), "m": 100 * int64(plan.Centimetre)}[unitOf(like)]
	if unit == 0 {
		return nil
	}
	out := make(plan.Lengths, len(v.N))
	for i, x := range v.N {
		if x == nil {
			out[i] = plan.NoLength
			continue
		}
		f, _ := new(big.Rat).Mul(x, big.NewRat(unit, 1)).Float64()
		out[i] = plan.Length(f)
	}
	return out
}

func unitOf(e *lang.Expr) string {
	switch {
	case e == nil:
		return ""
	case e.Op == lang.OpNumber:
		return e.Unit
	case e.R != nil:
		return unitOf(e.R)
	}
	return unitOf(e.L)
}

func cmText(l plan.Length) string {
	s := new(big.Rat).SetFrac64(int64(l), int64(plan.Centimetre)).FloatString(1)
	return s + " cm"
}

// wanted compares a measure with the length the designer wants.
func (c *checker) wanted(n *lang.Measure, out *plan.Measure) {
	if n.Wanted == nil {
		return
	}
	want := c.value(n.Wanted, nil).Lengths()
	var within plan.Lengths
	if n.Within != nil {
		within = c.value(n.Within, nil).Lengths()
	}
	if want == nil {
		return
	}
	out.Wanted = want
	c.out = append(c.out, figure.Wanted(figure.Measured{Name: out.Name, Values: out.Values, Sizes: c.sizeNames(), Span: n.Span()}, want, within)...)
}
