package reading

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/whole"
	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/parallel"
	"ovillo/render/report"
	"ovillo/render/words"
)

// Two languages may be wrong alike. So the figures that are read back from the files are compared with what the checker worked
// out: the counts of every row with the rows as they were worked, size by size, and the tables with the measures and the yarn.

// reader looks for what the pages say of a pattern in one language.
type reader struct {
	p      *plan.Pattern
	l      *words.Language
	all    []parallel.Passage
	faults []string
	counts int // figures of counts that were compared
}

func (r *reader) fault(format string, args ...any) {
	r.faults = append(r.faults, fmt.Sprintf(format, args...))
}

// part is the passages behind the head of a part.
func (r *reader) part(i int) []parallel.Passage {
	head := r.l.PartTitle(r.p, i)
	section := -1
	var out []parallel.Passage
	for _, p := range r.all {
		if p.Tag == "H2" && strings.HasSuffix(p.Text(), " "+oneLine(head)) {
			section = p.Section
		}
		if p.Section == section && p.Tag != "H2" {
			out = append(out, p)
		}
	}
	return out
}

func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }

// perSize reads a passage as a number of figures for each size: a list is taken apart by the names of the sizes, and what stands
// outside holds for all. Figures that belong to the name of a chain space are left out.
func (r *reader) perSize(p parallel.Passage) [][]int {
	out := make([][]int, len(r.p.Sizes))
	for _, run := range p.Runs {
		text := ofSpaces.ReplaceAllString(oneLine(run.Text), "")
		if !run.List {
			for z := range out {
				out[z] = append(out[z], ints(text)...)
			}
			continue
		}
		// Each figure stands behind the name of its size; the names are looked for from the last, since one may end another.
		for z := len(r.p.Sizes) - 1; z >= 0; z-- {
			name := oneLine(r.l.SizeName(r.p.Sizes[z])) + " "
			at := strings.LastIndex(" "+text, " "+name)
			if at < 0 {
				r.fault("no figure for size %s: %s", name, text)
				return out
			}
			out[z] = append(out[z], ints(text[at+len(name):])...)
			text = text[:at]
		}
	}
	return out
}

var (
	ofSpaces    = regexp.MustCompile(`\bch-\d+|\d+-ch|sps? of \d+ ch|esp de \d+ cad`)
	rowWord     = regexp.MustCompile(`(?i)\b(?:rows?|rounds?|hileras?|vueltas?)\b`)
	wholeNumber = regexp.MustCompile(`\d+`)
)

func ints(s string) []int {
	var out []int
	for _, w := range wholeNumber.FindAllString(s, -1) {
		n, _ := strconv.Atoi(w)
		out = append(out, n)
	}
	return out
}

// rows compares the labels and the counts of a part with its rows as they were worked.
func (r *reader) rows(i int) {
	part := r.p.Parts[i]
	passages := r.part(i)
	at := 0
	for _, step := range part.Steps {
		var first, last plan.Nums
		var counts []plan.Count
		switch st := step.(type) {
		case *plan.Row:
			first, last, counts = st.First, st.Last, st.Counts
		case *plan.Block:
			first, last, counts = st.First, st.Last, st.Counts
		default:
			continue
		}
		found := -1
		for k := at; k < len(passages) && found < 0; k++ {
			if r.labels(passages[k], first, last) {
				found = k
			}
		}
		if found < 0 {
			r.fault("%s: no label for rows %v to %v", part.Name, first, last)
			continue
		}
		at = found + 1
		if len(counts) > 0 {
			r.count(part, passages[found+2:], last, counts)
		}
	}
}

// labels reports whether a passage is the label of a step: the numbers of its first and its last row in every size.
func (r *reader) labels(p parallel.Passage, first, last plan.Nums) bool {
	if !rowWord.MatchString(p.Text()) || strings.HasSuffix(p.Text(), ".") {
		return false
	}
	faults := len(r.faults)
	got := r.perSize(p)
	r.faults = r.faults[:faults] // what has no figure for each size is no label
	for z := range got {
		if first[z] == plan.Absent {
			continue
		}
		want := []int{first[z]}
		if last[z] != first[z] {
			want = append(want, last[z])
		}
		// Before the numbers may stand for which sizes the step is.
		if n := len(got[z]) - len(want); n < 0 || !slices.Equal(got[z][n:], want) {
			return false
		}
	}
	return true
}

// count compares the passage at the foot of a step with the last row of the step in every size.
func (r *reader) count(part *plan.Part, behind []parallel.Passage, last plan.Nums, counts []plan.Count) {
	if len(behind) == 0 {
		r.fault("%s: no count for row %v", part.Name, last)
		return
	}
	p := behind[0]
	spaces := slices.ContainsFunc(counts, func(k plan.Count) bool { return k.Kind == plan.CountSpaces })
	for z, list := range r.perSize(p) {
		if last[z] == plan.Absent {
			continue
		}
		f, ok := report.FactOf(part, z, last[z])
		if !ok {
			r.fault("%s: size %d has no row %d", part.Name, z, last[z])
			continue
		}
		sum, want := 0, f.Stitches
		for _, n := range list {
			sum += n
		}
		if spaces {
			want += f.Spaces
		}
		r.counts++
		if sum != want {
			r.fault("%s, row %d of size %s: the page counts %v (%s), worked were %d stitches and %d spaces",
				part.Name, last[z], r.p.Sizes[z].Name, list, p.Text(), f.Stitches, f.Spaces)
		}
	}
}

// tables compares the table of measures and the table of yarn with the plan.
func (r *reader) tables() (compared int) {
	cells := map[string][][]string{} // by the name at the head of the line
	name := ""
	for _, p := range r.all {
		switch {
		case p.Tag == "TH":
			name = strings.ToLower(p.Text())
			cells[name] = append(cells[name], nil)
		case p.Tag == "TD" && p.Lang == "" && len(cells[name]) > 0:
			list := cells[name]
			list[len(list)-1] = append(list[len(list)-1], p.Text())
		}
	}
	line := func(head string) []string {
		for _, list := range cells[strings.ToLower(oneLine(head))] {
			if len(list) > len(r.p.Sizes) {
				list = list[len(list)-len(r.p.Sizes):] // a letter of the drawing stands first
			}
			if len(list) == len(r.p.Sizes) {
				return list
			}
		}
		r.fault("no line %q in the tables", head)
		return nil
	}
	for _, m := range r.p.Measures {
		for z, cell := range line(r.l.MeasureName(m)) {
			if m.Values[z] == plan.NoLength {
				continue
			}
			compared++
			figures := strings.Fields(strings.NewReplacer(",", ".", "*", "").Replace(cell))
			cm, err := strconv.ParseFloat(figures[0], 64)
			if err != nil || math.Abs(cm-m.Values[z].Cm()) > 0.0501 {
				r.fault("%s in size %s: the page says %s cm, worked out was %v", m.Name, r.p.Sizes[z].Name, figures[0], m.Values[z].Cm())
			}
			// A quarter of an inch is the step: half of it is the most that rounding takes.
			if inches := inchesOf(figures[len(figures)-1]); len(figures) > 1 && math.Abs(inches*2.54-m.Values[z].Cm()) > 2.54/8+0.001 {
				r.fault("%s in size %s: the page says %s in, worked out was %v cm", m.Name, r.p.Sizes[z].Name, figures[1], m.Values[z].Cm())
			}
		}
	}
	for _, y := range r.p.Yarns {
		for z, cell := range line(r.l.YarnName(y)) {
			compared++
			if n := ints(cell); len(n) != 1 || y.Amount[z].Balls > 0 && n[0] != y.Amount[z].Balls {
				r.fault("yarn %s in size %s: the page says %s, needed are %d balls", y.Name, r.p.Sizes[z].Name, cell, y.Amount[z].Balls)
			}
		}
	}
	return compared
}

// inchesOf reads inches with their quarters.
func inchesOf(s string) float64 {
	part := 0.0
	for sign, v := range map[string]float64{"¼": 0.25, "½": 0.5, "¾": 0.75} {
		if strings.HasSuffix(s, sign) {
			s, part = strings.TrimSuffix(s, sign), v
		}
	}
	n, _ := strconv.ParseFloat(s, 64)
	return n + part
}

// TestFiguresAreThePlans: the labels and counts of every row, the measures and the balls that stand in the files are those that
// were worked out, in every size.
func TestFiguresAreThePlans(t *testing.T) {
	for _, s := range whole.Examples(t) {
		t.Run(s.Name, func(t *testing.T) {
			t.Parallel()
			b := publish(t, s)
			for _, langs := range [][]string{{"en", "es"}, {"en"}, {"es"}} {
				for _, tag := range langs {
					faults, compared := b.figures(t, tag, b.read(t, langs...))
					for _, f := range faults {
						t.Errorf("%v, %s: %s", langs, tag, f)
					}
					if compared < 10 {
						t.Errorf("%v, %s: only %d figures were compared", langs, tag, compared)
					}
				}
			}
		})
	}
}

// figures compares the figures of pages in a language with the plan, and returns how many were compared.
func (b *published) figures(t *testing.T, tag string, all []parallel.Passage) (faults []string, compared int) {
	t.Helper()
	l := whole.Language(t, tag)
	r := &reader{p: b.plan, l: l, all: parallel.In(all, l.Tag())}
	for i := range b.plan.Parts {
		r.rows(i)
	}
	compared = r.tables() + r.counts
	return r.faults, compared
}

// TestWrongFiguresAreSeen: a figure that is wrong in both languages alike is found.
func TestWrongFiguresAreSeen(t *testing.T) {
	b := publish(t, whole.Example(t, "marisma-leggings.ovillo"))
	for _, c := range []struct {
		name      string
		old, text string
		told      string
	}{
		{"a count", "124", "125", "the page counts [125]"},
		{"a label", "2–18", "2–17", "no label for rows [2 2 2 2]"},
		{"a measure", "56", "57", "the page says 57 cm"},
		{"inches", "22", "23", "the page says 23 in"},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := b.composed(t, "en", "es")
			for i := range d.Pages {
				for k, it := range d.Pages[i].Items {
					if g, ok := it.(page.Glyphs); ok && g.Elem != nil && strings.TrimSpace(g.Text) == c.old {
						g.Text, g.Actual = c.text, strings.Replace(g.Actual, c.old, c.text, 1)
						d.Pages[i].Items[k] = g
					}
				}
			}
			all := reread(t, d)
			for _, tag := range []string{"en", "es"} {
				faults, _ := b.figures(t, tag, all)
				require.Contains(t, strings.Join(faults, "\n"), c.told)
			}
		})
	}
}
