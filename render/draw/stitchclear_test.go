package draw

import (
	"fmt"
	"math"
	"os"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/chart"
	"ovillo/render/font"
	"ovillo/render/scene"
)

// stretchOf is a straight stretch of a symbol.
type stretchOf struct {
	a, b       vec
	line, at   int
	feet, head []vec
}

// strokesOf are the strokes of every symbol of a chart by themselves, at the natural scale.
func strokesOf(p *plan.Pattern, i int) []stretchOf {
	s := stitchesOf(p, i)
	c := chart.Lay(s, tallOwn(p), numberEm/chartUnit)
	var out []stretchOf
	for k := range c.Lines {
		for j := range c.Lines[k].Stitches {
			st := &c.Lines[k].Stitches[j]
			if s.Lines[k].Base && s.Lines[k].Stitches[j].Form.ID != "ch" {
				continue
			}
			q := &chartPen{symbolChart: &symbolChart{p: p, s: s, c: c, own: ownLetters(p)}, pen: &pen{scale: 1}, t: tile{scale: 1}, em: numberEm}
			q.worked(&s.Lines[k].Stitches[j], st)
			one := stretchOf{line: k, at: j, head: []vec{mm(st.Head)}}
			for _, f := range st.Feet {
				one.feet = append(one.feet, mm(f))
			}
			for _, it := range q.items {
				path, ok := it.(scene.Path)
				if !ok {
					continue
				}
				for _, run := range flatten(path.Cmds) {
					for n := 1; n < len(run.pts); n++ {
						one.a, one.b = run.pts[n-1], run.pts[n]
						out = append(out, one)
					}
				}
			}
		}
	}
	return out
}

// tangled are the pairs of symbols whose strokes cross, but where they share a foot or a head.
func tangled(all []stretchOf) []string {
	const cell = 4.0
	grid := map[[2]int][]int{}
	for n, s := range all {
		lo, hi := boxOf([]vec{s.a, s.b}).min, boxOf([]vec{s.a, s.b}).max
		for x := math.Floor(lo.x / cell); x*cell <= hi.x; x++ {
			for y := math.Floor(lo.y / cell); y*cell <= hi.y; y++ {
				grid[[2]int{int(x), int(y)}] = append(grid[[2]int{int(x), int(y)}], n)
			}
		}
	}
	found := map[string]bool{}
	var out []string
	for _, list := range grid {
		for n, i := range list {
			for _, j := range list[:n] {
				a, b := all[i], all[j]
				if a.line == b.line && a.at == b.at || !meet(a.a, a.b, b.a, b.b) {
					continue
				}
				at := a.a.to(a.b, 0.5)
				shared := false
				for _, v := range append(append([]vec{}, a.feet...), a.head...) {
					for _, w := range append(append([]vec{}, b.feet...), b.head...) {
						shared = shared || v.sub(w).length() < 0.01 && at.sub(v).length() < 3
					}
				}
				if shared {
					continue
				}
				name := fmt.Sprintf("%d.%d and %d.%d", min(a.line, b.line), a.at, max(a.line, b.line), b.at)
				if !found[name] {
					found[name] = true
					out = append(out, fmt.Sprintf("%s near (%.1f, %.1f)", name, at.x, at.y))
				}
			}
		}
	}
	return out
}

// In rows, in discs, in figures and in ovals no symbol lies on another. Cables are there to cross, and spikes to go down over rows.
func TestSymbolsDoNotCross(t *testing.T) {
	text, err := os.ReadFile("testdata/symbols.ovillo")
	if err != nil {
		t.Fatal(err)
	}
	p := compiled(t, "symbols", string(text))
	looked := 0
	for i, d := range p.Drawn {
		if d.Name == "c_cables" || d.Name == "c_groups" {
			continue
		}
		all := strokesOf(p, i)
		looked += len(all)
		if bad := tangled(all); len(bad) > 0 {
			t.Errorf("%s: %d symbols cross: %v", d.Name, len(bad), bad[:min(len(bad), 8)])
		}
	}
	if looked < 2000 {
		t.Errorf("only %d strokes", looked)
	}
	// The test sees what crosses.
	for i, d := range p.Drawn {
		if d.Name == "c_cables" && len(tangled(strokesOf(p, i))) == 0 {
			t.Error("cables do not cross")
		}
	}
}

// Nor do they in the charts that the examples draw, in any size; cables apart.
func TestSymbolsOfExamplesDoNotCross(t *testing.T) {
	looked := 0
	for name, p := range sources(t) {
		for z := range p.Sizes {
			p.Shown = z
			for i, d := range p.Drawn {
				if d.Sizes[z] == nil || z > 0 && d.Same || name == "jarcia-headband" {
					continue
				}
				all := strokesOf(p, i)
				looked += len(all)
				if bad := tangled(all); len(bad) > 0 {
					t.Errorf("%s, %s, %s: %d symbols cross: %v", name, d.Name, p.Sizes[z].Name, len(bad), bad[:min(len(bad), 8)])
				}
			}
		}
	}
	if looked < 1000 {
		t.Errorf("only %d strokes", looked)
	}
}

// Numbers and counts stand clear of all strokes and of each other, at the natural scale and where symbols are small, in the file of kinds
// and in the charts of the examples.
func TestNumbersStandClear(t *testing.T) {
	text, err := os.ReadFile("testdata/symbols.ovillo")
	if err != nil {
		t.Fatal(err)
	}
	all := sources(t)
	all["symbols"] = compiled(t, "symbols", string(text))
	looked := 0
	for name, p := range all {
		for i, d := range p.Drawn {
			for _, w := range []float64{math.Inf(1), 60} {
				for _, s := range StitchChart(p, i, w, math.Inf(1)) {
					looked += numbersClear(t, fmt.Sprintf("%s, %s, %.0f mm", name, d.Name, w), s)
				}
			}
		}
	}
	if looked < 100 {
		t.Errorf("only %d texts", looked)
	}
}

// numbersClear looks at the texts of one sheet, and says how many there are.
func numbersClear(t *testing.T, at string, s *scene.Scene) int {
	t.Helper()
	lines := strokesIn(s.Items)
	var boxes []box
	var texts []string
	for _, l := range labels(s) {
		wide := font.Of(l.Face).Width(l.Text, l.Height*72/25.4)
		x := l.X - map[scene.Anchor]float64{scene.Middle: 0.5, scene.End: 1}[l.Anchor]*wide
		boxes = append(boxes, box{vec{x, l.Y - l.Height*0.4}, vec{x + wide, l.Y + l.Height*0.4}, true})
		texts = append(texts, l.Text)
	}
	for k, b := range boxes {
		if n := struck(b, lines); n > 0 {
			t.Errorf("%s: %q is struck by %d strokes", at, texts[k], n)
		}
		for j := range boxes[:k] {
			if b.grown(0.2).overlaps(boxes[j].grown(0.2)) {
				t.Errorf("%s: %q and %q run together", at, texts[k], texts[j])
			}
		}
	}
	return len(boxes)
}
