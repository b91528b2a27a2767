package compile_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// reader works printed rows as a maker does who has only the page: along the row before, place by place. ok is false for a
// row that it cannot read: one with markers, names or places elsewhere.
type reader struct {
	z     int
	edge  []int // the row before, as it is met: 0 is a stitch, n a space of n chains
	at    int
	sub   int   // chains used of the space at the cursor
	made  []int // the same of the row that is worked
	spent bool  // the row asked for a place that was not there
	apart bool  // the next chains are a space of their own
	ok    bool
}

// row works a printed row along an edge.
func (r *reader) row(row *plan.Row, edge []int) (ok bool) {
	*r = reader{z: r.z, edge: edge, ok: true}
	if row.Begin.Counts {
		r.begin(row)
	}
	r.list(row.Work)
	return r.ok
}

// begin works a beginning chain that counts: it stands in the first place, or in the space that slip stitches lead to.
func (r *reader) begin(row *plan.Row) {
	i := slices.IndexFunc(row.Work, func(in plan.Instr) bool { return in.Op != plan.SlipOver })
	switch {
	case row.JoinAt != nil:
		r.take(plan.Space)
	case i >= 0 && row.Work[i].Over == plan.RingPlace:
		r.at = len(r.edge)
	case i > 0:
		r.at += at(row.Work[0].N, r.z, 0)
		r.take(plan.StitchSpace)
	default:
		r.take(plan.StitchSpace)
	}
	r.made = append(r.made, 0)
	r.chains(row.Begin.And)
}

func (r *reader) list(work []plan.Instr) {
	for i := range work {
		r.instr(&work[i])
	}
}

// take takes the next place of a kind.
func (r *reader) take(over plan.PlaceKind) {
	for over == plan.Space && r.at < len(r.edge) && r.edge[r.at] == 0 {
		r.at++
	}
	switch {
	case r.at >= len(r.edge), (over == plan.Stitch || over == plan.FoundationCh) && r.edge[r.at] > 0:
		r.spent = true
	case over == plan.StitchChain && r.edge[r.at] > 0:
		if r.sub++; r.sub == r.edge[r.at] {
			r.at, r.sub = r.at+1, 0
		}
	default:
		r.at++
	}
}

func (r *reader) chains(n int) {
	if k := len(r.made) - 1; k >= 0 && r.made[k] > 0 && !r.apart {
		r.made[k] += n
	} else if n > 0 {
		r.made = append(r.made, n)
	}
	r.apart = r.apart && n == 0
}

func (r *reader) stitches(n int) {
	for range n {
		r.made, r.apart = append(r.made, 0), false
	}
}

// forms makes n of a form: a V stitch has a chain in its middle.
func (r *reader) forms(f stitch.Form, n int) {
	for range n {
		sts, spaces := f.Makes()
		for i := range sts {
			if i > 0 && spaces > 0 {
				r.apart = true
				r.chains(1)
			}
			r.stitches(1)
		}
	}
}

func (r *reader) instr(in *plan.Instr) {
	n := at(in.N, r.z, 1)
	switch {
	case in.Op == plan.Chains:
		r.chains(n)
		return
	case in.Op == plan.SlipOver:
		if len(r.made) == 0 {
			r.at += n // else the beginning chain went with it
		}
		return
	case in.Op == plan.Lengthen:
		r.stitches(n)
		return
	case in.Op == plan.ChangeTo, in.Op == plan.RideOn:
		return
	case !readable(in):
		r.ok = false
		return
	}
	switch in.Reach {
	case plan.ToEnd:
		r.far(in, len(r.edge))
	case plan.ToLast:
		r.far(in, len(r.edge)-at(in.Last, r.z, 1))
	default:
		if in.Reach == plan.Last && len(r.edge)-r.at != n {
			r.spent = true
		}
		for i := 0; i < n && r.ok && !r.spent; i++ {
			r.once(in)
		}
	}
}

// far works an instruction up to a place of the edge. What lies behind the last space is passed.
func (r *reader) far(in *plan.Instr, stop int) {
	for r.at < stop && r.ok && !r.spent {
		if in.Over == plan.Space && !slices.ContainsFunc(r.edge[r.at:stop], func(n int) bool { return n > 0 }) {
			r.at = stop
			return
		}
		before, chains := r.at, r.sub
		if r.once(in); r.at == before && r.sub == chains {
			r.ok = false // it never comes to an end
		}
	}
}

// readable reports whether the page alone says where an instruction goes.
func readable(in *plan.Instr) bool {
	switch in.Reach {
	case plan.Next, plan.Times, plan.Last, plan.ToEnd, plan.ToLast, plan.Same, plan.InRing:
	default:
		return false
	}
	switch in.Over {
	case plan.Stitch, plan.FoundationCh, plan.Space, plan.StitchSpace, plan.StitchChain, plan.RingPlace:
	default:
		return false
	}
	switch in.Op {
	case plan.Work, plan.Decrease, plan.CrossOver, plan.Repeat, plan.InOne, plan.SkipOver:
	default:
		return false
	}
	return (in.Ref == nil || in.Reach == plan.Next && in.Ref.Kind == plan.RefSpace) && in.Deep == 0 && in.Form.ID != stitch.Slip
}

// once works one place, one decrease or one pass.
func (r *reader) once(in *plan.Instr) {
	over := in.Over
	if in.Ref != nil {
		over = plan.Space // "in next corner": the next space
	}
	place := func() {
		switch in.Reach {
		case plan.Same:
		case plan.InRing:
			r.at = len(r.edge)
		default:
			r.take(over)
		}
	}
	switch in.Op {
	case plan.Work:
		place()
		r.forms(in.Form, at(in.Per, r.z, 1))
	case plan.Decrease:
		if in.Body != nil {
			made := len(r.made)
			r.list(in.Body)
			r.made = append(r.made[:made], 0)
			break
		}
		for range in.Form.Together {
			r.take(over)
		}
		r.stitches(1)
	case plan.CrossOver:
		for range in.Form.Of {
			r.take(over)
		}
		r.stitches(in.Form.Of)
	case plan.Repeat:
		r.list(in.Body)
	case plan.InOne:
		place()
		r.apart = in.Reach != plan.Same
		r.inside(in.Body)
	case plan.SkipOver:
		r.take(over)
	}
}

// inside works what goes into one place.
func (r *reader) inside(work []plan.Instr) {
	for i := range work {
		switch in := &work[i]; in.Op {
		case plan.Work:
			r.forms(in.Form, at(in.N, r.z, 1)*at(in.Per, r.z, 1))
		case plan.RideOn:
		case plan.Chains:
			r.chains(at(in.N, r.z, 1))
		default:
			r.ok = false
		}
	}
}

// tally counts what was made.
func (r *reader) tally() (stitches, spaces, chains int) {
	for _, n := range r.made {
		if n == 0 {
			stitches++
		} else {
			spaces, chains = spaces+1, chains+n
		}
	}
	return
}

// checkPage compares the page of a pattern with its fabric, and returns how many rows could be read: every row prints, and a
// maker who reads the page, row by row and every pass of every repeat, makes the stitches that were counted.
func checkPage(t failer, p *plan.Pattern) (read int) {
	for _, part := range p.Parts {
		for z := range p.Sizes {
			page := pageOf(part, z)
			for _, f := range part.Worked[z] {
				if page[f.Number] == nil && !(f.Number == 1 && f.Taken == 0) { // a foundation of stitches is row 1
					t.Fatalf("%s: row %d of size %s does not print", part.Name, f.Number, p.Sizes[z].Name)
				}
			}
			read += readRows(t, part, page, z)
		}
	}
	return read
}

func TestPageIsWorked(t *testing.T) {
	read := 0
	for _, path := range append(sources(t, casesAt+"/*.ovillo"), sources(t, "../examples/*.ovillo")...) {
		read += checkPage(t, checked(t, path))
	}
	if read < 3000 {
		t.Errorf("only %d rows could be read", read)
	}
}

// Repeats in repeats, runs of rows, spread shaping and notes, drawn at random, print as they are worked.
func TestPageOfDrawnPatterns(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := "sizes \"a\", \"b\"\nend\n\npart piece\n  title en \"P\" es \"P\"\n  base " + rapid.SampledFrom([]string{"sc", "dc"}).Draw(t, "base") +
			"\n  in " + rapid.SampledFrom([]string{"joined rounds", "rows"}).Draw(t, "style") + "\n  chain 160 (170)\n" + drawRows(t, 2) + "\nend\n"
		text = strings.ReplaceAll(text, "in joined rounds\n  chain 160 (170)", "in joined rounds\n  chain 160 (170), join")
		if strings.Contains(text, "in rows") {
			text = strings.ReplaceAll(text, "round", "row")
		}
		base := "sc"
		if strings.Contains(text, "base dc") {
			base = "dc"
		}
		text = strings.ReplaceAll(text, "ST", base)
		t.Log(text)
		if checkPage(t, clean(t, text)) == 0 {
			t.Fatalf("nothing of it can be read")
		}
	})
}

// drawRows is some statements of a part, ST standing for its stitch; deep bounds how far repeats stand in repeats.
func drawRows(t *rapid.T, deep int) string {
	var out []string
	for range rapid.IntRange(1, 3).Draw(t, "statements") {
		row := rapid.SampledFrom([]string{"ST in each", "inc, ST in each", "ST to last, inc", "inc 3 evenly", "inc 4 (5) evenly centred",
			"ST in next, dec, ST in each", "[ST in next 3, 2 ST in next] 2 (4) times, ST in each", "ST in next 7 (9), 2 ST in next, ST in each"}).Draw(t, "row")
		few := rapid.SampledFrom([]string{"0 (2)", "1", "2", "3 (1)", "3"}).Draw(t, "few")
		switch k := rapid.IntRange(0, 6).Draw(t, "kind"); {
		case k == 0:
			out = append(out, few+" rounds: "+row)
		case k == 1:
			out = append(out, "note\n en | A word.\n es | Algo.\n end")
		case k == 2:
			out = append(out, "only \"b\"\n round: inc, ST in each\n end")
		case k < 5 && deep > 0:
			out = append(out, "repeat "+few+" times\n"+drawRows(t, deep-1)+"\n end")
		default:
			out = append(out, "round: "+row)
		}
	}
	return strings.Join(append(out, "round: ST in each"), "\n")
}

// readRows works the page of a part in one size, and compares each row with what was counted.
func readRows(t failer, part *plan.Part, page map[int]*plan.Row, z int) (read int) {
	var edge []int // of the row before; nil: not known
	for _, f := range part.Worked[z] {
		row, before := page[f.Number], edge
		if edge = nil; before == nil {
			before = plainEdge(part, z, f)
		}
		r := reader{z: z}
		if row == nil || row.Back || before == nil || !r.row(row, before) {
			continue
		}
		sts, spaces, chains := r.tally()
		if sts != f.Stitches || spaces != f.Spaces || chains != f.Chains || r.spent || r.at != len(before) {
			t.Fatalf("%s row %d, size %d: the page makes %d stitches, %d spaces and %d chains and stops at %d of %d; counted %d, %d and %d",
				part.Name, f.Number, z, sts, spaces, chains, r.at, len(before), f.Stitches, f.Spaces, f.Chains)
		}
		read++
		switch edge = slices.Clone(r.made); {
		case !f.Closed:
			slices.Reverse(edge)
		case part.Style == plan.TurnedRounds && len(edge) > 0:
			slices.Reverse(edge[1:])
		}
	}
	return read
}

// plainEdge is the edge below a row if it is stitches alone; nil if it is not known.
func plainEdge(part *plan.Part, z int, f plan.RowFact) []int {
	below := factOf(part, z, f.Number-1)
	if below != nil && below.Spaces > 0 || below == nil && f.Number > 1 {
		return nil
	}
	return make([]int, f.Taken+f.Passed)
}

// pageOf is the printed row for every number of a part in one size.
func pageOf(part *plan.Part, z int) map[int]*plan.Row {
	out := map[int]*plan.Row{}
	put := func(r *plan.Row, number int) int {
		n := at(r.Times, z, 1)
		for i := range n {
			out[number+i] = r
		}
		return number + n
	}
	for _, s := range part.Steps {
		switch s := s.(type) {
		case *plan.Row:
			if s.First[z] != plan.Absent {
				put(s, s.First[z])
			}
		case *plan.Block:
			number := s.First[z]
			for range at(s.Times, z, 0) {
				for _, r := range s.Rows {
					if r.Times[z] != plan.Absent {
						number = put(r, number)
					}
				}
			}
		}
	}
	return out
}
