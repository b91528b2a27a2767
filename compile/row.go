package compile

import (
	"math"
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// maxRows is the most rows one header may ask for, and the most that a part may have; maxRowsInAll the most of all parts together, for
// all sizes to share: what is known of each is kept.
const (
	maxRows      = 20_000
	maxRowsInAll = 400_000
)

// maxGrouped is the most instructions that rows with named groups come to, all rows together, groups written out and repeats counted: a few
// lines may name groups of groups. maxChartRows is the most rows that are worked from charts, each of which is kept for the pages.
const (
	maxGrouped   = 100_000
	maxChartRows = 100_000
)

// bounded counts a row that is carried out; false if there are too many of its kind, which is said once.
func (p *partState) bounded(n *lang.Row, low *lowered) bool {
	c := p.c
	if low.grouped {
		before := c.grouped
		if c.grouped += low.traces; c.grouped > maxGrouped {
			if before <= maxGrouped {
				c.say(codeManyRows, n.Head.Span(), diag.Args{"have": c.grouped, "max": maxGrouped, "what": diag.Term{Key: "grouped instruction", N: 2}})
			}
			return false
		}
	}
	if p.chart == nil {
		return true
	}
	if c.charted++; c.charted == maxChartRows+1 {
		c.say(codeManyRows, n.Head.Span(), diag.Args{"have": c.charted, "max": maxChartRows, "what": diag.Term{Key: "charted row", N: 2}})
	}
	return c.charted <= maxChartRows
}

// mostRows is the most rows that all parts together may have in a size.
func (c *checker) mostRows() int { return max(maxRowsInAll/c.z, maxRows) }

// tooManyRows reports a header that asks for more rows than there may be, or a block that is repeated more often.
func (c *checker) tooManyRows(at lang.Node, have int, of string) {
	c.say(codeManyRows, at.Span(), diag.Args{"have": have, "max": maxRows, "what": diag.Term{Key: of, N: 2}})
}

// row works a row, or a run of rows that read the same, in the sizes of a mask.
func (p *partState) row(n *lang.Row, mask []bool) {
	p.label = rowLabel(n.Head)
	if n.Head.Of != nil && p.started {
		p.patternRows(n, mask)
		return
	}
	if n.Head.From != nil {
		p.chartRows(n, mask)
		return
	}
	p.rowTimes(n, mask, nil)
}

// rowTimes works a row so many times, or as often as its header says if times is nil.
func (p *partState) rowTimes(n *lang.Row, mask []bool, times plan.Nums) {
	if !p.started {
		p.c.say(codeNoStart, n.Head.Span(), diag.Args{"part": p.plan.Name})
		p.started = true
		p.halt(mask)
		return
	}
	mask = p.live(mask)
	if !some(mask) {
		return
	}
	low := p.c.lower(p, n.List, mask)
	if !p.bounded(n, low) {
		p.halt(mask)
		return
	}
	k := p.kick(n, low, mask)
	if k == nil || !low.ok {
		p.halt(mask)
		return
	}
	if times == nil {
		times = p.times(n, low, mask)
	}
	if times == nil {
		p.halt(mask)
		return
	}
	p.withoutYarn(n.Head.Span(), p.begunWith(k, low.ops), worksIn(mask, times))
	w := &working{p: p, n: n, low: low, kick: k, mask: mask, times: times,
		first: make([]*fabric.Result, p.c.z), last: make([]*fabric.Result, p.c.z),
		from: p.c.nums(plan.Absent), to: p.c.nums(plan.Absent), marks: map[int]map[string]bool{}}
	w.each = make([][]*fabric.Result, p.c.z)
	firsts := make([]*fabric.Result, 2*p.c.z)
	for z, on := range mask {
		if on {
			w.each[z] = firsts[2*z : 2*z : 2*z+2]
			w.size(z)
		}
	}
	p.chainCell(w)
	p.posts(w)
	p.claims(n.Claims, w)
	p.print(w)
}

// kick is how the row begins: its beginning chain and its yarn.
type kick struct {
	begin   plan.Begin
	yarn    int
	newYarn bool
	style   plan.Style
	first   *fabric.Op // the instruction that makes the first stitch
	stripes *stripes   // that the yarn follows; nil if it follows none
}

// kick works out how a row begins.
func (p *partState) kick(n *lang.Row, low *lowered, mask []bool) *kick {
	k := &kick{style: p.styleOf(n.Head), yarn: p.yarn}
	var over *begin
	named := false
	for _, o := range n.Head.Opts {
		switch {
		case o.Yarn != nil:
			if k.yarn = p.c.yarn(o.Yarn); k.yarn < 0 {
				return nil
			}
			p.yarn, named = k.yarn, true
		case o.From != nil:
			p.c.say(codePatternFrom, o.Span(), nil)
			return nil
		case o.None, o.Chains != nil:
			b := p.c.beginning(o.None, o.Chains, o.As)
			over = &b
		}
	}
	if p.stripes != nil && !slices.ContainsFunc(n.Head.Opts, func(o *lang.RowOpt) bool { return o.Yarn != nil }) {
		k.stripes = p.stripes
		for z, on := range mask {
			if on && (z == p.c.pat.Shown || !mask[p.c.pat.Shown]) {
				k.yarn = p.stripes.yarns[p.stripes.index(z, p.stripes.done[z])]
				break
			}
		}
	}
	k.newYarn = p.firstDone && (k.yarn != p.inHand || p.joinsAnew(named, mask)) && p.inHand >= 0
	// A spiral has no beginning chains. Along both sides of a chain its first round needs them all the same: the first stitch
	// cannot go into the chain next to the hook.
	if k.style == plan.SpiralRounds && (p.firstDone || p.plan.Start.Kind != plan.StartBothSides) {
		return k
	}
	if !p.beginning(k, low, over, mask) {
		return nil
	}
	return k
}

// styleOf is how a row is worked: as its header calls it, in the style of the part.
func (p *partState) styleOf(h *lang.RowHead) plan.Style {
	switch w := h.One + h.Many + h.For; {
	case w == "row" || w == "rows":
		return plan.Rows
	case p.style == plan.Rows:
		return plan.JoinedRounds
	}
	return p.style
}

// beginning sets the beginning chain: of the row itself, of the part, of the header, or of the stitch table.
func (p *partState) beginning(k *kick, low *lowered, over *begin, mask []bool) bool {
	op, can := firstStitch(low.ops)
	k.first = op
	if op == nil {
		return true
	}
	form := op.Form
	kind, known := stitch.Of(form.ID)
	if o, own := p.c.own[form.ID]; own {
		kind, known = stitch.Of(o.Tall)
	}
	b := begin{counts: kind.Counts, as: kind.ID}
	if known && kind.Begin > 0 {
		b.chains = plan.Nums{kind.Begin}
	}
	if set, ok := p.begins[form.ID]; ok {
		b = set
	}
	if over != nil {
		b = *over
	} else if b.counts && !can && b.chains != nil {
		p.c.report(diag.Diagnostic{Code: codeBeginCounts, Span: op.Span,
			Args: diag.Args{"chains": b.chains[0], "less": max(b.chains[0]-1, 1), "stitch": p.c.word(form.ID)}})
		return false
	}
	if b.counts && !can {
		b.counts = false
	}
	if b.chains != nil {
		k.begin = plan.Begin{Chains: b.chains[0], Counts: b.counts, As: b.as}
		if b.counts && k.begin.As == "" {
			k.begin.As = form.ID
		}
	}
	return true
}

// firstStitch finds the instruction that makes the first stitch of a row, and whether a beginning chain can stand for that
// stitch: not for a decrease, a post stitch, or behind a skip or chain.
func firstStitch(ops []*fabric.Op) (*fabric.Op, bool) {
	can := true
	for _, o := range ops {
		switch o.Kind {
		case fabric.Mark, fabric.Move, fabric.Unmark, fabric.Change, fabric.SlideTo, fabric.Turn, fabric.Ride:
			continue
		case fabric.SkipOver, fabric.SkipSpaces, fabric.Chains, fabric.Leave:
			can = false
			continue
		case fabric.Repeat, fabric.InOne:
			if f, ok := firstStitch(o.Body); f != nil {
				return f, ok && can
			}
			continue
		case fabric.Draw, fabric.Cross:
			return o, false
		case fabric.Spread:
			return o, can
		case fabric.Spaced:
			if slices.Contains(o.Edge, 0) && o.How != fabric.FromEnd {
				can = false // in some size the row begins with what is in the brackets
			}
			return o, can
		case fabric.ByCell:
			return o, can && o.Form.Post == stitch.NoPost
		}
		if o.Form.ID == stitch.Slip {
			continue
		}
		return o, can && !o.Form.Derived() && o.Cross == plan.NoCross
	}
	return nil, false
}

// word is the word of the source for a stitch.
func (c *checker) word(id stitch.ID) string {
	if k, ok := stitch.Of(id); ok {
		return k.Word(c.pat.UKTerms)
	}
	return string(id)
}

// times is how many rows a header asks for in each size.
func (p *partState) times(n *lang.Row, low *lowered, mask []bool) plan.Nums {
	h := n.Head
	switch {
	case h.N != nil:
		t := p.c.cnt(h.N, p.lex)
		for _, v := range t {
			if v > maxRows {
				p.c.tooManyRows(h.N, v, "row")
				return nil
			}
		}
		return t
	case h.Length != nil:
		return p.rowsFor(h, low, mask)
	}
	t := p.c.nums(plan.Absent)
	for z, on := range mask {
		if on {
			t[z] = 1
		}
	}
	return t
}

// rowsFor turns a length into a number of rows by the gauge of the row's first stitch.
func (p *partState) rowsFor(h *lang.RowHead, low *lowered, mask []bool) plan.Nums {
	v := p.c.value(h.Length, p.lex)
	ls := v.Lengths()
	op, _ := firstStitch(low.ops)
	if v.Unknown || op == nil {
		return nil
	}
	if ls == nil {
		p.c.say(codeRowsLength, h.Length.Span(), nil)
		return nil
	}
	height, ok := p.rowHeight(op.Form.ID, h, h)
	if !ok {
		return nil
	}
	p.pending = new(plan.Length)
	t := p.c.nums(plan.Absent)
	for z, on := range mask {
		if !on {
			continue
		}
		want := float64(ls[z])
		if h.To {
			want -= p.tall[z]
		}
		k := roundRows(want/height, h.Opts, p.number[z], p.wrong[z])
		if k > maxRows {
			p.c.tooManyRows(h.Length, k, "row")
			return nil
		}
		if k < 0 {
			p.c.report(diag.Diagnostic{Code: codeRowsBelow, Span: h.Length.Span(), Args: diag.Args{
				"have": plan2diag(plan.Length(p.tall[z])), "need": plan2diag(ls[z])}, Sizes: []string{p.c.pat.Sizes[z].Name}})
			return nil
		}
		t[z] = k
	}
	p.rowsGraded(h, op.Form.ID, ls, t, height)
	return t
}

// rowHeight is the height of a row of a stitch, in micrometres, as the header of the row says it is worked. ok is false if its
// gauge does not tell; that is reported at a place of the source.
func (p *partState) rowHeight(id stitch.ID, h *lang.RowHead, at lang.Node) (height float64, ok bool) {
	_, height, ok = p.c.stitchSize(id, p.manner(p.styleOf(h)))
	if !ok {
		p.c.noGauge(id, at)
	}
	p.asked = true
	return height, ok
}

// rowsGraded keeps rows for a length, and looks at them from size to size.
func (p *partState) rowsGraded(h *lang.RowHead, id stitch.ID, wanted plan.Lengths, rows plan.Nums, height float64) {
	got := make(plan.Lengths, len(rows))
	for z, n := range rows {
		got[z] = micro(float64(n) * height)
		if h.To && n != plan.Absent {
			got[z] += micro(p.tall[z])
		}
	}
	p.roundedRows(h.Length.Span(), plan.UnitRows, id, rows, wanted, got, h.Opts)
	if h.To {
		rows = slices.Clone(rows)
		for z := range rows {
			if rows[z] != plan.Absent {
				rows[z] += p.number[z]
			}
		}
	}
	g := graded{c: p.c, at: h.Length.Span(), unit: "row", counts: rows, wanted: wanted, got: got}
	g.alike()
	g.steps()
}

func plan2diag(l plan.Length) diag.Length { return diag.Length(l) }

// roundRows rounds a number of rows as the options say: to the nearest, ties up.
func roundRows(x float64, opts []*lang.RowOpt, done int, wrongNext bool) int {
	step, off, dir := 1, 0, "nearest"
	ties := "up"
	for _, o := range opts {
		switch {
		case o.Word == "even":
			step = 2
		case o.Word == "odd":
			step, off = 2, 1
		case o.Word != "":
			dir = o.Word
		case o.Ties != "":
			ties = o.Ties
		case o.Ending == "rs" || o.Ending == "ws":
			step = 2 // the last row shows the side asked for
			if (o.Ending == "rs") != wrongNext {
				off = 1
			}
		}
	}
	k := (x - float64(off)) / float64(step)
	switch {
	case dir == "up":
		k = math.Ceil(k - 1e-9)
	case dir == "down":
		k = math.Floor(k + 1e-9)
	case ties == "down":
		k = math.Ceil(k - 0.5 - 1e-9)
	default:
		k = math.Floor(k + 0.5 + 1e-9)
	}
	return int(k)*step + off
}

// working is a run of rows while it is worked.
type working struct {
	p           *partState
	n           *lang.Row
	low         *lowered
	kick        *kick
	row         fabric.Row // that is being worked
	mask        []bool
	times       plan.Nums
	first, last []*fabric.Result
	from, to    plan.Nums
	marks       map[int]map[string]bool // the markers on the edge before the row, per size
	unturned    bool                    // the work is not turned before the row
	each        [][]*fabric.Result      // the first two rows, per size; every row where shaping is spread
}

// size works the rows of one size.
func (w *working) size(z int) {
	p := w.p
	if len(p.plan.Markers) > 0 {
		w.marks[z] = make(map[string]bool, len(p.plan.Markers))
		for _, m := range p.plan.Markers {
			w.marks[z][m.Name] = p.fab[z].MarkerAt(m.Name)
		}
	}
	turns := w.kick.style == plan.Rows || w.kick.style == plan.TurnedRounds
	keeps := p.c.keeps[p.plan.Name]
	for i := 0; i < w.times[z]; i++ {
		left := min(maxRows-p.number[z], p.c.mostRows()-p.c.rows[z])
		if left <= 0 {
			d := diag.Diagnostic{Code: codeManyRows, Span: w.n.Head.Span(), Args: diag.Args{"have": p.number[z] + 1, "max": maxRows,
				"what": diag.Term{Key: "row", N: 2}}}
			if p.number[z] < maxRows {
				d.Args["have"], d.Args["max"] = p.c.rows[z]+1, p.c.mostRows()
			}
			p.c.report(d)
			p.halt(w.mask)
			return
		}
		if turns && p.number[z] > 0 && p.back[z] != w.low.back {
			p.wrong[z], w.unturned = !p.wrong[z], true // the hook is where the row begins only if the work is not turned
		}
		p.back[z] = w.low.back
		more := min(w.times[z]-i, left) - 1 // rows that may be worked like this one
		w.row = fabric.Row{Ops: w.low.ops, Traces: w.low.traces, Style: w.kick.style, Yarn: w.yarnOf(z, 0), Wrong: p.wrong[z],
			Span: w.n.List.Span(), Open: w.low.join != nil && w.low.join.No, Back: w.low.back,
			Pure: w.low.pure && !keeps && p.plan.Motifs == nil && (more > 0 || p.blocks > 0 || p.texture != nil), More: more > 0}
		if p.plan.Motifs != nil {
			p.last[z] = lastRow{w, p.fab[z].Copy()}
		}
		row, first := &w.row, fabric.ID(len(p.c.fabrics[z].Elems))
		var open []fabric.ID
		before := 0
		if keeps {
			open, before = p.fab[z].Open()
		}
		res, f := p.fab[z].Work(row)
		if f != nil {
			p.c.gather(f, z, p)
			p.fab[z].Halt()
			return
		}
		if p.fab[z].Halted() {
			return
		}
		if !res.Steady {
			more = 0
		}
		serial := p.fab[z].Serial()
		if was := p.fab[z].Replaced(); was > 0 {
			p.serials[z].of(was).again = true
		}
		if more > 0 {
			p.fab[z].Again(more, row, w.yarnOf(z, more), p.wrong[z] != (turns && more%2 == 1))
		}
		p.c.rows[z] += more + 1
		for k := range more + 1 {
			p.number[z]++
			if keeps {
				w.keep(z, open, before, first, row, res)
			}
			w.worked(z, i+k, res, rowAt{serial + int32(k), p.number[z], res.Made, w.n.Span(), w.kick.style, k < more})
			if turns || res.Turned {
				p.wrong[z] = !p.wrong[z]
			}
		}
		i += more
	}
	p.maxMarks = max(p.maxMarks, p.fab[z].Markers())
}

// worked notes a row that a size has worked, the one of a number among those of the run.
func (w *working) worked(z, i int, res *fabric.Result, at rowAt) {
	p := w.p
	if i == 0 {
		w.first[z], w.from[z] = res, at.number
	}
	w.last[z], w.to[z] = res, at.number
	yarn := w.yarnOf(z, 0)
	if p.stripes != nil {
		p.stripes.worked(z, at.number)
	}
	p.below[z] = w.n.List.Span()
	if i < 2 || len(w.low.spreads)+len(w.low.cells) > 0 {
		w.each[z] = append(w.each[z], res)
	}
	p.serials[z] = append(p.serials[z], at)
	if !res.Pure {
		w.rests(z, res)
	}
	w.fact(z, res, yarn)
}

// micro turns micrometres into a length.
func micro(v float64) plan.Length { return plan.Length(math.Round(v)) }
