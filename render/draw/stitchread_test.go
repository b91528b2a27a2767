package draw

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"sort"
	"strings"
	"testing"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/scene"
)

// wanted is what should be seen in a row.
func wanted(l *plan.Line) (says []string, chains []int, dots int) {
	if l.Joined && !closesItself(l) {
		dots++
	}
	for _, w := range l.Stitches {
		switch {
		case w.Kind == plan.WorkedSlip:
			dots++
		case w.Kind == plan.WorkedSpace, w.Kind == plan.WorkedBegin:
			chains = append(chains, max(w.Chains, 1))
		case w.Begin:
			chains = append(chains, max(w.Chains, 1))
		case w.Kind == plan.WorkedStitch && w.Form.ID == stitch.Slip:
			dots++
		case w.Kind == plan.WorkedStitch && w.Form.ID == stitch.Chain:
			chains = append(chains, 1)
		case w.Kind == plan.WorkedStitch:
			says = append(says, looksLike(w.Form, len(w.Feet)))
			if len(w.Feet) == 0 {
				chains = append(chains, 1) // its own chain
			}
		}
	}
	sort.Ints(chains)
	return says, chains, dots
}

func closesItself(l *plan.Line) bool {
	n := len(l.Stitches)
	return n > 0 && l.Stitches[n-1].Kind == plan.WorkedSlip && len(l.Stitches[n-1].Feet) > 0 && l.Stitches[n-1].Feet[0].At == 0
}

// looksLike is how the reader names a form: what it cannot tell apart, since custom draws it alike, has one name.
func looksLike(f stitch.Form, feet int) string {
	k, known := stitch.Of(f.ID)
	if !known {
		return "own"
	}
	name := string(f.ID)
	tail := map[stitch.Post]string{stitch.FrontPost: " front", stitch.BackPost: " back"}[f.Post] +
		map[stitch.Loop]string{stitch.BackLoop: " back loop", stitch.FrontLoop: " front loop", stitch.ThirdLoop: " third loop"}[f.Loop]
	if f.Group.Closed() {
		slashes := k.Slashes * f.Of
		if k.Symbol == stitch.Cross {
			slashes = f.Of
		}
		name = fmt.Sprintf("bunch of %d with %d", f.Of, slashes)
		if f.Group == stitch.Popcorn {
			name = "popcorn: " + name
		}
		return name + tail
	}
	if n := feet; f.Together > 1 && n > 1 {
		name += fmt.Sprint(n, "tog")
	}
	return name + tail
}

// chainReach is how far the chain in the middle of an oval goes to either side, as it is drawn.
func chainReach(sheet *scene.Scene) float64 {
	for _, g := range sheet.Groups {
		if g.Name == "below" {
			return extent(sheet.Items[g.From:g.To]).width()/2 - chainWide/2
		}
	}
	return 0
}

// readBack reads every row of a chart from its drawing and compares it with the plan. It returns how many stitches were read and what
// differs.
func readBack(p *plan.Pattern, s *plan.Stitches, sheet *scene.Scene) (int, []string) {
	var wrong []string
	read := 0
	r := chartReader{k: scaleOf(sheet), up: func(vec) vec { return vec{0, -1} }}
	if s.Outward {
		middle := middleOf(s, sheet)
		reach := 0.0
		if s.Start == plan.StartBothSides { // away from the nearest point of the chain
			reach = chainReach(sheet)
		}
		r.up = func(v vec) vec { return v.sub(vec{clamp(v.x, middle.x-reach, middle.x+reach), middle.y}).unit() }
	}
	groups := map[string]scene.Group{}
	for _, g := range sheet.Groups {
		groups[g.Name] = g
	}
	for i := range s.Lines {
		l := &s.Lines[i]
		if l.Base || l.Number == 0 {
			continue
		}
		name := fmt.Sprintf("%s %d", map[bool]string{true: "round", false: "row"}[l.Closed], l.Number)
		g, ok := groups[name]
		if !ok {
			if len(l.Stitches) > 0 {
				wrong = append(wrong, name+" is not drawn")
			}
			continue
		}
		got := r.read(sheet.Items[g.From:g.To])
		says, chains, dots := wanted(l)
		want := seen{chains: chains, dots: dots}
		for _, w := range says {
			want.stitches = append(want.stitches, seenStitch{says: w})
		}
		read += len(says)
		if got.String() != want.String() {
			wrong = append(wrong, fmt.Sprintf("%s: drawn %s; worked %s", name, got, want))
			continue
		}
		if d := orderDiffers(s, l, got, says, r); d != "" {
			wrong = append(wrong, name+": "+d)
		}
	}
	return read, wrong
}

// scaleOf finds the scale of a drawing by the thickness of its strokes.
func scaleOf(s *scene.Scene) float64 {
	most := 0.0
	for _, g := range s.Groups {
		for _, it := range s.Items[g.From:g.To] {
			if p, ok := it.(scene.Path); ok && p.Stroke != nil && p.Round {
				most = max(most, p.Width)
			}
		}
	}
	return most / symbolLine
}

// middleOf is the middle of rounds: that of what is drawn first.
func middleOf(_ *plan.Stitches, s *scene.Scene) vec {
	for _, g := range s.Groups {
		var b box
		for _, m := range marksOf(s.Items[g.From:g.To]) {
			for _, v := range m.fine {
				b.add(v)
			}
		}
		if b.full {
			return b.middle()
		}
	}
	return vec{}
}

// orderDiffers compares the order in which symbols stand with that in which they were made.
func orderDiffers(s *plan.Stitches, l *plan.Line, got seen, says []string, r chartReader) string {
	list := slices.Clone(got.stitches)
	along := func(v vec) float64 { return -v.x }
	if s.Outward && l.Closed {
		along = func(v vec) float64 {
			up := r.up(v)
			a := math.Atan2(-up.x, -up.y)
			return a
		}
	}
	slices.SortStableFunc(list, func(a, b seenStitch) int {
		switch d := along(a.head) - along(b.head); {
		case d < -1e-9:
			return -1
		case d > 1e-9:
			return 1
		}
		return 0
	})
	if l.FromLeft {
		slices.Reverse(list)
	}
	var order []string
	for _, st := range list {
		order = append(order, st.says)
	}
	if l.FromLeft && l.Closed && !s.Outward { // what was made first stands over the join, at the right
		slices.Reverse(order)
		says = nil
		for _, k := range l.RightToLeft() {
			if w := &l.Stitches[k]; w.Kind == plan.WorkedStitch && !w.Begin && w.Form.ID != stitch.Slip && w.Form.ID != stitch.Chain {
				says = append(says, looksLike(w.Form, len(w.Feet)))
			}
		}
	}
	a, b := strings.Join(order, " "), strings.Join(says, " ")
	if a == b {
		return ""
	}
	if s.Outward && l.Closed && len(order) == len(says) && strings.Contains(" "+b+" "+b+" ", " "+a+" ") {
		return "" // a round may begin anywhere
	}
	return fmt.Sprintf("they stand as %s; made as %s", a, b)
}

// drawnAll are all parts of all examples, cases and of our own sources, as charts.
func drawnAll(t testing.TB) map[string]*plan.Pattern {
	t.Helper()
	out := map[string]*plan.Pattern{}
	for _, glob := range []string{"testdata/symbols.ovillo", "../../examples/*.ovillo", "../../testdata/cases/*.ovillo"} {
		files, err := filepath.Glob(glob)
		if err != nil || len(files) == 0 {
			t.Fatal("no sources", err)
		}
		for _, path := range files {
			text, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			name := strings.TrimSuffix(filepath.Base(path), ".ovillo")
			tree, _ := lang.Parse(source.NewFile(path, string(text)))
			p, found := compile.Compile(tree)
			if found.HasErrors() {
				t.Fatalf("%s has errors", path)
			}
			more := string(text)
			word, end := "chart", "end"
			of := "of"
			if strings.HasPrefix(more, "idioma es") {
				word, end, of = "gráfico", "fin", "de"
			}
			for _, part := range p.Parts {
				if part.Grid != nil {
					continue
				}
				one := fmt.Sprintf("%s\n%s zz_%s %s %s\n%s\n", more, word, part.Name, of, part.Name, end)
				tree, _ := lang.Parse(source.NewFile(path, one))
				if _, found := compile.Compile(tree); !found.HasErrors() {
					more = one
				}
			}
			tree, _ = lang.Parse(source.NewFile(path, more))
			if p, found = compile.Compile(tree); found.HasErrors() {
				t.Fatalf("%s has errors with its charts", path)
			}
			out[name] = p
		}
	}
	return out
}

// Whatever part of whatever source is drawn, in whatever size: read back from its lines alone, each row has the stitches that were
// made, in their order.
func TestChartsReadBack(t *testing.T) {
	read, charts := 0, 0
	for name, p := range drawnAll(t) {
		for i, d := range p.Drawn {
			for z := range p.Sizes {
				whole := strings.HasPrefix(d.Name, "zz_")
				if p.Shown = z; z > 0 && d.Same || whole && z > 0 && z < len(p.Sizes)-1 {
					continue
				}
				sheets := StitchChart(p, i, math.Inf(1), math.Inf(1))
				if sheets == nil {
					continue
				}
				n, wrong := readBack(p, d.Sizes[z], sheets[0])
				for k, w := range wrong {
					if k == 4 {
						t.Errorf("%s, %s, %s: and %d more rows", name, d.Name, p.Sizes[z].Name, len(wrong)-4)
						break
					}
					t.Errorf("%s, %s, %s: %s", name, d.Name, p.Sizes[z].Name, cutTo(w, 600))
				}
				read, charts = read+n, charts+1
			}
		}
	}
	t.Logf("%d stitches in %d charts", read, charts)
	if read < 40_000 || charts < 60 {
		t.Errorf("only %d stitches in %d charts were read", read, charts)
	}
}

func cutTo(s string, n int) string {
	if len(s) > n {
		return s[:n] + " …"
	}
	return s
}
