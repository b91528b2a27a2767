package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file reads which rows of a part are drawn in symbols, and takes them out of the fabric.

// drawnChart is a chart of stitches as the source asks for it.
type drawnChart struct {
	at       *lang.Chart
	title    plan.Text
	rows     *lang.DrawnRows
	stitches *lang.DrawnStitches
	repeats  *lang.DrawnRepeats
}

// keptRow is a row of a part that is drawn: what the fabric made in it, and how it began and was closed.
type keptRow struct {
	number      int
	label       string
	from, to    fabric.ID // its elements
	open        []fabric.ID
	before      int // how many of open lie before the edge that was worked along
	begin       plan.Begin
	wrong, back bool
	closed      bool
	joined      bool
	slid        []fabric.Slid
	repeats     []fabric.Repeated
}

// maxDrawn is the most stitches that a chart may have: many sheets of paper; maxDrawnInAll the most of all charts in all sizes.
const (
	maxDrawn      = 40_000
	maxDrawnInAll = 400_000
)

// readDrawn reads a chart of the rows of a part.
func (c *checker) readDrawn(s *lang.Statement, n *lang.Chart) {
	d := &drawnChart{at: n}
	bad := len(s.Lines) > 0
	for _, b := range s.Body {
		switch m := b.Node.(type) {
		case *lang.Title:
			d.title = c.text(m.Text, m)
		case *lang.DrawnRows:
			d.rows = m
		case *lang.DrawnStitches:
			d.stitches = m
		case *lang.DrawnRepeats:
			d.repeats = m
		case *lang.Mesh, *lang.Legend:
			bad = true
		case nil:
			return // it could not be read
		}
	}
	if bad || d.stitches != nil && d.repeats != nil {
		why := "both"
		if bad {
			why = ""
		}
		c.report(diag.Diagnostic{Code: codeDrawnLines, Span: s.Head, Args: diag.Args{"part": n.Of.Text}, Help: why})
		return
	}
	c.drawn = append(c.drawn, d)
	c.keeps[n.Of.Text] = true
}

// keep notes a row that may be drawn. open are the places there were before it, first the first element it made.
func (w *working) keep(z int, open []fabric.ID, before int, first fabric.ID, row *fabric.Row, res *fabric.Result) {
	p := w.p
	j := w.low.join
	closed := p.fab[z].Closed()
	k := keptRow{number: p.number[z], label: rowLabel(w.n.Head), from: first, to: fabric.ID(len(p.c.fabrics[z].Elems)), open: open, before: before,
		begin: w.kick.begin, wrong: row.Wrong, back: row.Back, closed: closed,
		joined: closed && row.Style != plan.SpiralRounds && !(j != nil && j.No), slid: res.Slid, repeats: res.Repeats}
	p.kept[z] = append(p.kept[z], k)
}

// drawCharts takes the rows that are drawn out of the fabric, once all parts are worked.
func (c *checker) drawCharts() {
	for _, d := range c.drawn {
		p := c.parts[d.at.Of.Text]
		if p == nil {
			c.say(codeNoName, d.at.Of.Span(), diag.Args{"word": d.at.Of.Text, "near": lang.Near(d.at.Of.Text, keys(c.parts))})
			continue
		}
		if p.plan.Grid != nil {
			c.say(codeDrawnMotifs, d.at.Of.Span(), diag.Args{"part": d.at.Of.Text, "motif": c.pat.Parts[p.plan.Grid.Motif].Name})
			continue
		}
		if out := c.drawChart(d, p); out != nil {
			c.pat.Drawn = append(c.pat.Drawn, out)
		}
	}
}

func (c *checker) drawChart(d *drawnChart, p *partState) *plan.StitchChart {
	from, to := c.drawnRows(d, p)
	if from == nil {
		return nil
	}
	out := &plan.StitchChart{Name: d.at.Name.Text, Title: d.title, Part: p.index, Sizes: make([]*plan.Stitches, c.z)}
	var a, b, repeats plan.Nums
	if d.stitches != nil {
		a, b = c.cnt(d.stitches.From, nil), c.cnt(d.stitches.To, nil)
	}
	if d.repeats != nil {
		repeats = c.cnt(d.repeats.N, nil)
	}
	if d.stitches != nil && (a == nil || b == nil) || d.repeats != nil && repeats == nil {
		return nil
	}
	many, beyond, uneven := newSpread(c), newSpread(c), newSpread(c)
	for z := range out.Sizes {
		t := p.taken(z, from[z], to[z])
		switch {
		case t == nil:
			continue
		case a != nil && (a[z] < 1 || b[z] < a[z] || b[z] > t.width()):
			beyond.add(z, b[z], t.width())
			continue
		case repeats != nil && !t.shorten(repeats[z]):
			uneven.add(z, repeats[z], t.s.Repeat.Times)
			continue
		case a != nil:
			t.window(a[z]-1, b[z])
		}
		n := t.stitches()
		if n > maxDrawn {
			many.add(z, maxDrawn, n)
			continue
		}
		if c.drawnInAll += n; c.drawnInAll > maxDrawnInAll {
			if c.drawnInAll-n <= maxDrawnInAll {
				c.say(codeTooMany, d.at.Span(), diag.Args{"have": c.drawnInAll, "max": maxDrawnInAll, "what": diag.Term{Key: "drawn stitch", N: 2}})
			}
			return nil
		}
		out.Sizes[z] = &t.s
	}
	switch {
	case many.any():
		c.report(diag.Diagnostic{Code: codeDrawnMany, Span: d.at.Span(), Sizes: many.sizes(), Args: diag.Args{"have": many.per(many.have), "max": maxDrawn}})
	case beyond.any():
		c.report(diag.Diagnostic{Code: codeDrawnBeyond, Span: d.stitches.Span(), Sizes: beyond.sizes(), Args: diag.Args{"have": beyond.per(beyond.have)}})
	case uneven.any():
		c.report(diag.Diagnostic{Code: codeDrawnRepeats, Span: d.repeats.Span(), Sizes: uneven.sizes(), Args: diag.Args{"want": uneven.per(uneven.need), "have": uneven.per(uneven.have)}})
	default:
		out.Same = sameStitches(out.Sizes)
		return out
	}
	return nil
}

// drawnRows are the numbers of the first and the last row drawn, in each size; Absent in a size without them. They are nil if they
// cannot be known, or if no size has them; that was reported.
func (c *checker) drawnRows(d *drawnChart, p *partState) (from, to plan.Nums) {
	from, to = c.nums(1), c.nums(plan.Absent)
	for z := range to {
		if rows := p.kept[z]; len(rows) > 0 {
			from[z], to[z] = rows[0].number, rows[len(rows)-1].number
		}
	}
	if d.rows != nil {
		first, last := c.rowNumber(d.rows.From, p, false), plan.Nums(nil)
		switch {
		case first == nil:
			return nil, nil
		case d.rows.To != nil:
			last = c.rowNumber(d.rows.To, p, true)
		default:
			last = c.rowNumber(d.rows.From, p, true)
		}
		if last == nil {
			return nil, nil
		}
		bad := newSpread(c)
		for z := range to {
			switch {
			case p.fab[z].Halted():
				to[z] = plan.Absent
			case first[z] == plan.Absent || last[z] == plan.Absent:
				to[z] = plan.Absent
			case first[z] < from[z] || last[z] < first[z] || last[z] > to[z]:
				bad.add(z, last[z], max(to[z], 0))
			default:
				from[z], to[z] = first[z], last[z]
			}
		}
		if bad.any() {
			c.report(diag.Diagnostic{Code: codeDrawnRows, Span: d.rows.Span(), Sizes: bad.sizes(), Args: diag.Args{
				"part": p.plan.Name, "want": bad.per(bad.need), "have": bad.per(bad.have)}})
			return nil, nil
		}
	}
	return from, to
}

// rowNumber is the number of a row that a chart names: a number, or the first or the last row of a label.
func (c *checker) rowNumber(n *lang.Cnt, p *partState, last bool) plan.Nums {
	if n.E.Op != lang.OpName || len(n.E.Path) != 1 {
		return c.cnt(n, nil)
	}
	name := n.E.Path[0]
	if _, value := c.lets[name]; value {
		return c.cnt(n, nil)
	}
	out, found := c.nums(plan.Absent), false
	for z := range out {
		for _, k := range p.kept[z] {
			if k.label == name && (last || out[z] == plan.Absent) {
				out[z], found = k.number, true
			}
		}
	}
	if !found {
		c.say(codeNoName, n.Span(), diag.Args{"word": name, "near": lang.Near(name, keys(p.rows))})
		return nil
	}
	return out
}

// taking is rows while they are taken out of the fabric of one size.
type taking struct {
	s    plan.Stitches
	f    *fabric.Fabric
	at   map[fabric.ID]plan.Foot // where an element stands
	rows []keptRow
}

// taken are the rows of a part in one size; nil if none is there.
func (p *partState) taken(z, from, to int) *taking {
	if to == plan.Absent {
		return nil
	}
	t := &taking{f: p.c.fabrics[z], at: map[fabric.ID]plan.Foot{}}
	for _, k := range p.kept[z] {
		if k.number >= from && k.number <= to {
			t.rows = append(t.rows, k)
		}
	}
	if len(t.rows) == 0 {
		return nil
	}
	t.base(p, z)
	for _, k := range t.rows {
		t.line(k)
	}
	facts := map[int]*plan.RowFact{}
	for i := range p.plan.Worked[z] {
		facts[p.plan.Worked[z][i].Number] = &p.plan.Worked[z][i]
	}
	for i := range t.s.Lines[1:] {
		l := &t.s.Lines[i+1]
		if f := facts[l.Number]; f != nil {
			l.Counts, l.Tall = plan.CountsAfter([]*plan.RowFact{f}), f.Tall
		}
	}
	t.outward(p)
	t.repeat()
	return t
}

// base is the line below the rows: all places that the first of them could go into.
func (t *taking) base(p *partState, z int) {
	k := t.rows[0]
	l := plan.Line{Base: true, FromLeft: k.wrong != k.back, Closed: k.closed}
	for _, o := range p.kept[z] {
		if o.number < k.number {
			l.Number, l.Closed, l.Wrong = o.number, o.closed, o.wrong
		}
	}
	for _, id := range k.open {
		t.at[id] = plan.Foot{At: len(l.Stitches)}
		w := t.worked(id)
		if into := t.f.Elems[id].Into; into.Asp == fabric.OtherSide { // a chain that is met again from below
			if foot, ok := t.at[into.ID]; ok {
				foot.Into = plan.FootBelow
				w.Feet = []plan.Foot{foot}
			}
		}
		l.Stitches = append(l.Stitches, w)
	}
	if len(k.open) == 0 && k.number == 1 { // a foundation of stitches: each stands on a chain of its own
		chain := plan.Worked{Kind: plan.WorkedStitch, Form: stitch.Plain(stitch.Chain), Yarn: int(t.f.Elems[k.from].Yarn)}
		l.Stitches = slices.Repeat([]plan.Worked{chain}, int(k.to-k.from))
	}
	t.s.Lines = append(t.s.Lines, l)
}

// worked is an element as the plan keeps it, without its feet.
func (t *taking) worked(id fabric.ID) plan.Worked {
	el := &t.f.Elems[id]
	kind := map[fabric.Kind]plan.WorkedKind{fabric.Stitch: plan.WorkedStitch, fabric.Space: plan.WorkedSpace, fabric.Slip: plan.WorkedSlip,
		fabric.Ring: plan.WorkedRing, fabric.End: plan.WorkedEnd}[el.Kind]
	w := plan.Worked{Kind: kind, Form: t.f.FormOf(id), Yarn: int(el.Yarn), Rides: t.f.RidesOn(id), Behind: t.f.Behind(id)}
	if el.Kind == fabric.Space {
		w.Form, w.Chains = stitch.Plain(stitch.Chain), int(el.N)
	}
	return w
}

// line takes out one row.
func (t *taking) line(k keptRow) {
	l := plan.Line{Number: k.number, Wrong: k.wrong, Closed: k.closed, Joined: k.joined, FromLeft: k.wrong != k.back}
	line := len(t.s.Lines)
	slid, made := k.slid, 0
	passed := func() {
		for len(slid) > 0 && slid[0].Before <= made {
			w := plan.Worked{Kind: plan.WorkedSlip, Form: stitch.Plain(stitch.Slip), Yarn: -1}
			if foot, ok := t.at[slid[0].ID]; ok {
				w.Feet = []plan.Foot{foot}
			}
			l.Stitches = append(l.Stitches, w)
			slid = slid[1:]
		}
	}
	begun := k.begin.Chains == 0
	own := map[fabric.ID]plan.Foot{}
	for id := k.from; id < k.to; id++ {
		passed()
		w := t.worked(id)
		for _, pl := range t.f.Feet(id) {
			if foot, ok := t.foot(pl, own); ok {
				if foot.Into == plan.FootChain && foot.Line < line && t.s.Lines[foot.Line].FromLeft != l.FromLeft {
					// A row that comes from the other side meets the chains of a space last made first.
					foot.Chain = t.s.Lines[foot.Line].Stitches[foot.At].Chains - 1 - foot.Chain
				}
				w.Feet = append(w.Feet, foot)
			}
		}
		if len(k.open) == 0 && k.number == 1 {
			w.Feet = []plan.Foot{{At: int(id - k.from)}}
		}
		if w.Kind != plan.WorkedSlip && !begun {
			begun = true
			if k.begin.Counts {
				w.Begin, w.Chains = true, k.begin.Chains
			} else {
				l.Stitches = append(l.Stitches, plan.Worked{Kind: plan.WorkedBegin, Form: stitch.Plain(stitch.Chain), Chains: k.begin.Chains, Yarn: w.Yarn})
			}
		}
		own[id] = plan.Foot{Line: line, At: len(l.Stitches)}
		l.Stitches = append(l.Stitches, w)
		if w.Kind != plan.WorkedSlip {
			made++
		}
	}
	passed()
	for id, foot := range own {
		t.at[id] = foot
	}
	t.s.Lines = append(t.s.Lines, l)
}

// foot is a place of a line, of this one or of one below it.
func (t *taking) foot(pl fabric.Place, own map[fabric.ID]plan.Foot) (plan.Foot, bool) {
	foot, ok := t.at[pl.ID]
	if !ok {
		foot, ok = own[pl.ID]
	}
	switch pl.Asp {
	case fabric.GapAfter:
		foot.Into = plan.FootGap
	case fabric.OtherSide:
		foot.Into = plan.FootBelow
	case fabric.Before, fabric.After:
		foot.Into = plan.FootSide
	case fabric.OneChain:
		foot.Into, foot.Chain = plan.FootChain, int(pl.Sub)
	}
	return foot, ok
}

// width is how many places the lowest line has.
func (t *taking) width() int { return len(t.s.Lines[0].Stitches) }

func (t *taking) stitches() int {
	n := 0
	for i := range t.s.Lines {
		n += len(t.s.Lines[i].Stitches)
	}
	return n
}

// outward says whether the rounds grow from a middle: from a ring or round a chain, or from a ring of a few chains that they
// at least double.
func (t *taking) outward(p *partState) {
	t.s.Start = p.plan.Start.Kind
	first, last := &t.s.Lines[0], &t.s.Lines[len(t.s.Lines)-1]
	if !last.Closed || !t.s.Lines[1].Closed {
		return
	}
	switch p.plan.Start.Kind {
	case plan.StartRing, plan.StartChainRing, plan.StartBothSides:
		t.s.Outward = true
	case plan.StartJoined:
		t.s.Outward = t.rows[0].number == 1 && len(last.Stitches) >= 2*len(first.Stitches)
	}
}
