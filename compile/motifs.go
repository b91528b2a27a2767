package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// This file joins motifs to one another. A motif is a part like any other; what is made of many of them is a part too, with
// the outer edge for its edge.

// motifCount is how many motifs lie beside one another, and how many rows of them there are.
type motifCount struct {
	of           string
	across, down plan.Nums // nil if not known
}

// lastRow is the last row that a motif worked in a size, and the motif as it was before it.
type lastRow struct {
	w      *working
	before *fabric.Part
}

// maxMotifs is the most motifs a piece may be made of: far more than the largest blanket.
const maxMotifs = 10_000

// motifCounts works out how many motifs there are, before the motifs themselves are worked: their yarn depends on it.
func (c *checker) motifCounts() {
	for _, s := range blocks[*lang.Motifs](c.file.Body) {
		n := s.Node.(*lang.Motifs)
		c.motifs[n] = &motifCount{of: n.Of.Text}
		g := motifLine[*lang.MotifGrid](s)
		if g == nil || c.z == 0 {
			continue
		}
		across, down := c.cnt(g.Across, nil), c.cnt(g.Down, nil)
		if across == nil || down == nil {
			continue
		}
		bad := newSpread(c)
		for z := range across {
			if n := across[z] * down[z]; n < 1 || across[z] > maxMotifs || down[z] > maxMotifs || n > maxMotifs {
				bad.add(z, maxMotifs, n)
			}
		}
		if bad.any() {
			c.report(diag.Diagnostic{Code: codeMotifNumber, Span: g.Span(), Sizes: bad.sizes(), Args: diag.Args{"max": maxMotifs}})
			continue
		}
		c.motifs[n].across, c.motifs[n].down = across, down
	}
}

// motifLine is the first line of a kind in a block of motifs.
func motifLine[N lang.StatementNode](s *lang.Statement) (none N) {
	for _, b := range s.Body {
		if n, ok := b.Node.(N); ok {
			return n
		}
	}
	return none
}

// motifsOf is how many of a part are joined to one another; nil if it is no motif.
func (c *checker) motifsOf(part string) plan.Nums {
	var sum plan.Nums
	for _, m := range c.motifs {
		if m.of != part {
			continue
		}
		if sum == nil {
			sum = c.nums(0)
		}
		for z := range m.across {
			sum[z] += m.across[z] * m.down[z]
		}
	}
	return sum
}

// joinMotifs checks motifs that are joined to one another.
func (c *checker) joinMotifs(s *lang.Statement, n *lang.Motifs) {
	if c.z == 0 || !c.declare(n.Name) {
		return
	}
	p := c.newPart(n.Name.Text, s.Head)
	p.stmts, p.started, p.stated = s.Body, true, true
	p.plan.Start.Kind = plan.StartGrid
	p.setStyle(&lang.Style{Word: "joined"})
	p.collect(s.Body)
	c.enter(p)
	if g := c.grid(p, s, n); g != nil {
		p.plan.Grid = g.plan
		p.add(g.plan)
		for sides := range g.rounds {
			g.printKind(sides)
		}
	} else {
		p.halt(all(c.z))
	}
	p.exec(slices.DeleteFunc(slices.Clone(s.Body), func(b *lang.Statement) bool {
		switch b.Node.(type) {
		case *lang.MotifGrid, *lang.MotifSide, *lang.MotifJoin:
			return true
		}
		return false
	}), all(c.z))
	p.close()
}

// grid is joining of motifs while it is checked.
type grid struct {
	p, motif *partState
	plan     *plan.Grid
	at       source.Span
	rules    []joinRule
	rounds   [3]joinedRound // of motifs that meet no other, one, two
}

// joinRule says in place of how many chains the spaces of a label are joined.
type joinRule struct {
	label string
	at    source.Span
	n     plan.Nums
}

// joinedRound is the last round of a motif with joins, as it was worked in each size.
type joinedRound struct {
	rows []*working // as a rule one; several where sizes end with different rows
	fab  []*fabric.Part
}

// grid works the joins of a block of motifs. It is nil where that is not possible; that was reported.
func (c *checker) grid(p *partState, s *lang.Statement, n *lang.Motifs) *grid {
	m := c.parts[n.Of.Text]
	count, join := c.motifs[n], motifLine[*lang.MotifJoin](s)
	switch {
	case m == nil || m.plan.Grid != nil:
		c.say(codeNoPart, n.Of.Span(), diag.Args{"word": n.Of.Text, "near": lang.Near(n.Of.Text, keys(c.parts))})
		return nil
	case motifLine[*lang.MotifGrid](s) == nil || join == nil:
		c.say(codeMotifLines, s.Head, nil)
		return nil
	case count.across == nil:
		return nil
	}
	p.yarn, p.cuts, p.firstDone = m.yarn, slices.Clone(m.cuts), true
	g := &grid{p: p, motif: m, at: join.Span(), plan: &plan.Grid{Motif: m.index, Across: count.across, Down: count.down,
		Round: slices.Clone(m.number), Shared: c.nums(0), AtSides: c.nums(0), AtCorners: c.nums(0)}}
	for k := range g.plan.Kinds {
		g.plan.Kinds[k] = c.nums(0)
	}
	if side := motifLine[*lang.MotifSide](s); side != nil {
		v := c.value(side.Side, nil)
		if g.plan.Each = v.Lengths(); g.plan.Each == nil && !v.Unknown {
			c.say(codeMotifSide, side.Side.Span(), nil)
		}
	}
	if !g.readRules(s) {
		return nil
	}
	for z := range m.fab {
		if m.fab[z].Halted() || m.last[z].w == nil {
			p.fab[z].Halt()
		}
	}
	if !g.checkMotif(join) {
		return nil
	}
	for sides := range g.rounds {
		if !g.work(sides) {
			return nil
		}
	}
	g.lay()
	return g
}

// readRules reads the lines that say where the motif is joined.
func (g *grid) readRules(s *lang.Statement) bool {
	c := g.p.c
	for _, b := range s.Body {
		j, ok := b.Node.(*lang.MotifJoin)
		if !ok {
			continue
		}
		round, chains := c.cnt(j.Round, nil), c.cnt(j.Chains, nil)
		if round == nil || chains == nil {
			return false
		}
		bad := newSpread(c)
		for z, k := range round {
			if !g.motif.fab[z].Halted() && k != g.motif.number[z] {
				bad.add(z, k, g.motif.number[z])
			}
		}
		if bad.any() {
			c.report(diag.Diagnostic{Code: codeMotifRound, Span: j.Round.Span(), Sizes: bad.sizes(), Args: diag.Args{
				"part": g.motif.plan.Name, "need": bad.alike(bad.need), "have": bad.per(bad.have)}})
			return false
		}
		for _, l := range j.Labels {
			if !g.motif.names[l.Text] {
				c.say(codeNoName, l.Span(), diag.Args{"word": l.Text, "near": lang.Near(l.Text, keys(g.motif.names))})
				return false
			}
			g.rules = append(g.rules, joinRule{l.Text, l.Span(), chains})
		}
	}
	return true
}

// ids are the places of a label in the last round of the motif.
func (g *grid) ids(fab *fabric.Part, label string) []fabric.ID {
	ids, _, row, ok := fab.Label(label)
	if !ok || row != fab.Serial() {
		return nil
	}
	return ids
}

// checkMotif sees to it that the last round of the motif is a round with four corners and four sides alike.
func (g *grid) checkMotif(join *lang.MotifJoin) bool {
	c, m := g.p.c, g.motif
	open, corners, uneven := newSpread(c), newSpread(c), newSpread(c)
	for z, fab := range m.fab {
		if g.p.fab[z].Halted() {
			continue
		}
		ids := g.ids(fab, g.rules[0].label)
		spaces := !slices.ContainsFunc(ids, func(id fabric.ID) bool { return c.fabrics[z].Elems[id].Kind != fabric.Space })
		switch {
		case !fab.Closed() || wrongSide(m.plan.Worked[z], m.number[z]):
			open.add(z, 0, 0)
		case len(ids) != 4 || !spaces:
			corners.add(z, 4, len(ids))
		case !g.alike(z, fab.Edge(), ids):
			uneven.add(z, 0, 0)
		}
	}
	for _, bad := range []struct {
		s    *spread
		code diag.Code
	}{{open, codeMotifOpen}, {corners, codeMotifCorners}, {uneven, codeMotifSides}} {
		if bad.s.any() {
			c.report(diag.Diagnostic{Code: bad.code, Span: g.rules[0].at, Sizes: bad.s.sizes(), Args: diag.Args{
				"part": m.plan.Name, "name": g.rules[0].label, "have": bad.s.per(bad.s.have)}})
			return false
		}
	}
	return true
}

// alike reports whether the four sides between the corners of a round are the same stitches and spaces.
func (g *grid) alike(z int, edge, corners []fabric.ID) bool {
	f := g.p.c.fabrics[z]
	type place struct {
		kind   fabric.Kind
		form   stitch.Form
		chains int32
	}
	var sides [][]place
	var before []place // of the side that lies across the start of the round
	for _, id := range edge {
		if slices.Contains(corners, id) {
			sides = append(sides, nil)
			continue
		}
		el := f.Elems[id]
		x := place{el.Kind, f.FormOf(id), el.N}
		if n := len(sides); n > 0 {
			sides[n-1] = append(sides[n-1], x)
		} else {
			before = append(before, x)
		}
	}
	sides[3] = append(sides[3], before...)
	for _, s := range sides[1:] {
		if !slices.Equal(s, sides[0]) {
			return false
		}
	}
	return true
}

// work works the last round of the motif once more, with joins on its first sides.
func (g *grid) work(sides int) bool {
	c, m := g.p.c, g.motif
	rd := &g.rounds[sides]
	rd.fab = slices.Clone(m.fab)
	for z, last := range m.last {
		if g.p.fab[z].Halted() {
			continue
		}
		w := g.joined(rd, last.w, sides)
		if w == nil {
			return false
		}
		w.mask[z], w.from[z], w.to[z] = true, m.number[z], m.number[z]
		if sides == 0 {
			continue
		}
		rd.fab[z] = last.before.Copy()
		res, f := rd.fab[z].Work(&fabric.Row{Ops: w.low.ops, Traces: w.low.traces, Style: w.kick.style, Yarn: w.kick.yarn,
			Span: w.n.List.Span()})
		if f != nil {
			f.Span = g.at
			c.gather(f, z, m)
			g.p.fab[z].Halt()
			continue
		}
		if want := g.joins(z, sides); len(rd.fab[z].JoinedSpaces()) != want {
			c.say(codeMotifParts, g.at, diag.Args{"part": m.plan.Name, "need": want, "have": len(rd.fab[z].JoinedSpaces())})
			return false
		}
		w.first[z], w.last[z] = res, res
	}
	return true
}

// joined is the last round of the motif as it is worked with joins: one for all sizes that end with the same row.
func (g *grid) joined(rd *joinedRound, of *working, sides int) *working {
	c := g.p.c
	for _, w := range rd.rows {
		if w.n == of.n {
			return w
		}
	}
	u := &unroller{g: g, of: of, sides: sides}
	ops := u.list(of.low.ops)
	if u.stuck {
		c.say(codeMotifParts, g.at, diag.Args{"part": g.motif.plan.Name, "need": 4, "have": u.corners})
		return nil
	}
	low, k := *of.low, *of.kick
	low.ops, low.traces = ops, u.n
	k.first, _ = firstStitch(ops)
	w := &working{p: of.p, n: of.n, low: &low, kick: &k, mask: make([]bool, c.z), times: c.nums(1), first: make([]*fabric.Result, c.z),
		last: make([]*fabric.Result, c.z), from: c.nums(plan.Absent), to: c.nums(plan.Absent), marks: map[int]map[string]bool{}}
	rd.rows = append(rd.rows, w)
	return w
}

// joins is how many joins the round has on so many sides: the corners at their ends, and the spaces between these.
func (g *grid) joins(z, sides int) int {
	n := 0
	for i, r := range g.rules {
		k := len(g.ids(g.motif.fab[z], r.label))
		if i == 0 {
			n += sides + 1
		} else {
			n += k / 4 * sides
		}
	}
	return n
}

// lay lays the motifs beside one another and joins them.
func (g *grid) lay() {
	p, c := g.p, g.p.c
	for z := range p.fab {
		if p.fab[z].Halted() {
			continue
		}
		names := map[string][]fabric.ID{}
		var rounds [3]*fabric.MotifRound
		for sides, rd := range g.rounds {
			fab := rd.fab[z]
			r := &fabric.MotifRound{Made: fab.Edge(), Joined: fab.JoinedSpaces()}
			for name := range g.motif.names {
				names[name] = append(names[name], g.ids(fab, name)...)
			}
			for i, id := range g.ids(fab, g.rules[0].label) {
				r.Corners[i] = slices.Index(r.Made, id)
			}
			rounds[sides] = r
		}
		got, f := p.fab[z].JoinMotifs(g.plan.Across[z], g.plan.Down[z], rounds, names)
		if f != nil {
			f.Span = g.at
			c.gather(f, z, p)
			p.fab[z].Halt()
			continue
		}
		for k, n := range got.Kinds {
			g.plan.Kinds[k][z] = n
		}
		g.plan.Shared[z], g.plan.AtSides[z], g.plan.AtCorners[z] = got.Shared, got.AtSides, got.AtCorners
	}
}

// printKind prints the joining round of the motifs that meet so many others.
func (g *grid) printKind(sides int) {
	c := g.p.c
	step := func(mask []bool, row *plan.Row) {
		for z, n := range g.plan.Kinds[sides] {
			mask[z] = mask[z] && n > 0
		}
		if !some(mask) {
			return
		}
		rest := sides > 0
		n := c.nums(plan.Absent)
		for z, on := range mask {
			if on {
				n[z] = g.plan.Kinds[sides][z]
				rest = rest && g.plan.Kinds[2][z] == 0
			}
		}
		if row != nil {
			row.For = sizesOf(mask)
		}
		g.p.add(&plan.JoinRound{Sides: sides, Motifs: n, Rest: rest, Row: row, Off: row != nil && g.motif.fastened(), For: sizesOf(mask)})
	}
	if sides == 0 {
		step(all(c.z), nil)
		return
	}
	for _, w := range g.rounds[sides].rows {
		step(slices.Clone(w.mask), g.motif.joiningRow(w))
	}
}

// joiningRow is the printed row of a joining round.
func (p *partState) joiningRow(w *working) *plan.Row {
	k := w.kick
	r := &plan.Row{First: w.from, Last: w.to, Times: w.times, Label: rowLabel(w.n.Head), Span: w.n.Head.Span(), Yarn: k.yarn,
		NewYarn: k.newYarn, Begin: k.begin}
	r.Called = p.calls[r.Label]
	pr := &printer{p: p, w: w}
	r.Work = append(pr.carried(k), pr.list(w.low.ops)...)
	p.joins(r, w)
	joinedAt(r)
	if k.begin.Chains > 0 {
		pr.begin(r)
	}
	r.Counts = p.counts(w)
	return r
}

// joinSpace prints a chain space with a join: the slip stitch has half of the chains that are left on either side, the one
// that is over before it.
func (pr *printer) joinSpace(in plan.Instr, o *fabric.Op) []plan.Instr {
	c := pr.p.c
	c.useForm(stitch.Form{ID: stitch.Slip, Together: 1})
	before, after := c.nums(plan.Absent), c.nums(plan.Absent)
	for z, n := range in.N {
		if n != plan.Absent {
			left := n - o.Per[z]
			before[z], after[z] = left-left/2, left/2
		}
	}
	chains := func(n plan.Nums) []plan.Instr {
		if n.Is(0) {
			return nil
		}
		c.useForm(stitch.Form{ID: stitch.Chain, Together: 1})
		return []plan.Instr{{Op: plan.Chains, N: n, Marker: -1, Yarn: -1, Label: o.Label}}
	}
	to := plan.Instr{Op: plan.JoinTo, Over: plan.Space, Chains: in.N, Marker: -1, Yarn: -1}
	return append(append(chains(before), to), chains(after)...)
}

// measuredOf is the width, the height or the way round joined motifs: so many sides of one.
func (c *checker) measuredOf(g *plan.Grid, z int, e *lang.Expr, on *plan.MeasuredOn) (plan.Length, bool) {
	if g.Each == nil {
		c.say(codeMotifSize, e.Span(), diag.Args{"part": e.Path[0]})
		return 0, false
	}
	sides := 0
	switch e.Text {
	case "height", "length":
		on.Kind, sides = plan.Height, g.Down[z]
	case "around":
		on.Kind, sides = plan.Around, 2*(g.Across[z]+g.Down[z])
	default:
		on.Kind, sides = plan.Width, g.Across[z]
	}
	return plan.Length(sides) * g.Each[z], true
}
