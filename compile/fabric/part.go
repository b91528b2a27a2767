package fabric

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// Part is a part being worked: an edge open for work, and the names of its places.
type Part struct {
	Name     string
	f        *Fabric
	edge     edge
	labels   map[string]*label
	marks    map[string]*marker
	spans    map[string]section
	found    []ID           // the foundation, in the order of making
	joined   bool           // the foundation was joined
	ends     [2][]rowEnd    // of flat rows, from the start upwards: by Side
	walked   map[string]int // of runs that are worked along bit by bit: how many places, by part and name
	regained map[ID]bool    // places left by short rows that later rows worked into
	begun    int32          // the number of the edge the part started along, if it was there already; 0: none
	joins    []ID           // spaces of the last row that are joined to motifs beside it
	halted   bool           // a row failed: everything that rests on this part is unknown
	rows     []pastRow      // pure rows worked one after the other, up to the live edge
	replaced int32          // the row that the last one stands in the place of; 0: none
}

// edge is an ordered run of places open for work.
type edge struct {
	p      []ID
	closed bool
	free   bool // no edge yet: every place is named
	back   bool // a row that goes the other way meets it in this order, since the work would be turned before another
	serial int32
	// post and pre are places left unworked beyond the end of the edge (nearest first) and before its start (nearest
	// last). In a round that was opened both ends look at the same run: loop, and it is kept in post.
	post, pre []ID
	loop      bool
}

// label is a named run of places, in the order of making.
type label struct {
	ids     []ID
	row     int32
	skipped bool
	slipped bool // passed over with slip stitches
	hole    bool // passed over in the middle of a row: an opening unless somebody works it
}

// marker stands in a place of an edge, or in the gap before it.
type marker struct {
	edge int32
	at   int
	gap  bool
}

// Begin starts a part. Its edge is set by one of the starts below.
func (f *Fabric) Begin(name string) *Part {
	p := &Part{Name: name, f: f, regained: map[ID]bool{}, walked: map[string]int{}, labels: map[string]*label{}, marks: map[string]*marker{}, spans: map[string]section{}}
	f.Parts[name] = p
	return p
}

// Halt makes everything that rests on the part unknown; Halted reports it.
func (p *Part) Halt() { p.halted = true }

// Halted reports whether the part is unknown from here on.
func (p *Part) Halted() bool { return p.halted }

func (p *Part) nextRow() int32 { p.f.rows++; return p.f.rows }

// Foundation starts with n stitches or chains of a form; closed if they are joined.
func (p *Part) Foundation(form stitch.Form, n int, closed bool) *Fault {
	if n > MostInRow {
		return fault(TooWide, n, MostInRow, "")
	}
	if f := p.room(n); f != nil {
		return f
	}
	row := p.nextRow()
	ids := make([]ID, n)
	id := p.f.intern(form)
	for i := range ids {
		ids[i] = p.f.add(&Elem{Kind: Stitch, Form: id, Into: nowhere, Into2: nowhere, Row: row})
	}
	p.found, p.joined = ids, closed
	p.edge = edge{p: slices.Clone(ids), closed: closed, serial: row, back: !closed}
	if !closed && form.ID != stitch.Chain && n > 0 {
		slices.Reverse(p.edge.p) // a foundation row of stitches is turned; a chain is worked back along by itself
		p.ends[RightEdge] = []rowEnd{{Place{ID: ids[0], Asp: Before}, row, -1}}
		p.ends[LeftEdge] = []rowEnd{{Place{ID: ids[n-1], Asp: After}, row, -1}}
	}
	return nil
}

// BothSides starts with n chains worked along both sides: a closed edge of 2n-2 places. The end chains are one place
// each; the first is met again at the end.
func (p *Part) BothSides(n int) *Fault {
	if f := p.Foundation(stitch.Form{ID: stitch.Chain, Together: 1}, n, false); f != nil {
		return f
	}
	p.edge.closed = true
	for i := n - 2; i >= 1; i-- {
		at := Place{ID: p.found[i], Asp: OtherSide}
		p.edge.p = append(p.edge.p, p.f.add(&Elem{Kind: Stitch, Form: chainForm, Into: at, Into2: at, Row: p.edge.serial}))
	}
	return nil
}

// Ring starts with a ring.
func (p *Part) Ring() {
	row := p.nextRow()
	id := p.f.add(&Elem{Kind: Ring, Into: nowhere, Into2: nowhere, Row: row})
	p.edge = edge{p: []ID{id}, closed: true, serial: row}
}

// Free starts without an edge: the first row names every place it works into.
func (p *Part) Free() { p.edge = edge{closed: true, free: true, serial: p.nextRow()} }

// Run is a run of places a part can start along.
type Run struct {
	Places  []Place
	Closed  bool
	Halted  bool
	Names   map[string][]int // labels that the new edge has from the start: indices of places; of several runs they gather
	Markers []string         // set in the gap before it
}

// From starts along runs, one behind the other. The edge is closed if it is one closed run, or if the part is worked in
// rounds.
func (p *Part) From(runs []Run, closed bool) *Fault {
	p.forget()
	row := p.nextRow()
	e := edge{closed: closed, serial: row}
	for _, r := range runs {
		if r.Halted {
			p.Halt()
			return nil
		}
		for _, m := range r.Markers {
			p.marks[m] = &marker{edge: row, at: len(e.p), gap: true}
		}
		if f := p.room(len(r.Places)); f != nil {
			return f
		}
		first := len(e.p)
		for _, pl := range r.Places {
			src := p.f.Elems[pl.ID]
			el := Elem{Kind: src.Kind, Form: src.Form, N: src.N, Into: pl, Into2: pl, Row: row}
			switch pl.Asp {
			case OneChain, OtherSide:
				el.Kind, el.N = Stitch, 0
				if src.Kind == Space {
					el.Form = chainForm
				}
			case Before, After:
				el.Kind, el.N = End, 0
			}
			e.p = append(e.p, p.f.add(&el))
			p.f.use(pl.ID)
		}
		for name, at := range r.Names {
			l := p.labels[name]
			if l == nil || l.row != row {
				l = &label{row: row}
				p.labels[name] = l
			}
			for _, i := range at {
				l.ids = append(l.ids, e.p[first+i])
			}
		}
	}
	p.edge, p.begun = e, row
	return nil
}

// face turns the edge round for a row that goes the other way. A round keeps the place of its join first.
func (p *Part) face() {
	e := &p.edge
	n := len(e.p)
	style := plan.Rows
	if e.p = slices.Clone(e.p); e.closed && n > 0 {
		style = plan.TurnedRounds
		slices.Reverse(e.p[1:])
	} else {
		slices.Reverse(e.p)
		e.post, e.pre = reversed(e.pre), reversed(e.post)
	}
	for _, m := range p.marks {
		if m.edge == e.serial {
			m.at = turnedAt(style, standing{at: m.at, gap: m.gap}, n)
		}
	}
}

// EdgeRun is the live edge of the part, as another part meets it.
func (p *Part) EdgeRun() Run {
	p.forget()
	return Run{Places: tops(p.edge.p), Closed: p.edge.closed, Halted: p.halted}
}

// FoundationRun is the other side of the part's start, held upside down: in reverse order; a joined one keeps the place
// of the join first.
func (p *Part) FoundationRun() Run {
	p.forget()
	ids := slices.Clone(p.found)
	slices.Reverse(ids)
	if p.joined && len(ids) > 0 {
		ids = append([]ID{ids[len(ids)-1]}, ids[:len(ids)-1]...)
	}
	r := Run{Closed: p.joined, Halted: p.halted}
	for _, id := range ids {
		r.Places = append(r.Places, Place{ID: id, Asp: OtherSide})
	}
	return r
}

// ChainRun appends n new chains to no edge: a run for [Part.From].
func (p *Part) ChainRun(n int) (Run, *Fault) {
	if n > MostInRow {
		return Run{}, fault(TooWide, n, MostInRow, "")
	}
	if f := p.room(n); f != nil {
		return Run{}, f
	}
	row := p.nextRow()
	r := Run{}
	for i := 0; i < n; i++ {
		id := p.f.add(&Elem{Kind: Stitch, Form: chainForm, Into: nowhere, Into2: nowhere, Row: row})
		r.Places = append(r.Places, Place{ID: id})
	}
	return r, nil
}

// NamedRun is the run of a label of the part; with below, what lies under it.
func (p *Part) NamedRun(name string, below bool) (Run, *Fault) {
	p.forget()
	if p.halted {
		return Run{Halted: true}, nil
	}
	ids, f := p.ids(name)
	if f != nil {
		return Run{}, f
	}
	if below {
		pl, f := p.f.below(ids)
		return Run{Places: pl}, f
	}
	var out []Place
	for _, id := range ids {
		if el := p.f.Elems[id]; el.Kind == Space {
			for k := int32(0); k < el.N; k++ {
				out = append(out, Place{ID: id, Asp: OneChain, Sub: k})
			}
			continue
		}
		out = append(out, Place{ID: id})
	}
	return Run{Places: out}, nil
}

// ids are the elements a name of the part stands for.
func (p *Part) ids(name string) ([]ID, *Fault) {
	p.forget()
	if l := p.labels[name]; l != nil {
		return l.ids, nil
	}
	if s, ok := p.spans[name]; ok {
		return p.in(s)
	}
	switch {
	case name == FoundationName && len(p.found) > 0:
		return p.found, nil
	case name == EdgeName && !p.edge.free:
		return p.edge.p, nil
	}
	return nil, fault(Unknown, 0, 0, name)
}

// FoundationName and EdgeName are the names by which a part's start and its live edge are reached. A label of that name
// comes first.
const (
	FoundationName = "foundation"
	EdgeName       = "edge"
)

// below gives what lies under elements: the places stitches were worked into; the chains of a space from their other
// side, from the last made to the first.
func (f *Fabric) below(ids []ID) ([]Place, *Fault) {
	var out []Place
	for _, id := range ids {
		el := f.Elems[id]
		switch {
		case el.Kind == Space:
			for k := el.N - 1; k >= 0; k-- {
				out = append(out, Place{ID: id, Asp: OtherSide, Sub: k})
			}
		case el.Into != el.Into2:
			return nil, fault(DrawnBelow, 0, 0, "")
		case el.Into.ID < 0:
			out = append(out, Place{ID: id, Asp: OtherSide})
		default:
			out = append(out, el.Into)
		}
	}
	return out, nil
}

func tops(ids []ID) []Place {
	out := make([]Place, len(ids))
	for i, id := range ids {
		out[i] = Place{ID: id}
	}
	return out
}

func (p *Part) room(n int) *Fault {
	if p.f.Limit > 0 && len(p.f.Elems)+n > p.f.Limit {
		return fault(TooMany, n, p.f.Limit, "")
	}
	return nil
}

// RotateTo moves the start of a round to a marker and returns how many places were passed.
func (p *Part) RotateTo(name string) (int, *Fault) {
	p.forget()
	m := p.marks[name]
	switch {
	case m == nil:
		return 0, fault(Unknown, 0, 0, name)
	case m.edge != p.edge.serial:
		return 0, fault(Lost, 0, 0, name)
	}
	k, n := m.at, len(p.edge.p)
	if n == 0 || !p.edge.closed {
		return 0, fault(NotRing, 0, 0, name)
	}
	k %= n
	p.edge.p = append(slices.Clone(p.edge.p[k:]), p.edge.p[:k]...)
	for _, o := range p.marks {
		if o.edge == p.edge.serial {
			o.at = (o.at - k + n) % n
		}
	}
	return k, nil
}

// MarkerAt reports whether a marker stands on the live edge.
func (p *Part) MarkerAt(name string) bool {
	m := p.marks[name]
	return m != nil && m.edge == p.edge.serial
}

// Markers is how many markers stand on the live edge.
func (p *Part) Markers() int {
	n := 0
	for name, m := range p.marks {
		if m.edge == p.edge.serial && !strings.HasPrefix(name, hidden) {
			n++
		}
	}
	return n
}

// Unmark takes a marker away.
func (p *Part) Unmark(name string) {
	p.forget()
	delete(p.marks, name)
}

// Count is how many places of the live edge there are: stitches, spaces and chains in the spaces.
func (p *Part) Count() (stitches, spaces, chains int) {
	for _, id := range p.edge.p {
		switch el := p.f.Elems[id]; el.Kind {
		case Stitch, End:
			stitches++
		case Space:
			spaces++
			chains += int(el.N)
		}
	}
	return
}

// CountHere is how many stitches and spaces of the live edge belong to a name: a section, or a label that the row that made
// the edge gave. A label of an earlier row has none here.
func (p *Part) CountHere(name string) (int, *Fault) {
	if l := p.labels[name]; l != nil && l.row != p.edge.serial {
		return 0, nil
	}
	return p.CountIn(name)
}

// CountIn is how many places belong to a name: a section of the live edge, or a label of any row.
func (p *Part) CountIn(name string) (int, *Fault) {
	ids, f := p.ids(name)
	return len(ids), f
}

// Label returns the places of a label: its elements, whether they were passed over and nothing stands in them, and the row
// that set it.
func (p *Part) Label(name string) (ids []ID, skipped bool, row int32, ok bool) {
	p.forget()
	if l := p.labels[name]; l != nil {
		return l.ids, l.skipped && !l.slipped, l.row, true
	}
	if _, section := p.spans[name]; section {
		if ids, f := p.ids(name); f == nil {
			return ids, false, p.edge.serial, true
		}
	}
	return nil, false, 0, false
}

// Hole reports whether a label stands for places passed over in the middle of a row.
func (p *Part) Hole(name string) bool { return p.labels[name] != nil && p.labels[name].hole }

// Edge returns the places of the live edge.
func (p *Part) Edge() []ID {
	p.forget()
	return p.edge.p
}

// Open returns all places that a row could go into, those left before the live edge and beyond it included, in the order of a
// row along it, and how many of them lie before the edge.
func (p *Part) Open() (places []ID, before int) {
	p.forget()
	places = append(slices.Clone(p.edge.pre), p.edge.p...)
	if !p.edge.loop {
		places = append(places, p.edge.post...)
	}
	return places, len(p.edge.pre)
}

// Closed reports whether the live edge is a round.
func (p *Part) Closed() bool { return p.edge.closed }

// FreeEdge reports whether the part has no edge yet.
func (p *Part) FreeEdge() bool { return p.edge.free }

// Names lists the labels, markers and sections of the part.
func (p *Part) Names() []string {
	var out []string
	for n := range p.labels {
		out = append(out, n)
	}
	for n := range p.marks {
		if !strings.HasPrefix(n, hidden) {
			out = append(out, n)
		}
	}
	for n := range p.spans {
		out = append(out, n)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// Serial is the number of the row that made the live edge.
func (p *Part) Serial() int32 { return p.edge.serial }
