package draw

import (
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/sample"
	"ovillo/render/scene"
)

// sourcePatterns are the examples and the worked constructions, checked.
func sourcePatterns(t *testing.T) map[string]*plan.Pattern {
	t.Helper()
	all := map[string]*plan.Pattern{}
	for _, folder := range []string{"../../examples", "../../testdata/cases"} {
		files, err := filepath.Glob(folder + "/*.ovillo")
		if err != nil || len(files) == 0 {
			t.Fatal("no sources", err)
		}
		for _, path := range files {
			text, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			tree, _ := lang.Parse(source.NewFile(path, string(text)))
			p, found := compile.Compile(tree)
			if found.HasErrors() {
				t.Fatalf("%s has errors", path)
			}
			all[strings.TrimSuffix(filepath.Base(path), ".ovillo")] = p
		}
	}
	return all
}

// arranged is a map as it stands on paper.
func arranged(p *plan.Pattern, wide, high float64) *mapping {
	m := mapOf(p)
	for i, n := range stepsOf(p, both) {
		m.nodes[i].number = n
	}
	m.arrange(wide, high)
	return m
}

// In every map nothing lies outside or over anything else, every piece has its number, every piece that grows on another has
// an arrow from there to itself, and the map is described with all its pieces.
func TestMaps(t *testing.T) {
	pieces, ways := 0, 0
	for name, p := range sourcePatterns(t) {
		for _, room := range [][2]float64{{170, 80}, {82, 60}, {60, 120}} {
			m, s := arranged(p, room[0], room[1]), Map(p, room[0], room[1], both...)
			if m.scale <= 0 {
				t.Fatalf("%s has no room in %v", name, room)
			}
			if s.W != room[0] || s.H > room[1]+1e-6 || s.H != min(m.high, room[1]) {
				t.Errorf("%s: the map is %v by %v mm in %v", name, s.W, s.H, room)
			}
			all := extent(s.Items)
			if all.min.x < -0.01 || all.min.y < -0.01 || all.max.x > s.W+0.01 || all.max.y > s.H+0.01 {
				t.Errorf("%s reaches outside of %v by %v: %v", name, s.W, s.H, all)
			}
			for i, n := range m.nodes {
				pieces++
				for k, o := range m.nodes[:i] {
					if n.at.overlaps(o.at) {
						t.Errorf("%s: pieces %d and %d lie over each other", name, k+1, i+1)
					}
				}
				if n.body.grown(-0.01).min.sub(n.at.min).x < -0.02 || n.body.max.x > n.at.max.x+0.01 || n.body.max.y > n.at.max.y+0.01 {
					t.Errorf("%s: piece %d stands outside of its place", name, i+1)
				}
			}
			for i, n := range m.nodes {
				if w := n.arrow; w.to.sub(w.from).length() > 0 && n.inside(m.scale) && (w.from.within(n.body) != w.from || w.to.within(n.body) != w.to) {
					t.Errorf("%s: the arrow of piece %d stands outside of it", name, i+1)
				}
			}
			want := 0
			for i, n := range m.nodes {
				for _, k := range n.parents {
					want++
					ways++
					if !m.leads(k, i) {
						t.Errorf("%s: no arrow leads from piece %d to piece %d", name, k+1, i+1)
					}
				}
			}
			if len(m.ways) != want {
				t.Errorf("%s: %d arrows for %d", name, len(m.ways), want)
			}
			numbers(t, name, p, s)
			for _, l := range both {
				for i := range p.Parts {
					if title := l.PartTitle(p, i); !strings.Contains(s.Desc[l.Tag()], title) {
						t.Errorf("%s: the description in %s does not name %s: %s", name, l.Tag(), title, s.Desc[l.Tag()])
					}
				}
				if !strings.Contains(s.Title[l.Tag()], l.Title(p)) {
					t.Errorf("%s: the title in %s: %s", name, l.Tag(), s.Title[l.Tag()])
				}
			}
		}
	}
	if pieces < 200 || ways < 60 {
		t.Errorf("only %d pieces and %d arrows were looked at", pieces, ways)
	}
}

// leads reports whether an arrow begins beside one piece and ends before another.
func (m *mapping) leads(from, to int) bool {
	a, b := m.nodes[from], m.nodes[to]
	for _, w := range m.ways {
		p, q := w[0], w[len(w)-1]
		if p.x > a.at.max.x && p.x < a.at.max.x+2 && p.y == a.body.middle().y && q.x < b.body.min.x && q.x > b.body.min.x-2 && q.y == b.body.middle().y {
			return true
		}
	}
	return false
}

// numbers compares the labels of a map with the steps of the construction.
func numbers(t *testing.T, name string, p *plan.Pattern, s *scene.Scene) {
	t.Helper()
	got := map[string]int{}
	for _, it := range s.Items {
		if l, ok := it.(scene.Label); ok && !strings.HasPrefix(l.Text, "×") {
			got[l.Text]++
		}
	}
	for k, st := range both[0].MapSteps(p) {
		if want := map[bool]int{true: 1}[st.Part >= 0]; got[strconv.Itoa(k+1)] != want {
			t.Errorf("%s: the number %d stands %d times", name, k+1, got[strconv.Itoa(k+1)])
		}
	}
}

// What grows on what, as the patterns say: a piece that follows from another arrow has none of its own.
func TestMapsSayWhatGrowsOnWhat(t *testing.T) {
	all := sourcePatterns(t)
	for name, want := range map[string][][]int{
		"marisma-leggings":   {nil, {0}, {1}, {1}},
		"bajamar-blanket":    {nil, {0}, {1}},
		"salitre-seal":       {nil, nil, nil, nil},
		"ria-vest":           {nil, nil, {1}, {1}, {0, 2, 3}, {0, 2}, {0, 3}},
		"rompiente-cardigan": {nil, {0}, {0}, {0}, {3}, {3}},
	} {
		for i, n := range mapOf(all[name]).nodes {
			if len(n.parents) != len(want[i]) {
				t.Errorf("%s: piece %d grows on %v, want %v", name, i+1, n.parents, want[i])
				continue
			}
			for k := range n.parents {
				if n.parents[k] != want[i][k] {
					t.Errorf("%s: piece %d grows on %v, want %v", name, i+1, n.parents, want[i])
				}
			}
		}
	}
}

// The arrows of the direction of work point as the pieces are worked: leggings from the waist down, a bootee up from its sole,
// which is worked outwards.
func TestMapsSayWhichWayPiecesAreWorked(t *testing.T) {
	all := sourcePatterns(t)
	for name, want := range map[string][]float64{"marisma-leggings": {-1, 1, 1, 1}, "marea-bootees": {0, -1, -1}, "duna-hat": {1, 1}, "jarcia-headband": {-1}} {
		m := arranged(all[name], 120, 70)
		for i, n := range m.nodes {
			way := n.arrow.to.sub(n.arrow.from)
			toward := vec{0, want[i]}
			if want[i] == 0 {
				toward = vec{1, 0}
			}
			if way.length() < 3 || way.unit().dot(toward) < 0.9 {
				t.Errorf("%s: the arrow of piece %d points to %v", name, i+1, way)
			}
		}
	}
}

// The pieces are to one scale: the body of the leggings is as wide on the map as the widest of its rounds says.
func TestMapsAreToScale(t *testing.T) {
	p := sample.Leggings()
	m := arranged(p, 120, 70)
	for i, part := range p.Parts[:2] {
		widest := 0.0
		for _, f := range part.Worked[p.Shown] {
			widest = max(widest, f.Width.Cm()/2)
		}
		if got := m.nodes[i].body.width() / m.scale; got < widest*0.99 || got > widest*1.01 {
			t.Errorf("%s is %.1f cm wide on the map, %.1f by its rounds", part.Name, got, widest)
		}
	}
}

// A pattern without pieces, and one without a gauge, do no harm.
func TestMapsOfLittle(t *testing.T) {
	if s := Map(&plan.Pattern{}, 80, 60, both...); len(s.Items) != 0 {
		t.Error("a map of nothing")
	}
	p := sample.Leggings()
	for _, part := range p.Parts {
		for z := range part.Worked {
			for i := range part.Worked[z] {
				part.Worked[z][i].Width, part.Worked[z][i].Height = plan.NoLength, plan.NoLength
			}
		}
	}
	s := Map(p, 80, 60, both...)
	numbers(t, "without a gauge", p, s)
	for _, part := range p.Parts {
		part.Worked = make([][]plan.RowFact, len(p.Sizes))
	}
	numbers(t, "without rows", p, Map(p, 80, 60, both...))
}

// In a mirror numbers stay readable and arrows point the other way.
func TestMapsInAMirror(t *testing.T) {
	p := sample.Leggings()
	s := Map(p, 120, 70, both...)
	m := s.Mirrored()
	numbers(t, "mirrored", p, m)
	for i, it := range s.Items {
		l, ok := it.(scene.Label)
		if !ok {
			continue
		}
		o := m.Items[i].(scene.Label)
		if o.X != s.W-l.X || o.Anchor != scene.End {
			t.Errorf("the number %s stands at %v", l.Text, o)
		}
	}
}
