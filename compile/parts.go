package compile

import (
	"cmp"
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// partState is a part while it is checked: its fabric in every size, and what its statements have set so far.
type partState struct {
	c     *checker
	index int
	plan  *plan.Part
	head  source.Span
	stmts []*lang.Statement
	made  []lastMade // what the last row made, per size
	pure  []pureRow  // rows that others may be like

	fab    []*fabric.Part
	basis  [][]basis   // what the size of each row rests on, as plan.Worked
	leans  []lean      // in the order of first use
	inUse  plan.Length // the hook that is worked with; 0: not known
	asked  bool        // some length of the part is asked for
	style  plan.Style
	base   stitch.ID
	begins map[stitch.ID]begin
	edges  *lang.Edges
	hook   plan.Length // to change to before the next row; 0: none
	yarn   int         // the yarn rows are started with
	inHand int         // the yarn that hangs from the hook; -1 at the start
	lex    []bool      // the sizes of the block that is being read; nil: all
	calls  map[string]plan.Text
	names  map[string]bool // labels, markers and sections that statements of the part set
	rows   map[string]*lang.Row
	stated bool // some row or statement says a count

	started   bool
	number    []int // of the last row, per size
	tall      []float64
	wrong     []bool // the next row shows the wrong side
	back      []bool // the last row went the other way
	serials   []rowsAt
	below     []source.Span  // what made the edge that is worked along, per size
	cuts      []yarnCut      // where its yarn was cut, per size
	yarnNamed bool           // a yarn was named since
	cutSaid   bool           // work without yarn was reported
	off       *lang.CountOff // the last statement, if it counts off
	offIn     []bool         // the sizes in which it was carried out
	goneOn    bool           // another part is worked from where its work ended
	firstDone bool
	pending   *plan.Length
	markers   map[string]int
	lastUse   map[string]*lang.Row // the last row that asks for a marker
	riding    map[*plan.Row][]int  // the markers that are moved up in a row without being named
	removed   map[*plan.Row][]int  // the markers that a row itself takes out
	stripes   *stripes             // that the yarn of the rows follows; nil if it follows none
	textures  map[*stitchPattern]*inPattern
	texture   *stitchPattern           // whose rows are being worked
	over      map[*stitchPattern][]int // over how many stitches it was begun, per size
	marked    []string                 // the markers that were set so far, while names are collected
	along     []*alongRun              // the runs of the edge the part starts along
	lastMarks []string                 // markers set behind the last of them
	begun     []fabric.ID              // the first place of that edge, per size
	label     string                   // of the row that is being read; "" if it has none
	blocks    int                      // how many repeats are open
	chart     *fromChart               // the row of a chart that is worked; nil: none
	final     []bool                   // the sizes in which the row is the last that its line works: the stated counts are of that one; nil: all
	sidesPart bool                     // a row whose side differs from size to size was noted
	maxMarks  int
	cited     []calledRow            // rows that its sentences call by number
	walks     map[string]source.Span // runs that are worked along bit by bit, and where that is said
	roles     map[string]plan.Role   // names that the form of the start sets
	area      yarnArea               // of one piece
	kept      [][]keptRow            // rows that may be drawn, per size
	last      []lastRow              // of a motif that is to be joined to others, per size
}

// rowAt is where a row of the fabric stands: its number there, its printed number and the elements it made.
type rowAt struct {
	serial int32
	number int
	made   []fabric.ID
	at     source.Span
	style  plan.Style
	again  bool // it was not worked, being like the next one that was: the fabric shows nothing of it but its ends
}

// rowsAt are the rows of a part, in the order in which they were worked.
type rowsAt []rowAt

// of is the row of a number of the fabric; nil if the part has none of that number.
func (rs rowsAt) of(serial int32) *rowAt {
	i, ok := slices.BinarySearchFunc(rs, serial, func(r rowAt, s int32) int { return cmp.Compare(r.serial, s) })
	if !ok {
		return nil
	}
	return &rs[i]
}

// part checks a part.
func (c *checker) part(s *lang.Statement, n *lang.Part) {
	if c.z == 0 || !c.declare(n.Name) {
		return
	}
	p := c.newPart(n.Name.Text, s.Head)
	p.plan.Motifs = c.motifsOf(n.Name.Text)
	p.stmts = c.withLike(p, s, n)
	p.names = map[string]bool{}
	c.enter(p)
	if c.style != nil {
		p.setStyle(c.style)
	} else if firstRowWord(p.stmts) == "round" {
		p.setStyle(&lang.Style{Word: "joined"}) // a part that does not say is worked as its first row is called
	}
	p.collect(p.stmts)
	c.alternatives(p.stmts)
	c.at = p
	p.exec(p.stmts, all(c.z))
	c.at = nil
	p.close()
}

// newPart is a part of which nothing is worked yet.
func (c *checker) newPart(name string, head source.Span) *partState {
	p := &partState{
		c: c, index: len(c.pat.Parts), head: head, style: plan.Rows, base: c.base, yarn: -1, inHand: -1,
		begins: map[stitch.ID]begin{}, calls: map[string]plan.Text{}, names: map[string]bool{}, rows: map[string]*lang.Row{},
		below: make([]source.Span, c.z), number: make([]int, c.z), tall: make([]float64, c.z), wrong: make([]bool, c.z), back: make([]bool, c.z),
		textures: map[*stitchPattern]*inPattern{}, over: map[*stitchPattern][]int{},
		cuts: make([]yarnCut, c.z), basis: make([][]basis, c.z), kept: make([][]keptRow, c.z),
		markers: map[string]int{}, lastUse: map[string]*lang.Row{}, riding: map[*plan.Row][]int{}, removed: map[*plan.Row][]int{}, roles: map[string]plan.Role{}, walks: map[string]source.Span{}, last: make([]lastRow, c.z),
		plan: &plan.Part{Name: name, Make: 1, Yarn: -1, Span: head, Worked: make([][]plan.RowFact, c.z)},
	}
	for id, b := range c.begins {
		p.begins[id] = b
	}
	if p.yarn = c.yarnOfAll; len(c.pat.Yarns) == 1 {
		p.yarn = 0
	}
	if len(c.pat.Hooks) > 0 {
		p.plan.Hook, p.inUse = c.pat.Hooks[0], c.pat.Hooks[0]
	}
	// Most parts have a few rows at least; more room is taken by those that need it.
	const rows = 16
	facts, rests, at := make([]plan.RowFact, c.z*rows), make([]basis, c.z*rows), make(rowsAt, c.z*rows)
	for z, f := range c.fabrics {
		p.fab = append(p.fab, f.Begin(name))
		from, to := z*rows, (z+1)*rows
		p.plan.Worked[z], p.basis[z] = facts[from:from:to], rests[from:from:to]
		p.serials = append(p.serials, at[from:from:to])
	}
	return p
}

// enter makes a part known.
func (c *checker) enter(p *partState) {
	c.parts[p.plan.Name] = p
	c.pat.Parts = append(c.pat.Parts, p.plan)
}

func (p *partState) setStyle(n *lang.Style) {
	switch {
	case n.Word == "rows":
		p.style = plan.Rows
	case n.Word == "spiral":
		p.style = plan.SpiralRounds
	case n.Turned:
		p.style = plan.TurnedRounds
	default:
		p.style = plan.JoinedRounds
	}
	p.plan.Style = p.style
}

// halt makes the part unknown in the sizes of a mask.
func (p *partState) halt(mask []bool) {
	for z, on := range mask {
		if on {
			p.fab[z].Halt()
		}
	}
}

// live is a mask without the sizes in which the part is unknown.
func (p *partState) live(mask []bool) []bool {
	out := make([]bool, len(mask))
	for z, on := range mask {
		out[z] = on && !p.fab[z].Halted()
	}
	return out
}

func some(mask []bool) bool {
	for _, on := range mask {
		if on {
			return true
		}
	}
	return false
}

// sizesOf is the mask as the plan keeps it: nil if it is all sizes.
func sizesOf(mask []bool) plan.Sizes {
	for _, on := range mask {
		if !on {
			return append(plan.Sizes(nil), mask...)
		}
	}
	return nil
}

// exec carries out statements of the part in the sizes of a mask.
func (p *partState) exec(stmts []*lang.Statement, mask []bool) {
	for _, s := range stmts {
		if s.Node == nil {
			p.halt(mask) // it could not be read: what follows is unknown
			continue
		}
		if !p.step(s, mask) {
			return
		}
		p.statement(s, mask)
	}
}

// maxSteps is how many statements may be carried out, repeats counted: no pattern comes near it, and a repeat inside a
// repeat with mistyped numbers must end.
const maxSteps = 200_000

// step notes that a statement is carried out, or a block once more; false if there are too many, which is said once.
func (p *partState) step(s *lang.Statement, mask []bool) bool {
	if p.c.steps++; p.c.steps == maxSteps+1 {
		p.c.say(codeManyRows, s.Head, diag.Args{"have": p.c.steps, "max": maxSteps, "what": diag.Term{Key: "line to work", N: 2}})
	}
	if p.c.steps <= maxSteps {
		return true
	}
	p.halt(mask)
	return false
}

func (p *partState) statement(s *lang.Statement, mask []bool) {
	p.label = ""
	if _, ok := s.Node.(*lang.CountOff); !ok {
		p.off = nil
		defer func() { p.off = nil }() // what is inside may end with one
	}
	switch n := s.Node.(type) {
	case *lang.Title:
		p.plan.Title = p.c.text(n.Text, n)
	case *lang.Call:
		if n.Name.Text == p.plan.Name {
			p.plan.Called = p.calls[n.Name.Text]
		}
	case *lang.Yarn:
		if i := p.c.yarn(n.Name); i >= 0 {
			p.yarn, p.stripes, p.yarnNamed = i, nil, true
			if !p.firstDone {
				p.plan.Yarn = i
			}
		}
	case *lang.Stripes:
		p.setStripes(n)
	case *lang.Hook:
		if h := p.c.hookSize(n); h != 0 {
			p.c.addHook(h, n.Span())
			p.inUse = h
			if p.firstDone {
				p.hook = h
			} else {
				p.plan.Hook = h
			}
		}
	case *lang.Base:
		p.base = p.c.stitchID(n.Stitch)
	case *lang.Begin:
		p.c.setBegin(p.begins, n)
	case *lang.Style:
		p.setStyle(n)
	case *lang.FirstSide:
		p.plan.FirstWrong = true
		for z := range p.wrong {
			p.wrong[z] = true
		}
	case *lang.Make:
		if v, ok := plainNumber(n.N); ok && v > 0 {
			p.plan.Make = v
		}
	case *lang.Chain, *lang.Foundation, *lang.Ring, *lang.Start, *lang.From:
		p.start(s.Node, mask)
	case *lang.Row:
		p.row(n, mask)
	case *lang.WorkRow:
		if r := p.rows[n.Label.Text]; r != nil {
			p.row(r, mask)
		} else {
			p.c.say(codeNoName, n.Label.Span(), diag.Args{"word": n.Label.Text, "near": lang.Near(n.Label.Text, keys(p.rows))})
		}
	case *lang.Edges:
		p.edges = n
	case *lang.Shape:
		p.shape(s, n, mask)
	case *lang.Repeat:
		p.repeat(s, n, mask)
	case *lang.Only:
		p.only(s, n, mask)
	default:
		p.event(s, mask)
	}
}

// only carries out statements for some sizes; a list of numbers in them has a number for each of those sizes.
func (p *partState) only(s *lang.Statement, n *lang.Only, mask []bool) {
	outer := p.lex
	lex := p.c.pick(n.Sizes)
	now := make([]bool, p.c.z)
	for z := range lex {
		lex[z] = lex[z] && (outer == nil || outer[z])
		now[z] = lex[z] && mask[z]
	}
	if !some(lex) {
		return
	}
	p.lex = lex
	p.exec(s.Body, now)
	p.lex = outer
}

func keys[V any](m map[string]V) []string {
	var out []string
	for k := range m {
		out = append(out, k)
	}
	return out
}

// event carries out the statements between rows.
func (p *partState) event(s *lang.Statement, mask []bool) {
	switch n := s.Node.(type) {
	case *lang.CountOff:
		p.offTwice(n, mask)
		p.countOff(n, mask)
	case *lang.Have:
		p.have(n, mask)
	case *lang.RoundsBegin:
		p.moveStart(n, mask)
	case *lang.LevelWith:
		v, _ := plainNumber(n.N)
		p.c.useForm(stitch.Plain(stitch.Slip))
		p.withoutYarn(n.Span(), false, mask)
		p.add(&plan.Fasten{Slip: v, For: sizesOf(mask)})
	case *lang.Close:
		p.cutYarn(n, mask, true)
		p.add(&plan.Fasten{Close: n.Loops, For: sizesOf(mask)})
	case *lang.FastenOff:
		p.cutYarn(n, mask, false)
		if k := len(p.plan.Steps); k > 0 {
			if f, ok := p.plan.Steps[k-1].(*plan.Fasten); ok && f.Close != "" {
				f.Off = true // closing with the tail has cut the yarn
				return
			}
		}
		p.add(&plan.Fasten{Off: true, Tail: n.Tail, For: sizesOf(mask)})
	case *lang.Prose:
		p.noted()
		p.add(&plan.NoteStep{Prose: p.c.prose(s), For: sizesOf(mask)})
	}
}

func (p *partState) add(s plan.Step) {
	p.plan.Steps = append(p.plan.Steps, s)
}

// close ends a part.
func (p *partState) close() {
	if !p.started {
		p.c.say(codeNoStart, p.head, diag.Args{"part": p.plan.Name})
	}
	if len(p.plan.Title) == 0 {
		p.plan.Title = plan.Text{}
		for _, l := range p.c.pat.Languages {
			p.plan.Title[l] = p.plan.Name
		}
		p.c.say(codePartTitle, p.head, diag.Args{"part": p.plan.Name})
	}
	if !p.stated && p.started {
		p.c.say(codeNoCounts, p.head, diag.Args{"part": p.plan.Name})
	}
	p.attached()
	if p.firstDone || p.plan.Grid != nil {
		p.c.hookUsed[p.plan.Hook] = true
	}
	p.checkCited()
	p.silences()
	p.chainNote()
	if p.plan.Yarn < 0 {
		p.plan.Yarn = p.yarn
	}
	if p.yarn >= 0 {
		p.c.used[p.yarn] = true
	}
}

// silences notes the sizes in which a row did not come out.
func (p *partState) silences() {
	for z := range p.fab {
		if p.fab[z].Halted() {
			if p.plan.Silent == nil {
				p.plan.Silent = make(plan.Sizes, p.c.z)
			}
			p.plan.Silent[z] = true
		}
	}
}
