package compile

import (
	"math/big"

	"ovillo/compile/plan"
	"ovillo/compile/standard"
	"ovillo/compile/stitch"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// This file reads the gauge: one for each stitch or stitch pattern and way of working.

// way says how a stitch was counted, or is worked.
type way uint8

const (
	eitherWay way = iota // counted without rows; worked in no part
	inRows
	inRounds
)

// wayOf is how a part, or a row of it, is worked.
func wayOf(s plan.Style) way {
	if s == plan.Rows {
		return inRows
	}
	return inRounds
}

// manner is how a stitch is worked: which way, and with which hook; 0: the main one, or not known.
type manner struct {
	by   way
	hook plan.Length
}

// key is the word of a way, for messages.
func (w way) key() string {
	if w == inRounds {
		return "round"
	}
	return "row"
}

// gaugeOf is a line of the gauge: stitches and rows in a millimetre.
type gaugeOf struct {
	sts, rows *big.Rat    // rows nil: not given
	over      *big.Rat    // millimetres it was counted over
	by        way         // what was counted upwards
	hook      plan.Length // it was counted with; 0: the main one
	word      string      // of the source
	at        source.Span
}

// readGauges reads all gauge blocks.
func (c *checker) readGauges() {
	for _, s := range blocks[*lang.Gauge](c.file.Body) {
		c.readGauge(s, s.Node.(*lang.Gauge))
	}
	c.regrade()
	for i, g := range c.lines {
		c.out = append(c.out, standard.CheckProportion(string(c.pat.Gauges[i].Stitch), g.word, g.sts, g.rows, g.at)...)
	}
}

// leastGauge is the least length that a gauge is counted over. A count over half of it that is doubled misses by as many
// stitches as the swatch was misread by, doubled as well. 10 cm or 4 in, as gauges are printed.
const leastGauge = 10 * plan.Centimetre

func (c *checker) readGauge(s *lang.Statement, n *lang.Gauge) {
	over := c.value(n.Over, nil)
	q := over.At(0)
	if over.Unknown || q.N == nil {
		return
	}
	if over.Dim != value.Length || q.N.Sign() <= 0 {
		c.say(codeGaugeLength, n.Span(), nil)
		return
	}
	head := plan.Gauge{Over: over.Lengths()[0]}
	switch {
	case n.Blocked:
		head.Blocked = plan.AfterBlocking
	case n.NotBlocked:
		head.Blocked = plan.BeforeBlocking
	}
	if head.Over < leastGauge {
		c.say(codeGaugeShort, n.Over.Span(), diag.Args{"have": diag.Length(head.Over)})
	}
	for _, b := range s.Body {
		if l, ok := b.Node.(*lang.GaugeLine); ok && c.works(l) {
			c.gaugeLine(l, q.N, head)
		}
	}
}

// gaugeLine reads the gauge of one stitch over a number of millimetres.
func (c *checker) gaugeLine(l *lang.GaugeLine, over *big.Rat, p plan.Gauge) {
	g := &gaugeOf{at: l.Span(), word: "ch"}
	id := stitch.Chain
	var of *stitchPattern
	if !l.Chain {
		g.word = l.Stitch.Text
		if of = c.patterns[l.Stitch.Text]; of != nil {
			id = stitch.ID(of.name)
		} else {
			id = c.stitchID(l.Stitch)
		}
	}
	n := c.eval(exprOf(l.Sts), nil, nil).At(0).N
	if id == "" || n == nil || n.Sign() <= 0 {
		return
	}
	p.Stitch, p.Sts = id, thousandths(n)
	if l.Repeats {
		k, ok := c.repeatOf(l, of)
		if !ok {
			return
		}
		p.Repeats = p.Sts
		n = new(big.Rat).Mul(n, big.NewRat(int64(k), 1))
		p.Sts = thousandths(n)
	}
	g.sts = new(big.Rat).Quo(n, over)
	if l.Rows != nil {
		if rows := c.eval(exprOf(l.Rows), nil, nil).At(0).N; rows != nil && rows.Sign() > 0 {
			g.rows, p.Rows = new(big.Rat).Quo(rows, over), thousandths(rows)
			if g.by = inRows; l.Rounds {
				g.by, p.Rounds = inRounds, true
			}
		}
	}
	if l.Hook != nil {
		g.hook = c.length(l.Hook)
		p.Hook = g.hook
		c.out = append(c.out, standard.CheckHook(g.hook, l.Hook.Span())...)
	}
	for _, o := range c.gauge[id] {
		if o.hook == g.hook && (o.by == g.by || o.by == eitherWay || g.by == eitherWay) {
			c.report(diag.Diagnostic{Code: codeGaugeTwice, Span: l.Span(), Args: diag.Args{"stitch": g.word},
				Related: []diag.Related{{Span: o.at, Key: "first"}}})
			return
		}
	}
	if of != nil {
		p.Pattern, p.Called = of.name, of.text
	}
	g.over = over
	c.lines = append(c.lines, g)
	c.gauge[id] = append(c.gauge[id], g)
	c.pat.Gauges = append(c.pat.Gauges, p)
}

// repeatOf is over how many stitches a repeat of a stitch pattern goes.
func (c *checker) repeatOf(l *lang.GaugeLine, of *stitchPattern) (int, bool) {
	if of != nil && of.bad {
		return 0, false
	}
	if of != nil && of.of != nil {
		n, _, ok := c.multipleOf(of, nil)
		if !ok {
			return 0, false
		}
		if k, one := n.Same(); one {
			return k, true
		}
	}
	c.say(codeGaugeRepeat, l.Span(), diag.Args{"name": c.file.Source.Slice(l.Stitch.Span())})
	return 0, false
}

// length works out a length that is the same in every size; 0 if it is none, which was said.
func (c *checker) length(v *lang.Val) plan.Length {
	x := c.value(v, nil)
	ls := x.Lengths()
	if len(ls) == 0 || ls[0] == plan.NoLength {
		if !x.Unknown {
			c.say(codeHookLength, v.Span(), nil)
		}
		return 0
	}
	return ls[0]
}

func exprOf(n *lang.Cnt) *lang.Expr {
	if n == nil {
		return nil
	}
	return n.E
}

func thousandths(r *big.Rat) int64 {
	f, _ := r.Float64()
	return int64(f*1000 + 0.5)
}

// gaugeFor is the gauge by which a stitch is measured that is worked in some manner: the one counted that way with that hook,
// else one counted that way, else another one. It is nil if the stitch has none. A stitch of the designer's own without one goes
// by the stitch it is as tall as.
func (c *checker) gaugeFor(id stitch.ID, m manner) *gaugeOf {
	var best *gaugeOf
	most := -1
	for _, g := range c.gauge[id] {
		fits := 0
		if g.by == m.by || g.by == eitherWay {
			fits = 2
		}
		if c.hookOf(g.hook) == c.hookOf(m.hook) {
			fits++
		}
		if fits > most {
			best, most = g, fits
		}
	}
	if o, ok := c.own[id]; ok && best == nil && o.Tall != id {
		return c.gaugeFor(o.Tall, m)
	}
	return best
}

// hookOf is a hook by its size; the main one where none is named.
func (c *checker) hookOf(l plan.Length) plan.Length {
	if l == 0 && len(c.pat.Hooks) > 0 {
		return c.pat.Hooks[0]
	}
	return l
}

// stitchSize is the width and height of a stitch by the gauge; measured says whether its own gauge gives both. Without one
// the nearest gauge is scaled by the nominal heights of the stitch table, for drawings only.
func (c *checker) stitchSize(id stitch.ID, m manner) (w, h float64, measured bool) {
	k := stitchInManner{id, m}
	for i := range c.stitchSizes { // they are few
		if s := &c.stitchSizes[i]; s.of == k {
			return s.w, s.h, s.measured
		}
	}
	w, h, measured = c.sizeByGauge(id, m)
	if c.gaugeRead {
		c.stitchSizes = append(c.stitchSizes, sizeOfStitch{k, w, h, measured})
	}
	return w, h, measured
}

// stitchInManner is a stitch as rows of some manner work it, sizeOfStitch how large it is then.
type (
	stitchInManner struct {
		id stitch.ID
		manner
	}
	sizeOfStitch struct {
		of       stitchInManner
		w, h     float64
		measured bool
	}
)

func (c *checker) sizeByGauge(id stitch.ID, m manner) (w, h float64, measured bool) {
	if g := c.gaugeFor(id, m); g != nil {
		s, _ := g.sts.Float64()
		w = 1000 / s
		if g.rows != nil {
			r, _ := g.rows.Float64()
			return w, 1000 / r, true
		}
		_, h := c.estimate(id, m, w)
		return w, h, false
	}
	if g := c.firstGauge(m); g != nil {
		s, _ := g.sts.Float64()
		w, h := c.estimate(id, m, 1000/s)
		return w, h, false
	}
	return 0, 0, false
}

// firstGauge is the first line of the gauge that gives rows, as counted in some manner; nil if there is none.
func (c *checker) firstGauge(m manner) *gaugeOf {
	for _, p := range c.pat.Gauges {
		if g := c.gaugeFor(p.Stitch, m); g.rows != nil {
			return g
		}
	}
	return nil
}

// estimate is the width and height of a stitch from the gauge of another, whose width is w.
func (c *checker) estimate(id stitch.ID, m manner, w float64) (width, height float64) {
	if o, own := c.own[id]; own {
		id = o.Tall
	}
	k, ok := stitch.Of(id)
	if !ok {
		return w, w
	}
	for _, p := range c.pat.Gauges {
		g := c.gaugeFor(p.Stitch, m)
		from, known := stitch.Of(p.Stitch)
		if g.rows == nil || !known || from.Height == 0 {
			continue
		}
		r, _ := g.rows.Float64()
		return w * k.Width / from.Width, 1000 / r * k.Height / from.Height
	}
	return w, w
}
