package draw

import (
	"fmt"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/page"
	"ovillo/render/scene"
)

// chartOf is a pattern with one chart.
func chartOf(s *plan.Stitches) *plan.Pattern {
	return &plan.Pattern{Title: plan.Text{"en": "Trial"}, Sizes: []plan.Size{{Name: "S"}}, Own: []plan.OwnStitch{{ID: "pebble", Names: plan.Text{"en": "pebble stitch", "es": "punto guijarro"}, Tall: stitch.DC}},
		Drawn: []*plan.StitchChart{{Name: "trial", Title: plan.Text{"en": "Trial", "es": "Prueba"}, Part: -1, Sizes: []*plan.Stitches{s}}}}
}

func stitchOf(f stitch.Form, at ...int) plan.Worked {
	w := plan.Worked{Kind: plan.WorkedStitch, Form: f, Yarn: -1}
	for _, a := range at {
		w.Feet = append(w.Feet, plan.Foot{At: a})
	}
	return w
}

// overChain is a chart over a chain whose rows go into one another.
func overChain(n int, rows ...[]plan.Worked) *plan.Stitches {
	s := &plan.Stitches{}
	base := plan.Line{Base: true}
	for range n {
		base.Stitches = append(base.Stitches, stitchOf(stitch.Plain(stitch.Chain)))
	}
	s.Lines = append(s.Lines, base)
	for i, row := range rows {
		line := plan.Line{Number: i + 1, FromLeft: i%2 == 1, Wrong: i%2 == 1, Stitches: row}
		for k := range row {
			for f := range row[k].Feet {
				row[k].Feet[f].Line = i
			}
		}
		s.Lines = append(s.Lines, line)
	}
	return s
}

// everyForm is a row with a stitch of every form that has a symbol, three plain ones between them.
func everyForm() *plan.Stitches {
	var row []plan.Worked
	at := 0
	next := func(f stitch.Form, n int) {
		w := plan.Worked{Kind: plan.WorkedStitch, Form: f, Yarn: -1}
		for range n {
			w.Feet = append(w.Feet, plan.Foot{At: at})
			at++
		}
		row = append(row, w)
	}
	for _, k := range stitch.Table {
		if !k.Body && k.ID != stitch.RSC {
			continue
		}
		for _, f := range []stitch.Form{{ID: k.ID}, {ID: k.ID, Post: stitch.FrontPost}, {ID: k.ID, Post: stitch.BackPost}, {ID: k.ID, Loop: stitch.FrontLoop},
			{ID: k.ID, Loop: stitch.BackLoop}, {ID: k.ID, Loop: stitch.ThirdLoop}, {ID: k.ID, Together: 2}, {ID: k.ID, Together: 3},
			{ID: k.ID, Group: stitch.Cluster, Of: 3}, {ID: k.ID, Group: stitch.Popcorn, Of: 4}} {
			if k.Back && (f.Post != 0 || f.Together > 0 || f.Group != 0) || k.Extends != "" && f.Group != 0 {
				continue
			}
			f.Together = max(f.Together, 1)
			next(f, f.Together)
			next(stitch.Plain(stitch.SC), 1)
		}
	}
	return overChain(at, row)
}

// Every form is read back as what it is.
func TestEveryFormReadsBack(t *testing.T) {
	s := everyForm()
	p := chartOf(s)
	n, wrong := readBack(p, s, StitchChart(p, 0, math.Inf(1), math.Inf(1))[0])
	if n < 150 || len(wrong) > 0 {
		t.Errorf("%d forms: %v", n, wrong)
	}
}

// What is drawn otherwise than it was worked is found: one stitch of another kind, one too few, two that changed places, a chain
// more, another post or loop, another foot shared; and lines that were taken out of the drawing or turned.
func TestTamperedChartsAreFound(t *testing.T) {
	dc, sc := stitch.Plain(stitch.DC), stitch.Plain(stitch.SC)
	fp := stitch.Form{ID: stitch.DC, Post: stitch.FrontPost, Together: 1}
	bp, flo, blo := fp, sc, sc
	bp.Post, flo.Loop, blo.Loop = stitch.BackPost, stitch.FrontLoop, stitch.BackLoop
	make := func() *plan.Stitches {
		space := plan.Worked{Kind: plan.WorkedSpace, Form: stitch.Plain(stitch.Chain), Chains: 3}
		return overChain(12, []plan.Worked{stitchOf(dc, 0), stitchOf(sc, 1), stitchOf(fp, 2), stitchOf(blo, 3), stitchOf(dc, 4), stitchOf(dc, 4), space, stitchOf(sc, 8),
			stitchOf(stitch.Form{ID: stitch.DC, Together: 2}, 9, 10), stitchOf(stitch.Plain(stitch.TR), 11), {Kind: plan.WorkedSlip, Form: stitch.Plain(stitch.Slip)}})
	}
	whole := make()
	p := chartOf(whole)
	fine := StitchChart(p, 0, math.Inf(1), math.Inf(1))[0]
	if _, wrong := readBack(p, whole, fine); len(wrong) > 0 {
		t.Fatalf("what is right is found wrong: %v", wrong)
	}
	for name, spoil := range map[string]func(l []plan.Worked) []plan.Worked{
		"kind":      func(l []plan.Worked) []plan.Worked { l[0].Form = stitch.Plain(stitch.HDC); return l },
		"lost":      func(l []plan.Worked) []plan.Worked { return slices.Delete(l, 1, 2) },
		"order":     func(l []plan.Worked) []plan.Worked { l[0].Form, l[1].Form = l[1].Form, l[0].Form; return l },
		"chains":    func(l []plan.Worked) []plan.Worked { l[6].Chains = 4; return l },
		"no chains": func(l []plan.Worked) []plan.Worked { return slices.Delete(l, 6, 7) },
		"post":      func(l []plan.Worked) []plan.Worked { l[2].Form = bp; return l },
		"loop":      func(l []plan.Worked) []plan.Worked { l[3].Form = flo; return l },
		"legs":      func(l []plan.Worked) []plan.Worked { l[8].Form.Together, l[8].Feet = 1, l[8].Feet[:1]; return l },
		"tall":      func(l []plan.Worked) []plan.Worked { l[9].Form = stitch.Plain(stitch.DTR); return l },
		"slip":      func(l []plan.Worked) []plan.Worked { return l[:10] },
		"cluster":   func(l []plan.Worked) []plan.Worked { l[4].Form.Group, l[4].Form.Of = stitch.Cluster, 3; return l },
	} {
		other := make()
		other.Lines[1].Stitches = spoil(other.Lines[1].Stitches)
		q := chartOf(other)
		if _, wrong := readBack(p, whole, StitchChart(q, 0, math.Inf(1), math.Inf(1))[0]); len(wrong) == 0 {
			t.Errorf("%s: not found", name)
		}
	}
	// Any line that is taken out, and any that is mirrored, is found.
	g := fine.Groups[1]
	for n, m := range marksOf(fine.Items[g.From:g.To]) {
		var items []scene.Item
		at := -1
		for _, it := range fine.Items {
			if path, ok := it.(scene.Path); ok && slices.Contains(fine.Items[g.From:g.To], scene.Item(nil)) == false {
				var cmds []page.Cmd
				in := itemIn(fine.Items[g.From:g.To], it)
				for _, c := range path.Cmds {
					if c.Op == 'M' && in {
						at++
					}
					if !in || at != n {
						cmds = append(cmds, c)
					}
				}
				path.Cmds = cmds
				it = path
			}
			items = append(items, it)
		}
		spoilt := *fine
		spoilt.Items = items
		if _, wrong := readBack(p, whole, &spoilt); len(wrong) == 0 {
			t.Errorf("line %d, %v, was taken out and is not missed", n, m.pts)
		}
	}
	if _, wrong := readBack(p, whole, fine.Mirrored()); len(wrong) == 0 {
		t.Error("a mirrored chart reads as if it were not")
	}
}

func itemIn(list []scene.Item, it scene.Item) bool {
	path, ok := it.(scene.Path)
	return ok && slices.ContainsFunc(list, func(o scene.Item) bool {
		q, ok := o.(scene.Path)
		return ok && len(q.Cmds) > 0 && len(path.Cmds) > 0 && &q.Cmds[0] == &path.Cmds[0]
	})
}

// A chart that is mirrored has its numbers where its rows begin, and they stay readable.
func TestMirroredChart(t *testing.T) {
	s := overChain(5, []plan.Worked{stitchOf(stitch.Plain(stitch.SC), 0), stitchOf(stitch.Plain(stitch.SC), 1)})
	one := StitchChart(chartOf(s), 0, math.Inf(1), math.Inf(1), both...)[0]
	m := one.Mirrored()
	if len(m.Groups) != len(one.Groups) || m.Groups[1] != one.Groups[1] {
		t.Error("rows are lost")
	}
	find := func(s *scene.Scene) scene.Label {
		for _, it := range s.Items {
			if l, ok := it.(scene.Label); ok && l.Text == "1" {
				return l
			}
		}
		t.Fatal("no number")
		return scene.Label{}
	}
	if a, b := find(one), find(m); math.Abs(a.X+b.X-one.W) > 1e-9 || a.X < one.W/2 || b.X > one.W/2 {
		t.Errorf("number at %.1f and %.1f of %.1f", a.X, b.X, one.W)
	}
}

// A chart too large for a sheet is on several, each within its room. What is on none is lost; what two have in common is their overlap.
func TestLargeChartsAreCut(t *testing.T) {
	const n, rows, w, h = 90, 70, 174.0, 240.0
	var all [][]plan.Worked
	for i := range rows {
		var row []plan.Worked
		for k := range n {
			at := k
			if i > 0 {
				at = n - 1 - k
			}
			row = append(row, stitchOf(stitch.Plain([]stitch.ID{stitch.SC, stitch.DC}[i%2]), at))
		}
		all = append(all, row)
	}
	s := overChain(n, all...)
	p := chartOf(s)
	sheets := StitchChart(p, 0, w, h, both...)
	if len(sheets) < 4 {
		t.Fatalf("%d sheets", len(sheets))
	}
	counted := map[string]int{}
	for i, one := range sheets {
		if one.W > w+1e-6 || one.H > h+1e-6 {
			t.Errorf("sheet %d is %.1f by %.1f mm", i+1, one.W, one.H)
		}
		b := inked(one)
		for _, l := range labels(one) {
			b.join(labelBox(l))
		}
		if b.min.x < -0.01 || b.min.y < -0.01 || b.max.x > one.W+0.01 || b.max.y > one.H+0.01 {
			t.Errorf("sheet %d: %v lies outside %.1f by %.1f", i+1, b, one.W, one.H)
		}
		r := chartReader{k: scaleOf(one), up: func(vec) vec { return vec{0, -1} }}
		if r.k < leastScale {
			t.Errorf("sheet %d is drawn at %.2f", i+1, r.k)
		}
		numbers := map[string]bool{}
		for _, it := range one.Items {
			if l, ok := it.(scene.Label); ok {
				numbers[l.Text] = true
			}
		}
		if !numbers[fmt.Sprintf("%d/%d", i+1, len(sheets))] {
			t.Errorf("sheet %d does not say which it is", i+1)
		}
		for _, g := range one.Groups {
			got := r.read(one.Items[g.From:g.To])
			for _, st := range got.stitches {
				if st.says != "sc" && st.says != "dc" {
					t.Errorf("sheet %d, %s: %s", i+1, g.Name, st.says)
				}
			}
			counted[g.Name] += len(got.stitches)
			if g.Name != "below" && !numbers[strings.TrimPrefix(g.Name, "row ")] {
				t.Errorf("sheet %d: %s has no number", i+1, g.Name)
			}
		}
	}
	for i := 1; i <= rows; i++ {
		if c := counted[fmt.Sprint("row ", i)]; c < n || c > 3*n {
			t.Errorf("row %d has %d stitches on all sheets", i, c)
		}
	}
	// It fits one sheet where it is legible at that scale.
	small := overChain(30, all[0][:30])
	if got := StitchChart(chartOf(small), 0, w, h); len(got) != 1 || got[0].W > w {
		t.Errorf("a small chart is on %d sheets", len(got))
	}
}

// One sheet without limits is drawn at the natural scale.
func TestNaturalScale(t *testing.T) {
	s := overChain(3, []plan.Worked{stitchOf(stitch.Plain(stitch.DC), 0)})
	got := StitchChart(chartOf(s), 0, math.Inf(1), math.Inf(1))
	if len(got) != 1 || math.Abs(scaleOf(got[0])-1) > 1e-9 {
		t.Errorf("%d sheets, scale %v", len(got), scaleOf(got[0]))
	}
}

// A large chart stays a bounded drawing: two paths and two texts a row, whatever it has in it.
func TestLargeChartsStaySmall(t *testing.T) {
	const rounds = 60
	s := &plan.Stitches{Outward: true, Start: plan.StartRing, Lines: []plan.Line{{Base: true, Closed: true, Stitches: []plan.Worked{{Kind: plan.WorkedRing}}}}}
	for i := range rounds {
		line := plan.Line{Number: i + 1, Closed: true}
		for k := range 6 * max(i, 1) {
			for range map[bool]int{true: 2, false: 1}[i > 0 && k%i == 0] {
				at := k
				if i == 0 {
					at = 0
				}
				w := stitchOf(stitch.Plain(stitch.SC), at)
				w.Feet[0].Line = i
				line.Stitches = append(line.Stitches, w)
			}
		}
		s.Lines = append(s.Lines, line)
	}
	one := StitchChart(chartOf(s), 0, math.Inf(1), math.Inf(1))[0]
	if len(one.Items) > 4*(rounds+2) {
		t.Errorf("%d items", len(one.Items))
	}
	cmds := 0
	for _, it := range one.Items {
		if p, ok := it.(scene.Path); ok {
			cmds += len(p.Cmds)
		}
	}
	if stitches := 6 * rounds * (rounds + 1) / 2; cmds > 6*stitches {
		t.Errorf("%d steps for %d stitches", cmds, stitches)
	}
	if n, wrong := readBack(chartOf(s), s, one); n < 10_000 || len(wrong) > 0 {
		t.Errorf("%d stitches; %v", n, wrong[:min(len(wrong), 3)])
	}
}

// large is 20,000 stitches in rows.
func large() *plan.Pattern {
	const n = 200
	var all [][]plan.Worked
	for i := range 100 {
		var row []plan.Worked
		for k := range n {
			at := k
			if i > 0 {
				at = n - 1 - k
			}
			row = append(row, stitchOf(stitch.Plain(stitch.DC), at))
		}
		all = append(all, row)
	}
	return chartOf(overChain(n, all...))
}

// A chart of 20,000 stitches takes a bounded number of allocations for each of them.
func TestLargeChartsAreCheap(t *testing.T) {
	p := large()
	per := testing.AllocsPerRun(1, func() { StitchChart(p, 0, 180, 250) }) / 20_000
	if per > 30 {
		t.Errorf("%.0f allocations a stitch", per)
	}
}

func BenchmarkLargeChart(b *testing.B) {
	p := large()
	b.ReportAllocs()
	for b.Loop() {
		StitchChart(p, 0, 180, 250)
	}
}

// What no source brings about is drawn or is not, and never a panic.
func TestHostileCharts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := &plan.Stitches{Outward: rapid.Bool().Draw(t, "outward"), CutLeft: true, CutRight: true, Repeat: plan.ChartRepeat{From: 1, N: 2, Times: 3}}
		for i := range rapid.IntRange(0, 5).Draw(t, "lines") {
			line := plan.Line{Number: i, Closed: rapid.Bool().Draw(t, "closed"), Joined: rapid.Bool().Draw(t, "joined"), FromLeft: rapid.Bool().Draw(t, "left"), Base: rapid.IntRange(0, 4).Draw(t, "base") == 0}
			for range rapid.IntRange(0, 8).Draw(t, "stitches") {
				w := plan.Worked{Kind: plan.WorkedKind(rapid.IntRange(0, 7).Draw(t, "kind")), Chains: rapid.IntRange(-2, 40).Draw(t, "chains"), Begin: rapid.Bool().Draw(t, "begin"),
					Form: stitch.Form{ID: rapid.SampledFrom([]stitch.ID{"sc", "dc", "tr", "ch", "slst", "rsc", "esc", "pebble", ""}).Draw(t, "id"), Post: stitch.Post(rapid.IntRange(0, 2).Draw(t, "post")),
						Loop: stitch.Loop(rapid.IntRange(0, 3).Draw(t, "loop")), Together: rapid.IntRange(-1, 30).Draw(t, "together"),
						Group: stitch.Group(rapid.IntRange(0, 9).Draw(t, "group")), Of: rapid.IntRange(-1, 30).Draw(t, "of")}}
				for range rapid.IntRange(0, 3).Draw(t, "feet") {
					w.Feet = append(w.Feet, plan.Foot{Line: rapid.IntRange(-2, 7).Draw(t, "line"), At: rapid.IntRange(-2, 9).Draw(t, "at"), Into: plan.FootInto(rapid.IntRange(0, 6).Draw(t, "into")), Chain: rapid.IntRange(-2, 9).Draw(t, "chain")})
				}
				if rapid.IntRange(0, 5).Draw(t, "ride") == 0 {
					w.Rides = []stitch.Form{{ID: stitch.Chain, Group: stitch.Picot, Of: rapid.IntRange(-1, 9).Draw(t, "picot")}}
				}
				line.Stitches = append(line.Stitches, w)
			}
			s.Lines = append(s.Lines, line)
		}
		p := chartOf(s)
		for _, one := range StitchChart(p, 0, 60, 60, both...) {
			for _, it := range one.Items {
				if path, ok := it.(scene.Path); ok {
					for _, c := range path.Cmds {
						for _, v := range c.P {
							if math.IsNaN(v.X+v.Y) || math.IsInf(v.X+v.Y, 0) {
								t.Fatalf("a number is none in %+v: %+v", path, s)
							}
						}
					}
				}
			}
		}
		StitchKey(p, 0, both...)
	})
	if StitchChart(&plan.Pattern{}, 0, 10, 10) != nil || StitchKey(&plan.Pattern{}, 3) != nil || StitchChart(chartOf(nil), 0, 10, 10) != nil {
		t.Error("what is not there is drawn")
	}
}

// The key has each symbol of the chart once, in both languages, with a symbol that is drawn; a chart and its key say the same.
func TestKeyHasWhatIsDrawn(t *testing.T) {
	text, err := os.ReadFile("testdata/symbols.ovillo")
	if err != nil {
		t.Fatal(err)
	}
	p := compiled(t, "symbols", string(text))
	for i, d := range p.Drawn {
		says := map[string]bool{}
		items := StitchKey(p, i, both...)
		for _, k := range items {
			if k.Symbol == nil || len(k.Symbol.Items) == 0 || len(k.Says) != 2 {
				t.Errorf("%s: %v is not drawn or not said", d.Name, k.Says)
			}
			for tag, text := range k.Says {
				if text == "" || says[tag+text] {
					t.Errorf("%s: %q is said twice, or nothing is", d.Name, text)
				}
				says[tag+text] = true
			}
		}
		if len(items) < 3 {
			t.Errorf("%s: %d symbols", d.Name, len(items))
		}
	}
}
