package fabric

import (
	"cmp"
	"maps"
	"slices"

	"ovillo/compile/plan"
	"ovillo/lang/source"
)

// Result is what a row did.
type Result struct {
	Traces                       []Trace
	Made                         []ID // elements made and standing on the new edge, in order of making
	Slips                        int
	Taken, Skipped, Passed, Left int
	Named                        int // places worked into by name, beyond the edge that was worked along
	Walked                       int // places passed before the first stitch
	WalkedTo                     int // chains of the space behind them; 0 if a stitch stands there
	Places                       int // of the edge that was worked along
	Turned                       bool
	LastYarn                     int
	Slid                         []Slid     // places passed with slip stitches that only carry the yarn on
	Repeats                      []Repeated // the outermost repeats of the row
	Touched                      []string   // the markers that the row itself placed, moved or took away
	Pure                         bool       // rows like it may be counted: it is of one yarn
	Steady                       bool       // worked again on the edge it left, the row would do the same: see [Part.Again]
}

// Slid is a place passed with a slip stitch, before so many elements were made.
type Slid struct {
	Before int
	ID     ID
}

// Repeated is a repeat that was carried out N times over Width places of the edge each, the first of them at From.
type Repeated struct{ From, Width, N int }

type status uint8

const (
	taken status = iota
	skipped
	passed
	left
)

// row is a row being worked: a cursor that moves along the edge.
type row struct {
	p        *Part
	f        *Fabric
	in       *Row
	places   []ID
	c        int   // the cursor stands before places[c]
	sub      int32 // chains already used of the space at the cursor
	made     []ID
	group    *Place   // inside a group every stitch goes here
	feetRoom []Place  // for the feet of one stitch
	legs     *[]Place // of stitches that are drawn together: they make nothing yet
	last     Place    // last worked into
	worked   bool
	from     int // index in made of the first element that went into the last place
	gaps     []standing
	marked   []standing
	carry    map[string]standing
	touched  map[string]bool        // markers the row itself places or moves
	met      string                 // the marker met last, where a marker was looked for by no name
	ahead    map[string]source.Span // markers placed in the next stitch, and where that is said
	fresh    map[string]*label      // names given again, to be read from the next row on
	walks    map[string]int         // how far runs are worked along that keep their own place
	apart    bool                   // the next chains do not join the ones before them
	drawing  bool
	turned   bool
	un       int // unworked places taken
	deep     int // how many repeats are open
	joins    []ID
	yarn     int
	forms    struct { // the number of the form of the instruction last worked, which makes stitch after stitch
		of *Op
		id FormID
	}
	res *Result
	cur *Trace
}

type standing struct {
	name string
	at   int
	gap  bool
}

func (s standing) compare(o standing) int {
	return cmp.Or(cmp.Compare(s.at, o.at), cmp.Compare(s.name, o.name))
}

// Work works one row along the live edge. On a fault the part keeps its old edge.
func (p *Part) Work(in *Row) (*Result, *Fault) {
	if in.Back && !p.edge.back {
		p.face()
	}
	var now found
	pure := in.Pure && !p.f.EachRow && !in.Back && p.f.plain(p, &p.edge)
	if p.replaced = 0; pure {
		now = found{p.edge, p.standing()}
		if past := p.past(in, &now); past != nil {
			return p.repeat(in, &now, past), nil
		}
	} else {
		p.forget()
	}
	r := &p.f.row
	*r = row{p: p, f: p.f, in: in, places: p.edge.p, yarn: in.Yarn, gaps: r.gaps[:0], marked: r.marked[:0], feetRoom: r.feetRoom[:0]}
	r.res = &p.f.results.zeroed(1, rowsAtOnce)[0]
	r.res.Traces = p.f.traces.zeroed(in.Traces, rowsAtOnce)
	r.res.Places = len(r.places)
	r.standing()
	p.nextRow()
	r.settle()
	if f := r.list(in.Ops); f != nil {
		return nil, f
	}
	if n := len(r.places) - r.c; n > 0 || r.sub > 0 {
		return nil, &Fault{Kind: LeftOver, Span: in.Span, Have: n, Need: r.c, Total: len(r.places)}
	}
	if f := r.awaited(); f != nil {
		return nil, f
	}
	if f := r.finish(); f != nil {
		if f.Span.IsZero() {
			f.Span = in.Span
		}
		return nil, f
	}
	r.res.Made, r.res.Turned, r.res.LastYarn = r.made, r.turned, r.yarn
	if pure {
		r.res.Pure = true
		p.keep(in, now, r.res)
		after := &p.rows[len(p.rows)-1].after
		r.res.Steady = in.More && p.f.alike(&now, after) && p.f.plain(p, &p.edge)
	}
	if len(r.touched) > 0 {
		r.res.Touched = slices.Sorted(maps.Keys(r.touched))
	}
	return r.res, nil
}

// carries has a marker stand where the row comes to, touch notes that the row itself places it. Most rows do neither.
func (r *row) carries(s standing) {
	if r.carry == nil {
		r.carry = map[string]standing{}
	}
	r.carry[s.name] = s
}

func (r *row) touch(name string) {
	if r.touched == nil {
		r.touched = map[string]bool{}
	}
	r.touched[name] = true
}

// awaited refuses a marker in the next stitch, if the row ended without one.
func (r *row) awaited() *Fault {
	if len(r.ahead) == 0 {
		return nil
	}
	for _, name := range slices.Sorted(maps.Keys(r.ahead)) {
		if s, ok := r.carry[name]; ok && !s.gap && s.at >= len(r.made) {
			return &Fault{Kind: NoNext, Span: r.ahead[name], Name: name}
		}
	}
	return nil
}

// standing lists the markers of the edge in order.
func (r *row) standing() {
	for n, m := range r.p.marks {
		if m.edge != r.p.edge.serial {
			continue
		}
		s := standing{n, m.at, m.gap}
		if m.gap {
			r.gaps = append(r.gaps, s)
		} else {
			r.marked = append(r.marked, s)
		}
	}
	slices.SortFunc(r.gaps, standing.compare)
	slices.SortFunc(r.marked, standing.compare)
}

func (r *row) el(i int) *Elem { return &r.f.Elems[r.places[i]] }

// move takes the cursor over k places and carries up the markers in gaps that it meets.
func (r *row) move(k int, s status) {
	switch s {
	case taken:
		r.res.Taken += k
	case skipped:
		r.res.Skipped += k
	case passed:
		r.res.Passed += k
	case left:
		r.res.Left += k
	}
	for len(r.gaps) > 0 && r.gaps[0].at < r.c+k {
		r.gaps = r.gaps[1:] // inside what is passed at once a gap has no place any more
	}
	r.c += k
	if s != taken {
		r.settle()
	}
}

// settle carries up a marker in the gap where the cursor stands: right behind what was made so far.
func (r *row) settle() {
	for len(r.gaps) > 0 && r.gaps[0].at == r.c && r.sub == 0 {
		g := r.gaps[0]
		if !r.touched[g.name] && !r.drawing {
			r.carries(standing{g.name, len(r.made), true})
		}
		r.gaps = r.gaps[1:]
	}
}

func (r *row) list(ops []*Op) *Fault {
	for _, op := range ops {
		if f := r.one(op); f != nil {
			if f.Span.IsZero() {
				f.Span = op.Span
			}
			return f
		}
	}
	return nil
}

// one carries out an instruction and notes what it did.
func (r *row) one(op *Op) *Fault {
	if r.f.steps++; r.f.Limit > 0 && r.f.steps > 5*r.f.Limit {
		return fault(TooMany, 0, r.f.Limit, "")
	}
	outer := r.cur
	t := &r.res.Traces[op.Index]
	r.cur = t
	made, yarn := len(r.made), r.yarn
	if op.Kind != Change && op.Yarn >= 0 {
		r.yarn = op.Yarn
	}
	from := r.c
	n, f := r.do(op)
	if f != nil {
		if !f.known {
			f.from, f.known = from, true
		}
		return f
	}
	if op.Kind != Change && op.Yarn >= 0 {
		r.yarn = yarn
	}
	if t.Runs == 0 {
		t.N = n
	} else if t.N != n {
		t.Varies = true
	}
	t.Runs++
	t.Made += len(r.made) - made
	if op.Stated != nil && op.Stated[r.f.Size] != n {
		return &Fault{Kind: StatedOther, Span: op.Span, Need: op.Stated[r.f.Size], Have: n}
	}
	if op.Label != "" && op.Kind != SkipOver && op.Kind != SkipSpaces && op.Kind != Leave && op.Kind != Work && op.Kind != SlideTo {
		r.name(op.Label, r.made[made:], false)
	} else if op.Label != "" && op.Kind == Work && op.Form.ID != slip {
		r.name(op.Label, r.made[made:], false)
	}
	r.cur = outer
	return nil
}

func (r *row) num(n plan.Nums, def int) int {
	if n == nil {
		return def
	}
	if v := n[r.f.Size]; v != plan.Absent {
		return v
	}
	return 0
}

// do carries out one instruction and returns its number: places taken, chains made, passes of a repeat.
func (r *row) do(op *Op) (int, *Fault) {
	switch op.Kind {
	case Work:
		return r.work(op)
	case Draw:
		return r.draw(op)
	case Cross:
		return r.cross(op)
	case InOne:
		return r.inOne(op)
	case Chains:
		return r.chains(op)
	case Repeat:
		return r.repeat(op)
	case SkipOver, SkipSpaces:
		return r.skip(op)
	case Leave:
		return r.leave(op)
	case Spread:
		return r.spread(op)
	case Spaced:
		return r.spaced(op)
	case AsMade:
		return r.asMade(op)
	case Found:
		return r.found(op)
	case Ride:
		return r.ride(op)
	case ByCell:
		return r.byCell(op)
	case SlideTo:
		return r.slide(op)
	case JoinSpace:
		return r.joinSpace(op)
	case Mark, Move, Unmark:
		return 0, r.mark(op)
	case Turn:
		r.turned = true
	case Change:
		r.yarn = op.Yarn
	}
	return 0, nil
}

// name gives places a label; the same label again in one row gathers them. What is made under a name that is there already
// takes its place only when the row is done: until then the name reads the old places, into which the row is worked.
func (r *row) name(name string, ids []ID, skip bool) {
	now, to := r.f.rows, r.p.labels
	if l := to[name]; !skip && l != nil && l.row != now {
		if r.fresh == nil {
			r.fresh = map[string]*label{}
		}
		to = r.fresh
	}
	if l := to[name]; l != nil && l.row == now {
		l.ids = append(l.ids, ids...)
		return
	}
	to[name] = &label{ids: slices.Clone(ids), row: now, skipped: skip}
}

// make adds an element that was worked.
func (r *row) make(e *Elem) *Fault {
	if f := r.room(); f != nil {
		return f
	}
	e.Row, e.Yarn, e.Facing = r.f.rows, int32(r.yarn), r.in.Wrong
	id := r.f.add(e)
	if e.Kind == Slip {
		r.res.Slips++
		r.apart = true // it holds the chains down: those behind it are another space
		return nil
	}
	r.keep(id)
	return nil
}

// room refuses one more stitch where there are too many.
func (r *row) room() *Fault {
	if len(r.made) >= MostInRow {
		return fault(TooWide, 1, MostInRow, "")
	}
	return r.p.room(1)
}

// keep puts an element that was worked on the edge.
func (r *row) keep(id ID) {
	if r.made == nil {
		r.made = r.f.runs.take(len(r.places)+8, placesAtOnce)[:0] // most rows make as many as they take
	}
	r.made = append(r.made, id)
	r.apart = false
}

// MostInRow is how many stitches a row may have, and how many chains a run of them: of thick yarn a kilometre.
const MostInRow = 100_000

func (r *row) chains(op *Op) (int, *Fault) {
	n := r.num(op.N, 0)
	switch {
	case n <= 0:
		return 0, nil
	case n > MostInRow:
		return 0, fault(TooWide, n, MostInRow, "")
	}
	if k := len(r.made) - 1; k >= 0 && r.f.Elems[r.made[k]].Kind == Space && !r.apart {
		if op.Label != "" {
			return 0, fault(Nested, 0, 0, op.Label)
		}
		if r.f.Elems[r.made[k]].N += int32(n); r.f.Elems[r.made[k]].N > MostInRow {
			return 0, fault(TooWide, n, MostInRow, "")
		}
		return n, nil
	}
	return n, r.make(&Elem{Kind: Space, N: int32(n), Into: nowhere, Into2: nowhere})
}

// leave ends a short row: what is left of the edge stays for later.
func (r *row) leave(op *Op) (int, *Fault) {
	n := len(r.places) - r.c
	if op.N != nil && r.num(op.N, 0) != n {
		return 0, fault(LeaveOther, r.num(op.N, 0), n, "")
	}
	ids := slices.Clone(r.places[r.c:])
	r.move(n, left)
	r.p.edge.post = append(ids, r.p.edge.post[r.un:]...)
	r.un = 0
	if op.Label != "" {
		r.name(op.Label, ids, true)
	}
	return n, nil
}

// finish makes the new edge and carries the markers over.
func (r *row) finish() *Fault {
	style := r.in.Style
	if r.turned && style != plan.Rows {
		style = plan.Rows
	}
	old := &r.p.edge
	n := len(r.made)
	e := edge{p: r.made, serial: r.f.rows, back: style == plan.Rows || style == plan.TurnedRounds}
	if n > 0 && e.back {
		e.p = append(r.f.runs.take(n, placesAtOnce)[:0], r.made...) // what was made keeps its order
	}
	post, pre := old.post[min(r.un, len(old.post)):], old.pre
	switch {
	case style == plan.Rows:
		slices.Reverse(e.p)
		e.loop = old.loop || old.closed && len(post) > 0
		e.post, e.pre = reversed(pre), reversed(post)
		if e.loop {
			e.post, e.pre = reversed(post), nil
		}
	case r.in.Open:
		e.post, e.pre = post, pre
	default:
		if k := len(post) + len(pre); k > 0 {
			return fault(Between, 0, k, "")
		}
		if n > 0 && style != plan.SpiralRounds && r.f.Elems[r.made[0]].Kind == Space {
			return fault(StartSpace, 0, 0, "")
		}
		e.closed = true
		if r.in.Back {
			style = plan.TurnedRounds // the next round goes on the way all rounds go
			e.p = slices.Clone(r.made)
		}
		if style == plan.TurnedRounds && n > 0 {
			slices.Reverse(e.p[1:])
		}
	}
	if !e.closed {
		r.noteEnds(old.pre, post)
	}
	r.p.edge, r.p.joins = e, r.joins
	maps.Copy(r.p.labels, r.fresh)
	maps.Copy(r.p.walked, r.walks)
	for name, s := range r.carry {
		r.p.marks[name] = &marker{edge: e.serial, at: turnedAt(style, s, n), gap: s.gap}
	}
	return nil
}

// turnedAt is where a marker stands once the edge is ready to be worked again.
func turnedAt(style plan.Style, s standing, n int) int {
	switch {
	case style == plan.Rows && s.gap:
		return n - s.at
	case style == plan.Rows:
		return n - 1 - s.at
	case style == plan.TurnedRounds && s.gap && s.at == 0:
		return min(1, n)
	case style == plan.TurnedRounds && s.gap:
		return n - s.at + 1
	case style == plan.TurnedRounds && s.at > 0:
		return n - s.at
	}
	return s.at
}

func reversed(ids []ID) []ID {
	out := slices.Clone(ids)
	slices.Reverse(out)
	return out
}
