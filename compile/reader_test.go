package compile_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// reader works printed rows as a maker does who has only the page: so many places before it, so many stitches made. It reads
// rows of stitches over stitches; ok is false for one that it cannot read.
type reader struct {
	z, left, made int
	ok            bool
}

// row works a printed row over so many places.
func (r *reader) row(row *plan.Row, places int) (made, left int, ok bool) {
	*r = reader{z: r.z, left: places, ok: true}
	if row.Begin.Counts {
		r.left--
		r.made++
	}
	r.list(row.Work)
	return r.made, r.left, r.ok
}

func (r *reader) list(work []plan.Instr) {
	for i := range work {
		r.instr(&work[i])
	}
}

func (r *reader) instr(in *plan.Instr) {
	if in.Over != plan.Stitch && in.Over != plan.FoundationCh || in.Deep > 0 || in.Form.ID == stitch.Slip {
		r.ok = false
		return
	}
	n := at(in.N, r.z, 1)
	switch in.Reach {
	case plan.Next, plan.Times, plan.Last:
	case plan.ToEnd:
		n = r.times(in, r.left)
	case plan.ToLast:
		n = r.times(in, r.left-at(in.Last, r.z, 1))
	default:
		r.ok = false
		return
	}
	switch in.Op {
	case plan.Work:
		r.left, r.made = r.left-n, r.made+n*at(in.Per, r.z, 1)
	case plan.Decrease:
		r.left, r.made = r.left-n*in.Form.Together, r.made+n
	case plan.Repeat:
		for range n {
			r.list(in.Body)
		}
	case plan.SkipOver:
		r.left -= n
	default:
		r.ok = false
	}
}

// times is how often an instruction is worked over so many places.
func (r *reader) times(in *plan.Instr, places int) int {
	one := 1
	switch in.Op {
	case plan.Decrease:
		one = in.Form.Together
	case plan.Repeat:
		body := reader{z: r.z, left: places, ok: true}
		body.list(in.Body)
		one = places - body.left
	}
	if one < 1 {
		r.ok = false
		return 0
	}
	return places / one // what is left over shows at the end
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
			for number, row := range page {
				fact := factOf(part, z, number)
				if fact == nil {
					t.Fatalf("%s prints a row %d that size %s does not have", part.Name, number, p.Sizes[z].Name)
				}
				r := reader{z: z}
				made, left, ok := r.row(row, fact.Taken+fact.Passed)
				if ok && (made != fact.Stitches || left != 0) {
					t.Fatalf("%s row %d, size %s: the page makes %d and leaves %d, counted %d", part.Name, number, p.Sizes[z].Name, made, left, fact.Stitches)
				}
				if ok {
					read++
				}
			}
		}
	}
	return read
}

func TestPageIsWorked(t *testing.T) {
	read := 0
	for _, path := range append(sources(t, casesAt+"/*.ovillo"), sources(t, "../examples/*.ovillo")...) {
		read += checkPage(t, checked(t, path))
	}
	if read < 2000 {
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
